import { attempt } from "../core/attempt.js";
import type { CheckProblem } from "../core/errors.js";
import { unlessUnreadable } from "../core/unlessUnreadable.js";
import { checkedPlan } from "./checkedPlan.js";
import type { ProcessPlan } from "./types.js";

/** What {@link checkPlan} returns. */
export type PlanCheck =
  | {
      readonly ok: true;
      /** the plan, as a copy */
      readonly plan: ProcessPlan;
    }
  | {
      readonly ok: false;
      /** what is wrong with it: one problem for each step, material, list and field */
      readonly problems: readonly CheckProblem[];
    };

/**
 * Checks a plan that was stored or sent, without throwing.
 *
 * @param input - anything; a plan is what `planProcess` returns
 * @returns `{ ok: true, plan }` with a copy; or `{ ok: false, problems }` with what is wrong, each with its
 * path and what was expected
 *
 * @remarks The first step begins at 0 s, each other one where the one before it ends. A step ends its length
 * after its start, the plan with its last step, and a cue lies within its step. Storage may round each
 * figure to whole seconds, so a length may miss by 1.5 s. `planAt`, `describePlan`, `replaceDevelopment`,
 * `describeEvening` and `steer` refuse a plan that does not pass.
 *
 * @example
 * ```ts
 * const plan = planProcess({ vessel: "tank", timeS: 510, temperatureC: 20 });
 * const stored = JSON.parse(JSON.stringify(plan).replace('"endS":510', '"endS":100'));
 * const check = checkPlan(stored);
 * check.ok ? [] : check.problems.map(({ path }) => path) // => ["/steps/0/endS", "/steps/1/startS"]
 * ```
 */
export function checkPlan(input: unknown): PlanCheck {
  return unlessUnreadable(
    [input],
    () => planCheck(input),
    (problem) => ({ ok: false, problems: [problem] }),
  );
}

function planCheck(input: unknown): PlanCheck {
  const problems: CheckProblem[] = [];
  const part = (check: () => void): void => {
    attempt(problems, check);
  };
  const plan = attempt(problems, () => checkedPlan("checkPlan", input as ProcessPlan, part));
  return plan === undefined || problems.length > 0 ? { ok: false, problems } : { ok: true, plan };
}
