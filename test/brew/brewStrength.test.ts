import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  brewStrength,
  checkBrew,
  compensate,
  genericStrengthLaw,
  scaleBrew,
  type Brew,
  type WeighedPart,
} from "../../src/index.js";
import { anyBrew, brewOf, hutBrew, part, sensibleBrew, solve } from "./brews.js";

const recipe = brewOf(part("soda-anhydrous", 54), part("ascorbic-acid", 16), part("instant-coffee", 40));
const Z90 = 1.6448536269514722;

/** Ionised agents, by the definition in the docs. */
function power(brew: Brew): number {
  const { species } = solve(brew);
  const [, , phenolate = 0, doubly = 0] = species.chlorogenate ?? [];
  return (species.ascorbate?.[2] ?? 0) + 0.8 * (phenolate + doubly);
}

describe("a brew against itself", () => {
  it("is exactly 1 without spread, in any volume, order, temperature and split", () => {
    fc.assert(
      fc.property(
        sensibleBrew,
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (brew, volumeMl, temperatureC) => {
          const turned = {
            ...scaleBrew(brew, volumeMl),
            temperatureC,
            ingredients: [...scaleBrew(brew, volumeMl).ingredients].reverse(),
          };
          expect(brewStrength(turned, brew)).toMatchObject({
            cause: "strength",
            value: 1,
            logSd: 0,
            basis: "unchanged",
            power: 1,
          });
          // No rule is strained; what stops the bath is said all the same.
          expect(brewStrength(turned, brew).cautions).toEqual(
            checkBrew(turned).filter(({ severity }) => severity === "stop"),
          );
        },
      ),
    );
  });

  it("adds up what is listed twice, and knows a spooned brew again", () => {
    const split = brewOf(
      part("soda-anhydrous", 14),
      part("ascorbic-acid", 16),
      part("soda-anhydrous", 40),
      part("instant-coffee", 40),
      part("borax", 0),
    );
    expect(brewStrength(split, recipe)).toMatchObject({ value: 1, logSd: 0 });
    const spooned = brewOf(
      { ...part("soda-anhydrous", 54), lowG: 40, highG: 70 },
      part("instant-coffee", 40),
    );
    expect(brewStrength(scaleBrew(spooned, 300), spooned)).toMatchObject({
      value: 1,
      logSd: 0,
      basis: "unchanged",
    });
    expect(brewStrength(spooned, brewOf(part("soda-anhydrous", 54), part("instant-coffee", 40))).basis).toBe(
      "default",
    );
  });

  it("is not fooled by another ingredient of the same count, or by one more", () => {
    const other = brewOf(
      part("soda-anhydrous", 54),
      part("ascorbic-acid", 16),
      part("decaffeinated-coffee", 40),
    );
    expect(brewStrength(other, recipe)).toMatchObject({ value: 1, basis: "default" });
    const more = brewOf(...(recipe.ingredients as WeighedPart[]), part("table-salt", 15));
    expect(brewStrength(more, recipe).basis).toBe("default");
    expect(brewStrength(recipe, more).basis).toBe("default");
  });
});

