import { positive } from "../core/guards.js";
import { plainData } from "../core/plainData.js";
import { MOST, readBrew, type DeveloperBrew, type BrewPart } from "./brew.js";

/**
 * The same brew in another volume.
 *
 * @param brew - the brew, as for {@link brewPh}
 * @param volumeMl - the volume wanted, above 0 to 100000 ml
 * @returns a new brew with every amount, every range and every number of spoons in proportion
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for a brew that {@link brewPh} refuses, before or after scaling, or a volume out of
 * range
 *
 * @remarks Tablets may come out as fractions: crush and weigh, or take the nearest whole one and run {@link
 * brewStrength}. For spoons see {@link spoonsFor}.
 *
 * @example
 * ```ts
 * const coffee: BrewPart = { ingredient: "instant-coffee", massG: 40 };
 * const smaller = scaleBrew({ volumeMl: 1000, ingredients: [coffee] }, 250);
 * smaller.ingredients // => [{ ingredient: "instant-coffee", massG: 10 }]
 * ```
 */
export function scaleBrew(brew: DeveloperBrew, volumeMl: number): DeveloperBrew {
  readBrew("scaleBrew/brew", brew);
  const given = plainData("scaleBrew/brew", brew);
  const scale = positive("scaleBrew/volumeMl", volumeMl, MOST, "volumeMl") / given.volumeMl;
  const scalePart = (part: BrewPart): BrewPart =>
    part.ingredient === "ascorbic-acid-tablet"
      ? { ...part, tablets: part.tablets * scale }
      : {
          ...part,
          massG: part.massG * scale,
          ...(part.lowG === undefined ? {} : { lowG: part.lowG * scale }),
          ...(part.highG === undefined ? {} : { highG: part.highG * scale }),
          ...(part.spoons === undefined ? {} : { spoons: part.spoons * scale }),
        };
  const scaled = { ...given, volumeMl, ingredients: given.ingredients.map(scalePart) };
  readBrew("scaleBrew/brew", scaled);
  return scaled;
}
