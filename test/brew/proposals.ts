/* What a proposal must be, for the fast sample and for the slow walk over every shelf. */
import type { NoBrew, ProposedBrew } from "../../src/index.js";

const isPositive = (x: number): boolean => x > 0 && x < Infinity;

/** What is wrong with a proposal; undefined when nothing is. */
export function badProposal(proposed: ProposedBrew | NoBrew): string | undefined {
  if (proposed.brew === undefined) {
    const { reason, add, message } = proposed;
    return reason.length > 0 && add.length > 0 && message.length > 10 ? undefined : "no reason";
  }
  const { start, capacityCm2, lifeH, strip, steps, spoons, brew, cautions } = proposed;
  if (cautions.some(({ severity }) => severity === "stop")) return "a stop";
  if (!(start.lowS < start.timeS && start.timeS < start.highS && start.logSd > 0.3)) return "time";
  if (![start.lowS, start.highS, capacityCm2, lifeH].every(isPositive)) return "not positive";
  if (start.timeS + 600 > 3600 * lifeH * (1 + 1e-9)) return "dies before the median time";
  if (start.timeS > 5400 * (1 + 1e-9)) return "too slow";
  if (strip.length !== 5 || strip.some((timeS, i) => i > 0 && !(timeS > (strip[i - 1] as number))))
    return "strip";
  if ((strip[4] as number) + 600 > 3600 * lifeH * (1 + 1e-9)) return "strip past the life";
  if (steps[0]?.do !== "protect") return "steps";
  if (steps.some(({ cautions: told = [] }) => told.some(({ code }) => code === "undissolved")))
    return "a cup that does not dissolve";
  const taken = steps.findIndex((step) => step.do === "take");
  if (steps.some((step, i) => step.inCoffee === true && i < taken)) return "coffee before it is there";
  if (spoons.length !== brew.ingredients.length) return "spoons";
  const isMeasured = (count: number, step: number): boolean =>
    count >= step && Number.isInteger(count / step);
  for (const { ingredient, spoons: count, tablets, solutionMl, volumeMl, massG, heldG } of spoons) {
    if (
      !(count === undefined
        ? isMeasured(tablets ?? solutionMl ?? volumeMl ?? 0, 0.5)
        : isMeasured(count, 0.25))
    )
      return "spoons";
    if (ingredient === "sodium-hydroxide" && count !== undefined) return "caustic soda by the spoon";
    if (heldG !== undefined && Math.abs(heldG.value / massG - 1) > 0.1 + 1e-9) return "spoons far off";
  }
  return undefined;
}
