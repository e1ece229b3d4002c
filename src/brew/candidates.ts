/*
 * Module: brew. Every brew that a shelf allows, with how good it looks before its time is known.
 */
import type { Caution } from "../core/caution.js";
import { gramsPerMl, readParts, type DeveloperBrew, type BrewPart } from "./brew.js";
import type { BrewMaterial } from "./brewCapacity.js";
import { measured, type SpoonedAmount } from "./measured.js";
import { isCoffee, isVitaminC } from "./parts.js";
import {
  COFFEE,
  FULL_VITAMIN_C_G_PER_L,
  holds,
  sodaOf,
  take,
  vitaminCOf,
  type Shelf,
  type Wanted,
} from "./shelf.js";
import { solveBrew } from "./solveBrew.js";

/** What a proposal is for. */
export interface ProposalUse {
  readonly volumeMl: number;
  readonly temperatureC: number;
  readonly material: BrewMaterial;
  readonly spoonMl: number;
  /** the amounts will be spooned, not weighed */
  readonly spooned: boolean;
}

/** A brew that could be proposed. */
export interface Candidate {
  readonly brew: DeveloperBrew;
  readonly spoons: readonly SpoonedAmount[];
  /** what no spoon measures */
  readonly cautions: readonly Caution[];
  /** it has both agents */
  readonly pair: boolean;
  /** the less, the better */
  readonly score: number;
}

/** Agents in the order of preference: both, more of both first; then either. */
const AGENTS: readonly (readonly Wanted[])[] = [
  [COFFEE, vitaminCOf(FULL_VITAMIN_C_G_PER_L)],
  [COFFEE, vitaminCOf(4)],
  [COFFEE],
  [vitaminCOf(FULL_VITAMIN_C_G_PER_L)],
  [vitaminCOf(8)],
  [vitaminCOf(4)],
];

const caustic = (gPerL: number): Wanted => [["sodium-hydroxide", gPerL]];
/**
 * Alkalis in the order of preference. Caustic soda is never the only one: 4 g/l of it with coffee is anything
 * from pH 10.0 to 12.8, because coffee's acid is known to a factor of two.
 */
const ALKALIS: readonly (readonly Wanted[])[] = [
  ...[54, 40.5, 27].map((dryG) => [sodaOf(dryG)]),
  [[["baking-soda", 21]], caustic(10)],
  ...[60, 45, 30, 20, 12].map((gPerL): Wanted[] => [[["trisodium-phosphate", gPerL]]]),
  [[["borax", 20]], caustic(5)],
  ...[30, 22, 15].map((gPerL): Wanted[] => [[["borax", gPerL]]]),
];

/**
 * Film and paper are restrained where the shelf allows; plates, slow and clear, are not (common practice).
 */
const RESTRAINER: Wanted = [
  ["potassium-bromide", 1],
  ["table-salt", 10],
  ["iodised-salt", 10],
];

/** A brew develops well between these (common practice with carbonate brews). */
const PH_FROM = 9.5;
const PH_TO = 10.95;

/** Whether the shelf has agents and alkalis at all, whatever the amounts. */
export function shelfHolds(shelf: Shelf, of: "agent" | "alkali"): boolean {
  return (of === "agent" ? AGENTS : ALKALIS).some((all) => all.every((wanted) => holds(shelf, wanted)));
}

/** Whether there is enough of agents or alkalis for one of the recipes. */
export function shelfHasEnough(shelf: Shelf, of: "agent" | "alkali", volumeMl: number): boolean {
  return (of === "agent" ? AGENTS : ALKALIS).some((all) => takeAll(shelf, all, volumeMl) !== undefined);
}

function takeAll(shelf: Shelf, all: readonly Wanted[], volumeMl: number): readonly BrewPart[] | undefined {
  const parts = all.map((wanted) => take(shelf, wanted, volumeMl));
  return parts.every((part) => part !== undefined) ? parts : undefined;
}

/** Every candidate, the best first. */
export function candidatesOf(shelf: Shelf, use: ProposalUse): readonly Candidate[] {
  const found: Candidate[] = [];
  const restrainer = use.material === "plate" ? undefined : take(shelf, RESTRAINER, use.volumeMl);
  // A restrainer slows: where the bath would die first, it is left out.
  const restrained = restrainer === undefined ? [[]] : [[restrainer], []];
  AGENTS.forEach((agents, agentRank) => {
    const agentParts = takeAll(shelf, agents, use.volumeMl);
    if (agentParts === undefined) return;
    ALKALIS.forEach((alkalis, alkaliRank) => {
      const alkaliParts = takeAll(shelf, alkalis, use.volumeMl);
      if (alkaliParts === undefined) return;
      restrained.forEach((more, withoutRank) => {
        const parts = [...alkaliParts, ...agentParts, ...more];
        const candidate = candidateOf(parts, use, agentRank / 100 + alkaliRank / 10 + withoutRank / 2);
        if (candidate !== undefined) found.push(candidate);
      });
    });
  });
  return found.sort((a, b) => a.score - b.score);
}

function candidateOf(parts: readonly BrewPart[], use: ProposalUse, rank: number): Candidate | undefined {
  const taken = parts.map((part) => measured(part, use.spoonMl, use.spooned));
  const brew: DeveloperBrew = {
    volumeMl: use.volumeMl,
    temperatureC: use.temperatureC,
    ingredients: taken.map(({ part }) => part),
  };
  const read = readParts("proposeBrew/brew", brew);
  const { liquid, dry } = gramsPerMl(read);
  // A few drops of bath, and a quarter of a spoon of powder: more powder than water.
  if (liquid > 1 || dry > 1) return undefined;
  const pair = read.parts.some(isCoffee) && read.parts.some(isVitaminC);
  const { ph } = solveBrew(read);
  const off = Math.max(0, PH_FROM - ph, ph - PH_TO);
  return {
    brew,
    spoons: taken.map(({ amount }) => amount),
    cautions: taken.flatMap(({ cautions = [] }, i) =>
      cautions.map((one) => ({ ...one, path: `/ingredients/${i}` })),
    ),
    pair,
    score: 10 * off + (pair ? 0 : 1) + rank,
  };
}
