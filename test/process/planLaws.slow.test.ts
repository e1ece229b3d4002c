/* What holds for every plan, over thousands of random ones. */
import { fc, test } from "../property.js";
import { describe, expect } from "vitest";
import {
  describePlan,
  planAt,
  planProcess,
  replaceDevelopment,
  roundTime,
  type PlanCue,
  type ProcessInput,
  type ProcessPlan,
} from "../../src/index.js";
import { codes, stepOf } from "./helpers.js";

const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const setting = fc.record(
  { durationS: number(0.1, 4000), temperatureC: number(0, 100) },
  { requiredKeys: [] },
);
const vessels = fc.constantFrom(
  { vessel: "tank" },
  { vessel: "tank", movement: "turn" },
  { vessel: "tray" },
  { vessel: "tray", movement: "rock" },
  { vessel: "tray", pieces: 1 },
  { vessel: "tray", pieces: 6 },
  { vessel: "tray", pieces: 12 },
  { vessel: "drum" },
);
const rest = fc.record(
  {
    timeS: number(0.001, 6000),
    temperatureC: number(0, 100),
    startTemperatureC: number(0, 100),
    volumeMl: number(1, 1e6),
    topUpMl: number(0.1, 1),
    agitation: fc.oneof(
      fc.constantFrom("continuous", "stand"),
      fc.record({ everyS: fc.oneof(number(3, 3600), fc.constantFrom(30, 60)) }),
    ),
    // A pouring out of a trillionth of a second has no moment of its own on the clock of a plan.
    drainS: fc.oneof(fc.constant(0), number(0.001, 600)),
    rest: fc.oneof(fc.boolean(), number(0, 900)),
    iodideRich: fc.boolean(),
    emulsion: fc.constantFrom("soft", "hardened"),
    material: fc.constantFrom("film", "plate", "paper"),
    sensitization: fc.constantFrom("panchromatic", "orthochromatic", "blue-sensitive"),
    stepS: fc.constantFrom(1, 5, 15, 30, 60, 0.1, 0.7),
    baths: fc.record(
      {
        preSoak: setting,
        stop: fc
          .tuple(setting, fc.constantFrom("acid", "water", undefined))
          .map(([one, kind]) => ({ ...one, kind })),
        fix: fc.oneof(
          fc.tuple(setting, fc.constantFrom("rapid", "plain")).map(([one, kind]) => ({ ...one, kind })),
          fc.record({ clearingS: number(1, 1000), clearingAtC: number(0, 40) }),
        ),
        clearingAid: setting,
        wash: fc
          .tuple(setting, fc.constantFrom("running", "soak", "changes"))
          .map(([one, method]) => ({ ...one, method })),
        wettingAgent: setting,
      },
      { requiredKeys: [] },
    ),
  },
  { requiredKeys: ["timeS", "temperatureC"] },
);
const input = fc
  .tuple(vessels, rest)
  .map(([one, other]) => ({ ...other, ...one })) as fc.Arbitrary<ProcessInput>;

const RUNS = { numRuns: 1000 };
/** Sums of lengths round to this on the clock of a plan. */
const HAIR_S = 1e-6;
const ends = (cue: PlanCue): number => cue.atS + (cue.durationS ?? 0);

/** What is out of order in a plan, in words; nothing where all is well. */
function faults(plan: ProcessPlan): readonly string[] {
  const found: string[] = [];
  const must = (holds: boolean, what: string): void => {
    if (!holds) found.push(what);
  };
  let endS = 0;
  for (const step of plan.steps) {
    const { name, startS, durationS, cues } = step;
    must(startS === endS, `${name} begins where the step before ends`);
    must(durationS > 0, `${name} has a length`);
    endS = startS + durationS;
    must(step.endS === endS, `${name} ends after its length`);
    must(cues.length > 0, `${name} has cues`);
    let beforeS = startS;
    let handsS = startS;
    for (const cue of cues) {
      must(cue.atS >= beforeS, `${name} has ${cue.do} in order`);
      must(ends(cue) <= endS + HAIR_S, `${name} has ${cue.do} within it`);
      must((cue.durationS ?? 1) > 0, `${name} has ${cue.do} with a length, or none`);
      must(cue.text.length > 5, `${name} has ${cue.do} in words`);
      beforeS = cue.atS;
      // One pair of hands: neither two agitations at once, nor one into the pouring out.
      if (cue.do !== "agitate" && cue.do !== "pour-out") continue;
      must(cue.atS >= handsS - HAIR_S, `${name} has ${cue.do} after the agitation before it`);
      handsS = ends(cue);
    }
  }
  must(plan.totalS === endS, "the total is the end of the last step");
  must(plan.totalS === plan.steps.reduce((sum, { durationS }) => sum + durationS, 0), "the total is the sum");
  must(!describePlan(plan).some((line) => /NaN|undefined|Infinity/.test(line)), "the lines have numbers");
  return found;
}

