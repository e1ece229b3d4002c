import { describe, expect, it } from "vitest";
import { planProcess, replaceDevelopment } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { codes, hut, refusal, stepOf } from "./helpers.js";

const plan = planProcess({
  ...hut,
  rest: 60,
  baths: { fix: { clearingS: 40, times: 3 }, wash: { method: "soak" } },
});

describe("a development that is timed anew", () => {
  it("is longer or shorter, and the rest shifts", () => {
    const longer = replaceDevelopment(plan, { atS: 300, remainingS: 420 });
    expect(longer.steps.map(({ name, startS, endS, durationS }) => [name, startS, endS, durationS])).toEqual([
      ["rest", 0, 60, 60],
      ["develop", 60, 720, 660],
      ["fix", 720, 840, 120],
      ["wash", 840, 2640, 1800],
    ]);
    expect(longer.totalS).toBe(2640);
    expect(stepOf(longer, "develop").cues.at(-1)).toMatchObject({ atS: 710, durationS: 10, do: "pour-out" });
    expect(stepOf(longer, "develop").cues.at(-2)!.atS).toBe(660);
    expect(stepOf(longer, "fix").cues.find((cue) => cue.do === "check-clear")!.atS).toBe(785);
    expect(stepOf(longer, "wash").cues.at(-1)!.atS).toBe(840 + 1620);
    expect(longer.materials).toEqual(plan.materials);
    const shorter = replaceDevelopment(plan, { atS: 300, remainingS: 30 });
    expect(stepOf(shorter, "develop").durationS).toBe(270);
    expect(stepOf(shorter, "develop").cues.at(-1)!.atS).toBe(320);
    expect(stepOf(shorter, "fix").startS).toBe(330);
    // The same development again is the same plan.
    expect(replaceDevelopment(longer, { atS: 300, remainingS: 270 })).toEqual(plan);
    expect(stepOf(plan, "develop").durationS).toBe(510);
  });

  it("keeps its beat, and an agitation that pouring out would cut short is left out", () => {
    const short = planProcess({ ...hut, timeS: 252 });
    const last = (remainingS: number): number =>
      stepOf(replaceDevelopment(short, { atS: 200, remainingS }), "develop").cues.at(-2)!.atS;
    expect([last(55), last(54)]).toEqual([240, 180]);
  });

  it("keeps what came before pouring in", () => {
    const full = planProcess({
      ...hut,
      topUpMl: 50,
      startTemperatureC: 21,
      sensitization: "panchromatic",
      rest: 30,
    });
    expect(replaceDevelopment(full, { atS: 100, remainingS: 440 })).toEqual(full);
    const unrested = planProcess({
      ...hut,
      topUpMl: 50,
      startTemperatureC: 21,
      sensitization: "panchromatic",
    });
    expect(replaceDevelopment(unrested, { atS: 100, remainingS: 410 })).toEqual(unrested);
  });

  it("stays rounded, unless pouring out has to begin", () => {
    const rounded = planProcess({ ...hut, timeS: 703, stepS: 15, rest: 60 });
    const durations = (remainingS: number): number =>
      stepOf(replaceDevelopment(rounded, { atS: 360, remainingS }), "develop").durationS;
    expect(durations(307)).toBe(600);
    expect(durations(308)).toBe(615);
    const anew = replaceDevelopment(rounded, { atS: 360, remainingS: 307 });
    expect(anew.steps.every(({ startS }) => startS % 15 === 0)).toBe(true);
    expect(anew.totalS % 15).toBe(0);
    // 306 s in, 10 s to drain: rounding to 315 would be before the end of draining.
    const late = replaceDevelopment(rounded, { atS: 366, remainingS: 4 });
    expect(stepOf(late, "develop").durationS).toBe(316);
    expect(stepOf(late, "develop").cues.at(-1)!.atS).toBe(366);
  });

  it("warns where a long step moves it", () => {
    const rounded = planProcess({ ...hut, stepS: 60 });
    const saidAt = (remainingS: number) =>
      replaceDevelopment(rounded, { atS: 60, remainingS }).cautions.filter(
        ({ code }) => code === "development-rounded",
      );
    expect(saidAt(89)[0]).toMatchObject({ severity: "warn", path: "/stepS", limit: 149, actual: 120 });
    expect(saidAt(31)[0]).toMatchObject({ severity: "stop", path: "/stepS", limit: 91, actual: 120 });
    expect(saidAt(61)).toEqual([]);
  });

  it("says by how much draining ends late, and gives no order", () => {
    const baths = { stop: {}, fix: { clearingS: 40, times: 3 }, wash: { method: "soak" } } as const;
    const whole = planProcess({ ...hut, rest: 60, baths });
    const late = replaceDevelopment(whole, { atS: 300, remainingS: 4 });
    expect(stepOf(late, "develop")).toMatchObject({ durationS: 250 });
    expect(stepOf(late, "develop").cues.at(-1)).toMatchObject({ atS: 300, durationS: 10, do: "pour-out" });
    expect(late.cautions).toMatchObject([
      { code: "late-pour", severity: "warn", quantity: "timeS", limit: 10, actual: 4 },
    ]);
    expect(late.cautions[0]!.message).toContain("6 s");
    expect(replaceDevelopment(late, { atS: 300, remainingS: 10 }).cautions).toEqual([]);
    expect(codes(replaceDevelopment(late, { atS: 300, remainingS: 0 }).cautions)).toEqual(["late-pour"]);
    expect(replaceDevelopment(whole, { atS: 570, remainingS: 0 }).steps[1]!.durationS).toBe(520);
    const noted = planProcess(hut);
    expect(codes(replaceDevelopment(noted, { atS: 500, remainingS: 1 }).cautions)).toEqual([
      "late-pour",
      "clearing-assumed",
      "fixing-split",
    ]);
    expect(codes(replaceDevelopment(whole, { atS: 60, remainingS: 5 }).cautions)).toEqual([
      "drain-too-long",
      "late-pour",
    ]);
  });
});

