import { describe, expect, it } from "vitest";
import { fc, test } from "../property.js";
import {
  compensate,
  genericAgitationLaw,
  genericDilutionLaw,
  genericTemperatureLaw,
  genericUseLaw,
  handbookTemperatureLaw,
  learn,
  mergeKnowledge,
  nextTest,
  predict,
  proposeBrew,
  startKnowledge,
  temperatureFactor,
  tidyRuns,
  type LearnedKnowledge,
  type RunOutcome,
  type DevelopmentRun,
} from "../../src/index.js";
import { baseline, good, parameter, start, stated } from "./start.js";
import { anyOf, thrown } from "../helpers.js";
const codes = (known: LearnedKnowledge): string[] => known.advice.map(({ code }) => code);
const logSd = (known: LearnedKnowledge, conditions: object): number => {
  const { timeS, highS } = predict(known, conditions);
  return Math.log(highS / timeS) / 1.6448536269514722;
};

const outcome: fc.Arbitrary<RunOutcome> = fc.oneof(
  fc.record({ kind: fc.constant("good" as const) }),
  fc.record({ kind: fc.constant("good" as const), logSd: fc.double({ min: 0.02, max: 0.5, noNaN: true }) }),
  fc.record({
    kind: fc.constant("judged" as const),
    timeRatio: fc.double({ min: 0.5, max: 2, noNaN: true }),
  }),
  fc.record({ kind: fc.constant("steps" as const), steps: fc.constantFrom(-1, -0.5, 0, 0.5, 1) }),
  fc.record({
    kind: fc.constant("gamma" as const),
    gamma: fc.double({ min: 0.4, max: 0.9, noNaN: true }),
    wanted: fc.constant(0.6),
  }),
  fc.record({ kind: fc.constant("failed" as const), note: fc.constant("light leak") }),
);
const run: fc.Arbitrary<DevelopmentRun> = fc.record(
  {
    timeS: fc.double({ min: 200, max: 1500, noNaN: true }),
    temperatureC: fc.double({ min: 8, max: 32, noNaN: true }),
    dilution: fc.constantFrom("stock", "1+4", "1+9", "1+19"),
    agitation: fc.constantFrom<NonNullable<DevelopmentRun["agitation"]>>(
      "continuous",
      "stand",
      { everyS: 30 },
      { everyS: 120 },
    ),
    usedCm2PerL: fc.constantFrom(0, 516, 2000),
    ageH: fc.constantFrom(0, 1, 30),
    outcome,
    id: fc.uuid(),
    note: fc.constant("hut"),
  },
  { requiredKeys: ["timeS", "temperatureC", "outcome", "id"] },
);
const notebook = fc.uniqueArray(run, { maxLength: 5, selector: ({ id }) => id! });

const named = (known: LearnedKnowledge, name: string): LearnedKnowledge["parameters"][number] =>
  known.parameters.find(({ parameter: each }) => each === name)!;

describe("startKnowledge", () => {
  it("keeps the age from which a bath may fail, which no run teaches", () => {
    const age = { kind: "life", lifeH: 3, lowH: 1.5 } as const;
    const known = learn(startKnowledge(baseline, { laws: { age } }), [good(600, 18, { ageH: 1 })]);
    expect(known.age).toMatchObject(age);
    expect(predict(known, { ageH: 1.6 }).cautions).toContainEqual(
      expect.objectContaining({ code: "bath-may-fail", limit: 1.5 }),
    );
  });
  it("holds the generic laws with their spreads, and says that no run taught them", () => {
    expect(start.temperature).toEqual({ ...genericTemperatureLaw, runs: 0 });
    expect(start.dilution).toEqual({ ...genericDilutionLaw, runs: 0 });
    expect(start.agitation).toEqual({ ...genericAgitationLaw, runs: 0 });
    expect(start.use).toEqual({ ...genericUseLaw, runs: 0 });
    expect(start.age).toEqual({
      kind: "speeding",
      perDay: 0,
      sdPerDay: 0.08,
      runs: 0,
      sources: [
        "no law of age: the median is held for a day, then time and spread grow with the age (assumed)",
      ],
    });
    expect(start).toMatchObject({
      schema: 1,
      runs: [],
      setAside: [],
      advice: [],
      scatter: 1,
      baseline: { ...baseline, logSd: 0.2 },
    });
    expect(start.baseline.runs).toBeUndefined();
    expect(start.prior).toEqual({ baseline, baseLogSd: 0.2, laws: {}, noise: "estimated" });
    expect(start.joint.correlation).toEqual(
      start.joint.parameters.map((_, i) => start.joint.parameters.map((__, j) => Number(i === j))),
    );
  });
  it("predicts as compensate does with no knowledge, but for the spread of the starting time", () => {
    const conditions = {
      temperatureC: 14,
      dilution: "1+14",
      agitation: { everyS: 30 },
      usedCm2PerL: 516,
      ageH: 2,
    };
    const bare = compensate({ ...baseline, logSd: 0.2 }, conditions);
    const answer = predict(start, conditions);
    expect(answer.timeS).toBe(bare.timeS);
    expect(answer.highS).toBeCloseTo(bare.highS, 9);
    expect(answer.factors.map(({ basis }) => basis)).toEqual([
      "given",
      "default",
      "default",
      "default",
      "default",
      "default",
      "default",
    ]);
  });
  it("takes a spread from the options, then from the baseline", () => {
    expect(startKnowledge({ ...baseline, logSd: 0.07 }).baseline.logSd).toBe(0.07);
    expect(startKnowledge({ ...baseline, logSd: 0.07 }, { baseLogSd: 0.3 }).baseline.logSd).toBe(0.3);
  });
  it("takes laws of every form as the prior, and keeps them as given until a run bears on them", () => {
    const table = {
      kind: "table",
      rows: [
        { temperatureC: 15, timeS: 800 },
        { temperatureC: 20, timeS: 510 },
        { temperatureC: 25, timeS: 340 },
      ],
    } as const;
    const dilutions = {
      kind: "table",
      rows: [
        { dilution: "1+4", timeS: 300 },
        { dilution: "1+9", timeS: 510 },
        { dilution: "1+19", timeS: 900 },
      ],
      sources: ["own table"],
    } as const;
    const laws = {
      temperature: table,
      dilution: dilutions,
      age: { kind: "half-life", halfLifeH: 24 },
      use: { increase: 0.1, perCm2PerL: 500, growth: "compound", sources: ["label"] },
    } as const;
    const known = startKnowledge(baseline, { laws });
    expect(known.temperature).toEqual(table);
    expect(known.dilution).toEqual(dilutions);
    // The prior of a table: a departure of 0 from each row, known to the rounding of a row, and one slope.
    expect(parameter(known, "temperature")).toMatchObject({ value: 0, sd: 5 });
    expect(parameter(known, "dilution")).toMatchObject({ value: 0, sd: 0.1 });
    for (const celsius of [15, 20, 25])
      expect(named(known, `temperature at ${celsius}`)).toMatchObject({ value: 0, sd: 0.025 });
    expect(known.parameters.filter(({ cause }) => cause === "dilution")).toHaveLength(4);
    expect(parameter(known, "use")).toMatchObject({ value: 0.1, sd: 0.025 });
    expect(parameter(known, "age").value).toBeCloseTo(Math.LN2 / 24, 12);
    expect(parameter(known, "age").sd).toBeCloseTo((0.3 * Math.LN2) / 24, 12);
    const taught = learn(known, [good(700, 17, { dilution: "1+14", usedCm2PerL: 500, ageH: 12 })]);
    expect(taught.temperature).toMatchObject({ ...table, runs: 1 });
    expect(taught.dilution).toMatchObject({ ...dilutions, runs: 1 });
    expect(taught.use).toMatchObject({ growth: "compound", perCm2PerL: 500, runs: 1, sources: ["label"] });
    expect(taught.age).toMatchObject({ kind: "half-life", runs: 1 });
    expect(taught.agitation).toEqual(known.agitation);
    const coefficient = startKnowledge(baseline, {
      laws: { temperature: handbookTemperatureLaw("pyro-metol") },
    });
    expect(coefficient.temperature).toEqual(handbookTemperatureLaw("pyro-metol"));
    expect(predict(coefficient, { temperatureC: 15 }).factors[1]?.basis).toEqual("handbook");
    expect(learn(coefficient, [good(600, 15)]).temperature?.sources).toEqual(
      handbookTemperatureLaw("pyro-metol").sources,
    );
  });
  it("brings a law at the edges of the scale to a form that can be learned, and gives laws without a spread one", () => {
    const laws = {
      temperature: { kind: "coefficient", ratio: 2, intervalC: 10 },
      dilution: { kind: "power", exponent: 1 },
      agitation: { staleLoss: 0.5, staleTimeS: 60 },
      age: { kind: "slowing", perRootH: 0.05 },
    } as const;
    for (const [temperatureC, low, high] of [
      [2, 0, 7],
      [99, 94, 100],
    ] as const) {
      const known = startKnowledge({ timeS: 510, temperatureC }, { laws });
      const energy =
        (8.314462618e-3 * Math.LN2 * (high - low)) / 10 / (1 / (low + 273.15) - 1 / (high + 273.15));
      expect(parameter(known, "temperature").value).toBeCloseTo(energy, 8);
    }
    const known = startKnowledge(baseline, { laws });
    expect(parameter(known, "dilution")).toMatchObject({ value: 1, priorSd: 0.15 });
    expect(parameter(known, "agitation")).toMatchObject({ value: 0.5, priorSd: 0.3 });
    expect(parameter(known, "age")).toMatchObject({ value: 0.05, priorSd: 0.1 });
    const plain = startKnowledge(baseline, {
      laws: { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 50 } },
    });
    expect(parameter(plain, "temperature")).toMatchObject({ value: 50, priorSd: 14 });
  });
  it("refuses laws with a wrong origin", () => {
    const law = { kind: "power", exponent: 1, sd: 0.1 };
    const start = (origin: object): unknown =>
      startKnowledge(baseline, { laws: { dilution: anyOf({ ...law, ...origin }) } });
    expect(thrown(() => start({ sources: NaN }))).toBe(
      "TypeError: startKnowledge: options.laws.dilution.sources must be an array, got NaN",
    );
    expect(thrown(() => start({ published: NaN }))).toBe(
      "TypeError: startKnowledge: options.laws.dilution.published must be true or false, got NaN",
    );
    expect(thrown(() => start({ runs: -1 }))).toBe(
      "RangeError: startKnowledge: options.laws.dilution.runs must be from 0 to 1000000, got -1",
    );
  });
});

