import { inRange, knownEntry } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { SODA_G_PER_MOL, WATER_G_PER_MOL } from "../handbook/ingredients.js";
import { MOST } from "./brew.js";

/** Washing soda by its water of crystallisation: none, 1, 7 or 10 molecules. */
export type SodaHydrate = "anhydrous" | "monohydrate" | "heptahydrate" | "decahydrate";

/** What {@link sodaMass} takes. */
export interface SodaMassInput {
  /** mass of the hydrate that is known, g */
  readonly massG: number;
  /** the hydrate that is known */
  readonly from: SodaHydrate;
  /** the hydrate that is asked for */
  readonly to: SodaHydrate;
}

/** Water of crystallisation per carbonate. */
const WATERS: Readonly<Record<SodaHydrate, number>> = {
  anhydrous: 0,
  monohydrate: 1,
  heptahydrate: 7,
  decahydrate: 10,
};

function molarMass(where: string, hydrate: unknown): number {
  return SODA_G_PER_MOL + knownEntry(where, WATERS, hydrate) * WATER_G_PER_MOL;
}

/**
 * Grams of one hydrate of washing soda that bring as much carbonate as grams of another.
 *
 * @param input - `massG`, 0 to 100000 g of hydrate `from`; `to`, the hydrate at hand
 * @returns grams of hydrate `to`
 * @throws TypeError when the mass is not a number
 * @throws RangeError when the mass is out of range or a hydrate is unknown
 *
 * @remarks The ratio of the molar masses, 105.99, 124.00, 232.09 and 286.14 g/mol (IUPAC CIAAW, 2021).
 * Crystals that have gone white in an open bag lie between decahydrate and monohydrate; weigh, bake dry,
 * weigh again.
 *
 * @example
 * ```ts
 * sodaMass({ massG: 54, from: "anhydrous", to: "decahydrate" }) // => 145.785
 * ```
 */
export function sodaMass(input: SodaMassInput): number {
  const { massG, from, to } = onlyFields("sodaMass/input", input, ["massG", "from", "to"]);
  inRange("sodaMass/massG", massG, 0, MOST, "massG");
  return ((massG as number) * molarMass("sodaMass/to", to)) / molarMass("sodaMass/from", from);
}
