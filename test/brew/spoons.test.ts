import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  handbookIngredients,
  checkBrew,
  massOf,
  mixingSteps,
  proposeBrew,
  spoonSizesMl,
  spoonsFor,
  type Ingredient,
  roundSpoons,
} from "../../src/index.js";
import { ATOMIC_WEIGHTS, FORMULAS, PRINTED_MOLAR_MASSES, SPOONS } from "../reference/brew.js";
import { dataOf, quoted } from "../helpers.js";

describe("the handbook of ingredients", () => {
  const summed = (formula: string): number =>
    formula.split(" ").reduce((sum, token) => {
      const [, element, count] = /^([A-Z][a-z]?)(\d*)$/.exec(token) as RegExpExecArray;
      return sum + ATOMIC_WEIGHTS[element as string]! * Number(count || 1);
    }, 0);

  it.each(FORMULAS)("molar mass of %s is that of %s by IUPAC CIAAW", (ingredient, formula) => {
    expect(Math.abs(handbookIngredients[ingredient].molarMassGPerMol! - summed(formula))).toBeLessThan(
      0.0002,
    );
  });

  it.each(PRINTED_MOLAR_MASSES)("molar mass of %s is printed as %d", (ingredient, printed, within) => {
    expect(Math.abs(handbookIngredients[ingredient].molarMassGPerMol! - printed)).toBeLessThan(within);
  });

  it("every entry has a name, a source, a loose density or a label, and moles or coffee solids", () => {
    const formulas = FORMULAS.map(([ingredient]) => ingredient as string);
    for (const [ingredient, data] of Object.entries(handbookIngredients)) {
      expect(data.name, ingredient).toMatch(/^[a-zA-Z ,()]+$/);
      expect(data.sources.length, ingredient).toBeGreaterThan(0);
      expect(
        data.sources.every((source) => source.length > 4),
        ingredient,
      ).toBe(true);
      expect(data.bulkGPerMl === undefined, ingredient).toBe(ingredient === "ascorbic-acid-tablet");
      expect((data.solids === undefined) === (data.moles !== undefined), ingredient).toBe(true);
      expect(data.moles !== undefined, ingredient).toBe(formulas.includes(ingredient));
      for (const { low, value, high } of [
        data.bulkGPerMl,
        data.solids,
        ...Object.values(data.grades ?? {}),
      ].filter((r) => r !== undefined)) {
        expect(low, ingredient).toBeLessThanOrEqual(value);
        expect(value, ingredient).toBeLessThanOrEqual(high);
      }
      const rows = data.solubility ?? [];
      rows.slice(1).forEach(([c], i) => {
        expect(c, ingredient).toBeGreaterThan(rows[i]![0]);
      });
    }
  });

  it("says of each ingredient what it does", () => {
    const by = (role: string): string[] =>
      Object.entries(handbookIngredients)
        .filter(([, data]) => data.role === role)
        .map(([name]) => name);
    expect(by("agent")).toEqual([
      "instant-coffee",
      "decaffeinated-coffee",
      "brewed-coffee",
      "ascorbic-acid",
      "ascorbic-acid-tablet",
      "sodium-ascorbate",
    ]);
    expect(by("restrainer")).toEqual(["potassium-bromide", "table-salt", "iodised-salt"]);
    expect(by("preservative")).toEqual(["sodium-sulphite"]);
    expect(by("alkali")).toHaveLength(9);
    expect(by("acid")).toEqual(["citric-acid"]);
  });

  it("survives JSON", () => {
    expect(JSON.parse(JSON.stringify(handbookIngredients))).toEqual(handbookIngredients);
  });
});

