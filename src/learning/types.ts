/*
 * From runs to knowledge: what a run is, how it can be judged, and what the knowledge holds.
 * All of it is plain JSON.
 */
import type { Agitation } from "../agitation/agitation.js";
import type { JointSpread } from "../compensate/joint.js";
import type { Baseline, Conditions, Knowledge } from "../compensate/types.js";
import type { Caution } from "../core/caution.js";
import type { UnfitReason } from "../core/cause.js";
import type { OwnFields } from "../core/ownFields.js";
import type { Strength } from "../strength/cause.js";
import type { Dilution } from "../dilution/dilution.js";

/** The version of stored knowledge that this package writes and reads. */
export const KNOWLEDGE_VERSION = 1;

/**
 * How a run came out, in any of the trade's ways. Good, steps, thin and dense say in which window the right
 * time lies. `logSd`, above 0 to 3, makes a value of any: the standard deviation of ln(right time) that the
 * outcome leaves, everything counted: eye, thermometer, clock, pouring. Below 0.04 it counts as 0.04, and
 * with noise stated below 0.001 as 0.001.
 *
 * - `"good"`: less than half a step off, 0.845 to 1.18 of the right time.
 * - `"judged"`: right would have been timeS × `timeRatio` (above 0 to 100).
 * - `"steps"`: `steps` steps over (above 0) or under, to a quarter step; one step is a
 *   factor of `perStep` on time, 1.05 to 4, 1.4 when left out.
 * - `"thin"`, `"dense"`: more than a quarter step under or over.
 * - `"gamma"`: the gradient measured and the gradient wanted, above 0 to 10; `sd` of the measurement, 0.05
 *   when left out.
 * - `"density"`: the density above base and fog of a patch whose wanted density is known, above 0 to 10; `sd`
 *   0.05 when left out.
 * - `"appearance"`: the image appeared after `appearanceS` and is done at `factor` times that; `timeS` is
 *   then only kept.
 * - `"failed"`, `"fogged"`: kept, not fitted.
 */
export type RunOutcome =
  | {
      readonly kind: "good";
      /** standard deviation of ln(right time) that the outcome leaves, above 0 to 3 */
      readonly logSd?: number | undefined;
    }
  | { readonly kind: "thin" }
  | { readonly kind: "dense" }
  | {
      readonly kind: "judged";
      /** right time over the time given, above 0 to 100 */
      readonly timeRatio: number;
      /** standard deviation of ln(right time) that the outcome leaves, above 0 to 3 */
      readonly logSd?: number | undefined;
    }
  | {
      readonly kind: "steps";
      /** steps over (above 0) or under, to a quarter step */
      readonly steps: number;
      /** factor on time of one step, 1.05 to 4; 1.4 when left out */
      readonly perStep?: number | undefined;
      /** standard deviation of ln(right time) that the outcome leaves, above 0 to 3 */
      readonly logSd?: number | undefined;
    }
  | {
      readonly kind: "gamma";
      /** the gradient that was measured, above 0 to 10 */
      readonly gamma: number;
      /** what was wanted, above 0 to 10 */
      readonly wanted: number;
      /** standard deviation of the measurement; 0.05 when left out */
      readonly sd?: number | undefined;
      /** standard deviation of ln(right time) that the outcome leaves, above 0 to 3 */
      readonly logSd?: number | undefined;
    }
  | {
      readonly kind: "density";
      /** the density that was measured, above base and fog, above 0 to 10 */
      readonly density: number;
      /** what was wanted, above 0 to 10 */
      readonly wanted: number;
      /** standard deviation of the measurement; 0.05 when left out */
      readonly sd?: number | undefined;
      /** standard deviation of ln(right time) that the outcome leaves, above 0 to 3 */
      readonly logSd?: number | undefined;
    }
  | {
      readonly kind: "appearance";
      /** when the image appeared, s */
      readonly appearanceS: number;
      /** whole time over time of appearance */
      readonly factor: number;
      /** standard deviation of ln(right time) that the outcome leaves, above 0 to 3 */
      readonly logSd?: number | undefined;
    }
  | {
      readonly kind: "failed";
      /** what went wrong */
      readonly note?: string | undefined;
    }
  | {
      readonly kind: "fogged";
      /** what went wrong */
      readonly note?: string | undefined;
    };

/**
 * One development: the conditions, the time given, and how it came out. What is left out is as in the
 * baseline. Fields of one's own begin with `x-`.
 */
