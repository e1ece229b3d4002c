/*
 * Module: brew. The English sentences of the mixing steps, made from their data.
 */
import type { Caution } from "../core/caution.js";
import type { TemperatureUnit } from "../core/cautionTexts.js";
import { degrees } from "../core/digits.js";
import { isMuchGas } from "./gas.js";
import type { MixingStep, MixingWord } from "./mixingSteps.js";
import { countedSpoons } from "./roundSpoons.js";
import { ingredientText, rangeText } from "./text.js";
import { useBy } from "./useBy.js";

/** What the sentence of a step is made from. */
export type MixingStepData = Omit<MixingStep, "text" | "step">;

/**
 * To a tenth; below one to two digits, or a gram of bromide a litre would be rounded by a fifth in a small
 * bath.
 */
const short = (value: unknown): string =>
  typeof value === "number" ? String(Number(value < 1 ? value.toPrecision(2) : value.toFixed(1))) : "?";

const nameOf = ({ ingredient }: MixingStepData): string =>
  typeof ingredient === "string" ? ingredientText(ingredient) : "?";

/** An amount as it was given: grams, and the spoons that hold them. */
function amountOf(step: MixingStepData): string {
  const { massG, spoons, spoonMl, heap } = step;
  const grams = `${short(massG)} g`;
  if (spoons === undefined) return `${grams} ${nameOf(step)}`;
  const counted = countedSpoons(spoons);
  const filled = `${heap as string} spoon${counted === 1 ? "" : "s"} of ${short(spoonMl)} ml`;
  return `${String(counted)} ${filled} (${grams}) ${nameOf(step)}`;
}

/** The water for each gram of a solution. */
const forEachGram = ({ waterMl, massG }: MixingStepData): string =>
  `${short((waterMl as number) / (massG as number))} ml for each gram`;

/** A solution by name: "the solution of 10 % potassium bromide". */
const solutionOf = (step: MixingStepData): string =>
  `${short(step.solutionMl)} ml of the solution of ${short(step.solutionPercent)} % ${nameOf(step)}`;

/** Where it is dissolved. */
function waterOf(step: MixingStepData, unit: TemperatureUnit): string {
  const { waterMl, waterC, coffeeMl, cold, inCoffee, sameCup } = step;
  if (sameCup === true) return "the same cup";
  const warmth = cold === true ? "cold" : "warm";
  const at = typeof waterC === "number" ? ` (${degrees(waterC, unit)})` : "";
  if (inCoffee !== true) return `${short(waterMl)} ml of ${warmth} water${at}`;
  const which =
    coffeeMl === undefined ? "the rest of the coffee" : `the ${short(coffeeMl)} ml of coffee set aside`;
  return `${which}, ${warmth}${at}`;
}

/** The names of several, "a and b". */
const namesOf = (ingredients: unknown): string =>
  Array.isArray(ingredients) ? ingredients.map((one) => ingredientText(String(one))).join(" and ") : "?";

/** What acid and carbonate do together. */
function gasText({ gasL, gasLPerL }: MixingStepData): string {
  if (gasL === undefined) return "";
  const care = isMuchGas(gasLPerL)
    ? `A vessel of twice the size is not enough. Add it in small portions, and wait after each until it ` +
      `is still. Or do not mix this.`
    : `Use an open vessel of twice the size.`;
  return ` It foams, up to ${short(gasL)} l of gas. ${care} Never stopper it before it is still.`;
}

const USE_BY = { "at-once": " Begin at once.", "within-the-hour": " Begin within the hour." } as const;

/** How long a brew lives, and how soon it is used. */
function lifeText({ lifeH, failsH }: MixingStepData): string {
  if (lifeH === undefined) return "";
  const soon = useBy(failsH);
  const range = failsH === undefined ? "" : ` It may fail anywhere from ${failsH.map(short).join(" to ")} h.`;
  return ` It lives about ${short(lifeH)} h.${range}${soon === undefined ? "" : USE_BY[soon]}`;
}

/** First aid with caustic soda: common practice, as the safety data sheets say it. */
const FIRST_AID =
  "Have running water at hand. In the eyes: rinse for 15 minutes and see a doctor. " +
  "On the skin: rinse at once.";

/** The sentence of each step. */
export const mixingSentences: Readonly<
  Record<MixingWord, (step: MixingStepData, unit: TemperatureUnit) => string>
> = {
  "stop": () => "Do not mix this.",
  "protect": () =>
    "Wear gloves and glasses, let in air, make no dust. " +
    "Use ware that never goes back to food, and no aluminium. Safety data sheets go first.",
  "dissolve": (step, unit) =>
    `Dissolve ${amountOf(step)} in ${waterOf(step, unit)}: ` +
    `powder into ${step.inCoffee === true ? "coffee" : "water"}, slowly.`,
  "dissolve-caustic": (step, unit) =>
    // The cup: common practice, since the solution warms by 27 K, and powder that cakes by more.
    `${FIRST_AID} Take a heat-proof cup of polypropylene, not thin glass: it gets hot. ` +
    `Weigh ${amountOf(step)}. Sprinkle it into ${waterOf(step, unit)}, ${forEachGram(step)}, ` +
    `with nothing else in that cup, little by little, stirring. ` +
    `This is the solution of ${short(step.solutionPercent)} %. ` +
    `Let it cool. Never pour water onto it. Never put it into coffee or vitamin C. ` +
    `Label the cup: it looks like water. Keep what is left from children.`,
  "make-solution": (step, unit) =>
    `Weigh ${amountOf(step)}. Dissolve it in ${waterOf(step, unit)}, ${forEachGram(step)}. ` +
    `This is the solution of ${short(step.solutionPercent)} %. ` +
    `Label the cup: it looks like water. Keep what is left from children.`,
  "take": (step) =>
    step.coffeeMl === undefined
      ? `Take ${amountOf(step)}.`
      : `Take ${short(step.coffeeMl)} ml of ${nameOf(step)}.`,
  "set-aside": (step) =>
    `For ${namesOf(step.forIngredients)}: set aside ${short(step.coffeeMl)} ml of the coffee.`,
  "join-caustic": (step) =>
    `${FIRST_AID} Measure it in polypropylene, not in thin glass. ` +
    `Pour ${solutionOf(step)}, cold, slowly into the bath, stirring, before coffee and vitamin C.`,
  "add-solution": (step) => `Add ${solutionOf(step)}.`,
  "join": () => "Pour the coffee slowly into the alkali, stirring.",
  "add-last": (step, unit) =>
    `Dissolve ${amountOf(step)} in ${waterOf(step, unit)} and strain. ` +
    `Add it last, slowly.${gasText(step)}`,
  "make-up": ({ volumeMl, temperatureC }, unit) =>
    `Make up to ${short(volumeMl)} ml with water and bring it to ${degrees(temperatureC, unit)}.`,
  "rest": (step) =>
    `Let it stand ${rangeText(step.minutes)} min, until the bubbles are gone. ` +
    `Do not keep it for another day.${lifeText(step)}`,
  "label": () => "Label it, keep it from children, and dispose of it as the local code says.",
};

/** Whether a caution is said with its step; foam is in the step's own sentence. */
export const saidWithStep = ({ code }: Caution): boolean => code !== "acid-foams";

/** The sentence of a step. */
export function mixingText(step: MixingStepData): string {
  const hazards = (step.cautions ?? []).filter(saidWithStep).map(({ message }) => `${message} `);
  return `${hazards.join("")}${mixingSentences[step.do](step, "C")}`;
}
