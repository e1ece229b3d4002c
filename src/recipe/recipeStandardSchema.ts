import { checkRecipe } from "./checkRecipe.js";
import type { Recipe } from "./types.js";

/** One issue of the Standard Schema interface. */
export interface StandardIssue {
  readonly message: string;
  readonly path: readonly string[];
}

/** The part of the Standard Schema interface, version 1, that a form or a router asks for. */
export interface RecipeStandardSchema {
  readonly "~standard": {
    readonly version: 1;
    readonly vendor: string;
    readonly validate: (
      value: unknown,
    ) => { readonly value: Recipe } | { readonly issues: readonly StandardIssue[] };
  };
}

/**
 * {@link checkRecipe} behind the Standard Schema interface, for libraries that take any validator of that
 * kind.
 *
 * @remarks Standard Schema, version 1 (C. McDonnell, F. Hiller, D. Blass, 2025): `validate` returns the value
 * or the issues, whose paths are lists of names. Cautions are not in it: they need `checkRecipe`.
 *
 * @example
 * ```ts
 * recipeStandardSchema["~standard"].validate({ schemaVersion: 3 }).issues[0].path // => ["schemaVersion"]
 * ```
 */
export const recipeStandardSchema: RecipeStandardSchema = {
  "~standard": {
    version: 1,
    vendor: "darkroom-kinetics",
    validate: (value) => {
      const check = checkRecipe(value);
      return check.ok
        ? { value: check.recipe }
        : { issues: check.problems.map(({ message, path }) => ({ message, path: namesOf(path) })) };
    },
  },
};

/** The names in a JSON Pointer (RFC 6901, section 4). */
function namesOf(pointer: string): readonly string[] {
  return pointer
    .split("/")
    .slice(1)
    .map((name) => name.replaceAll("~1", "/").replaceAll("~0", "~"));
}
