/*
 * Module: process. A caution with its English sentence.
 */
import type { Caution, CautionSeverity } from "../core/caution.js";
import { cautionTexts, type ProcessCautionCode } from "./text.js";

/** What a caution carries beside code and severity. */
export type CautionFigures = Pick<Caution, "path" | "quantity" | "limit" | "actual" | "data">;

/** Makes a caution of this module; `figures` holds all that its sentence names. */
export function caution(
  code: ProcessCautionCode,
  severity: CautionSeverity,
  figures: CautionFigures = {},
): Caution {
  return { code, severity, message: cautionTexts[code](figures), ...figures };
}
