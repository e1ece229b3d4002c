/*
 * The English of what an input should have been, each from its data. They are apart, so that an app carries
 * only those it needs; what a rule says is with the module of the rule.
 */
import { named, show, type ExpectedFigures } from "./errors.js";
import { unitOf } from "./quantity.js";

/** Whether a character of a text was lost when it was read: then it holds U+FFFD. */
export const lostCharacter = (text: string): boolean => text.includes("\uFFFD");

/** What is wanted, and what was given, as it is shown. */
export const mustText = (wanted: string, given: string): string =>
  `must be ${wanted}, got ${given}` +
  (lostCharacter(given) ? " (a character was lost: save the file as UTF-8)" : "");

/** What is wanted, and what was given, if anything was. */
export const mustBe = (wanted: string, actual: unknown): string =>
  actual === undefined ? `is missing: ${wanted}` : mustText(wanted, show(actual));

/** Values in words: "a", "b" or "c". */
export const valuesText = (values: readonly unknown[]): string =>
  values
    .map(show)
    .join(", ")
    .replace(/, ([^,]*)$/, " or $1");

/** The kinds that are taken. */
export const typesText = (types: readonly string[]): string =>
  types
    .map((type) => (type === "text" ? type : type === "boolean" ? "true or false" : named(type)))
    .join(" or ");

/** A range with both ends. */
export const fromTo = (min: number, max: number): string => `from ${min} to ${max}`;

/** A range whose lower end is not taken. */
export const aboveTo = (above: number, max: number): string => `above ${above} and at most ${max}`;

/** A range as data, in words. */
export const rangeText = ({ min, above = 0, max = Infinity, quantity }: ExpectedFigures): string =>
  (min === undefined ? aboveTo(above, max) : fromTo(min, max)) + unitOf(quantity);

/** The side of another field, which is named with its figure: "above fromC (12 °C)". */
export const sideText = ({ min, above, max, below, quantity, path = "" }: ExpectedFigures): string => {
  const name = path.slice(path.lastIndexOf("/") + 1);
  const figure = `${min ?? above ?? max ?? below}${unitOf(quantity)}`;
  const word =
    min !== undefined ? "at least" : above !== undefined ? "above" : max !== undefined ? "at most" : "below";
  return `${word} ${name} (${figure})`;
};

/** A text of a format, with examples. */
export const formatText = (format: string, examples: readonly string[]): string =>
  `${named(format)} such as ${valuesText(examples)}`;

/** The fields that hold readings of the thermometer, which their names do not say. */
const OF_READINGS: readonly string[] = ["log", "temperatureC", "temperatureAt"];

/** Whether a list is one of readings: by the last field of its place. */
export const holdsReadings = (path: string): boolean =>
  OF_READINGS.includes(path.slice(path.lastIndexOf("/") + 1));

/** How many items are wanted, and how many there are. */
export const itemsText = ({ least, most }: ExpectedFigures, count: number, path = ""): string => {
  const noun = holdsReadings(path) ? ((least ?? most) === 1 ? " reading" : " readings") : "";
  return (
    `must hold ${least === most ? "" : least === undefined ? "at most " : "at least "}` +
    `${least ?? most}${noun}, got ${count}`
  );
};

/** All that a value should be, for what a schema asks. */
export function wantedText(expected: ExpectedFigures): string {
  const { forms, format, examples = [], values, types, fields } = expected;
  if (forms !== undefined) return forms.map(wantedText).join(", or ");
  if (format !== undefined) return formatText(format, examples);
  if (examples.length > 0) return `${typesText(types ?? [])} such as ${examples.join(" or ")}`;
  const kind =
    values !== undefined ? valuesText(values) : types !== undefined ? typesText(types) : "anything";
  const parts = [kind, fields && `with ${fields.join(", ")}`, limitsText(expected), lengthText(expected)];
  return parts.filter(Boolean).join(" ");
}

/** The limits of a number, of which either end may be open. */
function limitsText(expected: ExpectedFigures): string | undefined {
  const { min, above, max } = expected;
  if (max !== undefined) return (min ?? above) === undefined ? `of at most ${max}` : rangeText(expected);
  if (min !== undefined) return `of at least ${min}`;
  return above === undefined ? undefined : `above ${above}`;
}

/** How many items a list holds, or characters a text. */
function lengthText({ types, least = 0, most }: ExpectedFigures): string | undefined {
  if (most === undefined) return undefined;
  return types?.includes("array") === true ? `of ${least} to ${most}` : `of at most ${most} characters`;
}
