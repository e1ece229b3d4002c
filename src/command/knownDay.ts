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
import { inNotes } from "./notes.js";
import type { Words } from "./words.js";

/** A day with what is known on it. */
export interface KnownDay extends Day {
  /** the known time and the laws, learned where there are notes */
  readonly known: Baseline;
  readonly knowledge: Knowledge;
  /** the time under some conditions; throws an input error */
  answer(conditions: Conditions): Compensation;
}

export function knownDay({ value, notes }: Document, words: Words): KnownDay {
  const day = readDay(value, words);
  const { baseline, laws } = day;
  if (notes === undefined)
    return {
      ...day,
      known: baseline,
      knowledge: laws,
      answer: (conditions) => compensate(baseline, conditions, laws),
    };
  const start = placed(START_PLACES, () => startOf(day));
  const learned = inNotes(notes.file, () => placed([], () => learn(start, notes.runs)));
  return {
    ...day,
    known: learned.baseline,
    knowledge: learned,
    answer: (conditions) => predict(learned, conditions),
  };
}

/** The known time of a day is one that was found: it is as sure as any answer takes it. */
function startOf({ baseline, laws }: Day): LearnedKnowledge {
  const { logSd: baseLogSd = REPEAT_LOG_SD } = baseline;
  return startKnowledge(baseline, { baseLogSd, laws });
}

const START_PLACES = [
  ["/baseline/timeS", "/baseline/time"],
  ["/options/baseLogSd", "/baseline/logSd"],
  ["/options/laws", "/laws"],
] as const;