describe("learn", () => {
  it("moves the base time by the ratio of the precisions: 0.2² against 0.1²", () => {
    const known = learn(stated, [good(600)]);
    expect(known.baseline.timeS).toBeCloseTo(510 * Math.exp(0.8 * Math.log(600 / 510)), 9);
    expect(known.baseline.logSd).toBeCloseTo(Math.sqrt(1 / (1 / 0.04 + 1 / 0.01)), 12);
    expect(known.baseline.runs).toBe(1);
    expect(known.temperature).toEqual(start.temperature);
  });

  const ln = Math.log;
  it.each<[string, RunOutcome, number, number]>([
    ["good", { kind: "good", logSd: 0.1 }, 0, 0.1],
    ["judged", { kind: "judged", timeRatio: 1.3 }, ln(1.3), Math.hypot(0.1, ln(1.3) / 4)],
    ["a step over", { kind: "steps", steps: 1, logSd: 0.12 }, -ln(1.4), 0.12],
    [
      "two steps under at 1.3 each",
      { kind: "steps", steps: -2, perStep: 1.3, logSd: 0.15 },
      2 * ln(1.3),
      0.15,
    ],
    [
      "gamma",
      { kind: "gamma", gamma: 0.5, wanted: 0.6 },
      ln(1.2) / 0.7,
      Math.hypot(0.05 / 0.6 / 0.7, (0.3 * ln(1.2)) / 0.7),
    ],
    ["gamma, well measured", { kind: "gamma", gamma: 0.6, wanted: 0.6, sd: 0.03 }, 0, 0.05 / 0.7],
    [
      "density",
      { kind: "density", density: 0.8, wanted: 1, sd: 0.02 },
      ln(1.25) / 0.7,
      Math.hypot(0.02 / 0.7, (0.3 * ln(1.25)) / 0.7),
    ],
    ["appearance", { kind: "appearance", appearanceS: 50, factor: 10 }, ln(500 / 600), Math.hypot(0.1, 0.15)],
    ["stated", { kind: "density", density: 0.8, wanted: 1, logSd: 0.33 }, ln(1.25) / 0.7, 0.33],
  ])("reads %s", (_, judged, shift, sd) => {
    const known = learn(stated, [{ timeS: 600, temperatureC: 20, outcome: judged }]);
    const weight = 0.04 / (0.04 + sd * sd);
    expect(ln(known.baseline.timeS / 510)).toBeCloseTo(weight * (ln(600 / 510) + shift), 10);
    expect(tidyRuns(known)[0]?.logSd).toBeCloseTo(sd, 12);
  });

  it("keeps failed, fogged, stand and dead-bath runs, and says why it does not fit them", () => {
    const mortal = startKnowledge(baseline, { laws: { age: { kind: "life", lifeH: 2 } } });
    const known = learn(mortal, [
      good(510, 20, { id: "a", agitation: "stand" }),
      good(510, 20, { id: "b", ageH: 3 }),
      { timeS: 510, temperatureC: 20, id: "c", outcome: { kind: "failed", note: "no developer" } },
      { timeS: 510, temperatureC: 20, id: "d", outcome: { kind: "fogged" } },
      good(510, 20, { id: "e", ageH: 2 }),
    ]);
    expect(known.runs.map(({ id }) => id)).toEqual(["a", "b", "c", "d", "e"]);
    expect(known.setAside).toEqual([
      { run: 0, reason: "stand", weight: 0 },
      { run: 1, reason: "past-life", weight: 0 },
      { run: 2, reason: "failed", weight: 0 },
      { run: 3, reason: "fogged", weight: 0 },
    ]);
    expect(known.baseline.runs).toBe(1);
    expect(known.age).toEqual({ kind: "life", lifeH: 2 });
    expect(codes(known)).toEqual(["not-fitted"]);
    const standing = startKnowledge({ ...baseline, agitation: "stand" });
    const stood = learn(standing, [
      good(520, 20, { agitation: "stand" }),
      good(510, 20, { agitation: { everyS: 60 } }),
      good(530),
    ]);
    expect(stood.setAside).toHaveLength(1);
    expect(stood.baseline.runs).toBe(2);
    expect(parameter(stood, "agitation").runs).toBe(0);
  });

  it("counts the runs behind each number, and compensate's rows say so", () => {
    const known = learn(start, [
      good(700, 16),
      good(640, 18, { dilution: "1+14" }),
      good(500, 20, { agitation: { everyS: 30 }, ageH: 1 }),
      good(560),
    ]);
    expect(known.parameters.map(({ cause, runs }) => [cause, runs])).toEqual([
      ["baseline", 4],
      // The energy, and the departures from 16 to 18 and from 18 to 20 °C.
      ["temperature", 2],
      ["temperature", 1],
      ["temperature", 2],
      // The exponent, and the departure between the two dilutions.
      ["dilution", 1],
      ["dilution", 1],
      ["agitation", 1],
      ["agitation", 1],
      ["use", 0],
      ["age", 1],
      ["strength", 0],
      ["push", 0],
      ["interaction", 1],
    ]);
    const conditions = {
      temperatureC: 15,
      dilution: "1+14",
      agitation: { everyS: 30 },
      usedCm2PerL: 100,
      ageH: 1,
    } as const;
    const answer = compensate(known.baseline, conditions, known);
    expect(answer).toEqual(predict(known, conditions));
    expect(answer.factors.map(({ cause, basis, runs }) => [cause, basis, runs])).toEqual([
      ["baseline", "own-runs", 4],
      ["temperature", "own-runs", 2],
      ["dilution", "own-runs", 1],
      ["agitation", "own-runs", 1],
      ["use", "default", undefined],
      // One run each has hardly moved these.
      ["age", "default", 1],
      ["interaction", "default", 1],
    ]);
    expect(answer.cautions.map(({ code }) => code)).not.toContain("unknown-field");
  });

  it("knows a time well where it was learned, though neither base time nor energy is known apart", () => {
    const known = learn(stated, [
      good(900, 12, { id: "1" }),
      good(910, 12, { id: "2" }),
      good(890, 12, { id: "3" }),
    ]);
    const cold = logSd(known, { temperatureC: 12 });
    expect(cold).toBeLessThan(0.06);
    const rows = predict(known, { temperatureC: 12 }).factors;
    const spread = Math.hypot(...rows.map((row) => row.logSd));
    expect(spread).toBeGreaterThan(0.19);
    // Another base time was not learned with the energy, and stands apart.
    const other = compensate({ ...known.baseline, timeS: 600 }, { temperatureC: 12 }, known);
    const apart = Math.log(other.highS / other.timeS) / 1.6448536269514722;
    expect(apart).toBeCloseTo(spread, 9);
    // The energy and the departure from it were learned together all the same, and are one row.
    const [energy, departure] = ["temperature", "temperature 12 to 20"].map((name) =>
      known.joint.parameters.indexOf(name),
    );
    const warmth = (1 / 285.15 - 1 / 293.15) / 8.314462618e-3;
    const ofEnergy = warmth * parameter(known, "temperature").sd;
    const ofDeparture = -named(known, "temperature 12 to 20").sd;
    const together = 2 * known.joint.correlation[energy!]![departure!]! * ofEnergy * ofDeparture;
    expect(rows.find(({ cause }) => cause === "temperature")?.logSd).toBeCloseTo(
      Math.sqrt(ofEnergy ** 2 + ofDeparture ** 2 + together),
      9,
    );
    expect(codes(known)).toContain("not-separated");
  });

  it("corrects a brew's strength by what the runs said of earlier brews", () => {
    const strength = {
      cause: "strength",
      value: 1.2,
      logSd: 0.3,
      basis: "default",
      sources: ["spoons"],
    } as const;
    const known = learn(startKnowledge(baseline, { baseLogSd: 0.01, noise: "stated" }), [
      good(510 * 1.5, 20, { strength, outcome: { kind: "good", logSd: 0.01 } }),
    ]);
    const answer = predict(known, { strength });
    const row = answer.factors.at(-1)!;
    expect(answer.timeS).toBeCloseTo(510 * 1.5, 0);
    expect(row).toMatchObject({ cause: "strength", basis: "own-runs", runs: 1, sources: ["spoons"] });
    expect(row.value).toBeCloseTo(1.5, 2);
    // The law's part of a strength that does not say it is ln(value); the rest is the brew's own.
    const [law, own] = known.parameters.filter(({ cause }) => cause === "strength");
    const [ofLaw, ofOwn] = [Math.log(strength.value) * law!.sd, own!.sd];
    const [a, b] = [law!, own!].map(({ parameter: name }) => known.joint.parameters.indexOf(name));
    const together = 2 * known.joint.correlation[a!]![b!]! * ofLaw * ofOwn;
    expect(row.logSd).toBeCloseTo(Math.sqrt(ofLaw ** 2 + ofOwn ** 2 + together), 9);
    expect(logSd(known, { strength })).toBeLessThan(0.011);
    expect(predict(start, { strength }).factors.at(-1)).toEqual(strength);
    expect(predict(known, {}).factors).toHaveLength(2);
    expect(tidyRuns(known)[0]?.fittedS).toBeCloseTo(answer.timeS, 6);
  });

  it("learns how a bath slows, and a half-life, and gives them back as laws", () => {
    const runs = [1, 4, 9].map((ageH) =>
      good(510 * Math.exp(0.2 * Math.sqrt(ageH)), 20, { ageH, outcome: { kind: "good", logSd: 0.02 } }),
    );
    const age = { kind: "slowing", perRootH: 0, sdPerRootH: 0.1 } as const;
    const slow = learn(startKnowledge(baseline, { baseLogSd: 0.02, laws: { age } }), runs);
    expect(slow.age).toMatchObject({ kind: "slowing", runs: 3 });
    expect(predict(slow, { ageH: 4 }).timeS / 510).toBeCloseTo(Math.exp(0.4), 1);
    const halving = startKnowledge(baseline, {
      baseLogSd: 0.02,
      laws: { age: { kind: "half-life", halfLifeH: 24 } },
    });
    const life = learn(
      halving,
      [6, 12, 24].map((ageH) =>
        good(510 * 2 ** (ageH / 18), 20, { ageH, outcome: { kind: "good", logSd: 0.02 } }),
      ),
    );
    expect((life.age as { halfLifeH: number }).halfLifeH).toBeCloseTo(18, 0);
    expect(life.age).toMatchObject({ sdRatePerH: parameter(life, "age").sd });
    expect(predict(life, { ageH: 12 }).timeS / (510 * 2 ** (12 / 18))).toBeCloseTo(1, 2);
  });
});

