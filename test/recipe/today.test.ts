/* Today's bath: what the conditions leave out is as in the baseline, and every caution stands where its figure does. Invented recipes. */
import { describe, expect, it } from "vitest";
import {
  brewLife,
  checkBrew,
  checkRecipe,
  compensate,
  compensateRecipe,
  describeCompensation,
  fitDilutionLaw,
  learn,
  planRecipe,
  startKnowledge,
  type DeveloperBrew,
  type Caution,
  type Conditions,
  type Recipe,
  type RecipeBrew,
} from "../../src/index.js";

const stock: Recipe = {
  schemaVersion: 2,
  material: { name: "sheet film" },
  developer: { kind: "stock", name: "hut stock", dilution: "1+9", capacityCm2PerL: 2000, keepingLimitH: 24 },
  baseline: { timeS: 510, temperatureC: 20, agitation: { everyS: 60 } },
};
const brewed = (brew: Partial<DeveloperBrew>, more: Partial<Recipe> = {}): Recipe => ({
  ...stock,
  developer: {
    kind: "brew",
    name: "hut brew",
    brew: {
      volumeMl: 500,
      ingredients: [
        { ingredient: "soda-anhydrous", massG: 90 },
        { ingredient: "instant-coffee", massG: 20 },
      ],
      ...brew,
    },
  },
  ...more,
});
const cautionsOf = (recipe: Recipe): readonly Caution[] => {
  const answer = checkRecipe(recipe);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.cautions;
};
const at = (recipe: Recipe, code: string): (string | undefined)[] =>
  cautionsOf(recipe)
    .filter((one) => one.code === code)
    .map(({ path }) => path);

describe("a bath whose use and age the baseline states", () => {
  const worn = { ...stock.baseline, usedCm2PerL: 3000, ageH: 40 };
  it("is judged as one whose conditions state them, where they stand", () => {
    for (const [recipe, side] of [
      [{ ...stock, baseline: worn }, "baseline"],
      [{ ...stock, conditions: { usedCm2PerL: 3000, ageH: 40 } }, "conditions"],
    ] as const) {
      expect(at(recipe, "bath-past-capacity")).toEqual([`/${side}/usedCm2PerL`]);
      expect(at(recipe, "bath-past-keeping")).toEqual([`/${side}/ageH`]);
    }
    // A fresh bath today, after one that was worn.
    expect(
      at({ ...stock, baseline: worn, conditions: { usedCm2PerL: 0, ageH: 0 } }, "bath-past-capacity"),
    ).toEqual([]);
    const slow = {
      ...stock,
      baseline: { ...worn, usedCm2PerL: 1000, ageH: 1 },
      knowledge: { use: { increase: 0.5, perCm2PerL: 1000, growth: "linear" as const } },
    };
    expect(at(slow, "bath-slow")).toEqual(["/baseline"]);
    expect(at({ ...slow, conditions: {} }, "bath-slow")).toEqual(["/conditions"]);
  });
  it("is, for a brew, as old as there", () => {
    expect(at(brewed({}, { baseline: { ...stock.baseline, ageH: 30 } }), "bath-past-life")).toEqual([
      "/baseline/ageH",
    ]);
    expect(at(brewed({}, { conditions: { ageH: 30 } }), "bath-past-life")).toEqual(["/conditions/ageH"]);
    // The recipe's own life says it already.
    const dead = brewed({}, { conditions: { ageH: 30 }, knowledge: { age: { kind: "life", lifeH: 1 } } });
    expect(at(dead, "bath-past-life")).toEqual(["/conditions/ageH"]);
  });
});

describe("a brew in today's bath", () => {
  it("says each thing once", () => {
    for (const recipe of [
      brewed({ temperatureC: 20 }, { conditions: { temperatureC: 8 } }),
      brewed({}),
      brewed({ temperatureC: 8 }),
    ]) {
      const codes = cautionsOf(recipe).map(({ code, path, message }) => `${code} ${String(path)} ${message}`);
      expect(new Set(codes).size).toBe(codes.length);
    }
  });
  it("is judged at its temperature, and at the one it was mixed at", () => {
    expect(at(brewed({}), "undissolved")).toEqual([]);
    expect(at(brewed({}, { conditions: { temperatureC: 8 } }), "undissolved")).toEqual([
      "/developer/brew/ingredients/0",
    ]);
    expect(at(brewed({ temperatureC: 20 }, { conditions: { temperatureC: 8 } }), "undissolved")).toEqual([
      "/developer/brew/ingredients/0",
    ]);
    expect(at(brewed({ temperatureC: 8 }, { conditions: { temperatureC: 20 } }), "undissolved")).toEqual([
      "/developer/brew/ingredients/0",
    ]);
    expect(at(brewed({}, { conditions: { temperatureC: 60 } }), "maybe-fahrenheit")).toEqual([
      "/conditions/temperatureC",
    ]);
  });
});

