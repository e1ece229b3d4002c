import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  brewPh,
  brewStrength,
  checkBrew,
  handbookIngredients,
  mixingSteps,
  scaleBrew,
  type Brew,
} from "../../src/index.js";
import { anyBrew, brewOf, hutBrew, part } from "./brews.js";

const every: Brew = {
  volumeMl: 1000,
  temperatureC: 14.25,
  ingredients: [
    part("table-salt", 12),
    part("ascorbic-acid", 16),
    part("instant-coffee", 40),
    part("sodium-hydroxide", 2),
    part("sodium-sulphite", 5),
    part("soda-anhydrous", 54.04),
    part("brewed-coffee", 100),
  ],
};

describe("mixingSteps", () => {
  it("dissolves apart, joins soda and coffee, vitamin C after, and makes up to volume", () => {
    expect(mixingSteps(hutBrew)).toEqual([
      { step: 1, text: "Gloves and glasses; ware that never goes back to food; no dust." },
      {
        step: 2,
        text: "Dissolve 22 g washing soda, anhydrous in 140 ml of warm water: powder into water, slowly.",
        waterMl: 140,
      },
      {
        step: 3,
        text: "Dissolve 16 g instant coffee in 88 ml of warm water. Join coffee and soda.",
        waterMl: 88,
      },
      {
        step: 4,
        text: "Dissolve 6 g ascorbic acid (vitamin C) in 60 ml of water; strain. Add it last, slowly: it foams.",
        waterMl: 60,
      },
      { step: 5, text: "Make up to 400 ml with water and bring it to 14 °C." },
      {
        step: 6,
        text: "Let it stand 5 to 10 min, until the bubbles are gone; use it within the hour, once.",
      },
      { step: 7, text: "Label it; keep it from children; dispose of it as the local code says." },
    ]);
  });

  it("has a cup for each kind; caustic soda by itself with its hazard; liquid coffee takes the place of water", () => {
    expect(mixingSteps(every).slice(1, 7)).toEqual([
      {
        step: 2,
        text: "Dissolve 5 g sodium sulphite, anhydrous and 54 g washing soda, anhydrous in 315 ml of warm water: powder into water, slowly.",
        waterMl: 315,
      },
      {
        step: 3,
        text: "Danger: it burns eyes and skin; goggles, gloves, into cold water, never water onto it. Dissolve 2 g sodium hydroxide (caustic soda) in 135 ml of cold water, little by little; it gets hot: let it cool, then add it to the soda.",
        waterMl: 135,
      },
      {
        step: 4,
        text: "Dissolve 40 g instant coffee and 100 g strong brewed coffee in 198 ml of warm water. Join coffee and soda.",
        waterMl: 198,
      },
      { step: 5, text: "Dissolve 12 g table salt in 72 ml of water and add it.", waterMl: 72 },
      {
        step: 6,
        text: "Dissolve 16 g ascorbic acid (vitamin C) in 135 ml of water; strain. Add it last, slowly: it foams.",
        waterMl: 135,
      },
      { step: 7, text: "Make up to 1000 ml with water and bring it to 14.3 °C." },
    ]);
    expect(mixingSteps(brewOf(part("brewed-coffee", 300)))[1]).toEqual({
      step: 2,
      text: "Take 300 g strong brewed coffee.",
      waterMl: 0,
    });
    const texts = (...parts: Brew["ingredients"]): string =>
      mixingSteps(brewOf(...parts))
        .map(({ text }) => text)
        .join(" ");
    expect(texts(part("brewed-coffee", 300), part("soda-anhydrous", 20))).toContain(
      "Take 300 g strong brewed coffee. Join coffee and soda.",
    );
    // Nothing foams without acid and carbonate, and nothing is joined that is not there.
    expect(texts(part("sodium-ascorbate", 10), part("soda-anhydrous", 20))).toMatch(
      /strain\. Add it last, slowly\. /,
    );
    expect(texts(part("ascorbic-acid", 10), part("borax", 10))).toMatch(/Add it last, slowly\. /);
    expect(texts(part("ascorbic-acid", 10), part("baking-soda", 10))).toContain(
      "Add it last, slowly: it foams.",
    );
    expect(texts(part("instant-coffee", 20), part("sodium-sulphite", 10))).not.toMatch(/Join/);
    expect(texts(part("sodium-hydroxide", 2), part("instant-coffee", 20))).toMatch(
      /little by little; it gets hot: let it cool\. .*Join coffee and soda\./,
    );
    expect(texts(part("sodium-hydroxide", 2), part("sodium-sulphite", 5))).not.toMatch(/add it to the soda/);
    const tablets = brewOf(
      { ingredient: "ascorbic-acid-tablet", tablets: 8, labelMg: 500 },
      part("soda-anhydrous", 20),
    );
    expect(mixingSteps(tablets)[2]?.text).toBe(
      "Dissolve 4 g plain vitamin C tablets in 150 ml of water; strain. Add it last, slowly: it foams.",
    );
  });

  // Sodium chloride: 35.9 g in 100 g of water (CRC Handbook, from memory).
  it("gives as much salt as checkBrew asks for a cup that dissolves it", () => {
    const [, , , { text, waterMl = 0 } = { text: "" }] = mixingSteps(
      brewOf(part("soda-anhydrous", 54), part("instant-coffee", 40), part("table-salt", 20)),
    );
    expect(text).toBe("Dissolve 20 g table salt in 80 ml of water and add it.");
    expect(20 / waterMl).toBeLessThan(0.359);
  });

  it("says small amounts to two digits: a gram of bromide a litre was 0.3 g in 250 ml", () => {
    const bromide = (massG: number): string =>
      mixingSteps({ volumeMl: 250, ingredients: [part("potassium-bromide", massG)] })[1]!.text;
    expect(bromide(0.25)).toMatch(/^Dissolve 0\.25 g /);
    expect(bromide(0.0123)).toMatch(/^Dissolve 0\.012 g /);
    expect(bromide(1.04)).toMatch(/^Dissolve 1 g /);
  });

  it("dissolves in the coffee what brewed coffee leaves no water for", () => {
    const lines = (...parts: Brew["ingredients"]): (string | number | undefined)[][] =>
      mixingSteps(brewOf(...parts))
        .slice(1, -3)
        .map(({ text, waterMl }) => [text, waterMl]);
    const [soda, acid] = [part("soda-anhydrous", 54), part("ascorbic-acid", 16)];
    expect(
      lines(soda, part("sodium-hydroxide", 30), part("brewed-coffee", 1000), part("table-salt", 15), acid),
    ).toEqual([
      ["Dissolve 54 g washing soda, anhydrous in some of the coffee, warm: powder into water, slowly.", 0],
      [
        expect.stringMatching(
          /Dissolve 30 g sodium hydroxide \(caustic soda\) in some of the coffee, cold, little by little; it gets hot: let it cool, then/,
        ),
        0,
      ],
      ["Take 1000 g strong brewed coffee. Join coffee and soda.", 0],
      ["Dissolve 15 g table salt in some of the coffee and add it.", 0],
      [
        "Dissolve 16 g ascorbic acid (vitamin C) in some of the coffee; strain. Add it last, slowly: it foams.",
        0,
      ],
    ]);
    expect(lines(part("instant-coffee", 30), part("brewed-coffee", 900))).toEqual([
      ["Dissolve 30 g instant coffee in 900 g strong brewed coffee, warm.", 0],
    ]);
    // Four millilitres a gram are enough; and a little coffee is not what much soda dissolves in.
    expect(lines(soda, part("brewed-coffee", 382))[0]).toEqual([
      "Dissolve 54 g washing soda, anhydrous in 216 ml of warm water: powder into water, slowly.",
      216,
    ]);
    expect(lines(soda, part("brewed-coffee", 383))[0]![1]).toBe(0);
    expect(lines(part("soda-anhydrous", 120), part("brewed-coffee", 100))[0]![1]).toBe(315);
  });

  it("names every ingredient once and never takes more water than there is", () => {
    fc.assert(
      fc.property(anyBrew, (brew) => {
        const steps = mixingSteps(brew);
        expect(steps.map(({ step }) => step)).toEqual(steps.map((_, i) => i + 1));
        const text = steps.map((step) => step.text).join(" ");
        for (const { ingredient } of brew.ingredients)
          expect(text).toContain(handbookIngredients[ingredient].name);
        expect(steps.reduce((sum, { waterMl = 0 }) => sum + waterMl, 0)).toBeLessThanOrEqual(brew.volumeMl);
      }),
    );
  });

  it("refuses what is no brew", () => {
    expect(() => mixingSteps({ volumeMl: 1 } as any)).toThrow(
      new TypeError("mixingSteps: brew.ingredients must be an array, got undefined"),
    );
  });
});

