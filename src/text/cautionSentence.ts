import type { Caution } from "../core/caution.js";
import type { AnySentence, CautionTexts, TemperatureUnit } from "../core/cautionTexts.js";
import { ownEntry } from "../core/ownEntry.js";
import { englishCautions } from "./englishCautions.js";

/** The sentence of a caution in the language of a catalogue. */
export function cautionSentence(
  caution: Caution,
  { sentences }: CautionTexts,
  unit: TemperatureUnit,
): string {
  const { code, message, severity, limit, actual, data = {} } = caution;
  // In English and °C it is written already.
  if (unit === "C" && sentences === englishCautions.sentences) return message;
  const sentence = ownEntry(sentences, code) as AnySentence | undefined;
  return sentence === undefined ? message : sentence({ severity, limit, actual, data }, unit);
}
