import { causes } from "../causes.js";
import { baselineFields, ESTIMATE_FIELDS } from "../compensate/outcomeCautions.js";
import type { Baseline, Knowledge } from "../compensate/types.js";
import { plainObject } from "../core/guards.js";
import { inNameOf } from "../core/inNameOf.js";
import { fitKnowledge } from "./fit.js";
import { onlyFields } from "../core/onlyFields.js";
import { pairs } from "../pairs.js";
import { noted } from "./stored.js";
import type { LearnedKnowledge } from "./types.js";

/**
 * How well a starting time is known when nobody says: makers' and others' times for one film and developer
 * differ by about 20 %.
 */
const BASE_LOG_SD = 0.2;

const OPTIONS: readonly (keyof StartOptions)[] = ["baseLogSd", "laws", "noise"];

/** What is known before the first run. */
export interface StartOptions {
  /**
   * standard deviation of ln(baseline.timeS), 0 to 3; the baseline's own `logSd`, or else 0.2, when left out
   */
  readonly baseLogSd?: number | undefined;
  /**
   * laws known for this developer; the generic ones, with their spreads, serve for the rest. Of learned
   * knowledge the laws alone are taken: their correlations are lost
   */
  readonly laws?: Knowledge | undefined;
  /**
   * `"estimated"` (when left out): the scatter of the runs is estimated and a run that disagrees beyond
   * chance counts for less. `"stated"`: every outcome's own uncertainty is taken at its word.
   */
  readonly noise?: "estimated" | "stated" | undefined;
}

/**
 * Knowledge before the first run: a starting time, which may be a guess, and the laws with their spreads.
 *
 * @param baseline - the starting time in s and the conditions it is for; runs may change what it names. An
 * estimate with its `logSd`, such as the start of `proposeBrew`, is taken as it is
 * @param options - how well the starting time is known, laws known for this developer, and how to take the
 * runs' uncertainties
 * @returns knowledge as plain JSON, which `learn`, `predict`, `nextTest` and `compensate` take
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range, or `baseline`, `options` or `laws` has a field that is not
 * read
 *
 * @remarks A starting time is not a known time: the times printed by makers and others for one film and
 * developer lie about 20 % apart (D-76 on one film at 20 °C: 6.75 to 8 min in two publications of its maker;
 * common practice).
 *
 * @example
 * ```ts
 * startKnowledge({ timeS: 510, temperatureC: 20 }).baseline.logSd // => 0.2
 * ```
 */
export function startKnowledge(baseline: Baseline, options: StartOptions = {}): LearnedKnowledge {
  plainObject("startKnowledge/baseline", baseline);
  onlyFields("startKnowledge/baseline", baseline, baselineFields(causes, baseline));
  onlyFields("startKnowledge/options", options, OPTIONS);
  const start = Object.fromEntries(
    Object.entries(baseline).filter(([field]) => !ESTIMATE_FIELDS.includes(field)),
  ) as unknown as Baseline;
  const { logSd = BASE_LOG_SD } = start;
  const { baseLogSd = logSd, laws: known = {}, noise = "estimated" } = options;
  plainObject("startKnowledge/options/laws", known);
  const names = [...[...causes, ...pairs].map(({ law }): string => law), "batchLogSd"];
  // Of what was learned before come the laws alone: its runs and its baseline are another notebook's.
  if (!("schema" in known)) onlyFields("startKnowledge/options/laws", known, [...names, "joint"]);
  const laws = Object.fromEntries(
    Object.entries(known).filter(([law, given]) => names.includes(law) && given !== undefined),
  ) as Knowledge;
  const fitted = inNameOf(
    "startKnowledge",
    () => fitKnowledge("startKnowledge", { baseline: start, baseLogSd, laws, noise }, []),
    (path) => placeGiven(path, options),
  );
  return noted(fitted);
}

/** Where a part of the prior was given: a spread without one in the options is the baseline's. */
function placeGiven(path: string, { baseLogSd }: StartOptions): string {
  if (path === "/baseLogSd" && baseLogSd === undefined) return "/baseline/logSd";
  return path.startsWith("/baseline") ? path : `/options${path}`;
}
