import type { AgeLaw } from "./law.js";

/**
 * The age law used when none is given: no change is expected, and the spread is that of a bath of which nothing is
 * known.
 */
export const genericAgeLaw: AgeLaw = {
  kind: "slowing",
  perRootH: 0,
  sdPerRootH: 0.1,
  runs: 0,
  sources: ["no law of age: taken as unchanged"],
};
