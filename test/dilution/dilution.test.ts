import { Decimal } from "decimal.js";
import { describe, expect, it } from "vitest";
import { fc, test } from "../property.js";
import {
  effect,
  dilutionFactor,
  fitDilutionLaw,
  formatDilution,
  genericDilutionLaw,
  handbookDilutionLaw,
  mixVolumes,
  parseDilution,
  planProcess,
  stockCautions,
  type DilutionLaw,
  compensate,
} from "../../src/index.js";
import { basisOf } from "../../src/core/term.js";
import { anyOf } from "../helpers.js";

const parts = fc.record({
  stockParts: fc.oneof(fc.constantFrom(1, 0.5, 1000), fc.integer({ min: 1, max: 50 })),
  waterParts: fc.oneof(fc.constantFrom(0, 1, 9, 1000), fc.double({ min: 0, max: 1000, noNaN: true })),
});

describe("parseDilution", () => {
  it.each([
    ["1+9", { stockParts: 1, waterParts: 9 }],
    [" 1 + 9 ", { stockParts: 1, waterParts: 9 }],
    ["1+0", { stockParts: 1, waterParts: 0 }],
    ["stock", { stockParts: 1, waterParts: 0 }],
    [" Stock ", { stockParts: 1, waterParts: 0 }],
    ["undiluted", { stockParts: 1, waterParts: 0 }],
    // As German answers write it.
    ["Stammlösung", { stockParts: 1, waterParts: 0 }],
    ["STAMM", { stockParts: 1, waterParts: 0 }],
    ["unverdünnt", { stockParts: 1, waterParts: 0 }],
    ["0.5+10.25", { stockParts: 0.5, waterParts: 10.25 }],
    ["1+1000", { stockParts: 1, waterParts: 1000 }],
    ["1+9,5", { stockParts: 1, waterParts: 9.5 }],
    ["0,125 + 1", { stockParts: 0.125, waterParts: 1 }],
    ["2,5+1,5+7", { stockParts: 4, waterParts: 7, stocks: [2.5, 1.5] }],
    ["2+1+7", { stockParts: 3, waterParts: 7, stocks: [2, 1] }],
    ["1+1+1+35", { stockParts: 3, waterParts: 35, stocks: [1, 1, 1] }],
  ])("reads %j", (text, dilution) => {
    expect(parseDilution(text)).toStrictEqual(dilution);
  });
  it("reads a colon only as it is told", () => {
    expect(parseDilution("1:9", { colon: "plus" })).toStrictEqual({ stockParts: 1, waterParts: 9 });
    expect(parseDilution(" 1 : 9 ", { colon: "total" })).toStrictEqual({ stockParts: 1, waterParts: 8 });
    expect(parseDilution("1:1", { colon: "total" })).toStrictEqual({ stockParts: 1, waterParts: 0 });
    expect(parseDilution("1+9", { colon: "total" })).toStrictEqual({ stockParts: 1, waterParts: 9 });
    expect(parseDilution("1.25:9.375", { colon: "plus" })).toStrictEqual({
      stockParts: 1.25,
      waterParts: 9.375,
    });
    expect(() => parseDilution("1:9")).toThrow(
      new RangeError(
        'parseDilution: text must be "1+9" (1 part and 9 of water) or "1+8" (1 part of 9 in all), got "1:9"',
      ),
    );
    expect(() => parseDilution("9:1")).toThrow(
      new RangeError('parseDilution: text must be "9+1" (9 parts and 1 of water), got "9:1"'),
    );
    expect(() => parseDilution("1:1")).toThrow(
      new RangeError(
        'parseDilution: text must be "1+1" (1 part and 1 of water) or "1+0" (1 part of 1 in all), got "1:1"',
      ),
    );
    expect(() => parseDilution("3:1", { colon: "total" })).toThrow(
      new RangeError("parseDilution: text.waterParts must be from 0 to 300000, got -2"),
    );
    expect(() => parseDilution("1+9", anyOf({ colon: "minus" }))).toThrow(
      new RangeError('parseDilution: options.colon must be "plus" or "total", got "minus"'),
    );
    expect(() => parseDilution("1+9", anyOf(3))).toThrow(
      new TypeError("parseDilution: options must be an object, got 3"),
    );
  });
  it.each([
    ["1:9", ["1+9", "1+8"]],
    ["1 to 9", ["1+9", "1+8"]],
    ["1 in 10", ["1+10", "1+9"]],
    ["1/10", ["1+10", "1+9"]],
    ["1 zu 9", ["1+9", "1+8"]],
    ["1/2,5", ["1+2.5", "1+1.5"]],
    ["9/1", ["9+1"]],
  ])("says both meanings of %j", (text, readings) => {
    expect(() => parseDilution(text)).toThrow(
      expect.objectContaining({
        code: "ambiguous",
        actual: text,
        expected: expect.objectContaining({ readings }),
      }),
    );
    for (const reading of readings)
      expect(parseDilution(reading).stockParts).toBe(readings.length > 1 ? 1 : 9);
  });
  it("reads a colon as told, and nothing else so", () => {
    expect(() => parseDilution("1 in 10", { colon: "plus" })).toThrow(
      expect.objectContaining({ code: "ambiguous" }),
    );
  });
  it("adds up and takes away as on paper", () => {
    // In doubles 1.7000000000000002, 0.30000000000000004 and 2.1999999999999997.
    expect(parseDilution("1:2.7", { colon: "total" })).toStrictEqual({ stockParts: 1, waterParts: 1.7 });
    expect(formatDilution(parseDilution("1.1:3.3", { colon: "total" }))).toBe("1.1+2.2");
    expect(parseDilution("0.1+0.2+9.7")).toStrictEqual({
      stockParts: 0.3,
      waterParts: 9.7,
      stocks: [0.1, 0.2],
    });
    expect(mixVolumes(parseDilution("0.1+0.2+9.7"), 100)).toStrictEqual({
      stockMl: 3,
      waterMl: 97,
      stocksMl: [1, 2],
    });
    // Nor does the sum of a dilution that was added up elsewhere matter: a plan reads its own text.
    expect(mixVolumes({ stockParts: 0.1 + 0.2, waterParts: 9.7, stocks: [0.1, 0.2] }, 100)).toStrictEqual({
      stockMl: 3,
      waterMl: 97,
      stocksMl: [1, 2],
    });
    expect(
      planProcess({ vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 100, dilution: "0.1+0.2+9.7" })
        .materials[0],
    ).toMatchObject({ stockMl: 3, waterMl: 97 });
  });
  it.each([
    "",
    "9",
    "1+",
    "+9",
    "1-9",
    "one+nine",
    "1+9x",
    "x1+9",
    "1,234+9",
    "1++9",
    "1+9:3",
    "3:4x",
    "x3:4",
    "-1+9",
    "stocks",
  ])("refuses %j", (text) => {
    expect(() => parseDilution(text)).toThrow(
      new RangeError(
        `parseDilution: text must be a dilution such as "1+9" or "stock", got ${JSON.stringify(text)}`,
      ),
    );
  });
  it("refuses no stock, far too much water, and other kinds", () => {
    expect(() => parseDilution("0+9")).toThrow(
      new RangeError("parseDilution: text.stockParts must be above 0 and at most 100000, got 0"),
    );
    expect(() => parseDilution("1+100001")).toThrow(
      new RangeError("parseDilution: text.waterParts must be from 0 to 100000, got 100001"),
    );
    expect(() => parseDilution("2+0+7")).toThrow(
      new RangeError("parseDilution: text.stocks[1] must be above 0 and at most 100000, got 0"),
    );
    expect(() => parseDilution(anyOf(9))).toThrow(
      new TypeError('parseDilution: text must be a dilution such as "1+9" or "stock", got 9'),
    );
  });
  it.each([
    ["1:9", ["1+9", "1+8"]],
    ["1:2,7", ["1+2.7", "1+1.7"]],
    ["9:1", ["9+1"]],
  ])("says what %s may mean", (text, readings) => {
    expect(() => parseDilution(text)).toThrow(
      expect.objectContaining({
        code: "ambiguous",
        path: "/text",
        expected: { must: "parts-or-total", format: "dilution", examples: ["1+9", "stock"], readings },
        actual: text,
      }),
    );
  });
});

