import { describe, expect, it } from "vitest";
import {
  brewCapacity,
  brewStrength,
  checkBrew,
  compensate,
  genericStrengthLaw,
  learn,
  predict,
  prepareCompensation,
  scaleBrew,
  startKnowledge,
  type DevelopmentRun,
  type DeveloperBrew,
  type LearnedKnowledge,
  type BrewPart,
  type BrewStrengthOptions,
  type WeighedPart,
} from "../../src/index.js";
import { fc, test } from "../property.js";
import { anyBrew, brewOf, hutBrew, part, sensibleBrew, solve } from "./brews.js";
import { anyOf, thrown } from "../helpers.js";

const soda = (massG: number): WeighedPart => part("soda-anhydrous", massG);
const coffee = part("instant-coffee", 40);
const acid = (massG: number): WeighedPart => part("ascorbic-acid", massG);
const recipe = brewOf(soda(54), acid(16), coffee);
const Z90 = 1.6448536269514722;
const positive = (max: number): fc.Arbitrary<number> => fc.double({ min: 0.01, max, noNaN: true });
const interval = (from: DeveloperBrew, to: DeveloperBrew): [number, number, number] => {
  const { value, logSd } = brewStrength(from, to);
  return [value, value * Math.exp(-Z90 * logSd), value * Math.exp(Z90 * logSd)];
};
const plus = (brew: DeveloperBrew, ...more: BrewPart[]): DeveloperBrew => ({
  ...brew,
  ingredients: [...brew.ingredients, ...more],
});

describe("a brew against itself", () => {
  test.prop([
    sensibleBrew,
    fc.double({ min: 1, max: 1e4, noNaN: true }),
    fc.double({ min: 0, max: 50, noNaN: true }),
  ])("is exactly 1 without spread, in any volume, order and temperature", (brew, volumeMl, temperatureC) => {
    const scaled = scaleBrew(brew, volumeMl);
    const turned = { ...scaled, temperatureC, ingredients: [...scaled.ingredients].reverse() };
    const found = brewStrength(brew, turned);
    expect(found).toMatchObject({ cause: "strength", value: 1, logSd: 0, basis: "unchanged", power: 1 });
    // No rule is strained; what stops the bath is said all the same.
    expect(found.cautions).toEqual(checkBrew(turned).filter(({ severity }) => severity === "stop"));
  });

  it("adds up what is listed twice, and knows a spooned brew again", () => {
    const split = brewOf(soda(14), acid(16), soda(40), coffee, part("borax", 0));
    expect(brewStrength(recipe, split)).toMatchObject({ value: 1, logSd: 0 });
    const spooned = brewOf({ ...soda(54), lowG: 40, highG: 70 }, coffee);
    expect(brewStrength(spooned, scaleBrew(spooned, 300))).toMatchObject({
      value: 1,
      logSd: 0,
      basis: "unchanged",
    });
    expect(brewStrength(brewOf(soda(54), coffee), spooned)).toMatchObject({ value: 1, basis: "default" });
    expect(brewStrength(brewOf(soda(54), coffee), spooned).logSd).toBeGreaterThan(0.02);
  });

  it("from another jar, or with another spoon, is 1 with a spread", () => {
    const spooned = brewOf({ ...soda(54), lowG: 40, highG: 70 }, coffee);
    const of = (brew: DeveloperBrew, options: BrewStrengthOptions): [number, number] => {
      const { value, logSd } = brewStrength(brew, brew, undefined, options);
      return [value, logSd];
    };
    expect(of(recipe, { sameJar: true, sameSpoon: true })).toEqual([1, 0]);
    // Chlorogenic acids of a jar are 0.099 to 0.302 around 0.169 mmol/g, two jars √2 of that, exponent 0.6.
    const [one, jar] = of(brewOf(soda(54), coffee), { sameJar: false });
    expect(one).toBe(1);
    // More coffee also takes more soda, so it is less than that of the agent alone.
    expect(jar).toBeGreaterThan((0.7 * 0.6 * Math.SQRT2 * Math.log(0.302 / 0.169)) / Z90);
    expect(of(recipe, { sameSpoon: false })).toEqual([1, 0]);
    expect(of(spooned, { sameSpoon: false })[1]).toBeGreaterThan(0.02);
    expect(of(spooned, { sameSpoon: false })[0]).toBe(1);
  });

  it("is not fooled by another ingredient of the same count, or by one more", () => {
    const other = brewOf(soda(54), acid(16), part("decaffeinated-coffee", 40));
    expect(brewStrength(recipe, other).basis).toBe("default");
    expect(brewStrength(recipe, other).value).toBeCloseTo(1, 9);
    const more = plus(recipe, part("table-salt", 15));
    expect(brewStrength(recipe, more).basis).toBe("default");
    expect(brewStrength(more, recipe).basis).toBe("default");
  });
});

