/*
 * Room: exhaustion. The age law that stands in when none is given and the rate has to be one unknown that the
 * runs share: no change expected, and the spread that a bath of which nothing is known has.
 */
import type { AgeLaw } from "./ageFactor.js";

export const genericAgeLaw: AgeLaw = {
  kind: "slowing",
  perRootH: 0,
  sdPerRootH: 0.1,
  sources: ["no law of age: taken as unchanged"],
};
