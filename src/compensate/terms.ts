/*
 * The terms of an answer: each cause with its law and the known side, checked once.
 */
import type { AnyCause, DilutionGiven, Effect } from "../core/cause.js";
import { inputError } from "../core/errors.js";
import { restsOn, type Basis, type LawOrigin } from "../core/term.js";
import type { Worked } from "./rows.js";
import { counterpartText } from "./text.js";

/** Fields of an object by their names. */
export type Fields = Readonly<Record<string, unknown>>;

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

/** The places of a cause's fields: joined once for each function, not at each call. */
export interface Places {
  readonly known: string;
  readonly asked: string;
  readonly law: string;
  readonly path: string;
}

const PLACES = new Map<string, WeakMap<AnyCause, Places>>();

/** The places of a cause's fields for one function. */
export function placesOf(at: string, called: string, cause: AnyCause): Places {
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

/** Whether the side of a cause counts by the stock in the bath: its law was printed for a dilution. */
export function countsByStock(cause: AnyCause, law: unknown): boolean {
  return cause.inBath !== undefined && (law as { readonly dilution?: unknown }).dilution !== undefined;
}

/** A cause with its law and its known side, each checked. */
export function termOf(
  places: Places,
  index: number,
  cause: AnyCause,
  baseline: Fields,
  knowledge: Fields,
): Term {
  const known = cause.relative === true ? undefined : baseline[cause.field];
  const read: unknown =
    known === undefined && cause.required !== true ? cause.start : cause.read(places.known, known);
  const given = knowledge[cause.law];
  const law = (given === undefined ? cause.generic : cause.check(places.law, given)) as LawOrigin;
  const basis = restsOn(law);
  const dilution = baseline["dilution"] as DilutionGiven | undefined;
  const byStock = countsByStock(cause, law);
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
export function todaySide(
  { cause, law, dilution, byStock, askedAt }: Term,
  given: unknown,
  asked: Fields,
): unknown {
  const side: unknown = cause.read(askedAt, given);
  if (!byStock || cause.inBath === undefined) return side;
  return cause.inBath(askedAt, law, side, (asked["dilution"] as DilutionGiven | undefined) ?? dilution);
}

/** The effect of today's side, which has to have a known side to be compared with. */
export function effectOf(term: Term, to: unknown): Effect {
  bothWithin(term, to);
  return term.cause.effect(term.law, term.from, to);
}

/** Refuses either side for which the law has no time, and today's side without a known one. */
export function bothWithin(term: Term, to: unknown): void {
  knownWithin(term, term.askedAt);
  term.cause.within?.(term.askedAt, term.law, to, false);
}

/** Refuses a known side that is missing, or for which the law has no time; `askedAt` is today's side. */
export function knownWithin({ cause, law, from, knownAt }: Term, askedAt: string): void {
  if (from === undefined) needsCounterpart(askedAt, cause.field);
  cause.within?.(knownAt, law, from, true);
}

/** What a condition without a counterpart says. */
export function needsCounterpart(place: string, field: string): never {
  const path = `/baseline/${field}`;
  throw inputError(TypeError, place, "needs-counterpart", { path }, undefined, counterpartText(path));
}
