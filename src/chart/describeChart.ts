import { formatTime } from "../quantities/formatTime.js";
import { cellsOf, lettersText, type Cell } from "./cells.js";
import { checkedChart } from "./checkedChart.js";
import { chartTexts, type ChartTexts } from "./text.js";
import type { TimeChart } from "./types.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { checkedTexts } from "../text/checkedTexts.js";

/**
 * A chart in lines of text, for a screen or a printer with letters of one width.
 *
 * @param chart - what `timeChart` or `chartRecipe` returns
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for every temperature; °C when left out
 * @returns what is known; the dilutions; a line for each temperature with a time, its interval and the
 * letters of its cautions under each dilution; how to read it; the cautions
 * @throws TypeError when `chart` or a part of it is of the wrong kind
 * @throws RangeError when a figure of it is out of range, or the unit none of the two
 *
 * @remarks Times are rounded as `roundEstimate` does. Cautions of one code and place share a letter and a
 * sentence: the one that passes its limit farthest, with its cell where others say another figure. A caution
 * that is only worth knowing has no letter, and its sentence is that of the first cell that names most. A
 * cell without a time has the letters of its stops alone.
 *
 * @example
 * ```ts
 * const knowledge: Knowledge = { temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } };
 * const baseline = { timeS: 510, temperatureC: 20 };
 * const chart = timeChart({ baseline, knowledge, temperaturesC: [18, 20] });
 * const lines = describeChart(chart);
 * lines[0] // => "Known: 8:30 at 20 °C."
 * lines[1] // => "18 °C  9:45 (8:55 to 10:45)"
 * ```
 */
export function describeChart(
  chart: TimeChart,
  texts: ChartTexts = chartTexts,
  options: TemperatureUnitOptions = {},
): readonly string[] {
  const { known, held = [], temperaturesC, dilutions } = checkedChart("describeChart/chart", chart);
  checkedTexts("describeChart/texts", texts, chartTexts);
  const unit = temperatureUnit("describeChart/options", options) ?? "C";
  const { lines, footnotes } = cellsOf(chart, texts, unit);
  const table = [
    ...(dilutions === undefined ? [] : [["", ...dilutions.map((one) => texts.dilution(one))]]),
    ...lines.map((cells, i) => [texts.temperature(temperaturesC[i] as number, unit), ...cells.map(cellText)]),
  ];
  return [
    texts.known(formatTime(known.timeS), texts.temperature(known.temperatureC, unit), known.dilution),
    ...(held.length === 0 ? [] : [texts.held(held)]),
    ...aligned(table),
    texts.interval,
    ...footnotes.map(({ letter, text }) => (letter === "" ? text : `${letter}  ${text}`)),
    texts.safety,
  ];
}

function cellText({ time, interval, letters }: Cell): string {
  const span = interval === "" ? "" : ` (${interval})`;
  return `${time}${span} ${lettersText(letters)}`.trimEnd();
}

/** Columns of one width each, two blanks between them. */
function aligned(table: readonly (readonly string[])[]): readonly string[] {
  const widths = (table[0] as readonly string[]).map((_, column) =>
    table.reduce((widest, cells) => Math.max(widest, (cells[column] as string).length), 0),
  );
  return table.map((cells) =>
    cells
      .map((cell, column) => cell.padEnd(widths[column] as number))
      .join("  ")
      .trimEnd(),
  );
}
