/*
 * What a dilution and a dilution law are, and how ln(time) runs with concentration.
 */
import {
  arrayOf,
  inRange,
  notOneOf,
  plainObject,
  positive,
  refuse,
  type TextForm,
  unreadable,
} from "../core/guards.js";
import { preparedTable, type Table, type TableUnread, type TimeKnot } from "../core/table.js";
import { readyTableWalk, type TableAxis } from "../core/tableWalk.js";
import { checkedDepartures, readyWalk, type Departure, type ReadyWalk } from "../core/departures.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";
import { withPoint } from "../quantities/numberText.js";
import { tableRows, type Placing } from "../core/tableRows.js";
import { partsOrTotalText } from "./text.js";
import { DEPARTURE_LOG_SD } from "./genericDilutionLaw.js";

/** How a dilution is written. */
export const DILUTIONS: TextForm = { format: "dilution", examples: ["1+9", "stock"] };

/** Parts of stock and of water. `stocks` splits the stock where a bath is mixed from several solutions. */
export interface Dilution {
  /** parts of all stocks together, above 0 to 100,000 */
  readonly stockParts: number;
  /** parts of water, 0 to 100,000 for each part of stock */
  readonly waterParts: number;
  /** the parts of each stock, where there are several */
  readonly stocks?: readonly number[] | undefined;
}

/** A row of a maker's table: a dilution and the time that gives the same contrast with it. */
export interface DilutionRow {
  /** as text, `"1+9"`, or parts */
  readonly dilution: Dilution | string;
  /** time at this dilution, s */
  readonly timeS: number;
  /** the step to which the time was rounded, s, above 0 to 1e7: a fit then knows how well the row is known */
  readonly stepS?: number | undefined;
}

/**
 * How development time depends on dilution: plain data, in one of two forms.
 *
 * - `"power"`: time is proportional to concentration^−n, n the `exponent`, from 0 to 3, with its standard
 *   deviation `sd`. Many developers follow a power only roughly: `scatterLogSd` is how far single times lie
 *   from it, a standard deviation in ln(time), 0 to 3; a random walk of 0.19 for each unit of
 *   ln(concentration) when left out. `departures` are what was learned of this walk, between neighbouring
 *   ln(concentration).
 * - `"table"`: two or more rows of a maker's table, no two of one concentration, no weaker bath faster than a
 *   stronger one. `departures` are what was learned of single dilutions against the print, `exponentOff` of
 *   its slope as a whole, known to `sd`: 0 ± 0.1 when left out.
 */
export type DilutionLaw =
  | ({
      readonly kind: "power";
      /** time is proportional to concentration^−exponent, 0 to 3 */
      readonly exponent: number;
      /** standard deviation of the exponent, 0 to 3 */
      readonly sd?: number | undefined;
      /** how far single dilutions depart from the power, in ln(time) */
      readonly scatterLogSd?: number | undefined;
      /** learned departures of single dilutions */
      readonly departures?: readonly Departure[] | undefined;
    } & LawOrigin)
  | ({
      readonly kind: "table";
      /** times over dilution, two or more */
      readonly rows: readonly DilutionRow[];
      /** how far the slope of the whole table is off, as an exponent, −3 to 3; 0 when left out */
      readonly exponentOff?: number | undefined;
      /** its standard deviation, 0 to 3; 0.1 when left out */
      readonly sd?: number | undefined;
      /** learned departures of single dilutions from the table, along ln(concentration) */
      readonly departures?: readonly Departure[] | undefined;
    } & LawOrigin);

/** The power form on its own. */
export type PowerDilutionLaw = Extract<DilutionLaw, { kind: "power" }>;

