/*
 * Room: learning. The laws in the form in which they can be learned, and what is known of each before the
 * first run.
 */
import { checkedAgitationLaw, genericAgitationLaw, type AgitationLaw } from "../agitation/agitation.js";
import { GIVEN_LOSS_SD } from "../agitation/agitationLogSd.js";
import type { Knowledge } from "../compensate/types.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { checkedLawOrigin } from "../core/term.js";
import { asPowerLaw } from "../dilution/asPowerLaw.js";
import type { PowerDilutionLaw } from "../dilution/dilution.js";
import { GIVEN_EXPONENT_SD } from "../dilution/dilutionLogSd.js";
import { genericDilutionLaw } from "../dilution/genericDilutionLaw.js";
import type { AgeLaw } from "../age/ageFactor.js";
import { ageLogSd } from "../age/ageLogSd.js";
import { genericAgeLaw } from "../age/genericAgeLaw.js";
import { ageNumber } from "../age/ageLine.js";
import type { NumberOfLaw } from "../core/line.js";
import { useNumber } from "../use/useLine.js";
import { genericUseLaw, useSlope, type UseLaw } from "../use/useFactor.js";
import { energyLawNear } from "../temperature/energyLawNear.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import type { ArrheniusLaw } from "../temperature/law.js";
import { GIVEN_LAW_SD_KJ } from "../temperature/temperatureLogSd.js";

/** The laws in the form in which they can be learned: one number each. */
export interface LearnableLaws {
  readonly temperature: ArrheniusLaw;
  readonly dilution: PowerDilutionLaw;
  readonly agitation: AgitationLaw;
  readonly use: UseLaw;
  readonly age: AgeLaw;
}

/**
 * Brings any laws to the form that can be learned. A coefficient or a table of temperatures becomes the
 * Arrhenius law that agrees with it 5 °C either side of the baseline's temperature; a table of dilutions the
 * power fitted to it.
 */
export function learnableLaws(where: string, laws: Knowledge, baseC: number): LearnableLaws {
  plainObject(where, laws, "/laws");
  const fromC = inRange(where, baseC, 0, 100, "temperatureC", "/baseline/temperatureC");
  const { temperature = genericTemperatureLaw, dilution = genericDilutionLaw } = laws;
  const { agitation = genericAgitationLaw, use = genericUseLaw, age = genericAgeLaw } = laws;
  // Each room refuses what is no law of its own.
  for (const law of [temperature, dilution, agitation, use, age]) checkedLawOrigin(where, law);
  useSlope(`${where}/use`, use, 0);
  if (use.capacityCm2PerL !== undefined)
    positive(where, use.capacityCm2PerL, 1e6, "cm2PerL", "/use/law/capacityCm2PerL");
  ageLogSd(age, 0, 0);
  return {
    temperature: energyLawNear(where, temperature, fromC),
    dilution: asPowerLaw(where, dilution),
    agitation: checkedAgitationLaw(`${where}/agitation`, agitation),
    use,
    age,
  };
}

/**
 * Value and standard deviation of each number under the laws: ln(base time) as a difference, and the strength
 * as its own unit.
 */
export function priorNumbers(laws: LearnableLaws, baseLogSd: number): readonly NumberOfLaw[] {
  const { temperature, dilution, agitation, use, age } = laws;
  return [
    [0, baseLogSd],
    [temperature.activationEnergyKJPerMol, temperature.sdKJPerMol ?? GIVEN_LAW_SD_KJ],
    [dilution.exponent, dilution.sd ?? GIVEN_EXPONENT_SD],
    [agitation.staleLoss, agitation.sdStaleLoss ?? GIVEN_LOSS_SD],
    useNumber(use),
    ageNumber(age),
    [0, 1],
  ];
}
