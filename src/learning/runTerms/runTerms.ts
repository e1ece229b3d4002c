import { driftTerm } from "./driftTerm.js";
import { outcomeTerm } from "./outcomeTerm.js";
import { batchTerm, personTerm, thermometerTerm } from "./offsetTerm.js";
import { printedTerm } from "./printedTerm.js";
import { sessionTerm } from "./sessionTerm.js";
import type { RunTerm } from "./runTerm.js";

/** The terms of a run that are no cause: the only list of them. */
export const runTerms: readonly RunTerm[] = Object.freeze([
  driftTerm,
  sessionTerm,
  thermometerTerm,
  personTerm,
  batchTerm,
  printedTerm,
  outcomeTerm,
]);
