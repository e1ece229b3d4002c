import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bakedSoda,
  bakeProgress,
  bakeTime,
  bakeYield,
  brewPh,
  sodaMass,
  solubility,
  type Caution,
  type SodaHydrate,
} from "../../src/index.js";
import { SODA_SOLUBILITY } from "../reference/brew.js";
import { brewOf, part } from "./brews.js";

const HYDRATES = ["anhydrous", "monohydrate", "heptahydrate", "decahydrate"] as const;

describe("sodaMass", () => {
  // From molar masses (IUPAC CIAAW 2021); Langford's Basic Photography, appendix D, prints 1.2 and 2.7.
  it.each([
    ["monohydrate", 1.16997, 1.2],
    ["heptahydrate", 2.18981, undefined],
    ["decahydrate", 2.69973, 2.7],
  ] as const)("%s: %d g for a gram of anhydrous", (to, ratio, printed) => {
    const found = sodaMass({ massG: 1, from: "anhydrous", to });
    expect(found).toBeCloseTo(ratio, 5);
    if (printed !== undefined) expect(Number(found.toFixed(1))).toBe(printed);
  });

  it("inverts, composes and keeps the carbonate", () => {
    const hydrate = fc.constantFrom<SodaHydrate>(...HYDRATES);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        hydrate,
        hydrate,
        hydrate,
        (massG, from, over, to) => {
          const there = sodaMass({
            massG: Math.min(1e5, sodaMass({ massG: massG / 3, from, to: over })),
            from: over,
            to,
          });
          expect(there).toBeCloseTo(sodaMass({ massG: massG / 3, from, to }), 6);
          expect(sodaMass({ massG, from, to: from })).toBeCloseTo(massG, 9);
        },
      ),
    );
  });

  it("a brew has the same pH with either hydrate", () => {
    const massG = sodaMass({ massG: 20, from: "anhydrous", to: "decahydrate" });
    const rest = part("ascorbic-acid", 5);
    expect(brewPh(brewOf(part("soda-decahydrate", massG), rest)).ph).toBeCloseTo(
      brewPh(brewOf(part("soda-anhydrous", 20), rest)).ph,
      9,
    );
  });

  it.each([
    [
      { massG: 1, from: "dry", to: "anhydrous" },
      RangeError,
      'sodaMass: from must be "anhydrous", "monohydrate", "heptahydrate" or "decahydrate", got "dry"',
    ],
    [{ massG: 1, from: "anhydrous" }, TypeError, "sodaMass: to is missing: text"],
    [
      { massG: -1, from: "anhydrous", to: "anhydrous" },
      RangeError,
      "sodaMass: massG must be from 0 to 100000 g, got -1",
    ],
    [[], TypeError, "sodaMass: input must be an object, got an array"],
  ])("refuses %j", (input, kind, message) => {
    expect(() => sodaMass(input as any)).toThrow(new kind(message));
  });
});