describe("disagreement", () => {
  const eight = [490, 500, 505, 510, 515, 520, 525, 535].map((timeS, i) => good(timeS, 20, { id: `r${i}` }));

  it("a temperature noted 10 or 20 °C too warm turns no law, and its run is named", () => {
    // 60 kJ/mol exactly: the reciprocals of the temperatures are K. J. Laidler's, J. Chem. Educ. 61, 1984, p. 494.
    const right = (temperatureC: number): number =>
      480 * Math.exp((60 / 8.314e-3) * (1 / (temperatureC + 273.15) - 1 / 293.15));
    const twenty = Array.from({ length: 20 }, (_, i) => {
      const temperatureC = 16 + ((i * 7) % 17) / 2;
      return good(Math.round(right(temperatureC)), temperatureC, { id: `r${i}` });
    });
    const known = startKnowledge({ timeS: 480, temperatureC: 20 });
    for (const misnoted of [10, 20])
      for (const wrong of [0, 3, 9, 12]) {
        const after = learn(
          known,
          twenty.map((run, i) => (i === wrong ? { ...run, temperatureC: run.temperatureC + misnoted } : run)),
        );
        for (const temperatureC of [14, 25]) {
          const { lowS, timeS, highS } = predict(after, { temperatureC });
          expect(lowS).toBeLessThan(right(temperatureC));
          expect(highS).toBeGreaterThan(right(temperatureC));
          expect(Math.abs(Math.log(timeS / right(temperatureC)))).toBeLessThan(0.04);
        }
        expect(after.setAside.map(({ run }) => after.runs[run]?.id)).toEqual([`r${wrong}`]);
      }
  });

  it("an outlier of a factor 4 moves the answer by less than 1 % once eight good runs stand, and is named", () => {
    const before = learn(start, eight);
    // However well the wild run claims to be measured.
    for (const [timeS, logSd] of [2040, 128].flatMap((time) =>
      [0.1, 0.05, 0.02, 0.01, 1e-3, 1e-9].map((sd) => [time, sd] as const),
    )) {
      const after = learn(before, [good(timeS, 20, { id: "wild", outcome: { kind: "good", logSd } })]);
      expect(Math.abs(Math.log(after.baseline.timeS / before.baseline.timeS))).toBeLessThan(0.01);
      const place = after.runs.findIndex(({ id }) => id === "wild");
      expect(after.setAside).toEqual([{ run: place, reason: "disagrees", weight: expect.any(Number) }]);
      // It is a slip of the pen, and makes no scatter.
      expect(after.setAside[0]!.weight).toBeLessThan(0.001);
      expect(after.scatter).toBeLessThan(1.1);
      expect(tidyRuns(after)[place]).toMatchObject({
        reason: "disagrees",
        weight: after.setAside[0]!.weight,
      });
      expect(after.advice.find(({ code }) => code === "doubted-run")).toMatchObject({
        severity: "warn",
        path: `/runs/${place}`,
        quantity: "weight",
        limit: 1,
        actual: after.setAside[0]!.weight,
        data: { run: "wild", reason: after.setAside[0]!.reason },
      });
    }
  });
  it("says of which run it is by what was noted, since its place is not that in the notes", () => {
    const rest = Array.from({ length: 8 }, (_, i) => good(500 + i));
    const told = (more: Partial<DevelopmentRun>): string =>
      learn(start, [...rest, good(2400, 18, more)]).advice.find(({ code }) => code === "doubted-run")!
        .message;
    expect(told({})).toMatch(/^The run of 40:00 at 18 °C disagrees /);
    expect(told({ date: "2024-05-01" })).toMatch(/^The run of 40:00 at 18 °C, 2024-05-01, disagrees /);
    expect(told({ id: "hut 3" })).toMatch(/^Run hut 3 \(40:00 at 18 °C\) disagrees /);
  });
  it("does not call one run scattered: it and the known time disagree", () => {
    const advice = learn(start, [
      { timeS: 510, temperatureC: 20, outcome: { kind: "steps", steps: 2 } },
    ]).advice;
    const scatter = advice.find(({ code }) => code === "scatter")!;
    expect(scatter.data).toEqual({ runs: 1, few: true });
    expect(scatter.message).toMatch(/^The run and the known time disagree /);
  });
  it("says when everything scatters", () => {
    const runs = [250, 300, 900, 1000, 280, 950].map((timeS, i) => good(timeS, 20, { id: String(i) }));
    const known = learn(start, runs);
    expect(known.scatter).toBeGreaterThan(1.5);
    expect(known.advice.find(({ code }) => code === "scatter")).toMatchObject({
      severity: "warn",
      quantity: "ratio",
      limit: 1.5,
      actual: known.scatter,
    });
    expect(learn(stated, runs)).toMatchObject({ scatter: 1, setAside: [] });
    expect(codes(learn(start, eight))).toEqual([]);
  });
  it("two equal runs count twice and are pointed out; with one id they are one", () => {
    const twice = learn(start, [good(500), good(500), good(400, 24)]);
    expect(twice.runs).toHaveLength(3);
    const place = twice.runs.findIndex(({ timeS }, i) => timeS === 500 && twice.runs[i - 1]?.timeS === 500);
    expect(twice.advice).toContainEqual(
      expect.objectContaining({
        code: "equal-runs",
        severity: "note",
        path: `/runs/${place}`,
        quantity: "count",
        actual: 1,
        message: expect.stringMatching(/^One run is a copy of another, /),
        data: { runs: [place - 1, place] },
      }),
    );
    expect(learn(start, [good(500, 20, { id: "x" }), good(500, 20, { id: "x" })]).runs).toHaveLength(1);
    expect(codes(learn(start, [good(500, 20, { id: "x" }), good(500, 20, { id: "y" })]))).toEqual([]);
  });
  it("a sheet learned twice has each of its runs as a copy, and answers say so", () => {
    const sheet = [14, 16, 18, 20, 22, 24].map((temperatureC) => good(500, temperatureC));
    const twice = learn(learn(start, sheet), sheet);
    const doubt = {
      code: "equal-runs",
      severity: "warn",
      path: "/runs/1",
      quantity: "count",
      actual: 6,
      message: expect.stringMatching(/^6 runs are copies of others, /),
      data: { runs: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11] },
    };
    expect(twice.advice).toContainEqual(expect.objectContaining(doubt));
    expect(predict(twice, { temperatureC: 20 }).cautions).toContainEqual(
      expect.objectContaining({ ...doubt, path: "/knowledge/runs/1" }),
    );
  });
  it.each([
    ["one copy of two", [500, 500], "note"],
    ["two copies of three", [500, 500, 500], "warn"],
    ["two copies of eight", [500, 500, 500, 510, 520, 530, 540, 550], "warn"],
    ["two copies of nine", [500, 500, 500, 510, 520, 530, 540, 550, 560], "note"],
  ])("copies are a warning from two on that are a quarter: %s", (_, times, severity) => {
    const known = learn(
      start,
      times.map((timeS) => good(timeS)),
    );
    expect(known.advice.find(({ code }) => code === "equal-runs")).toMatchObject({ severity });
  });
  it("of equal runs those without an id are the copies, where another has one", () => {
    const runs = [good(500), good(500), good(500, 20, { id: "x" }), good(500, 20, { id: "y" })];
    expect(learn(start, runs).advice.find(({ code }) => code === "equal-runs")).toMatchObject({
      actual: 2,
      path: "/runs/2",
      data: { runs: [0, 1, 2, 3] },
    });
  });
});

