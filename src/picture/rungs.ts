/*
 * The ladder: each cause starts where the last one ended.
 */
import type { Compensation, Factor } from "../compensate/types.js";
import { timeEstimate } from "../core/estimate.js";
import type { PictureRung } from "./types.js";

/** The rungs of an answer: the known time, each cause that changes it or makes it less sure, and the sum. */
export function rungsOf(knownS: number, { factors, ...sum }: Compensation): readonly PictureRung[] {
  const rungs: PictureRung[] = [];
  let startS = knownS;
  for (const factor of factors) {
    const { cause, value, logSd, basis } = factor;
    const known = cause === "baseline";
    if (!known && value === 1 && logSd === 0) continue;
    const endS = startS * value;
    const { lowS, highS } = timeEstimate(endS, logSd);
    rungs.push({
      kind: known ? "known" : "cause",
      cause,
      startS,
      endS,
      lowS,
      highS,
      percent: 100 * (value - 1),
      basis,
      general: basis === "default",
      ...sidesOf(factor),
    });
    startS = endS;
  }
  const { timeS, lowS, highS } = sum;
  const percent = 100 * (timeS / knownS - 1);
  return [
    ...rungs,
    { kind: "sum", cause: "together", startS: knownS, endS: timeS, lowS, highS, percent, general: false },
  ];
}

/** Both sides of a change; a log or a forecast of temperature has no short form. */
function sidesOf({ cause, from, to }: Factor): Pick<PictureRung, "from" | "to"> {
  const short = cause !== "temperature" || typeof to === "number";
  return { ...(from === undefined ? {} : { from }), ...(to === undefined || !short ? {} : { to }) };
}
