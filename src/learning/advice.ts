/*
 * Room: learning. Dry advice on what the runs can and cannot tell.
 */
import type { Caution } from "../core/caution.js";
import { present } from "../core/ordered.js";
import type { Entry } from "./notebook.js";
import type { Surprise } from "./posterior.js";
import type { Fit } from "./robust.js";
import type { Parameter, SetAside } from "./types.js";

/** Causes count as changed together when their slopes over the runs, each run by its precision, are correlated beyond this: what is left to tell them apart is a tenth of the
 * information (1 − 0.95²), an assumption of this package. */
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

/** What to tell the photographer about the runs as a whole, gravest first. */
export function adviceOn(
  parameters: readonly Parameter[],
  prior: readonly { readonly value: number }[],
  { variances, scatter }: Pick<Fit, "variances" | "scatter">,
  readings: readonly Surprise[],
  atBound: readonly number[],
  setAside: readonly SetAside[],
  entries: readonly Entry[],
): readonly Caution[] {
  const advice: Caution[] = [];
  const add = (
    code: string,
    severity: Caution["severity"],
    message: string,
    path?: string,
    limit?: number,
    actual?: number,
  ): void => {
    advice.push(present({ code, severity, message, path, limit, actual }) as Caution);
  };
  const name = (j: number): string => (parameters[j] as Parameter).cause.replace("baseline", "the base time");
  for (const { run, reason, weight } of setAside)
    if (weight > 0)
      add(
        "doubted-run",
        "warn",
        `Run ${entries[run]?.run.id ?? run} ${reason} and counts for less. Check the notes.`,
        `/runs/${run}`,
        1,
        weight,
      );
  parameters.forEach(({ value, priorSd }, j) => {
    const path = `/parameters/${j}`;
    const actual = (value - (prior[j]?.value as number)) / priorSd;
    if (atBound.includes(j))
      add(
        "held-at-limit",
        "warn",
        `The runs carry ${name(j)} past its limit: it is held there. Check the notes.`,
        path,
      );
    else if (Math.abs(actual) > FAR)
      add(
        "far-from-known",
        "warn",
        `The runs carry ${name(j)} far from what is known. Check the notes.`,
        path,
        FAR,
        actual,
      );
  });
  if (scatter > SCATTERED)
    add(
      "scatter",
      "warn",
      "The runs scatter more than their outcomes say: not all is in the notes.",
      undefined,
      SCATTERED,
      scatter,
    );
  const shared = (i: number, j: number): number =>
    readings.reduce(
      (sum, { slopes }, k) =>
        sum + ((slopes[i] as number) * (slopes[j] as number)) / (variances[k] as number),
      0,
    );
  const told: number[] = [];
  parameters.forEach(({ runs }, i) => {
    if (runs < 2 || told.includes(i)) return;
    const group = parameters.flatMap((_, j) =>
      shared(i, j) ** 2 > TOGETHER ** 2 * shared(i, i) * shared(j, j) ? j : [],
    );
    if (
      group.length < 2 ||
      !group.some((j) => (parameters[j] as Parameter).sd > KEPT * (parameters[j] as Parameter).priorSd)
    )
      return;
    told.push(...group);
    add(
      "not-separated",
      "note",
      `The runs cannot tell apart ${group.map(name).join(", ")}: they changed together. Change one alone in the next test.`,
      `/parameters/${i}`,
    );
  });
  const twins = entries.findIndex(({ text }, i) => text === entries[i - 1]?.text);
  if (twins > 0)
    add(
      "equal-runs",
      "note",
      "Two runs are equal in every field and count twice: give each an id, or drop one.",
      `/runs/${twins}`,
    );
  return advice;
}
