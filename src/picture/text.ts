/*
 * Every English word of a picture that is not in the catalogue of an answer: a catalogue of the same shape
 * says it in another language.
 */
import { ownEntry } from "../core/ownEntry.js";
import type { CautionCode } from "../core/cautionCodes.js";
import type { InputWanted } from "../core/errorRules.js";

/** A catalogue: all that a picture says besides causes, bases and changes, in one language. */
export interface PictureTexts {
  /** what the picture is, for those who hear it */
  readonly title: string;
  /** at the known dot; the time is written already */
  readonly known: (time: string) => string;
  /** at today's dot; the temperature is written already */
  readonly today: (temperature: string) => string;
  /** the same for a bath that drifts */
  readonly steady: (temperature: string) => string;
  /** at the curve of today's bath */
  readonly thisBath: string;
  /** at the curve of the known recipe */
  readonly asKnown: string;
  /** where a warning begins; `side` is the side that is warned of */
  readonly warning: (code: CautionCode, side: "below" | "above") => string;
  /** in a stretch without a time */
  readonly refusal: (code: CautionCode, side: "below" | "above" | undefined) => string;
  /** a tick of the axis of time, in minutes; `last` is the one that carries the unit */
  readonly minutes: (minutes: number, last: boolean) => string;
  /** the rung of the known time */
  readonly at: (temperature: string) => string;
  /** what the known time rests on when it was simply given */
  readonly said: string;
  /** a change of temperature; `degrees` is above 0 and written already */
  readonly colder: (degrees: string) => string;
  /** the same the other way round */
  readonly warmer: (degrees: string) => string;
  /** a bath whose temperature changes while it works */
  readonly drifts: string;
  /** a change of a condition that has a short form */
  readonly instead: (now: string, known: string) => string;
  /** the area that went through the bath before; `known` is missing where it was 0 */
  readonly use: (now: string, known: string | undefined) => string;
  /** the age of the bath; `known` is missing where it was 0 */
  readonly age: (now: string, known: string | undefined) => string;
  /** the rung of a test strip that was judged */
  readonly yourStrip: string;
  /** what that rung rests on */
  readonly seenToday: string;
  /** the rung of the sum */
  readonly together: string;
  /** between the two ends of an interval */
  readonly to: string;
  /** in the place of the ladder where the time is refused */
  readonly nothing: string;
  /** over a strip of so many times */
  readonly strip: (count: number) => string;
  /** in the place of a strip whose times would look alike */
  readonly noStrip: string;
  /** for a time that no clock shows */
  readonly beyond: string;
  /** the picture in sentences, for those who hear it */
  readonly description: (facts: PictureFacts) => readonly string[];
}

/** A time at a temperature, both written already. */
export interface PictureMoment {
  /** as a clock shows it */
  readonly time: string;
  /** with its unit */
  readonly temperature: string;
}

/** Today's time in the description, written already. */
export interface PictureTodayFacts extends PictureMoment {
  /** the low end of its interval */
  readonly low: string;
  /** the high end of its interval */
  readonly high: string;
  /** the bath drifts, and the temperature is that of a steady one that takes as long */
  readonly steady: boolean;
}

/** A word of the picture with the temperatures that it is about, written already. */
export interface PictureLimitFacts {
  /** the word that is written there */
  readonly text: string;
  /** the temperature where it begins; of a stretch, its cold end */
  readonly from: string;
  /** the warm end of a stretch; the same as `from` for a warning */
  readonly to: string;
}

/** What the description is made from: all of it is written already. */
export interface PictureFacts {
  /** the left edge of the axis of time */
  readonly fromTime: string;
  /** the right edge of the axis of time */
  readonly toTime: string;
  /** the lower edge of the axis of temperature */
  readonly fromTemperature: string;
  /** the upper edge of the axis of temperature */
  readonly toTemperature: string;
  /** the known dot */
  readonly known: PictureMoment;
  /** today's dot; missing where the time is refused */
  readonly today?: PictureTodayFacts;
  /** the coldest point of the curve of today's bath that has a time; missing where none has */
  readonly coldest?: PictureMoment;
  /** the warmest of those points */
  readonly warmest?: PictureMoment;
  /** where warnings begin */
  readonly warnings: readonly PictureLimitFacts[];
  /** the stretches without a time */
  readonly refusals: readonly PictureLimitFacts[];
  /** how many rows of a table are marked */
  readonly tableRows: number;
  /** how many own runs are marked */
  readonly ownRuns: number;
  /** the rungs between the known time and the sum */
  readonly causes: readonly PictureRungWords[];
}

