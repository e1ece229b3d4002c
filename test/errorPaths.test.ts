/*
 * Every input error names the function that was called, and a path that begins with the name of one of its
 * parameters: right arguments of each export, with one value at a time made wrong.
 */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as library from "../src/index.js";
import { costly, valid } from "./fuzz/valid.mjs";

const WRONG: readonly unknown[] = [null, "?", -1e300, NaN, {}, []];

const DECLARED = readFileSync("docs/api/darkroom-kinetics.api.md", "utf8");

/** The names of an export's parameters, from the list of all signatures: a bundler may rename them in the code. */
function parametersOf(name: string): readonly string[] {
  const [, given] = new RegExp(`^export function ${name}(?:<.*?>)?\\(([^]*?)\\): `, "m").exec(DECLARED)!;
  const fieldless = given!.replaceAll(/\{[^]*\}/g, "{}");
  return [...fieldless.matchAll(/(?:^|, )(\w+)\??: /g)].map(([, parameter]) => parameter!);
}

/** The same arguments with one value replaced, for each value to a depth of four. */
function* spoilt(value: unknown, depth = 0): Generator {
  if (depth > 0) yield* WRONG;
  if (typeof value !== "object" || value === null || depth > 4) return;
  const fields = Array.isArray(value) ? [...value.keys()].slice(0, 3) : Object.keys(value).slice(0, 16);
  for (const field of fields)
    for (const one of spoilt((value as Record<string, unknown>)[field], depth + 1)) {
      if (Array.isArray(value)) yield value.map((old: unknown, i) => (i === field ? one : old));
      else yield { ...value, [field]: one };
    }
}

/** Functions of one object that name its fields alone. */
const OF_FIELDS = new Set([
  ...["massOf", "spoonsFor", "sodaMass", "bakeProgress", "bakedSoda", "bakeTime", "temperatureCurve"],
  ...["steer", "steeringGoal", "describeSteering", "answerPicture", "planRecipe", "compensateRecipe"],
  ...["recipePicture", "recipeQuestion", "timeChart", "chartRecipe"],
]);
/** Functions that answer some errors in the name of another one, which they call. */
const IN_NAME_OF_OTHERS = new Set([
  "planRecipe",
  "compensateRecipe",
  "recipePicture",
  "timeChart",
  "chartRecipe",
]);
/** Functions that tell every problem as data, and throw none. */
const THROW_NONE = new Set([
  ...[
    "checkConditions",
    "checkKnowledge",
    "checkLedger",
    "checkLog",
    "checkPlan",
    "checkRecipe",
    "isInputError",
  ],
]);

/** How many wrong values of each argument are tried: of the first calls for a costly function fewer. */
const TRIES = { usual: 120, costly: 30 } as const;

describe("an input error", () => {
  const functions = Object.entries(library as Readonly<Record<string, unknown>>).filter(
    (entry): entry is [string, (...given: never[]) => unknown] =>
      typeof entry[1] === "function" && valid[entry[0]] !== undefined,
  );
  it.each(functions)("of %s names it and one of its parameters", (name, call) => {
    const names = parametersOf(name);
    const strays = new Set<string>();
    let seen = 0;
    const cheap = costly[name] === undefined;
    const calls = fc.sample(valid[name]!, {
      seed: 1,
      numRuns: cheap ? 6 : 1,
    }) as readonly (readonly unknown[])[];
    for (const given of calls)
      for (const [i, argument] of given.entries()) {
        let tried = 0;
        for (const one of spoilt(argument, 1)) {
          tried += 1;
          if (tried > (cheap ? TRIES.usual : TRIES.costly)) break;
          try {
            call(...(given.map((each, j) => (j === i ? one : each)) as never[]));
          } catch (error) {
            if (!library.isInputError(error)) continue;
            seen += 1;
            const [, first = ""] = error.path.split("/");
            const [caller] = error.message.split(":");
            // A law that comes out is no parameter.
            const placed = OF_FIELDS.has(name) || [...names, "resulting"].includes(first);
            if (!placed || (caller !== name && !IN_NAME_OF_OTHERS.has(name)))
              strays.add(`${caller ?? ""} ${error.path}`);
          }
        }
      }
    expect([...strays]).toEqual([]);
    expect(seen > 0).toBe(!THROW_NONE.has(name));
  });
});
