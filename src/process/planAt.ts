import { inRange, plainObject, positive } from "../core/guards.js";
import { checkedPlan } from "./checkedPlan.js";
import type { PlanCue, PlanMoment, ProcessPlan, ProcessStep } from "./types.js";

/** What {@link planAt} is told besides the moment. */
export interface PlanAtOptions {
  /** how long a cue without a length is shown, s, above 0 to 3600; 1 when left out */
  readonly momentS?: number | undefined;
}

const MOMENT_S = 1;

/**
 * Where a plan is at a moment: what runs, what comes next, and what is left.
 *
 * @param plan - a plan of `planProcess`
 * @param timeS - seconds from the start of the plan, −1e7 to 1e7; before the start counts as the start
 * @param options - `momentS`: how long a cue without a length is shown
 * @returns the step, all cues that run, the next cue, the seconds left of the step and of the plan, and
 * whether the plan is over
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when the plan has no step, its steps do not join, or a figure is out of range
 *
 * @remarks A cue with a length runs from `atS` for as long; a moment, such as pouring in, is shown for
 * `momentS`, within its step. At the end of a step the next has begun. From the end of the plan on the last
 * step is given, with nothing left of it, `over: true`.
 *
 * @example
 * ```ts
 * const plan = planProcess({ vessel: "tank", timeS: 510, temperatureC: 20 });
 * planAt(plan, 62).cues.map((cue) => cue.do) // => ["agitate"]
 * planAt(plan, 510).step.name // => "stop"
 * ```
 */
export function planAt(plan: ProcessPlan, timeS: number, options: PlanAtOptions = {}): PlanMoment {
  checkedPlan("planAt/plan", plan);
  const { momentS = MOMENT_S } = plainObject("planAt/options", options) as PlanAtOptions;
  positive("planAt/options/momentS", momentS, 3600, "timeS");
  const { steps, totalS } = plan;
  const atS = Math.max(0, inRange("planAt/timeS", timeS, -1e7, 1e7, "timeS"));
  const over = atS >= totalS;
  const last = steps[steps.length - 1] as ProcessStep;
  const step = steps.find(({ endS }) => atS < endS) ?? last;
  const runs = (cue: PlanCue): boolean => cue.atS <= atS && atS < cue.atS + (cue.durationS ?? momentS);
  const next = steps.flatMap(({ cues }) => cues).find((cue) => cue.atS > atS);
  return {
    step,
    cues: step.cues.filter(runs),
    ...(next === undefined ? {} : { next }),
    leftS: Math.max(0, step.endS - atS),
    totalLeftS: Math.max(0, totalS - atS),
    over,
  };
}
