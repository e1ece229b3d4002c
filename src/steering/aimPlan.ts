import { wrongKind } from "../core/guards.js";
import { checkedPlan } from "../process/checkedPlan.js";
import { developedAnew } from "../process/replaceDevelopment.js";
import type { ProcessPlan } from "../process/types.js";

/** How long draining takes by a plan, s; 0 where there is none. */
export function drainOf(where: string, plan: ProcessPlan | undefined): number {
  if (plan === undefined) return 0;
  checkedPlan(where, plan);
  if (!plan.steps.some(({ name }) => name === "develop")) wrongKind(where, ["plan with a development"], plan);
  return plan.handling.drainS;
}

/**
 * A checked plan whose development ends when steering says. The plan's clock starts with its first step, the
 * log's with pour-in: they are joined here and nowhere else.
 *
 * @param nowS - the clock from pour-in, s
 * @param endS - when the development is to be drained, s from pour-in
 */
export function aimPlan(plan: ProcessPlan, nowS: number, endS: number): ProcessPlan {
  // Past its end the development goes on until somebody pours out: an app may have slept.
  return developedAnew(plan, nowS, Math.max(0, endS - nowS));
}
