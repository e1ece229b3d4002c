/*
 * What a picture covers: the temperatures and times of its edges, and the times that are written.
 */
import type { PictureAxes, PictureDot, PictureRange, PictureRung } from "./types.js";

/** So far beyond the outermost dot the temperatures go on, °C. */
const BEYOND_C = 8;

/** So far beyond the outermost whisker the times go on, as a ratio; and the least ratio of the two edges. */
const BEYOND = 1.25;
const LEAST_SPAN = 6;

/** A whisker takes the edges no farther than this from the dots and arrows, as a ratio. */
const FARTHEST = 20;

/** Few round times for a long scale, more for a short one, s. */
const FEW_S = roundTimes([1, 2, 5, 10, 20, 30], [1, 2, 5, 10, 24, 48, 120, 240, 1000]);
const MORE_S = roundTimes(
  [1, 2, 3, 4, 5, 6, 8, 10, 15, 20, 30, 40],
  [1, 1.5, 2, 3, 4, 6, 8, 12, 24, 36, 48, 72, 120, 240, 480, 1000],
);
const MOST_TICKS = 9;

function roundTimes(steps: readonly number[], hours: readonly number[]): readonly number[] {
  return [...steps, ...steps.map((step) => step * 60), ...hours.map((hour) => hour * 3600)];
}

/** The temperatures of the edges, from those that must be seen. */
export function temperatureEdges(
  { fromC, toC }: PictureRange,
  seenC: readonly number[],
): { readonly fromC: number; readonly toC: number } {
  const low = fromC ?? Math.max(0, Math.floor(Math.min(...seenC) - BEYOND_C));
  const high = toC ?? Math.min(100, Math.ceil(Math.max(...seenC) + BEYOND_C));
  if (low < high) return { fromC: low, toC: high };
  // One edge was given, and lies beyond all that must be seen.
  return fromC === undefined ? { fromC: Math.max(0, high - 1), toC: high } : { fromC: low, toC: low + 1 };
}

/** The times of the edges: they hold both dots, all arrows and whiskers, and some air around them. */
export function timeEdges(
  range: PictureRange,
  dots: readonly PictureDot[],
  rungs: readonly PictureRung[],
): Pick<PictureAxes, "lowS" | "highS" | "ticksS"> {
  const ends = [...dots.map(({ timeS }) => timeS), ...rungs.map(({ endS }) => endS)];
  const lows = [...dots, ...rungs].map(({ lowS }) => lowS);
  const highs = [...dots, ...rungs].map(({ highS }) => highS);
  const least = Math.max(Math.min(...lows) / BEYOND, Math.min(...ends) / FARTHEST);
  const most = Math.min(Math.max(...highs) * BEYOND, Math.max(...ends) * FARTHEST);
  const middle = Math.sqrt(least) * Math.sqrt(most);
  const half = Math.sqrt(Math.max(LEAST_SPAN, most / least));
  const lowS = range.lowS ?? middle / half;
  const highS = range.highS ?? Math.max(middle * half, lowS * LEAST_SPAN);
  const edges = lowS < highS ? { lowS, highS } : { lowS: highS / LEAST_SPAN, highS };
  return { ...edges, ticksS: ticksBetween(edges.lowS, edges.highS) };
}

/** The round times between two edges, s. */
export function ticksBetween(lowS: number, highS: number): readonly number[] {
  const within = (timesS: readonly number[]): readonly number[] =>
    timesS.filter((timeS) => timeS >= lowS && timeS <= highS);
  const more = within(MORE_S);
  return more.length <= MOST_TICKS ? more : within(FEW_S);
}
