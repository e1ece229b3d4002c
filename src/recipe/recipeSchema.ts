import { agitationSchema } from "../agitation/schema.js";
import { causeSchemas } from "../causes.js";
import { baselineSchema, conditionsSchema } from "../compensate/schema.js";
import {
  above0,
  form,
  from,
  lines,
  list,
  object,
  one,
  text,
  yes,
  type CauseSchema,
  type Fields,
  type JsonSchema,
} from "../core/schema.js";
import { frozen } from "../core/frozen.js";
import { dilutionSchema } from "../dilution/schema.js";
import { handbookIngredients } from "../handbook/ingredients.js";
import { leastStockFamilies } from "../handbook/dilution.js";
import { everything, type LearnedCause } from "../learning/learning.js";
import { knowledgeSchema } from "../learning/schema.js";
import { bathsSchema } from "../process/schema.js";
import { RECIPE_VERSION } from "./types.js";
import { brewMaterials } from "../brew/brewCapacity.js";

function brewSchema(): JsonSchema {
  const weighed = Object.keys(handbookIngredients).filter((name) => name !== "ascorbic-acid-tablet");
  const tablet = object(
    ["ingredient", "tablets", "labelMg"],
    {
      ingredient: { const: "ascorbic-acid-tablet", description: "Tablets of vitamin C." },
      tablets: from(0, 1e4, "How many."),
      labelMg: above0(5000, "Ascorbic acid in one tablet as the label says, in mg."),
    },
    "Tablets.",
  );
  const powder = object(
    ["ingredient", "massG"],
    {
      ingredient: one(weighed, "What it is."),
      massG: from(0, 1e5, "Mass, in g."),
      lowG: from(0, 1e5, "The least that it may be, in g."),
      highG: from(0, 1e5, "The most that it may be, in g."),
      spoons: above0(1e9, "How many spoons hold it."),
      spoonMl: above0(100, "Volume of the spoon, in ml."),
      heap: one(["level", "rounded", "heaped"], "How the spoon is filled."),
    },
    "An ingredient by weight.",
  );
  return object(
    ["volumeMl", "ingredients"],
    {
      volumeMl: above0(1e5, "Volume of the bath, in ml."),
      ingredients: list({ anyOf: [tablet, powder], description: "An ingredient." }, 1, 30, "What is in it."),
      temperatureC: from(0, 50, "Temperature at which it was mixed, in °C."),
    },
    "What the bath is mixed from.",
  );
}

function developerSchema(): JsonSchema {
  const limits: Fields = {
    hydroquinone: yes("True when it holds hydroquinone, which stops working in the cold."),
    capacityCm2PerL: above0(1e6, "Capacity, in cm² per litre of bath."),
    keepingLimitH: above0(1e6, "How long it keeps as it is stored, in hours."),
  };
  return {
    description: "The developer.",
    anyOf: [
      form("stock", "A stock solution and its dilution.", ["name", "dilution"], {
        name: text(200, "What it is called."),
        dilution: dilutionSchema("How it is diluted."),
        volumeMl: above0(1e6, "Volume of the bath, in ml."),
        leastMlPerRoll: above0(1e5, "Least stock for a roll of 516 cm², in ml."),
        family: one(leastStockFamilies, "Developer family, for its published least stock."),
        ...limits,
      }),
      form("brew", "A developer mixed from groceries.", ["brew"], {
        name: text(200, "What it is called."),
        brew: brewSchema(),
        ...limits,
      }),
    ],
  };
}

const materialSchema = (): JsonSchema =>
  object(
    ["name"],
    {
      name: text(200, "What it is called."),
      kind: one(brewMaterials, "What it is."),
      sensitization: one(
        ["blue-sensitive", "orthochromatic", "panchromatic"],
        "What light it sees; taken as panchromatic when left out.",
      ),
      emulsion: one(["soft", "hardened"], "Soft is a plate or an unhardened film, which takes less heat."),
      iso: above0(1e5, "Speed, ISO arithmetic."),
      areaCm2: above0(1e6, "Area developed at once, in cm²."),
      pieces: { ...from(1, 1000, "Sheets or plates developed at once; 1 when left out."), type: "integer" },
      iodideRich: yes("True for an iodide-rich or tabular film, which fixes more slowly."),
    },
    "The film, plate or paper.",
  );

/** The schema of a recipe by a list of causes. */
export function recipeSchemaOf(
  schemas: readonly CauseSchema[],
  taught: readonly LearnedCause[] = everything.causes,
): JsonSchema {
  return object(["schemaVersion", "material", "developer", "baseline"], {
    $schema: text(2000, "Where an editor finds the schema of the format."),
    schemaVersion: { const: RECIPE_VERSION, description: "The version of the format." },
    name: text(200, "What the recipe is called."),
    material: materialSchema(),
    developer: developerSchema(),
    baseline: baselineSchema(
      schemas,
      "The known time and its conditions. Dilution and agitation are the recipe's own where they are left " +
        "out.",
    ),
    agitation: agitationSchema("How the bath is moved today."),
    conditions: conditionsSchema(schemas),
    knowledge: knowledgeSchema(schemas, taught),
    baths: bathsSchema(),
    byInspection: yes("True when the image is watched while it develops."),
    notes: lines("Notes."),
    sources: lines("Where the recipe was found."),
  });
}

let made: JsonSchema | undefined;

/** The schema of a recipe over all causes, put together at first use: most programs never check a recipe. */
export function currentSchema(): JsonSchema {
  made ??= frozen(recipeSchemaOf(causeSchemas));
  return made;
}

/**
 * The recipe format as JSON Schema, draft 2020-12: what {@link checkRecipe} accepts, apart from values that
 * each are in range and do not go together, such as a table whose rows contradict each other. The package
 * holds it as a file too: `darkroom-kinetics/recipe.schema.json`.
 *
 * @remarks A. Wright, H. Andrews, B. Hutton, G. Dennis, JSON Schema: A Media Type for Describing JSON
 * Documents, and the validation vocabulary, 2022. Its `$id` is a name and no address. Every field has its
 * sentence as `description`. Problems that a schema cannot express come from `checkRecipe` alone, marked
 * `rule: "relation"`.
 *
 * @example
 * ```ts
 * recipeSchema.$schema // => "https://json-schema.org/draft/2020-12/schema"
 * recipeSchema.$id // => "urn:darkroom-kinetics:recipe:2"
 * ```
 */
export const recipeSchema: JsonSchema = /* @__PURE__ */ Object.freeze({
  $schema: "https://json-schema.org/draft/2020-12/schema",
  $id: `urn:darkroom-kinetics:recipe:${RECIPE_VERSION}`,
  title: "A recipe of darkroom-kinetics",
  $comment: "Values that are each in range and do not go together are refused by checkRecipe alone.",
  type: "object",
  additionalProperties: false,
  get patternProperties() {
    return currentSchema().patternProperties as Fields;
  },
  get required() {
    return currentSchema().required as readonly string[];
  },
  get properties() {
    return currentSchema().properties as Fields;
  },
});
