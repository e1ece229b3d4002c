/*
 * Advice on causes that changed together: the runs cannot tell them apart.
 */
import type { Caution } from "../core/caution.js";
import { sayer } from "../core/cautionTexts.js";
import type { FittedRun, NotebookFit } from "./fitNotebook.js";
import { learningSentences } from "./text.js";
import type { LearnedParameter } from "./types.js";

/**
 * Causes count as changed together when their slopes over the runs, each run by its precision, are correlated
 * beyond this: what is left to tell them apart is a tenth of the information (1 − 0.95²), an assumption of
 * this package.
 */
const TOGETHER = 0.95;
/** A number is still open when it has kept more than this share of its first spread. */
const KEPT = 0.5;

const say = /* @__PURE__ */ sayer(learningSentences);

/** Causes that changed together in the runs. */
export function notSeparated(fit: NotebookFit, parameters: readonly LearnedParameter[]): readonly Caution[] {
  const { ground, model, fitted, regression } = fit;
  const causes = ["baseline", ...ground.parts.map(({ cause }) => cause.name)];
  const own = parameters.flatMap(({ cause }, j) =>
    causes.includes(cause) && model.numbers[j]?.gap === undefined ? j : [],
  );
  const at = (i: number): LearnedParameter => parameters[own[i] as number] as LearnedParameter;
  const isOpen = (i: number): boolean => at(i).sd > KEPT * at(i).priorSd;
  if (!own.some((_, i) => isOpen(i))) return [];
  const slopes = slopesOf(
    fitted,
    own.map((j) => parameters[j] as LearnedParameter),
  );
  const sharedBy = (i: number, j: number): number => {
    const [a, b] = [slopes[i] as Float64Array, slopes[j] as Float64Array];
    let sum = 0;
    for (let k = 0; k < a.length; k += 1)
      sum += ((a[k] as number) * (b[k] as number)) / (regression.variances[k] as number);
    return sum;
  };
  const alone = own.map((_, i) => sharedBy(i, i));
  const told: number[] = [];
  return own.flatMap((place, i): readonly Caution[] => {
    if (at(i).runs < 2 || told.includes(i)) return [];
    const group = own.flatMap((_, j) =>
      sharedBy(i, j) ** 2 > TOGETHER ** 2 * (alone[i] as number) * (alone[j] as number) ? j : [],
    );
    if (group.length < 2 || !group.some(isOpen)) return [];
    told.push(...group);
    const data = {
      parameters: group.map((j) => at(j).parameter),
      causes: group.map((j) => at(j).cause),
    };
    return [say("not-separated", "note", { path: `/parameters/${place}`, data })];
  });
}

/** For each parameter its slopes over the runs, by its first standard deviation. */
function slopesOf(
  fitted: readonly FittedRun[],
  parameters: readonly LearnedParameter[],
): readonly Float64Array[] {
  const found = new Map(
    parameters.map(({ parameter, priorSd }) => [
      parameter,
      { priorSd, slopes: new Float64Array(fitted.length) },
    ]),
  );
  fitted.forEach(({ row }, k) => {
    for (const { parameter, slope } of row.slopes) {
      const one = found.get(parameter);
      if (one !== undefined) one.slopes[k] = one.priorSd * slope;
    }
  });
  return [...found.values()].map(({ slopes }) => slopes);
}