describe("advice", () => {
  it("says when temperature and age always rose together, and no longer once one moved alone", () => {
    const together = [0, 1, 2, 3, 4].map((i) =>
      good(510, 20 + 2 * i, { ageH: 24 * (i / 4) ** (2 / 3), outcome: { kind: "good", logSd: 0.02 } }),
    );
    const known = learn(start, together);
    expect(known.advice.filter(({ code }) => code === "not-separated")).toMatchObject([
      { severity: "note", path: "/parameters/1", data: { parameters: ["temperature", "age"] } },
    ]);
    expect(
      codes(learn(known, [good(350, 26), good(360, 26, { id: "b" }), good(600, 16), good(700, 14)])),
    ).not.toContain("not-separated");
    expect(learn(start, [good(900, 12), good(890, 12)]).advice[0]?.data).toEqual({
      parameters: ["baseline", "temperature"],
      causes: ["baseline", "temperature"],
    });
    // Judged by eye, and all that changed together in one piece of advice.
    const three = [1, 2, 3].map((i) =>
      good(510 + 20 * i, 20 - i, { ageH: 24 * (i / 4) ** (2 / 3), usedCm2PerL: 500 * i }),
    );
    expect(learn(start, three).advice.map(({ data }) => data)).toEqual([
      { parameters: ["temperature", "use", "age"], causes: ["temperature", "use", "age"] },
    ]);
    expect(learn(start, three.slice(0, 1)).advice).toEqual([]);
  });
  it("names a number that the runs carry far from what is known, and a bath that nobody develops in", () => {
    const eight = [490, 500, 505, 510, 515, 520, 525, 535].map((timeS) => good(timeS));
    const known = learn(stated, [...eight, good(4080, 12)]);
    expect(known.advice).toMatchObject([
      {
        code: "far-from-known",
        severity: "warn",
        path: "/parameters/1",
        quantity: "standardDeviations",
        limit: 3,
        actual: (known.parameters[1]!.value - 60) / 18,
        data: { parameter: "temperature" },
      },
    ]);
    expect(known.advice[0]!.actual).toBeGreaterThan(3);
    // What is doubted is said again with every answer.
    expect(predict(known, {}).cautions).toContainEqual({
      ...known.advice[0],
      path: "/knowledge/parameters/1",
    });
    expect(codes(learn(start, [...eight, good(1020, 12)]))).toEqual([]);
    // Noted in °F and read as °C.
    const hot = learn(start, [good(510), good(510, 68)]);
    expect(hot.setAside).toEqual([{ run: 1, reason: "maybe-fahrenheit", weight: 0 }]);
    expect(hot.temperature).toMatchObject({ activationEnergyKJPerMol: 60, runs: 0 });
    expect(learn(start, [good(100, 45)]).setAside).toEqual([]);
  });
  it("holds a number at its limit, says so, and stays usable", () => {
    // Longer when warmer: no activation energy does that.
    const wrong = [good(300, 12), good(310, 13), good(800, 25), good(820, 26), good(810, 27), good(305, 14)];
    const known = learn(stated, wrong);
    expect(known.temperature).toMatchObject({ activationEnergyKJPerMol: 0 });
    expect(known.advice.find(({ code }) => code === "held-at-limit")).toMatchObject({
      severity: "warn",
      path: "/parameters/1",
      data: { parameter: "temperature" },
    });
    // The base time is the one that goes with an energy of 0: that of the same runs with the energy known to
    // be 0.
    const told = startKnowledge(baseline, {
      noise: "stated",
      laws: { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 0, sdKJPerMol: 0 } },
    });
    expect(known.baseline.timeS).toBeCloseTo(learn(told, wrong).baseline.timeS, 6);
    // What the energy cannot say, the departures do.
    const cold = predict(known, { temperatureC: 10 }).timeS;
    expect(cold).toBeCloseTo(predict(learn(told, wrong), { temperatureC: 10 }).timeS, 6);
    expect(cold).toBeLessThan(predict(known, {}).timeS);
    const faster = learn(
      startKnowledge(baseline, { noise: "stated", laws: { age: { kind: "half-life", halfLifeH: 24 } } }),
      [good(200, 20, { ageH: 24 }), good(180, 20, { ageH: 30 })],
    );
    // The rate is held at 0, and its spread is kept: ln(half-life) would have lost it.
    expect(faster.age).toMatchObject({ sdRatePerH: parameter(faster, "age").sd });
    expect(parameter(faster, "age").sd).toBeGreaterThan(1e-3);
    expect(predict(faster, { ageH: 24 }).timeS).toBeGreaterThan(predict(faster, {}).timeS);
    const weak = learn(stated, [
      good(3000, 20, { dilution: "1+19", outcome: { kind: "good", logSd: 0.01 } }),
      good(500, 20, { outcome: { kind: "good", logSd: 0.01 } }),
      good(6, 20, { agitation: "continuous", outcome: { kind: "good", logSd: 0.01 } }),
    ]);
    expect(weak.agitation).toMatchObject({ staleLoss: 10, shape: 0.75 });
    expect(Number.isFinite(predict(weak, { agitation: { everyS: 120 } }).highS)).toBe(true);
    const huge = learn(startKnowledge({ timeS: 9e5, temperatureC: 20 }, { noise: "stated" }), [
      good(1e6),
      good(1e6, 20, { outcome: { kind: "judged", timeRatio: 3 } }),
    ]);
    expect(huge.baseline.timeS).toBeCloseTo(1e6, 3);
  });
});