describe("every plan", () => {
  test.prop([input], RUNS)("has its steps end to end, its cues within them, and survives JSON", (given) => {
    const plan = planProcess(given);
    expect(faults(plan)).toEqual([]);
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
    expect(structuredClone(plan)).toEqual(plan);
  });

  test.prop([input], RUNS)("develops for as long as the headline says, rounded once", (given) => {
    const { timeS = 0, stepS } = given;
    const plan = planProcess(given);
    const { drainS } = plan.handling;
    const headlineS = stepS === undefined ? timeS : Math.max(stepS, roundTime(timeS, stepS));
    expect(stepOf(plan, "develop").durationS).toBe(Math.max(headlineS, drainS));
    const unrounded = planProcess({ ...given, stepS: undefined });
    // Fixing and washing are rounded up without a step too, and by the finest step to a tenth of a second.
    const finest = planProcess({ ...given, stepS: 0.1 });
    plan.steps.forEach((step, i) => {
      // Up where too short would do harm; else to the nearest, but never to nothing.
      const upward = step.name === "fix" || step.name === "wash";
      const lengthS = (upward ? finest : unrounded).steps[i]!.durationS;
      if (stepS === undefined) {
        if (upward) expect(step.durationS).toBeGreaterThan(lengthS - 0.1 - HAIR_S);
        else expect(step.durationS).toBe(lengthS);
      } else if (upward) {
        // What is needed lies within a tenth of a second below the finest.
        const [least, most] = [lengthS - 0.1 - HAIR_S, lengthS].map(
          (needS) => stepS * Math.ceil(needS / stepS - 1e-9),
        );
        expect(step.durationS).toBeGreaterThanOrEqual(least! - HAIR_S);
        expect(step.durationS).toBeLessThanOrEqual(most! + HAIR_S);
      } else {
        const mostS = Math.max(stepS / 2, stepS - lengthS);
        expect(Math.abs(step.durationS - lengthS)).toBeLessThanOrEqual(mostS + HAIR_S);
      }
    });
  });

  test.prop([input, number(-0.1, 1.1)], RUNS)("is at every moment where planAt says", (given, share) => {
    const plan = planProcess(given);
    const { steps, totalS } = plan;
    const timeS = share * totalS;
    const now = planAt(plan, timeS);
    const atS = Math.max(0, timeS);
    expect(now.over).toBe(atS >= totalS);
    expect(now.step).toBe(now.over ? steps.at(-1) : steps.find((one) => one.startS <= atS && atS < one.endS));
    expect(now.totalLeftS).toBe(now.over ? 0 : totalS - atS);
    expect(now.leftS).toBe(now.over ? 0 : now.step.endS - atS);
    const all = steps.flatMap(({ cues }) => cues);
    expect(now.next).toEqual(all.find((cue) => cue.atS > atS));
    expect(now.cues).toEqual(
      now.step.cues.filter((cue) => cue.atS <= atS && atS < cue.atS + (cue.durationS ?? 1)),
    );
  });

  test.prop([input], RUNS)("shows each cue at its beginning", (given) => {
    const plan = planProcess(given);
    const hidden = plan.steps.flatMap(({ cues, endS }) =>
      cues.slice(0, 5).filter((cue) => cue.atS < endS && !planAt(plan, cue.atS).cues.includes(cue)),
    );
    expect(hidden).toEqual([]);
  });

  test.prop([input, number(0, 1), number(0, 1e4)], RUNS)(
    "stays in order when its development is timed anew",
    (given, share, remainingS) => {
      const plan = planProcess(given);
      const { startS, durationS, endS } = stepOf(plan, "develop");
      const atS = Math.min(startS + share * durationS, endS);
      const anew = replaceDevelopment(plan, { atS, remainingS });
      expect(faults(anew)).toEqual([]);
      const { drainS, stepS = 0 } = plan.handling;
      const develop = stepOf(anew, "develop");
      // A development takes a hundredth of a second at least.
      const neededS = Math.max(remainingS, drainS, 0.01 - (atS - startS));
      const missS = Math.abs(develop.endS - (atS + neededS));
      expect(missS).toBeLessThanOrEqual(Math.max(stepS / 2, stepS - (atS - startS) - remainingS) + HAIR_S);
      expect(develop.cues.at(-1)).toMatchObject({ do: "pour-out" });
      expect(develop.cues.at(-1)!.atS).toBeGreaterThanOrEqual(atS - HAIR_S);
      expect(codes(anew.cautions).includes("late-pour")).toBe(remainingS < drainS);
    },
  );
});
