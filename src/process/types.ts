/*
 * Module: process. What the plan of a run is: the vessel, the baths and their order, and the steps that come
 * out, all plain data in seconds from the start of the plan.
 */
import type { Caution } from "../core/caution.js";
import type { BrewMaterial } from "../brew/brewCapacity.js";
import type { CapacityBath } from "../bath/capacityOf.js";
import type { Agitation } from "../agitation/agitation.js";
import type { Compensation } from "../compensate/types.js";
import type { Dilution } from "../dilution/dilution.js";
import type {
  FixerKind,
  ProcessMovement,
  PaperBase,
  StopKind,
  ProcessVessel,
  WashMethod,
} from "../handbook/process.js";
import type { Sensitization } from "../inspection/safelightCautions.js";
import type { PlanCue } from "./cueTypes.js";

export type { CueAction, CueData, PlanCue } from "./cueTypes.js";

/** What every bath may say of itself. */
export interface BathSetting {
  /** length of the step, s, above 0 to 86400; the handbook's when left out */
  readonly durationS?: number | undefined;
  /** °C, 0 to 100; the developer's when left out */
  readonly temperatureC?: number | undefined;
  /** for the volumes to measure; ready to use when left out */
  readonly dilution?: Dilution | string | undefined;
}

/** A stop bath: weak acid, or plain water. */
export interface StopSetting extends BathSetting {
  /** `"acid"` when left out, but `"water"` before plain fixer and with a soft emulsion, such as a plate */
  readonly kind?: StopKind | undefined;
}

/** A fixing bath. */
export interface FixSetting extends BathSetting {
  /** `"rapid"` (ammonium thiosulphate) when left out, `"plain"` is sodium thiosulphate */
  readonly kind?: FixerKind | undefined;
  /**
   * clearing time measured with a scrap of the material, s, above 0 to 7200. Paper is not seen to clear:
   * there it is one of film, and says with `freshClearingS` whether the bath is spent
   */
  readonly clearingS?: number | undefined;
  /** temperature of that measurement, 0 to 40 °C; this bath's own when left out */
  readonly clearingAtC?: number | undefined;
  /**
   * clearing time of the same bath when it was fresh, at this bath's temperature, s; without `clearingS` it
   * is taken where the handbook's is shorter. When left out, the handbook's is what a spent bath is known by
   */
  readonly freshClearingS?: number | undefined;
  /** fixing time in clearing times, 1 to 10; not read of paper */
  readonly times?: number | undefined;
  /** area fixed in it before, cm² per litre; 0 when left out */
  readonly usedCm2PerL?: number | undefined;
  /** own or maker's capacity, cm² per litre */
  readonly capacityCm2PerL?: number | undefined;
}

/** A wash: `"running"` water, `"soak"` in changed water, or `"changes"` of inverted fillings. */
export interface WashSetting extends BathSetting {
  /** `"running"` when left out */
  readonly method?: WashMethod | undefined;
}

/** The baths around the developer. What is left out is not done; their order is that of this list. */
export interface ProcessBaths {
  /** water before the developer */
  readonly preSoak?: BathSetting | undefined;
  /** the bath that ends development */
  readonly stop?: StopSetting | undefined;
  /** the fixing bath */
  readonly fix?: FixSetting | undefined;
  /** the bath that shortens the wash */
  readonly clearingAid?: BathSetting | undefined;
  /** the wash */
  readonly wash?: WashSetting | undefined;
  /** the last bath before drying */
  readonly wettingAgent?: BathSetting | undefined;
}

/** What is known of the material, for fixing, washing and light. */
export interface ProcessMaterialFacts {
  /** `"film"` when left out */
  readonly material?: BrewMaterial | undefined;
  /** of a paper: `"fibre"` when left out, which washes longest */
  readonly paperBase?: PaperBase | undefined;
  /** an iodide-rich or tabular film, which fixes more slowly */
  readonly iodideRich?: boolean | undefined;
  /** `"soft"`: a plate or an unhardened film; of a plate `"soft"` when left out */
  readonly emulsion?: "soft" | "hardened" | undefined;
  /**
   * whether the developer holds carbonate, such as soda: acid then makes gas in the gelatin. A brew in
   * `developer` says it itself
   */
  readonly carbonate?: boolean | undefined;
  /** area of the material, cm², above 0 to 1e6: for the capacity of the developer and of the fixing bath */
  readonly areaCm2?: number | undefined;
}

/** What is known of the developing bath, for how much it can develop: see `bathCapacity`. */
export type PlannedDeveloper = Pick<
  CapacityBath,
  "brew" | "use" | "family" | "leastMlPerRoll" | "capacityCm2PerL" | "usedCm2PerL" | "dishCm2"
>;

