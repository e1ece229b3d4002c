/*
 * The regression of one notebook: its model, its readings, and what they make of the numbers.
 */
import { causes } from "../causes.js";
import { baselineFactor } from "../compensate/rows.js";
import type { Baseline, Knowledge } from "../compensate/types.js";
import type { AnyCause } from "../core/cause.js";
import { WIDEST_LOG_SD } from "../core/estimate.js";
import { inRange, knownEntry, plainObject, positive, refuse } from "../core/guards.js";
import type { Row } from "../core/row.js";
import { checkMaterial } from "../temperature/temperatureCautions.js";
import { withinBounds, type Held } from "./bounds.js";
import { everything, type Learning } from "./learning.js";
import {
  groundwork,
  modelOf,
  TOO_FAR,
  type Groundwork,
  type Model,
  type ModelNumber,
  type ModelRow,
  type ReadConditions,
} from "./model.js";
import type { Entry } from "./notebook.js";
import { GROWTH, growthOf, readOutcome } from "./readOutcome.js";
import { grownBy, saidFrom, sharedBy, unshared, type Reading, type Said } from "./reading.js";
import { fitRegression, WIDEST_BASE_LOG_SD, type Regression } from "./regression.js";
import { toldApartText } from "./text.js";
import type { KnowledgePrior, SetAsideReason } from "./types.js";

/** No notebook needs more numbers (assumed): a thousand runs of a club have about thirty. */
const MOST_NUMBERS = 200;

/** A run that is fitted: `run` is its place in the notebook. */
export interface FittedRun extends Reading {
  readonly run: number;
  /** ln of the time in s that the prior gives for its conditions */
  readonly log: number;
}

/** What a notebook says. */
export interface NotebookFit {
  readonly ground: Groundwork;
  /** the other conditions as they were read, or why they tell nothing */
  readonly asked: readonly (ReadConditions | SetAsideReason)[];
  readonly model: Model;
  readonly regression: Regression;
  readonly fitted: readonly FittedRun[];
  /** why runs are not fitted, by their places */
  readonly reasons: ReadonlyMap<number, SetAsideReason>;
  /** the numbers within the limits of their laws, in first standard deviations from where they began */
  readonly held: Held;
  /** ln of the time in s that the notebook gives for a row */
  readonly logTime: (row: ModelRow) => number;
}

/** Checks what no run can teach: it is stored all the same. */
function checkOthers(at: string, learning: Learning, baseline: Baseline, laws: Knowledge): void {
  const known = baseline as unknown as Readonly<Record<string, unknown>>;
  for (const cause of causes as readonly AnyCause[]) {
    if (learning.causes.some((one) => one.cause === cause)) continue;
    const { field, law } = cause;
    if (cause.relative !== true && known[field] !== undefined)
      cause.read(`${at}/baseline/${field}`, known[field]);
    if (laws[law as keyof Knowledge] !== undefined)
      cause.check(`${at}/laws/${law}`, laws[law as keyof Knowledge]);
  }
}

/** A run as it was read: its conditions and what its outcome says. */
interface ReadRun {
  readonly read: ReadConditions;
  readonly said: Said;
}

/** A prior that was checked, ready to read runs. */
export interface RunReader {
  readonly ground: Groundwork;
  /** ln of the known time in s */
  readonly logBase: number;
  /** a run, or the reason why it tells nothing; throws an input error */
  run(entry: Entry): ReadRun | SetAsideReason;
}

/** Checks a prior; `at` is its place for errors. */
export function runReader(at: string, learning: Learning, prior: KnowledgePrior): RunReader {
  const { baseline, baseLogSd, noise } = prior;
  knownEntry(`${at}/noise`, { estimated: false, stated: true }, noise);
  inRange(at, baseLogSd, 0, 3, undefined, "/baseLogSd");
  plainObject(at, baseline, "/baseline");
  checkMaterial(`${at}/baseline`, baseline);
  const logBase = Math.log(positive(at, baseline.timeS, 1e6, "timeS", "/baseline/timeS"));
  baselineFactor(at, baseline);
  const ground = groundwork(at, learning, baseline, prior.laws);
  checkOthers(at, learning, baseline, prior.laws);
  const growth = growthOf(at, prior.laws);
  return {
    ground,
    logBase,
    run({ run, at: place }) {
      // Conditions may leave the temperature out; a run that does has lost it.
      inRange(place, run.temperatureC, 0, 100, "temperatureC", "/temperatureC");
      const read = ground.read(place, run);
      const said = readOutcome(place, run.timeS, run.outcome, growth);
      if (typeof said === "string") return said;
      return typeof read === "string" ? read : { read: withShared(read, said), said };
    },
  };
}

/** Reads entries under a prior, which is checked once one is to be read; `at` is its place for errors. */
export function entryReader(
  at: string,
  prior: KnowledgePrior,
  learning: Learning = everything,
): (entry: Entry) => unknown {
  return (entry) => runReader(at, learning, prior).run(entry);
}

