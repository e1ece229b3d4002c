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
 * one that passes it farthest, with its cell where the others say another figure; of notes the one that names
 * most.
 */
export function cellsOf(chart: TimeChart, texts: ChartTexts, unit: TemperatureUnit): Cells {
  const { temperaturesC, dilutions, rows } = chart;
  const sentenceOf = (caution: Caution): string =>
    `${texts.cautions.severities[caution.severity]}: ${cautionSentence(caution, texts.cautions, unit)}`;
  const said = rows.map((row) => new Map(saidOf(row).map((caution) => [keyOf(caution), caution])));
  const kinds = kindsIn(rows, said);
  const lettered = kinds.filter(({ caution }) => caution.severity !== "note");
  const letterOf = new Map(lettered.map(({ key }, i) => [key, letter(i)]));
  const cell = (row: TimeChartRow, place: number): Cell => {
    const keys = said[place] as ReadonlyMap<string, Caution>;
    const letters = [...letterOf].filter(([key]) => keys.has(key)).map(([, one]) => one);
    const { time, interval } = row.refused ? { time: texts.noTime, interval: "" } : shown(row, texts);
    return { row, time, interval, letters };
  };
  const columns = dilutions?.length ?? 1;
  const lines = temperaturesC.map((_, line) =>
    Array.from({ length: columns }, (__, i) => {
      const place = i * temperaturesC.length + line;
      return cell(rows[place] as TimeChartRow, place);
    }),
  );
  const times = rows.filter(({ refused }) => !refused).length;
  const footnotes = kinds.map(({ key, caution, row, alike, cells }) => {
    const one = letterOf.get(key) ?? "";
    // A letter stands at each cell that it is about; what is worth knowing has none.
    const everywhere = alike && (one !== "" || cells >= times);
    const where = everywhere
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

/**
 * What cautions that share a letter have in common: all that their sentence names but the figures. Below a
 * limit is another sentence than above it.
 */
function keyOf(caution: Caution): string {
  const { severity, code, path } = caution;
  if (severity === "note") return `note ${code}`;
  const words = named(caution).filter((value) => typeof value !== "number");
  return [severity, code, path, Math.sign(past(caution)), ...words].map(String).join(" ");
}

/** All that the data of a caution name. */
const named = ({ data }: Caution): readonly unknown[] => Object.values(data ?? {}).flat();

/** Cautions that share a letter. */
interface Kind {
  readonly key: string;
  /** the one that passes its limit farthest; of notes the one that names most */
  readonly caution: Caution;
  /** the cell that it is about */
  readonly row: TimeChartRow;
  /** all of them say the same */
  readonly alike: boolean;
  /** in so many cells there is one */
  readonly cells: number;
}

/** The kinds of cautions, gravest first. */
function kindsIn(
  rows: readonly TimeChartRow[],
  said: readonly ReadonlyMap<string, Caution>[],
): readonly Kind[] {
  const found = new Map<string, Kind>();
  rows.forEach((row, place) => {
    for (const [key, caution] of said[place] as ReadonlyMap<string, Caution>) {
      const held = found.get(key) ?? { key, caution, row, alike: true, cells: 0 };
      const worse =
        caution.severity === "note"
          ? named(caution).length > named(held.caution).length
          : Math.abs(past(caution)) > Math.abs(past(held.caution));
      found.set(key, {
        ...(worse ? { key, caution, row } : held),
        alike: held.alike && held.caution.message === caution.message,
        cells: held.cells + 1,
      });
    }
  });
  const byCaution = new Map([...found.values()].map((kind) => [kind.caution, kind]));
  return gravestFirst([...byCaution.keys()]).map((caution) => byCaution.get(caution) as Kind);
}

/** How far above its limit, below it negative; 0 where there are no such figures. */
const past = ({ limit, actual }: Caution): number =>
  typeof limit === "number" && typeof actual === "number" ? actual - limit : 0;

/** a to z, then aa, ab and so on. */
function letter(i: number): string {
  const last = String.fromCharCode(97 + (i % 26));
  return i < 26 ? last : letter(Math.floor(i / 26) - 1) + last;
}
