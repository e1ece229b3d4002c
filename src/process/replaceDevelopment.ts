import { inRange, plainObject, wrongKind } from "../core/guards.js";
import { gravestFirst, type Caution } from "../core/caution.js";
import { caution } from "./caution.js";
import { checkedPlan } from "./checkedPlan.js";
import { developmentCues, drainTooLong, LEAST_CUE_S } from "./developmentCues.js";
import { layOut } from "./layOut.js";
import { movedByStep, toNearest } from "./rounding.js";
import type { ProcessPlan, ProcessStep } from "./types.js";

const HANDLING = "replaceDevelopment/plan/handling";

/** What a plan says of the length of its development, which is said anew. */
const ABOUT_LENGTH: readonly string[] = ["late-pour", "drain-too-long", "development-rounded"];

/** The moment of the plan at which the development is timed anew, and what is left of it from there. */
export interface DevelopmentLeft {
  /** seconds from the start of the plan */
  readonly atS: number;
  /** development time left from that moment, s, 0 to 1e6: `remainingS` of `remainingTime` */
  readonly remainingS: number;
}

/**
 * A plan whose development is timed anew in the middle of the run; the steps after it shift.
 *
 * @param plan - a plan of `planProcess`
 * @param left - the moment in s from the start of the plan, within the development, and the development time
 * left from there in s
 * @returns a new plan; a `"warn"` caution says so when draining cannot end in time any more
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range, the plan's steps do not join, or the moment does not
 * lie in the development
 *
 * @remarks The agitation keeps its beat from the start of the development; one that pouring out would cut
 * short is left out. Pouring out begins so that draining ends on time, but never before the moment itself:
 * with less time left than draining takes, it begins at that moment and ends late. A plan that was rounded
 * stays rounded, as long as pouring out can still begin in time for that; `development-rounded` says where
 * that shows.
 *
 * @example
 * ```ts
 * const plan = planProcess({ vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 500 });
 * replaceDevelopment(plan, { atS: 300, remainingS: 270 }).steps[0].durationS // => 570
 * ```
 */
export function replaceDevelopment(plan: ProcessPlan, left: DevelopmentLeft): ProcessPlan {
  checkedPlan("replaceDevelopment/plan", plan);
  plainObject("replaceDevelopment/left", left);
  const develop = plan.steps.find((step) => step.name === "develop");
  if (develop === undefined) wrongKind("replaceDevelopment/plan", ["plan with a development"], plan);
  const { startS, endS } = develop;
  const atS = inRange("replaceDevelopment/left/atS", left.atS, startS, endS, "timeS");
  const remainingS = inRange("replaceDevelopment/left/remainingS", left.remainingS, 0, 1e6, "timeS");
  return developedAnew(plan, atS - startS, remainingS);
}

/**
 * A checked plan with a development, which is timed anew, also past the end that it had.
 *
 * @param passedS - the moment, s from the start of the development
 * @param remainingS - what is left of it from there, s
 */
export function developedAnew(plan: ProcessPlan, passedS: number, remainingS: number): ProcessPlan {
  const develop = plan.steps.find((step) => step.name === "develop") as ProcessStep;
  const { handling } = plan;
  const { drainS, vessel, stepS } = handling;
  const neededS = Math.max(LEAST_CUE_S, passedS + Math.max(remainingS, drainS));
  const roundedS = toNearest(neededS, stepS);
  const durationS = remainingS < drainS || roundedS - drainS < passedS ? neededS : roundedS;
  const anew = developmentCues(`${HANDLING}/agitation`, handling, Math.max(passedS, durationS - drainS));
  const before = develop.cues
    .filter((cue) => cue.do === "top-up" || cue.do === "temper" || cue.do === "light-off")
    .map((cue) => ({ ...cue, atS: cue.atS - develop.startS }));
  const drafts = plan.steps.map((step) =>
    step === develop
      ? { ...step, durationS, cues: [...before, ...anew] }
      : // The difference may round to a hair beyond the end of the step.
        {
          ...step,
          cues: step.cues.map((cue) => ({ ...cue, atS: Math.min(cue.atS - step.startS, step.durationS) })),
        },
  );
  const cautions: Caution[] = [
    ...plan.cautions.filter(({ code }) => !ABOUT_LENGTH.includes(code)),
    ...(durationS === roundedS ? movedByStep(neededS, stepS) : []),
  ];
  const developedS = passedS + remainingS;
  if (developedS < drainS) cautions.push(drainTooLong(developedS, drainS));
  if (remainingS < drainS)
    cautions.push(caution("late-pour", "warn", { quantity: "timeS", limit: drainS, actual: remainingS }));
  return { ...plan, ...layOut(drafts, vessel), cautions: gravestFirst(cautions) };
}
