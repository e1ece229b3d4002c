/* A scrap of fogged film in the bath: common practice, from memory. */
import { describe, expect, it } from "vitest";
import { compensate, strengthFromScrap, temperatureFactor } from "../../src/index.js";
import { fc, test } from "../property.js";

const seconds = fc.double({ min: 1, max: 3600, noNaN: true });

describe("against a known bath", () => {
  it("is the ratio of the seconds, within half as much again", () => {
    const found = strengthFromScrap({ darkensS: 120, known: { darkensS: 80 } });
    expect(found).toMatchObject({ cause: "strength", value: 1.5, basis: "given" });
    expect(found.logSd).toBeGreaterThan(0.3);
    expect(found.logSd).toBeLessThan(0.45);
    expect(found.cautions).toEqual([]);
    expect(compensate({ timeS: 600, temperatureC: 20 }, { strength: found }).timeS).toBeCloseTo(900, 6);
  });

  test.prop([seconds, seconds])("turns round when the baths change places", (one, other) => {
    const [there, back] = [
      strengthFromScrap({ darkensS: one, known: { darkensS: other } }),
      strengthFromScrap({ darkensS: other, known: { darkensS: one } }),
    ];
    expect(there.value * back.value).toBeCloseTo(1, 12);
    expect(there.logSd).toBeCloseTo(back.logSd, 12);
  });

  it("takes the warmth out, so that it counts once", () => {
    const cold = strengthFromScrap({
      darkensS: 120,
      temperatureC: 14,
      known: { darkensS: 120, temperatureC: 20 },
    });
    expect(cold.value).toBeCloseTo(1 / temperatureFactor(20, 14), 12);
    expect(cold.logSd).toBeGreaterThan(strengthFromScrap({ darkensS: 120, known: { darkensS: 120 } }).logSd);
  });

  it("is poorly timed when it is over in a moment", () => {
    const at = (s: number): number => strengthFromScrap({ darkensS: s, known: { darkensS: s } }).logSd;
    expect(at(4)).toBeGreaterThan(1.5 * at(100));
  });
});

describe("against none", () => {
  // A minute or two for film, half of it for paper (common practice, from memory).
  it("tells fast from slow, with a factor of three each way", () => {
    for (const [material, usualS] of [
      ["film", 90],
      ["plate", 90],
      ["paper", 45],
    ] as const) {
      const found = strengthFromScrap({ darkensS: 2 * usualS, material });
      expect(found.value).toBeCloseTo(2, 9);
      expect(Math.exp(1.645 * found.logSd)).toBeGreaterThan(3);
      expect(found.basis).toBe("default");
      expect(found.cautions.map(({ code }) => code)).toEqual(["scrap-without-known", "strength-far"]);
    }
    expect(strengthFromScrap({ darkensS: 90 }).value).toBeCloseTo(1, 9);
  });

  it("stops where a scrap takes more than four times the usual", () => {
    expect(strengthFromScrap({ darkensS: 600 }).cautions).toContainEqual(
      expect.objectContaining({ code: "strength-far", severity: "stop" }),
    );
  });
});

it.each([
  [null, TypeError, "/input"],
  [{}, TypeError, "/input/darkensS"],
  [{ darkensS: 0 }, RangeError, "/input/darkensS"],
  [{ darkensS: 60, known: {} }, TypeError, "/input/known/darkensS"],
  [{ darkensS: 60, known: 60 }, TypeError, "/input/known"],
  [{ darkensS: 60, temperatureC: 51 }, RangeError, "/input/temperatureC"],
  [{ darkensS: 60, material: "glass" }, RangeError, "/input/material"],
])("refuses %j", (input, kind, path) => {
  const call = (): unknown => strengthFromScrap(input as any);
  expect(call).toThrow(kind);
  expect(call).toThrow(expect.objectContaining({ path }));
});
