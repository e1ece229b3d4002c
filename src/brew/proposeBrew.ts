import { livesUntil } from "../age/livesUntil.js";
import { gravestFirst, isPast, refuses, type Caution } from "../core/caution.js";
import { plainObject, positive } from "../core/guards.js";
import { handbookAppearance } from "../handbook/appearance.js";
import { REST_S } from "../handbook/rest.js";
import { unreadFields } from "../core/pointer.js";
import { brewTemperature, MOST, type DeveloperBrew } from "./brew.js";
import { brewCapacity, brewMaterial, type BrewMaterial } from "./brewCapacity.js";
import { brewLife } from "./brewLife.js";
import { checkBrew } from "./checkBrew.js";
import { candidatesOf, type Candidate, type ProposalUse } from "./candidates.js";
import type { SpoonedAmount } from "./measured.js";
import { mixingSteps, type MixingStep } from "./mixingSteps.js";
import { noBrew, type NoBrew, type NoBrewReason } from "./noBrew.js";
import { lacksLabel, readShelf, type ShelfItem } from "./shelf.js";
import { startingTime, type StartingTime } from "./startingTime.js";
import { bathCautions } from "../temperature/temperatureCautions.js";
import { say } from "./text.js";

/** What {@link proposeBrew} takes. */
export interface ProposalInput {
  /** what is in the cupboard */
  readonly shelf: readonly ShelfItem[];
  /** finished volume, above 0 to 100000 ml */
  readonly volumeMl: number;
  /** temperature of the bath, 0 to 50 °C; 20 when left out */
  readonly temperatureC?: number | undefined;
  /** `"film"` when left out; plates count as soft emulsions */
  readonly material?: BrewMaterial | undefined;
  /**
   * the spoon at hand, above 0 to 100 ml: the amounts will be spooned, and their range counts; weighed when
   * left out
   */
  readonly spoonMl?: number | undefined;
}

/** A brew for the first evening. */
export interface ProposedBrew {
  /** the brew in grams and spoons; with ranges where it is spooned */
  readonly brew: DeveloperBrew;
  /** a starting time, as wide as it is unknown */
  readonly start: StartingTime;
  /** how much this bath develops, cm² */
  readonly capacityCm2: number;
  /** life from mixing, h, 10 mm deep in an open dish; see {@link brewLife} */
  readonly lifeH: number;
  /** five times for the first test strip, s, in equal ratios over the interval, none past the bath's life */
  readonly strip: readonly number[];
  /** how to mix it */
  readonly steps: readonly MixingStep[];
  /** each ingredient in what a kitchen can measure */
  readonly spoons: readonly SpoonedAmount[];
  /** whole time over time of appearance, very rough: inspection is the way to the first time */
  readonly appearance: {
    /** whole time over time of appearance */
    readonly factor: number;
    /** standard deviation of ln(factor) */
    readonly logSd: number;
    /** where the factor comes from */
    readonly sources: readonly string[];
  };
  /** gravest first; never a `"stop"` */
  readonly cautions: readonly Caution[];
}

/** Slower than this at the median, the brew is no use. */
const TOO_SLOW_S = 5400;
const STRIP = 5;
const FIELDS: readonly string[] = ["shelf", "volumeMl", "temperatureC", "material", "spoonMl"];

/**
 * A brew that can work, from what is on the shelf, with a time to start from: for the first evening, when no
 * time is known.
 *
 * @param input - the shelf, the volume, and where known the temperature, the material and the spoon
 * @returns the brew in grams and spoons, its starting time as a wide estimate, what it develops and how long
 * it lives, a first test strip, the mixing steps, and cautions; or, where nothing works, `brew: undefined`
 * with the reason and the one thing to add
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for an unknown or unfit ingredient, or a figure out of range
 *
 * @remarks Agents by preference: coffee 40 g/l with vitamin C 16 or 4, coffee alone, vitamin C 16, 8 or 4
 * alone. Alkalis: washing soda as 54, 40.5 or 27 g/l of dry soda, baking soda 21 with caustic soda 10,
 * trisodium phosphate 60 to 12, borax 20 with caustic 5, borax 30 to 15. Caustic soda is never the only
 * alkali. What {@link checkBrew} and {@link temperatureCautions} stop, what does not dissolve and what dies
 * before its median time is dropped; the best is nearest to pH 9.5 to 10.95, with both agents, with soda.
 * Starting times at 20 °C: film 15 min (common practice), plate 10.5 min (assumed), paper 4 min (from
 * memory), with ln sd 0.35, 0.6, 0.5; more without one of the agents; strength and temperature on top. Run
 * the strip before a negative that cannot be reshot.
 *
 * @example
 * ```ts
 * const shelf: Ingredient[] = ["instant-coffee", "soda-anhydrous", "ascorbic-acid"];
 * const found = proposeBrew({ shelf, volumeMl: 500, temperatureC: 14 });
 * found.brew && found.brew.ingredients.length // => 3
 * found.brew && found.start.timeS / 60 // => 25
 * const none = proposeBrew({ shelf: ["instant-coffee"], volumeMl: 500 });
 * none.brew === undefined && none.add // => "soda-anhydrous"
 * ```
 */
