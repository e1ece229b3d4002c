/* The sentence of one caution, in both languages and units. */
import { describe, expect, it } from "vitest";
import { compensate, describeCaution, describeCautions } from "../../src/index.js";
import { de } from "../../src/texts/de.js";

const known = { timeS: 510, temperatureC: 20, hydroquinone: true };
const [caution] = compensate(known, { temperatureC: 57 }).cautions;

describe("describeCaution", () => {
  it("says what the caution says, without its severity and its place", () => {
    expect(describeCaution(caution!)).toBe(caution!.message);
    expect(describeCautions([caution!])[0]).toContain(describeCaution(caution!));
  });
  it("says it in German, from the data", () => {
    const said = describeCaution(caution!, de.cautions);
    expect(said).toContain("57 °C");
    expect(said).not.toBe(caution!.message);
    expect(describeCautions([caution!], de.cautions)[0]).toContain(said);
  });
  it("says temperatures in the unit that is asked for", () => {
    const cold = compensate(known, { temperatureC: 14 }).cautions[0];
    expect(describeCaution(cold!, undefined, { unit: "F" })).toContain("°F");
  });
  it("says it in English where a catalogue leaves its sentence out, or names it without one", () => {
    for (const sentences of [{}, { [caution!.code]: undefined }])
      expect(describeCaution(caution!, { ...de.cautions, sentences })).toBe(caution!.message);
  });
  it("refuses what is no caution, and another unit", () => {
    expect(() => describeCaution({} as never)).toThrow(TypeError);
    expect(() => describeCaution(caution!, undefined, { unit: "K" as never })).toThrow(RangeError);
  });
});
