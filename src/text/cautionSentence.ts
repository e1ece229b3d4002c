import type { Caution } from "../core/caution.js";
import type { AnySentence, CautionTexts, TemperatureUnit } from "../core/cautionTexts.js";
import { englishCautions } from "./englishCautions.js";

/** The sentence of a caution in the language of a catalogue. */
export function cautionSentence(
  caution: Caution,
  { sentences }: CautionTexts,
  unit: TemperatureUnit,
): string {
  const { code, message, severity, limit, actual, data = {} } = caution;
  // In English and °C it is written already.
  const written = unit === "C" && sentences === englishCautions.sentences;
  if (written || !Object.hasOwn(sentences, code)) return message;
  return (sentences[code] as AnySentence)({ severity, limit, actual, data }, unit);
}
