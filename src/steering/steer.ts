import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { gravestFirst, isPast, type Caution } from "../core/caution.js";
import { timeEstimate, Z90, type TimeEstimate } from "../core/estimate.js";
import { inRange, plainObject } from "../core/guards.js";
import { compensate } from "../compensate/compensate.js";
import type { Baseline, Compensation, Conditions } from "../compensate/types.js";
import type { TemperatureLog } from "../drift/log.js";
import { checkedAppearance } from "../inspection/appearance.js";
import { combineEstimates } from "../inspection/combineEstimates.js";
import type { ProcessPlan } from "../process/types.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { rateFunction } from "../temperature/rateFunction.js";
import { fahrenheitCautions } from "../temperature/temperatureCautions.js";
import { aimPlan, drainOf } from "./aimPlan.js";
import { appearanceOnPath } from "./appearance.js";
import { equivalentOn } from "./equivalent.js";
import { judgeByReadings, type Followed } from "./judge.js";
import { inNameOf } from "../core/inNameOf.js";
import { heldPath, pathOf, pathSdS, type PathInput } from "./path.js";
import { unreadFields } from "../core/pointer.js";
import { orderedLog, unreadInLog } from "./readings.js";
import { timeStops } from "./refusal.js";
import { airDoubts, asMeant, SURROUNDINGS_FIELDS, surroundingsOf } from "./surroundings.js";
import { doubt } from "./text.js";
import { steeringGoal } from "./steeringGoal.js";
import type { SteerAnswer, SteerInput } from "./types.js";

/** How well a bath is known of which no reading is believed, °C (assumed): a cold vessel counts too. */
const UNREAD_SD_C = 1;

const FIELDS: readonly string[] = [
  ...["baseline", "conditions", "knowledge", "log", "nowS", "appearance", "plan", "stepS"],
  ...SURROUNDINGS_FIELDS,
];

/**
 * Steers a development in progress: when to pour out, by the readings so far.
 *
 * @param input - the known time and its conditions, today's conditions, what is known of the laws; the
 * readings, one or more, and what is known of vessel, surroundings and thermometer; the moment of the image's
 * appearance; the plan, and the step of its times
 * @returns the whole time and what is left of it, in s with 90 % intervals; the same as work done, in s of
 * a bath that stays at one temperature; whether to pour out; whether the newest reading is believed;
 * whether the time is refused; the plan, aimed anew; cautions, gravest first
 * @throws TypeError or RangeError when a field is of the wrong kind or out of range. A reading is never
 * refused for its temperature, its order or its absence: a throw in the middle of a run is no answer
 *
 * @remarks In doubt is what is no number, what is above 32 °C or not above 0 °C (unless
 * `conditions.temperatureC` lies within 5 °C), what is farther from the longest chain of agreeing readings
 * than vessel and thermometer allow, what is more than 1 s later than `nowS`, and equal readings of a bath
 * that must have moved by 1 °C. The doubt is a caution, and `trusted` is false while it is about the
 * newest reading.
 *
 * A reading in doubt is left out, with one exception: one that fits in the other unit serves the forecast in
 * that unit. It fits where the bath can have come there from the others, with the surroundings as they were
 * told, and where no later reading contradicts it. So 57 serves as 13.9 °C beside readings of 14 °C. Beside
 * 16.8 °C, in air of 15 °C, it is left out. With `forecast-only`, no late reading is followed. Where four
 * readings or more all agree, but not with vessel and surroundings as told, they are followed without these,
 * and `surroundings-doubted` says so. A jump is believed where the log says `changed`. Of one moment, a
 * reading with `changed` comes after the others. The others count as one, in whatever order they come.
 * Surroundings above 45 °C are in doubt in the same way: they serve the forecast as °F, and `trusted` is
 * false. What is unwise is then judged by the readings alone.
 *
 * The bath is poured out at the median of the forecast: behind the last reading that is followed, Newton's
 * law of cooling, fitted with a prior on vessel, surroundings and reading. The path goes to
 * {@link compensate} as a log, and its own error joins the interval.
 *
 * Where a plan is given and the known time names its agitation, the bath is moved as the plan tells.
 *
 * The time is refused where {@link compensate} refuses that of the same facts. A reading in doubt refuses
 * nothing.
 *
 * A thermometer that is wrong by a steady amount, or creeps, cannot be told from its readings: only the
 * image's appearance can disagree with it.
 *
 * @example
 * ```ts
 * const baseline = { timeS: 600, temperatureC: 20 };
 * const log = [{ timeS: 0, temperatureC: 20 }, { timeS: 60, temperatureC: 68 }];
 * const { remaining, action, trusted, cautions } = steer({ baseline, conditions: {}, log });
 * Math.round(remaining.timeS) // => 540
 * action // => "continue"
 * trusted // => false
 * cautions[0]?.code // => "maybe-fahrenheit"
 * ```
 */
