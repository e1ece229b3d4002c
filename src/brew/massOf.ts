import type { Caution } from "../core/caution.js";
import { frozen } from "../core/frozen.js";
import { knownEntry, plainObject, positive, refuse } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import type { HandbookRange, Ingredient } from "../handbook/ingredients.js";
import { ingredientOf, tabletMass, type SpoonHeap } from "./brew.js";
import { spoonLogSd, spoonRatio } from "./checkBrew.js";
import { hazardCaution, neverBySpoon, say } from "./text.js";
import { noGradesText } from "./refusedText.js";

/** A spoon and how it is filled. */
export interface SpoonOptions {
  /** the spoon's volume, ml, above 0 to 100; 5 when left out (metric teaspoon; see {@link spoonSizesMl}) */
  readonly spoonMl?: number | undefined;
  /** `"level"` when left out */
  readonly heap?: SpoonHeap | undefined;
  /**
   * where it is known: coffee `"spray-dried"`, `"agglomerated"`, `"freeze-dried"`; anhydrous soda `"light"`,
   * `"dense"`, `"baked"`; ascorbic acid `"crystals"`, `"powder"`
   */
  readonly grade?: string | undefined;
}

/** What {@link massOf} takes: a number of spoons, or of tablets with the content on their label. */
export type MassOfInput =
  | (SpoonOptions & {
      /** what is in the spoon */
      readonly ingredient: Exclude<Ingredient, "ascorbic-acid-tablet">;
      /** how many spoons */
      readonly spoons: number;
    })
  | {
      readonly ingredient: "ascorbic-acid-tablet";
      /** how many tablets */
      readonly tablets: number;
      /** ascorbic acid in one tablet as the label says, mg */
      readonly labelMg: number;
    };

/** Grams with the range they may be in, and what that range costs. */
export interface SpoonedMass {
  /** the likely mass, g */
  readonly value: number;
  /** the least, g */
  readonly low: number;
  /** the most, g */
  readonly high: number;
  /** standard deviation that the range alone brings into ln(time), by the generic strength law */
  readonly timeLogSd: number;
  /** what is unwise about measuring it so */
  readonly cautions: readonly Caution[];
}

/**
 * Kitchen spoons, ml. Metric: common practice; Australian tablespoon 20 ml. US: exact, from the gallon of 231
 * cubic inches.
 */
export const spoonSizesMl: Readonly<Record<string, number>> = /* @__PURE__ */ frozen({
  "teaspoon": 5,
  "tablespoon": 15,
  "Australian tablespoon": 20,
  "US teaspoon": 4.92892159375,
  "US tablespoon": 14.78676478125,
});

/**
 * A spoon against a level one. Rounded: 1.25 to 1.5 (common practice), 1.8 (USDA nos. 14218 over 14214, two
 * products). Heaped: 1.5 (kuhniperm.ru, tea and table spoon), 1.25 to 2 (ntro.it.com), 1.5 to 2 (common
 * practice).
 */
const HEAPS: Readonly<Record<SpoonHeap, HandbookRange>> = {
  level: { low: 1, value: 1, high: 1 },
  rounded: { low: 1.25, value: 1.4, high: 1.8 },
  heaped: { low: 1.25, value: 1.6, high: 2 },
};

const TABLETS: readonly string[] = ["ingredient", "tablets", "labelMg"];
/** How a spoon is described. */
export const SPOON_FIELDS: readonly string[] = ["ingredient", "spoonMl", "heap", "grade"];
const SPOONED: readonly string[] = [...SPOON_FIELDS, "spoons"];

/** Grams in one spoon, with their range. */
export function spoonMass(where: string, input: Record<string, unknown>): HandbookRange {
  const { bulkGPerMl, grades } = ingredientOf(`${where}/ingredient`, input["ingredient"]);
  const { spoonMl: size = 5, heap: filled = "level" } = input;
  const spoonMl = positive(`${where}/spoonMl`, size, 100, "volumeMl");
  const heap = knownEntry(`${where}/heap`, HEAPS, filled);
  const { grade } = input;
  if (grade !== undefined && grades === undefined)
    refuse(`${where}/grade`, "no-grades", noGradesText, {}, grade);
  const bulk =
    grades && grade !== undefined
      ? knownEntry(`${where}/grade`, grades, grade)
      : (bulkGPerMl as HandbookRange);
  return {
    low: spoonMl * bulk.low * heap.low,
    value: spoonMl * bulk.value * heap.value,
    high: spoonMl * bulk.high * heap.high,
  };
}

/**
 * Grams in so many spoons, with a range as wide as published spoon weights are: for instant coffee more than
 * two to one.
 *
 * @param input - the ingredient and `spoons` (above 0 to 1000) with the spoon, its filling and the grade; or
 * `tablets` (0 to 10000) of vitamin C with `labelMg` (above 0 to 5000 mg), which are counted by their label
 * @returns grams: the middle, the least and the most; what the range costs in time; and cautions
 * @throws TypeError when something is of the wrong kind, or tablets come without the content on their label
 * @throws RangeError for an unknown or unfit ingredient, grade or filling, or a number out of range
 *
 * @remarks Spoon volume × loose density × filling; the extremes of all three multiply. The spoon is taken as
 * exact. `timeLogSd` is exponent × ln(high/low)/3.29, the range read as 90 %. Loose densities and their
 * sources: {@link handbookIngredients}. A kitchen scale replaces all of this. Caustic soda has a
 * warning: it is never measured by the spoon.
 *
 * @example
 * ```ts
 * massOf({ ingredient: "baking-soda", spoons: 2 }).value // => 9.3
 * massOf({ ingredient: "ascorbic-acid-tablet", tablets: 8, labelMg: 500 }).value // => 4
 * ```
 */
export function massOf(input: MassOfInput): SpoonedMass {
  const given = plainObject("massOf/input", input);
  ingredientOf("massOf/ingredient", given["ingredient"]);
  const ingredient = given["ingredient"] as Ingredient;
  const hazards = hazardCaution(ingredient);
  if (ingredient === "ascorbic-acid-tablet") {
    const value = tabletMass("massOf/tablet", given);
    const cautions = [...hazards, ...unreadFields("", given, TABLETS)];
    return { value, low: value, high: value, timeLogSd: 0, cautions };
  }
  const spoons = positive("massOf/spoons", given["spoons"], 1000);
  const one = spoonMass("massOf", given);
  const never = neverBySpoon(ingredient, "/spoons");
  return {
    value: one.value * spoons,
    low: one.low * spoons,
    high: one.high * spoons,
    timeLogSd: spoonLogSd(one.low, one.high),
    cautions: [
      ...hazards,
      ...never,
      ...unreadFields("", given, SPOONED),
      ...(never.length > 0 ? [] : spoonRange(ingredient, one)),
    ],
  };
}

/** What the range of a spoon costs, where it is half a per cent of the time or more. */
export function spoonRange(ingredient: Ingredient, { low, high }: HandbookRange): Caution[] {
  const actual = spoonRatio(low, high);
  if (actual < 1.005) return [];
  return [say("spoon-range", "note", { path: "/spoons", quantity: "ratio", actual, data: { ingredient } })];
}
