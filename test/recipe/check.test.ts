import { describe, expect, it } from "vitest";
import {
  checkRecipe,
  compensate,
  compensateRecipe,
  describeCompensation,
  formatRecipe,
  handbookDilutionLaw,
  handbookTemperatureLaw,
  handbookUseLaw,
  recipeStandardSchema,
  type Recipe,
  type Caution,
} from "../../src/index.js";
import { handbookDilution } from "../../src/handbook/dilution.js";
import { handbookUse } from "../../src/handbook/use.js";
import { handbookTemperature } from "../../src/handbook/temperature.js";
import { fc, test } from "../property.js";
import { hutCoffee, hutStock, recipes } from "./documents.js";
import type { RecipeProblem } from "../../src/recipe/types.js";
import { repeatedName } from "../../src/core/jsonPlaces.js";
import { anyOf, caught, thrown } from "../helpers.js";
const problemsOf = (input: unknown): readonly { path: string; message: string; rule: string }[] => {
  const check = checkRecipe(input);
  return check.ok ? [] : check.problems.map(({ path, message, rule }) => ({ path, message, rule }));
};
const passed = (input: unknown): Recipe => {
  const check = checkRecipe(input);
  if (!check.ok) throw new Error(JSON.stringify(check.problems));
  return check.recipe;
};

