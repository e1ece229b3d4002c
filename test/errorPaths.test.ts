/*
 * Every input error names the function that was called, and a path that begins with the name of one of its
 * parameters: right arguments of each export, with one value at a time made wrong.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as library from "../src/index.js";
import { costly, valid } from "./fuzz/valid.mjs";

const WRONG: readonly unknown[] = [null, "?", -1e300, NaN, {}, []];

/** The names of a function's parameters, as its text has them. */
function parametersOf(call: (...given: never[]) => unknown): readonly string[] {
  const text = call.toString();
  let depth = 0;
  let end = text.indexOf("(");
  const start = end + 1;
  do {
    if ("([{".includes(text[end]!)) depth += 1;
    if (")]}".includes(text[end]!)) depth -= 1;
    end += 1;
  } while (depth > 0);
  const list = text.slice(start, end - 1);
  const names: string[] = [];
  let level = 0;
  let from = 0;
  for (let i = 0; i <= list.length; i += 1) {
    const letter = list[i] ?? ",";
    if ("([{".includes(letter)) level += 1;
    if (")]}".includes(letter)) level -= 1;
    if (letter === "," && level === 0) {
      names.push(list.slice(from, i).split("=")[0]!.trim());
      from = i + 1;
    }
  }
  return names.filter((name) => name !== "");
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
    const names = parametersOf(call);
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
