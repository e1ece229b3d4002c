/*
 * Room: learning. From what was known before and all the runs to knowledge: one function, so that knowledge
 * is the same whichever way the runs came in.
 */
import { choleskyDiagonal } from "../compensate/joint.js";
import type { Baseline, Knowledge } from "../compensate/types.js";
import type { Learned } from "../core/cause.js";
import { WIDEST_LOG_SD } from "../core/estimate.js";
import { frozen } from "../core/frozen.js";
import { inRange, knownEntry, plainObject, positive } from "../core/guards.js";
import { basisOf, type LawOrigin } from "../core/term.js";
import { checkMaterial } from "../temperature/temperatureCautions.js";
import { adviceOn } from "./advice.js";
import {
  BASE,
  learnedCauses,
  modelOf,
  TOO_FAR,
  type LearnedCause,
  type Model,
  type ModelNumber,
} from "./model.js";
import type { Entry } from "./notebook.js";
import { readOutcome, trusted } from "./outcome.js";
import { dot, update } from "./posterior.js";
import { robustPosterior, type Fit, type Reading } from "./robust.js";
import {
  KNOWLEDGE_VERSION,
  type LearnedKnowledge,
  type Parameter,
  type Prior,
  type SetAside,
} from "./types.js";

/**
 * Below this weight, three standard deviations from the rest, a run is named: chance does that to one sound
 * run in 370.
 */
const NAMED_BELOW = 2 / 3;

/** Fits all the runs, in the order given, to the prior. `at` is the place of the knowledge for errors. */
export function fitKnowledge(
  at: string,
  prior: Prior,
  entries: readonly Entry[],
  list: readonly LearnedCause[] = learnedCauses,
): LearnedKnowledge {
  const { baseline, baseLogSd } = prior;
  const stated = knownEntry(`${at}/noise`, { estimated: false, stated: true }, prior.noise);
  inRange(at, baseLogSd, 0, 3, undefined, "/baseLogSd");
  plainObject(at, baseline, "/baseline");
  checkMaterial(`${at}/baseline`, baseline);
  const logBase = Math.log(positive(at, baseline.timeS, 1e6, "timeS", "/baseline/timeS"));
  const model = modelOf(at, list, baseline, prior.laws, baseLogSd);
  const { numbers } = model;
  const fitted: (Reading & { readonly run: number })[] = [];
  const asides: SetAside[] = [];
  entries.forEach(({ run, at: place }, i) => {
    // Conditions may leave the temperature out; a run that does has lost it.
    inRange(place, run.temperatureC, 0, 100, "temperatureC", "/temperatureC");
    const row = model.row(place, run);
    const outcome = readOutcome(place, run);
    const aside = (reason: string): void => {
      asides[i] = { run: i, reason, weight: 0 };
    };
    if (typeof outcome === "string") aside(outcome);
    else if (typeof row === "string") aside(row);
    else {
      const slopes = row.slopes.map((slope, j) => slope * (numbers[j]?.sd as number));
      // A run whose time the laws know no better than the widest spread of an answer teaches nothing.
      if (Math.hypot(...slopes) > WIDEST_LOG_SD) aside(TOO_FAR);
      else {
        const surprise = outcome[0] - logBase - row.log;
        fitted.push({ run: i, slopes, surprise, variance: trusted(outcome[1], stated) ** 2 });
      }
    }
  });
  const fit = robustPosterior(numbers.length, fitted, stated);
  fitted.forEach(({ run }, i) => {
    const weight = fit.weights[i] as number;
    if (weight < NAMED_BELOW)
      asides[run] = { run, reason: "disagrees with the others beyond chance", weight };
  });
  // In the order of the runs, without the gaps.
  const setAside = Object.values(asides);
  const spreads = fit.spread.map((row) => Math.hypot(...row));
  const correlation = fit.spread.map((row, i) =>
    // Storage and rounding must not carry a correlation past 1.
    fit.spread.map((other, j) =>
      i === j ? 1 : clamped(dot(row, other) / ((spreads[i] as number) * (spreads[j] as number)), [-1, 1]),
    ),
  );
  const held = withinBounds(fit, numbers);
  const parameters = numbers.map(({ parameter, cause, sd }, j): Parameter => ({
    parameter,
    cause,
    value: held.values[j] as number,
    sd: sd * (spreads[j] as number),
    priorSd: sd,
    runs: fitted.filter(({ slopes }) => slopes[j] !== 0).length,
  }));
  const learned = learnedLaws(prior, model, parameters);
  const names = numbers.map(({ parameter }) => parameter);
  return frozen({
    ...learned,
    schema: KNOWLEDGE_VERSION,
    prior,
    runs: entries.map(({ run }) => run),
    parameters,
    joint: {
      baseline: learned.baseline,
      parameters: names,
      correlation,
      unshared: choleskyDiagonal(correlation, names.length).map((own) => (own >= 0 ? own : 0)),
    },
    scatter: fit.scatter,
    setAside,
    advice: adviceOn(parameters, numbers, fit, fitted, held.atBound, setAside, entries),
  });
}

