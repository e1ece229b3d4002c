/*
 * The JSON Schema of a temperature and of a temperature law.
 */
import {
  above0,
  departures,
  form,
  from,
  list,
  object,
  origin,
  yes,
  type CauseSchema,
  type JsonSchema,
} from "../core/schema.js";
import { temperatureCause } from "./cause.js";
import { PLACES_C, TABLE_ENERGY_RANGE } from "./law.js";

const row = (): JsonSchema =>
  object(
    ["temperatureC", "timeS"],
    {
      temperatureC: from(0, 100, "Temperature of the row, in °C."),
      timeS: above0(1e7, "Time that gives the same contrast at this temperature, in seconds."),
      stepS: above0(1e7, "The step to which the time was rounded, in seconds."),
    },
    "A row of the table.",
  );

const holds = (): JsonSchema =>
  yes("True for the law of a developer that holds hydroquinone, false for one that does not.");

/** Temperature and its law as JSON Schema. */
export const temperatureSchema: CauseSchema = {
  cause: temperatureCause,
  condition: () => from(0, 100, "Temperature of the bath, in °C."),
  law: () => ({
    description: "How development time depends on temperature.",
    anyOf: [
      form(
        "arrhenius",
        "The rate follows Arrhenius's equation with one activation energy.",
        ["activationEnergyKJPerMol"],
        {
          activationEnergyKJPerMol: from(0, 200, "Activation energy, in kJ/mol."),
          sdKJPerMol: from(0, 200, "Standard deviation of the activation energy, in kJ/mol."),
          hydroquinone: holds(),
          ...departures(PLACES_C, "The temperature, in °C."),
          ...origin(),
        },
      ),
      form("coefficient", "The rate grows by a ratio over an interval.", ["ratio", "intervalC"], {
        ratio: from(1, 1e9, "By what the rate is multiplied when the bath is warmer by the interval."),
        intervalC: above0(100, "The interval of the ratio, in °C."),
        sdRatio: from(0, 1e9, "Standard deviation of the ratio."),
        hydroquinone: holds(),
        ...origin(),
      }),
      form("table", "A maker's table of times.", ["rows"], {
        rows: list(row(), 2, 10_000, "The rows, no two at one temperature, none longer than a colder one."),
        energyOffKJPerMol: from(
          ...TABLE_ENERGY_RANGE,
          "How far the slope of the whole table is off, in kJ/mol.",
        ),
        sdKJPerMol: from(0, 200, "Standard deviation of that, in kJ/mol; 5 when left out."),
        hydroquinone: holds(),
        ...departures(
          PLACES_C,
          "The temperature, in °C.",
          "How far ln(time) lies from the table there; beyond its rows, from the place before.",
        ),
        ...origin(),
      }),
    ],
  }),
};
