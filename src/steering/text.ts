/*
 * Module: steering. The English sentences of its cautions, each from its data.
 */
import type { Caution, CautionSeverity } from "../core/caution.js";
import { makeCaution, type CautionFigures, type CautionSentences } from "../core/cautionTexts.js";
import { show } from "../core/errors.js";
import { decimals, degrees, degreesApart, digits } from "../core/digits.js";
import type { MeasuredQuantity } from "../core/quantity.js";
import { driftSentences } from "../drift/text.js";
import { lengthText } from "../quantities/lengthText.js";
import { temperatureSentences } from "../temperature/text.js";

/** What a doubt or a note about the readings says besides its code. */
export interface DoubtData {
  readonly limit?: number;
  readonly actual?: number;
  /** what came in place of a reading, where it is text; null where nothing came */
  readonly text?: string | null;
  /** the reading in the other unit, °C */
  readonly celsius?: number;
  /** the reading, °C */
  readonly readC?: number;
  /** what the bath was mixed to, °C, where no other reading speaks against it */
  readonly mixedC?: number;
  /** when the reading was taken, s from pour-in */
  readonly atS?: number;
  /** since when the forecast alone is followed, s from pour-in */
  readonly sinceS?: number;
}

/** The codes that only steering gives. */
export type ReadingCautionCode =
  | "maybe-celsius"
  | "reading-missing"
  | "reading-ahead"
  | "reading-out-of-range"
  | "reading-jump"
  | "surroundings-doubted"
  | "thermometer-frozen"
  | "log-order"
  | "bath-changed"
  | "forecast-only";

/** The codes of steering's own cautions. */
export type DoubtCode = ReadingCautionCode | "maybe-fahrenheit" | "target-passed";

/** The sentences about readings. */
export const readingSentences: Pick<CautionSentences, ReadingCautionCode> = {
  "maybe-celsius": ({ actual, data }) =>
    `${digits(actual, 4)} °C: was a reading in °C converted from °F? ` +
    `Then it was ${decimals(data.celsius)} °C.`,
  "reading-missing": ({ data: { text } }) =>
    typeof text === "string"
      ? `The reading ${show(text)} is text, not a number.`
      : "No reading came from the thermometer.",
  "reading-ahead": ({ limit, actual }) =>
    `The reading is of ${lengthText(actual)} after the pour-in, and the clock is at ${lengthText(limit)}.`,
  "reading-out-of-range": ({ actual }, unit) =>
    `No bath is at ${degrees(actual, unit)}. Check the thermometer.`,
  "reading-jump": ({ actual, data: { readC, atS, mixedC } }, unit) =>
    `${degrees(readC, unit)}, read ${lengthText(atS)} after the pour-in, is ` +
    `${degreesApart(actual, unit)} from ` +
    (mixedC === undefined ? "the others" : `the ${degrees(mixedC, unit)} that the bath was mixed to`) +
    `, farther than this bath changes. ${mixedC === undefined ? "Check it." : "Read again."}`,
  "surroundings-doubted": () =>
    "The readings agree with each other, but not with the vessel and the air as told. " +
    "The readings are followed. Check what was said of vessel and air.",
  "thermometer-frozen": ({ actual }, unit) =>
    `The readings stay the same, but the bath must have changed by about ${degreesApart(actual, unit)}.`,
  "log-order": () => "The readings were put in the order of time, one for each moment.",
  "bath-changed": ({ actual }, unit) => `The bath was changed by ${degreesApart(actual, unit)}.`,
  "forecast-only": ({ data }) =>
    `No reading later than ${lengthText(data.sinceS)} after the pour-in is believed. ` +
    "The time rests on the forecast alone.",
};

const SENTENCES: Pick<CautionSentences, DoubtCode> = {
  ...readingSentences,
  "maybe-fahrenheit": temperatureSentences["maybe-fahrenheit"],
  "target-passed": driftSentences["target-passed"],
};

const QUANTITIES: { readonly [Code in DoubtCode]?: MeasuredQuantity } = {
  "maybe-fahrenheit": "temperatureC",
  "maybe-celsius": "temperatureC",
  "reading-ahead": "timeS",
  "reading-out-of-range": "temperatureC",
  "reading-jump": "temperatureDifferenceC",
  "thermometer-frozen": "temperatureDifferenceC",
  "bath-changed": "temperatureDifferenceC",
  "forecast-only": "timeS",
  "target-passed": "timeS",
};

/** Makes a caution of a code and its data. */
export function doubt(
  code: DoubtCode,
  severity: CautionSeverity,
  path: string | undefined,
  { limit, actual, ...named }: DoubtData = {},
): Caution {
  const data = Object.keys(named).length === 0 ? undefined : named;
  const quantity = QUANTITIES[code];
  const figures = {
    ...(path !== undefined && { path }),
    ...(quantity !== undefined && { quantity }),
    ...(limit !== undefined && { limit }),
    ...(actual !== undefined && { actual }),
    ...(data !== undefined && { data }),
  };
  return makeCaution(SENTENCES, code, severity, figures as CautionFigures<DoubtCode>);
}
