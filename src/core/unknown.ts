/*
 * What a person says of which nothing is known.
 */
import type { CautionSentences } from "./cautionTexts.js";

/** Whether text says that nothing is known: "unknown", "?", "unbekannt". */
export const isUnknown = (text: unknown): boolean =>
  typeof text === "string" && /^(?:\?+|(?:un|not )known|(?:un|nicht )bekannt)$/i.test(text.trim());

export const unknownAgeSentence: Pick<CautionSentences, "age-unknown"> = {
  "age-unknown": () =>
    "Nothing is known of the age of this bath. The time does not count it. " +
    "Test the bath with a scrap first, or mix fresh.",
};
