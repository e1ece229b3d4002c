import { describe, expect, it } from "vitest";
import { checkBrew, massOf, type Brew, type BrewPart, type BrewUse, type Caution } from "../../src/index.js";
import { brewOf, hutBrew, part } from "./brews.js";

const find = (brew: Brew, code: string, use?: BrewUse): Caution | undefined =>
  checkBrew(brew, use).find((caution) => caution.code === code);
const codes = (...ingredients: BrewPart[]): string[] =>
  checkBrew(brewOf(...ingredients)).map(({ code }) => code);
const soda = part("soda-anhydrous", 54);
const coffee = part("instant-coffee", 40);
const acid = part("ascorbic-acid", 16);

describe("a sound brew", () => {
  it("has nothing but notes, each with a text", () => {
    expect(checkBrew(brewOf(soda, coffee, acid))).toEqual([
      {
        code: "acid-foams",
        severity: "note",
        message: "Vitamin C foams with soda: add it last, slowly.",
        limit: 0.005,
        actual: 0,
      },
      {
        code: "mix-apart",
        severity: "note",
        message: "Dissolve each apart; join soda and coffee; vitamin C last.",
      },
      {
        code: "restrainer-wanted",
        severity: "note",
        message:
          "Fast film, ISO 400 and more, fogs without 1 g of potassium bromide or 10 to 20 g of salt a litre.",
      },
      {
        code: "gloves-and-glasses",
        severity: "note",
        message: "Gloves and glasses; no dust: alkali harms eyes, skin and lungs.",
      },
      { code: "kitchenware", severity: "note", message: "Ware used for this never goes back to food." },
      {
        code: "rest-before-use",
        severity: "note",
        message: "Let it stand 5 to 10 min, until the bubbles are gone.",
      },
      {
        code: "disposal",
        severity: "note",
        message: "Local codes and safety data sheets go first, for disposal too.",
      },
    ]);
  });

  it("is plain JSON", () => {
    const found = checkBrew(hutBrew, { ageH: 3 });
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
  });
});

describe("alkali", () => {
  it("none at all", () => {
    expect(find(brewOf(coffee, acid), "no-alkali")).toMatchObject({
      code: "no-alkali",
      severity: "stop",
    });
    expect(codes(coffee, acid)).not.toContain("alkali-too-weak");
  });

  it("bicarbonate alone, or too little soda for the acid", () => {
    expect(find(brewOf(part("baking-soda", 54), coffee, acid), "alkali-too-weak")).toEqual({
      code: "alkali-too-weak",
      severity: "stop",
      message: "Not alkaline enough: baking soda alone is too weak; take washing soda, or more.",
      limit: 8.5,
      actual: expect.closeTo(7.34, 1),
    });
    expect(codes(part("soda-anhydrous", 8), coffee, acid)).toContain("alkali-too-weak");
    expect(codes(part("soda-anhydrous", 8), coffee, acid)).not.toContain("no-alkali");
  });

  it("barely enough", () => {
    expect(find(brewOf(part("soda-anhydrous", 14), coffee, acid), "alkali-low")).toMatchObject({
      code: "alkali-low",
      severity: "warn",
      limit: 9,
      actual: expect.closeTo(8.5, 1),
    });
    expect(codes(soda, coffee, acid)).not.toContain("alkali-low");
  });

  it("too much for gelatin, sooner for a soft emulsion", () => {
    const strong = brewOf(soda);
    expect(find(strong, "ph-high")).toMatchObject({
      code: "ph-high",
      severity: "warn",
      limit: 11,
      actual: expect.closeTo(11.6, 0),
    });
    expect(find(brewOf(soda, coffee, acid), "ph-high")).toBeUndefined();
    expect(find(brewOf(soda, coffee, acid), "ph-high", { softEmulsion: false })).toBeUndefined();
    expect(find(brewOf(soda, coffee, acid), "ph-high", { softEmulsion: true })).toMatchObject({
      limit: 10,
      actual: expect.closeTo(10.05, 1),
    });
  });
});

