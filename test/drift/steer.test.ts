/* Steering while it runs: what is left, how warm to pour in, a bath that wears itself out, and what is odd about a log. */
import { describe, expect, it } from "vitest";
import {
  developUntil,
  equivalentTime,
  handbookVessel,
  logCautions,
  newtonDrift,
  ownUseFactor,
  remainingTime,
  startTemperatureFor,
  temperatureFactor,
  useFactor,
  type OwnUse,
  type StartTemperatureOptions,
  type TemperatureCourse,
  type TemperatureLaw,
  type TemperatureLog,
} from "../../src/index.js";
import { handbookVessels, type DriftVessel } from "../../src/handbook/vessels.js";
import { odexIntegral } from "./odex.js";
import { anyOf } from "../helpers.js";
const law: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 60 };
const log = [
  { timeS: 0, temperatureC: 20 },
  { timeS: 90, temperatureC: 19.2 },
  { timeS: 180, temperatureC: 18.5 },
];
const ask = {
  targetS: 480,
  referenceC: 20,
  law,
  log,
  temperatureAt: { startC: 20, ambientC: 14, timeConstantS: 600 },
};
const linear: OwnUse = { increase: 0.1, perCm2PerL: 500, growth: "linear", areaCm2: 500, volumeMl: 250 };
const compound: OwnUse = { ...linear, growth: "compound" };

