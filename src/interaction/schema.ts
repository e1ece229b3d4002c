/*
 * The JSON Schema of an interaction law.
 */
import { from, object, origin, type JsonSchema } from "../core/schema.js";

/** How the activation energy changes with dilution. */
export const interactionSchema = (): JsonSchema =>
  object(
    ["perHalvingKJPerMol"],
    {
      perHalvingKJPerMol: from(
        -100,
        100,
        "Change of the activation energy for each halving of the concentration, in kJ/mol.",
      ),
      sdKJPerMol: from(0, 100, "Standard deviation of that change, in kJ/mol."),
      ...origin(),
    },
    "How the effect of temperature changes with dilution.",
  );
