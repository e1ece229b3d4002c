/*
 * Room: learning. The laws in the form in which they can be learned, and what is known of each before the first run.
 */
import { checkedAgitationLaw, genericAgitationLaw, type AgitationLaw } from "../agitation/agitation.js";
import type { Knowledge } from "../compensate/types.js";
import { inRange, plainObject, wrongKind } from "../core/guards.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";
import { dilutionRatio, type PowerDilutionLaw } from "../dilution/dilution.js";
import { GIVEN_EXPONENT_SD } from "../dilution/dilutionLogSd.js";
import { fitDilutionLaw } from "../dilution/fitDilutionLaw.js";
import { genericDilutionLaw } from "../dilution/genericDilutionLaw.js";
import type { AgeLaw } from "../exhaustion/ageFactor.js";
import { ageLogSd } from "../exhaustion/ageLogSd.js";
import { genericUseLaw, usePortions, type UseLaw } from "../exhaustion/useFactor.js";
import { asArrheniusLaw } from "../temperature/asArrheniusLaw.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { lawSlope, type ArrheniusLaw } from "../temperature/law.js";
import { GIVEN_LAW_SD_KJ } from "../temperature/temperatureLogSd.js";

/**
 * The age law that stands in when none is given: no change expected, and the spread that `compensate` gives to a bath of which nothing
 * is known, as one unknown that the runs share.
 */
const GENERIC_AGE = {
  kind: "slowing",
  perRootH: 0,
  sdPerRootH: 0.1,
  sources: ["no law of age: taken as unchanged, with a wide spread"],
} as const satisfies AgeLaw;

/** The laws in the form in which they can be learned: one number each. */
export interface LearnableLaws {
  readonly temperature: ArrheniusLaw;
  readonly dilution: PowerDilutionLaw;
  readonly agitation: AgitationLaw;
  readonly use: UseLaw;
  readonly age: AgeLaw;
}

/**
 * Brings any laws to the form that can be learned. A coefficient or a table of temperatures becomes the Arrhenius law that agrees with it 5 °C
 * either side of the baseline's temperature; a table of dilutions the power fitted to it.
 */
export function learnableLaws(where: string, laws: Knowledge, baseC: number): LearnableLaws {
  plainObject(where, laws, " laws");
  const fromC = inRange(where, baseC, 0, 100, " °C", " baseline.temperatureC");
  const { temperature = genericTemperatureLaw, dilution = genericDilutionLaw } = laws;
  const { agitation = genericAgitationLaw, use = genericUseLaw, age = GENERIC_AGE } = laws;
  // Each room refuses what is no law of its own; table and coefficient laws are checked on the way as well.
  for (const law of [temperature, dilution, agitation, use, age]) {
    const { published = false } = checkedOrigin<LawOrigin>(where, law, " law");
    if (typeof published !== "boolean") wrongKind(`${where} law.published`, "true or false", published);
  }
  lawSlope(where, temperature);
  dilutionRatio(where, dilution);
  usePortions(where, use, 0);
  ageLogSd(age, 0, 0);
  return {
    temperature:
      temperature.kind === "arrhenius"
        ? temperature
        : { ...asArrheniusLaw(temperature, Math.max(0, fromC - 5), Math.min(100, fromC + 5)), ...origin(temperature) },
    dilution: dilution.kind === "table" ? { ...fitDilutionLaw(dilution.rows).law, ...origin(dilution) } : dilution,
    agitation: checkedAgitationLaw(where, agitation),
    use,
    age,
  };
}

function origin({ sources }: LawOrigin): LawOrigin | undefined {
  return sources && { sources };
}

/** Value and standard deviation of each number under the laws: ln(base time) as a difference, and the strength as its own unit. */
export function priorNumbers(laws: LearnableLaws, baseLogSd: number): readonly (readonly [value: number, sd: number])[] {
  const { temperature, dilution, agitation, use, age } = laws;
  return [
    [0, baseLogSd],
    [temperature.activationEnergyKJPerMol, temperature.sdKJPerMol ?? GIVEN_LAW_SD_KJ],
    [dilution.exponent, dilution.sd ?? GIVEN_EXPONENT_SD],
    [agitation.staleLoss, agitation.sdStaleLoss ?? 0.25],
    [use.increase, use.sdIncrease ?? use.increase / 4],
    agePrior(age),
    [0, 1],
  ];
}

/** The rate, 1/h, of the longest half-life that an age law takes, 1e6 h. */
export const LEAST_RATE: number = Math.LN2 / 1e6;

function agePrior(age: AgeLaw): readonly [number, number] {
  if (age.kind === "slowing") return [age.perRootH, age.sdPerRootH ?? 0.1];
  if (age.kind === "life") return [0, 0];
  return [Math.LN2 / age.halfLifeH, ((age.sdLog ?? 0.3) * Math.LN2) / age.halfLifeH];
}
