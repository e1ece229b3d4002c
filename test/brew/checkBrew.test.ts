import { describe, expect, it } from "vitest";
import {
  brewLife,
  brewPh,
  checkBrew,
  handbookIngredients,
  massOf,
  type DeveloperBrew,
  type BrewPart,
  type BrewUse,
  type Caution,
} from "../../src/index.js";
import { brewOf, hutBrew, part } from "./brews.js";
import { dataOf } from "../helpers.js";

const find = (brew: DeveloperBrew, code: string, use?: BrewUse): Caution | undefined =>
  checkBrew(brew, use).find((caution) => caution.code === code);
const codes = (...ingredients: BrewPart[]): string[] =>
  checkBrew(brewOf(...ingredients)).map(({ code }) => code);
const soda = part("soda-anhydrous", 54);
const coffee = part("instant-coffee", 40);
const acid = part("ascorbic-acid", 16);

describe("a sound brew", () => {
  it("has nothing but notes, each with a text", () => {
    const found = checkBrew(brewOf(soda, coffee, acid));
    expect(found.map(({ code }) => code)).toEqual([
      "acid-foams",
      "mix-apart",
      "restrainer-wanted",
      "hazard",
      "gloves-and-glasses",
      "kitchenware",
      "rest-before-use",
      "disposal",
    ]);
    for (const { severity, message } of found) {
      expect(severity).toBe("note");
      expect(message).toMatch(/^[A-Z].*\.$/);
    }
    // What the sentences name is data too.
    expect(found[2]).toMatchObject({ data: { bromideGPerL: 1, saltGPerL: [10, 20], iso: 400 } });
    expect(found[3]).toMatchObject({ data: { ingredient: "soda-anhydrous", hazard: "irritant" } });
  });

  it("is plain JSON", () => {
    const found = checkBrew(hutBrew, { ageH: 3 });
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });
});

describe("restrainer", () => {
  const dose = (ingredient: "potassium-bromide" | "table-salt", gPerL: number): Caution | undefined =>
    find(brewOf(soda, coffee, acid, part(ingredient, gPerL)), "restrainer-strong");

  it("warns past the doses of recipes, and stops where hardly anything develops", () => {
    expect(dose("potassium-bromide", 5)).toBeUndefined();
    expect(dose("potassium-bromide", 10)).toMatchObject({ severity: "warn", limit: 5, actual: 10 });
    expect(dose("potassium-bromide", 50)).toMatchObject({ severity: "stop", limit: 25, actual: 50 });
    // Twenty of salt do what one of bromide does.
    expect(dose("table-salt", 120)).toMatchObject({ severity: "warn", actual: 6 });
  });
});

