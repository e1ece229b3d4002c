/*
 * The answers of `time` in lines of text.
 */
import {
  describeCautions,
  describeFactor,
  describeMixing,
  formatDilution,
  formatSpread,
  formatTemperature,
  formatTime,
  roundEstimate,
  safetyText,
  type Caution,
  type Compensation,
  type MassOfInput,
} from "../index.js";
import { clockText } from "../quantities/clockText.js";
import type { BrewReport } from "./dayBrew.js";
import type { TableReport } from "./dayTable.js";
import type { TimeReport } from "./time.js";
import type { Words } from "./words.js";

export function timeLines(report: TimeReport, words: Words): readonly string[] {
  const { about, known, answers, brew, table, cautions } = report;
  const { timeS, temperatureC, dilution, note } = known;
  const strength = dilution === undefined ? "" : `, ${words.dilution(formatDilution(dilution))}`;
  const more = `${strength}${note === undefined ? "" : ` (${note})`}.`;
  return [
    ...(about === undefined ? [] : [about, ""]),
    ...describeCautions(cautions, words.texts?.cautions, words),
    words.known(formatTime(timeS), words.figure(formatTemperature(temperatureC, words)), more),
    ...answers.flatMap(({ name, ...answer }) => ["", name, ...answerLines(answer, words)]),
    ...(brew === undefined ? [] : ["", ...brewLines(brew, words)]),
    ...(table === undefined ? [] : ["", ...tableLines(table, words)]),
    "",
    safetyIn(words),
  ];
}

/** Gloves, air, silver and data sheets: once, below everything else. */
export const safetyIn = ({ texts }: Pick<Words, "texts">): string => texts?.chart.safety ?? safetyText;

/**
 * One time, its causes and cautions. A field that is not read changes the question: it comes before the time.
 */
export function answerLines(answer: Compensation, words: Words): readonly string[] {
  const { factors, cautions, refused } = answer;
  const of = (which: (caution: Caution) => boolean): readonly string[] => said(cautions.filter(which), words);
  if (refused) return [`  ${words.noTime}`, ...of(({ severity }) => severity === "stop")];
  const { timeS, lowS, highS } = roundEstimate(answer);
  const times = [clock(timeS, words), clock(lowS, words), clock(highS, words)] as const;
  return [
    ...of(({ code }) => code === "unknown-field"),
    `  ${words.develop(...times)}`,
    ...factors.map((row) => `    ${describeFactor(row, words.texts?.answer, words)}`),
    ...of(({ code }) => code !== "unknown-field"),
  ];
}

export const clock = (timeS: number, { months }: Pick<Words, "months">): string => clockText(timeS, months);

/** The width of a column of texts. */
export const longest = (texts: readonly string[]): number =>
  texts.reduce((widest, text) => Math.max(widest, text.length), 0);

/** Without the places in the data: `check` tells them, with line and column. */
function said(cautions: readonly Caution[], words: Words): readonly string[] {
  const plain = cautions.map((one) => ({ ...one, path: "" }));
  return describeCautions(plain, words.texts?.cautions, words).map((line) => `    ${line}`);
}

function measured(part: MassOfInput, { spoons, tablets }: Words): string {
  return "spoons" in part ? spoons(part.spoons, part.heap ?? "level") : tablets(part.tablets, part.labelMg);
}

function brewLines(report: BrewReport, words: Words): string[] {
  const { about, known, temperatureC, parts, ph, strength, answer, steps } = report;
  const { figure, to } = words;
  const tenths = (value: number): string => figure(value.toFixed(1));
  const degrees = (celsius: number): string => figure(formatTemperature(celsius, words));
  const factor = `${figure(strength.value.toFixed(2))} ± ${figure(formatSpread(strength.logSd))}`;
  const source = known.about === undefined ? "" : ` (${known.about})`;
  const more = `${source}; ${words.today(degrees(temperatureC))}`;
  const names = parts.map(({ part }) => words.ingredient(part.ingredient));
  const width = longest(names);
  return [
    words.brew,
    ...(about === undefined ? [] : [`  ${about}`]),
    ...parts.map(
      ({ part, value, low, high }, i) =>
        `    ${(names[i] as string).padEnd(width)} ${measured(part, words).padEnd(10)} ` +
        `${tenths(value).padStart(5)} g (${tenths(low)} ${to} ${tenths(high)})`,
    ),
    `    pH ${tenths(ph.ph)} (${tenths(ph.low)} ${to} ${tenths(ph.high)}); ${words.strength(factor)}`,
    `  ${words.known(formatTime(known.timeS), degrees(known.temperatureC), more)}`,
    ...(report.unlearned === undefined ? [] : [`  ${words.unlearned}`]),
    ...answerLines(answer, words),
    // A brew that gets no time is still handled: what is said of its ingredients stays.
    ...(answer.refused
      ? said(
          answer.cautions.filter(({ severity }) => severity !== "stop"),
          words,
        )
      : []),
    ...describeMixing(steps, words.texts?.mixing, words).map((text, i) => `    ${i + 1}. ${text}`),
  ];
}

function tableLines({ about, unit, fitRows, law, rows }: TableReport, words: Words): readonly string[] {
  const { figure } = words;
  const degrees = (temperatureC: number): string =>
    figure(
      unit === "F"
        ? `${formatTemperature(temperatureC, { unit })}, ${formatTemperature(temperatureC)}`
        : formatTemperature(temperatureC),
    );
  const sd = figure((law.sdKJPerMol ?? 0).toFixed(1));
  return [
    words.table(fitRows.map((row) => row + 1)),
    ...(about === undefined ? [] : [`  ${about}`]),
    `  ${figure(law.activationEnergyKJPerMol.toFixed(1))} kJ/mol, ${words.deviation} ${sd}`,
    ...rows.map(({ temperatureC, printedS, predictedS }) => {
      const error = (predictedS / printedS - 1) * 100;
      const sign = error >= 0 ? "+" : "";
      const times = words.printed(clock(printedS, words), clock(predictedS, words));
      return `  ${degrees(temperatureC).padEnd(16)} ${times} (${sign}${figure(error.toFixed(1))} %)`;
    }),
  ];
}
