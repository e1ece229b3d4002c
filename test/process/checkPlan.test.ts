/* A plan that was stored and came back damaged. All of it is invented. */
import { describe, expect, it } from "vitest";
import {
  checkPlan,
  describeEvening,
  describePlan,
  planAt,
  planEvening,
  planProcess,
  replaceDevelopment,
  steer,
  type ProcessPlan,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { hut, refusal } from "./helpers.js";

const plan = planProcess({ ...hut, rest: 60, baths: { stop: {}, fix: { clearingS: 40 }, wash: {} } });
const stored = (): ProcessPlan => JSON.parse(JSON.stringify(plan)) as ProcessPlan;
const withStep = (place: number, change: object): ProcessPlan => {
  const copy = stored();
  return { ...copy, steps: copy.steps.map((step, i) => (i === place ? { ...step, ...change } : step)) };
};
const places = (given: unknown): readonly string[] => {
  const check = checkPlan(given);
  return check.ok ? [] : check.problems.map(({ path }) => path);
};

/** A plan whose every figure was rounded to so many seconds, as a store may keep it. */
const rounded = (given: ProcessPlan, toS: number): ProcessPlan =>
  JSON.parse(JSON.stringify(given), (name: string, value: unknown) =>
    typeof value === "number" && name.endsWith("S") ? Math.round(value / toS) * toS : value,
  ) as ProcessPlan;

describe("a stored plan", () => {
  const { steps, totalS } = plan;
  const [rest, develop, stop] = steps as [
    ProcessPlan["steps"][number],
    ProcessPlan["steps"][number],
    ProcessPlan["steps"][number],
  ];
  it.each<[string, unknown, readonly string[]]>([
    ["that is whole", plan, []],
    ["that is text", "plan", [""]],
    ["an end that was edited", withStep(1, { endS: 100 }), ["/steps/1/endS", "/steps/2/startS"]],
    ["a start that was edited", withStep(1, { startS: 0 }), ["/steps/1/startS"]],
    ["a length that was edited", withStep(1, { durationS: 200 }), ["/steps/1/endS"]],
    ["without its first step", { ...plan, steps: steps.slice(1) }, ["/steps/0/startS"]],
    ["without a step in the middle", { ...plan, steps: [rest, ...steps.slice(2)] }, ["/steps/1/startS"]],
    ["without its last step", { ...plan, steps: steps.slice(0, -1) }, ["/totalS"]],
    ["without steps", { ...plan, steps: [] }, ["/steps", "/totalS"]],
    ["with another total", { ...plan, totalS: totalS - 60 }, ["/totalS"]],
    [
      "with a step twice",
      { ...plan, steps: [rest, develop, develop, ...steps.slice(2)] },
      ["/steps/2/startS", "/steps/3/startS"].slice(0, 1),
    ],
    [
      "a cue that begins in the next step",
      withStep(1, { cues: [{ ...develop.cues[0], atS: stop.startS + 5 }] }),
      ["/steps/1/cues/0/atS"],
    ],
    [
      "two faults",
      { ...withStep(3, { endS: "1:00" }), handling: { ...plan.handling, drainS: -1 } },
      ["/steps/3/endS", "/steps/4/startS", "/handling/drainS"],
    ],
  ])("%s", (_, given, faults) => {
    expect(places(given)).toEqual(faults);
  });

  it("is handed back as a copy", () => {
    const check = checkPlan(plan);
    expect(check).toEqual({ ok: true, plan });
    expect(check.ok && check.plan !== plan).toBe(true);
  });

  it.each([1, 0.1, 0.001])("whose figures were rounded to %s s still joins", (toS) => {
    for (const timeS of [510.4999, 703.27, 299.5]) {
      const odd = planProcess({ ...hut, timeS, rest: 30.5, baths: { stop: { durationS: 20.6 }, wash: {} } });
      expect(places(rounded(odd, toS))).toEqual([]);
    }
  });

  it("with an end that comes too early ends no development", () => {
    const early = withStep(1, { endS: 100 });
    const evening = planEvening({
      baseline: { timeS: 600, temperatureC: 20 },
      conditions: {},
      plates: [{ areaCm2: 108 }],
      vessel: "tray",
      volumeMl: 500,
    });
    const of = { ...evening, plates: [{ ...evening.plates[0]!, plan: early }] };
    const run = { baseline: { timeS: 510, temperatureC: 20 }, conditions: {}, plan: early };
    expect(refusal(() => planAt(early, 200))).toBe("RangeError planAt /plan/steps/1/endS out-of-range");
    expect(refusal(() => describePlan(early))).toBe(
      "RangeError describePlan /plan/steps/1/endS out-of-range",
    );
    expect(refusal(() => replaceDevelopment(early, { atS: 80, remainingS: 400 }))).toBe(
      "RangeError replaceDevelopment /plan/steps/1/endS out-of-range",
    );
    expect(refusal(() => describeEvening(of))).toBe(
      "RangeError describeEvening /evening/plates/0/plan/steps/1/endS out-of-range",
    );
    expect(refusal(() => steer({ ...run, log: [{ timeS: 0, temperatureC: 20 }] }))).toBe(
      "RangeError steer /plan/steps/1/endS out-of-range",
    );
  });

  it("names no bound that is no number", () => {
    const check = checkPlan(withStep(1, { endS: NaN }));
    const problems = check.ok ? [] : check.problems;
    expect(problems.map(({ path }) => path)).toContain("/steps/1/endS");
    for (const { min = 0, max = 0 } of problems.map(
      ({ expected }) => expected as { min?: number; max?: number },
    ))
      expect([min, max].every(Number.isFinite)).toBe(true);
  });

  it("is refused by the place of its handling, whoever reads it", () => {
    const odd = { ...plan, handling: { ...plan.handling, vessel: anyOf("bath") } };
    expect(refusal(() => planAt(odd, 0))).toBe("RangeError planAt /plan/handling/vessel not-one-of");
  });
});
