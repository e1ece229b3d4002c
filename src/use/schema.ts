/*
 * The JSON Schema of the use of a bath and of a use law.
 */
import { above0, from, object, one, origin, type CauseSchema } from "../core/schema.js";
import { dilutionSchema } from "../dilution/schema.js";
import { useCause } from "./cause.js";

/** Use and its law as JSON Schema. */
export const useSchema: CauseSchema = {
  cause: useCause,
  condition: () => from(0, 1e6, "Area that the bath has already developed, in cm² per litre."),
  law: () =>
    object(
      ["increase", "perCm2PerL", "growth"],
      {
        increase: from(0, 10, "How much more time for each portion of area: 0.1 is 10 %."),
        perCm2PerL: from(0.001, 1e6, "The portion of area, in cm² per litre."),
        growth: one(["linear", "compound"], "Whether the portions are added or multiplied."),
        sdIncrease: from(0, 10, "Standard deviation of the increase."),
        shape: from(0, 10, "The increase of the rule whose curve a learned increase scales."),
        capacityCm2PerL: above0(1e6, "Capacity of the bath, in cm² per litre."),
        dilution: dilutionSchema("The dilution that the rule is for."),
        ...origin(),
      },
      "How development time grows as the bath is used.",
    ),
};
