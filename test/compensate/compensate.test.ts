import { describe, expect, it } from "vitest";
import { fc, test } from "../property.js";
import {
  agitationFactor,
  brewStrength,
  compensate,
  dilutionFactor,
  genericTemperatureLaw,
  handbookTemperatureLaw,
  temperatureFactor,
  useFactor,
  type Baseline,
  type DeveloperBrew,
  type Conditions,
  type Factor,
  type Knowledge,
  describeCompensation,
} from "../../src/index.js";
import { anyOf, thrown } from "../helpers.js";
const known: Baseline = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } };
const codes = (baseline: Baseline, conditions: Conditions, knowledge: Knowledge = {}): string[] =>
  compensate(baseline, conditions, knowledge).cautions.map((caution) => caution.code);
const cautionOf = (code: string, baseline: Baseline, conditions: Conditions, knowledge: Knowledge = {}) =>
  compensate(baseline, conditions, knowledge).cautions.find((caution) => caution.code === code);

describe("compensate", () => {
  it("gives the baseline's time back to the last bit under its own conditions", () => {
    const worn = { ...known, usedCm2PerL: 516, ageH: 2 };
    const answer = compensate(worn, { ...worn, ...anyOf({ timeS: undefined }) });
    expect(answer.timeS).toBe(510);
    expect(answer.factors.map(({ cause, value, basis }) => [cause, value, basis])).toEqual([
      ["baseline", 1, "default"],
      ["temperature", 1, "unchanged"],
      ["dilution", 1, "unchanged"],
      ["agitation", 1, "unchanged"],
      ["use", 1, "unchanged"],
      ["age", 1, "unchanged"],
    ]);
    expect(compensate(known, {}).timeS).toBe(510);
    // What remains is how well a known time repeats: 4 %, ± 6.8 % at 90 %.
    expect(answer.highS / answer.timeS).toBeCloseTo(Math.exp(1.6448536269514722 * 0.04), 12);
    expect(answer.lowS / answer.timeS).toBeCloseTo(Math.exp(-1.6448536269514722 * 0.04), 12);
  });

  it("multiplies the factors of the causes and adds their variances", () => {
    const conditions: Conditions = {
      temperatureC: 18,
      dilution: "1+14",
      agitation: { everyS: 30 },
      usedCm2PerL: 516.128,
      ageH: 1,
    };
    const answer = compensate(known, conditions);
    const byCause = Object.fromEntries(answer.factors.map((factor) => [factor.cause, factor]));
    expect(byCause["temperature"]?.value).toBe(temperatureFactor(20, 18, genericTemperatureLaw));
    expect(byCause["dilution"]?.value).toBe(dilutionFactor("1+9", "1+14"));
    expect(byCause["agitation"]?.value).toBe(agitationFactor({ everyS: 60 }, { everyS: 30 }));
    expect(byCause["use"]?.value).toBeCloseTo(1.08, 12);
    expect(byCause["age"]).toEqual({
      cause: "age",
      from: 0,
      to: 1,
      value: 1,
      logSd: 0.02,
      basis: "default",
      sources: [
        "no law of age: the median is held for a day, then time and spread grow with the age (assumed)",
      ],
    });
    const product = answer.factors.reduce((time, factor) => time * factor.value, 510);
    expect(answer.timeS).toBeCloseTo(product, 9);
    const logSd = Math.sqrt(answer.factors.reduce((sum, factor) => sum + factor.logSd ** 2, 0));
    expect(Math.log(answer.highS / answer.timeS)).toBeCloseTo(1.6448536269514722 * logSd, 12);
    expect(answer.lowS * answer.highS).toBeCloseTo(answer.timeS ** 2, 6);
  });

  it("says what each row rests on", () => {
    const knowledge: Knowledge = {
      temperature: handbookTemperatureLaw("pyro-metol"),
      dilution: { kind: "power", exponent: 0.9 },
      agitation: { staleLoss: 0.6, staleTimeS: 60, runs: 4 },
      use: { increase: 0.1, perCm2PerL: 516.128, growth: "linear" },
      age: { kind: "half-life", halfLifeH: 10, sources: ["own bottle test"] },
    };
    const conditions: Conditions = {
      temperatureC: 21,
      dilution: "1+10",
      agitation: "continuous",
      usedCm2PerL: 100,
      ageH: 1,
      strength: { cause: "strength", value: 1.1, logSd: 0.2, basis: "default", sources: ["spoons"] },
    };
    expect(
      compensate(known, conditions, knowledge).factors.map(({ cause, basis, runs, sources }) => [
        cause,
        basis,
        runs,
        sources,
      ]),
    ).toEqual([
      ["baseline", "default", undefined, ["a known time repeats to about 4 % (common practice)"]],
      ["temperature", "handbook", undefined, [expect.stringContaining("Ives")]],
      ["dilution", "given", undefined, []],
      ["agitation", "own-runs", 4, []],
      ["use", "given", undefined, []],
      ["age", "given", undefined, ["own bottle test"]],
      ["strength", "default", undefined, ["spoons"]],
      ["interaction", "default", undefined, [expect.stringContaining("printed pairs")]],
    ]);
    const own = compensate({ ...known, logSd: 0.1 }, {}).factors[0];
    expect(own).toEqual({ cause: "baseline", value: 1, logSd: 0.1, basis: "given", sources: [] });
  });

  it("takes use and age from 0 when the baseline is silent, and from the baseline when it speaks", () => {
    const use = { increase: 0.1, perCm2PerL: 100, growth: "linear" } as const;
    expect(compensate(known, { usedCm2PerL: 200 }, { use }).timeS).toBeCloseTo(510 * 1.2, 9);
    expect(compensate({ ...known, usedCm2PerL: 100 }, { usedCm2PerL: 200 }, { use }).timeS).toBeCloseTo(
      (510 * 1.2) / 1.1,
      9,
    );
    const age = { kind: "half-life", halfLifeH: 10 } as const;
    expect(compensate(known, { ageH: 10 }, { age }).timeS).toBeCloseTo(1020, 9);
    expect(compensate({ ...known, ageH: 5 }, { ageH: 10 }, { age }).timeS).toBeCloseTo(510 * Math.SQRT2, 9);
    expect(compensate({ ...known, usedCm2PerL: 100 }, {}, { use }).timeS).toBe(510);
  });

  test.prop([
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.constantFrom("stock", "1+9", "1+1000"),
    fc.constantFrom<Conditions["agitation"]>("continuous", "stand", { everyS: 1 }, { everyS: 3600 }),
    fc.double({ min: 0, max: 5000, noNaN: true }),
    fc.double({ min: 0, max: 48, noNaN: true }),
    fc.constantFrom(1, 300, 1e6),
  ])(
    "is a positive finite time inside its interval, whose ln is the sum of the ln factors",
    (from, to, dilution, agitation, used, ageH, timeS) => {
      const baseline: Baseline = { timeS, temperatureC: from, dilution: "1+9", agitation: { everyS: 30 } };
      const conditions: Conditions = {
        temperatureC: to,
        dilution,
        ...(agitation && { agitation }),
        usedCm2PerL: used,
        ageH,
      };
      const answer = compensate(JSON.parse(JSON.stringify(baseline)), JSON.parse(JSON.stringify(conditions)));
      expect(answer.timeS).toBeGreaterThan(0);
      expect(Number.isFinite(answer.highS)).toBe(true);
      expect(answer.lowS).toBeLessThan(answer.timeS);
      expect(answer.highS).toBeGreaterThan(answer.timeS);
      const sum = answer.factors.reduce((total, factor) => total + Math.log(factor.value), 0);
      expect(Math.log(answer.timeS / timeS)).toBeCloseTo(sum, 9);
      expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
    },
  );
});