/*
 * Nothing that could be read in print tests these. They follow from the two readings (catechol acts as mono- and
 * dianion, or as dianion only), exponent 0.6 ± 0.25, and the constants of the handbook. That an eighth of the soda or
 * borax instead makes a carbonate brew slow, and half the soda hardly matters, is common practice.
 */
describe("what alkali, agents and restrainer do", () => {
  const plain = brewOf(soda(54), coffee);
  it.each([
    ["half the soda", plain, brewOf(soda(27), coffee), 1.14, 0.89, 1.46],
    ["an eighth of the soda", plain, brewOf(soda(6.75), coffee), 2.27, 0.52, 9.96],
    ["borax instead", plain, brewOf(part("borax", 30), coffee), 3.2, 0.45, 23],
    ["caustic soda instead", plain, brewOf(part("sodium-hydroxide", 3.5), coffee), 0.91, 0.43, 1.91],
    ["half the soda, with vitamin C", recipe, brewOf(soda(27), acid(16), coffee), 1.59, 1.07, 2.35],
    ["vitamin C doubled", recipe, brewOf(soda(54), acid(32), coffee), 1.02, 0.76, 1.36],
    // One exponent acts on all amounts: 2^(0.6 ± 1.645 × 0.25) alone is 1.14 to 2.02.
    ["everything halved", recipe, { ...recipe, volumeMl: 2000 }, 1.54, 1.14, 2.07],
    [
      "bromide 1 to 10",
      plus(recipe, part("potassium-bromide", 1)),
      plus(recipe, part("potassium-bromide", 10)),
      2,
      1,
      4,
    ],
  ] as const)("%s: $3 times, from $4 to $5", (_, from, to, value, low, high) => {
    const found = interval(from, to);
    [value, low, high].forEach((wanted, i) => {
      expect(Math.abs(found[i]! / wanted - 1)).toBeLessThan(0.01);
    });
  });

  it("a brew of two agents is known no better under plain dilution than a brew of either", () => {
    const spread = (brew: DeveloperBrew): number =>
      brewStrength(brew, { ...brew, volumeMl: 2 * brew.volumeMl }).logSd;
    const both = spread(brewOf(soda(54), acid(16), coffee));
    expect(both).toBeGreaterThan(spread(brewOf(soda(54), acid(16))));
    expect(both).toBeGreaterThan(spread(brewOf(soda(54), coffee)));
    // 0.25 × ln 2 of the exponent alone.
    expect(both).toBeGreaterThan(0.25 * Math.LN2);
  });

  it("the rate rises by 0.2 to 0.55 decades per pH over soda, and is sure of neither end", () => {
    const from = brewOf(soda(54), coffee);
    for (const grams of [6, 12, 27]) {
      const { value, fromPh, toPh, logSd } = brewStrength(from, brewOf(soda(grams), coffee));
      const slope = Math.log10(value) / (fromPh - toPh);
      expect(slope).toBeGreaterThan(0.2);
      expect(slope).toBeLessThan(0.55);
      expect(logSd).toBeGreaterThan(0.3 * Math.log(value));
    }
  });

  it("says so when the pH moves by more than 0.3", () => {
    const codes = (grams: number): (string | undefined)[] =>
      brewStrength(plain, brewOf(soda(grams), coffee)).cautions.map(({ code }) => code);
    expect(codes(27)).not.toContain("alkali-changed");
    const weak = brewStrength(plain, brewOf(soda(13), coffee));
    const found = weak.cautions.find(({ code }) => code === "alkali-changed");
    expect(found).toMatchObject({
      severity: "warn",
      quantity: "ph",
      limit: 0.3,
      actual: weak.fromPh - weak.toPh,
      data: { fromPh: weak.fromPh, toPh: weak.toPh },
    });
  });

  it("warns of more than 5 g/l of bromide, or as much in salt", () => {
    const code = (...more: BrewPart[]): boolean =>
      brewStrength(recipe, plus(recipe, ...more)).cautions.some((one) => one.code === "restrainer-strong");
    expect(code(part("potassium-bromide", 5))).toBe(false);
    expect(code(part("potassium-bromide", 5.1))).toBe(true);
    expect(code(part("table-salt", 100))).toBe(false);
    expect(code(part("table-salt", 60), part("iodised-salt", 60))).toBe(true);
  });

  it("carries the life of today's brew: compensate holds it against the pour-out", () => {
    expect(brewStrength(recipe, plain).lifeH).toBeCloseTo(1.46, 2);
    expect(brewStrength(plain, recipe).lifeH).toBeCloseTo(3, 9);
    const known = { timeS: 1800, temperatureC: 20 };
    const said = (ageH: number) =>
      compensate(known, { strength: brewStrength(plain, plain), ageH }).cautions.find(
        ({ code }) => code === "bath-past-life",
      );
    expect(said(0.5)).toBeUndefined();
    expect(said(1)).toMatchObject({ severity: "stop", data: { at: "pour-out" } });
  });

  it("carries the capacity of today's brew: compensate warns past it", () => {
    const strength = brewStrength(recipe, plain);
    expect(strength.capacityCm2PerL).toBe(brewCapacity(plain).cm2PerL);
    const known = { timeS: 600, temperatureC: 20 };
    const said = (usedCm2PerL: number, today = strength) =>
      compensate(known, { strength: today, usedCm2PerL }).cautions.find(
        ({ code }) => code === "bath-past-capacity",
      );
    expect(said(1.05 * strength.capacityCm2PerL)).toBeUndefined();
    expect(said(1.06 * strength.capacityCm2PerL)).toMatchObject({
      severity: "warn",
      path: "/conditions/usedCm2PerL",
      limit: strength.capacityCm2PerL,
    });
    expect(said(1.06 * strength.capacityCm2PerL, brewStrength(recipe, recipe))).toBeUndefined();
    expect(() => said(1, { ...strength, capacityCm2PerL: 0 })).toThrow(
      expect.objectContaining({ path: "/conditions/strength/capacityCm2PerL" }),
    );
    // A law that was taught ages the bath: then the answers are told apart by the brew's capacity alone.
    const age = { kind: "speeding", perDay: 0.1, runs: 3 } as const;
    const prepared = prepareCompensation(known, { age });
    const codes = (today: typeof strength): string[] =>
      prepared
        .compensate({ strength: today, usedCm2PerL: 1.06 * strength.capacityCm2PerL })
        .cautions.map(({ code }) => code);
    expect(codes(strength)).toContain("bath-past-capacity");
    expect(codes(brewStrength(recipe, recipe))).not.toContain("bath-past-capacity");
  });

  it("takes the equilibrium at the mean of both temperatures, so that warmth counts once", () => {
    const weak = brewOf(soda(30), acid(10), coffee);
    const { fromPh, toPh } = brewStrength({ ...recipe, temperatureC: 14 }, { ...weak, temperatureC: 24 });
    expect(fromPh).toBeCloseTo(solve({ ...recipe, temperatureC: 19 }).ph, 9);
    expect(toPh).toBeCloseTo(solve({ ...weak, temperatureC: 19 }).ph, 9);
  });
});

