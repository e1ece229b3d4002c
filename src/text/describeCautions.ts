import { cautionSentence } from "./cautionSentence.js";
import { gravestFirst, type Caution } from "../core/caution.js";
import type { CautionTexts } from "../core/cautionTexts.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { checkedCautions } from "./checkedCautions.js";
import { checkedTexts } from "./checkedTexts.js";
import { englishCautions } from "./englishCautions.js";

/**
 * Cautions in short lines.
 *
 * @param cautions - cautions of any module
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for every temperature; °C when left out
 * @returns a line each, gravest first: how grave, what, and where in the data, when it says so
 * @throws TypeError when `cautions` is not an array, or an argument of the wrong kind
 * @throws RangeError when a severity is not known, or the unit none of the two
 *
 * @example
 * ```ts
 * const message = "Under five minutes.";
 * const short: Caution = { code: "short-time", severity: "warn", message, path: "/timeS" };
 * describeCautions([short]) // => ["Take care: Under five minutes. [/timeS]"]
 * ```
 */
export function describeCautions(
  cautions: readonly Caution[],
  texts: CautionTexts = englishCautions,
  options: TemperatureUnitOptions = {},
): readonly string[] {
  checkedCautions("describeCautions/cautions", cautions);
  checkedTexts("describeCautions/texts", texts, englishCautions);
  const unit = temperatureUnit("describeCautions/options", options) ?? "C";
  return gravestFirst(cautions).map((caution) => {
    const { severity, path } = caution;
    const where = path === undefined || path === "" ? "" : ` [${path}]`;
    return `${texts.severities[severity]}: ${cautionSentence(caution, texts, unit)}${where}`;
  });
}
