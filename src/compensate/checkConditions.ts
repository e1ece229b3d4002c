import { causes } from "../causes.js";
import type { AnyCause } from "../core/cause.js";
import { isInputError, type InputError, type InputErrorCode, type InputExpected } from "../core/errors.js";
import { plainObject } from "../core/guards.js";
import { checkedLog } from "../drift/log.js";
import { checkedDrift } from "../drift/newtonDrift.js";
import { prepared } from "./loop.js";
import { needsCounterpart } from "./terms.js";
import type { Baseline, Conditions, Knowledge } from "./types.js";

/** What is wrong with an input, as an error says it. */
export interface Problem {
  readonly code: InputErrorCode;
  /** JSON Pointer into what was given, beginning with the name of the argument */
  readonly path: string;
  readonly expected: InputExpected;
  readonly actual: unknown;
  /** the whole sentence, with the function that was called and the place */
  readonly message: string;
  /** the same without the place, for a form that shows it beside the field */
  readonly sentence: string;
}

/** All is sound, or every problem. */
export type ConditionsCheck =
  { readonly ok: true } | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Checks what `compensate` is to be asked: every problem at once, one for each field, without throwing.
 *
 * @param baseline - the known time and its conditions, as for `compensate`
 * @param conditions - today's conditions
 * @param knowledge - laws
 * @returns `ok: true`, or `ok: false` with the problems in the order of the arguments
 *
 * @example
 * ```ts
 * const check = checkConditions({ timeS: 510, temperatureC: 20 }, { dilution: "1:9", temperatureC: 300 });
 * check.ok === false && check.problems.map((problem) => problem.code) // => ["out-of-range", "ambiguous"]
 * ```
 */
export function checkConditions(
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge = {},
): ConditionsCheck {
  const problems = conditionProblems("checkConditions", causes, baseline, conditions, knowledge);
  return problems.length > 0 ? { ok: false, problems } : { ok: true };
}

/** Fields of an object by their names. */
type Fields = Readonly<Record<string, unknown>>;

/** Every problem, by a list of causes. */
export function conditionProblems(
  at: string,
  list: readonly AnyCause[],
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge,
): readonly Problem[] {
  const problems: Problem[] = [];
  const sound = <T>(call: () => T): T | undefined => {
    try {
      return call();
    } catch (error) {
      if (!isInputError(error)) throw error;
      if (!problems.some(({ path }) => path === error.path)) problems.push(problemOf(error));
      return undefined;
    }
  };
  const known = sound(() => plainObject(`${at}/baseline`, baseline)) as Fields | undefined;
  const asked = sound(() => plainObject(`${at}/conditions`, conditions)) as Fields | undefined;
  const laws = sound(() => plainObject(`${at}/knowledge`, knowledge)) as Fields | undefined;
  if (known === undefined || asked === undefined || laws === undefined) return problems;
  // The known time with nothing else, for what belongs to no cause.
  const { timeS, temperatureC, ...rest } = baseline;
  const bare = Object.fromEntries(
    Object.entries(rest).filter(([field]) => !list.some((each) => each.field === field)),
  );
  sound(() => prepared(at, [], { ...bare, timeS, temperatureC }, {}));
  for (const cause of list) {
    const { field, law } = cause;
    const before = known[field];
    const from =
      (before === undefined && cause.required !== true) || cause.relative === true
        ? (cause.start as unknown)
        : sound(() => cause.read(`${at}/baseline/${field}`, before) as unknown);
    const given = asked[field];
    const drifts = cause.required === true && typeof given === "object" && given !== null;
    const where = `${at}/conditions/${field}`;
    const to =
      given === undefined
        ? undefined
        : sound(() => (drifts ? drift(where, given) : (cause.read(where, given) as unknown)));
    const checked: unknown =
      laws[law] === undefined
        ? cause.generic
        : sound(() => cause.check(`${at}/knowledge/${law}`, laws[law]) as unknown);
    // A law of one's own has to give the known time, whether the condition is named today or not.
    if (laws[law] !== undefined && checked !== undefined && from !== undefined && before !== undefined)
      sound(() => cause.within?.(`${at}/baseline/${field}`, checked, from, true));
    if (to === undefined) continue;
    if (from === undefined) {
      if (before === undefined) sound(() => needsCounterpart(where, field));
    } else if (checked !== undefined && !drifts) {
      sound(() => cause.within?.(`${at}/baseline/${field}`, checked, from, true));
      sound(() => cause.within?.(where, checked, to, false));
    }
  }
  // Each field is sound: what is left is what only the whole can tell.
  if (problems.length === 0) sound(() => prepared(at, list, baseline, knowledge).answer(conditions));
  return problems;
}

function drift(at: string, given: object): object {
  return Array.isArray(given) ? checkedLog(at, given) : checkedDrift(at, given);
}

function problemOf({ code, path, expected, actual, message, sentence }: InputError): Problem {
  return { code, path, expected, actual, message, sentence };
}
