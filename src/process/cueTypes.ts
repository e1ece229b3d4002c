/*
 * Module: process. What a plan asks for at a moment: the cues of its steps, all plain data.
 */
import type { ProcessMovement } from "../handbook/process.js";
import type { Sensitization } from "../inspection/safelightCautions.js";

/** What there is to do. */
export type CueAction =
  | "pour-in"
  | "tap"
  | "agitate"
  | "stand"
  | "pour-out"
  | "rinse"
  | "check-clear"
  | "fill"
  | "run-water"
  | "change-water"
  | "hang-up"
  | "light-off"
  | "light-on"
  | "top-up"
  | "temper";

/** What the sentence of a cue names besides its own fields. Which are there depends on `do`. */
export interface CueData {
  /** check-clear: the clearing time, s */
  readonly clearingS?: number | undefined;
  /** temper: the temperature to reach, °C */
  readonly temperatureC?: number | undefined;
  /** top-up: the volume to replace, ml */
  readonly volumeMl?: number | undefined;
  /** pour-in: how many go into a tray one by one; missing where there is one */
  readonly pieces?: number | undefined;
  /** light-off: paper, where the input does not say what light it sees; hang-up: a plate, to be stood up */
  readonly material?: "paper" | "plate" | undefined;
  /** light-off, light-on, check-clear: what light the material sees, where the input says it */
  readonly sensitization?: Sensitization | undefined;
}

/**
 * Something to do at a moment of the plan. One with a length runs for `durationS`; one without is a moment,
 * which {@link planAt} shows for a second.
 */
export interface PlanCue {
  /** seconds from the start of the plan */
  readonly atS: number;
  /** s, above 0 */
  readonly durationS?: number | undefined;
  /** what is to be done */
  readonly do: CueAction;
  /** agitate, rinse: how the bath is moved */
  readonly movement?: ProcessMovement | undefined;
  /** agitate: how often, where it is counted and not timed */
  readonly count?: number | undefined;
  /** the same in plain English, which may be reworded in any release */
  readonly text: string;
  /** the figures that the sentence names */
  readonly data?: CueData | undefined;
}
