import { handbookIngredients } from "../handbook/ingredients.js";
import { handbookLeastStock } from "../handbook/dilution.js";
import { knowledgeSchema } from "./knowledgeSchema.js";
import type { JsonSchema } from "./readBySchema.js";
import {
  above0,
  AGE,
  AGITATION,
  AREA_PER_L,
  CAPACITY,
  DILUTION,
  form,
  from,
  GAMMA,
  LINES,
  list,
  object,
  one,
  RUNS,
  TEMPERATURE,
  text,
  YES,
  type Fields,
} from "./schemaParts.js";
import { RECIPE_VERSION } from "./types.js";

const brewed = (ingredient: JsonSchema, required: readonly string[], rest: Fields): JsonSchema =>
  object(["ingredient", ...required], { ingredient, ...rest });
function brewSchema(): JsonSchema {
  const weighed = Object.keys(handbookIngredients).filter((name) => name !== "ascorbic-acid-tablet");
  const grams = from(0, 1e5, "g");
  return object(["volumeMl", "ingredients"], {
    volumeMl: above0(1e5, "ml"),
    ingredients: list(
      {
        anyOf: [
          brewed({ const: "ascorbic-acid-tablet" }, ["tablets", "labelMg"], {
            tablets: from(0, 1e4),
            labelMg: above0(5000, "mg"),
          }),
          brewed(one(...weighed), ["massG"], {
            massG: grams,
            lowG: grams,
            highG: grams,
            spoons: above0(1e9, "spoons that hold them"),
            spoonMl: above0(100, "ml"),
            heap: one("level", "rounded", "heaped"),
          }),
        ],
      },
      1,
      30,
    ),
    temperatureC: from(0, 50, "°C"),
  });
}

function developerSchema(): JsonSchema {
  const limits: Fields = { hydroquinone: YES, capacityCm2PerL: CAPACITY, keepingLimitH: above0(1e6, "h") };
  return {
    anyOf: [
      form("stock", ["name", "dilution"], {
        name: text(200),
        dilution: DILUTION,
        volumeMl: above0(1e6, "ml"),
        leastMlPerRoll: above0(1e5, "ml"),
        family: one(...Object.keys(handbookLeastStock)),
        ...limits,
      }),
      form("brew", ["brew"], { name: text(200), brew: brewSchema(), ...limits }),
    ],
  };
}

function bathsSchema(): JsonSchema {
  const bath: Fields = { durationS: above0(86400, "s"), temperatureC: TEMPERATURE, dilution: DILUTION };
  const clearing = above0(7200, "s");
  return object([], {
    preSoak: object([], bath),
    stop: object([], { kind: one("acid", "water"), ...bath }),
    fix: object([], {
      kind: one("rapid", "plain"),
      clearingS: clearing,
      clearingAtC: from(0, 40, "°C"),
      freshClearingS: clearing,
      times: from(1, 10, "clearing times"),
      usedCm2PerL: AREA_PER_L,
      capacityCm2PerL: CAPACITY,
      ...bath,
    }),
    clearingAid: object([], bath),
    wash: object([], { method: one("running", "soak", "changes"), ...bath }),
    wettingAgent: object([], bath),
  });
}

const materialSchema = (): JsonSchema =>
  object(["name"], {
    name: text(200),
    kind: one("film", "plate", "paper"),
    sensitization: one("blue-sensitive", "orthochromatic", "panchromatic"),
    emulsion: one("soft", "hardened"),
    iso: above0(1e5, "ISO arithmetic"),
    areaCm2: above0(1e6, "cm²"),
    iodideRich: YES,
  });

const recipeOf = (version: number, material: JsonSchema, materialName: string, time: Fields): JsonSchema =>
  object(["schemaVersion", materialName, "developer", "baseline"], {
    schemaVersion: { const: version },
    name: text(200),
    [materialName]: material,
    developer: developerSchema(),
    baseline: object([...Object.keys(time), "temperatureC"], {
      ...time,
      temperatureC: TEMPERATURE,
      dilution: DILUTION,
      agitation: AGITATION,
      usedCm2PerL: AREA_PER_L,
      ageH: AGE,
      gamma: GAMMA,
      logSd: from(0, 3, "standard deviation of ln(time)"),
      runs: RUNS,
    }),
    agitation: AGITATION,
    conditions: object([], { temperatureC: TEMPERATURE, usedCm2PerL: AREA_PER_L, ageH: AGE, gamma: GAMMA }),
    knowledge: knowledgeSchema(),
    baths: bathsSchema(),
    byInspection: YES,
    notes: LINES,
    sources: LINES,
  });

let schemas: readonly [current: JsonSchema, older: JsonSchema] | undefined;

/**
 * The current version, and the one before: the film as a bare name, and the known time in minutes. Put
 * together at first use, since most programs that import the package never check a recipe, and it costs a
 * start 1 to 2 ms.
 */
export function recipeSchemas(): readonly [current: JsonSchema, older: JsonSchema] {
  schemas ??= [
    recipeOf(RECIPE_VERSION, materialSchema(), "material", { timeS: from(1, 1e6, "s") }),
    recipeOf(1, text(200), "film", { timeMin: from(0.1, 1e4, "min") }),
  ];
  return schemas;
}

/**
 * The recipe format as JSON Schema, draft 2020-12: what {@link checkRecipe} accepts, apart from values that
 * each are in range and do not go together, such as a table whose rows contradict each other.
 *
 * @remarks A. Wright, H. Andrews, B. Hutton, G. Dennis, JSON Schema: A Media Type for Describing JSON
 * Documents, and the validation vocabulary, 2022. Both versions that are read are in it. Problems that a
 * schema cannot express come from `checkRecipe` alone, marked `rule: "relation"`.
 *
 * @example
 * ```ts
 * recipeSchema.$schema // => "https://json-schema.org/draft/2020-12/schema"
 * ```
 */
export const recipeSchema: JsonSchema = {
  $schema: "https://json-schema.org/draft/2020-12/schema",
  title: "A recipe of darkroom-kinetics",
  $comment: "Values that are each in range and do not go together are refused by checkRecipe alone.",
  get anyOf() {
    return recipeSchemas();
  },
};
