/*
 * The English sentences of the limits that `compensate` judges too, apart from the others of the bath, so
 * that an app that only compensates does not carry those.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { digits } from "../core/digits.js";

export const limitSentences: Pick<CautionSentences, "age-unknown" | "bath-past-keeping" | "bath-too-slow"> = {
  "age-unknown": ({ severity, limit, actual }) =>
    `The bath is ${digits(actual, 4)} h old. Its life and keeping are unknown, and no general rule goes ` +
    `beyond ${digits(limit)} h. ` +
    (severity === "stop" ? `Nobody knows whether it still works. Mix fresh.` : `Mix fresh or test it.`),
  "bath-past-keeping": ({ limit }) =>
    `The bath is older than it keeps in this storage, ${digits(limit)} h. Mix fresh.`,
  "bath-too-slow": ({ limit, actual }) =>
    `The bath needs ${digits(actual, 2)} times the time of a fresh one, more than ${digits(limit)} times. ` +
    `Mix fresh.`,
};
