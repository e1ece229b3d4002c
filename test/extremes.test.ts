/*
 * The far ends of the other modules: forecasts that swing, baths that start frozen, rows nearly equal, amounts
 * that round below nothing, and laws that come out of a fit and must be able to go in again. All values are
 * invented.
 */
import { describe, expect, it } from "vitest";
import {
  effect,
  bakedSoda,
  bathVerdict,
  brewPh,
  checkRecipe,
  compensate,
  describeCompensation,
  describePlan,
  developUntil,
  equivalentTime,
  fitDrift,
  fitGrowth,
  growthFromDoubling,
  mixingSteps,
  mixVolumes,
  newtonDrift,
  parseTime,
  planProcess,
  rateFunction,
  scaleBrew,
  speedPoint,
  temperatureFactor,
  testStripTimes,
  type TemperatureLaw,
} from "../src/index.js";

import { clockTime } from "../src/drift/developUntil.js";

/** The integral of the rate to `endS` by 100,000 midpoints, as an independent judge. */
function done(
  law: TemperatureLaw,
  referenceC: number,
  temperatureAt: (timeS: number) => number,
  endS: number,
): number {
  const rate = rateFunction(referenceC, law);
  let sum = 0;
  for (let i = 0; i < 1e5; i += 1) sum += rate(temperatureAt(((i + 0.5) * endS) / 1e5));
  return (sum * endS) / 1e5;
}

describe("what one function gives another", () => {
  const fixed = { vessel: "tank", temperatureC: 20, volumeMl: 500 } as const;
  it("is a plan of as many agitations as a plan is read with", () => {
    const plan = planProcess({ ...fixed, timeS: 85000 * 11, agitation: { everyS: 11 } });
    expect(plan.steps.find(({ name }) => name === "develop")?.cues.length).toBeGreaterThan(84000);
    expect(describePlan(plan).join()).toContain("Every 0:11 until 259:42:58.");
    expect(() => planProcess({ ...fixed, timeS: 1e6, agitation: { everyS: 11 } })).toThrow(
      /^planProcess: input\.agitation\.everyS must be such that \d+ s hold at most 90000 agitations, got 11$/,
    );
  });
  it("is an answer as small as compensate makes one", () => {
    const law = { kind: "coefficient", ratio: 10, intervalC: 10 } as const;
    const answer = compensate({ timeS: 1e-29, temperatureC: 0 }, { temperatureC: 100 }, { temperature: law });
    expect(answer.timeS).toBeCloseTo(0, 30);
    expect(describeCompensation(answer)).toContain(
      "The laws alone would say 0:00, with 90 % certainty between 0:00 and 0:00.",
    );
  });
  it("is a brew as large as a brew is read", () => {
    const tablets = { ingredient: "ascorbic-acid-tablet", tablets: 6000, labelMg: 1000 } as const;
    const soda = { ingredient: "soda-anhydrous", massG: 50, lowG: 40 } as const;
    const brew = { volumeMl: 20000, ingredients: [tablets, soda] };
    expect(scaleBrew(brew, 30000).ingredients).toEqual([
      { ...tablets, tablets: 9000 },
      { ...soda, massG: 75, lowG: 60 },
    ]);
    expect(() => scaleBrew(brew, 40000)).toThrow(
      /^scaleBrew: brew.*tablets must be from 0 to 10000, got 12000$/,
    );
  });
  it("is a mass named by its own name", () => {
    expect(() => brewPh({ volumeMl: 1000, ingredients: [{ ingredient: "borax", massG: 1e-31 }] })).toThrow(
      /massG must be above 1e-30/,
    );
  });
  it("is a ladder whose times rise, or none", () => {
    const close = testStripTimes({ timeS: 500, lowS: 500 - 1e-6, highS: 500 + 1e-6 }, { count: 25 });
    expect(close).toEqual({ timesS: [], ratio: expect.closeTo(1, 6), reason: "too-narrow" });
    const { timesS } = testStripTimes({ timeS: 500, lowS: 5e-12, highS: 5e11 }, { count: 25 });
    expect(timesS).toHaveLength(25);
    expect(timesS.every((timeS, i) => i === 0 || timeS > (timesS[i - 1] as number))).toBe(true);
  });
  it("is a recipe without holes", () => {
    const notes = ["first"];
    notes[2] = "third";
    const answer = checkRecipe({
      schemaVersion: 2,
      material: { name: "plate" },
      developer: { kind: "stock", name: "hut", dilution: "1+9" },
      baseline: { timeS: 510, temperatureC: 20 },
      notes,
    });
    expect(answer).toMatchObject({
      ok: false,
      problems: [
        {
          path: "/notes/1",
          message: "must be text of at most 2000 characters, got undefined",
          rule: "shape",
        },
      ],
    });
  });
});

