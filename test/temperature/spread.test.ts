/* Room: temperature. The spread of a law, the fit, the conversions between forms, the handbook and the default. */
import { describe, expect, it } from "vitest";
import {
  effect,
  asArrheniusLaw,
  asCoefficientLaw,
  fitTemperatureLaw,
  genericTemperatureLaw,
  handbookTemperatureLaw,
  temperatureCoefficient,
  temperatureFactor,
  type HandbookDeveloper,
  type TemperatureLaw,
} from "../../src/index.js";
import { checkedTemperatureLaw, inverseKelvin } from "../../src/temperature/law.js";

const anyOf = (value: unknown): any => value;
const R = 8.314462618e-3;
const span = (a: number, b: number): number => Math.abs(1 / (a + 273.15) - 1 / (b + 273.15));
const doubling: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
const table: Extract<TemperatureLaw, { kind: "table" }> = {
  kind: "table",
  rows: [
    { temperatureC: 24, timeS: 330 },
    { temperatureC: 16, timeS: 720 },
    { temperatureC: 20, timeS: 480 },
  ],
};

/** Whether a temperature lies outside the rows of a table. */
const outside = (rows: typeof table.rows, c: number): boolean => {
  const law = checkedTemperatureLaw("table", { kind: "table", rows });
  return law.kind === "table" && law.table.outside(inverseKelvin(c));
};

describe("the spread of a temperature law", () => {
  it("is 0 where nothing changes, and the same both ways", () => {
    for (const law of [doubling, table, genericTemperatureLaw]) {
      expect(effect("temperature", 20, 20, law).logSd).toBe(0);
      expect(effect("temperature", 20, 14, law).logSd).toBeCloseTo(
        effect("temperature", 14, 20, law).logSd,
        15,
      );
    }
  });
  it("propagates the spread of an activation energy", () => {
    const law: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 60, sdKJPerMol: 20 };
    expect(effect("temperature", 20, 14, law).logSd).toBeCloseTo((20 / R) * span(20, 14), 12);
    const h = 1e-4;
    const slope =
      Math.log(
        temperatureFactor(20, 14, { ...law, activationEnergyKJPerMol: 60 + h }) /
          temperatureFactor(20, 14, { ...law, activationEnergyKJPerMol: 60 - h }),
      ) /
      (2 * h);
    expect(effect("temperature", 20, 14, law).logSd).toBeCloseTo(20 * slope, 8);
    expect(effect("temperature", 20, 14, { ...law, sdKJPerMol: 0 }).logSd).toBe(0);
  });
  it("propagates the spread of a ratio over its interval", () => {
    expect(
      effect("temperature", 20, 13, { kind: "coefficient", ratio: 2, intervalC: 7, sdRatio: 0.25 }).logSd,
    ).toBeCloseTo(0.125, 14);
    expect(
      effect("temperature", 13, 16.5, { kind: "coefficient", ratio: 2, intervalC: 7, sdRatio: 0.25 }).logSd,
    ).toBeCloseTo(0.0625, 14);
    expect(effect("temperature", 20, 13, { ...doubling, sdRatio: 0 }).logSd).toBe(0);
    // What JSON makes of NaN is no spread of 0.
    const lost = JSON.parse(JSON.stringify({ ...doubling, sdRatio: NaN })) as TemperatureLaw;
    expect(effect("temperature", 20, 13, lost).logSd).toBe(effect("temperature", 20, 13, doubling).logSd);
  });
  it("gives a law without a spread ± 12 kJ/mol", () => {
    for (const law of [doubling, { kind: "arrhenius", activationEnergyKJPerMol: 60 }] as const)
      expect(effect("temperature", 20, 14, law).logSd).toBeCloseTo((12 / R) * span(20, 14), 12);
  });
  describe("of a table", () => {
    // The rounding of two rows; 20 to 24 °C are the two nearest on the scale of 1/T.
    const inside = 0.025 * Math.SQRT2;
    const nearest = span(20, 24);
    it("is the rounding of two rows from row to row", () => {
      for (const [a, b] of [
        [16, 24],
        [16, 20],
        [20, 24],
        [24, 16],
      ] as const)
        expect(effect("temperature", a, b, table).logSd).toBeCloseTo(inside, 12);
    });
    it("has ± 12 kJ/mol for what lies between a place and its nearest row, inside as well as outside", () => {
      const away = (way: number): number => Math.hypot((inside * (nearest + way)) / nearest, (12 / R) * way);
      expect(effect("temperature", 17, 23, table).logSd).toBeCloseTo(away(span(17, 16) + span(23, 24)), 12);
      expect(effect("temperature", 20, 12, table).logSd).toBeCloseTo(away(span(16, 12)), 12);
      expect(effect("temperature", 30, 20, table).logSd).toBeCloseTo(away(span(24, 30)), 12);
      expect(effect("temperature", 30, 12, table).logSd).toBeCloseTo(away(span(24, 30) + span(16, 12)), 12);
    });
    it("goes to nothing with the step, in proportion, among the rows and beyond them", () => {
      const steps = [
        [20, 21],
        [20, 19],
        [14, 12],
        [17.9, 18.1],
        [18, 18.0001],
      ] as const;
      for (const [a, b] of steps)
        expect(effect("temperature", a, b, table).logSd).toBeCloseTo(
          Math.hypot((inside * span(a, b)) / nearest, (12 / R) * span(a, b)),
          12,
        );
    });
    it("is that of a law fitted to its two rows, beyond them, and what is unknown of the law besides", () => {
      const rows = [
        { temperatureC: 20, timeS: 480 },
        { temperatureC: 21, timeS: 450 },
      ];
      const fitted = effect("temperature", 20, 14, fitTemperatureLaw(rows).law).logSd;
      expect(effect("temperature", 20, 14, { kind: "table", rows }).logSd).toBeGreaterThan(fitted);
      expect(effect("temperature", 20, 14, { kind: "table", rows }).logSd).toBeLessThan(1.5 * fitted);
    });
    it("knows how far a temperature lies beyond the rows, and on which side", () => {
      const { rows } = table;
      expect([16, 20, 24].map((c) => outside(rows, c))).toEqual([false, false, false]);
      expect(outside(rows, 12)).toBe(true);
      expect(outside(rows, 30)).toBe(true);
    });
  });
  it("refuses by its own name", () => {
    expect(() => effect("temperature", -1, 20, doubling).logSd).toThrow(
      new RangeError("effect: from must be from 0 to 100 °C, got -1"),
    );
    expect(() => effect("temperature", 20, 101, doubling).logSd).toThrow(
      new RangeError("effect: to must be from 0 to 100 °C, got 101"),
    );
    expect(() => effect("temperature", 20, 20, anyOf(1)).logSd).toThrow(
      new TypeError("effect: law must be an object, got 1"),
    );
  });
});