/** Returns the dilution when its parts are numbers in range; throws otherwise. */
export function checkedDilution(where: string, dilution: Dilution): Dilution {
  const { stockParts, waterParts, stocks } = plainObject(where, dilution);
  const stock = positive(where, stockParts, 1e5, undefined, "/stockParts");
  if (stocks === undefined) {
    inRange(where, waterParts, 0, 1e5 * stock, undefined, "/waterParts");
    return dilution;
  }
  const parts = arrayOf(`${where}/stocks`, stocks, 1).map((part, i) =>
    positive(`${where}/stocks/${i}`, part, 1e5),
  );
  const sum = parts.reduce((total, part) => total + part, 0);
  if (Math.abs(sum - stock) > 1e-9 * stock) notOneOf(`${where}/stockParts`, [sum], stock);
  // Text holds the parts alone: their sum decides, so that what is written can be read back.
  positive(where, sum, 1e5, undefined, "/stockParts");
  const water = inRange(where, waterParts, 0, 1e5 * sum, undefined, "/waterParts");
  return { stockParts: stock, waterParts: water, stocks: parts };
}

/** ln of the concentration, 0 for undiluted stock and below 0 for every dilution. */
export function logConcentration(dilution: Dilution): number {
  return -Math.log1p(dilution.waterParts / dilution.stockParts);
}

const PARTS = /^\s*\d+(\.\d+)?\s*(:\s*\d+(\.\d+)?\s*|(\+\s*\d+(\.\d+)?\s*)+)$/;

/** Parts between other marks than a plus, which people read in two ways. */
const OTHER = /^\s*(\d+(?:\.\d+)?)\s*(?:\/|to|in|zu|auf)\s*(\d+(?:\.\d+)?)\s*$/i;

/** The longest text of a dilution: a hundred stocks, each with many figures. */
export const LONGEST_TEXT: number = 2000;

/** Reads a dilution from text; `where` names the function and field for the error texts. */
export function dilutionFromText(where: string, text: string, colon?: "plus" | "total"): Dilution {
  // Longer than a document holds: no bath is mixed so.
  if (text.length > LONGEST_TEXT) unreadable(where, DILUTIONS, text);
  const plain = text.includes(",") ? withPoint(text) : text;
  if (!PARTS.test(plain)) {
    if (text.trim().toLowerCase() === "stock") return { stockParts: 1, waterParts: 0 };
    const [, parts, whole] = OTHER.exec(plain) ?? [];
    if (parts !== undefined) plusOrTotal(where, text, Number(parts), Number(whole));
    unreadable(where, DILUTIONS, text);
  }
  const plus = plain.includes("+");
  // Cut once rather than split: this is much of what compensate takes.
  const cut = plain.lastIndexOf(plus ? "+" : ":");
  const stock = plain.slice(0, cut);
  const last = Number(plain.slice(cut + 1));
  const stocks = stock.includes("+") ? stock.split("+").map(Number) : undefined;
  const stockParts = stocks ? stocks.reduce((sum, part) => sum + part) : Number(stock);
  const mark = plus ? "plus" : colon;
  if (mark === undefined) plusOrTotal(where, text, stockParts, last);
  const parts = { stockParts, waterParts: mark === "plus" ? last : fifteen(last - stockParts) };
  return checkedDilution(where, stocks ? { ...parts, stocks } : parts);
}

/** To fifteen digits, as on paper: of 2.7 parts in all 1.7 are water, not 1.7000000000000002. */
export function fifteen(parts: number): number {
  return Number(parts.toPrecision(15));
}

/** Refuses "1:9", which means 1+9 or, of 9 parts in all, 1+8. */
function plusOrTotal(at: string, text: string, stockParts: number, last: number): never {
  // Of fewer parts in all than stock there is no bath.
  const total = last < stockParts ? [] : [`${stockParts}+${fifteen(last - stockParts)}`];
  const readings = [`${stockParts}+${last}`, ...total];
  return refuse(at, "parts-or-total", partsOrTotalText, { ...DILUTIONS, readings }, text, "ambiguous");
}

/** Reads a dilution given as text or as parts. */
export function readDilution(where: string, value: unknown): Dilution {
  if (typeof value === "string") return dilutionFromText(where, value);
  if (typeof value !== "object") unreadable(where, DILUTIONS, value);
  return checkedDilution(where, value as Dilution);
}

