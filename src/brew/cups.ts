/*
 * Module: brew. The cups in which a brew is dissolved: how much water each has, or how much brewed coffee is
 * set aside for it where the water is too little.
 */
import { SODA_G_PER_MOL, type Ingredient } from "../handbook/ingredients.js";
import type { ReadBrew, ReadPart } from "./brew.js";
import { gramsOf, isAcid, isCaustic, isCoffee, isLiquid } from "./parts.js";
import { solubility } from "./solubility.js";
import { solutionsOf } from "./solution.js";

/** A cup, by what is dissolved in it. */
export type MixingCup = "alkali" | "instant-coffee" | "restrainer" | "acid";

/** The water of the cups, °C: it dissolves well, and spoils neither vitamin C nor baking soda (assumed). */
export const WARM_C = 40;

/** Grams of instant coffee that 100 g of water surely take (assumed: it is sold as a syrup, too). */
const COFFEE_G = 100;
/** Water that a powder has where there is enough, over what just holds it (assumed). */
const AMPLE = 1.25;

/** Shares of the water for the cups, where no more is needed; solutions have the rest of 0.95. */
const CUPS: readonly {
  readonly cup: MixingCup;
  readonly has: (part: Pick<ReadPart, "data">) => boolean;
  readonly share: number;
}[] = [
  { cup: "alkali", has: ({ data }) => /alkali|preservative/.test(data.role), share: 0.35 },
  { cup: "instant-coffee", has: isCoffee, share: 0.22 },
  { cup: "restrainer", has: ({ data }) => data.role === "restrainer", share: 0.08 },
  { cup: "acid", has: isAcid, share: 0.15 },
];
/** What has its water first, where there is too little: instant coffee goes into brewed coffee readily. */
const FIRST: readonly MixingCup[] = ["alkali", "acid", "restrainer", "instant-coffee"];

/** The cup of an ingredient. */
export const cupOf = (part: Pick<ReadPart, "data">): MixingCup =>
  (CUPS.find(({ has }) => has(part)) as (typeof CUPS)[number]).cup;

/** The cups, in the order they are used. */
export const MIXING_CUPS: readonly MixingCup[] = CUPS.map(({ cup }) => cup);

/** What an ingredient dissolves as: the hydrates of soda as dry soda, tablets as what is in them. */
export function dissolvesAs({ ingredient, data, massG }: ReadPart): {
  readonly ingredient: Ingredient;
  readonly massG: number;
} {
  if (ingredient === "ascorbic-acid-tablet") return { ingredient: "ascorbic-acid", massG };
  if (!ingredient.startsWith("soda-")) return { ingredient, massG };
  const dryG = (massG * SODA_G_PER_MOL) / (data.molarMassGPerMol as number);
  return { ingredient: "soda-anhydrous", massG: dryG };
}

/** The least water that a part dissolves in, ml. */
export function waterFor(part: ReadPart, temperatureC: number): number {
  const { ingredient, massG } = dissolvesAs(part);
  return (100 * massG) / (solubility(ingredient, temperatureC) ?? COFFEE_G);
}

/** The least water of several parts, each for itself, ml. */
export const waterForAll = (parts: readonly ReadPart[], temperatureC: number): number =>
  parts.reduce((sum, part) => sum + waterFor(part, temperatureC), 0);

/** The alkali and the preservative of a brew that are powders: caustic soda is poured into them. */
export const alkaliPowders = ({ parts }: ReadBrew): readonly ReadPart[] =>
  parts.filter((part) => !isCaustic(part) && cupOf(part) === "alkali");

/** One cup of a brew. */
export interface Cup {
  readonly cup: MixingCup;
  /** what is dissolved in it */
  readonly solids: readonly ReadPart[];
  /** its water, ml; 0 where it has coffee instead */
  readonly waterMl: number;
  /** coffee that is set aside for it, ml; none for instant coffee, which goes into the rest */
  readonly coffeeMl?: number;
  /** it is dissolved in brewed coffee */
  readonly inCoffee: boolean;
  /** the least that it needs over what it has: above 1 not all dissolves */
  readonly short: number;
}

interface Need {
  readonly cup: MixingCup;
  readonly solids: readonly ReadPart[];
  /** what just holds it, ml */
  readonly needMl: number;
  /** the same in whole steps */
  readonly leastMl: number;
  /** what it has where there is enough, ml */
  readonly likeMl: number;
}

