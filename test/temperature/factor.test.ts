/* The factor, the prepared rate and the coefficient: values worked by hand, every refusal word for word. */
import { describe, expect, it } from "vitest";
import {
  rateFunction,
  temperatureCoefficient,
  temperatureFactor,
  type TemperatureLaw,
  type TemperatureRow,
  equivalentTime,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
const doubling: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
const arrhenius: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 50 };
const rows: readonly TemperatureRow[] = [
  { temperatureC: 24, timeS: 330 },
  { temperatureC: 16, timeS: 720 },
  { temperatureC: 20, timeS: 480 },
];
const table: TemperatureLaw = { kind: "table", rows };

describe("temperatureFactor", () => {
  it("follows a coefficient", () => {
    expect(temperatureFactor(20, 10, doubling)).toBeCloseTo(2, 14);
    expect(temperatureFactor(20, 25, doubling)).toBeCloseTo(Math.SQRT1_2, 14);
  });
  it("follows Arrhenius", () => {
    // 50 kJ/mol between 293.15 K and 283.15 K with R = 8.314462618 J/(mol K): exp(6013.6 K × 1.20474e-4/K) =
    // 2.0637.
    expect(temperatureFactor(20, 10, arrhenius)).toBeCloseTo(2.0637, 4);
    expect(Math.log(temperatureFactor(20, 10, arrhenius)) * 8.314462618e-3).toBeCloseTo(
      50 * (1 / 283.15 - 1 / 293.15),
      12,
    );
  });
  it("takes the ratio of a table's own rows, in any order of rows", () => {
    expect(temperatureFactor(16, 24, table)).toBe(330 / 720);
    expect(temperatureFactor(24, 20, table)).toBe(480 / 330);
  });
  it("runs between the rows and straight on in ln t against 1/T outside", () => {
    expect(temperatureFactor(20, 18, table)).toBeGreaterThan(1);
    expect(temperatureFactor(20, 18, table)).toBeLessThan(1.5);
    const perKelvin = (a: number, b: number): number => 1 / (a + 273.15) - 1 / (b + 273.15);
    const cold = Math.log(720 / 480) / perKelvin(16, 20);
    expect(Math.log(temperatureFactor(16, 10, table))).toBeCloseTo(cold * perKelvin(10, 16), 12);
    const warm = Math.log(480 / 330) / perKelvin(20, 24);
    expect(Math.log(temperatureFactor(24, 30, table))).toBeCloseTo(-warm * perKelvin(24, 30), 12);
  });
  it("is 1 on a level stretch, and with no energy", () => {
    const level: TemperatureLaw = {
      kind: "table",
      rows: [
        { temperatureC: 20, timeS: 300 },
        { temperatureC: 22, timeS: 300 },
      ],
    };
    expect(temperatureFactor(20.5, 21.5, level)).toBe(1);
    expect(temperatureFactor(0, 100, { kind: "arrhenius", activationEnergyKJPerMol: 0 })).toBe(1);
    expect(temperatureFactor(0, 100, { kind: "coefficient", ratio: 1, intervalC: 7 })).toBe(1);
  });
  it("takes the ends of the ranges", () => {
    expect(temperatureFactor(0, 100, doubling)).toBeCloseTo(2 ** -10, 14);
    expect(temperatureFactor(100, 0, { kind: "arrhenius", activationEnergyKJPerMol: 200 })).toBeGreaterThan(
      1e10,
    );
    expect(temperatureFactor(1, 0, { kind: "coefficient", ratio: Math.E, intervalC: 1 })).toBeCloseTo(
      Math.E,
      12,
    );
  });
});

