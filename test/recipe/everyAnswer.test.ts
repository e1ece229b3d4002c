/*
 * A recipe that passes gets an answer from every function that takes one, however extreme its values: perhaps
 * one that is refused, never an error about a place that nobody gave.
 */
import { describe, expect, it } from "vitest";
import {
  bathVerdict,
  chartRecipe,
  checkRecipe,
  compensateRecipe,
  describeChart,
  describePlan,
  planAt,
  planEvening,
  planProcess,
  planRecipe,
  recipePicture,
  type Recipe,
} from "../../src/index.js";
import { codes, refusal } from "../process/helpers.js";
import { fc, real, test } from "../property.js";
import { recipes } from "./documents.js";

const passed = (input: unknown): Recipe => {
  const check = checkRecipe(input);
  if (!check.ok) throw new Error(JSON.stringify(check.problems));
  return check.recipe;
};

/** Recipes that pass, as storage keeps them. */
const passing: fc.Arbitrary<Recipe> = recipes
  .map((given) => checkRecipe(JSON.stringify(given)))
  .filter(({ ok }) => ok)
  .map((check) => (check as Extract<typeof check, { ok: true }>).recipe);

const temperatureC = fc.oneof(fc.constantFrom(0, 20, 100), real(0, 100));

describe("a recipe that passes", () => {
  test.prop([passing, temperatureC, fc.constantFrom("tank", "tray", "drum"), fc.boolean()], { numRuns: 150 })(
    "gets an answer from every function",
    (recipe, c, vessel, rounded) => {
      const conditions = { temperatureC: c };
      const answer = compensateRecipe(recipe, conditions);
      expect(answer.timeS).toBeGreaterThan(0);
      for (const asked of [undefined, conditions]) {
        const plan = planRecipe(recipe, { vessel, rounded, conditions: asked });
        // What is planned is read back.
        expect(planAt(plan, plan.totalS / 2).over).toBe(false);
        expect(planAt(plan, plan.totalS).over).toBe(true);
        expect(describePlan(plan).length).toBeGreaterThan(0);
        // A development that is cut short is refused.
        expect(codes(plan.cautions).includes("plan-cut-short") && !plan.timeRefused).toBe(false);
      }
      const chart = chartRecipe(recipe, { temperaturesC: [c] });
      expect(chart.rows.map(({ timeS, refused }) => [timeS, refused])).toEqual([
        [answer.timeS, answer.refused],
      ]);
      expect(describeChart(chart).length).toBeGreaterThan(0);
      expect(recipePicture(recipe, conditions, { points: 5 }).refused).toBe(answer.refused);
    },
  );
});

describe("a time that is longer than a plan holds", () => {
  const frozen = passed({
    schemaVersion: 2,
    material: { name: "plate" },
    developer: { kind: "stock", name: "hut stock", dilution: "1+9" },
    baseline: { timeS: 7200, temperatureC: 20 },
    conditions: { temperatureC: 1 },
    knowledge: { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 200 } },
  });
  const { timeS } = compensateRecipe(frozen);

  it("is planned as long as the plan holds, and refused", () => {
    expect(timeS).toBeGreaterThan(2e6);
    const plan = planRecipe(frozen, { vessel: "tank" });
    expect([plan.timeRefused, plan.steps[0]!.durationS]).toEqual([true, 1e6]);
    const cut = plan.cautions.find(({ code }) => code === "plan-cut-short")!;
    expect(cut).toMatchObject({
      severity: "stop",
      quantity: "timeS",
      limit: 1e6,
      actual: timeS,
    });
    expect(describePlan(plan)).toContain(`Stop: ${cut.message}`);
  });

  it("is that of an answer with too many agitations too", () => {
    const beaten = { ...frozen, agitation: { everyS: 6 }, baseline: { timeS: 9e5, temperatureC: 1 } };
    const plan = planRecipe(beaten, { vessel: "tank" });
    expect([plan.timeRefused, plan.steps[0]!.durationS]).toEqual([true, 540_000]);
    expect(codes(plan.cautions)).toContain("plan-cut-short");
  });

  it("stops an evening", () => {
    const evening = planEvening({
      baseline: frozen.baseline,
      conditions: { temperatureC: 1 },
      knowledge: frozen.knowledge!,
      plates: [{ areaCm2: 108 }],
      vessel: "tank",
      volumeMl: 500,
    });
    expect([evening.plates.length, evening.stopped?.plan.timeRefused]).toEqual([0, true]);
  });

  it("is refused where it is typed", () => {
    expect(refusal(() => planProcess({ vessel: "tank", timeS: 2e6, temperatureC: 20 }))).toBe(
      "RangeError planProcess /input/timeS out-of-range",
    );
  });
});

describe("an interval that is wider than any bath lives", () => {
  const wide = passed({
    schemaVersion: 2,
    material: { name: "plate" },
    developer: { kind: "stock", name: "hut stock", dilution: "1+9", capacityCm2PerL: 1000 },
    baseline: { timeS: 86_400, temperatureC: 30 },
    conditions: { pushStops: 5 },
    knowledge: { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 200, sdKJPerMol: 200 } },
  });

  it("is answered at every temperature", () => {
    const answer = compensateRecipe(wide, { temperatureC: 0 });
    expect(answer.highS).toBeGreaterThan(1e15);
    expect(chartRecipe(wide, { temperaturesC: [0] }).rows[0]).toMatchObject({ highS: answer.highS });
    expect(planRecipe(wide, { vessel: "tank", conditions: { temperatureC: 0 } }).timeRefused).toBe(true);
  });

  it("is judged with its bath", () => {
    const { timeS, highS } = compensateRecipe(wide, { temperatureC: 0 });
    expect(bathVerdict({ ageH: 1, age: { kind: "life", lifeH: 10 }, timeS, highS }).verdict).toBe("discard");
    expect(refusal(() => bathVerdict({ ageH: 1, timeS: 600, highS: 500 }))).toBe(
      "RangeError bathVerdict /bath/highS out-of-range",
    );
  });
});
