/*
 * The words within the plot: each is set at the first of its places that is free, and left out where none is.
 * The description of the picture says all of them.
 */
import { LABEL } from "./frame.js";
import { boxOf, overlap, type Box, type Place } from "./letters.js";
import { words, type Ink } from "./paint.js";
import type { AnswerPicture } from "./types.js";
import type { PictureWords } from "./words.js";

/** The plot and its scales. */
interface Plot extends Box {
  readonly at: (timeS: number) => number;
  readonly height: (temperatureC: number) => number;
}

/** A text that wants a place. */
interface Wanted {
  readonly text: string;
  readonly ink: Ink;
  readonly bold: boolean;
  readonly places: readonly Place[];
}

/** Where along a curve its name is tried, as a share of the way from cold to warm. */
const SHARES = [0.86, 0.76, 0.94, 0.66, 0.56, 0.46, 0.36, 0.26, 0.16, 0.06];

/** The words of the plot as text elements. */
export function plotLabels(picture: AnswerPicture, said: PictureWords, plot: Plot): readonly string[] {
  const taken: Box[] = dotsOf(picture, plot);
  return wantedIn(picture, said, plot).flatMap(({ text, ink, bold, places }) => {
    const place = places.find((one) => {
      const own = boxOf(text, LABEL, one);
      return isInside(own, plot) && !taken.some((other) => overlap(own, other));
    });
    if (place === undefined) return [];
    taken.push(boxOf(text, LABEL, place));
    return [words(place.x, place.y, text, { size: LABEL, ink, bold, anchor: place.anchor })];
  });
}

/** The words in the order in which they choose. */
function wantedIn(picture: AnswerPicture, said: PictureWords, plot: Plot): readonly Wanted[] {
  const { known, today, refusals, warnings, curves } = picture;
  const { at, height, left, right } = plot;
  return [
    ...(today === undefined || said.today === undefined
      ? []
      : [
          {
            text: said.today,
            ink: "today" as const,
            bold: true,
            places: aroundDot(at(today.timeS), height(today.temperatureC)),
          },
        ]),
    {
      text: said.known,
      ink: "ink",
      bold: true,
      places: [...aroundDot(at(known.timeS), height(known.temperatureC))].reverse(),
    },
    ...refusals.map(({ fromC, toC }, i) => {
      const middle = (height(fromC) + height(toC)) / 2 + 4;
      const feet = [middle, height(toC) + 16, height(fromC) - 6].filter(
        (y) => y - 12 >= height(toC) && y + 3 <= height(fromC),
      );
      return {
        text: said.refusals[i] as string,
        ink: "ink" as const,
        bold: false,
        places: feet.flatMap((y) => across(y, left, right)),
      };
    }),
    ...warnings.map(({ atC, side }, i) => {
      const y = height(atC);
      return {
        text: said.warnings[i] as string,
        ink: "quiet" as const,
        bold: false,
        places: across(side === "below" ? y + 14 : y - 6, left, right),
      };
    }),
    { text: said.thisBath, ink: "today", bold: false, places: along(curves.bath, plot, 8, -4, "start") },
    ...(curves.same
      ? []
      : [
          {
            text: said.asKnown,
            ink: "quiet" as const,
            bold: false,
            places: [...along(curves.known, plot, -8, 12, "end")].reverse(),
          },
        ]),
  ];
}

/** Beside a dot: a curve falls from the upper left to the lower right, so the other corners are free. */
function aroundDot(x: number, y: number): readonly Place[] {
  return [
    { x: x + 10, y: y - 11, anchor: "start" },
    { x, y: y - 15, anchor: "middle" },
    { x: x - 4, y: y - 15, anchor: "end" },
    { x: x + 14, y: y + 20, anchor: "start" },
    { x: x - 10, y: y - 10, anchor: "end" },
    { x: x - 10, y: y + 20, anchor: "end" },
  ];
}

/** At the left, at the right and in between. */
function across(y: number, left: number, right: number): readonly Place[] {
  return [
    { x: left + 5, y, anchor: "start" },
    { x: right - 5, y, anchor: "end" },
    ...[0.25, 0.5, 0.75].map((share): Place => ({ x: left + share * (right - left), y, anchor: "middle" })),
  ];
}

/** Beside a curve. */
function along(
  curve: AnswerPicture["curves"]["bath"],
  { at, height }: Plot,
  dx: number,
  dy: number,
  anchor: Place["anchor"],
): readonly Place[] {
  return SHARES.map((share) => {
    const { timeS, temperatureC } = curve[Math.round(share * (curve.length - 1))] as (typeof curve)[number];
    return { x: at(timeS) + dx, y: height(temperatureC) + dy, anchor };
  });
}

/** The places of the dots, which no word covers. */
function dotsOf({ known, today }: AnswerPicture, { at, height }: Plot): Box[] {
  return [known, ...(today === undefined ? [] : [today])].map(({ timeS, temperatureC }) => {
    const [x, y] = [at(timeS), height(temperatureC)];
    return { left: x - 8, right: x + 8, top: y - 8, bottom: y + 8 };
  });
}

function isInside(one: Box, { left, right, top, bottom }: Box): boolean {
  return one.left >= left && one.right <= right && one.top >= top && one.bottom <= bottom;
}
