import { migrate, type OlderRecipe } from "./migrate.js";
import { readBySchema } from "./readBySchema.js";
import { brewCautions, recipeCautions } from "./recipeCautions.js";
import { recipeTime } from "./recipeTime.js";
import { recipeSchemas } from "./recipeSchema.js";
import { ask, relationProblems } from "./relations.js";
import { RECIPE_VERSION, type Recipe, type RecipeCheck, type RecipeProblem } from "./types.js";

/** Longer texts are not read at all: a full recipe has a few thousand characters. */
const LONGEST_TEXT = 250_000;

/**
 * Checks a written recipe: every problem at once, or the recipe with everything that is valid but unwise
 * about it.
 *
 * @param input - anything; text is read as JSON first
 * @returns `ok/true` with a clean copy of the recipe in the current version and the cautions of all rooms,
 * gravest first; or `ok/false` with up to 100 problems, each with a JSON Pointer and what was expected there
 *
 * @remarks Never throws. Fields that the format does not know are refused, `__proto__` among them: a misspelt
 * field would otherwise pass in silence. The walk follows the format and not the input, so neither depth nor
 * size of the input matters. Paths are JSON Pointers (P. Bryan, K. Zyp, M. Nottingham, RFC 6901, 2013).
 * Version 1 is migrated; a newer version than 2 is refused. A recipe that passes always compensates. Cautions
 * do not replace local codes and safety data sheets.
 *
 * @example
 * ```ts
 * checkRecipe({ schemaVersion: 3 }).problems[0].path // => "/schemaVersion"
 * ```
 */
export function checkRecipe(input: unknown): RecipeCheck {
  const problems: RecipeProblem[] = [];
  const recipe = readRecipe(input, problems);
  if (recipe === undefined) return { ok: false, problems };
  problems.push(...relationProblems(recipe));
  const ofBrew = ask(problems, "/developer/brew", () => brewCautions(recipe));
  if (ofBrew === undefined || problems.length > 0) return { ok: false, problems };
  const answer = recipeTime(recipe);
  const cautions = ask(problems, "", () => recipeCautions(recipe, answer, ofBrew));
  return cautions === undefined ? { ok: false, problems } : { ok: true, recipe, cautions };
}

/** The recipe in the current version, when its shape is right. */
function readRecipe(input: unknown, problems: RecipeProblem[]): Recipe | undefined {
  const refuse = (path: string, message: string): void => {
    problems.push({ path, message, rule: "shape" });
  };
  if (typeof input === "string" && input.length > LONGEST_TEXT) {
    refuse("", `must be at most ${LONGEST_TEXT} characters, got ${input.length}`);
    return undefined;
  }
  try {
    // Some editors begin a file with a byte order mark, which nobody sees; a reader may pass it over (RFC
    // 8259, section 8.1).
    const value: unknown = typeof input === "string" ? JSON.parse(input.replace(/^\uFEFF/, "")) : input;
    const version: unknown =
      typeof value === "object" && value !== null
        ? (value as Readonly<Record<string, unknown>>)["schemaVersion"]
        : undefined;
    if (typeof version === "number" && version > RECIPE_VERSION) {
      refuse(
        "/schemaVersion",
        `is ${version}, newer than version ${RECIPE_VERSION} that this package reads: update the package to read it`,
      );
      return undefined;
    }
    const older = version === 1;
    const [currentSchema, olderSchema] = recipeSchemas();
    const copy = readBySchema(older ? olderSchema : currentSchema, value, "", problems);
    if (problems.length > 0) return undefined;
    // Read again, for the order of the fields.
    return (older ? readBySchema(currentSchema, migrate(copy as OlderRecipe), "", problems) : copy) as Recipe;
  } catch {
    // Text that is no JSON, or an object that refuses to be read.
    refuse("", typeof input === "string" ? "must be JSON" : "must be plain data that can be read");
    return undefined;
  }
}
