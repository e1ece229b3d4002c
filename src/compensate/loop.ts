/*
 * The loop over the causes: ln(time) = ln(known time) + the sum of one term for each cause.
 */
import { gravestFirst, refuses, type Caution } from "../core/caution.js";
import { factorOf, logSdOf, type AnyCause, type Effect, type Rests } from "../core/cause.js";
import { inputError } from "../core/errors.js";
import { checkedSpread, REPEAT_LOG_SD, timeEstimate } from "../core/estimate.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { basisOf, checkedOrigin, type Basis, type Factor, type LawOrigin } from "../core/term.js";
import { checkedVersion } from "../core/version.js";
import { checkMaterial } from "../temperature/temperatureCautions.js";
import { driftEffect, type Drift } from "./driftEffect.js";
import { checkedJoint, covarianceOf, sameBaseline, type Joint, type Share } from "./joint.js";
import { outcomeCautions, unreadCautions } from "./outcomeCautions.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "./types.js";

/** Fields of an object by their names. */
type Fields = Readonly<Record<string, unknown>>;

/** A cause with its law and the known side of the change, each checked once. */
interface Term {
  readonly cause: AnyCause;
  readonly law: LawOrigin;
  readonly basis: Basis;
  /** the known side; undefined where the baseline does not say, and then conditions may not say either */
  readonly from: unknown;
}

/** A known time and laws, checked once, to be asked under many conditions. */
export interface Prepared {
  /** the whole answer; `at` is the name of the function that was called */
  answer(at: string, conditions: Conditions): Compensation;
  /** the time alone, s */
  timeS(at: string, conditions: Conditions): number;
  readonly terms: readonly Term[];
  readonly baselineS: number;
}

/** Checks a known time and laws once. Every law that is given is checked, whether its condition is named or not. */
export function prepared(
  at: string,
  causes: readonly AnyCause[],
  baseline: Baseline,
  knowledge: Knowledge,
): Prepared {
  plainObject(`${at}/baseline`, baseline);
  plainObject(`${at}/knowledge`, knowledge);
  if ("schema" in knowledge) checkedVersion(`${at}/knowledge/schema`, knowledge.schema, 1);
  const baselineS = positive(`${at}/baseline/timeS`, baseline.timeS, 1e6, "timeS");
  const base = baselineFactor(at, baseline);
  checkMaterial(`${at}/baseline`, baseline);
  const terms = causes.map((cause) => termOf(at, cause, baseline as unknown as Fields, knowledge as Fields));
  const joint =
    knowledge.joint === undefined ? undefined : checkedJoint(`${at}/knowledge/joint`, knowledge.joint);
  const together =
    joint &&
    sameBaseline(
      baseline,
      knowledge.joint?.baseline as Baseline,
      causes.map((each) => each.field),
    );

  const answer = (called: string, conditions: Conditions): Compensation => {
    plainObject(`${called}/conditions`, conditions);
    const asked = conditions as Fields;
    const worked: Worked[] = [];
    let timeS = baselineS;
    let drifting: Term | undefined;
    for (const term of terms) {
      const { cause } = term;
      const given = asked[cause.field];
      if (given === undefined && cause.required !== true) continue;
      if (cause.required === true && typeof given === "object" && given !== null) {
        // A bath that drifts comes last, since how far it drifts depends on the time that the others leave.
        drifting = term;
        worked.push({ term, effect: NOTHING, cautions: [], unchanged: false });
        continue;
      }
      const one = workedTerm(called, term, given, baseline);
      worked.push(one);
      timeS *= factorOf(one.effect);
    }
    if (drifting !== undefined) {
      const { cause, law } = drifting;
      const where = `${called}/conditions/${cause.field}`;
      const drift = driftEffect(where, law as never, baseline, asked[cause.field] as Drift, timeS);
      timeS *= factorOf(drift.effect);
      const term = drifting;
      const i = worked.findIndex((one) => one.term === term);
      const cautions = placedAt(`/conditions/${cause.field}`, drift.cautions);
      worked[i] = { term, effect: drift.effect, cautions, unchanged: false };
    }
    return summed(
      called,
      timeS,
      base,
      worked,
      baseline,
      conditions,
      knowledge,
      joint,
      together === true,
      (asked) => unreadCautions(causes, baseline, asked, knowledge),
    );
  };

  const timeOnly = (called: string, conditions: Conditions): number => {
    const asked = conditions as Fields;
    let timeS = baselineS;
    for (const term of terms) {
      const given = asked[term.cause.field];
      if (given === undefined) continue;
      if (typeof given === "object" && term.cause.required === true) return answer(called, conditions).timeS;
      timeS *= factorOf(effectOf(called, term, given));
    }
    return timeS;
  };
  return { answer, timeS: timeOnly, terms, baselineS };
}

/** A term that was worked out for today's conditions. */
interface Worked {
  readonly term: Term;
  readonly effect: Effect;
  readonly cautions: readonly Caution[];
  /** both sides are equal */
  readonly unchanged: boolean;
  readonly rests?: Rests | undefined;
}

const NOTHING: Effect = { log: 0, slope: 0, sd: 0, beside: 0 };

