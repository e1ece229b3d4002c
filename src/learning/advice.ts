/*
 * Room: learning. Dry advice on what the runs can and cannot tell.
 */
import type { Caution } from "../core/caution.js";
import type { Entry } from "./notebook.js";
import type { Parameter, SetAside } from "./types.js";

/** Two causes count as not told apart when their numbers are correlated beyond this, and one of them has kept more than half of its first spread. */
const TOGETHER = 0.8;
const KEPT = 0.5;

/** From this factor on, the runs scatter beyond what their outcomes say: with the prior on it, chance alone hardly gets there. */
const SCATTERED = 1.5;

const NAMES: Readonly<Record<string, string>> = { baseline: "the base time" };

/** What to tell the photographer about the runs as a whole, gravest first. */
export function adviceOn(
  parameters: readonly Parameter[],
  correlation: readonly (readonly number[])[],
  atBound: readonly number[],
  scatter: number,
  setAside: readonly SetAside[],
  entries: readonly Entry[],
): readonly Caution[] {
  const advice: Caution[] = [];
  const name = (j: number): string => {
    const cause = (parameters[j] as Parameter).cause;
    return NAMES[cause] ?? cause;
  };
  for (const { run, reason, weight } of setAside)
    if (weight > 0)
      advice.push({
        code: "doubted-run",
        severity: "warn",
        message: `Run ${entries[run]?.run.id ?? run} ${reason} and counts for less: check what was noted.`,
        path: `/runs/${run}`,
        limit: 1,
        actual: weight,
      });
  for (const j of atBound)
    advice.push({
      code: "held-at-limit",
      severity: "warn",
      message: `The runs would carry ${name(j)} past what can be: it is held at its limit. Check the notes.`,
      path: `/parameters/${j}`,
    });
  if (scatter > SCATTERED)
    advice.push({
      code: "scatter",
      severity: "warn",
      message: "The runs scatter more than their outcomes say: something that changes is not in the notes.",
      limit: SCATTERED,
      actual: scatter,
    });
  const open = ({ sd, priorSd }: Parameter): boolean => sd > KEPT * priorSd;
  parameters.forEach((one, i) => {
    parameters.slice(0, i).forEach((other, j) => {
      const rho = correlation[i]?.[j] as number;
      if (Math.abs(rho) > TOGETHER && (open(one) || open(other)))
        advice.push({
          code: "not-separated",
          severity: "note",
          message: `The runs cannot tell ${name(j)} from ${name(i)}, which changed together: change one alone in the next test.`,
          path: `/parameters/${i}`,
          limit: TOGETHER,
          actual: rho,
        });
    });
  });
  const twins = entries.findIndex(({ text }, i) => text === entries[i - 1]?.text);
  if (twins >= 0)
    advice.push({
      code: "equal-runs",
      severity: "note",
      message: "Two runs are equal in every field and count twice: give each an id, or take one out.",
      path: `/runs/${twins}`,
    });
  return advice;
}
