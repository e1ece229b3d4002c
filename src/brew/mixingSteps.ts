import type { Ingredient } from "../handbook/ingredients.js";
import { foams, readBrew, type Brew, type ReadPart } from "./brew.js";

/** One step at the bench; `waterMl` where a cup of water is taken. */
export interface MixingStep {
  readonly step: number;
  readonly text: string;
  readonly waterMl?: number;
}

const OWN_CUP: Ingredient = "sodium-hydroxide";

type Parts = readonly ReadPart[];

/** Less water than this, ml a gram, and it may not dissolve in its cup. */
const LEAST_ML_PER_G = 4;

const isLiquid = ({ ingredient }: ReadPart): boolean => ingredient === "brewed-coffee";
const isAlkali = ({ data }: ReadPart): boolean => data.role === "alkali";

/** The cups, in the order they are made: what goes in, its share of the water, and what is said after it. */
const CUPS: readonly (readonly [
  has: (part: ReadPart) => boolean,
  share: number,
  text: (all: Parts) => string,
])[] = [
  [
    ({ data, ingredient }) => /alkali|preservative/.test(data.role) && ingredient !== OWN_CUP,
    0.35,
    () => "of warm water: powder into water, slowly.",
  ],
  [
    ({ ingredient }) => ingredient === OWN_CUP,
    0.15,
    (all) =>
      `of cold water, little by little; it gets hot: let it cool${all.some((part) => isAlkali(part) && part.ingredient !== OWN_CUP) ? ", then add it to the soda" : ""}.`,
  ],
  [
    ({ data }) => data.solids !== undefined,
    0.22,
    (all) => `of warm water.${all.some(isAlkali) ? " Join coffee and soda." : ""}`,
  ],
  [({ data }) => data.role === "restrainer", 0.08, () => "of water and add it."],
  [
    ({ data }) => data.moles?.ascorbate !== undefined,
    0.15,
    (all) => `of water; strain. Add it last, slowly${foams(all) ? ": it foams" : ""}.`,
  ],
];

/**
 * How to mix a brew, step by step: each thing dissolved apart, soda and coffee joined, vitamin C last, made
 * up to volume.
 *
 * @param brew - the brew, as for {@link brewPh}
 * @returns numbered steps, with the water of each cup; together the cups take at most 95 % of the volume;
 * where brewed coffee leaves too little water, the rest is dissolved in the coffee
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for a brew that {@link brewPh} refuses
 *
 * @remarks Order, standing time of 5 to 10 min and use within the hour: common practice with coffee, soda and
 * vitamin C.
 *
 * @example
 * ```ts
 * const brew = { volumeMl: 400, ingredients: [{ ingredient: "soda-anhydrous", massG: 21.6 }] };
 * mixingSteps(brew)[1].waterMl // => 140
 * ```
 */
export function mixingSteps(brew: Brew): readonly MixingStep[] {
  const { volumeMl, temperatureC, parts } = readBrew("mixingSteps/brew", brew);
  const coffeeMl = gramsOf(parts.filter(isLiquid));
  const steps: Omit<MixingStep, "step">[] = [
    { text: "Gloves and glasses; ware that never goes back to food; no dust." },
  ];
  for (const [has, share, text] of CUPS) {
    const inCup = parts.filter(has);
    if (inCup.length === 0) continue;
    const [liquids, solids] = [inCup.filter(isLiquid), inCup.filter((part) => !isLiquid(part))];
    const care = inCup.flatMap(({ data, ingredient }) =>
      ingredient === OWN_CUP ? [`Danger: ${data.hazard as string}. `] : [],
    );
    const after = text(parts);
    const cupMl = Math.floor((volumeMl - coffeeMl) * share);
    // A liquid needs no water to dissolve in, and where it leaves too little, the rest dissolves in the
    // liquid.
    const inCoffee = coffeeMl > cupMl && cupMl < LEAST_ML_PER_G * gramsOf(solids);
    const waterMl = solids.length === 0 || inCoffee ? 0 : cupMl;
    const coffee = liquids.length > 0 ? listOf(liquids) : "some of the coffee";
    const done =
      solids.length === 0
        ? `Take ${coffee}${after.replace("of warm water", "")}`
        : inCoffee
          ? `Dissolve ${listOf(solids)} in ${coffee}${after.replace(/^of (?:(warm|cold) )?water/, (_, warmth?: string) => (warmth ? `, ${warmth}` : ""))}`
          : `Dissolve ${listOf(inCup)} in ${waterMl} ml ${after}`;
    steps.push({ text: `${care.join("")}${done}`, waterMl });
  }
  steps.push(
    { text: `Make up to ${shortG(volumeMl)} ml with water and bring it to ${shortG(temperatureC)} °C.` },
    { text: "Let it stand 5 to 10 min, until the bubbles are gone; use it within the hour, once." },
    { text: "Label it; keep it from children; dispose of it as the local code says." },
  );
  return steps.map((step, i) => ({ step: i + 1, ...step }));
}

const listOf = (parts: Parts): string =>
  parts.map(({ data, massG }) => `${shortG(massG)} g ${data.name}`).join(" and ");
const gramsOf = (parts: Parts): number => parts.reduce((sum, { massG }) => sum + massG, 0);

/**
 * To a tenth; below one to two digits, or a gram of bromide a litre would be rounded by a fifth in a small
 * bath.
 */
const shortG = (value: number): string => String(Number(value < 1 ? value.toPrecision(2) : value.toFixed(1)));
