/*
 * German words that several sentences need.
 */
import type { CauseName } from "../../causes.js";
import type { Mark } from "../../compensate/marks.js";
import type { CautionSeverity } from "../../core/caution.js";
import type { Ingredient, IngredientHazard } from "../../handbook/ingredients.js";
import type { SetAsideReason } from "../../learning/types.js";
import type { PairName } from "../../pairs.js";
import type { StepName } from "../../process/types.js";
import { commas, und, wort } from "./figures.js";

export const severities: Readonly<Record<CautionSeverity, string>> = {
  stop: "Halt",
  warn: "Vorsicht",
  note: "Hinweis",
};

export const causes: Readonly<Record<CauseName | PairName | Mark["name"] | "baseline" | "pull", string>> = {
  baseline: "bekannte Zeit",
  temperature: "Temperatur",
  dilution: "Verdünnung",
  agitation: "Bewegung",
  use: "Ausnutzung",
  age: "Alter",
  strength: "Stärke",
  contrast: "Kontrast",
  push: "Push",
  pull: "Pull",
  interaction: "Temperatur mit Verdünnung",
  thermometer: "Thermometer",
  by: "Urteil",
  batch: "Ansatz",
};

/** What else learning has numbers of. */
export const learned: Readonly<Record<string, string>> = {
  ...causes,
  baseline: "die bekannte Zeit",
  drift: "die allmähliche Verschiebung",
  printed: "gedruckte Zeiten",
};

/** Causes, pairs and marks in a sentence; a pair right behind both of its causes is not named anew. */
export function ursachen(names: unknown, words: Readonly<Record<string, string>> = causes): string {
  if (!Array.isArray(names)) return "?";
  const all = names as readonly unknown[];
  return und(
    all.map((name, i) => {
      if (name !== "interaction") return wort(words, name);
      return all[i - 2] === "temperature" && all[i - 1] === "dilution"
        ? "deren Zusammenwirken"
        : "das Zusammenwirken von Temperatur und Verdünnung";
    }),
  );
}

export const ingredients: Readonly<Record<Ingredient, string>> = {
  "instant-coffee": "löslicher Kaffee",
  "decaffeinated-coffee": "entkoffeinierter löslicher Kaffee",
  "brewed-coffee": "starker Filterkaffee",
  "ascorbic-acid": "Vitamin C (Ascorbinsäure)",
  "ascorbic-acid-tablet": "reine Vitamin-C-Tabletten",
  "sodium-ascorbate": "Natriumascorbat",
  "soda-anhydrous": "Waschsoda, wasserfrei",
  "soda-monohydrate": "Waschsoda, Monohydrat",
  "soda-heptahydrate": "Waschsoda, Heptahydrat",
  "soda-decahydrate": "Kristallsoda (Decahydrat)",
  "baking-soda": "Natron",
  "borax": "Borax",
  "trisodium-phosphate": "Trinatriumphosphat, Dodecahydrat",
  "sodium-hydroxide": "Ätznatron",
  "sodium-sulphite": "Natriumsulfit, wasserfrei",
  "potassium-bromide": "Kaliumbromid",
  "table-salt": "Kochsalz",
  "iodised-salt": "Jodsalz",
  "potassium-carbonate": "Pottasche",
  "citric-acid": "Zitronensäure, wasserfrei",
};

/** The same in the accusative: what is taken or weighed. */
export const ingredientsTaken: Readonly<Record<Ingredient, string>> = {
  ...ingredients,
  "instant-coffee": "löslichen Kaffee",
  "decaffeinated-coffee": "entkoffeinierten löslichen Kaffee",
  "brewed-coffee": "starken Filterkaffee",
};

/** What an ingredient does, after its name, and what to do about it. */
export const hazards: Readonly<Record<IngredientHazard, string>> = {
  "burns":
    "verätzt Augen und Haut. Schutzbrille und Handschuhe tragen, in kaltes Wasser geben, " +
    "nie Wasser darauf gießen.",
  "caustic-dust": "ist stark alkalisch. Handschuhe und Brille tragen, keinen Staub machen, nicht berühren.",
  "fertility": "kann die Fruchtbarkeit schädigen. Handschuhe tragen, keinen Staub machen, nicht berühren.",
  "irritant": "reizt die Augen. Brille tragen, keinen Staub machen.",
  "swallowing": "ist schädlich beim Verschlucken. Von Kindern und Essen fernhalten.",
  "sulphur-dioxide":
    "gibt mit Säure Schwefeldioxid ab, das der Lunge schadet. Keine Säure in die Nähe bringen.",
};

export const steps: Readonly<Record<StepName, string>> = {
  "rest": "Ruhen",
  "pre-soak": "Vorwässern",
  "develop": "Entwickeln",
  "stop": "Stoppen",
  "fix": "Fixieren",
  "clearing-aid": "Wässerungshilfe",
  "wash": "Wässern",
  "wetting-agent": "Netzmittel",
};

/** A dilution as text. */
export const dilution = (text: string): string => (text === "stock" ? "Stammlösung" : commas(text));

/** Why runs teach nothing, whatever their number: each with its count behind it. */
export const notFitted: Readonly<Record<Exclude<SetAsideReason, "disagrees">, string>> = {
  "failed": "misslungen",
  "fogged": "verschleiert",
  "stand": "Standentwicklung gegen Bewegung",
  "past-life": "Bad nach seiner Lebensdauer",
  "past-covered": "Bad älter, als seine Altersregel reicht",
  "maybe-fahrenheit": "Temperatur wohl in °F",
  "past-growth": "Gradation, die ihr Wachstumsgesetz nie erreicht",
  "too-far": "für die Gesetze zu weit von der bekannten Zeit",
};

/** What follows "die Entwicklung". */
export const reasons: Readonly<Record<SetAsideReason, string>> = {
  "failed": "ist misslungen",
  "fogged": "ist verschleiert",
  "stand": "vergleicht Standentwicklung mit Bewegung",
  "past-life": "hat ein Bad, dessen Lebensdauer vorbei ist",
  "past-covered": "hat ein Bad, das älter ist, als seine Altersregel reicht",
  "maybe-fahrenheit": "hat eine Temperatur, die wohl in °F ist",
  "past-growth": "hat eine Gradation, die ihr Wachstumsgesetz nie erreicht",
  "too-far": "liegt für die Gesetze zu weit von der bekannten Zeit",
  "disagrees": "widerspricht den anderen über den Zufall hinaus",
};
