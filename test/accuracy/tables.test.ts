/*
 * A part of a published table as the law, asked for the rows that were left out: how often
 * the 90 % interval of the law alone holds the printed time.
 */
import { describe, expect, it } from "vitest";
import {
  effect,
  dilutionFactor,
  temperatureFactor,
  type DilutionRow,
  type TemperatureRow,
} from "../../src/index.js";
import { dilutionSeries } from "../reference/dilution.js";
import { timeTables } from "../reference/temperature.js";

interface Printed {
  readonly timeS: number;
}

/** ln(predicted/printed) in standard deviations of the law, from a row of it. */
type Miss<Row extends Printed> = (law: readonly Row[], from: Row, to: Row) => number;

const byTemperature: Miss<TemperatureRow> = (rows, from, to) => {
  const law = { kind: "table", rows } as const;
  return (
    Math.log((from.timeS * temperatureFactor(from.temperatureC, to.temperatureC, law)) / to.timeS) /
    effect("temperature", from.temperatureC, to.temperatureC, law).logSd
  );
};
const byDilution: Miss<DilutionRow> = (rows, from, to) => {
  const law = { kind: "table", rows } as const;
  return (
    Math.log((from.timeS * dilutionFactor(from.dilution, to.dilution, law)) / to.timeS) /
    effect("dilution", from.dilution, to.dilution, law).logSd
  );
};

/** Each stretch of two or more rows, asked from its end for every row beyond it. */
function beyond<Row extends Printed>(table: readonly Row[], miss: Miss<Row>): number[] {
  const misses: number[] = [];
  for (let first = 0; first < table.length; first += 1)
    for (let end = first + 2; end <= table.length; end += 1)
      table.forEach((row, i) => {
        if (i < first) misses.push(miss(table.slice(first, end), table[first]!, row));
        if (i >= end) misses.push(miss(table.slice(first, end), table[end - 1]!, row));
      });
  return misses;
}

/** Each inner row, left out and asked for from either neighbour. */
function between<Row extends Printed>(table: readonly Row[], miss: Miss<Row>): number[] {
  return table.slice(1, -1).flatMap((row, i) => {
    const others = table.filter((each) => each !== row);
    return [table[i]!, table[i + 2]!].map((from) => miss(others, from, row));
  });
}

const inside = (misses: readonly number[]): readonly [inside: number, all: number] => [
  misses.filter((miss) => Math.abs(miss) < 1.6448536269514722).length,
  misses.length,
];

const temperatures = timeTables.map(({ rows, unit }) =>
  rows.map(({ temperature, minutes }) => ({
    temperatureC: unit === "F" ? (temperature - 32) / 1.8 : temperature,
    timeS: 60 * minutes,
  })),
);
const dilutions = dilutionSeries.map(({ rows }) =>
  rows.map(({ dilution, minutes }) => ({ dilution, timeS: 60 * minutes })),
);

describe("a part of a published table as the law", () => {
  it("holds the printed temperatures beyond it, and all between its rows", () => {
    // Along the last two rows it was 240, by intervals half as wide again: the errors were, too.
    expect(inside(temperatures.flatMap((table) => beyond(table, byTemperature)))).toEqual([236, 276]);
    expect(inside(temperatures.flatMap((table) => between(table, byTemperature)))).toEqual([78, 78]);
  });
  it("holds fewer of the dilutions beyond it, since two of the tables follow no power", () => {
    expect(inside(dilutions.flatMap((table) => beyond(table, byDilution)))).toEqual([24, 30]);
    expect(inside(dilutions.flatMap((table) => between(table, byDilution)))).toEqual([22, 22]);
  });
});
