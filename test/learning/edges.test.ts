/*
 * The edges of learning: refusals to the letter, limits just met, and laws learned from a single run,
 * where the answer can be written out by hand. All runs are invented.
 */
import { describe, expect, it } from "vitest";
import {
  compensate,
  handbookTemperatureLaw,
  learn,
  mergeKnowledge,
  nextTest,
  predict,
  startKnowledge,
  tidyRuns,
  type LearnedKnowledge,
  type Run,
} from "../../src/index.js";
import { adviceOn } from "../../src/learning/advice.js";
import { entryOf } from "../../src/learning/notebook.js";
import type { Parameter } from "../../src/learning/types.js";
import { baseline, good, parameter, start, stated } from "./start.js";

const anyOf = (value: unknown): any => value;

describe("agitation that is none", () => {
  it.each([
    [null, "an object, got null"],
    [NaN, "an object, got NaN"],
    [0, "an object, got 0"],
    ["", '"continuous", "stand" or { everyS }, got ""'],
  ])("%j is refused in a baseline and in a run", (agitation, why) => {
    expect(() => startKnowledge(anyOf({ ...baseline, agitation }))).toThrow(
      `startKnowledge: baseline.agitation must be ${why}`,
    );
    expect(() => learn(start, [anyOf({ ...good(500), agitation })])).toThrow(
      `learn: runs[0].agitation must be ${why}`,
    );
  });
});

describe("the text by which a run is the same", () => {
  it("holds every field in one order, and those of an outcome by name", () => {
    const run: Run = {
      outcome: { wanted: 0.6, kind: "gamma", gamma: 0.5 },
      temperatureC: 18,
      timeS: 500,
      id: "a",
    };
    const text =
      '["a",null,500,18,null,null,null,null,null,null,null,null,[["gamma",0.5],["kind","gamma"],["wanted",0.6]],null]';
    expect(entryOf("run", run).text).toBe(text);
  });
  it("keeps runs that are the same in the order in which they came", () => {
    const [one, two] = [good(500), good(500)];
    const known = learn(start, [one, two]);
    expect([known.runs[0] === one, known.runs[1] === two]).toEqual([true, true]);
  });
});

describe("merging", () => {
  it("keeps a run twice that the second notebook has twice and the first once", () => {
    const merged = mergeKnowledge(learn(start, [good(500)]), learn(start, [good(500), good(500)]));
    expect(merged.runs.map(({ timeS }) => timeS)).toEqual([500, 500]);
  });
  it("takes a null in what both started from as it takes any value", () => {
    const own = (film: unknown): LearnedKnowledge => startKnowledge(anyOf({ ...baseline, film }));
    expect(mergeKnowledge(own(null), own(null))).toEqual(own(null));
    expect(() => mergeKnowledge(own(null), own("sheet"))).toThrow(
      new RangeError("mergeKnowledge: b must start from the same prior as a: learn its runs into a instead"),
    );
  });
});

