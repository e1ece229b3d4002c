/*
 * The rows of an answer: one for the known time, and one for each term.
 */
import type { Caution } from "../core/caution.js";
import { factorOf, logSdOf, type Effect, type Rests } from "../core/cause.js";
import { REPEAT_LOG_SD } from "../core/estimate.js";
import { inRange } from "../core/guards.js";
import { checkedOrigin, hardlyMoved, restsOn, type LawOrigin } from "../core/term.js";
import { covarianceOf, type Joint, type Share } from "./joint.js";
import type { MarkRow } from "./marks.js";
import type { PairTerm } from "./pairTerms.js";
import type { Term } from "./terms.js";
import type { Baseline, Factor, FactorCause } from "./types.js";

/** A term that was worked out for today's conditions. */
export interface Worked {
  readonly term: Term | PairTerm;
  readonly effect: Effect;
  readonly cautions: readonly Caution[];
  /** the factor and its spread */
  readonly value: number;
  readonly logSd: number;
  /** both sides are equal */
  readonly unchanged: boolean;
  readonly rests: Rests | undefined;
  /** today's side as it was given */
  readonly given: unknown;
}

const NONE: readonly Caution[] = [];

/** A term of which both sides differ, with nothing to warn of. */
export function workedFrom(
  term: Term | PairTerm,
  effect: Effect,
  given?: unknown,
  cautions: readonly Caution[] = NONE,
): Worked {
  const [value, logSd] = [factorOf(effect), logSdOf(effect)];
  return { term, effect, cautions, value, logSd, unchanged: false, rests: undefined, given };
}

/** Whether a row's spread was learned, however little the runs have moved its law. */
const isLearned = (row: Factor | undefined, law: LawOrigin): boolean =>
  row?.basis === "own-runs" || hardlyMoved(law);

/** What the numbers of one law explain of ln(time), signed. */
function ownShares({ cause }: Term | PairTerm, { slope, sd, further = [] }: Effect): Share[] {
  return [[cause.name, slope * sd], ...further.map((one): Share => [one.parameter, one.slope])];
}

/** A row whose law has several learned numbers, with the spread that they leave together. */
export function withOwnCovariance(row: Factor, { term, effect }: Worked, joint: Joint): Factor {
  if (effect.further === undefined || !isLearned(row, term.law)) return row;
  const own = covarianceOf(joint, ownShares(term, effect));
  return { ...row, logSd: Math.sqrt(Math.max(0, row.logSd * row.logSd + own)) };
}

/** What learned numbers explain of ln(time): the base time's own, and each cause's, signed. */
export function sharesOf(
  base: Factor,
  baseline: Baseline,
  together: boolean,
  worked: readonly Worked[],
  marked: readonly MarkRow[],
  factors: readonly Factor[],
): Share[] {
  const shares: Share[] = together && isLearned(base, baseline) ? [["baseline", base.logSd]] : [];
  worked.forEach(({ term, effect }, i) => {
    if (!isLearned(factors[i + 1], term.law)) return;
    for (const share of ownShares(term, effect)) shares.push(share);
  });
  for (const { parameter, factor } of marked)
    if (parameter !== undefined) shares.push([parameter, factor.logSd]);
  return shares;
}

/** The row of the known time. */
export function baselineFactor(at: string, baseline: Baseline): Factor {
  const { logSd = REPEAT_LOG_SD } = baseline;
  inRange(`${at}/baseline/logSd`, logSd, 0, 3);
  const { sources, runs } = checkedOrigin(`${at}/baseline`, baseline);
  const own = baseline.logSd !== undefined;
  const said = own ? (sources ?? []) : ["a known time repeats to about 4 % (common practice)"];
  const row = {
    cause: "baseline",
    value: 1,
    logSd,
    basis: own ? restsOn(baseline) : "default",
    sources: said,
  } as const;
  return runs === undefined ? row : { ...row, runs };
}

const NO_SOURCES: readonly string[] = [];

/** The row of a term; where nothing changed it rests on no law at all. */
export function rowOf({ term, value, logSd, unchanged, rests, given }: Worked): Factor {
  const { cause, law } = term;
  // The lists of causes and pairs name these alone; a longer list is a test's.
  const name = cause.name as FactorCause;
  const from = "said" in term ? term.said : undefined;
  // A strength is its own row: it is not repeated.
  const own = "relative" in cause && cause.relative && typeof given === "object";
  const to = own ? undefined : (given ?? from);
  if (unchanged || rests?.basis === "unchanged")
    return {
      cause: name,
      value,
      logSd,
      basis: "unchanged",
      sources: NO_SOURCES,
      ...(from !== undefined && { from }),
      ...(to !== undefined && { to }),
    };
  const sources = (rests === undefined ? law.sources : rests.sources) ?? NO_SOURCES;
  const runs = rests === undefined ? law.runs : rests.runs;
  const basis = rests?.basis ?? term.basis;
  // Fields are added rather than spread: this runs for each cause of each answer.
  const row: { -readonly [Field in keyof Factor]: Factor[Field] } = {
    cause: name,
    value,
    logSd,
    basis,
    sources,
  };
  if (from !== undefined) row.from = from;
  if (to !== undefined) row.to = to;
  if (basis === "own-runs" && law.before !== undefined) row.before = law.before;
  // A law that no run has taught has no runs to speak of.
  if (runs !== undefined && runs > 0) row.runs = runs;
  if (law.seen !== undefined) row.seen = law.seen;
  return row;
}

/** Cautions with their places; `path` for those that say none. */
export function placedAt(path: string, cautions: readonly Caution[]): readonly Caution[] {
  if (cautions.every((one) => one.path !== undefined)) return cautions;
  return cautions.map((one) => (one.path === undefined ? { ...one, path } : one));
}
