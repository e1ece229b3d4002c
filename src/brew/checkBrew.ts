import { gravestFirst, type Caution, type CautionSeverity } from "../core/caution.js";
import { inRange, plainObject, positive, wrongKind } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import { SODA_G_PER_MOL, type Ingredient } from "../handbook/ingredients.js";
import { bathOf } from "./bath.js";
import { foams, hazardCaution, readBrew, type Brew, type ReadBrew } from "./brew.js";
import { constantsAt } from "./constants.js";
import { solveBath } from "./equilibrium.js";
import { solubility } from "./solubility.js";

/** What the brew is for, where it is known. */
export interface BrewUse {
  /** hours since it was mixed, 0 to 1e6 */
  readonly ageH?: number;
  /** speed of the film, ISO arithmetic, above 0 to 100000 */
  readonly filmIso?: number;
  /** an old, soft or hand-coated emulsion */
  readonly softEmulsion?: boolean;
}

const READ: readonly string[] = ["ageH", "filmIso", "softEmulsion"];

/** Below this nothing much develops; baking soda alone gives about 8. */
const PH_STOP = 8.5;
/** The first published coffee developer worked at pH 9 (S. A. Williams et al., 1995, as cited later). */
const PH_LOW = 9;
const PH_HIGH = 11;
const PH_HIGH_SOFT = 10;
/**
 * Alkaline vitamin C: advice of one hour, collapse after two (Shinkawa Photographic Laboratory, 2015, strips
 * every half hour).
 */
const AGE_WARN_H = 1;
const AGE_STOP_H = 2;

/** What goes with an ingredient. Decaffeinated coffee being weaker is common practice. */
const OF_INGREDIENTS: readonly (readonly [Ingredient, code: string, message: string])[] = [
  ["decaffeinated-coffee", "decaffeinated", "Decaffeinated coffee is often weaker: test it."],
  ["brewed-coffee", "brewed-coffee", "Brewed coffee is of unknown strength: test it."],
  ["ascorbic-acid-tablet", "tablet-filler", "Crush the tablets; strain off what stays."],
];

/** Always true of a brew from the kitchen. */
const ALWAYS: readonly (readonly [code: string, message: string])[] = [
  ["gloves-and-glasses", "Gloves and glasses; no dust: alkali harms eyes, skin and lungs."],
  ["kitchenware", "Ware used for this never goes back to food."],
  ["rest-before-use", "Let it stand 5 to 10 min, until the bubbles are gone."],
  ["disposal", "Local codes and safety data sheets go first, for disposal too."],
];

/**
 * Checks a brew: whether it can develop, whether it may harm the emulsion, and what to mind while mixing it.
 *
 * @param brew - the brew, as for {@link brewPh}
 * @param use - its age, the film's speed, and whether the emulsion is soft, where known
 * @returns cautions, gravest first; a brew passes when none is a `"stop"`
 * @throws TypeError when something is of the wrong kind, among it a `softEmulsion` that is neither true nor
 * false
 * @throws RangeError for a brew that {@link brewPh} refuses, or a figure out of range
 *
 * @remarks Vitamin C by itself: class trials at Rochester in 1995 had no success with it (S. A. Williams). pH
 * below 8.5 stops and below 9 warns; above 11 (10 for a soft emulsion) warns. Solubility is that in pure
 * water, so other sodium salts may bring a salt down earlier. Sources stand beside the limits; without one
 * they are common practice.
 *
 * @example
 * ```ts
 * const brew = { volumeMl: 500, ingredients: [{ ingredient: "baking-soda", massG: 27 }, { ingredient:
 * "instant-coffee", massG: 20 }] }; checkBrew(brew)[0].code // => "alkali-too-weak"
 * ```
 */