/** What {@link planProcess} needs to know: the vessel, and `timeS` with the temperature, or `answer`. */
export interface ProcessInput extends ProcessMaterialFacts {
  /** what holds the bath */
  readonly vessel: ProcessVessel;
  /** how the bath is moved; the vessel's usual movement when left out */
  readonly movement?: ProcessMovement | undefined;
  /** sheets or plates in the vessel, 1 to 1000; 1 when left out: several sheets in a tray are shuffled */
  readonly pieces?: number | undefined;
  /** development time, s, above 0 to 1e6 */
  readonly timeS?: number | undefined;
  /** what `compensate` returned, in the place of `timeS`; its cautions are not repeated */
  readonly answer?: Compensation | undefined;
  /** temperature of the developer, °C, 0 to 100; that of the answer at pour-in when left out */
  readonly temperatureC?: number | undefined;
  /** the temperature to bring the developer to first, °C, 0 to 100; no word of it when left out */
  readonly startTemperatureC?: number | undefined;
  /** volume of each bath, ml, above 0 to 1e6; no volumes to measure when left out */
  readonly volumeMl?: number | undefined;
  /** fresh developer that replaces as much of the used bath before this run, ml, above 0 to `volumeMl` */
  readonly topUpMl?: number | undefined;
  /** that of the answer, else the vessel's habit, when left out */
  readonly agitation?: Agitation | undefined;
  /** seconds for pouring out, 0 to 600; the movement's when left out */
  readonly drainS?: number | undefined;
  /**
   * rest of the fresh developer before use, s, 0 to 86400; `true` for the handbook's five minutes; none when
   * left out
   */
  readonly rest?: boolean | number | undefined;
  /** dilution of the developer, for the volumes to measure; that of the answer when left out */
  readonly dilution?: Dilution | string | undefined;
  /** what the developing bath is, as far as it is known: for how much it can develop */
  readonly developer?: PlannedDeveloper | undefined;
  /**
   * what light the material sees; when left out, material in a tray is kept in the dark until it is fixed,
   * paper under its safelight
   */
  readonly sensitization?: Sensitization | undefined;
  /** stop, fix, wash and wetting agent when left out */
  readonly baths?: ProcessBaths | undefined;
  /** greatest step between two baths, °C, above 0 to 20; 3, and 5 for the wash, when left out */
  readonly maxStepC?: number | undefined;
  /**
   * step to round the length of each step to, s, 0.1 to 3600; one that moves the development by more than
   * 5 % has a caution, from a quarter on a `"stop"`. When left out, what the handbook reckons of
   * fixing and washing goes up to 5 s below ten minutes, to a minute below an hour, then to five minutes, and
   * what the input states stays as it is
   */
  readonly stepS?: number | undefined;
}

/** The names of the steps, in their order. */
export type StepName =
  "rest" | "pre-soak" | "develop" | "stop" | "fix" | "clearing-aid" | "wash" | "wetting-agent";

/** One step: it starts where the one before it ends. */
export interface ProcessStep {
  /** which step it is */
  readonly name: StepName;
  /** seconds from the start of the plan */
  readonly startS: number;
  /** seconds from the start of the plan: the next step's `startS` */
  readonly endS: number;
  /** from pour-in to drained, s */
  readonly durationS: number;
  /** °C */
  readonly temperatureC: number;
  /** in the order of `atS`, all within the step */
  readonly cues: readonly PlanCue[];
  /** what the lengths rest on, where the input does not state them */
  readonly sources: readonly string[];
}

/** What a bath to have ready is called. */
export type ProcessMaterialName =
  | "developer"
  | "pre-soak water"
  | "stop bath"
  | "stop water"
  | "fixing bath"
  | "clearing aid"
  | "wetting agent"
  | "wash water";

/** Something to have ready. */
export interface ProcessMaterial {
  /** which bath it is for */
  readonly name: ProcessMaterialName;
  /** ml; missing where the input has no volume */
  readonly volumeMl?: number | undefined;
  /** as `formatDilution` writes it, where the input states it */
  readonly dilution?: string | undefined;
  /** stock, ml */
  readonly stockMl?: number | undefined;
  /** water, ml */
  readonly waterMl?: number | undefined;
  /** each stock, ml, in the order of the dilution */
  readonly stocksMl?: readonly number[] | undefined;
}

/** A run from the rest of the bath to the wetting agent. */
export interface ProcessPlan {
  /** the steps, in the order in which they are done */
  readonly steps: readonly ProcessStep[];
  /** the sum of the steps' lengths, s */
  readonly totalS: number;
  /** what to have ready */
  readonly materials: readonly ProcessMaterial[];
  /** gravest first; those of the answer are not among them */
  readonly cautions: readonly Caution[];
  /** what holds for every run: gloves, air, the acid of a stop bath, silver, safety data sheets */
  readonly benchNotes: readonly Caution[];
  /** true when the answer has a caution of severity `"stop"`, or is longer than a plan holds */
  readonly timeRefused: boolean;
  /** how the development is done, so that it can be replaced in the middle of the run */
  readonly handling: Handling;
}

/** Vessel, agitation, pouring out and rounding of a plan. */
export interface Handling {
  /** what holds the bath */
  readonly vessel: ProcessVessel;
  /** how the bath is moved */
  readonly movement: ProcessMovement;
  /** how often it is moved */
  readonly agitation: Agitation;
  /** how many sheets or plates lie in a tray; missing where there is one */
  readonly pieces?: number | undefined;
  /** time to pour out, s */
  readonly drainS: number;
  /** missing where the input has none */
  readonly stepS?: number | undefined;
}

/** Where a plan is at a moment. */
export interface PlanMoment {
  /** the step that runs; the last one when the plan is over */
  readonly step: ProcessStep;
  /** all cues that run, in the order in which they began */
  readonly cues: readonly PlanCue[];
  /** the first cue that is still to begin; missing when there is none */
  readonly next?: PlanCue;
  /** s until the step ends */
  readonly leftS: number;
  /** s until the plan ends */
  readonly totalLeftS: number;
  /** true from the end of the plan on */
  readonly over: boolean;
}
