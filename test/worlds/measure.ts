/* What a subject is worth in a world: coverage, score and error of its intervals. */
import { seeded } from "./random.js";
import type { Subject, WorldRun } from "./subject.js";
import { START, type World } from "./worlds.js";

/** One row of the table. */
export interface Measured {
  readonly runs: number;
  /** share of questions whose right answer lies in the 90 % and in the 50 % interval */
  readonly ninety: number;
  readonly fifty: number;
  /** mean interval score of the 90 % interval, per cent of ln(time) */
  readonly score: number;
  /** median of |ln(answer/right)|, per cent */
  readonly error: number;
}

const Z90 = 1.6448536269514722;
const Z50 = 0.6744897501960817;

/** Width, and twenty times what the truth lies outside: T. Gneiting, A. E. Raftery, J. Am. Stat. Assoc. 102, 2007, p. 370. */
function intervalScore(low: number, high: number, truth: number): number {
  return high - low + 20 * (Math.max(0, low - truth) + Math.max(0, truth - high));
}

/** Sends photographers into a world and asks each some questions after 5, 20 and 40 runs. */
export function measure<Knowledge>(
  subject: Subject<Knowledge>,
  world: World,
  photographers: number,
  counts: readonly number[] = [5, 20, 40],
  questions = 5,
  seed = 1,
): readonly Measured[] {
  const seen = counts.map(() => ({ ninety: 0, fifty: 0, score: 0, errors: [] as number[] }));
  for (let each = 0; each < photographers; each += 1) {
    const someone = world.enter(seeded(seed * 7919 + each));
    const runs: WorldRun[] = [];
    const start = subject.startKnowledge(START, { noise: world.noise });
    counts.forEach((count, k) => {
      while (runs.length < count)
        runs.push(someone.run((where) => subject.predict(subject.learn(start, runs), where).timeS));
      const known = subject.learn(start, runs);
      for (let q = 0; q < questions; q += 1) {
        const { where, rightS } = someone.question();
        const { timeS, lowS, highS } = subject.predict(known, where);
        const sd = Math.log(highS / lowS) / (2 * Z90);
        const off = Math.abs(Math.log(rightS / timeS));
        const one = seen[k]!;
        one.ninety += off <= Z90 * sd ? 1 : 0;
        one.fifty += off <= Z50 * sd ? 1 : 0;
        one.score += 100 * intervalScore(-Z90 * sd, Z90 * sd, off);
        one.errors.push(100 * off);
      }
    });
  }
  const asked = photographers * questions;
  return seen.map(({ ninety, fifty, score, errors }, k) => ({
    runs: counts[k]!,
    ninety: ninety / asked,
    fifty: fifty / asked,
    score: score / asked,
    error: errors.sort((a, b) => a - b)[Math.floor(errors.length / 2)]!,
  }));
}
