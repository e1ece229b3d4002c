/*
 * Module: brew. Every English sentence of this module, made from data. A caution carries all that its
 * sentence says, so that another language reads no English.
 */
import type { Caution, CautionSeverity } from "../core/caution.js";
import type { NoBrewReason } from "./noBrew.js";
import { handbookIngredients, type Ingredient, type IngredientHazard } from "../handbook/ingredients.js";

/** A caution before it has words. */
export type CautionFacts = Omit<Caution, "code" | "severity" | "message">;

interface Facts extends CautionFacts {
  readonly severity: CautionSeverity;
}

/** To so many digits, without trailing noughts. */
const digits = (value: unknown, count: number): string =>
  String(Number((value as number).toPrecision(count)));
const fixed = (value: unknown): string => (value as number).toFixed(1);
const nameOf = (data: Facts["data"]): string => handbookIngredients[data?.["ingredient"] as Ingredient].name;

/** What to mind with an ingredient. */
const HAZARDS: Readonly<Record<IngredientHazard, string>> = {
  "burns": "it burns eyes and skin: goggles, gloves, into cold water, never water onto it",
  "caustic-dust": "strongly alkaline: gloves, glasses, no dust, no contact",
  "fertility": "it may damage fertility: gloves, no dust, no contact",
  "irritant": "it irritates the eyes: glasses, no dust",
  "swallowing": "harmful if swallowed: keep it from children and food",
  "sulphur-dioxide": "with acid it gives off sulphur dioxide, which harms the lungs: no acid near it",
};

/** Codes of this module's cautions. */
export type BrewCautionCode =
  | "no-agent"
  | "no-alkali"
  | "alkali-too-weak"
  | "alkali-low"
  | "ph-high"
  | "hydroxide-high"
  | "caustic-bath"
  | "sulphur-dioxide"
  | "vitamin-c-without-coffee"
  | "coffee-without-vitamin-c"
  | "decaffeinated"
  | "brewed-coffee"
  | "tablet-filler"
  | "acid-foams"
  | "mix-apart"
  | "restrainer-wanted"
  | "restrainer-strong"
  | "hazard"
  | "spoon-range"
  | "undissolved"
  | "too-concentrated"
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

