/*
 * Module: process. The English sentence of an evening's own caution, apart from those of a plan, so that an
 * app without evenings does not carry it.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { degrees, isFigure } from "../core/digits.js";

/** The sentence of each caution that only an evening gives. */
export const eveningSentences: Pick<CautionSentences, "bath-drifted"> = {
  "bath-drifted": ({ data: { fromC, toC } }, unit) =>
    `The bath has gone from ${degrees(fromC, unit)} to ${degrees(toC, unit)}. The time counts that. ` +
    `If you ${isFigure(fromC) && fromC < toC ? "cool" : "warm"} it again, plan with that temperature.`,
};
