/*
 * Numbers in text, as people write them, and as they are written out.
 */
import { unreadable } from "../core/guards.js";

/**
 * Decimal commas as points: one or two figures after the comma, or any number after a 0. Three figures after
 * another number could be thousands.
 */
export function withPoint(text: string): string {
  return text.replace(/(?<![\d.,])(?:0,\d+|\d+,\d{1,2})(?![\d,])/g, (number) => number.replace(",", "."));
}

/** A number above 0 or 0 without an exponent: 1e-7 is "0.0000001". */
export function plainNumber(value: number): string {
  const text = String(value);
  if (!text.includes("e-")) return text;
  const [mantissa, exponent] = text.split("e-") as [string, string];
  return `0.${"0".repeat(Number(exponent) - 1)}${mantissa.replace(".", "")}`;
}

/**
 * Text that is a bare number, or a word and one ("every 30"), with a unit after it; other text as it is. Two
 * figures of a clock beside a unit that is neither minute nor second, or three beside any, say two things:
 * they get it too, and that cannot be read.
 */
export function withUnit(text: string, unit: string): string {
  const clock = /^\d+:\d+(:\d+)?$/.exec(text);
  const bare = clock
    ? clock[1] !== undefined || !/^[ms]/i.test(unit)
    : /^(?:[a-z]+\s+)?[-+]?\.?\d+(?:\.\d+)?$/i.test(text);
  return bare && unit !== "" ? `${text} ${unit}` : text;
}

/** A number from text; throws when the text holds no number. `where` is what the error calls it. */
export function numberFromText(text: string, where: string): number {
  if (!/^[-+]?(?:\d+(?:\.\d+)?|\.\d+)$/.test(text))
    unreadable(`/${where}`, "number", ["0.6"], "a number", text);
  return Number(text);
}
