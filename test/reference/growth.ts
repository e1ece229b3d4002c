/*
 * Published figures on the growth of contrast: limit and velocity constant, and what shows their unit.
 */
import { IVES, type Published } from "./published.js";

/**
 * γ = limit × (1 − 10^(−constant × minutes)). The book prints no unit for the constant. Common logarithms per
 * minute are inferred, from `factorTimeS` and from {@link aerialPlate}. `gammas` are not printed: they are the
 * gradients at so many minutes, worked from the two constants apart from this package.
 */
export const growthConstants: readonly Published<{
  readonly gammaInfinity: number;
  /** as printed, read as common logarithms per minute */
  readonly constant: number;
  readonly gammas: Readonly<Record<number, number>>;
  /**
   * the printed factor times the printed time of appearance, s: the time that gives "a definite contrast", the
   * same for every developer
   */
  readonly factorTimeS: number;
  /** the gradient at that time, worked apart from this package: in common and in natural logarithms */
  readonly definiteGamma: { readonly common: number; readonly natural: number };
}>[] = [
  {
    id: "ives-1920-gamma-pyrometol",
    source: IVES,
    provenance: "read",
    about: "pyro-metol with carbonate; aerial plate; appearance after 5 s, factor 25",
    rows: [
      {
        gammaInfinity: 1.45,
        constant: 0.32,
        gammas: { 1: 0.756, 2: 1.118, 3: 1.291, 4: 1.374, 5: 1.414, 8: 1.446 },
        factorTimeS: 125,
        definiteGamma: { common: 1.138, natural: 0.706 },
      },
    ],
  },
  {
    id: "ives-1920-gamma-chlorhq",
    source: IVES,
    provenance: "read",
    about:
      "chlorhydroquinone-metol with carbonate and hydroxide; aerial plate; appearance after 5 s, factor 10",
    rows: [
      {
        gammaInfinity: 2.12,
        constant: 0.4,
        gammas: { 1: 1.276, 2: 1.784, 3: 1.986, 4: 2.067, 5: 2.099, 8: 2.119 },
        factorTimeS: 50,
        definiteGamma: { common: 1.136, natural: 0.601 },
      },
    ],
  },
];

/** What the two developers must do on an aerial plate: "nearly 2" in two and a half minutes. A specification. */
export const aerialPlate: Published<{
  readonly minutes: number;
  readonly gammaNearly: number;
  readonly limitApproaching: number;
}> = {
  id: "ives-1920-aerial-spec",
  source: "H. E. Ives, Airplane Photography, Philadelphia, 1920, chapter on plates, requirements 1 to 5",
  provenance: "read",
  about: "aerial plates in the developers recommended, 20 °C",
  rows: [{ minutes: 2.5, gammaNearly: 2, limitApproaching: 2.5 }],
};