describe("asArrheniusLaw and asCoefficientLaw", () => {
  it("agree with the law at both ends of the interval", () => {
    for (const law of [doubling, table, genericTemperatureLaw]) {
      const wanted = temperatureCoefficient(16, 24, law);
      expect(temperatureCoefficient(16, 24, asArrheniusLaw(law, 16, 24))).toBeCloseTo(wanted, 12);
      expect(asCoefficientLaw(law, 16, 24)).toMatchObject({
        kind: "coefficient",
        ratio: wanted,
        intervalC: 8,
      });
    }
    expect(asArrheniusLaw(doubling, 15, 25).activationEnergyKJPerMol).toBeCloseTo(
      (R * Math.LN2) / span(15, 25),
      10,
    );
  });
  it("carry the spread over", () => {
    const law: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 60, sdKJPerMol: 21 };
    expect(asArrheniusLaw(law, 13, 27).sdKJPerMol).toBeCloseTo(21, 10);
    expect(effect("temperature", 13, 27, asCoefficientLaw(law, 13, 27)).logSd).toBeCloseTo(
      effect("temperature", 13, 27, law).logSd,
      12,
    );
    expect(effect("temperature", 13, 27, asArrheniusLaw(doubling, 13, 27)).logSd).toBeCloseTo(
      effect("temperature", 13, 27, doubling).logSd,
      12,
    );
  });
  it("part away from the interval", () => {
    // A coefficient is straight in °C, Arrhenius in 1/T: fitted at 15 and 25 °C they differ at 0 °C by
    // several per cent.
    const apart =
      temperatureFactor(20, 0, asArrheniusLaw(doubling, 15, 25)) / temperatureFactor(20, 0, doubling);
    expect(apart).toBeGreaterThan(1.05);
    expect(apart).toBeLessThan(1.15);
  });
  it("refuse by message", () => {
    expect(() => asArrheniusLaw(doubling, 25, 15)).toThrow(
      new RangeError("asArrheniusLaw: highC must be above lowC (25 °C), got 15 °C"),
    );
    expect(() => asArrheniusLaw(doubling, 20, 20)).toThrow(
      new RangeError("asArrheniusLaw: highC must be above lowC (20 °C), got 20 °C"),
    );
    expect(() => asArrheniusLaw(doubling, -1, 20)).toThrow(
      new RangeError("asArrheniusLaw: lowC must be from 0 to 100 °C, got -1"),
    );
    expect(() => asArrheniusLaw(doubling, 1, 101)).toThrow(
      new RangeError("asArrheniusLaw: highC must be from 0 to 100 °C, got 101"),
    );
    expect(() => asCoefficientLaw(doubling, 25, 15)).toThrow(
      new RangeError("asCoefficientLaw: highC must be above lowC (25 °C), got 15 °C"),
    );
    expect(() => asCoefficientLaw(doubling, NaN, 15)).toThrow(
      new RangeError("asCoefficientLaw: lowC must be from 0 to 100 °C, got NaN"),
    );
    const steep: TemperatureLaw = { kind: "coefficient", ratio: 20000, intervalC: 10 };
    expect(() => asArrheniusLaw(steep, 15, 25)).toThrow(
      /^asArrheniusLaw: resulting\.activationEnergyKJPerMol must be from 0 to 200 kJ\/mol, got 70\d\.\d+$/,
    );
    expect(() => asArrheniusLaw(steep, 15, 25)).toThrow(RangeError);
    // Two printed times a hundredth of a degree apart say nothing of the law between them.
    const close: TemperatureLaw = {
      kind: "table",
      rows: [
        { temperatureC: 20, timeS: 480 },
        { temperatureC: 20.01, timeS: 480 },
      ],
    };
    expect(() => asArrheniusLaw(close, 20, 20.01)).toThrow(
      /^asArrheniusLaw: resulting\.sdKJPerMol must be from 0 to 200 kJ\/mol, got \d+/,
    );
    expect(() => asCoefficientLaw(close, 20, 20.01)).toThrow(
      /^asCoefficientLaw: resulting\.sdRatio must be from 0 to 0\.01\d*, got 0\.03/,
    );
  });
  it("come back from the ends of the ranges, where rounding passes them by a bit", () => {
    const most: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 200, sdKJPerMol: 200 };
    for (const [low, high] of [
      [0, 100],
      [13, 27],
      [20, 20.1],
      [3, 99],
    ] as const) {
      const back = asArrheniusLaw(asCoefficientLaw(most, low, high), low, high);
      expect(back.activationEnergyKJPerMol).toBeCloseTo(200, 9);
      expect(back.sdKJPerMol).toBeCloseTo(200, 9);
      expect(back.activationEnergyKJPerMol).toBeLessThanOrEqual(200);
      const steepest: TemperatureLaw = { kind: "coefficient", ratio: Math.E, intervalC: 1, sdRatio: Math.E };
      const other = asCoefficientLaw(steepest, low, high);
      expect(Math.log(other.ratio) / other.intervalC).toBeCloseTo(1, 9);
      expect(other.sdRatio! / other.ratio / other.intervalC).toBeCloseTo(1, 9);
    }
    const level: TemperatureLaw = {
      kind: "table",
      rows: [
        { temperatureC: 20, timeS: 411 },
        { temperatureC: 22, timeS: 411 },
      ],
    };
    expect(asCoefficientLaw(level, 20.3, 21.1).ratio).toBe(1);
    expect(asArrheniusLaw(level, 20.3, 21.1).activationEnergyKJPerMol).toBe(0);
  });
});

