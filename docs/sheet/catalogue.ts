/*
 * The package's own sentences in the language and unit of the sheet. All that is said of a cause, a basis, a
 * caution or an unreadable text comes from here.
 */
import {
  describeCaution,
  describeProblem,
  describeProblems,
  formatTemperature,
  type Caution,
  type ChartTexts,
  type InputProblem,
  type PictureWordOptions,
} from "darkroom-kinetics";
import { de } from "darkroom-kinetics/texts/de";
import type { Sheet } from "./sheet.js";

/** The sentence of a caution. */
export const cautionText = (caution: Caution, { language, unit }: Sheet): string =>
  describeCaution(caution, language === "de" ? de.cautions : undefined, { unit });

/** A temperature as the language and the unit write it. */
export const temperatureText = (celsius: number, { language, unit }: Sheet): string =>
  language === "de" ? de.chart.temperature(celsius, unit) : formatTemperature(celsius, { unit });

/** What is wrong with one input, without its place. */
export const problemText = (problem: InputProblem, { language, unit }: Sheet): string =>
  describeProblem(problem, language === "de" ? de.problems : undefined, { unit });

/** All that is wrong, each with its place. */
export const problemsText = (problems: readonly InputProblem[], { language, unit }: Sheet): string =>
  describeProblems(problems, language === "de" ? de.problems : undefined, { unit }).join("; ");

/** The catalogues and the unit of a picture. */
export const pictureWords = ({ language, unit }: Sheet): PictureWordOptions =>
  language === "de" ? { texts: de.picture, answerTexts: de.answer, unit } : { unit };

/** The catalogue of the chart. */
export const chartWords = ({ language }: Sheet): ChartTexts | undefined =>
  language === "de" ? de.chart : undefined;
