/*
 * Module: brew. What bromide and salt do to the time, and how unlike two lists of ingredients are.
 */
import { isPast, type Caution } from "../core/caution.js";
import type { Ingredient } from "../handbook/ingredients.js";
import type { ReadBrew } from "./brew.js";
import { gramsByIngredient } from "./parts.js";
import { gramsPerL } from "./solveBrew.js";
import { say } from "./text.js";

/** Salt restrains about a twentieth as much as potassium bromide (common practice: 20 g for 1 g). */
const SALT_PER_BROMIDE = 20;
/**
 * The bromide that a bath works up by itself while it develops, g/l (assumed): the dose counts on top of it.
 */
const OWN_G_PER_L = 2;
/**
 * Time ∝ (dose + 2)^m. 0: recipes with and without 1 g/l are given one time (common practice). 1: silver ions
 * fall as bromide rises, by the solubility product. The middle, and a range that holds both.
 */
const EXPONENT = 0.5;
const EXPONENT_SD = 0.3;
/** Above this the rule is a guess: recipes hold 0.5 to 5 g/l (common practice). */
const RESTRAINER_MOST_G_PER_L = 5;

/** Above this hardly anything develops, and bromide dissolves silver bromide (assumed: five times that). */
const RESTRAINER_STOP_G_PER_L = 5 * RESTRAINER_MOST_G_PER_L;

/** The caution of a dose of restrainer beyond the usual, g/l of potassium bromide. */
export function restrainerCautions(actual: number): readonly Caution[] {
  if (!isPast(actual, RESTRAINER_MOST_G_PER_L)) return [];
  const stop = isPast(actual, RESTRAINER_STOP_G_PER_L);
  const limit = stop ? RESTRAINER_STOP_G_PER_L : RESTRAINER_MOST_G_PER_L;
  return [say("restrainer-strong", stop ? "stop" : "warn", { quantity: "gPerL", limit, actual })];
}

/** Restrainer as potassium bromide, g/l. */
export function bromideDose(read: ReadBrew): number {
  return gramsPerL(read, ({ ingredient, data }) =>
    data.role !== "restrainer" ? 0 : ingredient === "potassium-bromide" ? 1 : 1 / SALT_PER_BROMIDE,
  );
}

/** ln of the factor by restrainer, and its standard deviation. */
export function restrained(today: ReadBrew, known: ReadBrew): readonly [log: number, sd: number] {
  const change = Math.log(bromideDose(today) + OWN_G_PER_L) - Math.log(bromideDose(known) + OWN_G_PER_L);
  return [EXPONENT * change, EXPONENT_SD * Math.abs(change)];
}

/** Grams a litre below which a change of an ingredient hardly counts (assumed); 20 for all others. */
const SMALL_G_PER_L: Readonly<Partial<Record<Ingredient, number>>> = {
  "potassium-bromide": 2,
  "sodium-hydroxide": 4,
  "ascorbic-acid": 8,
  "ascorbic-acid-tablet": 8,
  "sodium-ascorbate": 8,
  "table-salt": 40,
  "iodised-salt": 40,
};
/**
 * What a change of one ingredient by a factor of e may do besides what the chemistry here knows (assumed).
 */
const INGREDIENT_SD = 0.05;

/** The standard deviation of ln(time) that an unlike list of ingredients brings: it never vanishes. */
export function unlikeSpread(today: ReadBrew, known: ReadBrew): number {
  const [a, b] = [gramsByIngredient(today), gramsByIngredient(known)];
  const names = new Set([...a.keys(), ...b.keys()]);
  return Math.hypot(
    ...[...names].map((name) => {
      const small = SMALL_G_PER_L[name] ?? 20;
      return INGREDIENT_SD * (Math.log((a.get(name) ?? 0) + small) - Math.log((b.get(name) ?? 0) + small));
    }),
  );
}
