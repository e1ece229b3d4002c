/*
 * Temperature as a cause: the bath's temperature in °C on each side.
 */
import type { Caution } from "../core/caution.js";
import type { Cause, Effect } from "../core/cause.js";
import { genericTemperatureLaw } from "./genericTemperatureLaw.js";
import {
  bathTemperature,
  checkedTemperatureLaw,
  energyLogSd,
  GAS_CONSTANT_KJ,
  GIVEN_LAW_SD_KJ,
  inverseKelvin,
  logTimeRatio,
  type ReadyTemperatureLaw,
} from "./law.js";
import { FAHRENHEIT_ABOVE_C, temperatureCautions } from "./temperatureCautions.js";

/** More than so many °C from the known temperature a law is carried far. */
const FAR_C = 10;

/** Temperature as a cause. Its parameter is the activation energy in kJ/mol, or the ratio of a coefficient law. */
export const temperatureCause: Cause<ReadyTemperatureLaw, number, "temperature"> = {
  name: "temperature",
  field: "temperatureC",
  law: "temperature",
  generic: genericTemperatureLaw,
  required: true,
  column: { name: "temperatureC", side: bathTemperature },
  read: bathTemperature,
  check: checkedTemperatureLaw,
  effect: temperatureEffect,
  cautions: (law, from, to, _effect, known) => temperatureChangeCautions(law, from, to, known),
};

/** The effect of going from one temperature to another. */
export function temperatureEffect(law: ReadyTemperatureLaw, fromC: number, toC: number): Effect {
  if (law.kind === "arrhenius") {
    const slope = (inverseKelvin(toC) - inverseKelvin(fromC)) / GAS_CONSTANT_KJ;
    return {
      log: law.activationEnergyKJPerMol * slope,
      slope,
      sd: law.sdKJPerMol ?? GIVEN_LAW_SD_KJ,
      beside: 0,
    };
  }
  const log = logTimeRatio(law, fromC, toC);
  if (law.kind === "coefficient") {
    const { ratio, intervalC, sdRatio } = law;
    if (typeof sdRatio !== "number")
      return { log, slope: 0, sd: 0, beside: energyLogSd(GIVEN_LAW_SD_KJ, fromC, toC) };
    return { log, slope: (fromC - toC) / (intervalC * ratio), sd: sdRatio, beside: 0 };
  }
  const { timeAt, spread } = law.table;
  const from = inverseKelvin(fromC);
  const to = inverseKelvin(toC);
  return { log, exact: timeAt(to) / timeAt(from), slope: 0, sd: 0, beside: spread(from, to) };
}

/** The cautions about a bath at one temperature, against the known one. */
export function temperatureChangeCautions(
  law: ReadyTemperatureLaw,
  from: number,
  to: number,
  {
    hydroquinone,
    emulsion,
  }: { readonly hydroquinone?: boolean | undefined; readonly emulsion?: "soft" | "hardened" | undefined },
): readonly Caution[] {
  const cautions = [...temperatureCautions(to, { hydroquinone, emulsion })];
  if (from === to) return cautions;
  if (
    law.kind === "table" &&
    (law.table.outside(inverseKelvin(from)) || law.table.outside(inverseKelvin(to)))
  )
    cautions.push({
      code: "outside-table",
      severity: "warn",
      message: "A temperature lies outside the table. The last slope of the table is carried on.",
      data: { cause: "temperature" },
    });
  if (from > FAHRENHEIT_ABOVE_C)
    cautions.push(...temperatureCautions(from, { path: "/baseline/temperatureC" }));
  const difference = Math.abs(to - from);
  if (difference > FAR_C)
    cautions.push({
      code: "far-extrapolation",
      severity: "warn",
      message: "More than 10 °C from the temperature of the known time.",
      quantity: "temperatureDifferenceC",
      limit: FAR_C,
      actual: difference,
    });
  return cautions;
}
