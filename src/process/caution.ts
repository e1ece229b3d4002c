/*
 * Module: process. A caution with its English sentence.
 */
import type { Caution, CautionSeverity } from "../core/caution.js";
import { makeCaution, type FiguresOf } from "../core/cautionTexts.js";
import { processSentences, type ProcessCautionCode } from "./text.js";

/** Makes a caution of this module; `figures` holds all that its sentence names. */
export function caution<Code extends ProcessCautionCode>(
  code: Code,
  severity: CautionSeverity,
  ...figures: FiguresOf<Code>
): Caution {
  return makeCaution(processSentences, code, severity, ...figures);
}