describe("numbers at their limits", () => {
  // Without departures from a power and without interaction: three numbers.
  const interaction = { perHalvingKJPerMol: 0, sdKJPerMol: 0 };
  const laws = { dilution: { ...genericDilutionLaw, scatterLogSd: 0 }, interaction };
  const from = startKnowledge({ timeS: 510, temperatureC: 20, dilution: "1+9" }, { noise: "stated", laws });
  const cold = (timeS: number, dilution: string, logSd: number): DevelopmentRun => ({
    timeS,
    temperatureC: 10,
    dilution,
    outcome: { kind: "good", logSd },
  });
  // Labels swapped: the weaker bath was the faster one.
  it.each([
    [[cold(195, "1+9", 0.05), cold(1215, "stock", 0.05), cold(1220, "stock", 0.05)]],
    [[cold(160, "1+9", 0.3), cold(161, "1+9", 0.3), cold(1300, "stock", 0.04)]],
  ])(
    "one that comes back inside once another is held is let go: the fit is that with the exponent known to be 0",
    (runs) => {
      const known = learn(from, runs);
      expect(known.advice.filter(({ code }) => code === "held-at-limit").map(({ path }) => path)).toEqual([
        "/parameters/3",
      ]);
      const flat = startKnowledge(
        { timeS: 510, temperatureC: 20, dilution: "1+9" },
        {
          noise: "stated",
          laws: { interaction, dilution: { kind: "power", exponent: 0, sd: 0, scatterLogSd: 0 } },
        },
      );
      const told = learn(flat, runs);
      expect(known.dilution).toMatchObject({ exponent: 0 });
      expect(known.parameters[1]!.value).toBeGreaterThan(30);
      for (const j of [0, 1]) expect(known.parameters[j]!.value).toBeCloseTo(told.parameters[j]!.value, 9);
    },
  );
  it("a base time at its longest is one that can be asked", () => {
    for (let timeS = 1; timeS < 1000; timeS += 7) {
      const known = learn(startKnowledge({ timeS, temperatureC: 20 }, { baseLogSd: 3, noise: "stated" }), [
        good(1e6, 20, { outcome: { kind: "judged", timeRatio: 100, logSd: 0.01 } }),
      ]);
      expect(known.baseline.timeS).toBeCloseTo(1e6, 6);
      expect(known.parameters[0]!.value).toBeCloseTo(Math.log(1e6 / timeS), 9);
      expect(() => predict(known, {})).not.toThrow();
    }
  });
  it("a half-life known as poorly as a law may be is not moved by knowing nothing more", () => {
    const age = { kind: "half-life", halfLifeH: 24, sdLog: 3 } as const;
    const known = startKnowledge(baseline, { laws: { age } });
    expect(known.advice).toEqual([]);
    expect(known.parameters[5]!.value).toBeCloseTo(Math.LN2 / 24, 12);
  });
  it("runs that agree by chance count for no more than 4 % each", () => {
    const equal = (count: number, logSd: number): number =>
      learn(
        startKnowledge(baseline, { baseLogSd: 3 }),
        Array.from({ length: count }, (_, i) =>
          good(510, 20, { id: String(i), outcome: { kind: "good", logSd } }),
        ),
      ).baseline.logSd!;
    expect(equal(20, 0.04)).toBeCloseTo(1 / Math.sqrt(1 / 9 + 20 / 0.0016), 6);
    expect(equal(20, 0.01)).toBe(equal(20, 0.04));
    expect(equal(1000, 0.1)).toBeGreaterThan(0.04 / Math.sqrt(1001));
  });
  it("a law whose shape was left out in so many words is learned as one without", () => {
    const use = { increase: 0.08, perCm2PerL: 500, growth: "linear", sdIncrease: 0.1 } as const;
    const agitation = { staleLoss: 0.73, staleTimeS: 75, sdStaleLoss: 0.55 };
    const runs = [
      good(900, 20, { usedCm2PerL: 2500 }),
      good(1200, 20, { agitation: { everyS: 180 }, outcome: { kind: "good", logSd: 0.04 } }),
    ];
    const under = (more: object) =>
      learn(
        startKnowledge(
          { ...baseline, agitation: { everyS: 30 } },
          { laws: { use: { ...use, ...more }, agitation: { ...agitation, ...more } } },
        ),
        runs,
      );
    expect(under({ shape: undefined }).use).toEqual(under({}).use);
    expect(under({ shape: undefined }).agitation).toEqual(under({}).agitation);
    expect(under({}).use?.shape).toBe(0.08);
    expect(under({}).agitation?.staleLoss).toBeGreaterThan(0.99);
  });
  it("every kind of outcome may say how well it is known", () => {
    const kinds: readonly RunOutcome[] = [
      { kind: "good", logSd: 0.07 },
      { kind: "judged", timeRatio: 1, logSd: 0.07 },
      { kind: "steps", steps: 0, logSd: 0.07 },
      { kind: "gamma", gamma: 0.6, wanted: 0.6, logSd: 0.07 },
      { kind: "density", density: 0.6, wanted: 0.6, logSd: 0.07 },
      { kind: "appearance", appearanceS: 100, factor: 6, logSd: 0.07 },
    ];
    const [first, ...others] = kinds.map((outcome) => learn(stated, [good(600, 20, { outcome })]).parameters);
    for (const other of others)
      other.forEach(({ cause, value, sd }, j) => {
        // What the runs of a kind have in common stands beside.
        if (cause === "outcome") return;
        expect([value, sd]).toEqual([
          expect.closeTo(first![j]!.value, 12),
          expect.closeTo(first![j]!.sd, 12),
        ]);
      });
  });
  it("a new notebook takes of learned knowledge the laws alone", () => {
    const before = learn(startKnowledge(baseline), [good(600), good(900, 14)]);
    const next = startKnowledge({ timeS: 300, temperatureC: 20 }, { laws: before });
    expect(next).toMatchObject({
      schema: 1,
      runs: [],
      temperature: before.temperature,
      baseline: { timeS: 300 },
    });
    expect(Object.keys(next.prior.laws)).toEqual([
      "temperature",
      "dilution",
      "agitation",
      "use",
      "age",
      "interaction",
    ]);
    expect(learn(next, [])).toEqual(next);
    expect(nextTest(next, [{}], {})[0]?.timeS).toBeCloseTo(predict(next, {}).timeS, 9);
    // Laws and what hangs them together, without the rest, as an app may keep them.
    const { temperature, joint } = before;
    expect(startKnowledge(baseline, { laws: { temperature, joint } }).prior.laws).toEqual({
      temperature,
    });
    // Whatever its version: of the laws each is checked.
    expect(startKnowledge(baseline, { laws: anyOf({ ...before, schema: 2 }) }).schema).toBe(1);
    expect(startKnowledge(baseline, { laws: { temperature: undefined } })).toEqual(startKnowledge(baseline));
  });
  it("an increase by use that is held at nothing still tells on which side of the known use a bath is", () => {
    const used = startKnowledge({ ...baseline, usedCm2PerL: 3000 });
    // The known time is held by runs: a guess would give way instead.
    const sure = ["a", "b", "c", "d"].map((id) => good(510, 20, { usedCm2PerL: 3000, id }));
    const quick = ["1", "2"].map((id) => good(300, 20, { usedCm2PerL: 8000, id }));
    const known = learn(used, [...sure, ...quick]);
    expect(known.use).toMatchObject({ increase: 0 });
    for (const usedCm2PerL of [0, 6000]) {
      const { timeS, highS } = predict(known, { usedCm2PerL });
      const [test] = nextTest(known, [{ outcomeLogSd: 3 }], { usedCm2PerL });
      expect(Math.log(highS / timeS) / 1.6448536269514722 / test!.expectedLogSd).toBeCloseTo(1, 2);
    }
  });
  it("a run too far for the laws has no fitted time, by whichever rule it is too far", () => {
    const use = { increase: 0, perCm2PerL: 1, growth: "linear", sdIncrease: 1 } as const;
    const [row] = tidyRuns(
      learn(startKnowledge(baseline, { laws: { use } }), [good(600, 20, { usedCm2PerL: 1000 })]),
    );
    expect(row).toMatchObject({
      weight: 0,
      reason: "too-far",
      fittedS: null,
      logResidual: null,
      rightS: 600,
    });
  });
});