describe("less than a spoon measures", () => {
  const small = (massG: number) => spoonsFor({ ingredient: "soda-anhydrous", massG });
  const codes = (massG: number) => small(massG).cautions.map(({ code }) => code);
  it("has a caution, and no word on what the range of the spoon costs", () => {
    const { low } = small(0.01).massG;
    expect(small(0.01).cautions.slice(1)).toEqual([
      expect.objectContaining({
        code: "spoon-too-large",
        severity: "warn",
        path: "/massG",
        quantity: "massG",
        limit: low,
        actual: 0.01,
        data: { ingredient: "soda-anhydrous", spoons: 0.25 },
      }),
    ]);
    expect(codes(low)).toEqual(["hazard", "spoon-range"]);
    expect(codes(0.99 * low)).toEqual(["hazard", "spoon-too-large"]);
  });
  it("is named in a proposal, and of salt measured as a solution", () => {
    const shelf = ["instant-coffee", "soda-anhydrous", "ascorbic-acid", "table-salt"] as const;
    const found = proposeBrew({ shelf, volumeMl: 30 });
    if (found.brew === undefined) throw new Error(found.reason);
    const parts = found.brew.ingredients.map(({ ingredient }) => ingredient);
    const named = found.cautions.filter(({ code }) => code === "spoon-too-large");
    expect(named.map((one) => [one.path, dataOf(one)?.["ingredient"]])).toEqual([
      [`/ingredients/${parts.indexOf("ascorbic-acid")}`, "ascorbic-acid"],
    ]);
    const salt = found.spoons.find(({ ingredient }) => ingredient === "table-salt")!;
    // 10 g/l are wanted; 3 ml of a solution of 10 % hold them, in the list and in the steps.
    expect(salt).toEqual({ ingredient: "table-salt", massG: 0.3, solutionMl: 3, solutionPercent: 10 });
    expect(found.steps.find((step) => step.do === "add-solution")).toMatchObject({
      ingredient: "table-salt",
      solutionMl: 3,
    });
    const more = proposeBrew({ shelf, volumeMl: 500 });
    expect(more.cautions.map(({ code }) => code)).not.toContain("spoon-too-large");
  });
});