describe("a brew against another", () => {
  it("is the ratio of powers to the exponent, at the reference's temperature", () => {
    const weak = {
      ...brewOf(part("soda-anhydrous", 30), part("ascorbic-acid", 10), part("instant-coffee", 40)),
      temperatureC: 24,
    };
    const known = { ...recipe, temperatureC: 14 };
    const ratio = power({ ...weak, temperatureC: 14 }) / power(known);
    const found = brewStrength(weak, known);
    expect(found.value).toBeCloseTo(ratio ** -0.6, 9);
    expect(found.power).toBeCloseTo(ratio, 9);
    expect(found.ph).toBeCloseTo(solve({ ...weak, temperatureC: 14 }).ph, 9);
    expect(found.referencePh).toBeCloseTo(solve(known).ph, 9);
    expect(found).toMatchObject({ cause: "strength", basis: "default", sources: genericStrengthLaw.sources });
    expect(genericStrengthLaw.sources).toEqual([expect.stringContaining("ascorbate")]);
  });

  it("inverts and composes", () => {
    fc.assert(
      fc.property(sensibleBrew, sensibleBrew, sensibleBrew, (a, b, c) => {
        const at20 = [a, b, c].map((brew) => ({ ...brew, temperatureC: 20 })) as [Brew, Brew, Brew];
        const [ab, ba, bc, ac] = [
          [0, 1],
          [1, 0],
          [1, 2],
          [0, 2],
        ].map(([i, j]) => brewStrength(at20[i!]!, at20[j!]!));
        expect(ab!.value * ba!.value).toBeCloseTo(1, 9);
        expect((ab!.value * bc!.value) / ac!.value).toBeCloseTo(1, 9);
        expect(ab!.logSd).toBeCloseTo(ba!.logSd, 9);
      }),
    );
  });

  it("more of any agent or of soda never takes longer", () => {
    fc.assert(
      fc.property(sensibleBrew, fc.double({ min: 1.05, max: 1.5, noNaN: true }), (brew, more) => {
        const raised = (which: number): Brew => ({
          ...brew,
          ingredients: (brew.ingredients as WeighedPart[]).map((p, i) =>
            i === which ? { ...p, massG: p.massG * more } : p,
          ),
        });
        expect(brewStrength(raised(0), brew).value).toBeLessThan(1);
      }),
    );
    const add = (ingredient: "ascorbic-acid" | "sodium-ascorbate" | "instant-coffee"): number =>
      brewStrength(brewOf(...(recipe.ingredients as WeighedPart[]), part(ingredient, 4)), recipe).value;
    expect(add("sodium-ascorbate")).toBeLessThan(1);
    expect(add("instant-coffee")).toBeLessThan(1);
  });

  it("stays finite whatever is mixed, or says that nothing develops", () => {
    fc.assert(
      fc.property(anyBrew, (brew) => {
        const agent = brew.ingredients.some(({ ingredient }) => /coffee|ascorb/.test(ingredient));
        if (!agent) {
          expect(() => brewStrength(brew, recipe)).toThrow(
            new RangeError("brewStrength: brew must hold a developing agent: coffee or vitamin C"),
          );
          expect(() => brewStrength(recipe, brew)).toThrow(
            new RangeError("brewStrength: reference must hold a developing agent: coffee or vitamin C"),
          );
          return;
        }
        const { value, logSd, power: relative } = brewStrength(brew, recipe);
        for (const x of [value, relative]) expect(x > 0 && x < Infinity).toBe(true);
        expect(logSd >= 0 && logSd < Infinity).toBe(true);
      }),
    );
  });

  // 1 g of bromide a litre changes no printed time (common practice): the value stays, the spread grows.
  it("a restrainer changes the spread alone", () => {
    const held = brewOf(...(recipe.ingredients as WeighedPart[]), part("potassium-bromide", 1));
    const { value, logSd } = brewStrength(held, recipe);
    expect(value).toBeCloseTo(1, 2);
    expect(logSd).toBeCloseTo(0.1, 3);
    const salted = brewOf(...(recipe.ingredients as WeighedPart[]), part("table-salt", 15));
    expect(brewStrength(salted, held).logSd).toBeLessThan(0.02);
  });
});

