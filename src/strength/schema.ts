/*
 * The JSON Schema of the strength of a brew and of what own runs say of strengths.
 */
import { above0, from, list, object, one, origin, text, type CauseSchema } from "../core/schema.js";
import { BASES } from "../core/term.js";
import { strengthCause } from "./cause.js";

/** Strength and its law as JSON Schema. */
export const strengthSchema: CauseSchema = {
  cause: strengthCause,
  // What brewStrength returns says more than compensate reads; it is kept.
  condition: () => ({
    type: "object",
    description: "Strength of today's brew against the known one, as brewStrength returns it.",
    required: ["value", "logSd", "basis"],
    properties: {
      cause: text(200, "The name of the cause."),
      value: above0(1e6, "Factor on time against the brew that the time is known for."),
      logSd: from(0, 10, "Standard deviation of the logarithm of the factor."),
      slope: from(-10, 10, "The part of logSd that the law of amounts explains, with its sign."),
      basis: one(["unchanged", ...BASES], "What the factor rests on."),
      lifeH: from(0, 1e6, "Life of today's brew from mixing, in hours."),
      lifeLowH: from(0, 1e6, "Age from which it may fail, in hours, at most lifeH; lifeH when left out."),
      capacityCm2PerL: above0(1e6, "What a litre of today's brew develops, in cm²."),
      cautions: list(
        { type: "object", description: "A caution." },
        0,
        100,
        "What is unwise about the brews.",
      ),
      ...origin(),
    },
    additionalProperties: true,
  }),
  law: () =>
    object(
      ["correction"],
      {
        correction: from(-1000, 1000, "By how many of its standard deviations a strength is off."),
        sdCorrection: from(0, 10, "Standard deviation of the correction."),
        brews: list(
          object(
            ["value", "logSd", "slope", "log", "sd"],
            {
              value: above0(1e6, "Value of the brew's strength."),
              logSd: from(0, 10, "Standard deviation of the logarithm of that value."),
              slope: from(-10, 10, "The part of it that the law of amounts explains."),
              log: from(-10, 10, "How far ln(time) lies from what the law says."),
              sd: from(0, 10, "Standard deviation of that."),
            },
            "What own runs say of one brew.",
          ),
          0,
          1000,
          "What own runs say of single brews beyond the law of amounts.",
        ),
        ...origin(),
      },
      "What own runs say of strengths that were worked out.",
    ),
};