/** The words of a rung. */
export interface PictureRungWords {
  /** the cause: `"6° colder"` */
  readonly cause: string;
  /** what it rests on: `"general rule"`; of the sum, its interval */
  readonly basis: string;
  /** what it does to the time: `"67 % more"`; of the known time and the sum, the time */
  readonly change: string;
}

const WARNINGS: Readonly<Partial<Record<CautionCode, string>>> = {
  "hydroquinone-cold": "hydroquinone weakens",
  "soft-emulsion-warm": "soft gelatin swells",
  "outside-table": "the table ends",
};

const REFUSALS: Readonly<Partial<Record<CautionCode, string>>> = {
  "hydroquinone-cold": "hydroquinone stops: no time",
  "soft-emulsion-warm": "soft gelatin tears: no time",
  "maybe-fahrenheit": "perhaps °F: no time",
  "bath-past-life": "past its life: no time",
  "bath-past-capacity": "worn out: no time",
  "bath-past-keeping": "kept too long: no time",
};

const counted = (count: number, one: string, many: string): string =>
  count === 1 ? `One ${one}` : `${count} ${many}`;

/** The English of a picture. */
export const pictureTexts: PictureTexts = /* @__PURE__ */ Object.freeze({
  title: "Colder is longer",
  known: (time: string) => `known ${time}`,
  today: (temperature: string) => `today ${temperature}`,
  steady: (temperature: string) => `today, like a steady ${temperature}`,
  thisBath: "this bath",
  asKnown: "as known",
  warning: (code: CautionCode, side: "below" | "above") =>
    ownEntry(WARNINGS, code) ?? (side === "below" ? "colder than usual" : "warmer than usual"),
  refusal: (code: CautionCode, side: "below" | "above" | undefined) =>
    ownEntry(REFUSALS, code) ??
    (side === undefined ? "no time" : side === "below" ? "too cold: no time" : "too warm: no time"),
  minutes: (minutes: number, last: boolean) => (last ? `${minutes} min` : String(minutes)),
  at: (temperature: string) => `At ${temperature}`,
  said: "what you said",
  colder: (degrees: string) => `${degrees} colder`,
  warmer: (degrees: string) => `${degrees} warmer`,
  drifts: "a bath that drifts",
  instead: (now: string, known: string) => `${now} instead of ${known}`,
  use: (now: string, known: string | undefined) =>
    known === undefined ? `${now} went through before` : `${now} went through before instead of ${known}`,
  age: (now: string, known: string | undefined) =>
    known === undefined ? `mixed ${now} ago` : `mixed ${now} ago instead of ${known}`,
  yourStrip: "Your strip",
  seenToday: "seen today",
  together: "Together",
  to: "to",
  nothing: "Nothing is worked out for this.",
  strip: (count: number) => `One scrap, ${count} times.`,
  noStrip: "No strip: its ends would look alike.",
  beyond: "months",
  description: englishDescription,
});

function englishDescription(facts: PictureFacts): readonly string[] {
  const { fromTime, toTime, fromTemperature, toTemperature, known, today } = facts;
  const { coldest, warmest, warnings, refusals, tableRows, ownRuns, causes } = facts;
  return [
    `Time runs to the right on a logarithmic scale, from ${fromTime} to ${toTime}.`,
    `Temperature rises from ${fromTemperature} to ${toTemperature}.`,
    `The known time is ${known.time} at ${known.temperature}.`,
    ...(today === undefined
      ? ["Today has no time."]
      : [
          `Today it is ${today.time}${today.steady ? ", as in a bath held" : ""} at ${today.temperature}, ` +
            `nine times in ten ${today.low} to ${today.high}.`,
        ]),
    ...(coldest === undefined || warmest === undefined
      ? []
      : [
          `In this bath the time falls from ${coldest.time} at ${coldest.temperature} ` +
            `to ${warmest.time} at ${warmest.temperature}.`,
        ]),
    ...warnings.map(({ text, from }) => `A warning begins at ${from}: ${text}.`),
    ...refusals.map(({ text, from, to }) => `From ${from} to ${to}: ${text}.`),
    ...(tableRows === 0 ? [] : [`${counted(tableRows, "row of a table is", "rows of a table are")} marked.`]),
    ...(ownRuns === 0 ? [] : [`${counted(ownRuns, "run of your own is", "runs of your own are")} marked.`]),
    ...causes.map(({ cause, change, basis }) => `${cause}: ${change} (${basis}).`),
  ];
}

export const nameText: InputWanted<"name"> = () => "a letter and then letters, digits and hyphens";
