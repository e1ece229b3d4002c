/* Every problem is said in English and in German from its data, after JSON too, without a word of the other. */
import { describe, expect, it } from "vitest";
import {
  bathState,
  brewPh,
  brewStrength,
  checkConditions,
  checkKnowledge,
  checkLedger,
  checkLog,
  checkRecipe,
  combineEstimates,
  compensate,
  describeProblem,
  describeProblems,
  equivalentTime,
  filmAreaCm2,
  parseStops,
  fitDrift,
  fitGrowth,
  isInputError,
  learn,
  massOf,
  parseAge,
  parseAgitation,
  parseCount,
  parseDilution,
  parseSpread,
  parseTemperature,
  parseTime,
  parseUse,
  parseVolume,
  planProcess,
  problemTexts,
  readRunNotes,
  spoonsFor,
  startKnowledge,
  startTemperatureFor,
  steer,
  temperatureFactor,
  type InputProblem,
} from "../../src/index.js";
import { de } from "../../src/texts/de.js";
import { anyOf } from "../helpers.js";

function caught(call: () => unknown): readonly InputProblem[] {
  try {
    call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    return [error];
  }
  throw new Error("nothing was refused");
}
const of = (check: {
  readonly ok: boolean;
  readonly problems?: readonly InputProblem[];
}): readonly InputProblem[] => check.problems ?? [];

const known = { timeS: 540, temperatureC: 20 };
const table = (...rows: readonly (readonly [number, number])[]): unknown => ({
  kind: "table",
  rows: rows.map(([temperatureC, timeS]) => ({ temperatureC, timeS })),
});
const age = { kind: "life", lifeH: 2 } as const;
const bad: readonly (readonly [string, () => readonly InputProblem[]])[] = [
  ["a time", () => caught(() => parseTime("soon"))],
  ["a bare time", () => caught(() => parseTime("9"))],
  ["70 seconds", () => caught(() => parseTime("8:70"))],
  ["no text", () => caught(() => parseTime(anyOf(9)))],
  ["a temperature", () => caught(() => parseTemperature("warm"))],
  ["a volume", () => caught(() => parseVolume("1 pint"))],
  ["a spread", () => caught(() => parseSpread("10", 540))],
  ["an age", () => caught(() => parseAge("old"))],
  ["a use", () => caught(() => parseUse("much"))],
  ["a count", () => caught(() => parseCount("many"))],
  ["an agitation", () => caught(() => parseAgitation("often"))],
  ["a dilution with a colon", () => caught(() => parseDilution("1:9"))],
  ["a film format", () => caught(() => filmAreaCm2("tiny"))],
  ["a size without a unit", () => caught(() => filmAreaCm2("9x13"))],
  ["a push", () => caught(() => parseStops("much"))],
  ["a push too far", () => caught(() => parseStops("9"))],
  ["a film of three metres", () => caught(() => filmAreaCm2("300x300cm"))],
  ["conditions", () => of(checkConditions(known, anyOf({ temperatureC: 300, gamma: 0.6, dilution: 9 })))],
  ["text for a figure", () => of(checkConditions(anyOf({ ...known, timeS: "9:00" }), {}))],
  ["no time", () => of(checkConditions(anyOf({ temperatureC: 20 }), {}))],
  ["a bath past its life", () => caught(() => compensate({ ...known, ageH: 3 }, { ageH: 0 }, { age }))],
  ["a table that falls", () => caught(() => temperatureFactor(20, 18, anyOf(table([20, 500], [18, 400]))))],
  ["a law of no kind", () => caught(() => temperatureFactor(20, 18, anyOf({ kind: "guess" })))],
  [
    "a recipe",
    () => of(checkRecipe({ schemaVersion: 2, material: { kind: "glass" }, metrial: 1, baseline: [] })),
  ],
  ["a newer recipe", () => of(checkRecipe({ schemaVersion: 9 }))],
  ["no JSON", () => of(checkRecipe('{"a": }'))],
  ["knowledge", () => of(checkKnowledge({ schema: 1, runs: "none" }))],
  ["a log", () => of(checkLog([{ timeS: -1, temperatureC: "x" }, 5]))],
  ["no readings", () => of(checkLog([]))],
  [
    "a ledger",
    () =>
      of(
        checkLedger({
          volumeMl: 500,
          mixedAtH: 9,
          processed: [{ atH: 8, areaCm2: 0 }],
          poured: [{ atH: 10, volumeMl: 900 }],
          evaporated: [{ atH: 10, volumeMl: 900 }],
        }),
      ),
  ],
  ["an hour before mixing", () => caught(() => bathState({ volumeMl: 500, mixedAtH: 9, processed: [] }, 8))],
  [
    "notes",
    () =>
      readRunNotes(
        [
          { Time: "510", Temp: "warm", Outcome: "+1", Dilution: "1:9" },
          { Time: "8:30", time: "9:00", Temp: "20 °C", Outcome: "good" },
          { Time: "8:30", Temp: "20 °C", Outcome: "good", id: "a" },
          { Time: "8:30", Temp: "20 °C", Outcome: "good", id: "a" },
          { Time: "9:30", Temp: "20 °C", Outcome: "good", id: "a" },
          { Time: "9:40", Temp: "20 °C", Outcome: "good", date: "2025-05-01" },
          { "Time (min:s)": 8, "Temp": "20 °C", "Outcome": "lovely" },
        ],
        { today: "2024-05-01" },
      ).rejected.flatMap(({ problems }) => problems),
  ],
  ["a misspelt run", () => caught(() => learn(startKnowledge(known), [anyOf({ ...known, outcom: 1 })]))],
  ["an ingredient", () => caught(() => massOf(anyOf({ ingredient: "tea", spoons: 1 })))],
  ["an unfit one", () => caught(() => massOf(anyOf({ ingredient: "baking-powder", spoons: 1 })))],
  ["a tablet", () => caught(() => massOf(anyOf({ ingredient: "ascorbic-acid-tablet", tablets: 3 })))],
  [
    "spoons of tablets",
    () => caught(() => spoonsFor(anyOf({ ingredient: "ascorbic-acid-tablet", massG: 5 }))),
  ],
  [
    "a bath of soda",
    () =>
      caught(() =>
        brewStrength(
          { volumeMl: 500, ingredients: [{ ingredient: "borax", massG: 5 }] },
          { volumeMl: 500, ingredients: [{ ingredient: "borax", massG: 5 }] },
        ),
      ),
  ],
  [
    "a brew of dry stuff",
    () => caught(() => brewPh({ volumeMl: 10, ingredients: [{ ingredient: "borax", massG: 50 }] })),
  ],
  [
    "an estimate out of order",
    () => caught(() => combineEstimates({ timeS: 5, lowS: 6, highS: 7 }, { timeS: 5, lowS: 4, highS: 7 })),
  ],
  [
    "readings out of order",
    () =>
      caught(() =>
        equivalentTime(
          [
            { timeS: 60, temperatureC: 20 },
            { timeS: 60, temperatureC: 19 },
          ],
          20,
        ),
      ),
  ],
  ["a level log", () => caught(() => fitDrift([0, 60, 120].map((timeS) => ({ timeS, temperatureC: 20 }))))],
  [
    "a falling gradient",
    () =>
      caught(() =>
        fitGrowth([
          { timeS: 300, gamma: 0.9 },
          { timeS: 600, gamma: 0.5 },
          { timeS: 900, gamma: 0.4 },
        ]),
      ),
  ],
  [
    "a target out of reach",
    () => caught(() => startTemperatureFor({ targetC: 50, timeS: 1e5, ambientC: 10, timeConstantS: 600 })),
  ],
  ["half a piece", () => caught(() => planProcess({ vessel: "tank", ...known, pieces: 1.5 }))],
];

