/* German says all that English says, from the data alone. */
import { describe, expect, it } from "vitest";
import { cautionCodes, describeCautions, type Caution } from "../../src/index.js";
import { de } from "../../src/texts/de.js";
import { sentencesOf, wordsOf } from "../docs/language.js";
import { englishSentences } from "./english.js";
import { cautions } from "./sweep.js";

const stored = (caution: Caution): Caution => JSON.parse(JSON.stringify(caution)) as Caution;
const german = (caution: Caution, unit: "C" | "F" = "C"): string =>
  describeCautions([{ ...caution, path: "" }], de.cautions, { unit })[0]!;

/** English words that no German sentence holds, but for the names of functions and fields. */
const ENGLISH =
  /\b(?:the|and|is|are|of|to|with|without|for|not|it|bath|time|take|mix|more|than|below|above|water|heat|undefined|NaN|null|object)\b/i;

describe("the cautions of a sweep", () => {
  it("have every code", () => {
    const codes = new Set(cautions.map(({ code }) => code));
    expect(cautionCodes.filter((code) => !codes.has(code))).toEqual([]);
  });
  it("have the sentence that English makes of their data, also after JSON", () => {
    for (const caution of cautions) {
      const { code, severity, message, limit, actual, data = {} } = stored(caution);
      const sentence = englishSentences[code] as (facts: object, unit: string) => string;
      expect(sentence({ severity, limit, actual, data }, "C"), code).toBe(message);
    }
  });
  it("lose no figure in either language", () => {
    for (const caution of cautions)
      for (const unit of ["C", "F"] as const) {
        expect(caution.message).not.toMatch(/undefined|NaN|(?:^|[ (])\?(?: |$)/);
        expect(german(caution, unit)).not.toMatch(/undefined|NaN|(?:^|[ (])\?(?: |$)/);
      }
  });
  it("are said in German from what JSON keeps, without an English word", () => {
    for (const caution of cautions) {
      const said = german(caution);
      expect(german(stored(caution)), caution.code).toBe(said);
      expect(said, caution.code).toMatch(/^(?:Halt|Vorsicht|Hinweis): .*[.?]$/);
      expect(said.replaceAll(/„[^“]*“|Ist \w+ gemeint|bakeYield|bakedSoda/g, ""), caution.code).not.toMatch(
        ENGLISH,
      );
    }
  });
  it("are short sentences in German", () => {
    const long = cautions.flatMap((one) =>
      sentencesOf(german(one)).filter((text) => wordsOf(text).length > 30),
    );
    expect(long).toEqual([]);
  });
  it("show temperatures in °F to those who see them so", () => {
    const cold = cautions.find(({ code }) => code === "hydroquinone-cold")!;
    expect(german(cold, "F")).toMatch(/55,4 °F|60,8 °F/);
    expect(describeCautions([cold], undefined, { unit: "F" })[0]).toMatch(/55\.4 °F|60\.8 °F/);
    const asked = cautions.find(({ code }) => code === "maybe-fahrenheit")!;
    expect(german(asked, "F")).toBe(german(asked, "C"));
  });
});
