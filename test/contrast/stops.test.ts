/* Stops of push as people write them, and a run of a pushed film for learning. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  learn,
  parseStops,
  predict,
  pushFactor,
  startKnowledge,
  stripOutcome,
  testStripTimes,
  unpushedRun,
  type DevelopmentRun,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("parseStops", () => {
  it.each([
    ["0", 0],
    ["-0", 0],
    ["none", 0],
    ["keine", 0],
    ["1", 1],
    ["+1", 1],
    ["+ 2 stops", 2],
    ["1 stop", 1],
    ["2 Blenden", 2],
    ["1,5", 1.5],
    ["1/2", 0.5],
    ["+1 1/2", 1.5],
    ["-1/2", -0.5],
    ["\u22121", -1],
    ["\u20131½", -1.5],
  ])("reads %j as %s stops", (text, stops) => {
    expect(parseStops(text)).toBe(stops);
  });
  it.each([
    ["much", "unreadable"],
    ["", "empty"],
    ["N+1", "unreadable"],
    ["1 step", "unreadable"],
    ["6", "out-of-range"],
    ["-4", "out-of-range"],
    [1, "wrong-type"],
  ])("refuses %j", (text, code) => {
    expect(() => parseStops(anyOf(text))).toThrow(expect.objectContaining({ code }));
  });
});

describe("unpushedRun", () => {
  const run: DevelopmentRun = {
    timeS: 900,
    temperatureC: 20,
    outcome: { kind: "judged", timeRatio: 1, logSd: 0.1 },
  };
  it("takes the push out of a time of appearance, which alone tells the right time", () => {
    const outcome = { kind: "appearance", appearanceS: 60, factor: 10, logSd: 0.1 } as const;
    expect(unpushedRun({ ...run, outcome }, 1).outcome).toEqual({
      ...outcome,
      appearanceS: 60 / pushFactor(1),
      logSd: 0.1345,
    });
  });
  it("takes the push out of the time, and adds what its law leaves open", () => {
    const { timeS, outcome } = unpushedRun(run, 2);
    expect(timeS).toBeCloseTo(900 / pushFactor(2), 9);
    expect(outcome).toEqual({ kind: "judged", timeRatio: 1, logSd: 0.2059 });
  });
  it("leaves a run without a push as it is, and one that failed", () => {
    const thin: DevelopmentRun = { ...run, outcome: { kind: "thin" } };
    const failed: DevelopmentRun = { ...run, outcome: { kind: "failed" } };
    expect(unpushedRun(run, 0)).toEqual(run);
    expect(unpushedRun(thin, 0)).toEqual(thin);
    expect(unpushedRun(failed, 1)).toEqual(failed);
  });
  it("lets a strip of a pushed film move today's pushed time towards what looked right", () => {
    const known = { timeS: 510, temperatureC: 20, logSd: 0.1 };
    const today = { temperatureC: 18, pushStops: 1 };
    const before = compensate(known, today);
    const strip = testStripTimes(before, { stepS: 15 });
    const timeS = strip.timesS[3]!;
    const piece = { timeS, temperatureC: 18, outcome: stripOutcome(strip, timeS) };
    const after = predict(learn(startKnowledge(known), [unpushedRun(piece, 1)]), today);
    expect(after.timeS).toBeGreaterThan(before.timeS);
    expect(after.timeS).toBeLessThan(timeS);
  });
  it.each([
    ["no run", undefined, 1, "/run"],
    ["no outcome", { timeS: 1, temperatureC: 20 }, 1, "/run/outcome"],
    ["a time of 0", { ...run, timeS: 0 }, 1, "/run/timeS"],
    ["a lost temperature", { ...run, temperatureC: NaN }, 1, "/run/temperatureC"],
    ["an outcome of no known kind", { ...run, outcome: { kind: "fine" } }, 1, "/run/outcome/kind"],
    ["a window", { ...run, outcome: { kind: "thin" } }, 1, "/run/outcome/logSd"],
    ["six stops", run, 6, "/stops"],
  ])("refuses %s", (_, given, stops, path) => {
    expect(() => unpushedRun(anyOf(given), stops)).toThrow(expect.objectContaining({ path }));
  });
});
