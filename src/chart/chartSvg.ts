import { checkedTexts } from "../text/checkedTexts.js";
import { isText, plainObject, wrongCount } from "../core/guards.js";
import { formatTime } from "../quantities/formatTime.js";
import { temperatureUnit } from "../quantities/parseTemperature.js";
import { cellsOf, type Cells, type Footnote } from "./cells.js";
import { checkedChart } from "./checkedChart.js";
import { gridOf, leastHeight } from "./svgGrid.js";
import { linesThatFit, sizeThatFits } from "../picture/letters.js";
import { escaped, textAt } from "../picture/svgParts.js";
import { chartTexts, type ChartTexts } from "./text.js";
import type { TimeChart } from "./types.js";

/** What else a printed page says. */
export interface ChartSvgOptions {
  /** the heading; that of the catalogue when left out */
  readonly title?: string | undefined;
  /** the catalogue of another language; English when left out */
  readonly texts?: ChartTexts | undefined;
  /** for every temperature: `"C"` when left out */
  readonly unit?: "C" | "F" | undefined;
}

/** A page, A4 upright (ISO 216:2007), mm. */
const PAGE = { width: 210, height: 297, margin: 14 };
const INNER = PAGE.width - 2 * PAGE.margin;

const MOST_TEMPERATURES = 20;
const MOST_DILUTIONS = 5;

/** Small print, mm: 9 points. */
const SMALL = 3.2;
const LEADING = 4.3;
/** Between the chart and what is under it. */
const GAP = 3;

/**
 * A chart as a page to print: one A4 page, black on white, as SVG text.
 *
 * @param chart - what `timeChart` or `chartRecipe` returns
 * @param options - a heading, and the catalogue of another language
 * @returns an SVG document of 210 × 297 mm: a line for each temperature, a column for each dilution, each
 * time with its interval as text and as a line; what must not be used is hatched; cautions under the chart
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a figure is out of range, or more than 20 temperatures or 5 dilutions are to go on
 * the page
 *
 * @remarks Times are rounded as `roundEstimate` does. All columns share one logarithmic scale of time.
 * Cautions share letters as in `describeChart`; where they do not fit, the gravest are printed, and the
 * others counted and their letters left out.
 *
 * @example
 * ```ts
 * const chart = timeChart({ baseline: { timeS: 510, temperatureC: 20 }, temperaturesC: [18, 20] });
 * chartSvg(chart).includes('width="210mm" height="297mm"') // => true
 * ```
 */
export function chartSvg(chart: TimeChart, options: ChartSvgOptions = {}): string {
  const { known, held = [], temperaturesC, dilutions = [] } = checkedChart("chartSvg/chart", chart);
  const { title, texts = chartTexts } = plainObject("chartSvg/options", options) as ChartSvgOptions;
  const unit = temperatureUnit("chartSvg/options", options) ?? "C";
  if (title !== undefined) isText("chartSvg/options/title", title);
  checkedTexts("chartSvg/options/texts", texts, chartTexts);
  fits("temperaturesC", temperaturesC.length, MOST_TEMPERATURES);
  fits("dilutions", dilutions.length, MOST_DILUTIONS);
  const cells = cellsOf(chart, texts, unit);
  const heading = title ?? texts.title;
  const start = texts.known(
    formatTime(known.timeS),
    texts.temperature(known.temperatureC, unit),
    known.dilution,
  );
  const others = held.length === 0 ? [] : [texts.held(held)];
  const top = [start, ...others, ...readings(cells, texts)].flatMap((line) =>
    linesThatFit(line, INNER, SMALL),
  );
  const gridY = PAGE.margin + 14 + top.length * LEADING;
  const free = PAGE.height - PAGE.margin - GAP - gridY - leastHeight(temperaturesC.length);
  const { shown, notes } = footnoteLines(cells.footnotes, texts, Math.floor(free / LEADING));
  const foot = PAGE.height - PAGE.margin - notes.length * LEADING;
  const body = [
    ...headingAt(heading),
    ...lines(top, PAGE.margin + 13),
    ...gridOf(chart, withLetters(cells, shown), texts, unit, {
      x: PAGE.margin,
      y: gridY,
      width: INNER,
      height: foot - gridY - GAP,
    }),
    ...lines(notes, foot + LEADING),
  ];
  const size = `width="${PAGE.width}mm" height="${PAGE.height}mm" viewBox="0 0 ${PAGE.width} ${PAGE.height}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} role="img" font-family="sans-serif" fill="black">`,
    `<title>${escaped(`${heading}. ${start}`)}</title>`,
    // Lines, not tints: they print on anything and can be told apart by eye without colour.
    '<defs><pattern id="hatched" width="2.4" height="2.4" patternUnits="userSpaceOnUse">',
    '<path d="M0 2.4L2.4 0M-0.6 0.6L0.6 -0.6M1.8 3L3 1.8" ' +
      'stroke="black" stroke-width="0.35"/></pattern></defs>',
    `<rect width="${PAGE.width}" height="${PAGE.height}" fill="white"/>`,
    ...body,
    "</svg>",
    "",
  ].join("\n");
}

function fits(field: string, count: number, most: number): void {
  if (count > most) wrongCount(`chartSvg/chart/${field}`, count, { most });
}

/** How to read what the page holds. */
function readings({ lines: table }: Cells, texts: ChartTexts): readonly string[] {
  const all = table.flat();
  return [
    ...(all.some(({ row }) => !row.refused) ? [texts.interval, texts.drawn] : []),
    ...(all.some(({ row }) => row.refused) ? [texts.hatched] : []),
  ];
}

/** The heading as large as its length allows; what is longer than two small lines is cut. */
function headingAt(heading: string): readonly string[] {
  const size = Math.max(4.5, sizeThatFits(heading, INNER, 8));
  const [first = ""] = linesThatFit(heading, INNER, size);
  return [textAt(PAGE.margin, PAGE.margin + 7, first, { size, bold: true })];
}

function lines(texts: readonly string[], y: number): readonly string[] {
  return texts.map((text, i) => textAt(PAGE.margin, y + i * LEADING, text, { size: SMALL }));
}

/** The lines under the chart: cautions, gravest first, as many as there is place for. */
function footnoteLines(
  footnotes: readonly Footnote[],
  texts: ChartTexts,
  most: number,
): { readonly shown: readonly Footnote[]; readonly notes: readonly string[] } {
  const safety = linesThatFit(texts.safety, INNER, SMALL);
  const all = footnotes.map(({ letter, text }) =>
    linesThatFit(letter === "" ? text : `${letter}: ${text}`, INNER, SMALL),
  );
  const left = most - safety.length;
  // One line says how many are left out.
  const place = all.flat().length > left ? left - 1 : left;
  const kept: string[] = [];
  let shown = 0;
  for (const more of all) {
    if (kept.length + more.length > place) break;
    kept.push(...more);
    shown += 1;
  }
  const rest = shown < all.length ? [texts.more(all.length - shown)] : [];
  return { shown: footnotes.slice(0, shown), notes: [...kept, ...rest, ...safety] };
}

/** The cells with those letters alone that have their line. */
function withLetters(cells: Cells, shown: readonly Footnote[]): Cells {
  const explained = new Set(shown.map(({ letter }) => letter));
  const lines = cells.lines.map((line) =>
    line.map((cell) => ({ ...cell, letters: cell.letters.filter((one) => explained.has(one)) })),
  );
  return { ...cells, lines };
}
