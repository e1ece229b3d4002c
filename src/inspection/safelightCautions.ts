import type { Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { namesOf } from "../core/frozen.js";
import { knownEntry } from "../core/guards.js";
import { safelightSentences } from "./text.js";

/** What light a material sees. */
export type Sensitization = "blue-sensitive" | "orthochromatic" | "panchromatic";

const CODES = {
  "blue-sensitive": ["safelight-amber", "note"],
  "orthochromatic": ["safelight-red", "warn"],
  "panchromatic": ["panchromatic-dark", "stop"],
} as const;

/** What light a material may see, as `safelightCautions`, plans and recipes take it. */
export const sensitizations: readonly Sensitization[] = /* @__PURE__ */ namesOf(CODES);

/**
 * Whether a material can be watched while it develops.
 *
 * @param sensitization - what light the material sees
 * @returns one caution: a `"stop"` for panchromatic material, which cannot be developed by inspection
 * @throws TypeError when it is not text
 * @throws RangeError when it is not one of the three; the message lists them
 *
 * @remarks Common practice. Whether a lamp is safe depends on lamp, distance, time and material: the maker's
 * sheet and a test decide. With an unknown material take it as panchromatic.
 *
 * @example
 * ```ts
 * safelightCautions("panchromatic")[0].severity // => "stop"
 * ```
 */
export function safelightCautions(sensitization: Sensitization): readonly Caution[] {
  const [code, severity] = knownEntry<Sensitization, (typeof CODES)[Sensitization]>(
    "safelightCautions/sensitization",
    CODES,
    sensitization,
  );
  return [makeCaution(safelightSentences, code, severity)];
}
