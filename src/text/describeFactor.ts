import { Z90 } from "../core/estimate.js";
import { inRange, plainObject, wrongKind, wrongValue } from "../core/guards.js";
import type { Factor } from "../core/term.js";
import { checkedTexts } from "./checkedTexts.js";
import { answerTexts, type AnswerTexts } from "./answerTexts.js";

/**
 * One row of a compensated time in words.
 *
 * @param row - a row of `compensate`'s factors
 * @param texts - the catalogue of another language; English when left out
 * @returns the cause, its two sides, what it does to the time, how well that is known, and what it rests on
 * @throws TypeError when `row` or a field of it is of the wrong kind
 * @throws RangeError when its factor is not above 0, or its spread not from 0 to 100
 *
 * @remarks "Give or take" means nine in ten: the factor lies within e^(1.645·logSd) times more or less.
 *
 * @example
 * ```ts
 * const law = { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.1 };
 * const known = { timeS: 510, temperatureC: 20 };
 * const { factors } = compensate(known, { temperatureC: 18 }, { temperature: law });
 * describeFactor(factors[1]) // => "temperature, 20 °C to 18 °C: 15 % more, give or take 2 % (given)"
 * ```
 */
export function describeFactor(row: Factor, texts: AnswerTexts = answerTexts): string {
  return factorText("describeFactor/row", row, checkedTexts("describeFactor/texts", texts, answerTexts));
}

/** The same with the place of the row, for errors. */
export function factorText(at: string, row: Factor, texts: AnswerTexts): string {
  const { cause, value, logSd, basis, from, to, before } = plainObject(at, row) as unknown as Factor;
  for (const [field, text] of Object.entries({ cause, basis }))
    if (typeof text !== "string") wrongKind(`${at}/${field}`, "text", text);
  aboveZero(`${at}/value`, value);
  inRange(`${at}/logSd`, logSd, 0, 100);
  for (const [field, side] of Object.entries({ from, to }))
    if (typeof side === "number") inRange(`${at}/${field}`, side, -1e100, 1e100);
  const sides = [from, to].map((side) => (side === undefined ? undefined : texts.side(cause, side)));
  const [known, today] = sides;
  const changed =
    known === undefined || today === undefined || known === today ? today : texts.sides(known, today);
  const named = wordFor(texts.causes, cause) + (changed === undefined ? "" : `, ${changed}`);
  const rests =
    wordFor(texts.bases, basis) + (before === undefined ? "" : `, ${texts.before(texts.bases[before])}`);
  return `${named}: ${texts.change(value)}, ${texts.giveOrTake(Math.exp(Z90 * logSd))} (${rests})`;
}

/** A word of a catalogue; a cause that the catalogue does not know keeps its name. */
function wordFor(words: Readonly<Record<string, string>>, name: string): string {
  return Object.hasOwn(words, name) ? (words[name] as string) : name;
}

/** However small: what `compensate` answers is described. */
export function aboveZero(where: string, value: unknown): void {
  if (typeof value !== "number") wrongKind(where, "a number", value);
  if (!(value > 0 && value <= 1e100)) wrongValue(where, "above 0 and at most 1e100", value);
}
