/*
 * Module: handbook. How fast the bath in a usual vessel drifts toward its surroundings. These are estimates
 * worked from heat transfer, not measurements: fit your own with a thermometer and a clock.
 */
import { frozen, namesOf } from "../core/frozen.js";

/** Vessels with an estimate. */
export type DriftVessel =
  | "tray-in-air"
  | "steel-tank-in-air"
  | "plastic-tank-in-air"
  | "glass-jar-in-air"
  | "steel-tank-in-water"
  | "plastic-tank-in-water";

/** A time constant with the standard deviation of its logarithm. */
export interface HandbookVessel {
  /** after this time 63 % of the difference to the surroundings is gone, s */
  readonly timeConstantS: number;
  /** standard deviation of ln(timeConstantS) */
  readonly logSd: number;
  /** where the figure comes from */
  readonly sources: readonly string[];
}

const ESTIMATE = (work: string): readonly string[] => [
  `estimate, not measured: time constant = heat capacity / (coefficient × surface), water 4.18 J/(g K); ` +
    `${work}; surface coefficients as in ` +
    "textbooks of heat transfer (from memory)",
];

/** Time constants by vessel. */
export const handbookVessels: Readonly<Record<DriftVessel, HandbookVessel>> = /* @__PURE__ */ frozen({
  // 4180 J/K over 0.1 m² of top and bottom at 15 W/(m² K), evaporation included.
  "tray-in-air": {
    timeConstantS: 2800,
    logSd: 0.5,
    sources: ESTIMATE("1 l in a tray of 20 × 25 cm, 15 W/(m² K) with evaporation"),
  },
  // 1250 J/K with the steel, over 0.03 m² at 10 W/(m² K).
  "steel-tank-in-air": {
    timeConstantS: 4200,
    logSd: 0.4,
    sources: ESTIMATE("250 ml in a steel tank of 0.03 m², 10 W/(m² K)"),
  },
  // 1450 J/K with the plastic and the spiral, over 0.04 m² at 7 W/(m² K), the wall counted in.
  "plastic-tank-in-air": {
    timeConstantS: 5200,
    logSd: 0.4,
    sources: ESTIMATE("300 ml in a plastic tank of 0.04 m², 7 W/(m² K)"),
  },
  // 2500 J/K over 0.045 m² at 9 W/(m² K).
  "glass-jar-in-air": {
    timeConstantS: 6200,
    logSd: 0.4,
    sources: ESTIMATE("500 ml in a glass jar of 0.045 m², 9 W/(m² K)"),
  },
  // Steel in a water jacket: two films of slow water, 300 W/(m² K) together, half of the surface wet.
  "steel-tank-in-water": {
    timeConstantS: 280,
    logSd: 0.6,
    sources: ESTIMATE("250 ml in a steel tank, 0.015 m² wet, 300 W/(m² K)"),
  },
  // A plastic wall of 2 mm alone passes 100 W/(m² K).
  "plastic-tank-in-water": {
    timeConstantS: 970,
    logSd: 0.6,
    sources: ESTIMATE("300 ml in a plastic tank, 0.02 m² wet, 75 W/(m² K)"),
  },
});

/** The vessels that `handbookVessel` takes. */
export const driftVessels: readonly DriftVessel[] = /* @__PURE__ */ namesOf(handbookVessels);
