/* A bath that drifts, given as a log or as a forecast, and a wanted gradient. */
import { describe, expect, it } from "vitest";
import {
  type TemperatureReading,
  effect,
  compensate,
  developUntil,
  equivalentTime,
  gammaAt,
  genericGrowthLaw,
  genericTemperatureLaw,
  temperatureFactor,
  timeForGamma,
  type Caution,
  type Compensation,
  type GrowthLaw,
  type TemperatureLaw,
  type Knowledge,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
const law: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 60, sdKJPerMol: 10 };
const knowledge = { temperature: law };
const known = { timeS: 510, temperatureC: 20 };
const codes = (answer: Compensation): readonly string[] => answer.cautions.map((one) => one.code);
const rowOf = (answer: Compensation, cause: string) => answer.factors.find((one) => one.cause === cause)!;
const drift = { startC: 21, ambientC: 14, timeConstantS: 1800 };
/** A temperature that is no simple drift, as a log of readings. */
const sampled = (temperatureAt: (timeS: number) => number): TemperatureReading[] =>
  Array.from({ length: 5001 }, (_, i) => ({ timeS: i, temperatureC: temperatureAt(i) }));
const log = [
  { timeS: 0, temperatureC: 21 },
  { timeS: 240, temperatureC: 19.5 },
  { timeS: 900, temperatureC: 18 },
];

describe("compensate with a drifting bath", () => {
  it("doubts a reading that no bath has, and not the way up to it", () => {
    const readings = [
      { timeS: 0, temperatureC: 20 },
      { timeS: 600, temperatureC: 65 },
      { timeS: 1200, temperatureC: 17 },
    ];
    const { refused, cautions } = compensate({ timeS: 540, temperatureC: 20 }, { temperatureC: readings });
    expect(refused).toBe(true);
    expect(cautions[0]).toMatchObject({ code: "maybe-fahrenheit", severity: "stop", actual: 65 });
    expect(cautions.map(({ code }) => code)).not.toContain("temperature-limit");
    // What comes after the reading behind the pour-out is nothing to this development.
    const washed = [...log, { timeS: 2000, temperatureC: 18 }, { timeS: 2060, temperatureC: 65 }];
    expect(codes(compensate(known, { temperatureC: washed }))).not.toContain("maybe-fahrenheit");
  });
  it("gives the clock time of developUntil for a forecast", () => {
    const answer = compensate(known, { temperatureC: drift }, knowledge);
    expect(answer.timeS).toBeCloseTo(
      developUntil({ equivalentS: 510, referenceC: 20, law, temperatureAt: drift }),
      7,
    );
    expect(rowOf(answer, "temperature").value * 510).toBeCloseTo(answer.timeS, 9);
    expect(answer.factors.map((one) => one.cause)).toEqual(["baseline", "temperature"]);
    expect(rowOf(answer, "temperature").basis).toBe("given");
  });
  it("gives the time at which a log has done the work", () => {
    const answer = compensate(known, { temperatureC: log }, knowledge);
    const cut = [
      ...log.filter((one) => one.timeS < answer.timeS),
      { timeS: answer.timeS, temperatureC: 19.5 - (1.5 * (answer.timeS - 240)) / 660 },
    ];
    expect(equivalentTime(cut, 20, law)).toBeCloseTo(510, 6);
    expect(codes(answer)).not.toContain("log-held");
  });
  it("is the plain number for a steady log or forecast, interval and all", () => {
    const plain = compensate(known, { temperatureC: 16 }, knowledge);
    for (const temperatureC of [
      [
        { timeS: 0, temperatureC: 16 },
        { timeS: 1000, temperatureC: 16 },
      ],
      { startC: 16, ambientC: 16, timeConstantS: 1000 },
    ]) {
      const answer = compensate(known, { temperatureC }, knowledge);
      expect(answer.timeS / plain.timeS).toBeCloseTo(1, 11);
      expect(answer.lowS / plain.lowS).toBeCloseTo(1, 5);
      expect(answer.highS / plain.highS).toBeCloseTo(1, 5);
      expect(answer.cautions).toEqual(plain.cautions);
    }
  });
  it("counts a log from its first reading, whenever the clock started", () => {
    const later = log.map((one) => ({ ...one, timeS: one.timeS + 5000 }));
    expect(compensate(known, { temperatureC: later }, knowledge).timeS).toBeCloseTo(
      compensate(known, { temperatureC: log }, knowledge).timeS,
      6,
    );
  });
  it("asks whether surroundings are in °F", () => {
    const said = (ambientC: number): unknown => {
      const { cautions, refused } = compensate(
        known,
        { temperatureC: { startC: 20, ambientC, timeConstantS: 2800 } },
        knowledge,
      );
      return [refused, cautions.flatMap((one) => (one.code === "maybe-fahrenheit" ? [one.path] : []))];
    };
    expect(said(45)).toEqual([false, []]);
    expect(said(68)).toEqual([true, ["/conditions/temperatureC/ambientC"]]);
  });
  it("lets the other causes decide how far the bath drifts", () => {
    const baseline = { ...known, dilution: "1+9", gamma: 0.6 };
    const growth: GrowthLaw = { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 30 };
    const answer = compensate(
      baseline,
      { temperatureC: drift, dilution: "1+14", gamma: 0.7 },
      { ...knowledge, growth, dilution: { kind: "power", exponent: 0.8 } },
    );
    const wantedS = 510 * rowOf(answer, "dilution").value * rowOf(answer, "contrast").value;
    expect(answer.timeS).toBeCloseTo(
      rowOf(answer, "interaction").value *
        developUntil({ equivalentS: wantedS, referenceC: 20, law, temperatureAt: drift }),
      6,
    );
    expect(answer.factors.map((one) => one.cause)).toEqual([
      "baseline",
      "temperature",
      "dilution",
      "contrast",
      "interaction",
    ]);
    expect(answer.factors.reduce((product, one) => product * one.value, 510)).toBeCloseTo(answer.timeS, 9);
  });
  it("holds the last reading of a log that ends too soon, and says so", () => {
    const short = [
      { timeS: 0, temperatureC: 20 },
      { timeS: 100, temperatureC: 16 },
    ];
    const answer = compensate(known, { temperatureC: short }, knowledge);
    const left = 510 - equivalentTime(short, 20, law);
    expect(answer.timeS).toBeCloseTo(100 + left * temperatureFactor(20, 16, law), 6);
    expect(answer.cautions.find((one) => one.code === "log-held")).toMatchObject({
      code: "log-held",
      severity: "warn",
      path: "/conditions/temperatureC",
    });
  });
});

