/* Temperatures and bare numbers in text. */
import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import {
  celsiusToFahrenheit,
  fahrenheitToCelsius,
  formatTemperature,
  parseAge,
  parseTemperature,
  parseTime,
  parseVolume,
} from "../../src/index.js";
import { numberFromText, withPoint, withUnit } from "../../src/quantities/numberText.js";
import { anyOf } from "../helpers.js";

describe("parseTemperature", () => {
  // Fixed points of the scales: NIST Special Publication 811, Gaithersburg, 2008, appendix B.8; absolute
  // zero, BIPM, The International System of Units,
  // 9th ed., Sèvres, 2019.
  it.each([
    ["20 °C", 20],
    ["20C", 20],
    ["20c", 20],
    ["+20.5 ° C", 20.5],
    ["20,5 °C", 20.5],
    ["-4,25 °C", -4.25],
    ["68,36 F", 20.2],
    ["68F", 20],
    ["68 °F", 20],
    [" 68.36f ", 20.2],
    ["70.7 °F", 21.5],
    ["32 °F", 0],
    ["212F", 100],
    ["-40 °F", -40],
    ["-40 °C", -40],
    ["−5 °C", -5],
    ["20 ℃", 20],
    // A raised nought, an ordinal o and a ring stand for the degree sign: never for a figure.
    ["8⁰C", 8],
    ["20⁰C", 20],
    ["20ºC", 20],
    ["20 ˚C", 20],
    ["20 deg C", 20],
    ["17 1/2 C", 17.5],
    ["17½ °C", 17.5],
    ["20 Grad", 20],
    ["20 Grad C", 20],
    ["20 Grad Celsius", 20],
    ["68 Grad Fahrenheit", 20],
    ["68 degrees Fahrenheit", 20],
    ["20 Celsius", 20],
    ["68℉", 20],
    ["0 °C", 0],
    ["-273.15 °C", -273.15],
    ["-459.67 °F", -273.15],
  ])("reads %s", (text, celsius) => {
    expect(parseTemperature(text)).toBe(celsius);
  });
  it.each(["ca. 18 °C", "ca 18 °C", "~18 °C", "≈ 18 °C", "about 18 °C", "Rund 18 °C", "etwa 18 °C"])(
    "reads what is said roughly, as other readers do: %j",
    (text) => {
      expect(parseTemperature(text)).toBe(18);
      expect(parseTime(text.replace("18 °C", "25 min"))).toBe(1500);
      expect(parseAge(text.replace("18 °C", "3 days"))).toBe(72);
      expect(parseVolume(text.replace("18 °C", "500 ml"))).toBe(500);
    },
  );
  it.each([
    "",
    "20",
    "68",
    "warm",
    "20 K",
    "C",
    "°C",
    "20 °",
    "about room",
    "aboutish 20 °C",
    "20 °C about",
    "20 °C or so",
    "1,234 °C",
    "1e1 °C",
    ".5 °C",
    "20. °C",
    "20 °CF",
    "20 °° C",
    "2¹C",
    "20²C",
    "２０ °C",
  ])("refuses %j", (text) => {
    const bare = /^(?:20|68)$/.exec(text.replace(/\s*°$/, ""))?.[0];
    const wanted =
      bare === undefined ? 'a temperature such as "20 °C" or "68F"' : `"${bare} °C" or "${bare} °F"`;
    const expected = `parseTemperature: text must be ${wanted}, got ${JSON.stringify(text)}`;
    expect(() => parseTemperature(text)).toThrow(new RangeError(expected));
  });
  it("refuses what is colder than anything, and what no thermometer reads", () => {
    expect(() => parseTemperature("-273.16 °C")).toThrow(
      new RangeError("parseTemperature: text must be from -273.15 to 10000 °C, got -273.16"),
    );
    expect(() => parseTemperature("-459.68F")).toThrow(
      new RangeError("parseTemperature: text must be from -459.67 to 10000 °F, got -459.68"),
    );
    expect(() => parseTemperature("10001 °C")).toThrow(
      new RangeError("parseTemperature: text must be from -273.15 to 10000 °C, got 10001"),
    );
    expect(() => parseTemperature("10001F")).toThrow(
      new RangeError("parseTemperature: text must be from -459.67 to 10000 °F, got 10001"),
    );
    expect(parseTemperature("10000 °C")).toBe(10000);
    expect(parseTemperature("10000 °F")).toBeCloseTo(5537.78, 2);
  });
  it("says both meanings of a number without a unit", () => {
    expect(() => parseTemperature("68")).toThrow(
      expect.objectContaining({
        code: "ambiguous",
        path: "/text",
        expected: { format: "temperature", examples: ["20 °C", "68F"], readings: ["68 °C", "68 °F"] },
      }),
    );
    expect(() => parseTemperature("")).toThrow(expect.objectContaining({ code: "empty" }));
    expect(() => parseTemperature("warm")).toThrow(expect.objectContaining({ code: "unreadable" }));
  });
  it("takes the unit that it is told, unless the text has its own", () => {
    expect(parseTemperature("68", { unit: "F" })).toBe(20);
    expect(parseTemperature("20", { unit: "C" })).toBe(20);
    expect(parseTemperature("13,5 °", { unit: "C" })).toBe(13.5);
    expect(parseTemperature("20 °C", { unit: "F" })).toBe(20);
    expect(parseTemperature("68 °F", { unit: undefined })).toBe(20);
    expect(() => parseTemperature("68", anyOf({ unit: "K" }))).toThrow(
      expect.objectContaining({ code: "not-one-of", path: "/options/unit" }),
    );
    expect(() => parseTemperature("68", anyOf("F"))).toThrow(
      expect.objectContaining({ code: "wrong-type", path: "/options" }),
    );
  });
  it.each([20, null, undefined, ["20C"], {}, true])("refuses %j by kind", (value) => {
    expect(() => parseTemperature(anyOf(value))).toThrow(TypeError);
    expect(() => parseTemperature(anyOf(value))).toThrow(
      /^parseTemperature: text (must be|is missing:) a temperature such as/,
    );
  });
  test.prop([fc.integer({ min: -27315, max: 550000 })])(
    "reads both scales alike, to the hundredth",
    (hundredths) => {
      const celsius = hundredths / 100;
      expect(parseTemperature(`${celsius} °C`)).toBe(celsius);
      expect(parseTemperature(`${celsiusToFahrenheit(celsius).toFixed(3)} °F`)).toBeCloseTo(celsius, 9);
    },
  );
  test.prop([fc.integer({ min: -45967, max: 1000000 })])("agrees with fahrenheitToCelsius", (hundredths) => {
    const read = parseTemperature(`${hundredths / 100}F`);
    expect(read).toBeCloseTo(fahrenheitToCelsius(hundredths / 100), 9);
  });
});

