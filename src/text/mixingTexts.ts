import type { MixingWord } from "../brew/mixingSteps.js";
import { mixingSentences, type MixingStepData } from "../brew/mixingText.js";
import type { CautionTexts, TemperatureUnit } from "../core/cautionTexts.js";
import { englishCautions } from "./englishCautions.js";

/** A catalogue: all that the mixing of a brew says, in one language. */
export interface MixingTexts {
  /** the cautions: how grave they are, and their sentences */
  readonly cautions: CautionTexts;
  /** the sentence of each step */
  readonly steps: Readonly<Record<MixingWord, (step: MixingStepData, unit: TemperatureUnit) => string>>;
}

/** The mixing of a brew in English. */
export const mixingTexts: MixingTexts = { cautions: englishCautions, steps: mixingSentences };
