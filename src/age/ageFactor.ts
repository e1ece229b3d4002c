import { inRange, plainObject, positive, wrongValue, notOneOf } from "../core/guards.js";
import type { LawOrigin } from "../core/term.js";

/**
 * How a bath declines with age: slowly, its rate halving every `halfLifeH` (sulphited baths), or not at all
 * until `lifeH` and then at once (alkaline vitamin C, coffee). `sdLog` is the standard deviation of
 * ln(halfLifeH), 0.3 when left out. `"slowing"` is for a bath of which nobody printed anything and own runs
 * are to tell: ln(time) grows by `perRootH` × √ageH, as what the air does to a bath does when it has to get
 * in first, and no further after 25 h; `sdPerRootH` is 0.1 when left out.
 */
export type AgeLaw =
  | ({ readonly kind: "half-life"; readonly halfLifeH: number; readonly sdLog?: number } & LawOrigin)
  | ({ readonly kind: "life"; readonly lifeH: number } & LawOrigin)
  | ({ readonly kind: "slowing"; readonly perRootH: number; readonly sdPerRootH?: number } & LawOrigin);

/**
 * The age term of a bath that slows with the root of its age, per unit of `perRootH`: √ageH, held after 25 h.
 */
export function slowingRootH(ageH: number): number {
  return Math.min(25, ageH) ** 0.5;
}

/**
 * The factor on development time for the age of a bath.
 *
 * @param law - the age law; `halfLifeH` or `lifeH` above 0 to 1e6 h, `perRootH` from -1 to 1
 * @param ageH - age of the bath since it was mixed, 0 to 1e6 h
 * @returns the time factor against a fresh bath, 1 or more (below 1 for a `"slowing"` law with `perRootH`
 * below 0)
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range, when a bath of the `"life"` kind is past its life, for
 * which no time can be given, or when ten half-lives have passed
 *
 * @remarks half-life: 2^(age/halfLife). life: 1 up to and including `lifeH`. slowing: exp(perRootH·√min(age,
 * 25 h)), an assumption of this package. Alkaline vitamin C gave full black for one and a half to two hours
 * and none at two and a half (Shinkawa Photographic Laboratory, L-ascorbic acid oxidation in alkaline
 * solution, 2015). A keeping limit on a label is a limit, not an activity: it is no half-life.
 *
 * @example
 * ```ts
 * ageFactor({ kind: "half-life", halfLifeH: 24 }, 12) // => 1.4142
 * ageFactor({ kind: "life", lifeH: 1.5 }, 1.5) // => 1
 * ```
 */
export function ageFactor(law: AgeLaw, ageH: number): number {
  const kind: unknown = plainObject("ageFactor/law", law)["kind"];
  inRange("ageFactor/ageH", ageH, 0, 1e6, "ageH");
  if (law.kind === "half-life") {
    const halfLives = ageH / positive("ageFactor/law/halfLifeH", law.halfLifeH, 1e6, "ageH");
    if (!(halfLives <= 10)) wrongValue("ageFactor/ageH", "<= 10 half-lives", ageH);
    return 2 ** halfLives;
  }
  if (law.kind === "slowing")
    return Math.exp(inRange("ageFactor/law/perRootH", law.perRootH, -1, 1) * slowingRootH(ageH));
  if (kind !== "life") notOneOf("ageFactor/law/kind", ["half-life", "life", "slowing"], kind);
  const lifeH = positive("ageFactor/law/lifeH", law.lifeH, 1e6, "ageH");
  if (ageH > lifeH) wrongValue("ageFactor/ageH", `within the bath's life of ${lifeH} h`, ageH);
  return 1;
}
