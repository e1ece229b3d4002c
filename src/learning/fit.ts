/*
 * Room: learning. From what was known before and all the runs to knowledge: one function, so that knowledge
 * is the same whichever way the runs came in.
 */
import { WIDEST_LOG_SD } from "../core/estimate.js";
import { inRange, knownEntry, plainObject, positive } from "../core/guards.js";
import { ageRange } from "../age/ageLine.js";
import type { NumberOfLaw, NumberRange } from "../core/line.js";
import { checkMaterial } from "../temperature/temperatureCautions.js";
import { adviceOn } from "./advice.js";
import { learnableLaws, priorNumbers } from "./learnableLaws.js";
import { learnedLaws } from "./learnedLaws.js";
import { CAUSES, rowMaker, TOO_FAR } from "./model.js";
import type { Entry } from "./notebook.js";
import { readOutcome, trusted } from "./outcome.js";
import { dot, update } from "./posterior.js";
import { robustPosterior, type Fit, type Reading } from "./robust.js";
import type { LearnedKnowledge, Parameter, Prior, SetAside } from "./types.js";

/**
 * Below this weight, three standard deviations from the rest, a run is named: chance does that to one sound
 * run in 370.
 */
const NAMED_BELOW = 2 / 3;

/**
 * Fits all the runs, in the order given, to the prior. `where` is what an error calls the function, and the
 * knowledge where there is some.
 */
export function fitKnowledge(where: string, prior: Prior, entries: readonly Entry[]): LearnedKnowledge {
  const { baseline, baseLogSd } = prior;
  const stated = knownEntry(`${where}/noise`, { estimated: false, stated: true }, prior.noise);
  inRange(where, baseLogSd, 0, 3, undefined, "/baseLogSd");
  plainObject(where, baseline, "/baseline");
  checkMaterial(`${where}/baseline`, baseline);
  const logBase = Math.log(positive(where, baseline.timeS, 1e6, "timeS", "/baseline/timeS"));
  const laws = learnableLaws(where, prior.laws, baseline.temperatureC);
  const numbers = priorNumbers(laws, baseLogSd);
  const toRow = rowMaker(where, baseline, laws);
  const fitted: (Reading & { readonly run: number })[] = [];
  const asides: SetAside[] = [];
  entries.forEach(({ run, at }, i) => {
    // Conditions may leave the temperature out; a run that does has lost it.
    inRange(at, run.temperatureC, 0, 100, "temperatureC", "/temperatureC");
    const row = toRow(at, run);
    const outcome = readOutcome(at, run);
    const aside = (reason: string): void => {
      asides[i] = { run: i, reason, weight: 0 };
    };
    if (typeof outcome === "string") aside(outcome);
    else if (typeof row === "string") aside(row);
    else {
      const slopes = row.slopes.map((slope, j) => slope * (numbers[j]?.[1] as number));
      // A run whose time the laws know no better than the widest spread of an answer teaches nothing.
      if (Math.hypot(...slopes) > WIDEST_LOG_SD) aside(TOO_FAR);
      else
        fitted.push({
          run: i,
          slopes,
          surprise: outcome[0] - logBase - row.log,
          variance: trusted(outcome[1], stated) ** 2,
        });
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
  const sdOf = (j: number): number => (numbers[j]?.[1] as number) * (spreads[j] as number);
  // The range in which each number can be a law.
  const bounds: readonly NumberRange[] = [
    [-20, Math.log(1e6) - logBase],
    [0, 200],
    [0, 3],
    [0, 10],
    [0, 10],
    ageRange(laws.age, sdOf(5)),
    [-1e3, 1e3],
  ];
  const correlation = fit.spread.map((row, i) =>
    // Storage and rounding must not carry a correlation past 1.
    fit.spread.map((other, j) =>
      i === j ? 1 : clamped(dot(row, other) / ((spreads[i] as number) * (spreads[j] as number)), [-1, 1]),
    ),
  );
  const held = withinBounds(fit, numbers, bounds);
  const parameters: Parameter[] = numbers.map(([, sd], j) => ({
    cause: CAUSES[j] as string,
    value: held.values[j] as number,
    sd: sdOf(j),
    priorSd: sd,
    runs: fitted.filter(({ slopes }) => slopes[j] !== 0).length,
  }));
  const learned = learnedLaws(prior, laws, parameters);
  return {
    ...learned,
    schema: 1,
    prior,
    runs: entries.map(({ run }) => run),
    parameters,
    joint: { timeS: learned.baseline.timeS, causes: CAUSES, correlation },
    scatter: fit.scatter,
    setAside,
    advice: adviceOn(parameters, numbers, fit, fitted, held.atBound, setAside, entries),
  };
}

const clamped = (value: number, [low, high]: NumberRange): number => Math.min(high, Math.max(low, value));

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
  numbers: readonly NumberOfLaw[],
  bounds: readonly NumberRange[],
): { readonly values: readonly number[]; readonly atBound: readonly number[] } {
  const held = new Map<number, number>();
  const solved = (without?: number): readonly number[] => {
    const found = { mean: [...mean], spread: spread.map((row) => [...row]) };
    for (const [out, bound] of held) {
      const [value, sd] = numbers[out] as NumberOfLaw;
      if (out !== without)
        update(
          found,
          { slopes: numbers.map((_, j) => Number(j === out)), surprise: (bound - value) / sd },
          0,
        );
    }
    return numbers.map(
      ([value, sd], j) => (j === without ? undefined : held.get(j)) ?? value + sd * (found.mean[j] as number),
    );
  };
  const at = (values: readonly number[], j: number): number =>
    clamped(values[j] as number, bounds[j] as NumberRange);
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
