import { handbookIngredients } from "../handbook/ingredients.js";
import { handbookLeastStock } from "../handbook/dilution.js";
import { KNOWLEDGE } from "./knowledgeSchema.js";
import type { JsonSchema } from "./readBySchema.js";
import { above0, AGE, AGITATION, AREA_PER_L, CAPACITY, DILUTION, form, from, GAMMA, LINES, list, object, one, TEMPERATURE, text, YES, type Fields } from "./schemaParts.js";
import { RECIPE_VERSION } from "./types.js";

const brewed = (ingredient: JsonSchema, required: readonly string[], rest: Fields): JsonSchema =>
  object(["ingredient", ...required], { ingredient, ...rest });
const WEIGHED = Object.keys(handbookIngredients).filter((name) => name !== "ascorbic-acid-tablet");
const GRAMS = from(0, 1e5, "g");

const BREW = object(["volumeMl", "ingredients"], {
  volumeMl: above0(1e5, "ml"),
  ingredients: list(
    {
      anyOf: [
        brewed({ const: "ascorbic-acid-tablet" }, ["tablets", "labelMg"], { tablets: from(0, 1e4), labelMg: above0(5000, "mg") }),
        brewed(one(...WEIGHED), ["massG"], { massG: GRAMS, lowG: GRAMS, highG: GRAMS }),
      ],
    },
    1,
    30,
  ),
  temperatureC: from(0, 50, "°C"),
});

const LIMITS: Fields = { hydroquinone: YES, capacityCm2PerL: CAPACITY, keepingLimitH: above0(1e6, "h") };

const DEVELOPER: JsonSchema = {
  anyOf: [
    form("stock", ["name", "dilution"], {
      name: text(200),
      dilution: DILUTION,
      volumeMl: above0(1e6, "ml"),
      leastMlPerRoll: above0(1e5, "ml"),
      family: one(...Object.keys(handbookLeastStock)),
      ...LIMITS,
    }),
    form("brew", ["brew"], { name: text(200), brew: BREW, ...LIMITS }),
  ],
};

const BATH: Fields = { durationS: above0(86400, "s"), temperatureC: TEMPERATURE, dilution: DILUTION };
const CLEARING = above0(7200, "s");

const BATHS = object([], {
  preSoak: object([], BATH),
  stop: object([], { kind: one("acid", "water"), ...BATH }),
  fix: object([], {
    kind: one("rapid", "plain"),
    clearingS: CLEARING,
    clearingAtC: from(0, 40, "°C"),
    freshClearingS: CLEARING,
    times: from(1, 10, "clearing times"),
    usedCm2PerL: AREA_PER_L,
    capacityCm2PerL: CAPACITY,
    ...BATH,
  }),
  clearingAid: object([], BATH),
  wash: object([], { method: one("running", "soak", "changes"), ...BATH }),
  wettingAgent: object([], BATH),
});

const MATERIAL: Fields = {
  name: text(200),
  kind: one("film", "plate", "paper"),
  sensitization: one("blue-sensitive", "orthochromatic", "panchromatic"),
  emulsion: one("soft", "hardened"),
  iso: above0(1e5, "ISO arithmetic"),
  areaCm2: above0(1e6, "cm²"),
  modernFilm: YES,
};

const recipeOf = (version: number, material: JsonSchema, materialName: string, time: Fields): JsonSchema =>
  object(["schemaVersion", materialName, "developer", "baseline"], {
    schemaVersion: { const: version },
    name: text(200),
    [materialName]: material,
    developer: DEVELOPER,
    baseline: object([...Object.keys(time), "temperatureC"], {
      ...time,
      temperatureC: TEMPERATURE,
      dilution: DILUTION,
      agitation: AGITATION,
      usedCm2PerL: AREA_PER_L,
      ageH: AGE,
      gamma: GAMMA,
      logSd: from(0, 3, "standard deviation of ln(time)"),
    }),
    agitation: AGITATION,
    conditions: object([], { temperatureC: TEMPERATURE, usedCm2PerL: AREA_PER_L, ageH: AGE, gamma: GAMMA }),
    knowledge: KNOWLEDGE,
    baths: BATHS,
    byInspection: YES,
    notes: LINES,
    sources: LINES,
  });

/** The current version. */
export const currentSchema: JsonSchema = recipeOf(RECIPE_VERSION, object(["name"], MATERIAL), "material", { timeS: from(1, 1e6, "s") });

/** The version before: the film as a bare name, and the known time in minutes. */
export const olderSchema: JsonSchema = recipeOf(1, text(200), "film", { timeMin: from(0.1, 1e4, "min") });

/**
 * The recipe format as JSON Schema, draft 2020-12: what {@link checkRecipe} accepts, apart from values that each are in range and do not go
 * together, such as a table whose rows contradict each other.
 *
 * @remarks A. Wright, H. Andrews, B. Hutton, G. Dennis, JSON Schema: A Media Type for Describing JSON Documents, and the validation
 * vocabulary, 2022. Both versions that are read are in it. Problems that a schema cannot express come from `checkRecipe` alone, marked
 * `rule: "relation"`.
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
  anyOf: [currentSchema, olderSchema],
};
