import { factorOf, logSdOf } from "../core/cause.js";
import { inRange, plainObject } from "../core/guards.js";
import { plainData } from "../core/plainData.js";
import { pushEffect } from "../push/cause.js";
import { checkedPushLaw, checkedStops, genericPushLaw, type PushLaw } from "../push/law.js";
import { readOutcome } from "./readOutcome.js";
import type { DevelopmentRun } from "./types.js";

/**
 * A run of a pushed film as one that was not pushed, for learning, which knows no push.
 *
 * @param run - the run, its outcome with a `logSd`, as that of a test strip
 * @param stops - how many stops the film was pushed, −3 to 5
 * @param law - the law of push; published practice when left out
 * @returns the run with the time that a film without a push would have taken, known less well by what the law
 * leaves open; a run that teaches nothing, one that failed or fogged, as it is
 * @throws TypeError or RangeError when an argument is of the wrong kind or out of range, or the film was
 * pushed and the outcome has no `logSd`: a window cannot say how much wider the push makes it
 *
 * @example
 * ```ts
 * const run: DevelopmentRun = { timeS: 750, temperatureC: 20, outcome: { kind: "good", logSd: 0.1 } };
 * const { timeS, outcome } = unpushedRun(run, 1);
 * Math.round(timeS) // => 601
 * outcome.kind === "good" && outcome.logSd // => 0.1345
 * ```
 */
export function unpushedRun(
  run: DevelopmentRun,
  stops: number,
  law: PushLaw = genericPushLaw,
): DevelopmentRun {
  const at = "unpushedRun";
  const { timeS, temperatureC, outcome } = plainObject(`${at}/run`, run) as unknown as DevelopmentRun;
  inRange(`${at}/run`, temperatureC, 0, 100, "temperatureC", "/temperatureC");
  const said = readOutcome(`${at}/run`, timeS, outcome);
  const effect = pushEffect(checkedPushLaw(`${at}/law`, law), 0, checkedStops(`${at}/stops`, stops));
  const kept = plainData(`${at}/run`, run);
  if (stops === 0 || typeof said === "string") return kept;
  const logSd = inRange(`${at}/run/outcome/logSd`, (outcome as { readonly logSd?: unknown }).logSd, 0, 3);
  const factor = factorOf(effect);
  const wider = Number(Math.min(3, Math.hypot(logSd, logSdOf(effect))).toFixed(4));
  return {
    ...kept,
    timeS: timeS / factor,
    outcome: {
      ...outcome,
      // A time of appearance tells the right time without the time that was given.
      ...(outcome.kind === "appearance" && { appearanceS: outcome.appearanceS / factor }),
      logSd: wider,
    } as DevelopmentRun["outcome"],
  };
}
