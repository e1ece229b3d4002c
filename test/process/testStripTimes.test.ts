import { describe, expect, it } from "vitest";
import { fc, test } from "../property.js";
import { testStripTimes } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { refusal } from "./helpers.js";

describe("testStripTimes", () => {
  const estimate = { timeS: 600, lowS: 400, highS: 900 };
  it("steps evenly in ln(time) from end to end", () => {
    const { timesS, ratio, reason } = testStripTimes(estimate);
    expect(timesS).toHaveLength(5);
    expect([timesS[0], timesS[2], timesS[4]]).toEqual([400, 600, 900]);
    expect(timesS[1]).toBeCloseTo(400 * 1.5 ** 0.5, 9);
    expect(ratio).toBeCloseTo(1.5 ** 0.5, 12);
    expect(reason).toBe("interval");
    expect(testStripTimes(estimate, { count: 2 }).timesS).toEqual([400, 900]);
    // An estimate that is not in the middle does not bend the ladder.
    expect(testStripTimes({ timeS: 610, lowS: 400, highS: 900 }).timesS[2]).toBeCloseTo(600, 9);
    expect(testStripTimes({ timeS: 610, lowS: 400, highS: 900 }, { count: 3 }).timesS[1]).not.toBe(610);
  });

  it("has fewer times where more could not be told apart", () => {
    // 900/400 = 2.25 holds five steps of 15 %, and not twenty-four.
    const { timesS, ratio, reason } = testStripTimes(estimate, { count: 25 });
    expect(timesS).toHaveLength(6);
    expect(reason).toBe("eye");
    expect(ratio).toBeCloseTo(2.25 ** (1 / 5), 12);
    expect(ratio).toBeGreaterThan(1.15);
    expect(testStripTimes(estimate, { count: 25, leastRatio: 1.01 }).timesS).toHaveLength(25);
  });

  it("has none where even the ends look alike, and says so", () => {
    expect(testStripTimes({ timeS: 600, lowS: 580, highS: 620 })).toEqual({
      timesS: [],
      ratio: 620 / 580,
      reason: "too-narrow",
    });
    expect(testStripTimes({ timeS: 5, lowS: 5, highS: 5 }).reason).toBe("too-narrow");
    // A ratio of exactly the least is told apart.
    expect(testStripTimes({ timeS: 107, lowS: 100, highS: 115 }).timesS).toEqual([100, 115]);
  });

  it("rounds to a step, and leaves out times that it makes equal", () => {
    expect(testStripTimes(estimate, { stepS: 15 }).timesS).toEqual([405, 495, 600, 735, 900]);
    const { timesS, reason } = testStripTimes({ timeS: 60, lowS: 40, highS: 90 }, { stepS: 30 });
    expect(timesS).toEqual([30, 60, 90]);
    expect(reason).toBe("eye");
    expect(testStripTimes({ timeS: 6, lowS: 4, highS: 9 }, { stepS: 60 }).reason).toBe("too-narrow");
    expect(testStripTimes({ timeS: 6e7, lowS: 4e7, highS: 9e7 }, { stepS: 60 }).timesS[0]).toBe(4e7);
  });

  test.prop([
    fc.double({ min: 1, max: 1e6, noNaN: true }),
    fc.double({ min: 0.001, max: 3, noNaN: true }),
    fc.integer({ min: 2, max: 25 }),
  ])("covers the interval with one ratio that the eye can tell, or says why not", (timeS, logSd, count) => {
    const spread = Math.exp(1.6448536269514722 * logSd);
    const given = { timeS, lowS: timeS / spread, highS: timeS * spread };
    const { timesS, ratio, reason } = testStripTimes(given, { count });
    expect(reason === "too-narrow").toBe(timesS.length === 0);
    expect(reason === "interval").toBe(timesS.length === count);
    if (reason === "too-narrow") {
      expect(spread ** 2).toBeLessThan(1.15);
      return;
    }
    expect([timesS[0], timesS.at(-1)]).toEqual([given.lowS, given.highS]);
    expect(ratio).toBeGreaterThan(1.15 * (1 - 1e-8));
    timesS.slice(1).forEach((time, i) => {
      expect(time / timesS[i]! / ratio).toBeCloseTo(1, 8);
    });
    if (timesS.length % 2 === 1) expect(timesS[(timesS.length - 1) / 2]).toBe(timeS);
    // One more would be too close.
    if (reason === "eye") expect(spread ** (2 / timesS.length)).toBeLessThan(1.15);
  });

  const sound = { timeS: 5, lowS: 1, highS: 9 };
  it.each([
    ["no estimate", null, {}, "TypeError testStripTimes /estimate missing"],
    ["no options", sound, 3, "TypeError testStripTimes /options wrong-type"],
    ["a low end of 0", { ...sound, lowS: 0 }, {}, "RangeError testStripTimes /estimate/lowS out-of-range"],
    [
      "an open end",
      { ...sound, highS: Infinity },
      {},
      "RangeError testStripTimes /estimate/highS out-of-range",
    ],
    ["no time", { lowS: 1, highS: 9 }, {}, "TypeError testStripTimes /estimate/timeS missing"],
    [
      "ends the wrong way round",
      { timeS: 5, lowS: 6, highS: 5 },
      {},
      "RangeError testStripTimes /estimate out-of-range",
    ],
    ["a time below", { timeS: 4, lowS: 5, highS: 9 }, {}, "RangeError testStripTimes /estimate out-of-range"],
    [
      "a time above",
      { timeS: 10, lowS: 5, highS: 9 },
      {},
      "RangeError testStripTimes /estimate out-of-range",
    ],
    ["one time", sound, { count: 1 }, "RangeError testStripTimes /options/count out-of-range"],
    ["half a time", sound, { count: 2.5 }, "TypeError testStripTimes /options/count wrong-type"],
    ["no ratio", sound, { leastRatio: 1 }, "RangeError testStripTimes /options/leastRatio out-of-range"],
    ["no step", sound, { stepS: 0 }, "RangeError testStripTimes /options/stepS out-of-range"],
  ])("refuses %s", (_, given, options, fault) => {
    expect(refusal(() => testStripTimes(anyOf(given), anyOf(options)))).toBe(fault);
  });
});

describe("a ladder at the ends of what is told apart", () => {
  it("has times that rise, or none", () => {
    const close = testStripTimes({ timeS: 500, lowS: 500 - 1e-6, highS: 500 + 1e-6 }, { count: 25 });
    expect(close).toEqual({ timesS: [], ratio: expect.closeTo(1, 6), reason: "too-narrow" });
    const { timesS } = testStripTimes({ timeS: 500, lowS: 5e-12, highS: 5e11 }, { count: 25 });
    expect(timesS).toHaveLength(25);
    expect(timesS.every((timeS, i) => i === 0 || timeS > (timesS[i - 1] as number))).toBe(true);
  });
});