/** Words of either language that no sentence of the other holds, but in quotes and names of fields. */
const ENGLISH =
  /\b(?:must|got|the|and|is|are|of|to|with|without|for|not|such|number|missing|least|most|than|below|above|undefined|NaN)\b/;
const GERMAN = /\b(?:nötig|gegeben|und|ist|fehlt|eine?|oder|mit)\b/;

describe("what is refused", () => {
  it.each(bad)("%s is said in both languages, also from what JSON keeps", (_, call) => {
    const problems = call();
    expect(problems.length).toBeGreaterThan(0);
    for (const problem of problems) {
      const { actual, message } = problem;
      const english = describeProblem(problem);
      expect(message.endsWith(english)).toBe(true);
      expect(english).not.toMatch(GERMAN);
      // A catalogue of the same words makes from the data what was written where it was refused.
      expect(describeProblem(problem, { ...problemTexts })).toBe(english);
      const german = describeProblem(problem, de.problems);
      const plain = german.replaceAll(/„[^“]*“/g, "").replaceAll(/[\w$]+(?:, [\w$]+){4,}/g, "");
      expect(plain).not.toMatch(ENGLISH);
      expect(plain).toMatch(
        /^(?:nötig (?:ist|sind) .|fehlt: hier muss .* stehen$|es fehlt .|das Feld .*gibt es hier nicht)/,
      );
      const stored = JSON.parse(JSON.stringify({ ...problem, message })) as InputProblem;
      if (!Number.isNaN(actual)) expect(describeProblem(stored, de.problems)).toBe(german);
    }
    expect(describeProblems(problems, de.problems)).toHaveLength(problems.length);
  });
  it("is said with its limits, its examples and its place", () => {
    const hot = of(checkConditions(known, { temperatureC: 300 }));
    expect(describeProblems(hot, de.problems)).toEqual([
      "conditions.temperatureC: nötig ist ein Wert von 0 bis 100 °C, hier steht 300",
    ]);
    expect(describeProblem(hot[0]!, de.problems, { unit: "F" })).toBe(
      "nötig ist ein Wert von 32 bis 212 °F, hier steht 300 °C",
    );
    expect(describeProblem(hot[0]!, undefined, { unit: "F" })).toBe("must be from 32 to 212 °F, got 300 °C");
    expect(describeProblem(caught(() => parseTime("soon"))[0]!, de.problems)).toBe(
      "nötig ist eine Zeit wie „8:30“, „8,5 min“ oder „510 s“, hier steht „soon“",
    );
    expect(describeProblems(of(checkConditions(known, { gamma: 0.6 })), de.problems)).toEqual([
      "conditions.gamma: es fehlt baseline.gamma: Was galt für die bekannte Zeit?",
    ]);
  });
  it("has a German catalogue with every field of the English one", () => {
    expect(Object.keys(de.problems).sort()).toEqual(Object.keys(problemTexts).sort());
  });
  it("refuses what is no problem and no catalogue", () => {
    expect(() => describeProblem(anyOf(5))).toThrow(expect.objectContaining({ path: "/problem" }));
    expect(() => describeProblem(anyOf({ code: "odd" }))).toThrow(
      expect.objectContaining({ code: "not-one-of", path: "/problem/code" }),
    );
    expect(() => describeProblems(anyOf({}))).toThrow(expect.objectContaining({ path: "/problems" }));
  });
});

