import { causes } from "../causes.js";
import { marks } from "../compensate/marks.js";
import type { Conditions } from "../compensate/types.js";
import { logSdOf, type AnyCause } from "../core/cause.js";
import type { Row } from "../core/row.js";
import { arrayOf, positive, refuse } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { knownFieldText } from "../core/text.js";
import { logConcentration, readDilution } from "../dilution/dilution.js";
import { expectedSpread } from "./expectedSpread.js";
import type { NotebookFit } from "./fitNotebook.js";
import { everything, type Learning } from "./learning.js";
import type { ModelRow } from "./model.js";
import { ONE_EYE } from "./readOutcome.js";
import { storedFit } from "./stored.js";
import { noPlaceText } from "./text.js";
import type { LearnedKnowledge, TestCandidate } from "./types.js";

/** A test, and what it would be worth and cost. */
export interface RankedTest<Candidate extends TestCandidate = TestCandidate> {
  /** the test, as it was given */
  readonly candidate: Candidate;
  /** standard deviation of ln(time) of the question once the test is made */
  readonly expectedLogSd: number;
  /** the time to give, s: the candidate's own, or the one predicted */
  readonly timeS: number;
  /** what it costs in development time, min */
  readonly minutes: number;
  /** what it costs in stock, ml, where the candidate says how much bath it needs */
  readonly stockMl?: number;
}

/**
 * Which test would help most: for each candidate, how well the time in question will be known after it, best
 * first.
 *
 * @param knowledge - from `startKnowledge` or `learn`
 * @param candidates - tests that could be made: their conditions, each optional, `timeS` to give,
 * `outcomeLogSd` (above 0 to 3) and `volumeMl` of bath; what is left out is as in the baseline. Fields of
 * your own begin with "x-"
 * @param question - the conditions of the negative to come
 * @returns the candidates in order of the expected spread, with what each costs; those of one spread stay in
 * their order
 * @throws TypeError or RangeError for knowledge and conditions as `learn` does, and a RangeError for a
 * candidate or a question without a row in the model, or with a field that is not read
 *
 * @remarks The knowledge is worked out anew from its prior and its runs, with the dilutions and intervals of
 * candidates and question among those of the runs. In closed form: the variance after is that before, less
 * the squared covariance of question and candidate times what the outcome is expected to tell. A value tells
 * 1/(its variance); of an eye the nearest half step is expected, and at which time the strip is developed
 * hardly matters. The spread is for noise as stated: where noise is estimated more is left, after a first
 * strip half as much again, after the sixth a tenth more, since one run does not tell how the runs scatter.
 * The best for its cost is for the caller to weigh: sort anew by gain for each minute or millilitre.
 *
 * Source: D. V. Lindley, Ann. Math. Statist. 27, 1956, p. 986 (the worth of an experiment before it is made).
 *
 * @example
 * ```ts
 * const start = startKnowledge({ timeS: 510, temperatureC: 20 });
 * const [best] = nextTest(start, [{ temperatureC: 20 }, { temperatureC: 14 }], { temperatureC: 12 });
 * best?.candidate // => { temperatureC: 14 }
 * best?.minutes // => 14.2
 * ```
 */
export function nextTest<Candidate extends TestCandidate>(
  knowledge: LearnedKnowledge,
  candidates: readonly Candidate[],
  question: Conditions,
): readonly RankedTest<Candidate>[] {
  return rankedTests("nextTest", everything, knowledge, candidates, question);
}

/** The fields of a candidate besides its conditions. */
const TEST_FIELDS = ["timeS", "outcomeLogSd", "volumeMl"];

