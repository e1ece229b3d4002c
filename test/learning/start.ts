/* Where the tests of learning start from: one known time, and runs about it. All of it is invented. */
import {
  startKnowledge,
  type Baseline,
  type LearnedKnowledge,
  type DevelopmentRun,
} from "../../src/index.js";
import type { LearnedParameter } from "../../src/learning/types.js";

export const baseline: Baseline = {
  timeS: 510,
  temperatureC: 20,
  dilution: "1+9",
  agitation: { everyS: 60 },
};
export const start: LearnedKnowledge = startKnowledge(baseline);
export const stated: LearnedKnowledge = startKnowledge(baseline, { noise: "stated" });
/** A run that came out right, to 10 %: a value, not a window. */
export const good = (
  timeS: number,
  temperatureC = 20,
  rest: Partial<DevelopmentRun> = {},
): DevelopmentRun => ({
  timeS,
  temperatureC,
  outcome: { kind: "good", logSd: 0.1 },
  ...rest,
});
export const parameter = (known: LearnedKnowledge, cause: string): LearnedParameter =>
  known.parameters.find((each) => each.cause === cause)!;
