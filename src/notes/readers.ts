/*
 * How the cells of each column are read.
 */
import { parseAge } from "../age/parseAge.js";
import { parseAgitation } from "../agitation/parseAgitation.js";
import type { Agitation } from "../agitation/agitation.js";
import { inRange, positive, unreadable } from "../core/guards.js";
import { parseDilution, type ParseDilutionOptions } from "../dilution/parseDilution.js";
import type { Run } from "../learning/types.js";
import { isoDate } from "../quantities/isoDate.js";
import { numberFromText } from "../quantities/numberText.js";
import { parseTemperature } from "../quantities/parseTemperature.js";
import { parseTime } from "../quantities/parseTime.js";
import { bathTemperature } from "../temperature/law.js";
import { parseUse } from "../use/parseUse.js";
import { judgement } from "./judgement.js";
import type { Readers } from "./noteCells.js";

/** What the readers have to be told. */
export interface ReaderOptions extends ParseDilutionOptions {
  /** the year of a date without one */
  readonly year?: number | undefined;
}

/** The reader of each column that holds more than plain words. */
export function readersFor({ year, ...colon }: ReaderOptions): Readers {
  const figure = (least: number, most: number) => (text: string) => {
    const value = numberFromText(text, "");
    return least === 0 ? positive("", value, most) : inRange("", value, least, most);
  };
  return new Map<string, (text: string) => unknown>([
    ["time", (text) => positive("", parseTime(withFraction(text)), 1e6, "timeS")],
    ["temperature", (text) => bathTemperature("", parseTemperature(text))],
    ["dilution", (text) => dilutionCell(text, colon)],
    ["agitation", (text) => agitationCell(withFraction(text))],
    ["used", (text) => (isFresh(text) ? 0 : parseUse(text))],
    ["age", (text) => (isFresh(text) ? 0 : parseAge(withFraction(text)))],
    ["outcome", (text) => judgement(withFraction(text))],
    ["date", (text) => dateCell(text, year)],
    ["printed", printedCell],
    ["appearance", (text) => positive("", parseTime(withFraction(text)), 1e6, "timeS")],
    ["gamma", figure(0, 10)],
    ["density", figure(0, 10)],
    ["wanted", figure(0, 10)],
    ["factor", figure(1, 1000)],
    ["sd", figure(0, 3)],
  ]);
}

/** A bath that nothing was developed in yet, or just mixed: "fresh", or 0 in any unit. */
function isFresh(text: string): boolean {
  return /^(?:fresh(?:ly mixed)?|new|unused|none|0(?:\s.*)?)$/i.test(text);
}

const QUARTERS: Readonly<Record<string, string>> = {
  "1/2": ".5",
  "1/4": ".25",
  "3/4": ".75",
  "\u00bd": ".5",
  "\u00bc": ".25",
  "\u00be": ".75",
};

/** Halves and quarters as decimals: "8 1/2 min" and "8½ min" are "8.5 min", "1/2 h" is "0.5 h". */
function withFraction(text: string): string {
  return text.replace(
    /(?:(?<![\d/.])(\d+)\s+|(?<![\d/.]))(1\/2|1\/4|3\/4)(?![\d/])|(\d*)\s*([\u00bd\u00bc\u00be])/,
    (_, whole: string | undefined, slashed: string | undefined, before: string | undefined, sign: string) =>
      `${whole ?? (before || "0")}${QUARTERS[slashed ?? sign] as string}`,
  );
}

/** "constant" is continuous, and "2/min" every 30 s. */
function agitationCell(text: string): Agitation {
  if (/^(?:constant|continuous)(?:ly)?$/i.test(text)) return "continuous";
  const times =
    /^(\d+(?:\.\d+)?)\s*(?:x|\u00d7|times?)?\s*(?:\/|per|a|each|every)\s*(?:1\s*)?m(?:in(?:ute)?)?\.?$/i.exec(
      text,
    )?.[1];
  if (times === undefined) return parseAgitation(text);
  return { everyS: positive("", 60 / positive("", Number(times), 1000), 3600, "timeS") };
}

/**
 * The dilution as text where the text is plain, so that notes stay readable; as parts where a colon had to be
 * read.
 */
function dilutionCell(text: string, options: ParseDilutionOptions): Run["dilution"] {
  const parts = parseDilution(text, options);
  return text.includes(":") ? parts : text;
}

/** An ISO date, or day and month with points, "3.7." or "3.7.2025", whose year may come from the option. */
function dateCell(text: string, year: number | undefined): string {
  const [, day, month, own] = /^(\d{1,2})\.\s*(\d{1,2})\.?\s*(\d{4})?$/.exec(text) ?? [];
  const full = own ?? year;
  if (day === undefined || month === undefined) return isoDate("", text);
  if (full === undefined)
    unreadable("", "date", ["2024-07-03"], "a date with its year (or give the option year)", text);
  return isoDate("", `${full}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`);
}

/** Whether the run is a row that was printed, and not an own one. */
function printedCell(text: string): true | undefined {
  if (/^(?:yes|y|x|true|printed|1)$/i.test(text)) return true;
  if (/^(?:no|n|false|own|-|0)$/i.test(text)) return undefined;
  return unreadable("", "yes or no", ["yes", "no"], '"yes" or "no"', text);
}
