/*
 * What is known on a day: as its file says, or as notes beside it have taught.
 */
import {
  compensate,
  learn,
  predict,
  startKnowledge,
  type Baseline,
  type Compensation,
  type Conditions,
  type Knowledge,
  type LearnedKnowledge,
} from "../index.js";
import { REPEAT_LOG_SD } from "../core/estimate.js";
import { readDay, type Day } from "./day.js";
import type { Document } from "./document.js";
import { placed } from "./fault.js";
import { inNotes, type Notes } from "./notes.js";
import { judgedBy, withLife } from "./ofDeveloper.js";
import type { Words } from "./words.js";

/** A day with what is known on it. */
export interface KnownDay extends Day {
  /** the known time and the laws, learned where there are notes */
  readonly known: Baseline;
  readonly knowledge: Knowledge;
  /** what the make-up of the bath says of a time under some conditions */
  readonly judge: ReturnType<typeof judgedBy>;
  /** the time under some conditions, judged; throws an input error */
  readonly answer: (conditions: Conditions) => Compensation;
}

export function knownDay({ value, notes }: Document, words: Words): KnownDay {
  return knownOf(readDay(value, words), notes);
}

/** What is known on a day that was read. */
export function knownOf(day: Day, notes?: Notes): KnownDay {
  const { baseline } = day;
  const laws = withLife(day);
  if (notes === undefined)
    return judged(day, baseline, laws, (conditions) => compensate(baseline, conditions, laws));
  const start = placed(START_PLACES, () => startOf(baseline, laws));
  const learned = inNotes(notes.file, () => placed([], () => learn(start, notes.runs)));
  return judged(day, learned.baseline, learned, (conditions) => predict(learned, conditions));
}

/** A day whose every answer is judged by what its bath is. */
function judged(
  day: Day,
  known: Baseline,
  knowledge: Knowledge,
  timed: (conditions: Conditions) => Compensation,
): KnownDay {
  const judge = judgedBy(day, known, knowledge);
  const answer = (conditions: Conditions): Compensation => {
    const found = timed(conditions);
    return { ...found, ...judge(found, conditions) };
  };
  return { ...day, known, knowledge, judge, answer };
}

/** The known time of a day is one that was found: it is as sure as any answer takes it. */
function startOf(baseline: Baseline, laws: Knowledge): LearnedKnowledge {
  const { logSd: baseLogSd = REPEAT_LOG_SD } = baseline;
  return startKnowledge(baseline, { baseLogSd, laws });
}

const START_PLACES = [
  ["/baseline/timeS", "/baseline/time"],
  ["/options/baseLogSd", "/baseline/logSd"],
  ["/options/laws", "/laws"],
] as const;