describe("laws of learning", () => {
  test.prop([notebook, fc.integer({ min: 0, max: 5 })])(
    "order, one at a time and merging make no difference, to the last bit",
    (runs, cut) => {
      const whole = learn(start, runs);
      const same = (known: LearnedKnowledge): void => {
        expect(JSON.stringify(known)).toBe(JSON.stringify(whole));
      };
      same(learn(start, [...runs].reverse()));
      same(runs.reduce((known, each) => learn(known, [each]), start));
      const [one, two] = [learn(start, runs.slice(0, cut)), learn(start, runs.slice(cut))];
      same(mergeKnowledge(one, two));
      same(mergeKnowledge(two, one));
      same(mergeKnowledge(whole, one));
    },
  );
  test.prop([notebook])("is plain JSON, before and after storage", (runs) => {
    const known = learn(start, runs);
    const stored = JSON.parse(JSON.stringify(known)) as LearnedKnowledge;
    expect(JSON.stringify(stored)).toBe(JSON.stringify(known));
    const question = { temperatureC: 15, dilution: "1+19", ageH: 2 };
    expect(JSON.stringify(predict(stored, question))).toBe(JSON.stringify(predict(known, question)));
    expect(JSON.stringify(learn(stored, [good(600)]))).toBe(JSON.stringify(learn(known, [good(600)])));
    expect(Number.isFinite(predict(known, question).highS)).toBe(true);
  });
  test.prop([notebook])("learning from nothing changes nothing", (runs) => {
    const known = learn(start, runs);
    expect(JSON.stringify(learn(known, []))).toBe(JSON.stringify(known));
    expect(JSON.stringify(learn(known, runs))).toBe(JSON.stringify(known));
  });
  test.prop([notebook, run])("one more value never widens a number, at known noise", (runs, more) => {
    // Of windows a normal distribution is only the nearest one.
    const values = [...runs, { ...more, id: "more" }].map((one): DevelopmentRun => ({
      ...one,
      outcome: { kind: "good", logSd: 0.1 },
    }));
    const [before, after] = [learn(stated, values.slice(0, -1)), learn(stated, values)];
    // A gap may be cut in two by the new run. A knot may also give way to one close by, farther out: a walk takes
    // none nearer than its spacing. Two runs there no longer share their departure, so a number may widen: by a
    // third at most in 8,000 notebooks drawn for it, at a noise of 2 %.
    const edges = (known: LearnedKnowledge): readonly string[] =>
      known.parameters.flatMap(({ parameter }) => {
        const [, name, low, high] = /^(.+) (\S+) to (\S+)$/.exec(parameter) ?? [];
        return name === undefined ? [] : [`${name} ${low}`, `${name} ${high}`];
      });
    const kept = new Set(edges(after));
    const most = edges(before).every((edge) => kept.has(edge)) ? 1 + 1e-9 : 1.5;
    for (const { parameter: name, sd } of before.parameters)
      for (const one of after.parameters.filter((each) => each.parameter === name))
        expect(one.sd).toBeLessThanOrEqual(sd * most);
  });
  test.prop([notebook])("leaves what it was given as it was", (runs) => {
    const text = JSON.stringify([start, runs]);
    learn(start, runs);
    expect(JSON.stringify([start, runs])).toBe(text);
  });
  it("the fields of a run may stand in any order", () => {
    const one: DevelopmentRun = {
      timeS: 500,
      temperatureC: 18,
      dilution: { stockParts: 1, waterParts: 9 },
      outcome: { kind: "judged", timeRatio: 1.1 },
    };
    const two: DevelopmentRun = {
      outcome: { timeRatio: 1.1, kind: "judged" },
      dilution: { waterParts: 9, stockParts: 1, ...anyOf({ stocks: undefined }) },
      temperatureC: 18,
      timeS: 500,
    };
    expect(mergeKnowledge(learn(start, [one]), learn(start, [two])).runs).toHaveLength(1);
    const three: DevelopmentRun = { ...one, outcome: { kind: "judged", timeRatio: 1.2 } };
    expect(mergeKnowledge(learn(start, [one]), learn(start, [three])).runs).toHaveLength(2);
  });
  it("merging counts the common past once, and what only one side has twice, twice", () => {
    const mine = learn(start, [good(500), good(500), good(600)]);
    expect(
      mergeKnowledge(mine, learn(start, [good(500), good(700)]))
        .runs.map(({ timeS }) => timeS)
        .sort(),
    ).toEqual([500, 500, 600, 700]);
  });
  it("the answer follows the truth once there are many runs", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 80 } as const;
    const runs = Array.from({ length: 40 }, (_, i) =>
      good(600 * temperatureFactor(20, 10 + i / 2, law) * (i % 2 ? 1.03 : 1 / 1.03), 10 + i / 2),
    );
    const known = learn(start, runs);
    // The energy shares what it says with the departures from it.
    const { value } = parameter(known, "temperature");
    expect(Math.abs(value - 80)).toBeLessThan(2.5);
    expect(predict(known, { temperatureC: 12 }).timeS / (600 * temperatureFactor(20, 12, law))).toBeCloseTo(
      1,
      2,
    );
    // Said to be good to 10 %, they scatter by 3: the prior of eight runs gives way, 8/48 remaining at least.
    expect(known.scatter).toBeLessThan(0.6);
    expect(known.scatter).toBeGreaterThan(Math.sqrt(8 / 48));
  });
});

