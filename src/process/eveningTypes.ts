/*
 * Module: process. Several plates from one bath: what goes in and what comes out.
 */
import type { BrewMaterial } from "../brew/brewCapacity.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "../compensate/types.js";
import type { ProcessInput, ProcessPlan } from "./types.js";

/** One plate, sheet or film of an evening, or several that lie in the bath at once. */
export interface EveningPlateInput {
  /** cm², above 0 to 1e6 */
  readonly areaCm2: number;
  /** what it is called, told back */
  readonly name?: string | undefined;
  /** what it is; the evening's when left out */
  readonly material?: BrewMaterial | undefined;
  /**
   * its own known time, in the place of the evening's. The bath stays one: today's temperature, dilution and
   * agitation are the evening's all the same
   */
  readonly baseline?: Baseline | undefined;
  /**
   * what differs from the evening's conditions: another temperature, another gradient. Use and age are
   * counted by the evening, and refused here
   */
  readonly conditions?: Omit<Conditions, "usedCm2PerL" | "ageH"> | undefined;
}

type FromPlan = Omit<
  ProcessInput,
  "timeS" | "answer" | "temperatureC" | "volumeMl" | "areaCm2" | "agitation" | "dilution" | "material"
>;

/** What {@link planEvening} needs to know: a known time, today, the plates in their order, and the run. */
export interface EveningInput extends FromPlan {
  /** the known time and its conditions */
  readonly baseline: Baseline;
  /**
   * those at the start of the evening; use and age rise from there, and a bath that drifts goes on from the
   * first pour-in
   */
  readonly conditions: Conditions;
  /** `"film"` in a tank or drum and `"plate"` in a tray when left out */
  readonly material?: BrewMaterial | undefined;
  /** laws that go before the generic ones */
  readonly knowledge?: Knowledge | undefined;
  /** 1 to 1000 */
  readonly plates: readonly EveningPlateInput[];
  /** volume of each bath, ml, above 0 to 1e6 */
  readonly volumeMl: number;
  /** from the moment that the vessel is free to the next plate, s, 0 to 86400; 0 when left out */
  readonly betweenS?: number | undefined;
  /** fresh developer that replaces as much of the bath before each later plate, ml, up to `volumeMl` */
  readonly topUpMl?: number | undefined;
}

/** One plate of an evening. */
export interface EveningPlate {
  /** its place in the list, from 0 */
  readonly plate: number;
  /** its name; missing where it has none */
  readonly name?: string | undefined;
  /** what it counts as */
  readonly material: BrewMaterial;
  /** start of its plan, s from the start of the evening */
  readonly startS: number;
  /** use and age of the developer at pour-in */
  readonly usedCm2PerL: number;
  /** age of the bath at pour-in, h */
  readonly ageH: number;
  /** use of the fixing bath before it; missing without one */
  readonly fixUsedCm2PerL?: number | undefined;
  /** its compensated time */
  readonly answer: Compensation;
  /** its plan */
  readonly plan: ProcessPlan;
}

/** Several plates from one bath. */
export interface EveningPlan {
  /** those that can be developed, in their order */
  readonly plates: readonly EveningPlate[];
  /** the first that has a caution of severity `"stop"`; missing when all can be developed */
  readonly stopped?: EveningPlate | undefined;
  /** s until the last plan ends */
  readonly totalS: number;
}