describe("alkali", () => {
  it("none at all", () => {
    expect(find(brewOf(coffee, acid), "no-alkali")).toMatchObject({ severity: "stop" });
    expect(codes(coffee, acid)).not.toContain("alkali-too-weak");
  });

  it("that may be far too much: caustic soda with coffee holds no pH", () => {
    const brew = brewOf(part("sodium-hydroxide", 2.8), coffee);
    const { ph, low, high } = brewPh(brew);
    expect([ph < 11, high > 12]).toEqual([true, true]);
    const data = { low, high };
    expect(find(brew, "ph-unsure")).toMatchObject({ severity: "warn", data: { soft: false, ...data } });
    expect(find(brew, "ph-unsure", { softEmulsion: true })).toMatchObject({
      severity: "stop",
      limit: 11,
      actual: high,
      data: { soft: true, ...data },
    });
    // Soda holds it, and what is too alkaline for sure is told once.
    for (const held of [brewOf(soda, coffee), brewOf(soda, coffee, acid)])
      expect(find(held, "ph-unsure", { softEmulsion: true })).toBeUndefined();
    expect(codes(part("sodium-hydroxide", 5), coffee)).toContain("ph-high");
    expect(codes(part("sodium-hydroxide", 5), coffee)).not.toContain("ph-unsure");
  });

  it("bicarbonate alone, or too little soda for the acid", () => {
    expect(find(brewOf(part("baking-soda", 54), coffee, acid), "alkali-too-weak")).toMatchObject({
      severity: "stop",
      quantity: "ph",
      limit: 8.5,
      actual: expect.closeTo(7.34, 1),
    });
    expect(codes(part("soda-anhydrous", 8), coffee, acid)).toContain("alkali-too-weak");
    expect(codes(part("soda-anhydrous", 8), coffee, acid)).not.toContain("no-alkali");
  });

  it("warns of alkali that is barely enough", () => {
    expect(find(brewOf(part("soda-anhydrous", 14), coffee, acid), "alkali-low")).toMatchObject({
      severity: "warn",
      quantity: "ph",
      limit: 9,
      actual: expect.closeTo(8.5, 1),
    });
    expect(codes(soda, coffee, acid)).not.toContain("alkali-low");
  });

  it("an ordinary brew of pH 10 has no word about gelatin, soft emulsion or not", () => {
    for (const softEmulsion of [true, false])
      expect(find(brewOf(soda, coffee, acid), "ph-high", { softEmulsion })).toBeUndefined();
  });

  it("soda alone swells gelatin; a soft emulsion is warned from 10.65 and stopped above 11", () => {
    expect(find(brewOf(soda, coffee), "ph-high")).toBeUndefined();
    expect(find(brewOf(soda), "ph-high")).toMatchObject({
      severity: "warn",
      quantity: "ph",
      limit: 11,
      actual: expect.closeTo(11.7, 1),
      data: { soft: false },
    });
    expect(find(brewOf(soda), "ph-high", { softEmulsion: true })).toMatchObject({
      severity: "stop",
      limit: 11,
      data: { soft: true },
    });
    const between = brewOf(soda, part("ascorbic-acid", 5));
    expect(find(between, "ph-high")).toBeUndefined();
    expect(find(between, "ph-high", { softEmulsion: true })).toMatchObject({
      severity: "warn",
      limit: 10.65,
    });
  });

  // Ion product of water: pKw 14.73 at 5 °C and 14.17 at 20 °C (Plummer and Busenberg 1982).
  it("is judged by hydroxide: the same pH is less of it in the cold", () => {
    const at = (temperatureC: number): number =>
      find({ ...brewOf(part("soda-anhydrous", 200)), temperatureC }, "ph-high")!.actual!;
    const ph = (temperatureC: number): number =>
      brewPh({ ...brewOf(part("soda-anhydrous", 200)), temperatureC }).ph;
    expect(at(20)).toBeCloseTo(ph(20), 9);
    expect(at(5) - ph(5)).toBeCloseTo(14.165 - 14.732, 2);
  });

  it("burns from pH 11.5, and above 0.2 mol/l of hydroxide nothing is to be put in it", () => {
    expect(find(brewOf(soda), "caustic-bath")).toMatchObject({ severity: "warn", limit: 11.5 });
    expect(find(brewOf(soda, coffee, acid), "caustic-bath")).toBeUndefined();
    expect(find(brewOf(coffee, part("sodium-hydroxide", 20)), "hydroxide-high")).toMatchObject({
      severity: "stop",
      quantity: "molPerL",
      limit: 0.2,
    });
    expect(find(brewOf(coffee, part("sodium-hydroxide", 5)), "hydroxide-high")).toBeUndefined();
  });

  it("sulphite in an acid bath stops: sulphur dioxide", () => {
    expect(find(brewOf(part("sodium-sulphite", 20), acid), "sulphur-dioxide")).toMatchObject({
      severity: "stop",
      quantity: "ph",
      limit: 7,
    });
    expect(codes(part("sodium-sulphite", 20), part("citric-acid", 20))).toContain("sulphur-dioxide");
    expect(codes(part("sodium-sulphite", 20), soda, coffee, acid)).not.toContain("sulphur-dioxide");
    expect(codes(acid)).not.toContain("sulphur-dioxide");
  });
});