/** The laws with what was learned. A law that no run bears on stays as it was given. */
function learnedLaws(
  prior: Prior,
  { parts }: Model,
  parameters: readonly Parameter[],
): Knowledge & { readonly baseline: Baseline } {
  const base = parameters.find(({ parameter }) => parameter === BASE) as Parameter;
  const given = prior.laws as Readonly<Record<string, unknown>>;
  const laws = parts.flatMap(({ cause, learnable, law }) => {
    const own = parameters.filter((one) => one.cause === cause.name);
    const runs = own.reduce((most, one) => Math.max(most, one.runs), 0);
    if (runs === 0 && given[cause.law] !== undefined) return [];
    // A strength is no law of its own: without runs there is nothing to say of it.
    if (runs === 0 && cause.relative === true) return [];
    // A generic law says that nothing taught it.
    const learned = runs === 0 ? new Map<string, Learned>() : new Map(own.map((one) => [one.parameter, one]));
    const said = given[cause.law] as LawOrigin | undefined;
    const before = runs === 0 ? {} : { before: said === undefined ? "default" : basisOf(said) };
    return [[cause.law, { ...(learnable.law(law, learned) as LawOrigin), ...before, runs }] as const];
  });
  return {
    ...prior.laws,
    baseline: {
      ...prior.baseline,
      // Held at the longest time, it must not round past it.
      timeS: Math.min(1e6, prior.baseline.timeS * Math.exp(base.value)),
      logSd: base.sd,
      ...(base.runs > 0 && { runs: base.runs }),
    },
    ...Object.fromEntries(laws),
  };
}

const clamped = (value: number, [low, high]: readonly [low: number, high: number]): number =>
  Math.min(high, Math.max(low, value));

/**
 * The most probable numbers within their bounds: a number outside is held at its bound, as if it had been
 * read there beyond doubt, and the others move with it; one that would come back inside is let go. Always the
 * first in order that is not where it belongs is turned: so no state comes twice, and the search ends. The
 * spreads stay as they were, which errs on the wide side.
 *
 * Source: K. G. Murty, Note on a Bard-type scheme for solving the complementarity problem, Opsearch 11, 1974,
 * p. 123 (from memory).
 */
function withinBounds(
  { mean, spread }: Fit,
  numbers: readonly ModelNumber[],
): { readonly values: readonly number[]; readonly atBound: readonly number[] } {
  const held = new Map<number, number>();
  const solved = (without?: number): readonly number[] => {
    const found = { mean: [...mean], spread: spread.map((row) => [...row]) };
    for (const [out, bound] of held) {
      const { value, sd } = numbers[out] as ModelNumber;
      if (out !== without)
        update(
          found,
          { slopes: numbers.map((_, j) => Number(j === out)), surprise: (bound - value) / sd },
          0,
        );
    }
    return numbers.map(
      ({ value, sd }, j) =>
        (j === without ? undefined : held.get(j)) ?? value + sd * (found.mean[j] as number),
    );
  };
  const at = (values: readonly number[], j: number): number =>
    clamped(values[j] as number, (numbers[j] as ModelNumber).range);
  // The count is for numbers that rounding turns to and fro.
  for (let round = 0; ; round += 1) {
    const turned = numbers.findIndex((_, j) => {
      const free = solved(j);
      return at(free, j) !== (held.get(j) ?? free[j]);
    });
    const values = solved();
    if (turned < 0 || round === 200)
      return { values: values.map((_, j) => at(values, j)), atBound: [...held.keys()] };
    if (!held.delete(turned)) held.set(turned, at(values, turned));
  }
}