describe("the cautions of compensateRecipe", () => {
  const recipe: Recipe = { ...stock, agitation: "stand" };
  const paths = (conditions = {}): (string | undefined)[] =>
    compensateRecipe(recipe, conditions)
      .cautions.filter(({ code }) => code === "stand")
      .map(({ path }) => path);
  it("stand where the recipe has the figure, or where the caller gave it", () => {
    expect(paths()).toEqual(["/agitation"]);
    expect(paths({ agitation: "stand" })).toEqual(["/conditions/agitation"]);
    const short = { ...stock, baseline: { ...stock.baseline, timeS: 90 } };
    const codes = (kind: "film" | "paper"): readonly string[] =>
      cautionsOf({ ...short, material: { name: "bromide", kind } }).map(({ code }) => code);
    expect(codes("film")).toContain("short-time");
    expect(codes("paper")).not.toContain("short-time");
    expect(
      compensateRecipe(
        { ...short, material: { name: "bromide", kind: "paper" } },
        { temperatureC: 14 },
      ).cautions.map(({ code }) => code),
    ).toContain("temperature-unusual");
    expect(
      compensateRecipe({ ...stock, baseline: { ...stock.baseline, timeS: 100 } }).cautions.find(
        ({ code }) => code === "short-time",
      )?.path,
    ).toBeUndefined();
  });
});

describe("describeCompensation", () => {
  it("gives no time to go by where a caution says stop, and the reason first", () => {
    const lines = describeCompensation(compensate({ timeS: 510, temperatureC: 20 }, { temperatureC: 2 }));
    expect(lines[0]).toBe("No time to go by:");
    expect(lines[1]).toMatch(/below 4 °C or above 32 °C/);
    expect(lines.find((line) => line.startsWith("The laws alone would say"))).toMatch(
      /^The laws alone would say 42:32, with 90 % certainty between \d+:\d\d and [\d:]+\.$/,
    );
    expect(lines.some((line) => line.startsWith("Develop"))).toBe(false);
  });
  it.each([
    [0.004, "0.004 times the time"],
    [0.499, "0.5 times the time"],
    [0.5, "50 % less"],
    [1.99, "99 % more"],
    [1.996, "2 times the time"],
    [24.6, "25 times the time"],
  ])("says a factor of %d as %s", (value, words) => {
    const answer = compensate(
      { timeS: 510, temperatureC: 20 },
      { strength: { cause: "strength", value, logSd: 0.1, basis: "given", sources: [] } },
    );
    expect(describeCompensation(answer).find((line) => line.startsWith("strength"))).toBe(
      `strength: ${words}, give or take 18 % (given)`,
    );
  });
});

describe("a spread", () => {
  it.each([
    [0.1, "18 %"],
    [0.243, "49 %"],
    [0.247, "a factor of 1.5"],
    [0.4214, "a factor of 2"],
    [3, "a factor of 140"],
    // Nine in ten: e^(1.645 × 0.1) is 1.18.
  ])("of %d in ln(time) is said as %s, nine in ten", (logSd, words) => {
    const answer = compensate(
      { timeS: 510, temperatureC: 20 },
      { strength: { cause: "strength", value: 0.8, logSd, basis: "given", sources: [] } },
    );
    expect(describeCompensation(answer).find((line) => line.startsWith("strength"))).toBe(
      `strength: 20 % less, give or take ${words} (given)`,
    );
  });
});

describe("a brew without a restrainer", () => {
  const brew: DeveloperBrew = {
    volumeMl: 500,
    ingredients: [
      { ingredient: "soda-anhydrous", massG: 20 },
      { ingredient: "instant-coffee", massG: 20 },
    ],
  };
  const wanted = (use = {}): boolean => checkBrew(brew, use).some(({ code }) => code === "restrainer-wanted");
  it("is named for fast film, and where the speed is not known unless the emulsion is soft", () => {
    expect([
      wanted({ filmIso: 400 }),
      wanted({ filmIso: 399 }),
      wanted(),
      wanted({ softEmulsion: true }),
      wanted({ softEmulsion: true, filmIso: 800 }),
    ]).toEqual([true, false, true, false, true]);
  });
});

