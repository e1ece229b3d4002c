/* Time over temperature for a chart: the points are the answers of compensate. */
import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { compensate, handbookTemperatureLaw, temperatureCurve } from "../../src/index.js";
import { anyOf } from "../helpers.js";
const baseline = { timeS: 510, temperatureC: 20, logSd: 0.05 };

describe("temperatureCurve", () => {
  it("goes from one end to the other in equal steps, either way", () => {
    const up = temperatureCurve({ baseline, fromC: 10, toC: 24, points: 15 });
    expect(up.map(({ temperatureC }) => temperatureC)).toEqual([
      10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24,
    ]);
    expect(temperatureCurve({ baseline, fromC: 24, toC: 10, points: 15 })).toEqual([...up].reverse());
  });
  test.prop([
    fc.integer({ min: 0, max: 100 }),
    fc.integer({ min: 0, max: 100 }),
    fc.integer({ min: 2, max: 40 }),
  ])("is compensate at every point, with its interval and its refusals", (fromC, toC, points) => {
    for (const law of [undefined, handbookTemperatureLaw("glycin")])
      for (const point of temperatureCurve({ baseline, fromC, toC, points, law })) {
        const { temperatureC } = point;
        const answer = compensate(baseline, { temperatureC }, law === undefined ? {} : { temperature: law });
        expect(point).toMatchObject({ timeS: answer.timeS, lowS: answer.lowS, highS: answer.highS });
        expect(point.refused ?? false).toBe(answer.cautions.some(({ severity }) => severity === "stop"));
      }
  });
  it("meets the known time at its own temperature, and the rows of a table", () => {
    const law = {
      kind: "table",
      rows: [
        { temperatureC: 18, timeS: 600 },
        { temperatureC: 20, timeS: 510 },
        { temperatureC: 24, timeS: 390 },
      ],
    } as const;
    // An axis in steps of 0.1 °C, whose sums in doubles miss 18 and 24.
    const curve = temperatureCurve({ baseline, fromC: 17.3, toC: 24.3, points: 71, law });
    const at = (c: number): number => curve.find(({ temperatureC }) => temperatureC === c)!.timeS;
    expect([at(18), at(20), at(24)]).toEqual([600, 510, 390]);
  });
  it("refuses where hydroquinone does not work, and where a film is damaged", () => {
    const refused = (points: ReturnType<typeof temperatureCurve>): readonly number[] =>
      points.filter((point) => point.refused).map(({ temperatureC }) => temperatureC);
    const options = { fromC: 10, toC: 14, points: 5 };
    expect(refused(temperatureCurve({ ...options, baseline }))).toEqual([]);
    expect(refused(temperatureCurve({ ...options, baseline: { ...baseline, hydroquinone: true } }))).toEqual([
      10, 11, 12,
    ]);
    expect(refused(temperatureCurve({ baseline, fromC: 31, toC: 34, points: 4 }))).toEqual([33, 34]);
  });
  it("draws the generic law within 0.1 % of straight lines between 30 points", () => {
    const curve = temperatureCurve({ baseline, fromC: 10, toC: 30, points: 30 });
    curve.slice(1).forEach((to, i) => {
      const from = curve[i]!;
      const temperatureC = (from.temperatureC + to.temperatureC) / 2;
      const exact = compensate(baseline, { temperatureC }).timeS;
      expect(Math.abs((from.timeS + to.timeS) / 2 / exact - 1)).toBeLessThan(0.001);
    });
  });
  it.each([
    ["options", undefined, "missing", "/options"],
    ["fromC", { fromC: -1 }, "out-of-range", "/fromC"],
    ["toC", { toC: 101 }, "out-of-range", "/toC"],
    ["toC as text", { toC: "30" }, "wrong-type", "/toC"],
    ["points", { points: 1 }, "out-of-range", "/points"],
    ["points that are not whole", { points: 2.5 }, "wrong-type", "/points"],
    ["the baseline", { baseline: undefined }, "missing", "/baseline"],
    ["a law", { law: { kind: "guess" } }, "not-one-of", "/law/kind"],
  ])("says what is wrong with %s", (_, change, code, path) => {
    const given = change && { baseline, fromC: 10, toC: 30, points: 5, ...change };
    expect(() => temperatureCurve(anyOf(given))).toThrow(expect.objectContaining({ code, path }));
  });
});
