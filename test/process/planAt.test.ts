import { describe, expect, it } from "vitest";
import { planAt, planProcess, type PlanMoment } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { hut, refusal } from "./helpers.js";

const plan = planProcess({
  ...hut,
  timeS: 300,
  baths: { stop: {}, fix: { clearingS: 40, times: 3 }, wash: {} },
});
const shown = ({ step, cues, next, leftS, totalLeftS, over }: PlanMoment): readonly unknown[] => [
  step.name,
  cues.map((cue) => cue.do),
  next === undefined ? undefined : [next.atS, next.do],
  leftS,
  totalLeftS,
  over,
];

describe("planAt", () => {
  // Develop 0 to 300, stop to 330, fix to 450, wash to 2250.
  it.each<[string, number, readonly unknown[]]>([
    [
      "pour-in and agitation run together",
      0,
      ["develop", ["pour-in", "agitate"], [30, "tap"], 300, 2250, false],
    ],
    ["a moment runs for a second", 1, ["develop", ["agitate"], [30, "tap"], 299, 2249, false]],
    ["the tap is a moment", 30, ["develop", ["tap"], [60, "agitate"], 270, 2220, false]],
    ["between agitations none runs", 31, ["develop", [], [60, "agitate"], 269, 2219, false]],
    ["the beat goes on", 64.5, ["develop", ["agitate"], [120, "agitate"], 235.5, 2185.5, false]],
    ["pouring out runs to the end", 299, ["develop", ["pour-out"], [300, "pour-in"], 1, 1951, false]],
    [
      "at an end the next step has begun",
      300,
      ["stop", ["pour-in", "agitate"], [320, "pour-out"], 30, 1950, false],
    ],
    [
      "the look for clearing waits until the tank is still",
      390,
      ["fix", ["agitate"], [395, "light-on"], 60, 1860, false],
    ],
    [
      "the look for clearing is a moment",
      395,
      ["fix", ["light-on", "check-clear"], [440, "pour-out"], 55, 1855, false],
    ],
    ["the last cue has none after it", 500, ["wash", ["run-water"], undefined, 1750, 1750, false]],
    ["the end is over", 2250, ["wash", [], undefined, 0, 0, true]],
    ["past the end stays over", 9999, ["wash", [], undefined, 0, 0, true]],
    ["before the start is the start", -5, ["develop", ["pour-in", "agitate"], [30, "tap"], 300, 2250, false]],
  ])("%s", (_, timeS, answer) => {
    expect(shown(planAt(plan, timeS))).toEqual(answer);
  });

  it.each<[string, unknown, unknown, string]>([
    ["no plan", null, 0, "TypeError planAt /plan missing"],
    ["a plan without steps", { ...plan, steps: [] }, 0, "RangeError planAt /plan/steps empty"],
    ["no time", plan, undefined, "TypeError planAt /timeS missing"],
    ["NaN", plan, NaN, "RangeError planAt /timeS not-a-number"],
    ["a year", plan, 3e7, "RangeError planAt /timeS out-of-range"],
  ])("refuses %s", (_, given, timeS, fault) => {
    expect(refusal(() => planAt(anyOf(given), anyOf(timeS)))).toBe(fault);
  });
  it("shows a moment for as long as it is told, within its step", () => {
    const doing = (timeS: number, momentS?: number) =>
      planAt(plan, timeS, { momentS }).cues.map((cue) => cue.do);
    const stop = plan.steps.find(({ name }) => name === "stop")!;
    expect(doing(stop.startS + 5)).not.toContain("pour-in");
    expect(doing(stop.startS + 5, 15)).toContain("pour-in");
    expect(doing(stop.startS + 15, 15)).not.toContain("pour-in");
    // What began in the step before is not shown in this one.
    expect(doing(stop.endS, 3600)).not.toContain("rinse");
    expect(planAt(plan, stop.endS, { momentS: 3600 }).cues.every(({ atS }) => atS >= stop.endS)).toBe(true);
  });
  it.each([0, -1, 3601, NaN, "15"])("refuses to show a moment for %s s", (momentS) => {
    expect(refusal(() => planAt(plan, 0, anyOf({ momentS })))).toContain("planAt /options/momentS");
  });
});