describe("formatTemperature", () => {
  it.each([
    [20, undefined, "20 °C"],
    [13.89, "C", "13.9 °C"],
    // As on paper: the double nearest to 8.35 lies below it.
    [8.35, "C", "8.4 °C"],
    [-0.04, "C", "0 °C"],
    [-5.25, "C", "-5.3 °C"],
    [20, "F", "68 °F"],
    [13.89, "F", "57 °F"],
    [-40, "F", "-40 °F"],
    [-273.15, "C", "-273.2 °C"],
  ] as const)("writes %d in %s as %s", (c, unit, text) => {
    expect(formatTemperature(c, { unit })).toBe(text);
  });
  it("refuses what is no temperature or no unit", () => {
    expect(() => formatTemperature(-274)).toThrow(
      expect.objectContaining({ code: "out-of-range", path: "/c" }),
    );
    expect(() => formatTemperature(anyOf("20"))).toThrow(
      expect.objectContaining({ code: "wrong-type", path: "/c" }),
    );
    expect(() => formatTemperature(20, anyOf({ unit: "K" }))).toThrow(
      expect.objectContaining({ code: "not-one-of", path: "/options/unit" }),
    );
  });
});

describe("bare numbers in text", () => {
  it("takes a comma for a point where one or two figures follow it, wherever the number stands", () => {
    expect(withPoint("-14,5 C")).toBe("-14.5 C");
    expect(withPoint("+14,55")).toBe("+14.55");
    expect(withPoint("about 14,5")).toBe("about 14.5");
    expect(withPoint("1,234")).toBe("1,234");
    expect(withPoint("0,125")).toBe("0.125");
    expect(withPoint("1,5+2,5+9")).toBe("1.5+2.5+9");
    expect(withPoint("1,5,5")).toBe("1,5,5");
    expect(withPoint("1.234,5")).toBe("1.234,5");
    expect(withPoint("one, 5")).toBe("one, 5");
  });
  it("gives a unit to a bare number, or to a word and one, and to nothing else", () => {
    expect(withUnit("30", "s")).toBe("30 s");
    expect(withUnit("-0.5", "C")).toBe("-0.5 C");
    expect(withUnit("Every  30", "s")).toBe("Every  30 s");
    expect(withUnit("30", "")).toBe("30");
    expect(withUnit(".5", "min")).toBe(".5 min");
    // A clock is a clock under minutes or seconds, and says two things under another unit.
    expect(withUnit("8:30", "min")).toBe("8:30");
    expect(withUnit("8:30", "s")).toBe("8:30");
    expect(withUnit("8:30", "")).toBe("8:30");
    expect(withUnit("1:02:00", "")).toBe("1:02:00");
    expect(withUnit("1:30", "h")).toBe("1:30 h");
    expect(withUnit("1:30", "hours")).toBe("1:30 hours");
    expect(withUnit("about 1:30", "h")).toBe("about 1:30");
    expect(withUnit("1:30 pm", "h")).toBe("1:30 pm");
    expect(withUnit("08:30:00", "min")).toBe("08:30:00 min");
    expect(withUnit("30 s", "min")).toBe("30 s");
    expect(withUnit("x every 30", "min")).toBe("x every 30");
    expect(withUnit("30x", "min")).toBe("30x");
    expect(withUnit("x30", "min")).toBe("x30");
    expect(withUnit("stand", "min")).toBe("stand");
  });
  it("reads a number, and names what should have been one", () => {
    expect(numberFromText("+0.55", "gamma")).toBe(0.55);
    expect(numberFromText("-12", "x")).toBe(-12);
    expect(numberFromText(".65", "gamma")).toBe(0.65);
    for (const text of ["soft", "0.5x", "x0.5", "", "1.", ".", "1e3"])
      expect(() => numberFromText(text, "gamma")).toThrow(
        new RangeError(`gamma must be a number such as "0.6", got ${JSON.stringify(text)}`),
      );
  });
});
