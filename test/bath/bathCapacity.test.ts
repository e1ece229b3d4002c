import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import {
  bathCapacity,
  filmAreaCm2,
  handbookUseLaw,
  type Caution,
  type DeveloperBrew,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
const ROLL = filmAreaCm2("120");
const PLATE = 9 * 12;
const codes = (bath: Parameters<typeof bathCapacity>[0]): readonly string[] =>
  bathCapacity(bath).cautions.map(({ code }) => code);

/** Coffee and vitamin C in a litre, g (common practice). */
const brewOf = (coffeeG: number, vitaminCG: number, volumeMl = 1000): DeveloperBrew => ({
  volumeMl,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: (54 * volumeMl) / 1000 },
    ...(coffeeG > 0 ? [{ ingredient: "instant-coffee", massG: (coffeeG * volumeMl) / 1000 } as const] : []),
    ...(vitaminCG > 0
      ? [{ ingredient: "ascorbic-acid", massG: (vitaminCG * volumeMl) / 1000 } as const]
      : []),
  ],
});
const full = brewOf(40, 16);

describe("bathCapacity", () => {
  it.each([
    // 250 ml a roll (common practice); plates and paper by their silver, 7.5 and 1.6 g/m² against 5 (from memory).
    ["film", 4, ROLL],
    ["plate", 12, PLATE],
    ["paper", 12, 8 * 10 * 2.54 ** 2],
  ] as const)("of a litre of full brew is for %s %i pieces", (material, pieces, areaCm2) => {
    const { capacityCm2, by } = bathCapacity({ brew: full, material });
    expect(by).toBe("practice");
    expect(Math.floor(capacityCm2 / areaCm2 + 1e-9)).toBe(pieces);
  });
  it("of coffee alone is decided by its agent: 2.9 rolls a litre, one or two in half a litre to one", () => {
    const { capacityCm2PerL, by, limits } = bathCapacity({ brew: brewOf(40, 0) });
    expect(by).toBe("agent");
    expect(capacityCm2PerL / ROLL).toBeCloseTo(2.9, 1);
    expect(limits.map((one) => one.by)).toEqual(["agent", "practice", "bromide"]);
  });
  it("goes by the stock in the litre: ten rolls in 1+100 are not ten in 1+25", () => {
    // 10 ml of p-aminophenol concentrate a roll (common practice).
    const rolls = (dilution: string): number =>
      bathCapacity({ volumeMl: 1000, dilution, family: "p-aminophenol" }).capacityCm2 / ROLL;
    expect(rolls("1+100")).toBeCloseTo(1000 / 101 / 10, 9);
    expect(rolls("1+25")).toBeCloseTo(1000 / 26 / 10, 9);
    // The printed capacity of a use law: 16 rolls a US gallon of stock, 8 of 1+1 (from memory).
    const use = handbookUseLaw("metol-hydroquinone-borax");
    const printed = (dilution: string): number =>
      bathCapacity({ volumeMl: 3785.411784, dilution, use }).capacityCm2 / ROLL;
    expect(printed("stock")).toBeCloseTo(16, 9);
    expect(printed("1+1")).toBeCloseTo(8, 9);
  });
  it("takes an own capacity before a printed one, and that before what is estimated", () => {
    const use = handbookUseLaw("phenidone-ascorbate");
    const bath = { volumeMl: 500, usedCm2PerL: 1000 };
    expect(bathCapacity({ ...bath, use, capacityCm2PerL: 3000 })).toMatchObject({
      capacityCm2PerL: 3000,
      capacityCm2: 1500,
      leftCm2: 1000,
      by: "own",
    });
    expect(bathCapacity({ ...bath, use }).by).toBe("printed");
    expect(bathCapacity({ ...bath, use: { ...use, capacityCm2PerL: undefined } }).by).toBe("practice");
    expect(bathCapacity({ ...bath, usedCm2PerL: 5000 }).leftCm2).toBe(0);
  });
  it("has a word for nine plates in a cup of brew, and a stop for twelve", () => {
    const of = (count: number): readonly Caution[] =>
      bathCapacity({ brew: brewOf(40, 16, 250), material: "plate", areaCm2: count * PLATE }).cautions;
    // 12 × 108 cm² in 250 ml are 3.8 times the estimate, past 2^1.645 = 3.13 times.
    expect(of(12)).toMatchObject([{ code: "bath-capacity-reached", severity: "stop" }]);
    expect(of(9)).toMatchObject([
      {
        code: "bath-capacity-reached",
        severity: "warn",
        path: "/areaCm2",
        quantity: "cm2PerL",
        limit: expect.closeTo((4 * ROLL) / 1.5, 6),
        actual: 4 * 9 * PLATE,
        data: { by: "practice" },
      },
    ]);
  });
  it("stops past all agent at all silver", () => {
    // A trace of vitamin C and no coffee: twenty rolls of silver are more than it can reduce.
    const trace = brewOf(0, 0.5);
    expect(bathCapacity({ brew: trace, areaCm2: 20 * ROLL }).cautions).toMatchObject([
      { code: "bath-past-agent", severity: "stop", path: "/areaCm2", quantity: "cm2PerL" },
    ]);
    expect(codes({ brew: full, areaCm2: 4 * ROLL })).toEqual([]);
  });
  it("stops past a stated capacity, and warns past an estimated one", () => {
    const past = (bath: object): unknown =>
      bathCapacity({ volumeMl: 1000, usedCm2PerL: 3000, ...bath }).cautions.map(
        ({ code, severity, path }) => [code, severity, path],
      );
    expect(past({})).toEqual([["bath-past-capacity", "warn", "/usedCm2PerL"]]);
    expect(past({ usedCm2PerL: 7000 })).toEqual([["bath-past-capacity", "stop", "/usedCm2PerL"]]);
    // Four rolls a litre are an estimate: 5 % more are inside its rounding.
    expect(past({ usedCm2PerL: 4.2 * ROLL })).toEqual([]);
    expect(past({ usedCm2PerL: 4.3 * ROLL })).toEqual([["bath-past-capacity", "warn", "/usedCm2PerL"]]);
    expect(past({ capacityCm2PerL: 2999 })).toEqual([["bath-past-capacity", "stop", "/usedCm2PerL"]]);
    expect(past({ capacityCm2PerL: 3000 })).toEqual([]);
    expect(past({ capacityCm2PerL: 3000, areaCm2: 1 })).toEqual([
      ["bath-capacity-reached", "warn", "/areaCm2"],
    ]);
    expect(past({ capacityCm2PerL: 3000, areaCm2: 9000 })).toEqual([
      ["bath-capacity-reached", "stop", "/areaCm2"],
    ]);
  });
  it("tells one shortage once, by what is missing most", () => {
    const said = (bath: Parameters<typeof bathCapacity>[0]): readonly unknown[] =>
      bathCapacity(bath).cautions.map(({ code, severity }) => [code, severity]);
    // One roll in half a litre of 1+50, the usual way: 9.8 ml of stock for a least of 10.
    expect(said({ volumeMl: 500, dilution: "1+50", family: "p-aminophenol", areaCm2: ROLL })).toEqual([]);
    expect(said({ volumeMl: 500, dilution: "1+100", family: "p-aminophenol", areaCm2: ROLL })).toEqual([
      ["too-little-stock", "warn"],
    ]);
    // Four rolls in 100 ml: ten times the bath's capacity, six times its stock.
    expect(said({ volumeMl: 100, dilution: "1+25", areaCm2: 4 * ROLL })).toEqual([
      ["bath-capacity-reached", "stop"],
    ]);
  });
  it("asks for half a millilitre for each cm² of a dish", () => {
    // Two fluid ounces for a quarter plate, four for a half plate (household encyclopaedia, Photography: Development
    // of the Negative, part 2): 0.57 to 0.64 ml/cm², imperial ounces of 28.4 ml, and never less than the least here.
    for (const [ounces, inches] of [
      [2, 3.25 * 4.25],
      [4, 4.75 * 6.5],
    ] as const) {
      const areaCm2 = inches * 2.54 ** 2;
      const volumeMl = ounces * 28.413;
      expect(codes({ volumeMl, areaCm2, vessel: "tray" })).not.toContain("thin-layer");
      expect(bathCapacity({ volumeMl, areaCm2, vessel: "tray" }).leastVolumeMl! / volumeMl).toBeGreaterThan(
        0.75,
      );
    }
    const dish = { areaCm2: PLATE, vessel: "tray" } as const;
    expect(bathCapacity({ volumeMl: 50, ...dish }).cautions).toMatchObject([
      {
        code: "thin-layer",
        severity: "warn",
        path: "/volumeMl",
        quantity: "mlPerCm2",
        limit: 0.5,
        actual: 50 / PLATE,
        data: { leastMl: 54 },
      },
    ]);
    expect(codes({ volumeMl: 54, areaCm2: PLATE, vessel: "tray", capacityCm2PerL: 1e5 })).toEqual([]);
    // The floor of the dish goes before what lies in it, and a tank has no floor.
    expect(codes({ volumeMl: 150, areaCm2: PLATE, dishCm2: 500 })).toEqual(["thin-layer"]);
    expect(codes({ volumeMl: 150, areaCm2: 400, vessel: "tank", capacityCm2PerL: 1e5 })).toEqual([]);
  });
  it("asks for enough stock, with a family and without one", () => {
    const bath = { volumeMl: 400, dilution: "1+99", areaCm2: ROLL };
    expect(bathCapacity(bath).cautions).toMatchObject([
      { code: "too-little-stock", path: "/volumeMl", limit: 6, actual: expect.closeTo(4, 9) },
    ]);
    expect(bathCapacity(bath).leastStockMl).toBeCloseTo(6, 9);
    expect(bathCapacity({ ...bath, family: "p-aminophenol" }).leastStockMl).toBeCloseTo(10, 9);
    expect(codes({ ...bath, leastMlPerRoll: 4 })).toEqual([]);
  });
  it("says what it did not read, and refuses what is wrong by name", () => {
    expect(bathCapacity(anyOf({ volumeMl: 500, areaCm: 1 })).cautions).toMatchObject([
      { code: "unknown-field", path: "/areaCm" },
    ]);
    expect(() => bathCapacity({})).toThrow(TypeError);
    expect(() => bathCapacity({ volumeMl: 0 })).toThrow(/^bathCapacity: bath.volumeMl must be above 0/);
    expect(() => bathCapacity({ volumeMl: 1, material: anyOf("tin") })).toThrow(
      /^bathCapacity: bath.material/,
    );
    expect(() => bathCapacity({ volumeMl: 1, vessel: anyOf("dish") })).toThrow(/^bathCapacity: bath.vessel/);
    expect(() => bathCapacity({ volumeMl: 1, family: anyOf("tea") })).toThrow(/^bathCapacity: bath.family/);
    expect(() => bathCapacity({ volumeMl: 1, areaCm2: -1 })).toThrow(/^bathCapacity: bath.areaCm2/);
    expect(() => bathCapacity(anyOf(null))).toThrow(/^bathCapacity: bath must be an object/);
  });
});

