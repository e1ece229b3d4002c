/*
 * The published tables against which accuracy is measured, in one form: a condition and a time a row, and how
 * the times are rounded.
 */
import { fahrenheitToCelsius } from "../../src/index.js";
import { dilutionSeries, pyroPairs, stockAndHalf } from "../reference/dilution.js";
import type { Provenance } from "../reference/published.js";
import { autochromeFactors, timeTables } from "../reference/temperature.js";

/** One row: `at` is °C or a dilution. */
export interface Row<At> {
  readonly at: At;
  readonly timeS: number;
}

/** One table. `halfStepS` is half the step to which its times are rounded. */
export interface Table<At> {
  readonly id: string;
  readonly about: string;
  readonly source: string;
  readonly provenance: Provenance;
  readonly halfStepS: number;
  readonly rows: readonly Row<At>[];
}

/**
 * The x-ray table's maximum times are its normal times plus three minutes: a rule of adding, not a
 * temperature law.
 */
export const ADDED_RULE = "xray-to33b-max";

export const temperatureTables: readonly Table<number>[] = [
  ...timeTables
    .filter(({ id }) => id !== ADDED_RULE)
    .map(({ id, about, source, provenance, unit, halfStepMin, rows }) => ({
      id,
      about,
      source,
      provenance,
      halfStepS: halfStepMin * 60,
      rows: rows.map(({ temperature, minutes }) => ({
        at: unit === "F" ? fahrenheitToCelsius(temperature) : temperature,
        timeS: minutes * 60,
      })),
    })),
  // The size 135 columns of this source stand above already.
  ...stockAndHalf
    .filter(({ id }) => id === "DIL-017")
    .flatMap(({ id, about, source, provenance, rows }) =>
      (["stockMin", "halfMin"] as const).map((column) => ({
        id: `${id}-${column === "stockMin" ? "stock" : "1+1"}`,
        about: `${about}, ${column === "stockMin" ? "stock" : "1+1"}`,
        source,
        provenance,
        halfStepS: 7.5,
        rows: rows.map((row) => ({ at: row.temperatureC, timeS: row[column] * 60 })),
      })),
    ),
  {
    ...autochromeFactors,
    // One printed digit after the point, on a time of two and a half minutes.
    halfStepS: 0.05 * 150,
    rows: autochromeFactors.rows.map(({ temperatureC, factor }) => ({
      at: temperatureC,
      timeS: factor * 150,
    })),
  },
];

export const dilutionTables: readonly Table<string>[] = [
  ...dilutionSeries.map(({ id, about, source, provenance, rows }) => ({
    id,
    about,
    source,
    provenance,
    halfStepS: 15,
    rows: rows.map(({ dilution, minutes }) => ({ at: dilution, timeS: minutes * 60 })),
  })),
  {
    id: "DIL-004 to DIL-006",
    about: (pyroPairs[0] as (typeof pyroPairs)[number]).about,
    source: (pyroPairs[0] as (typeof pyroPairs)[number]).source,
    provenance: "read",
    halfStepS: 30,
    // 2.5, 1.25 and 0.833 grains an ounce: undiluted, once and twice its water.
    rows: [
      { at: "1+0", timeS: 240 },
      { at: "1+1", timeS: 600 },
      { at: "1+2", timeS: 1200 },
    ],
  },
];
