/*
 * Module: brew. The English of the rules that a brew may break.
 */
import type { InputWanted } from "../core/errorRules.js";

/** What is sold beside the fit ingredients, and why it is refused. */
export type UnfitIngredient = "effervescent-tablet" | "baking-powder";

export const unfitTexts: Readonly<Record<UnfitIngredient, string>> = {
  "effervescent-tablet": "their citric acid uses up the soda",
  "baking-powder": "it holds acid salts and starch",
};

export const unfitText: InputWanted<"fit-for-bath"> = ({ ingredient }) =>
  `fit for a bath: ${unfitTexts[ingredient as UnfitIngredient]}`;

export const labelText: InputWanted<"label-needed"> = () =>
  "given: mg of vitamin C by the label, since a tablet weighs more";

export const notTabletsText: InputWanted<"not-tablets"> = () =>
  "what is weighed: tablets are counted by their label";

export const notCausticText: InputWanted<"not-caustic"> = () =>
  "what a spoon may hold: caustic soda is weighed, once, into a solution of 10 %";

export const noGradesText: InputWanted<"no-grades"> = () =>
  "left out, since no grades are known of this ingredient";

export const coffeeText: InputWanted<"coffee-per-ml"> = () => "at most 1 g of brewed coffee per ml of bath";

export const dryText: InputWanted<"dry-per-ml"> = () =>
  "above 0 and at most 1 g of dry ingredients per ml of bath";

export const agentText: InputWanted<"agent-needed"> = () =>
  "a brew with a developing agent: coffee or vitamin C";
