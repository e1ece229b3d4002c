/*
 * Every English sentence of an evening, beside those of its plans.
 */
import type { BrewMaterial } from "../brew/brewCapacity.js";
import { formatTime } from "../quantities/formatTime.js";
import { planTexts, type PlanTexts } from "./planTexts.js";

/** A catalogue: all that an evening of several plates says, in one language. */
export interface EveningTexts extends PlanTexts {
  /** what a plate is called: its number from 1, and its name where it has one */
  readonly plate: (material: BrewMaterial, number: number, name: string | undefined) => string;
  /** the line that it begins with */
  readonly begins: (plate: string, startS: number) => string;
  /** behind its development: the interval, each end as a clock shows it */
  readonly between: (low: string, high: string) => string;
  /** where the next one begins during a step of this one, which is named */
  readonly during: (next: string, step: string) => string;
  /** where there is time until the next one */
  readonly until: (next: string, waitS: number) => string;
  /** before the cautions that only some have: from the first to the last of a row of them */
  readonly fromTo: (first: string, last: string) => string;
  /** before what there is to stop for */
  readonly unplanned: (plate: string) => string;
  /** in the place of a time that no clock shows */
  readonly months: string;
}

const NAMES: Readonly<Record<BrewMaterial, string>> = { film: "Film", plate: "Plate", paper: "Sheet" };

/** The evening in English. */
export const eveningTexts: EveningTexts = {
  ...planTexts,
  plate: (material, number, name) => `${NAMES[material]} ${number}${name === undefined ? "" : ` (${name})`}`,
  begins: (plate, startS) => `${formatTime(startS)} ${plate} begins.`,
  between: (low, high) => `with 90 % certainty between ${low} and ${high}`,
  during: (next, step) => `${next} begins during this step: ${step}.`,
  until: (next, waitS) => `${formatTime(waitS)} until ${next} begins.`,
  fromTo: (first, last) => `${first} to ${last}`,
  unplanned: (plate) => `${plate} is not planned, nor any after it.`,
  months: "months",
};