describe("massOf", () => {
  it.each(SPOONS)(
    "%s, %s spoon of %d ml: printed %d g is in the range (%s)",
    (ingredient, heap, spoonMl, printed) => {
      const { low, high } = massOf({ ingredient, spoons: 1, spoonMl, heap });
      expect(low).toBeLessThanOrEqual(printed);
      expect(high).toBeGreaterThanOrEqual(printed);
    },
  );

  // kuhniperm.ru: 3 g heaped over 2 g level, 9 over 6; ntro.it.com: 2.5 to 4 over 2; USDA: 1.8 rounded over 1.0.
  it.each([
    ["heaped", 3 / 2],
    ["heaped", 9 / 6],
    ["heaped", 2.5 / 2],
    ["heaped", 4 / 2],
    ["rounded", 1.8],
  ] as const)("a %s spoon of %d level ones is in the range", (heap, printed) => {
    const [level, filled] = (["level", heap] as const).map((one) =>
      massOf({ ingredient: "brewed-coffee", spoons: 1, heap: one }),
    );
    expect(filled!.low / level!.low).toBeLessThanOrEqual(printed);
    expect(filled!.high / level!.high).toBeGreaterThanOrEqual(printed);
  });

  it("coffee by the spoon is uncertain by more than two to one, as the printed 1.0 and 2.0 g a level teaspoon are", () => {
    const { low, high } = massOf({ ingredient: "instant-coffee", spoons: 5 });
    expect(high / low).toBeCloseTo(0.42 / 0.18, 9);
  });

  it("gives grams, range and what the range costs", () => {
    const found = massOf({ ingredient: "instant-coffee", spoons: 2, spoonMl: 15, heap: "heaped" });
    expect(found.value).toBeCloseTo(2 * 15 * 0.27 * 1.6, 9);
    expect(found.low).toBeCloseTo(2 * 15 * 0.18 * 1.25, 9);
    expect(found.high).toBeCloseTo(2 * 15 * 0.42 * 2, 9);
    // Exponent 0.6 over a range of 3.73 to one read as 90 %.
    expect(found.timeLogSd).toBeCloseTo((0.6 * Math.log((0.42 * 2) / (0.18 * 1.25))) / (2 * 1.6448536), 6);
    expect(found.cautions).toEqual([
      expect.objectContaining({
        code: "spoon-range",
        severity: "note",
        path: "/spoons",
        quantity: "ratio",
        actual: expect.closeTo(Math.exp(1.6448536 * found.timeLogSd), 6),
        data: { ingredient: "instant-coffee" },
      }),
    ]);
  });

  it("level metric teaspoons are the default; a known grade narrows", () => {
    const plain = massOf({ ingredient: "soda-anhydrous", spoons: 3 });
    expect(plain).toEqual(massOf({ ingredient: "soda-anhydrous", spoons: 3, spoonMl: 5, heap: "level" }));
    for (const grade of ["light", "dense", "baked"]) {
      const graded = massOf({ ingredient: "soda-anhydrous", spoons: 3, grade });
      expect(graded.low).toBeGreaterThanOrEqual(plain.low);
      expect(graded.high).toBeLessThanOrEqual(plain.high);
      expect(graded.timeLogSd).toBeLessThan(plain.timeLogSd);
    }
    expect(massOf({ ingredient: "soda-anhydrous", spoons: 1, grade: "dense" }).value).toBeCloseTo(5.1, 9);
  });

  it("rounded lies between level and heaped", () => {
    const at = (heap: "level" | "rounded" | "heaped"): number =>
      massOf({ ingredient: "borax", spoons: 1, heap }).value;
    expect(at("rounded") / at("level")).toBeCloseTo(1.4, 9);
    expect(at("heaped") / at("level")).toBeCloseTo(1.6, 9);
  });

  it("US spoons are exact fractions of a gallon of 231 cubic inches", () => {
    expect(spoonSizesMl["US teaspoon"]).toBeCloseTo((231 * 2.54 ** 3) / 768, 10);
    expect(spoonSizesMl["US tablespoon"]).toBeCloseTo((231 * 2.54 ** 3) / 256, 10);
    expect(spoonSizesMl).toMatchObject({ "teaspoon": 5, "tablespoon": 15, "Australian tablespoon": 20 });
  });

  it("tablets count by their label, with nothing to weigh", () => {
    expect(massOf({ ingredient: "ascorbic-acid-tablet", tablets: 12, labelMg: 500 })).toEqual({
      value: 6,
      low: 6,
      high: 6,
      timeLogSd: 0,
      cautions: [],
    });
  });

  it("a liquid has no range worth a word; hazards are named", () => {
    expect(massOf({ ingredient: "brewed-coffee", spoons: 10, spoonMl: 15 }).cautions).toEqual([]);
    expect(massOf({ ingredient: "sodium-hydroxide", spoons: 1 }).cautions[0]).toMatchObject({
      code: "hazard",
      severity: "warn",
      data: { ingredient: "sodium-hydroxide", hazard: "burns" },
    });
  });

  it("grows with spoons in proportion and keeps low ≤ value ≤ high", () => {
    const names = Object.keys(handbookIngredients).filter(
      (name) => name !== "ascorbic-acid-tablet",
    ) as Exclude<Ingredient, "ascorbic-acid-tablet">[];
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.double({ min: 0.01, max: 500, noNaN: true }),
        fc.constantFrom("level" as const, "rounded" as const, "heaped" as const),
        (ingredient, spoons, heap) => {
          const [one, two] = [
            massOf({ ingredient, spoons, heap }),
            massOf({ ingredient, spoons: 2 * spoons, heap }),
          ];
          expect(two.value).toBeCloseTo(2 * one.value, 9);
          expect(one.low).toBeLessThanOrEqual(one.value);
          expect(one.high).toBeGreaterThanOrEqual(one.value);
          expect(two.timeLogSd).toBe(one.timeLogSd);
        },
      ),
    );
  });

  const known = quoted(Object.keys(handbookIngredients));
  it.each([
    [{ ingredient: "coffee", spoons: 1 }, RangeError, `massOf: ingredient must be ${known}, got "coffee"`],
    [
      { ingredient: "toString", spoons: 1 },
      RangeError,
      `massOf: ingredient must be ${known}, got "toString"`,
    ],
    [{ spoons: 1 }, TypeError, "massOf: ingredient is missing: text"],
    [
      { ingredient: "effervescent-tablet", spoons: 1 },
      RangeError,
      'massOf: ingredient must be fit for a bath: their citric acid uses up the soda, got "effervescent-tablet"',
    ],
    [
      { ingredient: "baking-powder", spoons: 1 },
      RangeError,
      'massOf: ingredient must be fit for a bath: it holds acid salts and starch, got "baking-powder"',
    ],
    [
      { ingredient: "ascorbic-acid-tablet", spoons: 3 },
      RangeError,
      "massOf: tablet.labelMg must be given: mg of vitamin C by the label, since a tablet weighs more",
    ],
    [
      { ingredient: "ascorbic-acid-tablet", tablets: 3, labelMg: 0 },
      RangeError,
      "massOf: tablet.labelMg must be above 0 and at most 5000 mg, got 0",
    ],
    [
      { ingredient: "ascorbic-acid-tablet", tablets: -1, labelMg: 500 },
      RangeError,
      "massOf: tablet.tablets must be from 0 to 10000, got -1",
    ],
    [{ ingredient: "borax" }, TypeError, "massOf: spoons is missing: a number"],
    [
      { ingredient: "borax", spoons: 0 },
      RangeError,
      "massOf: spoons must be above 0 and at most 1000, got 0",
    ],
    [
      { ingredient: "borax", spoons: 1, spoonMl: 101 },
      RangeError,
      "massOf: spoonMl must be above 0 and at most 100 ml, got 101",
    ],
    [
      { ingredient: "borax", spoons: 1, heap: "full" },
      RangeError,
      'massOf: heap must be "level", "rounded" or "heaped", got "full"',
    ],
    [
      { ingredient: "soda-anhydrous", spoons: 1, grade: "fine" },
      RangeError,
      'massOf: grade must be "light", "dense" or "baked", got "fine"',
    ],
    [
      { ingredient: "borax", spoons: 1, grade: "powder" },
      RangeError,
      'massOf: grade must be left out, since no grades are known of this ingredient, got "powder"',
    ],
    [{ ingredient: "soda-anhydrous", spoons: 1, grade: 3 }, TypeError, "massOf: grade must be text, got 3"],
    [null, TypeError, "massOf: input must be an object, got null"],
  ])("refuses %j", (input, kind, message) => {
    expect(() => massOf(input as any)).toThrow(new kind(message));
  });
});

