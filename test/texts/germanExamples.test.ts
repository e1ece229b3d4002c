/* German sentences offer German examples, and the parsers read them as they read the English ones. */
import { describe, expect, it } from "vitest";
import {
  checkBrew,
  describeProblem,
  isInputError,
  parseAge,
  parseAgitation,
  parseCount,
  parseDate,
  parseDilution,
  parseFilmFormat,
  parseOutcome,
  parseSpread,
  parseStops,
  parseTemperature,
  parseTime,
  parseUse,
  parseVolume,
  type InputError,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { de } from "../../src/texts/de.js";
import { inGerman } from "../../src/texts/de/examples.js";

/** Texts that each parser asks about, or cannot read. */
const ASKED: readonly (readonly [
  name: string,
  parse: (text: string) => unknown,
  texts: readonly string[],
])[] = [
  ["age", parseAge, ["old", "3", "2.5", "2:30", "1.440 min"]],
  ["agitation", parseAgitation, ["often", "30", "5x/min", "3.5 x/min", "7x/min", "every 60"]],
  ["count", parseCount, ["some"]],
  ["date", (text) => parseDate(text), ["soon", "5.5.", "3/4/2024"]],
  ["dilution", (text) => parseDilution(text), ["weak", "1:9", "1:2,7", "1/10"]],
  ["film format", parseFilmFormat, ["big", "6x9", "6,5x8,5"]],
  ["outcome", parseOutcome, ["odd", "+1", "+1,5", "over 1 stop", "flat", "contrasty", "+15%", "+20%"]],
  ["spread", (text) => parseSpread(text, 510), ["wide", "10", "2.5"]],
  ["push", parseStops, ["far", "push -1", "pushed -0.5 stops"]],
  ["temperature", (text) => parseTemperature(text), ["warm", "20", "20,5"]],
  ["time", parseTime, ["soon", "9", "8.30", "8.30 min", "1,234 min", "1.234 s"]],
  ["use", (text) => parseUse(text), ["much", "516", "1,032 cm2/l", "1.032 cm2/l", "3 6,5x8,5/l"]],
  ["volume", parseVolume, ["much", "500", "1.500 ml", "20 oz"]],
];

/** What a parser asks for where it does not read a text. */
function refused(parse: (text: string) => unknown, text: string): InputError {
  try {
    parse(text);
  } catch (error) {
    if (isInputError(error)) return error;
    throw error;
  }
  throw new Error(`${text} was read`);
}

describe("an example in German", () => {
  it.each(ASKED)("is read as the English one: %s", (_, parse, texts) => {
    for (const text of texts) {
      const error = refused(parse, text);
      const { examples = [], readings = [], format } = error.expected;
      const all = [...examples, ...readings];
      expect(all.length).toBeGreaterThan(0);
      for (const one of all) expect(parse(inGerman(one, format)), one).toEqual(parse(one));
      for (const one of readings.length > 0 ? readings : examples)
        if (error.expected.must !== "process-or-subject")
          expect(describeProblem(error, de.problems)).toContain(`„${inGerman(one, format)}“`);
    }
  });
  it.each([
    ["age", parseAge, "3 Tage"],
    ["agitation", parseAgitation, "alle 30 s"],
    ["agitation", parseAgitation, "ständig"],
    ["count", parseCount, "keine"],
    ["date", (text: string) => parseDate(text), "5. März 2024"],
    ["outcome", parseOutcome, "über 1"],
    ["outcome", parseOutcome, "x1,2"],
    ["outcome", parseOutcome, "15% mehr"],
    ["time", parseTime, "8,5 min"],
    ["use", (text: string) => parseUse(text), "2 Rollfilme/l"],
    ["volume", parseVolume, "0,5 l"],
  ])("of %s", (_, parse, example) => {
    expect(describeProblem(refused(parse, "?"), de.problems)).toContain(`„${example}“`);
  });
  it("says what a share of the time may mean in German alone", () => {
    expect(describeProblem(refused(parseOutcome, "+20%"), de.problems)).toBe(
      "nötig ist „20% weniger“, wenn es zu dicht wurde, oder „20% mehr“, wenn es mehr brauchte, hier steht „+20%“",
    );
  });
  it("has the German name of an ingredient behind what a file calls it", () => {
    const brew = { volumeMl: 500, ingredients: [{ ingredient: "Waschsoda", massG: 20 }] };
    const said = describeProblem(
      refused(() => checkBrew(anyOf(brew)), ""),
      de.problems,
    );
    expect(said).toMatch(
      /^nötig ist „instant-coffee“ \(löslicher Kaffee\), .*„soda-anhydrous“ \(Waschsoda, wasserfrei\), /,
    );
    expect(said).toMatch(/, hier steht „Waschsoda“$/);
    for (const name of ["baking-soda", "soda-decahydrate"] as const)
      expect(said).toContain(`„${name}“ (${de.ingredients[name]})`);
  });
  it("leaves dates and headings as they are, but for the month", () => {
    expect(inGerman("5 March 2024", "date with its year")).toBe("5. März 2024");
    expect(inGerman("1.2.2024", "date")).toBe("1.2.2024");
    expect(inGerman("Time (s)", "column with its unit")).toBe("Time (s)");
    expect(inGerman("1.0320 cm2/l", "use")).toBe("1.0320 cm2/l");
  });
});
