/*
 * Where the parts of a picture are, in the units of its viewBox.
 */
import { linesThatFit, textWidth } from "./letters.js";
import type { DrawingOptions, PictureLayout } from "./options.js";
import type { AnswerPicture } from "./types.js";
import type { PictureRungWords } from "./text.js";
import type { PictureWords } from "./words.js";

/** Heights of letters. */
export const LABEL = 13;
export const RUNG = 15;
export const HEADING = 17;

const LEADING = 19;
const SIDE = 42;
const TICKS = 24;
const END = 10;
const ARROW = 27;
const GAP = 12;
const MARGIN = 16;
const BOX = { width: 54, height: 32, gap: 6 };

/** A line of a rung: its cause, and behind it or alone what it rests on. */
export interface RungLine {
  readonly cause: string;
  readonly basis: string;
}

/** The lines of a rung, and its height. */
export interface RungFrame {
  readonly lines: readonly RungLine[];
  readonly height: number;
}

/** The layout with what only the drawing needs. */
export interface Frame extends PictureLayout {
  readonly margin: number;
  readonly rungs: readonly RungFrame[];
  /** feet of the lines above and below the picture */
  readonly heading: readonly { readonly text: string; readonly y: number }[];
  readonly foot: readonly { readonly text: string; readonly y: number }[];
}

/** Lays a picture out. */
export function frameOf(picture: AnswerPicture, words: PictureWords, options: DrawingOptions): Frame {
  const { parts, width, standalone, heading, foot = [] } = options;
  const margin = standalone ? MARGIN : 0;
  const inner = width - 2 * margin;
  const left = margin + SIDE;
  const right = margin + inner - END;
  let y = margin;
  const headings =
    heading === undefined
      ? []
      : linesThatFit(heading, inner, HEADING).map((text) => ({ text, y: (y += HEADING + 5) - 4 }));
  y += headings.length > 0 ? 6 : 0;
  const [asPicture, asLadder] = [parts.includes("picture"), parts.includes("ladder")];
  if (asPicture || asLadder) y += TICKS;
  const frame = { plot: undefined, ladder: undefined, strip: undefined } as {
    -readonly [Part in "plot" | "ladder" | "strip"]: PictureLayout[Part];
  };
  if (asPicture) {
    const height = options.plotHeight ?? Math.max(200, Math.min(300, inner * 0.38));
    frame.plot = { top: y, bottom: y + height };
    y += height + GAP;
  }
  const rungs = asLadder ? words.rungs.map((rung) => rungFrame(rung, inner)) : [];
  if (asLadder) {
    const top = y;
    const places = rungs.map(({ height }) => {
      const place = { top: y, bottom: y + height, arrowY: y + height - ARROW / 2 + 1 };
      y += height;
      return place;
    });
    if (picture.refused) y += LEADING + GAP;
    frame.ladder = { top, bottom: y, rungs: places };
    y += GAP;
  }
  if (parts.includes("strip") && picture.strip !== undefined) {
    const top = y;
    const { timesS } = picture.strip;
    const boxTop = top + LEADING + 30;
    const place = placeOn(picture, left, right);
    const boxes = boxesAt(timesS.map(place), margin, margin + inner).map(([from, to], i) => ({
      timeS: timesS[i] as number,
      left: from,
      right: to,
      top: boxTop,
      bottom: boxTop + BOX.height,
    }));
    y = timesS.length === 0 ? top + LEADING + 4 : boxTop + BOX.height + 4;
    frame.strip = { top, bottom: y, boxes };
    y += GAP;
  }
  const feet = foot
    .flatMap((line) => linesThatFit(line, inner, LABEL))
    .map((text) => ({ text, y: (y += LEADING) - 4 }));
  const height = Math.ceil(y + (feet.length > 0 ? 4 : 0) + (standalone ? MARGIN - GAP : 0));
  return {
    width,
    height,
    left,
    right,
    ...(frame.plot === undefined ? {} : { plot: frame.plot }),
    ...(frame.ladder === undefined ? {} : { ladder: frame.ladder }),
    ...(frame.strip === undefined ? {} : { strip: frame.strip }),
    margin,
    rungs,
    heading: headings,
    foot: feet,
  };
}

/** The scale of time: from s to x. */
export function placeOn({ axes }: AnswerPicture, left: number, right: number): (timeS: number) => number {
  const { lowS, highS } = axes;
  const span = Math.log(highS / lowS);
  // A time of 0 is at the far left; whatever lies beyond is drawn at the edge or left out.
  return (timeS) => left + (right - left) * (Math.log(Math.max(timeS, 1e-300) / lowS) / span);
}

/** The cause and what it rests on, in lines beside the change. */
function rungFrame({ cause, basis, change }: PictureRungWords, width: number): RungFrame {
  const free = width - textWidth(change, RUNG) - 12;
  const causes = linesThatFit(cause, free, RUNG);
  const last = causes[causes.length - 1] as string;
  const joined = textWidth(last, RUNG) + 10 + textWidth(basis, LABEL) <= free;
  const lines = causes.map((text) => ({ cause: text, basis: joined && text === last ? basis : "" }));
  const below = joined || basis === "" ? [] : linesThatFit(basis, width, LABEL);
  const all = [...lines, ...below.map((text) => ({ cause: "", basis: text }))];
  return { lines: all, height: all.length * LEADING + ARROW };
}

/** Boxes in a row, each as near to its place as its neighbours let it, and all between two edges. */
function boxesAt(
  places: readonly number[],
  left: number,
  right: number,
): readonly (readonly [number, number])[] {
  const pitch = Math.min(BOX.width + BOX.gap, (right - left) / Math.max(1, places.length));
  const half = (pitch * BOX.width) / (BOX.width + BOX.gap) / 2;
  const middles: number[] = [];
  // Pushed to the right until none overlaps, then all back by the mean of how far.
  for (const place of places)
    middles.push(Math.max(place, (middles[middles.length - 1] ?? -Infinity) + pitch));
  const sum = middles.reduce((pushed, middle, i) => pushed + middle - (places[i] as number), 0);
  const back = sum / Math.max(1, places.length);
  const least = (i: number): number => left + pitch * (i + 0.5);
  const most = (i: number): number => right - pitch * (places.length - i - 0.5);
  return middles
    .map((middle, i) => Math.min(most(i), Math.max(least(i), middle - back)))
    .map((middle) => [middle - half, middle + half]);
}