// Caustic soda is weighed: common practice.
describe("caustic soda by the spoon", () => {
  const message: unknown = expect.stringMatching(/: weigh it/);
  const warning = (path: string): unknown =>
    expect.objectContaining({ code: "never-by-spoon", severity: "warn", path, message });
  it("has a warning from massOf, and nothing else has", () => {
    const of = (ingredient: "sodium-hydroxide" | "trisodium-phosphate") =>
      massOf({ ingredient, spoons: 1 }).cautions;
    expect(of("sodium-hydroxide")).toContainEqual(warning("/spoons"));
    expect(of("trisodium-phosphate").map(({ code }) => code)).not.toContain("never-by-spoon");
  });
  it("has one from checkBrew and at the bench, where the spoons are given", () => {
    const borax = { ingredient: "borax", massG: 10, spoons: 2 } as const;
    const caustic = { ingredient: "sodium-hydroxide", massG: 2 } as const;
    const weighed = { volumeMl: 500, ingredients: [borax, caustic] };
    const spooned = { volumeMl: 500, ingredients: [borax, { ...caustic, spoons: 0.5 }] };
    expect(checkBrew(spooned)).toContainEqual(warning("/ingredients/1/spoons"));
    expect(checkBrew(weighed).map(({ code }) => code)).not.toContain("never-by-spoon");
    expect(mixingSteps(spooned)[0]!.text).toMatch(/Never measure sodium hydroxide .* by the spoon/);
  });
});

