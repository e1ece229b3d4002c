/* Stops of push as people write them. */
import { describe, expect, it } from "vitest";
import { parseStops } from "../../src/index.js";
import { anyOf } from "../helpers.js";

describe("parseStops", () => {
  it.each([
    ["0", 0],
    ["-0", 0],
    ["none", 0],
    ["keine", 0],
    ["1", 1],
    ["+1", 1],
    ["+ 2 stops", 2],
    ["1 stop", 1],
    ["2 Blenden", 2],
    ["1,5", 1.5],
    ["1/2", 0.5],
    ["+1 1/2", 1.5],
    ["-1/2", -0.5],
    ["\u22121", -1],
    ["\u20131½", -1.5],
  ])("reads %j as %s stops", (text, stops) => {
    expect(parseStops(text)).toBe(stops);
  });
  it.each([
    ["much", "unreadable"],
    ["", "empty"],
    ["N+1", "unreadable"],
    ["1 step", "unreadable"],
    ["6", "out-of-range"],
    ["-4", "out-of-range"],
    [1, "wrong-type"],
  ])("refuses %j", (text, code) => {
    expect(() => parseStops(anyOf(text))).toThrow(expect.objectContaining({ code }));
  });
});