describe("compensate: the spread of a drifting bath", () => {
  const logSdOf = (temperatureC: unknown, given: TemperatureLaw = law): number =>
    rowOf(compensate(known, { temperatureC: anyOf(temperatureC) }, { temperature: given }), "temperature")
      .logSd;
  it("is that of the law moved by its own spread, either way", () => {
    const until = (activationEnergyKJPerMol: number): number =>
      developUntil({
        equivalentS: 510,
        referenceC: 20,
        law: { kind: "arrhenius", activationEnergyKJPerMol },
        temperatureAt: drift,
      });
    const small = 0.01;
    const perKJ = Math.log(until(60 + small) / until(60 - small)) / (2 * small);
    expect(logSdOf(drift)).toBeCloseTo(Math.abs(perKJ) * 10, 5);
    // The whole step, not only its slope: the two sides differ by little.
    expect(logSdOf(drift)).toBeCloseTo(Math.abs(Math.log(until(70) / until(50))) / 2, 3);
  });
  it("lets stretches colder and warmer than the baseline work against each other", () => {
    const across = [
      { timeS: 0, temperatureC: 21 },
      { timeS: 255, temperatureC: 21 },
      { timeS: 255.000001, temperatureC: 19 },
      { timeS: 5000, temperatureC: 19 },
    ];
    expect(logSdOf(across)).toBeLessThan(0.1 * effect("temperature", 20, 19, law).logSd);
    const table: TemperatureLaw = {
      kind: "table",
      rows: [
        { temperatureC: 16, timeS: 720 },
        { temperatureC: 24, timeS: 330 },
      ],
      sdKJPerMol: 0,
      runs: 1,
    };
    // The rows of a table err one by one: there the two stretches add up, but for its slope.
    const { timeS } = compensate(known, { temperatureC: across }, { temperature: table });
    const [warm, cold] = [21, 19].map(
      (c) => effect("temperature", 20, c, table).logSd / temperatureFactor(20, c, table),
    ) as [number, number];
    expect(logSdOf(across, table)).toBeCloseTo(
      ((warm * 255 + cold * (timeS - 255)) / timeS) * temperatureFactor(20, 19, table),
      5,
    );
    const sloped = { ...table, sdKJPerMol: 5 };
    expect(logSdOf(across, sloped)).toBeCloseTo(logSdOf(across, table), 3);
    const colder = { startC: 19, ambientC: 19, timeConstantS: 1000 };
    expect(logSdOf(colder, sloped)).toBeCloseTo(effect("temperature", 20, 19, sloped).logSd, 9);
    expect(logSdOf(colder, table)).toBeCloseTo(effect("temperature", 20, 19, table).logSd, 9);
  });

  it("a moment too short for the clock of its log has the spread of its temperature", () => {
    const log = [
      { timeS: 1e6, temperatureC: 16 },
      { timeS: 1e6 + 1, temperatureC: 17 },
    ];
    const { factors } = compensate({ timeS: 1e-12, temperatureC: 20 }, { temperatureC: log });
    const { factors: held } = compensate({ timeS: 1e-12, temperatureC: 20 }, { temperatureC: 16 });
    expect(factors[1]!.logSd).toBeCloseTo(held[1]!.logSd, 12);
  });
});

