/* What must hold of every law of temperature, at every temperature. */
import { fc, test, same } from "../property.js";
import { describe, expect } from "vitest";
import {
  effect,
  asArrheniusLaw,
  asCoefficientLaw,
  fitTemperatureLaw,
  rateFunction,
  temperatureCoefficient,
  temperatureFactor,
} from "../../src/index.js";
import {
  arrheniusLaw,
  coefficientLaw,
  lawWithTemperatures,
  temperatureC,
  temperatureLaw,
  temperatureRows,
  temperatureTable,
} from "./generators.js";

describe("temperatureFactor", () => {
  test.prop([lawWithTemperatures])(
    "is a finite number above 0, the inverse of the rate",
    ({ law, at: [a, b] }) => {
      const factor = temperatureFactor(a, b, law);
      expect(factor).toBeGreaterThan(0);
      expect(factor).toBeLessThan(Infinity);
      same(factor * rateFunction(a, law)(b), 1);
      expect(temperatureCoefficient(a, b, law)).toBe(temperatureFactor(b, a, law));
    },
  );
});

describe("a table", () => {
  test.prop([temperatureTable])("gives the ratio of every two of its rows to the last bit", (law) => {
    for (const from of law.rows)
      for (const to of law.rows)
        expect(temperatureFactor(from.temperatureC, to.temperatureC, law)).toBe(
          from === to ? 1 : to.timeS / from.timeS,
        );
  });
  test.prop([temperatureTable])(
    "joins at its rows in value, and in slope at all but the outermost",
    (law) => {
      const logTime = (c: number): number => -Math.log(rateFunction(50, law)(c));
      const h = 1e-5;
      const sorted = law.rows.map(({ temperatureC }) => temperatureC).sort((a, b) => a - b);
      const inner = sorted.slice(1, -1);
      for (const c of sorted) {
        // Beyond 0 and 100 °C there is nothing to join.
        if (c - 2 * h < 0 || c + 2 * h > 100) continue;
        const [left, right] = [-h, h].map(
          (step) => (-3 * logTime(c) + 4 * logTime(c + step) - logTime(c + 2 * step)) / (2 * step),
        );
        expect(Math.abs(logTime(c + 1e-9) - logTime(c - 1e-9))).toBeLessThan(1e-8);
        if (inner.includes(c)) expect(Math.abs(left! - right!)).toBeLessThan(1e-6);
      }
    },
  );
  test.prop([temperatureRows, fc.double({ min: 0, max: 1, noNaN: true })])(
    "between two rows stays between their times",
    (rows, share) => {
      rows.slice(1).forEach((warm, i) => {
        const cold = rows[i]!;
        const c = cold.temperatureC + share * (warm.temperatureC - cold.temperatureC);
        const factor = temperatureFactor(cold.temperatureC, c, { kind: "table", rows });
        expect(factor).toBeLessThanOrEqual(1 + 1e-14);
        expect(factor).toBeGreaterThanOrEqual((warm.timeS / cold.timeS) * (1 - 1e-14));
      });
    },
  );
});

describe("the spread of a table", () => {
  test.prop([temperatureTable])("is that of two roundings from row to row, and of its slope", (law) => {
    const kelvin = (c: number): number => 1 / (c + 273.15);
    const at = law.rows.map(({ temperatureC }) => temperatureC);
    for (const c of at)
      for (const other of at)
        if (c !== other)
          expect(effect("temperature", c, other, law).logSd).toBeCloseTo(
            Math.hypot(0.025 * Math.SQRT2, (5 / 8.314462618e-3) * (kelvin(c) - kelvin(other))),
            12,
          );
  });
  test.prop([temperatureTable, temperatureC, temperatureC])(
    "is no less than that of the energy, ± 14 kJ/mol, over what lies beyond the rows",
    (law, a, b) => {
      const at = law.rows.map(({ temperatureC }) => temperatureC);
      const within = (c: number): number => Math.min(Math.max(...at), Math.max(Math.min(...at), c));
      const kelvin = (c: number): number => 1 / (c + 273.15);
      const beyond = Math.abs(kelvin(a) - kelvin(within(a)) - kelvin(b) + kelvin(within(b)));
      expect(effect("temperature", a, b, law).logSd).toBeGreaterThanOrEqual(
        (14 / 8.314462618e-3) * beyond - 1e-12,
      );
    },
  );
});