describe("remainingTime", () => {
  it("is what the readings leave of the target, at the forecast's pace", () => {
    const answer = remainingTime(ask);
    const doneS = equivalentTime(log, 20, law);
    expect(answer.doneS).toBe(doneS);
    expect(answer.fraction).toBe(doneS / 480);
    const until = developUntil({
      equivalentS: 480 - doneS,
      referenceC: 20,
      law,
      temperatureAt: ask.temperatureAt,
      fromS: 180,
    });
    expect(answer.remainingS).toBeCloseTo(until - 180, 8);
    expect(answer.cautions).toEqual([]);
  });
  it("holds the last reading where there is no forecast", () => {
    const { doneS, remainingS } = remainingTime({ targetS: 480, referenceC: 20, law, log });
    expect(remainingS).toBeCloseTo((480 - doneS) * temperatureFactor(20, 18.5, law), 7);
  });
  it("is 0 at the target and beyond, and says stop beyond", () => {
    const doneS = equivalentTime(log, 20, law);
    expect(remainingTime({ ...ask, targetS: doneS })).toEqual({
      remainingS: 0,
      doneS,
      fraction: 1,
      cautions: [],
    });
    const past = remainingTime({ ...ask, targetS: 100 });
    expect(past.remainingS).toBe(0);
    expect(past.fraction).toBe(doneS / 100);
    expect(past.cautions).toEqual([
      {
        code: "target-passed",
        severity: "stop",
        message: "The development is 1:09 past its time.",
        quantity: "timeS",
        limit: 100,
        actual: doneS,
      },
    ]);
  });
  it("asks about readings that look like °F", () => {
    const { cautions } = remainingTime({
      ...ask,
      log: [
        { timeS: 0, temperatureC: 68 },
        { timeS: 1, temperatureC: 68 },
      ],
    });
    expect(cautions[0]).toMatchObject({ code: "maybe-fahrenheit", path: "/0/temperatureC" });
  });
  it("says stop where the forecast is one to stop for, as compensate does, and is silent about one that is no more than unusual", () => {
    const ahead = (temperatureAt: TemperatureCourse): unknown =>
      remainingTime({ ...ask, temperatureAt }).cautions.map(({ code, actual, path }) => [code, actual, path]);
    expect(ahead(68)).toEqual([["maybe-fahrenheit", 68, undefined]]);
    expect(ahead(3.5)).toEqual([["temperature-limit", 3.5, undefined]]);
    expect(ahead(15)).toEqual([]);
    // Warmest, or coldest, in the middle, and there alone beyond the limit; the pour-out comes before the
    // forecast turns to °F.
    const warmAir = { startC: 20, ambientC: 68, timeConstantS: 1e6 };
    expect(ahead(warmAir)).toEqual([["maybe-fahrenheit", 68, "/temperatureAt/ambientC"]]);
    const { remainingS } = remainingTime({ ...ask, temperatureAt: 20 });
    const swing = (by: number): TemperatureLog =>
      Array.from({ length: 41 }, (_, i) => ({
        timeS: 180 + 5 * i,
        temperatureC: 18.5 + by * Math.sin((Math.PI * i) / 40),
      }));
    expect(remainingS).toBeGreaterThan(200);
    expect(ahead(swing(15))).toEqual([["temperature-limit", expect.closeTo(33.5, 1), undefined]]);
    expect(ahead(swing(-15))).toEqual([["temperature-limit", expect.closeTo(3.5, 1), undefined]]);
    expect(
      ahead([
        { timeS: 0, temperatureC: 20 },
        { timeS: 900, temperatureC: 20 },
        { timeS: 901, temperatureC: 68 },
      ]),
    ).toEqual([]);
    const cold = [
      { timeS: 0, temperatureC: 17 },
      { timeS: 10, temperatureC: 17 },
    ];
    expect(
      remainingTime({ ...ask, log: cold, temperatureAt: 68 }).cautions.map(({ severity }) => severity),
    ).toEqual(["stop", "warn"]);
    // The last reading held is judged as a reading, once.
    expect(
      remainingTime({
        targetS: 480,
        referenceC: 20,
        law,
        log: cold.map((one) => ({ ...one, temperatureC: 3 })),
      }).cautions,
    ).toHaveLength(1);
  });
  it("looks at no moment beyond the longest clock time", () => {
    const late = [
      { timeS: 9_999_000.1, temperatureC: 20 },
      { timeS: 9_999_100.3, temperatureC: 20 },
    ];
    const temperatureAt = { startC: 20, ambientC: 20, timeConstantS: 600 };
    const { remainingS } = remainingTime({ targetS: 999.9, referenceC: 20, law, log: late, temperatureAt });
    expect(remainingS).toBeCloseTo(899.7, 6);
  });
  it("counts a bath that wears itself out", () => {
    for (const ownUse of [linear, compound]) {
      const answer = remainingTime({ ...ask, temperatureAt: 20, ownUse });
      // The share done, s, from its own equation ds/dt = rate/(slowing at s)/target, by the independent
      // integrator.
      const worked = equivalentTime(log, 20, law);
      const slowing = (s: number): number => (ownUse.growth === "linear" ? 1 + 0.4 * s : 1.1 ** (4 * s));
      expect(odexIntegral(slowing, 0, answer.fraction) * 480).toBeCloseTo(worked, 8);
      expect(answer.doneS).toBeCloseTo(480 * answer.fraction, 10);
      expect(answer.remainingS).toBeCloseTo(480 * ownUseFactor(ownUse) - worked, 7);
    }
    expect(remainingTime({ ...ask, ownUse: { ...compound, increase: 0 } })).toEqual(remainingTime(ask));
  });
  it("refuses what cannot be", () => {
    const refuses = (change: object | null, error: Error): void => {
      expect(() => remainingTime(anyOf(change === null ? null : { ...ask, ...change }))).toThrow(error);
    };
    refuses(null, new TypeError("remainingTime: options must be an object, got null"));
    refuses(
      { targetS: 0 },
      new RangeError("remainingTime: options.targetS must be above 0 and at most 10000000 s, got 0"),
    );
    refuses(
      { temperatureAt: "20" },
      new TypeError('remainingTime: options.temperatureAt must be a number or a log or a drift, got "20"'),
    );
    refuses(
      { log: [log[0]] },
      new RangeError("remainingTime: options.log must hold at least 2 readings, got 1"),
    );
    refuses({ ownUse: null }, new TypeError("remainingTime: options.ownUse must be an object, got null"));
  });
});

