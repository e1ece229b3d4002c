/* What the compiler knows of an answer's rows, and of what each cause takes. */
import { describe, expect, expectTypeOf, it } from "vitest";
import {
  causeNames,
  compensate,
  effect,
  type CauseName,
  type EffectArguments,
  type FactorCause,
  type PairName,
  type TemperatureLaw,
} from "../../src/index.js";
import { answerTexts } from "../../src/text/answerTexts.js";
import { de } from "../../src/texts/de.js";

describe("the cause of a row", () => {
  it("is one of the names that a catalogue has", () => {
    const known = { timeS: 510, temperatureC: 20, dilution: "1+9" };
    const today = {
      temperatureC: 14,
      dilution: "1+19",
      thermometer: "the glass one",
      by: "the guest",
      batch: "2",
    };
    const { factors } = compensate(known, today);
    expectTypeOf(factors[0]!.cause).toEqualTypeOf<
      CauseName | PairName | "thermometer" | "by" | "batch" | "baseline"
    >();
    expectTypeOf<FactorCause>().toExtend<keyof typeof answerTexts.causes>();
    const named = factors.map(({ cause }) => [answerTexts.causes[cause], de.causes[cause]]);
    expect(named).toEqual([
      ["known time", "bekannte Zeit"],
      ["temperature", "Temperatur"],
      ["dilution", "Verdünnung"],
      ["temperature and dilution together", "Temperatur mit Verdünnung"],
      ["thermometer", "Thermometer"],
      ["judged by", "Urteil"],
      ["batch", "Ansatz"],
    ]);
  });
});

describe("what effect takes", () => {
  it("is named for every cause and pair", () => {
    expectTypeOf<keyof EffectArguments>().toEqualTypeOf<CauseName | PairName>();
    expect(causeNames).toHaveLength(8);
  });

  it("is a side and a law of the cause that is asked", () => {
    expectTypeOf(effect<"temperature">).parameters.toEqualTypeOf<
      [cause: "temperature", from: number, to: number, law?: TemperatureLaw | undefined]
    >();
    // @ts-expect-error -- a dilution is text or parts
    expect(() => effect("dilution", 9, "1+9")).toThrow(TypeError);
    // @ts-expect-error -- a temperature is a number
    expect(() => effect("temperature", "20", 14)).toThrow(TypeError);
    // @ts-expect-error -- no law of temperature is of this kind
    expect(() => effect("temperature", 20, 14, { kind: "nope" })).toThrow(RangeError);
    // @ts-expect-error -- a dilution law is not a temperature law
    expect(() => effect("temperature", 20, 14, { kind: "power", exponent: 1 })).toThrow(RangeError);
    // @ts-expect-error -- each side of a pair gives both conditions
    expect(() => effect("interaction", 20, 14)).toThrow(TypeError);
    // @ts-expect-error -- no such cause
    expect(() => effect("hardness", 5, 25)).toThrow(RangeError);
    expect(effect("dilution", { stockParts: 1, waterParts: 9 }, "1+9").factor).toBe(1);
  });
});
