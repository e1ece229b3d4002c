import { inRange, knownEntry, plainObject } from "../core/guards.js";
import { handbookAppearance, type AppearanceAgent } from "../handbook/appearance.js";

/** Options of {@link handbookAppearanceFactor}. */
export interface AppearanceFactorOptions {
  /** the contrast wanted; `"normal"` when left out */
  readonly contrast?: "soft" | "normal" | "strong";
  /** grams of the agent in a litre of working bath, 0.1 to 30; heeded for pyro and amidol alone */
  readonly strengthGPerL?: number;
}

/** A printed factor with its spread. */
export interface PublishedFactor {
  readonly factor: number;
  /** standard deviation of ln(factor) */
  readonly logSd: number;
  readonly sources: readonly string[];
}

/**
 * The printed factor of a developing agent.
 *
 * @param agent - for example `"metol-hydroquinone"`
 * @param options - contrast wanted, and strength for pyro and amidol
 * @returns the factor with its spread and sources
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is not one of the known ones or out of range
 *
 * @remarks Pyro and amidol factors fall as strength rises, inversely for pyro (12 at 2.5 grains an ounce, 24
 * at 1.25, 40 at 5/6: J. B. Schriever, 1909); without a strength they are those of one maker's formula. For
 * all other agents dilution moves the time of appearance and not the factor. Lists disagree by 15 to 50 %,
 * since a factor belongs to a formula.
 *
 * @example
 * ```ts
 * handbookAppearanceFactor("metol", { contrast: "soft" }).factor // => 20
 * ```
 */
export function handbookAppearanceFactor(
  agent: AppearanceAgent,
  options: AppearanceFactorOptions = {},
): PublishedFactor {
  const entry = knownEntry("handbookAppearanceFactor/agent", handbookAppearance, agent);
  const { contrast = "normal", strengthGPerL } = plainObject("handbookAppearanceFactor/options", options);
  const { soft, normal, strong, perStrength, logSd, sources } = entry;
  const listed = knownEntry("handbookAppearanceFactor/contrast", { soft, normal, strong }, contrast);
  if (strengthGPerL !== undefined)
    inRange("handbookAppearanceFactor/strengthGPerL", strengthGPerL, 0.1, 30, "gPerL");
  const scaled = perStrength !== undefined && strengthGPerL !== undefined;
  return {
    factor: scaled ? ((perStrength / (strengthGPerL as number)) * listed) / normal : listed,
    logSd,
    sources,
  };
}
