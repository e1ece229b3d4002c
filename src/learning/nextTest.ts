import { arrayOf, plainObject, positive, refuse } from "../core/guards.js";
import { logSdOf } from "../core/cause.js";
import { logConcentration, readDilution } from "../dilution/dilution.js";
import type { Model, ModelRow } from "./model.js";
import { eyeLogSd, trusted } from "./outcome.js";
import { dot } from "./posterior.js";
import { storedModel } from "./stored.js";
import type { LearnedKnowledge, Parameter, TestCandidate } from "./types.js";

/** A test, and what it would be worth and cost. */
export interface RankedTest<Candidate extends TestCandidate = TestCandidate> {
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
 * `outcomeLogSd` (above 0 to 3) and `volumeMl` of bath; what is left out is as in the baseline
 * @param question - the conditions of the negative to come
 * @returns the candidates in order of the expected spread, with what each costs; those of one spread stay in
 * their order
 * @throws TypeError or RangeError for knowledge and conditions as `learn` does, and a RangeError for a
 * candidate or a question without a row in the model
 *
 * @remarks The knowledge is worked out anew from its prior and its runs, so that figures spoilt in storage do
 * no harm. In closed form: with c the covariance of the numbers, q and x the rows of question and candidate
 * and s² the variance of the outcome, the variance after is q·c·q − (q·c·x)²/(x·c·x + s²). Added is what laws
 * spread beside their numbers: single times about a power of dilution; and a table, or the age of a bath of
 * which nothing is known, until a test bears on it. The spread does not depend on what the test will say. A
 * time far from the right one is harder to judge: a quarter of the correction is added to s, as for a judged
 * run. The best for its cost is for the caller to weigh: sort anew by gain for each minute or millilitre.
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
  question: Omit<TestCandidate, "timeS" | "outcomeLogSd" | "volumeMl">,
): readonly RankedTest<Candidate>[] {
  const { now, model, logTime } = storedModel("nextTest/knowledge", knowledge);
  const { numbers } = model;
  const { baseline, parameters, scatter } = now;
  const { correlation } = now.joint;
  arrayOf("nextTest/candidates", candidates, 0);
  const rowOf = (at: string, conditions: unknown): ModelRow => {
    const row = model.row(at, plainObject(at, conditions));
    if (typeof row === "string") refuse(at, `has no place in the model: ${row}`, conditions);
    return row;
  };
  const scaled = (row: ModelRow): readonly number[] =>
    row.slopes.map((slope, j) => slope * (parameters[j] as Parameter).sd);
  const asked = scaled(rowOf("nextTest/question", question));
  const correlated = (slopes: readonly number[]): readonly number[] =>
    correlation.map((row) => dot(slopes, row));
  const onto = correlated(asked);
  const before = dot(asked, onto);
  const spreads = besideNumbers("nextTest/question", model, now, question, asked);

  const ranked = candidates.map((candidate, i) => {
    const at = `nextTest/candidates/${i}`;
    const row = rowOf(at, candidate);
    const slopes = scaled(row);
    const predictedS = Math.exp(logTime(row));
    const { timeS = predictedS } = candidate;
    positive(at, timeS, 1e9, "timeS", "/timeS");
    const { outcomeLogSd = eyeLogSd(Math.log(timeS / predictedS)) } = candidate;
    positive(at, outcomeLogSd, 3, undefined, "/outcomeLogSd");
    const own = dot(slopes, correlated(slopes));
    const stated = now.prior.noise === "stated";
    const read = trusted(trusted(outcomeLogSd, stated) * scatter, stated);
    const told = (cause: string): boolean =>
      numbers.some((each, j) => each.cause === cause && slopes[j] !== 0);
    const beside = spreads.reduce((sum, one) => sum + (told(one.cause) ? one.taught : one.untaught), 0);
    const expectedLogSd = Math.sqrt(
      Math.max(0, before + beside - dot(slopes, onto) ** 2 / (own + read ** 2)),
    );
    const made = { candidate, expectedLogSd, timeS, minutes: timeS / 60 };
    if (candidate.volumeMl === undefined) return made;
    const volumeMl = positive(at, candidate.volumeMl, 1e6, "volumeMl", "/volumeMl");
    const dilution = candidate.dilution ?? baseline.dilution ?? "stock";
    return { ...made, stockMl: volumeMl * Math.exp(logConcentration(readDilution("", dilution))) };
  });
  return ranked.sort((a, b) => a.expectedLogSd - b.expectedLogSd);
}

/** A cause of the question, and the variance of ln(time) beside its numbers: as it is, and once a test bears on it. */
interface Beside {
  readonly cause: string;
  readonly untaught: number;
  readonly taught: number;
}

/** What the laws spread beside their numbers, for a question whose conditions are checked. */
function besideNumbers(
  at: string,
  { parts, numbers }: Model,
  now: LearnedKnowledge,
  question: object,
  asked: readonly number[],
): readonly Beside[] {
  const laws = now as unknown as Readonly<Record<string, unknown>>;
  const conditions = question as Readonly<Record<string, unknown>>;
  return parts.flatMap(({ cause, law, from }) => {
    const given = conditions[cause.field];
    if (given === undefined || from === undefined) return [];
    const to: unknown = cause.read(`${at}/${cause.field}`, given);
    const own = numbers.reduce(
      (sum, each, j) => sum + (each.cause === cause.name ? (asked[j] as number) ** 2 : 0),
      0,
    );
    const variance = (one: unknown): number => logSdOf(cause.effect(one, from, to)) ** 2 - own;
    const stored: unknown = laws[cause.law];
    const present: unknown = stored === undefined ? cause.generic : cause.check(at, stored);
    return [{ cause: cause.name, untaught: variance(present), taught: variance({ ...law, runs: 1 }) }];
  });
}
