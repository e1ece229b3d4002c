/*
 * Data that came back from storage changed: knowledge, recipes, ledgers, logs, plans. Each change is refused or named in a caution, by its
 * place; none gives a shorter time or a narrower interval in silence. All of it is invented.
 */
import { describe, expect, it } from "vitest";
import {
  chartCsv,
  timeChart,
  describeChart,
  describeCautions,
  describeCompensation,
  compensate,
  describeFactor,
  describePlan,
  planProcess,
  stockCautions,
  bathCapacity,
  compensateRecipe,
  steer,
  checkKnowledge,
  checkLedger,
  checkLog,
  isInputError,
  learn,
  planAt,
  predict,
  roundEstimate,
  startKnowledge,
  type DevelopmentRun,
  type LearnedKnowledge,
} from "../src/index.js";

// All invented: a weekend workshop in a mountain hut.
const known = { timeS: 540, temperatureC: 20, dilution: "1+9" };
const answer = compensate(known, { temperatureC: 17, dilution: "1+14" });
const plan = planProcess({ vessel: "tank", timeS: 540, temperatureC: 20, volumeMl: 500 });
const chart = timeChart({ baseline: known, temperaturesC: [16, 20], dilutions: ["1+9", "1+14"] });
const recipe = {
  schemaVersion: 2,
  material: { name: "roll film", kind: "film" },
  developer: { kind: "stock", name: "hut concentrate", dilution: "1+9" },
  baseline: { timeS: 540, temperatureC: 20 },
} as const;
/** What is said of the answer with a lower end of 9999 s. */
const orderOf = (place: string): string =>
  `${place} must be lowS, timeS and highS in that order, not 9999, ${answer.timeS} and ${answer.highS} s`;

/** The same data with one value put in its place, as an editor leaves it. */
function edited<T>(data: T, path: string, value: unknown): T {
  const copy = structuredClone(data);
  const names = path.split("/").slice(1);
  const last = names.pop()!;
  let holder = copy as Record<string, unknown>;
  for (const name of names) holder = holder[name] as Record<string, unknown>;
  holder[last] = value;
  return copy;
}

describe("edited data are refused by their place", () => {
  it.each<[string, () => unknown, string]>([
    [
      "a chart's dilution",
      () => chartCsv(edited(chart, "/rows/1/dilution", 9)),
      "chartCsv: chart.rows[1].dilution must be text, got 9",
    ],
    [
      "a chart's temperature",
      () => describeChart(edited(chart, "/rows/0/temperatureC", -1)),
      "describeChart: chart.rows[0].temperatureC must be from 0 to 100 °C, got -1",
    ],
    [
      "the end of an answer's interval",
      () => describeCompensation(edited(answer, "/lowS", 9999)),
      orderOf("describeCompensation: compensation"),
    ],
    [
      "an answer's time that is planned",
      () => planProcess({ vessel: "tank", answer: edited(answer, "/lowS", 9999) }),
      orderOf("planProcess: input.answer"),
    ],
    [
      "an answer's time that is rounded",
      () => roundEstimate(edited(answer, "/lowS", 9999)),
      orderOf("roundEstimate: estimate"),
    ],
    [
      "the order of a chart's times",
      () => describeChart(edited(chart, "/rows/0/lowS", 9999)),
      `describeChart: chart.rows[0] must be lowS, timeS and highS in that order, not 9999, ${
        chart.rows[0]!.timeS
      } and ${chart.rows[0]!.highS} s`,
    ],
    [
      "a chart's interval",
      () => chartCsv(edited(chart, "/rows/0/lowS", 0)),
      "chartCsv: chart.rows[0].lowS must be above 0 and at most 1e+100 s, got 0",
    ],
    [
      "a caution's code",
      () => describeCautions(edited(answer.cautions, "/0/code", 1)),
      "describeCautions: cautions[0].code must be text, got 1",
    ],
    [
      "a row's side",
      () => describeFactor(edited(answer.factors[1]!, "/from", Infinity)),
      "describeFactor: row.from must be from -1e+100 to 1e+100, got Infinity",
    ],
    [
      "a cue's movement",
      () => describePlan(edited(plan, "/steps/0/cues/1/movement", 1)),
      "describePlan: plan.steps[0].cues[1].movement must be text, got 1",
    ],
    [
      "a developer's family",
      () =>
        stockCautions({
          dilution: "1+9",
          totalMl: 300,
          areaCm2: 516,
          leastMlPerRoll: 5,
          family: NaN as never,
        }),
      "stockCautions: question.family must be text, got NaN",
    ],
    [
      "the sources of a law",
      () =>
        bathCapacity({
          volumeMl: 500,
          use: { increase: 0.1, perCm2PerL: 516, growth: "linear", sources: NaN as never },
        }),
      "bathCapacity: bath.use.sources must be an array, got NaN",
    ],
    [
      "a recipe's conditions",
      () => compensateRecipe({ ...recipe, conditions: null as never }),
      "compensateRecipe: recipe.conditions must be an object, got null",
    ],
    [
      "an appearance",
      () =>
        steer({
          baseline: known,
          conditions: { temperatureC: 20 },
          log: [{ timeS: 0, temperatureC: 20 }],
          appearance: null as never,
        }),
      "steer: appearance must be an object, got null",
    ],
  ])("%s", (_, call, message) => {
    expect(call).toThrow(message);
  });
});

