/* Cautions and laws exactly at their limits, where a reading may stand: the limit itself is still allowed. */
import { describe, expect, it } from "vitest";
import {
  asArrheniusLaw,
  asCoefficientLaw,
  compensate,
  handbookTemperatureLaw,
  temperatureCautions,
  temperatureFactor,
  type Baseline,
  type HandbookDeveloper,
  type TemperatureCautionOptions,
} from "../../src/index.js";
import { dataOf } from "../helpers.js";

const at = (c: number, options = {}): string[] =>
  temperatureCautions(c, options).map(({ code, severity }) => `${severity} ${code}`);

describe("at the limits themselves", () => {
  it.each([
    [45, {}, ["stop temperature-limit"]],
    [45.1, {}, ["stop maybe-fahrenheit"]],
    [32, {}, ["warn temperature-unusual"]],
    [4, {}, ["warn temperature-unusual"]],
    [18, {}, []],
    [24, {}, []],
    [16, { hydroquinone: true }, ["warn temperature-unusual"]],
    [13, { hydroquinone: true }, ["warn hydroquinone-cold", "warn temperature-unusual"]],
    [12.9, { hydroquinone: true }, ["stop hydroquinone-cold", "warn temperature-unusual"]],
    [20, { emulsion: "soft" }, []],
    [24, { emulsion: "soft" }, ["warn soft-emulsion-warm"]],
    [24.1, { emulsion: "soft" }, ["stop soft-emulsion-warm", "warn temperature-unusual"]],
    [24, { emulsion: "hardened" }, []],
  ])("%d °C %j", (c, options, codes) => {
    expect(at(c, options)).toEqual(codes);
  });
});

describe("laws at their limits", () => {
  it("a table may fall e times per °C", () => {
    // ln(e/1) over 11 − 10 °C is 1.
    const law = {
      kind: "table",
      rows: [
        { temperatureC: 10, timeS: Math.E },
        { temperatureC: 11, timeS: 1 },
      ],
    } as const;
    expect(temperatureFactor(10, 11, law)).toBeCloseTo(1 / Math.E, 12);
  });
  it("the widest spread stays a spread over any interval, however its conversion rounds", () => {
    // sdRatio 1.2 × 7 is a spread of 1 per °C, so over h °C it is ratio × h, and ratio is 1.2^(h/7).
    for (let h = 1; h <= 60; h += 1) {
      const { ratio, sdRatio } = asCoefficientLaw(
        { kind: "coefficient", ratio: 1.2, intervalC: 7, sdRatio: 1.2 * 7 },
        0,
        h,
      );
      expect(ratio).toBeCloseTo(1.2 ** (h / 7), 9);
      expect(sdRatio).toBeLessThanOrEqual(ratio * h);
      expect(sdRatio).toBeCloseTo(ratio * h, 9);
    }
  });
});

describe("a developer that may hold hydroquinone", () => {
  const known = { timeS: 510, temperatureC: 20 };
  const said = (developer: HandbookDeveloper, temperatureC: number, baseline: Baseline = known) =>
    compensate(baseline, { temperatureC }, { temperature: handbookTemperatureLaw(developer) }).cautions.find(
      ({ code }) => code === "hydroquinone-cold",
    )?.severity;
  it("carries it in a law of the handbook that names it", () => {
    expect(said("hydroquinone", 11)).toBe("stop");
    expect(said("metol-hydroquinone", 10)).toBe("stop");
    expect(said("metol-hydroquinone-borax", 15)).toBe("warn");
    expect(said("metol-hydroquinone", 16)).toBeUndefined();
    expect(said("glycin", 10)).toBeUndefined();
    // What is said of the developer itself goes first.
    expect(said("metol-hydroquinone", 10, { ...known, hydroquinone: false })).toBeUndefined();
    const arrhenius = asArrheniusLaw(handbookTemperatureLaw("hydroquinone"), 10, 20);
    expect(compensate(known, { temperatureC: 10 }, { temperature: arrhenius }).refused).toBe(true);
  });
  it("is told of it below 13 °C where nothing is known of it", () => {
    const unnamed = (temperatureC: number, options: TemperatureCautionOptions = {}): unknown =>
      dataOf(temperatureCautions(temperatureC, options)[0])?.["unnamed"];
    expect(unnamed(12.9)).toBe("hydroquinone");
    expect(unnamed(13)).toBeUndefined();
    expect(unnamed(12, { hydroquinone: false })).toBeUndefined();
    const { cautions } = compensate(
      known,
      { temperatureC: 10 },
      { temperature: handbookTemperatureLaw("glycin") },
    );
    expect(cautions.find(({ code }) => code === "temperature-unusual")?.data).toEqual({ low: 18, high: 24 });
  });
});
