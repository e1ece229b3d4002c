/*
 * The JSON Schema of a gradient and of a growth law.
 */
import { above0, from, object, origin, type CauseSchema } from "../core/schema.js";
import { contrastCause } from "./cause.js";

/** Contrast and its law as JSON Schema. */
export const contrastSchema: CauseSchema = {
  cause: contrastCause,
  condition: () => above0(1000, "Gradient of the negative."),
  law: () =>
    object(
      ["gammaInfinity", "ratePerS", "appearanceS"],
      {
        gammaInfinity: above0(1000, "The gradient that no time reaches."),
        ratePerS: above0(100, "Rate of growth, in 1/s."),
        appearanceS: from(0, 1e6, "Time of appearance, in seconds."),
        sd: object(
          ["gammaInfinity", "ratePerS", "appearanceS"],
          {
            gammaInfinity: from(0, 1000, "Of the limit."),
            ratePerS: from(0, 100, "Of the rate, in 1/s."),
            appearanceS: from(0, 1e6, "Of the time of appearance, in seconds."),
            correlation: object(
              ["limitRate", "limitAppearance", "rateAppearance"],
              {
                limitRate: from(-1, 1, "Of the limit and the rate."),
                limitAppearance: from(-1, 1, "Of the limit and the time of appearance."),
                rateAppearance: from(-1, 1, "Of the rate and the time of appearance."),
              },
              "How the three are correlated.",
            ),
          },
          "Standard deviations of the three numbers.",
        ),
        ...origin(),
      },
      "How the gradient grows with time of development.",
    ),
};
