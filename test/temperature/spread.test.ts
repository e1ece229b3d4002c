/* The spread of a law, the fit, the conversions between forms, the handbook and the default. */
import { describe, expect, it } from "vitest";
import { seeded } from "../worlds/random.js";
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
  type TemperatureRow,
} from "../../src/index.js";
import { checkedTemperatureLaw, inverseKelvin } from "../../src/temperature/law.js";
import { anyOf, quoted } from "../helpers.js";
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
    expect(effect("temperature", 20, 14, { ...law, sdKJPerMol: 0 }).logSd).toBeCloseTo(3 * slope, 8);
  });
  it("propagates the spread of a ratio over its interval", () => {
    expect(
      effect("temperature", 20, 13, { kind: "coefficient", ratio: 2, intervalC: 7, sdRatio: 0.25 }).logSd,
    ).toBeCloseTo(0.125, 14);
    expect(
      effect("temperature", 13, 16.5, { kind: "coefficient", ratio: 2, intervalC: 7, sdRatio: 0.25 }).logSd,
    ).toBeCloseTo(0.0625, 14);
    // Nobody knows a developer better than to 3 kJ/mol: a law that claims to is raised to that.
    const least = effect("temperature", 20, 13, { ...doubling, sdRatio: 0 }).logSd;
    expect(least).toBeCloseTo((3 / R) * span(20, 13), 12);
    expect(effect("temperature", 20, 20, { ...doubling, sdRatio: 0 }).logSd).toBe(0);
    // Own runs may.
    expect(effect("temperature", 20, 13, { ...doubling, sdRatio: 0, runs: 40 }).logSd).toBe(0);
    // What JSON makes of NaN is no spread of 0.
    const lost = JSON.parse(JSON.stringify({ ...doubling, sdRatio: NaN })) as TemperatureLaw;
    expect(effect("temperature", 20, 13, lost).logSd).toBe(effect("temperature", 20, 13, doubling).logSd);
  });
  it("gives a law without a spread ± 14 kJ/mol", () => {
    for (const law of [doubling, { kind: "arrhenius", activationEnergyKJPerMol: 60 }] as const)
      expect(effect("temperature", 20, 14, law).logSd).toBeCloseTo((14 / R) * span(20, 14), 12);
  });
  describe("of a table", () => {
    // The rounding of two rows; 20 to 24 °C are the two nearest on the scale of 1/T.
    const inside = 0.025 * Math.SQRT2;
    const nearest = span(20, 24);
    /** Beside the rows, the slope of the whole table is known to ± 5 kJ/mol. */
    const slope = (a: number, b: number): number => (5 / R) * span(a, b);
    it("is the rounding of two rows from row to row, and what its slope leaves", () => {
      for (const [a, b] of [
        [16, 24],
        [16, 20],
        [20, 24],
        [24, 16],
      ] as const)
        expect(effect("temperature", a, b, table).logSd).toBeCloseTo(Math.hypot(inside, slope(a, b)), 12);
    });
    it("takes another spread of its slope, and none below ± 3 kJ/mol unless own runs know better", () => {
      const spreadOf = (sdKJPerMol: number, more = {}): number =>
        effect("temperature", 16, 24, { ...table, sdKJPerMol, ...more }).logSd;
      expect(spreadOf(8)).toBeCloseTo(Math.hypot(inside, (8 / R) * span(16, 24)), 12);
      expect(spreadOf(0)).toBeCloseTo(Math.hypot(inside, (3 / R) * span(16, 24)), 12);
      expect(spreadOf(0, { runs: 40 })).toBeCloseTo(inside, 12);
    });
    it("is steeper by what runs taught of its slope, everywhere alike", () => {
      const steeper = { ...table, energyOffKJPerMol: 7 } as const;
      for (const c of [12, 16, 18.5, 24, 30])
        expect(Math.log(temperatureFactor(20, c, steeper) / temperatureFactor(20, c, table))).toBeCloseTo(
          (7 / R) * span(20, c) * Math.sign(20 - c),
          12,
        );
    });
    it("has ± 14 kJ/mol for what lies between a place and its nearest row, inside as well as outside", () => {
      const away = (a: number, b: number, way: number, chords: number): number =>
        Math.hypot(inside * (1 + chords), (14 / R) * way, slope(a, b));
      const between = span(17, 16) + span(23, 24);
      expect(effect("temperature", 17, 23, table).logSd).toBeCloseTo(
        away(17, 23, between, between / nearest),
        12,
      );
      // Outside, the rounding goes on along the two rows there.
      const [cold, warm] = [span(16, 12), span(24, 30)];
      const [colder, warmer] = [cold / span(16, 20), warm / nearest];
      expect(effect("temperature", 20, 12, table).logSd).toBeCloseTo(away(20, 12, cold, colder), 12);
      expect(effect("temperature", 30, 20, table).logSd).toBeCloseTo(away(30, 20, warm, warmer), 12);
      expect(effect("temperature", 30, 12, table).logSd).toBeCloseTo(
        away(30, 12, cold + warm, colder + warmer),
        12,
      );
    });
    it("goes to nothing with the step, in proportion, among the rows and beyond them", () => {
      const steps = [
        [20, 21],
        [20, 19],
        [28, 26],
        [17.9, 18.1],
        [18, 18.0001],
      ] as const;
      for (const [a, b] of steps)
        expect(effect("temperature", a, b, table).logSd).toBeCloseTo(
          Math.hypot((inside * span(a, b)) / nearest, (14 / R) * span(a, b), slope(a, b)),
          12,
        );
    });
    it("is wider beyond its two rows than a law fitted to them, which rests on what was known before as well", () => {
      const rows = [
        { temperatureC: 20, timeS: 480 },
        { temperatureC: 21, timeS: 450 },
      ];
      const fitted = effect("temperature", 20, 14, fitTemperatureLaw(rows).law).logSd;
      expect(effect("temperature", 20, 14, { kind: "table", rows }).logSd).toBeGreaterThan(fitted);
      expect(effect("temperature", 20, 14, { kind: "table", rows }).logSd).toBeLessThan(2.2 * fitted);
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
      new RangeError("asArrheniusLaw: highC must be above lowC (25 °C), got 15"),
    );
    expect(() => asArrheniusLaw(doubling, 20, 20)).toThrow(
      new RangeError("asArrheniusLaw: highC must be above lowC (20 °C), got 20"),
    );
    expect(() => asArrheniusLaw(doubling, -1, 20)).toThrow(
      new RangeError("asArrheniusLaw: lowC must be from 0 to 100 °C, got -1"),
    );
    expect(() => asArrheniusLaw(doubling, 1, 101)).toThrow(
      new RangeError("asArrheniusLaw: highC must be from 0 to 100 °C, got 101"),
    );
    expect(() => asCoefficientLaw(doubling, 25, 15)).toThrow(
      new RangeError("asCoefficientLaw: highC must be above lowC (25 °C), got 15"),
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
  const x = (c: number): number => 1 / (R * (c + 273.15));
  const spreadOf = (at: readonly number[]): number => {
    const mean = at.reduce((sum, c) => sum + x(c), 0) / at.length;
    return at.reduce((sum, c) => sum + (x(c) - mean) ** 2, 0);
  };
  it("nears the law that made the times as the rows spread, in any order", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 71.5 } as const;
    const made = (at: readonly number[]): readonly { temperatureC: number; timeS: number }[] =>
      at.map((temperatureC) => ({ temperatureC, timeS: 480 * temperatureFactor(20, temperatureC, law) }));
    const at = [24, 5, 16, 20];
    const fit = fitTemperatureLaw(made(at));
    const tells = spreadOf(at) / 0.025 ** 2;
    expect(fit.law.kind).toBe("arrhenius");
    expect(fit.law.activationEnergyKJPerMol).toBeCloseTo(
      (60 / 18 ** 2 + tells * 71.5) / (18 ** -2 + tells),
      9,
    );
    expect(fit.law.sdKJPerMol).toBeCloseTo((18 ** -2 + tells) ** -0.5, 9);
    expect(fit.residualLogSd).toBeLessThan(1e-12);
    expect(fit.rows).toBe(4);
    expect(fitTemperatureLaw(made([16, 24, 20, 5])).law.activationEnergyKJPerMol).toBeCloseTo(
      fit.law.activationEnergyKJPerMol,
      9,
    );
    const near = fitTemperatureLaw(made([20, 21])).law.activationEnergyKJPerMol;
    expect(near).toBeGreaterThan(60);
    expect(near).toBeLessThan(fit.law.activationEnergyKJPerMol);
  });
  it("neither refuses nor believes two neighbouring rows that say 301 kJ/mol", () => {
    const at = [20, 20.5556];
    const { law } = fitTemperatureLaw(
      at.map((temperatureC) => ({ temperatureC, timeS: 420 * Math.exp(301 * (x(temperatureC) - x(20))) })),
    );
    expect(Math.abs(law.activationEnergyKJPerMol - 92)).toBeLessThan(1);
    expect(law.sdKJPerMol).toBeCloseTo(17, 0);
  });
  it("does not make a law of no temperature out of two equal rows", () => {
    // 6.5 minutes at 68 and at 70 °F, as Eastman Kodak, publication F-32, prints for one film.
    const { law } = fitTemperatureLaw([
      { temperatureC: 20, timeS: 390 },
      { temperatureC: 21.111, timeS: 390 },
    ]);
    expect(law.activationEnergyKJPerMol).toBeCloseTo(37, 0);
    expect(law.sdKJPerMol).toBeCloseTo(14, 0);
  });
  it("gives rows whose printed step is known the spread of that step", () => {
    const rows = (stepS: number | undefined): readonly TemperatureRow[] => [
      { temperatureC: 16, timeS: 720, stepS },
      { temperatureC: 24, timeS: 330, stepS },
    ];
    // ± 15 s, evenly: 15/√3 s; and 0.8 % beside it.
    const variances = [720, 330].map((timeS) => (15 / Math.sqrt(3) / timeS) ** 2 + 0.008 ** 2);
    const weights = variances.map((variance) => 1 / variance);
    const tells = ((weights[0]! * weights[1]!) / (weights[0]! + weights[1]!)) * (x(16) - x(24)) ** 2;
    expect(fitTemperatureLaw(rows(30)).law.sdKJPerMol).toBeCloseTo((18 ** -2 + tells) ** -0.5, 9);
    expect(fitTemperatureLaw(rows(1)).law.sdKJPerMol).toBeLessThan(
      fitTemperatureLaw(rows(30)).law.sdKJPerMol,
    );
    expect(fitTemperatureLaw(rows(undefined)).law.sdKJPerMol).toBeCloseTo(
      (18 ** -2 + spreadOf([16, 24]) / 0.025 ** 2) ** -0.5,
      9,
    );
  });
  it("starts from the prior that it is given, in any form of law", () => {
    const rows = [
      { temperatureC: 20, timeS: 420 },
      { temperatureC: 20.5, timeS: 410 },
    ];
    const from = (prior: TemperatureLaw): number =>
      fitTemperatureLaw(rows, { prior }).law.activationEnergyKJPerMol;
    const arrhenius = (activationEnergyKJPerMol: number, sdKJPerMol?: number): TemperatureLaw =>
      sdKJPerMol === undefined
        ? { kind: "arrhenius", activationEnergyKJPerMol }
        : { kind: "arrhenius", activationEnergyKJPerMol, sdKJPerMol };
    expect(from(arrhenius(40, 5))).toBeLessThan(from(arrhenius(80, 5)));
    // Without a spread a prior has ± 14 kJ/mol, and a spread below 3 is taken as 3.
    expect(from(arrhenius(40))).toBe(from(arrhenius(40, 14)));
    expect(from(arrhenius(40, 0))).toBe(from(arrhenius(40, 3)));
    expect(from(handbookTemperatureLaw("metol"))).toBeLessThan(from(handbookTemperatureLaw("glycin")));
    expect(from({ kind: "table", rows: table.rows })).toBeGreaterThan(60);
    expect(fitTemperatureLaw(rows, { prior: undefined })).toEqual(fitTemperatureLaw(rows));
  });
  it("trusts rows less that scatter more than printed ones do", () => {
    // 40 invented rows, 10 % off a law by turns, which is 5 % about it: 4 times the variance of printed rows.
    const rows = Array.from({ length: 40 }, (_, i) => ({
      temperatureC: i,
      timeS: 1e4 * Math.exp(150 * (x(i) - x(0))) * (1 + 0.1 * (i % 2)),
    }));
    const { law, residualLogSd } = fitTemperatureLaw(rows);
    expect(residualLogSd).toBeCloseTo(0.048, 2);
    const textbook = residualLogSd! / Math.sqrt(spreadOf(rows.map(({ temperatureC }) => temperatureC)));
    // The doubt about the scatter of forty rows makes little of it: √(1 + 3/38) in the limit of no prior.
    expect(law.sdKJPerMol / textbook).toBeGreaterThan(1);
    expect(law.sdKJPerMol / textbook).toBeLessThan(Math.sqrt(1 + 3 / 38));
  });
  it("is not surer of five times that scatter by 12 % than least squares, whose prior is flat", () => {
    const own = [860, 850, 600, 590, 400].map((timeS, i) => ({ temperatureC: 16 + 2 * i, timeS }));
    const { law, residualLogSd } = fitTemperatureLaw(own);
    expect(residualLogSd).toBeCloseTo(0.117, 3);
    const flat = residualLogSd! / Math.sqrt(spreadOf(own.map(({ temperatureC }) => temperatureC)));
    expect(flat).toBeCloseTo(13.2, 1);
    // Of the 18 kJ/mol of the generic law and √2 times that.
    expect(law.sdKJPerMol).toBeCloseTo((18 ** -2 + 1 / (2 * flat ** 2)) ** -0.5, 9);
  });
  it.each([0.05, 0.07, 0.1])(
    "holds the energy of five and of seven own times that scatter by %f: at least 84 % for 90 %",
    (noise) => {
      const { normal } = seeded(7);
      for (const rows of [
        [14, 16, 18, 20, 22, 24, 26],
        [14, 17, 20, 23, 26],
      ]) {
        const hits: number[] = [];
        while (hits.length < 400) {
          const energy = 60 + 18 * normal();
          const own = rows.map((temperatureC) => ({
            temperatureC,
            timeS: 600 * Math.exp(energy * x(temperatureC) - energy * x(20) + noise * normal()),
          }));
          // A warmer row that is slower is refused: such a set is measured again.
          if (own.some(({ timeS }, i) => timeS > (own[i - 1]?.timeS ?? Infinity))) continue;
          const { activationEnergyKJPerMol, sdKJPerMol } = fitTemperatureLaw(own).law;
          hits.push(Number(Math.abs(activationEnergyKJPerMol - energy) < 1.645 * sdKJPerMol));
        }
        expect(hits.reduce((sum, hit) => sum + hit, 0) / hits.length).toBeGreaterThan(0.84);
      }
    },
  );
  it("knows of no scatter with two rows, which leave no degree of freedom", () => {
    const fit = fitTemperatureLaw([
      { temperatureC: 16, timeS: 720 },
      { temperatureC: 24, timeS: 330 },
    ]);
    expect("residualLogSd" in fit).toBe(false);
    expect(fit.rows).toBe(2);
  });
  it("gives the textbook scatter with three", () => {
    // Worked as in NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1.
    const rows = [
      { temperatureC: 16, timeS: 720 },
      { temperatureC: 20, timeS: 480 },
      { temperatureC: 24, timeS: 330 },
    ];
    const at = rows.map(({ temperatureC }) => x(temperatureC));
    const y = rows.map((row) => Math.log(row.timeS));
    const mx = (at[0]! + at[1]! + at[2]!) / 3;
    const my = (y[0]! + y[1]! + y[2]!) / 3;
    const sxx = at.reduce((sum, value) => sum + (value - mx) ** 2, 0);
    const slope = at.reduce((sum, value, i) => sum + (value - mx) * (y[i]! - my), 0) / sxx;
    const sd = Math.sqrt(at.reduce((sum, value, i) => sum + (y[i]! - my - slope * (value - mx)) ** 2, 0));
    expect(fitTemperatureLaw(rows).residualLogSd).toBeCloseTo(sd, 12);
  });
  it("refuses values out of range, by message", () => {
    const f = (rows: unknown, options?: unknown): unknown => fitTemperatureLaw(anyOf(rows), anyOf(options));
    const row = { temperatureC: 20, timeS: 300 };
    expect(() => f("rows")).toThrow(new TypeError('fitTemperatureLaw: rows must be an array, got "rows"'));
    expect(() => f([row])).toThrow(new RangeError("fitTemperatureLaw: rows must hold at least 2, got 1"));
    expect(() => f([])).toThrow(new RangeError("fitTemperatureLaw: rows must hold at least 2, got 0"));
    expect(() => f([row, null])).toThrow(
      new TypeError("fitTemperatureLaw: rows[1] must be an object, got null"),
    );
    expect(() => f([row, { temperatureC: 18, timeS: 330, stepS: 0 }])).toThrow(
      new RangeError("fitTemperatureLaw: rows[1].stepS must be above 0 and at most 10000000 s, got 0"),
    );
    expect(() => f([row, row])).toThrow(
      new RangeError(
        "fitTemperatureLaw: rows must be different in temperatureC, no faster when colder, nor slower by more than 2.72 times per °C, not 300 s at 20 and 300 s at 20",
      ),
    );
    expect(() => f([row, { temperatureC: 24, timeS: 301 }])).toThrow(
      new RangeError(
        "fitTemperatureLaw: rows must be different in temperatureC, no faster when colder, nor slower by more than 2.72 times per °C, not 301 s at 24 and 300 s at 20",
      ),
    );
    expect(() => f([row, { temperatureC: 24, timeS: 60 }])).toThrow(
      /^fitTemperatureLaw: rows must be such that the activation energy is at most 200 kJ\/mol, got 2\d\d\.\d+$/,
    );
    expect(() => f([row, { temperatureC: 24, timeS: 60 }])).toThrow(RangeError);
    expect(() => f([row, { temperatureC: 18, timeS: 330 }], 5)).toThrow(
      new TypeError("fitTemperatureLaw: options must be an object, got 5"),
    );
    expect(() => f([row, { temperatureC: 18, timeS: 330 }], { prior: { kind: "line" } })).toThrow(RangeError);
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
    const per10C = (law.sdRatio * 10) / law.intervalC / law.ratio;
    if (law.seen === "read") {
      expect(law.published).toBe(true);
      expect(per10C).toBeGreaterThanOrEqual(0.22 - 1e-12);
    } else {
      // Not seen in print: not published, and nowhere narrower than the generic law.
      expect(law.published).toBeUndefined();
      for (const c of [0, 5, 10, 15, 18, 25, 30])
        expect(effect("temperature", 20, c, law).logSd).toBeGreaterThanOrEqual(
          effect("temperature", 20, c, genericTemperatureLaw).logSd,
        );
    }
    expect(law.sources!.join("; ")).toMatch(/\d{4}|from memory|Kodak|attributed/);
  });
  it("refuses what it does not know", () => {
    expect(() => handbookTemperatureLaw(anyOf("coffee"))).toThrow(
      new RangeError(`handbookTemperatureLaw: developer must be ${quoted(developers)}, got "coffee"`),
    );
    expect(() => handbookTemperatureLaw(anyOf(undefined))).toThrow(
      new TypeError("handbookTemperatureLaw: developer is missing: text"),
    );
  });
  it("the default is wide on purpose", () => {
    expect(genericTemperatureLaw).toMatchObject({
      kind: "arrhenius",
      activationEnergyKJPerMol: 60,
      sdKJPerMol: 18,
    });
  });
});
