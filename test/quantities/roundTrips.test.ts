/*
 * What is written is read back: one row for each pair of functions, over every value that is allowed. A text that was
 * read is written as it was, to the last character.
 */
import { describe, expect, it } from "vitest";
import {
  agitationFactor,
  celsiusToFahrenheit,
  checkRecipe,
  fahrenheitToCelsius,
  formatDilution,
  formatRecipe,
  formatSpread,
  formatTemperature,
  formatTime,
  parseAgitation,
  parseDilution,
  parseSpread,
  parseTemperature,
  parseTime,
  type Dilution,
  type Recipe,
} from "../../src/index.js";
import { fc, real } from "../property.js";
import { recipes } from "../recipe/documents.js";

/** One pair: every value that is allowed, both ways, and how near what is read has to be. */
interface Row<Value, Text> {
  readonly pair: string;
  readonly values: fc.Arbitrary<Value>;
  readonly write: (value: Value) => Text;
  readonly read: (text: Text) => Value;
  readonly near: (read: Value, value: Value) => void;
}
const row = <Value, Text>(one: Row<Value, Text>): Row<any, any> => one;
const by =
  (most: number) =>
  (read: number, value: number): void => {
    expect(Math.abs(read - value)).toBeLessThanOrEqual(most);
  };
const exact = (read: unknown, value: unknown): void => {
  expect(read).toEqual(value);
};

/** Every dilution that is allowed: from 1e-30 parts of stock, with any water up to 100,000 times as much. */
const dilutions: fc.Arbitrary<Dilution> = fc
  .record({
    stocks: fc.array(fc.oneof(real(1e-30, 3e4), fc.constantFrom(1e-30, 1e-7, 0.1, 1, 9)), {
      minLength: 1,
      maxLength: 3,
    }),
    share: fc.oneof(fc.constantFrom(0, 1), real(0, 1)),
    listed: fc.boolean(),
    off: real(-9e-10, 9e-10),
  })
  .map(({ stocks, share, listed, off }) => {
    const sum = stocks.reduce((total, part) => total + part, 0);
    const waterParts = 1e5 * sum * share;
    return listed
      ? { stockParts: Math.max(1e-30, sum * (1 + off)), waterParts, stocks }
      : { stockParts: sum, waterParts };
  });

function sameDilution(read: Dilution, { stockParts, waterParts, stocks = [stockParts] }: Dilution): void {
  // "stock" says no parts: it is read as one.
  if (stocks.length === 1 && waterParts === 0) {
    expect(read).toEqual({ stockParts: 1, waterParts: 0 });
    return;
  }
  expect(read.stocks ?? [read.stockParts]).toEqual(stocks);
  expect(read.waterParts).toBe(waterParts);
  // Several stocks must sum to the stock to a billionth; the text has the stocks.
  expect(Math.abs(read.stockParts - stockParts)).toBeLessThanOrEqual(2e-9 * stockParts);
}

const checkedRecipes = recipes.map((one) => checkRecipe(one)).filter(({ ok }) => ok);
const recipeIn = (input: unknown): Recipe => {
  const check = checkRecipe(input);
  if (!check.ok) throw new Error(check.problems[0]!.message);
  return check.recipe;
};
const share = (logSd: number): number => Math.expm1(1.6448536269514722 * logSd);

const table: readonly Row<any, any>[] = [
  row({
    pair: "formatTime and parseTime, to half a second",
    values: real(0, 1e7),
    write: (timeS: number) => formatTime(timeS),
    read: parseTime,
    near: by(0.5),
  }),
  row({
    pair: "formatTime and parseTime, whole seconds",
    values: fc.integer({ min: 0, max: 1e7 }),
    write: (timeS: number) => formatTime(timeS),
    read: parseTime,
    near: exact,
  }),
  row({
    pair: "formatTime and parseAgitation",
    values: fc.integer({ min: 1, max: 3600 }),
    write: (everyS: number) => `every ${formatTime(everyS)}`,
    read: (text) => {
      const read = parseAgitation(text);
      return agitationFactor("continuous", read) > 1 ? (read as { everyS: number }).everyS : 0;
    },
    near: exact,
  }),
  // A tenth of a degree at absolute zero would lie below it.
  ...(["C", "F"] as const).map((unit) =>
    row({
      pair: `formatTemperature and parseTemperature, °${unit}, to half a tenth`,
      values: real(-273.1, 5500),
      write: (c: number) => formatTemperature(c, { unit }),
      read: parseTemperature,
      near: by((unit === "C" ? 0.05 : 0.05 / 1.8) + 1e-9),
    }),
  ),
  row({
    pair: "celsiusToFahrenheit and fahrenheitToCelsius",
    values: real(-273.15, 5500),
    write: (c: number) => Math.max(-459.67, celsiusToFahrenheit(c)),
    read: fahrenheitToCelsius,
    near: by(1e-9),
  }),
  // Two digits of the share: of a spread past 2.9 they may lie past the largest that is read, 3.
  row({
    pair: "formatSpread and parseSpread, to two digits or a hundredth of a percent",
    values: real(0, 2.9),
    write: formatSpread,
    read: (text) => parseSpread(text, 510),
    near: (read, logSd: number) => {
      by(Math.max(0.0501 * share(logSd), 0.501e-4))(share(read), share(logSd));
    },
  }),
  row({
    pair: "formatDilution and parseDilution",
    values: dilutions,
    write: (dilution: Dilution) => formatDilution(dilution),
    read: (text) => parseDilution(text),
    near: sameDilution,
  }),
  row({
    pair: "formatRecipe and checkRecipe",
    values: checkedRecipes.map(({ ok, ...check }) =>
      ok ? (check as { recipe: Recipe }).recipe : undefined!,
    ),
    write: formatRecipe,
    read: recipeIn,
    near: (read, recipe) => {
      expect(read).toEqual(JSON.parse(JSON.stringify(recipe)));
    },
  }),
];

describe("what is written is read back", () => {
  it.each(table.map((one) => [one.pair, one] as const))("%s", (_, { values, write, read, near }) => {
    fc.assert(
      fc.property(values, (value) => {
        const text: unknown = write(value);
        const back: unknown = read(text);
        near(back, value);
        if (typeof text === "string") expect(write(back)).toBe(text);
      }),
    );
  });
});
