import { describe, expect, it } from "vitest";
import { handbookKeeping, handbookReplenishment, replenishmentMl } from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("replenishmentMl", () => {
  it("adds replenisher by area", () => {
    // US Army correspondence subcourse SS0513, p. 23: 8 fl oz (236.6 ml) of replenisher for 800 square
    // inches.
    expect(replenishmentMl(handbookReplenishment["tank-generic"], 800 * 2.54 ** 2)).toBeCloseTo(236.6, 0);
    expect(() => replenishmentMl({ mlPerCm2: 0 }, 1)).toThrow(
      new RangeError("replenishmentMl: rule.mlPerCm2 must be above 0 and at most 10 ml/cm², got 0"),
    );
    expect(() => replenishmentMl({ mlPerCm2: 1 }, 0)).toThrow(
      new RangeError("replenishmentMl: areaCm2 must be above 0 and at most 1000000 cm², got 0"),
    );
    expect(() => replenishmentMl(anyOf(1), 1)).toThrow(
      new TypeError("replenishmentMl: rule must be an object, got 1"),
    );
  });
});

describe("keeping limits of the handbook", () => {
  it("have a source each", () => {
    for (const { limitH, sources } of handbookKeeping) {
      expect(limitH).toBeGreaterThan(0);
      expect(sources.join("").length).toBeGreaterThan(20);
    }
  });
});
