/* How well a time is known, in text; and a time rounded to what suits it. */
import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { combineEstimates, compensate, parseSpread, roundEstimate, testStripTimes } from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("parseSpread", () => {
  it.each(["x 1.4", "\u00d7 1,4", "factor 1.4", "a factor of 1.4", "Faktor 1,4", "ein Faktor von 1,4"])(
    "reads a factor each way: %s",
    (text) => {
      expect(parseSpread(text, 510)).toBeCloseTo(Math.log(1.4) / 1.6448536269514722, 12);
    },
  );
  it.each(["x 0.5", "factor", "factor 0"])("refuses what is no factor of 1 and more: %s", (text) => {
    expect(() => parseSpread(text, 510)).toThrow(/^parseSpread: text /);
  });
  it.each([
    ["10 %", 10],
    ["10%", 10],
    ["± 10 %", 10],
    ["+/- 10 percent", 10],
    ["+-10 per cent", 10],
    ["+/−12,5 %", 12.5],
    ["0 %", 0],
    ["10 Prozent", 10],
    ["100 %", 100],
    ["± ½ %", 0.5],
    ["1/2 %", 0.5],
    ["2 1/4 percent", 2.25],
  ])("reads %j as nine in ten within that share", (text, percent) => {
    const known = { timeS: 510, temperatureC: 20, logSd: parseSpread(text, 510) };
    const { lowS, highS } = compensate(known, {});
    expect(highS).toBeCloseTo(510 * (1 + percent / 100), 9);
    expect(lowS).toBeCloseTo(510 / (1 + percent / 100), 9);
  });
  it.each(["± 51 s", "0:51", "51s", "± 0,85 min", "PT51S"])("reads %j as a time", (text) => {
    expect(parseSpread(text, 510)).toBeCloseTo(parseSpread("10 %", 510), 12);
  });
  it.each(["½ min", "± 1/2 min", "± ½ min", "0.5 min"])("reads the half of %j", (text) => {
    expect(parseSpread(text, 510)).toBe(parseSpread("30 s", 510));
  });
  it.each([
    ["", "empty"],
    ["much", "unreadable"],
    ["ten %", "unreadable"],
    ["-10 %", "unreadable"],
    ["10 % or so", "unreadable"],
    ["±", "unreadable"],
    ["10", "ambiguous"],
    ["½", "ambiguous"],
    ["0:75", "out-of-range"],
    // ln(1 + 140) is 4.95, which is 3.009 standard deviations of 1.645.
    ["14000 %", "out-of-range"],
  ])("refuses %j as %s", (text, code) => {
    expect(() => parseSpread(text, 510)).toThrow(expect.objectContaining({ code, path: "/text" }));
    expect(() => parseSpread(text, 510)).toThrow(/^parseSpread: text /);
  });
  it.each(["8:00 to 9:00", "± 8 boxes", "10 percents", "PT"])(
    "asks for a spread and not a time: %j",
    (text) => {
      expect(() => parseSpread(text, 510)).toThrow(
        expect.objectContaining({
          code: "unreadable",
          actual: text,
          expected: { format: "spread", examples: ["10 %", "± 30 s", "0:30"] },
        }),
      );
    },
  );
  it("refuses by kind, and a time out of range", () => {
    expect(() => parseSpread(anyOf(10), 510)).toThrow(
      expect.objectContaining({ code: "wrong-type", path: "/text" }),
    );
    expect(() => parseSpread("10 %", 0)).toThrow(
      expect.objectContaining({ code: "out-of-range", path: "/timeS" }),
    );
  });
});