describe("refusals", () => {
  const refused = (call: () => unknown, error: Error): void => {
    expect(call).toThrow(error);
  };
  const type = (message: string): TypeError => new TypeError(message);
  const range = (message: string): RangeError => new RangeError(message);

  it("startKnowledge", () => {
    refused(() => startKnowledge(anyOf(5)), type("startKnowledge: baseline must be an object, got 5"));
    refused(
      () => startKnowledge(baseline, anyOf([])),
      type("startKnowledge: options must be an object, got an array"),
    );
    refused(
      () => startKnowledge({ ...baseline, timeS: 0 }),
      range("startKnowledge: baseline.timeS must be above 0 and at most 1000000 s, got 0"),
    );
    refused(
      () => startKnowledge({ ...baseline, temperatureC: 101 }),
      range("startKnowledge: baseline.temperatureC must be from 0 to 100 °C, got 101"),
    );
    refused(
      () => startKnowledge({ ...baseline, dilution: "9" }),
      range('startKnowledge: baseline.dilution must be a dilution such as "1+9" or "stock", got "9"'),
    );
    refused(
      () => startKnowledge({ ...baseline, agitation: anyOf("often") }),
      range(
        'startKnowledge: baseline.agitation must be "continuous" or "stand", or an object such as { "everyS": 30 }, got "often"',
      ),
    );
    refused(
      () => startKnowledge({ ...baseline, ageH: -1 }),
      range("startKnowledge: baseline.ageH must be from 0 to 1000000 h, got -1"),
    );
    refused(
      () => startKnowledge({ ...baseline, usedCm2PerL: NaN }),
      range("startKnowledge: baseline.usedCm2PerL must be from 0 to 1000000 cm²/l, got NaN"),
    );
    refused(
      () => startKnowledge(baseline, { baseLogSd: 4 }),
      range("startKnowledge: options.baseLogSd must be from 0 to 3, got 4"),
    );
    refused(
      () => startKnowledge(baseline, { noise: anyOf("loud") }),
      range('startKnowledge: options.noise must be "estimated" or "stated", got "loud"'),
    );
    refused(
      () => startKnowledge(baseline, { laws: anyOf(1) }),
      type("startKnowledge: options.laws must be an object, got 1"),
    );
    refused(
      () =>
        startKnowledge(baseline, {
          laws: { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 300 } },
        }),
      range(
        "startKnowledge: options.laws.temperature.activationEnergyKJPerMol must be from 0 to 200 kJ/mol, got 300",
      ),
    );
    refused(
      () => startKnowledge(baseline, { laws: { dilution: { kind: "power", exponent: 4 } } }),
      range("startKnowledge: options.laws.dilution.exponent must be from 0 to 3, got 4"),
    );
    refused(
      () => startKnowledge(baseline, { laws: { agitation: { staleLoss: 2, staleTimeS: 75 } } }),
      range("startKnowledge: options.laws.agitation.staleLoss must be from 0 to 0.99, got 2"),
    );
    refused(
      () => startKnowledge(baseline, { laws: { use: { ...genericUseLaw, increase: -1 } } }),
      range("startKnowledge: options.laws.use.increase must be from 0 to 10, got -1"),
    );
    refused(
      () => startKnowledge(baseline, { laws: { use: { ...genericUseLaw, capacityCm2PerL: -5 } } }),
      range(
        "startKnowledge: options.laws.use.capacityCm2PerL must be above 0 and at most 1000000 cm²/l, got -5",
      ),
    );
    refused(
      () => startKnowledge(baseline, { laws: { use: anyOf({ ...genericUseLaw, shape: null }) } }),
      type("startKnowledge: options.laws.use.shape must be a number, got null"),
    );
    refused(
      () => startKnowledge(baseline, { laws: anyOf({ temprature: {} }) }),
      range(
        'startKnowledge: options.laws.temprature must be a field that is read, perhaps temperature (all are temperature, dilution, agitation, use, age, strength, growth, push, interaction, batchLogSd, joint), got "temprature"',
      ),
    );
    refused(
      () => startKnowledge(baseline, { laws: { age: { kind: "half-life", halfLifeH: 0 } } }),
      range("startKnowledge: options.laws.age.halfLifeH must be from 0.001 to 1000000 h, got 0"),
    );
    refused(
      () => startKnowledge(baseline, { laws: { age: { kind: "half-life", halfLifeH: 9, sdLog: 4 } } }),
      range("startKnowledge: options.laws.age.sdLog must be from 0 to 3, got 4"),
    );
  });
  it("a misspelt field, by its place and with the name that is near", () => {
    const refusal = (path: string, hint: string | undefined) => {
      const { must, values } = { must: "known-field", values: expect.any(Array) as unknown };
      const expected = hint === undefined ? { must, values } : { must, values, hint };
      return expect.objectContaining({ code: "not-one-of", path, expected }) as Error;
    };
    const misspelt = anyOf({ ...good(600), dilutoin: "1+9" });
    refused(() => learn(start, [good(9), misspelt]), refusal("/runs/1/dilutoin", "dilution"));
    refused(
      () => startKnowledge(anyOf({ ...baseline, temprature: 14 })),
      refusal("/baseline/temprature", "temperatureC"),
    );
    refused(() => startKnowledge(baseline, anyOf({ law: {} })), refusal("/options/law", "laws"));
    refused(
      () => startKnowledge(baseline, { laws: anyOf({ temprature: {} }) }),
      refusal("/options/laws/temprature", "temperature"),
    );
    // A name that no text should repeat is not in the path.
    refused(() => startKnowledge(baseline, anyOf({ ["y".repeat(201)]: 1 })), refusal("/options", undefined));
  });
  it("takes an estimate with its spread as a starting time, as compensate does", () => {
    const found = proposeBrew({ shelf: ["instant-coffee", "soda-anhydrous"], volumeMl: 500 });
    if (found.brew === undefined) throw new Error(found.reason);
    const started = { ...found.start, temperatureC: 20 };
    const { timeS, logSd, sources } = found.start;
    expect(startKnowledge(started)).toEqual(startKnowledge({ timeS, logSd, sources, temperatureC: 20 }));
    const unread = (given: object) =>
      compensate(given as typeof started, {}).cautions.flatMap(({ code, path }) =>
        code === "unknown-field" ? [path] : [],
      );
    expect(unread(started)).toEqual([]);
    // Its ends alone are not read.
    const bare = { ...started, logSd: undefined };
    expect(unread(bare)).toEqual(["/baseline/lowS", "/baseline/highS", "/baseline/basis"]);
    refused(() => startKnowledge(anyOf(bare)), expect.objectContaining({ path: "/baseline/lowS" }));
  });
  it("learn: runs, by their place in what was handed in", () => {
    const bad =
      (each: unknown): (() => unknown) =>
      () =>
        learn(start, [good(9, 90), anyOf(each)]);
    refused(() => learn(start, anyOf("runs")), type('learn: runs must be an array, got "runs"'));
    refused(() => learn(start, [], anyOf(3)), type("learn: options must be an object, got 3"));
    refused(bad(null), type("learn: runs[1] must be an object, got null"));
    refused(
      bad({ temperatureC: 20, outcome: { kind: "good" } }),
      type("learn: runs[1].timeS is missing: a number"),
    );
    refused(
      bad({ timeS: -5, temperatureC: 20, outcome: { kind: "good" } }),
      range("learn: runs[1].timeS must be above 0 and at most 1000000 s, got -5"),
    );
    refused(
      bad({ timeS: 5, outcome: { kind: "good" } }),
      type("learn: runs[1].temperatureC is missing: a number"),
    );
    refused(
      bad({ timeS: 5, temperatureC: 300, outcome: { kind: "good" } }),
      range("learn: runs[1].temperatureC must be from 0 to 100 °C, got 300"),
    );
    refused(bad({ timeS: 5, temperatureC: 20 }), type("learn: runs[1].outcome is missing: an object"));
    refused(
      bad({ ...good(5), temperatureF: 68 }),
      range(
        'learn: runs[1].temperatureF must be a field that is read, perhaps temperatureC (all are id, date, timeS, temperatureC, dilution, agitation, usedCm2PerL, ageH, strength, pushStops, thermometer, by, batch, printed, outcome, note), got "temperatureF"',
      ),
    );
    refused(
      bad({ ...good(5), [`x${"y".repeat(80)}`]: 1 }),
      range(
        `learn: runs[1].x${"y".repeat(80)} must be a field that is read (all are id, date, timeS, temperatureC, dilution, agitation, usedCm2PerL, ageH, strength, pushStops, thermometer, by, batch, printed, outcome, note), got "x${"y".repeat(59)}"`,
      ),
    );
    refused(
      bad(good(5, 20, { outcome: anyOf({ kind: "good", logsd: 0.02 }) })),
      expect.objectContaining({ code: "not-one-of", path: "/runs/1/outcome/logsd", actual: "logsd" }),
    );
    refused(
      bad(good(5, 20, { outcome: anyOf({ kind: "gamma", gamma: 0.5, wanted: 0.6, density: 1 }) })),
      expect.objectContaining({ code: "not-one-of", actual: "density" }),
    );
    refused(
      bad(good(5, 20, { dilution: "1:9" })),
      range(
        'learn: runs[1].dilution must be "1+9" (1 part and 9 of water) or "1+8" (1 part of 9 in all), got "1:9"',
      ),
    );
    refused(
      bad(good(5, 20, { agitation: anyOf("never") })),
      range(
        'learn: runs[1].agitation must be "continuous" or "stand", or an object such as { "everyS": 30 }, got "never"',
      ),
    );
    refused(
      bad(good(5, 20, { usedCm2PerL: -1 })),
      range("learn: runs[1].usedCm2PerL must be from 0 to 1000000 cm²/l, got -1"),
    );
    refused(bad(good(5, 20, { ageH: -1 })), range("learn: runs[1].ageH must be from 0 to 1000000 h, got -1"));
    refused(
      bad(good(5, 20, { strength: anyOf(1) })),
      type("learn: runs[1].strength must be an object, got 1"),
    );
    refused(
      bad(good(5, 20, { strength: anyOf({ value: 0, logSd: 0.1 }) })),
      range("learn: runs[1].strength.value must be above 0 and at most 1000000, got 0"),
    );
    refused(
      bad(good(5, 20, { strength: anyOf({ value: 1, logSd: -1 }) })),
      range("learn: runs[1].strength.logSd must be from 0 to 10, got -1"),
    );
    refused(bad(good(5, 20, { id: anyOf(7) })), type("learn: runs[1].id must be text, got 7"));
    refused(bad(good(5, 20, { note: anyOf(7) })), type("learn: runs[1].note must be text, got 7"));
    refused(bad(good(5, 20, { date: anyOf(7) })), type("learn: runs[1].date must be text, got 7"));
    for (const date of [
      "1.5.2024",
      "2024-13-01",
      "2024-00-10",
      "2024-02-30",
      "2024-05-00",
      "x2024-05-01",
      "2024-05-01x",
    ])
      refused(
        bad(good(5, 20, { date })),
        range(`learn: runs[1].date must be a date such as "2024-05-01", got "${date}"`),
      );
    for (const date of ["2024-02-29", "2024-12-31", "2024-05-01T10:30"])
      expect(learn(start, [good(500, 20, { date })]).runs[0]?.date).toBe(date);
    refused(
      () => learn(start, [good(5, 20, { id: "k" }), good(6, 20, { id: "k" })]),
      range('learn: runs[1].id must be the id of one run only: give one of them another, got "k"'),
    );
    const known = learn(start, [good(5, 20, { id: "k" })]);
    refused(
      () => learn(known, [good(5, 20, { id: "k", pushStops: anyOf("1") })]),
      type('learn: runs[0].pushStops must be a number, got "1"'),
    );
    refused(
      () => learn({ ...known, runs: [good(anyOf("5"), 20, { id: "k" })] }, [good(5, 20, { id: "k" })]),
      type('learn: knowledge.runs[0].timeS must be a number, got "5"'),
    );
    refused(
      () => learn(startKnowledge({ timeS: 510, temperatureC: 20 }), [good(500, 20, { dilution: "1+9" })]),
      type("learn: runs[0].dilution needs baseline.dilution: what was it for the known time?"),
    );
    refused(
      () => learn(startKnowledge({ timeS: 510, temperatureC: 20 }), [good(500, 20, { agitation: "stand" })]),
      type("learn: runs[0].agitation needs baseline.agitation: what was it for the known time?"),
    );
  });
  it("learn: outcomes", () => {
    const bad =
      (each: unknown): (() => unknown) =>
      () =>
        learn(start, [{ timeS: 500, temperatureC: 20, outcome: anyOf(each) }]);
    refused(
      bad({ kind: "fine" }),
      range(
        'learn: runs[0].outcome.kind must be "good", "judged", "steps", "thin", "dense", "gamma", "density", "appearance", "failed" or "fogged", got "fine"',
      ),
    );
    refused(bad({}), type("learn: runs[0].outcome.kind is missing: text"));
    refused(
      bad({ kind: "good", logSd: 0 }),
      range("learn: runs[0].outcome.logSd must be above 0 and at most 3, got 0"),
    );
    refused(bad({ kind: "judged" }), type("learn: runs[0].outcome.timeRatio is missing: a number"));
    refused(
      bad({ kind: "judged", timeRatio: 101 }),
      range("learn: runs[0].outcome.timeRatio must be above 0 and at most 100, got 101"),
    );
    refused(
      bad({ kind: "steps", steps: 11 }),
      range("learn: runs[0].outcome.steps must be from -10 to 10, got 11"),
    );
    refused(
      bad({ kind: "steps", steps: 1, perStep: 0.7 }),
      range("learn: runs[0].outcome.perStep must be from 1.05 to 4, got 0.7"),
    );
    refused(
      bad({ kind: "gamma", gamma: 0, wanted: 0.6 }),
      range("learn: runs[0].outcome.gamma must be above 0 and at most 10, got 0"),
    );
    refused(
      bad({ kind: "gamma", gamma: 0.6, wanted: 11 }),
      range("learn: runs[0].outcome.wanted must be above 0 and at most 10, got 11"),
    );
    refused(
      bad({ kind: "gamma", gamma: 0.6, wanted: 0.6, sd: 0 }),
      range("learn: runs[0].outcome.sd must be above 0 and at most 3, got 0"),
    );
    refused(
      bad({ kind: "density", density: 11, wanted: 1 }),
      range("learn: runs[0].outcome.density must be above 0 and at most 10, got 11"),
    );
    refused(
      bad({ kind: "appearance", appearanceS: 0, factor: 10 }),
      range("learn: runs[0].outcome.appearanceS must be above 0 and at most 1000000 s, got 0"),
    );
    refused(
      bad({ kind: "appearance", appearanceS: 50, factor: 0 }),
      range("learn: runs[0].outcome.factor must be above 0 and at most 1000, got 0"),
    );
  });
  it("learn: dates after today, when today is told", () => {
    const dated = [good(500, 20, { date: "2024-05-02" })];
    refused(
      () => learn(start, dated, { today: "2024-05-01" }),
      range('learn: runs[0].date must be at most today, 2024-05-01, got "2024-05-02"'),
    );
    expect(learn(start, [...dated, good(1000, 10)], { today: "2024-05-02T08:00" }).runs).toHaveLength(2);
    expect(
      learn(start, [good(500, 20, { date: "2024-05-02T23:00" })], { today: "2024-05-02" }).runs,
    ).toHaveLength(1);
    refused(() => learn(start, dated, { today: anyOf(1) }), type("learn: options.today must be text, got 1"));
    refused(
      () => learn(start, dated, { today: "tomorrow" }),
      range('learn: options.today must be a date such as "2024-05-01", got "tomorrow"'),
    );
  });
  it("wrong knowledge, or newer", () => {
    refused(() => learn(anyOf(null), []), type("learn: knowledge must be an object, got null"));
    refused(() => learn(anyOf({}), []), type("learn: knowledge.schema is missing: a number"));
    refused(
      () => predict(anyOf({ ...start, schema: 2 }), {}),
      range(
        "predict: knowledge.schema must be at most 1, the newest version that this package reads (or update it), got 2",
      ),
    );
    refused(
      () => predict(anyOf({ ...start, schema: 0 }), {}),
      range("predict: knowledge.schema must be 1, got 0"),
    );
    refused(
      () => learn(anyOf({ ...start, prior: undefined }), []),
      type("learn: knowledge.prior is missing: an object"),
    );
    refused(
      () => learn(anyOf({ ...start, runs: "none" }), []),
      type('learn: knowledge.runs must be an array, got "none"'),
    );
    refused(
      () => learn(anyOf({ ...start, runs: [3] }), []),
      type("learn: knowledge.runs[0] must be an object, got 3"),
    );
    refused(
      () => learn(anyOf({ ...start, prior: { ...start.prior, baseline: 3 } }), []),
      type("learn: knowledge.prior.baseline must be an object, got 3"),
    );
    refused(() => predict(start, anyOf(7)), type("predict: conditions must be an object, got 7"));
    refused(
      () => tidyRuns(anyOf({ schema: 3 })),
      range(
        "tidyRuns: knowledge.schema must be at most 1, the newest version that this package reads (or update it), got 3",
      ),
    );
    refused(() => mergeKnowledge(anyOf(1), start), type("mergeKnowledge: a must be an object, got 1"));
    refused(() => mergeKnowledge(start, anyOf(1)), type("mergeKnowledge: b must be an object, got 1"));
    refused(
      () => mergeKnowledge(start, stated),
      range("mergeKnowledge: b must be knowledge from the same prior as a: learn its runs into a instead"),
    );
    refused(
      () =>
        mergeKnowledge(
          learn(start, [good(500, 20, { id: "k" })]),
          learn(start, [good(600, 20, { id: "k" })]),
        ),
      range('mergeKnowledge: b.runs[0].id must be the id of one run only: give one of them another, got "k"'),
    );
    const known = learn(start, [good(600, 20, { id: "k" })]);
    refused(
      () => mergeKnowledge(known, { ...known, runs: [good(anyOf("640"), 20, { id: "k" })] }),
      type('mergeKnowledge: b.runs[0].timeS must be a number, got "640"'),
    );
    const shuffled = startKnowledge({
      agitation: { everyS: 60 },
      dilution: "1+9",
      temperatureC: 20,
      timeS: 510,
    });
    expect(mergeKnowledge(start, shuffled)).toEqual(start);
    // What was spoilt in storage is worked out again, and says so.
    const broken = { ...start, joint: { ...start.joint, correlation: [] } };
    expect(predict(anyOf(broken), {}).highS).toBe(predict(start, {}).highS);
    expect(predict(anyOf(broken), {}).cautions).toContainEqual(
      expect.objectContaining({ code: "stored-differs", path: "/knowledge/joint" }),
    );
  });
  it("a number that JSON has no text for", () => {
    const run = { timeS: 510, temperatureC: 20, usedCm2PerL: 5n, outcome: { kind: "good" } };
    expect(thrown(() => learn(start, [anyOf(run)]))).toBe(
      "TypeError: learn: runs[0].usedCm2PerL must be a number, got 5",
    );
  });
});

