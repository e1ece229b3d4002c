/* Benchmarks of the drift module: a long log against a bare trapezoid loop, and what is asked once a second while it runs. */
import { compensate, equivalentTime, remainingTime } from "darkroom-kinetics";
import { nanosecondsPerCall, pairedRatio } from "./measure.mjs";

export default function drift(report) {
  const arrhenius = { kind: "arrhenius", activationEnergyKJPerMol: 60 };
  const coefficient = { kind: "coefficient", ratio: 1.9, intervalC: 10 };
  const logOf = (count) =>
    Array.from({ length: count }, (_, i) => ({
      timeS: i * 0.1,
      temperatureC: 20 - 4 * (1 - Math.exp(-i / count)) + 0.01 * (i % 3),
    }));
  const log = logOf(10_000);
  const trapezoid = () => {
    const k = 60 / 8.314462618e-3;
    const T0 = 293.15;
    let sum = 0;
    let before = Math.exp(k * (1 / T0 - 1 / (log[0].temperatureC + 273.15)));
    for (let i = 1; i < log.length; i += 1) {
      const rate = Math.exp(k * (1 / T0 - 1 / (log[i].temperatureC + 273.15)));
      sum += ((before + rate) / 2) * (log[i].timeS - log[i - 1].timeS);
      before = rate;
    }
    return sum;
  };
  const repeated = (once) => (calls) => {
    let sum = 0;
    for (let i = 0; i < calls; i += 1) sum += once();
    return sum;
  };
  // Both laws warm, in the loops that are measured, so that neither is measured while code is being replaced:
  // a new closure is compiled anew.
  const bare = repeated(trapezoid);
  const loops = [arrhenius, coefficient].map((law) => ({
    law,
    loop: repeated(() => equivalentTime(log, 20, law)),
  }));
  for (let round = 0; round < 4; round += 1)
    for (const { loop } of loops) for (let i = 0; i < 100; i += 1) loop(15);
  for (const { law, loop } of loops) {
    const { ratio, ns, bareNs } = pairedRatio(bare, loop, 10, 10);
    const note = `${(ns / 1000).toFixed(0)} µs against ${(bareNs / 1000).toFixed(0)} µs`;
    report({ name: `equivalentTime, 10,000 readings, ${law.kind}`, ratio, limit: 2, note });
  }
  const short = logOf(1000);
  const remaining = () =>
    remainingTime({
      targetS: 600,
      referenceC: 20,
      law: arrhenius,
      log: short,
      temperatureAt: { startC: 18, ambientC: 8, timeConstantS: 1e4 },
    }).remainingS;
  const ms = nanosecondsPerCall(repeated(remaining), 50, 15) / 1e6;
  report({
    name: "remainingTime, 1,000 readings, ms",
    ratio: ms,
    limit: 1,
    note: `${(ms * 1000).toFixed(0)} µs of 1000 µs allowed`,
  });
  const baseline = { timeS: 510, temperatureC: 20 };
  const withLog =
    nanosecondsPerCall(
      repeated(() => compensate(baseline, { temperatureC: short }).timeS),
      50,
      15,
    ) / 1e6;
  report({
    name: "compensate, a log of 1,000 readings, ms / 5",
    ratio: withLog / 5,
    limit: 1,
    note: `${(withLog * 1000).toFixed(0)} µs`,
  });
}