describe("a text that lost a character", () => {
  it("says how to save the file, in both languages, also from what JSON keeps", () => {
    const [problem] = caught(() => parseTemperature("20 \uFFFDC"));
    const english =
      'must be a temperature such as "20 °C" or "68F", got "20 \uFFFDC" ' +
      "(a character was lost: save the file as UTF-8)";
    expect(describeProblem(problem!)).toBe(english);
    expect(describeProblem(problem!, { ...problemTexts })).toBe(english);
    expect(describeProblem(problem!, de.problems)).toBe(
      "nötig ist eine Temperatur wie „20 °C“ oder „68F“, hier steht „20 \uFFFDC“ " +
        "(ein Zeichen ging verloren: die Datei als UTF-8 speichern)",
    );
  });
});

describe("a figure that must be above 0", () => {
  const recipe = {
    schemaVersion: 2,
    material: { name: "film" },
    developer: { kind: "stock", name: "developer", dilution: "1+9" },
    baseline: { timeS: 0, temperatureC: 20 },
  };
  it.each([
    ["checkRecipe", of(checkRecipe(recipe))],
    ["compensate", caught(() => compensate({ timeS: 1e-40, temperatureC: 20 }, {}))],
  ])("is said so in data and in both languages by %s", (_, [problem]) => {
    expect(problem).toMatchObject({ path: "/baseline/timeS", expected: { above: 0, max: 1e6 } });
    expect(describeProblem(problem!, de.problems)).toContain("über 0 s und höchstens 1000000 s");
    expect(describeProblem(problem!)).toContain("above 0 and at most 1000000 s");
  });
});

describe("a list that is too short", () => {
  it("says readings where its name does not, and counts one as one", () => {
    const steered = caught(() => steer({ baseline: known, conditions: {}, log: [] }))[0]!;
    expect(steered.message).toBe("steer: log must hold at least 1 reading, got 0");
    expect(describeProblem(steered, de.problems)).toBe("nötig ist mindestens 1 Messung, hier stehen 0");
    const log = [{ timeS: 0, temperatureC: 18 }];
    const drifting = caught(() => compensate(known, { temperatureC: log }))[0]!;
    expect(describeProblem(drifting)).toBe("must hold at least 2 readings, got 1");
    expect(describeProblem(drifting, de.problems)).toBe("nötig sind mindestens 2 Messungen, hier steht 1");
    const growth = caught(() => fitGrowth([]))[0]!;
    expect(describeProblem(growth)).toBe("must hold at least 2, got 0");
    expect(describeProblem(growth, de.problems)).toBe("nötig sind mindestens 2 Einträge, hier stehen 0");
  });
});
