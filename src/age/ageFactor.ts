import { isPast } from "../core/caution.js";
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
 * @param fromH - age of the bath when the time was known, 0 to 1e6 h; 0 is a fresh bath
 * @param toH - age of the bath that is asked about, 0 to 1e6 h
 * @param law - the age law; `halfLifeH` or `lifeH` above 0 to 1e6 h, `perRootH` from -1 to 1
 * @returns the time under `to` divided by the time under `from`
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range, or a bath is past its life or past ten half-lives, where
 * no time can be given
 *
 * @remarks half-life: 2^((to − from)/halfLife). life: 1 up to and including `lifeH`. slowing:
 * exp(perRootH·(√to − √from)), each age at most 25 h, an assumption of this package. Alkaline vitamin C gave
 * full black for one and a half to two hours and none at two and a half (Shinkawa Photographic Laboratory,
 * L-ascorbic acid oxidation in alkaline solution, 2015). A keeping limit on a label is a limit, not an
 * activity: it is no half-life.
 *
 * @example
 * ```ts
 * ageFactor(0, 12, { kind: "half-life", halfLifeH: 24 }) // => 1.4142
 * ageFactor(0, 1.5, { kind: "life", lifeH: 1.5 }) // => 1
 * ```
 */
export function ageFactor(fromH: number, toH: number, law: AgeLaw): number {
  const kind: unknown = plainObject("ageFactor/law", law)["kind"];
  inRange("ageFactor/fromH", fromH, 0, 1e6, "ageH");
  inRange("ageFactor/toH", toH, 0, 1e6, "ageH");
  if (law.kind === "slowing")
    return Math.exp(
      inRange("ageFactor/law/perRootH", law.perRootH, -1, 1) * (slowingRootH(toH) - slowingRootH(fromH)),
    );
  if (law.kind === "half-life") {
    const halfLifeH = positive("ageFactor/law/halfLifeH", law.halfLifeH, 1e6, "ageH");
    notPast(fromH, toH, 10 * halfLifeH, "<= 10 half-lives");
    return 2 ** ((toH - fromH) / halfLifeH);
  }
  if (kind !== "life") notOneOf("ageFactor/law/kind", ["half-life", "life", "slowing"], kind);
  const lifeH = positive("ageFactor/law/lifeH", law.lifeH, 1e6, "ageH");
  notPast(fromH, toH, lifeH, `within the bath's life of ${lifeH} h`);
  return 1;
}

/** Refuses an age at which a bath gives no time. */
function notPast(fromH: number, toH: number, limitH: number, must: string): void {
  if (isPast(fromH, limitH)) wrongValue("ageFactor/fromH", must, fromH);
  if (isPast(toH, limitH)) wrongValue("ageFactor/toH", must, toH);
}
