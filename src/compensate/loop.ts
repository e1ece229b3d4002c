/*
 * The loop over the causes: ln(time) = ln(known time) + the sum of one term for each cause.
 */
import { gravestFirst, refuses, type Caution } from "../core/caution.js";
import { factorOf, isDrift, logSdOf, type AnyCause, type Effect } from "../core/cause.js";
import { checkedSpread, timeEstimate } from "../core/estimate.js";
import { plainObject, positive } from "../core/guards.js";
import type { AnyPair } from "../core/pair.js";
import { checkedVersion } from "../core/version.js";
import { pairs as allPairs } from "../pairs.js";
import { checkMaterial } from "../temperature/temperatureCautions.js";
import { driftEffect, type Drift, type DriftEffect } from "./driftEffect.js";
import { checkedJoint, covarianceOf, sameBaseline } from "./joint.js";
import { limitJudge } from "./limitCautions.js";
import { isMark, marksNamed, marksReader, productOf, type MarkRow } from "./marks.js";
import { outcomeJudge, unreadCautions } from "./outcomeCautions.js";
import { driftingPair, pairEffect, pairFactor, pairTermsOf, type PairTerm } from "./pairTerms.js";
import {
  baselineFactor,
  placedAt,
  rowOf,
  sharesOf,
  workedFrom,
  withOwnCovariance,
  type Worked,
} from "./rows.js";
import { hardlyMoved } from "../core/term.js";
import { bothWithin, effectOf, placesOf, termOf, todaySide, type Fields, type Term } from "./terms.js";
import type { Baseline, Compensation, Conditions, Factor, Knowledge } from "./types.js";

/** A known time and laws, checked once, to be asked under many conditions. */
export interface Prepared {
  /** the whole answer */
  readonly answer: (conditions: Conditions) => Compensation;
  /** the time alone, s */
  readonly timeS: (conditions: Conditions) => number;
  readonly terms: readonly Term[];
  readonly pairTerms: readonly PairTerm[];
  readonly baselineS: number;
}

/**
 * Checks a known time and laws once. Every law that is given is checked, whether its condition is named or
 * not. `at` is the function that was called with the known time, `called` the one that is called with
 * conditions.
 */
