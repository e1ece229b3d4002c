/*
 * The rules of use as they are printed, capacities, replenishment and areas. Units go
 * through an independent converter.
 */
import { convert } from "convert";
import { describe, expect, it } from "vitest";
import {
  bathState,
  bathVerdict,
  filmAreaCm2,
  genericUseLaw,
  handbookReplenishment,
  handbookUseLaw,
  replenishmentMl,
  useFactor,
  type UseLaw,
} from "../../../src/index.js";
import * as published from "../use.js";
import { eachRow } from "./ledger.js";

/** 80 square inches in cm², by the independent converter. */
const ROLL_CM2 = convert(80, "square inch").to("square centimeter");

export function checkUse(): void {
  it.each(published.useRules)("$id: the handbook's rule is the printed one", (record) => {
    eachRow(record, ({ developer, increase, rolls, volume, capacityRolls }) => {
      const law = handbookUseLaw(developer);
      const litres = volume === "gallon" ? convert(1, "gallon").to("liter") : 1;
      for (let portions = 0; portions * rolls <= capacityRolls; portions++)
        expect(useFactor(0, (portions * rolls * ROLL_CM2) / litres, law)).toBeCloseTo(
          1 + increase * portions,
          9,
        );
      const capacity = (capacityRolls * ROLL_CM2) / litres;
      expect(law.capacityCm2PerL).toBeCloseTo(capacity, 6);
      const verdict = (usedCm2PerL: number): string =>
        bathVerdict({ usedCm2PerL, capacityCm2PerL: law.capacityCm2PerL }).verdict;
      // Up to its capacity a bath takes more time, and past it none.
      expect(verdict(capacity * 0.999)).toBe("more-time");
      expect(verdict(capacity * 1.001)).toBe("discard");
    });
  });

  it("EXH-011: 15 % for 4 rolls in a US gallon are 14.2 % for a roll in a litre, 4.23 rolls in all", () => {
    const law = handbookUseLaw("metol-hydroquinone-borax");
    expect(useFactor(0, ROLL_CM2, law) - 1).toBeCloseTo(0.142, 3);
    expect(law.capacityCm2PerL / ROLL_CM2).toBeCloseTo(4.23, 2);
  });

  it("EXH-014: the tenth film in a litre takes 1.9 times, added as the maker writes, and 2.36 multiplied", () => {
    const law: UseLaw = handbookUseLaw("metol-hydroquinone-borax-per-film");
    expect(law.growth).toBe("linear");
    expect(useFactor(0, 9 * ROLL_CM2, law)).toBeCloseTo(published.tenthFilm.linear, 12);
    expect(useFactor(0, 9 * ROLL_CM2, { ...law, growth: "compound" })).toBeCloseTo(
      published.tenthFilm.compound,
      2,
    );
  });

  it("EXH-016: the linear rule for XTOL meets the steps where they begin, and runs ahead of them by up to 12 %", () => {
    const law = handbookUseLaw("phenidone-ascorbate");
    eachRow(published.stepRule, ({ first, last, factor }) => {
      // What the bath has developed before a roll decides its time: five rolls before the sixth.
      expect(useFactor(0, (first - 1) * ROLL_CM2, law)).toBeCloseTo(factor, 9);
      const ahead = useFactor(0, (last - 1) * ROLL_CM2, law) / factor;
      expect(ahead).toBeGreaterThan(1.09);
      expect(ahead).toBeLessThanOrEqual(1.1201);
    });
    expect(law.capacityCm2PerL / ROLL_CM2).toBeCloseTo(15, 5);
  });

  it("EXH-018: added minutes are no factor: what is 31 % of 6.5 min is 15 % of 13", () => {
    const increases = (minutes: number): readonly number[] =>
      published.addedMinutes.rows.map((row) => row.minutes / minutes);
    const perL = convert(1, "gallon").to("liter");
    eachRow(published.addedMinutes, ({ first, last, minutes }) => {
      // A linear rule drawn through 6.5 min meets the steps where they begin...
      const law: UseLaw = { increase: 1 / 6.5, perCm2PerL: (16 * ROLL_CM2) / perL, growth: "linear" };
      expect(6.5 * useFactor(0, ((first - 1) * ROLL_CM2) / perL, law)).toBeCloseTo(6.5 + minutes, 9);
      expect(6.5 * useFactor(0, ((last - 1) * ROLL_CM2) / perL, law)).toBeGreaterThan(6.5 + minutes);
      // ...and at 13 min asks for twice what is printed.
      expect(13 * useFactor(0, ((first - 1) * ROLL_CM2) / perL, law) - 13).toBeCloseTo(2 * minutes, 9);
    });
    expect(increases(6.5).map((share) => Math.round(share * 100))).toEqual([0, 15, 31]);
    expect(increases(13).map((share) => Math.round(share * 100))).toEqual([0, 8, 15]);
  });

  it("EXH-019: the generic rule lies in the practitioners' range, and its spread beyond it", () => {
    eachRow(published.perFilmRange, ({ low, high }) => {
      expect(useFactor(0, ROLL_CM2, genericUseLaw) - 1).toBeGreaterThanOrEqual(low);
      expect(useFactor(0, ROLL_CM2, genericUseLaw) - 1).toBeLessThanOrEqual(high);
      expect(genericUseLaw.increase - 1.6449 * genericUseLaw.sdIncrease!).toBeLessThan(low);
      expect(genericUseLaw.increase + 1.6449 * genericUseLaw.sdIncrease!).toBeGreaterThan(high);
    });
  });

  it.each(published.capacities)("$id: a capacity in cm² per litre, and the verdict past it", (record) => {
    eachRow(record, ({ area, areaUnit, volume, volumeUnit, rollsPerL }) => {
      const areaCm2 =
        areaUnit === "roll"
          ? area * filmAreaCm2("120")
          : convert(area, "square inch").to("square centimeter");
      const volumeMl = volumeUnit === "gallon" ? convert(volume, "gallon").to("milliliter") : volume;
      const { usedCm2PerL } = bathState({ volumeMl, mixedAtH: 0, processed: [{ atH: 0, areaCm2 }] }, 0);
      // Printed to two or three figures.
      expect(Math.abs(usedCm2PerL / ROLL_CM2 / rollsPerL - 1)).toBeLessThan(0.01);
      expect(bathVerdict({ usedCm2PerL: usedCm2PerL * 1.0001, capacityCm2PerL: usedCm2PerL }).verdict).toBe(
        "discard",
      );
      expect(bathVerdict({ usedCm2PerL, capacityCm2PerL: usedCm2PerL }).verdict).toBe("more-time");
    });
  });

  it.each(published.replenishment)("$id: replenisher for a roll", (record) => {
    eachRow(record, ({ ml, squareInches, mlPerRoll, key }) => {
      const areaCm2 = convert(squareInches, "square inch").to("square centimeter");
      const printed = replenishmentMl({ mlPerCm2: ml / areaCm2 }, filmAreaCm2("135-36"));
      expect(printed).toBeCloseTo(mlPerRoll, 9);
      if (key !== null)
        expect(replenishmentMl(handbookReplenishment[key], filmAreaCm2("135-36"))).toBeCloseTo(printed, 9);
    });
  });

  describe("replenishers printed in fluid ounces", () => {
    it("are the millilitres beside them, to their rounding", () => {
      const ounces = (n: number): number => convert(n, "US fluid ounce").to("milliliter");
      expect(ounces(8)).toBeCloseTo(237, 0);
      expect(ounces(1.5)).toBeCloseTo(44.4, 1);
      expect(ounces(0.75)).toBeCloseTo(22, 0);
    });
  });

  it("EXH-006: what counts as a roll", () => {
    eachRow(published.rollEquivalents, ({ format, perRoll }) => {
      expect((filmAreaCm2(format) * perRoll) / ROLL_CM2).toBeCloseTo(1, 9);
    });
    expect(ROLL_CM2).toBeCloseTo(516.1, 1);
  });
}
