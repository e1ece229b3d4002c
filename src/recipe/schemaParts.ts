/*
 * Room: recipe. The pieces that the schema of a recipe is put together from.
 */
import type { JsonSchema } from "./readBySchema.js";

/** Fields by name. */
export type Fields = Readonly<Record<string, JsonSchema>>;

export const from = (minimum: number, maximum: number, description?: string): JsonSchema =>
  description === undefined
    ? { type: "number", minimum, maximum }
    : { type: "number", minimum, maximum, description };
/** What lies between 0 and 1e-30 measures nothing: the guards of every room refuse it too. */
export const above0 = (maximum: number, description: string): JsonSchema => ({
  type: "number",
  exclusiveMinimum: 1e-30,
  maximum,
  description,
});
export const text = (maxLength: number): JsonSchema => ({ type: "string", maxLength });
export const one = (...choices: readonly string[]): JsonSchema => ({ type: "string", enum: choices });
export const list = (items: JsonSchema, minItems: number, maxItems: number): JsonSchema => ({
  type: "array",
  items,
  minItems,
  maxItems,
});
export const object = (required: readonly string[], properties: Fields): JsonSchema => ({
  type: "object",
  properties,
  required,
  additionalProperties: false,
});
/** One of several forms; the field `kind` comes first and tells them apart. */
export const form = (kind: string, required: readonly string[], properties: Fields): JsonSchema =>
  object(["kind", ...required], { kind: { const: kind }, ...properties });

export const YES: JsonSchema = { type: "boolean" };
export const LINES: JsonSchema = list(text(2000), 0, 50);
export const TEMPERATURE: JsonSchema = from(0, 100, "°C");
export const TIME: JsonSchema = above0(1e7, "s");
export const AREA_PER_L: JsonSchema = from(0, 1e6, "cm² per litre");
export const AGE: JsonSchema = from(0, 1e6, "h");
// Below it no time of development can be told from none.
export const GAMMA: JsonSchema = from(0.01, 1000, "gradient");
export const CAPACITY: JsonSchema = above0(1e6, "cm² per litre");
export const RUNS: JsonSchema = { type: "integer", minimum: 0, maximum: 1e6 };
export const ORIGIN: Fields = {
  sources: LINES,
  runs: RUNS,
  published: YES,
  seen: one("read", "from-memory", "common-practice"),
};

// Parts from 0.1 to 9999.9, the stock not 0: then no dilution is beyond what the dilution room reads.
const PART = String.raw`\d{1,4}(\.\d)?`;
const STOCK = `(?!0+(\\.0)?\\+)${PART}`;
export const DILUTION: JsonSchema = {
  type: "string",
  maxLength: 40,
  pattern: `^(stock|(${STOCK}\\+){1,3}${PART})$`,
  description: '"stock" or parts such as "1+9", the water last',
};

export const AGITATION: JsonSchema = {
  anyOf: [one("continuous", "stand"), object(["everyS"], { everyS: above0(3600, "s") })],
};