describe("compensate: cautions about a drifting bath", () => {
  it("says of a log at rest what it says of the temperature, to the last bit", () => {
    for (const c of [24, 18, 0, 100, 20.1, 13.7])
      for (const middleS of [1, 10, 77, 123.4, 599]) {
        const log = [0, middleS, 2000].map((timeS) => ({ timeS, temperatureC: c }));
        const at = ({ cautions }: { readonly cautions: readonly Caution[] }) =>
          cautions.map(({ code, actual }) => [code, code.startsWith("temperature") ? actual : undefined]);
        const plain = compensate(known, { temperatureC: c }, knowledge);
        expect(
          at(compensate(known, { temperatureC: log }, knowledge)).filter(([code]) => code !== "log-held"),
        ).toEqual(at(plain));
      }
  });
  it("asks about readings that look like °F", () => {
    const answer = compensate(
      known,
      {
        temperatureC: [
          { timeS: 0, temperatureC: 68 },
          { timeS: 600, temperatureC: 66 },
        ],
      },
      knowledge,
    );
    expect(answer.cautions[0]).toMatchObject({
      code: "maybe-fahrenheit",
      severity: "stop",
      actual: 68,
      path: "/conditions/temperatureC",
    });
  });
  it("looks at the coldest and the warmest moment, and says the same thing once", () => {
    const wide = compensate(
      known,
      {
        temperatureC: [
          { timeS: 0, temperatureC: 27 },
          { timeS: 300, temperatureC: 15 },
        ],
      },
      knowledge,
    );
    expect(
      wide.cautions.filter((one) => one.code === "temperature-unusual").map((one) => one.actual),
    ).toEqual([15, 27]);
    const cold = compensate(
      known,
      { temperatureC: { startC: 17, ambientC: 14, timeConstantS: 1800 } },
      knowledge,
    );
    expect(cold.cautions.filter((one) => one.code === "temperature-unusual")).toHaveLength(1);
    const far = compensate(
      known,
      { temperatureC: { startC: 9, ambientC: 0, timeConstantS: 4000 } },
      knowledge,
    );
    expect(codes(far)).toContain("far-extrapolation");
  });
  it("says what is too cold of the coldest moment, what is too warm of the warmest, and each once", () => {
    const over = (fromC: number, toC: number, baseline = {}): readonly Caution[] =>
      compensate(
        { ...known, ...baseline },
        {
          temperatureC: [
            { timeS: 0, temperatureC: fromC },
            { timeS: 300, temperatureC: toC },
          ],
        },
        knowledge,
      ).cautions;
    const named = (cautions: readonly Caution[], code: string): unknown[] =>
      cautions.filter((one) => one.code === code).map(({ severity, actual }) => [severity, actual]);
    for (const [a, b] of [
      [10, 15],
      [15, 10],
    ] as const)
      expect(named(over(a, b), "temperature-unusual")).toEqual([["warn", 10]]);
    for (const [a, b] of [
      [12, 15],
      [15, 12],
    ] as const)
      expect(named(over(a, b, { hydroquinone: true }), "hydroquinone-cold")).toEqual([["stop", 12]]);
    expect(named(over(26, 21, { emulsion: "soft" }), "soft-emulsion-warm")).toEqual([["stop", 26]]);
    expect(named(over(21, 26, { emulsion: "soft" }), "soft-emulsion-warm")).toEqual([["stop", 26]]);
    expect(named(over(60, 50), "maybe-fahrenheit")).toEqual([["stop", 60]]);
    expect(named(over(9, 8), "far-extrapolation")).toHaveLength(1);
    expect(named(over(60, 50, { temperatureC: 68 }), "maybe-fahrenheit")).toEqual([
      ["stop", 60],
      ["stop", 68],
    ]);
  });
  it("leaves out what a log says after the pour-out, and takes the bath at that moment between two readings", () => {
    const poured = [
      { timeS: 0, temperatureC: 20 },
      { timeS: 600, temperatureC: 20 },
      { timeS: 1200, temperatureC: 33 },
    ];
    expect(compensate(known, { temperatureC: poured }, knowledge).cautions).toEqual([]);
    const falling = compensate(
      known,
      {
        temperatureC: [
          { timeS: 100, temperatureC: 20 },
          { timeS: 1300, temperatureC: 8 },
        ],
      },
      knowledge,
    );
    expect(falling.cautions.find((one) => one.code === "temperature-unusual")?.actual).toBeCloseTo(
      20 - falling.timeS / 100,
      9,
    );
  });
  it("sees a peak between the ends of a forecast", () => {
    expect(
      codes(
        compensate(
          known,
          { temperatureC: sampled((t) => 20 + 10 * Math.exp(-(((t - 200) / 60) ** 2))) },
          knowledge,
        ),
      ),
    ).toContain("temperature-unusual");
  });
  it("uses the generic law where none is given, and says so", () => {
    const answer = compensate(known, { temperatureC: drift });
    expect(answer.timeS).toBeCloseTo(
      developUntil({ equivalentS: 510, referenceC: 20, law: genericTemperatureLaw, temperatureAt: drift }),
      6,
    );
    expect(rowOf(answer, "temperature").basis).toBe("default");
    expect(codes(answer)).toContain("default-law");
  });
});

