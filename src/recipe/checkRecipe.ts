import { causes, causeSchemas } from "../causes.js";
import { problemAt } from "../core/readBySchema.js";
import { readDocument } from "../core/readDocument.js";
import type { CauseSchema, JsonSchema } from "../core/schema.js";
import { gravestFirst } from "../core/caution.js";
import { askedDilution } from "../dilution/askedDilution.js";
import { oddKnowledge } from "../learning/oddKnowledge.js";
import { storedProblems } from "../learning/stored.js";
import { KNOWLEDGE_VERSION } from "../learning/types.js";
import { recipeBench } from "./recipeBench.js";
import { brewCautions, recipeCautions } from "./recipeCautions.js";
import { isLearned, recipeInputs, recipeTime } from "./recipeTime.js";
import { currentSchema } from "./recipeSchema.js";
import { relationProblems } from "./relations.js";
import { RECIPE_VERSION, type Recipe, type RecipeCheck, type RecipeProblem } from "./types.js";

/**
 * Checks a written recipe: every problem at once, or the recipe with everything that is valid but unwise
 * about it.
 *
 * @param input - anything; text is read as JSON first
 * @returns `ok: true` with a clean copy of the recipe, the cautions of all modules, gravest first, and apart
 * from them the standing notes on gloves, air, silver and data sheets; or `ok: false` with up to 100
 * problems, each with a JSON Pointer and what was expected there
 *
 * @remarks Never throws. The form is checked first, and nothing else is done with a document whose form is
 * wrong. The walk follows the format and not the input, so neither depth nor size of the input matters.
 * Fields that the format does not know are refused, `__proto__` among them: a misspelt field would otherwise
 * pass in silence. Fields that begin with `x-` are the writer's own and are kept. Paths are JSON Pointers (P.
 * Bryan, K. Zyp, M. Nottingham, RFC 6901, 2013). Text that is no JSON is told with line and column. A newer
 * version than 2 is refused by name. Learned knowledge is worked out from its prior and its runs. A recipe
 * that passes always compensates. Cautions do not replace local codes and safety data sheets.
 *
 * @example
 * ```ts
 * const check = checkRecipe({ schemaVersion: 3 });
 * check.ok || check.problems[0]?.path // => "/schemaVersion"
 * ```
 */
export function checkRecipe(input: unknown): RecipeCheck {
  return recipeCheck(input, currentSchema(), causeSchemas);
}

const VERSIONS = [
  { field: "schemaVersion", newest: RECIPE_VERSION },
  { field: "schema", newest: KNOWLEDGE_VERSION, within: "knowledge" },
];

/** The same by a list of causes and the schema that was made of it. */
export function recipeCheck(
  input: unknown,
  schema: JsonSchema,
  schemas: readonly CauseSchema[],
): RecipeCheck {
  const problems: RecipeProblem[] = [];
  const list = schemas === causeSchemas ? causes : schemas.map(({ cause }) => cause);
  const copy = readDocument(schema, input, VERSIONS, problems) as Recipe | undefined;
  if (copy === undefined) return { ok: false, problems: problems.map(askedDilution) };
  const learned = isLearned(copy.knowledge) ? copy.knowledge : undefined;
  const inputs = problemAt(problems, "/knowledge", () => recipeInputs("checkRecipe", copy, {}, list));
  if (inputs === undefined)
    return {
      ok: false,
      problems: learned === undefined ? problems : storedProblems(learned, problems, "/knowledge"),
    };
  // Worked out from its prior and its runs, what was learned goes into the recipe that is handed back.
  const recipe = inputs.learned === undefined ? copy : { ...copy, knowledge: inputs.learned };
  problems.push(...relationProblems(recipe, inputs, list));
  const ofBrew = problemAt(problems, "/developer/brew", () => brewCautions(recipe));
  if (ofBrew === undefined || problems.length > 0) return { ok: false, problems };
  const answer = recipeTime(recipe, {}, list);
  const cautions = problemAt(problems, "", () => recipeCautions(recipe, answer, ofBrew));
  if (cautions === undefined) return { ok: false, problems };
  const odd = learned === undefined ? [] : oddKnowledge("checkRecipe/knowledge", learned);
  return {
    ok: true,
    recipe,
    cautions: gravestFirst([...odd, ...inputs.cautions, ...cautions]),
    benchNotes: recipeBench(recipe),
  };
}
