import type { Caution } from "../core/caution.js";
import type { CautionTexts } from "../core/cautionTexts.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { cautionSentence } from "./cautionSentence.js";
import { checkedCautions } from "./checkedCautions.js";
import { checkedTexts } from "./checkedTexts.js";
import { englishCautions } from "./englishCautions.js";

/**
 * The sentence of one caution alone, for a page that shows how grave it is in its own way.
 *
 * @param caution - a caution of any module
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for every temperature; °C when left out
 * @returns the sentence, without its severity and its place in the data
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when the severity is not known, or the unit none of the two
 *
 * @example
 * ```ts
 * const message = "Under five minutes.";
 * const short: Caution = { code: "short-time", severity: "warn", message, path: "/timeS" };
 * describeCaution(short) // => "Under five minutes."
 * ```
 */
export function describeCaution(
  caution: Caution,
  texts: CautionTexts = englishCautions,
  options: TemperatureUnitOptions = {},
): string {
  checkedCautions("describeCaution/caution", [caution]);
  checkedTexts("describeCaution/texts", texts, englishCautions);
  return cautionSentence(caution, texts, temperatureUnit("describeCaution/options", options) ?? "C");
}
