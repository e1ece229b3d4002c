/*
 * Steering: a development in progress. What is known of it, and what is to be done.
 */
import type { Caution } from "../core/caution.js";
import type { TimeEstimate } from "../core/estimate.js";
import type { Baseline, Conditions, Knowledge } from "../compensate/types.js";
import type { AppearanceSeen } from "../inspection/appearanceEstimate.js";
import type { DriftVessel } from "../handbook/vessels.js";
import type { ProcessPlan } from "../process/types.js";

/** A reading as it comes: a thermometer that failed gives no number. */
export interface SteeringReading {
  /** clock time, counted from pour-in, s, 0 to 1e7 */
  readonly timeS: number;
  /** the bath, °C; `null`, or whatever a thermometer gives that failed, is no reading */
  readonly temperatureC: number | null | undefined;
  /** the bath was altered on purpose just before, as by warm water */
  readonly changed?: true | undefined;
}

/** How fast a vessel drifts: after `timeConstantS` 63 % of the difference to the surroundings is gone. */
export interface SteeringVessel {
  /** s, above 0 to 1e7 */
  readonly timeConstantS: number;
  /** standard deviation of ln(timeConstantS), 0 to 3 */
  readonly logSd: number;
}

/** What is known of the bath and the thermometer besides the readings. */
export interface SteeringSurroundings {
  /**
   * of the air, or of the water around the vessel, °C, −50 to 100; above 45 it is in doubt, and serves as °F;
   * unknown when left out
   */
  readonly ambientC?: number | undefined;
  /** a vessel of {@link handbookVessel} by name, or its own figures; unknown when left out */
  readonly vessel?: DriftVessel | SteeringVessel | undefined;
  /** standard deviation of one reading, °C, 0.001 to 5; 0.15 when left out, a scale read to half a degree */
  readonly readingSdC?: number | undefined;
}

/** What {@link steer} needs. */
export interface SteerInput extends SteeringSurroundings {
  /** the time that is known, and the conditions it is known for */
  readonly baseline: Baseline;
  /**
   * today's conditions; a number as `temperatureC` is what the bath was mixed to, and helps to judge the
   * readings
   */
  readonly conditions: Conditions;
  /** laws known for this developer and material */
  readonly knowledge?: Knowledge | undefined;
  /** the readings so far, in any order, 1 to 100,000 */
  readonly log: readonly SteeringReading[];
  /** the clock, counted from pour-in, s, 0 to 1e7; the time of the last reading when left out */
  readonly nowS?: number | undefined;
  /** when the image appeared, and the developer's factor; not seen when left out */
  readonly appearance?: AppearanceSeen | undefined;
  /** the plan that is being followed, to be aimed anew */
  readonly plan?: ProcessPlan | undefined;
  /**
   * the step that the time was shown to before the pour-in, s, 1 to 300, as `roundEstimate` gave it: the plan
   * then ends where {@link steeringGoal} does; on the second when left out
   */
  readonly stepS?: number | undefined;
}

/**
 * The moments of a run as the work that is done by then: how long a bath that stays at `referenceC` would
 * take for it, s. On this scale the goal stays in its place while its clock time moves.
 */
export interface EquivalentWork {
  /**
   * `conditions.temperatureC` where it is a number, else that of the known time, °C; above 45 it is in
   * doubt, and serves as °F
   */
  readonly referenceC: number;
  /** by now */
  readonly nowS: number;
  /** how long such a bath takes by the known time alone */
  readonly dueS: number;
  /** by the moment `total.timeS`: `dueS`, unless the image's appearance says otherwise */
  readonly timeS: number;
  /** by the moment `total.lowS` */
  readonly lowS: number;
  /** by the moment `total.highS` */
  readonly highS: number;
}

/** What {@link steer} answers. */
export interface SteerAnswer {
  /** the clock that all this holds for, s from pour-in */
  readonly nowS: number;
  /** from pour-in to drained: median and 90 % interval, s */
  readonly total: TimeEstimate;
  /** the same from now on, never below 0 */
  readonly remaining: TimeEstimate;
  /** the same moments, and now, as work done: the length of a scale whose labels are clock times */
  readonly equivalent: EquivalentWork;
  /** what the image's appearance alone asks for, from pour-in, s; missing where none was seen */
  readonly seen?: TimeEstimate | undefined;
  /** `"pour-out"` once no more is left than draining takes */
  readonly action: "continue" | "pour-out";
  /** whether the newest reading is believed as it was given, and so are the surroundings */
  readonly trusted: boolean;
  /**
   * a caution of severity `"stop"` about the time is in the way: do not go by it. One about a reading is not
   * meant, nor `target-passed`: then pour out
   */
  readonly refused: boolean;
  /** the plan, aimed anew, where one was given */
  readonly plan?: ProcessPlan | undefined;
  /** gravest first: doubts about readings, what `compensate` finds unwise; paths point into what was given */
  readonly cautions: readonly Caution[];
}
