import { gravestFirst, isPast, type Caution } from "../core/caution.js";
import { timeEstimate, Z90, type TimeEstimate } from "../core/estimate.js";
import { inRange, plainObject } from "../core/guards.js";
import { compensate } from "../compensate/compensate.js";
import type { Baseline } from "../compensate/types.js";
import { LONGEST_CLOCK_S } from "../drift/log.js";
import { checkedAppearance } from "../inspection/appearance.js";
import { combineEstimates } from "../inspection/combineEstimates.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { rateFunction } from "../temperature/rateFunction.js";
import { aimPlan, drainOf } from "./aimPlan.js";
import { appearanceOnPath } from "./appearance.js";
import { judgeLog, type Followed } from "./judge.js";
import { named } from "./named.js";
import { pathOf, pathSdS, type PathInput } from "./path.js";
import { orderedLog, type PlacedReading } from "./readings.js";
import { surroundingsOf } from "./surroundings.js";
import { doubt } from "./text.js";
import type { SteerAnswer, SteerInput } from "./types.js";

/** How well a bath is known of which no reading is believed, °C: as the recipe says, and a cold vessel. */
const UNREAD_SD_C = 1;

/**
 * Steers a development in progress: when to pour out, by the readings so far.
 *
 * @param input - the known time and its conditions, today's conditions, what is known of the laws; the
 * readings, one or more, and what is known of vessel, surroundings and thermometer; the moment of the image's
 * appearance; the plan
 * @returns the whole time and what is left of it, in s with 90 % intervals; whether to pour out; whether the
 * newest reading is believed; the plan, aimed anew; cautions, doubts about the newest reading first
 * @throws TypeError or RangeError when a field is of the wrong kind or out of range. A reading is never
 * refused for its temperature, its order or its absence: a throw in the middle of a run is no answer
 *
 * @remarks The readings in doubt are left out and the run goes on by the others: the doubt is a caution,
 * `trusted` is false, and the bath is poured out at the median of the forecast. In doubt is what is no
 * number, what is above 32 °C or not above 0 °C (unless `conditions.temperatureC` lies within 5 °C), what is
 * farther from the longest chain of agreeing readings than vessel and thermometer allow, and equal readings
 * of a bath that must have moved by 1 °C. A reading that fits in the other unit serves the forecast in that
 * unit. A jump is believed where the log says `changed`. Behind the last reading the bath follows Newton's
 * law of cooling, fitted with a prior on vessel, surroundings and reading. The path goes to {@link
 * compensate} as a log, and its own error joins the interval.
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
  } = plainObject("steer/input", input) as unknown as SteerInput;
  const known = surroundingsOf("steer", input);
  const ordered = orderedLog("steer/log", log, 1);
  const { temperatureC, ...others } = plainObject("steer/conditions", conditions);
  const drainS = drainOf("steer/plan", plan);
  // At the temperature of the known time: what all other causes leave, and a check of all that was given.
  const due = named("steer", () => compensate(baseline, others, knowledge));
  const statedC = typeof temperatureC === "number" ? temperatureC : undefined;
  if (statedC !== undefined) inRange("steer/conditions/temperatureC", statedC, 0, 100, "temperatureC");
  const { followed, trusted, cautions: doubts } = judgeLog("/log", ordered, known, statedC);
  const { timeS: newestS } = ordered.readings.at(-1) as PlacedReading;
  if (appearance !== undefined) plainObject("steer/appearance", appearance);
  const seenS = appearance === undefined ? 0 : checkedAppearance("steer/appearance", appearance.appearanceS);
  const nowS = inRange("steer/nowS", input.nowS ?? Math.max(newestS, seenS), 0, LONGEST_CLOCK_S, "timeS");
  const law = knowledge.temperature ?? genericTemperatureLaw;
  const request: PathInput = {
    ...followedOr(followed, statedC, baseline, known.readingSdC),
    known,
    rate: rateFunction(baseline.temperatureC, law),
    wantedS: due.timeS,
    untilS: Math.max(nowS, seenS),
  };
  const path = pathOf(request);
  const answer = named("steer", () => compensate(baseline, { ...others, temperatureC: path.log }, knowledge));
  const ownLogSd = Math.log(answer.highS / answer.lowS) / (2 * Z90);
  const computed = timeEstimate(
    answer.timeS,
    // To first order: more than the whole time says no more than that nothing is known.
    Math.hypot(ownLogSd, Math.min(1, pathSdS(path, answer.timeS, request) / answer.timeS)),
  );
  const seen =
    appearance === undefined
      ? undefined
      : combineEstimates(computed, appearanceOnPath(appearance, path.log, baseline.temperatureC, law));
  const total = seen === undefined ? computed : { timeS: seen.timeS, lowS: seen.lowS, highS: seen.highS };
  const cautions = [
    ...doubts,
    ...(isPast(nowS, total.timeS)
      ? [doubt("target-passed", "stop", undefined, { limit: total.timeS, actual: nowS })]
      : []),
    ...(seen?.cautions ?? []).map((one) => ({ ...one, path: "/appearance" })),
    ...answer.cautions.filter(({ code }) => code !== "log-held").map(aboutLog),
  ];
  const remaining = fromNow(total, nowS);
  return {
    total,
    remaining,
    action: remaining.timeS <= drainS ? "pour-out" : "continue",
    trusted,
    ...(plan === undefined ? undefined : { plan: aimPlan(plan, nowS, total.timeS) }),
    cautions: gravestFirst(cautions),
  };
}

/** The readings that are followed; where there are none, what the bath was mixed to. */
function followedOr(
  followed: readonly Followed[],
  statedC: number | undefined,
  baseline: Baseline,
  readingSdC: number,
): { readonly followed: readonly Followed[]; readonly readingSdC: number } {
  if (followed.length > 0) return { followed, readingSdC };
  const celsius = statedC ?? baseline.temperatureC;
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
