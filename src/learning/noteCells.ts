/*
 * Room: learning. The cells of a notebook as people fill them: what a column is, and what a cell says.
 */
import type { Agitation } from "../agitation/agitation.js";
import { show } from "../core/guards.js";
import { fahrenheitToCelsius } from "../quantities/fahrenheitToCelsius.js";
import { filmAreaCm2 } from "../quantities/filmAreaCm2.js";
import { parseTime } from "../quantities/parseTime.js";
import type { Outcome } from "./types.js";

/** What a column is for, by the first word of its heading. */
const COLUMNS: Readonly<Record<string, string>> = {
  time: "time",
  development: "time",
  temp: "temperature",
  temperature: "temperature",
  dilution: "dilution",
  agitation: "agitation",
  every: "agitation",
  used: "used",
  age: "age",
  outcome: "outcome",
  result: "outcome",
  gamma: "gamma",
  gradient: "gamma",
  density: "density",
  wanted: "wanted",
  appearance: "appearance",
  factor: "factor",
  sd: "sd",
  id: "id",
  run: "id",
  date: "date",
  note: "note",
  notes: "note",
};

/** Units that a heading may carry for its column, as the last word. */
const UNITS = ["s", "sec", "min", "h", "c", "f"];

/** A column: its field, or none where the heading is not known, and the unit in its heading, if any. */
export interface Column {
  readonly field: string | undefined;
  readonly unit: string;
}

/** Reads a heading such as "Time (s)", "temperatureC", "Temp °F", "time_min". */
export function readHeading(heading: string): Column {
  const words = heading
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== "");
  const [first = "", ...rest] = words;
  const last = rest.pop() ?? "";
  return { field: Object.hasOwn(COLUMNS, first) ? COLUMNS[first] : undefined, unit: UNITS.includes(last) ? last : "" };
}

/** The text of a cell, trimmed; empty for a blank. */
export function cellText(cell: unknown): string {
  // What a data frame or a spreadsheet leaves in an empty cell.
  if (cell === undefined || cell === null || Number.isNaN(cell)) return "";
  return typeof cell === "string" ? cell.trim() : show(cell);
}

/** A decimal comma as a point: one or two figures after it, since three could be thousands. */
export function withPoint(text: string): string {
  return text.replace(/^([-+]?\d+),(\d{1,2})(?!\d)/, "$1.$2");
}

function withUnit(text: string, unit: string): string {
  return /^[-+]?\d+(?:\.\d+)?$/.test(text) ? `${text} ${unit}`.trim() : text;
}

/** A plain number from a cell; throws when it is none. */
export function numberCell(field: string, text: string): number {
  if (!/^[-+]?\d+(?:\.\d+)?$/.test(text)) throw new RangeError(`${field} must be a number, got ${JSON.stringify(text)}`);
  return Number(text);
}

/** Seconds from "8:30", "8.5 min", or a bare number under a heading with a unit. */
export function timeCell(text: string, unit: string): number {
  return parseTime(withUnit(text, unit));
}

/** °C from "20 °C", "68F", or a bare number under a heading with a unit. */
export function temperatureCell(text: string, unit: string): number {
  const [, degrees, scale] = /^([-+]?\d+(?:\.\d+)?)\s*\u00b0?\s*([CF])$/i.exec(withUnit(text, unit)) ?? [];
  if (scale === undefined) throw new RangeError(`temperature must say its unit, such as "20 °C" or "68F", got ${JSON.stringify(text)}`);
  // Fifteen digits: 68.36 °F is 20.2 °C on paper.
  return scale.toUpperCase() === "F" ? Number(fahrenheitToCelsius(Number(degrees)).toPrecision(15)) : Number(degrees);
}

/** "continuous", "stand", "every 30 s", "1 min". */
export function agitationCell(text: string, unit: string): Agitation {
  const lower = text.toLowerCase();
  if (lower === "continuous" || lower === "stand") return lower;
  return { everyS: timeCell(lower.replace(/^every\s+/, ""), unit) };
}

/** cm² per litre from "516 cm2/l", "2 rolls/l"; a bare number is cm² per litre. */
export function usedCell(text: string): number {
  const [, amount, unit] = /^(\d+(?:\.\d+)?)\s*(cm[2\u00b2]\/l|rolls?\/l|)$/i.exec(text) ?? [];
  if (unit === undefined) throw new RangeError(`used must be such as "516 cm2/l" or "2 rolls/l", got ${JSON.stringify(text)}`);
  return Number(amount) * (unit.toLowerCase().startsWith("roll") ? filmAreaCm2("120") : 1);
}

/** Hours from "90 min", "2 h", "3 days", or a bare number under a heading in hours. */
export function ageCell(text: string, unit: string): number {
  const days = /^(\d+(?:\.\d+)?)\s*d(?:ays?)?$/i.exec(text)?.[1];
  return days === undefined ? timeCell(text, unit) / 3600 : Number(days) * 24;
}

const OUTCOMES = '"good", "failed", "fogged", "over 1", "under 0.5", "N+1", "x1.2", or a measured gradient or density with what was wanted';

/** "good", "failed", "fogged"; steps over or under ("over 1", "-0.5", "N+1"); or the right time as a multiple ("x1.2"). */
export function outcomeCell(text: string): Outcome {
  const lower = text.toLowerCase().replaceAll("−", "-");
  if (/^(?:good|ok|right|normal|n)$/.test(lower)) return { kind: "good" };
  if (lower === "failed" || lower === "fogged") return { kind: lower };
  const [, word, sign, steps] = /^(?:(over|under)\s*|n?\s*([-+]))(\d+(?:\.\d+)?)(?:\s*(?:steps?|stops?))?$/.exec(lower) ?? [];
  if (steps !== undefined) return { kind: "steps", steps: Number(steps) * (word === "under" || sign === "-" ? -1 : 1) };
  const ratio = /^[x\u00d7]\s*(\d+(?:\.\d+)?)$/.exec(lower)?.[1];
  if (ratio === undefined) throw new RangeError(`outcome must be ${OUTCOMES}, got ${JSON.stringify(text.slice(0, 60))}`);
  return { kind: "judged", timeRatio: Number(ratio) };
}