describe("agents", () => {
  it("stops where there is none", () => {
    expect(find(brewOf(soda), "no-agent")).toMatchObject({ severity: "stop" });
    expect(codes(soda, coffee)).not.toContain("no-agent");
    expect(codes(soda, acid)).not.toContain("no-agent");
  });

  it("one without the other", () => {
    expect(find(brewOf(soda, acid), "vitamin-c-without-coffee")).toMatchObject({ severity: "warn" });
    expect(find(brewOf(soda, coffee), "coffee-without-vitamin-c")).toMatchObject({ severity: "note" });
    for (const code of ["vitamin-c-without-coffee", "coffee-without-vitamin-c"]) {
      expect(codes(soda, coffee, part("sodium-ascorbate", 18))).not.toContain(code);
      expect(codes(soda)).not.toContain(code);
    }
  });

  it.each([
    [part("decaffeinated-coffee", 40), "decaffeinated"],
    [part("brewed-coffee", 500), "brewed-coffee"],
    [{ ingredient: "ascorbic-acid-tablet", tablets: 20, labelMg: 500 } as const, "tablet-filler"],
  ])("%o is remarked on", (ingredient, code) => {
    expect(find(brewOf(soda, ingredient), code)).toMatchObject({ severity: "note" });
    expect(codes(soda, coffee, acid)).not.toContain(code);
  });
});

describe("mixing", () => {
  it("acid with carbonate foams, gravely with bicarbonate", () => {
    const foams = find(brewOf(part("baking-soda", 54), coffee, acid), "acid-foams");
    expect(foams).toMatchObject({ severity: "warn", limit: 0.005 });
    expect(foams?.actual).toBeGreaterThan(0.05);
    expect(
      find(brewOf(soda, { ingredient: "ascorbic-acid-tablet", tablets: 8, labelMg: 500 }), "acid-foams"),
    ).toMatchObject({ severity: "note" });
    expect(codes(soda, part("sodium-ascorbate", 18))).not.toContain("acid-foams");
    expect(codes(part("borax", 20), acid)).not.toContain("acid-foams");
    expect(codes(soda, part("citric-acid", 5))).toContain("acid-foams");
  });

  // 16 g of vitamin C are 0.0908 mol, 24 l a mole at 20 °C; citric acid has three protons; carbonate is the limit.
  it("says how many litres of gas acid and carbonate can give", () => {
    const gasL = (...parts: BrewPart[]): unknown => dataOf(find(brewOf(...parts), "acid-foams"))?.["gasL"];
    expect(gasL(soda, acid)).toBeCloseTo(0.0908 * 24.06, 2);
    expect(gasL(soda, part("citric-acid", 19.2))).toBeCloseTo(0.3 * 24.06, 1);
    expect(gasL(part("baking-soda", 8.4), part("citric-acid", 19.2))).toBeCloseTo(0.1 * 24.06, 1);
    expect(gasL(part("baking-soda", 8.4), part("citric-acid", 19.2))).toBeGreaterThan(2);
  });

  it("one ingredient needs no order", () => {
    expect(codes(soda)).not.toContain("mix-apart");
  });
  it.each([
    [
      "all three",
      [soda, coffee, acid],
      "Dissolve each apart. Pour coffee into the alkali. Vitamin C comes last.",
    ],
    ["no vitamin C", [soda, coffee], "Dissolve each apart. Pour coffee into the alkali."],
    ["no coffee", [soda, acid], "Dissolve each apart. Vitamin C comes last."],
  ])("the order names what the brew holds: %s", (_, parts, message) => {
    expect(find(brewOf(...parts), "mix-apart")?.message).toBe(message);
  });

  it("a restrainer is wanted for fast films only", () => {
    expect(find(brewOf(soda, coffee), "restrainer-wanted", { filmIso: 400 })).toBeDefined();
    expect(find(brewOf(soda, coffee), "restrainer-wanted", { filmIso: 399 })).toBeUndefined();
    expect(find(brewOf(soda, coffee), "restrainer-wanted", { material: "film" })).toBeDefined();
    for (const material of ["plate", "paper"] as const)
      expect(find(brewOf(soda, coffee), "restrainer-wanted", { material, filmIso: 400 })).toBeUndefined();
    for (const name of ["potassium-bromide", "table-salt", "iodised-salt"] as const)
      expect(codes(soda, coffee, part(name, 1))).not.toContain("restrainer-wanted");
  });

  it.each([
    ["sodium-hydroxide", "burns", "warn"],
    ["borax", "fertility", "warn"],
    ["trisodium-phosphate", "caustic-dust", "warn"],
    ["soda-anhydrous", "irritant", "note"],
    ["potassium-carbonate", "irritant", "note"],
    ["citric-acid", "irritant", "note"],
    ["sodium-sulphite", "sulphur-dioxide", "note"],
    ["potassium-bromide", "swallowing", "note"],
  ] as const)("names the hazard of %s", (ingredient, hazard, severity) => {
    expect(find(brewOf(coffee, part(ingredient, 5)), "hazard")).toMatchObject({
      severity,
      data: { ingredient, hazard },
      message: expect.stringContaining(handbookIngredients[ingredient].name),
    });
    expect(codes(coffee, acid, part("table-salt", 5))).not.toContain("hazard");
  });

  it("says nothing of caustic soda where there is none", () => {
    const everything = [
      brewOf(coffee),
      brewOf(acid),
      brewOf(soda),
      brewOf(part("baking-soda", 20), coffee),
    ].flatMap((brew) => checkBrew(brew));
    expect(everything.length).toBeGreaterThan(0);
    expect(everything.filter((one) => dataOf(one)?.["ingredient"] === "sodium-hydroxide")).toEqual([]);
    const withIt = checkBrew(brewOf(coffee, part("sodium-hydroxide", 3)));
    expect(withIt.filter((one) => dataOf(one)?.["ingredient"] === "sodium-hydroxide")).not.toEqual([]);
  });

  it("spoons are remarked on when their range is beyond 1.5", () => {
    const { value: massG, low: lowG, high: highG } = massOf({ ingredient: "instant-coffee", spoons: 25 });
    const found = find(brewOf(soda, { ingredient: "instant-coffee", massG, lowG, highG }), "spoon-range");
    expect(found).toMatchObject({
      severity: "note",
      path: "/ingredients/1",
      quantity: "ratio",
      data: { ingredient: "instant-coffee" },
    });
    // Half the range of grams, with exponent 0.6.
    expect(found?.actual).toBeCloseTo((highG / lowG) ** 0.3, 9);
    expect(codes(soda, { ...coffee, lowG: 32, highG: 48 })).not.toContain("spoon-range");
    expect(codes(soda, { ...coffee, lowG: 32, highG: 48.1 })).toContain("spoon-range");
  });
});

