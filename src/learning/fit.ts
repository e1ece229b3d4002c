/*
 * From what was known before and all the runs to knowledge: one function, so that knowledge is the same
 * whichever way the runs came in.
 */
import { choleskyDiagonal, type JointSpread, type LearnedOffset } from "../compensate/joint.js";
import type { Baseline, Knowledge } from "../compensate/types.js";
import type { AnyLearnable, Learned } from "../core/cause.js";
import { frozen } from "../core/frozen.js";
import type { OwnFields } from "../core/ownFields.js";
import { plainCopy } from "../core/plainCopy.js";
import { LEAST } from "../core/quantity.js";
import { restsOn, type LawOrigin } from "../core/term.js";
import { adviceOn } from "./advice.js";
import { fitNotebook, type NotebookFit } from "./fitNotebook.js";
import { everything, type Learning } from "./learning.js";
import { BASE, type ModelNumber } from "./model.js";
import type { Entry } from "./notebook.js";
import {
  KNOWLEDGE_VERSION,
  type LearnedKnowledge,
  type LearnedParameter,
  type KnowledgePrior,
  type SetAside,
} from "./types.js";

/**
 * Below this weight, three standard deviations from the rest, a run is named: chance does that to one sound
 * run in 370.
 */
const NAMED_BELOW = 2 / 3;

/**
 * Fits all the runs, in the order given, to the prior. `at` is the place of the prior for errors; `own` are
 * the fields of its owner, which the knowledge keeps.
 */
export function fitKnowledge(
  at: string,
  given: KnowledgePrior,
  entries: readonly Entry[],
  own: OwnFields = {},
  learning: Learning = everything,
): LearnedKnowledge {
  // What is no number is refused where it is read.
  const prior = (plainCopy(given) ?? given) as KnowledgePrior;
  const fit = fitNotebook(at, learning, prior, entries);
  const parameters = parametersOf(fit);
  const setAside = setAsideIn(fit, entries.length);
  const learned = learnedLaws(prior, fit, parameters);
  return frozen({
    ...own,
    ...learned,
    schema: KNOWLEDGE_VERSION,
    prior,
    runs: entries.map(({ run }) => run),
    parameters,
    joint: jointOf(fit, parameters, learned.baseline),
    scatter: fit.regression.scatter,
    setAside,
    advice: adviceOn(fit, parameters, setAside, entries),
  });
}

/** Each number of the model with what was learned of it. */
function parametersOf({ model, regression, held }: NotebookFit): readonly LearnedParameter[] {
  const { covariance } = regression.scaled;
  return model.numbers.map(({ parameter, cause, value, sd }, i): LearnedParameter => ({
    parameter,
    cause,
    // Through a division and back, a number at the end of its range must not round out of it.
    value: inside(model.numbers[i] as ModelNumber, value + sd * (held.values[i] as number)),
    sd: sd * Math.sqrt((covariance[i] as readonly number[])[i] as number),
    priorSd: sd,
    // A number that was known exactly is taught by no run.
    runs: regression.counts[i] as number,
  }));
}

const inside = ({ range: [low, high], sd }: ModelNumber, value: number): number =>
  sd === 0 ? value : Math.min(high, Math.max(low, value));

/** The runs that are not fitted or count for less, in their order. */
function setAsideIn({ reasons, fitted, regression }: NotebookFit, count: number): readonly SetAside[] {
  const asides = new Map([...reasons].map(([run, reason]) => [run, { run, reason, weight: 0 }]));
  fitted.forEach(({ run }, i) => {
    const weight = regression.weights[i] as number;
    if (weight < NAMED_BELOW) asides.set(run, { run, reason: "disagrees", weight });
  });
  return Array.from({ length: count }, (_, run) => asides.get(run)).filter((one) => one !== undefined);
}

/** A number has moved once its spread has shrunk by more than this share (assumed), */
const NOTED_SHRINKING = 0.05;
/** or once it lies farther from where it was than this share of its first spread (assumed). */
const NOTED_SHIFT = 0.25;

/** Whether runs have moved a number enough for an answer to rest on them; `from` is where it was. */
const isMoved = ({ value, sd, priorSd, from }: LearnedParameter & { readonly from: number }): boolean =>
  sd < (1 - NOTED_SHRINKING) * priorSd || Math.abs(value - from) > NOTED_SHIFT * priorSd;