describe("formatDilution", () => {
  it("writes several stocks, and undiluted as stock", () => {
    expect(formatDilution({ stockParts: 3, waterParts: 7, stocks: [2, 1] })).toBe("2+1+7");
    expect(formatDilution({ stockParts: 3, waterParts: 0, stocks: [2, 1] })).toBe("2+1+0");
    expect(formatDilution({ stockParts: 5, waterParts: 0 })).toBe("stock");
  });
  it("writes text anew, and no number with an exponent", () => {
    expect(formatDilution(" 1 + 9,5 ")).toBe("1+9.5");
    expect(formatDilution({ stockParts: 1, waterParts: 2.5e-7 })).toBe("1+0.00000025");
  });
  it("refuses values out of range, by code and path", () => {
    expect(() => formatDilution(anyOf(9))).toThrow(
      expect.objectContaining({ code: "wrong-type", path: "/dilution" }),
    );
    expect(() => formatDilution("1:9")).toThrow(
      expect.objectContaining({ code: "ambiguous", path: "/dilution" }),
    );
    expect(() => formatDilution({ stockParts: NaN, waterParts: 1 })).toThrow(
      new RangeError("formatDilution: dilution.stockParts must be above 0 and at most 100000, got NaN"),
    );
    expect(() => formatDilution({ stockParts: 3, waterParts: 7, stocks: [2, 2] })).toThrow(
      new RangeError("formatDilution: dilution.stockParts must be 4, got 3"),
    );
    expect(() => formatDilution({ stockParts: 3, waterParts: 7, stocks: [] })).toThrow(
      new RangeError("formatDilution: dilution.stocks must hold at least 1, got 0"),
    );
    expect(formatDilution({ stockParts: 0.3, waterParts: 7, stocks: [0.1, 0.2] })).toBe("0.1+0.2+7");
  });
});

