/*
 * A picture in words: what stands at its dots, curves, limits and rungs, and the description of it all.
 */
import { ownEntry } from "../core/ownEntry.js";
import { formatTemperature } from "../quantities/formatTemperature.js";
import { roundEstimate } from "../quantities/roundEstimate.js";
import { clockText } from "../quantities/clockText.js";
import type { TimeEstimate } from "../core/estimate.js";
import { causeText, type AnswerTexts } from "../text/answerTexts.js";
import type { PictureFacts, PictureMoment, PictureRungWords, PictureTexts } from "./text.js";
import type { AnswerPicture, PictureRung } from "./types.js";

/** All that a picture says. */
export interface PictureWords {
  /** what the picture is */
  readonly title: string;
  /** sentences for those who hear the picture */
  readonly description: readonly string[];
  /** at the known dot */
  readonly known: string;
  /** at today's dot; missing where the time is refused */
  readonly today?: string;
  /** the time as it is shown; missing where it is refused */
  readonly time?: string;
  /** its interval as it is shown; missing with it */
  readonly interval?: string;
  /** at the curve of today's bath */
  readonly thisBath: string;
  /** at the curve of the known recipe */
  readonly asKnown: string;
  /** at the warnings, in their order */
  readonly warnings: readonly string[];
  /** in the stretches without a time, in their order */
  readonly refusals: readonly string[];
  /** at the rungs, in their order */
  readonly rungs: readonly PictureRungWords[];
  /** above the strip; missing where none was asked for */
  readonly strip?: string;
  /** at the pieces of the strip, in their order */
  readonly stripTimes: readonly string[];
  /** at the ticks of the axis of time */
  readonly ticks: readonly string[];
}

/** The catalogues and the unit. */
export interface Language {
  readonly texts: PictureTexts;
  readonly answerTexts: AnswerTexts;
  readonly unit: "C" | "F" | undefined;
  readonly written: Readonly<Record<string, string | undefined>>;
}

/** The words of a checked picture. */
export function wordsOf(picture: AnswerPicture, language: Language): PictureWords {
  const { texts, unit } = language;
  const { known, today, warnings, refusals, rungs, strip, axes } = picture;
  const clock = (timeS: number): string => clockOf(timeS, texts);
  const degrees = (temperatureC: number): string => formatTemperature(temperatureC, { unit });
  const said = today === undefined ? undefined : shown(today, texts);
  const words = {
    title: texts.title,
    known: texts.known(clock(known.timeS)),
    ...(today === undefined || said === undefined
      ? {}
      : {
          today: (today.steady ? texts.steady : texts.today)(degrees(today.temperatureC)),
          time: said.time,
          interval: `${said.low} ${texts.to} ${said.high}`,
        }),
    thisBath: texts.thisBath,
    asKnown: texts.asKnown,
    warnings: warnings.map(({ code, side }) => texts.warning(code, side)),
    refusals: refusals.map(({ code, side }) => texts.refusal(code, side)),
    rungs: rungs.map((rung) => rungWords(rung, known.temperatureC, language)),
    ...(strip === undefined
      ? {}
      : { strip: strip.timesS.length === 0 ? texts.noStrip : texts.strip(strip.timesS.length) }),
    stripTimes: strip === undefined ? [] : strip.timesS.map(clock),
    ticks: ticksOf(axes.ticksS, texts),
  };
  return { ...words, description: texts.description(factsOf(picture, words, language)) };
}

function rungWords(rung: PictureRung, knownC: number, language: Language): PictureRungWords {
  const { texts, answerTexts, unit } = language;
  const { kind, cause, endS, lowS, highS, percent, basis } = rung;
  if (kind === "sum") {
    const { time, low, high } = shown({ timeS: endS, lowS, highS }, texts);
    return { cause: texts.together, basis: `${low} ${texts.to} ${high}`, change: time };
  }
  const rests = basis === undefined ? "" : answerTexts.bases[basis];
  if (kind === "known") {
    const own = basis === "given" || basis === "default" ? texts.said : rests;
    return { cause: texts.at(formatTemperature(knownC, { unit })), basis: own, change: clockOf(endS, texts) };
  }
  if (cause === "strip")
    return { cause: texts.yourStrip, basis: texts.seenToday, change: answerTexts.change(1 + percent / 100) };
  return { cause: causeWords(rung, language), basis: rests, change: answerTexts.change(1 + percent / 100) };
}

