/*
 * The JSON Schema of the age of a bath and of an age law.
 */
import { above0, form, from, origin, type CauseSchema } from "../core/schema.js";
import { ageCause } from "./cause.js";
import { LEAST_HALF_LIFE_H, MOST_HALF_LIFE_H, MOST_RATE_SD_PER_H } from "./law.js";

const COVERS = "Age up to which the law says anything, in hours; a day when left out.";

/** Age and its law as JSON Schema. */
export const ageSchema: CauseSchema = {
  cause: ageCause,
  condition: () => from(0, 1e6, "Age of the bath since it was mixed, in hours."),
  law: () => ({
    description: "How the bath declines with age.",
    anyOf: [
      form("half-life", "The rate halves again and again.", ["halfLifeH"], {
        halfLifeH: from(LEAST_HALF_LIFE_H, MOST_HALF_LIFE_H, "Time in which the rate halves, in hours."),
        sdLog: from(0, 3, "Standard deviation of ln(half-life)."),
        sdRatePerH: from(
          0,
          MOST_RATE_SD_PER_H,
          "Standard deviation of ln 2/half-life, per hour, in the place of sdLog.",
        ),
        ...origin(),
      }),
      form("life", "The bath works until its life is over.", ["lifeH"], {
        lifeH: above0(1e6, "Life of the bath, in hours."),
        lowH: above0(1e6, "Age from which it may fail, in hours, at most lifeH; lifeH when left out."),
        ...origin(),
      }),
      form("slowing", "ln(time) grows with the square root of the age.", ["perRootH"], {
        perRootH: from(-1, 1, "Growth of ln(time) for each square root of an hour."),
        sdPerRootH: from(0, 3, "Standard deviation of that growth."),
        coversH: above0(1e6, COVERS),
        ...origin(),
      }),
      form("speeding", "ln(time) changes by so much after a day.", ["perDay"], {
        perDay: from(-1, 1, "Change of ln(time) after a day."),
        sdPerDay: from(0, 3, "Standard deviation of that change."),
        coversH: above0(1e6, COVERS),
        ...origin(),
      }),
    ],
  }),
};
