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

/** Functions of one object that still name its fields alone, or that answer in the name of another function. */
const OTHERS = new Set([
  ...["massOf", "spoonsFor", "sodaMass", "bakeProgress", "bakedSoda", "bakeTime"],
  ...["temperatureCurve", "steer", "steeringGoal", "describeSteering", "compensateRecipe", "planRecipe"],
  ...["answerPicture", "recipePicture", "timeChart", "chartRecipe"],
]);

describe("an input error", () => {
  const functions = Object.entries(library as Readonly<Record<string, unknown>>).filter(
    (entry): entry is [string, (...given: never[]) => unknown] =>
      typeof entry[1] === "function" && valid[entry[0]] !== undefined && !OTHERS.has(entry[0]),
  );
  it.each(functions)("of %s names it and one of its parameters", (name, call) => {
    const names = parametersOf(name);
    const strays = new Set<string>();
    const calls = fc.sample(valid[name]!, { seed: 1, numRuns: costly[name] === undefined ? 6 : 1 });
    for (const given of calls) {
      let tried = 0;
      for (const args of spoilt(given)) {
        tried += 1;
        if (tried > (costly[name] === undefined ? 400 : 60)) break;
        try {
          call(...(args as never[]));
        } catch (error) {
          if (!library.isInputError(error)) continue;
          const [, first = ""] = error.path.split("/");
          const [caller] = error.message.split(":");
          // A law that comes out is no parameter.
          if (caller !== name || ![...names, "resulting"].includes(first))
            strays.add(`${caller ?? ""} ${error.path}`);
        }
      }
    }
    expect([...strays]).toEqual([]);
  });
});