describe("fitTemperatureLaw", () => {
  it("finds a law in the times it made, in any order", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 71.5 } as const;
    const rows = [24, 5, 16, 20].map((temperatureC) => ({
      temperatureC,
      timeS: 480 * temperatureFactor(20, temperatureC, law),
    }));
    const fit = fitTemperatureLaw(rows);
    expect(fit.law.kind).toBe("arrhenius");
    expect(fit.law.activationEnergyKJPerMol).toBeCloseTo(71.5, 9);
    expect(fit.residualLogSd).toBeLessThan(1e-12);
    // No scatter of their own, four rows: the rounding alone, with two degrees of freedom of four.
    const x = rows.map((row) => 1 / (row.temperatureC + 273.15));
    const mean = x.reduce((sum, value) => sum + value, 0) / 4;
    const sxx = x.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    expect(fit.law.sdKJPerMol).toBeCloseTo((R * 0.025 * Math.SQRT1_2) / Math.sqrt(sxx), 9);
    expect(fit.rows).toBe(4);
  });
  it("gives the textbook standard error, the rounding of printed times counted in", () => {
    // Three rows worked as in NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1.
    const rows = [
      { temperatureC: 16, timeS: 720 },
      { temperatureC: 20, timeS: 480 },
      { temperatureC: 24, timeS: 330 },
    ];
    const x = rows.map((row) => 1 / (row.temperatureC + 273.15));
    const y = rows.map((row) => Math.log(row.timeS));
    const mx = (x[0]! + x[1]! + x[2]!) / 3;
    const my = (y[0]! + y[1]! + y[2]!) / 3;
    const sxx = x.reduce((sum, value) => sum + (value - mx) ** 2, 0);
    const slope = x.reduce((sum, value, i) => sum + (value - mx) * (y[i]! - my), 0) / sxx;
    const sd = Math.sqrt(x.reduce((sum, value, i) => sum + (y[i]! - my - slope * (value - mx)) ** 2, 0));
    const fit = fitTemperatureLaw(rows);
    expect(fit.law.activationEnergyKJPerMol).toBeCloseTo(R * slope, 9);
    expect(fit.residualLogSd).toBeCloseTo(sd, 12);
    // One degree of freedom of the rows, two of the rounding.
    expect(fit.law.sdKJPerMol).toBeCloseTo(
      (R * Math.sqrt((sd ** 2 + 2 * 0.025 ** 2) / 3)) / Math.sqrt(sxx),
      9,
    );
    expect(fit.law.sdKJPerMol).toBeGreaterThan((R * sd) / Math.sqrt(sxx));
  });
  it("forgets the rounding where many rows scatter on their own", () => {
    // 40 invented rows, 5 % off the line by turns: the textbook standard error to 3 %.
    const rows = Array.from({ length: 40 }, (_, i) => ({
      temperatureC: i,
      timeS: 1e4 * Math.exp(-0.2 * i) * (1 + 0.05 * (i % 2)),
    }));
    const { law, residualLogSd } = fitTemperatureLaw(rows);
    const x = rows.map((row) => 1 / (row.temperatureC + 273.15));
    const mean = x.reduce((sum, value) => sum + value, 0) / 40;
    const textbook = (R * residualLogSd) / Math.sqrt(x.reduce((sum, value) => sum + (value - mean) ** 2, 0));
    expect(Math.abs(law.sdKJPerMol / textbook - 1)).toBeLessThan(0.03);
  });
  it("takes two rows with the rounding of two printed times", () => {
    const fit = fitTemperatureLaw([
      { temperatureC: 16, timeS: 720 },
      { temperatureC: 24, timeS: 330 },
    ]);
    expect(fit.residualLogSd).toBe(0);
    expect(fit.rows).toBe(2);
    expect(fit.law.sdKJPerMol).toBeCloseTo((R * 0.025 * Math.SQRT2) / span(16, 24), 10);
  });
  it("gives exactly 0 for a level table, never less", () => {
    const fit = fitTemperatureLaw([20, 21, 23].map((temperatureC) => ({ temperatureC, timeS: 333.3 })));
    expect(fit.law.activationEnergyKJPerMol).toBeGreaterThanOrEqual(0);
    expect(fit.law.activationEnergyKJPerMol).toBeLessThan(1e-9);
    expect(temperatureFactor(20, 10, fit.law)).toBeCloseTo(1, 12);
  });
  it("refuses by message", () => {
    const f = (rows: unknown): unknown => fitTemperatureLaw(anyOf(rows));
    const row = { temperatureC: 20, timeS: 300 };
    expect(() => f("rows")).toThrow(new TypeError('fitTemperatureLaw: rows must be an array, got "rows"'));
    expect(() => f([row])).toThrow(new RangeError("fitTemperatureLaw: rows must hold at least 2, got 1"));
    expect(() => f([])).toThrow(new RangeError("fitTemperatureLaw: rows must hold at least 2, got 0"));
    expect(() => f([row, null])).toThrow(
      new TypeError("fitTemperatureLaw: rows[1] must be an object, got null"),
    );
    expect(() => f([row, row])).toThrow(
      new RangeError("fitTemperatureLaw: rows must differ in temperatureC, got 300 s at 20 and 300 s at 20"),
    );
    expect(() => f([row, { temperatureC: 24, timeS: 301 }])).toThrow(
      new RangeError(
        "fitTemperatureLaw: rows must not be faster when colder, nor slower by more than 2.72 times per °C, got 301 s at 24 and 300 s at 20",
      ),
    );
    expect(() => f([row, { temperatureC: 24, timeS: 60 }])).toThrow(
      /^fitTemperatureLaw: rows must give at most 200 kJ\/mol, got 291\.\d kJ\/mol$/,
    );
    expect(() => f([row, { temperatureC: 24, timeS: 60 }])).toThrow(RangeError);
    expect(() => f([row, { temperatureC: 20.1, timeS: 299 }])).toThrow(
      /^fitTemperatureLaw: rows must tell the energy to at most 200 kJ\/mol, got 252\./,
    );
  });
});

