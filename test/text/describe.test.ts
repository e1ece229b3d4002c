/* What the describing functions refuse, and catalogues that somebody edited. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  describeCautions,
  describeCompensation,
  learn,
  predict,
  startKnowledge,
  type DevelopmentRun,
} from "../../src/index.js";
import { anyOf, thrown } from "../helpers.js";

describe("describeCautions refuses", () => {
  const note = { code: "a", severity: "note", message: "text" };
  it.each([
    [[undefined], "TypeError: describeCautions: cautions[0] is missing: an object"],
    [
      [{ ...note, severity: "bad" }],
      'RangeError: describeCautions: cautions[0].severity must be "stop", "warn" or "note", got "bad"',
    ],
    [[note, { ...note, message: 1 }], "TypeError: describeCautions: cautions[1].message must be text, got 1"],
    [[{ ...note, path: 1 }], "TypeError: describeCautions: cautions[0].path must be text, got 1"],
  ])("$1", (cautions, message) => {
    expect(thrown(() => describeCautions(anyOf(cautions)))).toBe(message);
  });
});

describe("describeCompensation refuses", () => {
  const baseline = { timeS: 510, temperatureC: 20 };
  const answer = compensate(baseline, { temperatureC: 18 });
  const factor = answer.factors[0]!;
  it.each([
    [{}, "TypeError: describeCompensation: compensation.timeS is missing: a number"],
    [
      { ...answer, highS: Infinity },
      "RangeError: describeCompensation: compensation.highS must be above 0 and at most 1e+100 s, got Infinity",
    ],
    [
      { ...answer, factors: 1 },
      "TypeError: describeCompensation: compensation.factors must be an array, got 1",
    ],
    [
      { ...answer, factors: [1] },
      "TypeError: describeCompensation: compensation.factors[0] must be an object, got 1",
    ],
    [
      { ...answer, factors: [{ ...factor, cause: 1 }] },
      "TypeError: describeCompensation: compensation.factors[0].cause must be text, got 1",
    ],
    [
      { ...answer, factors: [{ ...factor, basis: NaN }] },
      "TypeError: describeCompensation: compensation.factors[0].basis must be text, got NaN",
    ],
    [
      { ...answer, factors: [{ ...factor, value: 0 }] },
      "RangeError: describeCompensation: compensation.factors[0].value must be above 0 and at most 1e+100, got 0",
    ],
    [
      { ...answer, factors: [{ ...factor, logSd: 101 }] },
      "RangeError: describeCompensation: compensation.factors[0].logSd must be from 0 to 100, got 101",
    ],
    [
      { ...answer, cautions: 1 },
      "TypeError: describeCompensation: compensation.cautions must be an array, got 1",
    ],
  ])("$1", (given, message) => {
    expect(thrown(() => describeCompensation(anyOf(given)))).toBe(message);
  });
});

describe("parts that were learned together", () => {
  it("have a line for the whole, which is known better than they are", () => {
    const start = startKnowledge({ timeS: 900, temperatureC: 20, logSd: 0.2 });
    const runs = [14, 15, 14, 15].map((temperatureC, i): DevelopmentRun => ({
      id: String(i),
      timeS: 1500,
      temperatureC,
      outcome: { kind: "good", logSd: 0.1 },
    }));
    const answer = predict(learn(start, runs), { temperatureC: 14 });
    const line = describeCompensation(answer).find((one) => one.startsWith("all together"));
    const percent = Math.round(100 * (Math.sqrt(answer.highS / answer.lowS) - 1));
    expect(line).toBe(
      `all together good to ${percent} %: learned from the same runs, they are off against each other`,
    );
    // Where nothing was learned together, the spreads add.
    const apart = describeCompensation(predict(start, { temperatureC: 14 }));
    expect(apart.some((one) => one.startsWith("all together"))).toBe(false);
  });
});

describe("a catalogue that is edited", () => {
  // All invented: a weekend workshop in a mountain hut.
  const known = { timeS: 540, temperatureC: 20, dilution: "1+9" };
  const answer = compensate(known, { temperatureC: 17, dilution: "1+14" });
  const severities = { note: "Note", warn: "Care", stop: "Stop" };
  const words = { cautions: { severities, sentences: {} }, causes: {}, bases: {} };
  const texts = {
    ...words,
    side: () => undefined,
    sides: () => "",
    change: () => "changed",
    giveOrTake: () => "about",
    together: () => "together",
    known: () => "known",
    before: () => "",
    time: () => "Develop.",
    refusedTime: () => "",
    refused: "No time:",
    months: "months",
  };
  it.each<[string, object, string]>([
    ["no words", {}, "texts.cautions is missing: an object"],
    ["a sentence in place of a function", { change: "more" }, "texts.change must be a function"],
  ])("with %s is refused", (name, more, message) => {
    const call = (): unknown =>
      describeCompensation(answer, (name === "no words" ? {} : { ...texts, ...more }) as never);
    expect(call).toThrow(`describeCompensation: ${message}`);
  });

  it("is refused when one of its texts is a number", () => {
    expect(() => describeCompensation(answer, { ...texts, months: 3 } as never)).toThrow(
      "describeCompensation: texts.months must be text, got 3",
    );
  });

  it("is used, and a cause it does not know keeps its name", () => {
    expect(describeCompensation(answer, texts as never)).toContain("temperature: changed, about (default)");
  });
});
