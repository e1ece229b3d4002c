/*
 * The picture of an answer, whoever gives it: a known time with its laws, or a recipe.
 */
import { curveThrough, type TemperatureCurvePoint } from "../compensate/temperatureCurve.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "../compensate/types.js";
import { timeEstimate } from "../core/estimate.js";
import { inRange, plainObject, positive, wrongKind, wrongSide } from "../core/guards.js";
import { testStripTimes, type TestStrip } from "../process/testStripTimes.js";
import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { stripStepS } from "../quantities/stripStepS.js";
import { temperatureEdges, timeEdges } from "./axes.js";
import { refusalsAlong, warningsAlong } from "./limits.js";
import { runPoints, tablePoints, type Askers } from "./points.js";
import { rungsOf } from "./rungs.js";
import type { AnswerPicture, PictureRange, PictureToday } from "./types.js";

const POINTS = 45;

/** What a picture is made of, beside its range. */
export interface PictureSource extends Askers {
  readonly baseline: Baseline;
  readonly knowledge: Knowledge;
  /** today's temperature as it was given */
  readonly temperatureC: Conditions["temperatureC"];
  readonly answer: Compensation;
}

/** Makes the picture; `at` is the function and the place of the range. */
export function pictureOf(at: string, source: PictureSource, range: PictureRange): AnswerPicture {
  checkRange(at, range);
  const { baseline, knowledge, answer, known, bath } = source;
  const { timeS: knownS, temperatureC: knownC } = baseline;
  const { logSd } = answer.factors[0] as Compensation["factors"][number];
  const knownDot = { temperatureC: knownC, ...timeEstimate(knownS, logSd) };
  const { refused, cautions } = answer;
  const today = refused ? undefined : todayDot(source);
  const rungs = refused ? [] : rungsOf(knownS, answer);
  const strip = refused ? undefined : stripOf(answer, range.strip);
  const edges = temperatureEdges(range, today === undefined ? [knownC] : [knownC, today.temperatureC]);
  const { fromC, toC } = edges;
  const temperaturesC = evenly(fromC, toC, range.points ?? POINTS);
  const answers = temperaturesC.map((temperatureC) => bath(temperatureC));
  const bathCurve = curveThrough((_, i) => answers[i] as Compensation, temperaturesC);
  const knownCurve = curveThrough(known, temperaturesC);
  const refusals = refusalsAlong(bath, temperaturesC, answers);
  const points = [...tablePoints(knowledge, source), ...runPoints(`${at}/knowledge`, knowledge, source)];
  return {
    refused,
    known: knownDot,
    ...(today === undefined ? {} : { today }),
    curves: { known: knownCurve, bath: bathCurve, same: same(knownCurve, bathCurve) },
    refusals,
    warnings: warningsAlong(answers, fromC, toC, refusals),
    points: points.filter(({ temperatureC }) => temperatureC >= fromC && temperatureC <= toC),
    rungs,
    ...(strip === undefined ? {} : { strip }),
    axes: { ...timeEdges(range, today === undefined ? [knownDot] : [knownDot, today], rungs), ...edges },
    cautions,
  };
}

function checkRange(at: string, { fromC, toC, lowS, highS, points, strip }: PictureRange): void {
  if (fromC !== undefined) inRange(`${at}/fromC`, fromC, 0, 99, "temperatureC");
  if (toC !== undefined) inRange(`${at}/toC`, toC, 1, 100, "temperatureC");
  if (fromC !== undefined && toC !== undefined && !(fromC < toC))
    wrongSide(`${at}/toC`, toC, { above: fromC, quantity: "temperatureC", path: "/fromC" });
  if (lowS !== undefined) positive(`${at}/lowS`, lowS, LONGEST_CLOCK_S, "timeS");
  if (highS !== undefined) positive(`${at}/highS`, highS, LONGEST_CLOCK_S, "timeS");
  if (lowS !== undefined && highS !== undefined && !(lowS < highS))
    wrongSide(`${at}/highS`, highS, { above: lowS, quantity: "timeS", path: "/lowS" });
  if (points !== undefined) {
    inRange(`${at}/points`, points, 2, 1000, "count");
    if (!Number.isInteger(points)) wrongKind(`${at}/points`, ["whole number"], points);
  }
  if (
    strip !== undefined &&
    typeof strip !== "boolean" &&
    (typeof strip !== "object" || (strip as unknown) === null)
  )
    wrongKind(`${at}/strip`, ["boolean", "object"], strip);
}

/** Today's dot lies on the curve of today's bath, also where the bath drifts. */
function todayDot({ answer, temperatureC, baseline, bath }: PictureSource): PictureToday {
  const { timeS, lowS, highS } = answer;
  if (typeof temperatureC !== "object")
    return { temperatureC: temperatureC ?? baseline.temperatureC, timeS, lowS, highS };
  let [low, high] = [0, 100];
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    // Colder is longer.
    if (bath(middle).timeS > timeS) low = middle;
    else high = middle;
  }
  return { temperatureC: Number(high.toFixed(2)), timeS, lowS, highS, steady: true };
}

function stripOf(answer: Compensation, asked: PictureRange["strip"]): TestStrip | undefined {
  if (asked === undefined || asked === false) return undefined;
  const { timeS, lowS, highS } = answer;
  // An interval that no clock shows has no strip.
  if (!(lowS >= 0.1 && highS <= LONGEST_CLOCK_S)) return undefined;
  const options = asked === true ? {} : plainObject("answerPicture/input/strip", asked);
  return testStripTimes({ timeS, lowS, highS }, { stepS: stripStepS(answer), ...options });
}

/**
 * Temperatures at equal steps, both ends included, °C: those of `temperatureCurve`, without the interpolators
 * that it brings into a bundle.
 */
function evenly(fromC: number, toC: number, points: number): readonly number[] {
  return Array.from({ length: points }, (_, i) =>
    Number((fromC + ((toC - fromC) * i) / (points - 1)).toFixed(10)),
  );
}

/** Whether two curves are one. */
function same(a: readonly TemperatureCurvePoint[], b: readonly TemperatureCurvePoint[]): boolean {
  return a.every(({ timeS }, i) => Math.abs(timeS / (b[i] as TemperatureCurvePoint).timeS - 1) < 1e-6);
}