describe("capacity", () => {
  const grams = fc.integer({ min: 0, max: 6000 }).map((each) => each / 100);
  test.prop([grams, grams, grams, fc.constantFrom("film" as const, "plate" as const, "paper" as const)])(
    "never falls with more agent",
    (coffee, vitaminC, more, material) => {
      const of = (c: number, v: number): number => bathCapacity({ brew: brewOf(c, v), material }).capacityCm2;
      const before = of(coffee, vitaminC);
      expect(of(coffee + more, vitaminC)).toBeGreaterThanOrEqual(before * (1 - 1e-12));
      expect(of(coffee, vitaminC + more)).toBeGreaterThanOrEqual(before * (1 - 1e-12));
    },
  );
  test.prop([fc.double({ min: 50, max: 5000, noNaN: true }), fc.double({ min: 1, max: 10, noNaN: true })])(
    "grows with the volume and is the same in each litre",
    (volumeMl, times) => {
      const [one, more] = [volumeMl, volumeMl * times].map((ml) =>
        bathCapacity({ volumeMl: ml, dilution: "1+9", family: "concentrate" }),
      );
      expect(more!.capacityCm2PerL).toBe(one!.capacityCm2PerL);
      expect(more!.capacityCm2 / one!.capacityCm2).toBeCloseTo(times, 9);
    },
  );
  test.prop([
    fc.double({ min: 0, max: 1e4, noNaN: true }),
    fc.double({ min: 1, max: 1e4, noNaN: true }),
    fc.double({ min: 50, max: 5000, noNaN: true }),
  ])("left is what can still go in without a word", (usedCm2PerL, capacityCm2PerL, volumeMl) => {
    const bath = { usedCm2PerL, capacityCm2PerL, volumeMl };
    const { leftCm2 } = bathCapacity(bath);
    fc.pre(leftCm2 > 1e-6 && leftCm2 < 1e6);
    expect(codes({ ...bath, areaCm2: leftCm2 })).toEqual([]);
    expect(codes({ ...bath, areaCm2: Math.min(1e6, leftCm2 * 1.001 + 1e-5 * volumeMl) })).toEqual([
      "bath-capacity-reached",
    ]);
  });
});
