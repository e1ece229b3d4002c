/*
 * Coefficients, factors and limits of temperature, and the column that is no temperature
 * law.
 */
import { describe, expect, it } from "vitest";
import {
  effect,
  asArrheniusLaw,
  asCoefficientLaw,
  compensate,
  genericTemperatureLaw,
  handbookTemperatureLaw,
  temperatureCautions,
  temperatureCoefficient,
  temperatureFactor,
  type HandbookDeveloper,
  type TemperatureLaw,
  type TemperatureRow,
} from "../../../src/index.js";
import * as published from "../temperature.js";
import {
  celsius,
  ENERGIES,
  energiesWithin,
  fittedTimes,
  leastSquaresLaw,
  range,
  rowsOf,
  worstMiss,
} from "./fits.js";
import { eachRow } from "./ledger.js";

const tableOf = (id: string): published.TimeTable => published.timeTables.find((table) => table.id === id)!;
const rowsById = (id: string): readonly TemperatureRow[] => rowsOf(tableOf(id));
const geometricMean = (values: readonly number[]): number =>
  Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length);

/**
 * Whether the law fitted to one table gives the rows of another, at a level of its own, within the other's
 * rounding.
 */
function sameLaw(one: readonly TemperatureRow[], other: readonly TemperatureRow[], halfS: number): boolean {
  return worstMiss(other, fittedTimes(other, leastSquaresLaw(one))) <= halfS;
}

export function checkNegative(): void {
  describe("the x-ray column of longest times (xray-to33b-max) is no temperature law", () => {
    const table = tableOf("xray-to33b-max");
    const longest = rowsOf(table);
    const normal = rowsById("xray-to33b-normal");
    it("is the column of normal times plus three minutes at every row", () => {
      eachRow(table, (row, i) => {
        expect(row.temperature).toBe(tableOf("xray-to33b-normal").rows[i]!.temperature);
        expect(longest[i]!.timeS - normal[i]!.timeS).toBe(180);
      });
    });
    it("does not follow the law of the normal column, which genuine pairs of columns do", () => {
      // In its own rounding of 1/8 min, and even in half a minute: the law of the normal column misses by 0.6
      // min and more.
      expect(sameLaw(normal, longest, 7.5)).toBe(false);
      expect(sameLaw(normal, longest, 30)).toBe(false);
      expect(worstMiss(longest, fittedTimes(longest, leastSquaresLaw(normal))) / 60).toBeGreaterThan(0.6);
      // The same procedure lets two films in one developer through, within the tables' quarter minute.
      expect(sameLaw(rowsById("rotary-borax-film-100"), rowsById("rotary-borax-film-400"), 15)).toBe(true);
      expect(
        sameLaw(rowsById("rotary-concentrate-a-film-100"), rowsById("rotary-concentrate-a-film-400"), 15),
      ).toBe(true);
    });
    it("has an activation energy that is not the normal column's, by far more than both standard errors", () => {
      const [a, b] = [leastSquaresLaw(normal), leastSquaresLaw(longest)];
      expect(a.activationEnergyKJPerMol - b.activationEnergyKJPerMol).toBeGreaterThan(
        5 * Math.hypot(a.sdKJPerMol, b.sdKJPerMol),
      );
    });
    it("would be wrong by 20 % and more over the range, were it taken for one", () => {
      const wrong =
        temperatureFactor(17, 27, leastSquaresLaw(longest)) /
        temperatureFactor(17, 27, leastSquaresLaw(normal));
      expect(wrong).toBeGreaterThan(1.2);
    });
    it("is met within its rounding by no law", () => {
      expect(energiesWithin(longest, 7.5)).toBeUndefined();
    });
  });
}

