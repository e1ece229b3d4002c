/*
 * The model: ln(time) as a sum of numbers by name, each times what a run's conditions make of it. One row of
 * that sum for a run is what the regression works on.
 */
import { readBatchLogSd } from "../compensate/marks.js";
import type { Baseline, Knowledge } from "../compensate/types.js";
import { needsCounterpart } from "../compensate/terms.js";
import type { DilutionGiven, LearnableParameter, PlacedLearnable } from "../core/cause.js";
import { WIDEST_LOG_SD } from "../core/estimate.js";
import { plainObject } from "../core/guards.js";
import { inNameOf } from "../core/inNameOf.js";
import { joinRows, rowOf, type Row, type Unknown } from "../core/row.js";
import type { LawOrigin } from "../core/term.js";
import type { LearnedCause, LearnedPair, Learning } from "./learning.js";
import type { PlacedTerm, RunMarks } from "./runTerms/runTerm.js";
import type { SetAsideReason } from "./types.js";

/**
 * Why a run has no row when the laws make of it a time that no clock shows, or one of which nothing is known.
 */
export const TOO_FAR = "too-far";

/** The name of the number that is ln of the base time. */
export const BASE = "baseline";

/** A row: ln(time) is ln(base time) + `log` under the prior laws, and what the row's numbers add to that. */
export interface ModelRow {
  readonly log: number;
  readonly row: Row;
}

/** A law in the form that can be learned, and the known side. */
interface Known {
  readonly law: LawOrigin;
  readonly from: unknown;
}

/** A cause in the model. */
export interface ModelCause extends LearnedCause, Known {}

/** A pair of causes in the model; undefined where the baseline lacks one of its sides. */
export interface ModelPair extends LearnedPair, Known {
  readonly places: readonly number[];
  readonly from: readonly unknown[] | undefined;
}

/** A number of the model. */
export interface ModelNumber extends LearnableParameter, Unknown {
  /** the cause, pair or term whose number it is; the base time's is the baseline */
  readonly cause: string;
  /** a question can meet it: it is of a law, of a thermometer, a person or a batch */
  readonly asked: boolean;
}

/** Conditions that were read: a side for each cause, undefined where nothing is said. */
export interface ReadConditions {
  readonly sides: readonly unknown[];
  readonly marks: RunMarks;
}

/** What is known before the first run, checked. */
export interface Groundwork {
  readonly laws: Knowledge;
  readonly parts: readonly ModelCause[];
  readonly pairs: readonly ModelPair[];
  /** the conditions of a run or a question, or the reason why they tell nothing; throws an input error */
  read(at: string, conditions: object): ReadConditions | SetAsideReason;
}

/** The model of one notebook. */
export interface Model {
  readonly numbers: readonly ModelNumber[];
  readonly terms: readonly PlacedTerm[];
  /** the row of a run, or the reason why there is none */
  run(read: ReadConditions): ModelRow | SetAsideReason;
  /** the row of one cause alone, by its place */
  part(place: number, to: unknown): Row;
  /** the row of a development to come */
  question(read: ReadConditions): ModelRow | SetAsideReason;
}

type Fields = Readonly<Record<string, unknown>>;

/** Checks a baseline and laws; `at` is the place of both. */
export function groundwork(at: string, learning: Learning, baseline: Baseline, laws: Knowledge): Groundwork {
  const known = baseline as unknown as Fields;
  const given = plainObject(`${at}/laws`, laws);
  readBatchLogSd(`${at}/laws`, laws);
  const lawOf = (one: LearnedCause["cause"] | LearnedPair["pair"]): unknown =>
    given[one.law] === undefined ? one.generic : one.check(`${at}/laws/${one.law}`, given[one.law]);
  const parts = learning.causes.map(({ cause, learnable }): ModelCause => {
    const said = cause.relative === true ? undefined : known[cause.field];
    const from: unknown =
      said === undefined && cause.required !== true
        ? cause.start
        : cause.read(`${at}/baseline/${cause.field}`, said);
    const law = lawOf(cause);
    // A law in another form may have a spread that no law has: the law that was given is what is wrong then.
    const adapted = inNameOf(
      `${at}/laws/${cause.law}`,
      () => (learnable.adapt?.(law, from) ?? law) as LawOrigin,
      () => "",
    );
    const counted: unknown =
      from === undefined || cause.inBath === undefined
        ? from
        : cause.inBath(`${at}/baseline`, adapted, from, baseline.dilution);
    return { cause, learnable, law: adapted, from: counted };
  });
  const pairs = learning.pairs.map(({ pair, learnable }): ModelPair => {
    const places = pair.causes.map(({ name }) => parts.findIndex((part) => part.cause.name === name));
    const from = places.map((place) => parts[place]?.from);
    return {
      pair,
      learnable,
      law: lawOf(pair) as LawOrigin,
      places,
      from: from.includes(undefined) ? undefined : from,
    };
  });
  const read = (where: string, conditions: object): ReadConditions | SetAsideReason => {
    const asked = conditions as Fields;
    let unfit: SetAsideReason | undefined;
    const sides = parts.map(({ cause, learnable, law, from }): unknown => {
      const said = asked[cause.field];
      if (said === undefined) {
        unfit ??= from === undefined ? undefined : learnable.unfit?.(law, from, from);
        return undefined;
      }
      const read: unknown = cause.read(`${where}/${cause.field}`, said);
      const dilution = (asked["dilution"] ?? baseline.dilution) as DilutionGiven | undefined;
      const to: unknown =
        cause.inBath === undefined ? read : (cause.inBath(where, law, read, dilution) as unknown);
      if (from === undefined) needsCounterpart(`${where}/${cause.field}`, cause.field);
      unfit ??= learnable.unfit?.(law, from, to);
      return to;
    });
    return unfit ?? { sides, marks: conditions };
  };
  return { laws, parts, pairs, read };
}

