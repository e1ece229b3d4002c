/*
 * Dry advice on what the runs can and cannot tell.
 */
import type { Caution } from "../core/caution.js";
import { sayer } from "../core/cautionTexts.js";
import type { Row } from "../core/row.js";
import type { NotebookFit } from "./fitNotebook.js";
import type { Entry } from "./notebook.js";
import { notSeparated } from "./notSeparated.js";
import { TREND } from "./runTerms/driftTerm.js";
import { learningSentences } from "./text.js";
import type { LearnedParameter, SetAside } from "./types.js";

/**
 * From this factor on, the runs scatter beyond what their outcomes say: with the prior on it, chance alone
 * hardly gets there.
 */
const SCATTERED = 1.5;

/** Fewer runs than this disagree with what was known, if anything: they do not tell how they scatter. */
const FEW = 4;

/**
 * So many of its first standard deviations from where it began, a number is named: one in 370 is so far off.
 */
const FAR = 3;

/** And so many of its last ones: less is chance (assumed). */
const AWAY = 2;

/** From so many standard deviations on a drift is named: chance gets there in one notebook of 22. */
const DRIFTED = 2;

/**
 * The same for its steady part. Without evidence a trend is drawn toward 0 while its spread is not: chance
 * gets there in one notebook of 50.
 */
const STEADILY = 1.2;

/** So many runs, and such a share of them, good within so much of the fitted ln(time): all confirm it. */
const CONFIRMING = { least: 5, share: 0.8, within: 0.15 };
/** A run so far off, in ln(time), shows what is no longer good. */
const TRIED = 0.2;

/**
 * From this share of copies on, a sheet was probably learned twice (assumed). One copy alone may be an honest
 * repetition, however few runs there are.
 */
const COPIED = 0.25;

const say = /* @__PURE__ */ sayer(learningSentences);

/** What to tell the photographer about the runs as a whole, gravest first. */
export function adviceOn(
  fit: NotebookFit,
  parameters: readonly LearnedParameter[],
  setAside: readonly SetAside[],
  entries: readonly Entry[],
): readonly Caution[] {
  return [
    ...doubted(setAside, entries),
    ...notFitted(setAside, entries.length),
    ...far(fit, parameters),
    ...drifted(fit),
    ...scattered(fit),
    ...notSeparated(fit, parameters),
    ...undated(fit, entries),
    ...onlyGood(fit, entries),
    ...equalRuns(entries),
  ];
}

function doubted(setAside: readonly SetAside[], entries: readonly Entry[]): readonly Caution[] {
  return setAside
    .filter(({ weight }) => weight > 0)
    .map(({ run: place, reason, weight }) => {
      const run = (entries[place] as Entry).run;
      const { id, date, timeS, temperatureC } = run;
      // A run without an id is known by what was noted: its place here is not that in the notes.
      return say("doubted-run", "warn", {
        path: `/runs/${place}`,
        quantity: "weight",
        limit: 1,
        actual: weight,
        data: {
          run: id ?? place,
          named: id !== undefined,
          timeS,
          reason,
          temperatureC,
          ...(date !== undefined && { date }),
        },
      });
    });
}

/** What a photographer writes of a run himself is no news; all else is. */
const NOTED: readonly string[] = ["failed", "fogged"];

/** Runs that teach nothing, with how many there are for each reason. */
function notFitted(setAside: readonly SetAside[], runs: number): readonly Caution[] {
  const unfitted = setAside.filter(({ weight }) => weight === 0);
  const counts = new Map<string, number>();
  for (const { reason } of unfitted) counts.set(reason, (counts.get(reason) ?? 0) + 1);
  const reasons = [...counts].map(([reason, count]) => ({ reason, runs: count }));
  reasons.sort((a, b) => b.runs - a.runs);
  const first = unfitted.find(({ reason }) => reason === reasons[0]?.reason);
  if (first === undefined) return [];
  return [
    say("not-fitted", reasons.every(({ reason }) => NOTED.includes(reason)) ? "note" : "warn", {
      path: `/runs/${first.run}`,
      quantity: "count",
      actual: unfitted.length,
      data: { runs, reasons },
    }),
  ];
}

/** Numbers that the runs carry to a limit, or far from where they began. */
function far({ model, held }: NotebookFit, parameters: readonly LearnedParameter[]): readonly Caution[] {
  return parameters.flatMap((one, j): readonly Caution[] => {
    const path = `/parameters/${j}`;
    const actual = (one.value - (model.numbers[j]?.value as number)) / one.priorSd;
    const data = { parameter: one.parameter, cause: one.cause };
    if (held.atBound.includes(j)) return [say("held-at-limit", "warn", { path, data })];
    // A trend may lie any number of its first standard deviations off: it has a sentence of its own.
    if (!(Math.abs(actual) > FAR) || one.parameter === TREND) return [];
    // What gives way that far may be known badly: then chance takes it there.
    if (!(Math.abs(actual) * one.priorSd > AWAY * one.sd)) return [];
    const quantity = "standardDeviations";
    return [say("far-from-known", "warn", { path, quantity, limit: FAR, actual, data })];
  });
}

