/*
 * Module: drift. The English of the rules that a log, a drift or a course of temperature may break.
 */
import type { InputRules, InputWanted } from "../core/errorRules.js";

export const reachText: InputWanted<"within-reach"> = () => "within reach of a bath poured in at 0 to 100 °C";

export const freezingText: InputWanted<"not-freezing"> = ({ timeS }) =>
  `such that the bath does not freeze within ${timeS} s`;

export const smoothText: InputWanted<"smooth"> = ({ steps }) =>
  `smooth enough: no end was found in ${steps} steps`;

export const reachedText: InputWanted<"reached-by"> = ({ max }) => `reached by clock time ${max} s`;

const UNTOLD: Readonly<Record<InputRules["tells-time-constant"]["why"], string>> = {
  "straight": "its readings do not bend toward the air",
  "uncertain": "its standard error is larger than itself",
  "too-long": "its time constant is longer than a clock shows",
  "outside": "its curve leaves 0 to 100 °C",
};

export const untoldText: InputWanted<"tells-time-constant"> = ({ why }) =>
  `a log that tells the time constant, but ${UNTOLD[why]}`;