describe("compensate refuses a wrong drift", () => {
  const refuses = (temperatureC: unknown, error: Error): void => {
    expect(() => compensate(known, { temperatureC: anyOf(temperatureC) }, knowledge)).toThrow(error);
  };
  it("names the field of a drift or a log that cannot be read", () => {
    refuses("20", new TypeError('compensate: conditions.temperatureC must be a number, got "20"'));
    refuses({}, new TypeError("compensate: conditions.temperatureC.startC is missing: a number"));
    refuses(
      [log[0]],
      new RangeError("compensate: conditions.temperatureC must hold at least 2 readings, got 1"),
    );
    refuses(
      [log[1], log[0]],
      new RangeError(
        "compensate: conditions.temperatureC[1].timeS must be above the one before (240), got 0",
      ),
    );
    refuses(() => 20, new TypeError("compensate: conditions.temperatureC must be a number, got a function"));
  });
});

describe("compensate: contrast", () => {
  const growth: GrowthLaw = {
    gammaInfinity: 1.4,
    ratePerS: 0.004,
    appearanceS: 30,
    sd: { gammaInfinity: 0.05, ratePerS: 0.0002, appearanceS: 3 },
  };
  const baseline = { ...known, gamma: gammaAt(510, growth) };
  it("is the ratio of the two times of the growth law", () => {
    const answer = compensate(baseline, { gamma: 1.3 }, { growth });
    expect(answer.timeS).toBeCloseTo(timeForGamma(1.3, growth), 8);
    expect(rowOf(answer, "contrast")).toEqual({
      from: baseline.gamma,
      to: 1.3,
      cause: "contrast",
      value: timeForGamma(1.3, growth) / timeForGamma(baseline.gamma, growth),
      logSd: effect("contrast", baseline.gamma, 1.3, growth).logSd,
      basis: "given",
      sources: [],
    });
  });
  it("has temperature act on the whole clock, appearance too: Wall, Thermo-Entwicklung, Jahrbuch 24, 1910, p. 44", () => {
    const warm = compensate(baseline, { gamma: 1.3, temperatureC: 24 }, { growth, temperature: law });
    expect(warm.timeS).toBeCloseTo(timeForGamma(1.3, growth) * temperatureFactor(20, 24, law), 8);
  });
  it("says how little the interval is worth near a limit of growth", () => {
    const said = (from: number, to: number, law?: GrowthLaw): unknown[] =>
      compensate({ ...known, gamma: from }, { gamma: to }, law ? { growth: law } : {})
        .cautions.filter((one) => one.code === "near-limit")
        .map(({ severity, path, limit, actual }) => [severity, path, limit, actual]);
    // Under the generic law, 1.8 ± 0.5: from 1.645 standard deviations below the limit on, and from one.
    expect(said(0.6, 0.97)).toEqual([]);
    expect(said(0.6, 0.98)).toEqual([["warn", "/conditions/gamma", 1.8, 0.98]]);
    expect(said(0.6, 1.29)).toEqual([["warn", "/conditions/gamma", 1.8, 1.29]]);
    for (const gamma of [1.31, 1.7, 1.79])
      expect(said(0.6, gamma)).toEqual([["stop", "/conditions/gamma", 1.8, gamma]]);
    expect(said(1.7, 0.6)).toEqual([["stop", "/conditions/gamma", 1.8, 1.7]]);
    // Near 0 the time is as short as what is unknown of the appearance.
    for (const [from, to] of [
      [0.6, 0.05],
      [0.05, 0.6],
    ] as const)
      expect(said(from, to)).toEqual([["warn", "/conditions/gamma", 0, 0.05]]);
    // From where 1.645 of its standard deviations are all of ln(factor), 0.082.
    expect(said(0.6, 0.08)).toEqual([["warn", "/conditions/gamma", 0, 0.08]]);
    expect(said(0.6, 0.085)).toEqual([]);
    expect(said(0.6, 0.5)).toEqual([]);
    // A law without a spread is known to a tenth, one known exactly has its limit to the end; what is left as
    // it was asks nothing of either.
    expect(said(0.6, 1.2, { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 0 })).toEqual([
      ["warn", "/conditions/gamma", 1.4, 1.2],
    ]);
    expect(
      said(0.6, 1.39, {
        gammaInfinity: 1.4,
        ratePerS: 0.004,
        appearanceS: 0,
        sd: { gammaInfinity: 0, ratePerS: 0, appearanceS: 0 },
      }),
    ).toEqual([]);
    expect(said(1.7, 1.7)).toEqual([]);
    const { lowS, highS, cautions } = compensate({ ...known, gamma: 0.6 }, { gamma: 1.7 });
    expect(lowS).toBeLessThan(known.timeS);
    expect(compensate({ ...known, gamma: 0.6 }, { gamma: 0.05 }).highS).toBeGreaterThan(known.timeS);
    expect(highS).toBeGreaterThan(known.timeS);
    expect(cautions[0]!.message).toBe(
      "A contrast of 1.7 is close to its limit of 1.8. The interval is rough there. Run a test strip first.",
    );
  });
  it("stands on a wide generic law where none is given, and says so", () => {
    const answer = compensate({ ...known, gamma: 0.6 }, { gamma: 0.7 });
    expect(rowOf(answer, "contrast")).toMatchObject({ basis: "default", sources: genericGrowthLaw.sources });
    expect(rowOf(answer, "contrast").value).toBeGreaterThan(1.1);
    expect(rowOf(answer, "contrast").value).toBeLessThan(1.35);
    expect(answer.cautions.find((one) => one.code === "default-law")?.data).toEqual({ causes: ["contrast"] });
  });
  it("changes nothing for the same gradient", () => {
    const answer = compensate(baseline, { gamma: baseline.gamma }, { growth });
    expect(answer.timeS).toBe(510);
    expect(rowOf(answer, "contrast")).toEqual({
      from: baseline.gamma,
      to: baseline.gamma,
      cause: "contrast",
      value: 1,
      logSd: 0,
      basis: "unchanged",
      sources: [],
    });
    expect(codes(answer)).not.toContain("unknown-field");
  });
  it("refuses what cannot be reached, and a gradient without its counterpart", () => {
    const refuses = (conditions: unknown, error: Error, from: unknown = baseline): void => {
      expect(() => compensate(anyOf(from), anyOf(conditions), { growth })).toThrow(error);
    };
    refuses(
      { gamma: 1.4 },
      new RangeError(
        "compensate: conditions.gamma must be below 1.4, the limit of this growth law (a harder material needs its own, as growthFromDoubling gives), got 1.4",
      ),
    );
    refuses(
      { gamma: 0 },
      new RangeError("compensate: conditions.gamma must be above 0 and at most 1000, got 0"),
    );
    refuses(
      { gamma: 0.5 },
      new RangeError("compensate: baseline.gamma must be above 0 and at most 1000, got 0"),
      { ...known, gamma: 0 },
    );
    refuses(
      { gamma: 0.5 },
      new TypeError("compensate: conditions.gamma needs baseline.gamma: what was it for the known time?"),
      known,
    );
  });
});

