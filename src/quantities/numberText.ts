/*
 * Room: quantities. Bare numbers in text, as people type them into a table.
 */
import { unreadable } from "../core/guards.js";

/** A decimal comma as a point: one or two figures after it, since three could be thousands. */
export function withPoint(text: string): string {
  return text.replace(/(\d),(\d{1,2})(?!\d)/, "$1.$2");
}

/**
 * Text that is a bare number, or a word and one ("every 30"), with a unit after it; other text as it is. Two
 * figures of a clock beside a unit that is neither minute nor second, or three beside any, say two things:
 * they get it too, and nobody reads that.
 */
export function withUnit(text: string, unit: string): string {
  const clock = /^\d+:\d+(:\d+)?$/.exec(text);
  const bare = clock
    ? clock[1] !== undefined || !/^[ms]/i.test(unit)
    : /^(?:[a-z]+\s+)?[-+]?\.?\d+(?:\.\d+)?$/i.test(text);
  return bare && unit !== "" ? `${text} ${unit}` : text;
}

/** A number from text; throws when it is none. `where` is what the error calls it. */
export function numberFromText(text: string, where: string): number {
  if (!/^[-+]?(?:\d+(?:\.\d+)?|\.\d+)$/.test(text))
    unreadable(`/${where}`, "number", ["0.6"], "a number", text);
  return Number(text);
}
