/*
 * The model: ln(time) as a sum of numbers by name, each times what a run's conditions make of it. One row of that
 * sum for a run is what the regression works on.
 */
import { causes as allCauses, learnables as allLearnables } from "../causes.js";
import type { Baseline, Knowledge } from "../compensate/types.js";
import { needsCounterpart } from "../compensate/loop.js";
import { WIDEST_LOG_SD } from "../core/estimate.js";
import type { AnyCause, AnyLearnable, DilutionGiven, LearnableParameter } from "../core/cause.js";
import { plainObject } from "../core/guards.js";
import type { LawOrigin } from "../core/term.js";

/** A cause and its learning half. */
export interface LearnedCause {
  readonly cause: AnyCause;
  readonly learnable: AnyLearnable;
}

/** The causes that runs can teach. */
export const learnedCauses: readonly LearnedCause[] = allCauses.flatMap((cause) => {
  const learnable = (allLearnables as Readonly<Record<string, AnyLearnable>>)[cause.name];
  return learnable === undefined ? [] : [{ cause, learnable }];
});

/** Why a run has no row when the laws make of it a time that no clock shows, or one of which nothing is known. */
export const TOO_FAR = "too far from the baseline for the laws";

/** The name of the number that is ln of the base time. */
export const BASE = "baseline";

/** A run's row: ln(time) is ln(base time) + `log` under the laws, and `slopes` is how it moves with each number. */
export interface ModelRow {
  readonly log: number;
  readonly slopes: readonly number[];
}

/** A cause in the model: its law in the form that can be learned, and the known side. */
export interface ModelCause extends LearnedCause {
  readonly law: LawOrigin;
  readonly from: unknown;
}

/** A number of the model. */
export interface ModelNumber extends LearnableParameter {
  /** the cause whose law it belongs to; the base time's is the baseline */
  readonly cause: string;
}

/** The model of one notebook. */
export interface Model {
  readonly parts: readonly ModelCause[];
  readonly numbers: readonly ModelNumber[];
  /** the row of some conditions, or the reason why there is none */
  readonly row: (at: string, conditions: object) => ModelRow | string;
}

type Fields = Readonly<Record<string, unknown>>;

/** Makes the model of a baseline and laws; `at` is the place of the baseline and the laws. */
export function modelOf(
  at: string,
  list: readonly LearnedCause[],
  baseline: Baseline,
  laws: Knowledge,
  baseLogSd: number,
): Model {
  const known = baseline as unknown as Fields;
  const given = plainObject(`${at}/laws`, laws);
  const parts = list.map(({ cause, learnable }): ModelCause => {
    const said = cause.relative === true ? undefined : known[cause.field];
    const from: unknown =
      said === undefined && cause.required !== true
        ? cause.start
        : cause.read(`${at}/baseline/${cause.field}`, said);
    const law: unknown =
      given[cause.law] === undefined
        ? cause.generic
        : cause.check(`${at}/laws/${cause.law}`, given[cause.law]);
    const adapted = (learnable.adapt?.(law, from) ?? law) as LawOrigin;
    const counted: unknown =
      from === undefined || cause.inBath === undefined
        ? from
        : cause.inBath(`${at}/baseline`, adapted, from, baseline.dilution);
    return { cause, learnable, law: adapted, from: counted };
  });
  const base = { parameter: BASE, cause: BASE, value: 0, sd: baseLogSd } as const;
  const numbers: ModelNumber[] = [{ ...base, range: [-20, Math.log(1e6) - Math.log(baseline.timeS)] }];
  const place = new Map<string, number>([[BASE, 0]]);
  for (const { cause, learnable, law } of parts)
    for (const one of learnable.parameters(law, [])) {
      place.set(one.parameter, numbers.length);
      numbers.push({ ...one, cause: cause.name });
    }
  const row = (where: string, conditions: object): ModelRow | string => {
    const asked = conditions as Fields;
    const slopes = numbers.map((_, i) => Number(i === 0));
    let log = 0;
    let unfit: string | undefined;
    for (const { cause, learnable, law, from } of parts) {
      const said = asked[cause.field];
      if (said === undefined) {
        unfit ??= from === undefined ? undefined : learnable.unfit?.(law, from, from);
        continue;
      }
      const read: unknown = cause.read(`${where}/${cause.field}`, said);
      const dilution = (asked["dilution"] ?? baseline.dilution) as DilutionGiven | undefined;
      const to: unknown =
        cause.inBath === undefined ? read : (cause.inBath(where, law, read, dilution) as unknown);
      if (from === undefined) needsCounterpart(`${where}/${cause.field}`, cause.field);
      unfit ??= learnable.unfit?.(law, from, to);
      if (unfit !== undefined) continue;
      log += cause.effect(law, from, to).log;
      for (const { parameter, slope } of learnable.row(law, from, to, []))
        slopes[place.get(parameter) as number] = slope;
    }
    if (unfit !== undefined) return unfit;
    return Math.abs(log) < WIDEST_LOG_SD ? { log, slopes } : TOO_FAR;
  };
  return { parts, numbers, row };
}
