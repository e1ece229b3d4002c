import { agitationInterval } from "../agitation/agitation.js";
import { formatDilution } from "../dilution/formatDilution.js";
import { logConcentration, readDilution } from "../dilution/dilution.js";
import { TOO_FAR } from "./model.js";
import { readOutcome } from "./readOutcome.js";
import type { Said } from "./reading.js";
import { derived, storedFit } from "./stored.js";
import type { LearnedKnowledge } from "./types.js";

/**
 * One run as one flat row: text, numbers and `null` for what is not there, so that any table or plot takes
 * it.
 */
export interface TidyRun {
  readonly run: number;
  readonly id: string | null;
  readonly date: string | null;
  readonly timeS: number;
  readonly temperatureC: number;
  readonly dilution: string | null;
  /** share of stock in the bath, 0 to 1 */
  readonly concentration: number | null;
  /** s between agitations, 0 for continuous; `null` when not noted, and for stand */
  readonly agitationEveryS: number | null;
  readonly usedCm2PerL: number | null;
  readonly ageH: number | null;
  readonly outcome: string;
  /** the time that would have been right by the outcome, s, and its spread in ln(time) */
  readonly rightS: number | null;
  readonly logSd: number | null;
  /** the time that the knowledge now gives for the run's conditions, s */
  readonly fittedS: number | null;
  /** ln(rightS/fittedS) */
  readonly logResidual: number | null;
  /** 0 for a run that is not fitted, below 2/3 for one that is doubted, else 1 */
  readonly weight: number;
  readonly reason: string | null;
  readonly note: string | null;
}

/**
 * The runs of some knowledge as flat rows, for a table or a plot: what was done, what was right, what the
 * knowledge says now.
 *
 * @param knowledge - from `learn`
 * @returns one row a run, in the order of `knowledge.runs`, all with the same fields
 * @throws TypeError or RangeError when the knowledge is none, or a newer version wrote it
 *
 * @remarks The knowledge is worked out anew from its prior and its runs, so that figures spoilt in storage do
 * no harm. A run has no fitted time when too far from the baseline for the laws.
 *
 * @example
 * ```ts
 * const start = startKnowledge({ timeS: 510, temperatureC: 20 });
 * const outcome = { kind: "judged", timeRatio: 0.9 };
 * const [row] = tidyRuns(learn(start, [{ timeS: 600, temperatureC: 20, outcome }]));
 * row?.rightS // => 540
 * row?.fittedS // => 533.8
 * ```
 */
export function tidyRuns(knowledge: LearnedKnowledge): readonly TidyRun[] {
  const { now } = derived("tidyRuns/knowledge", knowledge);
  const { ground, model, logTime } = storedFit("tidyRuns/knowledge", now);
  return now.runs.map((run, i) => {
    // The runs were fitted a moment ago: nothing is refused here any more.
    const outcome = readOutcome("", run.timeS, run.outcome);
    const read = ground.read("", run);
    const row = typeof read === "string" ? read : model.run(read);
    const { dilution, agitation } = run;
    const diluted = dilution === undefined ? null : readDilution("", dilution);
    const [right, logSd] = typeof outcome === "string" ? [NaN, NaN] : valueOf(outcome);
    const aside = now.setAside.find((each) => each.run === i);
    const fitted = typeof row === "string" || aside?.reason === TOO_FAR ? NaN : logTime(row);
    return {
      run: i,
      id: run.id ?? null,
      date: run.date ?? null,
      timeS: run.timeS,
      temperatureC: run.temperatureC,
      dilution: diluted && formatDilution(diluted),
      concentration: diluted && Math.exp(logConcentration(diluted)),
      agitationEveryS: (agitation && agitationInterval("", agitation)) ?? null,
      usedCm2PerL: run.usedCm2PerL ?? null,
      ageH: run.ageH ?? null,
      outcome: run.outcome.kind,
      rightS: finite(Math.exp(right)),
      logSd: finite(logSd),
      fittedS: finite(Math.exp(fitted)),
      logResidual: finite(right - fitted),
      weight: 1,
      reason: null,
      ...aside,
      note: run.note ?? (run.outcome as { readonly note?: string }).note ?? null,
    };
  });
}

/**
 * The middle of what an outcome says of ln(right time), and its spread; a window has that of a flat chance
 * beside.
 */
function valueOf(said: Said): readonly [log: number, logSd: number] {
  if (said.kind === "value") return [said.log, said.sd];
  return [said.log, Math.hypot(said.sd, (said.high - said.low) / Math.sqrt(12))];
}

/** A number as it is, and nothing for one that could not be worked out or is past all numbers. */
function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