describe("laws learned from one run, by hand", () => {
  /*
   * With the base time known for certain, one run of surprise y and slope h, known to r, moves a number of
   * spread s by y·h·s²/(h²s² + r²) and leaves it the variance 1/(1/s² + h²/r²).
   */
  const moved = (surprise: number, slope: number, sd: number, r: number): number =>
    (surprise * slope * sd ** 2) / (slope ** 2 * sd ** 2 + r ** 2);
  const left = (slope: number, sd: number, r: number): number =>
    Math.sqrt(1 / (1 / sd ** 2 + slope ** 2 / r ** 2));

  it("a compound use law: ln(time) = portions·ln(1 + increase), scaled", () => {
    const use = {
      increase: 0.1,
      sdIncrease: 0.05,
      perCm2PerL: 500,
      growth: "compound",
      sources: ["invented"],
    } as const;
    const known = learn(startKnowledge(baseline, { baseLogSd: 0, noise: "stated", laws: { use } }), [
      good(700, 20, { usedCm2PerL: 1000 }),
    ]);
    // 1000 cm²/l are 2 portions of 500; a good run is known to 0.1.
    const slope = (2 * Math.log(1.1)) / 0.1;
    const value = 0.1 + moved(Math.log(700 / 510) - 2 * Math.log(1.1), slope, 0.05, 0.1);
    expect(parameter(known, "use").value).toBeCloseTo(value, 12);
    expect(known.use?.increase).toBeCloseTo(value, 12);
    expect(known.use?.sdIncrease).toBeCloseTo(left(slope, 0.05, 0.1), 12);
    expect(known.use?.shape).toBe(0.1);
  });
  it("a linear use law from a baseline in a used bath", () => {
    const use = {
      increase: 0.2,
      sdIncrease: 0.05,
      perCm2PerL: 500,
      growth: "linear",
      sources: ["invented"],
    } as const;
    const prior = startKnowledge(
      { ...baseline, usedCm2PerL: 500 },
      { baseLogSd: 0, noise: "stated", laws: { use } },
    );
    const known = learn(prior, [good(700, 20, { usedCm2PerL: 1000 })]);
    // From 1 portion to 2: ln(1.4/1.2), of which 1 of the increase is the 1/0.2.
    const slope = Math.log(1.4 / 1.2) / 0.2;
    expect(known.use?.increase).toBeCloseTo(
      0.2 + moved(Math.log(700 / 510) - Math.log(1.4 / 1.2), slope, 0.05, 0.1),
      12,
    );
    expect(known.use?.sdIncrease).toBeCloseTo(left(slope, 0.05, 0.1), 12);
    // A run in a bath as used as the baseline's says nothing of use.
    expect(parameter(learn(prior, [good(700)]), "use").runs).toBe(0);
  });
  it("an age law from a baseline in an aged bath", () => {
    const age = { kind: "slowing", perRootH: 0.05, sdPerRootH: 0.04, sources: ["invented"] } as const;
    const prior = startKnowledge({ ...baseline, ageH: 4 }, { baseLogSd: 0, noise: "stated", laws: { age } });
    const known = learn(prior, [good(700, 20, { ageH: 16 })]);
    // From √4 to √16: a slope of 2, and 0.05·2 expected.
    expect(parameter(known, "age").value).toBeCloseTo(
      0.05 + moved(Math.log(700 / 510) - 0.1, 2, 0.04, 0.1),
      12,
    );
    expect(parameter(known, "age").sd).toBeCloseTo(left(2, 0.04, 0.1), 12);
    // A run that was not fitted still has a time under the laws.
    expect(
      tidyRuns(learn(prior, [good(510, 20, { ageH: 16, outcome: { kind: "failed" } })]))[0]?.fittedS,
    ).toBeCloseTo(510 * Math.exp(0.1), 9);
  });
  it("a stand run under a baseline that stands; agitation has no place there", () => {
    const standing = startKnowledge({ ...baseline, agitation: "stand" }, { noise: "stated" });
    const known = learn(standing, [
      good(600, 20, { agitation: "stand" }),
      good(600, 20, { agitation: { everyS: 30 } }),
    ]);
    const reason = "stand needs a baseline that stands";
    expect(known.setAside.map(({ run, reason: why }) => [known.runs[run]?.agitation, why])).toEqual([
      [{ everyS: 30 }, reason],
    ]);
    // The base time of spread 0.2 and one run of 0.1: four fifths of the way.
    expect(known.baseline.timeS).toBeCloseTo(510 * Math.exp(0.8 * Math.log(600 / 510)), 9);
  });
  it("a law given without sources has none afterwards either", () => {
    const { sources, ...bare } = handbookTemperatureLaw("pyro-metol");
    expect(sources).not.toHaveLength(0);
    const known = learn(startKnowledge(baseline, { laws: { temperature: anyOf(bare) } }), [good(600, 15)]);
    expect(known.temperature?.runs).toBe(1);
    expect(Object.keys(known.temperature!)).not.toContain("sources");
  });
});

