import { ambiguous, inRange, positive, unreadable } from "../core/guards.js";
import { plainNumber } from "../quantities/numberText.js";
import { timeFromText } from "../quantities/timeText.js";
import type { Agitation } from "./agitation.js";
import { AGITATION } from "./agitation.js";

/** A drum or a tank that rolls, or a tray that is rocked, moves the bath all the time: common practice. */
const CONTINUOUS = new RegExp(
  "^(?:constant(?:ly)?|continuous(?:ly)?|st\u00e4ndig|dauernd|kontinuierlich|" +
    "rotary|rotating|(?:in )?rotation|rotierend|" +
    "(?:(?:constant(?:ly)?|continuous(?:ly)?|st\u00e4ndig|dauernd|kontinuierlich) )?" +
    "(?:rock(?:ed|ing)?|schaukeln|geschaukelt|wiegen|gewiegt))$",
);
const EVERY = "(?:every|each|per|a|once a|once per|alle|jede|je|pro|einmal pro)";
const MINUTE = new RegExp(String.raw`(${EVERY}) (?:1 )?(?:m|min|minute)\.?$`);
/** Each half minute: "every half minute", "alle halbe Minute". */
const HALF_MINUTE = new RegExp(
  String.raw`\b${EVERY} (?:(?:an?|eine) )?hal(?:f|ben?)(?: an?)? m(?:in(?:ute[ns]?)?)?(?!\p{L})\.?`,
  "u",
);
/** A stroke that is no fraction's. */
const SLASH = /\/(?!\d)|(?<!\d)\//g;
const NUMBER = String.raw`\d+(?:[.,]\d+)?`;
/** How many times a minute: "2/min", "2x per min". */
const RATE = new RegExp(String.raw`^(${NUMBER}) ?(?:x|\u00d7|times?|mal)? ?${EVERY} 1 min$`);
/** From so many times on a tank may be turned so often at a time, once a minute: common practice. */
const LEAST_TURNS = 3;
const SECONDS = String.raw`(?:s|secs?|seconds?|sek(?:unden)?)\.?`;
/** How long or how often it is moved each time: "5 s", "4 inversions". */
const MOVED =
  String.raw`(?:(${NUMBER}) ?${SECONDS}|` +
  String.raw`${NUMBER} ?(?:x|\u00d7|times|inversions?|turns?|mal|kipp(?:ung|bewegung)(?:en)?)\.?)`;
const INTERVAL = new RegExp(String.raw`^(?:(?:${MOVED},? )?${EVERY} )?(\d.*)$`, "s");
/** The interval first: "every 30 s 5 s", "jede Minute 10 s", "every minute for 10 s". */
const EACH = "(?:for|je|jeweils)";
const INTERVAL_FIRST = new RegExp(
  String.raw`^${EVERY} (${NUMBER} ?${SECONDS}|minute|(?:${NUMBER} ?)?min(?:ute[ns]?)?\.?(?= ${EACH} )),? ` +
    String.raw`(?:${EACH} )?${MOVED}(?: lang| kippen)?$`,
);
/** What may stand before it: "Kipprhythmus 30 s", "invert every minute". */
const RHYTHM = /^(?:kipprhythmus|kippen|bewegen|schaukeln|wiegen|agitate|invert|rock)(?:: ?| )/;
/** What is done at the start only: "first 30 s, then", "first minute continuous, then". */
const LENGTH = String.raw`(?:${NUMBER} ?)?(?:${SECONDS}|m(?:in(?:ute[ns]?)?)?\.?)`;
const FIRST =
  "(?:at first|first|initial(?:ly)?|at (?:the )?start|zuerst|anfangs|am anfang|die ersten?|ersten?)";