describe("mixVolumes", () => {
  it("gives the volumes of a worked example", () => {
    // Half a litre of 1+9, and of A+B+water 2+1+7: plain proportion.
    expect(mixVolumes({ stockParts: 1, waterParts: 9 }, 500)).toStrictEqual({ stockMl: 50, waterMl: 450 });
    expect(mixVolumes(parseDilution("2+1+7"), 500)).toStrictEqual({
      stockMl: 150,
      waterMl: 350,
      stocksMl: [100, 50],
    });
    expect(mixVolumes({ stockParts: 1, waterParts: 0 }, 500)).toStrictEqual({ stockMl: 500, waterMl: 0 });
  });
  test.prop([parts, fc.oneof(fc.constantFrom(0.001, 1e6), fc.double({ min: 0.001, max: 1e6, noNaN: true }))])(
    "sums to the total in decimals, and within 1e-9 ml as doubles",
    (dilution, totalMl) => {
      const { stockMl, waterMl } = mixVolumes(dilution, totalMl);
      expect(Math.abs(stockMl + waterMl - totalMl)).toBeLessThanOrEqual(1e-9);
      const share = new Decimal(dilution.stockParts).div(
        new Decimal(dilution.stockParts).plus(dilution.waterParts),
      );
      expect(Math.abs(stockMl - share.times(totalMl).toNumber())).toBeLessThanOrEqual(1e-9);
    },
  );
  it("refuses values out of range, by message", () => {
    expect(() => mixVolumes({ stockParts: 1, waterParts: 9 }, 0)).toThrow(
      new RangeError("mixVolumes: totalMl must be above 0 and at most 1000000 ml, got 0"),
    );
    expect(() => mixVolumes(anyOf(null), 500)).toThrow(
      new TypeError("mixVolumes: dilution must be an object, got null"),
    );
  });

  it("stock without water leaves no water, and not less", () => {
    expect(mixVolumes({ stockParts: 1 / 7, waterParts: 0 }, 23 / 3).waterMl).toBe(0);
  });
});

