/* What must hold of the use and the age of a bath. */
import { fc, test } from "../property.js";
import { describe, expect } from "vitest";
import { livesUntil } from "../../src/age/livesUntil.js";
import { isPast } from "../../src/core/caution.js";
import { isInputError } from "../../src/core/errors.js";
import { bathState, bathVerdict, compensate, useFactor } from "../../src/index.js";
import { ageH, ageLaw, usedCm2PerL, useLaw } from "./generators.js";

const sorted = (a: number, b: number): readonly [number, number] => (a < b ? [a, b] : [b, a]);

describe("use", () => {
  test.prop([useLaw, usedCm2PerL])(
    "multiplied is never less than added past the first portion, nor more before it",
    (law, used) => {
      const linear = useFactor(0, used, { ...law, growth: "linear" });
      const compound = useFactor(0, used, { ...law, growth: "compound" });
      if (used >= law.perCm2PerL) expect(compound).toBeGreaterThanOrEqual(linear * (1 - 1e-12));
      else expect(compound).toBeLessThanOrEqual(linear * (1 + 1e-12));
    },
  );
  test.prop([useLaw, usedCm2PerL, usedCm2PerL])(
    "a compound rule multiplies over what is added, a linear one adds",
    (law, a, b) => {
      const f = (growth: "linear" | "compound", used: number): number =>
        useFactor(0, used, { ...law, growth });
      // Past a factor of 1000 the rule is refused.
      fc.pre(f("compound", law.perCm2PerL) ** ((a + b) / law.perCm2PerL) <= 999);
      expect(f("compound", a + b) / (f("compound", a) * f("compound", b))).toBeCloseTo(1, 10);
      // As it is printed: an increase that was learned scales what was added.
      const printed = (used: number): number =>
        useFactor(0, used, { ...law, growth: "linear", shape: law.increase });
      expect(printed(a + b) - printed(a)).toBeCloseTo(printed(b) - 1, 9);
    },
  );
});

describe("the ledger of a bath", () => {
  const entry = fc.record({
    atH: fc.integer({ min: 0, max: 100 }),
    areaCm2: fc.constantFrom(100, 516.128, 1032.256),
  });
  test.prop([
    fc.array(entry, { maxLength: 8 }),
    fc.integer({ min: 0, max: 100 }),
    fc.integer({ min: 0, max: 100 }),
  ])("only grows, in any order of its entries, and holds everything at last", (processed, a, b) => {
    const ledger = { volumeMl: 500, mixedAtH: 0, processed };
    const [early, late] = sorted(a, b);
    expect(bathState(ledger, late).usedCm2PerL).toBeGreaterThanOrEqual(
      bathState(ledger, early).usedCm2PerL - 1e-9,
    );
    const reversed = { ...ledger, processed: processed.slice().reverse() };
    expect(bathState(reversed, late).usedCm2PerL).toBeCloseTo(bathState(ledger, late).usedCm2PerL, 9);
    expect(bathState(ledger, 100).usedCm2PerL).toBeCloseTo(
      2 * processed.reduce((sum, { areaCm2 }) => sum + areaCm2, 0),
      9,
    );
    expect(bathState(ledger, late).ageH).toBe(late);
  });
});

/** What a call gives, or nothing where it refuses its input. */
function worked<T>(call: () => T): T | undefined {
  try {
    return call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    return undefined;
  }
}

describe("the verdict", () => {
  const rank = { "usable": 0, "more-time": 1, "unknown": 2, "discard": 3 };
  test.prop([useLaw, usedCm2PerL, usedCm2PerL, ageLaw, ageH, ageH])(
    "never gets better with use or age",
    (use, a, b, age, c, d) => {
      const [less, more] = sorted(a, b);
      const [young, old] = sorted(c, d);
      const before = bathVerdict({ usedCm2PerL: less, ageH: young, use, age });
      const after = bathVerdict({ usedCm2PerL: more, ageH: old, use, age });
      expect(rank[after.verdict]).toBeGreaterThanOrEqual(rank[before.verdict]);
      expect(after.verdict === "usable" || after.cautions.length > 0).toBe(true);
    },
  );
  test.prop([
    fc.option(useLaw, { nil: undefined }),
    usedCm2PerL,
    fc.option(ageLaw, { nil: undefined }),
    ageH,
    fc.constantFrom("stock", "1+1", "1+9"),
    fc.option(fc.constantFrom(500, 5000), { nil: undefined }),
  ])("is to discard exactly where compensate stops", (law, used, age, old, dilution, capacityCm2PerL) => {
    const laws = {
      ...(law && { use: { ...law, dilution: "stock", capacityCm2PerL } }),
      ...(age && { age }),
    };
    const known = { timeS: 600, temperatureC: 20, dilution };
    const bath = { usedCm2PerL: used, ageH: old, dilution, ...laws };
    const answer = worked(() => compensate(known, { usedCm2PerL: used, ageH: old }, laws));
    // A rule of use gives no time past a thousand times that of a fresh bath.
    if (answer === undefined) {
      expect(bathVerdict(bath).verdict).toBe("discard");
      expect(bathVerdict(bath).factor).toBeGreaterThanOrEqual(1000);
      return;
    }
    const { cautions, timeS, highS } = answer;
    const stops = cautions.filter(({ severity, code }) => severity === "stop" && code.startsWith("bath-"));
    const judged = bathVerdict({ ...bath, timeS, highS });
    expect(stops.length > 0).toBe(judged.verdict === "discard");
    // The same limits by the same numbers in the same words.
    const bare = (all: typeof cautions) =>
      all
        .filter(({ code }) => /^bath-(past|too)/.test(code))
        .map(({ path, ...rest }) => ({ ...rest, path: path?.replace("/conditions", "") }));
    expect(bare(cautions)).toEqual(bare(judged.cautions));
  });
  test.prop([fc.integer({ min: 1, max: 1000 }), fc.integer({ min: 1, max: 1000 })])(
    "takes a sum of tenths at a limit for the limit, as compensate does",
    (a, b) => {
      const [sum, limit] = [a / 10 + b / 10, (a + b) / 10];
      const use = { increase: 0.001, perCm2PerL: 516.128, growth: "linear", capacityCm2PerL: limit } as const;
      const age = { kind: "life", lifeH: limit } as const;
      expect(bathVerdict({ usedCm2PerL: sum, ageH: sum, use, age }).verdict).toBe("usable");
      const { cautions } = compensate({ timeS: 1e-3, temperatureC: 20 }, { usedCm2PerL: sum }, { use });
      expect(cautions.map(({ code }) => code)).not.toContain("bath-past-capacity");
      expect(livesUntil({ lifeH: limit, ageH: sum })).toEqual([]);
    },
  );
  test.prop([fc.double({ min: 0.1, max: 1e4, noNaN: true }), fc.double({ min: 0, max: 1e6, noNaN: true })])(
    "beyond ten half-lives is a stop, and no error",
    (halfLifeH, old) => {
      const age = { kind: "half-life", halfLifeH } as const;
      const { timeS, cautions } = compensate({ timeS: 600, temperatureC: 20 }, { ageH: old }, { age });
      expect(timeS).toBeLessThanOrEqual(600 * 1024 * (1 + 1e-9));
      expect(cautions.some(({ code }) => code === "bath-too-slow")).toBe(isPast(old, halfLifeH));
      expect(bathVerdict({ ageH: old, age }).verdict === "discard").toBe(isPast(old, halfLifeH));
    },
  );
});
