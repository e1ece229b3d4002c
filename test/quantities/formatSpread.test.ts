/* How well a time is known, as text and back. */
import { describe, expect, it } from "vitest";
import { compensate, formatSpread } from "../../src/index.js";

describe("formatSpread", () => {
  it.each([
    [0, "0 %"],
    [0.0272, "4.6 %"],
    [0.0579, "10 %"],
    [0.2, "39 %"],
    [0.63, "180 %"],
    [3, "14000 %"],
  ])("writes %s as %s", (logSd, text) => {
    expect(formatSpread(logSd)).toBe(text);
  });
  it("says by how much the interval's end lies above the time", () => {
    const { timeS, highS } = compensate({ timeS: 510, temperatureC: 20, logSd: 0.0579 }, {});
    expect(highS / timeS).toBeCloseTo(1.1, 2);
  });
  it.each([
    [-0.1, "out-of-range"],
    [3.1, "out-of-range"],
    [NaN, "not-a-number"],
    ["10 %", "wrong-type"],
  ])("refuses %s", (logSd, code) => {
    expect(() => formatSpread(logSd as number)).toThrow(expect.objectContaining({ code, path: "/logSd" }));
  });
});