describe("roundEstimate", () => {
  it.each([
    [5, { timeS: 1285, lowS: 955, highS: 1725, stepS: 5 }],
    [20, { timeS: 1290, lowS: 960, highS: 1725, stepS: 15 }],
    [30, { timeS: 1290, lowS: 960, highS: 1710, stepS: 30 }],
    [1, { timeS: 1283, lowS: 955, highS: 1724, stepS: 1 }],
  ])("takes no greater step than %s s where it is told so", (mostS, rounded) => {
    expect(roundEstimate({ timeS: 1283, lowS: 955, highS: 1724 }, { mostS })).toEqual(rounded);
  });
  it.each([0, 301, NaN, "5"])("refuses %s as the greatest step", (mostS) => {
    expect(() => roundEstimate({ timeS: 1283, lowS: 955, highS: 1724 }, anyOf({ mostS }))).toThrow(
      expect.objectContaining({ path: "/options/mostS" }),
    );
  });
  it.each([
    ["5 min", 36000, 6000, 300],
    ["1 min", 7200, 600, 60],
    ["30 s", 1283, 300, 30],
    ["15 s", 1283, 150, 15],
    ["5 s", 510, 50, 5],
    ["5 s, where half the interval is slightly under ten such steps", 510, 49.99, 5],
    ["5 s, where even that is more than a tenth of half the interval", 510, 20, 5],
    ["1 s, where it is below 1 min besides", 20, 2, 1],
    ["1 min, where half the interval is slightly under ten steps of 5 min", 36000, 2999.9, 60],
  ])("takes steps of %s", (_, timeS, half, stepS) => {
    expect(roundEstimate({ timeS, lowS: timeS - half, highS: timeS + half }).stepS).toBe(stepS);
  });
  it("rounds all three, halves up, and takes an answer as it is", () => {
    expect(roundEstimate({ timeS: 1275, lowS: 960, highS: 1740 })).toEqual({
      timeS: 1290,
      lowS: 960,
      highS: 1740,
      stepS: 30,
    });
    const answer = compensate({ timeS: 510, temperatureC: 20 }, { temperatureC: 14 });
    expect(roundEstimate(answer).timeS % roundEstimate(answer).stepS).toBe(0);
  });
  test.prop([
    fc.double({ min: 0.01, max: 1e6, noNaN: true }),
    fc.double({ min: 0, max: 3, noNaN: true }),
    fc.double({ min: 0, max: 3, noNaN: true }),
  ])("moves nothing by more than 5 % or half a second, and keeps the order", (timeS, below, above) => {
    const given = { timeS, lowS: timeS * Math.exp(-below), highS: timeS * Math.exp(above) };
    const { stepS, ...rounded } = roundEstimate(given);
    expect([1, 5, 15, 30, 60, 300]).toContain(stepS);
    for (const field of ["timeS", "lowS", "highS"] as const)
      expect(Math.abs(rounded[field] - given[field])).toBeLessThanOrEqual(
        Math.max(0.5, 0.05 * given[field]) * (1 + 1e-9),
      );
    expect(Math.abs(rounded.timeS - timeS)).toBeLessThanOrEqual(stepS / 2 + 1e-9 * timeS);
    expect(rounded.lowS).toBeLessThanOrEqual(rounded.timeS);
    expect(rounded.timeS).toBeLessThanOrEqual(rounded.highS);
    // Rounded again, nothing more changes.
    if (stepS >= 5) expect(rounded.timeS % stepS).toBe(0);
  });
  it.each([
    ["no object", null, "missing", "/estimate"],
    ["a time as text", { timeS: "8:30", lowS: 1, highS: 2 }, "wrong-type", "/estimate/timeS"],
    ["a time of NaN", { timeS: NaN, lowS: 1, highS: 2 }, "not-a-number", "/estimate/timeS"],
    ["a negative end", { timeS: 1, lowS: -1, highS: 2 }, "out-of-range", "/estimate/lowS"],
    ["no upper end", { timeS: 1, lowS: 1 }, "missing", "/estimate/highS"],
    ["a time outside its interval", { timeS: 3, lowS: 1, highS: 2 }, "out-of-range", "/estimate"],
  ])("refuses %s", (_, estimate, code, path) => {
    expect(() => roundEstimate(anyOf(estimate))).toThrow(expect.objectContaining({ code, path }));
  });

  it("gives the short end of a wide interval a finer step", () => {
    expect(roundEstimate({ timeS: 1828, lowS: 452, highS: 7400 })).toEqual({
      timeS: 1800,
      lowS: 450,
      highS: 7500,
      stepS: 60,
    });
  });
  it("never rounds an end to nothing", () => {
    const rounded = roundEstimate({ timeS: 1000, lowS: 100, highS: 10_000 });
    expect(rounded).toEqual({ timeS: 1020, lowS: 100, highS: 9900, stepS: 60 });
    expect(() => combineEstimates(rounded, rounded)).not.toThrow();
    expect(() => testStripTimes(rounded)).not.toThrow();
    const { timeS, lowS, highS } = roundEstimate({ timeS: 0.3, lowS: 0.2, highS: 0.6 });
    expect([lowS, timeS, highS]).toEqual([0.2, 0.3, 1]);
  });
});
