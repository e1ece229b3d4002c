/*
 * Module: brew. Acid drives carbonic acid out of soda: whether, and how much gas that can be.
 */
import { isPast } from "../core/caution.js";
import type { Ingredient } from "../handbook/ingredients.js";
import type { ReadPart } from "./brew.js";

/** Protons a mole that drive carbonic acid out of soda. */
const PROTONS: Readonly<Partial<Record<Ingredient, number>>> = {
  "ascorbic-acid": 1,
  "ascorbic-acid-tablet": 1,
  "citric-acid": 3,
};

/** Molar volume of carbon dioxide at 20 °C and one atmosphere, l. */
const L_PER_MOL = 24.06;

/** Gas for a litre of bath, l, above which a vessel of twice the size may boil over (assumed). */
const MUCH_GAS_L_PER_L = 3;

/** Whether a bath gives off so much gas that its acid goes in by portions. */
export const isMuchGas = (gasLPerL: unknown): boolean =>
  typeof gasLPerL === "number" && isPast(gasLPerL, MUCH_GAS_L_PER_L);

/**
 * The most gas that mixing can set free, l: by all the acid, or all the carbonate. Mixed well, with the acid
 * last, most of it stays in the water as bicarbonate.
 */
export function mostGasL(parts: readonly ReadPart[]): number {
  const moles = (weigh: (part: ReadPart) => number): number =>
    parts.reduce(
      (sum, part) => sum + (weigh(part) * part.massG) / (part.data.molarMassGPerMol ?? Infinity),
      0,
    );
  const acid = moles(({ ingredient }) => PROTONS[ingredient] ?? 0);
  return (
    L_PER_MOL *
    Math.min(
      acid,
      moles(({ data }) => data.moles?.carbonate ?? 0),
    )
  );
}
