/*
 * Room: compensate, the main job. What goes in: a known time with its conditions, today's conditions, and
 * what is known of the laws. What comes out: a time, its interval, and the reasons.
 */
import type { Caution } from "../core/caution.js";
import type { TimeEstimate } from "../core/estimate.js";
import type { Factor } from "../core/term.js";
import type { Agitation, AgitationLaw } from "../agitation/agitation.js";
import type { GrowthLaw } from "../contrast/growth.js";
import type { TemperatureForecast, TemperatureLog } from "../drift/log.js";
import type { Dilution, DilutionLaw } from "../dilution/dilution.js";
import type { AgeLaw } from "../age/ageFactor.js";
import type { UseLaw } from "../use/useFactor.js";
import type { TemperatureLaw } from "../temperature/law.js";
import type { JointSpread } from "./jointVariance.js";

/** A development time that is known to be right, and the conditions it is known for. */
export interface Baseline {
  /** s, above 0 to 1e6 */
  readonly timeS: number;
  /** °C, 0 to 100 */
  readonly temperatureC: number;
  readonly dilution?: Dilution | string;
  readonly agitation?: Agitation;
  /** area the bath had already developed, cm² per litre; 0 when left out */
  readonly usedCm2PerL?: number;
  /** age of the bath, h; 0 when left out */
  readonly ageH?: number;
  /** the gradient that the known time gave, above 0 */
  readonly gamma?: number;
  /** how well the time itself is known: the standard deviation of ln(timeS), 0 to 3; 0.04 when left out */
  readonly logSd?: number;
  /** how many own runs the time was learned from */
  readonly runs?: number;
  /** the developer holds hydroquinone, which stops working in the cold */
  readonly hydroquinone?: boolean;
  /** `"soft"`: a plate or unhardened film, whose gelatin stands less heat */
  readonly emulsion?: "soft" | "hardened";
}

/** Today's conditions. What is left out is as in the baseline. */
export interface Conditions {
  /**
   * °C, 0 to 100; a log counts from its first reading and its last is held; a function gives °C for the clock
   * time in s from 0
   */
  readonly temperatureC?: number | TemperatureLog | TemperatureForecast;
  readonly dilution?: Dilution | string;
  readonly agitation?: Agitation;
  readonly usedCm2PerL?: number;
  readonly ageH?: number;
  /** the wanted gradient, above 0 and below the limit of the growth law */
  readonly gamma?: number;
  /**
   * the strength of today's brew against the one the time is known for, as a factor on time; cautions that
   * `brewStrength` put into it are passed on
   */
  readonly strength?: Factor;
}

/**
 * The laws that are known for this developer and material: own fits, a maker's table, or a published law such
 * as `handbookTemperatureLaw("metol-hydroquinone")`. A wide generic law stands in for each that is left out.
 */
export interface Knowledge {
  readonly temperature?: TemperatureLaw;
  readonly dilution?: DilutionLaw;
  readonly agitation?: AgitationLaw;
  readonly use?: UseLaw;
  readonly age?: AgeLaw;
  readonly growth?: GrowthLaw;
  /**
   * how the uncertainties of learned laws hang together; made by `learn`, and counted for laws that carry its
   * `runs`
   */
  readonly joint?: JointSpread;
}

/**
 * A compensated time: median and 90 % interval in seconds, unrounded, one row per cause, and what is unwise
 * about it.
 */
export interface Compensation extends TimeEstimate {
  readonly factors: readonly Factor[];
  readonly cautions: readonly Caution[];
}

/** One cause, worked out: its row and its cautions. */
export interface WorkedTerm {
  readonly factor: Factor;
  readonly cautions: readonly Caution[];
}