describe("baking", () => {
  it("yields 0.6308 g a gram and loses 36.92 % (molar masses, IUPAC CIAAW 2021)", () => {
    expect(bakeYield(1).carbonateG).toBeCloseTo(0.63083, 5);
    expect(bakeYield(1).lossG).toBeCloseTo(0.36917, 5);
  });

  it("keeps mass: what is lost is the water and carbon dioxide of the equation", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e5, noNaN: true }), (massG) => {
        const { carbonateG, lossG } = bakeYield(massG);
        expect(carbonateG + lossG).toBeCloseTo(massG, 9);
        // Half a mole of water, 18.015, and of carbon dioxide, 44.009, for a mole of bicarbonate.
        // Molar masses of three decimals: 4e-6 of the ratio.
        expect(Math.abs(lossG - (massG / 84.0058) * ((18.015 + 44.009) / 2))).toBeLessThanOrEqual(
          1e-5 * lossG + 1e-300,
        );
      }),
    );
  });

  it("progress inverts the yield, and a mixture weighs what was weighed", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 1000, noNaN: true }),
        (converted, beforeG) => {
          const afterG = beforeG - converted * bakeYield(beforeG).lossG;
          const found = bakeProgress({ beforeG, afterG }).converted;
          expect(found).toBeCloseTo(converted, 9);
          const [soda, bicarbonate] = bakedSoda({ massG: afterG, converted: found });
          expect(soda.massG).toBeCloseTo(converted * bakeYield(beforeG).carbonateG, 6);
          expect(bicarbonate.massG).toBeCloseTo((1 - converted) * beforeG, 6);
          expect([soda.ingredient, bicarbonate.ingredient]).toEqual(["soda-anhydrous", "baking-soda"]);
        },
      ),
    );
  });

  const codes = (beforeG: number, afterG: number): string[] =>
    bakeProgress({ beforeG, afterG }).cautions.map(({ code }) => code);
  it("says what is odd about the weights", () => {
    const odd = (afterG: number): unknown[] => {
      const { converted, cautions } = bakeProgress({ beforeG: 100, afterG });
      const [care, { code, severity, ...facts } = {} as Caution] = cautions;
      expect(care).toMatchObject({ code: "baking-care", severity: "warn" });
      return [converted, code, severity, facts.path, facts.quantity, facts.limit, facts.actual];
    };
    const complete = expect.closeTo(63.083, 3) as number;
    expect(odd(60)).toEqual([1, "more-than-complete", "warn", "/afterG", "massG", complete, 60]);
    expect(odd(101)).toEqual([0, "gained-weight", "warn", "/afterG", "massG", 100, 101]);
    expect(odd(80).slice(1)).toEqual(["not-complete", "note", "/afterG", "massG", complete, 80]);
  });

  // A loss of 36 to 37 % counts as complete in practice.
  it("takes 36.4 to 37.4 % lost as complete", () => {
    expect(codes(100, 63.6)).toEqual(["baking-care"]);
    expect(codes(100, 62.6)).toEqual(["baking-care"]);
    expect(codes(100, 63.7)).toEqual(["baking-care", "not-complete"]);
    expect(codes(100, 62.5)).toEqual(["baking-care", "more-than-complete"]);
    expect(codes(100, 100)).toEqual(["baking-care", "not-complete"]);
  });

  it("partly baked soda is less alkaline than soda and more than baking soda", () => {
    const at = (converted: number): number =>
      brewPh(brewOf(...bakedSoda({ massG: 20, converted }), part("ascorbic-acid", 4))).ph;
    const [raw, half, full] = [at(0), at(0.5), at(1)];
    expect(raw).toBeLessThan(half);
    expect(half).toBeLessThan(full);
    expect(full).toBe(brewPh(brewOf(part("soda-anhydrous", 20), part("ascorbic-acid", 4))).ph);
  });

  it.each([
    [() => bakeYield(-1), RangeError, "bakeYield: bicarbonateG must be from 0 to 100000 g, got -1"],
    [() => bakeYield("1" as any), TypeError, 'bakeYield: bicarbonateG must be a number, got "1"'],
    [
      () => bakeProgress({ beforeG: 0, afterG: 0 }),
      RangeError,
      "bakeProgress: beforeG must be above 0 and at most 100000 g, got 0",
    ],
    [
      () => bakeProgress({ beforeG: 1, afterG: -1 }),
      RangeError,
      "bakeProgress: afterG must be from 0 to 100000 g, got -1",
    ],
    [() => bakeProgress(7 as any), TypeError, "bakeProgress: input must be an object, got 7"],
    [
      () => bakedSoda({ massG: 1, converted: 1.1 }),
      RangeError,
      "bakedSoda: converted must be from 0 to 1, got 1.1",
    ],
    [
      () => bakedSoda({ massG: NaN, converted: 1 }),
      RangeError,
      "bakedSoda: massG must be from 0 to 100000 g, got NaN",
    ],
    [() => bakedSoda(null as any), TypeError, "bakedSoda: input must be an object, got null"],
  ])("refuses: $2", (call, kind, message) => {
    expect(call).toThrow(new kind(message));
  });
});

