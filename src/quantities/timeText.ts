/*
 * A time in text, for every function that reads one.
 */
import { ambiguous, inRange, refuse, type TextForm, unreadable } from "../core/guards.js";
import { groupReadings, plainAmount, plainNumber } from "./numberText.js";
import { below60Text } from "./text.js";

export const TIMES: TextForm = { format: "time", examples: ["8:30", "8.5 min", "510 s"] };
const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const HOURS = String.raw`${NUMBER}\s*(?:h|hrs?|hours?|std|stunden?)\.?`;
const MINUTE = String.raw`(?:(?:m|mins?|minutes?|minuten)\.?|['\u2032\u2019])`;
const MINUTES = String.raw`${NUMBER}\s*${MINUTE}`;
const SECONDS = String.raw`${NUMBER}\s*(?:(?:s|secs?|seconds?|sek|sekunden?)\.?|["\u2033\u201d]|'')`;
const CLOCK = /^(?:(\d+):)?(\d+):(\d{2}(?:\.\d+)?)$/;
const CLOCK_UNIT = new RegExp(String.raw`^(\d+:\d{2}(?:\.\d+)?)\s*${MINUTE}$`, "i");
const WORDS = new RegExp(String.raw`^(?:${HOURS})?\s*(?:${MINUTES})?\s*(?:${SECONDS})?$`, "i");
/** "8 min 30", and "1 h 30": the last unit is understood. */
const CUT = [
  new RegExp(String.raw`^(?:${HOURS})?\s*${MINUTES}\s*(\d{1,2})$`, "i"),
  new RegExp(String.raw`^${HOURS}\s*(\d{1,2})()$`, "i"),
];
const ONLY_SECONDS = new RegExp(`^${SECONDS}$`, "i");
const ISO = new RegExp(`^PT(?:${NUMBER}H)?(?:${NUMBER}M)?(?:${NUMBER}S)?$`);
const BARE = new RegExp(`^${NUMBER}$`);
/** Two figures behind minutes that may be seconds, "8.30 min": people write both 8:30 and 8 min 18 s so. */
const MAYBE_CLOCK = new RegExp(String.raw`^(\d+)\.(?!00)([0-5]\d)\s*(${MINUTE})?$`, "i");
/** A fraction was written as one: it is no clock. */
const FRACTION = /[/\u00bc-\u00be]/;

/** What an error asks for where a time is but the end of a text. */
export interface Around {
  /** the whole text */
  readonly whole: string;
  /** what it should be */
  readonly form: TextForm;
}

/** The time that a text says, in s, from 0 to 1e7; throws at `at` otherwise. */
export function timeFromText(at: string, text: unknown, around?: Around): number {
  if (typeof text !== "string") unreadable(at, TIMES, text);
  const plain = plainAmount(text).replace(CLOCK_UNIT, "$1");
  const clocks = FRACTION.test(text) ? undefined : clockReadings(plain);
  if (clocks) asked(at, clocks, text, around);
  const grouped = groupReadings(plain, WORDS, ONLY_SECONDS);
  if (grouped) {
    const [decimal, thousands] = grouped;
    // Two figures could be a clock, where three could not.
    asked(at, [MAYBE_CLOCK.test(decimal) ? plain.replace(",", ".") : decimal, thousands], text, around);
  }
  const clock = CLOCK.exec(plain) ?? CUT[0]?.exec(plain) ?? CUT[1]?.exec(plain);
  const [, hours, minutes, seconds] = clock ?? ISO.exec(plain) ?? WORDS.exec(plain) ?? [];
  if (hours === undefined && minutes === undefined && seconds === undefined) noTime(at, plain, text, around);
  if (clock && (Number(seconds) >= 60 || (hours !== undefined && Number(minutes) >= 60)))
    refuse(at, "below-60", below60Text, {}, around?.whole ?? text);
  // Fifteen digits: 8.64 × 60 is 518.4000000000001 in doubles, and 518.4 on paper.
  const timeS = Number(
    (Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + Number(seconds ?? 0)).toPrecision(15),
  );
  return inRange(at, timeS, 0, 1e7, "timeS");
}

function noTime(at: string, plain: string, text: string, around: Around | undefined): never {
  if (BARE.test(plain)) asked(at, [`${plain} min`, `${plain} s`], text, around);
  const { form, whole } = around ?? { form: TIMES, whole: text };
  return unreadable(at, form, whole);
}

/**
 * What minutes with two figures behind them may mean, the clock first: "8:30", "8 min 18 s"; and seconds
 * where no unit is there.
 */
function clockReadings(plain: string): readonly string[] | undefined {
  const [, whole, figures, unit] = MAYBE_CLOCK.exec(plain) ?? [];
  if (whole === undefined || figures === undefined) return undefined;
  const minutes = Number(whole) === 0 ? "" : `${whole} min `;
  const share = `${minutes}${plainNumber((Number(figures) * 6) / 10)} s`;
  return [`${whole}:${figures}`, share, ...(unit === undefined ? [`${plain} s`] : [])];
}

function asked(at: string, meant: readonly string[], text: string, around: Around | undefined): never {
  const { form, whole } = around ?? { form: TIMES, whole: text };
  const before = whole.slice(0, whole.length - text.length);
  return ambiguous(
    at,
    form,
    meant.map((one) => before + one),
    whole,
  );
}
