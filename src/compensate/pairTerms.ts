/*
 * Pairs of causes among the terms: what two conditions do together beside what each does alone.
 */
import type { AnyCause, Effect } from "../core/cause.js";
import type { DriftEffect } from "./driftEffect.js";
import type { Term } from "./terms.js";
import type { AnyPair } from "../core/pair.js";
import { restsOn, type Basis, type LawOrigin } from "../core/term.js";

/** A pair with its law and the known sides. */
export interface PairTerm {
  readonly cause: AnyPair;
  readonly law: LawOrigin;
  readonly basis: Basis;
  /** the places of its two causes among the terms */
  readonly places: readonly [number, number];
  readonly from: readonly [unknown, unknown];
  /** ln of what it multiplies the time by, for today's two sides */
  readonly logAt: (a: unknown, b: unknown, aloneA: number, aloneB: number) => number;
}

/** The pairs of which both causes are listed and both known sides are given, each law checked once. */
export function pairTermsOf(
  at: string,
  pairs: readonly AnyPair[],
  terms: readonly { readonly cause: AnyCause; readonly from: unknown }[],
  knowledge: Readonly<Record<string, unknown>>,
): readonly PairTerm[] {
  return pairs.flatMap((cause): readonly PairTerm[] => {
    const given = knowledge[cause.law];
    const law = (
      given === undefined ? cause.generic : cause.check(`${at}/knowledge/${cause.law}`, given)
    ) as LawOrigin;
    const a = placeOf(terms, cause.causes[0].name);
    const b = placeOf(terms, cause.causes[1].name);
    const from = [terms[a]?.from, terms[b]?.from] as const;
    if (from[0] === undefined || from[1] === undefined) return [];
    const places = [a, b] as const;
    return [{ cause, law, basis: restsOn(law), places, from, logAt: cause.logAt(law, from) }];
  });
}

function placeOf(terms: readonly { readonly cause: AnyCause }[], name: string): number {
  for (let i = 0; i < terms.length; i += 1) if (terms[i]?.cause.name === name) return i;
  return -1;
}

/**
 * The effect of a pair, or nothing while one of its sides has not changed; `to` holds today's sides by place,
 * `logs` what each does to ln(time) alone.
 */
export function pairEffect(
  { cause, law, places: [a, b], from }: PairTerm,
  to: readonly unknown[],
  logs: readonly (number | undefined)[],
): Effect | undefined {
  const today = [to[a], to[b]] as const;
  if (today[0] === undefined || today[1] === undefined) return undefined;
  if (today[0] === from[0] || today[1] === from[1]) return undefined;
  return cause.effect(law, from, today, [logs[a] ?? 0, logs[b] ?? 0]);
}

/** What a pair multiplies the time by: 1 while one of its sides has not changed. */
export function pairFactor(
  { places: [a, b], from, logAt }: PairTerm,
  to: readonly unknown[],
  logs: readonly number[],
): number {
  if (to[a] === undefined || to[b] === undefined || to[a] === from[0] || to[b] === from[1]) return 1;
  return Math.exp(logAt(to[a], to[b], logs[a] as number, logs[b] as number));
}

/** The effect of a pair of which one side drifts: what it comes to along the drift. */
export function driftingPair(
  term: PairTerm,
  sides: readonly unknown[],
  logs: readonly (number | undefined)[],
  { cause, law, from, index }: Term,
  { along }: DriftEffect,
): Effect | undefined {
  if (!term.places.includes(index)) return pairEffect(term, sides, logs);
  const at = (side: unknown): Effect | undefined => {
    const today = [...sides];
    const alone = [...logs];
    today[index] = side;
    alone[index] = cause.effect(law, from, side).log;
    return pairEffect(term, today, alone);
  };
  // Any side that differs from the known one will do for what does not move with it.
  const first = at(0) ?? at(1);
  if (first === undefined) return undefined;
  const log = along((side) => at(side)?.log ?? 0);
  return { ...first, log, slope: along((side) => at(side)?.slope ?? 0) };
}
