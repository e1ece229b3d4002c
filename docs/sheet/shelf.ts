/* What the sheet keeps of the shelf, and what follows from it: plain JSON in, plain data out. */
import {
  handbookIngredients,
  isInputError,
  parseCount,
  proposeBrew,
  type BrewMaterial,
  type Ingredient,
  type InputError,
  type NoBrew,
  type ProposedBrew,
} from "darkroom-kinetics";

/** What is in the cupboard, and how it is measured. */
export interface ShelfState {
  readonly items: readonly Ingredient[];
  /** mg of vitamin C in a tablet, as it was written */
  readonly labelMg: string;
  /** ml; 0 where all is weighed */
  readonly spoonMl: number;
  /** what is developed: that of the whole sheet */
  readonly material: BrewMaterial;
  /** which of the steps is shown, from 0 */
  readonly step: number;
}

/** An invented cupboard, that of the hut. */
export const emptyShelf: ShelfState = {
  items: ["instant-coffee", "soda-anhydrous", "ascorbic-acid", "table-salt"],
  labelMg: "",
  spoonMl: 5,
  material: "film",
  step: 0,
};

/** All that may be in a cupboard, agents first. */
export const ingredients: readonly Ingredient[] = (
  ["agent", "alkali", "restrainer", "preservative", "acid"] as const
).flatMap((role) =>
  (Object.keys(handbookIngredients) as Ingredient[]).filter(
    (name) => handbookIngredients[name].role === role,
  ),
);

/** A brew, or the reason why none can work, or the blank that cannot be read. */
export type Proposal = ProposedBrew | NoBrew | { readonly error: InputError };

let last: { readonly key: string; readonly proposal: Proposal } | undefined;

/** The proposal of a shelf. The last one is kept: most changes of the sheet leave the shelf alone. */
export function proposalOf(shelf: ShelfState, volumeMl: number, temperatureC: number): Proposal {
  const { items, labelMg, spoonMl, material } = shelf;
  const key = JSON.stringify([items, labelMg, spoonMl, material, volumeMl, temperatureC]);
  if (last?.key === key) return last.proposal;
  const proposal = proposed(shelf, volumeMl, temperatureC);
  last = { key, proposal };
  return proposal;
}

function proposed(
  { items, labelMg, spoonMl, material }: ShelfState,
  volumeMl: number,
  temperatureC: number,
): Proposal {
  try {
    const label = labelMg.trim() === "" ? undefined : parseCount(labelMg.replace(/\s*mg\s*$/i, ""));
    return proposeBrew({
      shelf: items.map((ingredient) =>
        ingredient === "ascorbic-acid-tablet" && label !== undefined
          ? { ingredient, labelMg: label }
          : ingredient,
      ),
      volumeMl,
      temperatureC,
      material,
      ...(spoonMl > 0 ? { spoonMl } : {}),
    });
  } catch (error) {
    if (!isInputError(error)) throw error;
    return { error };
  }
}
