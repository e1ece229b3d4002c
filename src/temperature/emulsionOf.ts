/*
 * Module: temperature. Which gelatin counts as soft.
 */

/** The emulsion as it counts: a glass plate is soft unless it is said to be hardened (common practice). */
export function emulsionOf(
  material: string | undefined,
  emulsion: "soft" | "hardened" | undefined,
): "soft" | "hardened" | undefined {
  // Only what is left out is taken as soft; null, which is what JSON makes of NaN, goes on to be refused.
  return emulsion === undefined && material === "plate" ? "soft" : emulsion;
}
