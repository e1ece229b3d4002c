/* Dates: the calendar of ISO 8601-1:2019, its leap years the Gregorian ones. */
import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { isoDate, notAfter } from "../../src/quantities/isoDate.js";

describe("isoDate", () => {
  it.each([
    "2024-05-01",
    "2024-02-29",
    "2000-02-29",
    "2023-12-31",
    "0001-01-01",
    "2024-05-01T10",
    "2024-05-01T10:30",
    "2024-05-01 10:30",
    "2024-05-01T23:59:59",
    "2024-05-01T10:30:15.25Z",
    "2024-05-01T1030",
    "2024-05-01T10:30:15,5+02:00",
    "2024-05-01T10:30-0330",
  ])("takes %s", (text) => {
    expect(isoDate("test", text)).toBe(text);
  });
  it.each([
    "",
    "1 May",
    "2023-02-29",
    "1900-02-29",
    "2024-02-30",
    "2024-04-31",
    "2024-13-01",
    "2024-00-10",
    "2024-01-00",
    "2024-1-1",
    "20240501",
    "x2024-05-01",
    "2024-05-01x",
    "2024-05-01T",
    "2024-05-01T24:00",
    "2024-05-01T99:99",
    "2024-05-01T10:60",
    "2024-05-01T10:30+25:00",
    "2024-05-01  10:30",
  ])("refuses %j", (text) => {
    expect(() => isoDate("/run/date", text)).toThrow(
      new RangeError(`run.date must be a date such as "2024-05-01", got ${JSON.stringify(text)}`),
    );
  });
  it("refuses what is no text", () => {
    expect(() => isoDate("/run/date", 20240501)).toThrow(
      new TypeError("run.date must be text, got 20240501"),
    );
  });
  test.prop([fc.date({ min: new Date("0001-01-01"), max: new Date("9999-12-31"), noInvalidDate: true })])(
    "takes every day that there is",
    (date) => {
      const text = date.toISOString();
      expect(isoDate("test", text)).toBe(text);
      expect(isoDate("test", text.slice(0, 10))).toBe(text.slice(0, 10));
    },
  );
  it("compares by the day", () => {
    expect(() => {
      notAfter("/run/date", "2024-05-01T23:00", "2024-05-01");
    }).not.toThrow();
    expect(() => {
      notAfter("/run/date", "2024-05-02", "2024-05-01");
    }).toThrow(new RangeError('run.date must be at most today, 2024-05-01, got "2024-05-02"'));
  });
});
