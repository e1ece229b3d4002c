/*
 * The one scale of time of a printed chart: logarithmic, the same in every column.
 */
import { formatTime } from "../quantities/formatTime.js";

/** A scale from a time in s to a share of the width, 0 to 1, with the times to write under it. */
export interface TimeScale {
  readonly at: (timeS: number) => number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

/** Times that people say: s, min, h. */
const ROUND_S = [
  ...[1, 2, 5, 10, 20, 30],
  ...[1, 2, 5, 10, 20, 30].map((minutes) => minutes * 60),
  ...[1, 2, 5, 10, 24, 48, 120, 240, 1000].map((hours) => hours * 3600),
];

/**
 * The scale that holds all intervals.
 *
 * @param apart - the least distance between two ticks, as a share of the width
 */
export function timeScale(
  intervals: readonly { readonly lowS: number; readonly highS: number }[],
  apart: number,
): TimeScale {
  const low = Math.log(intervals.reduce((least, { lowS }) => Math.min(least, lowS), Infinity));
  const high = Math.log(intervals.reduce((most, { highS }) => Math.max(most, highS), 0));
  const span = Math.max(high - low, 0.1);
  const from = (low + high - span) / 2;
  const at = (timeS: number): number => (Math.log(timeS) - from) / span;
  const ticks: { at: number; text: string }[] = [];
  for (const timeS of ROUND_S) {
    const place = at(timeS);
    const last = ticks.at(-1);
    if (place < 0 || place > 1 || (last !== undefined && place - last.at < apart)) continue;
    ticks.push({ at: place, text: formatTime(timeS) });
  }
  return { at, ticks };
}
