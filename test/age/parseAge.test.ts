import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { ageFactor, parseAge } from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("parseAge", () => {
  it.each([
    ["90 min", 1.5],
    ["2 h", 2],
    ["2hrs", 2],
    ["90 mins", 1.5],
    ["36 secs", 0.01],
    ["1 hr", 1],
    ["1.5 hours", 1.5],
    ["1,5 h", 1.5],
    ["1 d 2,5 h", 26.5],
    ["1 hour 30 minutes", 1.5],
    ["3 days", 72],
    ["1 day", 24],
    ["1.25 d", 30],
    ["fresh", 0],
    ["freshly mixed", 0],
    ["Frisch", 0],
    ["2.2 days", 52.8],
    ["1 d 6 h", 30],
    ["1d6h30min", 30.5],
    ["2 weeks", 336],
    ["1w", 168],
    ["1 week 1 day", 192],
    ["1 Minute", 1 / 60],
    ["36 s", 0.01],
    ["36 sec", 0.01],
    ["1 second", 1 / 3600],
    ["0 h", 0],
    [" 5000 h ", 5000],
    ["1000000 h", 1e6],
    ["1 Woche 2 Tage", 216],
    ["3 Tage", 72],
    ["1 Tag 6 Stunden", 30],
    ["2 Std", 2],
    ["90 Minuten", 1.5],
    ["2 Std.", 2],
    ["1 1/2 h", 1.5],
    ["½ day", 12],
    ["0", 0],
    // A month is a twelfth of 365.25 days: 730.5 h.
    ["3 Monate", 2191.5],
    ["1 month 2 weeks", 1066.5],
    ["ein Monat", 730.5],
    ["eine Woche", 168],
    ["Ein Tag", 24],
    ["einen Tag", 24],
    ["a week", 168],
    ["an hour", 1],
    ["one day", 24],
    ["half an hour", 0.5],
    ["half a day", 12],
    ["a half day", 12],
    ["eine halbe Stunde", 0.5],
    ["ein halber Tag", 12],
    ["1h20", 4 / 3],
    ["1 h 20", 4 / 3],
    ["1 Std 20", 4 / 3],
    ["2 Std. 5", 25 / 12],
    ["45'", 0.75],
    ["45\u2032", 0.75],
    ["anderthalb Stunden", 1.5],
    ["one and a half hours", 1.5],
  ])("reads %s", (text, ageH) => {
    expect(parseAge(text)).toBeCloseTo(ageH, 12);
  });
  test.prop([
    fc.constantFrom(["a", "half a", "minute"], ["a", "half a", "week"], ["one", "half a", "month"]),
    fc.constantFrom("", "s"),
  ])("reads one and a half in words as in figures", ([one, half, unit], plural) => {
    expect(parseAge(`${one} ${unit}`)).toBe(parseAge(`1 ${unit}${plural}`));
    expect(parseAge(`${half} ${unit}`)).toBe(parseAge(`0.5 ${unit}${plural}`));
  });
  it("reads 40 min as the two thirds of an hour that a life may last, and tenths of a day as on paper", () => {
    // To fifteen digits 40/60 is 0.666666666666667, which is more than 2/3.
    expect(parseAge("40 min")).toBe(2 / 3);
    expect(ageFactor(0, parseAge("40 min"), { kind: "life", lifeH: 2 / 3 })).toBe(1);
    expect(parseAge("2.2 days")).toBe(52.8);
  });
  // Of an age, "2:30" could be minutes or hours, and "3 m" minutes or months.
  it.each([
    "",
    "  ",
    "1:02:00",
    "3 m",
    "2 mo",
    "half 2 h",
    "old",
    "x 3 days",
    "3 days x",
    "6 h 1 d",
    "2 h 3 h",
    "-1 h",
    "PT2H",
    "h",
    "1 h 60",
    "3 days 20",
    "45''",
    `1 h${" ".repeat(5000)}x`,
  ])("refuses %j", (text) => {
    const shown = JSON.stringify(text.slice(0, 60));
    expect(() => parseAge(text)).toThrow(
      new RangeError(`parseAge: text must be an age such as "2 h" or "3 days", got ${shown}`),
    );
  });
  it.each([
    ["2", ["2 h", "2 days"]],
    ["1,5", ["1.5 h", "1.5 days"]],
    ["2:30", ["2 h 30 min", "2 min 30 s"]],
    ["1.440 min", ["1.44 min", "1440 min"]],
    ["1,500 h", ["1.5 h", "1500 h"]],
  ])("says both meanings of %j", (text, readings) => {
    expect(() => parseAge(text)).toThrow(
      expect.objectContaining({ code: "ambiguous", expected: expect.objectContaining({ readings }) }),
    );
    for (const reading of readings) expect(parseAge(reading)).toBeGreaterThan(0);
  });
  it.each(["", "   "])("finds %j empty", (text) => {
    expect(() => parseAge(text)).toThrow(expect.objectContaining({ code: "empty" }));
  });
  it("refuses more than a bath can be", () => {
    expect(() => parseAge("1000001 h")).toThrow(
      new RangeError("parseAge: text must be from 0 to 1000000 h, got 1000001"),
    );
    expect(() => parseAge("6000 weeks")).toThrow("parseAge: text must be from 0 to 1000000 h, got 1008000");
  });
  it.each([2, null, undefined, ["2 h"]])("refuses %j by kind", (value) => {
    expect(() => parseAge(anyOf(value))).toThrow(TypeError);
    expect(() => parseAge(anyOf(value))).toThrow(/^parseAge: text (must be|is missing:) an age such as/);
  });
  test.prop([
    fc.integer({ min: 0, max: 5000 }),
    fc.integer({ min: 0, max: 6 }),
    fc.integer({ min: 0, max: 23 }),
    fc.integer({ min: 0, max: 59 }),
  ])("adds up weeks, days, hours and minutes", (weeks, days, hours, minutes) => {
    expect(parseAge(`${weeks} weeks ${days} d ${hours} h ${minutes} min`)).toBeCloseTo(
      (weeks * 7 + days) * 24 + hours + minutes / 60,
      8,
    );
  });
});
