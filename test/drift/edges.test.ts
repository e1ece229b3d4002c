/* The ends of what is served: the longest clock, air at the ends of its range, freezing water, logs of many readings. */
import { describe, expect, it } from "vitest";
import { clockTime } from "../../src/drift/developUntil.js";
import {
  developUntil,
  equivalentTime,
  fitDrift,
  startTemperatureFor,
  type TemperatureLaw,
} from "../../src/index.js";

const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };

describe("the longest clock time", () => {
  // At the reference temperature the rate is 1, and clock and work are the same.
  it("may be reached", () => {
    expect(developUntil({ equivalentS: 1e7, referenceC: 20, law, temperatureAt: 20 })).toBe(1e7);
  });
  it("may stand in a log", () => {
    expect(
      equivalentTime(
        [
          { timeS: 0, temperatureC: 20 },
          { timeS: 1e7, temperatureC: 20 },
        ],
        20,
        law,
      ),
    ).toBe(1e7);
  });
});

describe("a forecast along a long log", () => {
  it("has looks to spare for every reading", () => {
    // Rate 1 throughout, so 100 s of work take 100 s, whatever readings follow: those of a day, one in 2 s.
    const corners = Array.from({ length: 43_200 }, (_, i) => 2 * i);
    expect(clockTime(() => 1, 100, 0, corners)).toBeCloseTo(100, 9);
  });
});

describe("fitDrift", () => {
  it("takes air at the ends of its range", () => {
    // τ = t/ln(difference before/difference after): 80 °C to 40 °C below 100 °C, and 70 °C to 56 °C above −50
    // °C.
    const fit = (first: number, second: number, ambientC: number): number =>
      fitDrift(
        [
          { timeS: 0, temperatureC: first },
          { timeS: 600, temperatureC: second },
        ],
        { ambientC },
      ).timeConstantS;
    expect(fit(20, 60, 100)).toBeCloseTo(600 / Math.log(2), 6);
    expect(fit(20, 6, -50)).toBeCloseTo(600 / Math.log(1.25), 6);
  });
});

describe("startTemperatureFor", () => {
  it("lets a bath at 0 °C stay there in air of 0 °C: it does not freeze", () => {
    expect(
      startTemperatureFor({ timeS: 600, targetC: 0, ambientC: 0, timeConstantS: 3600, law }),
    ).toBeCloseTo(0, 12);
  });
});
