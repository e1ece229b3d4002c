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
  const add = (code: string, severity: Caution["severity"], message: string, more: Partial<Caution>): void => {
    advice.push({ code, severity, message, ...more });
  };
  const name = (j: number): string => (parameters[j] as Parameter).cause.replace("baseline", "the base time");
  for (const { run, reason, weight } of setAside)
    if (weight > 0)
      add("doubted-run", "warn", `Run ${entries[run]?.run.id ?? run} ${reason} and counts for less: check what was noted.`, {
        path: `/runs/${run}`,
        limit: 1,
        actual: weight,
      });
  for (const j of atBound)
    add("held-at-limit", "warn", `The runs would carry ${name(j)} past what can be: it is held at its limit. Check the notes.`, {
      path: `/parameters/${j}`,
    });
  if (scatter > SCATTERED)
    add("scatter", "warn", "The runs scatter more than their outcomes say: something that changes is not in the notes.", {
      limit: SCATTERED,
      actual: scatter,
    });
  const open = ({ sd, priorSd }: Parameter): boolean => sd > KEPT * priorSd;
  parameters.forEach((one, i) => {
    parameters.slice(0, i).forEach((other, j) => {
      const actual = correlation[i]?.[j] as number;
      if (Math.abs(actual) > TOGETHER && (open(one) || open(other)))
        add("not-separated", "note", `The runs cannot tell ${name(j)} from ${name(i)}, which changed together: change one alone in the next test.`, {
          path: `/parameters/${i}`,
          limit: TOGETHER,
          actual,
        });
    });
  });
  const twins = entries.findIndex(({ text }, i) => text === entries[i - 1]?.text);
  if (twins > 0)
    add("equal-runs", "note", "Two runs are equal in every field and count twice: give each an id, or take one out.", { path: `/runs/${twins}` });
  return advice;
}
