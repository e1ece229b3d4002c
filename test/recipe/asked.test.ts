/* What a document should hold instead, said so that it can be written. All documents are invented. */
import { describe, expect, it } from "vitest";
import { checkKnowledge, checkRecipe, startKnowledge } from "../../src/index.js";
import { hutStock } from "./documents.js";

const recipe = (change: object) => {
  const check = checkRecipe({ ...hutStock, ...change });
  return check.ok ? [] : check.problems;
};
const run = (change: object) => {
  const started = startKnowledge({ timeS: 510, temperatureC: 20 });
  const check = checkKnowledge({
    ...started,
    runs: [{ timeS: 510, temperatureC: 20, outcome: { kind: "good" }, ...change }],
  });
  return check.ok ? [] : check.problems;
};

describe("a dilution that may mean two things", () => {
  it.each([
    ["1:9", ["1+9", "1+8"]],
    ["1 to 9", ["1+9", "1+8"]],
    ["1/10", ["1+10", "1+9"]],
  ])("is asked for in a recipe and in a stored run: %s", (dilution, readings) => {
    const asked = {
      code: "ambiguous",
      actual: dilution,
      expected: { format: "dilution", readings },
      rule: "shape",
    };
    expect(recipe({ developer: { kind: "stock", name: "hut stock", dilution } })).toMatchObject([
      { ...asked, path: "/developer/dilution" },
    ]);
    expect(run({ dilution })).toMatchObject([{ ...asked, path: "/runs/0/dilution" }]);
  });
  it("is not one that cannot be read at all", () => {
    expect(run({ dilution: "weak" })).toMatchObject([{ code: "unreadable", path: "/runs/0/dilution" }]);
  });
});

describe("another form than the one that was written", () => {
  it("is shown where text stands for an outcome", () => {
    expect(run({ outcome: "good" })).toMatchObject([
      {
        code: "wrong-type",
        path: "/runs/0/outcome",
        message: 'must be an object such as { "kind": "good" }, got "good"',
        expected: { examples: ['{ "kind": "good" }'] },
      },
    ]);
  });
  it("is shown beside the words of an agitation", () => {
    expect(recipe({ agitation: "every 30 s" })).toMatchObject([
      {
        code: "not-one-of",
        path: "/agitation",
        message: 'must be "continuous" or "stand", or an object such as { "everyS": 30 }, got "every 30 s"',
        expected: { forms: [{ values: ["continuous", "stand"] }, { examples: ['{ "everyS": 30 }'] }] },
      },
    ]);
  });
  it("can be written as it is shown", () => {
    for (const problem of run({ outcome: "good" }))
      expect(run({ outcome: JSON.parse(problem.expected.examples![0]!) as object })).toEqual([]);
    for (const problem of recipe({ agitation: "every 30 s" }))
      expect(recipe({ agitation: JSON.parse(problem.expected.forms![1]!.examples![0]!) as object })).toEqual(
        [],
      );
  });
});

it("says a limit that nothing measurable lies below as 0", () => {
  expect(run({ timeS: 0 })[0]?.message).toBe("must be a number above 0 and at most 1000000 s, got 0");
});
