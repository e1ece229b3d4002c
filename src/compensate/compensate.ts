import { gravestFirst, type Caution } from "../core/caution.js";
import { REPEAT_LOG_SD, timeEstimate, checkedSpread } from "../core/estimate.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { basisOf, checkedOrigin, type Factor } from "../core/term.js";
import { jointVariance } from "./jointVariance.js";
import { contrastTerm } from "./contrastTerm.js";
import { driftTerm } from "./driftTerm.js";
import { outcomeCautions } from "./outcomeCautions.js";
import {
  ageTerm,
  agitationTerm,
  dilutionTerm,
  resting,
  strengthTerm,
  temperatureTerm,
  useTerm,
} from "./terms.js";
import type { Baseline, Compensation, Conditions, Knowledge, WorkedTerm } from "./types.js";

/**
 * The main job: a known development time, compensated for today's conditions.
 *
 * @param baseline - the known time in s and the conditions it is known for
 * @param conditions - today's conditions; what is left out is as in the baseline. A dilution, agitation or
 * gradient that the baseline lacks is an error; use and age start at 0
 * @param knowledge - laws known for this developer and material; published and then generic laws stand in for
 * the rest
 * @returns the median time and its 90 % interval in s, unrounded; one row per cause with value, spread, basis
 * and sources; cautions
 * @throws TypeError when a field is of the wrong kind, or a condition is given whose counterpart the baseline
 * lacks
 * @throws RangeError when a value is out of range, or the spreads of the laws add up to more than 100 in
 * ln(time)
 *
 * @remarks time = baseline time × the product of the factors; the variances of ln(time) add. With the
 * baseline's own conditions the baseline time comes back to the last bit. A `"stop"` caution means that the
 * time must not be trusted with a negative: a bath past its life still gets the number that a living one
 * would need, so look at the cautions first. The causes are taken as independent, but for laws that were
 * learned together, whose covariance counts; that a diluted bath can have another temperature coefficient is
 * not modelled. A log or forecast of temperature gives the clock time of `developUntil`, with the law's
 * spread carried along it; a gradient acts through the growth law, the image's appearance included, since one
 * temperature coefficient serves both: E. J. Wall, Thermo-Entwicklung, Jahrbuch 24, Halle, 1910, p. 44.
 *
 * @example
 * ```ts
 * const known = { timeS: 510, temperatureC: 20 };
 * compensate(known, { temperatureC: 18 }, { temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } }).timeS // => 585.8
 * ```
 */
export function compensate(
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge = {},
): Compensation {
  plainObject("compensate/baseline", baseline);
  plainObject("compensate/conditions", conditions);
  plainObject("compensate/knowledge", knowledge);
  let timeS = positive("compensate/baseline/timeS", baseline.timeS, 1e6, "timeS");
  inRange("compensate/baseline/temperatureC", baseline.temperatureC, 0, 100, "temperatureC");
  const terms = [
    baselineTerm(baseline),
    temperatureTerm(baseline, conditions, knowledge),
    dilutionTerm(baseline, conditions, knowledge),
    agitationTerm(baseline, conditions, knowledge),
    useTerm(baseline, conditions, knowledge),
    ageTerm(baseline, conditions, knowledge),
    strengthTerm(conditions),
    contrastTerm(baseline, conditions, knowledge),
  ];
  // Plain loops: this is the function that an app calls on every turn of a dial.
  for (const term of terms) if (term) timeS *= term.factor.value;
  if (!terms[1]) {
    // A bath that drifts comes last, since how far it drifts hangs on the time that the others leave; its row
    // stands where it always does.
    terms[1] = driftTerm(baseline, conditions.temperatureC, knowledge, timeS);
    timeS *= terms[1].factor.value;
  }
  const factors: Factor[] = [];
  const cautions: Caution[] = [];
  let variance = 0;
  for (const term of terms) {
    if (!term) continue;
    const { factor } = term;
    factors.push(factor);
    for (const caution of term.cautions) cautions.push(caution);
    variance += factor.logSd * factor.logSd;
  }
  if (knowledge.joint !== undefined)
    variance = jointVariance(variance, factors, knowledge, baseline, conditions);
  const logSd = checkedSpread("compensate/knowledge", Math.sqrt(variance));
  const estimate = timeEstimate(timeS, logSd);
  outcomeCautions(cautions, estimate, factors, baseline, conditions, knowledge);
  return { timeS, lowS: estimate.lowS, highS: estimate.highS, factors, cautions: gravestFirst(cautions) };
}

function baselineTerm(baseline: Baseline): WorkedTerm {
  const { logSd = REPEAT_LOG_SD } = baseline;
  inRange("compensate/baseline/logSd", logSd, 0, 3);
  const own = baseline.logSd !== undefined;
  checkedOrigin("compensate/baseline", baseline);
  const sources = own ? [] : ["a known time repeats to about 4 % (common practice)"];
  return {
    factor: resting(
      "baseline",
      1,
      logSd,
      { sources, runs: baseline.runs },
      own ? basisOf(baseline) : "default",
    ),
    cautions: [],
  };
}