describe("warnings before the oven", () => {
  it("come with the yield and with the time, and the time says how thin the powder is", () => {
    expect(bakeYield(100).cautions).toEqual([
      expect.objectContaining({ code: "baking-care", severity: "warn" }),
    ]);
    const { cautions, depthMm } = bakeTime({ temperatureC: 200 });
    expect(cautions.map(({ code }) => code)).toEqual(["baking-care", "baking-depth"]);
    expect(cautions[1]).toMatchObject({ data: { depthMm } });
    expect(depthMm).toBe(1);
  });
});

describe("bakeTime", () => {
  // Rates and times to 99 % from the abstracts of Wu and Shih 1993 and Ball et al. 1986, reckoned apart, in
  // min.
  it("spans the published laws", () => {
    // 7.89 min by the one, 11.66 min by the other: nearer than a factor of two each way.
    expect(bakeTime({ temperatureC: 150 }).timeS / 60).toBeCloseTo(Math.sqrt(7.89 * 11.66), 2);
    expect(bakeTime({ temperatureC: 180 }).lowS / 60).toBeCloseTo(1.078, 3);
    expect(bakeTime({ temperatureC: 200 }).lowS / 60).toBeCloseTo(0.3289, 3);
    const { timeS, lowS, highS } = bakeTime({ temperatureC: 200 });
    expect([lowS, highS].map((s) => s / 60)).toEqual([expect.closeTo(0.3289, 3), expect.closeTo(4.458, 3)]);
    expect(timeS).toBeGreaterThan(lowS);
    expect(timeS).toBeLessThan(highS);
    const cool = bakeTime({ temperatureC: 100 });
    expect(cool.lowS / 60).toBeCloseTo(443.7, 1);
    // In nitrogen 698 min; slowest in carbon dioxide, as in a deep heap.
    expect(cool.highS / 60).toBeGreaterThan(698);
    expect(bakeTime({ temperatureC: 80 }).lowS / 60).toBeCloseTo(2245, 0);
    expect(bakeTime({ temperatureC: 100, converted: 0.5 }).highS).toBeCloseTo(
      (cool.highS * Math.log(2)) / Math.log(100),
      3,
    );
  });

  // The laws at 120 °C for 90 %, by hand.
  it("is the geometric mean of the laws that reach there", () => {
    const t = 120 + 273.15;
    const k = (a: number, e: number): number => a * Math.exp(-e / (8.314462618e-3 * t));
    const times = [
      Math.log(10) / k(6.7e12 / 60, 105.8),
      Math.log(10) / k(1e5, 64),
      Math.log(10) / k(10 ** 13.5, 130),
    ];
    const { timeS, lowS, highS } = bakeTime({ temperatureC: 120, converted: 0.9 });
    expect(timeS).toBeCloseTo(Math.cbrt(times.reduce((product, x) => product * x, 1)), 6);
    expect(lowS).toBeCloseTo(Math.min(...times), 6);
    expect(highS).toBeCloseTo(Math.max(...times), 6);
  });

  it("hands over at 142 °C, the middle of the gap between two of the laws", () => {
    const ratio = (temperatureC: number): number =>
      bakeTime({ temperatureC }).highS / bakeTime({ temperatureC }).lowS;
    // At 142 °C all four count; a little below, the three of low temperature; a little above, the two of
    // high.
    const [below, at, above] = [141.99, 142, 142.01].map((temperatureC) => bakeTime({ temperatureC }).timeS);
    expect(below! / at!).toBeGreaterThan(1.2);
    expect(at! / above!).toBeGreaterThan(1.2);
    expect(ratio(141.99)).toBeGreaterThan(5);
    // The two laws meet there by chance, to a tenth: a factor of two each way is left.
    expect(ratio(142.01)).toBeCloseTo(4, 9);
  });

  it("an hour at about 200 °C is complete (common practice): the slowest law needs 4.5 min once the powder is hot", () => {
    expect(bakeTime({ temperatureC: 200 }).highS).toBeLessThan(3600 / 12);
    expect(bakeTime({ temperatureC: 180 }).highS).toBeLessThan(3600 / 2);
  });

  it("falls with temperature and rises with what is wanted", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 80, max: 249, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (temperatureC, converted) => {
          const at = bakeTime({ temperatureC, converted });
          for (const key of ["timeS", "lowS", "highS"] as const) {
            expect(bakeTime({ temperatureC: temperatureC + 1, converted })[key]).toBeLessThan(at[key]);
            expect(bakeTime({ temperatureC, converted: converted + 0.005 })[key]).toBeGreaterThan(at[key]);
          }
        },
      ),
    );
  });

  it.each([
    [{ temperatureC: 79 }, RangeError, "bakeTime: temperatureC must be from 80 to 250 °C, got 79"],
    [
      { temperatureC: 200, converted: 1 },
      RangeError,
      "bakeTime: converted must be from 0.01 to 0.999, got 1",
    ],
    [{}, TypeError, "bakeTime: temperatureC is missing: a number"],
    [undefined, TypeError, "bakeTime: input is missing: an object"],
  ])("refuses %j", (input, kind, message) => {
    expect(() => bakeTime(input as any)).toThrow(new kind(message));
  });
});

