/*
 * The JSON Schema of a push and of its law.
 */
import { departures, from, object, origin, type CauseSchema } from "../core/schema.js";
import { pushCause } from "./cause.js";
import { PER_STOP, STOPS } from "./law.js";

/** Push and its law as JSON Schema. */
export const pushSchema: CauseSchema = {
  cause: pushCause,
  condition: () => from(...STOPS, "Stops of push against the known time; below 0 is a pull."),
  law: () =>
    object(
      ["perStop"],
      {
        perStop: from(...PER_STOP, "Factor on time of the first stop."),
        growth: from(0, 1, "What each further stop adds to its own step, in ln(time)."),
        sdPerStop: from(0, 3, "Standard deviation of ln(perStop)."),
        ...departures(STOPS, "Stops of push."),
        ...origin(),
      },
      "How development time grows with a push.",
    ),
};
