/*
 * Room: process. What the plan of a run is: the vessel, the baths and their order, and the steps that come
 * out, all plain data in seconds from the start of the plan.
 */
import type { Caution } from "../core/caution.js";
import type { Agitation } from "../agitation/agitation.js";
import type { Dilution } from "../dilution/dilution.js";
import type { FixerKind, Vessel, WashMethod } from "../handbook/process.js";

/** What every bath may say of itself. */
export interface BathSetting {
  /** length of the step, s, above 0 to 86400; the handbook's when left out */
  readonly durationS?: number;
  /** °C, 0 to 100; the developer's when left out */
  readonly temperatureC?: number;
  /** for the volumes to measure; ready to use when left out */
  readonly dilution?: Dilution | string;
}

/** A stop bath: weak acid, or plain water. */
export interface StopSetting extends BathSetting {
  readonly kind?: "acid" | "water";
}

/** A fixing bath. */
export interface FixSetting extends BathSetting {
  /** `"rapid"` (ammonium thiosulphate) when left out, `"plain"` is sodium thiosulphate */
  readonly kind?: FixerKind;
  /** clearing time measured with a scrap of the material, s, above 0 to 7200 */
  readonly clearingS?: number;
  /** temperature of that measurement, 0 to 40 °C; this bath's own when left out */
  readonly clearingAtC?: number;
  /**
   * clearing time of the same bath when it was fresh, at this bath's temperature, s; without `clearingS` it
   * is taken where the handbook's is shorter
   */
  readonly freshClearingS?: number;
  /** fixing time in clearing times, 1 to 10 */
  readonly times?: number;
  /** area fixed in it before, cm² per litre; 0 when left out */
  readonly usedCm2PerL?: number;
  /** own or maker's capacity, cm² per litre */
  readonly capacityCm2PerL?: number;
}

/** A wash: `"running"` water, `"soak"` in changed water, or `"changes"` of inverted fillings. */
export interface WashSetting extends BathSetting {
  readonly method?: WashMethod;
}

/** The baths around the developer. What is left out is not done; their order is that of this list. */
export interface ProcessBaths {
  readonly preSoak?: BathSetting;
  readonly stop?: StopSetting;
  readonly fix?: FixSetting;
  readonly clearingAid?: BathSetting;
  readonly wash?: WashSetting;
  readonly wettingAgent?: BathSetting;
}

/** What {@link planProcess} needs to know. */
export interface ProcessInput {
  readonly vessel: Vessel;
  /** development time, s, above 0 to 1e6: `timeS` of `compensate` */
  readonly timeS: number;
  /** temperature of the developer, °C, 0 to 100 */
  readonly temperatureC: number;
  /** volume of each bath, ml, above 0 to 1e6 */
  readonly volumeMl: number;
  /** the vessel's habit when left out */
  readonly agitation?: Agitation;
  /** seconds for pouring out, 0 to 600; the vessel's when left out */
  readonly drainS?: number;
  /**
   * rest of the fresh developer before use, s, 0 to 86400; `true` for the handbook's five minutes; none when
   * left out
   */
  readonly rest?: boolean | number;
  /** dilution of the developer, for the volumes to measure */
  readonly dilution?: Dilution | string;
  /** area of the material, cm², for the capacity of the fixing bath */
  readonly areaCm2?: number;
  /** an iodide-rich or tabular film, which fixes more slowly */
  readonly modernFilm?: boolean;
  /** `"soft"`: a plate or an unhardened film */
  readonly emulsion?: "soft" | "hardened";
  /** stop, fix, wash and wetting agent when left out */
  readonly baths?: ProcessBaths;
  /** greatest step between two baths, °C, above 0 to 20; 2.8 (5 °F), and 5 for the wash, when left out */
  readonly maxStepC?: number;
}

/** Something to do at a moment of the plan, in seconds from its start. */
export interface Cue {
  readonly atS: number;
  readonly text: string;
}

/** The names of the steps, in their order. */
export type StepName =
  "rest" | "pre-soak" | "develop" | "stop" | "fix" | "clearing-aid" | "wash" | "wetting-agent";

/** One step: it starts where the one before it ends. */
export interface Step {
  readonly name: StepName;
  readonly startS: number;
  readonly durationS: number;
  readonly temperatureC: number;
  readonly cues: readonly Cue[];
  readonly sources: readonly string[];
}

/** Something to have ready. */
export interface Material {
  readonly name: string;
  readonly volumeMl: number;
  readonly stockMl?: number;
  readonly waterMl?: number;
  readonly stocksMl?: readonly number[];
}

/** A run from the rest of the bath to the wetting agent. */
export interface ProcessPlan {
  readonly steps: readonly Step[];
  readonly totalS: number;
  readonly materials: readonly Material[];
  readonly cautions: readonly Caution[];
  /** how the development is done, so that it can be replaced in the middle of the run */
  readonly handling: Handling;
}

/** Vessel, agitation and pouring out of a plan. */
export interface Handling {
  readonly vessel: Vessel;
  readonly agitation: Agitation;
  readonly drainS: number;
}
