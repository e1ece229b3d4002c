/*
 * A schema as lines, one for each place: the contract of the format, to be compared as text.
 */
import type { JsonSchema } from "../../src/core/schema.js";

/** A line for the schema at `path`, and those of everything below it. */
export function linesOf(schema: JsonSchema, path = ""): readonly string[] {
  const { properties, required, items, anyOf, additionalProperties, patternProperties, ...rest } = schema;
  const own = Object.entries(rest).map(([key, value]) => `${key} ${JSON.stringify(value)}`);
  if (properties !== undefined)
    own.push(
      `fields ${Object.keys(properties)
        .map((name) => (required?.includes(name) === true ? `${name}!` : name))
        .join(" ")}`,
    );
  if (additionalProperties === false) own.push("no others");
  if (patternProperties !== undefined) own.push(`but ${Object.keys(patternProperties).join(" ")}`);
  return [
    ...(anyOf === undefined || own.length > 0 ? [`${path} ${own.join(", ")}`] : []),
    ...(anyOf === undefined ? [] : anyOf.flatMap((one, i) => linesOf(one, `${path}|${i}`))),
    ...Object.entries(properties ?? {}).flatMap(([name, inner]) => linesOf(inner, `${path}/${name}`)),
    ...(items === undefined ? [] : linesOf(items, `${path}/-`)),
  ];
}
