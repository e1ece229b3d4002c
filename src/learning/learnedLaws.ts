/*
 * Room: learning. From learned numbers back to laws, so that `compensate` takes them as it takes any others.
 */
import type { Baseline, Knowledge } from "../compensate/types.js";
import type { AgeLaw } from "../exhaustion/ageFactor.js";
import type { LearnableLaws } from "./learnableLaws.js";
import type { Parameter, Prior } from "./types.js";

/** The laws with what was learned. A law that no run bears on stays as it was given; a generic one says that nothing taught it. */
export function learnedLaws(prior: Prior, laws: LearnableLaws, parameters: readonly Parameter[]): Knowledge & { readonly baseline: Baseline } {
  const [base, temperature, dilution, agitation, use, age] = parameters as readonly [Parameter, Parameter, Parameter, Parameter, Parameter, Parameter];
  const given = prior.laws;
  const choose = <Law extends object>(taught: number, own: Law | undefined, generic: Law, learned: Partial<Law>): Law => {
    if (taught > 0) return { ...generic, ...learned, runs: taught };
    return own ?? { ...generic, runs: 0 };
  };
  const baseline = { ...prior.baseline, timeS: prior.baseline.timeS * Math.exp(base.value), logSd: base.sd };
  return {
    ...given,
    baseline: base.runs > 0 ? { ...baseline, runs: base.runs } : baseline,
    temperature: choose(temperature.runs, given.temperature, laws.temperature, {
      activationEnergyKJPerMol: temperature.value,
      sdKJPerMol: temperature.sd,
    }),
    dilution: choose(dilution.runs, given.dilution, laws.dilution, { exponent: dilution.value, sd: dilution.sd }),
    agitation: choose(agitation.runs, given.agitation, laws.agitation, { staleLoss: agitation.value, sdStaleLoss: agitation.sd }),
    use: choose(use.runs, given.use, laws.use, { increase: use.value, sdIncrease: use.sd }),
    age: choose<AgeLaw>(age.runs, given.age, laws.age, ageNumbers(laws.age, age)),
  };
}

function ageNumbers(law: AgeLaw, { value, sd }: Parameter): Partial<AgeLaw> {
  if (law.kind === "slowing") return { perRootH: value, sdPerRootH: sd };
  return { halfLifeH: Math.LN2 / value, sdLog: sd / value };
}
