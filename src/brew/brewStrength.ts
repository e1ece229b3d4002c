import type { Caution } from "../core/caution.js";
import { Z90 } from "../core/estimate.js";
import { inRange, refuse } from "../core/guards.js";
import { basisOf, checkedOrigin, type Factor } from "../core/term.js";
import type { Ingredient } from "../handbook/ingredients.js";
import { COFFEE_RANGES, MIDDLE_COFFEE, bathOf, massAt, type Bath, type CoffeePick } from "./bath.js";
import { readBrew, type Brew, type ReadBrew, type ReadPart } from "./brew.js";
import { checkBrew } from "./checkBrew.js";
import { constantsAt, type BathConstants } from "./constants.js";
import { solveBath } from "./equilibrium.js";
import { GIVEN_EXPONENT_SD, genericStrengthLaw, type StrengthLaw } from "./strengthLaw.js";

/** What {@link brewStrength} returns: a term for `compensate`, and how it came about. */
export interface BrewStrength extends Factor {
  readonly cause: "strength";
  /** pH of the two brews, both at the reference's temperature */
  readonly ph: number;
  readonly referencePh: number;
  /** developing power of the brew relative to the reference, from which a test strip gives the exponent */
  readonly power: number;
  readonly cautions: readonly Caution[];
}

/**
 * About a fifth of chlorogenic acids are feruloyl esters, which do not develop (reviews of coffee
 * constituents, from memory).
 */
const CATECHOL_SHARE = 0.8;
/**
 * How unlike, mole for mole, ionised ascorbate and ionised catechol may develop: a factor of two, assumed.
 */
const AGENT_LOG_SD = Math.LN2;
/** What restrainer in one brew alone may do to the time; printed recipes show no change (common practice). */
const RESTRAINER_LOG_SD = 0.1;

/** Ionised agents in mol/kg, and the part that is ascorbate. */
function powerOf(bath: Bath, constants: BathConstants): { ph: number; power: number; ascorbate: number } {
  const { ph, species } = solveBath(bath, constants);
  const ascorbate = species.ascorbate?.[2] ?? 0;
  const [, , phenolate = 0, doubly = 0] = species.chlorogenate ?? [];
  const power = ascorbate + CATECHOL_SHARE * (phenolate + doubly);
  return { ph, power, ascorbate: ascorbate / power };
}

/** Make-up in g per litre, each ingredient with its range. */
function makeUp({ parts, volumeMl }: ReadBrew): ReadonlyMap<string, readonly number[]> {
  const sums = new Map<string, number[]>();
  for (const { ingredient, massG, lowG, highG } of parts) {
    const before = sums.get(ingredient) ?? [0, 0, 0];
    sums.set(
      ingredient,
      [massG, lowG, highG].map((mass, i) => (before[i] as number) + (mass * 1000) / volumeMl),
    );
  }
  return sums;
}

/**
 * Whether two brews are the same but for their volume: to a part in a thousand million, since scaling rounds.
 */
function sameMakeUp(one: ReadBrew, other: ReadBrew): boolean {
  const [a, b] = [makeUp(one), makeUp(other)];
  const close = (x: number, y = NaN): boolean => Math.abs(x - y) <= 1e-9 * x;
  return (
    a.size === b.size && [...a].every(([name, perL]) => perL.every((x, i) => close(x, b.get(name)?.[i])))
  );
}

function restrained({ parts }: ReadBrew): boolean {
  return parts.some(({ data }) => data.role === "restrainer");
}

/**
 * The time factor of a brew against the brew a time is known for: development time in `brew` divided by that
 * in `reference`.
 *
 * @param brew - the bath to be used
 * @param reference - the bath the time is known for
 * @param law - exponent (0 to 3) and its standard deviation (0 to 3, 0.15 without one) of time against power;
 * {@link genericStrengthLaw} when left out
 * @returns a factor of cause `"strength"`, exactly 1 with no spread when both are of the same make-up,
 * whatever their volumes; its cautions say what {@link checkBrew} says stop to, and when the two differ too
 * much for a rule
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for a brew that {@link brewPh} refuses, one without a developing agent, or an exponent
 * out of range
 *
 * @remarks Factor = (power of reference / power of brew)^n. Power is the concentration of agents in the form
 * that develops: ascorbate as its doubly charged ion, coffee's chlorogenic acid as phenolate, added mole for
 * mole; alkali works through these shares at the bath's pH. Both are taken at the reference's temperature,
 * since what warmth does is the temperature term's business. The sum and the equal weights are assumed, and
 * superadditivity is not described; the spread holds the exponent's, a factor of two between the agents, each
 * kind of coffee's range in solids, acid and agent (one kind is taken as one jar), every range of spoons, and
 * restrainers. Make-up is compared as written: two separate spoonings of one recipe count as the same. A test
 * strip replaces it: see `docs/brew.md`.
 *
 * @example
 * ```ts
 * const coffee = { ingredient: "instant-coffee", massG: 16 };
 * const soda = { ingredient: "soda-anhydrous", massG: 22 };
 * const full = { volumeMl: 400, ingredients: [soda, coffee] };
 * const weak = { ...full, volumeMl: 800 };
 * brewStrength(weak, full).value // => 1.52
 * brewStrength(scaleBrew(full, 900), full).value // => 1
 * ```
 */
