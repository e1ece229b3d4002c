/*
 * A made-up cause, the hardness of the water in °dH, added to the list: the format of a recipe gains its condition and
 * its law, and the check reads and judges them, without a change to the source.
 */
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { causeSchemas } from "../../src/causes.js";
import type { Cause } from "../../src/core/cause.js";
import { inRange, notOneOf } from "../../src/core/guards.js";
import { from, object, origin, type CauseSchema } from "../../src/core/schema.js";
import type { LawOrigin } from "../../src/core/term.js";
import { recipeCheck } from "../../src/recipe/checkRecipe.js";
import { recipeSchemaOf } from "../../src/recipe/recipeSchema.js";
import { hutStock } from "./documents.js";

interface HardnessLaw extends LawOrigin {
  readonly perDegree: number;
}

const hardnessCause: Cause<HardnessLaw, number, "hardness"> = {
  name: "hardness",
  field: "hardnessDh",
  law: "hardness",
  lawFields: ["perDegree"],
  generic: { perDegree: 0 },
  read: (at, given) => inRange(at, given, 0, 100),
  check: (at, law) => {
    const { perDegree } = law as HardnessLaw;
    inRange(at, perDegree, -1, 1, undefined, "/perDegree");
    if (perDegree === 0.5) notOneOf(`${at}/perDegree`, ["less even"], perDegree);
    return law as HardnessLaw;
  },
  effect: ({ perDegree }, before, after) => ({
    log: perDegree * (after - before),
    slope: after - before,
    sd: 0.001,
    beside: 0,
  }),
};
const hardnessSchema: CauseSchema = {
  cause: hardnessCause,
  condition: () => from(0, 100, "Hardness of the water, in °dH."),
  law: () =>
    object(
      ["perDegree"],
      { perDegree: from(-1, 1, "Change of ln(time) for a degree."), ...origin() },
      "The law.",
    ),
};
const longer = [...causeSchemas, hardnessSchema];
const schema = recipeSchemaOf(longer);
const check = (document: unknown): ReturnType<typeof recipeCheck> => recipeCheck(document, schema, longer);

const hard = {
  ...hutStock,
  baseline: { ...hutStock.baseline, hardnessDh: 5 },
  conditions: { hardnessDh: 25 },
  knowledge: { hardness: { perDegree: 0.01 } },
};

describe("a cause that is added to the list", () => {
  it("is in the schema of the recipe: baseline, conditions, laws and prior", () => {
    const accepts = new Ajv2020({ strict: true }).compile(schema);
    expect(accepts(hard)).toBe(true);
    expect(accepts({ ...hard, conditions: { hardnessDh: 101 } })).toBe(false);
    const { knowledge } = schema.properties!;
    const [learned, laws] = knowledge!.anyOf!;
    expect(Object.keys(laws!.properties!)).toContain("hardness");
    expect(Object.keys(learned!.properties!["prior"]!.properties!["laws"]!.properties!)).toContain(
      "hardness",
    );
    expect(Object.keys(recipeSchemaOf(causeSchemas).properties!["conditions"]!.properties!)).not.toContain(
      "hardnessDh",
    );
  });

  it("is read, judged and answered by the check", () => {
    const passed = check(hard);
    expect(passed.ok && passed.recipe).toEqual(hard);
    expect(check({ ...hard, conditions: { hardnessDh: -1 } })).toMatchObject({
      ok: false,
      problems: [{ path: "/conditions/hardnessDh", code: "out-of-range", rule: "shape", actual: -1 }],
    });
    expect(check({ ...hard, knowledge: { hardness: { perDegree: 0.5 } } })).toMatchObject({
      ok: false,
      problems: [{ path: "/knowledge/hardness/perDegree", rule: "relation" }],
    });
    expect(check({ ...hard, baseline: hutStock.baseline })).toMatchObject({
      ok: false,
      problems: [{ path: "/conditions/hardnessDh", code: "needs-counterpart" }],
    });
    // e^0.2 of the time, 20 % more: a time past two hours is then a caution.
    const long = check({ ...hard, baseline: { ...hard.baseline, timeS: 6000 } });
    expect(long.ok && long.cautions).toContainEqual(
      expect.objectContaining({ code: "long-time", actual: expect.closeTo(6000 * Math.exp(0.2), 6) }),
    );
  });
});
