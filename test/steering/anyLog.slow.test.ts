/* Steering answers whatever the thermometer says: no throw, numbers in order, plain data. */
import { describe, expect } from "vitest";
import { steer, type SteeringReading } from "../../src/index.js";
import { fc, test, real } from "../property.js";

const reading: fc.Arbitrary<SteeringReading> = fc.record({
  timeS: fc.oneof(fc.integer({ min: 0, max: 2000 }), fc.constantFrom(0, 60, 1e7)),
  temperatureC: fc.oneof(
    real(0.1, 32),
    real(32, 100),
    real(-130, 300),
    fc.constantFrom(null, NaN, 0, 85, -127, 20, 20),
  ),
  changed: fc.constantFrom(undefined, undefined, true as const),
});
const maybe = <T>(values: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(values, { nil: undefined });

describe("steer", () => {
  test.prop([
    fc.record({
      log: fc.array(reading, { minLength: 1, maxLength: 15 }),
      nowS: maybe(real(0, 1e4)),
      ambientC: maybe(real(-50, 100)),
      vessel: maybe(
        fc.oneof(
          fc.constantFrom("tray-in-air" as const, "steel-tank-in-water" as const),
          fc.record({ timeConstantS: real(0.001, 1e7), logSd: real(0, 3) }),
        ),
      ),
      readingSdC: maybe(real(0.001, 5)),
      appearance: maybe(fc.record({ appearanceS: real(1, 300), factor: real(1, 60) })),
    }),
  ])("answers any log", (given) => {
    const answer = steer({ baseline: { timeS: 600, temperatureC: 20 }, conditions: {}, ...given });
    const { total, remaining } = answer;
    for (const { timeS, lowS, highS } of [total, remaining]) {
      expect(lowS).toBeLessThanOrEqual(timeS);
      expect(timeS).toBeLessThanOrEqual(highS);
      expect(Number.isFinite(highS)).toBe(true);
    }
    expect(total.lowS).toBeGreaterThan(0);
    const { nowS, lowS, timeS, highS } = answer.equivalent;
    expect(nowS).toBeGreaterThanOrEqual(0);
    expect(lowS).toBeLessThanOrEqual(timeS);
    expect(timeS).toBeLessThanOrEqual(highS);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
    for (const { path } of answer.cautions)
      if (path?.startsWith("/log/")) expect(given.log[Number(path.split("/")[2])]).toBeDefined();
  });
});