describe("dilutionFactor", () => {
  it("follows the power of the concentration", () => {
    // 1+1 to 1+3 halves the concentration: 2^n.
    expect(dilutionFactor("1+1", "1+3", { kind: "power", exponent: 0.5 })).toBeCloseTo(Math.SQRT2, 12);
    expect(
      dilutionFactor("stock", { stockParts: 1, waterParts: 9 }, { kind: "power", exponent: 1 }),
    ).toBeCloseTo(10, 12);
    expect(dilutionFactor("1+1", "1+3")).toBeCloseTo(2 ** 0.75, 12);
  });
  it("gives a table's own ratios to the last bit", () => {
    const own: DilutionLaw = {
      kind: "table",
      rows: [
        { dilution: "1+4", timeS: 330 },
        { dilution: "1+7", timeS: 600 },
        { dilution: "1+9", timeS: 690 },
      ],
    };
    expect(dilutionFactor("1+4", "1+7", own)).toBe(600 / 330);
    expect(dilutionFactor("2+14", "1+9", own)).toBe(690 / 600);
    expect(dilutionFactor("1+9", "1+4", own)).toBe(330 / 690);
    // Half-way between rows in ln c it lies between them.
    expect(dilutionFactor("1+4", "1+5.5", own)).toBeGreaterThan(1);
    expect(dilutionFactor("1+4", "1+5.5", own)).toBeLessThan(600 / 330);
    // Outside, the slope of the nearest interval goes on.
    const n = Math.log(690 / 600) / Math.log(10 / 8);
    expect(dilutionFactor("1+9", "1+19", own)).toBeCloseTo(2 ** n, 10);
    const steep = Math.log(600 / 330) / Math.log(8 / 5);
    expect(dilutionFactor("1+4", "1+1", own)).toBeCloseTo((2 / 5) ** steep, 10);
  });
  it("refuses values out of range, by message", () => {
    const rows = (...pairs: [string, number][]): DilutionLaw => ({
      kind: "table",
      rows: pairs.map(([text, timeS]) => ({ dilution: text, timeS })),
    });
    const f = (law2: unknown) => () => dilutionFactor("1+1", "1+3", anyOf(law2));
    expect(f({ kind: "power", exponent: 3.1 })).toThrow(
      new RangeError("dilutionFactor: law.exponent must be from 0 to 3, got 3.1"),
    );
    expect(f({ kind: "power", exponent: 1, sd: -1 })).toThrow(
      new RangeError("dilutionFactor: law.sd must be from 0 to 3, got -1"),
    );
    expect(f({ kind: "power", exponent: 1, scatterLogSd: 4 })).toThrow(
      new RangeError("dilutionFactor: law.scatterLogSd must be from 0 to 3, got 4"),
    );
    expect(f({ kind: "curve" })).toThrow(
      new RangeError('dilutionFactor: law.kind must be "power" or "table", got "curve"'),
    );
    expect(f(7)).toThrow(new TypeError("dilutionFactor: law must be an object, got 7"));
    expect(f(rows(["1+1", 300]))).toThrow(
      new RangeError("dilutionFactor: law.rows must hold at least 2, got 1"),
    );
    expect(f(rows(["1+1", 300], ["2+2", 400]))).toThrow(
      new RangeError(
        'dilutionFactor: law.rows must be different in dilution, no faster when weaker, nor slower by more than concentration^-5, not 300 s at "1+1" and 400 s at "2+2"',
      ),
    );
    expect(f(rows(["1+1", 300], ["1+3", 200]))).toThrow(
      new RangeError(
        'dilutionFactor: law.rows must be different in dilution, no faster when weaker, nor slower by more than concentration^-5, not 300 s at "1+1" and 200 s at "1+3"',
      ),
    );
    expect(f(rows(["1+1", 1], ["1+1.1", 300]))).toThrow(
      new RangeError(
        'dilutionFactor: law.rows must be different in dilution, no faster when weaker, nor slower by more than concentration^-5, not 1 s at "1+1" and 300 s at "1+1.1"',
      ),
    );
    expect(f(rows(["1:1", 1], ["1+1.1", 300]))).toThrow(
      'dilutionFactor: law.rows[0].dilution must be "1+1" (1 part and 1 of water) or "1+0" (1 part of 1 in all), got "1:1"',
    );
    expect(f(rows(["1+1", 0], ["1+2", 300]))).toThrow(
      new RangeError("dilutionFactor: law.rows[0].timeS must be above 0 and at most 10000000 s, got 0"),
    );
    expect(f({ kind: "table", rows: [1, 2] })).toThrow(
      new TypeError("dilutionFactor: law.rows[0] must be an object, got 1"),
    );
    expect(f({ kind: "table" })).toThrow(new TypeError("dilutionFactor: law.rows is missing: an array"));
    expect(() => dilutionFactor(anyOf(9), "1+1")).toThrow(
      new TypeError('dilutionFactor: from must be a dilution such as "1+9" or "stock", got 9'),
    );
    expect(() => dilutionFactor("1+1", anyOf(null))).toThrow(
      new TypeError("dilutionFactor: to must be an object, got null"),
    );
  });
});

