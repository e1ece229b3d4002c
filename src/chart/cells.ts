/*
 * What a chart shows, for text and for print alike: rounded times, and a letter for each caution.
 */
import { cautionSentence } from "../text/cautionSentence.js";
import { gravity, refuses, type Caution } from "../core/caution.js";
import type { TemperatureUnit } from "../core/cautionTexts.js";
import { clockText } from "../quantities/clockText.js";
import { roundEstimate } from "../quantities/roundEstimate.js";
import type { ChartTexts } from "./text.js";
import type { TimeChart, TimeChartRow } from "./types.js";

/** A cell as it is shown. */
export interface Cell {
  readonly row: TimeChartRow;
  /** the time; the word for none where it is refused */
  readonly time: string;
  /** `"16:00 to 29:00"`; empty where the time is refused */
  readonly interval: string;
  /** the letters of its cautions: `"a"`, `"ab"` */
  readonly letters: string;
}

/** A caution under the chart. */
export interface Footnote {
  /** empty for what is only worth knowing */
  readonly letter: string;
  readonly text: string;
}

/** The cells, a list for each temperature with one for each dilution, and what is under them. */
export interface Cells {
  readonly lines: readonly (readonly Cell[])[];
  readonly footnotes: readonly Footnote[];
}

/**
 * The chart in words. Cautions of one sentence share a letter: of one English sentence, so that every
 * language has the same letters. Notes of one code share the sentence of the first cell that has it.
 */
export function cellsOf(chart: TimeChart, texts: ChartTexts, unit: TemperatureUnit): Cells {
  const { temperaturesC, dilutions, rows } = chart;
  const sentenceOf = (caution: Caution): string =>
    `${texts.cautions.severities[caution.severity]}: ${cautionSentence(caution, texts.cautions, unit)}`;
  const firsts = firstOfEach(rows);
  const lettered = firsts.filter(({ caution }) => caution.severity !== "note");
  const letterOf = new Map(lettered.map(({ caution }, i) => [keyOf(caution), letter(i)]));
  const cell = (row: TimeChartRow): Cell => {
    const keys = new Set(saidOf(row).map(keyOf));
    const letters = [...letterOf].filter(([key]) => keys.has(key)).map(([, one]) => one);
    const { time, interval } = row.refused ? { time: texts.noTime, interval: "" } : shown(row, texts);
    return { row, time, interval, letters: letters.join(letters.some((one) => one.length > 1) ? "," : "") };
  };
  const columns = dilutions?.length ?? 1;
  const lines = temperaturesC.map((_, line) =>
    Array.from({ length: columns }, (__, i) => cell(rows[i * temperaturesC.length + line] as TimeChartRow)),
  );
  const footnotes = firsts.map(({ caution, row }) => {
    const one = letterOf.get(keyOf(caution)) ?? "";
    const everywhere = rows.every(
      (each) => each.refused || saidOf(each).some(({ message }) => message === caution.message),
    );
    // Its letter stands at each cell that it is about.
    const where =
      everywhere || one !== ""
        ? ""
        : ` (${texts.where(texts.temperature(row.temperatureC, unit), row.dilution)})`;
    return { letter: one, text: sentenceOf(caution) + where };
  });
  return { lines, footnotes };
}

/** What is said of a cell. Where there is no time, only what stops it: all else was about that time. */
export const saidOf = ({ refused, cautions = [] }: TimeChartRow): readonly Caution[] =>
  refused ? cautions.filter((one) => refuses([one])) : cautions;

/** A time and its interval, rounded together. */
export function shown(
  estimate: Pick<TimeChartRow, "timeS" | "lowS" | "highS">,
  texts: Pick<ChartTexts, "to" | "beyond">,
): { readonly time: string; readonly interval: string } {
  const { timeS, lowS, highS } = roundEstimate(estimate);
  const clock = (value: number): string => clockText(value, texts.beyond);
  return { time: clock(timeS), interval: `${clock(lowS)} ${texts.to} ${clock(highS)}` };
}

/** What cautions that share a letter have in common. */
const keyOf = ({ severity, code, message }: Caution): string =>
  severity === "note" ? `note ${code}` : `${severity} ${code} ${message}`;

/** The first caution of each key, gravest first. */
function firstOfEach(
  rows: readonly TimeChartRow[],
): readonly { readonly caution: Caution; readonly row: TimeChartRow }[] {
  const found = new Map<string, { caution: Caution; row: TimeChartRow }>();
  for (const row of rows)
    for (const caution of saidOf(row)) {
      if (!found.has(keyOf(caution))) found.set(keyOf(caution), { caution, row });
    }
  return [...found.values()].sort((a, b) => gravity(a.caution.severity) - gravity(b.caution.severity));
}

/** a to z, then aa, ab and so on. */
function letter(i: number): string {
  const last = String.fromCharCode(97 + (i % 26));
  return i < 26 ? last : letter(Math.floor(i / 26) - 1) + last;
}