/** The table form, prepared: x is −ln(concentration), rising. */
export type ReadyTableLaw = Extract<DilutionLaw, { kind: "table" }> & {
  readonly table: Table;
  readonly walk?: ReadyWalk;
};

/** The power form, prepared: what was learned of its departures can be asked. */
export type ReadyPowerLaw = PowerDilutionLaw & { readonly walk?: ReadyWalk };

/** A law that was checked; a table is sorted and curved. */
export type ReadyDilutionLaw = ReadyPowerLaw | ReadyTableLaw;

/**
 * How far ln(time) departs from a power as a random walk, its standard deviation over one unit of
 * ln(concentration); a scatter that the law states is reached over one doubling.
 */
export function walkSd(scatterLogSd: number | undefined): number {
  return scatterLogSd === undefined ? DEPARTURE_LOG_SD : scatterLogSd / Math.sqrt(Math.LN2);
}

/**
 * The spread in n of a law that was given without one: that of one family of developers over several films.
 */
export const GIVEN_EXPONENT_SD: number = 0.15;

/**
 * How far the slope of a table as a whole is off before the first run, as an exponent (an assumption of this
 * package). Its variance is learned too.
 */
export const TABLE_EXPONENT_SD: number = 0.1;

/** No spread of an exponent is wider. */
export const WIDEST_EXPONENT_SD = 3;

/** How far off the slope of a table may be, as an exponent. */
export const TABLE_EXPONENT_RANGE: readonly [low: number, high: number] = [-3, 3];

/** What is unknown of a table: as much as under the generic law. It goes on along its last two rows. */
const UNREAD: TableUnread = { perX: 0.25, perRootX: 0.19, reach: 0 };

/** Checks a law; a table comes back sorted and curved. */
export function checkedDilutionLaw(at: string, given: unknown): ReadyDilutionLaw {
  const law = checkedOrigin(at, given as DilutionLaw);
  const { kind } = law;
  if (kind === "power") {
    inRange(at, law.exponent, 0, 3, undefined, "/exponent");
    inRange(at, law.sd ?? 0, 0, 3, undefined, "/sd");
    inRange(at, law.scatterLogSd ?? 0, 0, 3, undefined, "/scatterLogSd");
    if (law.departures === undefined) return law;
    const departures = checkedDepartures(`${at}/departures`, law.departures);
    return { ...law, walk: readyWalk("dilution", departures, walkSd(law.scatterLogSd)) };
  }
  if ((kind as unknown) !== "table") notOneOf(`${at}/kind`, ["power", "table"], kind);
  inRange(at, law.exponentOff ?? 0, ...TABLE_EXPONENT_RANGE, undefined, "/exponentOff");
  inRange(at, law.sd ?? 0, 0, WIDEST_EXPONENT_SD, undefined, "/sd");
  const rows = checkedDilutionRows(at, law.rows);
  const ready = { ...law, table: preparedTable(rows, UNREAD) };
  if (law.departures === undefined) return ready;
  const departures = checkedDepartures(`${at}/departures`, law.departures);
  return { ...ready, walk: readyTableWalk(tableAxis(ready), departures) };
}

/** A table as its departures see it, along ln(concentration). */
export function tableAxis({ table }: ReadyTableLaw): TableAxis {
  return {
    name: "dilution",
    rows: table.rows.map(({ x }) => -x).reverse(),
    x: (logC) => logC,
    ...UNREAD,
    spacing: SPACING,
  };
}

/** Dilutions nearer than this in ln(concentration) share one departure: 1+9 and 1+10 are 0.095 apart. */
export const SPACING = 0.09;

const BY_DILUTION: Placing = {
  by: "dilution",
  x: (where, value) => -logConcentration(readDilution(where, value)),
  steepest: 5,
};

/** The rows of a dilution table, checked, sorted from strong to weak: x is −ln(concentration). */
export function checkedDilutionRows(where: string, rows: unknown): readonly TimeKnot[] {
  return tableRows(where, rows, BY_DILUTION);
}
