/*
 * Room: dilution. What a dilution and a dilution law are, and how ln(time) runs with concentration.
 */
import { timeCurve } from "../core/curve.js";
import { arrayOf, inRange, plainObject, positive, wrongKind, wrongValue } from "../core/guards.js";
import type { LawOrigin } from "../core/term.js";

/** Parts of stock and of water. `stocks` splits the stock where a bath is mixed from several solutions. */
export interface Dilution {
  readonly stockParts: number;
  readonly waterParts: number;
  readonly stocks?: readonly number[];
}

/** A row of a maker's table: a dilution and the time that gives the same contrast with it. */
export interface DilutionRow {
  readonly dilution: Dilution | string;
  readonly timeS: number;
}

/**
 * How development time depends on dilution: plain data, in one of two forms.
 *
 * - `"power"`: time is proportional to concentration^−n, n the `exponent`, from 0 to 3, with its standard deviation `sd`. Many
 *   developers follow a power only roughly: `scatterLogSd` is how far single times lie from it, a standard deviation in ln(time), 0 to 3.
 * - `"table"`: two or more rows of a maker's table, no two of one concentration, no weaker bath faster than a stronger one.
 */
export type DilutionLaw =
  | ({ readonly kind: "power"; readonly exponent: number; readonly sd?: number; readonly scatterLogSd?: number } & LawOrigin)
  | ({ readonly kind: "table"; readonly rows: readonly DilutionRow[] } & LawOrigin);

/** The power form on its own. */
export type PowerDilutionLaw = Extract<DilutionLaw, { kind: "power" }>;

/** Returns the dilution when its parts are numbers in range; throws otherwise. */
export function checkedDilution(where: string, dilution: Dilution): Dilution {
  const { stockParts, waterParts, stocks } = plainObject(where, dilution);
  const stock = positive(where, stockParts, 1e5, "", " stockParts");
  const water = inRange(where, waterParts, 0, 1e5 * stock, "", " waterParts");
  if (stocks === undefined) return dilution;
  const parts = arrayOf(`${where} stocks`, stocks, 1).map((part, i) => positive(`${where} stocks[${i}]`, part, 1e5, ""));
  const sum = parts.reduce((total, part) => total + part, 0);
  if (Math.abs(sum - stock) > 1e-9 * stock) wrongValue(`${where} stocks`, `parts that sum to ${stock}`, sum);
  return { stockParts: stock, waterParts: water, stocks: parts };
}

/** ln of the concentration, 0 for undiluted stock and below 0 for every dilution. */
export function logConcentration(dilution: Dilution): number {
  return -Math.log1p(dilution.waterParts / dilution.stockParts);
}

const PART = String.raw`\s*(\d+(?:\.\d+)?)\s*`;
const TWO = new RegExp(`^${PART}([+:])${PART}$`);
const SEVERAL = new RegExp(`^${PART}(?:\\+${PART}){2,}$`);

/** Reads a dilution from text; `where` names the function and field for the error texts. */
export function dilutionFromText(where: string, text: string, colon?: "plus" | "total"): Dilution {
  // The usual form first: compensate reads two dilutions on every call.
  const two = TWO.exec(text);
  if (two) {
    const stockParts = Number(two[1]);
    const second = Number(two[3]);
    const mark = two[2] === "+" ? "plus" : colon;
    if (mark === undefined)
      throw new RangeError(
        `${where} ${JSON.stringify(text)} is ambiguous: write "${stockParts}+${second}" (${stockParts + second} parts in all) or ` +
          `"${stockParts}+${second - stockParts}" (${second} parts in all), or say what the colon means, "plus" or "total"`,
      );
    return checkedDilution(where, { stockParts, waterParts: mark === "plus" ? second : second - stockParts });
  }
  if (text.trim().toLowerCase() === "stock") return { stockParts: 1, waterParts: 0 };
  if (!SEVERAL.test(text)) wrongValue(where, '"stock" or parts such as "1+9"', text);
  const stocks = text.split("+").map(Number);
  const waterParts = stocks.pop() as number;
  return checkedDilution(where, { stockParts: stocks.reduce((sum, part) => sum + part, 0), waterParts, stocks });
}

/** Reads a dilution given as text or as parts. */
export function readDilution(where: string, value: unknown): Dilution {
  if (typeof value === "string") return dilutionFromText(where, value);
  if (typeof value !== "object") wrongKind(where, 'text such as "1+9" or { stockParts, waterParts }', value);
  return checkedDilution(where, value as Dilution);
}

/** Checks a law and returns the ratio of times from one ln(concentration) to another; of two rows of a table exactly the printed one. */
export function dilutionRatio(where: string, law: DilutionLaw): (fromLogC: number, toLogC: number) => number {
  const kind: unknown = plainObject(where, law, " law")["kind"];
  if (law.kind === "power") {
    const n = inRange(where, law.exponent, 0, 3, "", " law.exponent");
    inRange(where, law.sd ?? 0, 0, 3, "", " law.sd");
    inRange(where, law.scatterLogSd ?? 0, 0, 3, "", " law.scatterLogSd");
    return (from, to) => Math.exp(n * (from - to));
  }
  if (kind !== "table") wrongValue(`${where} law.kind`, '"power" or "table"', kind);
  // Rows from strong to weak, so that the curve over −ln(concentration) rises.
  const rows = checkedDilutionRows(`${where} law.`, law.rows);
  const curve = timeCurve(rows.map(({ logC, timeS }) => ({ x: -logC, timeS })));
  return (from, to) => curve(-to) / curve(-from);
}

/** The rows of a dilution table, checked, with ln(concentration), sorted from strong to weak. */
export function checkedDilutionRows(
  where: string,
  rows: unknown,
): readonly { readonly logC: number; readonly timeS: number }[] {
  const sorted = arrayOf(`${where}rows`, rows, 2)
    .map((row, i) => {
      const { dilution, timeS } = plainObject(`${where}rows[${i}]`, row);
      return {
        logC: logConcentration(readDilution(`${where}rows[${i}].dilution`, dilution)),
        timeS: positive(`${where}rows[${i}].timeS`, timeS, 1e7, " s"),
      };
    })
    .sort((a, b) => b.logC - a.logC);
  sorted.reduce((strong, weak) => {
    if (strong.logC === weak.logC) throw new RangeError(`${where}rows must differ in dilution, got two of one strength`);
    const times = `${strong.timeS} s and, weaker, ${weak.timeS} s`;
    if (weak.timeS < strong.timeS) throw new RangeError(`${where}rows must not be faster when weaker, got ${times}`);
    if (Math.log(weak.timeS / strong.timeS) > 5 * (strong.logC - weak.logC))
      throw new RangeError(`${where}rows must not rise faster than concentration^-5, got ${times}`);
    return weak;
  });
  return sorted;
}