describe("the fit", () => {
  it("holds two numbers at once, and the base time goes with both", () => {
    // Longer when warmer and shorter when thinner, and always both: neither energy nor exponent can be below
    // 0.
    const runs = [
      good(300, 14, { dilution: "1+19" }),
      good(320, 16, { dilution: "1+14" }),
      good(800, 25, { dilution: "1+4" }),
      good(760, 24, { dilution: "1+7" }),
      good(200, 20, { dilution: "1+30" }),
    ];
    const laws = {
      temperature: { kind: "arrhenius", activationEnergyKJPerMol: 40, sdKJPerMol: 40 },
      dilution: { kind: "power", exponent: 0.5, sd: 0.5, scatterLogSd: 0 },
      interaction: { perHalvingKJPerMol: 0, sdKJPerMol: 0 },
    } as const;
    const known = learn(startKnowledge(baseline, { noise: "stated", laws }), runs);
    expect(known.advice.filter(({ code }) => code === "held-at-limit").map(({ path }) => path)).toEqual([
      "/parameters/1",
      "/parameters/2",
    ]);
    expect([parameter(known, "temperature").value, parameter(known, "dilution").value]).toEqual([0, 0]);
    // Both slopes known to be 0, the runs have one unknown: the mean of ln(time) with the prior's 0 ± 0.2
    // against five runs of ± 0.1.
    const surprise = runs.reduce((sum, { timeS }) => sum + Math.log(timeS / 510), 0);
    expect(parameter(known, "baseline").value).toBeCloseTo((surprise * 100) / (25 + 5 * 100), 9);
  });
  it("names what was set aside in the order of the runs, doubted and failed alike", () => {
    const sound = ["b", "c", "d", "e", "f"].map((id) => good(510, 20, { id }));
    const known = learn(start, [
      ...sound,
      good(5000, 20, { id: "a" }),
      good(510, 20, { id: "g", outcome: { kind: "failed" } }),
    ]);
    expect(known.setAside.map(({ run, reason }) => [run, reason])).toEqual([
      [0, "disagrees with the others beyond chance"],
      [6, "failed"],
    ]);
  });
  it("each number is correlated with itself by exactly 1", () => {
    let known = start;
    for (const [i, dilution] of ["1+4", "1+9", "1+14", "1+19", "1+24"].entries()) {
      known = learn(known, [good(400 + 37 * i, 24 - 3 * i, { dilution, ageH: i, usedCm2PerL: 100 * i })]);
      expect(known.joint.correlation.map((row, j) => row[j])).toEqual(known.joint.parameters.map(() => 1));
    }
  });
});

