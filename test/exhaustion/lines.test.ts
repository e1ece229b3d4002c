/* Room: exhaustion. Laws as numbers, and what the factor does when the number moves: against the factors themselves. */
import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { ageFactor, ageLogSd, useFactor, useLogSd, type AgeLaw, type UseLaw } from "../../src/index.js";
import { ageNumber, ageRange, ageLine, withAgeNumber } from "../../src/age/ageLine.js";
import { useNumber, useLine, withUseNumber } from "../../src/use/useLine.js";

const useLaw = fc.record({
  increase: fc.double({ min: 0.001, max: 1, noNaN: true }),
  perCm2PerL: fc.constant(516.128),
  growth: fc.constantFrom<UseLaw["growth"]>("linear", "compound"),
});
const ageLaw = fc.oneof(
  fc.record({
    kind: fc.constant("half-life" as const),
    halfLifeH: fc.double({ min: 10, max: 1e4, noNaN: true }),
  }),
  fc.record({
    kind: fc.constant("slowing" as const),
    perRootH: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  }),
);

describe("a law as a number", () => {
  test.prop([useLaw, fc.double({ min: 0, max: 3000, noNaN: true })])(
    "has the log of the use factor, straight in the increase, and its slope by differences",
    (law, used) => {
      const [log, slope] = useLine("test:", law, used);
      expect(log).toBeCloseTo(Math.log(useFactor(0, used, law)), 10);
      for (const increase of [1e-9, law.increase / 2, 1.5 * law.increase]) {
        const moved = withUseNumber(law, [increase, 0.01]);
        expect(moved).toEqual({ ...law, increase, sdIncrease: 0.01, shape: law.increase });
        expect(Math.log(useFactor(0, used, moved))).toBeCloseTo(log + (increase - law.increase) * slope, 9);
        expect(withUseNumber(law, [0, 0.01])).toEqual(withUseNumber(law, [1e-9, 0.01]));
        // Moved again, it is still the curve of the first.
        expect(withUseNumber(moved, [0.2, 0.02])).toEqual(withUseNumber(law, [0.2, 0.02]));
      }
    },
  );
  test.prop([useLaw, fc.double({ min: 0, max: 3000, noNaN: true })])(
    "has the spread that useLogSd gives",
    (law, used) => {
      const [, sd] = useNumber(law);
      expect(sd * useLine("test:", law, used)[1]).toBeCloseTo(useLogSd(law, 0, used), 10);
    },
  );
  test.prop([ageLaw, fc.double({ min: 0, max: 90, noNaN: true })])(
    "has the log of the age factor, linear in the rate, and the spread that ageLogSd gives",
    (law, ageH) => {
      const [log, slope] = ageLine(law, ageH);
      const [rate, sd] = ageNumber(law);
      expect(log).toBeCloseTo(Math.log(ageFactor(0, ageH, law)), 10);
      expect(rate * slope).toBeCloseTo(log, 10);
      expect(sd * slope).toBeCloseTo(ageLogSd(law, 0, ageH), 10);
    },
  );
  test.prop([
    ageLaw,
    fc.double({ min: 1e-3, max: 0.5, noNaN: true }),
    fc.double({ min: 1e-3, max: 0.5, noNaN: true }),
  ])("comes back from a law with that number", (law, value, share) => {
    const moved: AgeLaw = withAgeNumber(law, [value, share * value]);
    expect(moved.kind).toBe(law.kind);
    expect(ageNumber(moved)[0]).toBeCloseTo(value, 12);
    expect(ageNumber(moved)[1]).toBeCloseTo(share * value, 12);
  });
  it("leaves the life of a bath as it is", () => {
    const law = { kind: "life", lifeH: 4 } as const;
    expect([ageLine(law, 3), ageNumber(law), withAgeNumber(law, [1, 1])]).toEqual([[0, 0], [0, 0], law]);
  });
  it("keeps a rate where an age law can be made of it", () => {
    const longest = { kind: "half-life", halfLifeH: 1e6 } as const;
    const [least] = ageRange(longest, 0);
    expect(withAgeNumber(longest, [least, 0])).toEqual({ kind: "half-life", halfLifeH: 1e6, sdLog: 0 });
    const [low, high] = ageRange({ kind: "half-life", halfLifeH: 10 }, 0.3);
    expect(low).toBeCloseTo(0.1, 9);
    expect(low).toBeLessThan(0.1);
    expect(high).toBe(1000);
    expect(withAgeNumber({ kind: "half-life", halfLifeH: 10 }, [low, 0.3])).toMatchObject({ sdLog: 3 });
    expect(() =>
      ageLogSd(withAgeNumber({ kind: "half-life", halfLifeH: 10 }, [low, 0.3]), 0, 1),
    ).not.toThrow();
    expect(ageRange({ kind: "half-life", halfLifeH: 1e-6 }, 0)[1]).toBe(Math.LN2 / 1e-6);
    expect(ageRange({ kind: "slowing", perRootH: 0 }, 1)).toEqual([-1, 1]);
  });
});
