/* The Standard Schema interface, beside its own types and two validators that speak it. */
import type { StandardSchemaV1 } from "@standard-schema/spec";
import * as valibot from "valibot";
import { describe, expect, expectTypeOf, it } from "vitest";
import { z } from "zod";
import { checkRecipe, recipeStandardSchema, type Recipe } from "../../src/index.js";
import { hutStock } from "./documents.js";

/** What a form or a router does with any validator of the kind. */
async function validated<Schema extends StandardSchemaV1>(
  schema: Schema,
  input: unknown,
): Promise<StandardSchemaV1.InferOutput<Schema> | readonly string[]> {
  const result = await schema["~standard"].validate(input);
  if (result.issues === undefined) return result.value;
  return result.issues.map(({ path = [] }) =>
    path.map((part) => String(typeof part === "object" ? part.key : part)).join("/"),
  );
}

describe("recipeStandardSchema", () => {
  it("is typed as the specification has it", () => {
    const spec: StandardSchemaV1<Recipe, Recipe> = recipeStandardSchema;
    expect(spec["~standard"].version).toBe(1);
    expectTypeOf<StandardSchemaV1.InferOutput<typeof recipeStandardSchema>>().toEqualTypeOf<Recipe>();
    expectTypeOf<StandardSchemaV1.InferInput<typeof recipeStandardSchema>>().toEqualTypeOf<Recipe>();
  });

  it("answers the same calls as other validators", async () => {
    const shape = z.object({ material: z.object({ name: z.string() }) });
    const other = valibot.object({ material: valibot.object({ name: valibot.string() }) });
    const wrong = { ...hutStock, material: { name: 5 } };
    for (const schema of [recipeStandardSchema, shape, other]) {
      expect(await validated(schema as StandardSchemaV1, wrong)).toEqual(["material/name"]);
      expect(await validated(schema as StandardSchemaV1, hutStock)).toMatchObject({
        material: { name: "sheet film" },
      });
    }
  });

  it("serves inside the validators of an app", () => {
    const zod = z.unknown().transform((input, context) => {
      const check = checkRecipe(input);
      if (check.ok) return check.recipe;
      for (const { message, path } of check.problems)
        context.addIssue({ code: "custom", message, path: path.split("/").slice(1) });
      return z.NEVER;
    });
    expectTypeOf<z.output<typeof zod>>().toEqualTypeOf<Recipe>();
    expect(zod.safeParse(hutStock)).toMatchObject({ success: true, data: hutStock });
    const refused = zod.safeParse({ ...hutStock, baseline: { timeS: 660 } });
    expect(refused.error?.issues.map(({ path }) => path)).toEqual([["baseline", "temperatureC"]]);
    const own = valibot.custom<Recipe>((input) => checkRecipe(input).ok);
    expectTypeOf<valibot.InferOutput<typeof own>>().toEqualTypeOf<Recipe>();
    expect(valibot.is(own, hutStock)).toBe(true);
    expect(valibot.is(own, {})).toBe(false);
  });
});
