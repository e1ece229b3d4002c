import { agitationInterval } from "../agitation/agitation.js";
import { WIDEST_LOG_SD } from "../core/estimate.js";
import { formatDilution } from "../dilution/formatDilution.js";
import { logConcentration, readDilution } from "../dilution/dilution.js";
import { readOutcome } from "./outcome.js";
import { storedModel } from "./stored.js";
import type { LearnedKnowledge } from "./types.js";

/** One run as one flat row: text, numbers and `null` for what is not there, so that any table or plot takes it. */
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
 * The runs of some knowledge as flat rows, for a table or a plot: what was done, what was right, what the knowledge says now.
 *
 * @param knowledge - from `learn`
 * @returns one row a run, in the order of `knowledge.runs`, all with the same fields
 * @throws TypeError or RangeError when the knowledge is none, or a newer version wrote it
 *
 * @remarks The knowledge is worked out anew from its prior and its runs, so that figures spoilt in storage do no harm. A run has no fitted time
 * when it lies too far from the baseline for the laws.
 *
 * @example
 * ```ts
 * const start = startKnowledge({ timeS: 510, temperatureC: 20 });
 * const [row] = tidyRuns(learn(start, [{ timeS: 600, temperatureC: 20, outcome: { kind: "judged", timeRatio: 0.9 } }]));
 * row?.rightS // => 540
 * row?.fittedS // => 533.6
 * ```
 */
export function tidyRuns(knowledge: LearnedKnowledge): readonly TidyRun[] {
  const { now, toRow, logTime } = storedModel("tidyRuns: knowledge", knowledge);
  return now.runs.map((run, i) => {
    const at = `tidyRuns: knowledge.runs[${i}]`;
    const outcome = readOutcome(at, run);
    const row = toRow(at, run);
    const dilution = run.dilution === undefined ? null : readDilution(`${at}.dilution`, run.dilution);
    const right = typeof outcome === "string" ? null : outcome;
    const log = typeof row === "string" ? NaN : logTime(row);
    // No row, or a time that no clock shows.
    const fitted = log < WIDEST_LOG_SD ? log : null;
    return {
      run: i,
      id: run.id ?? null,
      date: run.date ?? null,
      timeS: run.timeS,
      temperatureC: run.temperatureC,
      dilution: dilution && formatDilution(dilution),
      concentration: dilution && Math.exp(logConcentration(dilution)),
      agitationEveryS: run.agitation === undefined ? null : (agitationInterval(`${at}.agitation`, run.agitation) ?? null),
      usedCm2PerL: run.usedCm2PerL ?? null,
      ageH: run.ageH ?? null,
      outcome: run.outcome.kind,
      rightS: right && Math.exp(right[0]),
      logSd: right && right[1],
      fittedS: fitted === null ? null : Math.exp(fitted),
      logResidual: right && fitted !== null ? right[0] - fitted : null,
      weight: 1,
      reason: null,
      ...now.setAside.find((aside) => aside.run === i),
      note: run.note ?? (run.outcome as { readonly note?: string }).note ?? null,
    };
  });
}