export function proposeBrew(input: ProposalInput): ProposedBrew | NoBrew {
  const given = plainObject("proposeBrew/input", input);
  const shelf = readShelf("proposeBrew/input/shelf", given["shelf"]);
  const { temperatureC = 20, material = "film", spoonMl } = given;
  const unread = unreadFields("", given, FIELDS);
  const use: ProposalUse = {
    volumeMl: positive("proposeBrew/input/volumeMl", given["volumeMl"], MOST, "volumeMl"),
    temperatureC: brewTemperature("proposeBrew/input/temperatureC", temperatureC),
    material: brewMaterial("proposeBrew/input/material", material),
    spoonMl: spoonMl === undefined ? 5 : positive("proposeBrew/input/spoonMl", spoonMl, 100, "volumeMl"),
    spooned: spoonMl !== undefined,
  };
  const soft = use.material === "plate";
  const warmth = bathCautions(use.temperatureC, false, soft, "/temperatureC");
  const labels = lacksLabel(shelf, use.volumeMl) ? [say("tablet-label", "warn", { path: "/shelf" })] : [];
  let failed: NoBrewReason | undefined;
  const codes = new Set<string>();
  const candidates = candidatesOf(shelf, use);
  // Coffee alone is preferred to the pair where the acid of vitamin C leaves too little alkali.
  const leftOut = candidates.some(({ pair }) => pair);
  for (const candidate of candidates) {
    const cautions = checkBrew(candidate.brew, { material: use.material, softEmulsion: soft });
    const against = cautions.filter(isAgainst);
    for (const { code } of against) codes.add(code);
    if (against.length > 0) continue;
    const proposed = propose(candidate, use, [
      ...unread,
      ...warmth,
      ...labels,
      ...candidate.cautions,
      ...cautions.map((one) =>
        one.code === "coffee-without-vitamin-c" && leftOut ? say("vitamin-c-left-out", "note") : one,
      ),
    ]);
    if (typeof proposed !== "string") return proposed;
    failed ??= proposed;
  }
  const none = noBrew(shelf, use, failed, codes);
  // Where the label is the reason, the reason says it.
  const wanted = none.reason === "label-missing" ? [] : labels;
  return { ...none, cautions: [...unread, ...warmth, ...wanted, ...none.cautions] };
}

/** It stops the brew, or not all of it dissolves. */
const isAgainst = ({ code, severity }: Caution): boolean =>
  severity === "stop" || code === "undissolved" || code === "too-concentrated";

/**
 * The proposal, where the bath lives to the end of its median time and that is bearable; else what is wrong.
 */
function propose(
  candidate: Candidate,
  use: ProposalUse,
  cautions: readonly Caution[],
): ProposedBrew | NoBrewReason {
  // What stops a time at this temperature stops the brew for it.
  const stop = cautions.find(({ severity }) => severity === "stop");
  if (stop !== undefined) return isPast(stop.limit as number, use.temperatureC) ? "too-cold" : "too-warm";
  const { brew, spoons } = candidate;
  const start = startingTime(brew, use.material);
  const life = brewLife(brew);
  if (isPast(start.timeS, TOO_SLOW_S)) return "too-slow";
  // It rests before it is used.
  const dies = livesUntil({ ...life, ...start, ageH: REST_S.most / 3600 });
  if (refuses(dies)) return "dies-too-soon";
  const endS = Math.min(start.highS, 3600 * life.lifeH - REST_S.most);
  const { normal, logSd, sources } = handbookAppearance.brew;
  return {
    brew,
    start,
    capacityCm2: (brewCapacity(brew, { material: use.material }).cm2PerL * use.volumeMl) / 1000,
    lifeH: life.lifeH,
    strip: Array.from({ length: STRIP }, (_, i) => start.lowS * (endS / start.lowS) ** (i / (STRIP - 1))),
    steps: mixingSteps(brew),
    spoons,
    appearance: { factor: normal, logSd, sources },
    cautions: gravestFirst([...dies.map((one) => ({ ...one, path: "/start/highS" })), ...cautions]),
  };
}
