/*
 * Module: temperature. The English sentences of its cautions, each from its data.
 */
import type { CautionSentences } from "../core/cautionTexts.js";
import { decimals, degrees, degreesBetween, digits } from "../core/digits.js";
import type { InputWanted } from "../core/errorRules.js";

/** The codes of the cautions that this module gives. */
export type TemperatureCautionCode =
  | "maybe-fahrenheit"
  | "temperature-limit"
  | "temperature-unusual"
  | "hydroquinone-cold"
  | "soft-emulsion-warm";

/** The sentence of each caution of this module. */
export const temperatureSentences: Pick<CautionSentences, TemperatureCautionCode> = {
  // The figure as it was given, whatever unit people see.
  "maybe-fahrenheit": ({ actual, data }) =>
    `${digits(actual, 4)} °C: is it in °F? ${digits(actual, 4)} °F is ${decimals(data.celsius)} °C.`,
  "temperature-limit": ({ data: { low, high } }, unit) =>
    `No development in print goes below ${degrees(low, unit)} or above ${degrees(high, unit)}. ` +
    `Gelatin and developer fail there.`,
  "temperature-unusual": ({ limit, actual, data: { low, high, unnamed } }, unit) =>
    actual < limit
      ? `Below the usual ${degreesBetween(low, "to", high, unit)}: times get long and uncertain.` +
        (unnamed === undefined ? "" : ` If the developer holds ${unnamed}, more time does not help.`)
      : `Above the usual ${degreesBetween(low, "to", high, unit)}: gelatin softens and times get short.`,
  "hydroquinone-cold": ({ severity, limit }, unit) =>
    severity === "stop"
      ? `Hydroquinone practically stops below about ${degrees(limit, unit)}: more time does not help.`
      : `Hydroquinone weakens below about ${degrees(limit, unit)}: expect less contrast.`,
  "soft-emulsion-warm": ({ severity, limit }, unit) =>
    severity === "stop"
      ? `Soft or unhardened gelatin tears above ${degrees(limit, unit)}. Cool the bath.`
      : `Soft or unhardened gelatin swells above ${degrees(limit, unit)} and may tear. Cool the bath.`,
};

export const energyText: InputWanted<"energy-at-most"> = ({ max }) =>
  `such that the activation energy is at most ${max} kJ/mol`;

export const notFahrenheitText: InputWanted<"not-fahrenheit"> = ({ max }) =>
  `at most ${max} °C (is it in °F?)`;