describe("laws in a recipe", () => {
  it("may be all that the package learns and fits itself", () => {
    const known = learn(startKnowledge(stock.baseline), [
      { timeS: 560, temperatureC: 20, ageH: 4, outcome: { kind: "good" } },
      { timeS: 800, temperatureC: 15, outcome: { kind: "good" } },
    ]);
    const { temperature, agitation, use, age } = known;
    const dilution = fitDilutionLaw([
      { dilution: "1+9", timeS: 360 },
      { dilution: "1+19", timeS: 700 },
      { dilution: "1+29", timeS: 930 },
    ]).law;
    expect(age?.kind).toBe("speeding");
    const recipe = {
      ...stock,
      baseline: known.baseline,
      conditions: { temperatureC: 15, ageH: 4 },
      knowledge: { temperature, dilution, agitation, use, age },
    } as Recipe;
    expect(checkRecipe(JSON.parse(JSON.stringify(recipe)))).toMatchObject({ ok: true });
    expect(
      compensateRecipe(recipe)
        .factors.filter(({ runs = 0 }) => runs > 0)
        .map(({ cause, basis }) => [cause, basis]),
    ).toEqual([
      ["baseline", "own-runs"],
      ["temperature", "own-runs"],
      // One run "good" after four hours has hardly moved it.
      ["age", "default"],
    ]);
  });
});

describe("what stops the bath stops its time", () => {
  const first = (recipe: Recipe, conditions?: Conditions): string =>
    describeCompensation(compensateRecipe(recipe, conditions))[0]!;
  const stops = (recipe: Recipe, conditions?: Conditions): (string | undefined)[] =>
    compensateRecipe(recipe, conditions)
      .cautions.filter(({ severity }) => severity === "stop")
      .map(({ code, path }) => `${code} ${path}`);
  it("a brew that cannot develop, by the recipe's temperature where the bath drifts", () => {
    const weak = brewed({
      ingredients: [
        { ingredient: "baking-soda", massG: 27 },
        { ingredient: "instant-coffee", massG: 20 },
      ],
    });
    expect(first(weak)).toBe("No time to go by:");
    expect(stops(weak)).toEqual(["alkali-too-weak /developer/brew"]);
    expect(stops(weak, { temperatureC: 18 })).toEqual(["alkali-too-weak /developer/brew"]);
    expect(
      stops(weak, {
        temperatureC: [
          { timeS: 0, temperatureC: 20 },
          { timeS: 900, temperatureC: 18 },
        ],
      }),
    ).toEqual(["alkali-too-weak /developer/brew"]);
    expect(first(brewed({}))).toMatch(/^Develop 8:30/);
    // Of what is only unwise the time says nothing: that is for checkRecipe.
    expect(compensateRecipe(brewed({})).cautions.map(({ code }) => code)).not.toContain("restrainer-wanted");
  });
  it("a brew by the temperature that is handed in", () => {
    // So little soda beside baking soda that the warmer of two baths is below pH 8.5 and the colder is not.
    const faint = (massG: number): Recipe =>
      brewed({
        ingredients: [
          { ingredient: "baking-soda", massG: 27 },
          { ingredient: "soda-anhydrous", massG },
          { ingredient: "instant-coffee", massG: 5 },
        ],
      });
    const between = Array.from({ length: 400 }, (_, i) => faint(0.01 * (i + 1))).find(
      (recipe) => stops(recipe, { temperatureC: 10 }).length === 0,
    )!;
    expect(stops(between, { temperatureC: 10 })).toEqual([]);
    expect(stops(between, { temperatureC: 30 })).toEqual(["alkali-too-weak /developer/brew"]);
  });
  it("a bath past what it keeps or holds, by the recipe or by what is handed in", () => {
    expect(stops(stock)).toEqual([]);
    expect(stops(stock, { ageH: 25, usedCm2PerL: 2001 })).toEqual([
      "bath-past-keeping /conditions/ageH",
      "bath-past-capacity /conditions/usedCm2PerL",
    ]);
    expect(stops({ ...stock, baseline: { ...stock.baseline, ageH: 25 } })).toEqual([
      "bath-past-keeping /baseline/ageH",
    ]);
    // Twice as slow as fresh, of which compensate by itself says nothing.
    const slow = {
      ...stock,
      knowledge: { use: { increase: 0.6, perCm2PerL: 1000, growth: "linear" as const } },
    };
    expect(stops(slow, { usedCm2PerL: 1900 })).toEqual(["bath-too-slow /conditions"]);
  });
  it("what no recipe that was checked has is refused in words", () => {
    const big = { ...stock, developer: { ...stock.developer, volumeMl: 20n } } as unknown as Recipe;
    expect(() => compensateRecipe(big)).toThrow(
      new TypeError("compensateRecipe: recipe.developer.volumeMl must be a number, got 20"),
    );
    const wide = { ...stock, material: { name: "sheet film", areaCm2: -1 } };
    expect(() => compensateRecipe(wide)).toThrow(
      new RangeError(
        "compensateRecipe: recipe.material.areaCm2 must be above 0 and at most 1000000 cm², got -1",
      ),
    );
    expect(() => compensateRecipe(brewed({ volumeMl: 0 }))).toThrow(/^checkBrew: brew\.volumeMl must be /);
  });
});

