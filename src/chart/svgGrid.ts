import { lettersText, type Cell, type Cells } from "./cells.js";
import { sizeThatFits, textWidth, widest } from "../picture/letters.js";
import { dot, lineFrom, rectangle, textAt } from "../picture/svgParts.js";
import type { TemperatureUnit } from "../core/cautionTexts.js";
import type { ChartTexts } from "./text.js";
import { timeScale, type TimeScale } from "./timeScale.js";
import type { TimeChart } from "./types.js";

/** A place on the page, mm. */
interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How large what is in a cell is, mm; one size for all cells, so that no time looks more important. */
interface Sizes {
  readonly time: number;
  readonly interval: number;
}

const SIDE = 24;
const HEAD = 9;
const SCALE = 6;
const TALLEST = 24;
const PAD = 2;
const HAIR = 0.2;
const TICK = 2.5;

/** The least height of a line, mm: an interval in it has letters of 5 points. */
const LEAST = 6.5;

/** How high a table of so many lines has to be, mm. */
export const leastHeight = (lines: number): number => HEAD + SCALE + lines * LEAST;

/** The table: temperatures at the left, dilutions on top, a cell each, and the scale of time below. */
export function gridOf(
  { temperaturesC, dilutions: diluted = [""] }: TimeChart,
  { lines }: Cells,
  texts: ChartTexts,
  unit: TemperatureUnit,
  box: Box,
): readonly string[] {
  const dilutions = diluted.map((one) => (one === "" ? "" : texts.dilution(one)));
  const width = (box.width - SIDE) / dilutions.length;
  const height = Math.min(TALLEST, (box.height - HEAD - SCALE) / temperaturesC.length);
  const top = box.y + HEAD;
  const bottom = top + height * temperaturesC.length;
  const all = lines.flat();
  const usable = all.filter(({ row }) => !row.refused);
  const inner = width - 2 * PAD;
  const scale =
    usable.length === 0
      ? undefined
      : timeScale(
          usable.map(({ row }) => row),
          inner,
          TICK,
        );
  const sizes = sizesFor(all, inner, height);
  const left = (column: number): number => box.x + SIDE + column * width;
  const degrees = temperaturesC.map((temperatureC) => texts.temperature(temperatureC, unit));
  const degreeSize = sizeThatFits(widest(degrees), SIDE - 3, Math.min(6, height * 0.55));
  const headSize = sizeThatFits(widest(dilutions), inner, 5.5);
  return [
    ...dilutions.map((text, i) => textAt(left(i) + PAD, top - 2.5, text, { size: headSize, bold: true })),
    ...degrees.map((text, i) =>
      textAt(box.x, top + (i + 0.5) * height + degreeSize * 0.36, text, { size: degreeSize, bold: true }),
    ),
    ...lines.flatMap((cells, i) =>
      cells.flatMap((cell, column) =>
        cellAt(cell, { x: left(column), y: top + i * height, width, height }, sizes, scale),
      ),
    ),
    ...Array.from({ length: temperaturesC.length + 1 }, (_, i) =>
      lineFrom(box.x, top + i * height, box.x + box.width, top + i * height, HAIR),
    ),
    ...dilutions.map((_, i) => lineFrom(left(i), top, left(i), bottom, HAIR)),
    ...(scale === undefined ? [] : dilutions.flatMap((_, i) => ticksAt(left(i) + PAD, bottom, inner, scale))),
  ];
}

/** The largest letters that fit the fullest cell. */
function sizesFor(cells: readonly Cell[], width: number, height: number): Sizes {
  const time = widest(cells.map(({ time: text, letters }) => `${text} ${lettersText(letters)}`));
  const interval = widest(cells.map(({ interval: text }) => text));
  return {
    time: sizeThatFits(time, width, Math.min(8, height * 0.42)),
    interval: sizeThatFits(interval, width, Math.min(4, height * 0.28)),
  };
}

function cellAt(cell: Cell, box: Box, sizes: Sizes, scale: TimeScale | undefined): readonly string[] {
  const { row, time, interval } = cell;
  const letters = lettersText(cell.letters);
  const { x, y, width, height } = box;
  if (row.refused || scale === undefined) return refusedAt(`${time} ${letters}`.trim(), box, sizes);
  const base = y + height * 0.44;
  const lineY = y + height * 0.89;
  const place = (timeS: number): number => x + PAD + (width - 2 * PAD) * scale.at(timeS);
  const after = x + PAD + textWidth(time, sizes.time) * 1.25 + 0.5;
  return [
    textAt(x + PAD, base, time, { size: sizes.time, bold: true }),
    ...(letters === "" ? [] : [textAt(after, base, letters, { size: sizes.time * 0.6 })]),
    textAt(x + PAD, y + height * 0.76, interval, { size: sizes.interval }),
    lineFrom(place(row.lowS), lineY, place(row.highS), lineY, 0.4),
    dot(place(row.timeS), lineY, Math.min(0.9, height * 0.09)),
  ];
}

/** A hatched cell. Its word lies on white, so that the hatching does not run through it. */
function refusedAt(word: string, { x, y, width, height }: Box, { time }: Sizes): readonly string[] {
  const size = Math.min(time, 4.5, height * 0.3, (width * 0.65) / Math.max(1, textWidth(word, 1)));
  const middle = y + height / 2;
  return [
    rectangle(x, y, width, height, "url(#hatched)"),
    rectangle(x + PAD - 0.7, middle - size * 0.65, textWidth(word, size) + 1.4, size * 1.3, "white"),
    textAt(x + PAD, middle + size * 0.36, word, { size }),
  ];
}

function ticksAt(x: number, y: number, width: number, { ticks }: TimeScale): readonly string[] {
  return ticks.flatMap(({ at, text }) => [
    lineFrom(x + at * width, y, x + at * width, y + 1.2, HAIR),
    textAt(x + at * width, y + 4, text, { size: TICK, anchor: "middle" }),
  ]);
}
