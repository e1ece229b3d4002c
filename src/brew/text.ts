/*
 * Module: brew. Every English sentence of this module, made from data. A caution carries all that its
 * sentence says, so that another language reads no English.
 */
import { ownEntry } from "../core/ownEntry.js";
import type { Caution } from "../core/caution.js";
import { sayer, type CautionSentences, type Sayer } from "../core/cautionTexts.js";
import { ageText, decimals, digits, isFigure } from "../core/digits.js";
import { pastLifeSentence } from "../core/text.js";
import type { NoBrewReason } from "./noBrew.js";
import { isMuchGas } from "./gas.js";
import { handbookIngredients, type Ingredient, type IngredientHazard } from "../handbook/ingredients.js";

/** The name of an ingredient; of one that the handbook does not know, the one it was given. */
export function ingredientText(ingredient: string): string {
  return ownEntry(handbookIngredients, ingredient)?.name ?? ingredient;
}

/** What to mind with an ingredient. */
const HAZARDS: Readonly<Record<IngredientHazard, string>> = {
  "burns": "it burns eyes and skin. Goggles, gloves, into cold water, never water onto it.",
  "caustic-dust": "it is strongly alkaline. Gloves, glasses, no dust, no contact.",
  "fertility": "it may damage fertility. Gloves, no dust, no contact.",
  "irritant": "it irritates the eyes. Glasses, no dust.",
  "swallowing": "it is harmful if swallowed. Keep it from children and food.",
  "sulphur-dioxide": "with acid it gives off sulphur dioxide, which harms the lungs. No acid near it.",
};

const hazardText = (hazard: string): string => ownEntry(HAZARDS, hazard) ?? "";

/** Codes of this module's cautions. */
export type BrewCautionCode =
  | "no-agent"
  | "no-alkali"
  | "alkali-too-weak"
  | "alkali-low"
  | "ph-high"
  | "ph-unsure"
  | "hydroxide-high"
  | "caustic-bath"
  | "sulphur-dioxide"
  | "vitamin-c-without-coffee"
  | "coffee-without-vitamin-c"
  | "vitamin-c-left-out"
  | "decaffeinated"
  | "brewed-coffee"
  | "tablet-filler"
  | "tablet-label"
  | "acid-foams"
  | "mix-apart"
  | "restrainer-wanted"
  | "restrainer-strong"
  | "hazard"
  | "spoon-range"
  | "spoon-too-large"
  | "never-by-spoon"
  | "undissolved"
  | "too-concentrated"
  | "caustic-in-coffee"
  | "bath-past-life"
  | "alkali-changed"
  | "strength-far"
  | "scrap-without-known"
  | "soda-from-baking"
  | "baking-care"
  | "baking-depth"
  | "more-than-complete"
  | "gained-weight"
  | "not-complete"
  | "gloves-and-glasses"
  | "kitchenware"
  | "rest-before-use"
  | "disposal";