/**
 * Makes the model of a notebook.
 *
 * @param runs - the runs that are fitted
 * @param others - conditions that are asked about besides
 */
export function modelOf(
  { laws, parts, pairs }: Groundwork,
  learning: Learning,
  baseNumber: Pick<ModelNumber, "sd" | "range">,
  runs: readonly ReadConditions[],
  others: readonly ReadConditions[],
): Model {
  const all = [...runs, ...others];
  const numbers: ModelNumber[] = [
    { ...baseNumber, parameter: BASE, cause: BASE, value: 0, asked: true, tail: "open" },
  ];
  const add = (cause: string, placed: PlacedLearnable): PlacedLearnable => {
    for (const one of placed.parameters) numbers.push({ ...one, cause, asked: true });
    return placed;
  };
  const placed = parts.map(({ cause, learnable, law, from }, i) => {
    const sides = new Set([from]);
    if (from !== undefined) for (const one of all) if (one.sides[i] !== undefined) sides.add(one.sides[i]);
    return add(cause.name, learnable.place(law, from === undefined ? [] : [...sides]));
  });
  const placedPairs = pairs.map(({ pair, learnable, law, from }) =>
    from === undefined ? undefined : add(pair.name, learnable.place(law, [from])),
  );
  const terms = learning.terms.map((term) => {
    const over = term.over(
      runs.map(({ marks }) => marks),
      laws,
    );
    for (const one of over.unknowns)
      numbers.push({ ...one, cause: term.name, value: 0, range: OFFSET, asked: term.asked });
    return over;
  });
  // Runs repeat their conditions: what a side comes to is worked out once.
  const known = parts.map(() => new Map<unknown, ModelRow>());
  const partRow = (i: number, to: unknown): ModelRow => {
    const before = (known[i] as Map<unknown, ModelRow>).get(to);
    if (before !== undefined) return before;
    const { cause, law, from } = parts[i] as ModelCause;
    const { log } = cause.effect(law, from, to);
    const found = { log, row: (placed[i] as PlacedLearnable).row(from, to) };
    (known[i] as Map<unknown, ModelRow>).set(to, found);
    return found;
  };
  const base = rowOf(BASE, 1);
  const lawRow = ({ sides }: ReadConditions): { log: number; readonly rows: Row[] } => {
    const found = { log: 0, rows: [base] };
    parts.forEach(({ from }, i) => {
      const to = sides[i];
      if (to === undefined || to === from) return;
      const { log, row } = partRow(i, to);
      found.log += log;
      found.rows.push(row);
    });
    pairs.forEach(({ pair, law, places, from }, i) => {
      const [a, b] = places as [number, number];
      if (from === undefined || sides[a] === undefined || sides[b] === undefined) return;
      const to = [sides[a], sides[b]] as const;
      if (to[0] === from[0] || to[1] === from[1]) return;
      found.log += pair.effect(law, from as [unknown, unknown], to).log;
      found.rows.push((placedPairs[i] as PlacedLearnable).row(from, to));
    });
    return found;
  };
  const rowBy =
    (termRow: (term: PlacedTerm, marks: RunMarks) => Row) =>
    (read: ReadConditions): ModelRow | SetAsideReason => {
      const { log, rows } = lawRow(read);
      for (const term of terms) rows.push(termRow(term, read.marks));
      return Math.abs(log) < WIDEST_LOG_SD ? { log, row: joinRows(rows) } : TOO_FAR;
    };
  return {
    numbers,
    terms,
    part: (place, to) => (placed[place] as PlacedLearnable).row(parts[place]?.from, to),
    run: rowBy((term, marks) => term.run(marks)),
    question: rowBy((term, marks) => term.question(marks)),
  };
}

/** The range of an offset or a drift in ln(time): as far as stored correlations may hold one. */
const OFFSET = [-10, 10] as const;
