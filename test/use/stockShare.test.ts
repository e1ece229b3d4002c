import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { handbookUseLaw } from "../../src/index.js";
import { stockShare } from "../../src/use/stockShare.js";

const law = handbookUseLaw("metol-hydroquinone-borax");

describe("stockShare", () => {
  it("is half in 1+1 for a rule that was printed for stock", () => {
    expect(stockShare("test", "1+1", law)).toBeCloseTo(0.5, 12);
    expect(stockShare("test", { stockParts: 1, waterParts: 3 }, law)).toBeCloseTo(0.25, 12);
    expect(stockShare("test", "1+25", { ...law, dilution: "1+100" })).toBeCloseTo(101 / 26, 12);
  });
  it("is 1 where the rule or the bath says nothing", () => {
    expect(stockShare("test", undefined, law)).toBe(1);
    expect(stockShare("test", "1+1", { ...law, dilution: undefined })).toBe(1);
  });
  it("gives the capacity that is printed for 1+1: 8 rolls a gallon against 16 of stock", () => {
    // Eastman Kodak, publication J-78 (from memory).
    const rollsPerGallon = (dilution: string): number =>
      (law.capacityCm2PerL * stockShare("test", dilution, law) * 3.785411784) / 516.128;
    expect(rollsPerGallon("stock")).toBeCloseTo(16, 9);
    expect(rollsPerGallon("1+1")).toBeCloseTo(8, 9);
  });
  it("refuses a dilution that cannot be read, at its place", () => {
    expect(() => stockShare("bathVerdict/bath", "1:9", law)).toThrow(/^bathVerdict: bath.dilution/);
    expect(() => stockShare("bathVerdict/bath", undefined, { ...law, dilution: "1:9" })).toThrow(
      /^bathVerdict: bath.use.dilution/,
    );
  });
  test.prop([fc.integer({ min: 0, max: 200 }), fc.integer({ min: 1, max: 200 })])(
    "falls with more water",
    (a, more) => {
      const b = a + more;
      expect(stockShare("test", `1+${a}`, law)).toBeGreaterThan(stockShare("test", `1+${b}`, law));
    },
  );
});