/** A cause in people's words: `"6° colder"`, `"1+14 instead of 1+9"`. */
function causeWords(
  { cause, from, to }: PictureRung,
  { texts, answerTexts, unit, written }: Language,
): string {
  const name = causeText(cause, to, answerTexts);
  if (to === undefined) return cause === "temperature" ? texts.drifts : name;
  if (cause === "temperature" && typeof from === "number" && typeof to === "number") {
    const step = Number((Math.abs(to - from) * (unit === "F" ? 1.8 : 1)).toFixed(1));
    return to < from ? texts.colder(`${step}°`) : texts.warmer(`${step}°`);
  }
  const now = ownEntry(written, cause) ?? answerTexts.side(cause, to, unit ?? "C");
  if (now === undefined) return name;
  const known = from === undefined ? undefined : answerTexts.side(cause, from, unit ?? "C");
  if (cause === "use" || cause === "age") return texts[cause](now, from === 0 ? undefined : known);
  if (known === undefined) return `${name}, ${now}`;
  return cause === "contrast" || cause === "push"
    ? `${name}, ${texts.instead(now, known)}`
    : texts.instead(now, known);
}

/** A time and its interval, rounded together. */
function shown(estimate: TimeEstimate, texts: PictureTexts): Record<"time" | "low" | "high", string> {
  const { timeS, lowS, highS } = roundEstimate(estimate);
  return { time: clockOf(timeS, texts), low: clockOf(lowS, texts), high: clockOf(highS, texts) };
}

const clockOf = (timeS: number, { beyond }: PictureTexts): string => clockText(timeS, beyond);

/** Whole minutes where all ticks are, the last with its unit; otherwise as a clock shows them. */
function ticksOf(ticksS: readonly number[], texts: PictureTexts): readonly string[] {
  const whole = ticksS.every((timeS) => timeS % 60 === 0 && timeS < 7200);
  const last = ticksS.length - 1;
  return ticksS.map((timeS, i) => (whole ? texts.minutes(timeS / 60, i === last) : clockOf(timeS, texts)));
}

function factsOf(
  picture: AnswerPicture,
  words: Omit<PictureWords, "description">,
  { texts, unit }: Language,
): PictureFacts {
  const { known, today, curves, warnings, refusals, points, rungs, axes } = picture;
  const clock = (timeS: number): string => clockOf(timeS, texts);
  const degrees = (temperatureC: number): string => formatTemperature(temperatureC, { unit });
  const usable = [...curves.bath]
    .filter(({ refused }) => refused !== true)
    .sort((a, b) => a.temperatureC - b.temperatureC);
  const momentOf = (point: (typeof usable)[number] | undefined): PictureMoment | undefined =>
    point && { time: shown(point, texts).time, temperature: degrees(point.temperatureC) };
  const coldest = momentOf(usable[0]);
  const warmest = momentOf(usable[usable.length - 1]);
  return {
    fromTime: clock(axes.lowS),
    toTime: clock(axes.highS),
    fromTemperature: degrees(axes.fromC),
    toTemperature: degrees(axes.toC),
    known: { time: clock(known.timeS), temperature: degrees(known.temperatureC) },
    ...(today && {
      today: {
        ...shown(today, texts),
        temperature: degrees(today.temperatureC),
        steady: today.steady === true,
      },
    }),
    ...(coldest && warmest && { coldest, warmest }),
    warnings: warnings.map(({ atC }, i) => {
      const from = degrees(atC);
      return { text: words.warnings[i] as string, from, to: from };
    }),
    refusals: refusals.map(({ fromC, toC }, i) => ({
      text: words.refusals[i] as string,
      from: degrees(fromC),
      to: degrees(toC),
    })),
    tableRows: points.filter(({ of }) => of === "table").length,
    ownRuns: points.filter(({ of }) => of === "run").length,
    causes: words.rungs.filter((_, i) => rungs[i]?.kind === "cause"),
  };
}
