/*
 * The one idea of the package: ln(time) = ln(known time) + one term for each cause. Every cause of a change
 * of development time implements `Cause`; `compensate` adds the effects up, learning fits their parameters.
 */
import type { Caution } from "./caution.js";
import type { Row, Unknown } from "./row.js";
import { basisOf, type Basis, type LawOrigin } from "./term.js";

/** A parameter of a law by its name, and how ln(time) moves with it. */
export interface ParameterSlope {
  readonly parameter: string;
  /** d ln(time)/d parameter, signed */
  readonly slope: number;
}

/** What a change of one condition does to ln(time) under one law. */
export interface Effect {
  /** ln(factor); exactly 0 when nothing changes */
  readonly log: number;
  /** the printed ratio, where a table has one */
  readonly exact?: number;
  /** d ln(time)/d the law's own parameter, signed */
  readonly slope: number;
  /** standard deviation of that parameter */
  readonly sd: number;
  /** standard deviation that no parameter explains: table rounding, departure from a power, stand */
  readonly beside: number;
  /**
   * further parameters of a learned law, each with its slope times its standard deviation: one a gap of a
   * walk
   */
  readonly further?: readonly ParameterSlope[];
}

/** What the cautions of a cause may ask about the known time. */
export interface KnownBath {
  readonly temperatureC: number;
  readonly hydroquinone?: boolean | undefined;
  readonly emulsion?: "soft" | "hardened" | undefined;
}

/** A dilution as it is given: text or parts. */
export type DilutionGiven = string | { readonly stockParts: number; readonly waterParts: number };

/** What an effect rests on, where its law does not tell. */
export interface Rests {
  readonly basis: Basis;
  readonly sources?: readonly string[] | undefined;
  readonly runs?: number | undefined;
}

/** The fields of a law; of one in several kinds those of each, besides `kind`. */
export type LawFields = readonly string[] | Readonly<Record<string, readonly string[]>>;

const isList = (fields: LawFields): fields is readonly string[] => Array.isArray(fields);

/** The fields that a checked law may have besides its origin. */
export const fieldsOfLaw = (fields: LawFields, law: object): readonly string[] =>
  isList(fields) ? fields : ["kind", ...(fields[(law as { readonly kind: string }).kind] ?? [])];

/**
 * One cause of a change of development time. A side is one condition after it was read: a temperature, an
 * interval.
 */
export interface Cause<Law extends LawOrigin = LawOrigin, Side = unknown, Name extends string = string> {
  readonly name: Name;
  /** its field in baseline and conditions */
  readonly field: string;
  /** its law's field in knowledge */
  readonly law: string;
  /** the fields of its law, by its kinds where it has any, beside where it comes from: others are not read */
  readonly lawFields: LawFields;
  /** the law that is used when none is given, ready for `effect` */
  readonly generic: Law;
  /** what a baseline that does not say means; without it, conditions may not say either */
  readonly start?: Side;
  /** the baseline always says, and so there is always a row */
  readonly required?: boolean;
  /** today's side may be the course of a bath that drifts: a log or a forecast, an object */
  readonly drifts?: true;
  /** what the condition is given against is in the condition itself: the baseline has no such field */
  readonly relative?: boolean;
  /** a column of numbers that stands for the condition in a table of many rows, and how one is read */
  readonly column?: { readonly name: string; readonly side: (at: string, value: number) => Side };
  /** reads one side of the change, checked once; throws an input error at `at` */
  read(at: string, given: unknown): Side;
  /** checks a law once; tables come back sorted and curved. Throws an input error at `at` */
  check(at: string, law: unknown): Law;
  /**
   * refuses a side for which a law that `check` returned has no time; `known` says that it is the baseline's
   */
  within?(at: string, law: Law, side: Side, known: boolean): void;
  /**
   * the side as the law counts it in a bath of that dilution, where it counts by the stock; `at` is the place
   * of the bath
   */
  inBath?(at: string, law: Law, side: Side, dilution: DilutionGiven | undefined): Side;
  /** the effect of going from one side to another under a law that `check` returned */
  effect(law: Law, from: Side, to: Side): Effect;
  /**
   * ln(factor) as a function of today's side, for many sides in a row: that of `effect` to the last bit. Left
   * out where the law has no closed form, as a table
   */
  logAt?(law: Law, from: Side): ((to: Side) => number) | undefined;
  /** what is unwise about today's side; `path` is where it was given, for cautions that say no other place */
  cautions?(
    law: Law,
    from: Side,
    to: Side,
    effect: Effect,
    known: KnownBath,
    path: string,
  ): readonly Caution[];
  /** what is unwise about the known side, whatever the conditions say */
  knownCautions?(from: Side): readonly Caution[];
  /** what the row rests on, where today's side tells and not the law */
  rests?(law: Law, to: Side): Rests | undefined;
}