/** What came of a call: the place of a refusal, or the answer. */
type Came<Answer> = { readonly refused: string } | { readonly answer: Answer };
function came<Answer>(call: () => Answer): Came<Answer> {
  try {
    return { answer: call() };
  } catch (error) {
    if (!isInputError(error)) throw error;
    return { refused: error.path };
  }
}

describe("knowledge that was changed where it was stored", () => {
  const good = (timeS: number, temperatureC: number, more: object = {}): DevelopmentRun => ({
    timeS,
    temperatureC,
    outcome: { kind: "good" },
    ...more,
  });
  const runs = [
    good(560, 20),
    good(700, 17),
    good(420, 23),
    good(760, 18, { dilution: "1+14" }),
    good(650, 20, { dilution: "1+12", usedCm2PerL: 500 }),
  ];
  const sound = JSON.parse(JSON.stringify(learn(startKnowledge(known), runs))) as LearnedKnowledge;
  const today = { temperatureC: 16, dilution: "1+14" };
  const stranger = learn(startKnowledge(known), [good(300, 20)]);
  const joint = sound.joint;
  const { temperature, ...withoutTemperature } = sound;

  it.each<readonly [string, unknown, RegExp]>([
    [
      "its correlations are gone",
      edited(
        sound,
        "/joint/correlation",
        joint.correlation.map((row, i) => row.map((_, j) => Number(i === j))),
      ),
      /joint/,
    ],
    [
      "its correlations have the other sign",
      edited(
        sound,
        "/joint/correlation",
        joint.correlation.map((row, i) => row.map((one, j) => (i === j ? 1 : -one))),
      ),
      /joint/,
    ],
    ["its base time is halved", edited(sound, "/baseline/timeS", sound.baseline.timeS / 2), /baseline/],
    [
      "the spread of its base time is a tenth",
      edited(sound, "/baseline/logSd", sound.baseline.logSd! / 10),
      /baseline/,
    ],
    [
      "the time before the runs is halved",
      edited(sound, "/prior/baseline/timeS", 270),
      /prior|baseline|parameters/,
    ],
    ["the spread of its law is a tenth", edited(sound, "/temperature/sdKJPerMol", 0.5), /temperature/],
    ["its law is another", edited(sound, "/temperature/activationEnergyKJPerMol", 20), /temperature/],
    ["a number of the fit is another", edited(sound, "/parameters/0/value", -0.5), /parameters/],
    ["the spread of a number is a tenth", edited(sound, "/parameters/0/sd", 0.001), /parameters/],
    ["it is of a newer version", { ...sound, schema: 2 }, /schema/],
    ["its version is text", { ...sound, schema: "1" }, /schema/],
    [
      "a run of somebody else is among its own",
      { ...sound, runs: [...sound.runs, ...stranger.runs] },
      /runs|parameters|baseline/,
    ],
    ["a run is missing", { ...sound, runs: sound.runs.slice(1) }, /runs|parameters|baseline/],
    ["a law is misspelt", { ...withoutTemperature, temprature: temperature }, /temprature/],
    ["an outcome is misspelt", edited(sound, "/runs/0/outcome/kind", "god"), /runs\/0/],
    [
      "a field of a run is misspelt",
      edited(sound, "/runs/0", { ...sound.runs[0], dillution: "1+9" }),
      /runs\/0/,
    ],
  ])("%s: predict refuses it, or says so, by its place", (_, changed, place) => {
    const asked = came(() => predict(changed as LearnedKnowledge, today));
    if ("refused" in asked) expect(asked.refused).toMatch(place);
    else expect(asked.answer.cautions.map(({ path }) => path ?? "").join(" ")).toMatch(place);
    const check = checkKnowledge(changed);
    const said = check.ok ? check.cautions : check.problems;
    expect(said.map(({ path }) => path ?? "").join(" ")).toMatch(place);
  });

  it("is worked out from its prior and runs, so that no stored figure makes a time shorter or surer", () => {
    const right = predict(sound, today);
    for (const [path, value] of [
      ["/baseline/timeS", sound.baseline.timeS / 2],
      ["/baseline/logSd", 0.001],
      ["/temperature/sdKJPerMol", 0.01],
      ["/parameters/0/sd", 1e-6],
    ] as const) {
      const { timeS, lowS, highS } = predict(edited(sound, path, value), today);
      expect([timeS, lowS, highS]).toEqual([right.timeS, right.lowS, right.highS]);
    }
  });
});