export function checkBrew(brew: Brew, use: BrewUse = {}): readonly Caution[] {
  const read = readBrew("checkBrew/brew", brew);
  const given = plainObject("checkBrew/use", use);
  const { ageH = 0 } = use;
  inRange("checkBrew/use/ageH", ageH, 0, 1e6, "ageH");
  const filmIso = use.filmIso === undefined ? undefined : positive("checkBrew/use/filmIso", use.filmIso, 1e5);
  if (use.softEmulsion !== undefined && typeof use.softEmulsion !== "boolean")
    wrongKind("checkBrew/use/softEmulsion", "true or false", use.softEmulsion);
  const { volumeMl, temperatureC, parts } = read;
  const found: Caution[] = [];
  const say = (
    severity: CautionSeverity,
    code: string,
    message: string,
    more: Partial<Caution> = {},
  ): void => {
    found.push({ code, severity, message, ...more });
  };
  const holds = (...names: readonly Ingredient[]): boolean =>
    parts.some((part) => names.includes(part.ingredient));
  const coffee = parts.some(({ data }) => data.solids !== undefined);
  const vitaminC = parts.some(({ data }) => data.moles?.ascorbate !== undefined);
  const alkali = parts.some(({ data }) => data.role === "alkali");
  const { ph, foam } = solveBath(bathOf(parts, volumeMl), constantsAt(temperatureC));
  const soft = use.softEmulsion === true;

  found.push(...unreadFields("", given, READ));
  if (!coffee && !vitaminC) say("stop", "no-agent", "Nothing in it develops: add coffee or vitamin C.");
  if (!alkali) say("stop", "no-alkali", "Nothing develops without soda.");
  else if (ph < PH_STOP)
    say(
      "stop",
      "alkali-too-weak",
      "Not alkaline enough: baking soda alone is too weak; take washing soda, or more.",
      { limit: PH_STOP, actual: ph },
    );
  else if (ph < PH_LOW)
    say("warn", "alkali-low", "Barely alkaline: slow and uneven.", { limit: PH_LOW, actual: ph });
  const high = soft ? PH_HIGH_SOFT : PH_HIGH;
  if (ph > high)
    say("warn", "ph-high", "Gelatin swells in it: a soft emulsion lifts at the edges.", {
      limit: high,
      actual: ph,
    });
  if (vitaminC && !coffee)
    say("warn", "vitamin-c-without-coffee", "Vitamin C without coffee is slow and unsure.");
  if (coffee && !vitaminC)
    say("note", "coffee-without-vitamin-c", "Without vitamin C it is slow and stains.");
  for (const [ingredient, code, message] of OF_INGREDIENTS) if (holds(ingredient)) say("note", code, message);
  if (foams(parts))
    say(foam > 0.005 ? "warn" : "note", "acid-foams", "Vitamin C foams with soda: add it last, slowly.", {
      limit: 0.005,
      actual: foam,
    });
  if (parts.length > 1)
    say("note", "mix-apart", "Dissolve each apart; join soda and coffee; vitamin C last.");
  const fast = filmIso === undefined ? !soft : filmIso >= 400;
  if (fast && !parts.some(({ data }) => data.role === "restrainer"))
    say(
      "note",
      "restrainer-wanted",
      "Fast film, ISO 400 and more, fogs without 1 g of potassium bromide or 10 to 20 g of salt a litre.",
    );
  for (const { data } of parts) found.push(...hazardCaution(data));
  if (parts.some(({ lowG, highG }) => highG > 1.5 * lowG))
    say("note", "spooned", "Weigh it if you can: what a spoon holds is uncertain, and the time with it.");
  if (ageH > AGE_WARN_H)
    say(
      ageH > AGE_STOP_H ? "stop" : "warn",
      "made-long-ago",
      "It dies at once after an hour or two: mix fresh.",
      { path: "/ageH", limit: ageH > AGE_STOP_H ? AGE_STOP_H : AGE_WARN_H, actual: ageH },
    );
  for (const [code, message] of ALWAYS) say("note", code, message);
  found.push(...undissolved(read));
  return gravestFirst(found);
}

/** What is more than the water can hold, in g per litre; the hydrates of soda are added up as dry soda. */
function undissolved({ parts, volumeMl, temperatureC }: ReadBrew): Caution[] {
  const amounts = new Map<Ingredient, number>();
  for (const { ingredient, data, massG } of parts) {
    const isSoda = ingredient.startsWith("soda-");
    const key = isSoda ? "soda-anhydrous" : ingredient;
    const dryG = isSoda ? (massG * SODA_G_PER_MOL) / (data.molarMassGPerMol as number) : massG;
    amounts.set(key, (amounts.get(key) ?? 0) + (dryG * 1000) / volumeMl);
  }
  return [...amounts].flatMap(([ingredient, actual]) => {
    const limit = 10 * (solubility(ingredient, temperatureC) ?? Infinity);
    if (actual <= limit) return [];
    const message = `Not all the ${ingredient} dissolves at this temperature (g per litre).`;
    return [{ code: "undissolved", severity: "warn" as const, message, limit, actual }];
  });
}