describe("replaceDevelopment refuses", () => {
  const handled = (change: object): object => ({ ...plan, handling: { ...plan.handling, ...change } });
  it.each<[string, unknown, unknown, string]>([
    ["no plan", null, {}, "TypeError replaceDevelopment /plan missing"],
    ["nothing left", plan, 5, "TypeError replaceDevelopment /left wrong-type"],
    ["no development", { ...plan, steps: [] }, {}, "RangeError replaceDevelopment /plan/steps empty"],
    [
      "a plan without a development",
      { ...plan, steps: plan.steps.slice(0, 1), totalS: 60 },
      {},
      "TypeError replaceDevelopment /plan wrong-type",
    ],
    [
      "a moment before",
      plan,
      { atS: 59, remainingS: 5 },
      "RangeError replaceDevelopment /left/atS out-of-range",
    ],
    [
      "a moment after",
      plan,
      { atS: 571, remainingS: 5 },
      "RangeError replaceDevelopment /left/atS out-of-range",
    ],
    ["no rest", plan, { atS: 100 }, "TypeError replaceDevelopment /left/remainingS missing"],
    [
      "a rest below 0",
      plan,
      { atS: 100, remainingS: -1 },
      "RangeError replaceDevelopment /left/remainingS out-of-range",
    ],
    [
      "another vessel",
      handled({ vessel: "bath" }),
      { atS: 100, remainingS: 1 },
      "RangeError replaceDevelopment /plan/handling/vessel not-one-of",
    ],
    [
      "a movement of another vessel",
      handled({ movement: "rock" }),
      { atS: 100, remainingS: 1 },
      "RangeError replaceDevelopment /plan/handling/movement not-one-of",
    ],
    [
      "other agitation",
      handled({ agitation: 5 }),
      { atS: 100, remainingS: 1 },
      "TypeError replaceDevelopment /plan/handling/agitation wrong-type",
    ],
    [
      "draining for ever",
      handled({ drainS: 601 }),
      { atS: 100, remainingS: 1 },
      "RangeError replaceDevelopment /plan/handling/drainS out-of-range",
    ],
    [
      "no step",
      handled({ stepS: 0 }),
      { atS: 100, remainingS: 1 },
      "RangeError replaceDevelopment /plan/handling/stepS out-of-range",
    ],
    [
      "agitations without end",
      planProcess({ ...hut, timeS: 500_000, agitation: { everyS: 6 } }),
      { atS: 400_000, remainingS: 1e6 },
      "RangeError replaceDevelopment /plan/handling/agitation/everyS out-of-range",
    ],
  ])("%s", (_, given, left, fault) => {
    expect(refusal(() => replaceDevelopment(anyOf(given), anyOf(left)))).toBe(fault);
  });
});