describe("cautions of compensate", () => {
  it("is silent about an ordinary change with own laws", () => {
    const knowledge: Knowledge = {
      temperature: { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.1 },
    };
    expect(codes(known, { temperatureC: 21 }, knowledge)).toEqual([]);
    expect(codes(known, {})).toEqual([]);
  });
  it("warns under five minutes and over two hours, not at them", () => {
    expect(cautionOf("short-time", { timeS: 299, temperatureC: 20 }, {})).toMatchObject({
      code: "short-time",
      severity: "warn",
      limit: 300,
      actual: 299,
    });
    expect(codes({ timeS: 300, temperatureC: 20 }, {})).toEqual([]);
    expect(codes({ timeS: 7200, temperatureC: 20 }, {})).toEqual([]);
    expect(cautionOf("long-time", { timeS: 7201, temperatureC: 20 }, {})).toMatchObject({
      code: "long-time",
      severity: "warn",
      limit: 7200,
      actual: 7201,
    });
  });
  it("asks for a test strip when the interval is wide", () => {
    const strength = { cause: "strength", value: 1, logSd: 0.5, basis: "given", sources: [] } as const;
    expect(cautionOf("wide-interval", known, { strength })).toMatchObject({
      code: "wide-interval",
      severity: "warn",
      limit: 1.5,
      actual: expect.closeTo(Math.exp(2 * 1.6448536269514722 * Math.hypot(0.5, 0.04)), 9),
    });
    const narrow = { ...strength, logSd: 0.116 };
    expect(codes(known, { strength: narrow })).toEqual([]);
    expect(codes(known, { strength: { ...narrow, logSd: 0.1169 } })).toEqual(["wide-interval"]);
  });
  it("names the causes that rest on a generic law", () => {
    expect(
      cautionOf("default-law", known, { temperatureC: 21, dilution: "1+10", usedCm2PerL: 100 }),
    ).toMatchObject({
      code: "default-law",
      severity: "note",
    });
    expect(
      codes(
        known,
        { temperatureC: 21 },
        { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 50 } },
      ),
    ).toEqual([]);
  });
  it("passes on the cautions of the temperature module, with the place", () => {
    expect(cautionOf("temperature-unusual", known, { temperatureC: 14 })?.path).toBe(
      "/conditions/temperatureC",
    );
    expect(codes({ ...known, hydroquinone: true }, { temperatureC: 14 })).toContain("hydroquinone-cold");
    expect(codes({ ...known, hydroquinone: false }, { temperatureC: 14 })).not.toContain("hydroquinone-cold");
    expect(codes({ ...known, emulsion: "soft" }, { temperatureC: 21 })).toContain("soft-emulsion-warm");
    expect(codes({ ...known, emulsion: "hardened" }, { temperatureC: 21 })).not.toContain(
      "soft-emulsion-warm",
    );
    expect(compensate(known, { temperatureC: 68 }).cautions[0]).toMatchObject({
      code: "maybe-fahrenheit",
      path: "/conditions/temperatureC",
    });
    const warm = compensate({ timeS: 510, temperatureC: 68 }, { temperatureC: 20 });
    expect(warm.cautions[0]).toMatchObject({ code: "maybe-fahrenheit", path: "/baseline/temperatureC" });
    // Where today's is left out, the figure stands in the baseline alone, and what it says is said once.
    const once = compensate({ timeS: 510, temperatureC: 68 }, {}).cautions;
    expect(once.map(({ code, path }) => [code, path])).toEqual([
      ["maybe-fahrenheit", "/baseline/temperatureC"],
    ]);
    expect(compensate({ timeS: 510, temperatureC: 33 }, {}).cautions[0]).toMatchObject({
      code: "temperature-limit",
      path: "/baseline/temperatureC",
    });
    const both = compensate({ timeS: 510, temperatureC: 68 }, { temperatureC: 68 }).cautions;
    expect(both.map(({ path }) => path)).toEqual(["/conditions/temperatureC"]);
    expect(
      compensate({ timeS: 510, temperatureC: 45 }, { temperatureC: 20 }).cautions.map(({ path }) => path),
    ).not.toContain("/baseline/temperatureC");
  });
  it("warns past a fourfold change of concentration, and stops past the weakest bath in print", () => {
    const far = (from: string, dilution: string, laws: Knowledge = {}): unknown =>
      compensate({ timeS: 510, temperatureC: 20, dilution: from }, { dilution }, laws).cautions.find(
        ({ code }) => code === "far-extrapolation",
      );
    // 1+100 against 1+25 is printed: 101/26 = 3.9.
    expect(far("1+25", "1+100")).toBeUndefined();
    expect(far("1+9", "1+39")).toBeUndefined();
    expect(far("1+9", "1+40")).toMatchObject({
      severity: "warn",
      path: "/conditions/dilution",
      quantity: "ratio",
      limit: 4,
      actual: expect.closeTo(4.1, 9),
      data: { cause: "dilution", bath: "weaker" },
    });
    expect(far("1+40", "1+9")).toMatchObject({
      severity: "warn",
      actual: expect.closeTo(4.1, 9),
      data: { cause: "dilution", bath: "stronger" },
    });
    expect(far("1+25", "1+1000")).toMatchObject({
      severity: "stop",
      limit: 100,
      actual: expect.closeTo(1000, 6),
    });
    expect(far("1+50", "1+100")).toBeUndefined();
    expect(far("1+200", "1+200")).toBeUndefined();
    // Stronger than the known bath there is more stock than it had.
    expect(far("1+200", "1+150")).toBeUndefined();
    const rows = ["1+9", "1+199"].map((dilution, i) => ({ dilution, timeS: 500 + 1500 * i }));
    expect(far("1+9", "1+150", { dilution: { kind: "table", rows } })).toBeUndefined();
  });
  it("warns far from the known temperature and outside a table", () => {
    expect(
      cautionOf("far-extrapolation", { timeS: 1000, temperatureC: 10 }, { temperatureC: 20.1 }),
    ).toMatchObject({
      code: "far-extrapolation",
      severity: "warn",
      path: "/conditions/temperatureC",
    });
    expect(codes({ timeS: 1000, temperatureC: 10 }, { temperatureC: 20 })).not.toContain("far-extrapolation");
    const temperature = {
      kind: "table",
      rows: [
        { temperatureC: 18, timeS: 600 },
        { temperatureC: 24, timeS: 360 },
      ],
    } as const;
    expect(codes(known, { temperatureC: 24 }, { temperature })).toEqual([]);
    expect(cautionOf("outside-table", known, { temperatureC: 24.1 }, { temperature })).toMatchObject({
      code: "outside-table",
      severity: "warn",
      path: "/conditions/temperatureC",
    });
    expect(codes({ ...known, temperatureC: 17.9 }, { temperatureC: 20 }, { temperature })).toContain(
      "outside-table",
    );
    // Where nothing is carried on, nothing is said.
    expect(codes({ ...known, temperatureC: 17.9 }, { temperatureC: 17.9 }, { temperature })).not.toContain(
      "outside-table",
    );
    const dilution = {
      kind: "table",
      rows: [
        { dilution: "1+4", timeS: 330 },
        { dilution: "1+9", timeS: 690 },
      ],
    } as const;
    expect(codes(known, { dilution: "1+4" }, { dilution })).not.toContain("outside-table");
    expect(codes({ ...known, dilution: "1+40" }, { dilution: "1+40" }, { dilution })).not.toContain(
      "outside-table",
    );
    expect(cautionOf("outside-table", known, { dilution: "1+10" }, { dilution })).toMatchObject({
      code: "outside-table",
      severity: "warn",
      path: "/conditions/dilution",
    });
  });
  it("warns of stand and of long intervals", () => {
    expect(cautionOf("stand", known, { agitation: "stand" })).toMatchObject({
      code: "stand",
      severity: "warn",
      path: "/conditions/agitation",
    });
    expect(cautionOf("stand", { ...known, agitation: "stand" }, { agitation: { everyS: 30 } })).toMatchObject(
      { severity: "warn", path: "/baseline/agitation", data: { side: "baseline" } },
    );
    // A stand time carried anywhere is rough, and once is enough.
    const stood = { ...known, agitation: "stand" } as const;
    for (const conditions of [{}, { agitation: "stand" }, { temperatureC: 20.5 }] as const)
      expect(codes(stood, conditions).filter((code) => code === "stand")).toEqual(["stand"]);
    expect(codes(known, { agitation: { everyS: 180 } })).not.toContain("long-interval");
    expect(cautionOf("long-interval", known, { agitation: { everyS: 181 } })).toMatchObject({
      code: "long-interval",
      severity: "warn",
      path: "/conditions/agitation",
    });
  });
  it("warns of a push beside another contrast, which says one thing twice", () => {
    const flat = { ...known, gamma: 0.6 };
    expect(cautionOf("push-and-contrast", flat, { gamma: 0.75, pushStops: 1 })).toMatchObject({
      severity: "warn",
      path: "/conditions/pushStops",
      actual: 1,
    });
    for (const conditions of [
      { gamma: 0.75 },
      { pushStops: 1 },
      { gamma: 0.6, pushStops: 1 },
      { gamma: 0.75, pushStops: 0 },
    ])
      expect(codes(flat, conditions)).not.toContain("push-and-contrast");
  });
  it("says stop past a bath's life and past its capacity", () => {
    const age = { kind: "life", lifeH: 1.5 } as const;
    // 510 s are 8.5 min: at 1.3 h of age the bath lives until the pour-out, also at the upper end.
    expect(codes(known, { ageH: 1.3 }, { age })).toEqual([]);
    const answer = compensate(known, { ageH: 2 }, { age });
    expect(answer.cautions[0]).toMatchObject({
      code: "bath-past-life",
      severity: "stop",
      path: "/conditions/ageH",
      quantity: "ageH",
      limit: 1.5,
      actual: 2,
      data: { at: "pour-in" },
    });
    expect(answer.timeS).toBe(510);
    // A time known from a bath past its life is no known time.
    expect(() => compensate({ ...known, ageH: 2 }, { ageH: 1 }, { age })).toThrow(
      new RangeError("compensate: baseline.ageH must be at most 1.5 h, how long the bath works, got 2"),
    );
    const use = { increase: 0.1, perCm2PerL: 500, growth: "linear", capacityCm2PerL: 1000 } as const;
    expect(codes(known, { usedCm2PerL: 1000 }, { use })).toEqual([]);
    expect(cautionOf("bath-past-capacity", known, { usedCm2PerL: 1001 }, { use })).toMatchObject({
      code: "bath-past-capacity",
      severity: "stop",
      path: "/conditions/usedCm2PerL",
      quantity: "cm2PerL",
      limit: 1000,
      actual: 1001,
    });
  });
  it("names fields that nobody read", () => {
    expect(compensate(known, anyOf({ "temprature": 14, "a/b~c": 1 })).cautions).toMatchObject([
      {
        code: "unknown-field",
        severity: "warn",
        path: "/conditions/temprature",
      },
      {
        code: "unknown-field",
        severity: "warn",
        path: "/conditions/a~1b~0c",
      },
    ]);
    expect(compensate(anyOf({ ...known, film: "plate" }), {}).cautions.map(({ path }) => path)).toEqual([
      "/baseline/film",
    ]);
  });
  it("reads every field of the two shapes", () => {
    const same = {
      temperatureC: 20,
      dilution: "1+9",
      agitation: "continuous",
      usedCm2PerL: 1,
      ageH: 1,
    } as const;
    const full: Baseline = { ...same, timeS: 510, logSd: 0.01, hydroquinone: true, emulsion: "hardened" };
    const strength = { cause: "strength", value: 1, logSd: 0, basis: "given", sources: ["scales"] } as const;
    const answer = compensate(full, { ...same, strength });
    expect(answer.cautions).toEqual([]);
    expect(answer.factors.map(({ sources }) => sources)).toEqual([[], [], [], [], [], [], []]);
    const worn = compensate(full, {
      ...same,
      usedCm2PerL: 2,
      dilution: "1+10",
      agitation: { everyS: 5 },
      temperatureC: 21,
    });
    for (const { cause, sources } of worn.factors.slice(1, 5))
      expect(sources.join("").length, cause).toBeGreaterThan(20);
  });
  it("passes on what brewStrength had to say about the strength it hands over", () => {
    const vitamin = (massG: number): DeveloperBrew => ({
      volumeMl: 500,
      ingredients: [
        { ingredient: "soda-anhydrous", massG: 22 },
        { ingredient: "ascorbic-acid", massG },
      ],
    });
    const strength = brewStrength(vitamin(16), vitamin(0.05));
    const far = strength.cautions.find(({ code }) => code === "strength-far");
    expect(far).toMatchObject({ severity: "stop" });
    const { cautions } = compensate(known, { strength });
    expect(cautions[0]).toEqual({ ...far, path: "/conditions/strength" });
    const plain: Factor = {
      cause: "strength",
      value: strength.value,
      logSd: strength.logSd,
      basis: "given",
      sources: [],
    };
    expect(codes(known, { strength: plain })).not.toContain("strength-far");
    const bad =
      (cautions: unknown): (() => unknown) =>
      () =>
        compensate(known, { strength: { ...plain, cautions } as Factor });
    expect(bad("none")).toThrow(
      new TypeError('compensate: conditions.strength.cautions must be an array, got "none"'),
    );
    expect(bad([3])).toThrow(
      new TypeError("compensate: conditions.strength.cautions[0] must be an object, got 3"),
    );
  });
  it("puts the gravest first", () => {
    const order = compensate(
      { timeS: 100, temperatureC: 20 },
      { temperatureC: 60, usedCm2PerL: 9000 },
    ).cautions;
    const rank = { stop: 0, warn: 1, note: 2 };
    const ranks = order.map(({ severity }) => rank[severity]);
    expect(ranks).toEqual([...ranks].sort());
    expect(new Set(ranks)).toEqual(new Set([0, 1, 2]));
  });
});