describe("laws of the factor", () => {
  test.prop([sensibleBrew, sensibleBrew])(
    "turns round when the brews change places, also at two temperatures",
    (a, b) => {
      const [there, back] = [brewStrength(a, b), brewStrength(b, a)];
      expect(Math.abs(there.value * back.value - 1)).toBeLessThan(4e-15);
      expect(there.logSd).toBeCloseTo(back.logSd, 12);
      expect(Math.abs(there.power * back.power - 1)).toBeLessThan(4e-15);
    },
  );

  test.prop([
    sensibleBrew,
    fc.constantFrom("soda-anhydrous", "sodium-hydroxide", "trisodium-phosphate", "potassium-carbonate"),
    positive(60),
  ])("more soda, caustic or phosphate is never slower by more than 1 %", (brew, alkali, massG) => {
    // A bath that boric acid buffers aside, more of a strong alkali never takes pH away.
    expect(brewStrength(brew, plus(brew, part(alkali, massG))).value).toBeLessThan(1.01);
  });

  test.prop([sensibleBrew, fc.constantFrom("potassium-bromide", "table-salt", "iodised-salt"), positive(60)])(
    "more restrainer is never faster",
    (brew, restrainer, massG) => {
      expect(brewStrength(brew, plus(brew, part(restrainer, massG))).value).toBeGreaterThanOrEqual(1);
    },
  );

  test.prop([anyBrew, anyBrew])("never loses its spread while an ingredient differs", (a, b) => {
    if (
      ![a, b].every(({ ingredients }) =>
        ingredients.some(({ ingredient }) => /coffee|ascorb/.test(ingredient)),
      )
    )
      return;
    const perL = (brew: DeveloperBrew): string =>
      JSON.stringify([...brew.ingredients].map((p) => [p.ingredient, (p as WeighedPart).massG]).sort());
    if (perL(a) === perL(b)) return;
    const { logSd, value } = brewStrength(a, b);
    expect(logSd).toBeGreaterThan(0);
    expect(logSd).toBeLessThan(Infinity);
    expect(value).toBeGreaterThan(0);
  });

  it.each([
    "potassium-bromide",
    "table-salt",
    "baking-soda",
    "borax",
    "sodium-sulphite",
    "citric-acid",
  ] as const)("goes to 0 with a trace of %s, in proportion", (ingredient) => {
    const at = (massG: number): number => brewStrength(recipe, plus(recipe, part(ingredient, massG))).logSd;
    expect(at(1e-3)).toBeGreaterThan(0);
    expect(at(1e-3) / at(1e-4)).toBeCloseTo(10, 1);
  });

  test.prop([sensibleBrew, fc.nat(2), fc.double({ min: 0.2, max: 3, noNaN: true })])(
    "does not jump: slightly more of anything changes the answer slightly",
    (brew, which, times) => {
      const scaled = (by: number): DeveloperBrew => ({
        ...brew,
        ingredients: (brew.ingredients as WeighedPart[]).map((p, i) =>
          i === which ? { ...p, massG: p.massG * by } : p,
        ),
      });
      const [one, other] = [
        brewStrength(brew, scaled(times)),
        brewStrength(brew, scaled(times * (1 + 1e-9))),
      ];
      // Where acid and alkali are equal, pH is steep: ln(time) then moves by ten times what the mass moves.
      expect(Math.abs(Math.log(one.value / other.value))).toBeLessThan(1e-6);
      expect(Math.abs(one.logSd - other.logSd)).toBeLessThan(1e-6);
    },
  );

  it("four spoons against 4.01 differ by the hundredth of a spoon, not by what a spoon may hold", () => {
    const spoons = (count: number): DeveloperBrew =>
      brewOf(
        { ...part("soda-anhydrous", 11.25 * count), lowG: 7.5 * count, highG: 16.5 * count },
        coffee,
        acid(16),
      );
    const { logSd } = brewStrength(spoons(4), spoons(4.01));
    expect(logSd).toBeGreaterThan(0);
    expect(logSd).toBeLessThan(1e-3);
    const [a, b] = [4, 4.01].map((count) => brewStrength(spoons(4.5), spoons(count)));
    expect(Math.abs(a!.logSd - b!.logSd)).toBeLessThan(1e-3);
  });

  test.prop([sensibleBrew, sensibleBrew, fc.double({ min: 10, max: 1e4, noNaN: true })])(
    "does not heed the volume",
    (a, b, volumeMl) => {
      const [one, two] = [brewStrength(a, b), brewStrength(a, scaleBrew(b, volumeMl))];
      expect(two.value).toBeCloseTo(one.value, 9);
      expect(two.logSd).toBeCloseTo(one.logSd, 9);
    },
  );

  test.prop([anyBrew])("stays finite whatever is mixed, or says that nothing develops", (brew) => {
    if (!brew.ingredients.some(({ ingredient }) => /coffee|ascorb/.test(ingredient))) {
      expect(() => brewStrength(recipe, brew)).toThrow(expect.objectContaining({ path: "/to" }));
      expect(() => brewStrength(brew, recipe)).toThrow(expect.objectContaining({ path: "/from" }));
      return;
    }
    const { value, logSd, power } = brewStrength(recipe, brew);
    for (const x of [value, power]) expect(x > 0 && x < Infinity).toBe(true);
    expect(logSd >= 0 && logSd < Infinity).toBe(true);
  });
});

