/*
 * Every English sentence about a development in progress: each is made from data alone, so that a catalogue
 * of the same shape says it in another language.
 */
import type { CautionTexts } from "../core/cautionTexts.js";
import { englishCautions } from "./englishCautions.js";

/** A catalogue: all that steering says, in one language. Times are as a clock shows. */
export interface SteeringTexts {
  /** the cautions: how grave they are, and their sentences */
  readonly cautions: CautionTexts;
  /** when the negative is to be out of the bath, counted from when it went in; `lift` in a tray */
  readonly goal: (time: string, lift: boolean) => string;
  /** the same, once it is time */
  readonly now: (lift: boolean) => string;
  /** the first line where the time is refused */
  readonly refused: string;
  /** the goal where it is refused */
  readonly refusedGoal: (time: string, lift: boolean) => string;
  /** the bath does what was planned */
  readonly asPlanned: string;
  /** so far the bath was colder or warmer, as the work done says */
  readonly drifted: (colder: boolean, clock: string, work: string) => string;
  /** what the bath is expected to do by the end */
  readonly drifting: (colder: boolean, clock: string, work: string) => string;
  /** the image appeared, and what that alone asks for */
  readonly appeared: (when: "early" | "late" | "on-time", time: string) => string;
}

/** The English catalogue of steering. */
export const steeringTexts: SteeringTexts = {
  cautions: englishCautions,
  goal: (time, lift) => (lift ? `Lift out ${time} after it went in.` : `Pour out ${time} after the pour-in.`),
  now: (lift) => (lift ? "Lift out now." : "Pour out now."),
  refused: "No time to go by:",
  refusedGoal: (time, lift) =>
    lift
      ? `The laws alone would say: lift out ${time} after it went in.`
      : `The laws alone would say: pour out ${time} after the pour-in.`,
  asPlanned: "The bath is as planned.",
  drifted: (colder, clock, work) =>
    `The bath is ${colder ? "colder" : "warmer"} than planned: ${clock} has done the work of ${work}.`,
  drifting: (colder, clock, work) =>
    `The bath is ${colder ? "colder" : "warmer"} than planned: ${clock} will do the work of ${work}.`,
  appeared: (when, time) =>
    when === "on-time"
      ? "The image came when it was expected."
      : `The image came ${when}: by itself it asks for ${time}.`,
};
