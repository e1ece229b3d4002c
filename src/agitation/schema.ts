/*
 * The JSON Schema of an agitation and of its law.
 */
import {
  above0,
  departures,
  from,
  object,
  one,
  origin,
  type CauseSchema,
  type JsonSchema,
} from "../core/schema.js";
import { agitationCause } from "./cause.js";

/** How the bath is moved. */
export const agitationSchema = (description: string): JsonSchema => ({
  description,
  anyOf: [
    one(["continuous", "stand"], "Without pause, or not at all after the start."),
    {
      ...object(
        ["everyS"],
        { everyS: above0(3600, "Interval between two agitations, in seconds.") },
        "At intervals.",
      ),
      examples: [{ everyS: 30 }],
    },
  ],
});

/** Agitation and its law as JSON Schema. */
export const agitationCauseSchema: CauseSchema = {
  cause: agitationCause,
  condition: () => agitationSchema("How the bath is moved."),
  law: () =>
    object(
      ["staleLoss", "staleTimeS"],
      {
        staleLoss: from(0, 10, "Loss of rate between two agitations, to 0.99 without a shape."),
        staleTimeS: above0(1e5, "Time in which the layer at the emulsion goes stale, in seconds."),
        sdStaleLoss: from(0, 10, "Standard deviation of the loss."),
        shape: from(0, 0.99, "The loss that drew the curve which a learned loss scales."),
        ...departures(),
        ...origin(),
      },
      "How development time depends on agitation.",
    ),
};
