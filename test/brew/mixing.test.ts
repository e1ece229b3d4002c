import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  brewLife,
  brewPh,
  brewStrength,
  checkBrew,
  describeMixing,
  handbookIngredients,
  mixingSteps,
  scaleBrew,
  type DeveloperBrew,
  type MixingStep,
  type WeighedPart,
} from "../../src/index.js";
import { test } from "../property.js";
import { anyBrew, brewOf, hutBrew, part } from "./brews.js";
import { quoted } from "../helpers.js";
import { de } from "../../src/texts/de.js";

const every: DeveloperBrew = {
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

/** Millilitres that go into the bath before it is made up: the water of the cups, and what is poured. */
const poured = (steps: readonly MixingStep[]): number =>
  steps.reduce(
    (sum, { waterMl = 0, solutionMl, solutionPercent }) =>
      sum + (solutionPercent === undefined ? waterMl : (solutionMl ?? 0)),
    0,
  );

/** What a step is, without its sentence and cautions. */
const facts = (brew: DeveloperBrew): unknown[] =>
  mixingSteps(brew).map((step) =>
    Object.fromEntries(Object.entries(step).filter(([key]) => !["step", "text", "cautions"].includes(key))),
  );

describe("mixingSteps", () => {
  it("dissolves apart, joins soda and coffee, vitamin C after, and makes up to volume", () => {
    const waterC = 40;
    const gasL: unknown = expect.closeTo(0.82, 2);
    const gasLPerL: unknown = expect.closeTo(2.05, 2);
    expect(facts(hutBrew)).toEqual([
      { do: "protect" },
      { do: "dissolve", ingredient: "soda-anhydrous", massG: 22, waterMl: 140, waterC },
      { do: "dissolve", ingredient: "instant-coffee", massG: 16, waterMl: 88, waterC },
      { do: "join" },
      { do: "add-last", ingredient: "ascorbic-acid", massG: 6, waterMl: 60, waterC, gasL, gasLPerL },
      { do: "make-up", volumeMl: 400, temperatureC: 14 },
      {
        do: "rest",
        minutes: [5, 10],
        lifeH: expect.closeTo(brewLife(hutBrew).lifeH, 9),
        failsH: [brewLife(hutBrew).lowH, brewLife(hutBrew).highH],
      },
      { do: "label" },
    ]);
    expect(mixingSteps(hutBrew).map(({ step }) => step)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it("has a cup for each kind; caustic soda in its own cold cup first, into the bath before coffee", () => {
    const caustic = { ingredient: "sodium-hydroxide", solutionPercent: 10 };
    const waterC = 40;
    const gasL: unknown = expect.closeTo(2.19, 2);
    expect(facts(every)).toEqual([
      { do: "protect" },
      // Less than 5 g a kitchen scale does not tell apart: the rest of the solution is left.
      { do: "dissolve-caustic", ...caustic, massG: 5, waterMl: 50, cold: true },
      { do: "take", ingredient: "brewed-coffee", massG: 100, coffeeMl: 100 },
      // 5 g of sulphite and 54 g of soda in the cold that the solution brings: 22.3 and 331.9 ml at 14.25 °C.
      { do: "dissolve", ingredient: "sodium-sulphite", massG: 5, waterMl: 355, waterC },
      { do: "dissolve", ingredient: "soda-anhydrous", massG: 54.04, sameCup: true },
      { do: "join-caustic", ...caustic, massG: 2, solutionMl: 20 },
      { do: "dissolve", ingredient: "instant-coffee", massG: 40, waterMl: 198, waterC },
      { do: "join" },
      { do: "dissolve", ingredient: "table-salt", massG: 12, waterMl: 72, waterC },
      { do: "add-last", ingredient: "ascorbic-acid", massG: 16, waterMl: 135, waterC, gasL, gasLPerL: gasL },
      { do: "make-up", volumeMl: 1000, temperatureC: 14.25 },
      {
        do: "rest",
        minutes: [5, 10],
        lifeH: expect.any(Number),
        failsH: [expect.any(Number), expect.any(Number)],
      },
      { do: "label" },
    ]);
    // Nothing gives off gas without acid and carbonate, and nothing is joined that is not there.
    const of = (...parts: DeveloperBrew["ingredients"]): string => JSON.stringify(facts(brewOf(...parts)));
    expect(of(part("sodium-ascorbate", 10), part("soda-anhydrous", 20))).not.toContain("gasL");
    expect(of(part("ascorbic-acid", 5), part("borax", 30))).toContain("add-last");
    expect(of(part("ascorbic-acid", 5), part("borax", 30))).not.toContain("gasL");
    expect(of(part("citric-acid", 10), part("soda-anhydrous", 40))).toContain("gasL");
    expect(of(part("sodium-ascorbate", 10), part("soda-anhydrous", 20))).not.toContain('"join"');
    expect(of(part("brewed-coffee", 300), part("soda-anhydrous", 20))).toContain('"join"');
  });

  // Heat of solution 44.5 kJ/mol over 10 g of water a gram: 27 K (from memory).
  it("gives caustic soda at least 10 ml of cold water a gram, and all cups together at most 95 %", () => {
    for (const grams of [0.3, 2.5, 5, 20, 40, 90]) {
      const steps = mixingSteps(
        // Acid, so that the bath does not burn: 1 g of citric acid takes 0.62 g of caustic soda.
        brewOf(
          part("sodium-hydroxide", grams),
          ...(grams > 5 ? [part("citric-acid", 1.5 * grams)] : []),
          part("instant-coffee", 40),
          part("borax", 20),
        ),
      );
      const own = steps.find((step) => step.do === "dissolve-caustic")!;
      expect(own.massG).toBe(Math.max(5, grams));
      expect(own.waterMl).toBeGreaterThanOrEqual(10 * own.massG!);
      expect(poured(steps)).toBeLessThanOrEqual(950);
      expect(own.text).toMatch(/cold/);
    }
  });

  it("pours of the caustic solution what holds the grams of the brew, in whatever lots it was given", () => {
    const steps = mixingSteps(
      brewOf(
        { ...part("sodium-hydroxide", 4), spoons: 0.75 },
        part("borax", 20),
        part("sodium-hydroxide", 3),
      ),
    );
    expect(steps.filter(({ ingredient }) => ingredient === "sodium-hydroxide")).toMatchObject([
      { do: "dissolve-caustic", massG: 7, waterMl: 70, cautions: [{ code: "hazard" }] },
      { do: "join-caustic", massG: 7, solutionMl: 70, solutionPercent: 10 },
    ]);
    // A spoon is for what may be spooned.
    for (const { spoons, text } of steps) {
      expect(spoons).toBeUndefined();
      expect(text.replace(/Never measure sodium hydroxide .* by the spoon:/, "")).not.toMatch(/spoon/);
    }
  });

  // First aid and the cup: common practice, safety data sheets.
  it("says first aid and the cup wherever caustic soda is handled, in both languages", () => {
    const steps = mixingSteps(brewOf(part("sodium-hydroxide", 4), part("borax", 20)));
    const german = describeMixing(steps, de.mixing);
    for (const word of ["dissolve-caustic", "join-caustic"]) {
      const at = steps.findIndex((step) => step.do === word);
      const { text } = steps[at]!;
      expect(text).toMatch(
        /running water.* eyes: rinse for 15 minutes and see a doctor.* skin: rinse at once/,
      );
      expect(text).toMatch(/polypropylene, not (?:in )?thin glass/);
      // What helps is read before the powder is in the hand.
      expect(text.indexOf("15 minutes")).toBeLessThan(text.search(/Weigh|Pour/));
      expect(german[at]).toMatch(/Fließendes Wasser.* 15 Minuten spülen und zum Arzt.* sofort abspülen/);
      expect(german[at]).toMatch(/Polypropylen.* dünne[sm] Glas/);
    }
    const others = steps.filter((step) => !/caustic/.test(step.do)).map(({ text }) => text);
    expect(others.join(" ")).not.toMatch(/doctor/);
  });

  it("makes a solution of a little bromide, and dissolves much of it as it is", () => {
    const of = (massG: number): unknown[] =>
      mixingSteps(brewOf(part("potassium-bromide", massG), part("soda-anhydrous", 20)))
        .filter(({ ingredient }) => ingredient === "potassium-bromide")
        .map((step) => [step.do, step.massG, step.waterMl, step.solutionMl]);
    expect(of(1)).toEqual([
      ["make-solution", 5, 50, undefined],
      ["add-solution", 1, undefined, 10],
    ]);
    expect(of(15)[1]).toEqual(["add-solution", 15, undefined, 150]);
    expect(of(16)).toEqual([["dissolve", 16, 80, undefined]]);
  });

  it("does not say how to mix what cannot be mixed safely: 200 g of caustic soda in half a litre", () => {
    const steps = mixingSteps({ volumeMl: 500, ingredients: [part("sodium-hydroxide", 200)] });
    expect(steps.map((step) => step.do)).toEqual(["stop"]);
    expect(steps[0]!.cautions!.map(({ code }) => code)).toContain("too-concentrated");
    // Nor in coffee, where coffee is all the water there is.
    const inCoffee = brewOf(part("sodium-hydroxide", 30), part("brewed-coffee", 1000));
    expect(mixingSteps(inCoffee)[0]!.do).toBe("stop");
  });

  // Caustic soda never into coffee: common practice.
  it("does not say how to mix caustic soda where brewed coffee leaves too little water", () => {
    const half = (...ingredients: WeighedPart[]): DeveloperBrew => ({ volumeMl: 500, ingredients });
    const coffee = part("brewed-coffee", 430);
    for (const [alkali, needMl] of [
      // 10 ml a gram of caustic soda; soda 21.8, baking soda 9.6 g in 100 g of water at 20 °C.
      [[part("sodium-hydroxide", 3), part("soda-anhydrous", 10)], 30 + 1000 / 21.8],
      [[part("sodium-hydroxide", 5), part("baking-soda", 10)], 50 + 1000 / 9.6],
    ] as const) {
      const steps = mixingSteps(half(coffee, ...alkali));
      expect(steps.map((step) => step.do)).toEqual(["stop"]);
      expect(steps[0]!.cautions).toContainEqual(
        expect.objectContaining({
          code: "caustic-in-coffee",
          severity: "stop",
          limit: expect.closeTo(needMl, 9) as number,
          actual: expect.closeTo(0.95 * 70, 9) as number,
        }),
      );
      expect(steps[0]!.text).toMatch(/never goes into coffee\. Take less brewed coffee, or instant coffee/);
      expect(describeMixing(steps, de.mixing)[0]).toMatch(/nie in Kaffee\. Weniger Filterkaffee/);
    }
    // With water enough the alkali is joined in water before the coffee, which is taken and waits.
    const steps = mixingSteps(
      half(part("brewed-coffee", 350), part("sodium-hydroxide", 3), part("soda-anhydrous", 10)),
    );
    expect(steps.map((step) => step.do).slice(1, 6)).toEqual([
      ...["dissolve-caustic", "take", "dissolve", "join-caustic", "join"],
    ]);
    expect(steps[3]!.waterMl).toBeGreaterThanOrEqual(1000 / 21.8);
  });

  test.prop([anyBrew])("never lets alkali and coffee meet before caustic soda is in", (brew) => {
    const steps = mixingSteps(brew);
    const caustic = steps.findIndex((step) => step.do === "join-caustic");
    if (caustic < 0) return;
    expect(steps.slice(0, caustic).map((step) => step.do)).not.toContain("join");
    const alkali = steps.filter(
      ({ ingredient }) => ingredient !== undefined && handbookIngredients[ingredient].role === "alkali",
    );
    expect(alkali.filter(({ inCoffee }) => inCoffee === true)).toEqual([]);
  });

  // Acid sets sulphur dioxide free from sulphite below about pH 7 (common knowledge, from memory).
  it("does not say how to mix what gives off sulphur dioxide", () => {
    const steps = mixingSteps(
      brewOf(part("sodium-sulphite", 50), part("ascorbic-acid", 60), part("soda-anhydrous", 2)),
    );
    expect(steps.map((step) => [step.do, step.cautions![0]!.code])).toEqual([["stop", "sulphur-dioxide"]]);
    const alkaline = brewOf(
      part("sodium-sulphite", 50),
      part("ascorbic-acid", 16),
      part("soda-anhydrous", 54),
    );
    expect(mixingSteps(alkaline)[0]!.do).toBe("protect");
  });

  it("gives no recipe where checkBrew stops the brew for its alkali", () => {
    const half = (...ingredients: WeighedPart[]) => mixingSteps({ volumeMl: 500, ingredients });
    const coffee = part("instant-coffee", 20);
    for (const [code, steps] of [
      ["hydroxide-high", half(part("sodium-hydroxide", 25), coffee)],
      ["alkali-too-weak", half(part("citric-acid", 50), part("baking-soda", 50), coffee)],
      ["no-alkali", half(coffee)],
    ] as const) {
      expect(steps.map((step) => step.do)).toEqual(["stop"]);
      const { cautions, text } = steps[0]!;
      expect(cautions!.map((one) => [one.code, one.severity])).toEqual([[code, "stop"]]);
      expect(text).toBe(`${cautions![0]!.message} Do not mix this.`);
    }
  });

  // 1 mol of acid sets 1 mol of gas free, 24.06 l at 20 °C; 3 l for a litre of bath is the limit (assumed).
  it("asks for small portions where a vessel of twice the size would not hold the foam", () => {
    const acid = (massG: number) => {
      const brew = brewOf(
        part("soda-anhydrous", 100),
        part("instant-coffee", 40),
        part("ascorbic-acid", massG),
      );
      const steps = mixingSteps(brew);
      const step = steps.find((one) => one.do === "add-last")!;
      const german = describeMixing(steps, de.mixing)[step.step - 1]!;
      return { step, german, caution: checkBrew(brew).find(({ code }) => code === "acid-foams")! };
    };
    const [little, much] = [acid(21), acid(23)];
    expect(little.step.gasLPerL).toBeCloseTo((24.06 * 21) / 176.124, 9);
    expect(little.caution.severity).toBe("note");
    expect(much.caution.severity).toBe("warn");
    for (const said of [little.step.text, little.caution.message]) {
      expect(said).toMatch(/open vessel of twice the size/);
      expect(said).not.toMatch(/portions/);
    }
    for (const said of [much.step.text, much.caution.message])
      expect(said).toMatch(
        /twice the size is not enough\. .* small portions, .* still\. Or do not mix this\./,
      );
    expect(little.german).toMatch(/Ein offenes Gefäß von doppelter Größe/);
    expect(much.german).toMatch(/doppelter Größe reicht nicht\. In kleinen Portionen/);
  });

  // Soda, sulphite and bromide by their data sheets (from memory); alkali on aluminium: common knowledge.
  it.each([
    ["soda-anhydrous", /irritates the eyes/],
    ["potassium-carbonate", /irritates the eyes/],
    ["sodium-sulphite", /sulphur dioxide/],
    ["potassium-bromide", /harmful if swallowed/],
    ["borax", /fertility/],
    ["trisodium-phosphate", /strongly alkaline/],
    ["sodium-hydroxide", /burns eyes and skin/],
    ["citric-acid", /irritates the eyes/],
  ] as const)(
    "says in words what to mind with %s, before its step, and keeps aluminium away",
    (name, words) => {
      const steps = mixingSteps(brewOf(part("soda-anhydrous", 20), part(name, 5)));
      const { text } = steps.find(({ ingredient }) => ingredient === name)!;
      expect(text).toMatch(words);
      expect(text.search(words)).toBeLessThan(text.search(/Dissolve|Sprinkle/));
      expect(steps[0]!.text).toMatch(/no aluminium/);
    },
  );

  it("counts in the spoons that the brew was given in", () => {
    const soda: WeighedPart = { ...part("soda-anhydrous", 54), spoons: 4.75, spoonMl: 15, heap: "level" };
    const [, step] = mixingSteps(brewOf(soda, part("instant-coffee", 40)));
    expect(step).toMatchObject({
      ingredient: "soda-anhydrous",
      massG: 54,
      spoons: 4.75,
      spoonMl: 15,
      heap: "level",
    });
    expect(step!.text).toContain("4.75 level spoons of 15 ml (54 g)");
    expect(
      mixingSteps(brewOf({ ...soda, spoons: 1, spoonMl: undefined, heap: undefined }))[1]!.text,
    ).toContain("1 level spoon of 5 ml");
    expect(() => mixingSteps(brewOf({ ...soda, heap: "flat" as any }))).toThrow(
      expect.objectContaining({ code: "not-one-of", path: "/brew/ingredients/0/heap" }),
    );
    for (const [field, value] of [
      ["spoons", 0],
      ["spoonMl", 101],
    ] as const)
      expect(() => mixingSteps(brewOf({ ...soda, [field]: value }))).toThrow(
        expect.objectContaining({ path: `/brew/ingredients/0/${field}` }),
      );
  });

  // Sodium chloride: 35.9 g in 100 g of water (CRC Handbook, from memory).
  it("gives as much salt as checkBrew asks for a cup that dissolves it", () => {
    const steps = mixingSteps(
      brewOf(part("soda-anhydrous", 54), part("instant-coffee", 40), part("table-salt", 20)),
    );
    const { waterMl } = steps.find(({ ingredient }) => ingredient === "table-salt")!;
    expect(20 / waterMl!).toBeLessThan(0.359);
  });

  it("says small amounts to two digits: a quarter of a gram was 0.3 g", () => {
    const borax = (massG: number): string =>
      mixingSteps({ volumeMl: 250, ingredients: [part("borax", massG)] })[1]!.text;
    expect(borax(0.25)).toMatch(/ 0\.25 g /);
    expect(borax(0.0123)).toMatch(/ 0\.012 g /);
    expect(borax(1.04)).toMatch(/ 1 g /);
  });

  it("says spoons as a person counts them: quarters below ten, whole ones from ten on", () => {
    const coffee = (spoons: number): string =>
      mixingSteps(brewOf({ ...part("instant-coffee", 40), spoons }, part("soda-anhydrous", 54)))[2]!.text;
    expect(coffee(29.75)).toContain("Dissolve 30 level spoons of 5 ml (40 g)");
    expect(coffee(7.3)).toContain("Dissolve 7.25 level spoons");
    // One or many goes by the number that is read.
    expect(coffee(1.05)).toContain("Dissolve 1 level spoon of 5 ml");
    expect(coffee(1.13)).toContain("Dissolve 1.25 level spoons of 5 ml");
    expect(
      mixingSteps(brewOf(part("soda-anhydrous", 54), { ...part("instant-coffee", 40), spoons: 29.75 }))[2]!
        .spoons,
    ).toBe(29.75);
  });

  it("dissolves in the coffee what brewed coffee leaves no water for", () => {
    const lines = (...parts: DeveloperBrew["ingredients"]): unknown[] =>
      mixingSteps(brewOf(...parts))
        .filter(({ ingredient, forIngredients }) => (ingredient ?? forIngredients) !== undefined)
        .map((step) => [step.ingredient ?? step.do, step.waterMl ?? step.coffeeMl, step.inCoffee]);
    const [soda, acid] = [part("soda-anhydrous", 54), part("ascorbic-acid", 16)];
    // What is set aside has a quarter more than what just holds it at 40 °C: 110.7, 48.5 and 41.2 ml.
    const steps = [soda, part("brewed-coffee", 1000), part("table-salt", 15), acid];
    expect(lines(...steps)).toEqual([
      ["brewed-coffee", 1000, undefined],
      ["set-aside", 139, undefined],
      ["set-aside", 53, undefined],
      ["set-aside", 62, undefined],
      ["soda-anhydrous", 0, true],
      ["table-salt", 0, true],
      ["ascorbic-acid", 0, true],
    ]);
    const texts = mixingSteps(brewOf(...steps)).map(({ text }) => text);
    expect(texts[1]).toBe("Take 1000 ml of strong brewed coffee.");
    expect(texts[2]).toBe("For washing soda, anhydrous: set aside 139 ml of the coffee.");
    expect(texts[5]).toMatch(
      /in the 139 ml of coffee set aside, warm \(40 °C\): powder into coffee, slowly\.$/,
    );
    // Instant coffee goes into what is left of the other.
    const both = mixingSteps(brewOf(soda, part("instant-coffee", 30), part("brewed-coffee", 990)));
    expect(both.map((step) => step.do).slice(0, 4)).toEqual(["protect", "take", "set-aside", "dissolve"]);
    const instant = both.find(({ ingredient }) => ingredient === "instant-coffee")!;
    expect(instant).toMatchObject({ waterMl: 0, inCoffee: true });
    expect(instant.text).toMatch(/in the rest of the coffee, warm/);
    // 111 ml of water hold the soda: 95 % of 117; and a little coffee is not what much soda dissolves in.
    expect(lines(soda, part("brewed-coffee", 883))[1]).toEqual(["soda-anhydrous", 111, undefined]);
    expect(lines(soda, part("brewed-coffee", 884))[1]).toEqual(["set-aside", 139, undefined]);
    expect(lines(part("soda-anhydrous", 120), part("brewed-coffee", 100))[1]).toEqual([
      "soda-anhydrous",
      315,
      undefined,
    ]);
  });

  it("takes brewed coffee first, by the millilitre, whatever it was given in", () => {
    const coffee: WeighedPart = { ...part("brewed-coffee", 350), spoons: 70, spoonMl: 5 };
    const brew = {
      volumeMl: 500,
      ingredients: [part("soda-anhydrous", 27), coffee, part("ascorbic-acid", 8)],
    };
    const steps = mixingSteps(brew);
    expect(steps.map((step) => step.do)).toEqual([
      ...["protect", "take", "dissolve", "join", "add-last", "make-up", "rest", "label"],
    ]);
    expect(steps[1]!.text).toBe("Take 350 ml of strong brewed coffee.");
    // 150 ml of water are left: 55.3 hold the soda at 40 °C, 24.2 the vitamin C.
    expect(steps[2]!.waterMl).toBeGreaterThanOrEqual(55.3);
    expect(steps[4]!.waterMl).toBeGreaterThanOrEqual(24.2);
    expect(poured(steps)).toBeLessThanOrEqual(0.95 * 150);
  });

  // Solubilities at 40 °C: soda 48.8, baking soda 12.7 (suppliers, Seidell), vitamin C 33, salt 36.45 (CRC).
  it.each([
    [[part("baking-soda", 40), part("soda-anhydrous", 20)], "baking-soda", 100 * (40 / 12.7 + 20 / 48.8)],
    [[part("table-salt", 25), part("soda-anhydrous", 27)], "table-salt", 2500 / 36.45],
    [[part("ascorbic-acid", 40), part("soda-anhydrous", 54)], "ascorbic-acid", 4000 / 33],
    [[part("soda-decahydrate", 200)], "soda-decahydrate", (20000 * 105.9875) / 286.1375 / 48.8],
  ] as const)("gives a cup the water that its powder wants: %j", (parts, ingredient, leastMl) => {
    const steps = mixingSteps({ volumeMl: 500, ingredients: [...parts, part("instant-coffee", 20)] });
    const { waterMl, waterC, text } = steps.find((step) => step.ingredient === ingredient)!;
    expect(waterC).toBe(40);
    expect(text).toMatch(/ml of warm water \(40 °C\)/);
    expect(waterMl).toBeGreaterThanOrEqual(leastMl);
    expect(waterMl).toBeLessThan(1.3 * leastMl);
    expect(poured(steps)).toBeLessThanOrEqual(475);
    expect(steps.flatMap(({ cautions = [] }) => cautions).map(({ code }) => code)).not.toContain(
      "undissolved",
    );
  });

  it("says in Fahrenheit how warm the water is, for who reads so", () => {
    expect(describeMixing(mixingSteps(hutBrew), undefined, { unit: "F" })[1]).toMatch(
      /warm water \(104 °F\)/,
    );
    expect(describeMixing(mixingSteps(hutBrew), de.mixing)[1]).toMatch(/140 ml warmem Wasser \(40 °C\)/);
  });

  it("says where the water does not suffice for the cups, though the bath would hold all", () => {
    const brew = brewOf(part("baking-soda", 90), part("soda-anhydrous", 40), part("table-salt", 150));
    expect(checkBrew(brew).map(({ code }) => code)).not.toContain("undissolved");
    const steps = mixingSteps(brew);
    expect(poured(steps)).toBeLessThanOrEqual(950);
    const baking = steps.find(({ ingredient }) => ingredient === "baking-soda")!;
    expect(baking.cautions).toContainEqual(
      expect.objectContaining({ code: "undissolved", path: "/ingredients/0", limit: 127 }),
    );
    expect(baking.cautions!.find(({ code }) => code === "undissolved")!.actual).toBeGreaterThan(127);
    expect(baking.text).toMatch(/Not all the baking soda/);
    // What checkBrew says of the bath is said once.
    const salty = mixingSteps({ volumeMl: 500, ingredients: [part("table-salt", 200), part("borax", 5)] });
    const ofSalt = salty
      .flatMap(({ cautions = [] }) => cautions)
      .filter(({ code, data }) => code === "undissolved" && data.ingredient === "table-salt");
    expect(ofSalt).toEqual([expect.objectContaining({ limit: 359, actual: 400 })]);
  });

  const HAZARDS = [
    "hazard",
    "acid-foams",
    "too-concentrated",
    "caustic-in-coffee",
    "hydroxide-high",
    "caustic-bath",
    "sulphur-dioxide",
    "undissolved",
  ];
  test.prop([anyBrew])("says every hazard that checkBrew says, in data and in words", (brew) => {
    const steps = mixingSteps(brew);
    if (steps[0]!.do === "stop") return;
    const said = steps.flatMap(({ cautions = [] }) => cautions);
    const words = steps.map(({ text }) => text).join(" ");
    expect(describeMixing(steps).join(" ")).toBe(words);
    for (const caution of checkBrew(brew).filter(({ code }) => HAZARDS.includes(code))) {
      expect(said).toContainEqual(caution);
      if (caution.code !== "acid-foams") expect(words).toContain(caution.message);
    }
    if (said.some(({ code }) => code === "acid-foams")) expect(words).toMatch(/ l of gas/);
  });

  test.prop([anyBrew])("names every ingredient once and never takes more water than there is", (brew) => {
    const steps = mixingSteps(brew);
    expect(steps.map(({ step }) => step)).toEqual(steps.map((_, i) => i + 1));
    if (steps[0]!.do === "stop") return;
    // A solution is made in one step and poured in another, whatever lots it is of.
    const solved = new Set(steps.flatMap((step) => (step.solutionMl === undefined ? [] : step.ingredient)));
    expect(
      steps
        .filter(({ solutionPercent }) => solutionPercent === undefined)
        .flatMap(({ ingredient = [] }) => ingredient)
        .sort(),
    ).toEqual(
      brew.ingredients
        .map(({ ingredient }) => ingredient)
        .filter((one) => !solved.has(one))
        .sort(),
    );
    for (const one of solved) expect(brew.ingredients.map(({ ingredient }) => ingredient)).toContain(one);
    for (const { ingredient, text } of steps)
      if (ingredient !== undefined) expect(text).toContain(handbookIngredients[ingredient].name);
    expect(poured(steps)).toBeLessThanOrEqual(brew.volumeMl);
    expect(JSON.parse(JSON.stringify(steps))).toEqual(steps);
  });

  it("says from when to when the brew may fail, and how soon to begin", () => {
    const rest = (...parts: WeighedPart[]): string =>
      mixingSteps(brewOf(...parts)).find((step) => step.do === "rest")!.text;
    const soda = part("soda-anhydrous", 54);
    // A factor of 2 each way, of 3 without vitamin C: see test/brew/lifeAndCapacity.test.ts.
    expect(rest(soda, part("instant-coffee", 40), part("ascorbic-acid", 16))).toMatch(
      / It lives about 3 h\. It may fail anywhere from 1\.5 to 6 h\. Begin within the hour\.$/,
    );
    expect(rest(soda, part("instant-coffee", 40))).toMatch(
      / It lives about 1\.5 h\. It may fail anywhere from 0\.49 to 4\.4 h\. Begin at once\.$/,
    );
    const kept = rest(soda, part("ascorbic-acid", 16), part("sodium-sulphite", 100));
    expect(kept).toMatch(/ It may fail anywhere from [\d.]+ to [\d.]+ h\.$/);
  });

  it("speaks of no life where nothing develops", () => {
    const rest = mixingSteps(brewOf(part("borax", 5))).find((step) => step.do === "rest")!;
    expect(rest.lifeH).toBeUndefined();
    expect(rest.text).not.toMatch(/lives/);
  });

  it("refuses what is no brew", () => {
    expect(() => mixingSteps({ volumeMl: 1 } as any)).toThrow(
      expect.objectContaining({ path: "/brew/ingredients" }),
    );
  });

  it("the cups of a brew take at most 95 % of its water", () => {
    const ingredients = [
      "soda-anhydrous",
      "sodium-hydroxide",
      "instant-coffee",
      "ascorbic-acid",
      "potassium-bromide",
    ].map((ingredient, i) => ({ ingredient, massG: [0.6, 0.05, 0.2, 0.2, 0.2][i] }));
    for (const volumeMl of [10, 250, 1000]) {
      const taken = poured(mixingSteps({ volumeMl, ingredients } as never));
      expect(taken).toBeGreaterThan(0);
      expect(taken).toBeLessThanOrEqual(0.95 * volumeMl);
    }
  });
});

describe("scaleBrew", () => {
  it("scales amounts, ranges, spoons and tablets, and keeps the rest", () => {
    const brew: DeveloperBrew = {
      volumeMl: 400,
      temperatureC: 14,
      ingredients: [
        { ...part("instant-coffee", 16), lowG: 10, highG: 24, spoons: 12 },
        part("soda-anhydrous", 22),
        { ingredient: "ascorbic-acid-tablet", tablets: 12, labelMg: 500 },
      ],
    };
    expect(scaleBrew(brew, 1000)).toEqual({
      volumeMl: 1000,
      temperatureC: 14,
      ingredients: [
        { ...part("instant-coffee", 40), lowG: 25, highG: 60, spoons: 30 },
        part("soda-anhydrous", 55),
        { ingredient: "ascorbic-acid-tablet", tablets: 30, labelMg: 500 },
      ],
    });
    expect(brew.ingredients[1]).toEqual(part("soda-anhydrous", 22));
  });

  it("keeps the caller's own fields, and refuses one that JSON would lose", () => {
    const brew = { "volumeMl": 400, "ingredients": [part("soda-anhydrous", 22)], "x-cup": "blue" };
    expect(scaleBrew(brew, 200)).toHaveProperty("x-cup", "blue");
    expect(() => scaleBrew({ ...brew, "x-cup": NaN } as DeveloperBrew, 200)).toThrow(
      expect.objectContaining({ expected: { must: "plain-data" }, path: "/brew/x-cup" }),
    );
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
        expect(brewStrength(hutBrew, scaled)).toMatchObject({ value: 1, logSd: 0 });
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
  ])("refuses: $2", (call, kind, message) => {
    expect(call).toThrow(new kind(message));
  });

  it("makes a brew as large as a brew is read, and none larger", () => {
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
});

describe("what is no brew", () => {
  it("more than thirty parts", () => {
    const parts = (count: number): DeveloperBrew =>
      brewOf(...Array.from({ length: count }, () => part("borax", 1)));
    expect(brewPh(parts(30)).ph).toBeGreaterThan(9);
    expect(() => brewPh(parts(31))).toThrow(
      expect.objectContaining({ path: "/brew/ingredients", actual: 31, expected: { most: 30 } }),
    );
  });

  const soda = part("soda-anhydrous", 54);
  const known = quoted(Object.keys(handbookIngredients));
  it.each([
    [undefined, TypeError, "brewPh: brew is missing: an object"],
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
      "brewPh: brew.ingredients must be above 0 and at most 1 g of dry ingredients per ml of bath, got 0",
    ],
    [
      { volumeMl: 100, ingredients: [part("soda-anhydrous", 1000)] },
      RangeError,
      "brewPh: brew.ingredients must be above 0 and at most 1 g of dry ingredients per ml of bath, got 10",
    ],
    [
      { volumeMl: 100, ingredients: [{ ...soda, highG: 101 }] },
      RangeError,
      "brewPh: brew.ingredients must be above 0 and at most 1 g of dry ingredients per ml of bath, got 1.01",
    ],
    [
      { volumeMl: 1000, ingredients: [soda, 7] },
      TypeError,
      "brewPh: brew.ingredients[1] must be an object, got 7",
    ],
    [
      { volumeMl: 1000, ingredients: [{ massG: 1 }] },
      TypeError,
      "brewPh: brew.ingredients[0].ingredient is missing: text",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ingredient: "tea", massG: 1 }] },
      RangeError,
      `brewPh: brew.ingredients[0].ingredient must be ${known}, got "tea"`,
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
      "brewPh: brew.ingredients[0].massG is missing: a number",
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
      RangeError,
      "brewPh: brew.ingredients[0].labelMg must be given: mg of vitamin C by the label, since a tablet weighs more",
    ],
    [
      { volumeMl: 1000, ingredients: [{ ingredient: "ascorbic-acid-tablet", massG: 8 }] },
      RangeError,
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
    const inCoffee = (massG: number): DeveloperBrew => brewOf(soda, part("brewed-coffee", massG));
    expect(brewPh(inCoffee(1000)).ph).toBeGreaterThan(10);
    const more = new RangeError(
      "brewPh: brew.ingredients must be at most 1 g of brewed coffee per ml of bath, got 1.001",
    );
    expect(() => brewPh(inCoffee(1001))).toThrow(more);
    // Two hundredths of it are solids, which count with what is dry.
    const dry = (massG: number): number =>
      brewPh(brewOf(part("table-salt", massG), part("brewed-coffee", 1000))).ph;
    expect(dry(980)).toBeGreaterThan(0);
    expect(() => dry(981)).toThrow(
      new RangeError(
        "brewPh: brew.ingredients must be above 0 and at most 1 g of dry ingredients per ml of bath, got 1.001",
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
