/*
 * The upper part of the drawing: temperature upwards, time to the right, both curves, both dots.
 */
import { celsiusToFahrenheit } from "../quantities/celsiusToFahrenheit.js";
import { fahrenheitToCelsius } from "../quantities/fahrenheitToCelsius.js";
import { LABEL, placeOn, type Frame } from "./frame.js";
import { plotLabels } from "./labels.js";
import { textWidth } from "./letters.js";
import type { DrawingOptions } from "./options.js";
import { box, fill, line, ring, round, straight, through, words } from "./paint.js";
import type { AnswerPicture, PictureDot } from "./types.js";
import type { PictureWords } from "./words.js";

/** The scale of temperature: from °C to y. */
export function heightOn(
  { axes }: AnswerPicture,
  top: number,
  bottom: number,
): (temperatureC: number) => number {
  const { fromC, toC } = axes;
  return (temperatureC) => bottom - ((bottom - top) * (temperatureC - fromC)) / (toC - fromC);
}

/** The lines of both axes and what is written at them. */
export function axesDrawn(
  picture: AnswerPicture,
  said: PictureWords,
  frame: Frame,
  { language }: DrawingOptions,
): readonly string[] {
  const { plot, ladder, left, right } = frame;
  const top = plot?.top ?? ladder?.top;
  if (top === undefined) return [];
  const at = placeOn(picture, left, right);
  const { ticksS } = picture.axes;
  const ticks = ticksWritten(said.ticks, ticksS.map(at), frame).map(({ text, x }) =>
    words(x, top - 8, text, { size: LABEL, ink: "quiet", anchor: "middle" }),
  );
  if (plot === undefined) return ticks;
  const height = heightOn(picture, plot.top, plot.bottom);
  return [
    ...ticksS.map((timeS) => straight(at(timeS), plot.top, at(timeS), plot.bottom, line("grid", 1))),
    ...degreeTicks(picture, language.unit).flatMap(({ temperatureC, text }) => {
      const y = height(temperatureC);
      const written = words(left - 6, y + 4.5, text, { size: LABEL, ink: "quiet", anchor: "end" });
      return [straight(left, y, right, y, line("grid", 1)), written];
    }),
    ...ticks,
  ];
}

/** The curves with their band, what they rest on, limits, dots and words. */
export function plotDrawn(
  picture: AnswerPicture,
  said: PictureWords,
  frame: Frame,
  { prefix }: DrawingOptions,
): readonly string[] {
  const { plot, left, right } = frame;
  if (plot === undefined) return [];
  const { top, bottom } = plot;
  const at = placeOn(picture, left, right);
  const height = heightOn(picture, top, bottom);
  const { curves, refusals, warnings, points, known, today } = picture;
  const low = curves.bath.map(({ lowS, temperatureC }) => [at(lowS), height(temperatureC)] as const);
  const high = curves.bath.map(({ highS, temperatureC }) => [at(highS), height(temperatureC)] as const);
  const middle = curves.bath.map(({ timeS, temperatureC }) => [at(timeS), height(temperatureC)] as const);
  const before = curves.known.map(({ timeS, temperatureC }) => [at(timeS), height(temperatureC)] as const);
  const inside = ({ temperatureC, timeS }: PlotPoint): boolean => isWithin(picture, temperatureC, timeS);
  return [
    `<g clip-path="url(#${prefix}-plot)">`,
    ...refusals.map(({ fromC, toC }) =>
      box(left, height(toC), right - left, height(fromC) - height(toC), `fill="url(#${prefix}-hatch)"`),
    ),
    through([...low, ...high.reverse()], `${fill("today")} fill-opacity="0.15"`, true),
    ...warnings.map(({ atC }) => straight(left, height(atC), right, height(atC), line("ink", 1.2, "8 4"))),
    ...(curves.same ? [] : [through(before, line("ink", 1.6, "2 4"))]),
    through(middle, line("today", 2.4)),
    "</g>",
    ...(today !== undefined && inside(today)
      ? todayDrawn(today, at, height(today.temperatureC), left, right)
      : []),
    ...(inside(known) ? [ring(at(known.timeS), height(known.temperatureC), 6)] : []),
    ...points
      .filter(inside)
      .map(({ temperatureC, timeS, of }) => pointDrawn(at(timeS), height(temperatureC), of)),
    ...plotLabels(picture, said, { at, height, left, right, top, bottom }),
  ];
}

/** What has a place in the plot. */
interface PlotPoint {
  readonly temperatureC: number;
  readonly timeS: number;
}

/** Whether a point lies between the edges. */
export function isWithin({ axes }: AnswerPicture, temperatureC: number, timeS: number): boolean {
  const { fromC, toC, lowS, highS } = axes;
  return temperatureC >= fromC && temperatureC <= toC && timeS >= lowS && timeS <= highS;
}

/** A row of a table is a small square, an own run a small ring. */
function pointDrawn(x: number, y: number, of: "table" | "run"): string {
  return of === "table" ? box(x - 3, y - 3, 6, 6, line("ink", 1.4)) : round(x, y, 3.5, line("ink", 1.4));
}

/** Today's dot on the bar of its interval. */
export function todayDrawn(
  { timeS, lowS, highS }: Pick<PictureDot, "timeS" | "lowS" | "highS">,
  at: (timeS: number) => number,
  y: number,
  left: number,
  right: number,
): readonly string[] {
  const from = Math.max(left, at(lowS));
  const to = Math.min(right, at(highS));
  return [
    box(from, y - 3, Math.max(0, to - from), 6, `${fill("today")} fill-opacity="0.45"`),
    round(at(timeS), y, 7, fill("today")),
  ];
}

/** The ticks whose words neither touch nor leave the picture; the last one carries the unit. */
function ticksWritten(
  texts: readonly string[],
  places: readonly number[],
  { width, margin, left }: Frame,
): readonly { readonly text: string; readonly x: number }[] {
  const written: { text: string; x: number }[] = [];
  let end = width - margin - 1;
  for (let i = texts.length - 1; i >= 0; i -= 1) {
    const text = texts[i] as string;
    const half = textWidth(text, LABEL) / 2;
    const place = places[i] as number;
    const x = written.length === 0 ? Math.min(place, end - half) : place;
    if (x + half > end || x - half < left - 5) continue;
    written.push({ text, x });
    end = x - half - 8;
  }
  return written;
}

/** Every fifth or tenth degree of the unit that is shown. */
function degreeTicks(
  { axes }: AnswerPicture,
  unit: "C" | "F" | undefined,
): readonly { readonly temperatureC: number; readonly text: string }[] {
  const fahrenheit = unit === "F";
  const [from, to] = [axes.fromC, axes.toC].map((c) => (fahrenheit ? celsiusToFahrenheit(c) : c)) as [
    number,
    number,
  ];
  const step = [1, 5, 10, 20, 50].find((one) => (to - from) / one <= 7) ?? 50;
  const first = Math.ceil(from / step);
  const count = Math.floor(to / step) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => {
    const degrees = (first + i) * step;
    return { temperatureC: fahrenheit ? fahrenheitToCelsius(degrees) : degrees, text: `${degrees}°` };
  });
}
