/*
 * The loop over the causes: ln(time) = ln(known time) + the sum of one term for each cause.
 */
import { gravestFirst, refuses, type Caution } from "../core/caution.js";
import {
  factorOf,
  logSdOf,
  type AnyCause,
  type DilutionGiven,
  type Effect,
  type Rests,
} from "../core/cause.js";
import { inputError } from "../core/errors.js";
import { checkedSpread, REPEAT_LOG_SD, timeEstimate } from "../core/estimate.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { basisOf, checkedOrigin, type Basis, type Factor, type LawOrigin } from "../core/term.js";
import { checkedVersion } from "../core/version.js";
import { checkMaterial } from "../temperature/temperatureCautions.js";
import { driftEffect, type Drift } from "./driftEffect.js";
import { checkedJoint, covarianceOf, sameBaseline, type Share } from "./joint.js";
import { limitJudge } from "./limitCautions.js";
import { outcomeJudge, unreadCautions } from "./outcomeCautions.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "./types.js";

/** Fields of an object by their names. */
type Fields = Readonly<Record<string, unknown>>;

/** A cause with its law and the known side of the change, each checked once. */
export interface Term {
  readonly cause: AnyCause;
  readonly law: LawOrigin;
  readonly basis: Basis;
  /** the known side; undefined where the baseline does not say, and then conditions may not say either */
  readonly from: unknown;
  /** the same as the baseline gives it */
  readonly said: unknown;
  /** the dilution of the known bath */
  readonly dilution: DilutionGiven | undefined;
  /** the law was printed for a dilution: its side counts by the stock in today's bath */
  readonly byStock: boolean;
  /** ln(factor) of today's side, where the law has a closed form */
  readonly logAt: ((to: unknown) => number) | undefined;
  /** its place in the list of causes */
  readonly index: number;
  /** where the known side and today's side are, for errors and cautions */
  readonly knownAt: string;
  readonly askedAt: string;
  readonly path: string;
  /** what was worked out last: a dial turns one condition and leaves the others */
  last: Worked | undefined;
  lastGiven: unknown;
  lastTo: unknown;
  lastBath: unknown;
}

/** A known time and laws, checked once, to be asked under many conditions. */
export interface Prepared {
  /** the whole answer */
  readonly answer: (conditions: Conditions) => Compensation;
  /** the time alone, s */
  readonly timeS: (conditions: Conditions) => number;
  readonly terms: readonly Term[];
  readonly baselineS: number;
}

/**
 * Checks a known time and laws once. Every law that is given is checked, whether its condition is named or not.
 * `at` is the function that was called with the known time, `called` the one that is called with conditions.
 */
