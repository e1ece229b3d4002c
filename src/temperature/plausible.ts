/*
 * What a temperature law can plausibly be: for the caution `law-unusual`, which warns and refuses nothing,
 * and for rows in °F.
 */
import type { Caution } from "../core/caution.js";
import { TABLE_ROW_LOG_SD } from "../core/table.js";
import { Z90 } from "../core/estimate.js";
import { GAS_CONSTANT_KJ, inverseKelvin, type TemperatureLaw, type TemperatureRow } from "./law.js";
import { FAHRENHEIT_ABOVE_C, fahrenheitCautions } from "./temperatureCautions.js";

/** Activation energies that were ever published for development, kJ/mol. */
export const USUAL_ENERGY_KJ: readonly [low: number, high: number] = [20, 110];

/** The least spread of an activation energy, kJ/mol: a law that claims less is taken as known to this. */
export const LEAST_ENERGY_SD_KJ: number = 3;

/** A kilocalorie in kilojoules (thermochemical, by definition). */
const KILOCALORIE_KJ = 4.184;

/** What is unusual about a temperature law. */
export interface UnusualTemperatureLaw {
  /**
   * `"energy"`: outside 20 to 110 kJ/mol; `"maybe-kilocalories"`: below it, and within once taken for
   * kcal/mol; `"maybe-fahrenheit"`: a ratio over 18 degrees, which is 10 °C in °F
   */
  readonly reason: "energy" | "maybe-kilocalories" | "maybe-fahrenheit";
  /** the field of the law that is unusual, as a JSON Pointer into the law */
  readonly path: "/activationEnergyKJPerMol" | "/ratio" | "/intervalC" | "/rows";
  /** kJ/mol; for `"maybe-fahrenheit"` °C */
  readonly limit: number;
  /** kJ/mol; for `"maybe-fahrenheit"` °C */
  readonly actual: number;
}

const PATHS = { arrhenius: "/activationEnergyKJPerMol", coefficient: "/ratio", table: "/rows" } as const;

/**
 * What is unusual about a checked law, or `undefined`. A ratio is judged by the activation energy that gives
 * it from 15 to 25 °C, a table by that between its coldest and warmest rows, less what their rounding
 * explains.
 */
export function unusualTemperatureLaw(law: TemperatureLaw): UnusualTemperatureLaw | undefined {
  if (law.kind === "coefficient" && law.intervalC === 18)
    return { reason: "maybe-fahrenheit", path: "/intervalC", limit: 10, actual: 18 };
  const { energy, rounding } = energyOf(law);
  const [low, high] = USUAL_ENERGY_KJ;
  if (energy >= low - rounding && energy <= high + rounding) return undefined;
  const inKilojoules = energy * KILOCALORIE_KJ;
  const kilocalories = law.kind === "arrhenius" && inKilojoules >= low && inKilojoules <= high;
  return {
    reason: kilocalories ? "maybe-kilocalories" : "energy",
    path: PATHS[law.kind],
    limit: energy < low ? low : high,
    actual: energy,
  };
}

/** The place of the first row of a table that is probably in °F; −1 where there is none. */
export const fahrenheitRow = (rows: readonly TemperatureRow[]): number =>
  rows.findIndex(({ temperatureC }) => temperatureC > FAHRENHEIT_ABOVE_C);

/** The caution `maybe-fahrenheit` at the first row of a checked table that is probably in °F. */
export function fahrenheitTable(path: string, law: TemperatureLaw): readonly Caution[] {
  if (law.kind !== "table") return [];
  const i = fahrenheitRow(law.rows);
  const row = law.rows[i];
  return row === undefined ? [] : fahrenheitCautions(row.temperatureC, `${path}/rows/${i}/temperatureC`);
}

/** The activation energy of a law, kJ/mol, and half the 90 % interval that printed rows leave open. */
function energyOf(law: TemperatureLaw): { readonly energy: number; readonly rounding: number } {
  if (law.kind === "arrhenius") return { energy: law.activationEnergyKJPerMol, rounding: 0 };
  const between = (logRatio: number, coldC: number, warmC: number): number =>
    (GAS_CONSTANT_KJ * logRatio) / (inverseKelvin(coldC) - inverseKelvin(warmC));
  if (law.kind === "coefficient")
    return { energy: between((10 * Math.log(law.ratio)) / law.intervalC, 15, 25), rounding: 0 };
  const cold = law.rows.reduce((a, b) => (b.temperatureC < a.temperatureC ? b : a));
  const warm = law.rows.reduce((a, b) => (b.temperatureC > a.temperatureC ? b : a));
  return {
    energy: between(Math.log(cold.timeS / warm.timeS), cold.temperatureC, warm.temperatureC),
    rounding: between(Z90 * TABLE_ROW_LOG_SD * Math.SQRT2, cold.temperatureC, warm.temperatureC),
  };
}
