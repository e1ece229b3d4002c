/*
 * Learned knowledge whose figures may be in another unit: its runs and its starting time.
 */
import { maybeMinutes } from "../compensate/outcomeCautions.js";
import type { Caution } from "../core/caution.js";
import { fahrenheitCautions } from "../temperature/temperatureCautions.js";
import { oddRuns } from "./oddRuns.js";
import { storedEntries } from "./stored.js";
import type { LearnedKnowledge } from "./types.js";

/** Cautions about checked knowledge that may be in another unit, with paths from `/knowledge`. */
export function oddKnowledge(at: string, knowledge: LearnedKnowledge): readonly Caution[] {
  const { prior } = knowledge;
  const { timeS, temperatureC } = prior.baseline;
  const path = "/knowledge/prior/baseline";
  return [
    ...maybeMinutes(`${path}/timeS`, timeS),
    ...fahrenheitCautions(temperatureC, `${path}/temperatureC`),
    ...oddRuns(at, prior, storedEntries(at, knowledge)),
  ];
}
