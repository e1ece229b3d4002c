import { inRange, knownEntry, plainObject, wrongValue } from "../core/guards.js";
import { gravestFirst, type Caution } from "../core/caution.js";
import { agitationInterval } from "../agitation/agitation.js";
import { handbookVessels } from "../handbook/process.js";
import { checkedPlan } from "./checkedPlan.js";
import { developmentCues, drainTooLong } from "./developmentCues.js";
import { layOut } from "./layOut.js";
import type { ProcessPlan } from "./types.js";

const AGITATION = "replaceDevelopment/plan/handling/agitation";

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
 * @throws RangeError when a value is out of range or the moment does not lie in the development
 *
 * @remarks The agitation keeps its beat from the start of the development; one that pouring out would cut
 * short is left out. Pouring out begins so that draining ends on time, but never before the moment itself:
 * with less time left than draining takes, it begins at once and ends late.
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
  if (develop === undefined) wrongValue("replaceDevelopment/plan", "a plan with a development", plan);
  const { startS } = develop;
  const atS = inRange("replaceDevelopment/atS", left.atS, startS, startS + develop.durationS, "timeS");
  const remainingS = inRange("replaceDevelopment/remainingS", left.remainingS, 0, 1e6, "timeS");
  const { vessel, agitation } = plan.handling;
  knownEntry("replaceDevelopment/plan/handling/vessel", handbookVessels, vessel);
  agitationInterval(AGITATION, agitation);
  const drainS = inRange("replaceDevelopment/plan/handling/drainS", plan.handling.drainS, 0, 600, "timeS");
  const passedS = atS - startS;
  const durationS = passedS + Math.max(remainingS, drainS);
  const cues = developmentCues(AGITATION, plan.handling, Math.max(passedS, durationS - drainS));
  const drafts = plan.steps.map((step) =>
    step === develop
      ? { ...step, durationS, cues }
      : // The difference may round to a hair beyond the end of the step.
        {
          ...step,
          cues: step.cues.map((cue) => ({ ...cue, atS: Math.min(cue.atS - step.startS, step.durationS) })),
        },
  );
  const cautions: Caution[] = plan.cautions.filter(
    ({ code }) => code !== "late-pour" && code !== "drain-too-long",
  );
  const developedS = passedS + remainingS;
  if (developedS < drainS) cautions.push(drainTooLong(developedS, drainS));
  if (remainingS < drainS)
    cautions.push({
      code: "late-pour",
      severity: "warn",
      message: `Pour out at once: draining ends ${Number((drainS - remainingS).toFixed(1))} s late.`,
      limit: drainS,
      actual: remainingS,
    });
  return { ...plan, ...layOut(drafts), cautions: gravestFirst(cautions) };
}
