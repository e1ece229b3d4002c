/*
 * Dilution as a cause. A side is ln(concentration), 0 for undiluted stock and below 0 for every dilution.
 */
import { claimed, type Cause, type Effect } from "../core/cause.js";
import { makeCaution } from "../core/cautionTexts.js";
import { inRange } from "../core/guards.js";
import { outsideTableSentence } from "../core/text.js";
import {
  checkedDilutionLaw,
  GIVEN_EXPONENT_SD,
  logConcentration,
  readDilution,
  type ReadyDilutionLaw,
} from "./dilution.js";
import { LEAST_EXPONENT_SD } from "./plausible.js";
import { DEPARTURE_LOG_SD, genericDilutionLaw } from "./genericDilutionLaw.js";

/** Dilution as a cause. Its parameter is the exponent of a power law. */
export const dilutionCause: Cause<ReadyDilutionLaw, number, "dilution"> = {
  name: "dilution",
  field: "dilution",
  law: "dilution",
  lawFields: { power: ["exponent", "sd", "scatterLogSd", "departures"], table: ["rows"] },
  generic: genericDilutionLaw,
  column: { name: "waterParts", side: (at, water) => -Math.log1p(inRange(at, water, 0, 1e5)) },
  read: (at, given) => logConcentration(readDilution(at, given)),
  check: checkedDilutionLaw,
  effect: dilutionEffect,
  logAt: (law, from) =>
    law.kind === "table" || law.walk !== undefined ? undefined : (to) => law.exponent * (from - to),
  cautions: (law, from, to) =>
    from !== to && law.kind === "table" && (law.table.outside(-from) || law.table.outside(-to))
      ? [makeCaution(outsideTableSentence, "outside-table", "warn", { data: { cause: "dilution" } })]
      : [],
};

/** The effect of going from one ln(concentration) to another. */
export function dilutionEffect(law: ReadyDilutionLaw, from: number, to: number): Effect {
  if (law.kind === "table") {
    const { timeAt, spread } = law.table;
    const exact = timeAt(-to) / timeAt(-from);
    return { log: Math.log(exact), exact, slope: 0, sd: 0, beside: spread(-from, -to) };
  }
  const slope = from - to;
  const sd = claimed(law.sd ?? GIVEN_EXPONENT_SD, LEAST_EXPONENT_SD, law);
  const log = law.exponent * slope;
  if (law.walk !== undefined) {
    const departed = law.walk(from, to);
    return { ...departed, log: log + departed.log, slope, sd };
  }
  // Neighbouring dilutions share their departure from the power; a scatter that the law states counts in full
  // from one doubling on.
  const step = Math.abs(slope);
  const beside =
    law.scatterLogSd === undefined
      ? DEPARTURE_LOG_SD * Math.sqrt(step)
      : law.scatterLogSd * Math.min(1, step / Math.LN2);
  return { log, slope, sd, beside };
}