/*
 * The pair does more than its sum (common practice, from memory), and vitamin C without coffee is slow and unsure. By
 * the sum alone the alkali that coffee's acid leaves would make it the quicker.
 */
describe("an agent that one brew has and the other has not", () => {
  const hut = (coffeeG: number, acidG = 8, sodaG = 27): DeveloperBrew => ({
    volumeMl: 500,
    temperatureC: 14,
    ingredients: [soda(sodaG), part("instant-coffee", coffeeG), acid(acidG)],
  });
  const without = (brew: DeveloperBrew, name: RegExp): DeveloperBrew => ({
    ...brew,
    ingredients: brew.ingredients.filter(({ ingredient }) => !name.test(ingredient)),
  });
  const codes = (from: DeveloperBrew, to: DeveloperBrew): string[] =>
    brewStrength(from, to).cautions.map(({ code }) => code);

  it("coffee dropped from the hut's brew: a third of the power, 0.5 in ln less sure, and told", () => {
    const { value, logSd, power, toPh, fromPh } = brewStrength(hut(20), hut(0));
    expect(toPh).toBeGreaterThan(fromPh);
    expect(power).toBeCloseTo(Math.exp(-1), 12);
    expect(value).toBeCloseTo(Math.exp(0.6), 12);
    // 0.5 beside the 0.213 of exponent, readings and coffee.
    expect(logSd).toBeCloseTo(Math.hypot(0.5, 0.213), 3);
    expect(codes(hut(20), hut(0))).toEqual(["vitamin-c-without-coffee", "strength-far"]);
    expect(codes(hut(0), hut(20))).toEqual(["vitamin-c-without-coffee", "strength-far"]);
    expect(codes(hut(20), hut(2))).toEqual([]);
    expect(codes(hut(0), hut(0, 12))).toEqual([]);
  });

  it("vitamin C dropped: as slow as its strength says, 0.3 in ln less sure, and told", () => {
    const { value, logSd } = brewStrength(hut(20), hut(20, 0));
    expect(value).toBeGreaterThan(1.5);
    expect(logSd).toBeGreaterThan(0.3);
    expect(codes(hut(20), hut(20, 0))).toContain("coffee-without-vitamin-c");
    expect(codes(hut(20, 0), hut(20))).toContain("coffee-without-vitamin-c");
    // A vitamin C that took all the alkali is no gain either when it is dropped.
    expect(brewStrength(hut(20, 15, 10), hut(20, 0, 10)).value).toBeGreaterThanOrEqual(1);
  });

  test.prop([sensibleBrew, fc.constantFrom(/coffee/, /ascorbic/)])(
    "is never missed to advantage, and inverts",
    (brew, name) => {
      const less = without(brew, name);
      const [there, back] = [brewStrength(brew, less), brewStrength(less, brew)];
      expect(there.value).toBeGreaterThanOrEqual(1);
      expect(Math.abs(there.value * back.value - 1)).toBeLessThan(4e-15);
      expect(there.logSd).toBeCloseTo(back.logSd, 12);
      expect(there.power).toBeLessThanOrEqual(1);
    },
  );

  it("does not jump: the last gram of coffee goes in small steps, and a trace is next to none", () => {
    const at = (coffeeG: number): readonly [number, number] => {
      const { value, logSd } = brewStrength(hut(20), hut(coffeeG));
      return [Math.log(value), logSd];
    };
    let before = at(0);
    for (const grams of [1e-6, 1e-3, 0.01, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]) {
      const now = at(grams);
      // Two thirds of the power go with the last gram: 0.6 in ln(time) over 0.8 g.
      expect(Math.abs(now[0] - before[0])).toBeLessThan(0.08);
      expect(Math.abs(now[1] - before[1])).toBeLessThan(0.025);
      before = now;
    }
    const trace = brewStrength(hut(1e-6), hut(0));
    expect(trace.value).toBeCloseTo(1, 6);
    expect(trace.logSd).toBeLessThan(0.01);
    expect(brewStrength(hut(1), hut(0)).logSd).toBeLessThan(0.2);
  });

  it("is counted in full from a fifth of the full recipe's share", () => {
    const spread = (coffeeG: number): number => brewStrength(hut(coffeeG), hut(0)).logSd;
    for (const grams of [4, 10, 40]) expect(spread(grams)).toBeGreaterThan(0.5);
    expect(spread(2)).toBeLessThan(0.5);
  });
});

