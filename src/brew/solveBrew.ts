/*
 * Module: brew. What a solved brew holds of the agents.
 */
import type { ReadBrew, ReadPart } from "./brew.js";
import { bathOf } from "./bath.js";
import { constantsAt } from "./constants.js";
import { solveBath, type Solution } from "./equilibrium.js";

/**
 * About a fifth of chlorogenic acids are feruloyl esters, which do not develop (reviews of coffee
 * constituents, from memory).
 */
export const CATECHOL_SHARE = 0.8;

/** The equilibrium of a brew at its temperature. */
export function solveBrew({ parts, volumeMl, temperatureC }: ReadBrew): Solution {
  return solveBath(bathOf(parts, volumeMl), constantsAt(temperatureC));
}

/** Developing molecules, mol/kg: ascorbate in every form, and coffee's catechol. */
export function agentsOf({ parts, volumeMl }: ReadBrew): { ascorbate: number; catechol: number } {
  const { ascorbate = 0, chlorogenate = 0 } = bathOf(parts, volumeMl).acids;
  return { ascorbate, catechol: CATECHOL_SHARE * chlorogenate };
}

/** Grams a litre of the parts that a test picks, each times a weight. */
export function gramsPerL({ parts, volumeMl }: ReadBrew, weigh: (part: ReadPart) => number): number {
  return (parts.reduce((sum, part) => sum + weigh(part) * part.massG, 0) * 1000) / volumeMl;
}