/** The same for any list of what runs can teach; `at` is the name of the function that was called. */
export function rankedTests<Candidate extends TestCandidate>(
  at: string,
  learning: Learning,
  knowledge: LearnedKnowledge,
  candidates: readonly Candidate[],
  question: Conditions,
): readonly RankedTest<Candidate>[] {
  arrayOf(`${at}/candidates`, candidates, 0);
  // By number: a list may have holes, which are refused by their place.
  const places = [`${at}/question`, ...Array.from(candidates, (_, i) => `${at}/candidates/${i}`)];
  const fields = [...(causes as readonly AnyCause[]), ...learning.causes.map(({ cause }) => cause), ...marks];
  const conditionFields = [...new Set(fields.map(({ field }): string => field))];
  const asked = [question, ...candidates].map((each, i) => {
    const where = places[i] as string;
    const known = i === 0 ? conditionFields : [...conditionFields, ...TEST_FIELDS];
    return [where, onlyFields(where, each, known)] as const;
  });
  const fit = storedFit(`${at}/knowledge`, knowledge, asked, learning);
  for (const [where, conditions] of asked) refuseUntaught(where, conditions, knowledge, learning);
  // The question comes first, then the candidates.
  const rowOf = (i: number): ModelRow => {
    const read = fit.asked[i] as (typeof fit.asked)[number];
    const row = typeof read === "string" ? read : fit.model.question(read);
    if (typeof row === "string")
      refuse(places[i] as string, "place-in-model", noPlaceText, { reason: row }, undefined);
    return row;
  };
  const { row: wanted } = rowOf(0);
  const untaught = untaughtCauses(at, fit, knowledge);
  const { variance } = fit.regression.along(wanted);
  const { baseline, noise } = knowledge.prior;
  const ranked = candidates.map((candidate, i) => {
    const where = places[i + 1] as string;
    const found = rowOf(i + 1);
    const predictedS = Math.exp(fit.logTime(found));
    const { timeS = predictedS, outcomeLogSd } = candidate;
    positive(where, timeS, 1e9, "timeS", "/timeS");
    if (outcomeLogSd !== undefined) positive(where, outcomeLogSd, 3, undefined, "/outcomeLogSd");
    const row = outcomeLogSd === undefined ? seenByEye(fit, found.row) : found.row;
    const planned = { row, off: Math.log(predictedS / timeS), outcomeLogSd };
    const left = untaught.filter(({ numbers }) => !touches(found.row, numbers));
    const before = left.reduce((sum, { more }) => sum + more, variance + wanted.beside);
    const expectedLogSd = expectedSpread(fit.regression, { row: wanted, variance: before }, planned, noise);
    const made = { candidate, expectedLogSd, timeS, minutes: timeS / 60 };
    if (candidate.volumeMl === undefined) return made;
    const volumeMl = positive(where, candidate.volumeMl, 1e6, "volumeMl", "/volumeMl");
    const dilution = candidate.dilution ?? baseline.dilution ?? "stock";
    return { ...made, stockMl: volumeMl * Math.exp(logConcentration(readDilution("", dilution))) };
  });
  return ranked.sort((a, b) => a.expectedLogSd - b.expectedLogSd);
}

/** The row of a test that is judged by the eye that judged the runs. */
function seenByEye({ model }: NotebookFit, row: Row): Row {
  const { parameter, slope } = ONE_EYE;
  const known = model.numbers.some((one) => one.parameter === parameter);
  return known
    ? { ...row, slopes: [...row.slopes, ONE_EYE] }
    : { ...row, beside: row.beside + slope * slope };
}

/**
 * Refuses a change of which no run can teach anything, as another gradient: no test would make it better
 * known.
 */
function refuseUntaught(
  where: string,
  conditions: Readonly<Record<string, unknown>>,
  { prior }: LearnedKnowledge,
  learning: Learning,
): void {
  const known = prior.baseline as unknown as Readonly<Record<string, unknown>>;
  const values = learning.causes.map(({ cause }) => cause.field);
  for (const { field, start } of causes as readonly AnyCause[]) {
    const given = conditions[field];
    const unchanged = given === undefined || given === known[field] || given === start;
    if (unchanged || values.includes(field)) continue;
    refuse(`${where}/${field}`, "known-field", knownFieldText, { values }, field, "not-one-of");
  }
}

/** A cause of the question that no run has taught. */
interface Untaught {
  readonly numbers: ReadonlySet<string>;
  /**
   * variance of ln(time) under its law as it is, beyond that of its numbers: a table spreads in its own way
   */
  readonly more: number;
}

/**
 * The causes of the question that no run has taught: they keep the spread of their laws until a test bears on
 * them.
 */
function untaughtCauses(
  at: string,
  { ground, asked: [read], model, fitted }: NotebookFit,
  { prior }: LearnedKnowledge,
): readonly Untaught[] {
  if (read === undefined || typeof read === "string") return [];
  const laws = prior.laws as Readonly<Record<string, unknown>>;
  return ground.parts.flatMap(({ cause, from }, place): readonly Untaught[] => {
    const to = read.sides[place];
    if (to === undefined || to === from) return [];
    const own = model.numbers.filter((one) => one.cause === cause.name);
    const numbers = new Set(own.map(({ parameter }) => parameter));
    if (fitted.some(({ row }) => touches(row, numbers))) return [];
    const law: unknown =
      laws[cause.law] === undefined
        ? cause.generic
        : cause.check(`${at}/knowledge/prior/laws/${cause.law}`, laws[cause.law]);
    const row = model.part(place, to);
    const sds = new Map(own.map(({ parameter, sd }) => [parameter, sd]));
    const known = row.slopes.reduce(
      (sum, { parameter, slope }) => sum + (slope * (sds.get(parameter) ?? 0)) ** 2,
      row.beside,
    );
    return [{ numbers, more: logSdOf(cause.effect(law, from, to)) ** 2 - known }];
  });
}

const touches = ({ slopes }: Row, numbers: ReadonlySet<string>): boolean =>
  slopes.some(({ parameter, slope }) => slope !== 0 && numbers.has(parameter));