/** The sentence of each caution of this module. */
export const brewSentences: Pick<CautionSentences, BrewCautionCode> = {
  "bath-past-life": (facts, unit) =>
    facts.severity === "warn" && facts.data.at === "pour-in"
      ? `The brew lives about ${ageText(facts.limit)} and is ${ageText(facts.actual)} old. ` +
        `It may fail before the end. Mix just before use.`
      : pastLifeSentence["bath-past-life"](facts, unit),
  // what cannot develop
  "no-agent": () => "Nothing in it develops. Add coffee or vitamin C.",
  "no-alkali": () => "Nothing develops without alkali.",
  "alkali-too-weak": ({ limit }) =>
    `Not alkaline enough, below pH ${decimals(limit)}. Baking soda alone is too weak. ` +
    `Take washing soda, or more of it.`,
  "alkali-low": ({ actual }) => `Barely alkaline, pH ${decimals(actual)}: slow and uneven.`,
  // what harms the emulsion or the hands
  "ph-high": ({ severity, data }) =>
    severity === "stop"
      ? "Too alkaline for a soft emulsion: it swells and lifts off. Take less alkali."
      : data.soft
        ? "A soft emulsion may swell and lift at the edges in it. Keep it cool and handle it gently."
        : "Gelatin swells in it. Keep it cool and handle it gently.",
  "ph-unsure": ({ data: { soft, low, high } }) =>
    `The pH may be anything from ${decimals(low)} to ${decimals(high)}. The likely one is safe. ` +
    `The upper end ${soft ? "lifts a soft emulsion off" : "burns eyes and skin"}. ` +
    `Let washing soda or baking soda hold it, and weigh the alkali.`,
  "hydroxide-high": ({ limit }) =>
    `More than ${digits(limit, 2)} mol/l of free hydroxide: it burns, and it dissolves emulsions. ` +
    `Take less caustic soda.`,
  "caustic-bath": () =>
    "The bath itself burns eyes and skin. Wear goggles and gloves. Rinse splashes at once.",
  "sulphur-dioxide": ({ limit }) =>
    `Sulphite below pH ${digits(limit, 2)} gives off sulphur dioxide, which harms the lungs. ` +
    `Take more alkali, or no sulphite.`,
  // agents
  "vitamin-c-without-coffee": () => "Vitamin C without coffee is slow and unsure.",
  "coffee-without-vitamin-c": () => "Without vitamin C it is slow and stains.",
  "vitamin-c-left-out": () =>
    "The vitamin C stays on the shelf: its acid takes more alkali than there is. " +
    "With washing soda it would work.",
  "decaffeinated": () => "Decaffeinated coffee is often weaker. Test it.",
  "brewed-coffee": () => "Brewed coffee is of unknown strength. Test it.",
  "tablet-filler": () => "Crush the tablets and strain off what stays.",
  "tablet-label": () =>
    "The vitamin C tablets are left out. Say how many mg a tablet holds (labelMg), then they are used.",
  // mixing
  "acid-foams": ({ data }) =>
    `Acid and soda give off gas, up to ${digits(data.gasL, 2)} l. ` +
    (isMuchGas(data.gasLPerL)
      ? `A vessel of twice the size is not enough. Add the acid last, in small portions, and wait ` +
        `after each until it is still. Or do not mix this. Never stopper it before it is still.`
      : `Add the acid last, slowly, in an open vessel of twice the size. ` +
        `Never stopper it before it is still.`),
  "mix-apart": ({ data: { coffee, vitaminC } }) =>
    "Dissolve each apart." +
    (coffee ? " Pour coffee into the alkali." : "") +
    (vitaminC ? " Vitamin C comes last." : ""),
  "restrainer-wanted": ({ data: { iso, bromideGPerL, saltGPerL } }) =>
    `Film of ISO ${digits(iso, 4)} and more fogs without ${digits(bromideGPerL, 2)} g ` +
    `of potassium bromide or ${rangeText(saltGPerL)} g of salt a litre.`,
  "restrainer-strong": ({ severity, limit, actual }) =>
    severity === "stop"
      ? `Restrainer worth ${digits(actual, 2)} g/l of potassium bromide: hardly anything develops in it. ` +
        `Recipes hold 0.5 to 5 g/l.`
      : `More than ${digits(limit, 2)} g/l of restrainer: the time is a guess. Run a test strip.`,
  "hazard": ({ data }) => `Mind ${ingredientText(data.ingredient)}: ${hazardText(data.hazard)}`,
  "spoon-range": ({ data, actual }) =>
    `Weigh ${ingredientText(data.ingredient)} if you can: the range of spoons is worth ` +
    `± ${isFigure(actual) ? Math.round(100 * (actual - 1)) : "?"} % of the time.`,
  "spoon-too-large": ({ limit, actual, data }) =>
    `No spoon measures so little ${ingredientText(data.ingredient)}: ${digits(actual)} g are wanted. ` +
    `In spoons, ${digits(data.spoons)} is ${digits(limit)} g or more. ` +
    (data.solution === undefined
      ? `Weigh it, or mix more bath.`
      : `Make a solution of ${digits(data.solution.percent)} %: ${digits(data.solution.weighedG)} g in ` +
        `${digits(data.solution.waterMl)} ml of water. ` +
        `${digits(data.solution.ml)} ml of it hold what is wanted.`),
  "never-by-spoon": ({ data }) =>
    `Never measure ${ingredientText(data.ingredient)} by the spoon: weigh it, once, into a solution of 10 %.`,
  "undissolved": ({ limit, actual, data }) =>
    `Not all the ${ingredientText(data.ingredient)} dissolves at this temperature: ` +
    `${digits(limit)} g/l do, ${digits(actual)} are given.`,
  "too-concentrated": ({ severity, limit }) =>
    severity === "stop"
      ? `Too much caustic soda to dissolve safely. It needs ${digits(limit)} ml of cold water for ` +
        `itself. Mix more bath.`
      : `Caustic soda needs ${digits(limit)} ml of cold water for itself. ` +
        `The rest may not dissolve in what is left. Mix more bath.`,
  "caustic-in-coffee": ({ limit, actual }) =>
    `Brewed coffee leaves ${digits(actual)} ml of water, and caustic soda with the other alkali needs ` +
    `${digits(limit)}. Caustic soda never goes into coffee. ` +
    `Take less brewed coffee, or instant coffee and more water.`,
  "alkali-changed": ({ data }) =>
    `The pH goes from ${decimals(data.fromPh)} to ${decimals(data.toPh)}. ` +
    `How much that changes the time is poorly known. Run a test strip.`,
  "strength-far": ({ actual }) =>
    `The brews differ ${digits(actual, 2)} times, too much for a rule. Run a test strip.`,
  "scrap-without-known": () =>
    "Without a bath to compare with, a scrap tells fast from slow and no more. Run a test strip.",
  "soda-from-baking": () =>
    "Baking soda becomes washing soda in the oven: 1 to 2 cm deep, an hour at about 200 °C.",
  // the oven
  "baking-care": () =>
    "Baking soda in the oven: heat, caustic dust, steam and gas. Use an open tray that never goes back to " +
    "food, not aluminium. Wear glasses and oven gloves, let in air, let it cool.",
  "baking-depth": ({ data }) =>
    `For powder ${digits(data.depthMm, 1)} mm deep that is hot already. ` +
    `A layer of 1 to 2 cm needs about an hour to warm through.`,
  "more-than-complete": ({ limit }) =>
    `Lighter than pure carbonate, ${digits(limit)} g: it started wet or was spilt.`,
  "gained-weight": ({ limit }) => `Heavier than before, ${digits(limit)} g. Check the weights.`,
  "not-complete": ({ limit }) =>
    `Still a mixture: pure carbonate weighs ${digits(limit)} g. Bake on, or see bakedSoda.`,
  // always
  "gloves-and-glasses": () => "Wear gloves and glasses. Make no dust: alkali harms eyes, skin and lungs.",
  "kitchenware": () =>
    "Ware used for this never goes back to food. No aluminium: alkali eats it and gives off hydrogen.",
  "rest-before-use": ({ data: { minS, maxS } }) =>
    `Let it stand ${digits(minS / 60)} to ${digits(maxS / 60)} min, until the bubbles are gone.`,
  "disposal": () => "Local codes and safety data sheets go first, for disposal too.",
};

