import { describe, expect, it } from "vitest";
import {
  checkRecipe,
  compensateRecipe,
  describePlan,
  learn,
  planProcess,
  planRecipe,
  roundEstimate,
  startKnowledge,
  steer,
  type Conditions,
  type ProcessPlan,
  type Recipe,
} from "../../src/index.js";
import { hutCoffee } from "./documents.js";

// All invented: a weekend workshop in a mountain hut, tap water at 14 °C.
const recipe: Recipe = {
  schemaVersion: 2,
  material: {
    name: "sheet film",
    kind: "film",
    iodideRich: true,
    areaCm2: 200,
    sensitization: "panchromatic",
  },
  developer: { kind: "stock", name: "hut stock", dilution: "1+50", volumeMl: 510 },
  baseline: { timeS: 660, temperatureC: 20, agitation: { everyS: 60 } },
  agitation: { everyS: 30 },
  conditions: { temperatureC: 18 },
  baths: { stop: {}, fix: { clearingS: 45, usedCm2PerL: 500 }, wash: {} },
};
const plan = planRecipe(recipe, { vessel: "tank" });
const step = (name: string, from = plan) => from.steps.find((one) => one.name === name)!;
const codes = (from: { cautions: readonly { code: string }[] }): string[] =>
  from.cautions.map(({ code }) => code);

describe("the standing notes of a recipe", () => {
  const STANDING = /^(?:bench-|silver-|safety-|gloves-|kitchenware|rest-before-use|disposal)/;
  it.each([
    ["a stock", recipe, ["bench-gloves", "bench-air", "bench-acid", "silver-disposal", "safety-data-sheets"]],
    [
      "a stock with a stop of plain water",
      { ...recipe, baths: { stop: { kind: "water" }, fix: {}, wash: {} } },
      ["bench-gloves", "bench-air", "silver-disposal", "safety-data-sheets"],
    ],
    [
      "a brew",
      hutCoffee as unknown as Recipe,
      ["gloves-and-glasses", "kitchenware", "rest-before-use", "disposal", "bench-air", "silver-disposal"],
    ],
  ] as const)("of %s stand once, apart from its cautions, in the check and in the plan", (_, one, notes) => {
    const check = checkRecipe(one);
    if (!check.ok) throw new Error("no recipe");
    const planned = planRecipe(one, { vessel: "tray" });
    for (const { cautions, benchNotes } of [check, planned]) {
      expect(benchNotes.map(({ code }) => code)).toEqual(notes);
      expect(benchNotes.every(({ severity }) => severity === "note")).toBe(true);
      expect(cautions.filter(({ code }) => STANDING.test(code))).toEqual([]);
      const gravity = cautions.map(({ severity }) => ["stop", "warn", "note"].indexOf(severity));
      expect(gravity).toEqual([...gravity].sort((a, b) => a - b));
    }
    const lines = describePlan(planned);
    expect(lines.filter((line) => /[Gg]loves/.test(line))).toHaveLength(1);
    expect(lines.filter((line) => /data sheets/.test(line))).toHaveLength(1);
    expect(lines.filter((line) => line.startsWith("Always:"))).toHaveLength(notes.length);
  });
  it("and how a brew is mixed are read before the first pour-in, and gas at its step", () => {
    const film = { name: "film", kind: "film" } as const;
    const brew = {
      volumeMl: 500,
      ingredients: [
        { ingredient: "soda-anhydrous", massG: 27 },
        { ingredient: "instant-coffee", massG: 20 },
        { ingredient: "ascorbic-acid", massG: 8 },
      ],
    } as const;
    const coffee = { ...hutCoffee, material: film, developer: { kind: "brew", name: "hut", brew } };
    const baths = { stop: {}, fix: { clearingS: 60 }, wash: {} };
    const lines = describePlan(planRecipe({ ...coffee, baths } as unknown as Recipe, { vessel: "tank" }));
    const at = (start: string): number => lines.findIndex((line) => line.includes(start));
    const start = at("0:00 develop");
    const mixing = [
      "add the acid last",
      "dissolve each apart",
      "mind washing soda",
      "let it stand 5 to 10 min",
    ];
    const places = mixing.map((words) => lines.findIndex((line) => line.toLowerCase().includes(words)));
    expect(places.every((place) => place > 0 && place < start)).toBe(true);
    expect(Math.max(...places)).toBe(at("Let it stand"));
    expect(at("Lift the pouring cap")).toBe(at(" stop, 0:30") + 1);
    expect(lines[at("Lift the pouring cap")]).toMatch(/^ {2}\d+:\d\d Acid after soda/);
    expect(lines.filter((line) => line.includes("Lift the pouring cap"))).toHaveLength(1);
  });
  it("of a recipe without a fixing bath do not speak of silver", () => {
    const codesOf = (one: Recipe): string[] =>
      planRecipe(one, { vessel: "tray" }).benchNotes.map(({ code }) => code);
    expect(codesOf({ ...recipe, baths: { stop: {} } })).not.toContain("silver-disposal");
    expect(codesOf({ ...(hutCoffee as unknown as Recipe), baths: { wash: {} } })).not.toContain(
      "silver-disposal",
    );
  });
});

