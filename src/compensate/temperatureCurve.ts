import { interpolateNumber, quantize } from "d3-interpolate";
import { causes } from "../causes.js";
import type { TimeEstimate } from "../core/estimate.js";
import { inRange, plainObject, wrongKind } from "../core/guards.js";
import { checkedTemperatureLaw, type TemperatureLaw } from "../temperature/law.js";
import { prepared } from "./loop.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "./types.js";

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
  /** the temperature law; that of `knowledge` when left out */
  readonly law?: TemperatureLaw | undefined;
  /** what else is otherwise today: dilution, agitation, use; as in the baseline when left out */
  readonly conditions?: Omit<Conditions, "temperatureC"> | undefined;
  /** laws known for this developer and material; generic laws are used for the rest */
  readonly knowledge?: Knowledge | undefined;
}

/** A point of the curve: the median and the 90 % interval, in s, at a temperature in °C. */
export interface TemperatureCurvePoint extends TimeEstimate {
  /** °C */
  readonly temperatureC: number;
  /** a caution of severity `"stop"` is in the way of the time here */
  readonly refused?: true | undefined;
}

/**
 * Time over temperature for a chart: points at equal steps, each with its 90 % interval.
 *
 * @param options - the known time, the range of temperatures, the number of points, and perhaps the law,
 * other conditions and knowledge
 * @returns the points from `fromC` to `toC`, all other conditions as in the baseline unless `conditions`
 * names them; `refused` where the time must not be trusted
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a number or the law is out of range
 *
 * @remarks Each point is the answer of `compensate` at that temperature. Temperatures are rounded to ten
 * decimals, so that a step that falls on 14 °C is 14 and meets the row of a table exactly. A curve is drawn
 * with straight lines between points: for the generic law, 30 points from 10 to 30 °C stay within 0.1 %.
 *
 * @example
 * ```ts
 * const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
 * const baseline = { timeS: 510, temperatureC: 20 };
 * const curve = temperatureCurve({ baseline, fromC: 10, toC: 30, points: 5, law });
 * curve.map(({ temperatureC, timeS }) => [temperatureC, timeS])[0] // => [10, 1020]
 * ```
 */
export function temperatureCurve(options: TemperatureCurveOptions): readonly TemperatureCurvePoint[] {
  const { baseline, fromC, toC, points, law, conditions, knowledge } = plainObject(
    "temperatureCurve/options",
    options,
  ) as unknown as TemperatureCurveOptions;
  inRange("temperatureCurve/fromC", fromC, 0, 100, "temperatureC");
  inRange("temperatureCurve/toC", toC, 0, 100, "temperatureC");
  inRange("temperatureCurve/points", points, 2, 10_000, "count");
  if (!Number.isInteger(points)) wrongKind("temperatureCurve/points", ["whole number"], points);
  if (law !== undefined) checkedTemperatureLaw("temperatureCurve/law", law);
  if (conditions !== undefined) plainObject("temperatureCurve/conditions", conditions);
  if (knowledge !== undefined) plainObject("temperatureCurve/knowledge", knowledge);
  const laws = law === undefined ? knowledge : { ...knowledge, temperature: law };
  const ask = prepared("temperatureCurve", causes, baseline, laws ?? {});
  return curveThrough(
    (temperatureC) => ask.answer({ ...conditions, temperatureC }),
    sampledC(fromC, toC, points),
  );
}

/** Temperatures at equal steps, both ends included, °C. */
function sampledC(fromC: number, toC: number, points: number): readonly number[] {
  return quantize(interpolateNumber(fromC, toC), points).map((sampled) => Number(sampled.toFixed(10)));
}

/** The points of a curve at some temperatures. */
export function curveThrough(
  ask: (temperatureC: number, i: number) => Compensation,
  temperaturesC: readonly number[],
): readonly TemperatureCurvePoint[] {
  return temperaturesC.map((temperatureC, i) => {
    const { timeS, lowS, highS, refused } = ask(temperatureC, i);
    const point = { temperatureC, timeS, lowS, highS };
    return refused ? { ...point, refused: true } : point;
  });
}
