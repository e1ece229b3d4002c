import { inRange } from "../core/guards.js";
import { ageFactor, slowingRootH, type AgeLaw } from "./ageFactor.js";

/**
 * The standard deviation of the ln of the age factor between two ages of a bath.
 *
 * @param law - the age law, or `undefined` when nothing is known of how the bath ages
 * @param fromH - age when the known time was found, 0 to 1e6 h
 * @param toH - age today, 0 to 1e6 h
 * @returns the standard deviation in ln(time), 0 when both are the same
 * @throws TypeError or RangeError as {@link ageFactor} does, and a RangeError when `law.sdLog` or
 * `law.sdPerRootH` is not from 0 to 3
 *
 * @remarks half-life: the standard deviation of ln(half-life), 0.3 unless the law says otherwise, times ln
 * 2·Δage/halfLife. life: 10 % over the whole life, in proportion, since a plateau in print is one eye's
 * judgement. slowing: `sdPerRootH` times the difference of the roots of both ages, each held at 25 h. No law,
 * or a slowing one that no run has taught yet (`runs` 0): 10 % for the first hour, growing with the square
 * root of the difference and at most 50 %; an assumption of this package, wide because nothing is known.
 *
 * @example
 * ```ts
 * ageLogSd({ kind: "half-life", halfLifeH: 24 }, 0, 12) // => 0.10397
 * ```
 */
export function ageLogSd(law: AgeLaw | undefined, fromH: number, toH: number): number {
  const differenceH = Math.abs(
    inRange("ageLogSd/toH", toH, 0, 1e6, "ageH") - inRange("ageLogSd/fromH", fromH, 0, 1e6, "ageH"),
  );
  const unknown = Math.min(0.5, 0.1 * Math.sqrt(differenceH));
  if (law === undefined) return unknown;
  ageFactor(0, 0, law);
  if (law.kind === "life") return (0.1 * differenceH) / law.lifeH;
  if (law.kind === "slowing") {
    const bySlope =
      inRange("ageLogSd/law/sdPerRootH", law.sdPerRootH ?? 0.1, 0, 3) *
      Math.abs(slowingRootH(toH) - slowingRootH(fromH));
    return law.runs === 0 ? unknown : bySlope;
  }
  return (inRange("ageLogSd/law/sdLog", law.sdLog ?? 0.3, 0, 3) * Math.LN2 * differenceH) / law.halfLifeH;
}
