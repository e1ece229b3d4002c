import { brewMaterial, type BrewMaterial } from "../brew/brewCapacity.js";
import type { ProcessVessel } from "../handbook/process.js";

/** What is developed in each vessel where nobody says otherwise (common practice). */
const MATERIAL_IN: Readonly<Record<ProcessVessel, BrewMaterial>> = {
  tank: "film",
  drum: "film",
  tray: "plate",
};

/** The material that is meant where only the vessel is known: film in a tank or drum, a plate in a tray. */
export const usualMaterial = (vessel: ProcessVessel): BrewMaterial => MATERIAL_IN[vessel];

/**
 * The vessel that is meant where only the material is known.
 *
 * @param material - `"film"` when left out
 * @returns `"tank"` for film, `"tray"` for plates and paper (common practice)
 * @throws RangeError for any other material
 *
 * @example
 * ```ts
 * [usualVessel(), usualVessel("paper")] // => ["tank", "tray"]
 * ```
 */
export function usualVessel(material: BrewMaterial = "film"): ProcessVessel {
  return brewMaterial("usualVessel/material", material) === MATERIAL_IN.tank ? "tank" : "tray";
}
