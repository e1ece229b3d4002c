/* A brew dies at the age that its make-up gives, whatever own runs say of how its time grows. */
import { describe, expect, it } from "vitest";
import {
  bathVerdict,
  brewLife,
  brewStrength,
  checkRecipe,
  compensate,
  compensateRecipe,
  learn,
  planEvening,
  startKnowledge,
  type Baseline,
  type Caution,
  type DeveloperBrew,
  type Knowledge,
  type Recipe,
} from "../../src/index.js";

const brew: DeveloperBrew = {
  volumeMl: 1000,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 54 },
    { ingredient: "instant-coffee", massG: 40 },
    { ingredient: "ascorbic-acid", massG: 16 },
  ],
};
const { lifeH, lowH } = brewLife(brew);
const baseline: Baseline = { timeS: 900, temperatureC: 20, ageH: 0 };
const learned = (ageH: number | undefined): Knowledge =>
  learn(startKnowledge(baseline), [
    { timeS: 900, temperatureC: 20, ...(ageH !== undefined && { ageH }), outcome: { kind: "good" } },
  ]);
const KNOWN: readonly (readonly [string, Knowledge])[] = [
  ["nothing", {}],
  ["a run of no age", learned(undefined)],
  ["a run in an aged bath", learned(0.9)],
];
const ofLife = (cautions: readonly Caution[]): readonly string[] =>
  cautions
    .filter(({ code }) => code === "bath-may-fail" || code === "bath-past-life")
    .map(({ code, severity }) => `${code} ${severity}`);

/** What is said of the life of a bath at an age, by each function that answers for a brew. */
const ASKED: Readonly<Record<string, (ageH: number, knowledge: Knowledge) => readonly Caution[]>> = {
  bathVerdict: (ageH, { age }) => bathVerdict({ ageH, brew, age }).cautions,
  compensate: (ageH, knowledge) =>
    compensate(baseline, { ageH, strength: brewStrength(brew, brew) }, knowledge).cautions,
  compensateRecipe: (ageH, knowledge) => compensateRecipe(recipe(ageH, knowledge)).cautions,
  checkRecipe: (ageH, knowledge) => {
    const check = checkRecipe(recipe(ageH, knowledge));
    return check.ok ? check.cautions : [];
  },
  planEvening: (ageH, knowledge) => {
    const { plates, stopped } = planEvening({
      baseline,
      conditions: { ageH },
      knowledge,
      plates: [{ areaCm2: 108 }],
      vessel: "tray",
      volumeMl: 1000,
      developer: { brew },
    });
    return (plates[0] ?? stopped)!.answer.cautions;
  },
};

function recipe(ageH: number, knowledge: Knowledge): Recipe {
  return {
    schemaVersion: 2,
    material: { name: "Hut plates", kind: "plate", emulsion: "hardened" },
    developer: { kind: "brew", brew },
    baseline,
    conditions: { ageH },
    knowledge,
  };
}

describe.each(Object.entries(ASKED))("%s", (_, asked) => {
  describe.each(KNOWN)("that knows %s", (_knows, knowledge) => {
    it("says nothing of a fresh brew", () => {
      expect(ofLife(asked(0, knowledge))).toEqual([]);
    });
    it("warns of one that may fail", () => {
      expect(ofLife(asked((lowH + lifeH) / 2, knowledge))).toEqual(["bath-may-fail warn"]);
    });
    it("stops one past its life", () => {
      expect(ofLife(asked(lifeH + 0.5, knowledge))).toEqual(["bath-past-life stop"]);
    });
  });
});

describe("an own law of age", () => {
  it("goes before the life that the make-up gives", () => {
    const age = { kind: "life", lifeH: 6 } as const;
    const start = startKnowledge(baseline, { laws: { age } });
    expect(ofLife(bathVerdict({ ageH: lifeH + 0.5, brew, age }).cautions)).toEqual([]);
    expect(ofLife(ASKED["compensateRecipe"]!(lifeH + 0.5, start))).toEqual([]);
    expect(ofLife(ASKED["checkRecipe"]!(lifeH + 0.5, start))).toEqual([]);
  });
});
