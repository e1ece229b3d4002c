import { describe, expect, it } from "vitest";
import {
  checkRecipe,
  compensate,
  compensateRecipe,
  describeCautions,
  describeCompensation,
  type Caution,
  type Recipe,
} from "../../src/index.js";
import { hutCoffee, hutStock } from "./documents.js";
import { brewCautions } from "../../src/recipe/recipeCautions.js";
import { anyOf, thrown } from "../helpers.js";
const cautionsOf = (input: unknown): readonly Caution[] => {
  const check = checkRecipe(input);
  if (!check.ok) throw new Error(JSON.stringify(check.problems));
  return check.cautions;
};
const codes = (input: unknown): string[] => cautionsOf(input).map(({ code }) => code);
const cautionOf = (input: unknown, code: string): Caution | undefined =>
  cautionsOf(input).find((one) => one.code === code);

describe("the cautions of a recipe", () => {
  it("come from every module, gravest first, with pointers into the recipe", () => {
    const short = { ...hutStock, baseline: { timeS: 200, temperatureC: 20 } };
    // Under five minutes: Eastman Kodak, film data sheets (from memory).
    expect(cautionOf(short, "short-time")).toMatchObject({ severity: "warn", limit: 300, actual: 200 });
    const cold = { ...hutStock, conditions: { temperatureC: 14 } };
    expect(cautionOf(cold, "wide-interval")!.message).toBe("The interval is wide. Run a test strip first.");
    expect(cautionOf(cold, "temperature-unusual")!.path).toBe("/conditions/temperatureC");
    expect(
      cautionOf(
        { ...hutStock, agitation: "stand", baseline: { ...hutStock.baseline, agitation: { everyS: 60 } } },
        "stand",
      )!.path,
    ).toBe("/agitation");
    const table = {
      kind: "table",
      rows: [
        { dilution: "1+25", timeS: 300 },
        { dilution: "1+40", timeS: 500 },
      ],
    };
    const beyond = {
      ...hutStock,
      baseline: { ...hutStock.baseline, dilution: "1+25" },
      knowledge: { dilution: table },
    };
    expect(cautionsOf(beyond).map(({ path }) => path)).toContain("/developer/dilution");
    const all = cautionsOf({ ...hutCoffee, conditions: { temperatureC: 30, ageH: 3, usedCm2PerL: 9000 } });
    const gravity = all.map(({ severity }) => ["stop", "warn", "note"].indexOf(severity));
    expect(gravity).toEqual([...gravity].sort((a, b) => a - b));
    expect(all.every(({ path }) => path === undefined || path.startsWith("/"))).toBe(true);
    expect(cautionsOf(hutStock)).toEqual([]);
  });

  it("knows hydroquinone in the cold and soft gelatin in the heat", () => {
    const cold = {
      ...hutStock,
      developer: { ...hutStock.developer, hydroquinone: true },
      conditions: { temperatureC: 12 },
    };
    expect(codes(cold)).toContain("hydroquinone-cold");
    expect(codes({ ...cold, developer: hutStock.developer })).not.toContain("hydroquinone-cold");
    const warm = {
      ...hutStock,
      material: { name: "plate", emulsion: "soft" },
      conditions: { temperatureC: 23 },
    };
    expect(codes(warm)).toContain("soft-emulsion-warm");
    expect(codes({ ...warm, material: { name: "plate", emulsion: "hardened" } })).not.toContain(
      "soft-emulsion-warm",
    );
  });

  it("asks for enough stock", () => {
    // 10 ml a roll of a p-aminophenol stock: the maker's older figure (common practice).
    const of = (developer: object, material: object = { areaCm2: 516.128 }) =>
      cautionOf(
        {
          ...hutStock,
          developer: { ...hutStock.developer, dilution: "1+49", ...developer },
          material: { name: "film", ...material },
        },
        "too-little-stock",
      );
    expect(of({ volumeMl: 300, family: "p-aminophenol" })).toMatchObject({
      path: "/developer/volumeMl",
      limit: 10,
      actual: expect.closeTo(6, 9),
    });
    expect(of({ volumeMl: 500, family: "p-aminophenol" })).toBeUndefined();
    expect(of({ volumeMl: 300, leastMlPerRoll: 5 })).toBeUndefined();
    expect(of({ volumeMl: 300, leastMlPerRoll: 7 })!.limit).toBe(7);
    expect(of({ volumeMl: 300, leastMlPerRoll: 7, family: "p-aminophenol" })!.limit).toBe(7);
    expect(of({ volumeMl: 300 })).toBeUndefined();
    expect(of({ family: "p-aminophenol" })).toBeUndefined();
    expect(of({ volumeMl: 300, family: "p-aminophenol" }, {})).toBeUndefined();
  });

  it("tells the time of a worn bath what the check says of it, by the material", () => {
    const worn = (material: Recipe["material"], developer: object): readonly string[] => {
      const recipe = {
        ...hutStock,
        material,
        developer: { ...hutStock.developer, ...developer },
        conditions: { usedCm2PerL: 4644 },
      };
      return compensateRecipe(anyOf(recipe)).cautions.flatMap(({ code, severity }) =>
        /capacity|well-used/.test(code) ? [`${code} ${severity}`] : [],
      );
    };
    const film = { name: "film", kind: "film", areaCm2: 516 } as const;
    expect(worn(film, { volumeMl: 1000 })).toEqual(["bath-past-capacity warn"]);
    expect(worn(film, {})).toEqual(["bath-well-used warn"]);
    // A litre does 6452 cm² of paper: practice with film, by the silver (from memory).
    const paper = { name: "paper", kind: "paper", areaCm2: 516 } as const;
    expect(worn(paper, {})).toEqual([]);
    expect(worn(paper, { volumeMl: 1000 })).toEqual([]);
    expect(worn(paper, { volumeMl: 1000, capacityCm2PerL: 4000 })).toEqual(["bath-past-capacity stop"]);
  });

  it("judges the used bath, each thing once", () => {
    const developer = { ...hutStock.developer, volumeMl: 500, capacityCm2PerL: 2000, keepingLimitH: 24 };
    const full = { ...hutStock, developer, conditions: { usedCm2PerL: 2001 } };
    expect(cautionsOf(full).filter(({ severity }) => severity === "stop")).toEqual([
      {
        code: "bath-past-capacity",
        severity: "stop",
        message: "The bath has developed 2001 cm² in each litre. It can do 2000. Mix fresh.",
        path: "/conditions/usedCm2PerL",
        quantity: "cm2PerL",
        limit: 2000,
        actual: 2001,
      },
    ]);
    const both = {
      ...full,
      knowledge: { use: { increase: 0.01, perCm2PerL: 500, growth: "linear", capacityCm2PerL: 1500 } },
    };
    expect(codes(both).filter((code) => code === "bath-past-capacity")).toHaveLength(1);
    expect(codes({ ...both, developer: hutStock.developer })).toContain("bath-past-capacity");
    const reached = {
      ...hutStock,
      developer,
      material: { name: "plate", areaCm2: 108 },
      conditions: { usedCm2PerL: 1800 },
    };
    expect(cautionOf(reached, "bath-capacity-reached")).toEqual({
      code: "bath-capacity-reached",
      severity: "warn",
      message: "This brings the bath to 2016 cm² in each litre. It can do 2000. Use more bath.",
      path: "/material/areaCm2",
      quantity: "cm2PerL",
      limit: 2000,
      actual: 2016,
      data: { by: "own" },
    });
    const has = (more: object): boolean => codes({ ...reached, ...more }).includes("bath-capacity-reached");
    expect(has({ conditions: { usedCm2PerL: 1784 } })).toBe(false);
    // Rounding: the third roll fills a capacity of two a litre in a litre and a half, and is not past it.
    const rolls = (used: number): object => ({
      material: { name: "roll", areaCm2: 516.128 },
      developer: { ...developer, volumeMl: 1500, capacityCm2PerL: 1032.256 },
      conditions: { usedCm2PerL: used },
    });
    expect(688.170666667 + (1000 * 516.128) / 1500).toBeGreaterThan(1032.256);
    expect(has(rolls(688.170666667))).toBe(false);
    // Full by rounding is full: it was neither past its capacity nor reaching it.
    expect(has(rolls(1032.256 * (1 + 1e-12)))).toBe(true);
    expect(has({ conditions: { usedCm2PerL: 2001 } })).toBe(false);
    expect(has({ conditions: { usedCm2PerL: 2000 } })).toBe(true);
    expect(has({ material: { name: "plate" }, conditions: { usedCm2PerL: 2000 } })).toBe(false);
    expect(has({ developer: { ...hutStock.developer, volumeMl: 500 } })).toBe(false);
    expect(has({ developer: { ...hutStock.developer, capacityCm2PerL: 2000 } })).toBe(false);
    expect(has({ conditions: {}, developer: { ...developer, capacityCm2PerL: 200 } })).toBe(true);
    expect(
      has({
        developer: { ...hutStock.developer, volumeMl: 500 },
        knowledge: both.knowledge,
        conditions: { usedCm2PerL: 1400 },
      }),
    ).toBe(true);
    expect(
      cautionOf({ ...hutStock, developer, conditions: { ageH: 25 } }, "bath-past-keeping"),
    ).toMatchObject({ path: "/conditions/ageH", limit: 24 });
    const old = { ...hutStock, conditions: { ageH: 500 } };
    expect(cautionOf(old, "age-unknown")).toMatchObject({ severity: "stop", path: "/conditions/ageH" });
    const keeps = { ...hutStock.developer, keepingLimitH: 1000 };
    expect(codes({ ...old, developer: keeps })).not.toContain("age-unknown");
    // Up to what it keeps the bath ages as slowly as in a day.
    const spread = (recipe: object): number =>
      compensateRecipe(recipe as Recipe).factors.find(({ cause }) => cause === "age")!.logSd;
    expect(spread({ ...old, developer: keeps })).toBe(0.08);
    expect(spread(old)).toBeCloseTo(Math.hypot(0.08, 0.75 * ((0.08 * 500) / 24 - 0.08)), 12);
    const dead = { ...hutStock, conditions: { ageH: 2 }, knowledge: { age: { kind: "life", lifeH: 1 } } };
    expect(codes(dead).filter((code) => code === "bath-past-life")).toHaveLength(1);
    const slow = {
      ...hutStock,
      conditions: { ageH: 1.2 },
      knowledge: { age: { kind: "half-life", halfLifeH: 1 } },
    };
    expect(cautionOf(slow, "bath-too-slow")!.path).toBe("/conditions");
    const worn = {
      ...hutStock,
      conditions: { usedCm2PerL: 1032.256 },
      knowledge: { use: { increase: 0.1, perCm2PerL: 516.128, growth: "linear" } },
    };
    expect(cautionOf(worn, "bath-slow")!.message).toBe("The bath needs 20 % more time than a fresh one.");
  });

  it("hands the brew to its module with age, film and emulsion", () => {
    const coffee = { ingredient: "instant-coffee", massG: 20 };
    const brewed = (ingredients: object[], more: object = {}) => ({
      ...hutStock,
      developer: { kind: "brew", brew: { volumeMl: 500, ingredients } },
      ...more,
    });
    // Baking soda alone is too weak an alkali for coffee.
    expect(
      cautionOf(brewed([coffee, { ingredient: "baking-soda", massG: 27 }]), "alkali-too-weak"),
    ).toMatchObject({ severity: "stop", path: "/developer/brew" });
    const right = [
      coffee,
      { ingredient: "soda-anhydrous", massG: 20 },
      { ingredient: "ascorbic-acid", massG: 8 },
    ];
    expect(codes(brewed(right))).not.toContain("alkali-too-weak");
    expect(cautionOf(brewed(right, { conditions: { ageH: 9 } }), "bath-past-life")).toMatchObject({
      severity: "stop",
      path: "/conditions/ageH",
      actual: 9,
    });
    expect(codes(brewed(right))).toContain("restrainer-wanted");
    expect(codes(brewed(right, { material: { name: "plate", iso: 25 } }))).not.toContain("restrainer-wanted");
    const strong = [coffee, { ingredient: "sodium-hydroxide", massG: 1.44 }];
    expect(codes(brewed(strong, { material: { name: "plate", emulsion: "soft" } }))).toContain("ph-high");
    expect(codes(brewed(strong, { material: { name: "plate", emulsion: "hardened" } }))).not.toContain(
      "ph-high",
    );
    const small = { kind: "brew", brew: { volumeMl: 500, ingredients: right }, capacityCm2PerL: 200 };
    expect(
      cautionOf(
        { ...hutStock, material: { name: "plate", areaCm2: 108 }, developer: small },
        "bath-capacity-reached",
      )!.actual,
    ).toBe(216);
  });

  it("says which material can be watched", () => {
    const of = (byInspection: boolean | undefined, sensitization?: string) =>
      cautionsOf({ ...hutStock, material: { name: "plate", sensitization }, byInspection }).map(
        ({ code, severity, path }) => [code, severity, path],
      );
    expect(of(true, "panchromatic")).toEqual([["panchromatic-dark", "stop", "/byInspection"]]);
    expect(of(true, "orthochromatic")).toEqual([["safelight-red", "warn", "/byInspection"]]);
    expect(of(true, "blue-sensitive")).toEqual([["safelight-amber", "note", "/byInspection"]]);
    // An unknown material is taken as panchromatic.
    expect(of(true)).toEqual([["panchromatic-dark", "stop", "/byInspection"]]);
    expect(of(false, "panchromatic")).toEqual([]);
    expect(of(undefined, "panchromatic")).toEqual([]);
  });

  it("looks at the baths when the recipe names them", () => {
    const baths = { fix: { clearingS: 30, times: 2, temperatureC: 14 }, wash: {} };
    expect(cautionOf({ ...hutStock, baths }, "temperature-step")).toMatchObject({
      path: "/baths/fix/temperatureC",
      actual: 6,
    });
    expect(codes({ ...hutStock, baths, conditions: { temperatureC: 14 } })).not.toContain("temperature-step");
    const used = { fix: { clearingS: 30, times: 2, usedCm2PerL: 9000 }, wash: {} };
    const developer = { ...hutStock.developer, volumeMl: 100 };
    expect(
      cautionOf(
        { ...hutStock, developer, material: { name: "film", areaCm2: 516.128 }, baths: used },
        "fixer-capacity-reached",
      )!.severity,
    ).toBe("warn");
    expect(codes({ ...hutStock, baths: used })).not.toContain("fixer-past-capacity");
    expect(
      cautionOf(
        { ...hutStock, material: { name: "film", iodideRich: true }, baths: used },
        "fixer-past-capacity",
      )!.severity,
    ).toBe("stop");
    const warm = { fix: { ...baths.fix, temperatureC: 22 }, wash: {} };
    expect(codes({ ...hutStock, material: { name: "plate", emulsion: "soft" }, baths: warm })).toContain(
      "soft-emulsion-warm",
    );
  });
});

