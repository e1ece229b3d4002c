import { isPast, type Caution } from "../core/caution.js";
import { plainObject, positive, refuse } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import type { HandbookRange, Ingredient } from "../handbook/ingredients.js";
import { MOST, ingredientOf } from "./brew.js";
import { spoonMass, spoonRange, SPOON_FIELDS, type SpoonOptions } from "./massOf.js";
import { smallAmount } from "./solution.js";
import { hazardCaution, say } from "./text.js";
import { notCausticText, notTabletsText } from "./refusedText.js";

/** What {@link spoonsFor} takes. */
export interface SpoonsForInput extends SpoonOptions {
  /** what is in the spoon */
  readonly ingredient: Exclude<Ingredient, "ascorbic-acid-tablet" | "sodium-hydroxide">;
  /** grams wanted */
  readonly massG: number;
  /** the smallest part of a spoon that can be measured, above 0 to 1; a quarter when left out */
  readonly stepSpoons?: number | undefined;
}

/** Spoons to take, what they hold, and the error that rounding alone makes. */
export interface RoundedSpoons {
  /** how many spoons */
  readonly spoons: number;
  /** what they hold, g */
  readonly massG: HandbookRange;
  /**
   * (grams taken − grams wanted) / grams wanted, at the middle density; the range of the spoon comes on top
   */
  readonly roundingError: number;
  /** what to mind before the spoon goes in, and what its range costs */
  readonly cautions: readonly Caution[];
}

/**
 * Turns grams into spoons, rounded to what a spoon can measure, with the error that makes.
 *
 * @param input - the ingredient, grams wanted (above 0 to 100000), the spoon, its filling and grade, and the
 * step of a spoon
 * @returns spoons, at least one step; the grams in them with their range; and the relative error of rounding,
 * with cautions: the hazard of the ingredient first
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for an unknown or unfit ingredient, grade or filling, tablets, caustic soda, or a number
 * out of range
 *
 * @remarks Less than the spoons may hold at least (assumed as the limit) has the caution `spoon-too-large`.
 * Of bromide and salt it names the solution of 10 % that measures so little, as in {@link mixingSteps}.
 * Spoons = step × round(grams / (grams in a spoon × step)). Densities as in {@link massOf}. Caustic soda is
 * told in no spoons: it is weighed, once, into a solution of 10 %, as {@link mixingSteps} says.
 *
 * @example
 * ```ts
 * spoonsFor({ ingredient: "baking-soda", massG: 10 }).spoons // => 2.25
 * spoonsFor({ ingredient: "baking-soda", massG: 10 }).roundingError // => 0.046
 * ```
 */
export function spoonsFor(input: SpoonsForInput): RoundedSpoons {
  const given = plainObject("spoonsFor/input", input);
  const { bulkGPerMl, hazard } = ingredientOf("spoonsFor/ingredient", given["ingredient"]);
  if (bulkGPerMl === undefined) refuse("spoonsFor/ingredient", "not-tablets", notTabletsText, {}, undefined);
  if (hazard === "burns")
    refuse("spoonsFor/ingredient", "not-caustic", notCausticText, {}, given["ingredient"]);
  const massG = positive("spoonsFor/massG", given["massG"], MOST, "massG");
  const { stepSpoons = 0.25 } = given;
  const step = positive("spoonsFor/stepSpoons", stepSpoons, 1);
  const one = spoonMass("spoonsFor", given);
  // To fifteen figures: three tenths of a spoon are 0.3.
  const spoons = Number((step * Math.max(1, Math.round(massG / (one.value * step)))).toPrecision(15));
  const held = { low: one.low * spoons, value: one.value * spoons, high: one.high * spoons };
  const ingredient = given["ingredient"] as Ingredient;
  const cautions = [
    ...hazardCaution(ingredient),
    ...unreadFields("", given, [...SPOON_FIELDS, "massG", "stepSpoons"]),
    ...(isPast(held.low, massG) ? tooLarge(ingredient, massG, spoons, held) : spoonRange(ingredient, one)),
  ];
  return { spoons, massG: held, roundingError: held.value / massG - 1, cautions };
}

/** The caution that even one step of a spoon holds more than is wanted, whatever its range. */
function tooLarge(
  ingredient: Ingredient,
  massG: number,
  spoons: number,
  { low }: HandbookRange,
): readonly Caution[] {
  const figures = { path: "/massG", quantity: "massG", limit: low, actual: massG } as const;
  return [
    say("spoon-too-large", "warn", {
      ...figures,
      data: { ingredient, spoons, ...smallAmount(ingredient, massG) },
    }),
  ];
}
