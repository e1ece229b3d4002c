/*
 * Dilution as a cause. A side is ln(concentration), 0 for undiluted stock and below 0 for every dilution.
 */
import { isPast, type Caution } from "../core/caution.js";
import { claimed, type Cause, type Effect } from "../core/cause.js";
import { makeCaution } from "../core/cautionTexts.js";
import { taughtBetween } from "../core/departures.js";
import { inRange } from "../core/guards.js";
import { farSentence, outsideTableSentence } from "../core/text.js";
import { orWrongWay } from "../core/orWrongWay.js";
import {
  checkedDilutionLaw,
  GIVEN_EXPONENT_SD,
  logConcentration,
  readDilution,
  TABLE_EXPONENT_SD,
  type ReadyDilutionLaw,
  type ReadyTableLaw,
} from "./dilution.js";
import { LEAST_EXPONENT_SD } from "./plausible.js";
import { DEPARTURE_LOG_SD, genericDilutionLaw } from "./genericDilutionLaw.js";

/** Dilution as a cause. Its parameter is the exponent of a power, or how far that of a table is off. */
export const dilutionCause: Cause<ReadyDilutionLaw, number, "dilution"> = {
  name: "dilution",
  field: "dilution",
  law: "dilution",
  lawFields: {
    power: ["exponent", "sd", "scatterLogSd", "departures"],
    table: ["rows", "exponentOff", "sd", "departures"],
  },
  generic: genericDilutionLaw,
  column: { name: "waterParts", side: (at, water) => -Math.log1p(inRange(at, water, 0, 1e5)) },
  read: (at, given) => logConcentration(readDilution(at, given)),
  check: checkedDilutionLaw,
  effect: dilutionEffect,
  logAt: (law, from) =>
    law.kind === "table" || law.walk !== undefined ? undefined : (to) => law.exponent * (from - to),
  cautions: (law, from, to, effect) =>
    orWrongWay(dilutionCautions(law, from, to), "dilution", to - from, effect),
};

/** Printed tables of one developer reach from 1+25 to 1+100, which is four times the concentration. */
const FAR_RATIO = 4;

/** The weakest bath that a printed table has a time for, parts of water to one of stock. */
const WEAKEST_PARTS = 100;

const NONE: readonly Caution[] = [];

function dilutionCautions(law: ReadyDilutionLaw, from: number, to: number): readonly Caution[] {
  if (from === to) return NONE;
  // What the rows of a table cover was printed for this developer.
  if (law.kind === "table")
    return isOutside(law, from) || isOutside(law, to)
      ? [makeCaution(outsideTableSentence, "outside-table", "warn", { data: { cause: "dilution" } })]
      : NONE;
  const far = (severity: "warn" | "stop", limit: number, actual: number): readonly Caution[] => {
    const data = { cause: "dilution", bath: to < from ? "weaker" : "stronger" } as const;
    const figures = { quantity: "ratio", limit, actual, data } as const;
    return isPast(actual, limit) ? [makeCaution(farSentence, "far-extrapolation", severity, figures)] : NONE;
  };
  const weak = to < from ? far("stop", WEAKEST_PARTS, Math.expm1(-to)) : NONE;
  return weak.length > 0 ? weak : far("warn", FAR_RATIO, Math.exp(Math.abs(to - from)));
}

/** Whether a dilution lies outside the rows of a table, and outside what runs taught of it. */
const isOutside = ({ table, departures }: ReadyTableLaw, logC: number): boolean =>
  table.outside(-logC) && !taughtBetween(departures, logC);

/** The effect of going from one ln(concentration) to another. */
export function dilutionEffect(law: ReadyDilutionLaw, from: number, to: number): Effect {
  const slope = from - to;
  if (law.kind === "table") {
    const { exponentOff: off = 0, table } = law;
    const exact = table.timeAt(-to) / table.timeAt(-from);
    const log = Math.log(exact) + off * slope;
    const sd = claimed(law.sd ?? TABLE_EXPONENT_SD, LEAST_EXPONENT_SD, law);
    if (law.walk !== undefined) {
      const departed = law.walk(from, to);
      return { ...departed, log: log + departed.log, slope, sd };
    }
    const effect = { log, slope, sd, beside: table.spread(-from, -to) };
    return off === 0 ? { ...effect, exact } : effect;
  }
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
