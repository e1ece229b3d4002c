import type { Caution } from "../core/caution.js";
import { namesOf } from "../core/frozen.js";
import { knownEntry } from "../core/guards.js";

/** What light a material sees. */
export type Sensitization = "blue-sensitive" | "orthochromatic" | "panchromatic";

const CAUTIONS: Readonly<Record<Sensitization, Caution>> = {
  "blue-sensitive": {
    code: "safelight-amber",
    severity: "note",
    message:
      "Blue-sensitive: amber or red safelight as the maker says. Test it with a coin on a scrap for as " +
      "long as you will look.",
  },
  "orthochromatic": {
    code: "safelight-red",
    severity: "warn",
    message:
      "Orthochromatic: deep red safelight only, weak and not near. Test it with a coin on a scrap for as " +
      "long as you will look.",
  },
  "panchromatic": {
    code: "panchromatic-dark",
    severity: "stop",
    message:
      "Panchromatic: develop in complete darkness, by time and temperature. " +
      "No safelight shows the image without fogging it.",
  },
};

/** What light a material may see, as `safelightCautions`, plans and recipes take it. */
export const sensitizations: readonly Sensitization[] = /* @__PURE__ */ namesOf(CAUTIONS);

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
  return [knownEntry("safelightCautions/sensitization", CAUTIONS, sensitization)];
}