describe("dilutionLogSd", () => {
  it("grows with the step in ln c", () => {
    // The exponent's spread by the step, and the departure from a power by its root.
    const beside = 0.19 * Math.sqrt(Math.LN2);
    const generic = Math.hypot(0.25 * Math.LN2, beside);
    expect(effect("dilution", "1+1", "1+3", genericDilutionLaw).logSd).toBeCloseTo(generic, 12);
    expect(effect("dilution", "1+3", "1+1", genericDilutionLaw).logSd).toBeCloseTo(generic, 12);
    expect(effect("dilution", "1+1", "1+3", { kind: "power", exponent: 1 }).logSd).toBeCloseTo(
      Math.hypot(0.15 * Math.LN2, beside),
      12,
    );
    expect(effect("dilution", "1+1", "2+2", genericDilutionLaw).logSd).toBe(0);
    const scattered: DilutionLaw = { kind: "power", exponent: 1, sd: 0, scatterLogSd: 0.1, runs: 9 };
    // Without own runs an exponent is known to 0.03 at best.
    expect(effect("dilution", "1+1", "1+3", { ...scattered, runs: undefined }).logSd).toBeCloseTo(
      Math.hypot(0.03 * Math.LN2, 0.1),
      12,
    );
    expect(effect("dilution", "1+1", "1+3", scattered).logSd).toBeCloseTo(0.1, 12);
    expect(effect("dilution", "1+1", "1+7", scattered).logSd).toBeCloseTo(0.1, 12);
    expect(effect("dilution", "1+1", "1+1.5", scattered).logSd).toBeCloseTo(
      (0.1 * Math.log(1.25)) / Math.LN2,
      12,
    );
  });
  it("is the rounding of the rows inside a table, and wider outside", () => {
    const law: DilutionLaw = {
      kind: "table",
      rows: [
        { dilution: "1+4", timeS: 330 },
        { dilution: "1+9", timeS: 690 },
      ],
    };
    // The two rows lie ln 2 apart; what lies between a place and its nearest row has the ± 0.25 and
    // the departure from a power of the generic law.
    const rounding = 0.025 * Math.SQRT2;
    // The slope of the whole table is known to ± 0.1.
    const away = (way: number): number =>
      Math.hypot(
        (rounding * (Math.LN2 + way)) / Math.LN2,
        0.25 * way,
        0.19 * Math.sqrt(way),
        0.1 * (Math.LN2 + way),
      );
    const near = (step: number): number =>
      Math.hypot((rounding * step) / Math.LN2, 0.25 * step, 0.19 * Math.sqrt(step), 0.1 * step);
    expect(effect("dilution", "1+4", "1+9", law).logSd).toBeCloseTo(Math.hypot(rounding, 0.1 * Math.LN2), 12);
    expect(effect("dilution", "1+5", "1+6", law).logSd).toBeCloseTo(near(Math.log(7 / 6)), 12);
    expect(effect("dilution", "1+9", "1+9.001", law).logSd).toBeLessThan(0.002);
    expect(effect("dilution", "1+4", "1+6", law).logSd).toBeCloseTo(near(Math.log(7 / 5)), 12);
    expect(effect("dilution", "1+4", "1+19", law).logSd).toBeCloseTo(away(Math.LN2), 12);
    expect(effect("dilution", "1+9", "1+1", law).logSd).toBeCloseTo(away(Math.log(2.5)), 12);
  });
  it("names itself in its errors", () => {
    expect(() => effect("dilution", "1:1", "1+1", genericDilutionLaw).logSd).toThrow(
      'effect: from must be "1+1" (1 part and 1 of water) or "1+0" (1 part of 1 in all), got "1:1"',
    );
    expect(() => effect("dilution", "1+1", "1:1", genericDilutionLaw).logSd).toThrow(
      'effect: to must be "1+1" (1 part and 1 of water) or "1+0" (1 part of 1 in all), got "1:1"',
    );
    expect(() => effect("dilution", "1+1", "1+1", anyOf(1)).logSd).toThrow(
      "effect: law must be an object, got 1",
    );
  });
});

/** The inverse of a small matrix, by elimination. */
function inverted(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < n; i += 1) {
    const pivot = rows[i]![i]!;
    rows[i] = rows[i]!.map((value) => value / pivot);
    for (let k = 0; k < n; k += 1)
      if (k !== i) {
        const share = rows[k]![i]!;
        rows[k] = rows[k]!.map((value, j) => value - share * rows[i]![j]!);
      }
  }
  return rows.map((row) => row.slice(n));
}

