import { firstFrom } from "../core/curve.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import {
  bathTemperature,
  checkedTemperatureLaw,
  GAS_CONSTANT_KJ,
  inverseKelvin,
  ZERO_CELSIUS_K,
  type ReadyTemperatureLaw,
  type TemperatureLaw,
} from "../temperature/law.js";
import { rateUnder } from "../temperature/rateFunction.js";
import { integrate } from "./integrate.js";
import { checkedLog, type TemperatureLog, type TemperatureReading } from "./log.js";

/**
 * How long a bath of steady temperature would have taken for what a drifting one has done.
 *
 * @param log - two or more readings, times strictly rising; linear between readings
 * @param referenceC - the temperature of the steady bath, 0 to 100 °C
 * @param law - the temperature law of developer and material; the generic one when left out
 * @returns equivalent time at `referenceC` from the first reading to the last, s
 * @throws TypeError when an argument or a field is of the wrong kind
 * @throws RangeError when a value is out of range, or readings are fewer than two or not in the order of time
 *
 * @remarks ∫ rate(T(t)) dt, rate 1 at `referenceC`; better than 1e-9 relative however far apart the readings
 * are. With u the change of ln(rate) over a stretch, its ends' values and slopes are enough up to u = 0.016
 * (error u⁴/720); beyond it a coefficient integrates in closed form, and Arrhenius by adaptive Gauss-Lobatto,
 * by which a table goes too, from row to row. The same integral is maturity in concrete (ASTM C1074) and F0
 * in sterilisation.
 *
 * @example
 * ```ts
 * const log = [
 *   { timeS: 0, temperatureC: 22 },
 *   { timeS: 240, temperatureC: 20.5 },
 *   { timeS: 480, temperatureC: 19.5 },
 * ];
 * equivalentTime(log, 20, { kind: "coefficient", ratio: 2, intervalC: 10 }) // => 501.89
 * ```
 */
export function equivalentTime(
  log: TemperatureLog,
  referenceC: number,
  law: TemperatureLaw = genericTemperatureLaw,
): number {
  const readings = checkedLog("equivalentTime/log", log);
  const ready = checkedTemperatureLaw("equivalentTime/law", law);
  bathTemperature("equivalentTime/referenceC", referenceC);
  if (ready.kind === "table")
    return logWithCorners(
      readings,
      ready,
      [
        ...ready.rows.map(({ temperatureC }) => temperatureC),
        ...(ready.departures ?? []).map(({ at }) => at),
      ],
      referenceC,
    );
  if (ready.kind === "arrhenius" && ready.walk !== undefined)
    return logWithCorners(
      readings,
      ready,
      (ready.departures ?? []).map(({ at }) => at),
      referenceC,
    );
  if (ready.kind === "arrhenius")
    return lawTime(readings, ready.activationEnergyKJPerMol / GAS_CONSTANT_KJ, referenceC, 1);
  return lawTime(readings, Math.log(ready.ratio) / ready.intervalC, referenceC, 0);
}

/**
 * Up to this change of ln(rate) over a stretch its slopes at both ends are enough: 0.016⁴/720 is below 1e-10.
 */
const SMALL_STEP = 0.016;

/** The same where ln(rate) is straight in °C and has a closed form: 0.005⁴/720 is below 1e-12. */
const SMALL_STRAIGHT_STEP = 0.005;

/**
 * And for Arrhenius up to this many °C, since the slope changes as well: with w = 1.5 °C/273 K, uw³/30 is
 * below 1e-10 too.
 */
const SMALL_STEP_C = 1.5;

/**
 * ln(rate) is linear in x = °C for a coefficient, in x = −1/T for Arrhenius, `perX` its slope. Both are
 * straight·°C − bent/T with one of the two 1 and the other 0: without a branch the loop is compiled once for
 * all laws.
 */
