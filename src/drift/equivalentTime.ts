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
 * its ends below u = 0.016 (error u⁴/720), else curvatures as well (u⁶/100800), cut until u is below 0.14. A table goes by adaptive Gauss-Lobatto, cut at its
 * rows. The same integral is maturity in concrete (ASTM C1074) and F0 in sterilisation.
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

/** ln(rate) linear in time on each stretch: the logarithmic mean of the two rates, times the stretch. */
function coefficientTime(readings: TemperatureLog, perC: number, referenceC: number): number {
  let { timeS: beforeS, temperatureC: beforeC } = readings[0] as TemperatureReading;
  let before = Math.exp(perC * (beforeC - referenceC));
  let sum = 0;
  for (let i = 1; i < readings.length; i += 1) {
    const { timeS, temperatureC } = readings[i] as TemperatureReading;
    const rate = Math.exp(perC * (temperatureC - referenceC));
    const u = perC * (temperatureC - beforeC);
    const square = u * u;
    // tanh(u/2)/(u/2) as a series where the difference of two near rates would lose figures.
    const mean = square < 1e-3 ? ((before + rate) / 2) * (1 - square / 12 + (square * square) / 120) : (rate - before) / u;
    sum += (timeS - beforeS) * mean;
    beforeS = timeS;
    beforeC = temperatureC;
    before = rate;
  }
  return sum;
}

/** Up to this change of ln(rate) over a stretch its slopes at both ends are enough: 0.016⁴/720 is below 1e-10. */
const SMALL_STEP = 0.016;

/** The largest change of ln(rate) over one piece of the quintic rule: 0.14⁶/100800 is below 1e-10. */
const LARGEST_STEP = 0.14;

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
        : arrheniusMean(energyK, reference, beforeC, temperatureC);
    sum += (timeS - beforeS) * mean;
    beforeS = timeS;
    beforeC = temperatureC;
    beforeX = x;
    before = rate;
  }
  return sum;
}

/** The mean rate over a stretch of any length, cut into pieces of the quintic rule. */
function arrheniusMean(energyK: number, reference: number, fromC: number, toC: number): number {
  const from = 1 / (fromC + ZERO_CELSIUS_K);
  const to = 1 / (toC + ZERO_CELSIUS_K);
  const pieces = Math.ceil(Math.abs(energyK * (from - to)) / LARGEST_STEP);
  const step = (toC - fromC) / pieces;
  let x = from;
  let before = Math.exp(reference - energyK * x);
  let area = 0;
  for (let piece = 1; piece <= pieces; piece += 1) {
    const w0 = step * x;
    const u0 = energyK * x * w0;
    x = 1 / (fromC + step * piece + ZERO_CELSIUS_K);
    const rate = Math.exp(reference - energyK * x);
    // Slope and curvature of the rate over one piece, as shares of the rate: u = E/R ΔT/T², and u² − 2uΔT/T.
    const w1 = step * x;
    const u1 = energyK * x * w1;
    area += before * (0.5 + u0 * (0.1 + (u0 - 2 * w0) / 120)) + rate * (0.5 - u1 * (0.1 - (u1 - 2 * w1) / 120));
    before = rate;
  }
  return area / pieces;
}

type TableLaw = Extract<TemperatureLaw, { kind: "table" }>;

function tableTime(readings: TemperatureLog, law: TableLaw, referenceC: number): number {
  const logTime = tableLogTime(law.rows);
  const reference = logTime(referenceC);
  const rate = (temperatureC: number): number => Math.exp(reference - logTime(temperatureC));
  const corners = law.rows.map((row) => row.temperatureC).sort((a, b) => a - b);
  let from = readings[0] as TemperatureReading;
  let sum = 0;
  for (const to of readings.slice(1)) {
    const low = Math.min(from.temperatureC, to.temperatureC);
    const high = Math.max(from.temperatureC, to.temperatureC);
    const span = to.timeS - from.timeS;
    // Over less than this the rate cannot change by 1e-10, and a mean over no width at all is none.
    if (high - low < 1e-10) sum += span * rate(low);
    else {
      // The curve has a corner in its curvature at every row, so the stretch is cut there.
      const cuts = [low, ...corners.filter((corner) => corner > low && corner < high), high];
      const tolerance = 1e-12 * rate(low) * (high - low);
      const area = cuts.slice(1).reduce((total, cut, i) => total + integrate(rate, cuts[i] as number, cut, tolerance), 0);
      sum += (span / (high - low)) * area;
    }
    from = to;
  }
  return sum;
}