describe("what does not dissolve", () => {
  it("soda in the hut's cold water: 12.2 g dissolve in 100 g at 10 °C", () => {
    const cold = (massG: number): DeveloperBrew => ({
      ...brewOf(part("soda-anhydrous", massG), coffee),
      temperatureC: 10,
    });
    expect(find(cold(123), "undissolved")).toMatchObject({
      severity: "warn",
      path: "/ingredients/0",
      quantity: "gPerL",
      limit: 122,
      actual: 123,
      data: { ingredient: "soda-anhydrous" },
    });
    expect(find(cold(122), "undissolved")).toBeUndefined();
  });

  it("adds the hydrates up as dry soda, and portions of one thing", () => {
    const brew = {
      ...brewOf(part("soda-decahydrate", 200), part("soda-monohydrate", 70), part("baking-soda", 10)),
      temperatureC: 10,
    };
    expect(find(brew, "undissolved")?.actual).toBeCloseTo(
      (200 * 105.9875) / 286.1375 + (70 * 105.9875) / 124.0025,
      6,
    );
    expect(find(brewOf(part("borax", 25), part("borax", 25)), "undissolved")).toMatchObject({
      limit: 49,
      actual: 50,
    });
    expect(codes(part("borax", 25), part("baking-soda", 25))).not.toContain("undissolved");
  });
});