describe("text for people", () => {
  it("describes a compensation", () => {
    const knowledge = {
      temperature: { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.1 },
    } as const;
    const of = (conditions: object, more: object = {}) =>
      describeCompensation(compensate({ timeS: 600, temperatureC: 20, ...more }, conditions, knowledge));
    expect(of({ temperatureC: 18 })).toEqual([
      "Develop 11:29, with 90 % certainty between 10:44 and 12:18.",
      "the known time itself, good to 7 %",
      "temperature, 20 °C to 18 °C: 15 % more, give or take 2 % (given)",
    ]);
    expect(of({ temperatureC: 22 })[2]).toBe(
      "temperature, 20 °C to 22 °C: 13 % less, give or take 2 % (given)",
    );
    expect(of({ temperatureC: 5 }).slice(2)).toEqual([
      "temperature, 20 °C to 5 °C: 2.8 times the time, give or take 13 % (given)",
      expect.stringMatching(/^Take care: [^[]*\.$/),
      "Take care: More than 10 °C from the temperature of the known time.",
    ]);
    expect(of({ temperatureC: 10 })[2]).toBe(
      "temperature, 20 °C to 10 °C: 2 times the time, give or take 9 % (given)",
    );
    expect(of({ ageH: 1 })[2]).toBe("age, 0 h to 1 h: the same time, give or take 3 % (general rule)");
    // Exactly the same, and exactly known: no line at all.
    expect(of({}, { logSd: 0 })).toEqual(["Develop 10:00, with 90 % certainty between 10:00 and 10:00."]);
    expect(
      describeCompensation({ timeS: 1e7, lowS: 1, highS: 1.1e7, refused: false, factors: [], cautions: [] }),
    ).toEqual(["Develop 2777:46:40, with 90 % certainty between 0:01 and months."]);
    const slight = { cause: "use", logSd: 0, basis: "given", sources: [] } as const;
    const near = (value: number) =>
      describeCompensation({
        timeS: 1,
        lowS: 1,
        highS: 1,
        refused: false,
        factors: [{ ...slight, value }],
        cautions: [],
      })[1];
    expect([near(1.0051), near(1.0049), near(0.9949), near(0.9951), near(1.99)]).toEqual([
      "use: 1 % more, give or take 0 % (given)",
      "use: the same time, give or take 0 % (given)",
      "use: 1 % less, give or take 0 % (given)",
      "use: the same time, give or take 0 % (given)",
      "use: 99 % more, give or take 0 % (given)",
    ]);
    expect(thrown(() => describeCompensation(anyOf(null)))).toBe(
      "TypeError: describeCompensation: compensation must be an object, got null",
    );
  });

  it("describes cautions, gravest first", () => {
    const list: Caution[] = [
      { code: "other-baseline", severity: "note", message: "One." },
      { code: "bath-past-capacity", severity: "stop", message: "Two.", path: "/x/y" },
      { code: "short-time", severity: "warn", message: "Three.", path: "" },
    ];
    expect(describeCautions(list)).toEqual(["Stop: Two. [/x/y]", "Take care: Three.", "Note: One."]);
    expect(describeCautions([])).toEqual([]);
    expect(thrown(() => describeCautions(anyOf({})))).toBe(
      "TypeError: describeCautions: cautions must be an array, got an object",
    );
  });
});

describe("what the cautions of a recipe point at", () => {
  it("have no field for a place where they have none", () => {
    const [short] = cautionsOf({ ...hutStock, baseline: { timeS: 200, temperatureC: 20 } });
    expect(Object.keys(short!)).toEqual(["code", "severity", "message", "quantity", "limit", "actual"]);
  });
  it("hold each of two limits that one age is past", () => {
    const old = {
      ...hutStock,
      developer: { ...hutStock.developer, keepingLimitH: 1.5 },
      conditions: { ageH: 2 },
      knowledge: { age: { kind: "life", lifeH: 1 } },
    };
    expect(cautionsOf(old).filter(({ severity }) => severity === "stop")).toMatchObject([
      {
        code: "bath-past-life",
        severity: "stop",
        path: "/conditions/ageH",
        quantity: "ageH",
        limit: 1,
        actual: 2,
        data: { at: "pour-in" },
      },
      {
        code: "bath-past-keeping",
        severity: "stop",
        path: "/conditions/ageH",
        quantity: "ageH",
        limit: 1.5,
        actual: 2,
      },
    ]);
  });
  it("put a bath that is slow, or too slow, at the conditions as a whole", () => {
    // Two portions of 10 % are 20 %; twelve are 120 %, more than twice the time.
    const use = { increase: 0.1, perCm2PerL: 500, growth: "linear" };
    const slow = (usedCm2PerL: number) =>
      cautionsOf({ ...hutStock, conditions: { usedCm2PerL }, knowledge: { use } }).filter(({ code }) =>
        code.includes("slow"),
      );
    expect(slow(1000)).toMatchObject([
      {
        code: "bath-slow",
        severity: "note",
        path: "/conditions",
        quantity: "ratio",
        actual: 1.2,
      },
    ]);
    expect(slow(6000).map(({ code, path }) => [code, path])).toEqual([["bath-too-slow", "/conditions"]]);
  });
  it("say nothing of a brew where the developer is a stock", () => {
    expect(brewCautions(anyOf(hutStock))).toEqual([]);
  });
});
