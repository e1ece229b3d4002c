import { placeText } from "../core/errors.js";
import { arrayOf } from "../core/guards.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { checkedTexts } from "./checkedTexts.js";
import { checkedProblem, problemSentence } from "./describeProblem.js";
import { problemTexts, type InputProblem, type ProblemTexts } from "./problemTexts.js";

/**
 * Problems in short lines: those of a check, or of a row of notes that was rejected.
 *
 * @param problems - the problems of any check, or of a rejected row
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for the limits of temperatures; °C when left out
 * @returns a line each: the place, and what is wrong there
 * @throws TypeError when `problems` is not an array, or an argument of the wrong kind
 * @throws RangeError when a code is not known, or the unit none of the two
 *
 * @example
 * ```ts
 * const { rejected } = readRunNotes([{ Time: "510", Temp: "20 °C", Outcome: "good" }]);
 * const [first] = rejected.map(({ problems }) => describeProblems(problems));
 * first // => ['Time must be "510 min" or "510 s", got "510"']
 * ```
 */
export function describeProblems(
  problems: readonly InputProblem[],
  texts: ProblemTexts = problemTexts,
  options: TemperatureUnitOptions = {},
): readonly string[] {
  checkedTexts("describeProblems/texts", texts, problemTexts);
  const unit = temperatureUnit("describeProblems/options", options) ?? "C";
  const all = arrayOf("describeProblems/problems", problems, 0) as readonly InputProblem[];
  return all.map((problem, i) => {
    checkedProblem(`describeProblems/problems/${i}`, problem);
    return texts.line(placeText(problem.path), problemSentence(problem, texts, unit));
  });
}
