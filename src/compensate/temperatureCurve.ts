import { interpolateNumber, quantize } from "d3-interpolate";
import { causes } from "../causes.js";
import type { TimeEstimate } from "../core/estimate.js";
import { inRange, plainObject, refuse } from "../core/guards.js";
import { checkedTemperatureLaw, type TemperatureLaw } from "../temperature/law.js";
import { prepared } from "./loop.js";
import type { Baseline } from "./types.js";

/** What a curve of time over temperature is drawn from. */
export interface TemperatureCurveOptions {
  /** the known time and its conditions */
  readonly baseline: Baseline;
  /** the temperature that the curve begins at, 0 to 100 °C */
  readonly fromC: number;
  /** the temperature that it ends at, 0 to 100 °C; it may be the lower one */
  readonly toC: number;
  /** how many points, both ends included: whole, 2 to 10,000 */
  readonly points: number;
  /** the temperature law; the generic one when left out */
  readonly law?: TemperatureLaw | undefined;
}

/** A point of the curve: the median and the 90 % interval, in s, at a temperature in °C. */
export interface TemperatureCurvePoint extends TimeEstimate {
  readonly temperatureC: number;
  /** a caution of severity `"stop"` is in the way of the time here */
  readonly refused?: true;
}

/**
 * Time over temperature for a chart: points at equal steps, each with its 90 % interval.
 *
 * @param options - the known time, the range of temperatures, the number of points and perhaps the law
 * @returns the points from `fromC` to `toC`, all other conditions as in the baseline; `refused` where the
 * time must not be trusted
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a number or the law is out of range, or `points` is not whole
 *
 * @remarks Each point is the answer of `compensate` at that temperature. Temperatures are rounded to ten
 * decimals, so that a step that falls on 14 °C is 14 and meets the row of a table exactly. A curve is drawn
 * with straight lines between points: for the generic law, 30 points from 10 to 30 °C stay within 0.1 %.
 *
 * @example
 * ```ts
 * const law = { kind: "coefficient", ratio: 2, intervalC: 10 };
 * const baseline = { timeS: 510, temperatureC: 20 };
 * const curve = temperatureCurve({ baseline, fromC: 10, toC: 30, points: 5, law });
 * curve.map(({ temperatureC, timeS }) => [temperatureC, timeS])[0] // => [10, 1020]
 * ```
 */
export function temperatureCurve(options: TemperatureCurveOptions): readonly TemperatureCurvePoint[] {
  const { baseline, fromC, toC, points, law } = plainObject(
    "temperatureCurve/options",
    options,
  ) as unknown as TemperatureCurveOptions;
  inRange("temperatureCurve/fromC", fromC, 0, 100, "temperatureC");
  inRange("temperatureCurve/toC", toC, 0, 100, "temperatureC");
  inRange("temperatureCurve/points", points, 2, 10_000, "count");
  if (!Number.isInteger(points)) refuse("temperatureCurve/points", `must be whole, got ${points}`, points);
  if (law !== undefined) checkedTemperatureLaw("temperatureCurve/law", law);
  const ask = prepared("temperatureCurve", causes, baseline, law === undefined ? {} : { temperature: law });
  return quantize(interpolateNumber(fromC, toC), points).map((sampledC) => {
    const temperatureC = Number(sampledC.toFixed(10));
    const { timeS, lowS, highS, refused } = ask.answer({ temperatureC });
    const point = { temperatureC, timeS, lowS, highS };
    return refused ? { ...point, refused: true } : point;
  });
}