describe("an acid stop on soft gelatin", () => {
  // Acid on carbonate makes gas (common knowledge); borax holds none.
  it.each([
    ["soda-anhydrous", true],
    ["borax", false],
  ] as const)("after %s: warned of %s, by the check and by the plan", (ingredient, warned) => {
    const soft: Recipe = {
      ...(hutCoffee as unknown as Recipe),
      // A plate that is not said to be hardened is soft.
      material: { name: "plate", kind: "plate" },
      developer: {
        kind: "brew",
        name: "hut brew",
        brew: {
          volumeMl: 500,
          ingredients: [
            { ingredient, massG: 12 },
            { ingredient: "instant-coffee", massG: 20 },
          ],
        },
      },
      baths: { stop: { kind: "acid" }, fix: {}, wash: {} },
    };
    const check = checkRecipe(soft);
    if (!check.ok) throw new Error("no recipe");
    for (const { cautions } of [check, planRecipe(soft, { vessel: "tray" })])
      expect(cautions.some(({ code }) => code === "acid-stop-blisters")).toBe(warned);
  });
});

describe("a plate", () => {
  const soft: Recipe = {
    ...(hutCoffee as unknown as Recipe),
    material: { name: "plate", kind: "plate" },
    baths: { stop: {}, fix: {}, wash: {} },
    conditions: { temperatureC: 25 },
  };
  const hard: Recipe = { ...soft, material: { ...soft.material, emulsion: "hardened" } };
  const hardTime: Recipe = { ...soft, baseline: { ...soft.baseline, emulsion: "hardened" } };
  const warned = (one: Recipe): readonly boolean[] => {
    const check = checkRecipe(one);
    if (!check.ok) throw new Error("no recipe");
    const plan = planRecipe(one, { vessel: "tray" });
    return [check, plan, compensateRecipe(one)].map(({ cautions }) =>
      cautions.some(({ code }) => code === "soft-emulsion-warm"),
    );
  };
  // Common practice: a plate is coated soft.
  it("is soft in the check, in the time and in the plan, unless the recipe says that it is hardened", () => {
    expect(warned(soft)).toEqual([true, true, true]);
    expect(compensateRecipe(soft).refused).toBe(true);
    expect(warned(hard)).toEqual([false, false, false]);
    expect(warned(hardTime)).toEqual([false, false, false]);
    const stop = (one: Recipe): string => planRecipe(one, { vessel: "tray" }).materials[1]!.name;
    expect([soft, hard, hardTime].map(stop)).toEqual(["stop water", "stop bath", "stop bath"]);
  });
  it("keeps its stop of plain water in a plan that is aimed anew", () => {
    const plan = planRecipe({ ...soft, conditions: { temperatureC: 20 } }, { vessel: "tray" });
    const log = [{ timeS: 0, temperatureC: 19 }];
    const aimed = steer({ baseline: soft.baseline, conditions: {}, log, plan }).plan!;
    expect(aimed.materials).toEqual(plan.materials);
    const cues = (one: ProcessPlan): readonly string[] =>
      one.steps.find(({ name }) => name === "stop")!.cues.map((cue) => cue.do);
    expect(cues(aimed)).toEqual(cues(plan));
    expect(cues(aimed)[0]).toBe("rinse");
  });
});