describe("a brew in a recipe", () => {
  const bathAt = (ageH: number, more: Partial<Recipe> = {}): Recipe =>
    brewed({}, { conditions: { temperatureC: 20, ageH }, ...more });
  const lifeH = brewLife((bathAt(0).developer as RecipeBrew).brew).lifeH;
  const past = (recipe: Recipe): readonly (string | undefined)[] =>
    compensateRecipe(recipe)
      .cautions.filter(({ code }) => code === "bath-past-life")
      .map(({ severity, path }) => `${severity} ${path}`);

  it("has to live until the pour-out, by the life that its make-up lets expect", () => {
    expect(compensateRecipe(bathAt(0.5)).factors.find(({ cause }) => cause === "age")).toMatchObject({
      basis: "default",
      value: 1,
      sources: expect.arrayContaining([expect.stringMatching(/common practice/)]) as readonly string[],
    });
    expect(past(bathAt(lifeH / 2))).toEqual([]);
    expect(past(bathAt(lifeH - 0.01))).toEqual(["stop /conditions/ageH"]);
    expect(past(bathAt(lifeH + 1))).toEqual(["stop /conditions/ageH"]);
  });

  it("goes by the recipe's own law of age, and takes none where the known bath was older", () => {
    expect(past(bathAt(lifeH + 1, { knowledge: { age: { kind: "life", lifeH: 10 } } }))).toEqual([]);
    const known = { timeS: 510, temperatureC: 20, ageH: lifeH + 1 };
    const older = compensateRecipe(bathAt(lifeH + 1, { baseline: known }));
    expect(older.factors.filter(({ cause }) => cause === "age").map(({ basis }) => basis)).toEqual([
      "unchanged",
    ]);
  });

  it("is told of where it is wrong, and not by its life", () => {
    const salted = brewed({ ingredients: [{ ingredient: "table-salt", massG: 1e5 }] });
    expect(() => compensateRecipe(salted)).toThrow(/brew\.ingredients must be above 0/);
    const check = checkRecipe(salted);
    expect(check.ok || check.problems.map(({ path }) => path.startsWith("/developer/brew"))).toEqual([true]);
  });
});

describe("a field that is there but undefined, as forms send it", () => {
  const said: Recipe = {
    ...stock,
    agitation: { everyS: 60 },
    conditions: { temperatureC: 16, usedCm2PerL: 3000, ageH: 2, agitation: { everyS: 30 }, dilution: "1+14" },
  };
  const fields = ["temperatureC", "dilution", "agitation", "usedCm2PerL", "ageH", "strength"] as const;

  it.each(fields)("hides nothing that the recipe says: %s", (field) => {
    const silent: Conditions = { [field]: undefined };
    for (const recipe of [stock, said]) {
      expect(compensateRecipe(recipe, silent)).toEqual(compensateRecipe(recipe, {}));
      expect(planRecipe(recipe, { vessel: "tank", conditions: silent })).toEqual(
        planRecipe(recipe, { vessel: "tank" }),
      );
    }
  });

  it.each(fields)("is none in the recipe's own conditions or baseline: %s", (field) => {
    const { [field]: _said, ...without } = said.conditions ?? {};
    const silent: Recipe = { ...said, conditions: { ...said.conditions, [field]: undefined } };
    expect(compensateRecipe(silent, {})).toEqual(compensateRecipe({ ...said, conditions: without }, {}));
    if (field === "temperatureC" || field === "strength") return;
    const { [field]: _known, ...known } = said.baseline;
    const open: Recipe = { ...said, baseline: { ...known, [field]: undefined } };
    expect(compensateRecipe(open, {})).toEqual(compensateRecipe({ ...said, baseline: known }, {}));
  });
});