const SENTENCES: Readonly<Record<BrewCautionCode, (facts: Facts) => string>> = {
  // what cannot develop
  "no-agent": () => "Nothing in it develops: add coffee or vitamin C.",
  "no-alkali": () => "Nothing develops without soda.",
  "alkali-too-weak": ({ limit }) =>
    `Not alkaline enough, below pH ${fixed(limit)}: baking soda alone is too weak. ` +
    `Take washing soda, or more.`,
  "alkali-low": () => "Barely alkaline: slow and uneven.",
  // what harms the emulsion or the hands
  "ph-high": ({ severity, data }) =>
    severity === "stop"
      ? "Too alkaline for a soft emulsion: it swells and lifts off. Take less alkali."
      : data?.["soft"] === true
        ? "A soft emulsion may swell and lift at the edges in it: keep it cool, handle it gently."
        : "Gelatin swells in it: keep it cool, handle it gently.",
  "hydroxide-high": ({ limit }) =>
    `More than ${digits(limit, 2)} mol/l of free hydroxide: it burns, and it dissolves emulsions. ` +
    `Take less caustic soda.`,
  "caustic-bath": () => "The bath itself burns eyes and skin: goggles and gloves. Rinse splashes at once.",
  "sulphur-dioxide": ({ limit }) =>
    `Sulphite below pH ${digits(limit, 2)} gives off sulphur dioxide, which harms the lungs. ` +
    `More alkali, or no sulphite.`,
  // agents
  "vitamin-c-without-coffee": () => "Vitamin C without coffee is slow and unsure.",
  "coffee-without-vitamin-c": () => "Without vitamin C it is slow and stains.",
  "decaffeinated": () => "Decaffeinated coffee is often weaker: test it.",
  "brewed-coffee": () => "Brewed coffee is of unknown strength: test it.",
  "tablet-filler": () => "Crush the tablets; strain off what stays.",
  // mixing
  "acid-foams": ({ data }) =>
    `Acid and soda give off gas, up to ${digits(data?.["gasL"], 2)} l: ` +
    `add the acid last, slowly, in an open vessel of twice the size. Never stopper it before it is still.`,
  "mix-apart": () => "Dissolve each apart; join soda and coffee; vitamin C last.",
  "restrainer-wanted": ({ data }) =>
    `Film of ISO ${digits(data?.["iso"], 4)} and more fogs without ${digits(data?.["bromideGPerL"], 2)} g ` +
    `of potassium bromide or ${(data?.["saltGPerL"] as readonly number[]).join(" to ")} g of salt a litre.`,
  "restrainer-strong": ({ limit }) =>
    `More than ${digits(limit, 2)} g/l of restrainer: the time is a guess. Run a test strip.`,
  "hazard": ({ data }) => `Take care with ${nameOf(data)}: ${HAZARDS[data?.["hazard"] as IngredientHazard]}.`,
  "spoon-range": ({ data, actual }) =>
    `Weigh ${nameOf(data)} if you can: ` +
    `the range of spoons is worth ± ${Math.round(100 * ((actual as number) - 1))} % of the time.`,
  "undissolved": ({ limit, actual, data }) =>
    `Not all the ${nameOf(data)} dissolves at this temperature: ` +
    `${digits(limit, 3)} g/l do, ${digits(actual, 3)} are given.`,
  "too-concentrated": ({ severity, limit }) =>
    severity === "stop"
      ? `Too much caustic soda to dissolve safely: it needs ${digits(limit, 3)} ml of cold water for ` +
        `itself. Mix more bath.`
      : `Caustic soda needs ${digits(limit, 3)} ml of cold water for itself; ` +
        `the rest may not dissolve in what is left. Mix more bath.`,
  "bath-past-life": ({ severity, limit }) =>
    severity === "stop"
      ? `The brew is past its life of about ${digits(limit, 2)} h: it fails at once. Mix fresh.`
      : `The brew lives about ${digits(limit, 2)} h: it may fail before the end. Mix it just before use.`,
  "alkali-changed": ({ data }) =>
    `The pH goes from ${fixed(data?.["fromPh"])} to ${fixed(data?.["toPh"])}: ` +
    `how much that changes the time is poorly known. Run a test strip.`,
  "strength-far": () => "The brews differ too much for a rule: run a test strip.",
  "scrap-without-known": () =>
    "Without a bath to compare with, a scrap tells fast from slow and no more: run a test strip.",
  "soda-from-baking": () =>
    "Baking soda becomes washing soda in the oven, an hour at about 200 °C: see bakeYield.",
  // the oven
  "baking-care": () =>
    "Hot, caustic dust, steam and gas: open tray, not aluminium; glasses; air the room; let it cool.",
  "baking-depth": ({ data }) =>
    `For powder ${digits(data?.["depthMm"], 1)} mm deep that is hot already. ` +
    `A layer of 1 to 2 cm needs about an hour to warm through.`,
  "more-than-complete": () => "Lighter than pure carbonate: it started wet or was spilt.",
  "gained-weight": () => "Heavier than before: check the weights.",
  "not-complete": () => "Still a mixture: bake on, or see bakedSoda.",
  // always
  "gloves-and-glasses": () => "Gloves and glasses; no dust: alkali harms eyes, skin and lungs.",
  "kitchenware": () => "Ware used for this never goes back to food.",
  "rest-before-use": () => "Let it stand 5 to 10 min, until the bubbles are gone.",
  "disposal": () => "Local codes and safety data sheets go first, for disposal too.",
};

/** A caution with its sentence. */
export function say(severity: CautionSeverity, code: BrewCautionCode, facts: CautionFacts = {}): Caution {
  return { code, severity, message: SENTENCES[code]({ severity, ...facts }), ...facts };
}

/** Hazards that deserve a warning; the others are notes. */
const GRAVE: ReadonlySet<IngredientHazard> = new Set(["burns", "caustic-dust", "fertility"]);

/** The hazard of an ingredient as a caution; none where it has none. */
export function hazardCaution(ingredient: Ingredient): Caution[] {
  const { hazard } = handbookIngredients[ingredient];
  return hazard === undefined
    ? []
    : [say(GRAVE.has(hazard) ? "warn" : "note", "hazard", { data: { ingredient, hazard } })];
}

const NO_BREW: Readonly<Record<NoBrewReason, string>> = {
  "no-agent": "Nothing on the shelf develops: it takes coffee or vitamin C.",
  "label-missing": "Tablets need the content of their label: give labelMg, the mg of vitamin C in one.",
  "no-alkali": "Nothing on the shelf makes a bath alkaline: it takes washing soda.",
  "alkali-too-weak": "The alkali on the shelf is too weak: it takes washing soda.",
  "caustic-alone":
    "Caustic soda alone is not safe to dose with coffee: it takes washing soda beside it, or instead.",
  "too-little": "There is too little on the shelf for this volume.",
  "volume-too-small": "The bath is too small to measure with this spoon: mix more.",
  "does-not-dissolve": "What is needed does not dissolve in water this cold.",
  "too-alkaline": "Every brew from this shelf is too alkaline for the emulsion.",
  "dies-too-soon": "Every brew from this shelf would be dead before its time is over.",
  "too-slow": "Every brew from this shelf takes more than an hour and a half.",
};

/** Why there is no brew, in English. */
export const noBrewText = (reason: NoBrewReason): string => NO_BREW[reason];