describe("startTemperatureFor", () => {
  const question: StartTemperatureOptions = {
    timeS: 600,
    targetC: 20,
    ambientC: 14,
    timeConstantS: 3600,
    law,
  };
  const work = (startC: number, asked: StartTemperatureOptions): number => {
    const drift = newtonDrift({ startC, ambientC: asked.ambientC, timeConstantS: asked.timeConstantS });
    return odexIntegral(
      (t) => 1 / temperatureFactor(asked.targetC, drift(Math.min(t, 1e7)), asked.law),
      0,
      asked.timeS,
    );
  };
  it.each<StartTemperatureOptions>([
    { ...question },
    { ...question, ambientC: 30 },
    { ...question, ambientC: -10 },
    { ...question, timeConstantS: 400 },
    { ...question, law: { kind: "coefficient", ratio: 2, intervalC: 10 } },
  ])("makes the drifting bath do the steady one's work: air $ambientC °C, $timeConstantS s", (asked) => {
    const { startC } = startTemperatureFor(asked);
    expect(work(startC, asked) / 600).toBeCloseTo(1, 9);
    expect(startC > 20).toBe(asked.ambientC < 20);
  });
  it("is the target itself in air of the target's temperature, and for a law without temperature", () => {
    expect(startTemperatureFor({ ...question, ambientC: 20 }).startC).toBeCloseTo(20, 9);
    const level: TemperatureLaw = { kind: "coefficient", ratio: 1, intervalC: 10 };
    expect(startTemperatureFor({ ...question, law: level }).startC).toBeCloseTo(20, 9);
    expect(startTemperatureFor({ ...question, law: level, ambientC: 30 }).startC).toBeCloseTo(20, 9);
  });
  it("refuses what cannot be", () => {
    const refuses = (change: object | null, error: Error): void => {
      expect(() => startTemperatureFor(anyOf(change === null ? null : { ...question, ...change }))).toThrow(
        error,
      );
    };
    const reach = (c: number): RangeError =>
      new RangeError(
        `startTemperatureFor: options.targetC must be within reach of a bath poured in at 0 to 100 °C, got ${c}`,
      );
    refuses(null, new TypeError("startTemperatureFor: options must be an object, got null"));
    refuses(
      { timeS: 0 },
      new RangeError("startTemperatureFor: options.timeS must be above 0 and at most 10000000 s, got 0"),
    );
    refuses(
      { targetC: 101 },
      new RangeError("startTemperatureFor: options.targetC must be from 0 to 100 °C, got 101"),
    );
    refuses(
      { ambientC: -51 },
      new RangeError("startTemperatureFor: options.ambientC must be from -50 to 100 °C, got -51"),
    );
    refuses(
      { timeConstantS: 0 },
      new RangeError(
        "startTemperatureFor: options.timeConstantS must be above 0 and at most 10000000 s, got 0",
      ),
    );
    refuses({ targetC: 99, timeConstantS: 60 }, reach(99));
    refuses({ targetC: 1, ambientC: 50, timeConstantS: 60 }, reach(1));
    refuses(
      { targetC: 5, ambientC: -20, timeConstantS: 1800, timeS: 1200 },
      new RangeError(
        "startTemperatureFor: options.ambientC must be such that the bath does not freeze within 1200 s, got -20",
      ),
    );
  });

  it("asks whether the target or the surroundings are in °F, and stops for what it comes to", () => {
    const said = (change: object): unknown =>
      startTemperatureFor({ ...question, ...change }).cautions.map((one) => [one.code, one.path]);
    expect(said({})).toEqual([]);
    expect(said({ ambientC: 45 })).toEqual([]);
    expect(said({ ambientC: 68 })).toEqual([["maybe-fahrenheit", "/ambientC"]]);
    expect(said({ targetC: 68 })).toEqual([
      ["maybe-fahrenheit", "/targetC"],
      ["maybe-fahrenheit", undefined],
    ]);
    expect(said({ targetC: 16 })).toEqual([["temperature-unusual", "/targetC"]]);
    expect(said({ targetC: 5, ambientC: 30, timeConstantS: 1800 })).toEqual(
      [
        ["temperature-unusual", "/targetC"],
        ["temperature-limit", undefined],
      ].reverse(),
    );
  });

  it("lets a bath at 0 °C stay there in air of 0 °C: it does not freeze", () => {
    expect(
      startTemperatureFor({
        timeS: 600,
        targetC: 0,
        ambientC: 0,
        timeConstantS: 3600,
        law: { kind: "coefficient", ratio: 2, intervalC: 10 },
      }).startC,
    ).toBeCloseTo(0, 12);
  });
});