/** Whether the base time moved between the oldest and the newest date, or creeps one way. */
function drifted({ model, regression }: NotebookFit): readonly Caution[] {
  const awayAlong = (row: Row): number => {
    const { mean, variance } = regression.along(row);
    return Math.abs(mean) / Math.sqrt(variance);
  };
  return model.terms.flatMap(({ span, steady }): readonly Caution[] => {
    if (span === undefined || steady === undefined) return [];
    const away = awayAlong(span);
    const steadily = awayAlong(steady);
    if (!(away > DRIFTED || steadily > STEADILY)) return [];
    const ratio = Math.exp(-regression.along(span).mean);
    return [
      say("trend", "warn", {
        path: "/runs",
        quantity: "standardDeviations",
        ...(away > DRIFTED ? { limit: DRIFTED, actual: away } : { limit: STEADILY, actual: steadily }),
        data: { ratio },
      }),
    ];
  });
}

function scattered({ fitted, regression: { scatter } }: NotebookFit): readonly Caution[] {
  if (!(scatter > SCATTERED)) return [];
  const data = { runs: fitted.length, few: fitted.length < FEW };
  return [say("scatter", "warn", { quantity: "ratio", limit: SCATTERED, actual: scatter, data })];
}

/** So many runs without a date could have drifted (assumed). */
const MANY = 10;

/** Runs without a date are taken in the middle of those that have one; without any, they hide a drift. */
function undated({ model, fitted }: NotebookFit, entries: readonly Entry[]): readonly Caution[] {
  const runs = fitted.flatMap(({ run }) => {
    const { date, printed } = entries[run]?.run ?? {};
    return date === undefined && printed !== true ? run : [];
  });
  const dated = model.terms.some(({ span }) => span !== undefined);
  if (runs.length < (dated ? 1 : MANY)) return [];
  return [
    say("undated-runs", "note", {
      path: `/runs/${runs[0]}`,
      quantity: "count",
      actual: runs.length,
      data: { runs, dated },
    }),
  ];
}

/**
 * Runs that were nearly all good at the time that was predicted, and none far from it: how far off is still
 * good for this eye is not known.
 */
function onlyGood({ fitted, regression }: NotebookFit, entries: readonly Entry[]): readonly Caution[] {
  let [own, confirming] = [0, 0];
  for (const [i, { run, log, said }] of fitted.entries()) {
    const { timeS, printed, outcome } = entries[run]?.run ?? {};
    if (timeS === undefined || printed === true || outcome?.kind === "appearance") continue;
    const off = Math.abs(Math.log(timeS) - log - (regression.means[i] as number));
    if (off > TRIED && outcome?.kind !== "good") return [];
    own += 1;
    if (outcome?.kind === "good" && said.kind === "window" && off < CONFIRMING.within) confirming += 1;
  }
  if (own < CONFIRMING.least || confirming < CONFIRMING.share * own) return [];
  return [say("only-good", "warn", { path: "/runs", quantity: "count", actual: confirming })];
}

/** Runs that are equal in all but an id, unless each has one. */
function equalRuns(entries: readonly Entry[]): readonly Caution[] {
  if (entries.every(({ run: { id } }) => id !== undefined)) return [];
  // Only runs of one date, time and temperature are compared field by field.
  const keys = entries.map(({ run: { date, timeS, temperatureC } }) => `${date} ${timeS} ${temperatureC}`);
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  const alike = new Map<string, number[]>();
  for (const [i, entry] of entries.entries()) {
    if ((counts.get(keys[i] as string) as number) < 2) continue;
    const rest = entry.text.slice(JSON.stringify([entry.run.id]).length);
    const places = alike.get(rest) ?? [];
    places.push(i);
    alike.set(rest, places);
  }
  const equal = [...alike.values()].filter((places) => copiesIn(places, entries).length > 0);
  const copies = equal.flatMap((places) => copiesIn(places, entries)).sort((a, b) => a - b);
  if (copies.length === 0) return [];
  const imported = copies.length > 1 && copies.length >= COPIED * entries.length;
  return [
    say("equal-runs", imported ? "warn" : "note", {
      path: `/runs/${copies[0]}`,
      quantity: "count",
      actual: copies.length,
      data: { runs: equal.flat().sort((a, b) => a - b) },
    }),
  ];
}

/** Which of some equal runs are copies: those that have ids of their own are runs of their own. */
function copiesIn(places: readonly number[], entries: readonly Entry[]): readonly number[] {
  const nameless = places.filter((i) => entries[i]?.run.id === undefined);
  return nameless.length < places.length ? nameless : nameless.slice(1);
}
