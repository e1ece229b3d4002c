/* Room: temperature. The cautions exactly at their limits, where a reading may stand: the limit itself is still allowed. */
import { describe, expect, it } from "vitest";
import { temperatureCautions } from "../../src/index.js";

const at = (c: number, options = {}): string[] => temperatureCautions(c, options).map(({ code, severity }) => `${severity} ${code}`);

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
