/*
 * The package's own sentences in the language and unit of the sheet. All that is said of a cause, a basis, a
 * caution or an unreadable text comes from here.
 */
import {
  describeCaution,
  describeProblem,
  describeProblems,
  formatTemperature,
  isInputError,
  type Caution,
  type ChartTexts,
  type InputFormat,
  type InputProblem,
  type PictureWordOptions,
} from "darkroom-kinetics";
import { de } from "darkroom-kinetics/texts/de";
import { unusable } from "./answer.js";
import type { Sheet, Store } from "./sheet.js";
import { namesOf, wordsOf } from "./words.js";

/** The sentence of a caution. */
export const cautionText = (caution: Caution, { language, unit }: Sheet): string =>
  describeCaution(caution, language === "de" ? de.cautions : undefined, { unit });

/** A temperature as the language and the unit write it. */
export const temperatureText = (celsius: number, { language, unit }: Sheet): string =>
  language === "de" ? de.chart.temperature(celsius, unit) : formatTemperature(celsius, { unit });

/** What is wrong with one input, without its place. */
export const problemText = (problem: InputProblem, { language, unit }: Sheet): string =>
  describeProblem(problem, language === "de" ? de.problems : undefined, { unit });

/** An example of what may be written, or a reading of what was, as the language writes it. */
export const exampleText = (text: string, format: InputFormat | undefined, { language }: Sheet): string =>
  language === "de"
    ? text === "stock"
      ? wordsOf(language).stock
      : // As the catalogue quotes it.
        de.problems.wanted({ readings: [text], format }).slice(1, -1)
    : text;

/** All that is wrong, each with its place. */
export const problemsText = (problems: readonly InputProblem[], { language, unit }: Sheet): string =>
  describeProblems(problems, language === "de" ? de.problems : undefined, { unit }).join("; ");

/** Why something was refused. */
export const reasonText = (error: unknown, sheet: Sheet): string =>
  isInputError(error) ? problemsText([error], sheet) : wordsOf(sheet.language).damaged;

/** Why the time that is shown is not to be used; no text where it is. */
export function staleText({ sheet, answer }: Pick<Store, "sheet" | "answer">): string {
  const words = wordsOf(sheet.language);
  return answer.stale ? words.stale(namesOf(unusable(answer.problems), words)) : "";
}

/** The catalogues and the unit of a picture, and what went through the bath as it was typed. */
export const pictureWords = ({ sheet, answer }: Pick<Store, "sheet" | "answer">): PictureWordOptions => {
  const { count, format } = answer.read;
  return {
    ...(sheet.language === "de" ? { texts: de.picture, answerTexts: de.answer } : {}),
    unit: sheet.unit,
    written: { use: `${count.trim()} × ${answer.formatTaken ?? format.trim()}` },
  };
};

/** The catalogue of the chart. */
export const chartWords = ({ language }: Sheet): ChartTexts | undefined =>
  language === "de" ? de.chart : undefined;
