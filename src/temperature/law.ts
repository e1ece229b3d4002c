/*
 * Room: temperature. What a temperature law is, and how ln(time) runs under each form of it.
 */
import { timeCurve, type TimeKnot } from "../core/curve.js";
import { inRange, plainObject, positive, wrongValue } from "../core/guards.js";
import { tableRows, type Placing } from "../core/tableRows.js";
import type { LawOrigin } from "../core/term.js";

/**
 * Molar gas constant in kJ/(mol·K): CODATA 2018, exact in the SI (Tiesinga et al., Rev. Mod. Phys. 93,
 * 025010, 2021).
 */
export const GAS_CONSTANT_KJ: number = 8.314462618e-3;

/** 0 °C in kelvin, by definition. */
export const ZERO_CELSIUS_K: number = 273.15;

/** A row of a published time-temperature table: the time that gives the same contrast at that temperature. */
export interface TemperatureRow {
  readonly temperatureC: number;
  readonly timeS: number;
}

/**
 * How development time depends on temperature: plain data, in one of three forms.
 *
 * - `"arrhenius"`: ln(rate) = (E/R)(1/T0 − 1/T), E in kJ/mol from 0 to 200, with its standard deviation.
 * - `"coefficient"`: the rate grows by `ratio` over `intervalC` degrees, ln(rate) linear in °C; the ratio is
 *   1 or more and at most e per degree, its spread `sdRatio` from 0 to ratio × `intervalC`.
 * - `"table"`: two or more rows of a maker's table, no two at one temperature, no warmer row longer than a
 *   colder one.
 */
export type TemperatureLaw =
  | ({
      readonly kind: "arrhenius";
      readonly activationEnergyKJPerMol: number;
      readonly sdKJPerMol?: number;
    } & LawOrigin)
  | ({
      readonly kind: "coefficient";
      readonly ratio: number;
      readonly intervalC: number;
      readonly sdRatio?: number;
    } & LawOrigin)
  | ({ readonly kind: "table"; readonly rows: readonly TemperatureRow[] } & LawOrigin);

/** The Arrhenius form on its own. */
export type ArrheniusLaw = Extract<TemperatureLaw, { kind: "arrhenius" }>;

/** The coefficient form on its own. */
export type CoefficientLaw = Extract<TemperatureLaw, { kind: "coefficient" }>;

/** Returns a bath temperature when it is from 0 to 100 °C; throws otherwise. */
export function bathTemperature(where: string, value: unknown): number {
  return inRange(where, value, 0, 100, "temperatureC");
}

/** 1/T in 1/K. */
export function inverseKelvin(temperatureC: number): number {
  return 1 / (temperatureC + ZERO_CELSIUS_K);
}

const BY_TEMPERATURE: Placing = {
  by: "temperatureC",
  x: (where, value) => -bathTemperature(where, value),
  steepest: 1,
  must: "not be faster when colder, nor slower by more than 2.72 times per °C",
};

/** The rows of a table, checked, sorted from warm to cold: x is 1/T in 1/K. */
export function checkedRows(where: string, rows: unknown): readonly TimeKnot[] {
  return tableRows(where, rows, BY_TEMPERATURE).map(({ x, timeS }) => ({ x: inverseKelvin(-x), timeS }));
}

/**
 * Checks a law and returns the slope of ln(time): over 1/T in 1/K for `"arrhenius"`, over °C for
 * `"coefficient"`; `undefined` for a table, whose slope changes.
 */
export function lawSlope(where: string, law: TemperatureLaw): number | undefined {
  plainObject(where, law, "/law");
  // Read once: where many forms of law meet, each reading of a field costs a search.
  const { kind } = law;
  if (kind === "arrhenius") {
    inRange(where, law.sdKJPerMol ?? 0, 0, 200, "kJPerMol", "/law/sdKJPerMol");
    return (
      inRange(where, law.activationEnergyKJPerMol, 0, 200, "kJPerMol", "/law/activationEnergyKJPerMol") /
      GAS_CONSTANT_KJ
    );
  }
  if (kind === "coefficient") return coefficientSlope(where, law);
  checkTable(where, law);
  return undefined;
}

// Apart from lawSlope, so that this stays short enough to be compiled into its callers.
function coefficientSlope(where: string, law: CoefficientLaw): number {
  const interval = positive(where, law.intervalC, 100, "temperatureC", "/law/intervalC");
  const ratio = inRange(where, law.ratio, 1, Math.exp(interval), undefined, "/law/ratio");
  inRange(where, law.sdRatio ?? 0, 0, ratio * interval, undefined, "/law/sdRatio");
  return -Math.log(ratio) / interval;
}

function checkTable(where: string, law: Extract<TemperatureLaw, { kind: "table" }>): void {
  // A caller without types can get here with any kind at all.
  const kind: unknown = law.kind;
  if (kind !== "table") wrongValue(`${where}/law/kind`, `"arrhenius", "coefficient" or "table"`, kind);
  checkedRows(`${where}/law`, law.rows);
}

/** A conversion rounds: what passes a limit by its last bits is the limit. */
export function settled(value: number, limit: number): number {
  return value > limit && value <= limit * (1 + 1e-9) ? limit : value;
}

/** Time as a function of °C for a table: exactly what is printed at a row. */
export function tableTime(rows: readonly TemperatureRow[]): (temperatureC: number) => number {
  const curve = timeCurve(checkedRows("", rows));
  return (c) => curve(inverseKelvin(c));
}
