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
    ["1/3", 1 / 3],
    ["⅓", 1 / 3],
    ["+2/3", 2 / 3],
    ["⅔ stop", 2 / 3],
    ["+1 1/3", 4 / 3],
    ["1⅓", 4 / 3],
    ["-1 2/3", -5 / 3],
    ["N", 0],
    ["normal", 0],
    ["not pushed", 0],
    ["kein Push", 0],
    ["N+1", 1],
    ["N-1", -1],
    ["N + 1/3", 1 / 3],
    ["push 2", 2],
    ["push 0", 0],
    ["+1 push", 1],
    ["1-stop push", 1],
    ["pushed one stop", 1],
    ["Film was pushed by 2 stops", 2],
    ["pull 1", -1],
    ["pull -1", -1],
    ["um eine Blende gepusht", 1],
    ["1 Blende pushen", 1],
    ["anderthalb Blenden gepullt", -1.5],
  ])("reads %j as %s stops", (text, stops) => {
    expect(parseStops(text)).toBe(stops);
  });
  it.each([
    ["much", "unreadable"],
    ["", "empty"],
    ["a bit", "unreadable"],
    ["yes", "unreadable"],
    ["no idea", "unreadable"],
    ["pushed", "unreadable"],
    ["push to 800", "unreadable"],
    ["next time push 1", "unreadable"],
    ["1 step", "unreadable"],
    [`push ${" ".repeat(1e5)}1`, "unreadable"],
    ["push -1", "ambiguous"],
    ["pushed \u22121 stop", "ambiguous"],
    ["push pull 1", "ambiguous"],
    ["6", "out-of-range"],
    ["-4", "out-of-range"],
    [1, "wrong-type"],
  ])("refuses %j", (text, code) => {
    expect(() => parseStops(anyOf(text))).toThrow(expect.objectContaining({ code }));
  });
});