describe("scaleBrew", () => {
  it("scales amounts, ranges and tablets, and keeps the rest", () => {
    const brew: Brew = {
      volumeMl: 400,
      temperatureC: 14,
      ingredients: [
        { ...part("instant-coffee", 16), lowG: 10, highG: 24 },
        part("soda-anhydrous", 22),
        { ingredient: "ascorbic-acid-tablet", tablets: 12, labelMg: 500 },
      ],
    };
    expect(scaleBrew(brew, 1000)).toEqual({
      volumeMl: 1000,
      temperatureC: 14,
      ingredients: [
        { ...part("instant-coffee", 40), lowG: 25, highG: 60 },
        part("soda-anhydrous", 55),
        { ingredient: "ascorbic-acid-tablet", tablets: 30, labelMg: 500 },
      ],
    });
    expect(brew.ingredients[1]).toEqual(part("soda-anhydrous", 22));
  });

  it("there and back is the same brew; pH, strength and cautions stay", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), (volumeMl) => {
        const scaled = scaleBrew(hutBrew, volumeMl);
        const back = scaleBrew(scaled, 400);
        back.ingredients.forEach((p, i) => {
          expect((p as { massG: number }).massG).toBeCloseTo(
            (hutBrew.ingredients[i] as { massG: number }).massG,
            9,
          );
        });
        expect(brewPh(scaled).ph).toBeCloseTo(brewPh(hutBrew).ph, 9);
        expect(brewStrength(scaled, hutBrew)).toMatchObject({ value: 1, logSd: 0 });
        expect(checkBrew(scaled).map(({ code }) => code)).toEqual(checkBrew(hutBrew).map(({ code }) => code));
      }),
    );
  });

  it.each([
    [
      () => scaleBrew(hutBrew, 0),
      RangeError,
      "scaleBrew: volumeMl must be above 0 and at most 100000 ml, got 0",
    ],
    [() => scaleBrew(hutBrew, "1" as any), TypeError, 'scaleBrew: volumeMl must be a number, got "1"'],
    [() => scaleBrew(null as any, 1), TypeError, "scaleBrew: brew must be an object, got null"],
  ])("refuses (%#)", (call, kind, message) => {
    expect(call).toThrow(new kind(message));
  });
});

