import { describe, expect, it } from "vitest";
import {
  bathCapacity,
  bathVerdict,
  compensate,
  compensateRecipe,
  handbookUseLaw,
  predict,
  startKnowledge,
  type Caution,
  type DeveloperBrew,
  type Recipe,
  type UseLaw,
} from "../../src/index.js";
import { handbookLeastStock } from "../../src/handbook/dilution.js";
import { halfLitre } from "../brew/brews.js";
import { anyOf } from "../helpers.js";

describe("bathVerdict", () => {
  const use: UseLaw = { increase: 0.1, perCm2PerL: 100, growth: "linear" };
  it("calls a fresh bath usable, and one at the edge of showing", () => {
    expect(bathVerdict({ usedCm2PerL: 0, ageH: 0 })).toEqual({ verdict: "usable", factor: 1, cautions: [] });
    expect(bathVerdict({ use, usedCm2PerL: 50 }).verdict).toBe("usable");
  });
  it("warns of a brew at an age at which it may have failed", () => {
    const brew = halfLitre;
    expect(bathVerdict({ ageH: 0.5, timeS: 900, highS: 1620, brew }).cautions).toEqual([]);
    expect(bathVerdict({ ageH: 2.9, brew })).toMatchObject({
      verdict: "usable",
      cautions: [{ code: "bath-may-fail", severity: "warn", path: "/ageH", actual: 2.9 }],
    });
    expect(bathVerdict({ ageH: 3.1, brew }).verdict).toBe("discard");
  });
  it("says of each verdict which field it did not read", () => {
    const said = {
      code: "unknown-field",
      severity: "warn",
      path: "/usedCm2perL",
    };
    const misspelt = (bath: object) => bathVerdict(anyOf({ ...bath, usedCm2perL: 5000 }));
    expect(misspelt({})).toMatchObject({ verdict: "unknown", factor: 1, cautions: [said] });
    expect(misspelt({ use, usedCm2PerL: 300 }).cautions).toMatchObject([said, { code: "bath-slow" }]);
    expect(misspelt({ ageH: 2, keepingLimitH: 1 }).cautions).toMatchObject([
      { code: "bath-past-keeping" },
      said,
    ]);
  });
  it.each([
    [{ material: "nope" }, "/bath/material"],
    [{ dilution: "1:9" }, "/bath/dilution"],
    [{ family: "nope" }, "/bath/family"],
    [{ family: "nope", leastMlPerRoll: 100 }, "/bath/family"],
    [{ leastMlPerRoll: -1 }, "/bath/leastMlPerRoll"],
    [{ brew: { volumeMl: 1000 } }, "/bath/brew/ingredients"],
    [{ use: { increase: 0.1, perCm2PerL: 100, growth: "linear", dilution: "1:9" } }, "/bath/use/dilution"],
  ] as const)("checks each field that is given, used or not: %j", (bath, path) => {
    expect(() => bathVerdict(anyOf({ usedCm2PerL: 100, ...bath }))).toThrow(
      expect.objectContaining({ path }) as Error,
    );
  });
  it("asks for more time, and says how much", () => {
    expect(
      bathVerdict({ use, usedCm2PerL: 300, age: { kind: "half-life", halfLifeH: 10 }, ageH: 1 }),
    ).toEqual({
      verdict: "more-time",
      factor: expect.closeTo(1.3 * 2 ** 0.1, 12),
      cautions: [
        {
          code: "bath-slow",
          severity: "note",
          message: "The bath needs 39 % more time than a fresh one.",
          path: "",
          quantity: "ratio",
          actual: expect.closeTo(1.3 * 2 ** 0.1, 12),
        },
      ],
    });
  });
  // 40 g/l of coffee alone carry 2.9 rolls of 516.128 cm² a litre, 10 ml of concentrate one roll (common practice).
  it("warns past the capacity that follows from what the bath is, as bathCapacity does", () => {
    const brew: DeveloperBrew = {
      volumeMl: 500,
      ingredients: [
        { ingredient: "soda-anhydrous", massG: 27 },
        { ingredient: "instant-coffee", massG: 20 },
      ],
    };
    for (const bath of [
      { brew },
      { brew, material: "paper" },
      { family: "p-aminophenol", dilution: "1+50" },
      { leastMlPerRoll: 8, dilution: "1+50" },
    ] as const) {
      const { capacityCm2PerL: limit } = bathCapacity({ volumeMl: 1000, ...bath });
      const past = (usedCm2PerL: number) =>
        bathVerdict({ ...bath, use, usedCm2PerL }).cautions.filter(
          ({ code }) => code === "bath-past-capacity",
        );
      expect(past(limit * 1.05)).toEqual([]);
      expect(past(limit * 1.06)).toMatchObject([{ severity: "warn", path: "/usedCm2PerL", limit }]);
      expect(past(limit * 3.2)).toMatchObject([{ severity: "stop", path: "/usedCm2PerL", limit }]);
    }
    // What is stated goes before what is reckoned, and of an unknown bath nothing is reckoned.
    const stated = bathVerdict({ brew, usedCm2PerL: 1000, capacityCm2PerL: 900 }).cautions[0];
    expect(stated).toMatchObject({ code: "bath-past-capacity", severity: "stop", limit: 900 });
    expect(
      bathVerdict({ brew, usedCm2PerL: 2000, capacityCm2PerL: 3000 }).cautions.map((c) => c.code),
    ).not.toContain("bath-past-capacity");
    expect(bathVerdict({ usedCm2PerL: 3000 }).cautions.map((c) => c.code)).not.toContain(
      "bath-past-capacity",
    );
    expect(() => bathVerdict({ brew: { volumeMl: 1, ingredients: [] } })).toThrow(
      expect.objectContaining({ path: "/bath/brew/ingredients" }),
    );
  });
  it("discards, with each reason", () => {
    const verdict = bathVerdict({
      use,
      usedCm2PerL: 1001,
      age: { kind: "life", lifeH: 1 },
      ageH: 2,
      keepingLimitH: 1.5,
      capacityCm2PerL: 1000,
    });
    expect(verdict.verdict).toBe("discard");
    expect(verdict.factor).toBeCloseTo(2.001, 9);
    expect(verdict.cautions).toEqual([
      {
        code: "bath-past-life",
        severity: "stop",
        message: "The bath is older than its life of 1 h: it fails at once. Mix fresh.",
        path: "/ageH",
        quantity: "ageH",
        limit: 1,
        actual: 2,
        data: { at: "pour-in" },
      },
      {
        code: "bath-past-keeping",
        severity: "stop",
        message: "The bath is older than it keeps in this storage, 1 h 30 min. Mix fresh.",
        path: "/ageH",
        quantity: "ageH",
        limit: 1.5,
        actual: 2,
      },
      {
        code: "bath-past-capacity",
        severity: "stop",
        message: "The bath has developed 1001 cm² in each litre. It can do 1000. Mix fresh.",
        path: "/usedCm2PerL",
        quantity: "cm2PerL",
        limit: 1000,
        actual: 1001,
      },
      {
        code: "bath-too-slow",
        severity: "stop",
        message: "The bath needs 2 times the time of a fresh one, more than 2 times. Mix fresh.",
        path: "",
        quantity: "ratio",
        limit: 2,
        actual: expect.closeTo(2.001, 9),
      },
    ]);
  });
  it("judges by the generic rule where none is given, as compensate does, and says so", () => {
    const { verdict, factor, cautions } = bathVerdict({ usedCm2PerL: 20000, ageH: 500 });
    expect(verdict).toBe("discard");
    // 8 % a roll, 1 + 0.08 × 20000/516.128 = 4.1, and what is guessed of 500 h.
    const asked = compensate({ timeS: 600, temperatureC: 20 }, { usedCm2PerL: 20000, ageH: 500 });
    expect(factor).toBeCloseTo(asked.timeS / 600, 9);
    expect(cautions[1]).toMatchObject({ actual: expect.closeTo(4.1, 1) as number });
    expect(cautions.map(({ code }) => code)).toEqual([
      "age-unknown",
      "bath-too-slow",
      "bath-well-used",
      "default-law",
    ]);
    expect(cautions[3]!.data).toEqual({ causes: ["use", "age"] });
    expect(bathVerdict({ usedCm2PerL: 2000, keepingLimitH: 24, ageH: 1 })).toMatchObject({
      verdict: "more-time",
      cautions: [{ code: "bath-slow" }, { code: "default-law", data: { causes: ["use"] } }],
    });
  });
  it("warns past what practice gives a bath of unknown capacity: four rolls a litre, and 6 ml of stock a roll", () => {
    const used = (bath: Parameters<typeof bathVerdict>[0]): Caution | undefined =>
      bathVerdict(bath).cautions.find(({ code }) => code === "bath-well-used");
    expect(used({ usedCm2PerL: 4 * 516.128 })).toBeUndefined();
    expect(used({ usedCm2PerL: 9 * 516 })).toMatchObject({
      severity: "warn",
      limit: 4 * 516.128,
      actual: 4644,
    });
    // 9.9 ml of stock in a litre are enough for one roll, not for two.
    expect(used({ usedCm2PerL: 516, dilution: "1+100" })).toBeUndefined();
    const least = Math.min(...Object.values(handbookLeastStock).map(({ mlPerRoll }) => mlPerRoll));
    expect(used({ usedCm2PerL: 1032, dilution: "1+100" })!.limit).toBeCloseTo(
      (1000 / 101 / least) * 516.128,
      9,
    );
    // What is known of the bath goes first: a capacity of its own, what it is for, or runs in used baths.
    expect(used({ usedCm2PerL: 4644, capacityCm2PerL: 5000 })).toBeUndefined();
    expect(used({ usedCm2PerL: 4644, material: "paper" })).toBeUndefined();
    expect(used({ usedCm2PerL: 4644, use: { ...use, runs: 3 } })).toBeUndefined();
  });
  it("has the factor and the stops of a time, learned or not, for a bath of unknown life", () => {
    const known = { timeS: 510, temperatureC: 20, logSd: 0.08 };
    for (const bath of [
      { ageH: 20 },
      { ageH: 230, usedCm2PerL: 5000 },
      { ageH: 150, usedCm2PerL: 3000 },
      { ageH: 300 },
    ]) {
      const asked = compensate(known, bath);
      const learned = predict(startKnowledge(known), bath);
      expect(bathVerdict(bath).factor).toBeCloseTo(asked.timeS / 510, 9);
      expect([learned.timeS, learned.refused]).toEqual([asked.timeS, asked.refused]);
      const codes = (cautions: readonly Caution[]) =>
        cautions.map(({ code }) => code).filter((code) => code !== "wide-interval");
      expect(codes(learned.cautions)).toEqual(codes(asked.cautions));
    }
  });
  it("takes the rule for paper where the bath develops paper, as a recipe does", () => {
    // A third of film's silver: a third of its wear.
    const [paper, film] = (["paper", "film"] as const).map(
      (material) => bathVerdict({ usedCm2PerL: 2500, material }).factor - 1,
    );
    expect(paper).toBeLessThan(film! / 2.5);
    const recipe: Recipe = {
      schemaVersion: 2,
      material: { name: "paper", kind: "paper" },
      developer: { kind: "stock", name: "hut stock", dilution: "stock" },
      baseline: { timeS: 120, temperatureC: 20 },
    };
    const asked = compensateRecipe(recipe, { usedCm2PerL: 2500 });
    expect(1 + paper!).toBeCloseTo(asked.timeS / 120, 9);
  });
  it("is unknown where nothing can be judged", () => {
    expect(bathVerdict({})).toEqual({ verdict: "unknown", factor: 1, cautions: [] });
    expect(bathVerdict({ use })).toMatchObject({ verdict: "unknown" });
    // An age without a law or a limit: nobody knows what this bath does in 500 h, or in two.
    expect(bathVerdict({ ageH: 500 })).toMatchObject({
      verdict: "unknown",
      cautions: [
        { code: "age-unknown", severity: "stop", path: "/ageH", quantity: "ageH", limit: 24, actual: 500 },
        { code: "default-law", severity: "note", data: { causes: ["age"] } },
      ],
    });
    expect(bathVerdict({ ageH: 100 })).toMatchObject({
      verdict: "unknown",
      cautions: [{ severity: "warn" }, {}],
    });
    // However much time its use asks for.
    expect(bathVerdict({ ageH: 500, usedCm2PerL: 516 }).verdict).toBe("unknown");
    // A law of the first day says nothing of the second.
    const speeding = { kind: "speeding", perDay: 0.1, runs: 5 } as const;
    expect(bathVerdict({ ageH: 24, age: speeding }).verdict).toBe("more-time");
    expect(bathVerdict({ ageH: 30, age: speeding }).verdict).toBe("unknown");
    expect(bathVerdict({ usedCm2PerL: 10, ageH: 2 }).verdict).toBe("unknown");
    expect(bathVerdict({ usedCm2PerL: 10, ageH: 0 }).verdict).toBe("usable");
    expect(bathVerdict({ ageH: 2, keepingLimitH: 3 }).verdict).toBe("usable");
    expect(bathVerdict({ ageH: 2, age: { kind: "life", lifeH: 3 } }).verdict).toBe("usable");
  });
  it("lets no rule for any bath discard one that is within a capacity of its own", () => {
    // H. E. Ives, Airplane Photography, Philadelphia, 1920, ch. XXII: 19355 cm² in a litre.
    const printed = { capacityCm2PerL: 19355 };
    expect(bathVerdict({ usedCm2PerL: 19000, ...printed }).verdict).toBe("more-time");
    expect(bathVerdict({ usedCm2PerL: 19400, ...printed }).cautions.map(({ code }) => code)).toEqual([
      "bath-past-capacity",
      "bath-too-slow",
      "default-law",
    ]);
  });
  it("discards a bath that dies before the pour-out", () => {
    const age = { kind: "life", lifeH: 1 } as const;
    expect(bathVerdict({ ageH: 0.5, age, timeS: 1500 })).toMatchObject({ verdict: "usable", cautions: [] });
    expect(bathVerdict({ ageH: 0.5, age, timeS: 1500, highS: 2400 })).toMatchObject({
      verdict: "usable",
      cautions: [{ code: "bath-past-life", severity: "warn", path: "/ageH", data: { at: "pour-out" } }],
    });
    expect(bathVerdict({ ageH: 0.5, age, timeS: 2400 }).verdict).toBe("discard");
  });
  it("scales the rule and its capacity by the stock in the litre", () => {
    // Eastman Kodak, publication J-78: 16 rolls a US gallon of stock, 8 of 1+1 (from memory).
    const printed = handbookUseLaw("metol-hydroquinone-borax");
    const rolls = (count: number): number => (count * 516.128) / 3.785411784;
    const of = (dilution: string, usedCm2PerL: number) =>
      bathVerdict({ usedCm2PerL, dilution, use: printed, capacityCm2PerL: undefined });
    expect(of("stock", rolls(16)).verdict).toBe("more-time");
    expect(of("1+1", rolls(8)).verdict).toBe("more-time");
    expect(of("1+1", rolls(8)).factor).toBeCloseTo(of("stock", rolls(16)).factor, 12);
    expect(of("1+1", rolls(8.1))).toMatchObject({
      verdict: "discard",
      cautions: [{ code: "bath-past-capacity", limit: expect.closeTo(rolls(8), 9), actual: rolls(8.1) }],
    });
    // The dilution of its own capacity is that of the bath.
    expect(
      bathVerdict({ usedCm2PerL: 1500, dilution: "1+1", use: printed, capacityCm2PerL: 1600 }).verdict,
    ).toBe("more-time");
  });
  it("takes the capacity of the use law, unless the bath has one of its own", () => {
    const printed = handbookUseLaw("phenidone-ascorbate");
    const limit = printed.capacityCm2PerL;
    const past = { code: "bath-past-capacity", severity: "stop", path: "/usedCm2PerL", limit, actual: 9000 };
    expect(bathVerdict({ usedCm2PerL: 9000, use: printed })).toMatchObject({
      verdict: "discard",
      cautions: [past],
    });
    expect(
      compensate({ timeS: 510, temperatureC: 20 }, { usedCm2PerL: 9000 }, { use: printed }).cautions[0],
    ).toMatchObject({ code: "bath-past-capacity", limit });
    expect(bathVerdict({ usedCm2PerL: limit, use: printed }).verdict).toBe("more-time");
    expect(bathVerdict({ usedCm2PerL: 9000, use: printed, capacityCm2PerL: 9000 }).verdict).toBe("more-time");
    expect(bathVerdict({ usedCm2PerL: 5000, use: printed, capacityCm2PerL: 4000 }).cautions[0]).toMatchObject(
      { limit: 4000, actual: 5000 },
    );
    expect(() => bathVerdict({ use: { ...printed, capacityCm2PerL: 0 } })).toThrow(
      new RangeError(
        "bathVerdict: bath.use.capacityCm2PerL must be above 0 and at most 1000000 cm²/l, got 0",
      ),
    );
  });
  it("does not discard at the limits themselves", () => {
    const verdict = bathVerdict({
      use,
      usedCm2PerL: 1000,
      age: { kind: "life", lifeH: 2 },
      ageH: 2,
      keepingLimitH: 2,
      capacityCm2PerL: 1000,
    });
    expect(verdict.verdict).toBe("more-time");
    expect(verdict.factor).toBe(2);
  });
  it("does not take rounding for more than a limit, and takes a thousandth for it", () => {
    // Mixed and asked about on a clock of hours since 1970, 40 minutes apart: 0.6666666666860692 h.
    const ageH = 480000 + 41 / 60 - (480000 + 1 / 60);
    expect(ageH).toBeGreaterThan(2 / 3);
    const limits = {
      age: { kind: "life", lifeH: 2 / 3 },
      keepingLimitH: 2 / 3,
      use: { ...use, increase: 1 },
      capacityCm2PerL: 100,
    } as const;
    expect(bathVerdict({ ...limits, ageH, usedCm2PerL: 100.00000000000001 })).toMatchObject({
      verdict: "more-time",
      cautions: [{ code: "bath-slow" }],
    });
    expect(
      bathVerdict({ ...limits, ageH: 0.667, usedCm2PerL: 100.1 }).cautions.map(({ code }) => code),
    ).toEqual(["bath-past-life", "bath-past-keeping", "bath-past-capacity", "bath-too-slow"]);
  });
  it("refuses values out of range, by message", () => {
    expect(() => bathVerdict(anyOf(1))).toThrow(new TypeError("bathVerdict: bath must be an object, got 1"));
    expect(() => bathVerdict({ usedCm2PerL: -1 })).toThrow(
      new RangeError("bathVerdict: bath.usedCm2PerL must be from 0 to 1000000 cm²/l, got -1"),
    );
    expect(() => bathVerdict({ ageH: -1 })).toThrow(
      new RangeError("bathVerdict: bath.ageH must be from 0 to 1000000 h, got -1"),
    );
    expect(() => bathVerdict({ keepingLimitH: 0 })).toThrow(
      new RangeError("bathVerdict: bath.keepingLimitH must be above 0 and at most 1000000 h, got 0"),
    );
    expect(() => bathVerdict({ capacityCm2PerL: 0 })).toThrow(
      new RangeError("bathVerdict: bath.capacityCm2PerL must be above 0 and at most 1000000 cm²/l, got 0"),
    );
    expect(() => bathVerdict({ age: { kind: "life", lifeH: 0 } })).toThrow(
      new RangeError("bathVerdict: bath.age.lifeH must be above 0 and at most 1000000 h, got 0"),
    );
    expect(() => bathVerdict({ age: anyOf({ kind: "cliff" }) })).toThrow(
      "bathVerdict: bath.age.kind must be",
    );
  });
});

describe("a bath past what its law can say", () => {
  it("is discarded beyond ten half-lives", () => {
    const { verdict, factor } = bathVerdict({ ageH: 300, age: { kind: "half-life", halfLifeH: 24 } });
    expect(verdict).toBe("discard");
    expect(factor).toBeCloseTo(1024, 9);
    // Ten half-lives themselves the law takes.
    expect(bathVerdict({ ageH: 240, age: { kind: "half-life", halfLifeH: 24 } }).factor).toBeCloseTo(1024, 9);
    expect(() => bathVerdict({ ageH: 300, age: { kind: "half-life", halfLifeH: NaN } })).toThrow(
      /halfLifeH must be from 0.001/,
    );
  });

  it("is discarded where it takes more than 1000 times as long", () => {
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
});