describe("ownUseFactor", () => {
  it("stops where the bath would end a thousand times slower, which compounding reaches much sooner", () => {
    const at = (growth: "linear" | "compound", portions: number): number =>
      ownUseFactor({ increase: 1, perCm2PerL: 100, growth, areaCm2: 100 * portions, volumeMl: 1000 });
    const slow = (areaCm2: number): RangeError =>
      new RangeError(
        `ownUseFactor: use.areaCm2 must be such that the bath slows at most 1000 times, got ${areaCm2}`,
      );
    expect(at("linear", 999)).toBeCloseTo(500.5, 9);
    expect(() => at("linear", 1000)).toThrow(slow(100_000));
    // 2^9.9 is 955, 2^10 is 1024.
    expect(at("compound", 9.9)).toBeCloseTo((2 ** 9.9 - 1) / (9.9 * Math.LN2), 9);
    expect(() => at("compound", 10)).toThrow(slow(1000));
  });
  it("is the mean of the rule over one development", () => {
    expect(ownUseFactor(linear)).toBeCloseTo(1.2, 12);
    expect(ownUseFactor(compound)).toBeCloseTo(
      odexIntegral((s) => 1.1 ** (4 * s), 0, 1),
      10,
    );
    const rule = { increase: 0.1, perCm2PerL: 500, growth: "compound" as const };
    expect(ownUseFactor(compound)).toBeCloseTo(
      odexIntegral((s) => useFactor(0, 2000 * s, rule), 0, 1),
      10,
    );
  });
  it("is 1 with nothing to develop or nothing to lose", () => {
    for (const growth of ["linear", "compound"] as const) {
      expect(ownUseFactor({ ...linear, growth, areaCm2: 0 })).toBe(1);
      expect(ownUseFactor({ ...linear, growth, increase: 0 })).toBe(1);
    }
  });
  it("lengthens the clock time of developUntil", () => {
    const until = developUntil({
      equivalentS: 480,
      referenceC: 20,
      law,
      temperatureAt: 20,
      ownUse: linear,
    });
    expect(until).toBeCloseTo(480 * 1.2, 7);
  });
  it("takes a compound rule that was learned along the curve that it scales", () => {
    const learned = { ...compound, increase: 0.3, shape: 0.1 };
    expect(ownUseFactor(learned)).toBeCloseTo(
      odexIntegral((s) => useFactor(0, 2000 * s, { ...learned, perCm2PerL: 500 }), 0, 1),
      10,
    );
    expect(ownUseFactor({ ...compound, shape: compound.increase })).toBe(ownUseFactor(compound));
    expect(ownUseFactor({ ...compound, increase: 0 })).toBe(1);
    expect(() => ownUseFactor({ ...compound, shape: 11 })).toThrow(
      new RangeError("ownUseFactor: use.shape must be from 0 to 10, got 11"),
    );
  });
  it("refuses what cannot be", () => {
    const refuses = (change: object | null, error: Error): void => {
      expect(() => ownUseFactor(anyOf(change === null ? null : { ...linear, ...change }))).toThrow(error);
    };
    refuses(null, new TypeError("ownUseFactor: use must be an object, got null"));
    refuses({ increase: 11 }, new RangeError("ownUseFactor: use.increase must be from 0 to 10, got 11"));
    refuses(
      { perCm2PerL: 0 },
      new RangeError("ownUseFactor: use.perCm2PerL must be from 0.001 to 1000000 cm²/l, got 0"),
    );
    refuses(
      { areaCm2: -1 },
      new RangeError("ownUseFactor: use.areaCm2 must be from 0 to 1000000 cm², got -1"),
    );
    refuses(
      { volumeMl: 0 },
      new RangeError("ownUseFactor: use.volumeMl must be above 0 and at most 1000000 ml, got 0"),
    );
    refuses(
      { growth: "both" },
      new RangeError('ownUseFactor: use.growth must be "linear" or "compound", got "both"'),
    );
    const slow = new RangeError(
      "ownUseFactor: use.areaCm2 must be such that the bath slows at most 1000 times, got 1000000",
    );
    refuses({ areaCm2: 1e6, volumeMl: 10 }, slow);
    refuses({ areaCm2: 1e6, volumeMl: 10, growth: "compound" }, slow);
    expect(() =>
      developUntil(anyOf({ equivalentS: 480, referenceC: 20, law, temperatureAt: 20, ownUse: 5 })),
    ).toThrow(new TypeError("developUntil: options.ownUse must be an object, got 5"));
  });
});

