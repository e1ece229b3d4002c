/* What the fuzz found: data from a program's own store that is not what it was, and forecasts that no integral can follow. */
import { describe, expect, it } from "vitest";
import {
  effect,
  appearanceEstimate,
  bathCautions,
  brewStrength,
  checkRecipe,
  compensate,
  compensateRecipe,
  describeCautions,
  describeCompensation,
  formatRecipe,
  learn,
  mergeKnowledge,
  nextTest,
  planProcess,
  rateFunction,
  readRunNotes,
  startKnowledge,
  temperatureCautions,
  tidyRuns,
} from "../src/index.js";
import { clockTime } from "../src/drift/developUntil.js";

const anyOf = (value: unknown): any => value;
const thrown = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    return String(error);
  }
  return "nothing thrown";
};
const baseline = { timeS: 510, temperatureC: 20 };
const start = startKnowledge(baseline);

describe("a forecast", () => {
  it("that jumps about at every scale is given up", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 200 } as const;
    const rate = rateFunction(0, law);
    expect(thrown(() => clockTime((timeS) => rate(50 + 50 * Math.sin(timeS * 1e9)), 1e4, 0))).toMatch(
      /^RangeError: developUntil: temperatureAt must be smooth enough, got no end after \d+ looks$/,
    );
  });
  it("that tells each asker something else is given up after a million looks", () => {
    const law = { kind: "arrhenius", activationEnergyKJPerMol: 200 } as const;
    let looks = 0;
    // Hot where a step's length is asked for, cold where the step is taken.
    const rate = rateFunction(0, law);
    expect(thrown(() => clockTime(() => rate((looks += 1) % 10 === 1 ? 100 : 0), 1e4, 0))).toMatch(
      /got no end after 1000001 looks$/,
    );
  });
});

describe("stored answers", () => {
  const note = { code: "a", severity: "note", message: "text" };
  it.each([
    [[undefined], "TypeError: describeCautions: cautions[0] must be an object, got undefined"],
    [
      [{ ...note, severity: "bad" }],
      'RangeError: describeCautions: cautions[0].severity must be one of stop, warn, note, got "bad"',
    ],
    [[note, { ...note, message: 1 }], "TypeError: describeCautions: cautions[1].message must be text, got 1"],
    [[{ ...note, path: 1 }], "TypeError: describeCautions: cautions[0].path must be text, got 1"],
  ])("cautions %#", (cautions, message) => {
    expect(thrown(() => describeCautions(anyOf(cautions)))).toBe(message);
  });
  const answer = compensate(baseline, { temperatureC: 18 });
  const factor = answer.factors[0]!;
  it.each([
    [{}, "TypeError: describeCompensation: compensation.timeS must be a number, got undefined"],
    [
      { ...answer, highS: Infinity },
      "RangeError: describeCompensation: compensation.highS must be above 0 and at most 1e100, got Infinity",
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
      "RangeError: describeCompensation: compensation.factors[0].value must be above 0 and at most 1e100, got 0",
    ],
    [
      { ...answer, factors: [{ ...factor, logSd: 101 }] },
      "RangeError: describeCompensation: compensation.factors[0].logSd must be from 0 to 100, got 101",
    ],
    [
      { ...answer, cautions: 1 },
      "TypeError: describeCompensation: compensation.cautions must be an array, got 1",
    ],
  ])("compensation %#", (given, message) => {
    expect(thrown(() => describeCompensation(anyOf(given)))).toBe(message);
  });
  it("recipes that nobody checked", () => {
    expect(thrown(() => compensateRecipe(anyOf({})))).toBe(
      "TypeError: compensateRecipe: recipe.developer must be an object, got undefined",
    );
    expect(thrown(() => compensateRecipe(anyOf({ developer: {} })))).toBe(
      "TypeError: compensateRecipe: recipe.material must be an object, got undefined",
    );
    expect(thrown(() => formatRecipe(anyOf({ timeS: 20n })))).toBe(
      "TypeError: formatRecipe: recipe must be plain data as checkRecipe returns it, got an object",
    );
  });
});