export function steer(input: SteerInput): SteerAnswer {
  const {
    baseline,
    conditions,
    knowledge = {},
    log,
    appearance,
    plan,
    stepS,
  } = plainObject("steer/input", input) as unknown as SteerInput;
  const told = surroundingsOf("steer", input);
  const ofAir = airDoubts(input.ambientC, "/ambientC");
  const airDoubted = ofAir.length > 0;
  const { temperatureC, ...asked } = plainObject("steer/conditions", conditions);
  const statedC = typeof temperatureC === "number" ? temperatureC : undefined;
  const ordered = orderedLog("steer/log", log, 1, statedC);
  const drainS = drainOf("steer/plan", plan);
  const others = { ...asked, ...movedBy(plan, baseline) };
  if (stepS !== undefined) inRange("steer/stepS", stepS, 1, 300, "timeS");
  // At the temperature of the known time: what all other causes leave, and a check of all that was given.
  const due = inNameOf("steer", () => compensate(baseline, others, knowledge));
  if (statedC !== undefined) inRange("steer/conditions/temperatureC", statedC, 0, 100, "temperatureC");
  if (appearance !== undefined) plainObject("steer/appearance", appearance);
  const seenS = appearance === undefined ? 0 : checkedAppearance("steer/appearance", appearance.appearanceS);
  const lastS = Math.max(ordered.newestS, seenS);
  const nowS = inRange("steer/nowS", input.nowS ?? lastS, 0, LONGEST_CLOCK_S, "timeS");
  const judgedLog = judgeByReadings("/log", ordered, told, statedC, nowS);
  const { followed, trusted, cautions: doubts, known } = judgedLog;
  const referenceC = asMeant(statedC) ?? baseline.temperatureC;
  const law = knowledge.temperature ?? genericTemperatureLaw;
  const request: PathInput = {
    ...followedOr(followed, referenceC, known.readingSdC),
    known,
    rate: rateFunction(baseline.temperatureC, law),
    wantedS: due.timeS,
    untilS: Math.max(nowS, seenS),
  };
  const path = pathOf(request);
  const answerOn = (course: TemperatureLog): Compensation =>
    inNameOf("steer", () => compensate(baseline, { ...others, temperatureC: course }, knowledge));
  const answer = answerOn(path.log);
  // A forecast that rests on surroundings in doubt is no ground for a caution.
  const judged = airDoubted ? answerOn(heldPath(request.followed)) : answer;
  const ownLogSd = Math.log(answer.highS / answer.lowS) / (2 * Z90);
  const computed = timeEstimate(
    answer.timeS,
    // To first order: more than the whole time says no more than that nothing is known.
    Math.hypot(ownLogSd, Math.min(1, pathSdS(path, answer.timeS, request) / answer.timeS)),
  );
  const seen =
    appearance === undefined ? undefined : appearanceOnPath(appearance, path.log, baseline.temperatureC, law);
  const both = seen === undefined ? undefined : combineEstimates(computed, seen);
  const total = both === undefined ? computed : { timeS: both.timeS, lowS: both.lowS, highS: both.highS };
  const cautions = [
    ...(statedC === undefined ? [] : fahrenheitCautions(statedC, "/conditions/temperatureC")),
    ...ofAir,
    ...doubts,
    ...(isPast(nowS, total.timeS)
      ? [doubt("target-passed", "stop", undefined, { limit: total.timeS, actual: nowS })]
      : []),
    ...(both?.cautions ?? []).map((one) => ({ ...one, path: "/appearance" })),
    ...judged.cautions.filter(({ code }) => code !== "log-held").map(aboutLog),
    ...unreadFields("", input, FIELDS),
    ...unreadInLog("/log", log),
  ];
  const remaining = fromNow(total, nowS);
  const steady = { ...others, temperatureC: referenceC };
  const { timeS: dueS } = inNameOf("steer", () => compensate(baseline, steady, knowledge));
  const steered: SteerAnswer = {
    nowS,
    total,
    remaining,
    ...(seen === undefined ? undefined : { seen }),
    equivalent: equivalentOn({ path: path.log, referenceC, law, nowS, dueS, byBathS: computed.timeS, total }),
    action: remaining.timeS <= drainS ? "pour-out" : "continue",
    trusted: trusted && !airDoubted,
    refused: timeStops(cautions).length > 0,
    cautions: gravestFirst(cautions),
  };
  if (plan === undefined) return steered;
  const endS = stepS === undefined ? total.timeS : steeringGoal(steered, { stepS }).timeS;
  return { ...steered, plan: aimPlan(plan, nowS, endS) };
}

/** How the bath is moved: as its plan tells, where the known time says how its own was. */
function movedBy(plan: ProcessPlan | undefined, baseline: Baseline): Conditions {
  if (plan === undefined) return {};
  const { agitation } = plainObject("steer/baseline", baseline) as unknown as Baseline;
  return agitation === undefined ? {} : { agitation: plan.handling.agitation };
}

/** The readings that are followed; where there are none, what the bath was mixed to, °C. */
function followedOr(
  followed: readonly Followed[],
  celsius: number,
  readingSdC: number,
): { readonly followed: readonly Followed[]; readonly readingSdC: number } {
  if (followed.length > 0) return { followed, readingSdC };
  return { followed: [{ timeS: 0, celsius, changed: false }], readingSdC: UNREAD_SD_C };
}

/** The same from now on, never below 0. */
function fromNow({ timeS, lowS, highS }: TimeEstimate, nowS: number): TimeEstimate {
  const left = (s: number): number => Math.max(0, s - nowS);
  return { timeS: left(timeS), lowS: left(lowS), highS: left(highS) };
}

/** A caution about the path is one about the log that it was made of. */
function aboutLog(caution: Caution): Caution {
  return caution.path?.startsWith("/conditions/temperatureC") ? { ...caution, path: "/log" } : caution;
}
