/*
 * Module: brew. The English sentences of the mixing steps, made from their data.
 */
import { handbookIngredients } from "../handbook/ingredients.js";
import type { MixingStep, MixingWord } from "./mixingSteps.js";

type StepData = Omit<MixingStep, "text" | "step">;

/**
 * To a tenth; below one to two digits, or a gram of bromide a litre would be rounded by a fifth in a small
 * bath.
 */
const short = (value: number): string => String(Number(value < 1 ? value.toPrecision(2) : value.toFixed(1)));

/** An amount as it was given: grams, and the spoons that hold them. */
function amountOf({ ingredient, massG, spoons, spoonMl, heap }: StepData): string {
  const name = handbookIngredients[ingredient as keyof typeof handbookIngredients].name;
  const grams = `${short(massG as number)} g`;
  if (spoons === undefined) return `${grams} ${name}`;
  const filled = `${heap as string} spoon${spoons === 1 ? "" : "s"} of ${short(spoonMl as number)} ml`;
  return `${short(spoons)} ${filled} (${grams}) ${name}`;
}

/** Where it is dissolved. */
function waterOf({ waterMl, cold, inCoffee, sameCup }: StepData): string {
  if (sameCup === true) return "the same cup";
  const warmth = cold === true ? "cold" : "warm";
  return inCoffee === true
    ? `some of the coffee, ${warmth}`
    : `${short(waterMl as number)} ml of ${warmth} water`;
}

/** What acid and carbonate do together. */
const gasText = (gasL: number | undefined): string =>
  gasL === undefined
    ? ""
    : `: it foams, up to ${short(gasL)} l of gas. Use an open vessel of twice the size; ` +
      `never stopper it before it is still`;

const WORDS: Readonly<Record<MixingWord, (step: StepData) => string>> = {
  "stop": () => "Do not mix this.",
  "protect": () =>
    "Gloves and glasses; air the room; no dust; ware that never goes back to food. " +
    "Safety data sheets go first.",
  "dissolve": (step) => `Dissolve ${amountOf(step)} in ${waterOf(step)}: powder into water, slowly.`,
  "dissolve-caustic": (step) =>
    `Sprinkle ${amountOf(step)} into ${waterOf(step)}, in a cup of its own, little by little, stirring. ` +
    `It gets hot: let it cool. Never water onto it; never into coffee or vitamin C.`,
  "take": (step) => `Take ${amountOf(step)}.`,
  "join-caustic": () =>
    "Pour the cold caustic soda slowly into the bath, stirring, before coffee and vitamin C.",
  "join": () => "Join coffee and soda.",
  "add-last": (step) =>
    `Dissolve ${amountOf(step)} in ${waterOf(step)}; strain. Add it last, slowly${gasText(step.gasL)}.`,
  "make-up": ({ volumeMl, temperatureC }) =>
    `Make up to ${short(volumeMl as number)} ml with water and bring it to ` +
    `${short(temperatureC as number)} °C.`,
  "rest": ({ minutes, lifeH }) =>
    `Let it stand ${(minutes as readonly number[]).join(" to ")} min, until the bubbles are gone. ` +
    `Use it once${lifeH === undefined ? "" : `; it lives about ${short(lifeH)} h`}.`,
  "label": () => "Label it; keep it from children; dispose of it as the local code says.",
};

/** The sentence of a step. */
export function mixingText(step: StepData): string {
  const hazards = (step.cautions ?? [])
    .filter(({ code, severity }) => severity !== "note" && code !== "acid-foams")
    .map(({ message }) => `${message} `);
  return `${hazards.join("")}${WORDS[step.do](step)}`;
}
