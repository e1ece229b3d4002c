import { checkedPicture } from "./checkedPicture.js";
import type { AnswerPicture, PictureRung } from "./types.js";

/**
 * A picture after a test strip was judged: the ladder of the answer before it, and one more rung for what the
 * strip did.
 *
 * @param before - the picture of the answer without the strip
 * @param after - that of the answer with it, under the same conditions
 * @returns `after` with the known time and the causes of `before`, then a rung of the cause `"strip"`, then
 * the sum
 * @throws TypeError when a picture or a part of it is of the wrong kind
 * @throws RangeError when a figure is out of range
 *
 * @remarks What was learned from the strip moves the known time and several laws a little each. Shown one by
 * one that hides what happened: today's own test changed the time. The whisker of that rung is today's
 * interval, since the strip says how long it takes, not how much longer. Where one of the two has no time,
 * `after` comes back as it is.
 *
 * @example
 * ```ts
 * const known = { timeS: 510, temperatureC: 20 };
 * const run: DevelopmentRun = { timeS: 900, temperatureC: 14, outcome: { kind: "good" } };
 * const knowledge = learn(startKnowledge(known), [run]);
 * const conditions = { temperatureC: 14 };
 * const before = answerPicture({ baseline: known, conditions });
 * const after = answerPicture({ baseline: knowledge.baseline, conditions, knowledge });
 * const { rungs } = pictureAfterStrip(before, after);
 * rungs.map(({ cause }) => cause) // => ["baseline", "temperature", "strip", "together"]
 * ```
 */
export function pictureAfterStrip(before: AnswerPicture, after: AnswerPicture): AnswerPicture {
  checkedPicture("pictureAfterStrip/before", before);
  checkedPicture("pictureAfterStrip/after", after);
  const { today: untested, known, curves, rungs } = before;
  const { today } = after;
  if (untested === undefined || today === undefined) return after;
  const { timeS: endS, lowS, highS } = today;
  const { timeS: startS } = untested;
  const ends = { endS, lowS, highS, general: false };
  const percent = (from: number): number => 100 * (endS / from - 1);
  const strip: PictureRung = { kind: "cause", cause: "strip", startS, percent: percent(startS), ...ends };
  const sum = { kind: "sum", cause: "together", startS: known.timeS, percent: percent(known.timeS) } as const;
  return {
    ...after,
    known,
    curves: { ...after.curves, known: curves.known, same: false },
    rungs: [...rungs.filter(({ kind }) => kind !== "sum"), strip, { ...sum, ...ends }],
  };
}
