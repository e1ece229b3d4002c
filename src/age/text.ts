/*
 * Module: age. The English of the rule that an age may break.
 */
import type { InputWanted } from "../core/errorRules.js";

export const withinLifeText: InputWanted<"within-life"> = ({ max }) =>
  `at most ${max} h, how long the bath works`;