describe("advice at its limits", () => {
  const numbers = (one: Partial<Parameter>, other: Partial<Parameter>): readonly Parameter[] => [
    { parameter: "temperature", cause: "temperature", value: 70, sd: 1, priorSd: 10, runs: 3, ...one },
    { parameter: "age", cause: "age", value: 0, sd: 0.01, priorSd: 0.1, runs: 3, ...other },
  ];
  interface Told {
    readonly slopes: readonly (readonly [number, number])[];
    readonly variances?: readonly number[];
    readonly scatter?: number;
  }
  /** The advice for runs with these slopes in first standard deviations. */
  const adviceFor = (
    parameters: readonly Parameter[],
    { slopes, variances, scatter = 1 }: Told,
  ): string[] => {
    const fitted = slopes.map((both, run) => ({
      run,
      row: {
        slopes: parameters.map(({ parameter: name, priorSd }, j) => ({
          parameter: name,
          slope: both[j]! / priorSd,
        })),
        beside: 0,
      },
    }));
    const fit = {
      ground: { parts: [{ cause: { name: "temperature" } }, { cause: { name: "age" } }] },
      model: { numbers: [{ value: 60 }, { value: 0 }], terms: [] },
      fitted,
      regression: { scatter, variances: variances ?? slopes.map(() => 0.25) },
      held: { atBound: [] },
    };
    return adviceOn(anyOf(fit), parameters, [], []).map(({ code }) => code);
  };
  /** The advice for two runs whose slopes, of one length, have the correlation rho. */
  const codes = (parameters: readonly Parameter[], rho: number, scatter = 1): string[] =>
    adviceFor(parameters, {
      slopes: [
        [1, rho],
        [0, Math.sqrt(1 - rho * rho)],
      ],
      scatter,
    });

  it("causes are not told apart beyond a correlation of 0.95, of either sign, from two runs on", () => {
    const open = numbers({ sd: 9 }, { sd: 0.09 });
    expect([0.9499, -0.9499, 0.9501, -0.9501].map((rho) => codes(open, rho))).toEqual([
      [],
      [],
      ["not-separated"],
      ["not-separated"],
    ]);
    expect(codes(numbers({ sd: 9, runs: 2 }, { runs: 2 }), 1)).toEqual(["not-separated"]);
    expect(codes(numbers({ sd: 9, runs: 1 }, { runs: 1 }), 1)).toEqual([]);
  });
  it("a run says what changed together by how well it was read: a vague one in which a single cause changed does not tell them apart", () => {
    const open = numbers({ sd: 9 }, { sd: 0.09 });
    const told = (vague: number): string[] =>
      adviceFor(open, {
        slopes: [
          [1, 1],
          [1, 0],
        ],
        variances: [0.01, vague],
      });
    // The correlation is 1/√(1 + 0.01/vague): 0.95 at a variance of 0.0926.
    expect(told(0.09)).toEqual([]);
    expect(told(0.095)).toEqual(["not-separated"]);
  });
  it("it is enough that one of them has kept more than half of its first spread", () => {
    expect(codes(numbers({}, {}), 0.99)).toEqual([]);
    expect(codes(numbers({ sd: 5 }, {}), 0.99)).toEqual([]);
    expect(codes(numbers({ sd: 5.01 }, {}), 0.99)).toEqual(["not-separated"]);
    expect(codes(numbers({}, { sd: 0.06 }), 0.99)).toEqual(["not-separated"]);
  });
  it("a number is named from beyond three of its first standard deviations on, either way", () => {
    expect([90, 30, 90.1, 29.9].map((value) => codes(numbers({ value }, {}), 0))).toEqual([
      [],
      [],
      ["far-from-known"],
      ["far-from-known"],
    ]);
    // A number that cannot move has not moved.
    expect(codes(numbers({ value: 60, sd: 0, priorSd: 0, runs: 0 }, {}), 0)).toEqual([]);
  });
  it("runs scatter from beyond 1.5 on", () => {
    expect(codes(numbers({}, {}), 0, 1.5)).toEqual([]);
    expect(codes(numbers({}, {}), 0, 1.51)).toEqual(["scatter"]);
  });
});

