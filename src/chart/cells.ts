/*
 * What a chart shows, for text and for print alike: rounded times, and a letter for each caution.
 */
import { cautionSentence } from "../text/cautionSentence.js";
import { gravestFirst, refuses, type Caution } from "../core/caution.js";
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
  /** the letters of its cautions */
  readonly letters: readonly string[];
}

/** Letters side by side; between longer ones there is a comma. */
export const lettersText = (letters: readonly string[]): string =>
  letters.join(letters.some((one) => one.length > 1) ? "," : "");

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
 * The chart in words. Cautions of one kind share a letter and one sentence: of those that pass a limit the
 * one that passes it farthest, with its cell where the others say another figure; of notes that of the first
 * cell.
 */
export function cellsOf(chart: TimeChart, texts: ChartTexts, unit: TemperatureUnit): Cells {
  const { temperaturesC, dilutions, rows } = chart;
  const sentenceOf = (caution: Caution): string =>
    `${texts.cautions.severities[caution.severity]}: ${cautionSentence(caution, texts.cautions, unit)}`;
  const firsts = oneOfEach(rows);
  const lettered = firsts.filter(({ caution }) => caution.severity !== "note");
  const letterOf = new Map(lettered.map(({ caution }, i) => [keyOf(caution), letter(i)]));
  const cell = (row: TimeChartRow): Cell => {
    const keys = new Set(saidOf(row).map(keyOf));
    const letters = [...letterOf].filter(([key]) => keys.has(key)).map(([, one]) => one);
    const { time, interval } = row.refused ? { time: texts.noTime, interval: "" } : shown(row, texts);
    return { row, time, interval, letters };
  };
  const columns = dilutions?.length ?? 1;
  const lines = temperaturesC.map((_, line) =>
    Array.from({ length: columns }, (__, i) => cell(rows[i * temperaturesC.length + line] as TimeChartRow)),
  );
  const footnotes = firsts.map(({ caution, row }) => {
    const key = keyOf(caution);
    const one = letterOf.get(key) ?? "";
    const same = ({ message }: Caution): boolean => message === caution.message;
    // A letter stands at each cell that it is about.
    const alike =
      one === ""
        ? rows.every((each) => each.refused || saidOf(each).some(same))
        : rows.every((each) => saidOf(each).every((other) => keyOf(other) !== key || same(other)));
    const where = alike ? "" : ` (${texts.where(texts.temperature(row.temperatureC, unit), row.dilution)})`;
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

/**
 * What cautions that share a letter have in common: all that their sentence names but the figures. Below a
 * limit is another sentence than above it.
 */
function keyOf({ severity, code, path, limit = 0, actual = 0, data }: Caution): string {
  if (severity === "note") return `note ${code}`;
  const named: readonly unknown[] = Object.values(data ?? {}).flat();
  const words = named.filter((value) => typeof value !== "number");
  return [severity, code, path, Math.sign(actual - limit), ...words].join(" ");
}

/** A caution and the cell that it is about. */
interface Said {
  readonly caution: Caution;
  readonly row: TimeChartRow;
}

/** One caution of each key, gravest first: the first, unless another passes the limit farther. */
function oneOfEach(rows: readonly TimeChartRow[]): readonly Said[] {
  const found = new Map<string, Said>();
  for (const row of rows)
    for (const caution of saidOf(row)) {
      const held = found.get(keyOf(caution));
      if (held === undefined || (caution.severity !== "note" && past(caution) > past(held.caution)))
        found.set(keyOf(caution), { caution, row });
    }
  const all = new Map([...found.values()].map((said) => [said.caution, said]));
  return gravestFirst([...all.keys()]).map((caution) => all.get(caution) as Said);
}

/** How far the limit is passed. */
const past = ({ limit = 0, actual = 0 }: Caution): number => Math.abs(actual - limit);

/** a to z, then aa, ab and so on. */
function letter(i: number): string {
  const last = String.fromCharCode(97 + (i % 26));
  return i < 26 ? last : letter(Math.floor(i / 26) - 1) + last;
}
