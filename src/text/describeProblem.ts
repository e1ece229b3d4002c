import type { TemperatureUnit } from "../core/cautionTexts.js";
import { inFahrenheit } from "../core/digits.js";
import { inputErrorCodes, placeText, type ExpectedFigures } from "../core/errors.js";
import { isText, notOneOf, plainObject } from "../core/guards.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { checkedTexts } from "./checkedTexts.js";
import { problemTexts, type InputProblem, type ProblemTexts } from "./problemTexts.js";

/**
 * What is wrong with an input in one sentence, without its place: for a form that shows it beside the field.
 *
 * @param problem - an input error that was caught, or a problem of `checkRecipe`, `checkKnowledge`,
 * `checkLog`, `checkLedger`, `checkPlan`, `checkConditions` or `readRunNotes`
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for the limits of temperatures; °C when left out
 * @returns the sentence
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when the code is not known, or the unit none of the two
 *
 * @example
 * ```ts
 * const check = checkConditions({ timeS: 510, temperatureC: 20 }, { temperatureC: 300 });
 * const said = check.ok ? [] : check.problems.map((one) => describeProblem(one));
 * said // => ["must be from 0 to 100 °C, got 300"]
 * ```
 */
export function describeProblem(
  problem: InputProblem,
  texts: ProblemTexts = problemTexts,
  options: TemperatureUnitOptions = {},
): string {
  checkedProblem("describeProblem/problem", problem);
  checkedTexts("describeProblem/texts", texts, problemTexts);
  return problemSentence(problem, texts, temperatureUnit("describeProblem/options", options) ?? "C");
}

/** Checks what a problem is read for. */
export function checkedProblem(at: string, problem: InputProblem): void {
  // An error is no plain object, and is read as one.
  const { code, path, expected, message, sentence = message } = plainObject(at, problem);
  if (!inputErrorCodes.includes(code as InputProblem["code"])) notOneOf(`${at}/code`, inputErrorCodes, code);
  isText(`${at}/path`, path);
  plainObject(`${at}/expected`, expected);
  isText(`${at}/message`, message);
  isText(`${at}/sentence`, sentence);
}

/** The sentence of a problem in the language of a catalogue. */
export function problemSentence(problem: InputProblem, texts: ProblemTexts, unit: TemperatureUnit): string {
  const { code, expected, actual, message, sentence = message } = problem;
  const { must, path, quantity, types, values, least, most } = expected;
  const shown = unit === "F" && (quantity === "temperatureC" || quantity === "temperatureDifferenceC");
  // In English and °C it is written already.
  if (texts === problemTexts && (!shown || must !== undefined)) return sentence;
  if (must !== undefined) {
    const rule = texts.rules[must] as ((given: object, actual: unknown) => string) | undefined;
    if (rule === undefined) return sentence;
    const wanted = rule(expected, actual);
    return texts.must(wanted, actual === undefined ? undefined : valueText(problem, texts), must);
  }
  if (code === "needs-counterpart" && path !== undefined) return texts.counterpart(placeText(path));
  if (types === undefined && values === undefined && (least ?? most) !== undefined)
    return texts.items(expected, actual as number, problem.path);
  const inUnit = shown ? limitsInFahrenheit(expected, quantity === "temperatureC" ? 32 : 0) : expected;
  const wanted = texts.wanted(inUnit);
  return actual === undefined
    ? texts.missing(wanted)
    : texts.must(
        wanted,
        shown && typeof actual === "number" ? `${texts.value(actual)} °C` : valueText(problem, texts),
      );
}

/** What was found; in a document an object or an array is told by its kind. */
function valueText(problem: InputProblem, { value }: ProblemTexts): string {
  const { actual } = problem;
  const kind = "rule" in problem && (actual === "object" ? {} : actual === "array" ? [] : undefined);
  return value(kind || actual);
}

/** The limits of temperatures in °F. */
function limitsInFahrenheit(expected: ExpectedFigures, zeroF: number): ExpectedFigures {
  const { min, above, max, below } = expected;
  const limits = Object.entries({ min, above, max, below }).flatMap(([name, celsius]) =>
    celsius === undefined ? [] : [[name, Number(inFahrenheit(celsius, zeroF).toFixed(1))] as const],
  );
  return { ...expected, ...Object.fromEntries(limits), quantity: "temperatureF" };
}