describe("stored knowledge", () => {
  const { parameters, joint } = start;
  it("whose joint spread is lost", () => {
    expect(thrown(() => compensate(baseline, {}, anyOf({ joint: null })))).toBe(
      "TypeError: compensate: knowledge.joint must be an object, got null",
    );
    expect(thrown(() => compensate(baseline, {}, anyOf({ joint: {} })))).toBe(
      "TypeError: compensate: knowledge.joint.parameters must be an array, got undefined",
    );
    expect(thrown(() => compensate(baseline, {}, anyOf({ joint: { parameters: joint.parameters } })))).toBe(
      "TypeError: compensate: knowledge.joint.correlation must be an array, got undefined",
    );
  });
  it.each([
    { parameters: [...parameters, parameters[0]] },
    { parameters: [null, ...parameters.slice(1)] },
    { parameters: [...parameters.slice(0, 6), { ...parameters[6]!, runs: 1, value: NaN }] },
    { joint: null },
    { joint: { correlation: joint.correlation.map((line) => line.map(() => 2)) } },
    { baseline: 1 },
    { scatter: -1 },
    { setAside: [{ run: 0, weight: 2 }] },
  ])("whose results are spoilt is worked out anew before a test or a table: %j", (spoilt) => {
    const sound = learn(start, [
      { timeS: 600, temperatureC: 18, outcome: { kind: "judged", timeRatio: 0.9 } },
    ]);
    const knowledge = anyOf({ ...sound, ...spoilt });
    expect(nextTest(knowledge, [{ temperatureC: 15 }], {})).toEqual(
      nextTest(sound, [{ temperatureC: 15 }], {}),
    );
    expect(tidyRuns(knowledge)).toEqual(tidyRuns(sound));
  });
  it("that is none", () => {
    for (const [name, call] of [
      ["nextTest", nextTest],
      ["tidyRuns", tidyRuns],
    ] as const)
      expect(thrown(() => call(anyOf(undefined), [], {}))).toBe(
        `TypeError: ${name}: knowledge must be an object, got undefined`,
      );
  });
  it("whose joint spread names its causes in an endless list of holes", () => {
    const parameters = new Array<string>(2 ** 32 - 1);
    expect(thrown(() => compensate(baseline, {}, anyOf({ joint: { ...joint, parameters } })))).toBe(
      "RangeError: compensate: knowledge.joint.parameters must hold at most 100000, got 4294967295",
    );
  });
  it("from laws whose origin is none", () => {
    const law = { kind: "power", exponent: 1, sd: 0.1 };
    const start = (origin: object): unknown =>
      startKnowledge(baseline, { laws: { dilution: anyOf({ ...law, ...origin }) } });
    expect(thrown(() => start({ sources: NaN }))).toBe(
      "TypeError: startKnowledge: laws.dilution.sources must be an array, got NaN",
    );
    expect(thrown(() => start({ published: NaN }))).toBe(
      "TypeError: startKnowledge: laws.dilution.published must be true or false, got NaN",
    );
    expect(thrown(() => start({ runs: -1 }))).toBe(
      "RangeError: startKnowledge: laws.dilution.runs must be from 0 to 1000000000, got -1",
    );
  });
  it("of a run with a number that JSON has no text for", () => {
    const run = { timeS: 510, temperatureC: 20, usedCm2PerL: 5n, outcome: { kind: "good" } };
    expect(thrown(() => learn(start, [anyOf(run)]))).toBe(
      "TypeError: learn: runs[0].usedCm2PerL must be a number, got 5",
    );
  });
  it("of an unknown emulsion, or a developer that is half hydroquinone", () => {
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
  it("of an unknown emulsion is no plan either", () => {
    const baths = { fix: {}, wash: {} };
    const plan = { vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 500, baths, emulsion: "Soft" };
    expect(thrown(() => planProcess(anyOf(plan)))).toBe(
      'RangeError: planProcess: input.emulsion must be "soft" or "hardened", got "Soft"',
    );
    expect(thrown(() => bathCautions(anyOf({ temperatureC: 20, baths, emulsion: 5 })))).toBe(
      'RangeError: bathCautions: question.emulsion must be "soft" or "hardened", got 5',
    );
  });
  it("whose fields are named like methods merges all the same", () => {
    const odd = (): typeof start =>
      startKnowledge(anyOf({ ...baseline, agitation: { everyS: 60, toString: 0 } }));
    expect(mergeKnowledge(odd(), odd()).runs).toEqual(learn(odd(), []).runs);
  });
});

describe("a number of a recipe that is no measure", () => {
  it("is a problem of the recipe, never an error of the check", () => {
    const recipe = {
      schemaVersion: 2,
      name: "hut",
      material: { name: "plate", kind: "plate" },
      baseline: { timeS: 480, temperatureC: 20 },
    };
    const found = checkRecipe({
      ...recipe,
      developer: { kind: "stock", name: "one", dilution: "1+9", volumeMl: 5e-324 },
    });
    expect(found.ok).toBe(false);
    expect(JSON.stringify(found)).toContain(
      "must be a number above 1e-30 and at most 1000000 ml, got 5e-324",
    );
  });
});

describe("what a law says of its origin", () => {
  it("has to be a law at all", () => {
    expect(thrown(() => compensate(baseline, {}, anyOf({ temperature: null })))).toBe(
      "TypeError: compensate: knowledge.temperature must be an object, got null",
    );
    expect(thrown(() => compensate(anyOf({ ...baseline, runs: NaN }), {}))).toBe(
      "RangeError: compensate: baseline.runs must be from 0 to 1000000000, got NaN",
    );
  });
  it("and its sources a list", () => {
    const brew = {
      volumeMl: 500,
      temperatureC: 20,
      ingredients: [{ ingredient: "instant-coffee", massG: 20 }],
    } as const;
    expect(thrown(() => brewStrength(brew, brew, anyOf({ exponent: 1, sources: NaN })))).toBe(
      "TypeError: brewStrength: law.sources must be an array, got NaN",
    );
  });
});

describe("a gradient of 0", () => {
  it("has no ratio of times", () => {
    const law = { gammaInfinity: 1, ratePerS: 0.001, appearanceS: 0 };
    expect(thrown(() => effect("contrast", 0, 0.5, law).logSd)).toBe(
      "RangeError: effect: from must be above 0 and at most 1000, got 0",
    );
    expect(thrown(() => effect("contrast", 0.5, 0, law).logSd)).toBe(
      "RangeError: effect: to must be above 0 and at most 1000, got 0",
    );
  });
});

describe("an empty cell", () => {
  it("may be NaN, as a data frame leaves it", () => {
    const { runs } = readRunNotes([
      { Time: "8:30", Temp: "20 °C", Dilution: NaN, Weather: NaN, Outcome: "good" },
    ]);
    expect(runs).toEqual([{ timeS: 510, temperatureC: 20, outcome: { kind: "good" } }]);
  });
});

describe("the image as the clock", () => {
  it("is of no use for a time shorter than any hand", () => {
    expect(thrown(() => appearanceEstimate({ appearanceS: 1e-30, factor: 3 }))).toBe(
      "RangeError: appearanceEstimate: seen must leave a spread of ln(time) of at most 100, got 1.5e+30",
    );
  });
  it("checks the time of appearance before it divides by it", () => {
    expect(thrown(() => appearanceEstimate({ appearanceS: anyOf(Symbol("s")), factor: 10 }))).toMatch(
      /^TypeError: timeFromAppearance: appearanceS must be a number, got Symbol\(s\)$/,
    );
  });
});
