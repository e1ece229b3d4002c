/* What follows from the runs: the band after each, and the test that would tell most. */
import {
  compensate,
  learn,
  nextTest,
  predict,
  roundEstimate,
  startKnowledge,
  type Baseline,
  type Conditions,
  type DevelopmentRun,
  isInputError,
  type Knowledge,
  type LearnedKnowledge,
  type RankedTest,
  type RoundedEstimate,
} from "darkroom-kinetics";

/** What the runs are learned on. */
export interface Ground {
  /** the known time as it was given, before any run */
  readonly baseline: Baseline;
  readonly laws: Knowledge;
  readonly conditions: Conditions;
}

/** The knowledge before any run. */
const startOf = ({ baseline, laws }: Ground): LearnedKnowledge => startKnowledge(baseline, { laws });

/** The time of today's bath before any run and after each, rounded; nothing where it is refused. */
export function bandsOf(
  ground: Ground,
  runs: readonly DevelopmentRun[],
): readonly (RoundedEstimate | undefined)[] {
  const start = startOf(ground);
  return Array.from({ length: runs.length + 1 }, (_, count) => {
    const answer =
      count === 0
        ? compensate(ground.baseline, ground.conditions, ground.laws)
        : predict(learn(start, runs.slice(0, count)), ground.conditions);
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
  const { baseline, conditions } = ground;
  const { temperatureC, pushStops } = conditions;
  // What a pushed film would tell is not known apart from its push.
  if (typeof temperatureC !== "number" || pushStops !== undefined) return undefined;
  const today = { ...conditions, temperatureC };
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
  const known = learn(startOf(ground), runs);
  const [best] = rankedOr(() =>
    nextTest(
      known,
      candidates.map(({ test }) => test),
      conditions,
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