describe("temperatureFactor refuses", () => {
  const refuses = (law: unknown, error: Error, fromC: unknown = 20, toC: unknown = 18): void => {
    expect(() => temperatureFactor(anyOf(fromC), anyOf(toC), anyOf(law))).toThrow(error);
  };
  it("temperatures", () => {
    refuses(doubling, new RangeError("temperatureFactor: toC must be from 0 to 100 °C, got 300"), 20, 300);
    refuses(doubling, new RangeError("temperatureFactor: fromC must be from 0 to 100 °C, got -0.1"), -0.1);
    refuses(doubling, new RangeError("temperatureFactor: fromC must be from 0 to 100 °C, got NaN"), NaN);
    refuses(
      doubling,
      new RangeError("temperatureFactor: toC must be from 0 to 100 °C, got Infinity"),
      20,
      Infinity,
    );
    refuses(doubling, new TypeError('temperatureFactor: fromC must be a number, got "20"'), "20");
    refuses(doubling, new TypeError("temperatureFactor: toC must be a number, got null"), 20, null);
    refuses(table, new RangeError("temperatureFactor: toC must be from 0 to 100 °C, got 101"), 20, 101);
  });
  it("what is no law", () => {
    refuses(null, new TypeError("temperatureFactor: law must be an object, got null"));
    refuses("metol", new TypeError('temperatureFactor: law must be an object, got "metol"'));
    refuses([], new TypeError("temperatureFactor: law must be an object, got an array"));
    refuses(
      {},
      new RangeError('temperatureFactor: law.kind is missing: "arrhenius", "coefficient" or "table"'),
    );
    refuses(
      { kind: "q10" },
      new RangeError('temperatureFactor: law.kind must be "arrhenius", "coefficient" or "table", got "q10"'),
    );
  });
  it("figures of an Arrhenius law", () => {
    const law = (activationEnergyKJPerMol: unknown, sdKJPerMol?: unknown): unknown => ({
      kind: "arrhenius",
      activationEnergyKJPerMol,
      sdKJPerMol,
    });
    refuses(
      law(-1),
      new RangeError("temperatureFactor: law.activationEnergyKJPerMol must be from 0 to 200 kJ/mol, got -1"),
    );
    refuses(
      law(200.1),
      new RangeError(
        "temperatureFactor: law.activationEnergyKJPerMol must be from 0 to 200 kJ/mol, got 200.1",
      ),
    );
    refuses(
      law("50"),
      new TypeError('temperatureFactor: law.activationEnergyKJPerMol must be a number, got "50"'),
    );
    refuses(
      law(50, -1),
      new RangeError("temperatureFactor: law.sdKJPerMol must be from 0 to 200 kJ/mol, got -1"),
    );
    refuses(
      law(50, 201),
      new RangeError("temperatureFactor: law.sdKJPerMol must be from 0 to 200 kJ/mol, got 201"),
    );
  });
  it("figures of a coefficient law", () => {
    const law = (ratio: unknown, intervalC: unknown = 10, sdRatio?: unknown): unknown => ({
      kind: "coefficient",
      ratio,
      intervalC,
      sdRatio,
    });
    refuses(
      law(0.99),
      new RangeError(`temperatureFactor: law.ratio must be from 1 to ${Math.exp(10)}, got 0.99`),
    );
    refuses(law(3, 1), new RangeError(`temperatureFactor: law.ratio must be from 1 to ${Math.E}, got 3`));
    refuses(
      law(2, 0),
      new RangeError("temperatureFactor: law.intervalC must be above 0 and at most 100 °C, got 0"),
    );
    refuses(
      law(2, 101),
      new RangeError("temperatureFactor: law.intervalC must be above 0 and at most 100 °C, got 101"),
    );
    refuses(law(2, null), new TypeError("temperatureFactor: law.intervalC must be a number, got null"));
    refuses(law(2, 10, -1), new RangeError("temperatureFactor: law.sdRatio must be from 0 to 20, got -1"));
    refuses(
      law(2, 10, 20.1),
      new RangeError("temperatureFactor: law.sdRatio must be from 0 to 20, got 20.1"),
    );
    expect(
      temperatureFactor(20, 10, { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 20 }),
    ).toBeCloseTo(2, 12);
  });
  it("rows of a table", () => {
    const law = (...list: unknown[]): unknown => ({ kind: "table", rows: list });
    const at = (temperatureC: unknown, timeS: unknown): unknown => ({ temperatureC, timeS });
    refuses({ kind: "table" }, new TypeError("temperatureFactor: law.rows is missing: an array"));
    refuses(law(at(20, 300)), new RangeError("temperatureFactor: law.rows must hold at least 2, got 1"));
    refuses(law(at(20, 300), 5), new TypeError("temperatureFactor: law.rows[1] must be an object, got 5"));
    refuses(
      law(at(20, 300), at(300, 5)),
      new RangeError("temperatureFactor: law.rows[1].temperatureC must be from 0 to 100 °C, got 300"),
    );
    refuses(
      law(at(20, 0), at(22, 5)),
      new RangeError("temperatureFactor: law.rows[0].timeS must be above 0 and at most 10000000 s, got 0"),
    );
    refuses(
      law(at(20, "5:00"), at(22, 5)),
      new TypeError('temperatureFactor: law.rows[0].timeS must be a number, got "5:00"'),
    );
    refuses(
      law(at(20, 300), at(20, 300)),
      new RangeError(
        "temperatureFactor: law.rows must be different in temperatureC, no faster when colder, nor slower by more than 2.72 times per °C, not 300 s at 20 and 300 s at 20",
      ),
    );
    refuses(
      law(at(22, 301), at(20, 300)),
      new RangeError(
        "temperatureFactor: law.rows must be different in temperatureC, no faster when colder, nor slower by more than 2.72 times per °C, not 301 s at 22 and 300 s at 20",
      ),
    );
    refuses(
      law(at(20, 300), at(21, 110)),
      new RangeError(
        "temperatureFactor: law.rows must be different in temperatureC, no faster when colder, nor slower by more than 2.72 times per °C, not 110 s at 21 and 300 s at 20",
      ),
    );
    expect(temperatureFactor(20, 21, anyOf(law(at(20, 300), at(21, 111))))).toBe(111 / 300);
  });
});