describe("the spread", () => {
  it("is the exponent's times ln(power), for weighed brews of vitamin C alone", () => {
    const [one, two] = [
      brewOf(part("soda-anhydrous", 50), part("ascorbic-acid", 10)),
      brewOf(part("soda-anhydrous", 30), part("ascorbic-acid", 10)),
    ];
    const found = brewStrength(two, one);
    expect(found.logSd).toBeCloseTo(0.25 * Math.abs(Math.log(power(two) / power(one))), 9);
    expect(brewStrength(two, one, { exponent: 0.6, sd: 0 }).logSd).toBe(0);
    // A law without a spread is not exact: it has that of a dilution law without one.
    expect(brewStrength(two, one, { exponent: 0.6 }).logSd).toBeCloseTo(
      0.15 * Math.abs(Math.log(power(two) / power(one))),
      9,
    );
  });

  it("holds a factor of two between the agents, and coffee's own range", () => {
    const ascorbateOnly = brewOf(part("soda-anhydrous", 54), part("ascorbic-acid", 16));
    const share = (brew: Brew): number => (solve(brew).species.ascorbate?.[2] ?? 0) / power(brew);
    const swap = brewStrength(recipe, ascorbateOnly, { exponent: 1 });
    expect(swap.logSd).toBeGreaterThan(Math.LN2 * (1 - share(recipe)));
    // Coffee's range in chlorogenic acids is 0.099 to 0.302 around 0.169: at most ln(1.79) / 1.645 more.
    expect(swap.logSd).toBeLessThan(
      Math.hypot(Math.LN2 * (1 - share(recipe)), Math.log(0.302 / 0.169) / Z90),
    );
  });

  // One jar against another: each has its own chlorogenic acids, 0.099 to 0.302 around 0.169.
  it("knows that two kinds of coffee are not one jar", () => {
    const of = (coffee: WeighedPart): Brew => brewOf(part("soda-anhydrous", 54), coffee);
    const regular = of(part("instant-coffee", 40));
    const decaffeinated = brewStrength(of(part("decaffeinated-coffee", 40)), regular, { exponent: 1 });
    expect(decaffeinated.value).toBe(1);
    // Alike in both jars: √2 times one jar's range. More coffee also takes more soda, so it is less than that
    // of the agent alone.
    const one = Math.log(0.302 / 0.169) / Z90;
    expect(decaffeinated.logSd).toBeGreaterThan(0.7 * Math.SQRT2 * one);
    expect(decaffeinated.logSd).toBeLessThan(Math.SQRT2 * Math.hypot(one, 0.03));
    expect(brewStrength(of(part("instant-coffee", 44)), regular, { exponent: 1 }).logSd).toBeLessThan(0.02);
  });

  it("does not know one jar's agent either, where vitamin C is on the other side", () => {
    const coffee = brewOf(part("soda-anhydrous", 54), part("instant-coffee", 40));
    const { logSd } = brewStrength(coffee, brewOf(part("soda-anhydrous", 54), part("ascorbic-acid", 16)), {
      exponent: 1,
      sd: 0,
    });
    const one = Math.log(0.302 / 0.169) / Z90;
    expect(logSd).toBeGreaterThan(Math.hypot(Math.LN2, 0.7 * one));
    expect(logSd).toBeLessThan(Math.hypot(Math.LN2, one, 0.03));
  });

  // The handbook's strong brew holds 1 to 4 % of solids around 2: what either end would do to the time lies
  // inside.
  it("counts how much of a brewed coffee is coffee", () => {
    const of = (coffee: WeighedPart): Brew => brewOf(part("soda-anhydrous", 54), coffee);
    const instant = of(part("instant-coffee", 15));
    const at = (solids: number): number =>
      Math.abs(
        Math.log(
          power(of(part("instant-coffee", (750 * solids) / 0.97))) /
            power(of(part("instant-coffee", (750 * 0.02) / 0.97))),
        ),
      );
    const { logSd } = brewStrength(of(part("brewed-coffee", 750)), instant, { exponent: 1 });
    expect(logSd).toBeGreaterThan(Math.max(at(0.01), at(0.04)) / Z90);
    // The ranges of solids and of acids, and those of the two coffees, add as squares.
    expect(logSd).toBeLessThan(
      Math.hypot(Math.max(at(0.01), at(0.04)), Math.SQRT2 * Math.log(0.302 / 0.169), 0.1) / Z90,
    );
  });

  it("holds the farther end of a spoon's range", () => {
    const weighed = brewOf(part("soda-anhydrous", 54), part("ascorbic-acid", 16));
    const ranged = (lowG: number, highG: number): Brew =>
      brewOf(part("soda-anhydrous", 54), { ...part("ascorbic-acid", 16), lowG, highG });
    const end = (massG: number): number =>
      Math.abs(
        Math.log(power(brewOf(part("soda-anhydrous", 54), part("ascorbic-acid", massG))) / power(weighed)),
      );
    expect(brewStrength(ranged(8, 17), weighed).logSd).toBeCloseTo((0.6 * end(8)) / Z90, 9);
    expect(brewStrength(weighed, ranged(15, 32)).logSd).toBeCloseTo((0.6 * end(32)) / Z90, 9);
  });

  it("a wider range of spoons never narrows it", () => {
    fc.assert(
      fc.property(
        sensibleBrew,
        fc.nat(2),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (brew, which, less, more) => {
          const ranged = (by: number): Brew => ({
            ...brew,
            ingredients: (brew.ingredients as WeighedPart[]).map((p, i) =>
              i === which ? { ...p, lowG: p.massG * (1 - by), highG: p.massG * (1 + by) } : p,
            ),
          });
          const spread = (by: number): number =>
            brewStrength(ranged(by), { ...hutBrew, temperatureC: 20 }).logSd;
          expect(spread(Math.max(less, more))).toBeGreaterThanOrEqual(spread(Math.min(less, more)) - 1e-9);
        },
      ),
    );
  });
});