describe("compensate refuses", () => {
  it("a condition whose counterpart the baseline lacks", () => {
    const bare = { timeS: 510, temperatureC: 20 };
    expect(() => compensate(bare, { dilution: "1+9" })).toThrow(
      new TypeError(
        "compensate: conditions.dilution needs baseline.dilution: what was it for the known time?",
      ),
    );
    expect(() => compensate(bare, { agitation: "stand" })).toThrow(
      new TypeError(
        "compensate: conditions.agitation needs baseline.agitation: what was it for the known time?",
      ),
    );
  });
  it.each<[unknown, unknown, unknown, Error]>([
    [null, {}, {}, new TypeError("compensate: baseline must be an object, got null")],
    [known, undefined, {}, new TypeError("compensate: conditions is missing: an object")],
    [known, {}, 7, new TypeError("compensate: knowledge must be an object, got 7")],
    [{ temperatureC: 20 }, {}, {}, new TypeError("compensate: baseline.timeS is missing: a number")],
    [
      { ...known, timeS: 0 },
      {},
      {},
      new RangeError("compensate: baseline.timeS must be above 0 and at most 1000000 s, got 0"),
    ],
    [{ timeS: 510 }, {}, {}, new TypeError("compensate: baseline.temperatureC is missing: a number")],
    [
      { ...known, temperatureC: 101 },
      {},
      {},
      new RangeError("compensate: baseline.temperatureC must be from 0 to 100 °C, got 101"),
    ],
    [
      known,
      { temperatureC: 300 },
      {},
      new RangeError("compensate: conditions.temperatureC must be from 0 to 100 °C, got 300"),
    ],
    [
      known,
      { temperatureC: NaN },
      {},
      new RangeError("compensate: conditions.temperatureC must be from 0 to 100 °C, got NaN"),
    ],
    [
      known,
      { temperatureC: "20" },
      {},
      new TypeError('compensate: conditions.temperatureC must be a number, got "20"'),
    ],
    [{ ...known, logSd: 4 }, {}, {}, new RangeError("compensate: baseline.logSd must be from 0 to 3, got 4")],
    [
      known,
      { ageH: -1 },
      {},
      new RangeError("compensate: conditions.ageH must be from 0 to 1000000 h, got -1"),
    ],
    [
      { ...known, ageH: -1 },
      { ageH: 1 },
      {},
      new RangeError("compensate: baseline.ageH must be from 0 to 1000000 h, got -1"),
    ],
    [known, { strength: 3 }, {}, new TypeError("compensate: conditions.strength must be an object, got 3")],
    [
      known,
      { strength: { value: 1, logSd: 0, basis: NaN, sources: [] } },
      {},
      new RangeError(
        'compensate: conditions.strength.basis must be "unchanged", "given", "handbook", "default" or ' +
          '"own-runs", got NaN',
      ),
    ],
    [
      known,
      { strength: { value: 1, logSd: 0, basis: "given", sources: "me" } },
      {},
      new TypeError('compensate: conditions.strength.sources must be an array, got "me"'),
    ],
    [
      known,
      {},
      { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 60, sources: 1 } },
      new TypeError("compensate: knowledge.temperature.sources must be an array, got 1"),
    ],
    [
      known,
      {},
      { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 60, runs: NaN } },
      new RangeError("compensate: knowledge.temperature.runs must be from 0 to 1000000, got NaN"),
    ],
    [
      known,
      { ageH: 1 },
      { age: { kind: "life", lifeH: 2, runs: -1 } },
      new RangeError("compensate: knowledge.age.runs must be from 0 to 1000000, got -1"),
    ],
    [
      known,
      { strength: { value: 0, logSd: 0 } },
      {},
      new RangeError("compensate: conditions.strength.value must be above 0 and at most 1000000, got 0"),
    ],
    [
      known,
      { strength: { value: 1, logSd: 11 } },
      {},
      new RangeError("compensate: conditions.strength.logSd must be from 0 to 10, got 11"),
    ],
    [
      known,
      { usedCm2PerL: 1 },
      { use: { increase: 0.1, perCm2PerL: 1, growth: "linear", capacityCm2PerL: 0 } },
      new RangeError(
        "compensate: knowledge.use.capacityCm2PerL must be above 0 and at most 1000000 cm²/l, got 0",
      ),
    ],
  ])("$3", (baseline, conditions, knowledge, error) => {
    expect(() => compensate(anyOf(baseline), anyOf(conditions), anyOf(knowledge))).toThrow(error);
  });
  it("refuses laws so wide that an interval would have no ends", () => {
    const use = (sdIncrease: number) =>
      ({ use: { increase: 0, perCm2PerL: 0.1, growth: "linear", sdIncrease } }) as const;
    const exact = { ...known, logSd: 0 };
    expect(compensate(exact, { usedCm2PerL: 1 }, use(10)).highS).toBeCloseTo(
      known.timeS * Math.exp(164.48536269514722),
      -60,
    );
    expect(() => compensate(exact, { usedCm2PerL: 1.25 }, use(10))).toThrow(
      new RangeError("compensate: knowledge must be such that ln(time) spreads by at most 100, got 125"),
    );
  });
  it("names the field when a dilution cannot be read", () => {
    expect(() => compensate(known, { dilution: "1:9" })).toThrow(
      'compensate: conditions.dilution must be "1+9" (1 part and 9 of water) or "1+8" (1 part of 9 in all), got "1:9"',
    );
    expect(() => compensate({ ...known, dilution: "nine" }, { dilution: "1+9" })).toThrow(
      'compensate: baseline.dilution must be a dilution such as "1+9" or "stock", got "nine"',
    );
  });
  it("agrees with useFactor on the rule", () => {
    expect(() => compensate(known, { usedCm2PerL: -1 })).toThrow("compensate: conditions.usedCm2PerL");
    expect(useFactor(0, 516.128, { increase: 0.08, perCm2PerL: 516.128, growth: "linear" })).toBeCloseTo(
      1.08,
      12,
    );
  });
  const baseline = { timeS: 510, temperatureC: 20 };
  it("a wrong law, and a wrong origin", () => {
    expect(thrown(() => compensate(baseline, {}, anyOf({ temperature: null })))).toBe(
      "TypeError: compensate: knowledge.temperature must be an object, got null",
    );
    expect(thrown(() => compensate(anyOf({ ...baseline, runs: NaN }), {}))).toBe(
      "RangeError: compensate: baseline.runs must be from 0 to 1000000, got NaN",
    );
  });
});

describe("compensate with describeCompensation", () => {
  it("reads an answer as small as it makes one", () => {
    const law = { kind: "coefficient", ratio: 10, intervalC: 10 } as const;
    const answer = compensate({ timeS: 1e-29, temperatureC: 0 }, { temperatureC: 100 }, { temperature: law });
    expect(answer.timeS).toBeCloseTo(0, 30);
    expect(describeCompensation(answer)).toContain(
      "The laws alone would say 0:00, with 90 % certainty between 0:00 and 0:00.",
    );
  });
});
