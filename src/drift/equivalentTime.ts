import { bathTemperature, lawSlope, tableLogTime, ZERO_CELSIUS_K, type TemperatureLaw } from "../temperature/law.js";
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
 * @throws RangeError when a value is out of range, readings are fewer than two or not in the order of time, or the result passes 1e300 s
 *
 * @remarks ∫ rate(T(t)) dt, rate 1 at `referenceC`; better than 1e-9 relative however far apart the readings are. A coefficient
 * integrates in closed form. For Arrhenius the order follows the stretch: with u the change of ln(rate) over it, values and slopes at
 * its ends below u = 0.016 (error u⁴/720), else adaptive Gauss-Lobatto, by which a table goes too,
 * cut at its rows. The same integral is maturity in concrete (ASTM C1074) and F0 in sterilisation.
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
  const readings = checkedLog("equivalentTime: log", log);
  const slope = lawSlope("equivalentTime:", law);
  bathTemperature("equivalentTime: referenceC", referenceC);
  if (law.kind === "arrhenius") return arrheniusTime(readings, slope as number, referenceC);
  if (law.kind === "coefficient") return coefficientTime(readings, -(slope as number), referenceC);
  return tableTime(readings, law, referenceC);
}

/** ln(rate) linear in time on each stretch: the mean rate is (e^u − 1)/u of the first one, u the change of ln(rate). */
function coefficientTime(readings: TemperatureLog, perC: number, referenceC: number): number {
  let { timeS: beforeS, temperatureC: beforeC } = readings[0] as TemperatureReading;
  let rate = Math.exp(perC * (beforeC - referenceC));
  let sum = 0;
  for (let i = 1; i < readings.length; i += 1) {
    const { timeS, temperatureC } = readings[i] as TemperatureReading;
    const u = perC * (temperatureC - beforeC);
    const rise = rate * Math.expm1(u);
    sum += (timeS - beforeS) * (u === 0 ? rate : rise / u);
    // Over a long fall the sum would lose its figures.
    rate = u * u < 1 ? rate + rise : Math.exp(perC * (temperatureC - referenceC));
    beforeS = timeS;
    beforeC = temperatureC;
  }
  return sum;
}

/** Up to this change of ln(rate) over a stretch its slopes at both ends are enough: 0.016⁴/720 is below 1e-10. */
const SMALL_STEP = 0.016;

function arrheniusTime(readings: TemperatureLog, energyK: number, referenceC: number): number {
  const reference = energyK / (referenceC + ZERO_CELSIUS_K);
  let { timeS: beforeS, temperatureC: beforeC } = readings[0] as TemperatureReading;
  let beforeX = 1 / (beforeC + ZERO_CELSIUS_K);
  let before = Math.exp(reference - energyK * beforeX);
  let sum = 0;
  for (let i = 1; i < readings.length; i += 1) {
    const { timeS, temperatureC } = readings[i] as TemperatureReading;
    const x = 1 / (temperatureC + ZERO_CELSIUS_K);
    const rate = Math.exp(reference - energyK * x);
    const steep = energyK * (temperatureC - beforeC);
    const u0 = steep * beforeX * beforeX;
    const u1 = steep * x * x;
    const mean =
      Math.abs(u0) + Math.abs(u1) < 2 * SMALL_STEP
        ? (before + rate) / 2 + (before * u0 - rate * u1) / 12
        : meanRate((c) => Math.exp(reference - energyK / (c + ZERO_CELSIUS_K)), beforeC, temperatureC);
    sum += (timeS - beforeS) * mean;
    beforeS = timeS;
    beforeC = temperatureC;
    beforeX = x;
    before = rate;
  }
  return sum;
}

type TableLaw = Extract<TemperatureLaw, { kind: "table" }>;

function tableTime(readings: TemperatureLog, law: TableLaw, referenceC: number): number {
  const logTime = tableLogTime(law.rows);
  const reference = logTime(referenceC);
  const corners = law.rows.map((row) => row.temperatureC).sort((a, b) => a - b);
  return readings.reduce((sum, { timeS, temperatureC }, i) => {
    const from = readings[i - 1];
    if (from === undefined) return 0;
    const mean = meanRate((c) => Math.exp(reference - logTime(c)), from.temperatureC, temperatureC, corners);
    return sum + (timeS - from.timeS) * mean;
  }, 0);
}

/** The mean of a rate between two temperatures, cut where its curve has a corner in its curvature. */
function meanRate(rate: (temperatureC: number) => number, fromC: number, toC: number, corners: readonly number[] = []): number {
  const low = Math.min(fromC, toC);
  const high = Math.max(fromC, toC);
  // Over less than this the rate cannot change by 1e-10, and a mean over no width at all is none.
  if (high - low < 1e-10) return rate(low);
  const cuts = [low, ...corners.filter((corner) => corner > low && corner < high), high];
  const tolerance = 1e-12 * (rate(low) + rate(high)) * (high - low);
  return cuts.slice(1).reduce((area, cut, i) => area + integrate(rate, cuts[i] as number, cut, tolerance), 0) / (high - low);
}
