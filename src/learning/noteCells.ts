/*
 * Room: learning. The cells of a notebook as people fill them: what a column is, and what a cell says.
 */
import { agitationInterval, type Agitation } from "../agitation/agitation.js";
import { show, wrongValue } from "../core/guards.js";
import { fahrenheitToCelsius } from "../quantities/fahrenheitToCelsius.js";
import { filmAreaCm2 } from "../quantities/filmAreaCm2.js";
import { parseTime } from "../quantities/parseTime.js";
import type { Outcome } from "./types.js";

/** What can stand in a column, by the first word of its heading. */
const FIELDS = new Set(
  ["time", "temperature", "dilution", "agitation", "used", "age", "outcome", "gamma", "density", "wanted", "appearance", "factor", "sd", "id", "date", "note"],
);

/** Other words for them. */
const SYNONYMS: Readonly<Record<string, string>> = {
  development: "time",
  temp: "temperature",
  every: "agitation",
  result: "outcome",
  gradient: "gamma",
  run: "id",
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
  const words = heading.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
  const [first = "", ...rest] = words.match(/[a-z0-9]+/g) ?? [];
  const last = rest.pop() ?? "";
  const field = Object.hasOwn(SYNONYMS, first) ? (SYNONYMS[first] as string) : first;
  return { field: FIELDS.has(field) ? field : undefined, unit: UNITS.includes(last) ? last : "" };
}

/** The text of a cell, trimmed; empty for a blank. */
export function cellText(cell: unknown): string {
  // What a data frame or a spreadsheet leaves in an empty cell.
  if (cell === undefined || cell === null || Number.isNaN(cell)) return "";
  return typeof cell === "string" ? cell.trim() : show(cell);
}

/** A decimal comma as a point: one or two figures after it, since three could be thousands. */
export function withPoint(text: string): string {
  return text.replace(/(\d),(\d{1,2})(?!\d)/, "$1.$2");
}

const NUMBER = /^[-+]?\d+(?:\.\d+)?$/;

function withUnit(text: string, unit: string): string {
  return NUMBER.test(text) ? `${text} ${unit}`.trim() : text;
}

/** A plain number from a cell; throws when it is none. */
export function numberCell(text: string, _: string, field: string): number {
  if (!NUMBER.test(text)) wrongValue(field, "a number", text);
  return Number(text);
}

/** Seconds from "8:30", "8.5 min", or a bare number under a heading with a unit. */
export function timeCell(text: string, unit: string): number {
  return parseTime(withUnit(text, unit));
}

/** °C from "20 °C", "68F", or a bare number under a heading with a unit. */
export function temperatureCell(text: string, unit: string): number {
  const [, degrees, scale] = /^([-+]?\d+(?:\.\d+)?)\s*\u00b0?\s*([CF])$/i.exec(withUnit(text, unit)) ?? [];
  if (scale === undefined) wrongValue("temperature", 'such as "20 °C" or "68F", with its unit', text);
  // Fifteen digits: 68.36 °F is 20.2 °C on paper.
  return scale.toUpperCase() === "F" ? Number(fahrenheitToCelsius(Number(degrees)).toPrecision(15)) : Number(degrees);
}

/** "continuous", "stand", "every 30 s", "1 min". */
export function agitationCell(text: string, unit: string): Agitation {
  const lower = text.toLowerCase();
  if (lower === "continuous" || lower === "stand") return lower;
  const agitation = { everyS: timeCell(lower.replace(/^every\s+/, ""), unit) };
  agitationInterval("agitation", agitation);
  return agitation;
}

/** cm² per litre from "516 cm2/l", "2 rolls/l"; a bare number is cm² per litre. */
export function usedCell(text: string): number {
  const [, amount, unit] = /^(\d+(?:\.\d+)?)\s*(cm[2\u00b2]\/l|rolls?\/l|)$/i.exec(text) ?? [];
  if (unit === undefined) wrongValue("used", 'such as "516 cm2/l" or "2 rolls/l"', text);
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
  if (ratio === undefined) wrongValue("outcome", OUTCOMES, text);
  return { kind: "judged", timeRatio: Number(ratio) };
}
