/*
 * The lower parts of the drawing, on the same scale of time: the ladder and the strip.
 */
import { isWithin, todayDrawn } from "./drawPlot.js";
import { LABEL, placeOn, RUNG, type Frame, type RungFrame } from "./frame.js";
import { sizeThatFits } from "./letters.js";
import { box, fill, hollow, line, phrase, ring, straight, through, whisker, words } from "./paint.js";
import type { AnswerPicture, PictureRung } from "./types.js";
import type { PictureRungWords } from "./text.js";
import type { PictureWords } from "./words.js";

const SHAFT = 4;
const HEAD = { length: 11, half: 8.5 };
const LEADING = 19;

/** The plumb lines from both dots through everything below them. */
export function plumbsDrawn(
  picture: AnswerPicture,
  heightC: (temperatureC: number) => number,
  { plot, ladder, left, right }: Frame,
): readonly string[] {
  const { known, today, axes, rungs } = picture;
  const at = placeOn(picture, left, right);
  const arrows = ladder?.rungs ?? [];
  const foot = arrows[rungs.length - 1]?.arrowY ?? plot?.bottom;
  if (foot === undefined) return [];
  const from = (temperatureC: number): number =>
    plot === undefined
      ? (ladder?.top ?? 0)
      : Math.min(plot.bottom, Math.max(plot.top, heightC(temperatureC)));
  const plumb = (dot: { timeS: number; temperatureC: number }, paint: string): readonly string[] =>
    isWithin(picture, axes.fromC, dot.timeS)
      ? [straight(at(dot.timeS), from(dot.temperatureC), at(dot.timeS), foot, paint)]
      : [];
  return [
    ...plumb(known, line("ink", 1.4, "1.5 4.5")),
    ...(today === undefined ? [] : plumb(today, line("today", 1.2))),
  ];
}

/** One rung a cause. */
export function ladderDrawn(
  picture: AnswerPicture,
  said: PictureWords,
  frame: Frame,
  nothing: string,
): readonly string[] {
  const { ladder, margin, rungs } = frame;
  if (ladder === undefined) return [];
  if (picture.refused) return [words(margin, ladder.top + LEADING - 3, nothing, { size: RUNG, ink: "ink" })];
  const arrowY = (i: number): number => (ladder.rungs[i] as { readonly arrowY: number }).arrowY;
  return picture.rungs.flatMap((rung, i) => [
    ...(rung.kind === "cause" && i > 0 ? stepDrawn(picture, rung, arrowY(i - 1), arrowY(i), frame) : []),
    ...rungDrawn(picture, rung, arrowY(i), frame),
    ...rungWordsDrawn(
      rungs[i] as RungFrame,
      said.rungs[i] as PictureRungWords,
      (ladder.rungs[i] as { readonly top: number }).top,
      rung.kind === "sum",
      frame,
    ),
  ]);
}

/** Where an arrow starts is where the last one ended. */
function stepDrawn(
  picture: AnswerPicture,
  { startS }: PictureRung,
  fromY: number,
  toY: number,
  { left, right }: Frame,
): readonly string[] {
  const x = clamped(placeOn(picture, left, right)(startS), left, right);
  return [straight(x, fromY, x, toY, line("today", 0.8))];
}

function rungDrawn(picture: AnswerPicture, rung: PictureRung, y: number, frame: Frame): readonly string[] {
  const { left, right } = frame;
  const scale = placeOn(picture, left, right);
  const at = (timeS: number): number => clamped(scale(timeS), left, right);
  const { kind, startS, endS, lowS, highS, general } = rung;
  if (kind === "sum") return todayDrawn({ timeS: endS, lowS, highS }, at, y, left, right);
  const spread = highS > lowS ? [whisker(at(lowS), at(highS), y)] : [];
  if (kind === "known") return [...spread, ring(at(endS), y, 6)];
  // A hollow arrow shows its whisker, a solid one covers half of it.
  const arrow = arrowDrawn(at(startS), at(endS), y, general);
  return general ? [arrow, ...spread] : [...spread, arrow];
}

/** An arrow: solid where it rests on a printed or own figure, hollow where on a general rule. */
function arrowDrawn(from: number, to: number, y: number, general: boolean): string {
  const paint = general ? hollow("today", 1.6) : fill("today");
  const way = to < from ? -1 : 1;
  const neck = to - way * Math.min(HEAD.length, Math.abs(to - from));
  const outline: readonly (readonly [number, number])[] = [
    [from, y - SHAFT],
    [neck, y - SHAFT],
    [neck, y - HEAD.half],
    [to, y],
    [neck, y + HEAD.half],
    [neck, y + SHAFT],
    [from, y + SHAFT],
  ];
  return through(outline, paint, true);
}

function rungWordsDrawn(
  { lines }: RungFrame,
  { change }: PictureRungWords,
  top: number,
  bold: boolean,
  { width, margin }: Frame,
): readonly string[] {
  const foot = (i: number): number => top + LEADING * (i + 1) - 4;
  return [
    ...lines.map(({ cause, basis }, i) =>
      cause === ""
        ? words(margin, foot(i), basis, { size: LABEL, ink: "quiet" })
        : phrase(margin, foot(i), cause, basis, { size: RUNG, ink: "ink", bold }, LABEL),
    ),
    words(width - margin, foot(0), change, { size: RUNG, ink: bold ? "today" : "ink", bold, anchor: "end" }),
  ];
}

/** The times of a strip: on the scale, and in a row of boxes. */
export function stripDrawn(picture: AnswerPicture, said: PictureWords, frame: Frame): readonly string[] {
  const { strip, left, right, margin } = frame;
  if (strip === undefined) return [];
  const at = placeOn(picture, left, right);
  const barY = strip.top + LEADING + 6;
  const heading = words(margin, strip.top + LEADING - 4, said.strip ?? "", { size: RUNG, ink: "ink" });
  const places = strip.boxes.map(({ timeS }) => clamped(at(timeS), left, right));
  const [first] = places;
  const last = places[places.length - 1];
  if (first === undefined || last === undefined) return [heading];
  const size = Math.min(...said.stripTimes.map((text, i) => boxLetters(text, strip.boxes[i])));
  return [
    heading,
    box(first, barY - 3, last - first, 6, `${fill("today")} fill-opacity="0.45"`),
    ...strip.boxes.flatMap((one, i) => {
      const x = places[i] as number;
      const middle = (one.left + one.right) / 2;
      const y = (one.top + one.bottom) / 2 + size * 0.36;
      const way: readonly (readonly [number, number])[] = [
        [x, barY - 5],
        [x, barY + 5],
        [middle, one.top],
      ];
      return [
        through(way, line("ink", 1)),
        box(one.left, one.top, one.right - one.left, one.bottom - one.top, `rx="3" ${line("ink", 1.2)}`),
        words(middle, y, said.stripTimes[i] as string, { size, ink: "ink", bold: true, anchor: "middle" }),
      ];
    }),
  ];
}

function boxLetters(
  text: string,
  one: { readonly left: number; readonly right: number } | undefined,
): number {
  return one === undefined ? RUNG : sizeThatFits(text, (one.right - one.left - 6) * 0.95, RUNG - 1);
}

function clamped(x: number, left: number, right: number): number {
  return Math.min(right, Math.max(left, x));
}
