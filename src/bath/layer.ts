import { isPast, type Caution } from "../core/caution.js";
import { positive } from "../core/guards.js";
import type { ProcessVessel } from "../handbook/process.js";
import { say } from "./text.js";

/** What lies in which vessel. */
export interface Layer {
  /** `"tray"` is a dish: the bath has to cover what lies in it */
  readonly vessel?: ProcessVessel | undefined;
  /** area to be developed at once, cm² */
  readonly areaCm2?: number | undefined;
  /** floor of the dish, cm²; the area to be developed when left out */
  readonly dishCm2?: number | undefined;
}

/** Least bath for each cm² of a dish, ml: 5 mm deep (household encyclopaedia; see `bathCapacity`). */
export const LEAST_ML_PER_CM2 = 0.5;

/** The floor that a bath has to cover, cm²; 0 where nothing is said of a dish. */
export function floorOf(where: string, { vessel, areaCm2 = 0, dishCm2 }: Layer): number {
  if (dishCm2 !== undefined) return positive(where, dishCm2, 1e6, "areaCm2", "/dishCm2");
  return vessel === "tray" ? areaCm2 : 0;
}

/** Whether a bath covers the floor of its dish deep enough. */
export function thinLayer(volumeMl: number, floorCm2: number): readonly Caution[] {
  const actual = volumeMl / floorCm2;
  if (floorCm2 === 0 || !isPast(LEAST_ML_PER_CM2, actual)) return [];
  const leastMl = LEAST_ML_PER_CM2 * floorCm2;
  return [
    say("thin-layer", "warn", {
      path: "/volumeMl",
      quantity: "mlPerCm2",
      limit: LEAST_ML_PER_CM2,
      actual,
      data: { leastMl },
    }),
  ];
}
