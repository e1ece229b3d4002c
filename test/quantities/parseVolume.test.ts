/* Volumes in text. */
import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { parseVolume } from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("parseVolume", () => {
  // SI prefixes and 1 ml = 1 cm³: BIPM, The International System of Units, 9th ed., Sèvres, 2019.
  it.each([
    ["500 ml", 500],
    ["half a litre", 500],
    ["ein halber Liter", 500],
    ["a litre", 1000],
    ["einen Liter", 1000],
    ["500ml", 500],
    ["500 ML", 500],
    ["0.5 l", 500],
    ["0,5 L", 500],
    ["1,25 litres", 1250],
    ["2 liter", 2000],
    ["1 litre", 1000],
    ["300 millilitres", 300],
    ["60 cl", 600],
    ["6 dl", 600],
    ["5 decilitres", 500],
    ["5 centiliters", 50],
    ["600 cc", 600],
    ["600 ccm", 600],
    ["600 cm3", 600],
    ["600 cm³", 600],
    [" 0,125 l ", 125],
    // In doubles 1.1 × 1000 is 1100.0000000000002.
    ["1.1 l", 1100],
    ["1000 l", 1e6],
    ["1/2 l", 500],
    ["1 1/2 l", 1500],
    ["½ l", 500],
    ["1½ Liter", 1500],
    // Three figures behind the point of litres are millilitres.
    ["1.500 l", 1500],
    ["0.125 ml", 0.125],
    ["1000.125 ml", 1000.125],
  ])("reads %j", (text, ml) => {
    expect(parseVolume(text)).toBe(ml);
  });
  it.each([
    "",
    "  ",
    "ml",
    "half a",
    "500 g",
    "1,234 g",
    "1,234",
    "-5 ml",
    "500 ml x",
    "x 500 ml",
    "5 mm3",
    "5 fl",
  ])("refuses %j", (text) => {
    expect(() => parseVolume(text)).toThrow(
      expect.objectContaining({
        code: text.trim() === "" ? "empty" : "unreadable",
        path: "/text",
        actual: text,
      }),
    );
  });
  // NIST Special Publication 811, Gaithersburg, 2008, appendix B.8: United States and imperial (Canadian and
  // U.K.) measures.
  it.each([
    ["500", ["500 ml", "500 l"]],
    ["0,5", ["0.5 ml", "0.5 l"]],
    ["1.000 ml", ["1 ml", "1000 ml"]],
    ["1.500 ml", ["1.5 ml", "1500 ml"]],
    ["1.234 cc", ["1.2340 cc", "1234 cc"]],
    ["1,000 ml", ["1 ml", "1000 ml"]],
    ["1,500 l", ["1.5 l", "1500 l"]],
    ["16 fl oz", ["473.2 ml", "454.6 ml"]],
    ["16oz.", ["473.2 ml", "454.6 ml"]],
    ["1 fl. oz", ["29.57 ml", "28.41 ml"]],
    ["2 fluid ounces", ["59.15 ml", "56.83 ml"]],
    ["1 pint", ["473.2 ml", "568.3 ml"]],
    ["1 quart", ["946.4 ml", "1137 ml"]],
    ["1 gal", ["3785 ml", "4546 ml"]],
  ])("says both meanings of %j", (text, readings) => {
    expect(() => parseVolume(text)).toThrow(
      expect.objectContaining({
        code: "ambiguous",
        path: "/text",
        expected: expect.objectContaining({ readings }),
      }),
    );
    // 1500 l is more than a bath holds, and says so.
    for (const reading of readings.filter((one) => one !== "1500 l"))
      expect(parseVolume(reading)).toBeGreaterThan(0);
  });
  it("refuses nothing, and more than a bath holds", () => {
    for (const text of ["0 ml", "1001 l"])
      expect(() => parseVolume(text)).toThrow(
        expect.objectContaining({ code: "out-of-range", path: "/text" }),
      );
  });
  it.each([500, null, undefined, ["500 ml"]])("refuses %j by kind", (value) => {
    expect(() => parseVolume(anyOf(value))).toThrow(TypeError);
  });
  test.prop([fc.integer({ min: 1, max: 1e6 })])("reads ml, cl, dl and l alike", (ml) => {
    expect(parseVolume(`${ml} ml`)).toBe(ml);
    expect(parseVolume(`${ml / 10} cl`)).toBe(ml);
    expect(parseVolume(`${ml / 100} dl`)).toBe(ml);
  });
});