export function prepared(
  at: string,
  causes: readonly AnyCause[],
  baseline: Baseline,
  knowledge: Knowledge,
  called: string = at,
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
  const joint =
    knowledge.joint === undefined ? undefined : checkedJoint(`${at}/knowledge/joint`, knowledge.joint);
  const together = joint !== undefined && sameBaseline(baseline, knowledge.joint?.baseline, causes);
  const unread = unreadCautions(causes, baseline, knowledge);
  const judged = outcomeJudge(causes, baseline, knowledge, together);
  const limits = limitJudge(baseline, knowledge);
  const conditionsAt = `${called}/conditions`;

  const answer = (conditions: Conditions): Compensation => {
    plainObject(conditionsAt, conditions);
    const asked = conditions as Fields;
    const worked: Worked[] = [];
    let timeS = baselineS;
    let drifting = -1;
    let drifts: Term | undefined;
    let named = 0;
    for (const term of terms) {
      const { cause } = term;
      const given = asked[cause.field];
      if (given !== undefined) named += 1;
      else if (cause.required !== true) continue;
      if (cause.required === true && typeof given === "object" && given !== null) {
        // A bath that drifts comes last, since how far it drifts depends on the time that the others leave.
        drifting = worked.length;
        worked.push(DRIFTING as Worked);
        drifts = term;
        continue;
      }
      const one = workedTerm(term, given, asked, baseline);
      worked.push(one);
      timeS *= one.value;
    }
    if (drifts !== undefined) {
      const { cause, law, askedAt } = drifts;
      const { effect, cautions } = driftEffect(
        askedAt,
        law as never,
        baseline,
        asked[cause.field] as Drift,
        timeS,
      );
      timeS *= factorOf(effect);
      worked[drifting] = {
        term: drifts,
        effect,
        cautions,
        value: factorOf(effect),
        logSd: logSdOf(effect),
        unchanged: false,
        rests: undefined,
        given: asked[cause.field],
      };
    }
    const factors = [base];
    const cautions: Caution[] = [];
    let variance = base.logSd * base.logSd;
    let guessed = 0;
    for (const one of worked) {
      const row = rowOf(one);
      factors.push(row);
      variance += row.logSd * row.logSd;
      if (row.basis === "default") guessed |= 1 << one.term.index;
      for (const caution of one.cautions) cautions.push(caution);
    }
    if (joint !== undefined)
      // Covariances that cancel spreads can leave a rounding below 0.
      variance = Math.max(0, variance + covarianceOf(joint, sharesOf(base, together, worked, factors)));
    const estimate = timeEstimate(timeS, checkedSpread(at, Math.sqrt(variance), "/knowledge"));
    for (const caution of limits(estimate, conditions)) cautions.push(caution);
    judged(cautions, estimate, guessed);
    for (const caution of unread(conditions, named)) cautions.push(caution);
    const sorted = gravestFirst(cautions);
    return {
      timeS,
      lowS: estimate.lowS,
      highS: estimate.highS,
      refused: refuses(sorted),
      factors,
      cautions: sorted,
    };
  };

  const byField: Record<string, Term | undefined> = Object.create(null) as Record<string, undefined>;
  for (const term of terms) byField[term.cause.field] = term;
  const timeOnly = (conditions: Conditions): number => {
    const asked = conditions as Fields;
    let timeS = baselineS;
    let before = -1;
    for (const field in asked) {
      const term = byField[field];
      const given = asked[field];
      if (term === undefined || given === undefined) continue;
      // Factors are multiplied in the order of the causes, so that the time is that of the whole answer to the last bit.
      if (term.index < before || (typeof given === "object" && term.cause.required === true))
        return answer(conditions).timeS;
      before = term.index;
      const to = todaySide(term, given, asked);
      const { logAt } = term;
      if (logAt === undefined) timeS *= factorOf(effectOf(term, to));
      else {
        term.cause.within?.(term.askedAt, term.law, to, false);
        timeS *= Math.exp(logAt(to));
      }
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
  /** the factor and its spread */
  readonly value: number;
  readonly logSd: number;
  /** both sides are equal */
  readonly unchanged: boolean;
  readonly rests: Rests | undefined;
  /** today's side as it was given */
  readonly given: unknown;
}

/** The place of a bath that drifts, until the others are worked out. */
const DRIFTING: unknown = undefined;

const NOTHING: Effect = { log: 0, slope: 0, sd: 0, beside: 0 };
const NONE: readonly Caution[] = [];

/** The places of a cause's fields: joined once for each function, not at each call. */
interface Places {
  readonly known: string;
  readonly asked: string;
  readonly law: string;
  readonly path: string;
}

const PLACES = new Map<string, WeakMap<AnyCause, Places>>();

function placesOf(at: string, called: string, cause: AnyCause): Places {
  const key = at === called ? at : `${at} ${called}`;
  let byCause = PLACES.get(key);
  if (byCause === undefined) PLACES.set(key, (byCause = new WeakMap<AnyCause, Places>()));
  let places = byCause.get(cause);
  if (places === undefined) {
    const { field } = cause;
    places = {
      known: `${at}/baseline/${field}`,
      asked: `${called}/conditions/${field}`,
      law: `${at}/knowledge/${cause.law}`,
      path: `/conditions/${field}`,
    };
    byCause.set(cause, places);
  }
  return places;
}

function termOf(places: Places, index: number, cause: AnyCause, baseline: Fields, knowledge: Fields): Term {
  const known = cause.relative === true ? undefined : baseline[cause.field];
  const read: unknown =
    known === undefined && cause.required !== true ? cause.start : cause.read(places.known, known);
  const given = knowledge[cause.law];
  const law = (given === undefined ? cause.generic : cause.check(places.law, given)) as LawOrigin;
  const basis = given === undefined ? "default" : basisOf(law);
  const dilution = baseline["dilution"] as DilutionGiven | undefined;
  const byStock =
    cause.inBath !== undefined && (law as { readonly dilution?: unknown }).dilution !== undefined;
  const from: unknown =
    read === undefined || cause.inBath === undefined ? read : cause.inBath(places.known, law, read, dilution);
  const { known: knownAt, asked: askedAt, path } = places;
  return {
    cause,
    law,
    basis,
    from,
    said: known ?? (typeof read === "number" && cause.relative !== true ? read : undefined),
    dilution,
    byStock,
    logAt: from === undefined ? undefined : cause.logAt?.(law, from),
    index,
    knownAt,
    askedAt,
    path,
    last: undefined,
    lastGiven: undefined,
    lastTo: undefined,
    lastBath: undefined,
  };
}

/** Today's side as the law counts it in today's bath. */
function todaySide({ cause, law, dilution, byStock, askedAt }: Term, given: unknown, asked: Fields): unknown {
  const side: unknown = cause.read(askedAt, given);
  if (!byStock || cause.inBath === undefined) return side;
  return cause.inBath(askedAt, law, side, (asked["dilution"] as DilutionGiven | undefined) ?? dilution);
}

/** The effect of today's side, which has to have a known side to be compared with. */
function effectOf({ cause, law, from, knownAt, askedAt }: Term, to: unknown): Effect {
  if (from === undefined) needsCounterpart(askedAt, cause.field);
  if (cause.within !== undefined) {
    cause.within(knownAt, law, from, true);
    cause.within(askedAt, law, to, false);
  }
  return cause.effect(law, from, to);
}

function workedTerm(term: Term, given: unknown, asked: Fields, baseline: Baseline): Worked {
  const { cause, law, from } = term;
  const { last } = term;
  // A side that depends on the dilution too is worked out anew when that changes.
  const bath = asked["dilution"];
  const alone = !term.byStock || (term.lastBath === bath && typeof bath !== "object");
  if (alone && last !== undefined && term.lastGiven === given && typeof given !== "object") return last;
  const to: unknown = given === undefined ? from : todaySide(term, given, asked);
  if (last !== undefined && given !== undefined && term.lastGiven !== undefined && to === term.lastTo)
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
  if (cautions.every((one) => one.path !== undefined)) return cautions;
  return cautions.map((one) => (one.path === undefined ? { ...one, path } : one));
}

/** What learned numbers explain of ln(time): the base time's own, and each cause's, signed. */
function sharesOf(
  base: Factor,
  together: boolean,
  worked: readonly Worked[],
  factors: readonly Factor[],
): Share[] {
  const shares: Share[] = together && base.basis === "own-runs" ? [["baseline", base.logSd]] : [];
  worked.forEach(({ term, effect }, i) => {
    if (factors[i + 1]?.basis === "own-runs") shares.push([term.cause.name, effect.slope * effect.sd]);
  });
  return shares;
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

const NO_SOURCES: readonly string[] = [];

/** The row of a term; where nothing changed it rests on no law at all. */
function rowOf({ term, value, logSd, unchanged, rests, given }: Worked): Factor {
  const { cause, law, said: from } = term;
  // A strength is its own row: it is not repeated.
  const to = cause.relative === true && typeof given === "object" ? undefined : (given ?? from);
  if (unchanged || rests?.basis === "unchanged")
    return {
      cause: cause.name,
      value,
      logSd,
      basis: "unchanged",
      sources: NO_SOURCES,
      ...(from !== undefined && { from }),
      ...(to !== undefined && { to }),
    };
  const sources = (rests === undefined ? law.sources : rests.sources) ?? NO_SOURCES;
  // A generic law that was not handed in has no runs to speak of.
  const runs = rests !== undefined ? rests.runs : law === cause.generic ? undefined : law.runs;
  const basis = rests?.basis ?? term.basis;
  // Fields are added rather than spread: this runs for each cause of each answer.
  const row: { -readonly [Field in keyof Factor]: Factor[Field] } = {
    cause: cause.name,
    value,
    logSd,
    basis,
    sources,
  };
  if (from !== undefined) row.from = from;
  if (to !== undefined) row.to = to;
  if (basis === "own-runs" && law.before !== undefined) row.before = law.before;
  if (runs !== undefined) row.runs = runs;
  if (law.seen !== undefined) row.seen = law.seen;
  return row;
}