/** The laws with what was learned. A law that no run bears on stays as it was given. */
function learnedLaws(
  prior: KnowledgePrior,
  { ground, model }: NotebookFit,
  parameters: readonly LearnedParameter[],
): Knowledge & { readonly baseline: Baseline } {
  const base = parameters.find(({ parameter }) => parameter === BASE) as LearnedParameter;
  const given = prior.laws as Readonly<Record<string, unknown>>;
  const byCause = new Map<string, (Learned & LearnedParameter & { readonly from: number })[]>();
  parameters.forEach((one, i) => {
    const { gap, value: from } = model.numbers[i] as ModelNumber;
    const own = byCause.get(one.cause) ?? [];
    own.push({ ...one, from, ...(gap && { gap }) });
    byCause.set(one.cause, own);
  });
  const lawOf = (
    { name, law: field }: { readonly name: string; readonly law: string },
    relative: boolean,
    learnable: AnyLearnable,
    law: LawOrigin,
  ): readonly (readonly [string, LawOrigin])[] => {
    const own = byCause.get(name) ?? [];
    const runs = own.reduce((most, one) => Math.max(most, one.runs), 0);
    if (runs === 0 && given[field] !== undefined) return [];
    // A known time has no strength and no push: without runs that have one there is nothing to say of it.
    if (runs === 0 && relative) return [];
    // A generic law says that nothing taught it.
    const learned = runs === 0 ? new Map<string, Learned>() : new Map(own.map((one) => [one.parameter, one]));
    const said = given[field] as LawOrigin | undefined;
    const { moved: _, ...taught } = learnable.law(law, learned);
    if (runs === 0) return [[field, { ...taught, runs }]];
    const before = said === undefined ? ("default" as const) : restsOn(said);
    return [[field, { ...taught, before, runs, ...(own.some(isMoved) ? {} : { moved: false }) }]];
  };
  const laws = [
    ...ground.parts.flatMap(({ cause, learnable, law }) =>
      lawOf(cause, cause.relative === true, learnable, law),
    ),
    ...ground.pairs.flatMap(({ pair, learnable, law }) => lawOf(pair, false, learnable, law)),
  ];
  const { before: _before, moved: _moved, ...known } = prior.baseline;
  return {
    ...prior.laws,
    baseline: {
      ...(base.runs > 0 ? known : prior.baseline),
      // It is a known time, wherever the runs and a rounding took it.
      timeS: Math.max(LEAST, Math.min(1e6, prior.baseline.timeS * Math.exp(base.value))),
      logSd: base.sd,
      ...(base.runs > 0 && { runs: base.runs }),
      ...(base.runs > 0 &&
        !isMoved({ ...base, from: 0 }) && { before: restsOn(prior.baseline), moved: false }),
    },
    ...Object.fromEntries(laws),
  };
}

/** The correlations of the numbers that a question can meet. */
function jointOf(
  { model, regression }: NotebookFit,
  parameters: readonly LearnedParameter[],
  baseline: Baseline,
): JointSpread {
  const places = model.numbers.flatMap(({ asked }, i) => (asked ? i : []));
  const { covariance } = regression.scaled;
  const entry = (i: number, j: number): number => (covariance[i] as readonly number[])[j] as number;
  const spreads = covariance.map((_, i) => Math.sqrt(entry(i, i)));
  const correlation = places.map((i) =>
    places.map((j) =>
      // Storage and rounding must not carry a correlation past 1.
      i === j
        ? 1
        : Math.min(1, Math.max(-1, entry(i, j) / ((spreads[i] as number) * (spreads[j] as number)))),
    ),
  );
  const lawless = new Set(model.terms.flatMap(({ unknowns }) => unknowns.map(({ parameter }) => parameter)));
  const offsets = places.flatMap((i): readonly LearnedOffset[] => {
    const { parameter, value, sd } = parameters[i] as LearnedParameter;
    const isUsual = model.terms.some(({ usual }) => usual === parameter);
    return lawless.has(parameter) ? [{ parameter, value, sd, ...(isUsual && { usual: true }) }] : [];
  });
  return {
    baseline,
    parameters: places.map((i) => (parameters[i] as LearnedParameter).parameter),
    correlation,
    unshared: choleskyDiagonal(correlation, places.length).map((own) => (own >= 0 ? own : 0)),
    ...(offsets.length > 0 && { offsets }),
  };
}