/** Two ends of a range: "10 to 20". */
export function rangeText(ends: unknown): string {
  return Array.isArray(ends) ? (ends as readonly unknown[]).map((end) => digits(end)).join(" to ") : "?";
}

/** A caution with its sentence. */
export const say: Sayer<BrewCautionCode> = /* @__PURE__ */ sayer(brewSentences);

/** Hazards that deserve a warning; the others are notes. */
const GRAVE: ReadonlySet<IngredientHazard> = new Set(["burns", "caustic-dust", "fertility"]);

/** The hazard of an ingredient as a caution; none where it has none. */
export function hazardCaution(ingredient: Ingredient): Caution[] {
  const { hazard } = handbookIngredients[ingredient];
  return hazard === undefined
    ? []
    : [say("hazard", GRAVE.has(hazard) ? "warn" : "note", { data: { ingredient, hazard } })];
}

/** That an ingredient burns and is never spooned; none of the others. */
export function neverBySpoon(ingredient: Ingredient, path: string): Caution[] {
  if (handbookIngredients[ingredient].hazard !== "burns") return [];
  return [say("never-by-spoon", "warn", { path, data: { ingredient } })];
}

/** Why there is no brew, in English. */
export const noBrewTexts: Readonly<Record<NoBrewReason, string>> = {
  "no-agent": "Nothing on the shelf develops. Add coffee or vitamin C.",
  "label-missing": "Tablets need the figure on their label. Give labelMg, the mg of vitamin C in one.",
  "no-alkali": "Nothing on the shelf makes a bath alkaline. Add washing soda.",
  "alkali-too-weak": "The alkali on the shelf is too weak. Add washing soda.",
  "caustic-alone":
    "Caustic soda alone is not safe to dose with coffee. Take washing soda with it, or instead.",
  "too-little": "There is too little on the shelf for this volume.",
  "volume-too-small": "The bath is too small to measure with this spoon. Mix more.",
  "does-not-dissolve": "What is needed does not dissolve in water this cold.",
  "too-alkaline": "Every brew from this shelf is too alkaline for the emulsion.",
  "too-cold": "In a bath this cold no time can be trusted. Warm it.",
  "too-warm": "The emulsion does not bear a bath this warm. Cool it.",
  "dies-too-soon": "Every brew from this shelf would be dead before its time is over.",
  "too-slow": "Every brew from this shelf takes more than an hour and a half.",
};
