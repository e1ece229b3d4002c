/* Cautions about one bath temperature: each limit from both sides. */
import { describe, expect, it } from "vitest";
import { temperatureCautions, startKnowledge, compensate } from "../../src/index.js";
import { anyOf, thrown } from "../helpers.js";
const codes = (c: number, options?: Parameters<typeof temperatureCautions>[1]): string[] =>
  temperatureCautions(c, options).map(({ code, severity }) => `${severity} ${code}`);

describe("temperatureCautions", () => {
  it("is silent from 18 to 24 °C", () => {
    for (const c of [18, 20, 24]) expect(temperatureCautions(c)).toMatchObject([]);
  });
  it("warns outside 18 to 24 and stops outside 4 to 32 °C", () => {
    expect(temperatureCautions(17.9)).toMatchObject([
      {
        code: "temperature-unusual",
        severity: "warn",
        limit: 18,
        actual: 17.9,
      },
    ]);
    expect(temperatureCautions(24.1)).toMatchObject([
      {
        code: "temperature-unusual",
        severity: "warn",
        limit: 24,
        actual: 24.1,
      },
    ]);
    expect(codes(4)).toMatchObject(["warn temperature-unusual"]);
    expect(codes(32)).toMatchObject(["warn temperature-unusual"]);
    expect(temperatureCautions(3.9)).toMatchObject([
      { code: "temperature-limit", severity: "stop", limit: 4, actual: 3.9 },
    ]);
    expect(temperatureCautions(32.1)).toMatchObject([
      { code: "temperature-limit", severity: "stop", limit: 32, actual: 32.1 },
    ]);
  });
  it("asks above 45 °C whether °F was meant, and says nothing else", () => {
    expect(codes(45)).toMatchObject(["stop temperature-limit"]);
    expect(temperatureCautions(68, { emulsion: "soft" })).toMatchObject([
      {
        code: "maybe-fahrenheit",
        severity: "stop",
        limit: 45,
        actual: 68,
      },
    ]);
    expect(temperatureCautions(75)[0]?.message).toBe("75 °C: is it in °F? 75 °F is 23.9 °C.");
  });
  it("knows that hydroquinone fails in the cold", () => {
    const hydroquinone = true;
    expect(codes(16, { hydroquinone })).toMatchObject(["warn temperature-unusual"]);
    expect(temperatureCautions(15.9, { hydroquinone })[0]).toMatchObject({
      code: "hydroquinone-cold",
      severity: "warn",
      limit: 16,
      actual: 15.9,
    });
    expect(temperatureCautions(13, { hydroquinone })[0]).toMatchObject({
      severity: "warn",
    });
    expect(temperatureCautions(12.9, { hydroquinone })[0]).toMatchObject({
      code: "hydroquinone-cold",
      severity: "stop",
      limit: 13,
      actual: 12.9,
    });
    expect(codes(12, { hydroquinone: false })).toMatchObject(["warn temperature-unusual"]);
  });
  it("knows that a soft emulsion stands less heat", () => {
    const emulsion = "soft";
    const message = "Soft or unhardened gelatin tears above 24 °C. Cool the bath.";
    expect(temperatureCautions(20, { emulsion })).toMatchObject([]);
    expect(temperatureCautions(20.1, { emulsion })).toMatchObject([
      { code: "soft-emulsion-warm", severity: "warn", limit: 20, actual: 20.1 },
    ]);
    expect(temperatureCautions(24, { emulsion })).toMatchObject([{ severity: "warn", limit: 20 }]);
    expect(temperatureCautions(24.5, { emulsion })[0]).toMatchObject({
      code: "soft-emulsion-warm",
      severity: "stop",
      message,
      limit: 24,
      actual: 24.5,
    });
    expect(codes(23, { emulsion: "hardened" })).toMatchObject([]);
  });
  it("carries the caller's path", () => {
    expect(temperatureCautions(10, { path: "/baths/2/temperatureC" })[0]?.path).toBe("/baths/2/temperatureC");
    expect(Object.keys(temperatureCautions(10)[0]!)).not.toContain("path");
  });
  it("refuses what is no bath temperature", () => {
    expect(() => temperatureCautions(300)).toThrow(
      new RangeError("temperatureCautions: temperatureC must be from 0 to 100 °C, got 300"),
    );
    expect(() => temperatureCautions(20, anyOf(null))).toThrow(
      new TypeError("temperatureCautions: options must be an object, got null"),
    );
    expect(() => temperatureCautions(20, { path: anyOf(5) })).toThrow(
      new TypeError("temperatureCautions: options.path must be text, got 5"),
    );
    expect(() => temperatureCautions(anyOf("20"))).toThrow(
      new TypeError('temperatureCautions: temperatureC must be a number, got "20"'),
    );
  });
});

describe("an emulsion or a developer that nobody sells", () => {
  const baseline = { timeS: 510, temperatureC: 20 };
  it("is refused by name", () => {
    expect(thrown(() => startKnowledge(anyOf({ ...baseline, emulsion: NaN })))).toBe(
      'RangeError: startKnowledge: baseline.emulsion must be "soft" or "hardened", got NaN',
    );
    expect(thrown(() => startKnowledge(anyOf({ ...baseline, hydroquinone: 0.5 })))).toBe(
      "TypeError: startKnowledge: baseline.hydroquinone must be true or false, got 0.5",
    );
    expect(
      startKnowledge({ ...baseline, emulsion: "hardened", hydroquinone: true }).baseline.hydroquinone,
    ).toBe(true);
    // Misspelt, they would leave out a caution that the photographer needs.
    for (const [options, message] of [
      [
        { emulsion: "Soft" },
        'RangeError: temperatureCautions: options.emulsion must be "soft" or "hardened", got "Soft"',
      ],
      [
        { emulsion: null },
        'RangeError: temperatureCautions: options.emulsion must be "soft" or "hardened", got null',
      ],
      [
        { hydroquinone: "yes" },
        'TypeError: temperatureCautions: options.hydroquinone must be true or false, got "yes"',
      ],
    ] as const) {
      expect(thrown(() => temperatureCautions(22, anyOf(options)))).toBe(message);
      expect(thrown(() => compensate(anyOf({ ...baseline, ...options }), {}))).toBe(
        message.replace("temperatureCautions: options", "compensate: baseline"),
      );
    }
  });
});