export function checkCoefficients(): void {
  describe("printed coefficients", () => {
    it.each(published.coefficients)(
      "$id: the handbook carries it, or lies among what is printed",
      (record) => {
        const law = handbookTemperatureLaw(record.developer as HandbookDeveloper);
        eachRow(record, ({ ratio, intervalC }) => {
          const printed: TemperatureLaw = { kind: "coefficient", ratio, intervalC };
          const theirs = Math.log(temperatureCoefficient(15, 25, printed));
          const ours = Math.log(temperatureCoefficient(15, 25, law));
          // Pyro is printed with and without bromide and metol-hydroquinone twice (1.9 from memory, 2.36
          // read): the law stands between
          // or with the read one, and its own 90 % interval admits both. All others are carried as printed.
          if (record.id.startsWith("memory-tc-pyro") || record.id === "memory-tc-mq")
            expect(Math.abs(theirs - ours)).toBeLessThan(1.6449 * effect("temperature", 15, 25, law).logSd);
          else expect(theirs).toBeCloseTo(ours, 12);
        });
      },
    );
    it("Ives: 1.4 over 7 °C is no ratio over 10 °C", () => {
      const law = handbookTemperatureLaw("pyro-metol");
      // The printed factors at 13 and 27 °C, and the ratio over 10 °C worked out apart from this package.
      expect(temperatureFactor(20, 13, law)).toBeCloseTo(1.4, 12);
      expect(temperatureFactor(20, 27, law)).toBeCloseTo(0.7143, 4);
      expect(temperatureCoefficient(15, 25, law)).toBeCloseTo(1.617, 3);
      const other = handbookTemperatureLaw("chlorhydroquinone-metol");
      expect(temperatureFactor(20, 13, other)).toBeCloseTo(2, 12);
      expect(temperatureFactor(20, 27, other)).toBeCloseTo(0.5, 12);
      expect(temperatureCoefficient(15, 25, other)).toBeCloseTo(2.692, 3);
      // Read as a ratio over 10 °C, the 2 would give a time at 13 °C that is 19 % too short.
      const misread: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
      expect(temperatureFactor(20, 13, misread) / temperatureFactor(20, 13, other)).toBeCloseTo(0.812, 3);
    });
    it("Wall 1910: two times of appearance", () => {
      const rows = published.wallAppearance.rows.map(({ temperatureC, seconds }) => ({
        temperatureC,
        timeS: seconds,
      }));
      const law: TemperatureLaw = { kind: "table", rows };
      const coefficient = asCoefficientLaw(leastSquaresLaw(rows), 8, 20);
      eachRow(published.wallAppearance, ({ temperatureC, seconds }) => {
        expect(seconds / 25).toBe(temperatureFactor(20, temperatureC, law));
        expect(25 * temperatureFactor(20, temperatureC, coefficient)).toBeCloseTo(seconds, 10);
      });
      const perDegree = Math.log10(coefficient.ratio) / coefficient.intervalC;
      expect(Math.floor(perDegree * 1000) / 1000).toBe(published.wallAppearance.log10PerDegree);
      // 2.358 over 10 °C was worked out apart from this package, and is what the handbook carries.
      expect(10 ** (10 * perDegree)).toBeCloseTo(2.358, 3);
      expect(handbookTemperatureLaw("metol-hydroquinone").ratio).toBe(2.358);
    });
    it("Mees 1911: K25/K15 is a ratio of rates", () => {
      eachRow(published.meesDefinition, ({ lowC, highC }) => {
        const law: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 55 };
        expect(temperatureCoefficient(lowC, highC, law)).toBeGreaterThan(1);
        expect(temperatureCoefficient(lowC, highC, law) * temperatureFactor(lowC, highC, law)).toBeCloseTo(
          1,
          14,
        );
        expect(asCoefficientLaw(law, lowC, highC).ratio).toBe(temperatureCoefficient(lowC, highC, law));
      });
    });
    it("Ferguson and Howard 1905: k b^x has one coefficient at every temperature, Arrhenius has not", () => {
      eachRow(published.fergusonHoward, ({ intervalC }) => {
        const law: TemperatureLaw = { kind: "coefficient", ratio: 1.9, intervalC };
        const other = asArrheniusLaw(law, 15, 25);
        for (const c of [0, 10, 33, 90]) expect(temperatureCoefficient(c, c + 10, law)).toBeCloseTo(1.9, 12);
        expect(temperatureCoefficient(0, 10, other)).toBeGreaterThan(
          temperatureCoefficient(30, 40, other) + 0.2,
        );
      });
    });
    it("Sheppard and Mees: the generic law lies among reactions in a homogeneous medium", () => {
      eachRow(published.homogeneous, ({ min, max, lowC, highC }) => {
        for (let c = lowC; c + 10 <= highC; c += 5) {
          expect(temperatureCoefficient(c, c + 10, genericTemperatureLaw)).toBeGreaterThan(min);
          expect(temperatureCoefficient(c, c + 10, genericTemperatureLaw)).toBeLessThan(max);
        }
      });
    });
    it("EV-TMP-06: the ratios over 10 °C that are quoted are the generic law's central 90 %, to 15 %", () => {
      eachRow(published.quotedRange, ({ low, high }) => {
        const middle = Math.log(temperatureCoefficient(15, 25, genericTemperatureLaw));
        const spread = 1.6449 * effect("temperature", 15, 25, genericTemperatureLaw).logSd;
        expect(Math.abs(Math.exp(middle - spread) / low - 1)).toBeLessThan(0.15);
        expect(Math.abs(Math.exp(middle + spread) / high - 1)).toBeLessThan(0.15);
      });
    });
    it("EV-TMP-04: the handbook keeps the order of the agents", () => {
      eachRow(published.orderOfAgents, ({ more, less }) => {
        const of = (developer: string): number =>
          temperatureCoefficient(15, 25, handbookTemperatureLaw(developer as HandbookDeveloper));
        expect(of(more)).toBeGreaterThan(of(less));
      });
    });
    it("ten per cent for each °C lies inside the generic law's 90 % interval, five degrees either way", () => {
      eachRow(published.tenPercentRule, ({ percentPerC }) => {
        const rate = 1 + percentPerC / 100;
        for (const c of [15, 17, 19, 21, 23, 25])
          for (const rule of [rate ** (20 - c), (2 - rate) ** (c - 20)])
            expect(Math.abs(Math.log(rule / temperatureFactor(20, c, genericTemperatureLaw)))).toBeLessThan(
              1.6449 * effect("temperature", 20, c, genericTemperatureLaw).logSd,
            );
      });
    });
    it("the handbook's D-76, XTOL and pyro-ammonia figures are fits of the tables that they name", () => {
      const over10 = (rows: readonly TemperatureRow[]): number =>
        asCoefficientLaw(leastSquaresLaw(rows), 17, 27).ratio;
      const borax = ["rotary-borax-film-100", "rotary-borax-film-400"].map((id) => over10(rowsById(id)));
      expect(
        Math.abs(geometricMean(borax) - handbookTemperatureLaw("metol-hydroquinone-borax").ratio),
      ).toBeLessThan(0.02);
      const autochrome = published.autochromeFactors.rows.map(({ temperatureC, factor }) => ({
        temperatureC,
        timeS: factor,
      }));
      expect(
        Math.abs(
          asCoefficientLaw(leastSquaresLaw(autochrome), 10, 25).ratio ** (2 / 3) -
            handbookTemperatureLaw("pyro-ammonia").ratio,
        ),
      ).toBeLessThan(0.02);
    });
  });

  it("autochrome factors: no one law meets all four within rounding, and the stated ratio misses by up to 5 %", () => {
    const record = published.autochromeFactors;
    const law = handbookTemperatureLaw("pyro-ammonia");
    const meets = (one: TemperatureLaw): boolean =>
      record.rows.every(
        ({ temperatureC, factor }) => Math.abs(temperatureFactor(16, temperatureC, one) - factor) <= 0.05,
      );
    expect(
      range(ENERGIES, (activationEnergyKJPerMol) => meets({ kind: "arrhenius", activationEnergyKJPerMol })),
    ).toBeUndefined();
    const ratios = Array.from({ length: 300 }, (_, i) => 1 + i / 100);
    expect(range(ratios, (ratio) => meets({ kind: "coefficient", ratio, intervalC: 10 }))).toBeUndefined();
    // As a table they are met exactly; by the handbook's ratio at a level of its own within 5 %.
    const rows = record.rows.map(({ temperatureC, factor }) => ({ temperatureC, timeS: factor }));
    const times = fittedTimes(rows, law);
    eachRow(record, ({ temperatureC, factor }, i) => {
      expect(temperatureFactor(16, temperatureC, { kind: "table", rows })).toBe(factor);
      expect(Math.abs(times[i]! / factor - 1)).toBeLessThan(0.05);
      expect(Math.abs(Math.log(temperatureFactor(16, temperatureC, law) / factor))).toBeLessThanOrEqual(
        1.6449 * effect("temperature", 16, temperatureC, law).logSd + 0.05 / factor,
      );
    });
  });

  it("army-ss0509: a printed 7 min at 65 °F meets the table of DK-50 that was not seen in print", () => {
    const printedTable: TemperatureLaw = { kind: "table", rows: rowsById("memory-tank-metaborate-half") };
    eachRow(published.armyTimes, ({ developer, temperatureF, minutes }) => {
      if (developer === "DK-50 1+1")
        expect(6 * 60 * temperatureFactor(celsius(68, "F"), celsius(temperatureF, "F"), printedTable)).toBe(
          minutes * 60,
        );
      // The other stands alone: to the recommended 68 °F it becomes a time that the main job can give with an
      // interval.
      else {
        const { lowS, highS, timeS } = compensate(
          { timeS: minutes * 60, temperatureC: celsius(temperatureF, "F") },
          { temperatureC: 20 },
        );
        expect(timeS).toBeLessThan(minutes * 60);
        expect(highS / lowS).toBeLessThan(1.3);
      }
    });
  });

  it("memory-tolerance: 0.3 °C in per cent of time, by the ratio over 10 °C (arithmetic)", () => {
    eachRow(published.toleranceArithmetic, ({ ratio, percent }) => {
      const law: TemperatureLaw = { kind: "coefficient", ratio, intervalC: 10 };
      expect(100 * (temperatureFactor(21.3, 21, law) - 1)).toBeCloseTo(percent, 0);
      expect(Math.abs(100 * (temperatureFactor(21.3, 21, law) - 1) - percent)).toBeLessThan(0.06);
    });
  });

  it.each(published.limits)("$id: the cautions keep the limit", (record) => {
    eachRow(record, ({ temperature, unit, says }) => {
      const codes = temperatureCautions(celsius(temperature, unit), {
        hydroquinone: true,
        emulsion: "soft",
      }).map(({ code }) => code);
      const plain = temperatureCautions(celsius(temperature, unit)).map(
        ({ code, severity }) => `${severity} ${code}`,
      );
      if (says === "nothing") expect(plain).toEqual([]);
      if (says === "unusual") expect(plain).toEqual(["warn temperature-unusual"]);
      if (says === "limit") expect(plain).toEqual(["stop temperature-limit"]);
      if (says === "hydroquinone") expect(codes).toContain("hydroquinone-cold");
      if (says === "no soft-emulsion caution") expect(codes).not.toContain("soft-emulsion-warm");
    });
  });
}
