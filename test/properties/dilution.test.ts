/* What must hold of every dilution and every law of dilution. */
import { fc, test, same } from "../property.js";
import { Decimal } from "decimal.js";
import { describe, expect } from "vitest";
import { dilutionFactor, fitDilutionLaw, mixVolumes, parseDilution, type Dilution } from "../../src/index.js";
import { dilution, dilutionTable, powerLaw } from "./generators.js";

const parts = (value: Dilution | string): Dilution =>
  typeof value === "string" ? parseDilution(value) : value;

describe("dilutionFactor", () => {
  test.prop([powerLaw, dilution, dilution, fc.double({ min: 1, max: 9, noNaN: true })])(
    "under a power, diluting both by the same amount changes nothing, and dilutions compose",
    (law, a, b, times) => {
      const further = ({ stockParts, waterParts }: Dilution): Dilution => ({
        stockParts,
        waterParts: (stockParts + waterParts) * times - stockParts,
      });
      fc.pre([a, b].every((bath) => further(further(bath)).waterParts <= 9e4 * bath.stockParts));
      same(dilutionFactor(further(a), further(b), law), dilutionFactor(a, b, law));
      // t ∝ c^-n, so twice `times` is `times` squared.
      const once = dilutionFactor(a, further(a), law);
      same(dilutionFactor(a, further(further(a)), law), once * once);
      same(once, times ** law.exponent);
    },
  );
});

describe("a table", () => {
  test.prop([dilutionTable])("gives the ratio of every two of its rows to the last bit", (law) => {
    for (const from of law.rows)
      for (const to of law.rows)
        expect(dilutionFactor(from.dilution, to.dilution, law)).toBe(from === to ? 1 : to.timeS / from.timeS);
  });
  test.prop([dilutionTable])("joins at its rows in value and in slope", (law) => {
    for (const { dilution: row } of law.rows) {
      const total = 1 + parts(row).waterParts;
      const logTime = (logStep: number): number =>
        Math.log(dilutionFactor(row, { stockParts: 1, waterParts: total * Math.exp(logStep) - 1 }, law));
      // Stock is the strongest: there is nothing on its other side to join.
      if (total < 1.01) continue;
      const h = 1e-5;
      const [left, right] = [-h, h].map((step) => (4 * logTime(step) - logTime(2 * step)) / (2 * step));
      expect(Math.abs(logTime(1e-9) - logTime(-1e-9))).toBeLessThan(1e-8);
      expect(Math.abs(left! - right!)).toBeLessThan(1e-4);
    }
  });
});

describe("fitDilutionLaw", () => {
  test.prop([
    // 1e-12 of exponent can round a level table to one that falls.
    fc.double({ min: 1e-6, max: 2.9, noNaN: true }),
    fc.uniqueArray(fc.integer({ min: 0, max: 100 }), { minLength: 2, maxLength: 8 }),
  ])("lies between the prior and the power that made the times", (exponent, water) => {
    const rows = water.map((waterParts) => ({
      dilution: `1+${waterParts}`,
      timeS: 2 * (1 + waterParts) ** exponent,
    }));
    const fit = fitDilutionLaw(rows);
    expect(fit.law.exponent).toBeGreaterThanOrEqual(Math.min(0.75, exponent) - 1e-9);
    expect(fit.law.exponent).toBeLessThanOrEqual(Math.max(0.75, exponent) + 1e-9);
    // Rows never make n less sure than it was, and a row more never tells less.
    expect(fit.law.sd).toBeLessThanOrEqual(0.25);
    expect(fit.law.sd).toBeLessThanOrEqual(fitDilutionLaw(rows.slice(0, 2)).law.sd + 1e-12);
    expect(fit.residualLogSd ?? 0).toBeLessThan(1e-9);
    expect(fit.rows).toBe(water.length);
  });
});

describe("volumes", () => {
  const totalMl = fc.oneof(
    fc.constantFrom(1e-3, 1, 300, 1000, 1e6),
    fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
  );
  test.prop([dilution, totalMl])(
    "sum to the total within 1e-9 ml, in the ratio of the parts",
    (bath, total) => {
      const { stockMl, waterMl } = mixVolumes(bath, total);
      expect(Math.abs(stockMl + waterMl - total)).toBeLessThanOrEqual(1e-9);
      expect(stockMl).toBeGreaterThan(0);
      expect(waterMl).toBeGreaterThanOrEqual(0);
      expect(Math.abs(waterMl * bath.stockParts - stockMl * bath.waterParts)).toBeLessThanOrEqual(
        1e-9 * (bath.stockParts + bath.waterParts),
      );
    },
  );
  test.prop([
    fc.constantFrom(
      [1, 0],
      [1, 1],
      [1, 3],
      [1, 4],
      [1, 7],
      [1, 9],
      [1, 15],
      [1, 19],
      [1, 24],
      [1, 31],
      [1, 49],
      [1, 63],
      [1, 99],
      [1, 999],
      [3, 1],
    ),
    fc.integer({ min: 1, max: 1_000_000 }).map((tenths) => tenths / 10),
  ])("sum exactly, digit by digit, where the shares end in decimals", ([stockParts, waterParts], total) => {
    const { stockMl, waterMl } = mixVolumes({ stockParts: stockParts, waterParts: waterParts }, total);
    expect(new Decimal(stockMl).plus(waterMl).equals(total)).toBe(true);
    // And they are the shares themselves: stock × parts in all = total × parts of stock.
    expect(
      new Decimal(stockMl).times(stockParts + waterParts).equals(new Decimal(total).times(stockParts)),
    ).toBe(true);
  });
  test.prop([
    fc.array(fc.integer({ min: 1, max: 20 }), { minLength: 2, maxLength: 4 }),
    fc.integer({ min: 0, max: 1000 }),
    totalMl,
  ])("of several stocks sum to the stock", (stocks, waterParts, total) => {
    const volumes = mixVolumes(parseDilution([...stocks, waterParts].join("+")), total);
    const sum = volumes.stocksMl!.reduce((all, ml) => all + ml, 0);
    expect(Math.abs(sum - volumes.stockMl)).toBeLessThanOrEqual(1e-9);
    expect(volumes.stocksMl!.length).toBe(stocks.length);
  });
});
