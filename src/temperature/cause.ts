/*
 * Temperature as a cause: the bath's temperature in °C on each side.
 */
import type { Caution } from "../core/caution.js";
import { taughtBetween } from "../core/departures.js";
import { claimed, type Cause, type Effect, type KnownBath } from "../core/cause.js";
import { makeCaution } from "../core/cautionTexts.js";
import { farSentence, outsideTableSentence } from "../core/text.js";
import { orWrongWay } from "../core/orWrongWay.js";
import { genericTemperatureLaw } from "./genericTemperatureLaw.js";
import {
  bathTemperature,
  checkedTemperatureLaw,
  energyLogSd,
  GAS_CONSTANT_KJ,
  GIVEN_LAW_SD_KJ,
  inverseKelvin,
  inverseStep,
  logTimeRatio,
  TABLE_ENERGY_SD_KJ,
  type ReadyTableLaw,
  type ReadyTemperatureLaw,
} from "./law.js";
import { LEAST_ENERGY_SD_KJ } from "./plausible.js";
import { bathCautions, FAHRENHEIT_ABOVE_C } from "./temperatureCautions.js";

/** More than so many °C from the known temperature a law is carried far. */
const FAR_C = 10;

/**
 * Temperature as a cause. Its parameter is the activation energy in kJ/mol, of a table how far that is off,
 * or the ratio of a coefficient law.
 */
export const temperatureCause: Cause<ReadyTemperatureLaw, number, "temperature"> = {
  name: "temperature",
  field: "temperatureC",
  law: "temperature",
  lawFields: {
    arrhenius: ["activationEnergyKJPerMol", "sdKJPerMol", "departures", "hydroquinone"],
    coefficient: ["ratio", "intervalC", "sdRatio", "hydroquinone"],
    table: ["rows", "energyOffKJPerMol", "sdKJPerMol", "departures", "hydroquinone"],
  },
  generic: genericTemperatureLaw,
  required: true,
  drifts: true,
  column: { name: "temperatureC", side: bathTemperature },
  read: bathTemperature,
  check: checkedTemperatureLaw,
  effect: temperatureEffect,
  logAt: (law, from) => {
    if (law.kind === "table") return undefined;
    if (law.kind === "coefficient") return (to) => logTimeRatio(law, from, to);
    if (law.walk !== undefined) return undefined;
    const energy = law.activationEnergyKJPerMol;
    return (to) => energy * (inverseStep(from, to) / GAS_CONSTANT_KJ);
  },
  cautions: (law, from, to, effect, known, path) =>
    orWrongWay(temperatureChangeCautions(law, from, to, known, path), "temperature", to - from, effect),
};

/** The effect of going from one temperature to another. */
export function temperatureEffect(law: ReadyTemperatureLaw, fromC: number, toC: number): Effect {
  if (law.kind === "arrhenius") {
    const slope = inverseStep(fromC, toC) / GAS_CONSTANT_KJ;
    const log = law.activationEnergyKJPerMol * slope;
    const sd = claimed(law.sdKJPerMol ?? GIVEN_LAW_SD_KJ, LEAST_ENERGY_SD_KJ, law);
    if (law.walk === undefined) return { log, slope, sd, beside: 0 };
    const departed = law.walk(fromC, toC);
    return { ...departed, log: log + departed.log, slope, sd };
  }
  const log = logTimeRatio(law, fromC, toC);
  if (law.kind === "coefficient") {
    const { ratio, intervalC, sdRatio } = law;
    if (typeof sdRatio !== "number")
      return { log, slope: 0, sd: 0, beside: energyLogSd(GIVEN_LAW_SD_KJ, fromC, toC) };
    // A difference in the last place of a double may leave no slope at all.
    const slope = (fromC - toC) / (intervalC * ratio);
    if (slope === 0) return { log, slope, sd: sdRatio, beside: 0 };
    const least = energyLogSd(LEAST_ENERGY_SD_KJ, fromC, toC) / Math.abs(slope);
    return { log, slope, sd: claimed(sdRatio, least, law), beside: 0 };
  }
  const slope = inverseStep(fromC, toC) / GAS_CONSTANT_KJ;
  const sd = claimed(law.sdKJPerMol ?? TABLE_ENERGY_SD_KJ, LEAST_ENERGY_SD_KJ, law);
  if (law.walk !== undefined) return { ...law.walk(fromC, toC), log, slope, sd };
  const { timeAt, spread } = law.table;
  const from = inverseKelvin(fromC);
  const to = inverseKelvin(toC);
  const effect = { log, slope, sd, beside: spread(from, to) };
  return (law.energyOffKJPerMol ?? 0) === 0 ? { ...effect, exact: timeAt(to) / timeAt(from) } : effect;
}

/** Whether a temperature lies outside the rows of a table, and outside what runs taught of it. */
const isOutside = ({ table, departures }: ReadyTableLaw, temperatureC: number): boolean =>
  table.outside(inverseKelvin(temperatureC)) && !taughtBetween(departures, temperatureC);

/** The cautions about a bath at one temperature, against the known one; `path` is where it was given. */
export function temperatureChangeCautions(
  law: ReadyTemperatureLaw,
  from: number,
  to: number,
  known: KnownBath,
  path: string,
): readonly Caution[] {
  const hydroquinone = known.hydroquinone ?? law.hydroquinone;
  const ofBath = bathCautions(to, hydroquinone, known.emulsion === "soft", path);
  const difference = Math.abs(to - from);
  const outside = from !== to && law.kind === "table" && (isOutside(law, from) || isOutside(law, to));
  if (!outside && difference <= FAR_C && (from === to || from <= FAHRENHEIT_ABOVE_C)) return ofBath;
  const cautions = [...ofBath];
  if (outside)
    cautions.push(
      makeCaution(outsideTableSentence, "outside-table", "warn", { path, data: { cause: "temperature" } }),
    );
  if (from !== to && from > FAHRENHEIT_ABOVE_C)
    cautions.push(...bathCautions(from, false, false, "/baseline/temperatureC"));
  if (difference > FAR_C)
    cautions.push(
      makeCaution(farSentence, "far-extrapolation", "warn", {
        path,
        data: { cause: "temperature" },
        quantity: "temperatureDifferenceC",
        limit: FAR_C,
        actual: difference,
      }),
    );
  return cautions;
}
