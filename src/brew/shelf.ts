/*
 * Module: brew. What is in the cupboard, and how much of it can be taken.
 */
import { arrayOf, plainObject, positive } from "../core/guards.js";
import { SODA_G_PER_MOL, handbookIngredients, type Ingredient } from "../handbook/ingredients.js";
import { ingredientOf, MOST, type BrewPart } from "./brew.js";

/** Something on the shelf: a name, or a name with how much there is, or with the label of tablets. */
export type ShelfItem =
  | Ingredient
  | {
      /** what it is */
      readonly ingredient: Ingredient;
      /** grams there are, above 0 to 100000; enough when left out */
      readonly massG?: number | undefined;
      /** mg of vitamin C in one tablet, as printed on the label, above 0 to 5000 */
      readonly labelMg?: number | undefined;
    };

/** One ingredient on the shelf after reading. */
export interface ShelfEntry {
  readonly massG: number;
  readonly labelMg?: number;
}

/** The shelf after reading. */
export type Shelf = ReadonlyMap<Ingredient, ShelfEntry>;

/** Reads a shelf; what is listed twice adds up. */
export function readShelf(where: string, value: unknown): Shelf {
  const shelf = new Map<Ingredient, ShelfEntry>();
  arrayOf(where, value, 0).forEach((item, i) => {
    const at = `${where}/${i}`;
    const given = typeof item === "string" ? { ingredient: item } : plainObject(at, item);
    const { ingredient: name, massG, labelMg } = given;
    ingredientOf(typeof item === "string" ? at : `${at}/ingredient`, name);
    const has = massG === undefined ? Infinity : positive(`${at}/massG`, massG, MOST, "massG");
    const label = labelMg === undefined ? undefined : positive(`${at}/labelMg`, labelMg, 5000, "labelMg");
    const before = shelf.get(name as Ingredient);
    const known = label ?? before?.labelMg;
    shelf.set(name as Ingredient, {
      massG: has + (before?.massG ?? 0),
      ...(known === undefined ? {} : { labelMg: known }),
    });
  });
  return shelf;
}

/**
 * One thing that may be wanted, by any of several ingredients, the better first, in grams a litre of each.
 */
export type Wanted = readonly (readonly [ingredient: Ingredient, gPerL: number])[];

const molarMass = (ingredient: Ingredient): number =>
  handbookIngredients[ingredient].molarMassGPerMol as number;
const asSoda = (dryG: number, ingredient: Ingredient): readonly [Ingredient, number] => [
  ingredient,
  (dryG * molarMass(ingredient)) / SODA_G_PER_MOL,
];

/** Washing soda as so many grams of dry soda, in whatever hydrate there is, or as potash. */
export const sodaOf = (dryG: number): Wanted =>
  (
    [
      "soda-anhydrous",
      "soda-monohydrate",
      "soda-heptahydrate",
      "soda-decahydrate",
      "potassium-carbonate",
    ] as const
  ).map((ingredient) => asSoda(dryG, ingredient));

/** Coffee as 40 g/l of instant: decaffeinated 60 g, strong brewed coffee 700 ml (common practice). */
export const COFFEE: Wanted = [
  ["instant-coffee", 40],
  ["decaffeinated-coffee", 60],
  ["brewed-coffee", 700],
];

/** Vitamin C of the full recipe, g/l of the acid (common practice). */
export const FULL_VITAMIN_C_G_PER_L = 16;
/** What counts by its label. */
const TABLET = "ascorbic-acid-tablet";

/** Vitamin C as so many grams of the acid. */
export const vitaminCOf = (acidG: number): Wanted => [
  ["ascorbic-acid", acidG],
  ["sodium-ascorbate", (acidG * molarMass("sodium-ascorbate")) / molarMass("ascorbic-acid")],
  [TABLET, acidG],
];

/** Whether a shelf holds any ingredient of what is wanted, in whatever amount; tablets need their label. */
export const holds = (shelf: Shelf, wanted: Wanted): boolean =>
  wanted.some(([ingredient]) => usable(shelf, ingredient) !== undefined);

/**
 * Whether tablets are left out for want of their label while the rest of the shelf has less vitamin C than
 * the first recipe wants.
 */
export const lacksLabel = (shelf: Shelf, volumeMl: number): boolean =>
  shelf.has(TABLET) &&
  usable(shelf, TABLET) === undefined &&
  take(shelf, vitaminCOf(FULL_VITAMIN_C_G_PER_L), volumeMl) === undefined;

function usable(shelf: Shelf, ingredient: Ingredient): ShelfEntry | undefined {
  const entry = shelf.get(ingredient);
  return ingredient === TABLET && entry?.labelMg === undefined ? undefined : entry;
}

/**
 * The first ingredient that there is enough of, as a part of a brew in grams for the volume; undefined when
 * nothing will do. Tablets are counted in halves.
 */
export function take(shelf: Shelf, wanted: Wanted, volumeMl: number): BrewPart | undefined {
  for (const [ingredient, gPerL] of wanted) {
    const entry = usable(shelf, ingredient);
    const massG = (gPerL * volumeMl) / 1000;
    if (entry === undefined || entry.massG < massG) continue;
    if (ingredient !== TABLET) return { ingredient, massG };
    const labelMg = entry.labelMg as number;
    return { ingredient, tablets: Math.max(1, Math.round((2000 * massG) / labelMg)) / 2, labelMg };
  }
  return undefined;
}
