/*
 * Module: bath. The English sentences of its cautions, each from its data. Those of use and age alone are
 * with their causes.
 */
import { sayer, type CautionSentences, type Sayer } from "../core/cautionTexts.js";
import { decimals, digits, isFigure } from "../core/digits.js";
import { defaultLawSentence } from "../core/text.js";
import type { InputWanted } from "../core/errorRules.js";

/** Codes of the cautions that this module writes. */
export type BathCautionCode =
  | "bath-slow"
  | "bath-past-agent"
  | "bath-capacity-reached"
  | "too-little-stock"
  | "thin-layer"
  | "default-law";

/** The sentence of each caution of this module. */
export const bathSentences: Pick<CautionSentences, BathCautionCode> = {
  ...defaultLawSentence,
  "bath-slow": ({ actual }) =>
    `The bath needs ${isFigure(actual) ? decimals((actual - 1) * 100, 0) : "?"} % more time ` +
    `than a fresh one.`,
  "bath-past-agent": ({ limit, actual }) =>
    `This would bring the bath to ${digits(actual, 4)} cm² in each litre. ` +
    `At ${digits(limit, 4)} all its agent is used up. Use more bath.`,
  "bath-capacity-reached": ({ limit, actual }) =>
    `This brings the bath to ${digits(actual, 4)} cm² in each litre. It can do ${digits(limit, 4)}. ` +
    `Use more bath.`,
  "too-little-stock": ({ limit, actual }) =>
    `The bath holds ${decimals(actual)} ml of stock. The least for this area is ${decimals(limit)} ml. ` +
    `Use more bath or dilute less.`,
  "thin-layer": ({ limit, actual, data }) =>
    `The bath covers the dish with ${digits(actual)} ml for each cm². ` +
    `At least ${digits(limit)} are needed, ${digits(data.leastMl)} ml in all.`,
};

/** A caution about a bath, with its sentence. */
export const say: Sayer<BathCautionCode> = /* @__PURE__ */ sayer(bathSentences);

export const heldText: InputWanted<"below-held"> = ({ below }) => `less than the bath holds (${below} ml)`;

export const familyText: InputWanted<"family-or-least"> = ({ values }) =>
  `one of ${values.join(", ")}, unless leastMlPerRoll is given`;
