/*
 * The types of a recipe and its schema agree both ways. Each table below has the fields of a type, and the compiler
 * refuses one that lacks a field, has one too many, or says another kind; the test then holds it against the schema.
 */
import { describe, expect, expectTypeOf, it } from "vitest";
import {
  checkKnowledge,
  checkRecipe,
  learn,
  startKnowledge,
  type Baseline,
  type RecipeBrew,
  type Conditions,
  type Knowledge,
  type LearnedKnowledge,
  type ProcessBaths,
  type Recipe,
  type RecipeConditions,
  type RecipeMaterial,
  type DevelopmentRun,
  type RecipeStock,
} from "../../src/index.js";
import { causeSchemas } from "../../src/causes.js";
import type { JsonSchema } from "../../src/core/schema.js";
import { runSchema } from "../../src/learning/schema.js";
import { currentSchema } from "../../src/recipe/recipeSchema.js";
import { fc, test } from "../property.js";

/** The kind of a field in a word. */
type Kind<Value> = [Value] extends [string | undefined]
  ? "text"
  : [Value] extends [number | undefined]
    ? "number"
    : [Value] extends [boolean | undefined]
      ? "boolean"
      : [Value] extends [readonly unknown[] | undefined]
        ? "array"
        : "object";
/** Whether a field may be left out. */
type Need<Type, Key extends keyof Type> = undefined extends Type[Key] ? "?" : "!";
/** The fields of a type, each with its kind and whether it is needed. */
type Fields<Type> = { readonly [Key in keyof Type]-?: `${Kind<Type[Key]>}${Need<Type, Key>}` };

const fieldsOf = ({ properties = {}, required = [] }: JsonSchema): Record<string, string> =>
  Object.fromEntries(
    Object.entries(properties).map(([name, schema]) => [
      name,
      `${kindOf(schema)}${required.includes(name) ? "!" : "?"}`,
    ]),
  );
const kindOf = ({ type, anyOf, const: only }: JsonSchema): string => {
  if (anyOf !== undefined) return "object";
  if (only !== undefined) return typeof only === "string" ? "text" : typeof only;
  return type === "string" ? "text" : type === "integer" ? "number" : type!;
};

const schema = currentSchema();
const at = (...names: readonly string[]): JsonSchema =>
  names.reduce<JsonSchema>(
    (inner, name) => (/^\d$/.test(name) ? inner.anyOf![Number(name)]! : inner.properties![name]!),
    schema,
  );

const recipe: Fields<Recipe> = {
  $schema: "text?",
  schemaVersion: "number!",
  name: "text?",
  material: "object!",
  developer: "object!",
  baseline: "object!",
  agitation: "object?",
  conditions: "object?",
  knowledge: "object?",
  baths: "object?",
  byInspection: "boolean?",
  notes: "array?",
  sources: "array?",
};
const material: Fields<RecipeMaterial> = {
  name: "text!",
  kind: "text?",
  sensitization: "text?",
  emulsion: "text?",
  iso: "number?",
  areaCm2: "number?",
  pieces: "number?",
  iodideRich: "boolean?",
};
const limits = { hydroquinone: "boolean?", capacityCm2PerL: "number?", keepingLimitH: "number?" } as const;
const stock: Fields<RecipeStock> = {
  kind: "text!",
  name: "text!",
  dilution: "object!",
  volumeMl: "number?",
  leastMlPerRoll: "number?",
  family: "text?",
  ...limits,
};
const brew: Fields<RecipeBrew> = { kind: "text!", name: "text?", brew: "object!", ...limits };
const baseline: Fields<Baseline> = {
  timeS: "number!",
  temperatureC: "number!",
  dilution: "object?",
  agitation: "object?",
  usedCm2PerL: "number?",
  ageH: "number?",
  gamma: "number?",
  logSd: "number?",
  runs: "number?",
  before: "text?",
  moved: "boolean?",
  sources: "array?",
  hydroquinone: "boolean?",
  emulsion: "text?",
};
const conditions: Fields<RecipeConditions> = {
  temperatureC: "number?",
  dilution: "object?",
  agitation: "object?",
  usedCm2PerL: "number?",
  ageH: "number?",
  strength: "object?",
  gamma: "number?",
  pushStops: "number?",
  thermometer: "text?",
  by: "text?",
  batch: "text?",
};
const laws: Fields<Knowledge> = {
  temperature: "object?",
  dilution: "object?",
  agitation: "object?",
  use: "object?",
  age: "object?",
  strength: "object?",
  growth: "object?",
  push: "object?",
  interaction: "object?",
  batchLogSd: "number?",
  joint: "object?",
};
const run: Fields<DevelopmentRun> = {
  timeS: "number!",
  temperatureC: "number!",
  dilution: "object?",
  agitation: "object?",
  usedCm2PerL: "number?",
  ageH: "number?",
  strength: "object?",
  pushStops: "number?",
  outcome: "object!",
  id: "text?",
  date: "text?",
  thermometer: "text?",
  by: "text?",
  batch: "text?",
  printed: "boolean?",
  note: "text?",
};
const baths: Fields<ProcessBaths> = {
  preSoak: "object?",
  stop: "object?",
  fix: "object?",
  clearingAid: "object?",
  wash: "object?",
  wettingAgent: "object?",
};
const fix: Fields<NonNullable<ProcessBaths["fix"]>> = {
  kind: "text?",
  clearingS: "number?",
  clearingAtC: "number?",
  freshClearingS: "number?",
  times: "number?",
  usedCm2PerL: "number?",
  capacityCm2PerL: "number?",
  durationS: "number?",
  temperatureC: "number?",
  dilution: "object?",
};
const prior: Fields<LearnedKnowledge["prior"]> = {
  baseline: "object!",
  baseLogSd: "number!",
  laws: "object!",
  noise: "text!",
};

