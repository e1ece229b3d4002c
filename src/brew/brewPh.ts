import { COFFEE_RANGES, bathOf, massAt, type Bath } from "./bath.js";
import { readBrew, type DeveloperBrew, type ReadBrew } from "./brew.js";
import { constantsAt } from "./constants.js";
import { solveBath, type Solution } from "./equilibrium.js";
import { isCoffee } from "./parts.js";
import { phSpread } from "./phSpread.js";

/** What {@link brewPh} returns. */
export interface BrewPh {
  /** the likely pH */
  readonly ph: number;
  /** lower end of about a 90 % interval */
  readonly low: number;
  /** upper end of it */
  readonly high: number;
  /** mol per kg of water */
  readonly ionicStrength: number;
  /** carbon dioxide that leaves as foam while mixing, mol per litre */
  readonly foamMolPerL: number;
}

/**
 * The pH of a brew, with the range that unweighed spoons, unlike coffees and the model leave it.
 *
 * @param brew - finished volume (above 0 to 100000 ml), ingredients, temperature (0 to 50 °C, 20 when left
 * out)
 * @returns pH with its low and high, the ionic strength, and the carbon dioxide that foams off
 * @throws TypeError when something is of the wrong kind, or tablets come without the content on their label
 * @throws RangeError for an unknown or unfit ingredient, an empty list, a number out of range, or more than 1
 * g of dry ingredients, or of brewed coffee, per ml
 *
 * @remarks Charge and mass balance over carbonate, bicarbonate, ascorbate, coffee's acids and phenols,
 * borate, phosphate, sulphite and hydroxide, pH as −log of the activity of H⁺. Constants of water, carbonic
 * and boric acid and of phosphate follow the temperature; those of ascorbate, coffee and sulphite do not, for
 * want of figures. Activity coefficients: Davies up to an ionic strength of 0.3, specific interaction with
 * sodium above. Accuracy: 0.02 for the carbonate buffer from 0 to 40 °C, 0.03 for 1, 5 and 10 % soda, and ±
 * 0.1 above 0.3 in general. Carbon dioxide above one atmosphere is taken to leave; air's carbon dioxide is
 * not taken up. What does not dissolve is counted as dissolved: see {@link checkBrew}. Sources: L. N.
 * Plummer, E. Busenberg, Geochim. Cosmochim. Acta 46, 1982, p. 1011; OECD NEA, TDB-2; the rest in
 * `docs/brew.md`.
 *
 * @example
 * ```ts
 * brewPh({
 *   volumeMl: 1000,
 *   temperatureC: 25,
 *   ingredients: [{ ingredient: "soda-anhydrous", massG: 2.65 }, { ingredient: "baking-soda", massG: 2.1 }],
 * }).ph // => 10.00
 * ```
 */
export function brewPh(brew: DeveloperBrew): BrewPh {
  return phRange(readBrew("brewPh/brew", brew));
}

/** The pH of a brew that was read, with its range. */
export function phRange(read: ReadBrew): BrewPh {
  const { volumeMl, temperatureC, parts } = read;
  const constants = constantsAt(temperatureC);
  const bath = bathOf(parts, volumeMl);
  const solution = solveBath(bath, constants);
  const { ph, ionicStrength, foam } = solution;
  let below = phSpread(solution) ** 2;
  let above = below;
  const tryPair = (one: Bath, other: Bath, near?: Solution): void => {
    const [a, b] = [solveBath(one, constants, near).ph, solveBath(other, constants, near).ph];
    below += Math.max(0, ph - a, ph - b) ** 2;
    above += Math.max(0, a - ph, b - ph) ** 2;
  };
  if (parts.some(isCoffee))
    for (const [low, high] of COFFEE_RANGES)
      tryPair(
        bathOf(parts, volumeMl, () => low),
        bathOf(parts, volumeMl, () => high),
        solution,
      );
  for (const part of parts)
    if (part.lowG < part.highG)
      tryPair(
        bathOf(parts, volumeMl, undefined, (other) => massAt(other, part, "lowG")),
        bathOf(parts, volumeMl, undefined, (other) => massAt(other, part, "highG")),
      );
  return { ph, low: ph - Math.sqrt(below), high: ph + Math.sqrt(above), ionicStrength, foamMolPerL: foam };
}