describe("conversions between forms", () => {
  const interval = fc
    .tuple(temperatureC, temperatureC)
    .filter(([a, b]) => Math.abs(a - b) > 0.01)
    .map(([a, b]) => (a < b ? ([a, b] as const) : ([b, a] as const)));
  test.prop([arrheniusLaw, interval])(
    "an Arrhenius law comes back from a coefficient over any interval",
    (law, [low, high]) => {
      const back = asArrheniusLaw(asCoefficientLaw(law, low, high), low, high);
      expect(back.activationEnergyKJPerMol).toBeCloseTo(law.activationEnergyKJPerMol, 6);
      expect(back.sdKJPerMol).toBeCloseTo(law.sdKJPerMol ?? 14, 6);
    },
  );
  test.prop([coefficientLaw, interval])(
    "a coefficient law comes back from Arrhenius over any interval",
    (law, [low, high]) => {
      const there = asArrheniusLaw(law, low, high);
      const back = asCoefficientLaw(there, low, high);
      same(back.ratio, temperatureCoefficient(low, high, law), 1e-9);
      same(
        Math.exp(Math.log(back.ratio) / back.intervalC),
        Math.exp(Math.log(law.ratio) / law.intervalC),
        1e-9,
      );
      expect(effect("temperature", low, high, back).logSd).toBeCloseTo(
        effect("temperature", low, high, law).logSd,
        9,
      );
    },
  );
  test.prop([coefficientLaw, interval, temperatureC])(
    "written over another interval a coefficient is the same law everywhere",
    (law, [low, high], c) => {
      same(
        temperatureFactor(low, c, asCoefficientLaw(law, low, high)),
        temperatureFactor(low, c, law),
        1e-9 * (1 + Math.abs(c - low) / (high - low)),
      );
    },
  );
  test.prop([temperatureLaw, interval])(
    "a coefficient of any law agrees with it over the interval",
    (law, [low, high]) => {
      same(
        temperatureFactor(low, high, asCoefficientLaw(law, low, high)),
        temperatureFactor(low, high, law),
        1e-9,
      );
    },
  );
});

describe("fitTemperatureLaw", () => {
  test.prop([
    fc.double({ min: 1, max: 190, noNaN: true }),
    fc.uniqueArray(fc.integer({ min: 0, max: 45 }), { minLength: 2, maxLength: 9 }),
    fc.double({ min: 0.5, max: 2, noNaN: true }),
  ])(
    "lies between the prior and the law that made the times, whatever their level",
    (activationEnergyKJPerMol, at, level) => {
      const law = { kind: "arrhenius", activationEnergyKJPerMol } as const;
      const rows = at.map((c) => ({ temperatureC: c, timeS: 600 * level * temperatureFactor(30, c, law) }));
      fc.pre(rows.every(({ timeS }) => timeS <= 1e7));
      const fit = fitTemperatureLaw(rows);
      const found = fit.law.activationEnergyKJPerMol;
      expect(found).toBeGreaterThanOrEqual(Math.min(60, activationEnergyKJPerMol) - 1e-6);
      expect(found).toBeLessThanOrEqual(Math.max(60, activationEnergyKJPerMol) + 1e-6);
      expect(fit.law.sdKJPerMol).toBeLessThanOrEqual(18);
      // A row more never tells less.
      expect(fitTemperatureLaw(rows.slice(0, 2)).law.sdKJPerMol).toBeGreaterThanOrEqual(
        fit.law.sdKJPerMol - 1e-9,
      );
      // Rows that know their times to a billionth leave nothing of the prior.
      expect(fit.rows).toBe(at.length);
      expect(fit.residualLogSd ?? 0).toBeLessThan(1e-9);
    },
  );
});
