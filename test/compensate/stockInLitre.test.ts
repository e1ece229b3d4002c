import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { compensate, handbookUseLaw, prepareCompensation, useFactor } from "../../src/index.js";

const ROLL = 516.128;
const use = handbookUseLaw("metol-hydroquinone-borax");
const known = { timeS: 480, temperatureC: 20, dilution: "stock" };
const useRow = (conditions: object): number =>
  compensate(known, conditions, { use }).factors.find(({ cause }) => cause === "use")!.value;

describe("a rule of use in a bath of another dilution", () => {
  it("counts an area by the stock in the litre", () => {
    expect(useRow({ usedCm2PerL: ROLL, dilution: "1+1" })).toBeCloseTo(useFactor(0, 2 * ROLL, use), 12);
    expect(useRow({ usedCm2PerL: ROLL })).toBeCloseTo(useFactor(0, ROLL, use), 12);
  });
  it("is at its capacity with half the area in 1+1, and not past it", () => {
    const at = (share: number) =>
      compensate(known, { usedCm2PerL: (share * use.capacityCm2PerL) / 2, dilution: "1+1" }, { use }).refused;
    expect([at(1), at(1.01)]).toEqual([false, true]);
  });
  test.prop([fc.integer({ min: 0, max: 9 }), fc.double({ min: 0, max: 500, noNaN: true })])(
    "is counted alike by compensate and by columns of many rows",
    (waterParts, usedCm2PerL) => {
      const ask = prepareCompensation(known, { use });
      const dilution = { stockParts: 1, waterParts };
      const { timeS } = compensate(known, { dilution, usedCm2PerL }, { use });
      expect(ask.timeS({ dilution, usedCm2PerL })).toBe(timeS);
      const columns = { waterParts: Float64Array.of(waterParts), usedCm2PerL: Float64Array.of(usedCm2PerL) };
      expect(ask.times(columns)[0]! / timeS).toBeCloseTo(1, 12);
    },
  );
});