describe("a forecast that swings", () => {
  const swing = (meanC: number, byC: number, periodS: number, phase: number) => (timeS: number) =>
    meanC + byC * Math.sin((2 * Math.PI * timeS) / periodS + phase);
  it.each([
    [3600, 4, swing(18, 15, 600, 1.5)],
    [900, 2.25, swing(18, 8, 120, 2)],
    [900, 4, swing(18, 5, 300, 0)],
    [5000, 4.5, swing(18, 18, 1958, 5.481)],
  ])("is followed to the end: %d s at a coefficient of %d", (equivalentS, ratio, temperatureAt) => {
    const law = { kind: "coefficient", ratio, intervalC: 10 } as const;
    const rate = rateFunction(20, law);
    const endS = clockTime((timeS) => rate(temperatureAt(timeS)), equivalentS, 0);
    expect(done(law, 20, temperatureAt, endS) / equivalentS).toBeCloseTo(1, 6);
    // A reading every second, with straight lines between them.
    const log = Array.from({ length: Math.ceil(endS) + 2 }, (_, i) => ({
      timeS: i,
      temperatureC: temperatureAt(i),
    }));
    const { timeS, lowS, highS } = compensate(
      { timeS: equivalentS, temperatureC: 20 },
      { temperatureC: log },
      { temperature: law },
    );
    expect(timeS / endS).toBeCloseTo(1, 3);
    expect(lowS).toBeLessThan(timeS);
    expect(highS).toBeGreaterThan(timeS);
  });
  it("from a frozen bath that warms up is followed too", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 200 } as const;
    const temperatureAt = { startC: 0, ambientC: 40, timeConstantS: 600 };
    const endS = developUntil({ equivalentS: 3600, referenceC: 40, law, temperatureAt });
    expect(done(law, 40, newtonDrift(temperatureAt), endS) / 3600).toBeCloseTo(1, 6);
  });
  it("that never gets there is refused", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 200 } as const;
    expect(() => developUntil({ equivalentS: 1e6, referenceC: 40, law, temperatureAt: 0 })).toThrow(
      new RangeError("developUntil: equivalentS must be reached by clock time 10000000 s, got 1000000 s"),
    );
  });
});

describe("rows that nearly meet", () => {
  it.each([20.00000000000001, 20.000000000000004])("20 and %d °C are one temperature", (temperatureC) => {
    const law = {
      kind: "table",
      rows: [
        { temperatureC: 20, timeS: 480 },
        { temperatureC, timeS: 480 },
      ],
    } as const;
    expect(() => temperatureFactor(20, 22, law)).toThrow(
      /^temperatureFactor: law\.rows must differ in temperatureC, got 480 s at 20/,
    );
  });
  it("a billionth of a degree and more apart they make a curve", () => {
    const rows = [
      { temperatureC: 20, timeS: 480 },
      { temperatureC: 20 + 2e-9, timeS: 480 },
    ];
    expect(temperatureFactor(20, 22, { kind: "table", rows })).toBe(1);
    expect(
      equivalentTime(
        [
          { timeS: 0, temperatureC: 20 },
          { timeS: 60, temperatureC: 22 },
        ],
        20,
        { kind: "table", rows },
      ),
    ).toBeCloseTo(60, 9);
  });
});

