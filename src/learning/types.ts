/*
 * From runs to knowledge: what a run is, how it can be judged, and what the knowledge holds.
 * All of it is plain JSON.
 */
import type { Agitation } from "../agitation/agitation.js";
import type { JointSpread } from "../compensate/joint.js";
import type { Baseline, Conditions, Knowledge } from "../compensate/types.js";
import type { Caution } from "../core/caution.js";
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
 * - `"steps"`: `steps` steps over (above 0) or under, as stops or N steps, to a quarter step; one step is a
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
export type Outcome =
  | { readonly kind: "good"; readonly logSd?: number | undefined }
  | { readonly kind: "thin" }
  | { readonly kind: "dense" }
  | { readonly kind: "judged"; readonly timeRatio: number; readonly logSd?: number | undefined }
  | {
      readonly kind: "steps";
      readonly steps: number;
      readonly perStep?: number | undefined;
      readonly logSd?: number | undefined;
    }
  | {
      readonly kind: "gamma";
      readonly gamma: number;
      readonly wanted: number;
      readonly sd?: number | undefined;
      readonly logSd?: number | undefined;
    }
  | {
      readonly kind: "density";
      readonly density: number;
      readonly wanted: number;
      readonly sd?: number | undefined;
      readonly logSd?: number | undefined;
    }
  | {
      readonly kind: "appearance";
      readonly appearanceS: number;
      readonly factor: number;
      readonly logSd?: number | undefined;
    }
  | { readonly kind: "failed"; readonly note?: string | undefined }
  | { readonly kind: "fogged"; readonly note?: string | undefined };

/**
 * One development: the conditions, the time given, and how it came out. What is left out is as in the
 * baseline.
 */
export interface Run {
  /** s, above 0 to 1e6 */
  readonly timeS: number;
  /** °C, 0 to 100 */
  readonly temperatureC: number;
  readonly dilution?: Dilution | string | undefined;
  readonly agitation?: Agitation | undefined;
  readonly usedCm2PerL?: number | undefined;
  readonly ageH?: number | undefined;
  readonly strength?: Strength | undefined;
  /** with which thermometer: each has an offset of its own; none for the usual one */
  readonly thermometer?: string | undefined;
  /** who made and judged it; none for the owner of the notebook */
  readonly by?: string | undefined;
  /** a row of a printed table, not a development of one's own */
  readonly printed?: true | undefined;
  readonly outcome: Outcome;
  /** tells two runs apart that are otherwise equal; an id stands for one run */
  readonly id?: string | undefined;
  /** ISO 8601 date, "2024-05-01": the base time may drift from one date to the next */
  readonly date?: string | undefined;
  readonly note?: string | undefined;
}

/**
 * What the knowledge stood on before the first run. Given again, with the runs, it gives the same knowledge.
 */
export interface Prior {
  readonly baseline: Baseline;
  readonly baseLogSd: number;
  readonly laws: Knowledge;
  readonly noise: "estimated" | "stated";
}

/**
 * One number of the model: its value, its standard deviation now and before the first run, and the runs that
 * bear on it; none on what was known exactly.
 */
export interface Parameter {
  /** its name, unique in the model */
  readonly parameter: string;
  /**
   * the cause or pair whose law it belongs to; `"baseline"`, `"drift"`, `"thermometer"`, `"by"`, `"printed"`
   */
  readonly cause: string;
  readonly value: number;
  readonly sd: number;
  readonly priorSd: number;
  readonly runs: number;
}

/** A run that was kept and not fitted, or that counts for less: `run` is its place in `knowledge.runs`. */
export interface SetAside {
  readonly run: number;
  readonly reason: string;
  /** 0 when it was not fitted */
  readonly weight: number;
}

/**
 * What is known, after the runs. Its laws serve `compensate` as they are; `baseline` is the learned base time
 * with its spread.
 *
 * @remarks `scatter` is by how much the runs scatter more than their outcomes say, 1 when they keep to it.
 */
export interface LearnedKnowledge extends Knowledge {
  readonly schema: typeof KNOWLEDGE_VERSION;
  readonly prior: Prior;
  readonly runs: readonly Run[];
  readonly baseline: Baseline;
  readonly parameters: readonly Parameter[];
  readonly joint: JointSpread;
  readonly scatter: number;
  readonly setAside: readonly SetAside[];
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