/**
 * Fits all the runs, in the order given, to the prior.
 *
 * @param at - the place of the knowledge for errors
 * @param others - conditions that are asked about besides, each with its place
 */
export function fitNotebook(
  at: string,
  learning: Learning,
  prior: KnowledgePrior,
  entries: readonly Entry[],
  others: readonly (readonly [at: string, conditions: object])[] = [],
): NotebookFit {
  const reader = runReader(at, learning, prior);
  const { ground, logBase } = reader;
  const reasons = new Map<number, SetAsideReason>();
  const readable: (ReadRun & { readonly run: number })[] = [];
  entries.forEach((entry, run) => {
    const found = reader.run(entry);
    if (typeof found === "string") reasons.set(run, found);
    else readable.push({ run, ...found });
  });
  const asked = others.map(([place, conditions]) => ground.read(place, conditions));
  // The starting time was found in one batch.
  const model = modelOf(
    ground,
    learning,
    {
      sd: Math.min(WIDEST_BASE_LOG_SD, Math.hypot(prior.baseLogSd, prior.laws.batchLogSd ?? 0)),
      range: [-20, Math.log(1e6) - logBase],
    },
    readable.map(({ read }) => read),
    asked.filter((read) => typeof read !== "string"),
  );
  // The work grows with the cube of the numbers: a small file must not hold a service up for a minute.
  const count = model.numbers.length;
  const place = entries[0]?.at.replace(/\/\d+$/u, "") ?? at;
  if (count > MOST_NUMBERS) refuse(place, "told-apart", toldApartText, { max: MOST_NUMBERS }, count);
  const sds = new Map(model.numbers.map(({ parameter, sd }) => [parameter, sd]));
  const measured: FittedRun[] = [];
  for (const { run, read, said } of readable) {
    const found = model.run(read);
    // A run whose time the laws know no better than the widest spread of an answer teaches nothing.
    if (typeof found === "string" || priorSd(found.row, sds) > WIDEST_LOG_SD) reasons.set(run, TOO_FAR);
    else {
      const log = logBase + found.log;
      measured.push({ run, log, row: found.row, said: saidFrom(said, log) });
    }
  }
  const { fitted, regression } = fitReadings(model, measured, prior.noise);
  const held = withinBounds(regression.scaled, model.numbers.map(scaledRange));
  const moved = new Map(
    model.numbers.map(({ parameter, sd }, i) => [parameter, sd * (held.values[i] as number)]),
  );
  const logTime = ({ log, row }: ModelRow): number =>
    row.slopes.reduce(
      (sum, { parameter, slope }) => sum + slope * (moved.get(parameter) as number),
      logBase + log,
    );
  return { ground, asked, model, regression, fitted, reasons, held, logTime };
}

/**
 * Fits readings. Where a shared number moves them by a share of their corrections, a first fit finds those,
 * and further ones find them better.
 */
function fitReadings(
  { numbers }: Model,
  measured: readonly FittedRun[],
  noise: KnowledgePrior["noise"],
): Pick<NotebookFit, "fitted" | "regression"> {
  const first = measured.map(unshared);
  let regression = fitRegression(numbers, first, noise);
  if (first.every((one, i) => one === measured[i])) return { fitted: measured, regression };
  let fitted = measured.map((one, i) => sharedBy(one, regression.means[i] as number));
  regression = fitRegression(numbers, fitted, noise);
  const growing = measured.filter((one, i) => one !== first[i]).length;
  for (let round = 0; growing >= TELL_GROWTH && round < GROWTH_ROUNDS; round += 1) {
    const last = regression;
    const grown = regression.mean(GROWTH);
    fitted = measured.map((one, i) => grownBy(one, last.along((first[i] as FittedRun).row).mean, grown));
    regression = fitRegression(numbers, fitted, noise);
  }
  return { fitted, regression };
}

/** So many readings tell their growth from the time (assumed), */
const TELL_GROWTH = 4;
/** and each further fit leaves a third or less of what the one before was off. */
const GROWTH_ROUNDS = 4;

/** What was read of a run, with what its outcome has in common with others. */
function withShared(read: ReadConditions, said: Said): ReadConditions {
  const { shared } = said;
  return shared === undefined ? read : { ...read, marks: { ...read.marks, shared } };
}

/** The standard deviation of what a row comes to before the first run. */
function priorSd({ slopes, beside }: Row, sds: ReadonlyMap<string, number>): number {
  const variance = slopes.reduce(
    (sum, { parameter, slope }) => sum + (slope * (sds.get(parameter) as number)) ** 2,
    beside,
  );
  return Math.sqrt(variance);
}

/**
 * A number's range in its first standard deviations from where it began; a number known exactly has no way to
 * go.
 */
function scaledRange({ value, sd, range: [low, high] }: ModelNumber): readonly [number, number] {
  return sd === 0 ? [-Infinity, Infinity] : [(low - value) / sd, (high - value) / sd];
}