describe("a ledger, a log or a plan that was changed where it was stored", () => {
  const ledger = { volumeMl: 1000, mixedAtH: 0, processed: [{ atH: 1, areaCm2: 516 }] };
  const pathsOf = (check: {
    readonly ok: boolean;
    readonly cautions?: readonly { readonly path?: string | undefined }[];
    readonly problems?: readonly { readonly path?: string | undefined }[];
  }): string =>
    [...(check.cautions ?? []), ...(check.problems ?? [])].map(({ path }) => path ?? "").join(" ");
  it.each<readonly [string, unknown, RegExp]>([
    ["an area is negative", edited(ledger, "/processed/0/areaCm2", -516), /processed\/0\/areaCm2/],
    ["an hour lies before the mixing", edited(ledger, "/processed/0/atH", -1), /processed\/0\/atH/],
    ["a volume is text", { ...ledger, volumeMl: "1000" }, /volumeMl/],
    [
      "the films are misspelt",
      { volumeMl: 1000, mixedAtH: 0, procesed: ledger.processed },
      /procesed|processed/,
    ],
    ["a film's area is misspelt", { ...ledger, processed: [{ atH: 1, areaCm: 516 }] }, /processed\/0/],
    [
      "an entry has another field",
      { ...ledger, processed: [{ atH: 1, areaCm2: 516, films: 2 }] },
      /processed\/0\/films/,
    ],
    ["a list is a number", { ...ledger, toppedUp: 5 }, /toppedUp/],
  ])("a ledger: %s", (_, changed, place) => {
    expect(pathsOf(checkLedger(changed))).toMatch(place);
  });

  it.each<readonly [string, readonly unknown[], RegExp]>([
    [
      "a reading in °F",
      [
        { timeS: 0, temperatureC: 20 },
        { timeS: 60, temperatureC: 68 },
      ],
      /\/1\/temperatureC/,
    ],
    [
      "a reading that is missing",
      [
        { timeS: 0, temperatureC: 20 },
        { timeS: 60, temperatureC: null },
      ],
      /\/1\/temperatureC/,
    ],
    [
      "readings out of order",
      [
        { timeS: 60, temperatureC: 20 },
        { timeS: 0, temperatureC: 20 },
      ],
      /\/1\/timeS/,
    ],
    [
      "a jump",
      [
        { timeS: 0, temperatureC: 20 },
        { timeS: 10, temperatureC: 30 },
        { timeS: 20, temperatureC: 20 },
      ],
      /\/1/,
    ],
    [
      "a time before the pour-in",
      [
        { timeS: -60, temperatureC: 20 },
        { timeS: 0, temperatureC: 20 },
      ],
      /\/0\/timeS/,
    ],
    [
      "a temperature that is misspelt",
      [
        { timeS: 0, temperature: 20 },
        { timeS: 60, temperatureC: 20 },
      ],
      /\/0/,
    ],
  ])("a log: %s", (_, changed, place) => {
    expect(pathsOf(checkLog(changed as never) as never)).toMatch(place);
  });

  it.each<readonly [string, string, unknown, RegExp]>([
    ["a step that ends before it begins", "/steps/0/endS", -5, /plan\/steps\/0/],
    ["a step that takes no number", "/steps/0/durationS", "8:30", /plan\/steps\/0\/durationS/],
    ["a development that ends early", "/steps/0/endS", 100, /plan\/steps\/0\/endS/],
    ["wrong steps", "/steps", 5, /plan\/steps/],
  ])("a plan: %s", (_, path, value, place) => {
    const changed = edited(plan, path, value);
    const told = [() => planAt(changed, 10), () => describePlan(changed)].map((call) => came<unknown>(call));
    expect(told.map((one) => ("refused" in one ? one.refused : "")).join(" ")).toMatch(place);
  });
});