describe("rateFunction", () => {
  it("is the inverse of the factor, under each form", () => {
    for (const law of [doubling, arrhenius, table])
      for (const c of [0, 14, 16, 20, 23.3, 100])
        expect(rateFunction(20, law)(c) * temperatureFactor(20, c, law)).toBeCloseTo(1, 12);
    expect(rateFunction(20, doubling)(30)).toBeCloseTo(2, 14);
  });
  it("refuses a bad reference at once and a bad temperature when called", () => {
    expect(() => rateFunction(101, doubling)).toThrow(
      new RangeError("rateFunction: referenceC must be from 0 to 100 °C, got 101"),
    );
    expect(() => rateFunction(20, anyOf({ kind: "x" }))).toThrow(
      new RangeError('rateFunction: law.kind must be "arrhenius", "coefficient" or "table", got "x"'),
    );
    expect(() => rateFunction(20, anyOf(3))).toThrow(
      new TypeError("rateFunction: law must be an object, got 3"),
    );
    for (const law of [doubling, arrhenius, table]) {
      const rate = rateFunction(20, law);
      expect(() => rate(-1)).toThrow(
        new RangeError("rateFunction: temperatureC must be from 0 to 100 °C, got -1"),
      );
      expect(() => rate(NaN)).toThrow(
        new RangeError("rateFunction: temperatureC must be from 0 to 100 °C, got NaN"),
      );
      expect(() => rate(anyOf("20"))).toThrow(
        new TypeError('rateFunction: temperatureC must be a number, got "20"'),
      );
    }
  });
});

describe("temperatureCoefficient", () => {
  it("is rate over rate", () => {
    expect(temperatureCoefficient(15, 25, { kind: "coefficient", ratio: 2, intervalC: 7 })).toBeCloseTo(
      2 ** (10 / 7),
      12,
    );
    expect(temperatureCoefficient(16, 24, table)).toBe(720 / 330);
  });
});

describe("rows of a table that nearly meet", () => {
  it.each([20.00000000000001, 20.000000000000004])("20 and %d °C are one temperature", (temperatureC) => {
    const law = {
      kind: "table",
      rows: [
        { temperatureC: 20, timeS: 480 },
        { temperatureC, timeS: 480 },
      ],
    } as const;
    expect(() => temperatureFactor(20, 22, law)).toThrow(
      /^temperatureFactor: law\.rows must be different in temperatureC, .*, not 480 s at 20/,
    );
  });
  it("a billionth of a degree and more apart they make a curve", () => {
    const rows = [
      { temperatureC: 20, timeS: 480 },
      { temperatureC: 20 + 2e-9, timeS: 480 },
    ];
    expect(temperatureFactor(20, 22, { kind: "table", rows })).toBe(1);
    expect(
      equivalentTime(
        [
          { timeS: 0, temperatureC: 20 },
          { timeS: 60, temperatureC: 22 },
        ],
        20,
        { kind: "table", rows },
      ),
    ).toBeCloseTo(60, 9);
  });
});
