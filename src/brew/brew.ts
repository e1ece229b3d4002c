/*
 * Module: brew. A brew is plain data; here it is read and refused when it cannot be one.
 */
import type { Caution } from "../core/caution.js";
import {
  arrayOf,
  inRange,
  knownEntry,
  notOneOf,
  plainObject,
  positive,
  refuse,
  wrongCount,
} from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import {
  handbookIngredients,
  type HandbookRange,
  type Ingredient,
  type IngredientData,
} from "../handbook/ingredients.js";
import { gramsOf, isLiquid } from "./parts.js";
import { coffeeText, dryText, labelText, unfitText, unfitTexts } from "./refusedText.js";

/** How full a spoon is. */
export type SpoonHeap = "level" | "rounded" | "heaped";

/** A weighed or spooned ingredient: grams, with the range they may have when they were not weighed. */
export interface WeighedPart {
  /** by its name in {@link handbookIngredients} */
  readonly ingredient: Exclude<Ingredient, "ascorbic-acid-tablet">;
  /** grams as weighed, or the middle of what the spoons hold, 0 to 100000 */
  readonly massG: number;
  /** least it may be, from {@link massOf}; `massG` when left out */
  readonly lowG?: number | undefined;
  /** most it may be; `massG` when left out */
  readonly highG?: number | undefined;
  /** the spoons that hold these grams, where it was spooned: for {@link mixingSteps} */
  readonly spoons?: number | undefined;
  /** the volume of such a spoon, ml, above 0 to 100; 5 when left out */
  readonly spoonMl?: number | undefined;
  /** how full the spoon is; `"level"` when left out */
  readonly heap?: SpoonHeap | undefined;
}

/** Plain vitamin C tablets, counted by the content printed on their label. */
export interface TabletPart {
  readonly ingredient: "ascorbic-acid-tablet";
  /** how many */
  readonly tablets: number;
  /** mg of vitamin C in one tablet, as printed on the label */
  readonly labelMg: number;
}

/** One ingredient of a brew. */
export type BrewPart = WeighedPart | TabletPart;

/** A developer mixed from groceries. */
export interface DeveloperBrew {
  /** finished volume, ml */
  readonly volumeMl: number;
  /** what is in it, 1 to 30 parts */
  readonly ingredients: readonly BrewPart[];
  /** temperature of the bath, 0 to 50 °C; 20 when left out */
  readonly temperatureC?: number | undefined;
}

const BREW_FIELDS: readonly string[] = ["volumeMl", "ingredients", "temperatureC"];
const TABLET_FIELDS: readonly string[] = ["ingredient", "tablets", "labelMg"];
const WEIGHED_FIELDS: readonly string[] = [
  "ingredient",
  "massG",
  "lowG",
  "highG",
  "spoons",
  "spoonMl",
  "heap",
];

/** A caution for each field of a brew that was read, and of its parts, that is not known. */
export const unreadInBrew = (path: string, brew: DeveloperBrew): readonly Caution[] => [
  ...unreadFields(path, brew, BREW_FIELDS),
  ...brew.ingredients.flatMap((part, i) => {
    const fields = part.ingredient === "ascorbic-acid-tablet" ? TABLET_FIELDS : WEIGHED_FIELDS;
    return unreadFields(`${path}/ingredients/${i}`, part, fields);
  }),
];

/** A part after reading: grams that dissolve, and the handbook entry. */
export interface ReadPart {
  readonly ingredient: Ingredient;
  readonly data: IngredientData;
  /** where it was given, as a JSON Pointer into the brew */
  readonly path: string;
  readonly massG: number;
  readonly lowG: number;
  readonly highG: number;
  /** how it was measured, where that was said */
  readonly spoons?: SpoonsGiven;
}

/** Spoons as given. */
export interface SpoonsGiven {
  readonly spoons: number;
  readonly spoonMl: number;
  readonly heap: SpoonHeap;
}

/** A brew after reading. Parts of zero grams are left out. */
export interface ReadBrew {
  readonly volumeMl: number;
  readonly temperatureC: number;
  readonly parts: readonly ReadPart[];
}

/** Most of one ingredient, and of bath, that anybody mixes: 100 kg, 100 l. */
export const MOST = 1e5;

