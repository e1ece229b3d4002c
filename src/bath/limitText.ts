/*
 * The English sentences of the limits that `compensate` judges too, apart from the others of the bath, so
 * that an app that only compensates does not carry those.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { ageText, digits, isFigure } from "../core/digits.js";
import { unknownAgeSentence } from "../core/unknown.js";

export const limitSentences: Pick<
  CautionSentences,
  "age-unknown" | "bath-past-keeping" | "bath-too-slow" | "bath-well-used"
> = {
  "bath-well-used": ({ limit, actual }) =>
    `The bath has developed ${digits(actual, 4)} cm² in each litre. Its capacity is unknown. ` +
    `In practice a litre takes ${digits(limit, 4)} cm² of film. Mix fresh.`,
  "age-unknown": (facts, unit) => {
    const { severity, limit, actual } = facts;
    if (!isFigure(actual)) return unknownAgeSentence["age-unknown"](facts, unit);
    return (
      `The bath is ${ageText(actual)} old. Its life and keeping are unknown. What it loses beyond ` +
      `${ageText(limit)} is a guess. ` +
      (severity === "stop" ? `Nobody knows whether it still works. Mix fresh.` : `Mix fresh or test it.`)
    );
  },
  "bath-past-keeping": ({ limit }) =>
    `The bath is older than it keeps in this storage, ${ageText(limit)}. Mix fresh.`,
  "bath-too-slow": ({ limit, actual }) =>
    `The bath needs ${digits(actual, 2)} times the time of a fresh one, more than ${digits(limit)} times. ` +
    `Mix fresh.`,
};
