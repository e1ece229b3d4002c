import { ownEntry } from "../core/ownEntry.js";
import { Z90 } from "../core/estimate.js";
import type { TemperatureUnit } from "../core/cautionTexts.js";
import { aboveZero, inRange, isText, plainObject } from "../core/guards.js";
import type { FactorRow } from "../core/term.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { checkedTexts } from "./checkedTexts.js";
import { answerTexts, causeText, type AnswerTexts } from "./answerTexts.js";

/**
 * One row of a compensated time in words.
 *
 * @param row - a row of `compensate`'s factors
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for temperatures; °C when left out
 * @returns the cause, its two sides, what it does to the time, how well that is known, and what it rests on
 * @throws TypeError when `row` or a field of it is of the wrong kind
 * @throws RangeError when its factor is not above 0, its spread not from 0 to 100, or the unit unknown
 *
 * @remarks A factor from half to double is said in per cent, "28 % less", and any other in times, "0.44 times
 * the time". "Give or take" means nine in ten: the factor lies within e^(1.645·logSd) times more or less.
 * Below 50 % that is said in per cent, "give or take 30 %", from there on as "give or take a factor of 2".
 *
 * @example
 * ```ts
 * const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.1 };
 * const known = { timeS: 510, temperatureC: 20 };
 * const { factors } = compensate(known, { temperatureC: 18 }, { temperature: law });
 * describeFactor(factors[1]) // => "temperature, 20 °C to 18 °C: 15 % more, give or take 2 % (given)"
 * ```
 */
export function describeFactor(
  row: FactorRow,
  texts: AnswerTexts = answerTexts,
  options: TemperatureUnitOptions = {},
): string {
  checkedTexts("describeFactor/texts", texts, answerTexts);
  const unit = temperatureUnit("describeFactor/options", options) ?? "C";
  return factorText("describeFactor/row", row, texts, unit);
}

/** The same with the place of the row, for errors. */
export function factorText(at: string, row: FactorRow, texts: AnswerTexts, unit: TemperatureUnit): string {
  const { cause, value, logSd, basis, from, to, before } = plainObject(at, row) as unknown as FactorRow;
  for (const [field, text] of Object.entries({ cause, basis })) isText(`${at}/${field}`, text);
  aboveZero(`${at}/value`, value, 1e100);
  inRange(`${at}/logSd`, logSd, 0, 100);
  for (const [field, side] of Object.entries({ from, to }))
    if (typeof side === "number") inRange(`${at}/${field}`, side, -1e100, 1e100);
  const ratio = Math.exp(Z90 * logSd);
  // The known time is no rule that changes anything; where it was learned, that is told.
  if (cause === "baseline" && value === 1)
    return texts.known(ratio) + (SAID.includes(basis) ? "" : ` (${wordFor(texts.bases, basis)})`);
  const sides = [from, to].map((side) => (side === undefined ? undefined : texts.side(cause, side, unit)));
  const [known, today] = sides;
  const changed =
    known === undefined || today === undefined || known === today ? today : texts.sides(known, today, cause);
  const named = causeText(cause, to, texts) + (changed === undefined ? "" : `, ${changed}`);
  if (basis === "unchanged" && logSd === 0) return `${named}: ${texts.bases.unchanged}`;
  const rests =
    wordFor(texts.bases, basis) + (before === undefined ? "" : `, ${texts.before(texts.bases[before])}`);
  return `${named}: ${texts.change(value)}, ${texts.giveOrTake(ratio)} (${rests})`;
}

/** What a known time rests on where it was simply said. */
const SAID: readonly string[] = ["given", "default", "unchanged"];

/** A word of a catalogue; what it does not know keeps its name. */
function wordFor(words: Readonly<Record<string, string>>, name: string): string {
  return ownEntry(words, name) ?? name;
}
