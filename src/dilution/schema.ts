/*
 * The JSON Schema of a dilution and of a dilution law.
 */
import {
  above0,
  departures,
  form,
  from,
  list,
  object,
  origin,
  type CauseSchema,
  type JsonSchema,
} from "../core/schema.js";
import { dilutionCause } from "./cause.js";
import { LONGEST_TEXT, TABLE_EXPONENT_RANGE } from "./dilution.js";

// Parts as parseDilution reads them, but for a colon, since both of its readings are in print.
const PART = String.raw`\d+([.,]\d+)?\s*`;

/** A dilution as text or as parts. */
export const dilutionSchema = (description: string): JsonSchema => ({
  description,
  anyOf: [
    {
      type: "string",
      maxLength: LONGEST_TEXT,
      pattern: `^\\s*(([sS][tT][oO][cC][kK]\\s*)|(${PART}(\\+\\s*${PART})+))$`,
      description: '"stock" or parts such as "1+9", the water last.',
    },
    object(
      ["stockParts", "waterParts"],
      {
        stockParts: above0(1e5, "Parts of stock."),
        waterParts: from(0, 1e10, "Parts of water, at most 100000 for each part of stock."),
        stocks: list(
          above0(1e5, "Parts of one stock."),
          1,
          100,
          "The parts of each stock, where the bath is mixed from several; their sum is stockParts.",
        ),
      },
      "The dilution in parts.",
    ),
  ],
});

const row = (): JsonSchema =>
  object(
    ["dilution", "timeS"],
    {
      dilution: dilutionSchema("Dilution of the row."),
      timeS: above0(1e7, "Time that gives the same contrast with this dilution, in seconds."),
      stepS: above0(1e7, "The step to which the time was rounded, in seconds."),
    },
    "A row of the table.",
  );

/** Dilution and its law as JSON Schema. */
export const dilutionCauseSchema: CauseSchema = {
  cause: dilutionCause,
  condition: () => dilutionSchema("Dilution of the developer."),
  law: () => ({
    description: "How development time depends on dilution.",
    anyOf: [
      form("power", "Time is proportional to a power of the concentration.", ["exponent"], {
        exponent: from(0, 3, "The exponent n: time is proportional to concentration to the power −n."),
        sd: from(0, 3, "Standard deviation of the exponent."),
        scatterLogSd: from(0, 3, "How far single times lie from the power: standard deviation of ln(time)."),
        ...departures(),
        ...origin(),
      }),
      form("table", "A maker's table of times.", ["rows"], {
        rows: list(
          row(),
          2,
          10_000,
          "The rows, no two of one concentration, none shorter than a stronger one.",
        ),
        exponentOff: from(
          ...TABLE_EXPONENT_RANGE,
          "How far the slope of the whole table is off, as an exponent.",
        ),
        sd: from(0, 3, "Standard deviation of that; 0.1 when left out."),
        ...departures(
          undefined,
          undefined,
          "How far ln(time) lies from the table there; beyond its rows, from the place before.",
        ),
        ...origin(),
      }),
    ],
  }),
};
