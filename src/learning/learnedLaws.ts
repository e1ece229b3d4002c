/*
 * Room: learning. From learned numbers back to laws, so that `compensate` takes them as it takes any others.
 */
import { withLoss } from "../agitation/agitation.js";
import type { Baseline, Knowledge } from "../compensate/types.js";
import { withAgeNumber } from "../age/ageLine.js";
import { withUseNumber } from "../use/useLine.js";
import type { LearnableLaws } from "./learnableLaws.js";
import type { Parameter, Prior } from "./types.js";

/**
 * The laws with what was learned. A law that no run bears on stays as it was given; a generic one says that
 * nothing taught it.
 */
export function learnedLaws(
  prior: Prior,
  laws: LearnableLaws,
  parameters: readonly Parameter[],
): Knowledge & { readonly baseline: Baseline } {
  const [base, temperature, dilution, agitation, use, age] = parameters as readonly [
    Parameter,
    Parameter,
    Parameter,
    Parameter,
    Parameter,
    Parameter,
  ];
  const given = prior.laws;
  const law = <Cause extends keyof LearnableLaws>(
    cause: Cause,
    { runs }: Parameter,
    learned: Partial<LearnableLaws[Cause]>,
  ): Knowledge =>
    runs === 0 && given[cause] ? {} : { [cause]: { ...laws[cause], ...(runs > 0 && learned), runs } };
  return {
    ...given,
    baseline: {
      ...prior.baseline,
      // Held at the longest time, it must not round past it.
      timeS: Math.min(1e6, prior.baseline.timeS * Math.exp(base.value)),
      logSd: base.sd,
      ...(base.runs > 0 && { runs: base.runs }),
    },
    ...law("temperature", temperature, {
      activationEnergyKJPerMol: temperature.value,
      sdKJPerMol: temperature.sd,
    }),
    ...law("dilution", dilution, { exponent: dilution.value, sd: dilution.sd }),
    ...law("agitation", agitation, withLoss(laws.agitation, agitation.value, agitation.sd)),
    ...law("use", use, withUseNumber(laws.use, [use.value, use.sd])),
    ...law("age", age, withAgeNumber(laws.age, [age.value, age.sd])),
  };
}
