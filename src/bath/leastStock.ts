import { positive, refuse } from "../core/guards.js";
import { ROLL_CM2 } from "../handbook/roll.js";
import { handbookLeastStock, type DilutionFamily } from "../handbook/dilution.js";
import { familyText } from "./text.js";

/** Who says how much stock a roll needs at least. */
export interface LeastStockOf {
  /** developer family, for its published least amount */
  readonly family?: DilutionFamily | undefined;
  /** own or maker's figure for the least stock per roll of 516 cm², ml; goes before `family` */
  readonly leastMlPerRoll?: number | undefined;
}

/** The least stock for a roll of film, and whose it is. */
export interface LeastStock {
  readonly mlPerRoll: number;
  readonly basis: "given" | "family" | "any";
}

/**
 * The least stock for one roll of 516 cm².
 *
 * @param where - for errors
 * @param of - an own figure, or a family; without either the least of all families serves: with less no
 * developer of the handbook works
 * @throws TypeError or RangeError for a wrong figure, or a family without one
 */
export function leastStock(where: string, { family, leastMlPerRoll }: LeastStockOf): LeastStock {
  if (leastMlPerRoll !== undefined)
    return {
      mlPerRoll: positive(`${where}/leastMlPerRoll`, leastMlPerRoll, 1e5, "volumeMl"),
      basis: "given",
    };
  const published = Object.entries(handbookLeastStock);
  if (family === undefined)
    return { mlPerRoll: Math.min(...published.map(([, { mlPerRoll }]) => mlPerRoll)), basis: "any" };
  const own = published.find(([name]) => name === family);
  if (own === undefined)
    refuse(
      `${where}/family`,
      "family-or-least",
      familyText,
      { values: published.map(([name]) => name) },
      family,
      "not-one-of",
    );
  return { mlPerRoll: own[1].mlPerRoll, basis: "family" };
}

/** The least stock for an area, ml. */
export function leastStockMl(where: string, of: LeastStockOf, areaCm2: number): number {
  return (leastStock(where, of).mlPerRoll * areaCm2) / ROLL_CM2;
}
