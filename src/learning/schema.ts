/*
 * The JSON Schema of learned knowledge. Its prior and its runs are read field by field; the rest is worked
 * out from them and needs no more than the right kind.
 */
import { conditionFields, baselineSchema, lawsSchema } from "../compensate/schema.js";
import {
  above0,
  form,
  from,
  list,
  object,
  one,
  said,
  text,
  type CauseSchema,
  type Fields,
  type JsonSchema,
} from "../core/schema.js";
import { pairSchemas } from "../pairs.js";
import { everything, type LearnedCause } from "./learning.js";
import { KNOWLEDGE_VERSION } from "./types.js";

/** The most runs: twenty a week for ten years. */
const MOST_RUNS = 10_000;

function outcomeSchema(): JsonSchema {
  const logSd = above0(3, "Standard deviation of ln(right time) that the outcome leaves.");
  const note = text(2000, "What went wrong.");
  const grown = (measured: string): Fields => ({
    [measured]: above0(10, "What was measured."),
    wanted: above0(10, "What was wanted."),
    sd: above0(3, "Standard deviation of the measurement."),
    logSd,
  });
  return {
    description: "How the run came out.",
    examples: [{ kind: "good" }],
    anyOf: [
      form("good", "The time given was right.", [], { logSd }),
      form("thin", "Developed too short, by an amount that is not said.", [], {}),
      form("dense", "Developed too long, by an amount that is not said.", [], {}),
      form("judged", "Right would have been the time given times a ratio.", ["timeRatio"], {
        timeRatio: above0(100, "The right time divided by the time given."),
        logSd,
      }),
      form("steps", "So many steps over or under.", ["steps"], {
        steps: from(-10, 10, "Steps over, or below 0 under."),
        perStep: from(1, 4, "Factor on time of one step; 1.4 when left out."),
        logSd,
      }),
      form("gamma", "The gradient was measured.", ["gamma", "wanted"], grown("gamma")),
      form("density", "The density of a patch was measured.", ["density", "wanted"], grown("density")),
      form("appearance", "The time of appearance tells.", ["appearanceS", "factor"], {
        appearanceS: above0(1e6, "Time at which the image appeared, in seconds."),
        factor: above0(1000, "Total time divided by time of appearance."),
        logSd,
      }),
      form("failed", "It failed: kept, not fitted.", [], { note }),
      form("fogged", "It was fogged: kept, not fitted.", [], { note }),
    ],
  };
}

/** A run: the conditions of the causes that runs can teach, the time given, and how it came out. */
export function runSchema(
  schemas: readonly CauseSchema[],
  taught: readonly LearnedCause[] = everything.causes,
): JsonSchema {
  return object(
    ["timeS", "temperatureC", "outcome"],
    {
      timeS: above0(1e6, "The time given, in seconds."),
      ...conditionFields(schemas, ({ name }) => taught.some(({ cause }) => cause.name === name)),
      outcome: outcomeSchema(),
      id: text(200, "Tells two runs apart that are otherwise equal."),
      date: text(40, "The day in ISO 8601."),
      thermometer: text(200, "The thermometer that the temperature was read from."),
      by: text(200, "Who made the run."),
      batch: text(200, "The bottle or mixing that the bath came from."),
      printed: { const: true, description: "True for a row of a printed table." },
      note: text(2000, "A note."),
    },
    "One development.",
  );
}

/** Learned knowledge: its prior and its runs, and what was worked out from them. */
export function learnedSchema(
  schemas: readonly CauseSchema[],
  taught: readonly LearnedCause[] = everything.causes,
): JsonSchema {
  const prior = object(
    ["baseline", "baseLogSd", "laws", "noise"],
    {
      baseline: baselineSchema(schemas, "The time that was given, and its conditions."),
      baseLogSd: from(0, 3, "How well it was known: standard deviation of ln(time)."),
      laws: lawsSchema(schemas, "The laws that were known."),
      noise: one(
        ["estimated", "stated"],
        "Whether the scatter of the runs is estimated, or as they state it.",
      ),
    },
    "What the knowledge rested on before the first run.",
  );
  const derived: JsonSchema = { type: "object", description: "Worked out from the prior and the runs." };
  const derivedList: JsonSchema = { type: "array", description: "Worked out from the prior and the runs." };
  return object(
    ["schema", "prior", "runs"],
    {
      schema: { const: KNOWLEDGE_VERSION, description: "The version of the format of knowledge." },
      prior,
      runs: list(runSchema(schemas, taught), 0, MOST_RUNS, "The runs."),
      ...Object.fromEntries(
        [...schemas.map(({ cause }) => cause.law), ...Object.keys(pairSchemas)].map((law) => [
          law,
          said(`The law of ${law}, worked out.`, derived),
        ]),
      ),
      batchLogSd: { type: "number", description: "As the prior has it." },
      baseline: said("The base time, worked out from the prior and the runs.", derived),
      parameters: derivedList,
      joint: derived,
      scatter: {
        type: "number",
        description: "By how much the runs scatter more than they say; worked out.",
      },
      setAside: derivedList,
      advice: derivedList,
    },
    "Knowledge that was learned from runs.",
  );
}

/** Knowledge in a document: what was learned, or laws alone. */
export function knowledgeSchema(
  schemas: readonly CauseSchema[],
  taught: readonly LearnedCause[] = everything.causes,
): JsonSchema {
  return {
    description: "What is known of the laws. A generic law serves for each that is left out.",
    anyOf: [learnedSchema(schemas, taught), lawsSchema(schemas, "Laws alone.")],
  };
}
