import { test } from "../property.js";
import { describe, expect, it } from "vitest";
import { effect, genericUseLaw, useFactor } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { area, useLaw } from "./drawn.js";

describe("the spread of use", () => {
  test.prop([useLaw, area, area])("is the share of ln f to which the increase is known", (law, a, b) => {
    const logFactor = Math.log(useFactor(0, b, law) / useFactor(0, a, law));
    expect(effect("use", a, b, { ...law, sdIncrease: 0.6 * law.increase }).logSd).toBeCloseTo(
      0.6 * Math.abs(logFactor),
      9,
    );
    expect(effect("use", a, b, law).logSd).toBe(
      effect("use", b, a, { ...law, sdIncrease: law.increase / 4 }).logSd,
    );
    expect(effect("use", a, a, law).logSd).toBe(0);
  });
  it("of an increase of 0 is that of an increase for each portion", () => {
    const none = { increase: 0, perCm2PerL: 100, growth: "linear", sdIncrease: 0.05 } as const;
    expect(effect("use", 100, 300, none).logSd).toBeCloseTo(0.1, 9);
    expect(effect("use", 100, 300, { ...none, growth: "compound" }).logSd).toBeCloseTo(0.1, 9);
  });
  it("names itself in its errors", () => {
    expect(() => effect("use", 0, 0, anyOf(1)).logSd).toThrow("effect: law must be an object, got 1");
    expect(() => effect("use", -1, 0, genericUseLaw).logSd).toThrow(
      "effect: from must be from 0 to 1000000 cm²/l, got -1",
    );
  });
});
