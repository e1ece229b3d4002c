/*
 * Module: quantities. The English of the rules that its texts may break.
 */
import type { InputWanted } from "../core/errorRules.js";

export const below60Text: InputWanted<"below-60"> = () => "a time with minutes and seconds below 60";

export const sidesText: InputWanted<"sides-at-most"> = ({ max }) =>
  `a size with sides above 0 and at most ${max} cm`;

export const notAfterText: InputWanted<"not-after"> = ({ today }) => `at most today, ${today}`;
