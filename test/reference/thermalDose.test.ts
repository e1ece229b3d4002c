/*
 * The same integral in three other trades: equivalent age of concrete, lethality in canning,
 * and pasteurisation of beer. None of these is about photography; each has had its formula in print for
 * decades.
 */
import { describe, expect, it } from "vitest";
import {
  developUntil,
  equivalentTime,
  rateFunction,
  type TemperatureLaw,
  type TemperatureLog,
} from "../../src/index.js";

const HOUR = 3600;
/** A log that holds each temperature for its time and changes within a millisecond. */
const held = (stretches: readonly (readonly [durationS: number, temperatureC: number])[]): TemperatureLog => {
  let at = 0;
  return stretches.flatMap(([durationS, temperatureC]) => {
    const from = at;
    at += durationS;
    return [
      { timeS: from, temperatureC },
      { timeS: at - 0.001, temperatureC },
    ];
  });
};

describe("concrete: EN 1992-1-1:2004 (Eurocode 2), annex B, equation B.10", () => {
  // t_T = Σ exp(−(4000/(273 + T) − 13.65))·Δt, T in °C: Arrhenius with E/R = 4000 K, 1 at 20 °C.
  const law: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 4000 * 8.314462618e-3 };
  const printed = (temperatureC: number): number => Math.exp(-(4000 / (273 + temperatureC) - 13.65));
  it("gives the printed rate from 0 to 80 °C, where the equation serves, to 0.3 %", () => {
    // 13.65 stands for 4000/293 = 13.652, which is 0.2 %; 273 for 273.15 is the rest.
    for (let c = 0; c <= 80; c += 5)
      expect(Math.abs(rateFunction(20, law)(c) / printed(c) - 1)).toBeLessThan(0.003);
  });
  it("three days of a pour in winter: worked by the printed sum", () => {
    const days = [
      [12 * HOUR, 18],
      [24 * HOUR, 9],
      [24 * HOUR, 6],
      [12 * HOUR, 11],
    ] as const;
    const sumH = days.reduce((sum, [durationS, c]) => sum + (printed(c) * durationS) / HOUR, 0);
    expect(sumH).toBeCloseTo(44.8, 1);
    expect(Math.abs(equivalentTime(held(days), 20, law) / HOUR / sumH - 1)).toBeLessThan(0.003);
  });
});

describe("canning: F0, minutes at 121.1 °C with z = 10 °C", () => {
  // C. R. Stumbo, Thermobacteriology in Food Processing, 2nd ed., New York, 1973: L = 10^((T − 121.1)/z).
  // Only differences of temperature
  // enter, so the retort is moved down by 100 °C into this package's range.
  const law: TemperatureLaw = { kind: "coefficient", ratio: 10, intervalC: 10 };
  it.each([
    [121.1, 1],
    [111.1, 0.1],
    [118, 0.49],
    [124, 1.95],
    [115, 0.245],
  ])("lethal rate at %d °C is %d", (c, rate) => {
    expect(Math.abs(rateFunction(21.1, law)(c - 100) - rate)).toBeLessThanOrEqual(0.0051);
  });
  it("come-up, hold and cooling: the straight parts in closed form, z/(ln 10·slope)·(L2 − L1)", () => {
    const lethal = (c: number): number => 10 ** ((c - 121.1) / 10);
    const closed = (minutes: number, from: number, to: number): number =>
      ((minutes * 10) / (Math.LN10 * (to - from))) * (lethal(to) - lethal(from));
    const expected = closed(10, 101.1, 121.1) + 12 + closed(5, 121.1, 101.1);
    const log = [
      [0, 101.1],
      [10, 121.1],
      [22, 121.1],
      [27, 101.1],
    ].map(([minutes, c]) => ({ timeS: minutes! * 60, temperatureC: c! - 100 }));
    expect(equivalentTime(log, 21.1, law) / 60).toBeCloseTo(expected, 10);
    expect(expected).toBeCloseTo(15.22, 2);
  });
});

describe("beer: pasteurisation units, minutes at 60 °C, 1.393^(T − 60)", () => {
  // H. W. Del Vecchio, C. A. Dayharsh and F. C. Baselt, Proceedings of the American Society of Brewing
  // Chemists, 1951, p. 45 (from memory);
  // table as reprinted in brewing handbooks, units a minute.
  const law: TemperatureLaw = { kind: "coefficient", ratio: 1.393, intervalC: 1 };
  it.each([
    [60, 1],
    [62, 1.9],
    [64, 3.8],
    [66, 7.3],
    [68, 14.2],
    [70, 27.5],
  ])("at %d °C: %d units a minute", (c, units) => {
    // Printed to three figures at most.
    expect(Math.abs(rateFunction(60, law)(c) / units - 1)).toBeLessThan(0.022);
  });
  it("the holding time for 15 units at 64 °C is four minutes", () => {
    expect(developUntil({ equivalentS: 15 * 60, referenceC: 60, law, temperatureAt: 64 }) / 60).toBeCloseTo(
      15 / 1.393 ** 4,
      9,
    );
    expect(15 / 1.393 ** 4).toBeCloseTo(4, 1);
  });
});
