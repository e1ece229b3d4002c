import { arrayOf, inRange, plainObject, wrongKind, wrongValue } from "../core/guards.js";
import { formatTime } from "../quantities/formatTime.js";
import type { Compensation } from "../compensate/types.js";
import { checkedCautions, describeCautions } from "./describeCautions.js";

/** Beyond this a clock has no face: the longest time that `formatTime` writes, s. */
const LONGEST_S = 1e7;

/**
 * A compensated time in short English lines.
 *
 * @param compensation - what `compensate` returns
 * @returns the time with its interval, a line for each cause that changes it or makes it less sure, then the
 * cautions; with a caution to stop, the cautions first, and the time as what the laws alone would say
 * @throws TypeError when `compensation` or a part of it is of the wrong kind
 * @throws RangeError when a time or a factor is not above 0, or a spread not from 0 to 100
 *
 * @example
 * ```ts
 * const law = { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.1 };
 * describeCompensation(compensate({ timeS: 510, temperatureC: 20 }, { temperatureC: 18 }, { temperature: law })).slice(0, 3) // => ["Develop 9:46, with 90 % certainty between 9:07 and 10:27.", "baseline: unchanged, give or take 4 % (default)", "temperature: 15 % more, give or take 1 % (given)"]
 * ```
 */
export function describeCompensation(compensation: Compensation): readonly string[] {
  checkedCompensation("describeCompensation/compensation", compensation);
  const { timeS, lowS, highS, factors, cautions } = compensation;
  const clock = (value: number): string => (value <= LONGEST_S ? formatTime(value) : "months");
  const lines = factors
    .filter(({ value, logSd }) => value !== 1 || logSd > 0)
    .map(
      ({ cause, value, logSd, basis }) =>
        `${cause}: ${change(value)}, give or take ${spread(logSd)} (${basis})`,
    );
  const span = `with 90 % certainty between ${clock(lowS)} and ${clock(highS)}.`;
  const said = describeCautions(cautions);
  if (cautions.some(({ severity }) => severity === "stop"))
    return ["No time to go by:", ...said, `The laws alone would say ${clock(timeS)}, ${span}`, ...lines];
  return [`Develop ${clock(timeS)}, ${span}`, ...lines, ...said];
}

/** An answer may come back from a program's own store. */
function checkedCompensation(where: string, compensation: unknown): void {
  const { timeS, lowS, highS, factors, cautions } = plainObject(where, compensation);
  for (const [field, value] of Object.entries({ timeS, lowS, highS })) aboveZero(`${where}/${field}`, value);
  arrayOf(`${where}/factors`, factors, 0).forEach((factor, i) => {
    const at = `${where}/factors/${i}`;
    const { cause, value, logSd, basis } = plainObject(at, factor);
    for (const [field, text] of Object.entries({ cause, basis }))
      if (typeof text !== "string") wrongKind(`${at}/${field}`, "text", text);
    aboveZero(`${at}/value`, value);
    inRange(`${at}/logSd`, logSd, 0, 100);
  });
  checkedCautions(`${where}/cautions`, cautions);
}

/** However small: what `compensate` answers is described. */
function aboveZero(where: string, value: unknown): void {
  if (typeof value !== "number") wrongKind(where, "a number", value);
  if (!(value > 0 && value <= 1e100)) wrongValue(where, "above 0 and at most 1e100", value);
}

function percent(share: number): string {
  return `${(share * 100).toFixed(0)} %`;
}

function spread(logSd: number): string {
  const share = Math.expm1(logSd);
  return share < 0.995 ? percent(share) : `a factor of ${Number((1 + share).toPrecision(2))}`;
}

function change(factor: number): string {
  if (Math.abs(factor - 1) < 0.005) return "unchanged";
  if (factor >= 1.995 || factor < 0.5) return `${Number(factor.toPrecision(2))} times the time`;
  return factor > 1 ? `${percent(factor - 1)} more` : `${percent(1 - factor)} less`;
}
