/*
 * The English sentences of steering, each from a code and its data.
 */
import type { Caution, CautionSeverity } from "../core/caution.js";
import type { Quantity } from "../core/quantity.js";

/** What a doubt or a note about the readings says besides its code. */
export interface DoubtData {
  readonly limit?: number;
  readonly actual?: number;
  /** the reading in the other unit, °C */
  readonly celsius?: number;
  /** since when the forecast alone is followed, s from pour-in */
  readonly sinceS?: number;
}

/** The codes of steering's own cautions. */
export type DoubtCode =
  | "maybe-fahrenheit"
  | "maybe-celsius"
  | "reading-missing"
  | "reading-out-of-range"
  | "reading-jump"
  | "thermometer-frozen"
  | "log-order"
  | "bath-changed"
  | "forecast-only"
  | "target-passed";

const shown = (value: number): string => String(Number(value.toFixed(1)));

/** Each code finds the data that its sentence names. */
type Said = Required<DoubtData>;

const SENTENCES: { readonly [Code in DoubtCode]: (says: Said) => string } = {
  "maybe-fahrenheit": ({ actual, celsius }) =>
    `${shown(actual)} °C: is it in °F? ${shown(actual)} °F is ${shown(celsius)} °C.`,
  "maybe-celsius": ({ actual, celsius }) =>
    `${shown(actual)} °C: was a reading in °C converted from °F? Then it was ${shown(celsius)} °C.`,
  "reading-missing": () => "No reading came from the thermometer.",
  "reading-out-of-range": ({ actual }) => `No bath is at ${shown(actual)} °C. Check the thermometer.`,
  "reading-jump": ({ limit, actual }) =>
    `The reading is ${shown(actual)} °C from the others. This bath can have changed by ${shown(limit)} °C ` +
    `at most.`,
  "thermometer-frozen": ({ actual }) =>
    `The readings stay the same, but the bath must have changed by about ${shown(actual)} °C.`,
  "log-order": () => "The readings were put in the order of time.",
  "bath-changed": ({ actual }) => `The bath was changed by ${shown(actual)} °C.`,
  "forecast-only": ({ sinceS }) =>
    `No reading since ${shown(sinceS)} s is believed. The time rests on the forecast alone.`,
  "target-passed": ({ limit, actual }) => `The development is ${shown(actual - limit)} s past its time.`,
};

const QUANTITIES: { readonly [Code in DoubtCode]?: Quantity } = {
  "maybe-fahrenheit": "temperatureC",
  "maybe-celsius": "temperatureC",
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
  says: DoubtData = {},
): Caution {
  const { celsius, sinceS, ...limits } = says;
  const data = celsius === undefined ? (sinceS === undefined ? undefined : { sinceS }) : { celsius };
  const quantity = QUANTITIES[code];
  return {
    code,
    severity,
    message: SENTENCES[code](says as Said),
    ...(path === undefined ? undefined : { path }),
    ...(quantity === undefined ? undefined : { quantity }),
    ...limits,
    ...(data === undefined ? undefined : { data }),
  };
}
