/*
 * Module: use. The English of its caution and of the rule that a text may break, each from its data.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { digits } from "../core/digits.js";
import type { InputWanted } from "../core/errorRules.js";

export const pastCapacitySentence: Pick<CautionSentences, "bath-past-capacity"> = {
  "bath-past-capacity": ({ limit, actual }) =>
    `The bath has developed ${digits(actual, 4)} cm² in each litre. It can do ${digits(limit, 4)}. ` +
    `Mix fresh.`,
};

export const volumeNeededText: InputWanted<"volume-needed"> = () =>
  'a use such as "2 rolls/l" or "3 9x12cm/l", or in notes "3 plates 9x12" beside a column Volume';