/** The cups that a brew needs, in the order they are used. */
export function cupsOf(read: ReadBrew): readonly Cup[] {
  const { powders, cupMl, restMl } = solutionsOf(read);
  // Whole millilitres; a hundredth of a small bath.
  const stepMl = Math.min(1, 10 ** (Math.floor(Math.log10(read.volumeMl)) - 2));
  const steps = (ml: number, round: (x: number) => number): number =>
    Number((stepMl * round(Number((ml / stepMl).toPrecision(12)))).toPrecision(12));
  const caustic = read.parts.some(isCaustic);
  const coffeeMl = gramsOf(read.parts.filter(isLiquid));
  const needs = CUPS.flatMap(({ cup, share }): Need[] => {
    const solids = powders.filter((part) => !isLiquid(part) && cupOf(part) === cup);
    if (solids.length === 0) return [];
    const needMl = waterForAll(solids, WARM_C);
    // The solution of caustic soda is cold: what it is poured into cools.
    const coldMl = caustic && cup === "alkali" ? waterForAll(solids, read.temperatureC) : 0;
    const leastMl = steps(needMl, Math.ceil);
    const likeMl = Math.max(steps(cupMl(share), Math.floor), steps(AMPLE * needMl, Math.ceil), leastMl);
    return [{ cup, solids, needMl, leastMl, likeMl: Math.max(likeMl, steps(coldMl, Math.ceil)) }];
  });
  const inCoffee = inCoffeeOf(needs, restMl, coffeeMl, caustic);
  const inWater = needs.filter(({ cup }) => !inCoffee.has(cup));
  const aside = needs.filter(({ cup }) => inCoffee.has(cup) && cup !== "instant-coffee");
  const instant = needs.filter(({ cup }) => inCoffee.has(cup) && cup === "instant-coffee");
  const down = (ml: number): number => Math.max(stepMl, steps(ml, Math.floor));
  const waterMls = shared(inWater, restMl, down);
  const ample = aside.map((need) => ({ ...need, likeMl: steps(AMPLE * need.leastMl, Math.ceil) }));
  const asideMls = shared(ample, coffeeMl - instant.reduce((sum, { leastMl }) => sum + leastMl, 0), down);
  return needs.map(({ cup, solids, needMl }): Cup => {
    const waterMl = waterMls.get(cup);
    if (waterMl !== undefined) return { cup, solids, waterMl, inCoffee: false, short: needMl / waterMl };
    const setAsideMl = asideMls.get(cup);
    const own = setAsideMl === undefined ? {} : { coffeeMl: setAsideMl };
    return { cup, solids, waterMl: 0, ...own, inCoffee: true, short: 1 };
  });
}

/** The cups that go into brewed coffee, since the water does not hold all: never alkali with caustic soda. */
function inCoffeeOf(
  needs: readonly Need[],
  waterMl: number,
  coffeeMl: number,
  caustic: boolean,
): ReadonlySet<MixingCup> {
  let [water, coffee] = [waterMl, coffeeMl];
  const found = new Set<MixingCup>();
  for (const cup of FIRST) {
    const need = needs.find((one) => one.cup === cup);
    if (need === undefined) continue;
    const must = caustic && cup === "alkali";
    if (must || need.leastMl <= water || need.leastMl > coffee) water -= need.leastMl;
    else {
      coffee -= need.leastMl;
      found.add(cup);
    }
  }
  return found;
}

/** Millilitres for each cup: the least for all, then what each would like, as far as it goes. */
function shared(
  needs: readonly Need[],
  poolMl: number,
  down: (ml: number) => number,
): ReadonlyMap<MixingCup, number> {
  const leastMl = needs.reduce((sum, need) => sum + need.leastMl, 0);
  const moreMl = needs.reduce((sum, need) => sum + need.likeMl - need.leastMl, 0);
  const share = moreMl === 0 ? 0 : Math.min(1, Math.max(0, poolMl - leastMl) / moreMl);
  const cut = Math.min(1, poolMl / leastMl);
  return new Map(
    needs.map(({ cup, leastMl: least, likeMl }) => [
      cup,
      cut < 1 ? down(cut * least) : down(least + share * (likeMl - least)),
    ]),
  );
}