describe("handbookTemperatureLaw and genericTemperatureLaw", () => {
  const developers: readonly HandbookDeveloper[] = [
    "metol",
    "hydroquinone",
    "metol-hydroquinone",
    "metol-hydroquinone-borax",
    "phenidone-ascorbate",
    "pyro",
    "pyro-ammonia",
    "pyro-metol",
    "chlorhydroquinone-metol",
    "glycin",
    "p-aminophenol",
  ];
  it.each(developers)("%s is a law with a spread and a source", (developer) => {
    const law = handbookTemperatureLaw(developer);
    expect(law.kind).toBe("coefficient");
    expect(temperatureFactor(20, 18, law)).toBeGreaterThan(1);
    // 10 to 25 % of the ratio: never narrower than the scatter between two films, never so wide that it says
    // nothing.
    expect(law.sdRatio! / law.ratio).toBeGreaterThan(0.1);
    expect(law.sdRatio! / law.ratio).toBeLessThan(0.25);
    expect(law.sources!.join("; ")).toMatch(/\d{4}|from memory|Kodak|attributed/);
  });
  it("refuses what it does not know", () => {
    expect(() => handbookTemperatureLaw(anyOf("coffee"))).toThrow(
      new RangeError(
        `handbookTemperatureLaw: developer must be one of ${developers.join(", ")}, got "coffee"`,
      ),
    );
    expect(() => handbookTemperatureLaw(anyOf(undefined))).toThrow(
      new TypeError("handbookTemperatureLaw: developer must be text, got undefined"),
    );
  });
  it("the default is wide on purpose", () => {
    expect(genericTemperatureLaw).toMatchObject({
      kind: "arrhenius",
      activationEnergyKJPerMol: 60,
      sdKJPerMol: 21.5,
    });
    // 30 to 95 kJ/mol is what published tables show: the central 90 % of the law, to within 5 kJ/mol at
    // either end.
    const { activationEnergyKJPerMol: energy, sdKJPerMol: sd = 0 } = genericTemperatureLaw;
    expect(energy - 1.645 * sd).toBeLessThan(30);
    expect(energy - 1.645 * sd).toBeGreaterThan(20);
    expect(Math.abs(energy + 1.645 * sd - 95)).toBeLessThan(1);
  });
});
