/*
 * What the checks share: tables in s and °C, a fitted law set against its own table, and the
 * laws that meet every row of a table within its rounding.
 */
import { leastSquaresLine } from "../../../src/core/leastSquares.js";
import {
  fahrenheitToCelsius,
  temperatureFactor,
  type TemperatureLaw,
  type TemperatureRow,
} from "../../../src/index.js";
import type { TimeTable } from "../temperature.js";

/** Any reading in °C. */
export function celsius(temperature: number, unit: "F" | "C"): number {
  return unit === "F" ? fahrenheitToCelsius(temperature) : temperature;
}

/** The rows of a printed table in s and °C. */
export function rowsOf(table: TimeTable): readonly TemperatureRow[] {
  return table.rows.map(({ temperature, minutes }) => ({
    temperatureC: celsius(temperature, table.unit),
    timeS: minutes * 60,
  }));
}

/**
 * The least-squares law of a table by its rows alone, with no prior, and its standard error for rows that are
 * known to 2.5 %.
 */
export function leastSquaresLaw(rows: readonly TemperatureRow[]): {
  readonly kind: "arrhenius";
  readonly activationEnergyKJPerMol: number;
  readonly sdKJPerMol: number;
} {
  const { slope, spreadX } = leastSquaresLine(
    rows.map(({ temperatureC, timeS }) => [1 / (8.314462618e-3 * (temperatureC + 273.15)), Math.log(timeS)]),
  );
  return { kind: "arrhenius", activationEnergyKJPerMol: slope, sdKJPerMol: 0.025 / Math.sqrt(spreadX) };
}

/**
 * The times that the least-squares law of a table gives at its own rows: the law through the mean of ln t.
 */
export function fittedTimes(
  rows: readonly TemperatureRow[],
  law: TemperatureLaw = leastSquaresLaw(rows),
): readonly number[] {
  const shape = rows.map(({ temperatureC }) => temperatureFactor(20, temperatureC, law));
  const level = rows.reduce((sum, { timeS }, i) => sum + Math.log(timeS / shape[i]!), 0) / rows.length;
  return shape.map((factor) => factor * Math.exp(level));
}

/** The largest miss of times against rows, s. */
export function worstMiss(rows: readonly TemperatureRow[], times: readonly number[]): number {
  return Math.max(...rows.map(({ timeS }, i) => Math.abs(times[i]! - timeS)));
}

/** Whether one law meets every row to within `halfS`, whatever its level. */
export function meetsAll(rows: readonly TemperatureRow[], halfS: number, law: TemperatureLaw): boolean {
  const shape = rows.map(({ temperatureC }) => temperatureFactor(20, temperatureC, law));
  const least = Math.max(...rows.map(({ timeS }, i) => (timeS - halfS) / shape[i]!));
  return least <= Math.min(...rows.map(({ timeS }, i) => (timeS + halfS) / shape[i]!));
}

/** The lowest and highest of a family of laws that meet every row, or none. */
export function range(
  values: readonly number[],
  meets: (value: number) => boolean,
): readonly [number, number] | undefined {
  const good = values.filter(meets);
  return good.length > 0 ? [good[0]!, good[good.length - 1]!] : undefined;
}

/** Activation energies from 0 to 200 kJ/mol. */
export const ENERGIES: readonly number[] = Array.from({ length: 401 }, (_, i) => i / 2);

/**
 * The range of activation energies that meet every row to within `halfS`, in steps of 0.5 kJ/mol, or none.
 */
export function energiesWithin(
  rows: readonly TemperatureRow[],
  halfS: number,
): readonly [number, number] | undefined {
  return range(ENERGIES, (activationEnergyKJPerMol) =>
    meetsAll(rows, halfS, { kind: "arrhenius", activationEnergyKJPerMol }),
  );
}