describe("the types of a recipe and its schema", () => {
  it.each([
    ["the recipe", recipe, schema],
    ["its material", material, at("material")],
    ["a stock", stock, at("developer", "0")],
    ["a brew", brew, at("developer", "1")],
    ["the baseline", baseline, at("baseline")],
    ["the conditions", conditions, at("conditions")],
    ["laws", laws, at("knowledge", "1")],
    ["what was known before the runs", prior, at("knowledge", "0", "prior")],
    ["a run", run, runSchema(causeSchemas)],
    ["the baths", baths, at("baths")],
    ["the fixing bath", fix, at("baths", "fix")],
  ])("have the same fields: %s", (_, typed, found) => {
    expect(fieldsOf(found)).toEqual(typed);
  });

  it("name all that learned knowledge holds", () => {
    const names: Record<keyof LearnedKnowledge, true> = {
      ...(Object.fromEntries(Object.keys(laws).map((name) => [name, true])) as Record<keyof Knowledge, true>),
      schema: true,
      prior: true,
      runs: true,
      baseline: true,
      parameters: true,
      scatter: true,
      setAside: true,
      advice: true,
    };
    expect(Object.keys(at("knowledge", "0").properties!).sort()).toEqual(Object.keys(names).sort());
  });

  it("say what a check hands back", () => {
    const check = checkRecipe({});
    if (check.ok) expectTypeOf(check.recipe).toEqualTypeOf<Recipe>();
    else expectTypeOf(check.problems[0]!.rule).toEqualTypeOf<"shape" | "relation">();
    const known = checkKnowledge({});
    if (known.ok) expectTypeOf(known.knowledge).toEqualTypeOf<LearnedKnowledge>();
    expectTypeOf<LearnedKnowledge>().toExtend<NonNullable<Recipe["knowledge"]>>();
    expectTypeOf<RecipeConditions>().toExtend<Conditions>();
    expect(check.ok).toBe(false);
  });

  it("take fields of one's own, and give them back as unknown", () => {
    const own = { "x-shelf": "left", "x-photo": { file: "hut.jpg" } };
    const known: Baseline = { timeS: 600, temperatureC: 20 };
    const written: Recipe = {
      "schemaVersion": 2,
      "x-shelf": "left",
      "material": { "name": "plate", "x-shelf": "left" },
      "developer": {
        "kind": "brew",
        "brew": {
          "volumeMl": 500,
          "ingredients": [{ ingredient: "soda-anhydrous", massG: 27 }],
          "x-jar": 3,
        },
        "x-jar": 3,
      },
      "baseline": { ...known, "x-photo": "hut.jpg" },
      "conditions": { "temperatureC": 18, "x-photo": "hut.jpg" },
      "knowledge": { "x-from": "a friend" },
      "baths": { "x-sink": "left", "fix": { clearingS: 60 } },
    };
    const check = checkRecipe(written);
    const { ok } = check;
    expect(ok).toBe(true);
    if (!check.ok) return;
    const { recipe: back } = check;
    expectTypeOf(back["x-shelf"]).toBeUnknown();
    expectTypeOf(back.material["x-shelf"]).toBeUnknown();
    expectTypeOf(back.developer["x-jar"]).toBeUnknown();
    expectTypeOf(back.conditions?.["x-photo"]).toBeUnknown();
    expect([back["x-shelf"], back.material["x-shelf"], back.developer["x-jar"]]).toEqual(["left", "left", 3]);
    expect("x-photo" in back.baseline && back.baseline["x-photo"]).toBe("hut.jpg");
    expect(back).toEqual(written);

    // A known time of another type fits as it is; a field that is misspelt does not.
    expectTypeOf<Baseline>().toExtend<Recipe["baseline"]>();
    // @ts-expect-error -- neither a field of the format nor one's own
    const misspelt: Recipe = { ...written, nam: "plate" };
    expect(checkRecipe(misspelt).ok).toBe(false);

    const run: DevelopmentRun = { ...own, timeS: 600, temperatureC: 20, outcome: { kind: "good" } };
    const [kept] = learn(startKnowledge(known), [run]).runs;
    expectTypeOf(kept!["x-photo"]).toBeUnknown();
    expect(kept!["x-photo"]).toEqual({ file: "hut.jpg" });
    const knowledge = { ...learn(startKnowledge(known), [run]), "x-from": "a friend" };
    const learned = checkRecipe({ ...written, baseline: known, knowledge });
    expect(learned).toMatchObject({ ok: true, recipe: { knowledge: { "x-from": "a friend" } } });
  });

  test.prop([
    fc.dictionary(
      fc.string().map((name) => `x-${name}`),
      fc.jsonValue({ maxDepth: 3 }),
      { maxKeys: 3 },
    ),
  ])("fields of one's own come back as they were", (own) => {
    const written = {
      ...own,
      schemaVersion: 2,
      material: { name: "plate", ...own },
      developer: { kind: "stock", name: "one", dilution: { stockParts: 1, waterParts: 9 } },
      baseline: { timeS: 600, temperatureC: 20 },
    };
    const check = checkRecipe(written);
    expect(check.ok && check.recipe).toEqual(written);
  });
});