const MOVING = "(?:constant(?:ly)?|continuous(?:ly)?|st\u00e4ndig|dauernd|kontinuierlich)";
const START = new RegExp(
  `^(?:(?:${MOVING} )?(?:for )?(?:the )?${FIRST} ${LENGTH}(?: ${MOVING})?|` +
    `(?:${MOVING} (?:for )?)?${LENGTH} (?:${FIRST}|${MOVING})(?: ${MOVING}| ${FIRST}| agitation)?)[,;]? ` +
    "(?:and |und )?(?:then|dann|danach) ",
);

/**
 * Reads an agitation as people write it.
 *
 * @param text - `"continuous"`, `"constant"`, `"stand"`, or the interval from one agitation to the next,
 * with its unit: `"every 30 s"`, `"1 min"`, `"0:30"`, `"once a minute"`, `"every half minute"`,
 * `"5 s every 30 s"`, `"10s/min"`, `"first 30 s, then 10 s every minute"`; or how often a
 * minute, `"2/min"`; `"rotary"`, `"in rotation"` and `"rocking"`, of a tray, are continuous. In
 * German `"ständig"`, `"dauernd"`, `"Rotation"`, `"schaukeln"`, `"Stand"`, `"alle 30 s"`,
 * `"jede Minute"`, `"alle halbe Minute"`, `"4 Kippungen pro Minute"`, `"Kipprhythmus 30 s"`
 * @returns `"continuous"`, `"stand"` or `{ everyS }`, in s
 * @throws TypeError when `text` is not text
 * @throws RangeError for any other text, when an interval has no unit or a rate may be a count of turns (code
 * `"ambiguous"`), it is not above 0 and at most 3600 s, or is shorter than the movement
 *
 * @remarks How long it is moved each time does not count further, nor what is done at the start: of "5 s
 * every 30 s" the interval is 30 s. Five inversions in each minute are one agitation a minute. So three or
 * more times a minute, as in "5x/min", may be as many turns once a minute, and is asked about (common
 * practice).
 *
 * @example
 * ```ts
 * parseAgitation("every 30 s") // => { everyS: 30 }
 * parseAgitation("once a minute") // => { everyS: 60 }
 * parseAgitation("Stand") // => "stand"
 * ```
 */
export function parseAgitation(text: string): Agitation {
  const at = "parseAgitation/text";
  if (typeof text !== "string") unreadable(at, AGITATION, text);
  const lower = text.trim().toLowerCase().replace(SLASH, " per ").replace(/\s+/g, " ");
  const lasting = lower.replace(RHYTHM, "").replace(START, "").replace(HALF_MINUTE, "every 30 s");
  if (CONTINUOUS.test(lasting)) return "continuous";
  if (lasting === "stand") return lasting;
  const spelt = lasting.replace(MINUTE, "$1 1 min");
  const rate = RATE.exec(spelt)?.[1];
  if (rate !== undefined) {
    const perMinute = positive(at, Number(rate.replace(",", ".")), 1000);
    if (perMinute >= LEAST_TURNS)
      ambiguous(at, AGITATION, [`${rate} inversions/min`, `every ${secondsText(60 / perMinute)} s`], text);
    return { everyS: positive(at, 60 / perMinute, 3600, "timeS") };
  }
  const [, first, movedThen = "0"] = INTERVAL_FIRST.exec(lasting) ?? [];
  const [, movedBefore = "0", behind] = INTERVAL.exec(spelt) ?? [];
  const interval = first?.replace(/^(?=m)/, "1 ") ?? behind;
  if (interval === undefined) unreadable(at, AGITATION, text);
  const everyS = timeFromText(at, interval, { form: AGITATION, whole: text.trimEnd() });
  positive(at, everyS, 3600, "timeS");
  const moved = first === undefined ? movedBefore : movedThen;
  return { everyS: inRange(at, everyS, Number(moved.replace(",", ".")), 3600, "timeS") };
}

/** Seconds as they are read back: to a hundredth, and not with three figures, which could be thousands. */
const secondsText = (seconds: number): string => plainNumber(Number(seconds.toFixed(2)));
