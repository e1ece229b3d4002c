/*
 * Module: brew. From grams to moles: the totals that the equilibrium has to share out.
 */
import { handbookCoffee, type AcidSystem } from "../handbook/equilibria.js";
import type { ReadPart } from "./brew.js";

/** Totals in mol per kg of water. */
export interface Bath {
  /** strong cations that weak anions and hydroxide must balance */
  readonly sodium: number;
  /** salts of strong ions, which count for the ionic strength only */
  readonly salt: number;
  readonly acids: Readonly<Partial<Record<AcidSystem, number>>>;
}

/** Which end of a coffee's ranges is tried: of its dry solids, and of what a gram of them holds. */
export type CoffeePick = Readonly<Record<"solids" | "content", "low" | "value" | "high">>;

/** Coffee as it mostly is. */
export const MIDDLE_COFFEE: CoffeePick = { solids: "value", content: "value" };

/** The two ranges of a coffee, which know nothing of each other, each by its ends. */
export const COFFEE_RANGES: readonly (readonly [low: CoffeePick, high: CoffeePick])[] = [
  [
    { ...MIDDLE_COFFEE, solids: "low" },
    { ...MIDDLE_COFFEE, solids: "high" },
  ],
  [
    { ...MIDDLE_COFFEE, content: "low" },
    { ...MIDDLE_COFFEE, content: "high" },
  ],
];

/**
 * Totals of a bath. A litre of bath is taken as a kilogram of water: within 1 % for soda up to 10 % by
 * weight, and up to 5 % too much water in a bath full of coffee, worth 0.02 in pH.
 */
export function bathOf(
  parts: readonly ReadPart[],
  volumeMl: number,
  pick: (part: ReadPart) => CoffeePick = () => MIDDLE_COFFEE,
  mass: (part: ReadPart) => number = (part) => part.massG,
): Bath {
  const acids: Partial<Record<AcidSystem, number>> = {};
  let sodium = 0;
  let salt = 0;
  const add = (acid: AcidSystem, molPerKg: number): void => {
    acids[acid] = (acids[acid] ?? 0) + molPerKg;
  };
  for (const part of parts) {
    const gPerL = (mass(part) * 1000) / volumeMl;
    if (part.data.solids !== undefined) {
      const { solids, content: coffee } = pick(part);
      const molPerKg = (gPerL * part.data.solids[solids]) / 1000;
      const { chlorogenate, coffeeAcid, coffeePhenol } = handbookCoffee;
      add("chlorogenate", molPerKg * chlorogenate[coffee]);
      add("coffeeAcid", molPerKg * coffeeAcid[coffee]);
      add("coffeePhenol", molPerKg * coffeePhenol[coffee]);
      // Chlorogenic acids come as their salts, and a tenth of the other acid does: coffee is of pH 5.
      sodium += molPerKg * (chlorogenate[coffee] + coffeeAcid[coffee] / 10);
      continue;
    }
    const molPerKg = gPerL / (part.data.molarMassGPerMol as number);
    for (const [what, moles] of Object.entries(part.data.moles as object) as [string, number][]) {
      if (what === "sodium") sodium += moles * molPerKg;
      else if (what === "salt") salt += moles * molPerKg;
      else add(what as AcidSystem, moles * molPerKg);
    }
  }
  return { sodium, salt, acids };
}

/** The grams of a part when one part alone goes to an end of its range. */
export function massAt(part: ReadPart, moved: ReadPart, end: "lowG" | "highG"): number {
  return part === moved ? part[end] : part.massG;
}
