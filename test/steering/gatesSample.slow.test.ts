/* A sample of the simulated runs, and what must fail the gates. All of them are in gates.slow.test.ts. */
import { describe, expect, it } from "vitest";
import { compensate, steer, type SteerAnswer, type SteerInput } from "../../src/index.js";
import { faultFigures, intervalFigures, missed } from "./gates.js";
import { seeded, worldOf } from "./simulation.js";

const RUNS = 20;

describe("the gates of steering", () => {
  it("are kept over a sample of runs", () => {
    // Twenty runs do not tell 95 from 99.5 %: one of a dead thermometer may fall outside, as may its median.
    const rows = faultFigures(steer, RUNS).filter(({ dead, told }) => told || !dead);
    expect(rows.flatMap((row) => missed(row).map((miss) => `${row.fault}: ${miss}`))).toEqual([]);
  });
  it.each<readonly [string, (input: SteerInput) => SteerAnswer]>([
    ["always goes on", (input) => ({ ...steer(input), action: "continue" })],
    ["pours out at once", (input) => ({ ...steer(input), action: "pour-out" })],
    [
      "believes each reading",
      (input) => {
        const last = input.log.at(-1)!.temperatureC;
        const celsius = typeof last === "number" && last >= 0 && last <= 100 ? last : 20;
        return steer({ ...input, log: input.log.map((one) => ({ ...one, temperatureC: celsius })) });
      },
    ],
  ])("fail one that %s", (_, other) => {
    expect(faultFigures(other, 3).flatMap(missed).length).toBeGreaterThan(5);
  });
  it("are kept by the interval over a sample of runs", () => {
    // 90 % of 60 is 54 ± 2.3.
    for (const { inside } of intervalFigures(steer, 60)) expect(inside).toBeGreaterThan(0.75);
  });
  it("leave a sound run, in the median, what compensate makes of its readings", () => {
    const random = seeded(5);
    const apart = Array.from({ length: 60 }, () => {
      const { baseline, readings, truth } = worldOf(random);
      const log = readings.filter(({ timeS }) => timeS < 1.2 * truth.timeS);
      const direct = compensate(baseline, { temperatureC: log as never }).timeS;
      return Math.abs(steer({ baseline, conditions: {}, log }).total.timeS / direct - 1);
    }).sort((a, b) => a - b);
    expect(apart[30]).toBeLessThan(0.01);
  });
});