describe("a drum", () => {
  const drum = (more: Partial<Recipe> = {}, conditions?: Conditions) =>
    planRecipe({ ...recipe, ...more }, { vessel: "drum", conditions });
  const told = (from: ProcessPlan): readonly unknown[] =>
    from.cautions.flatMap(({ code, severity, path, data }) =>
      code.startsWith("drum-") ? [[code, severity, path, data]] : [],
    );
  it("is turned without pause, and the time is for that", () => {
    // Turned without pause: common practice.
    const turned = drum();
    const { timeS } = compensateRecipe(recipe, { agitation: "continuous" });
    expect(step("develop", turned).durationS).toBe(timeS);
    expect(timeS).toBeLessThan(compensateRecipe(recipe).timeS);
    expect(turned.handling.agitation).toBe("continuous");
    expect(told(turned)).toEqual([["drum-turned", "note", "/agitation", { agitation: 30 }]]);
    const { agitation: _, ...known } = recipe;
    expect(told(planRecipe(known, { vessel: "drum" }))).toEqual([
      ["drum-turned", "note", "/baseline/agitation", { agitation: 60 }],
    ]);
    expect(describePlan(drum({ agitation: "stand" }))).toContain(
      "Note: A drum is turned without pause, and the time is for that. The recipe says stand development.",
    );
  });
  it("is moved as today's conditions say", () => {
    const every = { agitation: { everyS: 60 } } as const;
    const asked = [["drum-not-turned", "warn", "/conditions/agitation", undefined]];
    expect(told(drum({}, every))).toEqual(asked);
    expect(told(drum({ conditions: { temperatureC: 18, ...every } }))).toEqual(asked);
    expect(told(drum({ agitation: "continuous" }))).toEqual([]);
    expect(told(plan)).toEqual([]);
  });
});

describe("how many sheets a recipe develops at once", () => {
  const movement = (pieces?: number): string =>
    planRecipe(
      { ...recipe, material: { name: "paper", kind: "paper", pieces } },
      {
        vessel: "tray",
      },
    ).handling.movement;
  it("decides whether they are shuffled: a single one cannot be", () => {
    expect([undefined, 1, 2, 12].map(movement)).toEqual(["rock", "rock", "shuffle", "shuffle"]);
  });
  it.each([0, 1.5, 1001])("is refused as %d", (pieces) => {
    const check = checkRecipe({ ...recipe, material: { name: "paper", kind: "paper", pieces } });
    expect(check.ok ? [] : check.problems.map(({ path }) => path)).toEqual(["/material/pieces"]);
  });
});

describe("whether the developer of a recipe is enough", () => {
  const said = (one: Recipe, options: Omit<Parameters<typeof planRecipe>[1], "vessel"> = {}): unknown[] =>
    planRecipe(one, { vessel: "tray", ...options })
      .cautions.filter(({ code }) => /^(?:bath-|thin-|too-little)/.test(code))
      .map(({ code, severity, path }) => [code, severity, path]);
  // 0.5 ml for each cm² (household encyclopaedia); 250 ml a roll (common practice).
  it("is told once, of the bath that is planned, with its place", () => {
    expect(said(recipe)).toEqual([]);
    expect(said(recipe, { volumeMl: 90 })).toEqual([
      ["too-little-stock", "warn", "/options/volumeMl"],
      ["thin-layer", "warn", "/options/volumeMl"],
    ]);
    const full = { ...recipe, developer: { ...recipe.developer, capacityCm2PerL: 1000 } } as Recipe;
    expect(said(full, { conditions: { usedCm2PerL: 2000 } })).toEqual([
      ["bath-past-capacity", "stop", "/conditions/usedCm2PerL"],
    ]);
    expect(said({ ...full, conditions: { temperatureC: 18, usedCm2PerL: 2000 } })).toEqual([
      ["bath-past-capacity", "stop", "/conditions/usedCm2PerL"],
    ]);
  });
  it("is told of a brew by its agent, in the volume that is planned", () => {
    const plates = (count: number): Recipe => ({
      ...(hutCoffee as unknown as Recipe),
      material: { name: "plate", kind: "plate", areaCm2: count * 108 },
    });
    const { developer } = plates(1);
    if (developer.kind !== "brew") throw new Error("no brew");
    const { volumeMl } = developer.brew;
    expect(said(plates(1))).toEqual([]);
    expect(said(plates(Math.ceil(volumeMl / 50)))).toContainEqual([
      "bath-capacity-reached",
      "warn",
      "/material/areaCm2",
    ]);
    expect(said(plates(Math.ceil(volumeMl / 50)), { volumeMl: 4 * volumeMl })).toEqual([]);
  });
});

