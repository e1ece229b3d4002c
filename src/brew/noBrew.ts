/*
 * Module: brew. Why a shelf gives no brew, and the one thing to add.
 */
import { isPast, type Caution } from "../core/caution.js";
import type { Ingredient } from "../handbook/ingredients.js";
import { shelfHasEnough, shelfHolds, type ProposalUse } from "./candidates.js";
import { holds, sodaOf, vitaminCOf, COFFEE, type Shelf } from "./shelf.js";
import { noBrewTexts, say, type BrewCautionCode } from "./text.js";

/** Why nothing on the shelf makes a brew. */
export type NoBrewReason =
  | "no-agent"
  | "label-missing"
  | "no-alkali"
  | "alkali-too-weak"
  | "caustic-alone"
  | "too-little"
  | "volume-too-small"
  | "does-not-dissolve"
  | "too-alkaline"
  | "too-cold"
  | "too-warm"
  | "dies-too-soon"
  | "too-slow";

/** No brew: the reason, and the one thing that helps. */
export interface NoBrew {
  /** always undefined: this tells the two answers apart */
  readonly brew: undefined;
  /** why, by name */
  readonly reason: NoBrewReason;
  /** the reason in English */
  readonly message: string;
  /** an ingredient; or a larger bath, or warmer or cooler water */
  readonly add: Ingredient | "more-bath" | "warm-water" | "cool-water";
  /** what to mind at this temperature, and with what is to be added */
  readonly cautions: readonly Caution[];
}

const no = (reason: NoBrewReason, add: NoBrew["add"], cautions: readonly Caution[] = []): NoBrew => ({
  brew: undefined,
  reason,
  message: noBrewTexts[reason],
  add,
  cautions,
});

/** Why there is no brew: what is missing, then what is short, then what the candidates failed by. */
export function noBrew(
  shelf: Shelf,
  use: ProposalUse,
  failed: NoBrewReason | undefined,
  codes: ReadonlySet<string>,
): NoBrew {
  if (!shelfHolds(shelf, "agent"))
    return no(shelf.has("ascorbic-acid-tablet") ? "label-missing" : "no-agent", "instant-coffee");
  if (!shelfHolds(shelf, "alkali")) return noAlkali(shelf);
  const soda = holds(shelf, sodaOf(1));
  if (!shelfHasEnough(shelf, "alkali", use.volumeMl)) return no("too-little", "soda-anhydrous");
  if (!shelfHasEnough(shelf, "agent", use.volumeMl)) return no("too-little", "instant-coffee");
  if (failed === "too-cold") return no(failed, "warm-water");
  if (failed === "too-warm") return no(failed, "cool-water");
  if (failed !== undefined) return no(failed, quickerBy(shelf, soda));
  if (!isPast(use.volumeMl, 40 * use.spoonMl)) return no("volume-too-small", "more-bath");
  const against = AGAINST.find(({ by }) => by.some((code) => codes.has(code)));
  const { reason, add } = against ?? UNDISSOLVED;
  return no(reason, add === "soda-anhydrous" && soda ? "instant-coffee" : add);
}

/** What the candidates failed by, by the codes of their cautions, the first that is found. */
const AGAINST: readonly {
  readonly by: readonly BrewCautionCode[];
  readonly reason: NoBrewReason;
  readonly add: NoBrew["add"];
}[] = [
  { by: ["ph-high", "hydroxide-high", "ph-unsure"], reason: "too-alkaline", add: "soda-anhydrous" },
  { by: ["alkali-too-weak"], reason: "alkali-too-weak", add: "soda-anhydrous" },
];
/** What is left. */
const UNDISSOLVED: Omit<(typeof AGAINST)[number], "by"> = { reason: "does-not-dissolve", add: "warm-water" };

function noAlkali(shelf: Shelf): NoBrew {
  if (shelf.has("baking-soda"))
    return no("alkali-too-weak", "soda-anhydrous", [
      say("baking-care", "warn"),
      say("soda-from-baking", "note"),
    ]);
  return no(shelf.has("sodium-hydroxide") ? "caustic-alone" : "no-alkali", "soda-anhydrous");
}

/** What makes a brew quicker: soda, the missing agent, or warmth. */
function quickerBy(shelf: Shelf, soda: boolean): NoBrew["add"] {
  if (!soda) return "soda-anhydrous";
  if (!holds(shelf, COFFEE)) return "instant-coffee";
  return holds(shelf, vitaminCOf(1)) ? "warm-water" : "ascorbic-acid";
}
