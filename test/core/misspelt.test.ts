/*
 * A field that is misspelt would be taken for one left out, and change the number in silence.
 */
import { describe, expect, it } from "vitest";
import {
  appearanceEstimate,
  brewCapacity,
  brewLife,
  developUntil,
  fitDrift,
  fitGrowth,
  fitTemperatureLaw,
  fixingTime,
  growthFromDoubling,
  handbookAppearanceFactor,
  isInputError,
  parseDilution,
  parseUse,
  remainingTime,
  testStripTimes,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { brewOf, part } from "../brew/brews.js";

const brew = brewOf(part("soda-anhydrous", 54), part("instant-coffee", 40));
const log = [
  { timeS: 0, temperatureC: 20 },
  { timeS: 60, temperatureC: 19 },
  { timeS: 120, temperatureC: 18.2 },
];
const work = { targetS: 480, referenceC: 20, log };
const rows = [
  { temperatureC: 20, timeS: 600 },
  { temperatureC: 24, timeS: 420 },
];

const points = [
  { timeS: 180, gamma: 0.41 },
  { timeS: 360, gamma: 0.68 },
  { timeS: 720, gamma: 0.95 },
];

describe("a misspelt field", () => {
  it.each<readonly [name: string, place: string, field: string, call: () => unknown]>([
    ["fixingTime", "/question/time", "times", () => fixingTime(anyOf({ clearingS: 45, time: 3 }))],
    ["remainingTime", "/options/forecast", "", () => remainingTime(anyOf({ ...work, forecast: 10 }))],
    [
      "developUntil",
      "/options/froms",
      "fromS",
      () => developUntil(anyOf({ equivalentS: 480, referenceC: 20, temperatureAt: 20, froms: 100 })),
    ],
    ["brewLife", "/options/depthmm", "depthMm", () => brewLife(brew, anyOf({ depthmm: 30 }))],
    [
      "brewCapacity",
      "/options/materials",
      "material",
      () => brewCapacity(brew, anyOf({ materials: "plate" })),
    ],
    ["parseDilution", "/options/colons", "colon", () => parseDilution("1:9", anyOf({ colons: "total" }))],
    ["parseUse", "/options/volume", "volumeMl", () => parseUse("2 rolls", anyOf({ volume: 500 }))],
    [
      "testStripTimes",
      "/options/counts",
      "count",
      () => testStripTimes({ timeS: 600, lowS: 400, highS: 900 }, anyOf({ counts: 3 })),
    ],
    [
      "growthFromDoubling",
      "/pair/appearances",
      "appearanceS",
      () => growthFromDoubling(anyOf({ timeS: 300, gamma: 0.6, gammaAtDouble: 0.8, appearances: 30 })),
    ],
    [
      "appearanceEstimate",
      "/seen/reactionsS",
      "reactionS",
      () => appearanceEstimate(anyOf({ appearanceS: 30, factor: 10, reactionsS: 3 })),
    ],
    ["fitDrift", "/options/ambientc", "ambientC", () => fitDrift(log, anyOf({ ambientc: 14 }))],
    ["fitGrowth", "/options/appearances", "appearanceS", () => fitGrowth(points, anyOf({ appearances: 30 }))],
    ["fitTemperatureLaw", "/options/priors", "prior", () => fitTemperatureLaw(rows, anyOf({ priors: {} }))],
    [
      "handbookAppearanceFactor",
      "/options/contrasts",
      "contrast",
      () => handbookAppearanceFactor("hydroquinone", anyOf({ contrasts: "soft" })),
    ],
  ])("of %s is refused at %s", (name, place, field, call) => {
    let thrown: unknown;
    try {
      call();
    } catch (error) {
      thrown = error;
    }
    expect(thrown).toBeInstanceOf(RangeError);
    expect(isInputError(thrown) && { name: thrown.message.split(":")[0], path: thrown.path }).toEqual({
      name,
      path: place,
    });
    expect(isInputError(thrown) && thrown.expected).toMatchObject({
      must: "known-field",
      ...(field !== "" && { hint: field }),
    });
  });

  it("that begins with x- is the caller's own", () => {
    expect(fixingTime(anyOf({ "clearingS": 45, "x-bath": "B" }))).toBe(90);
  });
});
