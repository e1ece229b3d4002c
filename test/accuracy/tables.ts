/*
 * The published tables against which accuracy is measured, in one form: a condition and a time a row, and how
 * the times are rounded. None is uncertain, and none is there twice.
 */
import { fahrenheitToCelsius, parseDilution, type DilutionFamily } from "../../src/index.js";
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

/** A table of dilutions, with the class of its developer. */
export interface DilutionTable extends Table<string> {
  readonly family: DilutionFamily;
}

/**
 * The x-ray table's maximum times are its normal times plus three minutes: a rule of adding, not a
 * temperature law.
 */
export const ADDED_RULE = "xray-to33b-max";

/** The parts of water to one of stock. */
export function waterOf(dilution: string): number {
  const { stockParts, waterParts } = parseDilution(dilution);
  return waterParts / stockParts;
}

/** Tables without those of uncertain memory and those whose rows all stand in an earlier one. */
function counted<At, One extends Table<At>>(tables: readonly One[]): readonly One[] {
  const kept: One[] = [];
  const key = ({ at, timeS }: Row<At>): string =>
    `${typeof at === "number" ? at.toFixed(1) : String(at)} ${timeS.toFixed(1)}`;
  for (const table of tables) {
    if (table.provenance.endsWith("uncertain")) continue;
    const rows = table.rows.map(key);
    const twice = kept.some((other) => {
      const theirs = other.rows.map(key);
      return rows.every((row) => theirs.includes(row));
    });
    if (!twice) kept.push(table);
  }
  return kept;
}

export const temperatureTables: readonly Table<number>[] = counted<number, Table<number>>([
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
]);

export const dilutionTables: readonly DilutionTable[] = counted<string, DilutionTable>([
  ...dilutionSeries.map(({ id, about, source, provenance, family, rows }) => ({
    id,
    about,
    source,
    provenance,
    family,
    halfStepS: 15,
    rows: rows.map(({ dilution, minutes }) => ({ at: dilution, timeS: minutes * 60 })),
  })),
  {
    id: "DIL-004 to DIL-006",
    about: (pyroPairs[0] as (typeof pyroPairs)[number]).about,
    source: (pyroPairs[0] as (typeof pyroPairs)[number]).source,
    provenance: "read",
    family: "pyro",
    halfStepS: 30,
    // 2.5, 1.25 and 0.833 grains an ounce: undiluted, once and twice its water.
    rows: [
      { at: "1+0", timeS: 240 },
      { at: "1+1", timeS: 600 },
      { at: "1+2", timeS: 1200 },
    ],
  },
]);