describe("far from the reference", () => {
  const far = (exponent: number): readonly unknown[] =>
    brewStrength(scaleBrewTwice, recipe, { exponent }).cautions;
  const scaleBrewTwice: Brew = { ...recipe, volumeMl: 2000 };

  it("warns beyond 1.5 and stops beyond 4, on both sides", () => {
    expect(far(0.5)).toEqual([]);
    expect(far(1)).toEqual([
      {
        code: "strength-far",
        severity: "warn",
        message: "The brews differ too much for a rule: run a test strip.",
        limit: 1.5,
        actual: expect.closeTo(2, 1),
      },
    ]);
    expect(far(3)).toEqual([expect.objectContaining({ severity: "stop", limit: 4 })]);
    expect(brewStrength(recipe, scaleBrewTwice, { exponent: 1 }).cautions).toEqual([
      expect.objectContaining({ severity: "warn", actual: expect.closeTo(2, 1) }),
    ]);
  });
});

describe("a brew that cannot develop", () => {
  it("is stopped here as by checkBrew, and by compensate with it", () => {
    const bicarbonate = brewOf(
      part("baking-soda", 54),
      part("instant-coffee", 40),
      part("ascorbic-acid", 16),
    );
    const strength = brewStrength(bicarbonate, recipe);
    expect(strength.cautions.map(({ code }) => code)).toContain("alkali-too-weak");
    const { cautions } = compensate({ timeS: 900, temperatureC: 20 }, { strength });
    expect(cautions).toContainEqual(
      expect.objectContaining({ code: "alkali-too-weak", severity: "stop", path: "/conditions/strength" }),
    );
  });
});

describe("a law of one's own", () => {
  const weak: Brew = { ...recipe, volumeMl: 1500 };
  it("gives its basis and sources", () => {
    expect(brewStrength(weak, recipe, { exponent: 1, sd: 0.1 })).toMatchObject({
      basis: "given",
      sources: [],
    });
    expect(brewStrength(weak, recipe, { exponent: 1, sources: ["own strips"], runs: 3 })).toMatchObject({
      basis: "own-runs",
      sources: ["own strips"],
    });
    expect(brewStrength(weak, recipe, { exponent: 0 }).value).toBe(1);
  });

  it("the exponent follows from one strip: docs/brew.md", () => {
    const { power: relative } = brewStrength(weak, recipe);
    const exponent = -Math.log(1.4) / Math.log(relative);
    expect(brewStrength(weak, recipe, { exponent }).value).toBeCloseTo(1.4, 9);
  });

  it("feeds compensate as a term", () => {
    const strength = brewStrength(weak, recipe);
    const { timeS, factors } = compensate({ timeS: 600, temperatureC: 20 }, { strength });
    expect(timeS).toBeCloseTo(600 * strength.value, 6);
    expect(factors.find(({ cause }) => cause === "strength")).toMatchObject({
      value: strength.value,
      logSd: strength.logSd,
      basis: "default",
    });
  });

  it.each([
    [
      () => brewStrength(weak, recipe, { exponent: 4 }),
      RangeError,
      "brewStrength: law.exponent must be from 0 to 3, got 4",
    ],
    [
      () => brewStrength(weak, recipe, { exponent: 1, sd: -1 }),
      RangeError,
      "brewStrength: law.sd must be from 0 to 3, got -1",
    ],
    [
      () => brewStrength(weak, recipe, null as any),
      TypeError,
      "brewStrength: law must be an object, got null",
    ],
    [
      () => brewStrength({ ...weak, volumeMl: 0 }, recipe),
      RangeError,
      "brewStrength: brew.volumeMl must be above 0 and at most 100000 ml, got 0",
    ],
    [
      () => brewStrength(weak, { ...recipe, volumeMl: 0 }),
      RangeError,
      "brewStrength: reference.volumeMl must be above 0 and at most 100000 ml, got 0",
    ],
  ])("refuses (%#)", (call, kind, message) => {
    expect(call).toThrow(new kind(message));
  });
});
