/* Figures in a sentence. */
import { describe, expect, it } from "vitest";
import { ageText } from "../../src/core/digits.js";
import { parseAge } from "../../src/index.js";
import { alter, dativ } from "../../src/texts/de/figures.js";

describe("ageText", () => {
  it.each([
    [0, "0 h", "0 h"],
    [0.5, "30 min", "30 min"],
    [1.46, "1 h 28 min", "1 h 28 min"],
    [3, "3 h", "3 h"],
    [1.9999, "2 h", "2 h"],
    [47.5, "47 h 30 min", "47 h 30 min"],
    [48, "2 days", "2 Tage"],
    [52.8, "2.2 days", "2,2 Tage"],
    [168, "7 days", "7 Tage"],
    [504, "3 weeks", "3 Wochen"],
    [510, "21.3 days", "21,3 Tage"],
  ])("says %d h as people do", (ageH, english, german) => {
    expect(ageText(ageH)).toBe(english);
    expect(alter(ageH)).toBe(german);
    // To what is shown: a minute, or three digits of days.
    expect(Math.abs(parseAge(english) - ageH)).toBeLessThan(Math.max(1 / 120, ageH / 200) + 1e-9);
  });
  it("has a question mark for a figure that a store has lost", () => {
    expect(ageText(undefined)).toBe("? h");
  });
  it("is in the dative after a German preposition", () => {
    expect(dativ(alter(240))).toBe("10 Tagen");
  });
});