describe("fitDilutionLaw", () => {
  const row = (text: string, c: number) => ({ dilution: text, timeS: 100 * c ** -0.7 });
  const known = 0.25 ** -2;
  it("lets two rows say as much as two rounded times and a departure from a power allow", () => {
    const rows = [
      { dilution: "1+1", timeS: 300 },
      { dilution: "1+3", timeS: 450 },
    ];
    const fit = fitDilutionLaw(rows);
    // ln of the ratio is n·ln 2, give or take two roundings and a walk over ln 2.
    const tells = Math.LN2 ** 2 / (2 * 0.025 ** 2 + 0.19 ** 2 * Math.LN2);
    const slope = Math.log(1.5) / Math.LN2;
    expect(fit.law.exponent).toBeCloseTo((known * 0.75 + tells * slope) / (known + tells), 12);
    expect(fit.law.sd).toBeCloseTo((known + tells) ** -0.5, 12);
    expect("residualLogSd" in fit).toBe(false);
    expect(fitDilutionLaw(rows.slice().reverse())).toEqual(fit);
  });
  it("weighs many rows as generalised least squares do, with the covariance of a walk", () => {
    const rows = [row("1+3", 0.25), row("stock", 1.1), row("1+1", 0.5), row("1+9", 0.1)];
    const { law, residualLogSd, rows: n } = fitDilutionLaw(rows);
    // By hand, apart from this package: inverse of K = 0.025² I + 0.19² min(x, x'), x = ln(1, 2, 4, 10).
    const x = [1, 2, 4, 10].map(Math.log);
    const y = ["stock", "1+1", "1+3", "1+9"].map((text) =>
      Math.log(rows.find(({ dilution }) => dilution === text)!.timeS),
    );
    const inverse = inverted(
      x.map((a, i) => x.map((b, j) => 0.19 ** 2 * Math.min(a, b) + (i === j ? 0.025 ** 2 : 0))),
    );
    const product = (a: readonly number[], b: readonly number[]): number =>
      a.reduce(
        (sum, one, i) => sum + one * b.reduce((part, other, j) => part + inverse[i]![j]! * other, 0),
        0,
      );
    const ones = x.map(() => 1);
    const tells = product(x, x) - product(x, ones) ** 2 / product(ones, ones);
    const moved = product(x, y) - (product(x, ones) * product(y, ones)) / product(ones, ones);
    expect(law.exponent).toBeCloseTo((known * 0.75 + moved) / (known + tells), 10);
    expect(law.sd).toBeCloseTo((known + tells) ** -0.5, 10);
    expect(residualLogSd).toBeGreaterThan(0.01);
    expect(n).toBe(4);
  });
  it("takes the class of the developer as its prior, where rows near each other say little", () => {
    const rows = [
      { dilution: "1+9", timeS: 600 },
      { dilution: "1+10", timeS: 640 },
    ];
    const exponent = (prior: DilutionLaw): number => fitDilutionLaw(rows, { prior }).law.exponent;
    expect(exponent(handbookDilutionLaw("pyro"))).toBeGreaterThan(1);
    expect(exponent(handbookDilutionLaw("solvent-stock"))).toBeLessThan(0.7);
    // A prior without a spread has 0.15, and a spread below 0.03 is taken as 0.03.
    expect(exponent({ kind: "power", exponent: 1 })).toBe(exponent({ kind: "power", exponent: 1, sd: 0.15 }));
    expect(exponent({ kind: "power", exponent: 1, sd: 0 })).toBe(
      exponent({ kind: "power", exponent: 1, sd: 0.03 }),
    );
    const table: DilutionLaw = {
      kind: "table",
      rows: [
        { dilution: "1+9", timeS: 300 },
        { dilution: "1+19", timeS: 600 },
      ],
    };
    // A table is the power that fits it, and its slope is known to 0.1 besides.
    const fitted = fitDilutionLaw(table.rows).law;
    expect(exponent(table)).toBe(exponent({ ...fitted, sd: Math.hypot(fitted.sd, 0.1) }));
    expect(exponent({ ...table, exponentOff: -0.3, sd: 0 })).toBe(
      exponent({ ...fitted, exponent: fitted.exponent - 0.3 }),
    );
    expect(fitDilutionLaw(rows, { prior: undefined })).toEqual(fitDilutionLaw(rows));
  });
  it("believes a printed step that is finer", () => {
    const rows = (stepS: number) => [
      { dilution: "1+1", timeS: 300, stepS },
      { dilution: "1+1.2", timeS: 330, stepS },
    ];
    expect(fitDilutionLaw(rows(1)).law.exponent).toBeGreaterThan(fitDilutionLaw(rows(30)).law.exponent);
  });
  it("does not take level times for an exponent of 0", () => {
    const rows = ["1+1", "1+3", "1+7"].map((dilution) => ({ dilution, timeS: 300 }));
    const { law } = fitDilutionLaw(rows);
    expect(law.exponent).toBeGreaterThan(0.1);
    expect(law.exponent).toBeLessThan(0.3);
    expect(law.sd).toBeGreaterThan(0.1);
  });
  it("says little of two rows a per cent apart, and does not refuse them", () => {
    const { law } = fitDilutionLaw([
      { dilution: "1+1", timeS: 300 },
      { dilution: "1+1.01", timeS: 300 },
    ]);
    expect(law.exponent).toBeCloseTo(0.75, 2);
    expect(law.sd).toBeCloseTo(0.25, 2);
  });
  it("refuses values out of range, by message", () => {
    expect(() => fitDilutionLaw([{ dilution: "1+1", timeS: 300 }])).toThrow(
      new RangeError("fitDilutionLaw: rows must hold at least 2, got 1"),
    );
    const steep = ["1+1", "1+3", "1+7", "1+15", "1+31"].map((dilution, i) => ({
      dilution,
      timeS: 3 * 24 ** i,
    }));
    expect(() => fitDilutionLaw(steep)).toThrow(
      /^fitDilutionLaw: rows must be such that the exponent is at most 3, got 3\.\d+$/,
    );
    expect(() => fitDilutionLaw(steep, anyOf("pyro"))).toThrow(
      new TypeError('fitDilutionLaw: options must be an object, got "pyro"'),
    );
    expect(() => fitDilutionLaw(steep, { prior: anyOf({ kind: "line" }) })).toThrow(RangeError);
  });
});

