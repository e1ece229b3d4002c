/*
 * One brew carried from the shelf to what the evening taught. Invented: a weekend workshop in a mountain hut, tap water
 * at 14 °C, a plate of 9 × 12 cm.
 */
import { describe, expect, it } from "vitest";
import {
  bathCapacity,
  brewStrength,
  compensate,
  describeMixing,
  describePlan,
  learn,
  mixingSteps,
  planProcess,
  predict,
  proposeBrew,
  startKnowledge,
  type DeveloperBrew,
  type WeighedPart,
} from "../../src/index.js";

const PLATE_CM2 = 9 * 12;
const HUT = { volumeMl: 500, temperatureC: 14, material: "plate", spoonMl: 5 } as const;

describe("one brew, from the shelf to the notebook", () => {
  const first = proposeBrew({ shelf: ["instant-coffee", "soda-anhydrous", "ascorbic-acid"], ...HUT });
  if (first.brew === undefined) throw new Error(first.message);
  const { brew, start } = first;
  // The packet of soda is nearly empty: half of it. Everything is measured with the same spoon.
  const thin: DeveloperBrew = {
    ...brew,
    ingredients: (brew.ingredients as readonly WeighedPart[]).map((part) =>
      part.ingredient === "soda-anhydrous"
        ? { ...part, massG: part.massG / 2, lowG: (part.lowG ?? 0) / 2, highG: (part.highG ?? 0) / 2 }
        : part,
    ),
  };
  const baseline = { timeS: start.timeS, temperatureC: 14, logSd: start.logSd, emulsion: "soft" } as const;
  const strength = brewStrength(brew, thin);
  const answer = compensate(baseline, { strength });
  const plan = planProcess({
    vessel: "tray",
    material: "plate",
    emulsion: "soft",
    answer,
    temperatureC: 14,
    volumeMl: HUT.volumeMl,
    areaCm2: PLATE_CM2,
    developer: { brew: thin },
  });

  it("is mixed as it was proposed, in its spoons, with every hazard in words", () => {
    const lines = describeMixing(mixingSteps(brew));
    expect(mixingSteps(brew)).toEqual(first.steps);
    for (const { ingredient, spoons } of first.spoons) {
      const step = first.steps.find((one) => one.ingredient === ingredient)!;
      expect(step.spoons).toBe(spoons);
    }
    expect(lines.join(" ")).toMatch(/irritates the eyes/);
  });

  it("takes longer with less soda, and no longer than the bath lives", () => {
    expect(strength.value).toBeGreaterThan(1);
    expect(answer.timeS).toBeCloseTo(start.timeS * strength.value, 6);
    expect(answer.timeS).toBeLessThan(3600 * strength.lifeH);
    expect(answer.refused).toBe(false);
  });

  it("is planned for the time of the answer, with enough bath and no acid on soft gelatin", () => {
    expect(plan.steps[0]).toMatchObject({ name: "develop", durationS: answer.timeS, temperatureC: 14 });
    expect(plan.materials.map(({ name }) => name)).toContain("stop water");
    expect(
      plan.cautions.map(({ code }) => code).filter((code) => /^(?:bath-|thin-|acid-)/.test(code)),
    ).toEqual([]);
    expect(bathCapacity({ brew: thin, material: "plate" }).capacityCm2).toBeGreaterThan(PLATE_CM2);
    expect(describePlan(plan).filter((line) => /silver/.test(line))).toHaveLength(1);
  });

  it("teaches: the run that came out right moves the time to where it was, and narrows it", () => {
    const before = startKnowledge(baseline);
    const run = { timeS: 1.3 * answer.timeS, temperatureC: 14, strength, outcome: { kind: "good" } } as const;
    const known = learn(before, [run]);
    const [guess, learned] = [before, known].map((knowledge) => predict(knowledge, { strength }));
    expect(guess!.timeS).toBeCloseTo(answer.timeS, 6);
    expect(Math.abs(learned!.timeS / run.timeS - 1)).toBeLessThan(0.05);
    expect(learned!.highS / learned!.lowS).toBeLessThan(0.5 * (guess!.highS / guess!.lowS));
    // And for the full brew of the first evening, which differs by the strength alone.
    expect(predict(known, {}).timeS).toBeGreaterThan(start.timeS);
  });
});
