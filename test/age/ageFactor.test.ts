import { describe, expect, it } from "vitest";
import { ageFactor, type AgeLaw } from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("ageFactor", () => {
  it("doubles the time each half-life, up to ten", () => {
    const law: AgeLaw = { kind: "half-life", halfLifeH: 24 };
    expect(ageFactor(0, 0, law)).toBe(1);
    expect(ageFactor(0, 24, law)).toBe(2);
    expect(ageFactor(0, 240, law)).toBeCloseTo(1024, 9);
    expect(() => ageFactor(0, 240.1, law)).toThrow(
      new RangeError("ageFactor: toH must be at most 240 h, how long the bath works, got 240.1"),
    );
  });
  it("stays at full strength through a life, and gives no time past it", () => {
    const law: AgeLaw = { kind: "life", lifeH: 1.5 };
    expect([0, 1, 1.5].map((h) => ageFactor(0, h, law))).toEqual([1, 1, 1]);
    expect(() => ageFactor(0, 1.5000001, law)).toThrow(
      new RangeError("ageFactor: toH must be at most 1.5 h, how long the bath works, got 1.5000001"),
    );
  });
  it("takes the age from which a bath may fail, up to its life", () => {
    const at = (lowH: number): number => ageFactor(0, 1, { kind: "life", lifeH: 1.5, lowH });
    expect([at(0.1), at(1.5)]).toEqual([1, 1]);
    expect(() => at(1.6)).toThrow(
      new RangeError("ageFactor: law.lowH must be above 0 and at most 1.5 h, got 1.6"),
    );
    expect(() => at(0)).toThrow(
      new RangeError("ageFactor: law.lowH must be above 0 and at most 1.5 h, got 0"),
    );
  });
  it("grows slowly at first under a speeding law, and no further by its number after a day", () => {
    const law: AgeLaw = { kind: "speeding", perDay: 0.4 };
    expect(ageFactor(0, 24, law)).toBeCloseTo(Math.exp(0.4), 12);
    expect(ageFactor(0, 6, law)).toBeCloseTo(Math.exp(0.4 / 8), 12);
    expect(ageFactor(6, 24, law)).toBeCloseTo(Math.exp(0.4 * (1 - 1 / 8)), 12);
    // A day past the day that it covers: the bath is slower by an unknown x of 8 %, whose mean is 0.8 of it.
    expect(ageFactor(24, 48, law)).toBeCloseTo(Math.exp(0.8 * 0.08), 12);
    // 976 h past its day are 40 times what it covers: x is held at 3 - 0.08.
    expect(ageFactor(24, 1000, law)).toBeCloseTo(Math.exp(0.8 * 2.92), 9);
    // A law that holds for three days says so: only its number ends after one.
    expect(ageFactor(24, 72, { ...law, coversH: 72 })).toBe(1);
    expect(ageFactor(24, 144, { ...law, coversH: 72 })).toBeCloseTo(Math.exp(0.8 * 0.08), 12);
    expect(ageFactor(0, 24, { ...law, perDay: -0.1 })).toBeCloseTo(Math.exp(-0.1), 12);
    expect(() => ageFactor(0, 1, { ...law, perDay: 2 })).toThrow(
      new RangeError("ageFactor: law.perDay must be from -1 to 1, got 2"),
    );
  });
  it("counts the days past the first one alike, whether runs have taught the first or not", () => {
    for (const toH of [12, 24, 25, 30, 48, 72, 500, 1e4]) {
      const taught = ageFactor(0, toH, { kind: "speeding", perDay: 0, runs: 1 });
      expect(taught).toBe(ageFactor(0, toH, { kind: "speeding", perDay: 0, runs: 0 }));
    }
  });
  it("is at the end of a life up to rounding: 0.1 and 0.2 h are a life of 0.3", () => {
    expect(ageFactor(0, 0.1 + 0.2, { kind: "life", lifeH: 0.3 })).toBe(1);
    expect(() => ageFactor(0.4, 0, { kind: "life", lifeH: 0.3 })).toThrow(
      "ageFactor: fromH must be at most 0.3 h, how long the bath works, got 0.4",
    );
  });
  it("refuses values out of range, by message", () => {
    expect(() => ageFactor(0, 1, anyOf(1))).toThrow(new TypeError("ageFactor: law must be an object, got 1"));
    expect(() => ageFactor(0, 1, anyOf({ kind: "cliff" }))).toThrow(
      new RangeError('ageFactor: law.kind must be "half-life", "life", "slowing" or "speeding", got "cliff"'),
    );
    expect(() => ageFactor(0, 0, { kind: "life", lifeH: 0 })).toThrow(
      new RangeError("ageFactor: law.lifeH must be above 0 and at most 1000000 h, got 0"),
    );
    expect(() => ageFactor(0, 0, { kind: "half-life", halfLifeH: -1 })).toThrow(
      new RangeError("ageFactor: law.halfLifeH must be from 0.001 to 1000000 h, got -1"),
    );
    expect(() => ageFactor(0, -1, { kind: "life", lifeH: 1 })).toThrow(
      new RangeError("ageFactor: toH must be from 0 to 1000000 h, got -1"),
    );
  });
});