describe("handbookDilutionLaw", () => {
  it("carries spread and source for every family", () => {
    for (const family of [
      "solvent-stock",
      "concentrate",
      "p-aminophenol",
      "pyro",
      "glycin",
      "ascorbate-stock",
    ] as const) {
      const law = handbookDilutionLaw(family);
      expect(law.kind).toBe("power");
      expect(law.sd).toBeGreaterThan(0.1);
      expect(law.published).toBe(law.seen === "read" ? true : undefined);
      expect(law.sources?.join("").length).toBeGreaterThan(20);
    }
    expect(() => handbookDilutionLaw(anyOf("syrup"))).toThrow(
      new RangeError(
        'handbookDilutionLaw: family must be "solvent-stock", "concentrate", "p-aminophenol", "pyro", "glycin" or "ascorbate-stock", ' +
          'got "syrup"',
      ),
    );
    expect(() => handbookDilutionLaw(anyOf(1))).toThrow(
      new TypeError("handbookDilutionLaw: family must be text, got 1"),
    );
  });

  it("says that it is one, also where its figures were not seen in print", () => {
    expect(basisOf(handbookDilutionLaw("glycin"))).toBe("handbook");
    expect(basisOf(handbookDilutionLaw("solvent-stock"))).toBe("handbook");
  });
});

describe("stockCautions", () => {
  it("warns below the least amount, and not at it", () => {
    // 10 ml a roll is the maker's older figure for p-aminophenol concentrate (common practice): 1+24 in 250
    // ml holds just that.
    const bath = { dilution: "1+24", totalMl: 250, areaCm2: 516.128, family: "p-aminophenol" } as const;
    expect(stockCautions(bath)).toStrictEqual([]);
    expect(stockCautions({ ...bath, dilution: "1+49" })).toStrictEqual(
      [
        {
          code: "too-little-stock",
          severity: "warn",
          message:
            "The bath holds 5.0 ml of stock. The least for this area is 10.0 ml. Use more bath or dilute less.",
          path: "/totalMl",
          quantity: "volumeMl",
          limit: 10,
          actual: 250 / 50,
          data: { mlPerRoll: 10, basis: "family", family: "p-aminophenol" },
        },
      ].map((caution) => ({ ...caution, actual: expect.closeTo(5, 12) })),
    );
    expect(stockCautions({ ...bath, dilution: "1+49", leastMlPerRoll: 5 })).toStrictEqual([]);
    expect(
      stockCautions({ dilution: "1+49", totalMl: 250, areaCm2: 1032.256, leastMlPerRoll: 5 }),
    ).toHaveLength(1);
  });
  it("takes the least of all families where none is named: 6 ml a roll", () => {
    const bath = { dilution: "1+49", totalMl: 300, areaCm2: 516.128 };
    expect(stockCautions(bath)).toStrictEqual([]);
    expect(stockCautions({ ...bath, totalMl: 285 })).toMatchObject([
      { code: "too-little-stock", severity: "warn", limit: 6, data: { mlPerRoll: 6, basis: "any" } },
    ]);
  });
  it("is silent inside the rounding of its figures, and stops at several times too little", () => {
    const severity = (totalMl: number): string | undefined =>
      stockCautions({ dilution: "1+49", totalMl, areaCm2: 516.128 })[0]?.severity;
    // 6 ml a roll, good to a factor of 2 (assumed): 5 % of rounding, and 2^1.645 = 3.13 at the end of 90 %.
    expect([286, 285, 96, 95].map(severity)).toEqual([undefined, "warn", "warn", "stop"]);
  });
  it("refuses values out of range, by message", () => {
    const bath = { dilution: "1+24", totalMl: 250, areaCm2: 516.128 };
    expect(() => stockCautions({ ...bath, family: anyOf("pyro") })).toThrow(
      new RangeError(
        "stockCautions: question.family must be one of ascorbate-stock, solvent-stock, concentrate, p-aminophenol, unless leastMlPerRoll is given, " +
          'got "pyro"',
      ),
    );
    expect(() => stockCautions({ ...bath, leastMlPerRoll: 0 })).toThrow(
      new RangeError("stockCautions: question.leastMlPerRoll must be above 0 and at most 100000 ml, got 0"),
    );
    expect(() => stockCautions({ ...bath, totalMl: -1, leastMlPerRoll: 5 })).toThrow(
      new RangeError("stockCautions: question.totalMl must be above 0 and at most 1000000 ml, got -1"),
    );
    expect(() => stockCautions({ ...bath, areaCm2: 0, leastMlPerRoll: 5 })).toThrow(
      new RangeError("stockCautions: question.areaCm2 must be above 0 and at most 1000000 cm², got 0"),
    );
    expect(() => stockCautions({ ...bath, dilution: "1:24", leastMlPerRoll: 5 })).toThrow(
      'stockCautions: question.dilution must be "1+24" (1 part and 24 of water) or "1+23" (1 part of 24 in all), got "1:24"',
    );
    expect(() => stockCautions(anyOf(null))).toThrow(
      new TypeError("stockCautions: question must be an object, got null"),
    );
  });
});