export function prepared(
  at: string,
  causes: readonly AnyCause[],
  baseline: Baseline,
  knowledge: Knowledge,
  called: string = at,
  pairs: readonly AnyPair[] = allPairs,
): Prepared {
  plainObject(at, baseline, "/baseline");
  plainObject(at, knowledge, "/knowledge");
  if ("schema" in knowledge) checkedVersion(`${at}/knowledge/schema`, knowledge.schema, 1);
  const baselineS = positive(at, baseline.timeS, 1e6, "timeS", "/baseline/timeS");
  const base = baselineFactor(at, baseline);
  checkMaterial(`${at}/baseline`, baseline);
  const terms = causes.map((cause, index) =>
    termOf(placesOf(at, called, cause), index, cause, baseline as unknown as Fields, knowledge as Fields),
  );
  const pairTerms = pairTermsOf(at, pairs, terms, knowledge as Fields);
  const joint =
    knowledge.joint === undefined ? undefined : checkedJoint(`${at}/knowledge/joint`, knowledge.joint);
  const together = joint !== undefined && sameBaseline(baseline, knowledge.joint?.baseline, causes);
  const unread = unreadCautions(causes, pairs, baseline, knowledge);
  const judged = outcomeJudge(baseline, knowledge, together, terms.flatMap(ofKnown));
  const limits = limitJudge(baseline, knowledge);
  const conditionsAt = `${called}/conditions`;
  const marksOf = marksReader(conditionsAt, `${at}/knowledge`, knowledge, joint);
  const usual = productOf(marksOf({}));

  const answer = (conditions: Conditions): Compensation => {
    plainObject(conditionsAt, conditions);
    const asked = conditions as Fields;
    const work = workTerms(terms, asked, baseline, baselineS);
    workTogether(work, pairTerms, asked, baseline);
    const { worked } = work;
    const marked = marksOf(conditions);
    const { factors, cautions, guessed, marksFactor, variance } = rowsOf(base, worked, marked);
    const timeS = work.timeS * marksFactor;
    const shared =
      joint === undefined
        ? 0
        : covarianceOf(joint, sharesOf(base, baseline, together, worked, marked, factors));
    // Covariances that cancel spreads can leave a rounding below 0.
    const logSd = Math.sqrt(Math.max(0, variance + shared));
    const estimate = timeEstimate(timeS, checkedSpread(at, logSd, "/knowledge"));
    for (const caution of limits(estimate, conditions)) cautions.push(caution);
    judged(cautions, estimate, guessed, worked, conditions);
    for (const caution of unread(conditions, work.named + marksNamed(conditions))) cautions.push(caution);
    const sorted = gravestFirst(cautions);
    return {
      timeS,
      lowS: estimate.lowS,
      highS: estimate.highS,
      refused: refuses(sorted),
      factors:
        joint === undefined
          ? factors
          : factors.map((row, i) => {
              const one = worked[i - 1];
              return one === undefined ? row : withOwnCovariance(row, one, joint);
            }),
      cautions: sorted,
    };
  };

  let fields: Map<string, Term> | undefined;
  const timeOnly = (conditions: Conditions): number => {
    plainObject(conditionsAt, conditions);
    const asked = conditions as Fields;
    fields ??= new Map(terms.map((term) => [term.cause.field, term]));
    let timeS = baselineS;
    let before = -1;
    const sides: unknown[] = [];
    const logs: number[] = [];
    for (const field in asked) {
      const term = fields.get(field);
      const given = asked[field];
      if (given === undefined) continue;
      if (term === undefined) {
        if (isMark(field)) return answer(conditions).timeS;
        continue;
      }
      // Factors are multiplied in the order of the causes, so that the time is that of the whole answer to
      // the last bit.
      if (term.index < before || isDrift(term.cause, given)) return answer(conditions).timeS;
      before = term.index;
      const to = todaySide(term, given, asked);
      sides[term.index] = to;
      const { logAt } = term;
      if (logAt === undefined) {
        const effect = effectOf(term, to);
        logs[term.index] = effect.log;
        timeS *= factorOf(effect);
      } else {
        bothWithin(term, to);
        const log = logAt(to);
        logs[term.index] = log;
        timeS *= Math.exp(log);
      }
    }
    for (const term of pairTerms) timeS *= pairFactor(term, sides, logs);
    return timeS * usual;
  };
  return { answer, timeS: timeOnly, terms, pairTerms, baselineS: baselineS * usual };
}

/** The place of a bath that drifts, until the others are worked out. */
const DRIFTING: unknown = undefined;

/** The terms as they are worked out for today's conditions. */
interface Work {
  readonly worked: Worked[];
  /** today's sides, and what each does to ln(time), by the places of their terms */
  readonly sides: unknown[];
  readonly logs: number[];
  timeS: number;
  /** how many causes the conditions name */
  named: number;
  /** the term whose side drifts, and its place among those that are worked */
  drifts: Term | undefined;
  drifting: number;
}

/** Works out each cause alone, but for one that drifts. */
function workTerms(terms: readonly Term[], asked: Fields, baseline: Baseline, baselineS: number): Work {
  const work: Work = {
    worked: [],
    sides: [],
    logs: [],
    timeS: baselineS,
    named: 0,
    drifts: undefined,
    drifting: -1,
  };
  for (const term of terms) {
    const { cause } = term;
    const given = asked[cause.field];
    if (given !== undefined) work.named += 1;
    else if (cause.required !== true) continue;
    if (isDrift(cause, given)) {
      // A bath that drifts comes last, since how far it drifts depends on the time that the others leave.
      work.drifting = work.worked.length;
      work.worked.push(DRIFTING as Worked);
      work.drifts = term;
      continue;
    }
    const one = workedTerm(term, given, asked, baseline);
    work.worked.push(one);
    work.sides[term.index] = term.lastTo;
    work.logs[term.index] = one.effect.log;
    work.timeS *= one.value;
  }
  return work;
}

