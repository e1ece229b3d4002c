/*
 * Module: dilution. The English of the rule that a fitted law may break.
 */
import type { InputWanted } from "../core/errorRules.js";

export const exponentText: InputWanted<"exponent-at-most"> = ({ max }) =>
  `such that the exponent is at most ${max}`;