describe("logCautions", () => {
  it("finds nothing odd in a usual log", () => {
    expect(logCautions(log)).toEqual([]);
  });
  it("asks about °F, at the reading that shows it", () => {
    const [first] = logCautions([
      { timeS: 0, temperatureC: 20 },
      { timeS: 60, temperatureC: 67 },
      { timeS: 120, temperatureC: 68 },
    ]);
    expect(first).toMatchObject({
      code: "maybe-fahrenheit",
      severity: "stop",
      path: "/2/temperatureC",
      actual: 68,
    });
  });
  it("names the coldest reading too, and one reading once", () => {
    const both = logCautions([
      { timeS: 0, temperatureC: 26 },
      { timeS: 60, temperatureC: 20 },
      { timeS: 120, temperatureC: 15 },
    ]);
    expect(both.map((one) => one.path)).toEqual(["/0/temperatureC", "/2/temperatureC"]);
    expect(
      logCautions([
        { timeS: 0, temperatureC: 15 },
        { timeS: 60, temperatureC: 15 },
      ]),
    ).toHaveLength(1);
  });
  it("puts the gravest first", () => {
    const cautions = logCautions([
      { timeS: 0, temperatureC: 25 },
      { timeS: 60, temperatureC: 3.5 },
    ]);
    expect(cautions.map(({ code, severity }) => [code, severity])).toEqual([
      ["temperature-limit", "stop"],
      ["temperature-unusual", "warn"],
    ]);
  });
  it("names a gap that is longer than the rest", () => {
    const gap = (times: readonly number[]): unknown =>
      logCautions(times.map((timeS) => ({ timeS, temperatureC: 20 }))).find((one) => one.code === "log-gap");
    expect(gap([10, 100, 300])).toEqual({
      code: "log-gap",
      severity: "warn",
      message: "A gap of 3:20 is longer than the rest of the log, 1:30. The line across it is a guess.",
      path: "/2/timeS",
      quantity: "timeS",
      limit: 90,
      actual: 200,
    });
    expect(gap([10, 210, 300])).toMatchObject({ path: "/1/timeS", limit: 90, actual: 200 });
    expect(gap([0, 100, 200])).toBeUndefined();
    expect(gap([0, 600])).toBeUndefined();
  });
  it("refuses what is no log", () => {
    expect(() => logCautions(anyOf({}))).toThrow(
      new TypeError("logCautions: log must be an array, got an object"),
    );
  });
});

describe("handbookVessel", () => {
  it("gives an estimate with its spread and how it was worked, for every vessel", () => {
    for (const vessel of Object.keys(handbookVessels) as DriftVessel[]) {
      const { timeConstantS, logSd, sources } = handbookVessel(vessel);
      expect(timeConstantS).toBeGreaterThan(60);
      expect(logSd).toBeGreaterThanOrEqual(0.4);
      expect(sources[0]).toContain("estimate, not measured");
    }
    expect(handbookVessel("tray-in-air").timeConstantS).toBe(2800);
  });
  it("lists what it knows", () => {
    expect(() => handbookVessel(anyOf("bucket"))).toThrow(
      /^handbookVessel: vessel must be "tray-in-air", "steel-tank-in-air", .*, got "bucket"$/,
    );
    expect(() => handbookVessel(anyOf(5))).toThrow(
      new TypeError("handbookVessel: vessel must be text, got 5"),
    );
  });
});
