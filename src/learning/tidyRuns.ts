import { agitationInterval } from "../agitation/agitation.js";
import { formatDilution } from "../dilution/formatDilution.js";
import { logConcentration, readDilution } from "../dilution/dilution.js";
import { TOO_FAR } from "./model.js";
import { growthOf, readOutcome } from "./readOutcome.js";
import { wholeSd, type Said } from "./reading.js";
import { derived, storedFit } from "./stored.js";
import type { LearnedKnowledge, SetAsideReason } from "./types.js";

/**
 * One run as one flat row: text, numbers and `null` for what is not there, so that any table or plot takes
 * it.
 */
export interface TidyRun {
  /** its place in `knowledge.runs` */
  readonly run: number;
  /** its id, if it has one */
  readonly id: string | null;
  /** ISO 8601 date, if it has one */
  readonly date: string | null;
  /** the time given, s */
  readonly timeS: number;
  /** °C */
  readonly temperatureC: number;
  /** the dilution as text */
  readonly dilution: string | null;
  /** share of stock in the bath, 0 to 1 */
  readonly concentration: number | null;
  /** s between agitations, 0 for continuous; `null` when not noted, and for stand */
  readonly agitationEveryS: number | null;
  /** what the bath had developed before, cm²/l */
  readonly usedCm2PerL: number | null;
  /** age of the bath, h */
  readonly ageH: number | null;
  /** the value of the strength of the brew, where the run names one */
  readonly strength: number | null;
  /** how many stops it was pushed, below 0 pulled, where the run says it */
  readonly pushStops: number | null;
  /** the thermometer, if it is named */
  readonly thermometer: string | null;
  /** who made and judged it, if that is named */
  readonly by: string | null;
  /** the bottle or mixing, if it is named */
  readonly batch: string | null;
  /** a row of a printed table */
  readonly printed: boolean;
  /** the kind of outcome */
  readonly outcome: string;
  /**
   * the time that would have been right by the outcome, s; of `thin` and `dense` the nearest such time, and
   * none where the knowledge agrees
   */
  readonly rightS: number | null;
  /** standard deviation of ln(right time) that the outcome leaves; none of `thin` and `dense` */
  readonly logSd: number | null;
  /** the time that the knowledge now gives for the run's conditions, s */
  readonly fittedS: number | null;
  /** ln(rightS/fittedS) */
  readonly logResidual: number | null;
  /** 0 for a run that is not fitted, below 2/3 for one that is doubted, else 1 */
  readonly weight: number;
  /** why, by name, as in `knowledge.setAside` */
  readonly reason: SetAsideReason | null;
  /** text of one's own */
  readonly note: string | null;
}

/**
 * The runs of some knowledge as flat rows, for a table or a plot: what was done, what was right, what the
 * knowledge says now.
 *
 * @param knowledge - from `learn`
 * @returns one row a run, in the order of `knowledge.runs`, all with the same fields
 * @throws TypeError or RangeError for other data than learned knowledge, or when a newer version wrote it
 *
 * @remarks The knowledge is worked out anew from its prior and its runs, so that figures spoilt in storage do
 * no harm. A run has no fitted time when too far from the baseline for the laws.
 *
 * @example
 * ```ts
 * const start = startKnowledge({ timeS: 510, temperatureC: 20 });
 * const outcome: RunOutcome = { kind: "judged", timeRatio: 0.9 };
 * const [row] = tidyRuns(learn(start, [{ timeS: 600, temperatureC: 20, outcome }]));
 * row?.rightS // => 540
 * row?.fittedS // => 530.5
 * ```
 */
export function tidyRuns(knowledge: LearnedKnowledge): readonly TidyRun[] {
  const { now } = derived("tidyRuns/knowledge", knowledge);
  const { ground, model, logTime } = storedFit("tidyRuns/knowledge", now);
  const asides = new Map(now.setAside.map((aside) => [aside.run, aside]));
  return now.runs.map((run, i) => {
    // The runs were fitted a moment ago: nothing is refused here any more.
    const outcome = readOutcome("", run.timeS, run.outcome, growthOf("", now.prior.laws));
    const read = ground.read("", run);
    const row = typeof read === "string" ? read : model.run(read);
    const { dilution, agitation } = run;
    const diluted = dilution === undefined ? null : readDilution("", dilution);
    const aside = asides.get(i);
    const fitted = typeof row === "string" || aside?.reason === TOO_FAR ? NaN : logTime(row);
    const [right, logSd] = typeof outcome === "string" ? [NaN, NaN] : valueOf(outcome, fitted);
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
      strength: run.strength?.value ?? null,
      pushStops: run.pushStops ?? null,
      thermometer: run.thermometer ?? null,
      by: run.by ?? null,
      batch: run.batch ?? null,
      printed: run.printed === true,
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
 * beside. A window without an end says nothing against what lies in it, and otherwise its edge is nearest.
 */
function valueOf(said: Said, fitted: number): readonly [log: number, logSd: number] {
  if (said.kind === "value") return [said.log, wholeSd(said)];
  const { low, high } = said;
  if (!Number.isFinite(high - low)) return [fitted < low ? low : fitted > high ? high : NaN, NaN];
  return [said.log, Math.hypot(wholeSd(said), (said.high - said.low) / Math.sqrt(12))];
}

/** A number as it is, and nothing for one that could not be worked out or is past all numbers. */
function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
