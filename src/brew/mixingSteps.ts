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

const isAlkali = ({ data }: ReadPart): boolean => data.role === "alkali";

/** The cups, in the order they are made: what goes in, its share of the water, and what is said after it. */
const CUPS: readonly (readonly [has: (part: ReadPart) => boolean, share: number, text: (all: Parts) => string])[] = [
  [
    ({ data, ingredient }) => /alkali|preservative/.test(data.role) && ingredient !== OWN_CUP,
    0.35,
    () => "of warm water: powder into water, slowly.",
  ],
  [
    ({ ingredient }) => ingredient === OWN_CUP,
    0.15,
    (all) => `of cold water, little by little${all.some((part) => isAlkali(part) && part.ingredient !== OWN_CUP) ? "; add it to the soda" : ""}.`,
  ],
  [({ data }) => data.solids !== undefined, 0.25, (all) => `of warm water.${all.some(isAlkali) ? " Join coffee and soda." : ""}`],
  [({ data }) => data.role === "restrainer", 0.05, () => "of water and add it."],
  [
    ({ data }) => data.moles?.ascorbate !== undefined,
    0.15,
    (all) => `of water; strain. Add it last, slowly${foams(all) ? ": it foams" : ""}.`,
  ],
];

/**
 * How to mix a brew, step by step: each thing dissolved apart, soda and coffee joined, vitamin C last, made up to volume.
 *
 * @param brew - the brew, as for {@link brewPh}
 * @returns numbered steps, with the water of each cup; together the cups take at most 95 % of the volume
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for a brew that {@link brewPh} refuses
 *
 * @remarks Order, standing time of 5 to 10 min and use within the hour: common practice with coffee, soda and vitamin C.
 *
 * @example
 * ```ts
 * const brew = { volumeMl: 400, ingredients: [{ ingredient: "soda-anhydrous", massG: 21.6 }] };
 * mixingSteps(brew)[1].waterMl // => 140
 * ```
 */
export function mixingSteps(brew: Brew): readonly MixingStep[] {
  const { volumeMl, temperatureC, parts } = readBrew("mixingSteps: brew", brew);
  const liquid = (part: ReadPart): boolean => part.ingredient === "brewed-coffee";
  const waterForCups = volumeMl - parts.filter(liquid).reduce((sum, part) => sum + part.massG, 0);
  const steps: Omit<MixingStep, "step">[] = [
    { text: "Gloves and glasses; ware that never goes back to food; no dust." },
  ];
  for (const [has, share, text] of CUPS) {
    const inCup = parts.filter(has);
    if (inCup.length === 0) continue;
    const what = inCup.map(({ data, massG }) => `${shortG(massG)} g ${data.name}`).join(" and ");
    const care = inCup.flatMap(({ data, ingredient }) => (ingredient === OWN_CUP ? [`Danger: ${data.hazard as string}. `] : []));
    const waterMl = inCup.every(liquid) ? 0 : Math.floor(waterForCups * share);
    const after = text(parts);
    // A liquid needs no water to dissolve in.
    const done = inCup.every(liquid) ? `Take ${what}${after.replace("of warm water", "")}` : `Dissolve ${what} in ${waterMl} ml ${after}`;
    steps.push({ text: `${care.join("")}${done}`, waterMl });
  }
  steps.push(
    { text: `Make up to ${shortG(volumeMl)} ml with water and bring it to ${shortG(temperatureC)} °C.` },
    { text: "Let it stand 5 to 10 min, until the bubbles are gone; use it within the hour, once." },
    { text: "Label it; keep it from children; dispose of it as the local code says." },
  );
  return steps.map((step, i) => ({ step: i + 1, ...step }));
}

const shortG = (value: number): string => String(Number(value.toFixed(1)));