describe("checkRecipe", () => {
  it("passes a full recipe and returns a clean copy in the format's order", () => {
    const before = structuredClone(hutCoffee);
    const recipe = passed(hutCoffee);
    expect(recipe).toEqual(hutCoffee);
    expect(hutCoffee).toEqual(before);
    expect(recipe).not.toBe(hutCoffee);
    expect(recipe.developer).not.toBe(hutCoffee.developer);
    expect(recipe.notes).not.toBe(hutCoffee.notes);
    const shuffled = Object.fromEntries(Object.entries(hutCoffee).reverse());
    expect(Object.keys(passed(shuffled))).toEqual(Object.keys(hutCoffee));
    expect(passed({ ...hutStock, name: undefined, agitation: undefined })).toEqual(hutStock);
    expect(Object.keys(passed({ ...hutStock, name: undefined }))).not.toContain("name");
  });

  it("lists every problem at once, each with a pointer and what was expected", () => {
    const problems = problemsOf({
      "schemaVersion": 2,
      "material": { kind: "glass" },
      "developer": { kind: "stock", name: 5, dilution: "1:9" },
      "baseline": { timeS: "900", temperatureC: 300, agitation: { everyS: 0 }, logSd: -1 },
      "agitation": 7,
      "knowledge": {
        temperature: { kind: "line" },
        dilution: { exponent: 1 },
        age: { kind: "life" },
        use: [],
      },
      "notes": "none",
      "sources": [3],
      "baseline/timeS": 900,
    });
    expect(problems.map(({ path, message }) => [path, message])).toEqual([
      ["/material/name", "is missing: text of at most 200 characters"],
      ["/material/kind", 'must be "film", "plate" or "paper", got "glass"'],
      ["/developer/name", "must be text of at most 200 characters, got 5"],
      [
        "/developer/dilution",
        'must be "1+9" (1 part and 9 of water) or "1+8" (1 part of 9 in all), got "1:9"',
      ],
      ["/baseline/timeS", 'must be a number above 0 and at most 1000000 s, got "900"'],
      ["/baseline/temperatureC", "must be a number from 0 to 100 °C, got 300"],
      ["/baseline/agitation/everyS", "must be a number above 0 and at most 3600 s, got 0"],
      ["/baseline/logSd", "must be a number from 0 to 3, got -1"],
      ["/agitation", 'must be "continuous" or "stand", or an object such as { "everyS": 30 }, got 7'],
      ["/knowledge/temperature/kind", 'must be "arrhenius", "coefficient" or "table", got "line"'],
      ["/knowledge/dilution/kind", 'is missing: "power" or "table"'],
      ["/knowledge/use", "must be an object with increase, perCm2PerL, growth, got an array"],
      ["/knowledge/age/lifeH", "is missing: a number above 0 and at most 1000000 h"],
      ["/notes", 'must be an array of 0 to 50, got "none"'],
      ["/sources/0", "must be text of at most 2000 characters, got 3"],
      [
        "/baseline~1timeS",
        'must be a field that is read, perhaps baseline (all are $schema, schemaVersion, name, material, developer, baseline, agitation, conditions, knowledge, baths, byInspection, notes, sources), got "baseline/timeS"',
      ],
    ]);
    expect(new Set(problems.map(({ rule }) => rule))).toEqual(new Set(["shape"]));
  });

  const whole = "an object with schemaVersion, material, developer, baseline";
  it.each([
    [null, "", `must be ${whole}, got null`],
    [undefined, "", `is missing: ${whole}`],
    [[], "", `must be ${whole}, got an array`],
    [12n, "", `must be ${whole}, got 12`],
    [Symbol("a"), "", `must be ${whole}, got Symbol(a)`],
    [() => 1, "", `must be ${whole}, got a function`],
    ["coffee", "", "must be JSON, but breaks off at line 1, column 1"],
    ["", "", "must be JSON, but breaks off at line 1, column 1"],
    ["5", "", `must be ${whole}, got 5`],
    [" ".repeat(800_001), "", "must be text of at most 800000 characters"],
    [{}, "/schemaVersion", "is missing: 2"],
    [{ ...hutStock, schemaVersion: "2" }, "/schemaVersion", 'must be 2, got "2"'],
    [{ ...hutStock, schemaVersion: 0 }, "/schemaVersion", "must be 2, got 0"],
    [{ ...hutStock, schemaVersion: 1.5 }, "/schemaVersion", "must be 2, got 1.5"],
    [
      { ...hutStock, schemaVersion: 3 },
      "/schemaVersion",
      "must be at most 2, the newest version that this package reads (or update it), got 3",
    ],
    [
      { schemaVersion: 2.5, anything: 1 },
      "/schemaVersion",
      "must be at most 2, the newest version that this package reads (or update it), got 2.5",
    ],
    [
      { ...hutStock, baseline: { timeS: NaN, temperatureC: 20 } },
      "/baseline/timeS",
      "must be a number above 0 and at most 1000000 s, got NaN",
    ],
    [
      { ...hutStock, baseline: { timeS: Infinity, temperatureC: 20 } },
      "/baseline/timeS",
      "must be a number above 0 and at most 1000000 s, got Infinity",
    ],
    [{ ...hutStock, baseline: null }, "/baseline", "must be an object with timeS, temperatureC, got null"],
    [{ ...hutStock, conditions: null }, "/conditions", "must be an object, got null"],
    [{ ...hutStock, byInspection: 5 }, "/byInspection", "must be true or false, got 5"],
    [
      { ...hutStock, developer: "stock" },
      "/developer",
      'must be an object with kind, name, dilution, or an object with kind, brew, got "stock"',
    ],
    [
      {
        ...hutStock,
        developer: {
          kind: "brew",
          brew: { volumeMl: 500, ingredients: [{ ingredient: "sugar", massG: 5 }] },
        },
      },
      "/developer/brew/ingredients/0/ingredient",
      expect.stringMatching(/^must be "instant-coffee", .*, got "sugar"$/),
    ],
    [
      { ...hutStock, developer: { kind: "brew", brew: { volumeMl: 500, ingredients: [] } } },
      "/developer/brew/ingredients",
      "must be an array of 1 to 30, got 0",
    ],
    [
      {
        ...hutStock,
        knowledge: { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 60, runs: 1.5 } },
      },
      "/knowledge/temperature/runs",
      "must be a whole number from 0 to 1000000, got 1.5",
    ],
    [
      { ...hutStock, material: { name: "film", iodideRich: "yes" } },
      "/material/iodideRich",
      'must be true or false, got "yes"',
    ],
    [
      { ...hutStock, material: { name: "x".repeat(201) } },
      "/material/name",
      expect.stringMatching(/^must be text of at most 200 characters, got "x{60}"$/),
    ],
  ])("refuses, at $1: $2", (input, path, message) => {
    expect(problemsOf(input)[0]).toEqual({ path, message, rule: "shape" });
  });

  it("points by JSON Pointer", () => {
    // The names of RFC 6901, section 5, as fields that the format does not know, and the pointers given
    // there.
    const names = ["foo", "", "a/b", "c%d", "e^f", "g|h", "i\\j", 'k"l', " ", "m~n"];
    const document = { ...hutStock, ...Object.fromEntries(names.map((name) => [name, 0])) };
    expect(problemsOf(document).map(({ path }) => path)).toEqual([
      "/foo",
      "/",
      "/a~1b",
      "/c%d",
      "/e^f",
      "/g|h",
      "/i\\j",
      '/k"l',
      "/ ",
      "/m~0n",
    ]);
    const nested = {
      ...hutStock,
      knowledge: {
        temperature: {
          kind: "table",
          rows: [
            { temperatureC: 20, timeS: 1 },
            { "temperatureC": 22, "timeS": 1, "~/": 1 },
          ],
        },
      },
    };
    expect(problemsOf(nested).map(({ path }) => path)).toEqual(["/knowledge/temperature/rows/1/~0~1"]);
    // A name of many characters is not repeated: the pointer then stops at its object.
    expect(problemsOf({ ...hutStock, ["n".repeat(200)]: 1 })[0]!.path).toBe(`/${"n".repeat(200)}`);
    expect(problemsOf({ ...hutStock, ["n".repeat(201)]: 1 })[0]!.path).toBe("");
  });

  it("reads text as JSON", () => {
    expect(passed(JSON.stringify(hutCoffee))).toEqual(hutCoffee);
    expect(passed(JSON.stringify(hutStock).padEnd(800_000))).toEqual(hutStock);
  });

  it("passes over the mark that some editors put before a text, and no other", () => {
    // T. Bray, RFC 8259, 2017, section 8.1.
    expect(passed(`\uFEFF${JSON.stringify(hutStock)}`)).toEqual(hutStock);
    for (const text of [`\uFEFF\uFEFF${JSON.stringify(hutStock)}`, "\uFEFF", ""])
      expect(problemsOf(text)).toEqual([
        { path: "", message: "must be JSON, but breaks off at line 1, column 1", rule: "shape" },
      ]);
  });

  it("reads version 2 alone", () => {
    expect(problemsOf({ ...hutStock, schemaVersion: 1 })).toEqual([
      { path: "/schemaVersion", message: "must be 2, got 1", rule: "shape" },
    ]);
  });

  it("refuses values that do not go together, with the pointer", () => {
    const of = (knowledge: object, more: object = {}) => problemsOf({ ...hutStock, ...more, knowledge });
    const temperature = (rows: [number, number][]): object => ({
      temperature: { kind: "table", rows: rows.map(([temperatureC, timeS]) => ({ temperatureC, timeS })) },
    });
    expect(
      of(
        temperature([
          [20, 600],
          [20, 500],
        ]),
      ),
    ).toEqual([
      {
        path: "/knowledge/temperature/rows",
        message:
          "must be different in temperatureC, no faster when colder, nor slower by more than 2.72 times per °C, not 600 s at 20 and 500 s at 20",
        rule: "relation",
      },
    ]);
    expect(
      of(
        temperature([
          [20, 600],
          [22, 601],
        ]),
      )[0]!.message,
    ).toBe(
      "must be different in temperatureC, no faster when colder, nor slower by more than 2.72 times per °C, not 601 s at 22 and 600 s at 20",
    );
    expect(of({ temperature: { kind: "coefficient", ratio: 3, intervalC: 1 } })).toEqual([
      {
        path: "/knowledge/temperature/ratio",
        message: "must be from 1 to 2.718281828459045, got 3",
        rule: "relation",
      },
    ]);
    expect(of({ temperature: { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 21 } })[0]!.path).toBe(
      "/knowledge/temperature/sdRatio",
    );
    expect(
      of({
        dilution: {
          kind: "table",
          rows: [
            { dilution: "1+1", timeS: 5 },
            { dilution: "2+2", timeS: 6 },
          ],
        },
      }),
    ).toEqual([
      {
        path: "/knowledge/dilution/rows",
        message:
          'must be different in dilution, no faster when weaker, nor slower by more than concentration^-5, not 5 s at "1+1" and 6 s at "2+2"',
        rule: "relation",
      },
    ]);
    const use = { increase: 10, perCm2PerL: 1, growth: "linear" };
    expect(of({ use }, { conditions: { usedCm2PerL: 100 } })).toEqual([
      {
        path: "/conditions/usedCm2PerL",
        message: "must be such that the bath slows at most 1000 times, got 100",
        rule: "relation",
      },
    ]);
    expect(
      of({ use }, { baseline: { ...hutStock.baseline, usedCm2PerL: 100 } }).map(({ path }) => path),
    ).toEqual(["/baseline/usedCm2PerL"]);
    const halfLife = { age: { kind: "half-life", halfLifeH: 1 } };
    // Past ten half-lives today is a caution to stop, not a problem.
    expect(of(halfLife, { conditions: { ageH: 10.5 } })).toEqual([]);
    expect(of(halfLife, { baseline: { ...hutStock.baseline, ageH: 11 } }).map(({ path }) => path)).toEqual([
      "/baseline/ageH",
    ]);
    const life = { age: { kind: "life", lifeH: 1 } };
    expect(of(life, { baseline: { ...hutStock.baseline, ageH: 2 }, conditions: { ageH: 0.5 } })).toEqual([
      {
        path: "/baseline/ageH",
        message: "must be at most 1 h, how long the bath works, got 2",
        rule: "relation",
      },
    ]);
    // Past its life today is a caution, not a problem.
    expect(of(life, { conditions: { ageH: 2 } })).toEqual([]);
    const brewed = (part: object): object => ({
      developer: { kind: "brew", brew: { volumeMl: 50, ingredients: [part] } },
    });
    expect(problemsOf({ ...hutStock, ...brewed({ ingredient: "borax", massG: 5, lowG: 6 }) })).toEqual([
      {
        path: "/developer/brew/ingredients/0/lowG",
        message: "must be above 0 and at most 5 g, got 6",
        rule: "relation",
      },
    ]);
    expect(problemsOf({ ...hutStock, ...brewed({ ingredient: "borax", massG: 51 }) })).toEqual([
      {
        path: "/developer/brew/ingredients",
        message: "must be above 0 and at most 1 g of dry ingredients per ml of bath, got 1.02",
        rule: "relation",
      },
    ]);
    expect(problemsOf({ ...hutStock, ...brewed({ ingredient: "brewed-coffee", massG: 55 }) })).toEqual([
      {
        path: "/developer/brew/ingredients",
        message: "must be at most 1 g of brewed coffee per ml of bath, got 1.1",
        rule: "relation",
      },
    ]);
    // A wanted gradient needs the one that the known time gave, and both need a law that reaches them.
    expect(of({}, { conditions: { gamma: 0.7 } })).toEqual([
      {
        path: "/conditions/gamma",
        message: "needs baseline.gamma: what was it for the known time?",
        rule: "relation",
      },
    ]);
    const growth = { gammaInfinity: 0.65, ratePerS: 0.003, appearanceS: 0 };
    const judged = { ...hutStock.baseline, gamma: 0.6 };
    expect(of({ growth }, { baseline: judged, conditions: { gamma: 0.64 } })).toEqual([]);
    expect(of({ growth }, { baseline: judged, conditions: { gamma: 0.7 } })).toEqual([
      {
        path: "/conditions/gamma",
        message:
          "must be below 0.65, the limit of this growth law (a harder material needs its own, as growthFromDoubling gives), got 0.7",
        rule: "relation",
      },
    ]);
    expect(of({ growth }, { baseline: { ...judged, gamma: 0.65 } }).map(({ path }) => path)).toEqual([
      "/baseline/gamma",
    ]);
    // Against the generic law only what is wanted is judged.
    expect(of({}, { baseline: { ...judged, gamma: 2 } })).toEqual([]);
    expect(of({}, { baseline: judged, conditions: { gamma: 1.9 } })).toEqual([
      {
        path: "/conditions/gamma",
        message:
          "must be below 1.8, the limit of this growth law (a harder material needs its own, as growthFromDoubling gives), got 1.9",
        rule: "relation",
      },
    ]);
    expect(
      of({}, { baseline: { ...judged, gamma: 900 }, conditions: { gamma: 0.7 } }).map(({ path }) => path),
    ).toEqual(["/baseline/gamma"]);
    // Spreads so wide that the interval leaves the numbers.
    expect(
      of(
        { use: { increase: 0, perCm2PerL: 1, growth: "linear", sdIncrease: 10 } },
        { conditions: { usedCm2PerL: 11 } },
      ),
    ).toEqual([
      {
        path: "/knowledge",
        message: expect.stringMatching(/^must be such that ln.time. spreads by at most 100/),
        rule: "relation",
      },
    ]);
    // All of them at once.
    expect(
      of(
        {
          ...temperature([
            [20, 600],
            [20, 500],
          ]),
          use,
          ...halfLife,
        },
        { conditions: { usedCm2PerL: 100, ageH: 99 } },
      ).map(({ path }) => path),
    ).toEqual(["/knowledge/temperature/rows", "/conditions/usedCm2PerL"]);
  });

  it("takes every published law as knowledge", () => {
    const all = [
      ...Object.keys(handbookTemperature).map((key) => ({ temperature: handbookTemperatureLaw(anyOf(key)) })),
      ...Object.keys(handbookDilution).map((key) => ({ dilution: handbookDilutionLaw(anyOf(key)) })),
      ...Object.keys(handbookUse).map((key) => ({ use: handbookUseLaw(anyOf(key)) })),
    ];
    expect(all.length).toBeGreaterThan(10);
    for (const knowledge of all) expect(passed({ ...hutStock, knowledge }).knowledge).toEqual(knowledge);
  });
});

