/*
 * Module: learning. Every English sentence of this module, made from data.
 */
import { ownEntry } from "../core/ownEntry.js";
import type { CautionSentences } from "../core/cautionTexts.js";
import { decimals, degrees, isFigure } from "../core/digits.js";
import { causesText } from "../core/text.js";
import { formatTime } from "../quantities/formatTime.js";
import type { SetAsideReason } from "./types.js";
import type { InputWanted } from "../core/errorRules.js";

/** The codes of the cautions that this module gives. */
export type LearningCautionCode =
  | "stored-differs"
  | "doubted-run"
  | "not-fitted"
  | "held-at-limit"
  | "far-from-known"
  | "trend"
  | "undated-runs"
  | "scatter"
  | "not-separated"
  | "only-good"
  | "equal-runs";

/** Why a run is not fitted, or counts for less: what follows "the run". */
export const setAsideTexts: Readonly<Record<SetAsideReason, string>> = {
  "failed": "failed",
  "fogged": "is fogged",
  "stand": "compares stand development with agitation",
  "past-life": "has a bath that is past its life",
  "past-covered": "has a bath that is older than its rule of age covers",
  "maybe-fahrenheit": "has a temperature that may be in °F",
  "past-growth": "has a gradient that its law of growth never reaches",
  "too-far": "is too far from the known time for the laws",
  "disagrees": "disagrees with the others beyond chance",
};

/** Why runs are not fitted, whatever their number: each with its count behind it. */
const notFittedTexts: Readonly<Record<Exclude<SetAsideReason, "disagrees">, string>> = {
  "failed": "failed",
  "fogged": "fogged",
  "stand": "stand development against agitation",
  "past-life": "bath past its life",
  "past-covered": "bath older than its rule of age covers",
  "maybe-fahrenheit": "temperature perhaps in °F",
  "past-growth": "gradient that its law of growth never reaches",
  "too-far": "too far from the known time for the laws",
};

const reasonText = (reason: string): string => ownEntry(setAsideTexts, reason) ?? "is in doubt";

/** The base time has no name of its own as a cause. */
const named = (causes: readonly string[]): string =>
  causesText(causes).replace(/\bbaseline\b/, "the base time");

/** The sentence of each caution of this module. */
export const learningSentences: Pick<CautionSentences, LearningCautionCode> = {
  "stored-differs": ({ data }) =>
    `What was stored does not follow from prior and runs: ${data.fields.join(", ")}. ` +
    `It was worked out again.`,
  "doubted-run": ({ data: { run, named: hasId, timeS, temperatureC, date, reason } }, unit) => {
    const when = date === undefined ? "" : `, ${date.slice(0, 10)},`;
    const what = `${isFigure(timeS) ? formatTime(timeS) : "?"} at ${degrees(temperatureC, unit)}`;
    const which = hasId ? `Run ${String(run)} (${what})${when}` : `The run of ${what}${when}`;
    return `${which} ${reasonText(reason)} and counts for less. Check the notes.`;
  },
  "not-fitted": ({ actual, data: { runs, reasons } }) =>
    `${actual} of ${runs} ${runs === 1 ? "run teaches" : "runs teach"} nothing: ` +
    reasons.map((one) => `${ownEntry(notFittedTexts, one.reason) ?? "in doubt"} (${one.runs})`).join(", ") +
    (reasons.some(({ reason }) => reason === "past-covered")
      ? ". Start with a half-life of the bath, as laws.age."
      : "."),
  "held-at-limit": ({ data }) =>
    `The runs carry ${named([data.cause])} past its limit. It is held there. Check the notes.`,
  "far-from-known": ({ actual, data }) =>
    `The runs carry ${named([data.cause])} ${decimals(isFigure(actual) ? Math.abs(actual) : actual)} ` +
    `standard deviations from what is known. Check the notes.`,
  "trend": ({ data }) =>
    `The times have drifted. They are ${decimals(data.ratio, 2)} times those on the oldest date. ` +
    `Check bath and thermometer.`,
  "undated-runs": ({ data: { dated } }) =>
    dated
      ? "Some runs have no date. They are taken in the middle of the dated ones."
      : "Many runs have no date: a thermometer or a bottle that drifts would not show. Note the day.",
  "scatter": ({ actual, data: { runs, few } }) =>
    few
      ? `${runs === 1 ? "The run and the known time disagree" : "The runs and what was known disagree"} ` +
        `more than both say. Run a test strip, and check the notes.`
      : `The runs scatter ${decimals(actual)} times as much as their outcomes say. Not all is in the notes.`,
  "not-separated": ({ data }) =>
    `The runs cannot tell apart ${named(data.causes)}: they changed together. ` +
    `Change one alone in the next test.`,
  "only-good": () =>
    "Nearly all runs were good at the predicted time. They do not tell how far off is still good, " +
    "and the interval may be too narrow. Develop one 30 % longer or shorter.",
  "equal-runs": ({ actual }) =>
    actual === 1
      ? "One run is a copy of another, equal in every field. Both count. Give each an id, or drop one."
      : `${actual} runs are copies of others, equal in every field. All of them count. ` +
        "Give each run an id, or drop the copies.",
};

export const noPlaceText: InputWanted<"place-in-model"> = ({ reason }) =>
  `comparable with the known time, but it ${reasonText(reason)}`;

export const samePriorText: InputWanted<"same-prior"> = () =>
  "knowledge from the same prior as a: learn its runs into a instead";

export const idText: InputWanted<"id-of-one-run"> = () => "the id of one run only: give one of them another";

export const toldApartText: InputWanted<"told-apart"> = ({ max }) =>
  `of at most ${max} people, thermometers, days and conditions that are told apart`;
