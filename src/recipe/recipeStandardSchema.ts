import { checkRecipe } from "./checkRecipe.js";
import type { Recipe } from "./types.js";

/** One issue of the Standard Schema interface. */
export interface StandardIssue {
  /** the sentence in English */
  readonly message: string;
  /** the names on the way to the place; empty for the whole document */
  readonly path: readonly string[];
}

/** The result of the Standard Schema interface: the value, or the issues. */
export type StandardResult<Output> =
  | {
      /** the value, where it passed */
      readonly value: Output;
      /** what is wrong, where it did not pass */
      readonly issues?: undefined;
    }
  | {
      /** what is wrong, where it did not pass */
      readonly issues: readonly StandardIssue[];
    };

/** The properties of the Standard Schema interface, version 1. */
export interface StandardProps<Input, Output> {
  readonly version: 1;
  /** who made the schema */
  readonly vendor: string;
  /** the types of what goes in and what comes out, for inference alone */
  readonly types?:
    | {
        /** the type that goes in */
        readonly input: Input;
        /** the type that comes out */
        readonly output: Output;
      }
    | undefined;
  /** returns the value or the issues */
  readonly validate: (value: unknown) => StandardResult<Output>;
}

/** A recipe behind the Standard Schema interface, version 1. */
export interface RecipeStandardSchema {
  /** the properties of the interface */
  readonly "~standard": StandardProps<Recipe, Recipe>;
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
 * recipeStandardSchema["~standard"].validate({ schemaVersion: 3 }).issues?.[0]?.path // => ["schemaVersion"]
 * ```
 */
export const recipeStandardSchema: RecipeStandardSchema = /* @__PURE__ */ Object.freeze({
  "~standard": /* @__PURE__ */ Object.freeze({
    version: 1,
    vendor: "darkroom-kinetics",
    validate: (value: unknown) => {
      const check = checkRecipe(value);
      return check.ok
        ? { value: check.recipe }
        : { issues: check.problems.map(({ message, path }) => ({ message, path: namesOf(path) })) };
    },
  }),
});

/** The names in a JSON Pointer (RFC 6901, section 4). */
function namesOf(pointer: string): readonly string[] {
  return pointer
    .split("/")
    .slice(1)
    .map((name) => name.replaceAll("~1", "/").replaceAll("~0", "~"));
}
