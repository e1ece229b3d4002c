import { isPast, type Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { inRange, knownEntry } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { handbookAppearance, type AppearanceAgent, type HandbookAppearance } from "../handbook/appearance.js";
import { strengthOutsideSentence } from "./text.js";

/** Options of {@link handbookAppearanceFactor}. */
export interface AppearanceFactorOptions {
  /** the contrast wanted; `"normal"` when left out */
  readonly contrast?: "soft" | "normal" | "strong" | undefined;
  /** grams of the agent in a litre of working bath, 0.1 to 30; heeded for pyro alone */
  readonly strengthGPerL?: number | undefined;
}

/** A printed factor with its spread. */
export interface PublishedFactor {
  /** whole time over time of appearance */
  readonly factor: number;
  /** standard deviation of ln(factor) */
  readonly logSd: number;
  /** where it is printed */
  readonly sources: readonly string[];
  /** what is unwise about using it */
  readonly cautions: readonly Caution[];
}

/**
 * The printed factor of a developing agent, whole time over time of appearance.
 *
 * @param agent - for example `"metol-hydroquinone"`; `"brew"` for coffee and vitamin C
 * @param options - contrast wanted, and strength for pyro
 * @returns the factor with its spread and sources; beyond the printed strengths that of the nearest, wider,
 * with the caution `"strength-outside"`
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is not one of the known ones or out of range
 *
 * @remarks For pyro the factor falls as strength rises: 18.9 × (grains an ounce)^−0.86, pooled over nine rows
 * of three lists from 5/6 to 8 grains an ounce (1.8 to 17.5 g/l), which scatter by 0.5 in ln (H. G. Abbott;
 * B. E. Jones, 1911; J. B. Schriever, 1909). Without a strength it is that of one maker's formula. For all
 * other agents dilution moves the time of appearance and not the factor. Lists disagree by 15 to 50 %, since
 * a factor belongs to a formula. For a brew of coffee and vitamin C no list was found: 10, within a factor of
 * 3.
 *
 * @example
 * ```ts
 * handbookAppearanceFactor("metol", { contrast: "soft" }).factor // => 20
 * handbookAppearanceFactor("pyro", { strengthGPerL: 4.38 }).factor // => 10.4
 * ```
 */
export function handbookAppearanceFactor(
  agent: AppearanceAgent,
  options: AppearanceFactorOptions = {},
): PublishedFactor {
  const entry = knownEntry("handbookAppearanceFactor/agent", handbookAppearance, agent);
  const { contrast = "normal", strengthGPerL } = onlyFields("handbookAppearanceFactor/options", options, [
    "contrast",
    "strengthGPerL",
  ]);
  const { soft, normal, strong, logSd, sources } = entry;
  const listed = knownEntry("handbookAppearanceFactor/options/contrast", { soft, normal, strong }, contrast);
  if (strengthGPerL === undefined) return { factor: listed, logSd, sources, cautions: [] };
  const gPerL = inRange("handbookAppearanceFactor/options/strengthGPerL", strengthGPerL, 0.1, 30, "gPerL");
  return atStrength(entry, listed / normal, gPerL) ?? { factor: listed, logSd, sources, cautions: [] };
}

/** The factor at a strength, held at the nearest printed one; undefined where no list goes by strength. */
function atStrength(
  { byStrength, sources }: HandbookAppearance,
  contrast: number,
  gPerL: number,
): PublishedFactor | undefined {
  if (byStrength === undefined) return undefined;
  const { atOneGPerL, exponent, fromGPerL, toGPerL } = byStrength;
  const limit = Math.min(toGPerL, Math.max(fromGPerL, gPerL));
  const outside = isPast(gPerL, toGPerL) || isPast(fromGPerL, gPerL);
  return {
    factor: contrast * atOneGPerL * limit ** -exponent,
    // What the slope would have done beyond the printed strengths is a spread there, not a factor.
    logSd: Math.hypot(byStrength.logSd, exponent * Math.log(gPerL / limit)),
    sources,
    cautions: outside
      ? [
          makeCaution(strengthOutsideSentence, "strength-outside", "warn", {
            path: "/options/strengthGPerL",
            quantity: "gPerL",
            limit,
            actual: gPerL,
          }),
        ]
      : [],
  };
}
