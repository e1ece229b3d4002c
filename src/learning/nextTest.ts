import { arrayOf, inRange, plainObject, positive } from "../core/guards.js";
import { logConcentration, readDilution } from "../dilution/dilution.js";
import { learnableLaws } from "./learnableLaws.js";
import { rowMaker, type ModelRow } from "./model.js";
import { learnedStrength, sevenOf, storedKnowledge } from "./notebook.js";
import { EYE_LOG_SD, EYE_SHARE } from "./outcome.js";
import { dot } from "./posterior.js";
import type { LearnedKnowledge, TestCandidate } from "./types.js";

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
 * Which test would help most: for each candidate, how well the time in question will be known after it, best first.
 *
 * @param knowledge - from `startKnowledge` or `learn`
 * @param candidates - tests that could be made: their conditions, each optional, `timeS` to give, `outcomeLogSd` (above 0 to 3) and `volumeMl` of
 * bath; what is left out is as in the baseline
 * @param question - the conditions of the negative to come
 * @returns the candidates in order of the expected spread, with what each costs; those of one spread stay in their order
 * @throws TypeError or RangeError for conditions as `learn` does, and a RangeError for a candidate or a question without a row in the model
 *
 * @remarks In closed form: with c the covariance of the numbers, q and x the rows of question and candidate and s² the variance of the
 * outcome, the variance after is q·c·q − (q·c·x)²/(x·c·x + s²). The spread does not depend on what the test will say. A time far from
 * the right one is harder to judge: a quarter of the correction is added to s, as for a judged run. The best for its cost is for
 * the caller to weigh: sort anew by gain for each minute or millilitre.
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
  storedKnowledge("nextTest: knowledge", knowledge);
  arrayOf("nextTest: candidates", candidates, 0);
  const { baseline, parameters, joint, scatter } = knowledge;
  plainObject("nextTest: knowledge.baseline", baseline);
  const baseS = positive("nextTest: knowledge.baseline.timeS", baseline.timeS, 1e6, " s");
  const square = inRange("nextTest: knowledge.scatter", scatter, 0, 1e6, "") ** 2;
  const toRow = rowMaker("nextTest: knowledge", baseline, learnableLaws("nextTest: knowledge", knowledge, baseline.temperatureC));
  const rowOf = (at: string, conditions: unknown): ModelRow => {
    const row = toRow(at, plainObject(at, conditions));
    if (typeof row === "string") throw new RangeError(`${at} has no place in the model: ${row}`);
    return row;
  };
  // Storage may have lost what the arithmetic below takes for granted.
  const scale = sevenOf("nextTest: knowledge.parameters", parameters).map((each) =>
    inRange("nextTest: knowledge.parameters", plainObject("nextTest: knowledge.parameters", each)["sd"], 0, 1e6, "", ".sd"),
  );
  const correlation = sevenOf("nextTest: knowledge.joint.correlation", plainObject("nextTest: knowledge.joint", joint)["correlation"]).map((line) =>
    sevenOf("nextTest: knowledge.joint.correlation", line).map((each) => inRange("nextTest: knowledge.joint.correlation", each, -1, 1, "")),
  );
  const scaled = (row: ModelRow): readonly number[] => row.slopes.map((slope, j) => slope * (scale[j] as number));
  const asked = scaled(rowOf("nextTest: question", question));
  const onto = correlation.map((row) => dot(asked, row));
  const now = dot(asked, onto);
  const strength = learnedStrength("nextTest: knowledge", parameters);

  const ranked = candidates.map((candidate, i) => {
    const at = `nextTest: candidates[${i}]`;
    const row = rowOf(at, candidate);
    const slopes = scaled(row);
    const predictedS = baseS * Math.exp(row.log + strength * (row.slopes[6] as number));
    const timeS = positive(at, candidate.timeS ?? predictedS, 1e9, " s", ".timeS");
    const byEye = Math.hypot(EYE_LOG_SD, EYE_SHARE * Math.log(timeS / predictedS));
    const outcome = positive(at, candidate.outcomeLogSd ?? byEye, 3, "", ".outcomeLogSd");
    const own = correlation.reduce((sum, line, j) => sum + (slopes[j] as number) * dot(slopes, line), 0);
    const expectedLogSd = Math.sqrt(Math.max(0, now - dot(slopes, onto) ** 2 / (own + outcome * outcome * square)));
    const made = { candidate, expectedLogSd, timeS, minutes: timeS / 60 };
    if (candidate.volumeMl === undefined) return made;
    const volumeMl = positive(at, candidate.volumeMl, 1e6, " ml", ".volumeMl");
    const dilution = candidate.dilution ?? baseline.dilution ?? "stock";
    return { ...made, stockMl: volumeMl * Math.exp(logConcentration(readDilution(`${at}.dilution`, dilution))) };
  });
  return ranked.sort((a, b) => a.expectedLogSd - b.expectedLogSd);
}