describe("the spread", () => {
  // 4 g/l of caustic soda leave vitamin C about where 54 g/l of soda do. One ingredient at a time, each change would be
  // worth a factor of 9 either way.
  it("counts an exchange once: caustic soda for soda at nearly the same pH is nearly the same brew", () => {
    const { value, logSd, fromPh, toPh } = brewStrength(
      brewOf(soda(54), acid(16)),
      brewOf(part("sodium-hydroxide", 4), acid(16)),
    );
    expect(Math.abs(toPh - fromPh)).toBeLessThan(0.25);
    expect(Math.abs(Math.log(value))).toBeLessThan(0.25);
    expect(logSd).toBeLessThan(0.15);
  });

  it("holds a factor of two between the agents, and coffee's own range", () => {
    const ascorbateOnly = brewOf(soda(54), acid(16));
    const { logSd } = brewStrength(ascorbateOnly, brewOf(soda(54), coffee), { exponent: 1 });
    expect(logSd).toBeGreaterThan(Math.hypot(Math.LN2, (0.7 * Math.log(0.302 / 0.169)) / Z90));
  });

  // The handbook's strong brew holds 1 to 4 % of solids around 2.
  it("counts how much of a brewed coffee is coffee", () => {
    const of = (cup: WeighedPart): DeveloperBrew => brewOf(soda(54), cup);
    const known = of(part("instant-coffee", 15));
    const at = (solids: number): number =>
      brewStrength(known, of(part("instant-coffee", (750 * solids) / 0.97))).value;
    const { logSd } = brewStrength(known, of(part("brewed-coffee", 750)));
    for (const solids of [0.01, 0.04])
      expect(Math.abs(Math.log(at(solids) / at(0.02))) / Z90).toBeLessThan(logSd);
  });

  it("holds the farther end of a spoon's range", () => {
    const weighed = brewOf(soda(54), acid(16));
    const ranged = (lowG: number, highG: number): DeveloperBrew =>
      brewOf(soda(54), { ...acid(16), lowG, highG });
    const end = (massG: number): number =>
      Math.abs(Math.log(brewStrength(weighed, brewOf(soda(54), acid(massG))).value));
    expect(brewStrength(weighed, ranged(8, 17)).logSd).toBeCloseTo(end(8) / Z90, 9);
    expect(brewStrength(ranged(15, 32), weighed).logSd).toBeCloseTo(Math.max(end(32), end(15)) / Z90, 9);
  });

  it("adds two ranges as squares", () => {
    const square = (...parts: BrewPart[]): number =>
      brewStrength(brewOf(soda(54), coffee), brewOf(part("baking-soda", 20), ...parts)).logSd ** 2;
    const ranged = (p: WeighedPart): WeighedPart => ({ ...p, lowG: 0.7 * p.massG, highG: 1.4 * p.massG });
    const [s, c] = [soda(5), part("instant-coffee", 60)];
    const none = square(s, c);
    expect(square(ranged(s), c)).toBeGreaterThan(1.01 * none);
    expect(square(ranged(s), ranged(c)) / (square(ranged(s), c) + square(s, ranged(c)) - none)).toBeCloseTo(
      1,
      6,
    );
  });

  test.prop([
    sensibleBrew,
    fc.nat(2),
    fc.double({ min: 0, max: 0.5, noNaN: true }),
    fc.double({ min: 0, max: 0.5, noNaN: true }),
    fc.boolean(),
  ])("never narrows with a wider range of spoons", (brew, which, less, more, sameSpoon) => {
    const ranged = (by: number): DeveloperBrew => ({
      ...brew,
      ingredients: (brew.ingredients as WeighedPart[]).map((p, i) =>
        i === which ? { ...p, lowG: p.massG * (1 - by), highG: p.massG * (1 + by) } : p,
      ),
    });
    const spread = (by: number): number => brewStrength(hutBrew, ranged(by), undefined, { sameSpoon }).logSd;
    expect(spread(Math.max(less, more))).toBeGreaterThanOrEqual(spread(Math.min(less, more)) - 1e-9);
  });
});