function termOf(at: string, cause: AnyCause, baseline: Fields, knowledge: Fields): Term {
  const known = cause.relative === true ? undefined : baseline[cause.field];
  const from: unknown =
    known === undefined && cause.required !== true
      ? cause.start
      : cause.read(`${at}/baseline/${cause.field}`, known);
  const given = knowledge[cause.law];
  if (given === undefined) return { cause, law: cause.generic as LawOrigin, basis: "default", from };
  const law = cause.check(`${at}/knowledge/${cause.law}`, given) as LawOrigin;
  return { cause, law, basis: basisOf(law), from };
}

/** The effect of today's side, which has to have a known side to be compared with. */
function effectOf(at: string, { cause, law, from }: Term, given: unknown): Effect {
  const to: unknown = cause.read(`${at}/conditions/${cause.field}`, given);
  if (from === undefined) needsCounterpart(`${at}/conditions/${cause.field}`, cause.field);
  if (cause.within !== undefined) {
    cause.within(`${at}/baseline/${cause.field}`, law, from, true);
    cause.within(`${at}/conditions/${cause.field}`, law, to, false);
  }
  return cause.effect(law, from, to);
}

function workedTerm(at: string, term: Term, given: unknown, baseline: Baseline): Worked {
  const { cause, law, from } = term;
  const path = given === undefined ? `/baseline/${cause.field}` : `/conditions/${cause.field}`;
  const to: unknown = given === undefined ? from : cause.read(`${at}/conditions/${cause.field}`, given);
  const effect = given === undefined ? NOTHING : effectOf(at, term, given);
  const cautions =
    cause.cautions === undefined ? [] : placedAt(path, cause.cautions(law, from, to, effect, baseline));
  return { term, effect, cautions, unchanged: equal(from, to), rests: cause.rests?.(law, to) };
}

/** Whether two sides are equal: numbers as numbers, others as the same object. */
const equal = (from: unknown, to: unknown): boolean => from === to;

/** What a condition without a counterpart says. */
export function needsCounterpart(place: string, field: string): never {
  throw inputError(
    TypeError,
    place,
    "needs-counterpart",
    { path: `/baseline/${field}` },
    undefined,
    `needs baseline.${field}: what was it for the known time?`,
  );
}

function placedAt(path: string, cautions: readonly Caution[]): readonly Caution[] {
  return cautions.map((one) => (one.path === undefined ? { ...one, path } : one));
}

function baselineFactor(at: string, baseline: Baseline): Factor {
  const { logSd = REPEAT_LOG_SD } = baseline;
  inRange(`${at}/baseline/logSd`, logSd, 0, 3);
  const { sources, runs } = checkedOrigin(`${at}/baseline`, baseline);
  const own = baseline.logSd !== undefined;
  const said = own ? (sources ?? []) : ["a known time repeats to about 4 % (common practice)"];
  const row = {
    cause: "baseline",
    value: 1,
    logSd,
    basis: own ? basisOf(baseline) : "default",
    sources: said,
  } as const;
  return runs === undefined ? row : { ...row, runs };
}

/** The row of a term; where nothing changed it rests on no law at all. */
function rowOf({ term, effect, unchanged, rests }: Worked): Factor {
  const value = factorOf(effect);
  const logSd = logSdOf(effect);
  const { cause, law, basis } = term;
  if (unchanged || rests?.basis === "unchanged")
    return { cause: cause.name, value, logSd, basis: "unchanged", sources: [] };
  const sources = (rests === undefined ? law.sources : rests.sources) ?? [];
  // A generic law that was not handed in has no runs to speak of.
  const runs = rests !== undefined ? rests.runs : law === cause.generic ? undefined : law.runs;
  const row = { cause: cause.name, value, logSd, basis: rests?.basis ?? basis, sources };
  const counted = runs === undefined ? row : { ...row, runs };
  return law.seen === undefined ? counted : { ...counted, seen: law.seen };
}

function summed(
  at: string,
  timeS: number,
  base: Factor,
  worked: readonly Worked[],
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge,
  joint: Joint | undefined,
  together: boolean,
  unread: (conditions: Conditions) => readonly Caution[],
): Compensation {
  const factors = [base, ...worked.map(rowOf)];
  const cautions = worked.flatMap((one) => one.cautions);
  let variance = 0;
  for (const { logSd } of factors) variance += logSd * logSd;
  if (joint !== undefined) {
    const shares: Share[] = together && base.basis === "own-runs" ? [["baseline", base.logSd]] : [];
    worked.forEach(({ term, effect }, i) => {
      if (factors[i + 1]?.basis === "own-runs") shares.push([term.cause.name, effect.slope * effect.sd]);
    });
    // Covariances that cancel spreads can leave a rounding below 0.
    variance = Math.max(0, variance + covarianceOf(joint, shares));
  }
  const estimate = timeEstimate(timeS, checkedSpread(`${at}/knowledge`, Math.sqrt(variance)));
  const all = gravestFirst([
    ...cautions,
    ...outcomeCautions(estimate, factors, baseline, knowledge, together),
    ...unread(conditions),
  ]);
  return { timeS, lowS: estimate.lowS, highS: estimate.highS, refused: refuses(all), factors, cautions: all };
}