describe("agents", () => {
  it("none", () => {
    expect(find(brewOf(soda), "no-agent")).toMatchObject({
      code: "no-agent",
      severity: "stop",
    });
    expect(codes(soda, coffee)).not.toContain("no-agent");
    expect(codes(soda, acid)).not.toContain("no-agent");
  });

  it("one without the other", () => {
    expect(find(brewOf(soda, acid), "vitamin-c-without-coffee")).toMatchObject({
      code: "vitamin-c-without-coffee",
      severity: "warn",
    });
    expect(find(brewOf(soda, coffee), "coffee-without-vitamin-c")).toMatchObject({
      code: "coffee-without-vitamin-c",
      severity: "note",
    });
    for (const code of ["vitamin-c-without-coffee", "coffee-without-vitamin-c"]) {
      expect(codes(soda, coffee, part("sodium-ascorbate", 18))).not.toContain(code);
      expect(codes(soda)).not.toContain(code);
    }
  });

  it.each([
    [part("decaffeinated-coffee", 40), "decaffeinated", "Decaffeinated coffee is often weaker: test it."],
    [part("brewed-coffee", 500), "brewed-coffee", "Brewed coffee is of unknown strength: test it."],
    [
      { ingredient: "ascorbic-acid-tablet", tablets: 20, labelMg: 500 } as const,
      "tablet-filler",
      "Crush the tablets; strain off what stays.",
    ],
  ])("%o is remarked on", (ingredient, code, message) => {
    expect(find(brewOf(soda, ingredient), code)).toEqual({ code, severity: "note", message });
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
  });

  it("one ingredient needs no order", () => {
    expect(codes(soda)).not.toContain("mix-apart");
  });

  it("a restrainer is wanted for fast films only", () => {
    expect(find(brewOf(soda, coffee), "restrainer-wanted", { filmIso: 400 })).toBeDefined();
    expect(find(brewOf(soda, coffee), "restrainer-wanted", { filmIso: 399 })).toBeUndefined();
    for (const name of ["potassium-bromide", "table-salt", "iodised-salt"] as const)
      expect(codes(soda, coffee, part(name, 1))).not.toContain("restrainer-wanted");
  });

  it("names hazards", () => {
    expect(find(brewOf(coffee, part("sodium-hydroxide", 5)), "hazard")).toEqual({
      code: "hazard",
      severity: "warn",
      message:
        "Take care with sodium hydroxide (caustic soda): it burns eyes and skin; goggles, gloves, into cold water, never water onto it.",
    });
    expect(find(brewOf(coffee, part("borax", 5)), "hazard")?.message).toBe(
      "Take care with borax: it may damage fertility; no dust, no contact.",
    );
    expect(find(brewOf(coffee, part("trisodium-phosphate", 5)), "hazard")?.message).toBe(
      "Take care with trisodium phosphate, dodecahydrate: strongly alkaline; no dust, no contact.",
    );
    expect(codes(soda, coffee, acid)).not.toContain("hazard");
  });

  it("never proposes caustic soda", () => {
    const everything = [
      brewOf(coffee),
      brewOf(acid),
      brewOf(soda),
      brewOf(part("baking-soda", 20), coffee),
    ].flatMap((brew) => checkBrew(brew));
    expect(everything.filter(({ message }) => /caustic|hydroxide|NaOH/i.test(message))).toEqual([]);
  });

  it("spoons are remarked on when their range is beyond 1.5", () => {
    const { value: massG, low: lowG, high: highG } = massOf({ ingredient: "instant-coffee", spoons: 25 });
    expect(find(brewOf(soda, { ingredient: "instant-coffee", massG, lowG, highG }), "spooned")).toMatchObject(
      {
        code: "spooned",
        severity: "note",
      },
    );
    expect(codes(soda, { ...coffee, lowG: 32, highG: 48 })).not.toContain("spooned");
  });
});

describe("what does not dissolve", () => {
  it("soda in the hut's cold water: 12.2 g dissolve in 100 g at 10 °C", () => {
    const cold = (massG: number): Brew => ({
      ...brewOf(part("soda-anhydrous", massG), coffee),
      temperatureC: 10,
    });
    expect(find(cold(123), "undissolved")).toMatchObject({
      code: "undissolved",
      severity: "warn",
      limit: 122,
      actual: 123,
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

describe("age", () => {
  // Shinkawa Photographic Laboratory, 2015: flat for 1.5 to 2 h, collapse within half an hour; advice of one
  // hour.
  it.each([
    [0.99, undefined, 0],
    [1, undefined, 0],
    [1.5, "warn", 1],
    [2, "warn", 1],
    [2.5, "stop", 2],
  ])("%d h: %s", (ageH, severity, limit) => {
    const found = find(hutBrew, "made-long-ago", { ageH });
    if (severity === undefined) expect(found).toBeUndefined();
    else
      expect(found).toMatchObject({
        code: "made-long-ago",
        severity,
        path: "/ageH",
        limit,
        actual: ageH,
      });
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
  const order = checkBrew(brewOf(part("borax", 60), part("baking-soda", 60), acid), { ageH: 3 }).map(
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
])("refuses (%#)", (call, kind, message) => {
  expect(call).toThrow(new kind(message));
});
