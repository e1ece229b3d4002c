/*
 * What a dilution law can plausibly be: for the caution `law-unusual`, which warns and refuses nothing.
 */
import { TABLE_ROW_LOG_SD } from "../core/table.js";
import { Z90 } from "../core/estimate.js";
import { checkedDilutionRows, type DilutionLaw } from "./dilution.js";

/** Exponents that were ever published: 0.36 to 1.71, and what lies near. */
export const USUAL_EXPONENT: readonly [low: number, high: number] = [0.2, 2];

/** The least spread of an exponent: a law that claims less is taken as known to this. */
export const LEAST_EXPONENT_SD: number = 0.03;

/** What is unusual about a dilution law. */
export interface UnusualDilutionLaw {
  /** the exponent lies outside 0.2 to 2 */
  readonly reason: "exponent";
  /** the field of the law that is unusual, as a JSON Pointer into the law */
  readonly path: "/exponent" | "/rows";
  readonly limit: number;
  readonly actual: number;
}

/**
 * What is unusual about a checked law, or `undefined`. A table is judged by the exponent between its
 * strongest and weakest rows, less what their rounding explains.
 */
export function unusualDilutionLaw(law: DilutionLaw): UnusualDilutionLaw | undefined {
  const { exponent, rounding } = exponentOf(law);
  const [low, high] = USUAL_EXPONENT;
  if (exponent >= low - rounding && exponent <= high + rounding) return undefined;
  return {
    reason: "exponent",
    path: law.kind === "power" ? "/exponent" : "/rows",
    limit: exponent < low ? low : high,
    actual: exponent,
  };
}

function exponentOf(law: DilutionLaw): { readonly exponent: number; readonly rounding: number } {
  if (law.kind === "power") return { exponent: law.exponent, rounding: 0 };
  const rows = checkedDilutionRows("", law.rows);
  const strong = rows[0] as (typeof rows)[number];
  const weak = rows[rows.length - 1] as (typeof rows)[number];
  const step = weak.x - strong.x;
  return {
    exponent: Math.log(weak.timeS / strong.timeS) / step,
    rounding: (Z90 * TABLE_ROW_LOG_SD * Math.SQRT2) / step,
  };
}
