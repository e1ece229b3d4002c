import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { filmAreaCm2, parseUse } from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("parseUse", () => {
  it.each([
    ["516 cm2/l", 516],
    ["516.25 cm²/L", 516.25],
    ["516.1280 cm2/l", 516.128],
    // A thousand rolls are in no litre.
    ["1.125 rolls/l", 580.644],
    ["0.125 cm2/l", 0.125],
    ["0 cm2/l", 0],
    ["516cm2 / l", 516],
    // A roll is 80 square inches, 516.128 cm²: E. Brodie-Tyrrell, Fixer Capacity, analogue FAQ.
    ["1 roll/l", 516.128],
    ["1 roll per litre", 516.128],
    ["516 cm2 per l", 516],
    ["3 rolls/liter", 1548.384],
    [" 2 Rolls/l ", 1032.256],
    ["0.5 rolls/l", 258.064],
    ["0,5 rolls/l", 258.064],
    ["516,25 cm2/l", 516.25],
    ["1000000 cm2/l", 1e6],
    ["0", 0],
    ["1/2 roll/l", 258.064],
    ["2 rolls in 500 ml", 2064.512],
    ["2 rolls / 0.5 l", 2064.512],
    ["100 cm2 per 2 l", 50],
    ["2 Rollen/l", 1032.256],
    ["1 Rolle pro Liter", 516.128],
    ["2 films/l", 1032.256],
    ["2 Filme/l", 1032.256],
    ["1 Film in 500 ml", 1032.256],
    // Nothing was developed: no volume is needed.
    ["0 rolls", 0],
    ["0 Filme", 0],
    ["none", 0],
    [" Fresh ", 0],
    ["unbenutzt", 0],
    // Plates and sheets by their size: 9 times 12 is 108 cm².
    ["3 9x12cm/l", 324],
    ["3x 9x12/l", 324],
    ["3 x 9x12cm/l", 324],
    ["3x9x12 cm / l", 324],
    ["3 9x12cm in 500 ml", 648],
    ["3 9x12 in 500 ml", 648],
    ["3 Platten 9x12/500 ml", 648],
    ["2 9x12-Platten pro Liter", 216],
    ["2 Blatt 6,5x9cm/l", 117],
    ["3 Stück 9x12/l", 324],
    ["1 piece 9x12/l", 108],
    ["1 plate 4x5in/l", 129.032],
    ["4 4x5 in/l", 516.128],
    ["3 Rollfilme/l", 1548.384],
    ["2 roll films/l", 1032.256],
    ["ein Film/l", 516.128],
    ["a roll in 500 ml", 1032.256],
    ["0 9x12/l", 0],
  ])("reads %s", (text, cm2PerL) => {
    expect(parseUse(text)).toBeCloseTo(cm2PerL, 9);
  });
  it.each([
    "",
    "two rolls/l",
    "2 movies/l",
    "fresh 2 rolls/l",
    "-1 rolls/l",
    "x 2 rolls/l",
    "2 rolls/l x",
    "516 cm/l",
    "1.5.2 rolls/l",
    "39x12/l",
    "3 9x12x1/l",
  ])("refuses %j", (text) => {
    expect(() => parseUse(text)).toThrow(
      new RangeError(
        `parseUse: text must be a use such as "516 cm2/l", "2 rolls/l" or "3 9x12cm/l", got ${JSON.stringify(text)}`,
      ),
    );
  });
  // Plates have no area without their size.
  it.each(["3 Platten/500 ml", "3 plates/l", "2 Platten", "1 Stück", "2 Blatt", "a plate"])(
    "asks for the size of plates and the volume of their bath: %j",
    (text) => {
      expect(() => parseUse(text, { volumeMl: 500 })).toThrow(
        expect.objectContaining({
          code: "unreadable",
          expected: expect.objectContaining({ must: "volume-needed" }),
          message: expect.stringContaining('or in notes "3 plates 9x12" beside a column Volume, got'),
        }),
      );
      expect(parseUse("3 plates 9x12", { volumeMl: 500 })).toBe(648);
    },
  );
  it.each([
    ["516", ["516 cm2/l", "516 rolls/l"], [516, 266_322.048]],
    ["1,032 cm2/l", ["1.0320 cm2/l", "1032 cm2/l"], [1.032, 1032]],
    ["1.032 cm2/l", ["1.0320 cm2/l", "1032 cm2/l"], [1.032, 1032]],
    ["216 cm2/1.500 ml", ["216 cm2/1.5 ml", "216 cm2/1500 ml"], [144_000, 144]],
    ["2 rolls in 1,500 l", ["2 rolls in 1.5 l", "2 rolls in 1500 l"], [688.171, 0.688]],
    ["3 6x9/l", ["3 6x9 cm/l", "3 6x9 in/l"], [162, 1045.159]],
  ])("says both meanings of %j", (text, readings, uses) => {
    expect(() => parseUse(text)).toThrow(
      expect.objectContaining({ code: "ambiguous", expected: expect.objectContaining({ readings }) }),
    );
    expect(readings.map((one) => Number(parseUse(one).toFixed(3)))).toEqual(uses);
  });
  it("takes an amount of film with the volume of its bath, and asks for it", () => {
    expect(parseUse("2 rolls", { volumeMl: 500 })).toBe(2064.512);
    // What the text says comes first.
    expect(parseUse("2 rolls/l", { volumeMl: 500 })).toBe(1032.256);
    expect(parseUse("3 9x12", { volumeMl: 500 })).toBe(648);
    for (const text of ["2 rolls", "516 cm2", "3 9x12cm"])
      expect(() => parseUse(text)).toThrow(
        expect.objectContaining({
          code: "needs-counterpart",
          expected: expect.objectContaining({ must: "volume-needed" }),
        }),
      );
    expect(() => parseUse("2 rolls", { volumeMl: 0 })).toThrow(
      new RangeError("parseUse: options.volumeMl must be above 0 and at most 1000000 ml, got 0"),
    );
    expect(() => parseUse("2 rolls", anyOf(500))).toThrow(TypeError);
  });
  it("refuses more than a bath can have seen", () => {
    expect(() => parseUse("1000001 cm2/l")).toThrow(
      new RangeError("parseUse: text must be from 0 to 1000000 cm²/l, got 1000001"),
    );
    expect(() => parseUse("2000 rolls/l")).toThrow(
      "parseUse: text must be from 0 to 1000000 cm²/l, got 1032256",
    );
  });
  test.prop([
    fc.integer({ min: 1, max: 99 }),
    fc.constantFrom("9x12cm", "9x12", "6.5x9cm", "4x5in", "8x10", "90x120 mm"),
    fc.constantFrom(" ", "x ", " x ", " plates ", " Platten "),
    fc.constantFrom("/l", " per litre", " in 500 ml", "/2 l", " je 250 ml"),
  ])("counts plates and sheets as filmAreaCm2 does", (count, size, times, volume) => {
    const litres = volume.includes("500")
      ? 0.5
      : volume.includes("250")
        ? 0.25
        : volume.includes("2 l")
          ? 2
          : 1;
    const cm2PerL = (count * filmAreaCm2(size)) / litres;
    expect(parseUse(`${count}${times}${size}${volume}`)).toBeCloseTo(cm2PerL, 6);
    expect(parseUse(`${count}${times}${size.replace(".", ",")}${volume}`)).toBeCloseTo(cm2PerL, 6);
  });
  it.each([516, null, undefined, ["2 rolls/l"]])("refuses %j by kind", (value) => {
    expect(() => parseUse(anyOf(value))).toThrow(TypeError);
    expect(() => parseUse(anyOf(value))).toThrow(/^parseUse: text (must be|is missing:) a use such as/);
  });
  test.prop([fc.integer({ min: 0, max: 1900 })])("counts rolls as filmAreaCm2 does", (rolls) => {
    expect(parseUse(`${rolls} rolls/l`)).toBeCloseTo(rolls * filmAreaCm2("120"), 5);
    // As it is written: ten rolls are 5161.28 cm²/l, not 5161.280000000001, and so at a capacity of ten
    // rolls.
    expect(String(parseUse(`${rolls} rolls/l`))).toMatch(/^\d+(\.\d{1,3})?$/);
  });
});