export function brewStrength(
  brew: Brew,
  reference: Brew,
  law: StrengthLaw = genericStrengthLaw,
): BrewStrength {
  const today = readBrew("brewStrength/brew", brew);
  const known = readBrew("brewStrength/reference", reference);
  checkedOrigin("brewStrength/law", law);
  const exponent = inRange("brewStrength/law/exponent", law.exponent, 0, 3);
  const { sd = GIVEN_EXPONENT_SD } = law;
  inRange("brewStrength/law/sd", sd, 0, 3);
  const constants = constantsAt(known.temperatureC);
  const powerIn = (
    of: ReadBrew,
    coffee?: (part: ReadPart) => CoffeePick,
    mass?: (part: ReadPart) => number,
  ): ReturnType<typeof powerOf> => powerOf(bathOf(of.parts, of.volumeMl, coffee, mass), constants);
  const a = powerIn(today);
  const b = powerIn(known);
  for (const [name, { power }] of [
    ["brew", a],
    ["reference", b],
  ] as const)
    if (!(power > 0))
      refuse(
        `brewStrength/${name}`,
        "must hold a developing agent: coffee or vitamin C",
        name === "brew" ? brew : reference,
      );
  const same = sameMakeUp(today, known);
  const logPower = same ? 0 : Math.log(a.power / b.power);
  const value = Math.exp(-exponent * logPower);

  /**
   * What the two ends of a 90 % range do to ln(power), the farther one, as a standard deviation of ln(time).
   */
  const ends = (middle: number, low: number, high: number): number =>
    (exponent * Math.max(Math.abs(Math.log(low / middle)), Math.abs(Math.log(high / middle)))) / Z90;
  // One kind of coffee is the same jar in both brews; two kinds know nothing of each other.
  const ratioWith = (kind: Ingredient, end: CoffeePick): number => {
    const pick = ({ ingredient }: ReadPart): CoffeePick => (ingredient === kind ? end : MIDDLE_COFFEE);
    return powerIn(today, pick).power / powerIn(known, pick).power;
  };
  const kinds = new Set(
    [...today.parts, ...known.parts].flatMap(({ ingredient, data }) => (data.solids ? [ingredient] : [])),
  );
  const spreads = [
    sd * logPower,
    exponent * AGENT_LOG_SD * (a.ascorbate - b.ascorbate),
    ...[...kinds].flatMap((kind) =>
      COFFEE_RANGES.map(([low, high]) =>
        ends(a.power / b.power, ratioWith(kind, low), ratioWith(kind, high)),
      ),
    ),
    restrained(today) === restrained(known) ? 0 : RESTRAINER_LOG_SD,
  ];
  for (const [of, middle] of [
    [today, a.power],
    [known, b.power],
  ] as const)
    for (const part of of.parts) {
      const atEnd = (end: "lowG" | "highG"): number =>
        powerIn(of, undefined, (other) => massAt(other, part, end)).power;
      if (part.lowG < part.highG) spreads.push(ends(middle, atEnd("lowG"), atEnd("highG")));
    }
  return {
    cause: "strength",
    value,
    logSd: same ? 0 : Math.hypot(...spreads),
    basis: same ? "unchanged" : law === genericStrengthLaw ? "default" : basisOf(law),
    sources: law.sources ?? [],
    ph: a.ph,
    referencePh: b.ph,
    power: Math.exp(logPower),
    // What stops the bath stops its time.
    cautions: [...checkBrew(brew).filter(({ severity }) => severity === "stop"), ...farCaution(value)],
  };
}

function farCaution(value: number): readonly Caution[] {
  const actual = Math.max(value, 1 / value);
  if (actual <= 1.5) return [];
  const [severity, limit] = actual > 4 ? (["stop", 4] as const) : (["warn", 1.5] as const);
  const message = "The brews differ too much for a rule: run a test strip.";
  return [{ code: "strength-far", severity, message, limit, actual }];
}
