/*
 * Under exactOptionalPropertyTypes a form hands over `number | undefined`: every optional field that a caller writes takes an undefined, and
 * an undefined is the same as a field that is left out.
 */
import { expect, it, describe } from "vitest";
import fc from "fast-check";
import * as library from "../../src/index.js";
import { costly, valid } from "../fuzz/valid.mjs";
import { inputsOf } from "./inputs.js";

const inputs = inputsOf("src/index.ts");

describe("an optional field of an input", () => {
  it("takes an undefined, whichever type it is of", () => {
    const names = inputs.optional.map(({ name }) => name);
    expect(names).toEqual(
      expect.arrayContaining(["GrowthPoint.sd", "Conditions.ageH", "AppearanceSeen.factorLogSd"]),
    );
    expect(inputs.optional.length).toBeGreaterThan(500);
    expect(inputs.optional.filter((one) => !one.takesUndefined).map(({ name }) => name)).toEqual([]);
  });

  it("is found out where it does not", () => {
    const { optional } = inputsOf("test/docs/inputs.example.ts");
    expect(optional).toEqual([
      { name: "Asked.exact", takesUndefined: false },
      { name: "Asked.loose", takesUndefined: true },
      { name: "Told.back", takesUndefined: false },
    ]);
  });

  // An error is not plain data: its copy is not an error.
  const functions = Object.entries(library as Readonly<Record<string, unknown>>).filter(
    (entry): entry is [string, (...given: unknown[]) => unknown] =>
      typeof entry[1] === "function" && valid[entry[0]] !== undefined && entry[0] !== "problemOf",
  );
  it.each(functions)("counts as left out where it is undefined: %s", (name, call) => {
    const outcome = (given: readonly unknown[]): unknown => {
      try {
        return { answer: JSON.stringify(call(...given)) };
      } catch (error) {
        return { error: String(error) };
      }
    };
    const cheap = costly[name] === undefined;
    for (const given of fc.sample(valid[name]!, { seed: 1, numRuns: cheap ? 20 : 2 }))
      expect(outcome(inputs.filled(name, given))).toEqual(outcome(given));
  });
});