describe("the stocks of a mixture", () => {
  it("must sum to the stock to a part in a thousand million, however small the parts", () => {
    // 0.00500005 + 0.005 is 5 parts in a million above 0.01.
    expect(() =>
      mixVolumes({ stockParts: 0.01, waterParts: 0.09, stocks: [0.00500005, 0.005] }, 1000),
    ).toThrow("mixVolumes: dilution.stockParts must be 0.01000005, got 0.01");
  });
});

describe("a table of dilutions", () => {
  it("may rise with the fifth power of dilution", () => {
    // Half the strength, 2^5 = 32 times the time.
    const rows = [
      { dilution: "stock", timeS: 1 },
      { dilution: "1+1", timeS: 32 },
    ];
    expect(dilutionFactor("stock", "1+1", { kind: "table", rows })).toBeCloseTo(32, 10);
  });
  it("grows less certain with both distances beyond its rows", () => {
    // Stock lies ln 2 above 1+1, 1+7 lies ln 2 below 1+3: thrice the way between the rows, whose times are
    // good to 0.025, and n is 0.25 less sure beyond them, and no power sure. The slope is sure to 0.1.
    const rows = [
      { dilution: "1+1", timeS: 300 },
      { dilution: "1+3", timeS: 600 },
    ];
    expect(effect("dilution", "stock", "1+7", { kind: "table", rows }).logSd).toBeCloseTo(
      Math.hypot(
        0.025 * Math.SQRT2 * 3,
        0.25 * 2 * Math.LN2,
        0.19 * Math.sqrt(2 * Math.LN2),
        0.1 * 3 * Math.LN2,
      ),
      12,
    );
  });
});

describe("a fitted law of dilution", () => {
  it("tells how far its rows scatter about a power", () => {
    // Residuals 0.1, −0.2, 0.1 leave a square sum of 0.06 and one degree of freedom.
    const rows = [
      { dilution: "stock", timeS: 300 * Math.exp(0.1) },
      { dilution: "1+1", timeS: 600 * Math.exp(-0.2) },
      { dilution: "1+3", timeS: 1200 * Math.exp(0.1) },
    ];
    expect(fitDilutionLaw(rows).residualLogSd).toBeCloseTo(Math.sqrt(0.06), 12);
  });
});

describe("the departures of a learned law", () => {
  // All invented: a weekend workshop in a mountain hut.
  const known = { timeS: 540, temperatureC: 20, dilution: "1+9" };
  it("are refused where they do not rise, and read again where they do", () => {
    const dilution = { kind: "power", exponent: 0.8, runs: 4 } as const;
    const at = (departures: readonly object[]) =>
      compensate(known, { dilution: "1+14" }, { dilution: { ...dilution, departures } as never });
    const start = { at: -3, log: 0, sd: 0 };
    expect(() => at([start, start])).toThrow(
      "compensate: knowledge.dilution.departures[1].at must be above the one before (-3), got -3",
    );
    const row = at([start, { at: -2, log: 0.1, sd: 0.05 }]).factors;
    expect(row[2]!.cause).toBe("dilution");
    expect(row[2]!.value).not.toBeCloseTo(at([]).factors[2]!.value, 6);
  });
});
