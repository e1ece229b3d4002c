/*
 * The English sentences of the cautions that more than one module gives, each from its data.
 */
import { ownEntry } from "./ownEntry.js";
import type { CautionSentences } from "./cautionTexts.js";
import { ageText, degreesApart, digits } from "./digits.js";
import { show } from "./errors.js";
import type { InputWanted } from "./errorRules.js";

/** What a sentence calls a pair or a mark; a cause has its own name. */
const CALLED: Readonly<Record<string, string>> = {
  interaction: "temperature with dilution",
  thermometer: "this thermometer",
  by: "this person",
  batch: "this batch",
};

/** Causes, pairs and marks in a sentence; a pair right behind both of its causes is not named anew. */
export function causesText(names: unknown): string {
  if (!Array.isArray(names)) return "?";
  const all = names as readonly string[];
  const both = (i: number): boolean => all[i - 2] === "temperature" && all[i - 1] === "dilution";
  const called = all.map((name, i) =>
    name === "interaction" && both(i) ? "both together" : (ownEntry(CALLED, name) ?? name),
  );
  return called.join(", ").replace(/, ([^,]*)$/, " and $1");
}

export const unknownFieldSentence: Pick<CautionSentences, "unknown-field"> = {
  "unknown-field": ({ data: { field, nearest } }) =>
    `The field ${show(field)} is not read.${nearest === undefined ? "" : ` Is ${nearest} meant?`}`,
};

export const outsideTableSentence: Pick<CautionSentences, "outside-table"> = {
  "outside-table": ({ data: { cause } }) =>
    `A ${cause} lies outside the table. The slope of its last rows is carried on.`,
};

const WRONG_WAY = {
  temperature: "colder",
  dilution: "weaker",
  agitation: "less agitated",
  age: "older",
} as const;

export const wrongWaySentence: Pick<CautionSentences, "wrong-way"> = {
  "wrong-way": ({ data: { cause } }) =>
    cause === "push"
      ? "Here a push takes less time than no push, or a pull takes more. " +
        "Check the runs: is a minus missing, are thin and dense mixed up?"
      : `The ${WRONG_WAY[cause]} bath comes out faster here. ` +
        "No developer works so. Check rows and runs: are thin and dense mixed up?",
};

export const farSentence: Pick<CautionSentences, "far-extrapolation"> = {
  "far-extrapolation": ({ severity, limit, actual, data: { cause, bath } }, unit) =>
    cause === "temperature"
      ? `More than ${degreesApart(limit, unit)} from the temperature of the known time.`
      : severity === "stop"
        ? `At 1+${digits(actual)} there is less stock than any print gives a time for, 1+${digits(limit)}.`
        : `The bath is ${digits(actual, 2)} times ${bath ?? "weaker or stronger"} ` +
          "than that of the known time. " +
          `Printed tables reach ${digits(limit)} times.`,
};

export const defaultLawSentence: Pick<CautionSentences, "default-law"> = {
  "default-law": ({ data: { causes } }) =>
    `No data of your own for ${causesText(causes)}. A generic law with a wide spread is used.`,
};

export const pastLifeSentence: Pick<CautionSentences, "bath-past-life"> = {
  "bath-past-life": ({ severity, limit, actual, data }) => {
    const life = ageText(limit);
    const age = ageText(actual);
    if (data.at === "pour-in")
      return `The bath is older than its life of ${life}: it fails at once. Mix fresh.`;
    return severity === "stop"
      ? `The bath lives ${life} and is ${age} old at the pour-out: it fails before the end. Mix fresh.`
      : `The bath lives ${life}. At the long end of the interval it is ${age} old. Mix just before use.`;
  },
};

export const mayFailSentence: Pick<CautionSentences, "bath-may-fail"> = {
  "bath-may-fail": ({ limit, actual, data }) => {
    const [from, age] = [ageText(limit), ageText(actual)];
    return data.at === "pour-in"
      ? `The bath is ${age} old. It may fail from ${from} on. Mix fresh.`
      : `The bath may fail from ${from} on. At the long end of the interval it is ${age} old. ` +
          `Mix just before use.`;
  },
};

export const enoughText: InputWanted<"enough-without"> = ({ least, path }) =>
  `at least ${least} when ${path.slice(1)} is not given`;

export const spreadText: InputWanted<"spread-at-most"> = ({ max }) =>
  `such that ln(time) spreads by at most ${max}`;

export const newerText: InputWanted<"known-version"> = ({ max }) =>
  `at most ${max}, the newest version that this package reads (or update it)`;

/** A bath that takes so many times as long as a fresh one is dead. */
export const MOST_SLOWED = 1000;

export const slowingText: InputWanted<"slowing-at-most"> = ({ max }) =>
  `such that the bath slows at most ${max} times`;

export const rowsSlowerText: InputWanted<"rows-slower"> = ({ by, rows }) =>
  `different in ${by}, ` +
  (by === "dilution"
    ? "no faster when weaker, nor slower by more than concentration^-5"
    : "no faster when colder, nor slower by more than 2.72 times per °C") +
  `, not ${rows.map(({ at, timeS }) => `${timeS} s at ${show(at)}`).join(" and ")}`;

export const risingText: InputWanted<"rising"> = ({ above }) => `above the one before (${above})`;

export const knownFieldText: InputWanted<"known-field"> = ({ values, hint }) =>
  `a field that is read${hint === undefined ? "" : `, perhaps ${hint}`} (all are ${values.join(", ")})`;

export const inOrderText: InputWanted<"in-order"> = ({ lowS, timeS, highS }) =>
  `lowS, timeS and highS in that order, not ${lowS}, ${timeS} and ${highS} s`;

export const jsonText: InputWanted<"json"> = ({ line, column }) =>
  `JSON, but breaks off at line ${line}, column ${column}`;

export const onceText: InputWanted<"once"> = ({ line, column }) =>
  `a name that its object has once (it comes again at line ${line}, column ${column})`;

export const plainText: InputWanted<"plain-data"> = () =>
  "plain data that can be read, at most 20 levels deep";