describe("hostile input", () => {
  it.each(["__proto__", "constructor", "prototype", "toString"])(
    "refuses a field named %s, anywhere",
    (name) => {
      for (const place of ["baseline", "developer"] as const) {
        const inner = JSON.stringify(hutStock[place]).replace("{", `{"${name}":{"polluted":true},`);
        const text = JSON.stringify({ ...hutStock, [place]: "here" }).replace('"here"', () => inner);
        expect(problemsOf(JSON.parse(text)).map(({ path }) => path)).toEqual([`/${place}/${name}`]);
        expect(problemsOf(text).map(({ path }) => path)).toEqual([`/${place}/${name}`]);
      }
      const top = JSON.parse(JSON.stringify(hutStock).replace("{", `{"${name}":{"polluted":true},`));
      expect(problemsOf(top).map(({ path }) => path)).toEqual([`/${name}`]);
      expect(problemsOf(top)[0]!.message).toMatch(
        new RegExp(`^must be a field that is read.*, got "${name}"$`),
      );
      expect("polluted" in {}).toBe(false);
    },
  );

  it("does not read what is inherited", () => {
    expect(problemsOf(Object.create(hutStock)).map(({ path }) => path)).toEqual([
      "/schemaVersion",
      "/material",
      "/developer",
      "/baseline",
    ]);
    expect(problemsOf({ ...hutStock, developer: Object.create({ kind: "stock" }) })[0]!.path).toBe(
      "/developer/kind",
    );
  });

  it("answers objects that refuse to be read", () => {
    const revoked = Proxy.revocable({}, {});
    revoked.revoke();
    const trap = (name: string): object =>
      Object.defineProperty({ ...hutStock }, name, {
        enumerable: true,
        get: () => {
          throw new Error("no");
        },
      });
    for (const input of [revoked.proxy, trap("material"), trap("schemaVersion")])
      expect(problemsOf(input)).toEqual([
        { path: "", message: "must be plain data that can be read, at most 20 levels deep", rule: "shape" },
      ]);
    const loop: Record<string, unknown> = { ...hutStock };
    loop["material"] = loop;
    expect(checkRecipe(loop).ok).toBe(false);
  });

  it("lists at most a hundred problems", () => {
    const many = { ...hutStock, ...Object.fromEntries(Array.from({ length: 1000 }, (_, i) => [`f${i}`, i])) };
    expect(problemsOf(many)).toHaveLength(100);
    const of = (notes: number, sources: number) =>
      problemsOf({ ...hutStock, notes: Array(notes).fill(1), sources: Array(sources).fill(1), more: 1 });
    expect(of(50, 50)).toHaveLength(100);
    expect(of(49, 50)).toHaveLength(100);
    expect(of(49, 49)).toHaveLength(99);
    const part = { ingredient: "borax", massG: "5", a: 1, b: 1, c: 1 };
    expect(
      problemsOf({
        ...hutStock,
        developer: { kind: "brew", brew: { volumeMl: 500, ingredients: Array(30).fill(part) } },
      }),
    ).toHaveLength(100);
  });

  test.prop([
    fc.anything({
      withBigInt: true,
      withDate: true,
      withMap: true,
      withSparseArray: true,
      withTypedArray: true,
      withNullPrototype: true,
    }),
  ])("anything at all gets an answer", (value) => {
    expect(checkRecipe(value).ok).toBe(false);
  });
});

