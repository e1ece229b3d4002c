import { Decimal } from "decimal.js";
import { describe, expect, it } from "vitest";
import { fc, test } from "../property.js";
import {
  celsiusToFahrenheit,
  fahrenheitToCelsius,
  filmAreaCm2,
  formatFilmArea,
  parseFilmFormat,
  formatTime,
  parseTime,
  roundTime,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";

const Exact = Decimal.clone({ precision: 1200 });

describe("parseTime", () => {
  it.each([
    ["8:30", 510],
    ["08:30", 510],
    ["0:05", 5],
    ["90:00", 5400],
    ["1:02:00", 3720],
    ["8:30.5", 510.5],
    ["8:30.25", 510.25],
    ["8m30s", 510],
    ["8 min 30 sec", 510],
    ["8 minutes 30 seconds", 510],
    ["8 MIN 30 Sec", 510],
    ["510 s", 510],
    ["510s", 510],
    ["8.5 min", 510],
    // 8.64 × 60 is 518.4000000000001 in doubles.
    ["8.64 min", 518.4],
    ["0.1 min", 6],
    ["8,5 min", 510],
    ["0,125 min", 7.5],
    ["1,5 h 30,25 s", 5430.25],
    ["8:30,5", 510.5],
    ["PT8,5M", 510],
    ["1 h", 3600],
    ["1h2m3s", 3723],
    ["2 hours", 7200],
    ["1 hr", 3600],
    ["8′30″", 510],
    ["8’30”", 510],
    ["8'30''", 510],
    ["8 mins 30 secs", 510],
    ["2 hrs", 7200],
    ["8'30\"", 510],
    [" 8:30 ", 510],
    // ISO 8601-1:2019, section 5.5.2, durations by designators.
    ["PT8M30S", 510],
    ["PT1H", 3600],
    ["PT0.5H", 1800],
    ["PT1H2M3.5S", 3723.5],
    ["0 s", 0],
    ["8 1/2 min", 510],
    ["8½ min", 510],
    ["1/2 h", 1800],
    ["8 min 30", 510],
    ["8m30", 510],
    ["8'30", 510],
    ["1 h 30", 5400],
    ["1 h 2 min 30", 3750],
    ["8:30 min", 510],
    ["8:30 m", 510],
    ["8 Minuten", 480],
    ["1 Minute", 60],
    ["8 Min.", 480],
    ["8 Min. 30 Sek.", 510],
    ["30 Sekunden", 30],
    ["2 Stunden", 7200],
    ["1 Std. 30 Min.", 5400],
    // A figure before a point and three more could be thousands; with a nought or four figures it could not.
    ["0.125 s", 0.125],
    ["1234.125 s", 1234.125],
    ["1.125 min", 67.5],
    ["8m1.125s", 481.125],
  ])("reads %s", (text, timeS) => {
    expect(parseTime(text)).toBe(timeS);
  });
  it.each(["8 min 75", "1 h 75", "8:75 min"])("refuses %s, whose last part reaches 60", (text) => {
    expect(() => parseTime(text)).toThrow("a time with minutes and seconds below 60");
  });

  const forms = 'a time such as "8:30", "8.5 min" or "510 s"';
  it.each([
    "",
    " ",
    "510",
    "8",
    "eight",
    "8:3",
    "8;30",
    "-5 s",
    "8,5,5 s",
    "5 d",
    "PT",
    "P1D",
    "8:30:",
    "1:2:3",
    "NaN s",
    "PT8M30S x",
    "x8:30",
    "x8 s",
    "8 s x",
    "xPT8M",
  ])("refuses %j", (text) => {
    expect(() => parseTime(text)).toThrow(
      new RangeError(
        `parseTime: text must be ${/^\d+$/.test(text) ? `"${text} min" or "${text} s"` : forms}, got ${JSON.stringify(text)}`,
      ),
    );
  });
  it.each([
    ["510", ["510 min", "510 s"]],
    ["8,5", ["8.5 min", "8.5 s"]],
    ["8 1/2", ["8.5 min", "8.5 s"]],
  ])("says both meanings of %s, which has no unit", (text, readings) => {
    const error = { code: "ambiguous", path: "/text", actual: text };
    expect(() => parseTime(text)).toThrow(
      expect.objectContaining({ ...error, expected: expect.objectContaining({ readings }) }),
    );
  });
  it.each([
    ["1.234 s", ["1.2340 s", "1234 s"], [1.234, 1234]],
    ["1,500 s", ["1.5 s", "1500 s"], [1.5, 1500]],
    ["1,500 min", ["1.5 min", "1500 min"], [90, 90_000]],
  ])("says both meanings of %s, whose three figures may be thousands", (text, readings, timesS) => {
    expect(() => parseTime(text)).toThrow(
      expect.objectContaining({ code: "ambiguous", expected: expect.objectContaining({ readings }) }),
    );
    expect(readings.map(parseTime)).toEqual(timesS);
  });
  // Written by people in both ways: common practice.
  it.each([
    ["8.30", ["8:30", "8 min 18 s", "8.30 s"], [510, 498, 8.3]],
    ["8,30", ["8:30", "8 min 18 s", "8.30 s"], [510, 498, 8.3]],
    ["0.45", ["0:45", "27 s", "0.45 s"], [45, 27, 0.45]],
    ["8.30 min", ["8:30", "8 min 18 s"], [510, 498]],
    ["8,25 Min.", ["8:25", "8 min 15 s"], [505, 495]],
    ["8.05'", ["8:05", "8 min 3 s"], [485, 483]],
    ["12.59 m", ["12:59", "12 min 35.4 s"], [779, 755.4]],
    ["90.10 min", ["90:10", "90 min 6 s"], [5410, 5406]],
    ["1,250 min", ["1.250 min", "1250 min"], [75, 75_000]],
  ])("says what %s may mean, whose two figures may be seconds", (text, readings, timesS) => {
    expect(() => parseTime(text)).toThrow(
      expect.objectContaining({ code: "ambiguous", expected: expect.objectContaining({ readings }) }),
    );
    expect(readings.map(parseTime)).toEqual(timesS);
  });
  it.each([
    ["8.5 min", 510],
    ["8.75 min", 525],
    ["8,60 min", 516],
    ["8.00 min", 480],
    ["8.250 min", 495],
    ["8 1/4 min", 495],
    ["8¼ min", 495],
    ["¼ min", 15],
    ["8.30 s", 8.3],
  ])("reads %s, which is no clock", (text, timeS) => {
    expect(parseTime(text)).toBe(timeS);
  });
  it.each(["", " ", "\t \n"])("finds %j empty", (text) => {
    expect(() => parseTime(text)).toThrow(expect.objectContaining({ code: "empty" }));
  });
  it.each(["8:60", "8:75", "1:60:00", "1:02:60"])("refuses %s, whose minutes or seconds reach 60", (text) => {
    expect(() => parseTime(text)).toThrow(
      new RangeError(`parseTime: text must be a time with minutes and seconds below 60, got "${text}"`),
    );
  });
  it("refuses absurd lengths, and takes the longest allowed", () => {
    expect(parseTime("10000000 s")).toBe(1e7);
    expect(() => parseTime("10000001 s")).toThrow(
      new RangeError("parseTime: text must be from 0 to 10000000 s, got 10000001"),
    );
    expect(() => parseTime(`${"9".repeat(400)} s`)).toThrow("parseTime: text must be from 0 to 10000000 s");
  });
  it.each([510, null, ["8:30"], {}, true])("refuses %j by kind", (value) => {
    expect(() => parseTime(anyOf(value))).toThrow(TypeError);
    expect(() => parseTime(anyOf(value))).toThrow(`parseTime: text must be ${forms}, got `);
  });
  it("says of what is not there that it is missing", () => {
    expect(() => parseTime(anyOf(undefined))).toThrow(new TypeError(`parseTime: text is missing: ${forms}`));
  });
});

describe("formatTime", () => {
  it.each([
    [0, "0:00"],
    [5, "0:05"],
    [59.4, "0:59"],
    [59.5, "1:00"],
    [510, "8:30"],
    [3599.4, "59:59"],
    [3599.5, "1:00:00"],
    [3600, "1:00:00"],
    [3720, "1:02:00"],
    [36061, "10:01:01"],
  ])("writes %d s as %s", (timeS, text) => {
    expect(formatTime(timeS)).toBe(text);
  });
  it("rounds to a step first", () => {
    expect(formatTime(517, { stepS: 15 })).toBe("8:30");
    expect(formatTime(517.5, { stepS: 15 })).toBe("8:45");
  });
  it("refuses what is no time or no step", () => {
    expect(() => formatTime(-1)).toThrow(
      new RangeError("formatTime: timeS must be from 0 to 10000000 s, got -1"),
    );
    expect(() => formatTime(NaN)).toThrow(
      new RangeError("formatTime: timeS must be from 0 to 10000000 s, got NaN"),
    );
    expect(() => formatTime(anyOf("510"))).toThrow(
      new TypeError('formatTime: timeS must be a number, got "510"'),
    );
    expect(() => formatTime(510, { stepS: 0.5 })).toThrow(
      new RangeError("formatTime: options.stepS must be from 1 to 86400 s, got 0.5"),
    );
    expect(() => formatTime(510, { stepS: 1.5 })).toThrow(
      new TypeError("formatTime: options.stepS must be a whole number, got 1.5"),
    );
    expect(() => formatTime(510, anyOf(null))).toThrow(
      new TypeError("formatTime: options must be an object, got null"),
    );
  });
});

describe("roundTime", () => {
  it("rounds halves up, as on paper and not as in binary", () => {
    expect(roundTime(2.675, 0.01)).toBe(2.68);
    expect(roundTime(1.005, 0.01)).toBe(1.01);
    expect(roundTime(0.5)).toBe(1);
    expect(roundTime(1.5)).toBe(2);
    expect(roundTime(2.5)).toBe(3);
    expect(roundTime(7.5, 15)).toBe(15);
    expect(roundTime(0.3, 0.1)).toBe(0.3);
  });
  it("refuses by range and kind", () => {
    expect(() => roundTime(1e7 + 1)).toThrow(
      new RangeError("roundTime: timeS must be from 0 to 10000000 s, got 10000001"),
    );
    expect(() => roundTime(510, 0)).toThrow(
      new RangeError("roundTime: stepS must be above 0 and at most 86400 s, got 0"),
    );
    expect(() => roundTime(Infinity)).toThrow("got Infinity");
    expect(() => roundTime(510, anyOf("15"))).toThrow(
      new TypeError('roundTime: stepS must be a number, got "15"'),
    );
  });
  test.prop([
    fc.double({ min: 0, max: 1e7, noNaN: true }),
    fc.double({ min: 1e-30, max: 86400, noNaN: true }),
  ])("agrees with decimals of 1200 figures", (timeS, stepS) => {
    const steps = new Exact(timeS).div(stepS).toDecimalPlaces(0, Exact.ROUND_HALF_UP);
    expect(roundTime(timeS, stepS)).toBe(steps.times(stepS).toNumber());
  });
  test.prop([fc.double({ min: 0, max: 1e6, noNaN: true }), fc.integer({ min: 1, max: 600 })])(
    "lands on a step, within half of it, and stays there",
    (timeS, stepS) => {
      const rounded = roundTime(timeS, stepS);
      expect(rounded % stepS).toBe(0);
      expect(Math.abs(rounded - timeS)).toBeLessThanOrEqual(stepS / 2);
      expect(roundTime(rounded, stepS)).toBe(rounded);
    },
  );
});

describe("°F and °C", () => {
  // NIST Special Publication 811, 2008, appendix B.8, with the fixed points of the scale: freezing and
  // boiling water, and the crossing.
  it.each([
    [32, 0],
    [68, 20],
    [212, 100],
    [-40, -40],
    [75.2, 24],
    // Limits of the trade in °C, which rounding would cross.
    [39.2, 4],
    [55.4, 13],
    [60.8, 16],
    [89.6, 32],
  ])("%d °F is %d °C", (f, c) => {
    expect(fahrenheitToCelsius(f)).toBe(c);
    expect(celsiusToFahrenheit(c)).toBe(f);
  });
  test.prop([fc.integer({ min: -2731, max: 55000 })])(
    "give tenths of a degree as they are written",
    (tenths) => {
      expect(fahrenheitToCelsius(Number((tenths * 0.18 + 32).toFixed(2)))).toBe(tenths / 10);
    },
  );
  it("refuse what is below absolute zero or no number", () => {
    expect(() => fahrenheitToCelsius(-460)).toThrow(
      new RangeError("fahrenheitToCelsius: f must be from -459.67 to 10000 °F, got -460"),
    );
    expect(() => celsiusToFahrenheit(-274)).toThrow(
      new RangeError("celsiusToFahrenheit: c must be from -273.15 to 5500 °C, got -274"),
    );
    expect(() => fahrenheitToCelsius(anyOf("68"))).toThrow(
      new TypeError('fahrenheitToCelsius: f must be a number, got "68"'),
    );
    expect(() => celsiusToFahrenheit(anyOf(undefined))).toThrow(
      new TypeError("celsiusToFahrenheit: c is missing: a number"),
    );
  });
});

describe("formatFilmArea", () => {
  it.each([
    [108, "9x12 cm"],
    [129, "4x5 in"],
    [516, "120"],
    [1032.256, "220"],
    [100, "10x10 cm"],
    [54, "7.35x7.35 cm"],
  ])("writes %s cm² as %s", (areaCm2, text) => {
    expect(formatFilmArea(areaCm2)).toBe(text);
    expect(Math.abs(filmAreaCm2(text) / areaCm2 - 1)).toBeLessThan(0.005);
  });
  it.each([0, -1, NaN, 4.1e4])("refuses %s cm²", (areaCm2) => {
    expect(() => formatFilmArea(areaCm2)).toThrow(RangeError);
  });
});

describe("filmAreaCm2", () => {
  // Brodie-Tyrrell, Fixer Capacity, analogue FAQ: 80 square inches are one 135-36, one 120, half a 220, four
  // 4x5 in or one 8x10 in sheet.
  it("counts a roll as 80 square inches", () => {
    const roll = 80 * 2.54 * 2.54;
    expect(filmAreaCm2("135-36")).toBeCloseTo(roll, 9);
    expect(filmAreaCm2("120")).toBeCloseTo(roll, 9);
    expect(filmAreaCm2("220") / 2).toBeCloseTo(roll, 9);
    expect(4 * filmAreaCm2("4x5in")).toBeCloseTo(roll, 9);
    expect(filmAreaCm2("8x10in")).toBeCloseTo(roll, 9);
  });
  it("takes shorter rolls in proportion, and sizes in in, cm and mm", () => {
    expect(filmAreaCm2("135-24")).toBeCloseTo((516.128 * 2) / 3, 9);
    expect(filmAreaCm2("135-12")).toBeCloseTo(516.128 / 3, 9);
    expect(filmAreaCm2("9x12cm")).toBe(108);
    expect(filmAreaCm2(" 9 × 12 CM ")).toBe(108);
    expect(filmAreaCm2("24x36mm")).toBe(8.64);
    expect(filmAreaCm2("6.5x9cm")).toBe(58.5);
    expect(filmAreaCm2("6,5x9,5 cm")).toBe(61.75);
    expect(filmAreaCm2("200x200cm")).toBe(40000);
  });
  it.each(["", "35mm", "300x900", "x", "135-36x", "9x12km", "a9x12cm", "9x12cmb", "constructor", "4xin"])(
    "refuses %j",
    (format) => {
      expect(() => filmAreaCm2(format)).toThrow(
        new RangeError(
          `filmAreaCm2: format must be a film format such as "120", "135-36" or "4x5in", got ${JSON.stringify(format)}`,
        ),
      );
    },
  );
  it.each(["0x5in", "5x0in", "201x5cm", "5x201cm"])("refuses the size %s", (format) => {
    expect(() => filmAreaCm2(format)).toThrow(
      new RangeError(
        `filmAreaCm2: format must be a size with sides above 0 and at most 200 cm, got "${format}"`,
      ),
    );
  });
  it("refuses by kind", () => {
    expect(() => filmAreaCm2(anyOf(120))).toThrow(
      new TypeError('filmAreaCm2: format must be a film format such as "120", "135-36" or "4x5in", got 120'),
    );
  });
});

describe("parseFilmFormat", () => {
  it.each(["9x12", "10x15", "13x18", "18x24", "24x30", "12x9", " 18 × 13 "])(
    "takes %s for centimetres, as the trade does, and says so",
    (size) => {
      const [width, height] = size.match(/\d+/g) as [string, string];
      expect(parseFilmFormat(size)).toEqual({
        areaCm2: Number(width) * Number(height),
        name: `${width}x${height} cm`,
        unitTaken: true,
      });
      expect(filmAreaCm2(size)).toBe(Number(width) * Number(height));
    },
  );
  it.each(["4x5", "5x7", "8x10", "11x14", "10x8"])("takes %s for inches", (size) => {
    const { areaCm2, name, unitTaken } = parseFilmFormat(size);
    expect([areaCm2, name, unitTaken]).toEqual([filmAreaCm2(`${size}in`), `${size} in`, true]);
  });
  it("keeps a unit that is written, and rolls", () => {
    expect(parseFilmFormat("9x12in")).toEqual({ areaCm2: 696.7728, name: "9x12 in", unitTaken: false });
    expect(parseFilmFormat("135-36")).toEqual({ areaCm2: 516.128, name: "135-36", unitTaken: false });
  });
  it.each([
    ["9x13", ["9x13 cm", "9x13 in"]],
    ["6,5x9", ["6.5x9 cm", "6.5x9 in"]],
    ["24x36", ["24x36 cm", "24x36 mm"]],
    ["300x400", ["300x400 mm"]],
  ])("asks which unit %s has, of those in which it could be a plate", (size, readings) => {
    expect(() => parseFilmFormat(size)).toThrow(
      expect.objectContaining({
        code: "ambiguous",
        path: "/text",
        expected: expect.objectContaining({ format: "film format", readings }) as unknown,
      }),
    );
  });
  it("refuses a size that no plate has in any unit, and no text", () => {
    expect(() => parseFilmFormat("1x900")).toThrow(expect.objectContaining({ code: "unreadable" }));
    expect(() => parseFilmFormat(anyOf(120))).toThrow(expect.objectContaining({ code: "wrong-type" }));
  });
});

describe("parseTime of a long text", () => {
  it("refuses a long run of blanks at once", () => {
    // Searched in every way, it would take minutes.
    expect(() => parseTime(`1h${" ".repeat(4e5)}x`)).toThrow(/^parseTime: text must be a time/);
  });
});
