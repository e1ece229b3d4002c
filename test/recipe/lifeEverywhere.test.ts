/* The life of a brew, wherever its bath is asked about. */
import { describe, expect, it } from "vitest";
import {
  bathVerdict,
  brewLife,
  compensateRecipe,
  planEvening,
  type AgeLaw,
  type Caution,
  type Recipe,
} from "../../src/index.js";
import { halfLitre } from "../brew/brews.js";
import { anyOf } from "../helpers.js";

const brew = halfLitre;
const { lifeH } = brewLife(brew);
const baseline = { timeS: 600, temperatureC: 20 };
const stops = (cautions: readonly Caution[] | undefined): readonly unknown[] =>
  (cautions ?? []).filter(({ severity }) => severity === "stop").map(({ code, limit }) => [code, limit]);

/** The gravest that is said of the same bath, asked in three ways. */
function said(ageH: number, knownAgeH?: number, age?: AgeLaw): readonly (readonly unknown[])[] {
  const known = { ...baseline, ageH: knownAgeH };
  const recipe: Recipe = {
    schemaVersion: 2,
    material: { name: "plate", kind: "plate" },
    developer: { kind: "brew", brew },
    baseline: known,
    conditions: { ageH },
    knowledge: { age },
  };
  const { stopped } = planEvening({
    baseline: known,
    conditions: { ageH },
    knowledge: { age },
    plates: [{ areaCm2: 108 }],
    vessel: "tray",
    volumeMl: 500,
    developer: { brew },
  });
  return [stops(compensateRecipe(recipe).cautions), stops(stopped?.answer.cautions)];
}

describe("the life of a brew", () => {
  it("stops a recipe, an evening and a verdict alike", () => {
    for (const each of said(10)) expect(each).toEqual([["bath-past-life", lifeH]]);
    const judged = bathVerdict({ usedCm2PerL: 0, ageH: 10, brew });
    expect(judged.verdict).toBe("discard");
    expect(stops(judged.cautions)).toEqual([["bath-past-life", lifeH]]);
    expect(judged.cautions[0]?.path).toBe("/ageH");
  });
  it("stops none of them before it is over", () => {
    for (const each of said(lifeH / 2)) expect(each).toEqual([]);
    const judged = bathVerdict({ ageH: lifeH / 2, brew });
    expect(judged).toEqual({ verdict: "usable", factor: 1, cautions: [] });
  });
  it("gives way to a law of age, but not to a known time from an older bath", () => {
    const age = { kind: "life", lifeH: 24 } as const;
    for (const each of said(10, undefined, age)) expect(each).toEqual([]);
    const [ofRecipe, ofEvening] = said(10, lifeH + 1);
    expect(ofEvening).toEqual(ofRecipe);
    expect(bathVerdict({ ageH: 10, brew, age }).verdict).toBe("usable");
  });
  it("hides no knowledge that is none", () => {
    const evening = { baseline, conditions: {}, plates: [{ areaCm2: 108 }], vessel: "tray", volumeMl: 500 };
    for (const knowledge of [5, null])
      expect(() => planEvening(anyOf({ ...evening, developer: { brew }, knowledge }))).toThrow(
        expect.objectContaining({ path: "/input/knowledge" }),
      );
  });
});
