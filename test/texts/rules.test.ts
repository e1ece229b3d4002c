/* Every rule that an input may break, in German: a sentence that names each figure and each name of its data. */
import { describe, expect, it } from "vitest";
import { describeProblem, type InputProblem } from "../../src/index.js";
import { de } from "../../src/texts/de.js";
import { inGerman } from "../../src/texts/de/examples.js";
import { brokenRules } from "./brokenRules.js";

/** What a sentence has to name: figures as German writes them, and names that have no German. */
function named(value: unknown, field = ""): readonly string[] {
  if (typeof value === "number") return [String(value).replace(".", ",")];
  // A word of an outcome has a German one.
  if (typeof value === "string" && field === "readings") return [inGerman(value)];
  if (typeof value === "string")
    return ["why", "reason", "by", "ingredient"].includes(field)
      ? []
      : [value.slice(value.lastIndexOf("/") + 1)];
  return Object.entries(value ?? {}).flatMap(([name, part]) =>
    named(part, Array.isArray(value) ? field : name),
  );
}

describe("a rule that an input breaks", () => {
  it.each(
    Object.entries(brokenRules).flatMap(([rule, samples]) =>
      samples.map((data): [string, object] => [rule, { ...data, must: rule }]),
    ),
  )("%s is said in German with all that it names: %j", (rule, expected) => {
    const problem = { code: "out-of-range", path: "/field", expected, actual: 7, message: "must be another" };
    const sentence = describeProblem(problem as unknown as InputProblem, de.problems);
    expect(sentence).toMatch(
      rule === "known-field" ? /^das Feld 7 gibt es hier nicht\. / : /^nötig ist .{8,}, hier steht 7/,
    );
    expect(sentence).not.toMatch(/undefined|NaN|must be/);
    const { must, ...data } = expected as { readonly must: string };
    expect(must).toBe(rule);
    for (const figure of named(data)) expect(sentence).toContain(figure);
  });
});