describe("what storage may have lost or spoilt", () => {
  const strength = { cause: "strength", value: 1.2, logSd: 0.3, basis: "default", sources: [] } as const;
  const learned = learn(stated, [good(600)]);

  it("is worked out anew from the prior and the runs: the same predictions, tests and rows", () => {
    const brewed = learn(learned, [good(500, 20, { strength })]);
    expect(brewed.parameters[6]).toMatchObject({ cause: "strength", runs: 1 });
    const spoilt = {
      ...brewed,
      parameters: [],
      scatter: NaN,
      setAside: null,
      joint: brewed.joint,
      advice: "none",
    };
    const answer = predict(anyOf(spoilt), { strength });
    expect(answer).toMatchObject({ ...predict(brewed, { strength }), cautions: expect.any(Array) });
    expect(answer.cautions.filter(({ code }) => code === "stored-differs").map(({ path }) => path)).toEqual(
      expect.arrayContaining(["/knowledge/parameters", "/knowledge/scatter", "/knowledge/setAside"]),
    );
    expect(predict(brewed, { strength }).timeS).toBe(compensate(brewed.baseline, { strength }, brewed).timeS);
    const without = { schema: 1, prior: brewed.prior, runs: brewed.runs };
    for (const knowledge of [spoilt, without]) {
      expect(nextTest(anyOf(knowledge), [{}, { temperatureC: 16 }], { temperatureC: 15 })).toEqual(
        nextTest(brewed, [{}, { temperatureC: 16 }], { temperatureC: 15 }),
      );
      expect(tidyRuns(anyOf(knowledge))).toEqual(tidyRuns(brewed));
    }
  });
  it.each<[string, () => unknown, Error]>([
    [
      "a run",
      () => mergeKnowledge(anyOf({ ...start, runs: [3] }), start),
      new TypeError("mergeKnowledge: a.runs[0] must be an object, got 3"),
    ],
    [
      "the noise of both",
      () => {
        const spoilt = anyOf({ ...start, prior: { ...start.prior, noise: "loud" } });
        return mergeKnowledge(spoilt, spoilt);
      },
      new RangeError('mergeKnowledge: a.noise must be one of estimated, stated, got "loud"'),
    ],
    [
      "a schema as text",
      () => learn(anyOf({ ...start, schema: "2" }), []),
      new TypeError('learn: knowledge.schema must be a number, got "2"'),
    ],
    [
      "an age, for nextTest",
      () =>
        nextTest(anyOf({ ...start, prior: { ...start.prior, baseline: { ...baseline, ageH: -1 } } }), [], {}),
      new RangeError("nextTest: knowledge.prior.baseline.ageH must be from 0 to 1000000 h, got -1"),
    ],
    [
      "a temperature, for tidyRuns",
      () =>
        tidyRuns(
          anyOf({ ...learned, prior: { ...learned.prior, baseline: { ...baseline, temperatureC: 300 } } }),
        ),
      new RangeError("tidyRuns: knowledge.prior.baseline.temperatureC must be from 0 to 100 °C, got 300"),
    ],
    [
      "a baseline, for tidyRuns",
      () => tidyRuns(anyOf({ ...learned, prior: { ...learned.prior, baseline: 1 } })),
      new TypeError("tidyRuns: knowledge.prior.baseline must be an object, got 1"),
    ],
    [
      "a run, for tidyRuns",
      () => tidyRuns(anyOf({ ...learned, runs: [1] })),
      new TypeError("tidyRuns: knowledge.runs[0] must be an object, got 1"),
    ],
    [
      "the runs, for predict",
      () => predict(anyOf({ ...learned, runs: undefined }), {}),
      new TypeError("predict: knowledge.runs must be an array, got undefined"),
    ],
    [
      "the prior, for predict with a brew",
      () => predict(anyOf({ ...learned, prior: { ...learned.prior, baseLogSd: NaN } }), { strength }),
      new RangeError("predict: knowledge.prior.baseLogSd must be from 0 to 3, got NaN"),
    ],
    [
      "the time of a run",
      () => tidyRuns({ ...learned, runs: [good(600), good(0)] }),
      new RangeError("tidyRuns: knowledge.runs[1].timeS must be above 0 and at most 1000000 s, got 0"),
    ],
    [
      "the dilution of a run",
      () => learn(start, [good(500, 20, { dilution: anyOf(null) })]),
      new TypeError("learn: runs[0].dilution must be an object, got null"),
    ],
    [
      "a long id of two runs",
      () => learn(start, [good(500, 20, { id: "i".repeat(61) }), good(600, 20, { id: "i".repeat(61) })]),
      new RangeError(`learn: runs[1].id must be the id of one run only, got "${"i".repeat(60)}"`),
    ],
  ])("refuses by name: %s", (_, call, error) => {
    expect(call).toThrow(error);
  });
  it("tells what a fogged run said of itself", () => {
    const rows = tidyRuns(learn(start, [good(510, 20, { outcome: { kind: "fogged", note: "light leak" } })]));
    expect(rows.map(({ outcome, note }) => [outcome, note])).toEqual([["fogged", "light leak"]]);
  });
});

describe("a rule of use that was printed for another dilution", () => {
  it("is learned by the stock in the litre, as compensate counts it", () => {
    const use = { increase: 0.1, perCm2PerL: 516.128, growth: "linear", dilution: "stock" } as const;
    const start = startKnowledge({ ...baseline, dilution: "1+1" }, { baseLogSd: 0.01, laws: { use } });
    // Two rolls in a litre of 1+1 are as four in a litre of stock.
    const known = learn(start, [good(510 * 1.4, 20, { usedCm2PerL: 2 * 516.128 })]);
    expect(known.use?.increase).toBeCloseTo(0.1, 9);
    expect(predict(known, { usedCm2PerL: 2 * 516.128 }).timeS).toBeCloseTo(510 * 1.4, 6);
    expect(tidyRuns(known)[0]?.fittedS).toBeCloseTo(510 * 1.4, 6);
  });
});