describe("contrastLogSd", () => {
  const plain: GrowthLaw = { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 30 };
  const moved = (change: Partial<GrowthLaw>): number => {
    const other = { ...plain, ...change };
    return Math.log(
      timeForGamma(0.9, other) /
        timeForGamma(0.6, other) /
        (timeForGamma(0.9, plain) / timeForGamma(0.6, plain)),
    );
  };
  it("is the law moved by each of its spreads in turn, in quadrature", () => {
    const tiny = 1e-6;
    const only = (sd: GrowthLaw["sd"]): number => effect("contrast", 0.6, 0.9, { ...plain, sd: sd! }).logSd;
    expect(only({ gammaInfinity: 0.1, ratePerS: 0, appearanceS: 0 })).toBeCloseTo(
      Math.abs(moved({ gammaInfinity: 1.4 + tiny }) / tiny) * 0.1,
      5,
    );
    expect(only({ gammaInfinity: 0, ratePerS: 0.001, appearanceS: 0 })).toBeCloseTo(
      Math.abs(moved({ ratePerS: 0.004 + 1e-9 }) / 1e-9) * 0.001,
      5,
    );
    expect(only({ gammaInfinity: 0, ratePerS: 0, appearanceS: 5 })).toBeCloseTo(
      Math.abs(moved({ appearanceS: 30 + tiny }) / tiny) * 5,
      5,
    );
    expect(only({ gammaInfinity: 0.1, ratePerS: 0.001, appearanceS: 5 })).toBeCloseTo(
      Math.hypot(
        only({ gammaInfinity: 0.1, ratePerS: 0, appearanceS: 0 }),
        only({ gammaInfinity: 0, ratePerS: 0.001, appearanceS: 0 }),
        only({ gammaInfinity: 0, ratePerS: 0, appearanceS: 5 }),
      ),
      12,
    );
  });
  it("takes 10 % in limit and rate and 20 % in appearance where the law has none", () => {
    const sd = { gammaInfinity: 0.14, ratePerS: 0.0004, appearanceS: 6 };
    expect(effect("contrast", 0.6, 0.9, plain).logSd).toBeCloseTo(
      effect("contrast", 0.6, 0.9, { ...plain, sd }).logSd,
      12,
    );
    expect(effect("contrast", 0.6, 0.6, plain).logSd).toBe(0);
    expect(effect("contrast", 0.9, 0.6, plain).logSd).toBeCloseTo(
      effect("contrast", 0.6, 0.9, plain).logSd,
      12,
    );
  });
  it("names itself when the law is wrong", () => {
    expect(() => effect("contrast", 0.6, 0.9, anyOf(null)).logSd).toThrow(
      new TypeError("effect: law must be an object, got null"),
    );
  });
});

describe("a log that ends with the development", () => {
  const knowledge: Knowledge = {
    temperature: { kind: "coefficient", ratio: 2, intervalC: 10 },
    dilution: { kind: "power", exponent: 0.9 },
    agitation: { staleLoss: 0.6, staleTimeS: 60 },
    use: { increase: 0.1, perCm2PerL: 500, growth: "linear" },
    age: { kind: "half-life", halfLifeH: 10 },
    growth: { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 0 },
  };
  it("that ends with the development is not held", () => {
    // At the baseline's own temperature the rate is 1, so 512 s of clock do the work of 512 s; a sixteenth is
    // 32 s, which adds up exactly.
    const at = (lastS: number): readonly string[] => {
      const answer = compensate(
        { timeS: 512, temperatureC: 20 },
        {
          temperatureC: [
            { timeS: 0, temperatureC: 20 },
            { timeS: lastS, temperatureC: 20 },
          ],
        },
        knowledge,
      );
      expect(answer.timeS).toBe(512);
      return answer.cautions.map((one) => one.code);
    };
    expect(at(512)).toEqual([]);
    expect(at(511)).toEqual(["log-held"]);
  });
});