describe("caustic soda", () => {
  // Heat of solution 44.5 kJ/mol (from memory): in 10 ml of water a gram warms it by 27 K.
  it("needs 10 ml of cold water a gram for itself: without them the brew stops", () => {
    const found = find({ volumeMl: 500, ingredients: [part("sodium-hydroxide", 200)] }, "too-concentrated");
    expect(found).toMatchObject({
      severity: "stop",
      quantity: "volumeMl",
      limit: 2000,
      actual: 475,
      data: { ingredient: "sodium-hydroxide" },
    });
    expect(codes(coffee, part("sodium-hydroxide", 5))).not.toContain("too-concentrated");
  });

  it("warns where the rest does not dissolve in what it leaves", () => {
    const brew = (causticG: number): DeveloperBrew =>
      brewOf(part("sodium-hydroxide", causticG), part("soda-anhydrous", 100));
    expect(find(brew(40), "too-concentrated")).toBeUndefined();
    expect(find(brew(60), "too-concentrated")).toMatchObject({ severity: "warn", limit: 600 });
    const inCoffee = brewOf(part("brewed-coffee", 900), part("sodium-hydroxide", 10));
    expect(find(inCoffee, "too-concentrated")).toMatchObject({ severity: "stop" });
  });
});

describe("age", () => {
  it("passes without a word up to the low end of the brew's own life, and stops past its end", () => {
    expect(find(hutBrew, "bath-past-life", { ageH: 1 })).toBeUndefined();
    for (const brew of [hutBrew, brewOf(soda, coffee)]) {
      const { lifeH, lowH } = brewLife(brew);
      const at = (ageH: number): Caution | undefined => find(brew, "bath-past-life", { ageH });
      expect(at(lowH)).toBeUndefined();
      for (const [ageH, severity] of [
        [1.01 * lowH, "warn"],
        [lifeH, "warn"],
        [1.01 * lifeH, "stop"],
      ] as const)
        expect(at(ageH)).toMatchObject({
          severity,
          path: "/ageH",
          quantity: "ageH",
          limit: lifeH,
          actual: ageH,
        });
    }
  });

  it("of a bath without an agent is nothing to speak of", () => {
    expect(find(brewOf(soda), "bath-past-life", { ageH: 5 })).toBeUndefined();
  });
});

it("says which field of the use is not read: an age of five hours had passed as a fresh bath", () => {
  expect(checkBrew(hutBrew, { "age/h": 5 } as any)[0]).toMatchObject({
    code: "unknown-field",
    severity: "warn",
    path: "/age~1h",
  });
  expect(find(hutBrew, "unknown-field", { ageH: 1, filmIso: 100, softEmulsion: false })).toBeUndefined();
});

it("the gravest come first", () => {
  const order = checkBrew(brewOf(part("borax", 60), part("baking-soda", 60), acid), { ageH: 30 }).map(
    ({ severity }) => severity,
  );
  const rank = order.map((severity) => ["stop", "warn", "note"].indexOf(severity));
  expect(rank).toEqual([...rank].sort());
  expect(new Set(order).size).toBe(3);
});

it.each([
  [
    () => checkBrew({ ...hutBrew, volumeMl: -1 }),
    RangeError,
    "checkBrew: brew.volumeMl must be above 0 and at most 100000 ml, got -1",
  ],
  [() => checkBrew(hutBrew, null as any), TypeError, "checkBrew: use must be an object, got null"],
  [
    () => checkBrew(hutBrew, { ageH: -1 }),
    RangeError,
    "checkBrew: use.ageH must be from 0 to 1000000 h, got -1",
  ],
  [
    () => checkBrew(hutBrew, { softEmulsion: "yes" as any }),
    TypeError,
    'checkBrew: use.softEmulsion must be true or false, got "yes"',
  ],
  [
    () => checkBrew(hutBrew, { softEmulsion: null as any }),
    TypeError,
    "checkBrew: use.softEmulsion must be true or false, got null",
  ],
  [
    () => checkBrew(hutBrew, { filmIso: 0 }),
    RangeError,
    "checkBrew: use.filmIso must be above 0 and at most 100000, got 0",
  ],
])("refuses: $2", (call, kind, message) => {
  expect(call).toThrow(new kind(message));
});

describe("parts of 0 g", () => {
  it("count as left out", () => {
    const soda = part("soda-anhydrous", 54);
    expect(checkBrew(brewOf(soda, part("instant-coffee", 0)))).toEqual(checkBrew(brewOf(soda)));
    expect(checkBrew(brewOf(soda)).map(({ code }) => code)).toContain("no-agent");
  });
});
