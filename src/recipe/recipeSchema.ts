import { handbookIngredients } from "../handbook/ingredients.js";
import { handbookLeastStock } from "../handbook/dilution.js";
import type { JsonSchema } from "./readBySchema.js";
import { RECIPE_VERSION } from "./types.js";

type Fields = Readonly<Record<string, JsonSchema>>;

const from = (minimum: number, maximum: number, description?: string): JsonSchema =>
  description === undefined ? { type: "number", minimum, maximum } : { type: "number", minimum, maximum, description };
const above0 = (maximum: number, description: string): JsonSchema => ({ type: "number", exclusiveMinimum: 0, maximum, description });
const text = (maxLength: number): JsonSchema => ({ type: "string", maxLength });
const one = (...choices: readonly string[]): JsonSchema => ({ type: "string", enum: choices });
const list = (items: JsonSchema, minItems: number, maxItems: number): JsonSchema => ({ type: "array", items, minItems, maxItems });
const object = (required: readonly string[], properties: Fields): JsonSchema => ({ type: "object", properties, required, additionalProperties: false });
/** One of several forms; the field `kind` comes first and tells them apart. */
const form = (kind: string, required: readonly string[], properties: Fields): JsonSchema =>
  object(["kind", ...required], { kind: { const: kind }, ...properties });

const YES: JsonSchema = { type: "boolean" };
const LINES = list(text(2000), 0, 50);
const TEMPERATURE = from(0, 100, "°C");
const TIME = above0(1e7, "s");
const AREA_PER_L = from(0, 1e6, "cm² per litre");
const AGE = from(0, 1e6, "h");
const CAPACITY = above0(1e6, "cm² per litre");
const ORIGIN: Fields = { sources: LINES, runs: { type: "integer", minimum: 0, maximum: 1e6 }, published: YES };

// Parts from 0.1 to 9999.9, the stock not 0: then no dilution is beyond what the dilution room reads.
const PART = String.raw`\d{1,4}(\.\d)?`;
const STOCK = `(?!0+(\\.0)?\\+)${PART}`;
const DILUTION: JsonSchema = {
  type: "string",
  maxLength: 40,
  pattern: `^(stock|(${STOCK}\\+){1,3}${PART})$`,
  description: '"stock" or parts such as "1+9", the water last',
};

const AGITATION: JsonSchema = { anyOf: [one("continuous", "stand"), object(["everyS"], { everyS: above0(3600, "s") })] };

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

const KNOWLEDGE = object([], {
  temperature: {
    anyOf: [
      form("arrhenius", ["activationEnergyKJPerMol"], {
        activationEnergyKJPerMol: from(0, 200, "kJ/mol"),
        sdKJPerMol: from(0, 200, "kJ/mol"),
        ...ORIGIN,
      }),
      form("coefficient", ["ratio", "intervalC"], { ratio: from(1, 1e9, "over intervalC"), intervalC: above0(100, "°C"), sdRatio: from(0, 1e9), ...ORIGIN }),
      form("table", ["rows"], { rows: list(object(["temperatureC", "timeS"], { temperatureC: TEMPERATURE, timeS: TIME }), 2, 50), ...ORIGIN }),
    ],
  },
  dilution: {
    anyOf: [
      form("power", ["exponent"], { exponent: from(0, 3), sd: from(0, 3), ...ORIGIN }),
      form("table", ["rows"], { rows: list(object(["dilution", "timeS"], { dilution: DILUTION, timeS: TIME }), 2, 50), ...ORIGIN }),
    ],
  },
  agitation: object(["staleLoss", "staleTimeS"], { staleLoss: from(0, 0.99), staleTimeS: above0(1e5, "s"), sdStaleLoss: from(0, 10), ...ORIGIN }),
  use: object(["increase", "perCm2PerL", "growth"], {
    increase: from(0, 10, "0.1 is 10 %"),
    perCm2PerL: CAPACITY,
    growth: one("linear", "compound"),
    sdIncrease: from(0, 10),
    capacityCm2PerL: CAPACITY,
    ...ORIGIN,
  }),
  age: {
    anyOf: [
      form("half-life", ["halfLifeH"], { halfLifeH: above0(1e6, "h"), sdLog: from(0, 3), ...ORIGIN }),
      form("life", ["lifeH"], { lifeH: above0(1e6, "h"), ...ORIGIN }),
    ],
  },
});

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
  sensitivity: one("blue", "orthochromatic", "panchromatic"),
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
      logSd: from(0, 3, "standard deviation of ln(time)"),
    }),
    agitation: AGITATION,
    conditions: object([], { temperatureC: TEMPERATURE, usedCm2PerL: AREA_PER_L, ageH: AGE }),
    knowledge: KNOWLEDGE,
    baths: BATHS,
    safelight: one("none", "red", "orange", "green"),
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