describe("the laws of a recipe", () => {
  test.prop([recipes], { numRuns: 150 })("what passes always compensates", (document) => {
    const check = checkRecipe(document);
    if (!check.ok) return;
    const answer = compensateRecipe(check.recipe);
    for (const value of [answer.timeS, answer.lowS, answer.highS])
      expect(value > 0 && Number.isFinite(value)).toBe(true);
    for (const line of describeCompensation(answer)) expect(line).not.toMatch(/NaN|undefined|Infinity/);
    const { baseline, knowledge } = check.recipe;
    expect(compensate(baseline, {}, knowledge).timeS).toBe(baseline.timeS);
  });

  test.prop([recipes], { numRuns: 150 })("what stops the developer stops its time", (document) => {
    const check = checkRecipe(document);
    if (!check.ok) return;
    const developed = checkRecipe(
      Object.fromEntries(
        Object.entries(check.recipe).filter(([field]) => !["baths", "byInspection"].includes(field)),
      ),
    );
    const stops = (cautions: readonly Caution[]): readonly Caution[] =>
      cautions.filter(({ severity }) => severity === "stop");
    expect(stops(compensateRecipe(check.recipe).cautions)).toEqual(
      stops(developed.ok ? developed.cautions : []),
    );
  });

  it("passes and refuses a good share of what is drawn", () => {
    const drawn = fc.sample(recipes, 400).filter((document) => checkRecipe(document).ok).length;
    expect(drawn).toBeGreaterThan(40);
    expect(drawn).toBeLessThan(360);
  });
});

