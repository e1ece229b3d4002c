/*
 * The one scale of time of a printed chart: logarithmic, the same in every column.
 */
import { formatTime } from "../quantities/formatTime.js";
import { textWidth } from "../picture/letters.js";

/** A scale from a time in s to a share of the width, 0 to 1, with the times to write under it. */
export interface TimeScale {
  readonly at: (timeS: number) => number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

/** Times that people say, from 1 s to 1000 h: few of them, and more for a short scale. */
const FEW_S = roundTimes([1, 2, 5, 10, 20, 30]);
const MORE_S = roundTimes([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 35, 40, 45, 50]);

function roundTimes(steps: readonly number[]): readonly number[] {
  const hours = [1, 2, 5, 10, 24, 48, 120, 240, 1000];
  return [...steps, ...steps.map((step) => step * 60), ...hours.map((hour) => hour * 3600)];
}

/**
 * The scale that holds all intervals.
 *
 * @param width - how long the scale is, mm
 * @param size - height of the letters under it, mm
 */
export function timeScale(
  intervals: readonly { readonly lowS: number; readonly highS: number }[],
  width: number,
  size: number,
): TimeScale {
  const low = Math.log(intervals.reduce((least, { lowS }) => Math.min(least, lowS), Infinity));
  const high = Math.log(intervals.reduce((most, { highS }) => Math.max(most, highS), 0));
  const span = Math.max(high - low, 0.1);
  const from = (low + high - span) / 2;
  const at = (timeS: number): number => (Math.log(timeS) - from) / span;
  const few = ticksAmong(FEW_S, at, width, size);
  return { at, ticks: few.length < 2 ? ticksAmong(MORE_S, at, width, size) : few };
}

/** The ticks whose labels neither leave the scale nor touch each other. */
function ticksAmong(
  timesS: readonly number[],
  at: (timeS: number) => number,
  width: number,
  size: number,
): TimeScale["ticks"] {
  const ticks: { at: number; text: string }[] = [];
  let end = 0;
  for (const timeS of timesS) {
    const text = formatTime(timeS);
    const place = at(timeS) * width;
    const half = textWidth(text, size) / 2;
    if (!(place - half >= end && place + half <= width)) continue;
    end = place + half + size;
    ticks.push({ at: place / width, text });
  }
  return ticks;
}