/** The handbook entry of an ingredient; unfit ones are refused with the reason. */
export function ingredientOf(where: string, ingredient: unknown): IngredientData {
  if (typeof ingredient === "string" && Object.hasOwn(unfitTexts, ingredient))
    refuse(where, "fit-for-bath", unfitText, { ingredient }, ingredient);
  return knownEntry(where, handbookIngredients, ingredient);
}

/** Grams of vitamin C in tablets, by their label. */
export function tabletMass(where: string, part: Record<string, unknown>): number {
  if (part["labelMg"] === undefined)
    refuse(`${where}/labelMg`, "label-needed", labelText, { types: ["number"] }, undefined, "missing");
  return (
    (inRange(`${where}/tablets`, part["tablets"], 0, 1e4) *
      positive(`${where}/labelMg`, part["labelMg"], 5000, "labelMg")) /
    1000
  );
}

function readPart(brewAt: string, i: number, value: unknown): ReadPart {
  const path = `/ingredients/${i}`;
  const where = brewAt + path;
  const part = plainObject(where, value);
  const data = ingredientOf(`${where}/ingredient`, part["ingredient"]);
  const ingredient = part["ingredient"] as Ingredient;
  if (ingredient === "ascorbic-acid-tablet") {
    const massG = tabletMass(where, part);
    return { ingredient, data, path, massG, lowG: massG, highG: massG };
  }
  const massG = inRange(`${where}/massG`, part["massG"], 0, MOST, "massG");
  if (massG > 0) positive(`${where}/massG`, massG, MOST, "massG");
  const { lowG = massG, highG = massG } = part;
  return {
    ingredient,
    data,
    path,
    massG,
    lowG: massG > 0 ? positive(`${where}/lowG`, lowG, massG, "massG") : 0,
    highG: inRange(`${where}/highG`, highG, massG, MOST, "massG"),
    ...readSpoons(where, part),
  };
}

function readSpoons(where: string, part: Record<string, unknown>): { spoons?: SpoonsGiven } {
  const { spoons, spoonMl = 5, heap = "level" } = part;
  if (spoons === undefined) return {};
  if (heap !== "level" && heap !== "rounded" && heap !== "heaped")
    notOneOf(`${where}/heap`, ["level", "rounded", "heaped"], heap);
  return {
    spoons: {
      spoons: positive(`${where}/spoons`, spoons, 1e9),
      spoonMl: positive(`${where}/spoonMl`, spoonMl, 100, "volumeMl"),
      heap,
    },
  };
}

/** The temperature the constants hold at. */
export function brewTemperature(where: string, temperatureC: unknown): number {
  return inRange(where, temperatureC, 0, 50, "temperatureC");
}

/** Most ingredients of a brew. */
const MOST_PARTS = 30;

/** Reads a brew for the function named in `where`, but for how much of it the water holds. */
export function readParts(where: string, value: unknown): ReadBrew {
  const brew = plainObject(where, value);
  const volumeMl = positive(`${where}/volumeMl`, brew["volumeMl"], MOST, "volumeMl");
  const { temperatureC = 20 } = brew;
  brewTemperature(`${where}/temperatureC`, temperatureC);
  const given = arrayOf(`${where}/ingredients`, brew["ingredients"], 1);
  if (given.length > MOST_PARTS) wrongCount(`${where}/ingredients`, given.length, { most: MOST_PARTS });
  const parts = given.map((part, i) => readPart(where, i, part)).filter((part) => part.massG > 0);
  return { volumeMl, temperatureC: temperatureC as number, parts };
}

/** Grams of brewed coffee for each ml of bath, and of what is dry; the dry solids of the coffee count too. */
export function gramsPerMl({ parts, volumeMl }: ReadBrew): { readonly liquid: number; readonly dry: number } {
  const dryG = parts.reduce(
    (sum, part) => sum + part.highG * (isLiquid(part) ? (part.data.solids as HandbookRange).value : 1),
    0,
  );
  return { liquid: gramsOf(parts.filter(isLiquid)) / volumeMl, dry: dryG / volumeMl };
}

/** Reads a brew for the function named in `where`; throws what is wrong with it. */
export function readBrew(where: string, value: unknown): ReadBrew {
  const read = readParts(where, value);
  const { liquid, dry } = gramsPerMl(read);
  if (!(liquid <= 1)) refuse(`${where}/ingredients`, "coffee-per-ml", coffeeText, {}, liquid);
  if (!(dry > 0 && dry <= 1)) refuse(`${where}/ingredients`, "dry-per-ml", dryText, {}, dry);
  return read;
}
