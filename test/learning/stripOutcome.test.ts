/* A test strip that was judged, as the outcome of a run. */
import { describe, expect, it } from "vitest";
import {
  combineEstimates,
  compensate,
  learn,
  startKnowledge,
  stripOutcome,
  testStripTimes,
} from "../../src/index.js";

const strip = testStripTimes({ timeS: 1200, lowS: 810, highS: 1770 }, { stepS: 30 });
const logSdOf = (outcome: object): number => (outcome as { logSd: number }).logSd;

describe("stripOutcome", () => {
  it("says that the piece was right, to half a step, the eye and the repeat", () => {
    const [, , middle] = strip.timesS;
    const outcome = stripOutcome(strip, middle!);
    expect(outcome).toMatchObject({ kind: "judged", timeRatio: 1 });
    // The spread of a uniform window, width/√12: any textbook of statistics.
    expect(logSdOf(outcome)).toBeCloseTo(Math.hypot(Math.log(strip.ratio) / Math.sqrt(12), 0.07, 0.04), 4);
  });
  it("is as sure of each inner piece, and less of the first and the last", () => {
    const [first, second, middle, fourth, last] = strip.timesS.map((timeS) =>
      logSdOf(stripOutcome(strip, timeS)),
    ) as [number, number, number, number, number];
    expect(second).toBe(middle);
    expect(fourth).toBe(middle);
    expect(first).toBe(last);
    expect(first).toBeGreaterThan(middle);
  });
  it("is surer of a finer strip", () => {
    const fine = testStripTimes({ timeS: 600, lowS: 500, highS: 720 }, { count: 3 });
    expect(logSdOf(stripOutcome(fine, fine.timesS[1]!))).toBeLessThan(
      logSdOf(stripOutcome({ ...fine, ratio: 1.4 }, fine.timesS[1]!)),
    );
  });
  it("moves the answer as two independent estimates of one time do", () => {
    const baseline = { timeS: 510, temperatureC: 20, logSd: 0.06 };
    // At its word: from one run nobody can tell how far runs scatter.
    const before = startKnowledge(baseline, { noise: "stated" });
    const conditions = { temperatureC: 14 };
    const answer = compensate(before.baseline, conditions, before);
    const own = testStripTimes(answer);
    const timeS = own.timesS[3]!;
    const outcome = stripOutcome(own, timeS);
    const after = learn(before, [{ timeS, ...conditions, outcome }]);
    const learned = compensate(after.baseline, conditions, after);
    const spread = Math.exp(1.6448536 * logSdOf(outcome));
    const both = combineEstimates(answer, { timeS, lowS: timeS / spread, highS: timeS * spread });
    // Within 2 %: learning also asks whether the run fits what was known.
    expect(Math.abs(learned.timeS / both.timeS - 1)).toBeLessThan(0.02);
    expect(learned.highS / learned.lowS).toBeLessThan(answer.highS / answer.lowS);
  });
  it("refuses a time that is no piece of the strip, and what is no strip", () => {
    expect(() => stripOutcome(strip, 1201)).toThrow(
      expect.objectContaining({ code: "not-one-of", path: "/timeS" }),
    );
    expect(() => stripOutcome({ ...strip, ratio: 0 }, 1200)).toThrow(
      expect.objectContaining({ path: "/strip/ratio" }),
    );
    expect(() => stripOutcome({ ratio: 1.2 } as never, 1200)).toThrow(
      expect.objectContaining({ path: "/strip/timesS" }),
    );
    expect(() => stripOutcome(undefined as never, 1200)).toThrow(expect.objectContaining({ path: "/strip" }));
  });
});
