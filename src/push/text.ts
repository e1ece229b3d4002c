/*
 * Module: push. The English sentences of its cautions, each from its data.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { digits } from "../core/digits.js";

/** The sentence of each caution of this module. */
export const pushSentences: Pick<
  CautionSentences,
  "push-far" | "push-shadows" | "push-untaught" | "pull-far" | "push-and-contrast"
> = {
  "push-far": ({ limit }) =>
    `Beyond a push of ${digits(limit)} stops published times hardly exist, and the shadows stay empty.`,
  "push-shadows": ({ data }) =>
    `A push lifts the middle tones. The shadows gain at most ${digits(data.shadowStops, 2)} of a stop.`,
  "push-untaught": ({ limit, actual }) =>
    `Of ${digits(actual)} stops your runs say nothing: they end at ${digits(limit)}. ` +
    "From there the time goes on as in print.",
  "pull-far": ({ limit }) => `A pull beyond ${digits(-limit)} stops leaves a flat negative.`,
  "push-and-contrast": () =>
    "A push changes the contrast already. Another contrast beside it counts the same twice. Leave out one.",
};
