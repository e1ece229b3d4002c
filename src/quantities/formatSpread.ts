import { Z90 } from "../core/estimate.js";
import { inRange } from "../core/guards.js";

/**
 * Writes how well a time is known: nine times in ten within so much of it.
 *
 * @param logSd - standard deviation of ln(time), 0 to 3
 * @returns a share to two digits and no finer than 0.01 %, `"10 %"`, `"4.5 %"`, `"180 %"`; `"0 %"` for a time
 * that is known exactly
 * @throws TypeError when it is not a number
 * @throws RangeError when it is out of range
 *
 * @remarks e^(1.645·logSd) − 1, by how much the upper end of the 90 % interval lies above the time.
 * `parseSpread` reads it back.
 *
 * @example
 * ```ts
 * formatSpread(0.058) // => "10 %"
 * formatSpread(0.63) // => "180 %"
 * ```
 */
export function formatSpread(logSd: number): string {
  const percent = 100 * Math.expm1(Z90 * inRange("formatSpread/logSd", logSd, 0, 3));
  return `${Number(percent < 0.1 ? percent.toFixed(2) : percent.toPrecision(2))} %`;
}