describe("compensateRecipe", () => {
  const law = { kind: "power", exponent: 1 };
  it("takes dilution and agitation from the recipe where the baseline names none", () => {
    const recipe = passed({ ...hutStock, agitation: { everyS: 60 } });
    expect(compensateRecipe(recipe).timeS).toBe(660);
    expect(compensateRecipe(recipe).factors.map(({ cause }) => cause)).toEqual([
      "baseline",
      "temperature",
      "dilution",
      "agitation",
    ]);
    expect(compensateRecipe(passed(hutStock)).factors.map(({ cause }) => cause)).toEqual([
      "baseline",
      "temperature",
      "dilution",
    ]);
    const diluted = passed({
      ...hutStock,
      baseline: { ...hutStock.baseline, dilution: "1+25" },
      knowledge: { dilution: law },
    });
    expect(compensateRecipe(diluted).timeS).toBeCloseTo((660 * 51) / 26, 9);
    expect(compensateRecipe(diluted, { dilution: "1+25" }).timeS).toBe(660);
    const moved = passed({
      ...hutStock,
      agitation: "continuous",
      baseline: { ...hutStock.baseline, agitation: { everyS: 60 } },
    });
    expect(compensateRecipe(moved).timeS).toBeLessThan(660);
    expect(compensateRecipe(moved, { agitation: { everyS: 60 } }).timeS).toBe(660);
  });

  it("is compensate with the recipe's own fields", () => {
    const recipe = passed(hutCoffee);
    expect(compensateRecipe(recipe)).toEqual(
      compensate(
        anyOf({ ...hutCoffee.baseline, hydroquinone: false, emulsion: "soft" }),
        { ...hutCoffee.conditions, agitation: { everyS: 30 } },
        // Each bath is mixed anew.
        anyOf({ batchLogSd: 0.08, ...hutCoffee.knowledge }),
      ),
    );
    expect(compensateRecipe(recipe, { temperatureC: 14 }).timeS).toBeGreaterThan(
      compensateRecipe(recipe).timeS,
    );
  });

  it.each([
    [5, {}, "TypeError: compensateRecipe: recipe must be an object, got 5"],
    [hutStock, 5, "TypeError: compensateRecipe: conditions must be an object, got 5"],
    [
      hutStock,
      { temperatureC: -1 },
      "RangeError: compensateRecipe: conditions.temperatureC must be from 0 to 100 °C, got -1",
    ],
  ])("refuses: $2", (recipe, conditions, message) => {
    expect(thrown(() => compensateRecipe(anyOf(recipe), anyOf(conditions)))).toBe(message);
  });
});