function lawTime(readings: TemperatureLog, perX: number, referenceC: number, bent: 0 | 1): number {
  const straight = 1 - bent;
  const referenceX = straight * referenceC - bent * inverseKelvin(referenceC);
  const smallC = bent
    ? Math.min(SMALL_STEP_C, (SMALL_STEP / perX) * ZERO_CELSIUS_K ** 2)
    : SMALL_STRAIGHT_STEP / perX;
  let { timeS: beforeS, temperatureC: beforeC } = readings[0] as TemperatureReading;
  const firstInverse = inverseKelvin(beforeC);
  let before = Math.exp(perX * (straight * beforeC - bent * firstInverse - referenceX));
  // The rate's slope over the temperature, but for perX.
  let beforeSlope = before * (straight + bent * firstInverse * firstInverse);
  let sum = 0;
  for (let i = 1; i < readings.length; i += 1) {
    const { timeS, temperatureC } = readings[i] as TemperatureReading;
    const inverse = inverseKelvin(temperatureC);
    const rate = Math.exp(perX * (straight * temperatureC - bent * inverse - referenceX));
    const warmer = temperatureC - beforeC;
    const u = perX * warmer;
    const slope = rate * (straight + bent * inverse * inverse);
    let mean: number;
    if (Math.abs(warmer) < smallC) mean = (before + rate) / 2 + (u * (beforeSlope - slope)) / 12;
    else if (bent) mean = arrheniusMean(perX, referenceX, beforeC, temperatureC);
    else mean = (rate - before) / u;
    sum += (timeS - beforeS) * mean;
    beforeS = timeS;
    beforeC = temperatureC;
    before = rate;
    beforeSlope = slope;
  }
  return sum;
}

/** Apart, so that the loop above keeps its variables where they are fast. */
function arrheniusMean(perX: number, referenceX: number, fromC: number, toC: number): number {
  return meanRate((c) => Math.exp(perX * (-inverseKelvin(c) - referenceX)), fromC, toC);
}

/**
 * Between two rows the curve of a table is one cubic; at a row its curvature has a corner, and at a departure
 * the slope. So each stretch is cut at the corners that it crosses, and what lies between neighbouring ones
 * is worked out once for the whole log.
 */
function logWithCorners(
  readings: TemperatureLog,
  law: ReadyTemperatureLaw,
  corners: readonly number[],
  referenceC: number,
): number {
  const rate = rateUnder(law, referenceC);
  const work = workBetween(
    rate,
    corners.map((x) => ({ x })).sort((a, b) => a.x - b.x),
  );
  let sum = 0;
  for (let i = 1; i < readings.length; i += 1) {
    const from = readings[i - 1] as TemperatureReading;
    const to = readings[i] as TemperatureReading;
    const low = Math.min(from.temperatureC, to.temperatureC);
    const high = Math.max(from.temperatureC, to.temperatureC);
    // Temperatures this near have one rate: their difference would be mostly rounding.
    const mean = high - low < 1e-10 ? rate(low) : work(low, high) / (high - low);
    sum += (to.timeS - from.timeS) * mean;
  }
  return sum;
}

/** The integral of a rate over temperature, from low to high; the cuts are where it has corners, rising. */
function workBetween(
  rate: (temperatureC: number) => number,
  cuts: readonly { readonly x: number }[],
): (low: number, high: number) => number {
  const cut = (i: number): number => (cuts[i] as { readonly x: number }).x;
  const piece = (low: number, high: number): number =>
    integrate(rate, low, high, 1e-12 * (rate(low) + rate(high)) * (high - low));
  /** from the first cut to each, made when a stretch first crosses two */
  let whole: number[] | undefined;
  const upTo = (): number[] => {
    const sums = [0];
    for (let i = 1; i < cuts.length; i += 1) sums.push((sums[i - 1] as number) + piece(cut(i - 1), cut(i)));
    return sums;
  };
  return (low, high) => {
    const first = firstFrom(cuts, low);
    const last = firstFrom(cuts, high) - 1;
    if (first > last) return piece(low, high);
    whole ??= upTo();
    const inside = (whole[last] as number) - (whole[first] as number);
    return piece(low, cut(first)) + inside + piece(cut(last), high);
  };
}

/** The mean of an Arrhenius rate over a wide stretch. */
function meanRate(rate: (temperatureC: number) => number, fromC: number, toC: number): number {
  const low = Math.min(fromC, toC);
  const high = Math.max(fromC, toC);
  return integrate(rate, low, high, 1e-12 * (rate(low) + rate(high)) * (high - low)) / (high - low);
}
