import { driftTerm } from "./driftTerm.js";
import { personTerm, thermometerTerm } from "./offsetTerm.js";
import { printedTerm } from "./printedTerm.js";
import type { RunTerm } from "./runTerm.js";

/** The terms of a run that are no cause: the only list of them. */
export const runTerms: readonly RunTerm[] = Object.freeze([
  driftTerm,
  thermometerTerm,
  personTerm,
  printedTerm,
]);
