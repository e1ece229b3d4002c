/* What follows from the runs: the band after each, and the test that would tell most. */
import {
  compensateRecipe,
  isInputError,
  learn,
  nextTest,
  roundEstimate,
  startKnowledge,
  type DevelopmentRun,
  type RankedTest,
  type Recipe,
  type RoundedEstimate,
} from "darkroom-kinetics";
import type { TodaysBath } from "./answer.js";
import { learnedOf, withLearned, type Given } from "./recipe.js";

/** What the runs are learned on: the known time and the laws before any run, and today's bath. */
export interface Ground extends Given {
  readonly recipe: Recipe;
  readonly conditions: TodaysBath;
}

/** The time of today's bath before any run and after each, rounded; nothing where it is refused. */
export function bandsOf(
  ground: Ground,
  runs: readonly DevelopmentRun[],
): readonly (RoundedEstimate | undefined)[] {
  return Array.from({ length: runs.length + 1 }, (_, count) => {
    const answer = compensateRecipe(withLearned(ground.recipe, learnedOf(ground, runs.slice(0, count))));
    return answer.refused ? undefined : roundEstimate(answer);
  });
}

/** A test that could be made of today's bath. */
export type CandidateName = "today" | "temperature" | "dilution" | "fresh";

/** The test that would tell most of today's bath, and how well its time is known then. */
export interface BestTest {
  readonly name: CandidateName;
  readonly timeS: number;
  readonly logSd: number;
}

/** What is ranked; nothing where today's bath cannot be learned from, such as one that stands still. */
function rankedOr(rank: () => readonly RankedTest[]): readonly RankedTest[] {
  try {
    return rank();
  } catch (error) {
    if (!isInputError(error)) throw error;
    return [];
  }
}

/** Today's bath, and the same with one thing as it was known. */
export function bestTest(ground: Ground, runs: readonly DevelopmentRun[]): BestTest | undefined {
  const { baseline, laws, conditions: today } = ground;
  const candidates = (
    [
      { name: "today", test: today },
      { name: "temperature", test: { ...today, temperatureC: baseline.temperatureC } },
      { name: "dilution", test: { ...today, dilution: baseline.dilution } },
      { name: "fresh", test: { ...today, usedCm2PerL: 0, ageH: 0 } },
    ] as const
  ).filter(
    // What is the same today is no test of its own.
    ({ test }, i, all) => all.findIndex((other) => JSON.stringify(other.test) === JSON.stringify(test)) === i,
  );
  const known = learn(startKnowledge(baseline, { laws }), runs);
  const [best] = rankedOr(() =>
    nextTest(
      known,
      candidates.map(({ test }) => test),
      today,
    ),
  );
  const chosen = candidates.find(({ test }) => test === best?.candidate);
  if (best === undefined || chosen === undefined) return undefined;
  return {
    name: chosen.name,
    timeS: best.timeS,
    logSd: best.expectedLogSd,
  };
}
