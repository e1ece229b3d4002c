/*
 * Module: compensate. The English sentences of its own cautions, each from its data. Those of the causes and
 * of the bath are with them.
 */
import { ownEntry } from "../core/ownEntry.js";
import type { UnusualReason } from "../core/cautionData.js";
import type { CautionSentences } from "../core/cautionTexts.js";
import { digits } from "../core/digits.js";
import { lengthText } from "../quantities/lengthText.js";
import { placeText } from "../core/errors.js";
import type { InputWanted } from "../core/errorRules.js";

/** The codes of the cautions that this module gives. */
export type CompensateCautionCode =
  | "short-time"
  | "long-time"
  | "wide-interval"
  | "maybe-minutes"
  | "other-baseline"
  | "log-held"
  | "law-unusual";

/** The sentence of each caution of this module. */
export const compensateSentences: Pick<CautionSentences, CompensateCautionCode> = {
  "short-time": ({ limit }) => `Under ${lengthText(limit)} development gets uneven. Cool or dilute the bath.`,
  "long-time": ({ limit }) => `Times over ${lengthText(limit)} are too long. Warm or strengthen the bath.`,
  "wide-interval": () => "The interval is wide. Run a test strip first.",
  "maybe-minutes": ({ actual, data }) =>
    `The ${data.of === "clearing" ? "clearing time" : "time"} is ${digits(actual)} s. Is it in minutes?`,
  "other-baseline": () => "The baseline is not the learned one. The correlations with its time are left out.",
  "log-held": ({ limit, actual }) =>
    `The log ends at ${lengthText(limit)} of ${lengthText(actual)}. Its last reading is held.`,
  "law-unusual": ({ limit, actual, data: { reason, over10C } }) => {
    const [what, unit, meant] = ownEntry(UNUSUAL, reason) ?? ["law"];
    const times = reason === "increase" ? 100 : 1;
    const said = `The ${what} is ${digits(actual * times)}${unit ?? ""}.`;
    if (meant !== undefined) return `${said} Is it in ${meant}?`;
    const which = actual < limit ? "least" : "greatest";
    if (over10C !== undefined)
      return (
        `The ${what} is ${digits(actual)} kJ/mol, ${digits(over10C.actual, 3)} times for 10 °C. ` +
        `The ${which} ever published is ${digits(limit)} kJ/mol, ${digits(over10C.limit, 3)} times.`
      );
    return `${said} The ${which} ever published is ${digits(limit * times)}${unit ?? ""}.`;
  },
};

/** What is unusual, its unit, and the unit that it may be in. */
const UNUSUAL: Readonly<Record<UnusualReason, readonly [what: string, unit?: string, meant?: string]>> = {
  "energy": ["activation energy", " kJ/mol"],
  "maybe-kilocalories": ["activation energy", " kJ/mol", "kcal/mol"],
  "maybe-fahrenheit": ["interval of the ratio", " °C", "°F, which is 10 °C"],
  "exponent": ["exponent of dilution"],
  "increase": ["increase for a roll in a litre", " %"],
  "maybe-percent": ["increase by use", "", "per cent"],
};

export const counterpartText = (path: string): string =>
  `needs ${placeText(path)}: what was it for the known time?`;

export const asLearnedText: InputWanted<"as-learned"> = () => "as learn wrote it: learn again from the runs";