describe("far from the known brew", () => {
  const thin: DeveloperBrew = { ...recipe, volumeMl: 2000 };
  it("warns beyond 1.5 and stops beyond 4, on both sides", () => {
    const far = (exponent: number, turned = false): readonly unknown[] =>
      (turned ? brewStrength(thin, recipe, { exponent }) : brewStrength(recipe, thin, { exponent })).cautions;
    expect(far(0.5)).toEqual([]);
    for (const turned of [false, true])
      expect(far(1, turned)).toEqual([
        expect.objectContaining({
          code: "strength-far",
          severity: "warn",
          quantity: "ratio",
          limit: 1.5,
          actual: expect.closeTo(2, 0),
        }),
      ]);
    expect(far(3)).toEqual([expect.objectContaining({ severity: "stop", limit: 4 })]);
  });

  it("is stopped here as by checkBrew, and by compensate with it", () => {
    const bicarbonate = brewOf(part("baking-soda", 54), coffee, acid(16));
    const strength = brewStrength(recipe, bicarbonate);
    expect(strength.cautions.map(({ code }) => code)).toContain("alkali-too-weak");
    const { cautions } = compensate({ timeS: 900, temperatureC: 20 }, { strength });
    expect(cautions).toContainEqual(
      expect.objectContaining({ code: "alkali-too-weak", severity: "stop", path: "/conditions/strength" }),
    );
  });
});

