/* What the package says of a brew, in the language and the unit of the sheet. */
import {
  describeMixing,
  handbookIngredients,
  type Ingredient,
  type MixingStep,
  type NoBrew,
} from "darkroom-kinetics";
import { de } from "darkroom-kinetics/texts/de";
import type { Language, Sheet } from "./sheet.js";

/** The name of an ingredient. */
export const ingredientName = (name: Ingredient, language: Language): string =>
  language === "de" ? de.ingredients[name] : handbookIngredients[name].name;

/** A mixing step, with what may hurt there. */
export const stepText = (step: MixingStep, { language, unit }: Sheet): string =>
  describeMixing([step], language === "de" ? de.mixing : undefined, { unit }).join(" ");

/** Why there is no brew. */
export const reasonText = ({ reason, message }: NoBrew, language: Language): string =>
  language === "de" ? de.noBrew[reason] : message;