describe("planRecipe", () => {
  it("carries the time and its agitation, temperature, dilution, volume and baths", () => {
    expect(plan.steps.map(({ name }) => name)).toEqual(["develop", "stop", "fix", "wash"]);
    expect(step("develop").durationS).toBe(compensateRecipe(recipe).timeS);
    expect(step("develop").temperatureC).toBe(18);
    expect(plan.handling.agitation).toEqual({ everyS: 30 });
    expect(plan.materials[0]).toMatchObject({
      name: "developer",
      dilution: "1+50",
      stockMl: 10,
      waterMl: 500,
    });
  });

  it("develops for the rounded time when asked, and leaves the other steps as they are", () => {
    const rounded = planRecipe(recipe, { vessel: "tank", rounded: true });
    expect(step("develop", rounded).durationS).toBe(roundEstimate(compensateRecipe(recipe)).timeS);
    expect(step("develop", rounded).durationS).not.toBe(step("develop").durationS);
    expect(step("wash", rounded).durationS).toBe(step("wash").durationS);
    expect(() => planRecipe(recipe, { vessel: "tank", rounded: 1 as never })).toThrow(
      "planRecipe: options.rounded must be true or false, got 1",
    );
  });

  it("carries what fixing depends on: an iodide-rich film is fixed for three clearing times", () => {
    // Three clearing times for iodide-rich films, two for others (makers' notes, common practice).
    expect(step("fix").durationS).toBe(135);
    const plain = planRecipe(
      { ...recipe, material: { ...recipe.material, iodideRich: false } },
      { vessel: "tank" },
    );
    expect(step("fix", plain).durationS).toBe(90);
    const past = { ...recipe, baths: { fix: { clearingS: 45, usedCm2PerL: 90_000 }, wash: {} } };
    expect(codes(planRecipe(past, { vessel: "tank" }))).toContain("fixer-past-capacity");
  });

  it("is planProcess with all that the recipe knows", () => {
    const { cautions, ...own } = plan;
    const { cautions: others, ...direct } = planProcess({
      vessel: "tank",
      answer: compensateRecipe(recipe),
      temperatureC: 18,
      agitation: { everyS: 30 },
      dilution: "1+50",
      volumeMl: 510,
      areaCm2: 200,
      material: "film",
      iodideRich: true,
      sensitization: "panchromatic",
      baths: recipe.baths,
    });
    expect(own).toEqual(direct);
    for (const { code } of others) expect(codes({ cautions })).toContain(code);
  });

  it("carries the cautions of the recipe and of the plan, each once, with paths into the recipe", () => {
    const old = planRecipe(
      {
        ...recipe,
        developer: { ...recipe.developer, keepingLimitH: 2 },
        conditions: { ageH: 3, temperatureC: 34 },
      },
      { vessel: "tank" },
    );
    expect(old.timeRefused).toBe(true);
    expect(old.cautions).toContainEqual(
      expect.objectContaining({ code: "bath-past-keeping", path: "/conditions/ageH", severity: "stop" }),
    );
    const places = old.cautions.map(({ code, path }) => `${code} ${path ?? ""}`);
    expect(new Set(places).size).toBe(places.length);
    expect(places.some((place) => place.endsWith(" /conditions/temperatureC"))).toBe(true);
    expect(places.some((place) => place.endsWith(" /temperatureC"))).toBe(false);
    const ranks = old.cautions.map(({ severity }) => ["stop", "warn", "note"].indexOf(severity));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(
      describePlan(old).some((line) => line.startsWith("Take care: ") || line.startsWith("Stop: ")),
    ).toBe(true);
  });

  it("takes today's conditions before the recipe's", () => {
    const conditions = { temperatureC: 14, dilution: "1+25", agitation: "continuous" } as const;
    const today = planRecipe(recipe, { vessel: "tray", conditions, volumeMl: 260, stepS: 15 });
    expect(step("develop", today).temperatureC).toBe(14);
    expect(today.handling).toMatchObject({ vessel: "tray", agitation: "continuous", stepS: 15 });
    expect(today.materials[0]).toMatchObject({ dilution: "1+25", stockMl: 10, waterMl: 250 });
    expect(step("develop", today).durationS % 15).toBe(0);
    const drift = { startC: 17, ambientC: 14, timeConstantS: 3600 };
    const cooling = planRecipe(recipe, { vessel: "tank", conditions: { temperatureC: drift } });
    expect(step("develop", cooling).temperatureC).toBe(17);
    expect(step("develop", cooling).durationS).toBe(compensateRecipe(recipe, { temperatureC: drift }).timeS);
    const log = [
      { timeS: 0, temperatureC: 16 },
      { timeS: 600, temperatureC: 15 },
    ];
    expect(
      step("develop", planRecipe(recipe, { vessel: "tank", conditions: { temperatureC: log } })).temperatureC,
    ).toBe(16);
  });

  it("plans a brew: its volume, a soft emulsion, and soda under an acid stop", () => {
    const coffee = {
      ...hutCoffee,
      baths: { stop: { kind: "acid" }, fix: { clearingS: 45 }, wash: {} },
    } as unknown as Recipe;
    const brewed = planRecipe(coffee, { vessel: "tray" });
    expect(brewed.materials[0]).toMatchObject({ name: "developer", volumeMl: 500 });
    // Soda meets acid in soft gelatin: gas, and blisters.
    expect(brewed.cautions).toContainEqual(
      expect.objectContaining({ code: "acid-stop-blisters", path: expect.stringMatching(/^\/baths\/stop/) }),
    );
  });

  it("plans the time that was learned", () => {
    const known = learn(startKnowledge({ timeS: 660, temperatureC: 20 }), [
      { timeS: 800, temperatureC: 20, outcome: { kind: "good" } },
    ]);
    const learned = {
      ...recipe,
      baseline: known.baseline,
      knowledge: known,
      conditions: { temperatureC: 20 },
    };
    expect(step("develop", planRecipe(learned, { vessel: "tank" })).durationS).toBe(
      compensateRecipe(learned).timeS,
    );
  });

  it("leaves the baths to planProcess where the recipe names none, and says unread options", () => {
    const bare = { ...recipe, baths: undefined };
    const usual = planRecipe(bare, { vessel: "tank", ...{ vesel: "drum" } });
    expect(usual.steps.map(({ name }) => name)).toEqual(["develop", "stop", "fix", "wash", "wetting-agent"]);
    expect(usual.cautions).toContainEqual(
      expect.objectContaining({
        code: "unknown-field",
        path: "/options/vesel",
        data: { field: "vesel", nearest: "vessel" },
      }),
    );
  });

  it.each([
    [5, { vessel: "tank" }, /^planRecipe: recipe must be an object/],
    [recipe, 5, /^planRecipe: options must be an object/],
    [recipe, { vessel: "bucket" }, /^planRecipe: options\.vessel must be/],
  ])("refuses: $2", (one, options, message) => {
    expect(() => planRecipe(one as never, options as never)).toThrow(message);
  });
});
