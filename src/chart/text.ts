/*
 * Module: chart. Every English sentence of a chart: a catalogue of the same shape says it in another
 * language.
 */
import { describeCautions } from "../text/describeCautions.js";
import type { Caution } from "../core/caution.js";
import { formatTemperature } from "../quantities/formatTemperature.js";

/** A catalogue: all that a chart says, in one language. */
export interface ChartTexts {
  /** the heading of a page that was given no other */
  readonly title: string;
  /** what the chart starts from; time, temperature and dilution are written already */
  readonly known: (time: string, temperature: string, dilution: string | undefined) => string;
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
  /** the sentence of a caution */
  readonly caution: (caution: Caution) => string;
  /** how many cautions found no place on the page */
  readonly more: (count: number) => string;
  /** what hatching means */
  readonly hatched: string;
  /** what the line and the dot in a cell mean */
  readonly drawn: string;
  /** the caution for those who handle the chemicals */
  readonly safety: string;
  /** a temperature in °C */
  readonly temperature: (temperatureC: number) => string;
}

/** The English of a chart. */
export const chartTexts: ChartTexts = /* @__PURE__ */ Object.freeze({
  title: "How long to develop",
  known: (time: string, temperature: string, dilution: string | undefined) =>
    `Known: ${time} at ${temperature}${dilution === undefined ? "" : `, ${dilution}`}.`,
  interval: "Nine times in ten the right time lies within the interval beside it.",
  noTime: "no time",
  to: "to",
  beyond: "months",
  where: (temperature: string, dilution: string | undefined) =>
    `at ${temperature}${dilution === undefined ? "" : `, ${dilution}`}`,
  caution: (caution: Caution) => describeCautions([withoutPath(caution)])[0] as string,
  more: (count: number) =>
    count === 1
      ? "One more caution is in the chart's data."
      : `${count} more cautions are in the chart's data.`,
  hatched: "Hatched: do not use.",
  drawn: "The dot is the time and the line its interval, on one scale for all.",
  safety: "Handle all chemicals as their safety data sheets and your local codes say.",
  temperature: (temperatureC: number) => formatTemperature(temperatureC),
});

/** On a wall nobody can follow a path into data. */
function withoutPath({ code, severity, message }: Caution): Caution {
  return { code, severity, message };
}