describe("formatRecipe", () => {
  it("writes JSON that people can read", () => {
    expect(formatRecipe(passed(hutStock))).toBe(`{
  "schemaVersion": 2,
  "material": {
    "name": "sheet film"
  },
  "developer": {
    "kind": "stock",
    "name": "p-aminophenol stock",
    "dilution": "1+50"
  },
  "baseline": {
    "timeS": 660,
    "temperatureC": 20
  }
}
`);
    expect(thrown(() => formatRecipe(anyOf("text")))).toBe(
      'TypeError: formatRecipe: recipe must be an object, got "text"',
    );
  });
  it("writes no null in place of a number", () => {
    // What a program worked out after the check: the file would be refused, and the known time lost.
    const spoilt = (timeS: number): string =>
      thrown(() => formatRecipe({ ...passed(hutStock), baseline: { timeS, temperatureC: 20 } }));
    expect(spoilt(NaN)).toBe(
      "RangeError: formatRecipe: recipe.baseline.timeS must be plain data that can be read, at most 20 levels deep, got NaN",
    );
    expect(spoilt(Infinity)).toMatch(/timeS must be plain data .*, got Infinity$/);
  });
  it.each([
    ["a date", new Date(0)],
    ["a map", new Map([["a", 1]])],
    ["a set", new Set([1])],
    ["bytes", new Uint8Array(2)],
    ["a pattern", /x/],
    ["a function", () => 1],
    ["a number that JSON has no text for", 20n],
  ])("and checkRecipe refuse %s, which JSON would lose, by its place", (_, lost) => {
    const recipe = anyOf({ ...passed(hutStock), "x-own": { list: [1, lost] } });
    expect(caught(() => formatRecipe(recipe))).toMatchObject({
      path: "/recipe/x-own/list/1",
      expected: { must: "plain-data" },
    });
    expect(checkRecipe(recipe)).toMatchObject({
      ok: false,
      problems: [{ code: "wrong-type", path: "/x-own/list/1", expected: { must: "plain-data" } }],
    });
  });
});

