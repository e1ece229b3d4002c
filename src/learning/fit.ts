/*
 * Room: learning. From what was known before and all the runs to knowledge: one function, so that knowledge is the same whichever way the
 * runs came in.
 */
import { inRange, knownEntry, plainObject, positive, wrongKind, wrongValue } from "../core/guards.js";
import { adviceOn } from "./advice.js";
import { learnableLaws, priorNumbers, type LearnableLaws } from "./learnableLaws.js";
import { learnedLaws } from "./learnedLaws.js";
import { CAUSES, rowMaker } from "./model.js";
import type { Entry } from "./notebook.js";
import { readOutcome } from "./outcome.js";
import { robustPosterior, type Fit, type Reading } from "./robust.js";
import type { LearnedKnowledge, Parameter, Prior, SetAside } from "./types.js";

/** Below this weight, three standard deviations from the rest, a run is named: chance does that to one sound run in 370. */
const NAMED_BELOW = 2 / 3;

/** Fits all the runs, in the order given, to the prior. `where` is what an error calls the function, and the knowledge where there is some. */
export function fitKnowledge(where: string, prior: Prior, entries: readonly Entry[]): LearnedKnowledge {
  const { baseline, baseLogSd } = prior;
  const noise: unknown = prior.noise;
  if (noise !== "estimated" && noise !== "stated") wrongValue(`${where} noise`, '"estimated" or "stated"', noise);
  inRange(where, baseLogSd, 0, 3, "", " baseLogSd");
  plainObject(where, baseline, " baseline");
  const { emulsion = "soft", hydroquinone = false }: { readonly emulsion?: unknown; readonly hydroquinone?: unknown } = baseline;
  knownEntry(`${where} baseline.emulsion`, { soft: true, hardened: true }, emulsion);
  if (typeof hydroquinone !== "boolean") wrongKind(`${where} baseline.hydroquinone`, "true or false", hydroquinone);
  const logBase = Math.log(positive(where, baseline.timeS, 1e6, " s", " baseline.timeS"));
  const laws = learnableLaws(where, prior.laws, baseline.temperatureC);
  const numbers = priorNumbers(laws, baseLogSd);
  const toRow = rowMaker(where, baseline, laws);
  const readings: Reading[] = [];
  const fitted: number[] = [];
  const setAside: SetAside[] = [];
  const counts = numbers.map(() => 0);
  entries.forEach(({ run, at }, i) => {
    // Conditions may leave the temperature out; a run that does has lost it.
    inRange(at, run.temperatureC, 0, 100, " °C", ".temperatureC");
    const row = toRow(at, run);
    const outcome = readOutcome(at, run);
    const reason = typeof outcome === "string" ? outcome : row;
    if (typeof outcome === "string" || typeof row === "string") {
      setAside.push({ run: i, reason: reason as string, weight: 0 });
      return;
    }
    fitted.push(i);
    row.slopes.forEach((slope, j) => {
      if (slope !== 0) counts[j] = (counts[j] as number) + 1;
    });
    readings.push({
      slopes: row.slopes.map((slope, j) => slope * (numbers[j]?.[1] as number)),
      surprise: outcome[0] - logBase - row.log,
      variance: outcome[1] ** 2,
    });
  });
  const fit = robustPosterior(numbers.length, readings, prior.noise === "stated");
  fit.weights.forEach((weight, i) => {
    if (weight < NAMED_BELOW)
      setAside.push({ run: fitted[i] as number, reason: "disagrees with the others beyond chance", weight });
  });
  setAside.sort((a, b) => a.run - b.run);
  const spreads = fit.covariance.map((row, j) => Math.sqrt(row[j] as number));
  const held = withinBounds(fit, numbers, boundsOf(Math.log(1e6) - logBase, laws, numbers, spreads));
  const parameters: Parameter[] = numbers.map(([, sd], j) => ({
    cause: CAUSES[j] as string,
    value: held.values[j] as number,
    sd: sd * (spreads[j] as number),
    priorSd: sd,
    runs: counts[j] as number,
  }));
  const correlation = fit.covariance.map((row, i) =>
    // Storage and rounding must not carry a correlation past 1.
    row.map((each, j) => (i === j ? 1 : Math.min(1, Math.max(-1, each / ((spreads[i] as number) * (spreads[j] as number)))))),
  );
  const learned = learnedLaws(prior, laws, parameters);
  return {
    schema: 1,
    prior,
    runs: entries.map(({ run }) => run),
    ...learned,
    parameters,
    joint: { timeS: learned.baseline.timeS, causes: CAUSES, correlation },
    scatter: fit.scatter,
    setAside,
    advice: adviceOn(parameters, correlation, held.atBound, fit.scatter, setAside, entries),
  };
}

type Bounds = readonly (readonly [low: number, high: number])[];

/**
 * The range in which each number can be a law. The least rate of ageing is just above a third of its spread: there the half-life is known to
 * a factor of e³, the widest that an age law takes.
 */
function boundsOf(mostBase: number, laws: LearnableLaws, numbers: readonly (readonly [number, number])[], spreads: readonly number[]): Bounds {
  const age = numbers[5] as readonly [number, number];
  return [
    [-20, mostBase],
    [0, 200],
    [0, 3],
    [0, 0.99],
    [0, 10],
    laws.age.kind === "half-life" ? [(age[1] * (spreads[5] as number)) / 2.999, 1e3] : [-1, 1],
    [-1e3, 1e3],
  ];
}

/**
 * The most probable numbers within their bounds: a number outside is held at its bound, and the others move with it as their covariance
 * says. The spreads stay as they were, which errs on the wide side.
 */
function withinBounds(fit: Fit, numbers: readonly (readonly [number, number])[], bounds: Bounds): { values: readonly number[]; atBound: readonly number[] } {
  const mean = [...fit.mean];
  const covariance = fit.covariance.map((row) => [...row]);
  const held = new Map<number, number>();
  for (;;) {
    const values = numbers.map(([value, sd], j) => held.get(j) ?? value + sd * (mean[j] as number));
    const allowed = values.map((value, j) => Math.min(bounds[j]?.[1] as number, Math.max(bounds[j]?.[0] as number, value)));
    const out = values.findIndex((value, j) => value !== allowed[j]);
    if (out < 0) return { values, atBound: [...held.keys()] };
    const bound = allowed[out] as number;
    held.set(out, bound);
    const [value, sd] = numbers[out] as readonly [number, number];
    const column = covariance.map((row) => row[out] as number);
    const own = column[out] as number;
    const step = ((bound - value) / sd - (mean[out] as number)) / own;
    column.forEach((each, i) => {
      mean[i] = (mean[i] as number) + each * step;
      const row = covariance[i] as number[];
      column.forEach((other, k) => {
        row[k] = (row[k] as number) - (each * other) / own;
      });
    });
  }
}