describe("spoonsFor", () => {
  it("rounds to what a spoon can measure and says what that costs", () => {
    // 25 g of baking soda at 4.65 g a spoon are 5.376 spoons.
    const quarter = spoonsFor({ ingredient: "baking-soda", massG: 25 });
    expect(quarter.spoons).toBe(5.5);
    expect(quarter.massG.value).toBeCloseTo(25.575, 9);
    expect(quarter.massG.low).toBeCloseTo(20.625, 9);
    expect(quarter.massG.high).toBeCloseTo(31.625, 9);
    expect(quarter.roundingError).toBeCloseTo(0.023, 9);
    expect(spoonsFor({ ingredient: "baking-soda", massG: 25, stepSpoons: 1 }).spoons).toBe(5);
    expect(
      spoonsFor({ ingredient: "baking-soda", massG: 25, stepSpoons: 1, spoonMl: 15, heap: "heaped" }).spoons,
    ).toBe(1);
    expect(spoonsFor({ ingredient: "soda-anhydrous", massG: 10.2, grade: "dense" }).spoons).toBe(2);
  });

  it("warns before the spoon goes in", () => {
    const codes = (ingredient: "borax" | "brewed-coffee" | "instant-coffee"): string[] =>
      spoonsFor({ ingredient, massG: 20 }).cautions.map(({ code, severity }) => `${severity} ${code}`);
    expect(codes("borax")).toEqual(["warn hazard", "note spoon-range"]);
    expect(codes("instant-coffee")).toEqual(["note spoon-range"]);
    expect(codes("brewed-coffee")).toEqual([]);
  });

  it("tells caustic soda in no spoons", () => {
    expect(() => spoonsFor({ ingredient: "sodium-hydroxide" as any, massG: 5 })).toThrow(
      expect.objectContaining({ path: "/ingredient", expected: { must: "not-caustic" } }),
    );
  });

  // Half a gram no kitchen scale tells (assumed: it is off by half a gram).
  it("measures a little bromide and salt as the solution that the steps make", () => {
    const tooLarge = (ingredient: "potassium-bromide" | "table-salt" | "borax", massG: number) =>
      spoonsFor({ ingredient, massG }).cautions.find(({ code }) => code === "spoon-too-large")!;
    const bromide = tooLarge("potassium-bromide", 0.5);
    const solution = { percent: 10, weighedG: 5, waterMl: 50, ml: 5 };
    expect(bromide.data).toEqual({ ingredient: "potassium-bromide", spoons: 0.25, solution });
    expect(bromide.message).toMatch(/Make a solution of 10 %: 5 g in 50 ml of water\. 5 ml of it hold/);
    expect(bromide.message).not.toMatch(/Weigh it/);
    const ingredients = [{ ingredient: "potassium-bromide", massG: 0.5 } as const];
    const alkali = { ingredient: "soda-anhydrous", massG: 27 } as const;
    const steps = mixingSteps({ volumeMl: 500, ingredients: [...ingredients, alkali] });
    expect(steps.find((step) => step.do === "make-solution")).toMatchObject({ massG: 5, waterMl: 50 });
    expect(steps.find((step) => step.do === "add-solution")).toMatchObject({ solutionMl: 5 });
    expect(tooLarge("table-salt", 0.3).data).toMatchObject({ solution: { weighedG: 5, ml: 3 } });
    const borax = tooLarge("borax", 0.1);
    expect(borax.data).not.toHaveProperty("solution");
    expect(borax.message).toMatch(/Weigh it, or mix more bath\.$/);
  });

  it("takes at least one step", () => {
    expect(spoonsFor({ ingredient: "potassium-bromide", massG: 0.01 }).spoons).toBe(0.25);
    // Decimal steps stay decimals: not 0.30000000000000004.
    const spoonG = massOf({ ingredient: "table-salt", spoons: 1 }).value;
    for (const tenths of [3, 6, 7, 12])
      expect(
        spoonsFor({ ingredient: "table-salt", massG: (tenths / 10) * spoonG, stepSpoons: 0.1 }).spoons,
      ).toBe(tenths / 10);
  });

  it("errs by at most half a step, and massOf gives the same grams back", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 1000, noNaN: true }),
        fc.constantFrom(0.25, 0.5, 1),
        (massG, stepSpoons) => {
          const {
            spoons,
            massG: held,
            roundingError,
          } = spoonsFor({ ingredient: "table-salt", massG, stepSpoons });
          const one = massOf({ ingredient: "table-salt", spoons: 1 }).value;
          if (spoons > stepSpoons)
            expect(Math.abs(held.value - massG)).toBeLessThanOrEqual((one * stepSpoons) / 2 + 1e-9);
          expect(massOf({ ingredient: "table-salt", spoons }).value).toBeCloseTo(held.value, 9);
          expect((1 + roundingError) * massG).toBeCloseTo(held.value, 9);
        },
      ),
    );
  });

  it.each([
    [
      { ingredient: "ascorbic-acid-tablet", massG: 5 },
      RangeError,
      "spoonsFor: ingredient must be what is weighed: tablets are counted by their label",
    ],
    [{ ingredient: "tea", massG: 5 }, RangeError, /^spoonsFor: ingredient must be "instant-coffee", /],
    [
      { ingredient: "borax", massG: 0 },
      RangeError,
      "spoonsFor: massG must be above 0 and at most 100000 g, got 0",
    ],
    [
      { ingredient: "borax", massG: 5, stepSpoons: 2 },
      RangeError,
      "spoonsFor: stepSpoons must be above 0 and at most 1, got 2",
    ],
    [
      { ingredient: "borax", massG: 5, spoonMl: "5" },
      TypeError,
      'spoonsFor: spoonMl must be a number, got "5"',
    ],
    [
      { ingredient: "borax", massG: 5, heap: "flat" },
      RangeError,
      'spoonsFor: heap must be "level", "rounded" or "heaped", got "flat"',
    ],
    [{ ingredient: "borax", massG: 5, grade: "fine" }, RangeError, /^spoonsFor: grade must be /],
    [undefined, TypeError, "spoonsFor: input is missing: an object"],
  ])("refuses %j", (input, kind, message) => {
    expect(() => spoonsFor(input as any)).toThrow(kind);
    expect(() => spoonsFor(input as any)).toThrow(message);
  });
});

describe("roundSpoons", () => {
  it.each([
    [7.3, 7.25],
    [9.8, 9.75],
    [9.9, 10],
    [10.6, 11],
    [29.75, 30],
    [0.1, 0.1],
    [0.2, 0.25],
    [0, 0],
  ])("says %d as %d", (spoons, said) => {
    expect(roundSpoons(spoons)).toBe(said);
  });

  it("refuses what is no number of spoons", () => {
    expect(() => roundSpoons(-1)).toThrow(expect.objectContaining({ path: "/spoons" }));
    expect(() => roundSpoons("3" as any)).toThrow(TypeError);
  });
});