export interface DevelopmentRun extends OwnFields {
  /** s, above 0 to 1e6 */
  readonly timeS: number;
  /** °C, 0 to 100 */
  readonly temperatureC: number;
  /** as text, `"1+9"`, or parts */
  readonly dilution?: Dilution | string | undefined;
  /** how it was moved */
  readonly agitation?: Agitation | undefined;
  /** what the bath had developed before, cm²/l, 0 to 1e6 */
  readonly usedCm2PerL?: number | undefined;
  /** age of the bath, h, 0 to 1e6 */
  readonly ageH?: number | undefined;
  /** what `brewStrength` returned for the brew of that day */
  readonly strength?: Strength | undefined;
  /** how many stops the film was pushed, −3 to 5; below 0 it was pulled */
  readonly pushStops?: number | undefined;
  /** with which thermometer, to 200 characters: each has an offset of its own; none for the usual one */
  readonly thermometer?: string | undefined;
  /** who made and judged it, to 200 characters; none for the owner of the notebook */
  readonly by?: string | undefined;
  /** out of which bottle or mixing, to 200 characters: each has an offset of its own */
  readonly batch?: string | undefined;
  /** a row of a printed table, not a development of one's own */
  readonly printed?: true | undefined;
  /** how it came out */
  readonly outcome: RunOutcome;
  /** tells two runs apart that are otherwise equal, to 200 characters; an id stands for one run */
  readonly id?: string | undefined;
  /** ISO 8601 date, "2024-05-01": the base time may drift from one date to the next */
  readonly date?: string | undefined;
  /** text of one's own, to 2000 characters */
  readonly note?: string | undefined;
}

/**
 * What the knowledge stood on before the first run. Given again, with the runs, it gives the same knowledge.
 */
export interface KnowledgePrior {
  /** the starting time and its conditions */
  readonly baseline: Baseline;
  /** standard deviation of ln(starting time) */
  readonly baseLogSd: number;
  /** the laws as they were given */
  readonly laws: Knowledge;
  /** whether the scatter of the runs is estimated, or taken as stated */
  readonly noise: "estimated" | "stated";
}

/**
 * One number of the model: its value, its standard deviation now and before the first run, and the runs that
 * bear on it; none on what was known exactly.
 */
export interface LearnedParameter {
  /** its name, unique in the model */
  readonly parameter: string;
  /**
   * the cause or pair whose law it belongs to; `"baseline"`, `"drift"`, `"thermometer"`, `"by"`, `"batch"`,
   * `"printed"`, `"outcome"`, `"session"`
   */
  readonly cause: string;
  /** its value */
  readonly value: number;
  /** its standard deviation after the runs */
  readonly sd: number;
  /** its standard deviation before the first run */
  readonly priorSd: number;
  /** how many runs bear on it */
  readonly runs: number;
}

/** Why a run was not fitted, or counts for less. */
export type SetAsideReason = UnfitReason | "failed" | "fogged" | "past-growth" | "too-far" | "disagrees";

/** A run that was kept and not fitted, or that counts for less: `run` is its place in `knowledge.runs`. */
export interface SetAside {
  /** its place in `knowledge.runs` */
  readonly run: number;
  /** why */
  readonly reason: SetAsideReason;
  /** 0 when it was not fitted */
  readonly weight: number;
}

/**
 * What is known, after the runs. Its laws serve `compensate` as they are; `baseline` is the learned base time
 * with its spread. Fields of one's own begin with `x-`.
 *
 * @remarks `scatter` is by how much the runs scatter more than their outcomes say, 1 when they keep to it.
 */
export interface LearnedKnowledge extends Knowledge, OwnFields {
  /** the version of stored knowledge */
  readonly schema: typeof KNOWLEDGE_VERSION;
  /** what was known before the first run */
  readonly prior: KnowledgePrior;
  /** all runs, also those that were not fitted */
  readonly runs: readonly DevelopmentRun[];
  /** the learned base time with its spread */
  readonly baseline: Baseline;
  /** every number of the model, with its spread before and now */
  readonly parameters: readonly LearnedParameter[];
  readonly joint: JointSpread;
  /** by how much the runs scatter more than their outcomes say, 1 when they keep to it */
  readonly scatter: number;
  /** the runs that were not fitted, or that count for less */
  readonly setAside: readonly SetAside[];
  /** what to mind about the runs and what they gave */
  readonly advice: readonly Caution[];
}

/** A run that could be made: its conditions and what it would cost. */
export interface TestCandidate extends Conditions {
  readonly temperatureC?: number | undefined;
  /** the time to give, s; the predicted time when left out */
  readonly timeS?: number | undefined;
  /**
   * how well the outcome will be read: standard deviation of ln(right time); when left out, an eye will name
   * the nearest half step
   */
  readonly outcomeLogSd?: number | undefined;
  /** bath to be mixed, ml: for the cost in stock */
  readonly volumeMl?: number | undefined;
}