describe("solubility", () => {
  // Two suppliers' lists; ours is 3.7 % above at 15 °C, 1.4 % at 20 °C and 3.2 % at 27.8 °C (theirs is per
  // 100 ml there).
  it.each(SODA_SOLUBILITY)("soda at %d °C is %d within 4 %%", (temperatureC, printed) => {
    expect(Math.abs(solubility("soda-anhydrous", temperatureC)! / printed - 1)).toBeLessThan(0.04);
  });

  it("baking soda as printed after Seidell, exactly at rows and straight between", () => {
    expect([0, 5, 10, 20, 25, 30, 40].map((c) => solubility("baking-soda", c))).toEqual([
      6.9, 7.41, 8.2, 9.6, 10.4, 11.1, 12.7,
    ]);
    expect(solubility("baking-soda", 50)).toBeCloseTo(14.55, 9);
    expect(solubility("baking-soda", 7.5)).toBeCloseTo(7.805, 9);
  });

  it("holds the nearest row beyond the table, and has no figure for coffee", () => {
    expect(solubility("ascorbic-acid", 0)).toBe(33);
    expect(solubility("ascorbic-acid", 50)).toBe(33);
    expect(solubility("sodium-sulphite", 50)).toBe(37.2);
    expect(solubility("instant-coffee", 20)).toBeUndefined();
    // CRC Handbook of Chemistry and Physics, from memory.
    expect(solubility("table-salt", 20)).toBe(35.9);
    expect(solubility("iodised-salt", 40)).toBeCloseTo(36.45, 9);
    expect(solubility("potassium-bromide", 20)).toBe(65);
    expect(solubility("potassium-bromide", 40)).toBe(75);
    // Hydrates are given as dry soda.
    expect(solubility("soda-decahydrate", 20)).toBe(21.8);
  });

  it.each([
    ["tea", 20, RangeError, /^solubility: ingredient must be "instant-coffee", /],
    ["borax", 51, RangeError, "solubility: temperatureC must be from 0 to 50 °C, got 51"],
    ["borax", undefined, TypeError, "solubility: temperatureC is missing: a number"],
  ])("refuses %s at %s", (ingredient, temperatureC, kind, message) => {
    expect(() => solubility(ingredient as any, temperatureC as any)).toThrow(kind);
    expect(() => solubility(ingredient as any, temperatureC as any)).toThrow(message);
  });
});

describe("soda baked to the end", () => {
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
});
