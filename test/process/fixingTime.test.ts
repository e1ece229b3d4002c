import { describe, expect, it } from "vitest";
import { fixingTime } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { refusal } from "./helpers.js";

describe("fixingTime", () => {
  it("is twice the clearing time, or as many times as asked", () => {
    // US Navy, Photography (Basic), NAVEDTRA 14209, p. 10-7: twice. Cyclopedia of Photography, 1911: ten
    // minutes, then ten more.
    expect(fixingTime({ clearingS: 600 })).toBe(1200);
    // K. Guttikar, Black and white film fixer times: clearing 1 to 3 min, fixing 3 to 9.
    expect(fixingTime({ clearingS: 60, times: 3 })).toBe(180);
    expect(fixingTime({ clearingS: 180, times: 3 })).toBe(540);
    expect(fixingTime({ clearingS: 1e6, times: 10 })).toBe(1e7);
    expect(fixingTime({ clearingS: 30, times: 1 })).toBe(30);
  });

  it.each([
    ["no object", 5, "TypeError fixingTime /question wrong-type"],
    ["no clearing time", {}, "TypeError fixingTime /question/clearingS missing"],
    ["clearing at once", { clearingS: 0 }, "RangeError fixingTime /question/clearingS out-of-range"],
    ["half a time", { clearingS: 30, times: 0.5 }, "RangeError fixingTime /question/times out-of-range"],
    ["text", { clearingS: 30, times: "3" }, "TypeError fixingTime /question/times wrong-type"],
  ])("refuses %s", (_, question, fault) => {
    expect(refusal(() => fixingTime(anyOf(question)))).toBe(fault);
  });
});
