import { causes } from "../causes.js";
import { prepared } from "./loop.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "./types.js";

/**
 * The main job: a known development time, compensated for today's conditions.
 *
 * @param baseline - the known time in s and the conditions it is known for
 * @param conditions - today's conditions; what is left out is as in the baseline. A dilution, agitation or
 * gradient that the baseline lacks is an error; use, age and push start at 0
 * @param knowledge - laws known for this developer and material; generic laws are used for the rest
 * @returns the median time and its 90 % interval in s, unrounded; whether a caution of severity `"stop"` is
 * in the way; one row per cause with value, spread, basis and sources; cautions
 * @throws TypeError when a field is of the wrong kind, or a condition is given whose counterpart the baseline
 * lacks
 * @throws RangeError when a value is out of range, or the spreads of the laws add up to more than 100 in
 * ln(time)
 *
 * @remarks time = baseline time × the product of the factors; the variances of ln(time) add. With the
 * baseline's own conditions the baseline time comes back to the last bit. A `"stop"` caution means that the
 * time must not be trusted with a negative: a bath past its life still gets the number that a living one
 * would need, so look at `refused` first. The causes are taken as independent, but for laws that were learned
 * together, whose covariance counts. A log or forecast of temperature gives the clock time of `developUntil`,
 * with the law's spread carried along it; a gradient acts through the growth law, the image's appearance
 * included, since one temperature coefficient serves both: E. J. Wall, Thermo-Entwicklung, Jahrbuch 24,
 * Halle, 1910, p. 44.
 *
 * @example
 * ```ts
 * const known = { timeS: 510, temperatureC: 20 };
 * const laws: Knowledge = { temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } };
 * compensate(known, { temperatureC: 18 }, laws).timeS // => 585.8
 * ```
 */
export function compensate(
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge = {},
): Compensation {
  return prepared("compensate", causes, baseline, knowledge).answer(conditions);
}
