/*
 * A picture that was handed in: it may come from a file that somebody edited.
 */
import { causes } from "../causes.js";
import type { AnyCause } from "../core/cause.js";
import {
  arrayOf,
  inRange,
  isBoolean,
  isText,
  knownEntry,
  plainObject,
  positive,
  wrongSide,
} from "../core/guards.js";
import { plainData } from "../core/plainData.js";
import { answerTexts } from "../text/answerTexts.js";
import type { AnswerPicture } from "./types.js";

const LONGEST = 1e100;

/** Checks what is read of a picture. */
export function checkedPicture(at: string, given: unknown): AnswerPicture {
  const picture = plainObject(at, given);
  const { refused, known, today, curves, refusals, warnings, points, rungs, strip, axes } = picture;
  isBoolean(`${at}/refused`, refused);
  const { fromC, toC } = checkedAxes(`${at}/axes`, axes);
  dot(`${at}/known`, known);
  if (today !== undefined) dot(`${at}/today`, today);
  const { known: knownCurve, bath } = plainObject(`${at}/curves`, curves);
  for (const [field, curve] of Object.entries({ known: knownCurve, bath }))
    arrayOf(`${at}/curves/${field}`, curve, 2).forEach((point, i) => {
      dot(`${at}/curves/${field}/${i}`, point);
    });
  each(`${at}/refusals`, refusals, (place, one) => {
    degrees(`${place}/fromC`, one["fromC"]);
    degrees(`${place}/toC`, one["toC"]);
    isText(`${place}/code`, one["code"]);
  });
  each(`${at}/warnings`, warnings, (place, one) => {
    inRange(`${place}/atC`, one["atC"], fromC, toC, "temperatureC");
    isText(`${place}/code`, one["code"]);
  });
  each(`${at}/points`, points, (place, one) => {
    degrees(`${place}/temperatureC`, one["temperatureC"]);
    positive(`${place}/timeS`, one["timeS"], LONGEST, "timeS");
  });
  each(`${at}/rungs`, rungs, rung);
  if (strip !== undefined)
    arrayOf(`${at}/strip/timesS`, plainObject(`${at}/strip`, strip)["timesS"], 0).forEach((timeS, i) =>
      positive(`${at}/strip/timesS/${i}`, timeS, LONGEST, "timeS"),
    );
  return given as AnswerPicture;
}

function checkedAxes(at: string, given: unknown): { readonly fromC: number; readonly toC: number } {
  const axes = plainObject(at, given);
  const fromC = degrees(`${at}/fromC`, axes["fromC"]);
  const toC = degrees(`${at}/toC`, axes["toC"]);
  if (!(fromC < toC)) wrongSide(`${at}/toC`, toC, { above: fromC, quantity: "temperatureC", path: "/fromC" });
  const lowS = positive(`${at}/lowS`, axes["lowS"], LONGEST, "timeS");
  const highS = positive(`${at}/highS`, axes["highS"], LONGEST, "timeS");
  if (!(lowS < highS)) wrongSide(`${at}/highS`, highS, { above: lowS, quantity: "timeS", path: "/lowS" });
  arrayOf(`${at}/ticksS`, axes["ticksS"], 0).forEach((timeS, i) =>
    inRange(`${at}/ticksS/${i}`, timeS, lowS, highS, "timeS"),
  );
  return { fromC, toC };
}

function dot(at: string, given: unknown): void {
  const one = plainObject(at, given);
  degrees(`${at}/temperatureC`, one["temperatureC"]);
  estimate(at, one, "timeS");
}

function rung(at: string, one: Record<string, unknown>): void {
  const { kind, cause, basis } = one;
  isText(`${at}/kind`, kind);
  isText(`${at}/cause`, cause);
  if (basis !== undefined) knownEntry(`${at}/basis`, answerTexts.bases, basis);
  for (const field of ["from", "to"]) if (one[field] !== undefined) side(`${at}/${field}`, cause, one[field]);
  positive(`${at}/startS`, one["startS"], LONGEST, "timeS");
  estimate(at, one, "endS");
  inRange(`${at}/percent`, one["percent"], -100, LONGEST);
}

/** Checks a side of a change as its cause reads it. A pair shows no sides: any plain data will do. */
function side(at: string, name: unknown, given: unknown): void {
  const cause = (causes as readonly AnyCause[]).find((one) => one.name === name);
  if (cause === undefined) plainData(at, given);
  else cause.read(at, given);
}

/** A median within its interval. */
function estimate(at: string, one: Record<string, unknown>, median: string): void {
  const lowS = time(`${at}/lowS`, one["lowS"]);
  const highS = time(`${at}/highS`, one["highS"]);
  inRange(`${at}/${median}`, time(`${at}/${median}`, one[median]), lowS, highS, "timeS");
}

/** However small: what `compensate` answers is drawn. */
function time(at: string, value: unknown): number {
  return inRange(at, value, 0, LONGEST, "timeS");
}

function each(
  at: string,
  given: unknown,
  check: (place: string, one: Record<string, unknown>) => void,
): void {
  arrayOf(at, given, 0).forEach((one, i) => {
    check(`${at}/${i}`, plainObject(`${at}/${i}`, one));
  });
}

function degrees(at: string, value: unknown): number {
  return inRange(at, value, 0, 100, "temperatureC");
}
