/*
 * The answers of `time` in lines of text.
 */
import {
  describeCautions,
  describeFactor,
  formatDilution,
  formatTemperature,
  formatTime,
  roundEstimate,
  type Caution,
  type Compensation,
} from "../index.js";
import type { BrewReport } from "./dayBrew.js";
import type { TableReport } from "./dayTable.js";
import type { TimeReport } from "./time.js";

/** Beyond this a clock has no face: the longest time that `formatTime` writes, s. */
const LONGEST_S = 1e7;

export function timeLines(report: TimeReport): readonly string[] {
  const { about, known, answers, brew, table, cautions } = report;
  const { timeS, temperatureC, dilution, note } = known;
  const strength = dilution === undefined ? "" : `, ${formatDilution(dilution)}`;
  return [
    ...(about === undefined ? [] : [about, ""]),
    ...describeCautions(cautions),
    `Known: ${formatTime(timeS)} at ` +
      `${formatTemperature(temperatureC)}${strength}${note === undefined ? "" : ` (${note})`}.`,
    ...answers.flatMap(({ name, ...answer }) => ["", name, ...answerLines(answer)]),
    ...(brew === undefined ? [] : ["", ...brewLines(brew)]),
    ...(table === undefined ? [] : ["", ...tableLines(table)]),
  ];
}

/**
 * One time, its causes and cautions. A field that is not read changes the question: it comes before the time.
 */
export function answerLines(answer: Compensation & { readonly refused: boolean }): readonly string[] {
  const { factors, cautions, refused } = answer;
  if (refused) return ["  No time.", ...said(cautions.filter(({ severity }) => severity === "stop"))];
  const { timeS, lowS, highS } = roundEstimate(answer);
  return [
    ...said(cautions.filter(({ code }) => code === "unknown-field")),
    `  Develop ${clock(timeS)}, nine times in ten ${clock(lowS)} to ${clock(highS)}.`,
    ...factors.map((row) => `    ${describeFactor(row)}`),
    ...said(cautions.filter(({ code }) => code !== "unknown-field")),
  ];
}

export function clock(timeS: number): string {
  return timeS <= LONGEST_S ? formatTime(timeS) : "months";
}

/** Without the places in the data: `check` tells them, with line and column. */
function said(cautions: readonly Caution[]): readonly string[] {
  const plain = cautions.map(({ code, severity, message }) => ({ code, severity, message }));
  return describeCautions(plain).map((line) => `    ${line}`);
}

/** The upper half of the 90 % interval of one cause alone. */
function spread(logSd: number): string {
  return `± ${((Math.exp(1.645 * logSd) - 1) * 100).toFixed(0)} %`;
}

function brewLines({ about, known, temperatureC, parts, ph, strength, answer, steps }: BrewReport): string[] {
  const grams = (value: number): string => value.toFixed(1);
  return [
    "A brew by the spoon",
    ...(about === undefined ? [] : [`  ${about}`]),
    ...parts.map(
      ({ ingredient, measured, value, low, high }) =>
        `    ${ingredient.padEnd(16)} ${measured.padEnd(10)} ${grams(value).padStart(5)} g (${grams(low)} ` +
        `to ${grams(high)})`,
    ),
    `    pH ${ph.ph.toFixed(1)} (${ph.low.toFixed(1)} to ${ph.high.toFixed(1)}); strength: ` +
      `time × ${strength.value.toFixed(2)} ${spread(strength.logSd)}`,
    `  Known: ${formatTime(known.timeS)} at ` +
      `${formatTemperature(known.temperatureC)}${known.about === undefined ? "" : ` (${known.about})`}; ` +
      `today ${formatTemperature(temperatureC)}.`,
    ...answerLines(answer),
    // A brew that gets no time is still handled: what is said of its ingredients stays.
    ...(answer.refused ? said(answer.cautions.filter(({ severity }) => severity !== "stop")) : []),
    ...steps.map(({ step, text }) => `    ${step}. ${text}`),
  ];
}

function tableLines({ about, unit, fitRows, law, rows }: TableReport): readonly string[] {
  const degrees = (temperatureC: number): string =>
    unit === "F"
      ? `${formatTemperature(temperatureC, { unit })}, ${formatTemperature(temperatureC)}`
      : formatTemperature(temperatureC);
  return [
    `A published table, predicted from its rows ${fitRows.map((row) => row + 1).join(" and ")}`,
    ...(about === undefined ? [] : [`  ${about}`]),
    `  ${law.activationEnergyKJPerMol.toFixed(1)} kJ/mol, standard deviation ` +
      (law.sdKJPerMol ?? 0).toFixed(1),
    ...rows.map(({ temperatureC, printedS, predictedS }) => {
      const error = (predictedS / printedS - 1) * 100;
      const sign = error >= 0 ? "+" : "";
      return (
        `  ${degrees(temperatureC).padEnd(16)} printed ${clock(printedS)}, predicted ` +
        `${clock(predictedS)} (${sign}${error.toFixed(1)} %)`
      );
    }),
  ];
}
