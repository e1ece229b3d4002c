/*
 * Units against an independent converter (npm: convert), whose factors are not ours.
 */
import { convert } from "convert";
import { describe, expect, it } from "vitest";
import { celsiusToFahrenheit, fahrenheitToCelsius, filmAreaCm2 } from "../../src/index.js";
import { fc, test } from "../property.js";

describe("units against an independent converter", () => {
  test.prop([fc.double({ min: -459.67, max: 10000, noNaN: true })])("°F to °C", (f) => {
    // The converter goes through kelvin, which costs it some bits.
    expect(Math.abs(fahrenheitToCelsius(f) - convert(f, "fahrenheit").to("celsius"))).toBeLessThan(1e-9);
  });
  test.prop([fc.double({ min: -273.15, max: 5500, noNaN: true })])("°C to °F", (c) => {
    expect(Math.abs(celsiusToFahrenheit(c) - convert(c, "celsius").to("fahrenheit"))).toBeLessThan(1e-9);
  });
  it.each([32, 50, 61, 65, 68, 70, 72, 75, 80, 212])("%d °F as on a darkroom thermometer", (f) => {
    expect(Math.abs(fahrenheitToCelsius(f) - convert(f, "fahrenheit").to("celsius"))).toBeLessThan(1e-10);
  });
  it.each([
    [4, 5],
    [8, 10],
    [2.25, 3.25],
    [11, 14],
  ])("a sheet of %d × %d inches in cm²", (width, height) => {
    const area = convert(width, "inch").to("centimeter") * convert(height, "inch").to("centimeter");
    expect(filmAreaCm2(`${width}x${height}in`)).toBeCloseTo(area, 9);
    expect(filmAreaCm2(`${width}x${height}in`)).toBeCloseTo(
      convert(width * height, "square inch").to("square centimeter"),
      8,
    );
  });
  it("millimetres and centimetres of one plate agree", () => {
    expect(filmAreaCm2("90x120mm")).toBeCloseTo(filmAreaCm2("9x12cm"), 12);
    expect(filmAreaCm2("24x36mm")).toBeCloseTo(convert(24 * 36, "mm2").to("cm2"), 9);
  });
});