describe("a name that comes twice in JSON text", () => {
  const text = (recipe: unknown): string => JSON.stringify(recipe, undefined, 1);
  it("is refused, with its place", () => {
    const twice = text(passed(hutStock)).replace('"timeS": 660,', '"timeS": 510,\n  "timeS": 900,');
    const line = twice.split("\n").findIndex((one) => one.includes("900")) + 1;
    expect(checkRecipe(twice)).toEqual({
      ok: false,
      problems: [
        {
          code: "ambiguous",
          path: "/baseline/timeS",
          expected: { must: "once", line, column: 3 },
          actual: "timeS",
          message: `must be a name that its object has once (it comes again at line ${line}, column 3), got "timeS"`,
          rule: "shape",
          line,
          column: 3,
        },
      ],
    });
  });
  it.each([
    ['{"a":{"b":1},"b":2}', undefined],
    ['[{"a":1},{"a":1}]', undefined],
    ['{"a":"a","b":["a","a",{"a":{}}]}', undefined],
    ['{"a":"x,\\"a\\":1"}', undefined],
    ['{"a":1,"\\u0061":2}', { path: "/a", name: "a", line: 1, column: 8 }],
    ['[1,{"a/b":[{},{"~":[],"c":1,"~":2}]}]', { path: "/1/a~1b/1/~0", name: "~", line: 1, column: 29 }],
    ['{"constructor":1,"constructor":2}', { path: "/constructor", name: "constructor", line: 1, column: 18 }],
  ])("is found in %s", (json, found) => {
    expect(repeatedName(json)).toEqual(found);
  });
});

