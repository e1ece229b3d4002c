/* Room: process. Plans that state half a mixture, very long names of fields, and the units in errors. */
import { describe, expect, it } from "vitest";
import {
  bathCautions,
  clearingTimeAt,
  describePlan,
  planProcess,
  testStripTimes,
  type Material,
} from "../../src/index.js";

// Invented.
const plan = planProcess({ vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 500 });

describe("describePlan", () => {
  it.each<[string, Material, string]>([
    [
      "stock and water",
      { name: "developer", volumeMl: 500, stockMl: 50, waterMl: 450 },
      "Have ready: developer 500 ml (50 ml stock, 450 ml water).",
    ],
    [
      "two stocks",
      { name: "developer", volumeMl: 500, stockMl: 150, waterMl: 350, stocksMl: [100, 50] },
      "Have ready: developer 500 ml (100 ml + 50 ml stock, 350 ml water).",
    ],
    [
      "stocks that are not told apart",
      { name: "developer", volumeMl: 500, stockMl: 150, waterMl: 350, stocksMl: [] },
      "Have ready: developer 500 ml (150 ml stock, 350 ml water).",
    ],
    ["stock alone", { name: "developer", volumeMl: 500, stockMl: 50 }, "Have ready: developer 500 ml."],
    ["water alone", { name: "developer", volumeMl: 500, waterMl: 450 }, "Have ready: developer 500 ml."],
  ])("tells a mixture only where both parts stand: %s", (_, material, line) => {
    expect(describePlan({ ...plan, materials: [material] }).at(-1)).toBe(line);
  });
});

describe("a field that is not read", () => {
  it("is named with at most sixty characters, and pointed at with all", () => {
    const field = "x".repeat(100);
    const baths = { fix: { [field]: 1 }, wash: {} };
    expect(
      bathCautions({ temperatureC: 20, baths }).find(({ code }) => code === "unknown-field"),
    ).toMatchObject({
      message: `The field "${"x".repeat(60)}" is not read.`,
      path: `/baths/fix/${field}`,
    });
  });
});

describe("errors say the unit", () => {
  it.each<[string, () => unknown, string]>([
    [
      "bathCautions",
      () => bathCautions({ temperatureC: 101, baths: {} }),
      "bathCautions: temperatureC must be from 0 to 100 °C, got 101",
    ],
    [
      "clearingTimeAt",
      () => clearingTimeAt({ clearingS: 60, fromC: 20, toC: 101 }),
      "clearingTimeAt: toC must be from 0 to 100 °C, got 101",
    ],
    [
      "testStripTimes",
      () => testStripTimes({ timeS: 0, lowS: 1, highS: 2 }),
      "testStripTimes: estimate.timeS must be above 0 and at most 1000000000000 s, got 0",
    ],
  ])("%s", (_, call, message) => {
    expect(call).toThrow(new RangeError(message));
  });
});