/** Works out what rests on several causes: the bath that drifts, and the pairs. */
function workTogether(work: Work, pairTerms: readonly PairTerm[], asked: Fields, baseline: Baseline): void {
  const { worked, sides, logs, drifts } = work;
  let drift: DriftEffect | undefined;
  if (drifts !== undefined) {
    const { cause, law, askedAt } = drifts;
    drift = driftEffect(askedAt, law as never, baseline, asked[cause.field] as Drift, work.timeS);
    const { effect, cautions } = drift;
    work.timeS *= factorOf(effect);
    worked[work.drifting] = workedFrom(drifts, effect, asked[cause.field], cautions);
  }
  for (const term of pairTerms) {
    const effect =
      drift === undefined || drifts === undefined
        ? pairEffect(term, sides, logs)
        : driftingPair(term, sides, logs, drifts, drift);
    if (effect === undefined) continue;
    work.timeS *= factorOf(effect);
    worked.push(workedFrom(term, effect));
  }
}

/** The rows of an answer, with what follows from them. */
interface Rows {
  readonly factors: Factor[];
  readonly cautions: Caution[];
  /** what rests on a generic law, by name */
  readonly guessed: readonly string[];
  /** what thermometer, person and batch multiply the time by */
  readonly marksFactor: number;
  /** of ln(time), without covariances */
  readonly variance: number;
}

function rowsOf(base: Factor, worked: readonly Worked[], marked: readonly MarkRow[]): Rows {
  const factors = [base];
  const cautions: Caution[] = [];
  const guessed: string[] = [];
  let variance = base.logSd * base.logSd;
  let marksFactor = 1;
  for (const one of worked) {
    const row = rowOf(one);
    factors.push(row);
    variance += row.logSd * row.logSd;
    // Own runs that bear on a law are data, however little they moved it.
    if (row.basis === "default" && !hardlyMoved(one.term.law)) guessed.push(row.cause);
    for (const caution of one.cautions) cautions.push(caution);
  }
  for (const { factor } of marked) {
    factors.push(factor);
    marksFactor *= factor.value;
    variance += factor.logSd * factor.logSd;
    if (factor.basis === "default") guessed.push(factor.cause);
  }
  return { factors, cautions, guessed, marksFactor, variance };
}

const NOTHING: Effect = { log: 0, slope: 0, sd: 0, beside: 0 };
const NONE: readonly Caution[] = [];

/** What is unwise about the known side of a cause. */
const ofKnown = ({ cause, from }: Term): readonly Caution[] =>
  from === undefined ? NONE : placedAt(`/baseline/${cause.field}`, cause.knownCautions?.(from) ?? NONE);

function workedTerm(term: Term, given: unknown, asked: Fields, baseline: Baseline): Worked {
  const { cause, law, from } = term;
  const { last } = term;
  // A side that depends on the dilution too is worked out anew when that changes.
  const bath = asked["dilution"];
  const alone = !term.byStock || (term.lastBath === bath && typeof bath !== "object");
  if (alone && last !== undefined && term.lastGiven === given && typeof given !== "object") return last;
  const to: unknown = given === undefined ? from : todaySide(term, given, asked);
  // An object is its owner's, who may change it: only plain values serve again.
  const same = to === term.lastTo && typeof to !== "object";
  if (last !== undefined && given !== undefined && term.lastGiven !== undefined && same)
    return { ...last, given };
  const effect = given === undefined ? NOTHING : effectOf(term, to);
  const path = given === undefined ? `/baseline/${cause.field}` : term.path;
  const cautions =
    cause.cautions === undefined
      ? NONE
      : placedAt(path, cause.cautions(law, from, to, effect, baseline, path));
  const worked = {
    term,
    effect,
    cautions,
    value: factorOf(effect),
    logSd: logSdOf(effect),
    unchanged: from === to,
    rests: cause.rests?.(law, to),
    given,
  };
  // What an answer hands out cannot serve again: a caution belongs to one answer.
  term.last = cautions.length === 0 ? worked : undefined;
  term.lastGiven = given;
  term.lastTo = to;
  term.lastBath = bath;
  return worked;
}
