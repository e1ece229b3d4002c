import { gravestFirst, isPast, type Caution } from "../core/caution.js";
import { Z90 } from "../core/estimate.js";
import { inRange, isBoolean, plainObject, positive } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import type { Ingredient } from "../handbook/ingredients.js";
import { REST_S } from "../handbook/rest.js";
import { readBrew, unreadInBrew, type DeveloperBrew, type ReadBrew } from "./brew.js";
import { brewMaterial, type BrewMaterial } from "./brewCapacity.js";
import { brewLife } from "./brewLife.js";
import { alkaliCautions } from "./checkAlkali.js";
import { waterCautions } from "./checkWater.js";
import type { Solution } from "./equilibrium.js";
import { isMuchGas, mostGasL } from "./gas.js";
import { isCoffee, isVitaminC } from "./parts.js";
import { bromideDose, restrainerCautions } from "./restrainer.js";
import { solveBrew } from "./solveBrew.js";
import { genericStrengthLaw } from "./strengthLaw.js";
import { hazardCaution, neverBySpoon, say } from "./text.js";

/** What the brew is for, where it is known. */
export interface BrewUse {
  /** hours since it was mixed, 0 to 1e6 */
  readonly ageH?: number | undefined;
  /** speed of the film, ISO arithmetic, above 0 to 100000 */
  readonly filmIso?: number | undefined;
  /** what is developed, `"film"`, `"plate"` or `"paper"`; film is what a restrainer is told for */
  readonly material?: BrewMaterial | undefined;
  /** an old, soft or hand-coated emulsion */
  readonly softEmulsion?: boolean | undefined;
}

const READ: readonly string[] = ["ageH", "filmIso", "material", "softEmulsion"];

/** Foam that leaves at once, mol/l: above it a warning. */
const FOAM = 0.005;
/** Film of this speed and more fogs without a restrainer (common practice). */
const FAST_ISO = 400;
/** A range of spoons beyond which a word is worth it: half as much again. */
const WIDE_SPOON = 1.5;

/** What goes with an ingredient. Decaffeinated coffee being weaker is common practice. */
const OF_INGREDIENTS: readonly (readonly [
  Ingredient,
  "decaffeinated" | "brewed-coffee" | "tablet-filler",
])[] = [
  ["decaffeinated-coffee", "decaffeinated"],
  ["brewed-coffee", "brewed-coffee"],
  ["ascorbic-acid-tablet", "tablet-filler"],
];

/** Always true of a brew from the kitchen. */
export const standingNotes = (): readonly Caution[] => [
  say("gloves-and-glasses", "note"),
  say("kitchenware", "note"),
  say("rest-before-use", "note", { quantity: "timeS", data: { minS: REST_S.least, maxS: REST_S.most } }),
  say("disposal", "note"),
];

/**
 * Checks a brew: whether it can develop, whether it may harm the emulsion or whoever mixes it, and what to
 * mind.
 *
 * @param brew - the brew, as for {@link brewPh}
 * @param use - its age, the material, the film's speed, and whether the emulsion is soft, where known
 * @returns cautions, gravest first; a brew passes when none is a `"stop"`
 * @throws TypeError when something is of the wrong kind, among it a `softEmulsion` that is neither true nor
 * false
 * @throws RangeError for a brew that {@link brewPh} refuses, or a figure out of range
 *
 * @remarks Vitamin C by itself: class trials at Rochester in 1995 had no success with it (S. A. Williams). pH
 * below 8.5 stops and below 9 warns. Too much alkali is judged by free hydroxide, as the pH it has at 20 °C:
 * above 11 gelatin swells; a soft emulsion has a warning from 10.65 and a stop from 11. More than 0.2 mol/l
 * of hydroxide stops, and so does sulphite below pH 7. Past its life ({@link brewLife}) the brew stops, past
 * the low end of it a warning comes. Solubility is that in pure water, so other sodium salts may bring a
 * salt down earlier. Local codes and safety data sheets go first.
 *
 * @example
 * ```ts
 * const soda: BrewPart = { ingredient: "baking-soda", massG: 27 };
 * const coffee: BrewPart = { ingredient: "instant-coffee", massG: 20 };
 * checkBrew({ volumeMl: 500, ingredients: [soda, coffee] })[0].code // => "alkali-too-weak"
 * ```
 */
