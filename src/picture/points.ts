/*
 * The points that the curves of a picture rest on: rows of a table, and own runs.
 */
import type { Compensation, Conditions, Knowledge } from "../compensate/types.js";
import { isInputError } from "../core/errors.js";
import type { GrowthLaw } from "../contrast/growth.js";
import { growthOf, readOutcome } from "../learning/readOutcome.js";
import type { DevelopmentRun, LearnedKnowledge } from "../learning/types.js";
import type { PicturePoint } from "./types.js";

/** So many points at most: the last runs of a long notebook. */
const MOST_POINTS = 200;

/** What asks for times: of the known recipe at a temperature, of today's bath, of any bath. */
export interface Askers {
  readonly known: (temperatureC: number) => Compensation;
  readonly bath: (temperatureC: number) => Compensation;
  readonly any: (conditions: Conditions) => Compensation;
}

/** The rows of a table law as the known recipe would take there. */
export function tablePoints({ temperature }: Knowledge, { known }: Askers): readonly PicturePoint[] {
  if (temperature?.kind !== "table") return [];
  return temperature.rows
    .slice(0, MOST_POINTS)
    .map(({ temperatureC }) => ({ temperatureC, timeS: known(temperatureC).timeS, of: "table" }));
}

/** Own runs, each carried over from its bath to today's. */
export function runPoints(at: string, knowledge: Knowledge, askers: Askers): readonly PicturePoint[] {
  const { runs, prior } = knowledge as Partial<LearnedKnowledge>;
  if (!Array.isArray(runs)) return [];
  const growth = prior === undefined ? undefined : growthOf(`${at}/prior`, prior.laws);
  const first = Math.max(0, runs.length - MOST_POINTS);
  return (runs as readonly DevelopmentRun[]).slice(first).flatMap((run, i) => {
    const point = runPoint(`${at}/runs/${first + i}`, run, askers, growth);
    return point === undefined ? [] : [point];
  });
}

/** A run that was only thin or dense tells no time, and neither does one that failed. */
function runPoint(
  at: string,
  run: DevelopmentRun,
  { bath, any }: Askers,
  growth: GrowthLaw | undefined,
): PicturePoint | undefined {
  // What a run holds besides, its id or its date, changes no time.
  const { timeS, outcome, printed, ...conditions } = run;
  const said = readOutcome(at, timeS, outcome, growth);
  if (typeof said === "string" || (said.kind === "window" && !Number.isFinite(said.high - said.low)))
    return undefined;
  const there = timeAt(any, conditions);
  if (there === undefined) return undefined;
  const { temperatureC } = run;
  const rightS = Math.exp(said.log) * (bath(temperatureC).timeS / there);
  return { temperatureC, timeS: rightS, of: printed === true ? "table" : "run" };
}

/** The time under the conditions of a run; none where the known time has nothing to compare them with. */
function timeAt(any: Askers["any"], conditions: Conditions): number | undefined {
  try {
    return any(conditions).timeS;
  } catch (error) {
    if (isInputError(error)) return undefined;
    throw error;
  }
}
