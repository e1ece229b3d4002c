import { knownEntry } from "../core/guards.js";
import type { Seen } from "../core/term.js";
import { handbookTemperature, type HandbookDeveloper } from "../handbook/temperature.js";
import type { CoefficientLaw } from "./law.js";

/** A temperature law of the handbook. */
export type HandbookTemperatureLaw = CoefficientLaw & {
  /** standard deviation of the ratio */
  readonly sdRatio: number;
  /** how the figure was seen */
  readonly seen: Seen;
};

/**
 * The published temperature coefficient of a developer, as printed, with its source and a spread.
 *
 * @param developer - the developing agents, for example `"metol-hydroquinone"`
 * @returns a coefficient law with `sdRatio`, `sources`, and `seen`: whether the figure was read in print
 * @throws TypeError when `developer` is not text
 * @throws RangeError when it is not one of the known developers; the message lists them
 *
 * @remarks Coefficients differ by material more than by developer, so each that was read has a spread of 22 %
 * over 10 °C, in proportion for another interval. One that was not seen in print has 28 %, as wide as the
 * generic law, and is not `published`. There is none for grocery developers of coffee and vitamin C: nobody
 * printed one. The spreads: docs/decisions/priors.md.
 *
 * @example
 * ```ts
 * handbookTemperatureLaw("pyro-metol").ratio // => 1.4
 * handbookTemperatureLaw("glycin").seen // => "from-memory"
 * ```
 */
export function handbookTemperatureLaw(developer: HandbookDeveloper): HandbookTemperatureLaw {
  const entry = knownEntry("handbookTemperatureLaw/developer", handbookTemperature, developer);
  return entry.seen === "read"
    ? { kind: "coefficient", published: true, ...entry }
    : { kind: "coefficient", ...entry };
}
