/* Parts that nearly sum, tables at their steepest, spreads outside a table, and whose law it is. */
import { describe, expect, it } from "vitest";
import { basisOf } from "../../src/core/term.js";
import { effect, dilutionFactor, fitDilutionLaw, handbookDilutionLaw, mixVolumes } from "../../src/index.js";

describe("stocks", () => {
  it("must sum to the stock to a part in a thousand million, however small the parts", () => {
    // 0.00500005 + 0.005 is 5 parts in a million above 0.01.
    expect(() =>
      mixVolumes({ stockParts: 0.01, waterParts: 0.09, stocks: [0.00500005, 0.005] }, 1000),
    ).toThrow("parts that sum to 0.01");
  });
});

describe("a table", () => {
  it("may rise with the fifth power of dilution", () => {
    // Half the strength, 2^5 = 32 times the time.
    const rows = [
      { dilution: "stock", timeS: 1 },
      { dilution: "1+1", timeS: 32 },
    ];
    expect(dilutionFactor("stock", "1+1", { kind: "table", rows })).toBeCloseTo(32, 10);
  });
  it("grows less certain with both distances beyond its rows", () => {
    // Stock lies ln 2 above 1+1, 1+7 lies ln 2 below 1+3: thrice the way between the rows, whose times are
    // good to 0.025, and n is 0.25 less sure beyond them, and no power sure.
    const rows = [
      { dilution: "1+1", timeS: 300 },
      { dilution: "1+3", timeS: 600 },
    ];
    expect(effect("dilution", "stock", "1+7", { kind: "table", rows }).logSd).toBeCloseTo(
      Math.hypot(0.025 * Math.SQRT2 * 3, 0.25 * 2 * Math.LN2, 0.19 * Math.sqrt(2 * Math.LN2)),
      12,
    );
  });
});

describe("a fitted law", () => {
  it("tells how far its rows scatter about a power", () => {
    // Residuals 0.1, −0.2, 0.1 leave a square sum of 0.06 and one degree of freedom.
    const rows = [
      { dilution: "stock", timeS: 300 * Math.exp(0.1) },
      { dilution: "1+1", timeS: 600 * Math.exp(-0.2) },
      { dilution: "1+3", timeS: 1200 * Math.exp(0.1) },
    ];
    expect(fitDilutionLaw(rows).residualLogSd).toBeCloseTo(Math.sqrt(0.06), 12);
  });
});

describe("a law of the handbook", () => {
  it("says that it is one, also where its figures were not seen in print", () => {
    expect(basisOf(handbookDilutionLaw("glycin"))).toBe("handbook");
    expect(basisOf(handbookDilutionLaw("solvent-stock"))).toBe("handbook");
  });
});
