/*
 * The main job. What goes in: a known time with its conditions, today's conditions, and what is known of the
 * laws. What comes out: a time, its interval, and the reasons.
 */
import type { Agitation, AgitationLaw } from "../agitation/agitation.js";
import type { AgeLaw } from "../age/law.js";
import type { CauseName } from "../causes.js";
import type { GrowthLaw } from "../contrast/growth.js";
import type { Caution } from "../core/caution.js";
import type { TimeEstimate } from "../core/estimate.js";
import type { Basis, FactorRow } from "../core/term.js";
import type { Dilution, DilutionLaw } from "../dilution/dilution.js";
import type { TemperatureLog } from "../drift/log.js";
import type { NewtonDrift } from "../drift/newtonDrift.js";
import type { InteractionLaw } from "../interaction/law.js";
import type { PairName } from "../pairs.js";
import type { PushLaw } from "../push/law.js";
import type { Strength, StrengthCorrection } from "../strength/cause.js";
import type { TemperatureLaw } from "../temperature/law.js";
import type { UseLaw } from "../use/useFactor.js";
import type { JointSpread } from "./joint.js";
import type { Mark } from "./marks.js";

/** A development time that is known to be right, and the conditions it is known for. */
export interface Baseline {
  /** s, above 0 to 1e6 */
  readonly timeS: number;
  /** °C, 0 to 100 */
  readonly temperatureC: number;
  /** as text, `"1+9"`, or parts */
  readonly dilution?: Dilution | string | undefined;
  /** how it was moved */
  readonly agitation?: Agitation | undefined;
  /** area the bath had already developed, cm² per litre; 0 when left out */
  readonly usedCm2PerL?: number | undefined;
  /** age of the bath, h; 0 when left out */
  readonly ageH?: number | undefined;
  /** the gradient that the known time gave, above 0 */
  readonly gamma?: number | undefined;
  /** how well the time itself is known: the standard deviation of ln(timeS), 0 to 3; 0.04 when left out */
  readonly logSd?: number | undefined;
  /** how many own runs the time was learned from */
  readonly runs?: number | undefined;
  /** what a learned time rested on before the first run */
  readonly before?: Basis | undefined;
  /** false where the runs have hardly moved the time: it still rests on what was there before */
  readonly moved?: boolean | undefined;
  /** where the time was found */
  readonly sources?: readonly string[] | undefined;
  /** the developer holds hydroquinone, which stops working in the cold */
  readonly hydroquinone?: boolean | undefined;
  /** `"soft"`: a plate or unhardened film, whose gelatin takes less heat */
  readonly emulsion?: "soft" | "hardened" | undefined;
}

/** Today's conditions. What is left out is as in the baseline. */
export interface Conditions {
  /**
   * °C, 0 to 100; a log counts from its first reading and its last is held; a drift is a forecast from
   * pour-in
   */
  readonly temperatureC?: number | TemperatureLog | NewtonDrift | undefined;
  /** as text, `"1+9"`, or parts */
  readonly dilution?: Dilution | string | undefined;
  /** how it is moved */
  readonly agitation?: Agitation | undefined;
  /** area the bath has already developed, cm² per litre */
  readonly usedCm2PerL?: number | undefined;
  /** age of the bath, h */
  readonly ageH?: number | undefined;
  /** the wanted gradient, above 0 and below the limit of the growth law */
  readonly gamma?: number | undefined;
  /** stops of push, −3 to 5, against the known time; below 0 is a pull */
  readonly pushStops?: number | undefined;
  /** the strength of today's brew against the one the time is known for: what `brewStrength` returns */
  readonly strength?: Strength | undefined;
  /** the thermometer that today's temperature is read from, by the name that runs give it */
  readonly thermometer?: string | undefined;
  /** who judges the negative, by the name that runs give */
  readonly by?: string | undefined;
  /** the bottle or mixing that today's bath comes from, by the name that runs give it */
  readonly batch?: string | undefined;
}

/**
 * The laws that are known for this developer and material: own fits, a maker's table, or a published law such
 * as `handbookTemperatureLaw("metol-hydroquinone")`. A wide generic law is used for each that is left out.
 */
export interface Knowledge {
  /** how time goes with temperature */
  readonly temperature?: TemperatureLaw | undefined;
  /** how time goes with dilution */
  readonly dilution?: DilutionLaw | undefined;
  /** how time goes with agitation */
  readonly agitation?: AgitationLaw | undefined;
  /** how time goes with what the bath has developed */
  readonly use?: UseLaw | undefined;
  /** how time goes with the age of the bath */
  readonly age?: AgeLaw | undefined;
  /** a learned correction to the strength of brews */
  readonly strength?: StrengthCorrection | undefined;
  /** how the gradient grows with time */
  readonly growth?: GrowthLaw | undefined;
  /** how time goes with push and pull */
  readonly push?: PushLaw | undefined;
  /** how temperature and dilution act together */
  readonly interaction?: InteractionLaw | undefined;
  /**
   * how far one batch lies from the usual in ln(time), a standard deviation from 0 to 3. Where it is given
   * each bath is mixed anew: a question that names no `batch` is about a further one
   */
  readonly batchLogSd?: number | undefined;
  /**
   * the correlations of what was learned together; made by `learn`, counted for laws that carry its `runs`
   */
  readonly joint?: JointSpread | undefined;
}

/** What a row of an answer is about: a cause, a pair, a mark of the question, or the known time itself. */
export type FactorCause = CauseName | PairName | Mark["name"] | "baseline";

/** A row of an answer: one cause of a change of development time, by its name. */
export type Factor = FactorRow<FactorCause>;

/**
 * A compensated time: median and 90 % interval in seconds, unrounded, one row per cause, and what is unwise.
 */
export interface Compensation extends TimeEstimate {
  /** a caution of severity `"stop"` is in the way: do not commit a negative to this time */
  readonly refused: boolean;
  /** one row for the baseline and for each cause that the conditions name */
  readonly factors: readonly Factor[];
  /** what is unwise, gravest first */
  readonly cautions: readonly Caution[];
}
