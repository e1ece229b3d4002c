/*
 * Dry advice on what the runs can and cannot tell.
 */
import type { Caution } from "../core/caution.js";
import type { FittedRun, NotebookFit } from "./fitNotebook.js";
import type { Entry } from "./notebook.js";
import type { Parameter, SetAside } from "./types.js";

/**
 * Causes count as changed together when their slopes over the runs, each run by its precision, are correlated
 * beyond this: what is left to tell them apart is a tenth of the information (1 − 0.95²), an assumption of
 * this package.
 */
const TOGETHER = 0.95;
/** A number is still open when it has kept more than this share of its first spread. */
const KEPT = 0.5;

/**
 * From this factor on, the runs scatter beyond what their outcomes say: with the prior on it, chance alone
 * hardly gets there.
 */
const SCATTERED = 1.5;

/**
 * So many of its first standard deviations from where it began, a number is named: one in 370 is so far off.
 */
const FAR = 3;

/** From so many standard deviations on a drift is named: chance gets there in one notebook of 22. */
const DRIFTED = 2;

/** What to tell the photographer about the runs as a whole, gravest first. */
export function adviceOn(
  fit: NotebookFit,
  parameters: readonly Parameter[],
  setAside: readonly SetAside[],
  entries: readonly Entry[],
): readonly Caution[] {
  return [
    ...doubted(setAside, entries),
    ...far(fit, parameters),
    ...drifted(fit),
    ...scattered(fit),
    ...notSeparated(fit, parameters),
    ...undated(fit, entries),
    ...equalRuns(entries),
  ];
}

/** What a number is called in a sentence. */
const nameOf = ({ cause }: Parameter): string => cause.replace("baseline", "the base time");

function doubted(setAside: readonly SetAside[], entries: readonly Entry[]): readonly Caution[] {
  return setAside
    .filter(({ weight }) => weight > 0)
    .map(({ run, reason, weight }) => ({
      code: "doubted-run",
      severity: "warn",
      message: `Run ${entries[run]?.run.id ?? run} ${reason} and counts for less. Check the notes.`,
      path: `/runs/${run}`,
      quantity: "weight",
      limit: 1,
      actual: weight,
      data: { run: entries[run]?.run.id ?? run, reason },
    }));
}

/** Numbers that the runs carry to a limit, or far from where they began. */
function far({ model, held }: NotebookFit, parameters: readonly Parameter[]): readonly Caution[] {
  return parameters.flatMap((one, j): readonly Caution[] => {
    const path = `/parameters/${j}`;
    const actual = (one.value - (model.numbers[j]?.value as number)) / one.priorSd;
    const data = { parameter: one.parameter };
    if (held.atBound.includes(j))
      return [
        {
          code: "held-at-limit",
          severity: "warn",
          message: `The runs carry ${nameOf(one)} past its limit: it is held there. Check the notes.`,
          path,
          data,
        },
      ];
    // A trend may lie any number of its first standard deviations off: it has a sentence of its own.
    if (!(Math.abs(actual) > FAR) || model.numbers[j]?.tail !== undefined) return [];
    return [
      {
        code: "far-from-known",
        severity: "warn",
        message: `The runs carry ${nameOf(one)} far from what is known. Check the notes.`,
        path,
        quantity: "standardDeviations",
        limit: FAR,
        actual,
        data,
      },
    ];
  });
}

/** Whether the base time moved between the oldest and the newest date. */
function drifted({ model, regression }: NotebookFit): readonly Caution[] {
  return model.terms.flatMap(({ span }): readonly Caution[] => {
    if (span === undefined) return [];
    const { mean, variance } = regression.along(span);
    const away = Math.abs(mean) / Math.sqrt(variance);
    if (!(away > DRIFTED)) return [];
    const ratio = Math.exp(-mean);
    return [
      {
        code: "trend",
        severity: "warn",
        message:
          `The times have drifted: now ${ratio.toFixed(2)} of those on the oldest date. ` +
          `Check bath and thermometer.`,
        path: "/runs",
        quantity: "standardDeviations",
        limit: DRIFTED,
        actual: away,
        data: { ratio },
      },
    ];
  });
}

function scattered({ regression: { scatter } }: NotebookFit): readonly Caution[] {
  if (!(scatter > SCATTERED)) return [];
  return [
    {
      code: "scatter",
      severity: "warn",
      message: "The runs scatter more than their outcomes say: not all is in the notes.",
      quantity: "ratio",
      limit: SCATTERED,
      actual: scatter,
    },
  ];
}

/** Causes that changed together in the runs. */
function notSeparated(fit: NotebookFit, parameters: readonly Parameter[]): readonly Caution[] {
  const { ground, model, fitted, regression } = fit;
  const causes = ["baseline", ...ground.parts.map(({ cause }) => cause.name)];
  const own = parameters.flatMap(({ cause }, j) =>
    causes.includes(cause) && model.numbers[j]?.gap === undefined ? j : [],
  );
  const precision = regression.variances.map((variance) => 1 / variance);
  const slopes = own.map((j) => slopesOf(fitted, parameters[j] as Parameter));
  const shared = (i: number, j: number): number =>
    precision.reduce(
      (sum, weight, k) => sum + weight * (slopes[i]?.[k] as number) * (slopes[j]?.[k] as number),
      0,
    );
  const at = (i: number): Parameter => parameters[own[i] as number] as Parameter;
  const told: number[] = [];
  return own.flatMap((place, i): readonly Caution[] => {
    if (at(i).runs < 2 || told.includes(i)) return [];
    const group = own.flatMap((_, j) =>
      shared(i, j) ** 2 > TOGETHER ** 2 * shared(i, i) * shared(j, j) ? j : [],
    );
    if (group.length < 2 || !group.some((j) => at(j).sd > KEPT * at(j).priorSd)) return [];
    told.push(...group);
    const names = group.map((j) => nameOf(at(j))).join(", ");
    return [
      {
        code: "not-separated",
        severity: "note",
        message:
          `The runs cannot tell apart ${names}: they changed together. ` +
          `Change one alone in the next test.`,
        path: `/parameters/${place}`,
        data: { parameters: group.map((j) => at(j).parameter) },
      },
    ];
  });
}

function slopesOf(fitted: readonly FittedRun[], { parameter, priorSd }: Parameter): readonly number[] {
  return fitted.map(
    ({ row }) => priorSd * (row.slopes.find((one) => one.parameter === parameter)?.slope ?? 0),
  );
}

/** Runs without a date in a notebook that drifts are taken in the middle of it. */
function undated({ model, fitted }: NotebookFit, entries: readonly Entry[]): readonly Caution[] {
  if (!model.terms.some(({ span }) => span !== undefined)) return [];
  const runs = fitted.flatMap(({ run }) => {
    const { date, printed } = entries[run]?.run ?? {};
    return date === undefined && printed !== true ? run : [];
  });
  if (runs.length === 0) return [];
  return [
    {
      code: "undated-runs",
      severity: "note",
      message: "Some runs have no date. They are taken in the middle of the dated ones.",
      path: `/runs/${runs[0]}`,
      quantity: "count",
      actual: runs.length,
      data: { runs },
    },
  ];
}

function equalRuns(entries: readonly Entry[]): readonly Caution[] {
  const twin = entries.findIndex(({ text }, i) => text === entries[i - 1]?.text);
  if (twin < 1) return [];
  return [
    {
      code: "equal-runs",
      severity: "note",
      message: "Two runs are equal in every field and count twice: give each an id, or drop one.",
      path: `/runs/${twin}`,
      data: { runs: [twin - 1, twin] },
    },
  ];
}
