/*
 * Room: learning. Knowledge that comes back from storage: checked, and worked out anew from its prior and its
 * runs. All the rest of it is made of those two, and storage may have spoilt it.
 */
import { arrayOf, inRange, plainObject, wrongValue } from "../core/guards.js";
import { fitKnowledge } from "./fit.js";
import { learnableLaws, type LearnableLaws } from "./learnableLaws.js";
import { rowMaker, type ModelRow } from "./model.js";
import { entriesOf, type Entry } from "./notebook.js";
import type { LearnedKnowledge, Parameter } from "./types.js";

/** Checks that stored knowledge is of the schema that this version reads, and has a prior and runs. */
export function storedKnowledge(where: string, knowledge: unknown): void {
  const { schema, prior, runs } = plainObject(where, knowledge);
  if (typeof schema === "number" && schema > 1)
    wrongValue(`${where}/schema`, "1 (a newer version wrote it)", schema);
  inRange(`${where}/schema`, schema, 1, 1);
  plainObject(`${where}/prior`, prior);
  arrayOf(`${where}/runs`, runs, 0);
}

/** The entries of stored knowledge, checked. */
export function storedEntries(where: string, knowledge: LearnedKnowledge): readonly Entry[] {
  storedKnowledge(where, knowledge);
  return entriesOf(`${where}/runs`, knowledge.runs);
}

/** Stored knowledge as a model that can be asked. */
export interface StoredModel {
  readonly now: LearnedKnowledge;
  /** the row of some conditions, or the reason why there is none */
  readonly toRow: ReturnType<typeof rowMaker>;
  /** the laws in the form in which they can be learned */
  readonly laws: LearnableLaws;
  /** ln of the time that the knowledge gives for a row, time in s */
  readonly logTime: (row: ModelRow) => number;
}

/** The model that the prior and the runs of stored knowledge make. */
export function storedModel(where: string, knowledge: LearnedKnowledge): StoredModel {
  const entries = storedEntries(where, knowledge);
  const now = fitKnowledge(where, knowledge.prior, entries);
  const { baseline, parameters } = now;
  const strength = (parameters[6] as Parameter).value;
  const laws = learnableLaws(where, now, baseline.temperatureC);
  return {
    now,
    laws,
    toRow: rowMaker(where, baseline, laws),
    logTime: ({ log, slopes }) => Math.log(baseline.timeS) + log + strength * (slopes[6] as number),
  };
}