describe("what is no brew", () => {
  const soda = part("soda-anhydrous", 54);
  const known = Object.keys(handbookIngredients).join(", ");
  it.each([
    [undefined, TypeError, "brewPh: brew must be an object, got undefined"],
    [
      { volumeMl: 0, ingredients: [soda] },
      RangeError,
      "brewPh: brew.volumeMl must be above 0 and at most 100000 ml, got 0",
    ],
    [
      { volumeMl: -5, ingredients: [soda] },
      RangeError,
      "brewPh: brew.volumeMl must be above 0 and at most 100000 ml, got -5",
    ],
    [
      { volumeMl: "1 l", ingredients: [soda] },
      TypeError,
      'brewPh: brew.volumeMl must be a number, got "1 l"',
    ],
    [
      { volumeMl: 1e6, ingredients: [soda] },
      RangeError,
      "brewPh: brew.volumeMl must be above 0 and at most 100000 ml, got 1000000",
    ],
    [
      { volumeMl: 1000, temperatureC: 51, ingredients: [soda] },
      RangeError,
      "brewPh: brew.temperatureC must be from 0 to 50 °C, got 51",
    ],
    [
      { volumeMl: 1000, temperatureC: "20", ingredients: [soda] },
      TypeError,
      'brewPh: brew.temperatureC must be a number, got "20"',
    ],
    [{ volumeMl: 1000, ingredients: [] }, RangeError, "brewPh: brew.ingredients must hold at least 1, got 0"],
    [
      { volumeMl: 1000, ingredients: [part("borax", 0)] },
      RangeError,
      "brewPh: brew.ingredients must hold above 0 and at most 1 g of dry ingredients per ml of bath, got 0",
    ],
    [
      { volumeMl: 100, ingredients: [part("soda-anhydrous", 1000)] },
      RangeError,
      "brewPh: brew.ingredients must hold above 0 and at most 1 g of dry ingredients per ml of bath, got 10",
    ],
    [
      { volumeMl: 100, ingredients: [{ ...soda, highG: 101 }] },
      RangeError,
      "brewPh: brew.ingredients must hold above 0 and at most 1 g of dry ingredients per ml of bath, got 1.01",
    ],
    [
      { volumeMl: 1000, ingredients: [soda, 7] },
      TypeError,
      "brewPh: brew.ingredients[1] must be an object, got 7",
    ],
    [
      { volumeMl: 1000, ingredients: [{ massG: 1 }] },
      TypeError,
      "brewPh: brew.ingredients[0].ingredient must be a name, got undefined",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ingredient: "tea", massG: 1 }] },
      RangeError,
      `brewPh: brew.ingredients[0].ingredient must be one of ${known}, got "tea"`,
    ],
    [
      { volumeMl: 1000, ingredients: [{ ingredient: "effervescent-tablet", massG: 4 }] },
      RangeError,
      'brewPh: brew.ingredients[0].ingredient must be fit for a bath: their citric acid uses up the soda, got "effervescent-tablet"',
    ],
    [
      { volumeMl: 1000, ingredients: [part("borax", -1)] },
      RangeError,
      "brewPh: brew.ingredients[0].massG must be from 0 to 100000 g, got -1",
    ],
    [
      { volumeMl: 1000, ingredients: [part("borax", NaN)] },
      RangeError,
      "brewPh: brew.ingredients[0].massG must be from 0 to 100000 g, got NaN",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ingredient: "borax" }] },
      TypeError,
      "brewPh: brew.ingredients[0].massG must be a number, got undefined",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ...soda, lowG: 55 }] },
      RangeError,
      "brewPh: brew.ingredients[0].lowG must be above 0 and at most 54 g, got 55",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ...soda, lowG: 0 }] },
      RangeError,
      "brewPh: brew.ingredients[0].lowG must be above 0 and at most 54 g, got 0",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ...soda, highG: 53 }] },
      RangeError,
      "brewPh: brew.ingredients[0].highG must be from 54 to 100000 g, got 53",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ingredient: "ascorbic-acid-tablet", tablets: 8 }] },
      TypeError,
      "brewPh: brew.ingredients[0].labelMg must be given: mg of vitamin C by the label, since a tablet weighs more",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ingredient: "ascorbic-acid-tablet", massG: 8 }] },
      TypeError,
      "brewPh: brew.ingredients[0].labelMg must be given: mg of vitamin C by the label, since a tablet weighs more",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ingredient: "ascorbic-acid-tablet", tablets: "8", labelMg: 500 }] },
      TypeError,
      'brewPh: brew.ingredients[0].tablets must be a number, got "8"',
    ],
    [
      { volumeMl: 1000, ingredients: [{ ingredient: "ascorbic-acid-tablet", tablets: 8, labelMg: 5001 }] },
      RangeError,
      "brewPh: brew.ingredients[0].labelMg must be above 0 and at most 5000 mg, got 5001",
    ],
  ])("refuses %j", (brew, kind, message) => {
    expect(() => brewPh(brew as any)).toThrow(new kind(message));
  });

  it("brewed coffee may be all the water there is, and no more", () => {
    const inCoffee = (massG: number): Brew => brewOf(soda, part("brewed-coffee", massG));
    expect(brewPh(inCoffee(1000)).ph).toBeGreaterThan(10);
    const more = new RangeError(
      "brewPh: brew.ingredients must hold at most 1 g of brewed coffee per ml of bath, got 1.001",
    );
    expect(() => brewPh(inCoffee(1001))).toThrow(more);
    // Two hundredths of it are solids, which count with what is dry.
    const dry = (massG: number): number =>
      brewPh(brewOf(part("table-salt", massG), part("brewed-coffee", 1000))).ph;
    expect(dry(980)).toBeGreaterThan(0);
    expect(() => dry(981)).toThrow(
      new RangeError(
        "brewPh: brew.ingredients must hold above 0 and at most 1 g of dry ingredients per ml of bath, got 1.001",
      ),
    );
  });

  it("nothing of an ingredient is nothing", () => {
    expect(brewPh(brewOf(soda, part("ascorbic-acid", 0)))).toEqual(brewPh(brewOf(soda)));
    expect(brewPh(brewOf(soda, { ingredient: "ascorbic-acid-tablet", tablets: 0, labelMg: 500 }))).toEqual(
      brewPh(brewOf(soda)),
    );
  });

  it("tablets count as the acid on their label", () => {
    expect(brewPh(brewOf(soda, { ingredient: "ascorbic-acid-tablet", tablets: 32, labelMg: 500 })).ph).toBe(
      brewPh(brewOf(soda, part("ascorbic-acid", 16))).ph,
    );
  });
});