export function checkBrew(brew: DeveloperBrew, use: BrewUse = {}): readonly Caution[] {
  const read = readBrew("checkBrew/brew", brew);
  const given = plainObject("checkBrew/use", use);
  const ageH = use.ageH === undefined ? 0 : inRange("checkBrew/use/ageH", use.ageH, 0, 1e6, "ageH");
  const filmIso = use.filmIso === undefined ? undefined : positive("checkBrew/use/filmIso", use.filmIso, 1e5);
  if (use.softEmulsion !== undefined) isBoolean("checkBrew/use/softEmulsion", use.softEmulsion);
  if (use.material !== undefined) brewMaterial("checkBrew/use/material", use.material);
  const soft = use.softEmulsion === true;
  const solution = solveBrew(read);
  const fast = wantsRestrainer(use.material, filmIso, soft);
  return gravestFirst([
    ...unreadInBrew("", brew),
    ...unreadFields("", given, READ),
    ...alkaliCautions(read, solution, soft),
    ...restrainerCautions(bromideDose(read)),
    ...agentCautions(read),
    ...mixingCautions(read, solution, fast),
    ...read.parts.flatMap(({ ingredient }) => hazardCaution(ingredient)),
    ...spoonCautions(read),
    ...ageCautions(brew, ageH),
    ...standingNotes(),
    ...waterCautions(read),
  ]);
}

/** Fast film, or film of which nothing is known; an emulsion that is soft is a slow one. */
function wantsRestrainer(material: BrewUse["material"], filmIso: number | undefined, soft: boolean): boolean {
  if (material !== undefined && material !== "film") return false;
  return filmIso === undefined ? !soft : filmIso >= FAST_ISO;
}

function agentCautions({ parts }: ReadBrew): Caution[] {
  const [coffee, vitaminC] = [parts.some(isCoffee), parts.some(isVitaminC)];
  const found: Caution[] = [];
  if (!coffee && !vitaminC) found.push(say("no-agent", "stop"));
  if (vitaminC && !coffee) found.push(say("vitamin-c-without-coffee", "warn"));
  if (coffee && !vitaminC) found.push(say("coffee-without-vitamin-c", "note"));
  for (const [ingredient, code] of OF_INGREDIENTS)
    if (parts.some((part) => part.ingredient === ingredient)) found.push(say(code, "note"));
  return found;
}

function mixingCautions({ parts, volumeMl }: ReadBrew, { foam }: Solution, fast: boolean): Caution[] {
  const found: Caution[] = [];
  const gasL = mostGasL(parts);
  const gasLPerL = (1000 * gasL) / volumeMl;
  if (gasL > 0)
    found.push(
      say("acid-foams", isPast(foam, FOAM) || isMuchGas(gasLPerL) ? "warn" : "note", {
        quantity: "molPerL",
        limit: FOAM,
        actual: foam,
        data: { gasL, gasLPerL },
      }),
    );
  if (parts.length > 1)
    found.push(
      say("mix-apart", "note", { data: { coffee: parts.some(isCoffee), vitaminC: parts.some(isVitaminC) } }),
    );
  if (fast && !parts.some(({ data }) => data.role === "restrainer"))
    found.push(
      say("restrainer-wanted", "note", { data: { bromideGPerL: 1, saltGPerL: [10, 20], iso: FAST_ISO } }),
    );
  return found;
}

function spoonCautions({ parts }: ReadBrew): Caution[] {
  return parts.flatMap(({ ingredient, lowG, highG, path, spoons }) => {
    const never = spoons === undefined ? [] : neverBySpoon(ingredient, `${path}/spoons`);
    // What is never spooned needs no word on how far spoons differ.
    if (never.length > 0 || !isPast(highG, WIDE_SPOON * lowG)) return never;
    return [
      say("spoon-range", "note", {
        path,
        quantity: "ratio",
        actual: spoonRatio(lowG, highG),
        data: { ingredient },
      }),
    ];
  });
}

/** What a range of grams may do to the time, as a factor each way: the range is read as 90 %. */
export function spoonRatio(lowG: number, highG: number): number {
  return Math.exp(Z90 * spoonLogSd(lowG, highG));
}

/** The same as a standard deviation of ln(time), by the generic law. */
export function spoonLogSd(lowG: number, highG: number): number {
  return (genericStrengthLaw.exponent * Math.log(highG / lowG)) / (2 * Z90);
}

function ageCautions(brew: DeveloperBrew, ageH: number): Caution[] {
  if (ageH === 0) return [];
  const { lifeH, lowH } = brewLife(brew);
  if (!isPast(ageH, lowH) || lifeH === 0) return [];
  const severity = isPast(ageH, lifeH) ? "stop" : "warn";
  const data = { at: "pour-in" } as const;
  const figures = { path: "/ageH", quantity: "ageH", limit: lifeH, actual: ageH, data } as const;
  return [say("bath-past-life", severity, figures)];
}
