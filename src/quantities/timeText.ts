/*
 * A time in text, for every function that reads one.
 */
import { unreadable, wrongKind, wrongValue } from "../core/guards.js";
import { withPoint } from "./numberText.js";

const FORMS = 'a time such as "8:30", "1:02:00", "8m30s", "510 s", "8.5 min", "1 h" or "PT8M30S"';
const NUMBER = String.raw`(\d+(?:\.\d+)?)`;
const UNITS = {
  h: String.raw`(?:${NUMBER}\s*(?:h|hrs?|hours?))?`,
  m: String.raw`(?:${NUMBER}\s*(?:m|mins?|minutes?|['\u2032\u2019]))?`,
  s: String.raw`(?:${NUMBER}\s*(?:s|secs?|seconds?|["\u2033\u201d]|''))?`,
};
const CLOCK = /^(?:(\d+):)?(\d+):(\d{2}(?:\.\d+)?)$/;
const WORDS = new RegExp(String.raw`^${UNITS.h}\s*${UNITS.m}\s*${UNITS.s}$`, "i");
const ISO = new RegExp(`^PT(?:${NUMBER}H)?(?:${NUMBER}M)?(?:${NUMBER}S)?$`);
const BARE = new RegExp(`^${NUMBER}$`);

/** The time that a text says, in s, from 0 to 1e7; throws at `at` otherwise. */
export function timeFromText(at: string, text: unknown): number {
  if (typeof text !== "string") wrongKind(at, FORMS, text, { types: ["text"] });
  // Longer, nothing is a time, and a long run of blanks would be searched in every way.
  const plain = text.length > 1000 ? "" : withPoint(text.trim());
  const clock = CLOCK.exec(plain);
  const [, hours, minutes, seconds] = clock ?? ISO.exec(plain) ?? WORDS.exec(plain) ?? [];
  if (hours === undefined && minutes === undefined && seconds === undefined) noTime(at, plain, text);
  if (clock && (Number(seconds) >= 60 || (hours !== undefined && Number(minutes) >= 60)))
    wrongValue(at, "a time with minutes and seconds below 60", text);
  // Fifteen digits: 8.55 × 60 is 513.0000000000001 in doubles, and 513 on paper.
  const timeS = Number(
    (Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + Number(seconds ?? 0)).toPrecision(15),
  );
  if (!(timeS <= 1e7)) wrongValue(at, "at most 10000000 s", text);
  return timeS;
}

function noTime(at: string, plain: string, text: string): never {
  const format = { format: "time", examples: ["8:30", "8.5 min", "510 s"] };
  if (BARE.test(plain))
    wrongValue(at, FORMS, text, { ...format, readings: [`${plain} min`, `${plain} s`] }, "ambiguous");
  return unreadable(at, format.format, format.examples, FORMS, text);
}