/** Whether today's side is the course of a bath that drifts. */
export function isDrift({ drifts }: { readonly drifts?: true }, given: unknown): given is object {
  return drifts === true && typeof given === "object" && given !== null;
}

/** Any cause, for a list of them. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any -- a loop hands each cause what it made
export type AnyCause = Cause<any, any>;

/** The spread that a law claims, raised to the least that anyone knows it to. Own runs may know it better. */
export function claimed(sd: number, least: number, law: LawOrigin): number {
  return basisOf(law) === "own-runs" ? sd : Math.max(least, sd);
}

/** The factor of an effect on time: the printed ratio where there is one. */
export function factorOf({ log, exact }: Effect): number {
  return exact ?? Math.exp(log);
}

/** The standard deviation of ln(factor) of an effect alone. */
export function logSdOf({ slope, sd, beside, further }: Effect): number {
  const own = slope * sd;
  if (further === undefined) return beside === 0 ? Math.abs(own) : Math.hypot(own, beside);
  return Math.hypot(own, beside, ...further.map((one) => one.slope));
}

/** A number of a law that runs can teach. */
export interface LearnableParameter {
  readonly parameter: string;
  readonly value: number;
  readonly sd: number;
  /** the least and the greatest value that the law takes */
  readonly range: readonly [low: number, high: number];
  /** of a departure: the gap of the walk that it fills */
  readonly gap?: readonly [low: number, high: number];
  /** its variance is learned too */
  readonly tail?: NonNullable<Unknown["tail"]>;
}

/** A number that was learned. */
export interface Learned {
  readonly value: number;
  readonly sd: number;
  readonly gap?: readonly [low: number, high: number];
}

/** A law's numbers as one notebook needs them. */
export interface PlacedLearnable<Side = unknown> {
  readonly parameters: readonly LearnableParameter[];
  /** how ln(time) moves with each number between two sides, and the variance that none of them explains */
  row(from: Side, to: Side): Row;
}

/**
 * Why the conditions of a run tell nothing under a law: `"past-life"`, the bath is past the life that its law
 * gives it; `"past-covered"`, it is older than the law says anything of.
 */
export type UnfitReason = "stand" | "past-life" | "past-covered" | "maybe-fahrenheit";

/**
 * Learning's half of a cause: as many numbers as its law and the departures from it have, by name.
 */
export interface Learnable<Law extends LawOrigin = LawOrigin, Side = unknown> {
  /** the law in the form whose numbers can be learned, near the known side */
  adapt?(law: Law, known: Side | undefined): Law;
  /**
   * the numbers of a law, for all the sides that a notebook names; the known side first, where there is one
   */
  place(law: Law, sides: readonly Side[]): PlacedLearnable<Side>;
  /** the law with the numbers that were learned, as it is stored */
  law(law: Law, learned: ReadonlyMap<string, Learned>): LawOrigin;
  /** why a run tells nothing under this law, if it does not */
  unfit?(law: Law, from: Side, to: Side): UnfitReason | undefined;
}

/** Any learnable half, for a list of them. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any -- as in AnyCause
export type AnyLearnable = Learnable<any, any>;