describe("a law of one's own", () => {
  const weak: DeveloperBrew = { ...recipe, volumeMl: 1500 };
  it("gives its basis and sources", () => {
    expect(brewStrength(recipe, weak, { exponent: 1, sd: 0.1 })).toMatchObject({
      basis: "given",
      sources: [],
    });
    expect(brewStrength(recipe, weak, { exponent: 1, sources: ["own strips"], runs: 3 })).toMatchObject({
      basis: "own-runs",
      sources: ["own strips"],
    });
    expect(brewStrength(recipe, weak, { exponent: 0 }).value).toBe(1);
    expect(genericStrengthLaw.sources?.join("")).toMatch(/ascorbate/);
    // A law without a spread is not exact: it has that of a dilution law without one.
    const sd = (law: { exponent: number; sd?: number }): number => brewStrength(recipe, weak, law).logSd;
    expect(sd({ exponent: 0.6 })).toBeCloseTo(sd({ exponent: 0.6, sd: 0.15 }), 12);
    expect(sd({ exponent: 0.6, sd: 0 })).toBeLessThan(sd({ exponent: 0.6 }));
  });

  it("follows from one strip: docs/brew.md", () => {
    const { power } = brewStrength(recipe, weak);
    const exponent = -Math.log(1.4) / Math.log(power);
    expect(brewStrength(recipe, weak, { exponent }).value).toBeCloseTo(1.4, 9);
  });

  it("feeds compensate as a term", () => {
    const strength = brewStrength(recipe, weak);
    const { timeS, factors } = compensate({ timeS: 600, temperatureC: 20 }, { strength });
    expect(timeS).toBeCloseTo(600 * strength.value, 6);
    expect(factors.find(({ cause }) => cause === "strength")).toMatchObject({
      value: strength.value,
      logSd: strength.logSd,
      basis: "default",
    });
  });

  it.each([
    [() => brewStrength(recipe, weak, { exponent: 4 }), RangeError, "/law/exponent"],
    [() => brewStrength(recipe, weak, { exponent: 1, sd: -1 }), RangeError, "/law/sd"],
    [() => brewStrength(recipe, weak, null as any), TypeError, "/law"],
    [() => brewStrength({ ...weak, volumeMl: 0 }, recipe), RangeError, "/from/volumeMl"],
    [() => brewStrength(recipe, { ...weak, volumeMl: 0 }), RangeError, "/to/volumeMl"],
    [() => brewStrength(recipe, weak, undefined, { sameJar: 1 as any }), TypeError, "/options/sameJar"],
    [
      () => brewStrength(recipe, weak, undefined, { sameSpoon: "no" as any }),
      TypeError,
      "/options/sameSpoon",
    ],
    [() => brewStrength(recipe, weak, undefined, 3 as any), TypeError, "/options"],
  ])("refuses what is wrong at $2", (call, kind, path) => {
    expect(call).toThrow(kind);
    expect(call).toThrow(expect.objectContaining({ path }));
  });
  it("has a list of sources, or is refused", () => {
    const brew = {
      volumeMl: 500,
      temperatureC: 20,
      ingredients: [{ ingredient: "instant-coffee", massG: 20 }],
    } as const;
    expect(thrown(() => brewStrength(brew, brew, anyOf({ exponent: 1, sources: NaN })))).toBe(
      "TypeError: brewStrength: law.sources must be an array, got NaN",
    );
  });
});