describe("recipeStandardSchema", () => {
  it("speaks the Standard Schema interface, version 1", () => {
    const standard = recipeStandardSchema["~standard"];
    expect(standard).toMatchObject({ version: 1, vendor: "darkroom-kinetics" });
    expect(standard.validate(hutStock)).toEqual({ value: hutStock });
    expect(standard.validate({ ...hutStock, "a/~1": 1, "notes": [5] })).toEqual({
      issues: [
        { message: "must be text of at most 2000 characters, got 5", path: ["notes", "0"] },
        { message: expect.stringMatching(/^must be a field that is read.*, got "a\/~1"$/), path: ["a/~1"] },
      ],
    });
    expect(standard.validate(null)).toEqual({
      issues: [{ message: expect.stringMatching(/^must be an object/), path: [] }],
    });
  });
});

describe("checkRecipe of numbers and lists that JSON would spoil", () => {
  it("names the hole in a list", () => {
    const notes = ["first"];
    notes[2] = "third";
    const answer = checkRecipe({
      schemaVersion: 2,
      material: { name: "plate" },
      developer: { kind: "stock", name: "hut", dilution: "1+9" },
      baseline: { timeS: 510, temperatureC: 20 },
      notes,
    });
    expect(answer).toMatchObject({
      ok: false,
      problems: [
        {
          path: "/notes/1",
          message: "is missing: text of at most 2000 characters",
          rule: "shape",
        },
      ],
    });
  });

  it("makes a problem of a clearing that takes no time", () => {
    const { ok, ...rest } = checkRecipe({
      schemaVersion: 2,
      name: "hut",
      material: { name: "plate", kind: "plate" },
      developer: { kind: "stock", name: "one", dilution: "1+1" },
      baseline: { timeS: 300, temperatureC: 20 },
      baths: { fix: { clearingS: 2e-30, clearingAtC: 0, temperatureC: 20 } },
    });
    expect(ok).toBe(false);
    expect(JSON.stringify(rest)).toContain('"path":"/baths/fix/clearingS"');
  });

  it("is a problem of the recipe, never an error of the check", () => {
    const recipe = {
      schemaVersion: 2,
      name: "hut",
      material: { name: "plate", kind: "plate" },
      baseline: { timeS: 480, temperatureC: 20 },
    };
    const found = checkRecipe({
      ...recipe,
      developer: { kind: "stock", name: "one", dilution: "1+9", volumeMl: 5e-324 },
    });
    expect(found.ok).toBe(false);
    expect(JSON.stringify(found)).toContain("must be a number above 0 and at most 1000000 ml, got 5e-324");
  });
});

describe("a recipe that was never checked", () => {
  it("is refused by its place", () => {
    expect(thrown(() => compensateRecipe(anyOf({})))).toBe(
      "TypeError: compensateRecipe: recipe.developer is missing: an object",
    );
    expect(thrown(() => compensateRecipe(anyOf({ developer: {} })))).toBe(
      "TypeError: compensateRecipe: recipe.material is missing: an object",
    );
    expect(thrown(() => formatRecipe(anyOf({ timeS: 20n })))).toBe(
      "RangeError: formatRecipe: recipe.timeS must be plain data that can be read, at most 20 levels deep, got 20",
    );
  });
});

describe("checkRecipe names the place", () => {
  const problemsOf = (input: unknown): readonly Partial<RecipeProblem>[] => {
    const check = checkRecipe(input);
    return check.ok ? [] : check.problems.map(({ path, message, rule }) => ({ path, message, rule }));
  };
  it("does not take a version that is text for a newer one", () => {
    expect(problemsOf({ ...hutStock, schemaVersion: "3" })).toEqual([
      { path: "/schemaVersion", message: 'must be 2, got "3"', rule: "shape" },
    ]);
  });
  it("says which forms a missing field may have", () => {
    expect(problemsOf({ ...hutStock, developer: undefined })).toEqual([
      {
        path: "/developer",
        message: "is missing: an object with kind, name, dilution, or an object with kind, brew",
        rule: "shape",
      },
    ]);
  });
  it("points at an ingredient beyond the tenth", () => {
    const good = { ingredient: "borax", massG: 1 };
    const ingredients = [...Array<unknown>(11).fill(good), { ...good, lowG: 2 }];
    expect(
      problemsOf({ ...hutStock, developer: { kind: "brew", brew: { volumeMl: 1000, ingredients } } }),
    ).toEqual([
      {
        path: "/developer/brew/ingredients/11/lowG",
        message: "must be above 0 and at most 1 g, got 2",
        rule: "relation",
      },
    ]);
  });
});