describe("amounts", () => {
  it.each([0.9, 27, 54, 250, 500, 1000])(
    "%d g of soda baked to the end leave no baking soda, and not less",
    (massG) => {
      const parts = bakedSoda({ massG, converted: 1 });
      expect(parts[1].massG).toBe(0);
      expect(
        brewPh({
          volumeMl: 2000,
          temperatureC: 20,
          ingredients: [...parts, { ingredient: "ascorbic-acid", massG: 5 }],
        }).ph,
      ).toBeGreaterThan(3);
    },
  );
  it("stock without water leaves no water, and not less", () => {
    expect(mixVolumes({ stockParts: 1 / 7, waterParts: 0 }, 23 / 3).waterMl).toBe(0);
  });
  it("the cups of a brew take at most 95 % of its water", () => {
    const ingredients = [
      "soda-anhydrous",
      "sodium-hydroxide",
      "instant-coffee",
      "ascorbic-acid",
      "potassium-bromide",
    ].map((ingredient) => ({ ingredient, massG: 0.2 }));
    for (const volumeMl of [10, 250, 1000]) {
      const taken = mixingSteps({ volumeMl, ingredients } as never).reduce(
        (sum, { waterMl = 0 }) => sum + waterMl,
        0,
      );
      expect(taken).toBeGreaterThan(0);
      expect(taken).toBeLessThanOrEqual(0.95 * volumeMl);
    }
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

describe("what comes out", () => {
  it("of a growth that goes on without end is refused by name", () => {
    expect(() => growthFromDoubling({ timeS: 300, gamma: 0.5, gammaAtDouble: 0.9998 })).toThrow(
      /^growthFromDoubling: gammaInfinity must be above 0 and at most 1000, got 12/,
    );
    expect(() => growthFromDoubling({ timeS: 0.001, gamma: 1, gammaAtDouble: 1.5 })).toThrow(
      /^growthFromDoubling: ratePerS must be above 0 and at most 100 1\/s, got 693/,
    );
    const points = [
      { timeS: 100, gamma: 400 },
      { timeS: 200, gamma: 700 },
      { timeS: 400, gamma: 999 },
    ];
    expect(() => fitGrowth(points, { appearanceS: 0 })).toThrow(
      /^fitGrowth: fitted\.gammaInfinity must be above 0 and at most 1000, got 12/,
    );
  });
  it("of a bath that hardly cools is refused by name", () => {
    const log = [
      { timeS: 0, temperatureC: 30 },
      { timeS: 5e6, temperatureC: 27.5 },
      { timeS: 1e7, temperatureC: 25.3 },
    ];
    expect(() => fitDrift(log, { ambientC: 10 })).toThrow(
      /^fitDrift: .*its time constant is longer than 10000000 s/,
    );
  });
  it("of a bath past ten half-lives is a verdict", () => {
    const { verdict, factor } = bathVerdict({ ageH: 300, age: { kind: "half-life", halfLifeH: 24 } });
    expect(verdict).toBe("discard");
    expect(factor).toBeCloseTo(1024, 9);
    // Ten half-lives themselves the law takes.
    expect(bathVerdict({ ageH: 240, age: { kind: "half-life", halfLifeH: 24 } }).factor).toBeCloseTo(1024, 9);
    expect(() => bathVerdict({ ageH: 300, age: { kind: "half-life", halfLifeH: NaN } })).toThrow(
      /halfLifeH must be above 0/,
    );
  });
  it("of a bath that takes more than 1000 times as long is a verdict", () => {
    const use = { increase: 1, perCm2PerL: 100, growth: "compound" } as const;
    expect(bathVerdict({ usedCm2PerL: 5000, use })).toMatchObject({ verdict: "discard", factor: 1000 });
    // 2^9.9 and 1 + 9 × 111 the rule itself takes.
    expect(bathVerdict({ usedCm2PerL: 990, use }).factor).toBeCloseTo(2 ** 9.9, 9);
    expect(
      bathVerdict({ usedCm2PerL: 111, use: { increase: 9, perCm2PerL: 1, growth: "linear" } }).factor,
    ).toBeCloseTo(1000, 9);
    expect(
      bathVerdict({ usedCm2PerL: 110, use: { increase: 9, perCm2PerL: 1, growth: "linear" } }).factor,
    ).toBeCloseTo(991, 9);
    expect(() => bathVerdict({ usedCm2PerL: 5000, use: { ...use, increase: NaN } })).toThrow(
      /^bathVerdict: bath\.use\.increase must be from 0 to 10, got NaN/,
    );
  });
  it("of a spread of growth that is none is refused by name", () => {
    const law = { gammaInfinity: 1, ratePerS: 0.01, appearanceS: 10 };
    const sd = { gammaInfinity: 0.1, ratePerS: 0.001, appearanceS: 1 };
    expect(effect("contrast", 0.5, 0.6, { ...law, sd }).logSd).toBeGreaterThan(0);
    expect(() => effect("contrast", 0.5, 0.6, { ...law, sd: { ...sd, gammaInfinity: 1e308 } }).logSd).toThrow(
      new RangeError("effect: law.sd.gammaInfinity must be from 0 to 1000, got 1e+308"),
    );
    expect(() => effect("contrast", 0.5, 0.6, { ...law, sd: 5 }).logSd).toThrow(
      new TypeError("effect: law.sd must be an object, got 5"),
    );
    expect(() => effect("contrast", 0.5, 0.6, { ...law, sd: { ...sd, ratePerS: -1 } }).logSd).toThrow(
      new RangeError("effect: law.sd.ratePerS must be from 0 to 100 1/s, got -1"),
    );
    expect(() => effect("contrast", 0.5, 0.6, { ...law, sd: { ...sd, appearanceS: -1 } }).logSd).toThrow(
      new RangeError("effect: law.sd.appearanceS must be from 0 to 1000000 s, got -1"),
    );
  });
  it("of a strip whose base and fog are left out by name is that of its lightest step", () => {
    const steps = [0, 0.5, 1, 1.5, 2].map((logH) => ({ logH, density: 0.1 + 0.3 * logH }));
    expect(speedPoint({ steps, basePlusFog: undefined } as never)).toEqual(speedPoint({ steps }));
  });
  it("of a recipe whose clearing takes no time is a problem of the recipe", () => {
    const { ok, ...rest } = checkRecipe({
      schemaVersion: 2,
      name: "hut",
      material: { name: "plate", kind: "plate" },
      developer: { kind: "stock", name: "one", dilution: "1+1" },
      baseline: { timeS: 300, temperatureC: 20 },
      baths: { fix: { clearingS: 2e-30, clearingAtC: 0, temperatureC: 20 } },
    });
    expect(ok).toBe(false);
    expect(JSON.stringify(rest)).toContain('"path":"/baths/fix/clearingS"');
  });
  it("of a text with a long run of blanks is one refusal, at once", () => {
    // Searched in every way, it would take minutes.
    expect(() => parseTime(`1h${" ".repeat(4e5)}x`)).toThrow(/^parseTime: text must be a time/);
  });
});