describe("wrong agitation", () => {
  it.each([
    [null, "an object, got null"],
    [NaN, "an object, got NaN"],
    [0, "an object, got 0"],
    ["", '"continuous" or "stand", or an object such as { "everyS": 30 }, got ""'],
  ])("%j is refused in a baseline and in a run", (agitation, why) => {
    expect(() => startKnowledge(anyOf({ ...baseline, agitation }))).toThrow(
      `startKnowledge: baseline.agitation must be ${why}`,
    );
    expect(() => learn(start, [anyOf({ ...good(500), agitation })])).toThrow(
      `learn: runs[0].agitation must be ${why}`,
    );
  });
});

describe("the fit", () => {
  it("leaves the caller's runs and laws free to change", () => {
    const run = { timeS: 500, temperatureC: 18, outcome: { kind: "good" as const } };
    const law = { kind: "arrhenius" as const, activationEnergyKJPerMol: 60 };
    const known = learn(startKnowledge({ ...baseline }, { laws: { temperature: law } }), [run]);
    expect([run, run.outcome, law].map((one) => Object.isFrozen(one))).toEqual([false, false, false]);
    run.timeS = 900;
    expect(known.runs[0]?.timeS).toBe(500);
  });
  it("keeps a run as it was, also where only its outside was frozen", () => {
    const outcome: { kind: "good" | "thin" } = { kind: "good" };
    const run = Object.freeze({ timeS: 500, temperatureC: 18, outcome });
    const known = learn(startKnowledge({ ...baseline }), [run]);
    outcome.kind = "thin";
    expect(known.runs[0]?.outcome).toEqual({ kind: "good" });
  });
  it.each([NaN, 5n, () => 1])("refuses %s in a field of the caller's own: JSON would lose it", (value) => {
    const run = { "timeS": 500, "temperatureC": 18, "outcome": { kind: "good" }, "x-roll": value };
    expect(() => learn(start, [anyOf(run)])).toThrow(
      expect.objectContaining({ expected: { must: "plain-data" }, path: "/runs/0/x-roll" }),
    );
  });
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
      "/parameters/6",
    ]);
    expect([parameter(known, "temperature").value, parameter(known, "dilution").value]).toEqual([0, 0]);
    // The base time is the one that goes with both slopes known to be 0.
    const flat = {
      ...laws,
      temperature: { kind: "arrhenius", activationEnergyKJPerMol: 0, sdKJPerMol: 0 },
      dilution: { ...laws.dilution, exponent: 0, sd: 0 },
    } as const;
    const told = learn(startKnowledge(baseline, { noise: "stated", laws: flat }), runs);
    expect(parameter(known, "baseline").value).toBeCloseTo(parameter(told, "baseline").value, 9);
  });
  it("names what was set aside in the order of the runs, doubted and failed alike", () => {
    const sound = ["b", "c", "d", "e", "f"].map((id) => good(510, 20, { id }));
    const known = learn(start, [
      ...sound,
      good(5000, 20, { id: "a" }),
      good(510, 20, { id: "g", outcome: { kind: "failed" } }),
    ]);
    expect(known.setAside.map(({ run, reason }) => [run, reason])).toEqual([
      [0, "disagrees"],
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

describe("a number that was known exactly", () => {
  it("is taught by no run and stays as it was given", () => {
    const temperature = {
      kind: "arrhenius",
      activationEnergyKJPerMol: 70,
      sdKJPerMol: 0,
      sources: ["invented"],
    } as const;
    const known = learn(startKnowledge(baseline, { baseLogSd: 0, laws: { temperature } }), [
      good(700, 18),
      good(760, 17),
    ]);
    expect(known.parameters.slice(0, 2)).toEqual([
      { parameter: "baseline", cause: "baseline", value: 0, sd: 0, priorSd: 0, runs: 0 },
      { parameter: "temperature", cause: "temperature", value: 70, sd: 0, priorSd: 0, runs: 0 },
    ]);
    // The departures from it are learned all the same.
    expect(known.temperature).toMatchObject({ ...temperature, runs: 2 });
    const { timeS, factors } = predict(known, { temperatureC: 20 });
    expect(timeS).toBe(baseline.timeS);
    expect(factors[0]).toMatchObject({ basis: "given", logSd: 0 });
  });
});
