import {
  bathTemperature,
  inverseKelvin,
  lawSlope,
  tableTime,
  ZERO_CELSIUS_K,
  type TemperatureLaw,
  type TemperatureRow,
} from "../temperature/law.js";
import { integrate } from "./integrate.js";
import { checkedLog, type TemperatureLog, type TemperatureReading } from "./log.js";

/**
 * How long a bath of steady temperature would have taken for what a drifting one has done.
 *
 * @param log - two or more readings, times strictly rising; linear between readings
 * @param law - the temperature law of developer and material
 * @param referenceC - the temperature of the steady bath, 0 to 100 °C
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
 * equivalentTime(log, { kind: "coefficient", ratio: 2, intervalC: 10 }, 20) // => 501.89
 * ```
 */
export function equivalentTime(log: TemperatureLog, law: TemperatureLaw, referenceC: number): number {
  const readings = checkedLog("equivalentTime/log", log);
  const slope = lawSlope("equivalentTime", law);
  bathTemperature("equivalentTime/referenceC", referenceC);
  if (law.kind === "table") return logUnderTable(readings, law.rows, referenceC);
  return lawTime(readings, Math.abs(slope as number), referenceC, law.kind === "arrhenius" ? 1 : 0);
}

/**
 * Up to this change of ln(rate) over a stretch its slopes at both ends are enough: 0.016⁴/720 is below 1e-10.
 */
const SMALL_STEP = 0.016;

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
  const smallC = Math.min(SMALL_STEP_C / bent, SMALL_STEP / perX / (straight + bent / ZERO_CELSIUS_K ** 2));
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

function logUnderTable(
  readings: TemperatureLog,
  rows: readonly TemperatureRow[],
  referenceC: number,
): number {
  const timeAt = tableTime(rows);
  const referenceS = timeAt(referenceC);
  return readings.reduce((sum, { timeS, temperatureC }, i) => {
    const from = readings[i - 1];
    if (from === undefined) return 0;
    return (
      sum +
      (timeS - from.timeS) * meanRate((c) => referenceS / timeAt(c), from.temperatureC, temperatureC, rows)
    );
  }, 0);
}

/**
 * The mean of a rate between two temperatures, cut at the rows of a table: its curve has a corner in its
 * curvature there.
 */
function meanRate(
  rate: (temperatureC: number) => number,
  fromC: number,
  toC: number,
  rows: readonly TemperatureRow[] = [],
): number {
  const low = Math.min(fromC, toC);
  const high = Math.max(fromC, toC);
  // Over less than this the rate cannot change by 1e-10, and a mean over no width at all is none.
  if (high - low < 1e-10) return rate(low);
  const cuts = [high];
  for (const { temperatureC } of rows) if (temperatureC > low && temperatureC < high) cuts.push(temperatureC);
  const tolerance = 1e-12 * (rate(low) + rate(high));
  let sum = 0;
  let from = low;
  for (const to of cuts.sort((a, b) => a - b)) {
    sum += integrate(rate, from, to, tolerance * (to - from));
    from = to;
  }
  return sum / (high - low);
}
