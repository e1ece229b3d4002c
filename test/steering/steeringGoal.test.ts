/* The goal as it is shown: one development has one time, before it is poured in and after. */
import { describe, expect, it } from "vitest";
import { anyOf } from "../helpers.js";
import { fc, test } from "../property.js";
import {
  compensate,
  handbookTemperatureLaw,
  isInputError,
  planProcess,
  roundEstimate,
  steer,
  steeringGoal,
  type ProcessPlan,
  type SteeringReading,
} from "../../src/index.js";

// Invented: a dish in the hut.
const baseline = { timeS: 510, temperatureC: 20, dilution: "1+9" };
const knowledge = { temperature: handbookTemperatureLaw("metol-hydroquinone") };
const run = (temperatureC: number, later: readonly SteeringReading[] = []) =>
  steer({
    baseline,
    conditions: { temperatureC, dilution: "1+14" },
    knowledge,
    log: [{ timeS: 0, temperatureC }, ...later],
  });

describe("steeringGoal", () => {
  test.prop([fc.double({ min: 12, max: 26, noNaN: true }), fc.double({ min: 0.01, max: 0.3, noNaN: true })])(
    "begins as the time that was shown before, to the second",
    (temperatureC, logSd) => {
      const conditions = { temperatureC, dilution: "1+14" };
      const known = { ...baseline, logSd };
      const { timeS, stepS } = roundEstimate(compensate(known, conditions, knowledge));
      const log = [{ timeS: 0, temperatureC }];
      const answer = steer({ baseline: known, conditions, knowledge, log });
      expect(steeringGoal(answer, { stepS }).timeS).toBe(timeS);
    },
  );
  it.each([
    ["colder", -1, 1],
    ["warmer", 1, -1],
  ])("moves with a %s bath in steps of 5 s", (_, change, way) => {
    const before = run(16);
    const after = run(16, [{ timeS: 300, temperatureC: 16 + change }]);
    const moved = steeringGoal(after, { stepS: 30 }).timeS - steeringGoal(before, { stepS: 30 }).timeS;
    expect(Math.sign(moved)).toBe(way);
    expect(Math.abs(moved) % 5).toBe(0);
    expect(Math.abs(moved - (after.total.timeS - after.equivalent.dueS))).toBeLessThanOrEqual(2.5);
  });
  it("rounds by its own interval where no step is told, and by none that is greater", () => {
    const answer = run(16);
    const { stepS } = roundEstimate(answer.total);
    expect(steeringGoal(answer).stepS).toBe(stepS);
    expect(steeringGoal(answer, { stepS: 1 })).toEqual({
      ...roundEstimate(answer.total, { mostS: 1 }),
      timeS: Math.round(answer.equivalent.dueS),
    });
  });
  it("is never below 0, however warm the bath became", () => {
    const answer = run(16);
    const short = {
      ...answer,
      total: { timeS: 1, lowS: 1, highS: 600 },
      equivalent: { ...answer.equivalent, dueS: 10 },
    };
    expect(steeringGoal(short, { stepS: 30 }).timeS).toBe(0);
  });
  it.each([
    ["nothing", undefined, {}, "missing", "/answer"],
    ["no work", { total: run(16).total }, {}, "missing", "/answer/equivalent"],
    ["a step of 0", run(16), { stepS: 0 }, "out-of-range", "/options/mostS"],
    ["options as text", run(16), "5 s", "wrong-type", "/options"],
  ])("refuses %s", (_, answer, options, code, path) => {
    let problem: unknown;
    try {
      steeringGoal(anyOf(answer), anyOf(options));
    } catch (error) {
      problem = error;
    }
    expect(isInputError(problem) && [problem.code, problem.path]).toEqual([code, path]);
  });
});

describe("a plan that steer aims anew", () => {
  const baseline = { timeS: 510, temperatureC: 20 };
  const conditions = { temperatureC: 18 };
  const answer = compensate(baseline, conditions);
  const { stepS } = roundEstimate(answer);
  const plan = planProcess({
    vessel: "tank",
    answer,
    temperatureC: 18,
    baths: { preSoak: { durationS: 120 }, stop: {}, fix: {} },
  });
  const developed = (given: ProcessPlan): number =>
    given.steps.find(({ name }) => name === "develop")!.durationS;
  it.each([10, 130, 400, 599, 640])(
    "ends %i s after the pour-in where the goal is, in the step that was shown, or now",
    (nowS) => {
      const log = [
        { timeS: 0, temperatureC: 18 },
        { timeS: 120, temperatureC: 17.4 },
      ].filter(({ timeS }) => timeS <= nowS);
      const run = steer({ baseline, conditions, log, nowS, plan, stepS });
      const goal = steeringGoal(run, { stepS }).timeS;
      expect(developed(run.plan!)).toBe(Math.max(goal, nowS + plan.handling.drainS));
    },
  );
  it("refuses a step of 0 s", () => {
    const log = [{ timeS: 0, temperatureC: 18 }];
    expect(() => steer({ baseline, conditions, log, plan, stepS: 0 })).toThrow(
      "steer: stepS must be from 1 to 300 s, got 0",
    );
  });
});
