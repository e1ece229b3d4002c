import { causes } from "../causes.js";
import type { Caution } from "../core/caution.js";
import { isDrift, type AnyCause, type DilutionGiven } from "../core/cause.js";
import { isInputError, problemOf, type CheckProblem } from "../core/errors.js";
import { plainObject } from "../core/guards.js";
import { unlessUnreadable } from "../core/unlessUnreadable.js";
import { checkedLog } from "../drift/log.js";
import { checkedDrift } from "../drift/newtonDrift.js";
import { pairs } from "../pairs.js";
import { checkedJoint } from "./joint.js";
import { prepared } from "./loop.js";
import { marks, readBatchLogSd, readMark } from "./marks.js";
import { countsByStock, needsCounterpart } from "./terms.js";
import type { Baseline, Conditions, Knowledge } from "./types.js";

/** All is sound, or every problem. */
export type ConditionsCheck =
  | {
      readonly ok: true;
      /** what `compensate` finds unwise, gravest first; paths begin with the name of the argument */
      readonly cautions: readonly Caution[];
    }
  | {
      readonly ok: false;
      /** one for each field that is wrong */
      readonly problems: readonly CheckProblem[];
    };

/**
 * Checks what `compensate` is to be asked: every problem at once, one for each field, without throwing.
 *
 * @param baseline - anything; the known time and its conditions, as for `compensate`
 * @param conditions - anything; today's conditions
 * @param knowledge - anything; laws
 * @returns `ok: true` with what is allowed but unwise, such as 68 °C or a misspelt field; or `ok: false` with
 * the problems in the order of the arguments
 *
 * @example
 * ```ts
 * const check = checkConditions({ timeS: 510, temperatureC: 20 }, { dilution: "1:9", temperatureC: 300 });
 * check.ok === false && check.problems.map((problem) => problem.code) // => ["out-of-range", "ambiguous"]
 * ```
 */
export function checkConditions(
  baseline: unknown,
  conditions: unknown,
  knowledge: unknown = {},
): ConditionsCheck {
  const at = "checkConditions";
  const [known, asked, laws] = [baseline as Baseline, conditions as Conditions, knowledge as Knowledge];
  return unlessUnreadable<ConditionsCheck>(
    [baseline, conditions, knowledge],
    () => {
      const problems = conditionProblems(at, causes, known, asked, laws);
      if (problems.length > 0) return { ok: false, problems };
      return { ok: true, cautions: prepared(at, causes, known, laws).answer(asked).cautions };
    },
    (problem) => ({ ok: false, problems: [problem] }),
  );
}

/** Fields of an object by their names. */
type Fields = Readonly<Record<string, unknown>>;

/**
 * Every problem, by a list of causes; `strictly` also where a law of one's own cannot give a known condition
 * that is not named today.
 */
export function conditionProblems(
  at: string,
  list: readonly AnyCause[],
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge,
  strictly = false,
): readonly CheckProblem[] {
  const problems: CheckProblem[] = [];
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
  // Without a known time nothing can be said; without the others, all that is wrong with the rest.
  const asked: Fields = sound(() => plainObject(`${at}/conditions`, conditions)) ?? {};
  const laws: Fields = sound(() => plainObject(`${at}/knowledge`, knowledge)) ?? {};
  if (known === undefined) return problems;
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
    const drifts = isDrift(cause, given);
    const where = `${at}/conditions/${field}`;
    const to =
      given === undefined
        ? undefined
        : sound(() => (isDrift(cause, given) ? drift(where, given) : (cause.read(where, given) as unknown)));
    const checked: unknown =
      laws[law] === undefined
        ? cause.generic
        : sound(() => cause.check(`${at}/knowledge/${law}`, laws[law]) as unknown);
    const within = (place: string, side: unknown, bath: unknown, isKnown: boolean): void => {
      const counted = checked === undefined ? undefined : countedSide(cause, place, checked, side, bath);
      if (counted !== undefined) sound(() => cause.within?.(place, checked, counted, isKnown));
    };
    const knownAt = `${at}/baseline/${field}`;
    if (strictly && laws[law] !== undefined && from !== undefined && before !== undefined)
      within(knownAt, from, known["dilution"], true);
    if (to === undefined) continue;
    if (from === undefined) {
      if (before === undefined) sound(() => needsCounterpart(where, field));
    } else if (!drifts) {
      within(knownAt, from, known["dilution"], true);
      within(where, to, asked["dilution"] ?? known["dilution"], false);
    }
  }
  for (const pair of pairs)
    if (laws[pair.law] !== undefined)
      sound(() => pair.check(`${at}/knowledge/${pair.law}`, laws[pair.law]) as unknown);
  for (const { field } of marks) sound(() => readMark(`${at}/conditions/${field}`, asked[field]));
  sound(() => readBatchLogSd(`${at}/knowledge`, laws));
  if (laws["joint"] !== undefined) sound(() => checkedJoint(`${at}/knowledge/joint`, laws["joint"]));
  // What only the whole can tell, such as a bath that freezes on its way.
  sound(() => prepared(at, list, baseline, knowledge).answer(conditions));
  return problems;
}

/**
 * A side as its law counts it in the bath; undefined where the dilution cannot be read, which is a problem of
 * its own.
 */
function countedSide(cause: AnyCause, at: string, law: unknown, side: unknown, dilution: unknown): unknown {
  if (!countsByStock(cause, law)) return side;
  try {
    return cause.inBath?.(at, law, side, dilution as DilutionGiven | undefined) as unknown;
  } catch (error) {
    if (!isInputError(error)) throw error;
    return undefined;
  }
}

function drift(at: string, given: object): object {
  return Array.isArray(given) ? checkedLog(at, given) : checkedDrift(at, given);
}
