import type { Caution } from "../core/caution.js";
import type { CautionCode } from "../core/cautionCodes.js";
import { inRange, isText, plainObject } from "../core/guards.js";
import { inNameOf } from "../core/inNameOf.js";
import { formatTime } from "../quantities/formatTime.js";
import { toStep } from "../quantities/toStep.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import type { ProcessVessel } from "../handbook/process.js";
import { steeringTexts, type SteeringTexts } from "./steeringTexts.js";
import { followedStepS, steeringGoal } from "../steering/steeringGoal.js";
import { timeStops } from "../steering/refusal.js";
import type { SteerAnswer } from "../steering/types.js";
import { cautionSentence } from "./cautionSentence.js";
import { checkedCautions } from "./checkedCautions.js";
import { checkedTexts } from "./checkedTexts.js";

/** How a development in progress is described. */
export interface DescribeSteeringOptions extends TemperatureUnitOptions {
  /** where it is: in a tray it is lifted out; `"tank"` when left out */
  readonly vessel?: ProcessVessel | undefined;
  /** the step that the time was shown to before it was poured in, s, as in {@link steeringGoal} */
  readonly stepS?: number | undefined;
}

/**
 * A development in progress in short lines: when to pour out, and why that moved.
 *
 * @param answer - what `steer` returned
 * @param texts - the catalogue of another language; English when left out
 * @param options - `vessel`: where it is, `"tank"` when left out; `unit`: `"C"` or `"F"` for every
 * temperature, °C when left out; `stepS`: the step that the time was shown to before
 * @returns where the time is refused, first what there is to stop for, and the goal as what the laws alone
 * would say; where `trusted` is false, why the newest reading is in doubt, and whether the forecast is
 * followed alone; the goal as {@link steeringGoal} shows it, counted from the pour-in; how far it is past, if
 * it is; what the bath has done to it; what the image's appearance has done to it, where it was seen
 * @throws TypeError when an argument or a field is of the wrong kind
 * @throws RangeError when a time is out of range, or the unit none of the two
 *
 * @remarks The bath is called colder or warmer where the clock and the work done differ by 5 s by the end.
 * The work done so far is told where it differs as much, else what is expected. Other cautions are not
 * repeated.
 *
 * @example
 * ```ts
 * const baseline = { timeS: 600, temperatureC: 20 };
 * const log = [{ timeS: 0, temperatureC: 20 }, { timeS: 240, temperatureC: 18 }];
 * const lines = describeSteering(steer({ baseline, conditions: {}, log }));
 * lines[0] // => "Pour out 12:30 after the pour-in."
 * lines[1] // => "The bath is colder than planned: 4:00 has done the work of 3:40."
 * ```
 */
export function describeSteering(
  answer: SteerAnswer,
  texts: SteeringTexts = steeringTexts,
  options: DescribeSteeringOptions = {},
): readonly string[] {
  const at = "describeSteering/answer";
  const { nowS, total, equivalent, seen, action, trusted, cautions } = plainObject(
    at,
    answer,
  ) as unknown as SteerAnswer;
  checkedTexts("describeSteering/texts", texts, steeringTexts);
  const unit = temperatureUnit("describeSteering/options", options) ?? "C";
  const { vessel = "tank", stepS } = options;
  isText("describeSteering/options/vessel", vessel);
  const lift = vessel === "tray";
  const rounded = inNameOf("describeSteering", () => steeringGoal(answer, { stepS }));
  const moment = (where: string, timeS: number): string =>
    formatTime(inRange(`${at}/${where}`, timeS, 0, 1e7, "timeS"), { stepS: followedStepS });
  checkedCautions(`${at}/cautions`, cautions);
  const said = (one: Caution | undefined): readonly string[] =>
    one === undefined ? [] : [cautionSentence(one, texts.cautions, unit)];
  const coded = (wanted: CautionCode): Caution | undefined => cautions.find(({ code }) => code === wanted);
  const passed = said(coded("target-passed"));
  const doubts = trusted ? [] : [...said(newestDoubt(cautions)), ...said(coded("forecast-only"))];
  const stops = timeStops(cautions).map(
    (one) => `${texts.cautions.severities.stop}: ${cautionSentence(one, texts.cautions, unit)}`,
  );
  const refused = stops.length > 0;
  const goalTime = formatTime(rounded.timeS);
  const ready = action === "pour-out" ? texts.now(lift) : texts.goal(goalTime, lift);
  const { nowS: doneS, timeS: neededS } = plainObject(
    `${at}/equivalent`,
    equivalent,
  ) as unknown as SteerAnswer["equivalent"];
  for (const [where, timeS] of Object.entries({
    "nowS": nowS,
    "equivalent/nowS": doneS,
    "equivalent/timeS": neededS,
  }))
    inRange(`${at}/${where}`, timeS, 0, 1e7, "timeS");
  const soFar = nowS - doneS;
  const byTheEnd = total.timeS - neededS;
  // What the goal does of itself, and what is expected of the bath, differ by what the clock is followed by.
  const workS =
    rounded.timeS -
    Math.sign(byTheEnd) * toStep(Math.abs(byTheEnd), Math.min(stepS ?? followedStepS, followedStepS));
  const differs = (s: number): boolean => Math.abs(s) >= followedStepS;
  const colder = byTheEnd > 0;
  const bath =
    differs(soFar) && soFar > 0 === colder
      ? texts.drifted(colder, moment("nowS", nowS), moment("equivalent/nowS", doneS))
      : texts.drifting(colder, goalTime, formatTime(workS));
  // Nothing is as planned once the target is past, or where the time is refused.
  const asPlanned = passed.length > 0 || refused ? [] : [texts.asPlanned];
  return [
    ...(refused ? [texts.refused, ...stops] : []),
    ...doubts,
    refused ? texts.refusedGoal(goalTime, lift) : ready,
    ...passed,
    ...(differs(byTheEnd) ? [bath] : asPlanned),
    ...(seen === undefined ? [] : [image(seen.timeS, total.timeS, rounded.stepS, texts)]),
  ];
}

/** Why the newest reading is in doubt: only such a caution stops for a reading. */
const newestDoubt = (cautions: readonly Caution[]): Caution | undefined =>
  cautions.filter(({ severity, path }) => severity === "stop" && path?.startsWith("/log/")).at(-1);

/** Whether the image came early or late: by itself it asks for less or more than both say together. */
function image(seenS: number, totalS: number, stepS: number, texts: SteeringTexts): string {
  const later = seenS - totalS;
  const when = Math.abs(later) < stepS ? "on-time" : later > 0 ? "late" : "early";
  return texts.appeared(when, formatTime(seenS, { stepS }));
}
