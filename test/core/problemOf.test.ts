import { describe, expect, it } from "vitest";
import {
  checkLedger,
  checkLog,
  checkRecipe,
  isInputError,
  parseTime,
  problemOf,
  type CheckProblem,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("a problem", () => {
  const thrown = (call: () => unknown): unknown => {
    try {
      return call();
    } catch (error) {
      return error;
    }
  };
  it("carries what an error loses on its way to a worker", () => {
    const error = thrown(() => parseTime("soon"));
    const sent = structuredClone(error);
    expect(isInputError(sent)).toBe(false);
    if (!isInputError(error)) throw new Error("parseTime takes 'soon'");
    const problem: CheckProblem = problemOf(error);
    expect(structuredClone(problem)).toEqual(problem);
    expect(problem).toMatchObject({ code: "unreadable", path: "/text", actual: "soon" });
    expect(problem.message).toBe(error.message);
  });
  it("is plain data whatever was given, and short", () => {
    const ring: Record<string, unknown> = {};
    ring["ring"] = ring;
    const given: unknown[] = [ring, { a: 1n }, [ring], () => 1, Symbol("x"), "x".repeat(1e6)];
    for (const input of given)
      for (const check of [
        checkLog(input),
        checkLedger(input),
        checkLedger({ volumeMl: input }),
        checkRecipe(input),
      ]) {
        expect(check.ok).toBe(false);
        expect(JSON.stringify(check).length).toBeLessThan(5000);
      }
  });
  it("is made of input errors alone", () => {
    expect(() => problemOf(anyOf(new RangeError("a bug")))).toThrow(
      new TypeError("problemOf: error must be an input error"),
    );
  });
});