describe("two brews that nearly agree", () => {
  it("tells two brews apart by a two-thousandth of a trace", () => {
    const brew = (bromideG: number): DeveloperBrew =>
      brewOf(part("soda-anhydrous", 54), part("instant-coffee", 40), part("potassium-bromide", bromideG));
    expect(brewStrength(brew(0.001), brew(0.001)).basis).toBe("unchanged");
    expect(brewStrength(brew(0.0010005), brew(0.001)).basis).toBe("default");
  });
});

describe("what the strips with one brew say of another", () => {
  const known: DeveloperBrew = brewOf(soda(54), coffee, acid(16));
  const times = (factor: number): DeveloperBrew => ({ ...known, volumeMl: 1000 / factor });
  const start = startKnowledge({ timeS: 900, temperatureC: 20, logSd: 0.03 });
  const strip = (timeS: number, more: object): DevelopmentRun => ({
    timeS,
    temperatureC: 20,
    outcome: { kind: "good", logSd: 0.05 },
    ...more,
  });
  const half = brewStrength(known, times(0.5));
  const twice = brewStrength(known, times(2));
  // Invented: a brew of half the strength takes longer than the law says, as if its exponent were 0.96.
  const learned = learn(start, [
    ...[1, 2, 3, 4].map((i) => strip(900, { id: `known ${i}` })),
    ...[1, 2, 3, 4].map((i) => strip(900 * half.value ** 1.6, { id: `half ${i}`, strength: half })),
  ]);

  it("has a slope of the sign of its change, which changes with the sides", () => {
    expect(half.slope).toBeGreaterThan(0);
    expect(twice.slope).toBeLessThan(0);
    expect(brewStrength(times(0.5), known).slope).toBeCloseTo(-half.slope, 12);
    expect(Math.abs(half.slope)).toBeLessThanOrEqual(half.logSd);
    // One exponent for all agents: 0.25 × ln(power), and the change of pH is hardly any.
    expect(half.slope).toBeCloseTo(-0.25 * Math.log(0.5), 2);
  });

  it("a weak law makes the weaker brew slower and the stronger one faster", () => {
    const right = 900 * twice.value ** 1.6;
    const before = predict(start, { strength: twice });
    const after = predict(learned, { strength: twice });
    expect(after.timeS).toBeLessThan(before.timeS);
    expect(after.lowS).toBeLessThan(right);
    expect(after.highS).toBeGreaterThan(right);
  });

  it("tell nothing of bromide, which none of them tried", () => {
    const salted = brewStrength(known, {
      ...known,
      ingredients: [...known.ingredients, part("potassium-bromide", 4)],
    });
    const spread = (of: LearnedKnowledge): number => {
      const { lowS, highS } = predict(of, { strength: salted });
      return Math.log(highS / lowS);
    };
    expect(spread(learned) / spread(start)).toBeGreaterThan(0.9);
  });
});
