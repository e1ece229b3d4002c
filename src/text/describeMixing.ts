import type { MixingStep } from "../brew/mixingSteps.js";
import { saidWithStep } from "../brew/mixingText.js";
import { arrayOf, inRange, knownEntry, plainObject } from "../core/guards.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { cautionSentence } from "./cautionSentence.js";
import { checkedCautions } from "./checkedCautions.js";
import { checkedTexts } from "./checkedTexts.js";
import { mixingTexts, type MixingTexts } from "./mixingTexts.js";

/**
 * The steps of a mixing in short lines, to read aloud at the bench.
 *
 * @param steps - what `mixingSteps` returns
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for every temperature; °C when left out
 * @returns a line for each step: what may hurt there first, then what to do
 * @throws TypeError when an argument or a step is of the wrong kind
 * @throws RangeError when a step is not known, or the unit none of the two
 *
 * @example
 * ```ts
 * const soda: BrewPart = { ingredient: "soda-anhydrous", massG: 21.6 };
 * const brew = { volumeMl: 400, ingredients: [soda] };
 * const lines = describeMixing(mixingSteps(brew), undefined, { unit: "F" });
 * lines[2] // => "Make up to 400 ml with water and bring it to 68 °F."
 * ```
 */
export function describeMixing(
  steps: readonly MixingStep[],
  texts: MixingTexts = mixingTexts,
  options: TemperatureUnitOptions = {},
): readonly string[] {
  const at = "describeMixing/steps";
  checkedTexts("describeMixing/texts", texts, mixingTexts);
  const unit = temperatureUnit("describeMixing/options", options) ?? "C";
  return arrayOf(at, steps, 0).map((given, i) => {
    const step = plainObject(`${at}/${i}`, given) as unknown as MixingStep;
    const { cautions = [], failsH } = step;
    if (failsH !== undefined)
      arrayOf(`${at}/${i}/failsH`, failsH, 2).forEach((h, j) => inRange(`${at}/${i}/failsH/${j}`, h, 0, 1e6));
    for (const [field, value] of Object.entries(step)) {
      const where = `${at}/${i}/${field}`;
      const figures = Array.isArray(value) ? arrayOf(where, value, 0) : [value];
      for (const figure of figures) if (typeof figure === "number") inRange(where, figure, 0, 1e6);
    }
    const sentence = knownEntry(`${at}/${i}/do`, texts.steps, step.do);
    checkedCautions(`${at}/${i}/cautions`, cautions);
    const hazards = cautions.filter(saidWithStep).map((one) => cautionSentence(one, texts.cautions, unit));
    return [...hazards, sentence(step, unit)].join(" ");
  });
}
