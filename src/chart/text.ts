/*
 * Module: chart. Every English sentence of a chart: a catalogue of the same shape says it in another
 * language.
 */
import type { CautionTexts, TemperatureUnit } from "../core/cautionTexts.js";
import { degrees } from "../core/digits.js";
import { safetyText } from "../core/safety.js";
import { answerTexts, causeText, type AnswerTexts } from "../text/answerTexts.js";
import { englishCautions } from "../text/englishCautions.js";
import type { TimeChartHeld } from "./types.js";

/** A catalogue: all that a chart says, in one language. */
export interface ChartTexts {
  /** the heading of a page that was given no other */
  readonly title: string;
  /** what the chart starts from; time, temperature and dilution are written already */
  readonly known: (time: string, temperature: string, dilution: string | undefined) => string;
  /** what else is otherwise than at the known time, in every cell */
  readonly held: (conditions: readonly TimeChartHeld[]) => string;
  /** how to read a time and the two beside it */
  readonly interval: string;
  /** what is in the place of a time that is refused */
  readonly noTime: string;
  /** between the two ends of an interval */
  readonly to: string;
  /** for a time that no clock shows */
  readonly beyond: string;
  /** where a caution was first met, behind its sentence */
  readonly where: (temperature: string, dilution: string | undefined) => string;
  /** the cautions: how grave they are, and their sentences */
  readonly cautions: CautionTexts;
  /** how many cautions found no place on the page */
  readonly more: (count: number) => string;
  /** what hatching means */
  readonly hatched: string;
  /** what the line and the dot in a cell mean */
  readonly drawn: string;
  /** gloves, air, silver and data sheets, in one line */
  readonly safety: string;
  /** a temperature, in the unit that people see */
  readonly temperature: (temperatureC: number, unit: TemperatureUnit) => string;
  /** a dilution as text, over its column */
  readonly dilution: (dilution: string) => string;
}

/** A cause and its side: "age 3 h", or what a fresh bath is called. No side of a chart is a temperature. */
export function heldText({ cause, to }: TimeChartHeld, texts: AnswerTexts, fresh: string): string {
  if (cause === "fresh") return fresh;
  const named = causeText(cause, to, texts);
  const short = to === undefined ? undefined : texts.side(cause, to, "C");
  return short === undefined ? named : `${named} ${short}`;
}

/** The English of a chart. */
export const chartTexts: ChartTexts = /* @__PURE__ */ Object.freeze({
  title: "How long to develop",
  known: (time: string, temperature: string, dilution: string | undefined) =>
    `Known: ${time} at ${temperature}${dilution === undefined ? "" : `, ${dilution}`}.`,
  held: (conditions: readonly TimeChartHeld[]) =>
    `All times are for ${conditions.map((one) => heldText(one, answerTexts, "a fresh bath")).join(", ")}.`,
  interval: "Nine times in ten the right time lies within the interval beside it.",
  noTime: "no time",
  to: "to",
  beyond: "months",
  where: (temperature: string, dilution: string | undefined) =>
    `at ${temperature}${dilution === undefined ? "" : `, ${dilution}`}`,
  cautions: englishCautions,
  more: (count: number) =>
    count === 1
      ? "One more caution is in the chart's data."
      : `${count} more cautions are in the chart's data.`,
  hatched: "Hatched: do not use.",
  drawn: "The dot is the time and the line its interval, on one scale for all.",
  safety: safetyText,
  temperature: (temperatureC: number, unit: TemperatureUnit) => degrees(temperatureC, unit),
  dilution: (dilution: string) => dilution,
});
