import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import type { Caution } from "../core/caution.js";
import { MOST_ITEMS, arrayOf, inRange, isBoolean, plainObject } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import { eachMoment, type Moments } from "./moments.js";

/** A reading with its place in the log that was given. */
export interface PlacedReading {
  readonly index: number;
  readonly timeS: number;
  /** whatever was read */
  readonly given: unknown;
  readonly changed: boolean;
}

const FIELDS: readonly string[] = ["timeS", "temperatureC", "changed"];

/** The fields of one reading that are not read. */
export const unreadInReading = (path: string, reading: unknown): readonly Caution[] =>
  typeof reading === "object" && reading !== null ? unreadFields(path, reading, FIELDS) : [];

/** More fields than so many are not named. */
const MOST_NAMED = 50;

/** The fields of a log's readings that are not read: a misspelt `changed` would change nothing. */
export function unreadInLog(path: string, log: readonly unknown[]): readonly Caution[] {
  const unread: Caution[] = [];
  const last = Math.min(log.length, MOST_ITEMS);
  for (let i = 0; i < last && unread.length < MOST_NAMED; i += 1)
    for (const one of unreadInReading(`${path}/${i}`, log[i])) unread.push(one);
  return unread.slice(0, MOST_NAMED);
}

/** A log in the order of time. */
export interface OrderedLog extends Moments {
  /** the time of the latest reading, s from pour-in */
  readonly newestS: number;
  /** the place of the first reading that is earlier than the one before it, or at the time of another */
  readonly outOfOrder: number | undefined;
}

/** Checks the shape of one reading. What it reads is judged later, never refused. */
export function placedReading(at: string, reading: unknown, index: number): PlacedReading {
  const { timeS, temperatureC, changed = false } = plainObject(at, reading);
  inRange(at, timeS, 0, LONGEST_CLOCK_S, "timeS", "/timeS");
  isBoolean(`${at}/changed`, changed);
  return { index, timeS: timeS as number, given: temperatureC, changed };
}

/**
 * Checks the shape of a log and puts it in the order of time.
 *
 * @throws TypeError or RangeError when it is no array of `least` readings or more, or a time is no clock time
 */
export function orderedLog(
  where: string,
  log: unknown,
  least: number,
  statedC: number | undefined,
): OrderedLog {
  const placed = arrayOf(where, log, least).map((one, i) => placedReading(`${where}/${i}`, one, i));
  return inOrder(placed, statedC);
}

/** Readings in the order of time, one each moment; what is given twice counts once. */
export function inOrder(placed: readonly PlacedReading[], statedC: number | undefined): OrderedLog {
  let outOfOrder: number | undefined;
  let newestS = -1;
  for (const { timeS, index } of placed) {
    if (timeS < newestS) outOfOrder ??= index;
    newestS = Math.max(newestS, timeS);
  }
  const once: PlacedReading[] = [];
  const given = new Set<unknown>();
  for (const one of [...placed].sort((a, b) => a.timeS - b.timeS || Number(a.changed) - Number(b.changed))) {
    const before = once.at(-1);
    if (before?.timeS === one.timeS) outOfOrder = Math.min(outOfOrder ?? one.index, one.index);
    if (before?.timeS !== one.timeS || before.changed !== one.changed) given.clear();
    if (!given.has(one.given)) once.push(one);
    given.add(one.given);
  }
  return { ...eachMoment(once, statedC), newestS, outOfOrder };
}
