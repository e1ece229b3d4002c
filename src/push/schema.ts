/*
 * The JSON Schema of a push and of its law.
 */
import { from, object, origin, type CauseSchema } from "../core/schema.js";
import { pushCause } from "./cause.js";

/** Push and its law as JSON Schema. */
export const pushSchema: CauseSchema = {
  cause: pushCause,
  condition: () => from(-3, 5, "Stops of push against the known time; below 0 is a pull."),
  law: () =>
    object(
      ["perStop"],
      {
        perStop: from(1, 3, "Factor on time of the first stop."),
        growth: from(0, 1, "What each further stop adds to its own step, in ln(time)."),
        sdPerStop: from(0, 3, "Standard deviation of ln(factor) for each stop."),
        ...origin(),
      },
      "How development time grows with a push.",
    ),
};
