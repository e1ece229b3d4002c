/*
 * The JSON Schema of what `compensate` takes: loops over a list of causes with their schemas.
 */
import type { AnyCause } from "../core/cause.js";
import {
  above0,
  count,
  from,
  lines,
  list,
  object,
  one,
  text,
  yes,
  type CauseSchema,
  type Fields,
  type JsonSchema,
} from "../core/schema.js";
import { BASES } from "../core/term.js";
import { pairSchemas } from "../pairs.js";
import { marks } from "./marks.js";

/** The conditions of the causes that `which` takes, by their fields. */
export function conditionFields(
  schemas: readonly CauseSchema[],
  which: (cause: AnyCause) => boolean,
): Fields {
  return Object.fromEntries(
    schemas.filter(({ cause }) => which(cause)).map(({ cause, condition }) => [cause.field, condition()]),
  );
}

/** A known time and its conditions. */
export function baselineSchema(schemas: readonly CauseSchema[], description: string): JsonSchema {
  const required = schemas.flatMap(({ cause }) => (cause.required === true ? [cause.field] : []));
  return object(
    ["timeS", ...required],
    {
      timeS: above0(1e6, "The known time, in seconds."),
      ...conditionFields(schemas, ({ relative }) => relative !== true),
      logSd: from(0, 3, "How well the time is known: the standard deviation of ln(time)."),
      runs: count(1e6, "How many own runs the time was learned from."),
      before: one(BASES, "What a learned time rested on before its first run."),
      moved: yes("False where the runs have hardly moved a learned time."),
      sources: lines("Where the time was found."),
      hydroquinone: yes("True when the developer holds hydroquinone, which stops working in the cold."),
      emulsion: one(["soft", "hardened"], "Soft is a plate or an unhardened film, which takes less heat."),
    },
    description,
  );
}

const MARKS = {
  thermometer: "The thermometer that the temperature is read from.",
  by: "Who judges the negative.",
  batch: "The bottle or mixing that the bath comes from.",
} as const;

/** Today's conditions. */
export function conditionsSchema(schemas: readonly CauseSchema[]): JsonSchema {
  return object(
    [],
    {
      ...conditionFields(schemas, () => true),
      ...Object.fromEntries(marks.map(({ field }) => [field, text(200, MARKS[field])])),
    },
    "Today's conditions. What is left out is as for the known time.",
  );
}

/** The laws of knowledge, by their fields. */
export function lawFields(schemas: readonly CauseSchema[]): Fields {
  return Object.fromEntries([
    ...schemas.map(({ cause, law }) => [cause.law, law()] as const),
    ...Object.entries(pairSchemas).map(([law, schema]) => [law, schema()] as const),
  ]);
}

/** Laws, and the correlations of what was learned together. */
export function lawsSchema(schemas: readonly CauseSchema[], description: string): JsonSchema {
  return object(
    [],
    {
      ...lawFields(schemas),
      batchLogSd: from(0, 3, "By how much one batch differs from another: a standard deviation of ln(time)."),
      joint: jointSchema(schemas),
    },
    description,
  );
}

function jointSchema(schemas: readonly CauseSchema[]): JsonSchema {
  const numbers = (least: number, each: string, description: string): JsonSchema =>
    list(from(least, 1, each), 0, 1000, description);
  return object(
    ["baseline", "parameters", "correlation", "unshared"],
    {
      baseline: baselineSchema(schemas, "The base time and its conditions that were learned with them."),
      parameters: list(text(200, "A name."), 0, 1000, "The names of the numbers, in the order of the rows."),
      correlation: list(
        numbers(-1, "A correlation.", "A row of the matrix."),
        0,
        1000,
        "Their correlations: symmetric, 1 on the diagonal.",
      ),
      unshared: numbers(
        0,
        "A share.",
        "What of each number's spread is its own, once those before it are known.",
      ),
      offsets: list(
        object(
          ["parameter", "value", "sd"],
          {
            parameter: text(200, "The name of the number."),
            value: from(-10, 10, "The offset, in ln(time)."),
            sd: from(0, 10, "Its standard deviation."),
            usual: yes("Every run names it: who asks without a name means it."),
          },
          "One offset.",
        ),
        0,
        1000,
        "The offsets of thermometers, people and batches.",
      ),
    },
    "The correlations of the numbers that were learned from the same runs.",
  );
}
