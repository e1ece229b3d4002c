/*
 * Module: dilution. The English of the rules that a text and a fitted law may break.
 */
import type { InputWanted } from "../core/errorRules.js";

export const exponentText: InputWanted<"exponent-at-most"> = ({ max }) =>
  `such that the exponent is at most ${max}`;

export const partsOrTotalText: InputWanted<"parts-or-total"> = ({ readings: [plus = "", total] }) => {
  const [parts = "", water] = plus.split("+");
  const named = `${parts} ${parts === "1" ? "part" : "parts"}`;
  const both = total === undefined ? "" : ` or "${total}" (${named} of ${water} in all)`;
  return `"${plus}" (${named} and ${water} of water)${both}`;
};
