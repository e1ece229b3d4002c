/* How many, in text. */
import { describe, expect, it } from "vitest";
import { parseCount } from "../../src/index.js";

describe("parseCount", () => {
  it.each([
    ["3", 3],
    [" 12 ", 12],
    ["0", 0],
    ["1.5", 1.5],
    ["1,5", 1.5],
    ["none", 0],
    ["None", 0],
    ["no", 0],
    ["keine", 0],
    ["10000", 10_000],
  ])("reads %j", (text, count) => {
    expect(parseCount(text)).toBe(count);
  });
  it.each(["", "three", "3 films", "-1", "1,234", "3x", "1e3", "nonet"])("refuses %j", (text) => {
    expect(() => parseCount(text)).toThrow(
      expect.objectContaining({ code: text === "" ? "empty" : "unreadable", path: "/text", actual: text }),
    );
  });
  it("refuses more than 10,000, and what is no text", () => {
    expect(() => parseCount("10001")).toThrow(expect.objectContaining({ code: "out-of-range" }));
    expect(() => parseCount(3 as never)).toThrow(expect.objectContaining({ code: "wrong-type" }));
  });
});
