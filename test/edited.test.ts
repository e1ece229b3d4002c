/* Data that came back from storage edited, and catalogues that lack a field: each is refused by its place. */
import { describe, expect, it } from "vitest";
import {
  bathCapacity,
  chartCsv,
  checkKnowledge,
  compensate,
  compensateRecipe,
  describeCautions,
  describeChart,
  describeCompensation,
  describeFactor,
  describePlan,
  learn,
  planProcess,
  startKnowledge,
  steer,
  stockCautions,
  timeChart,
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
  it.each<[string, object, string]>([
    ["no words", {}, "texts.severities must be an object"],
    ["a sentence in place of a function", { change: "more" }, "texts.change must be a function"],
  ])("a catalogue with %s", (name, more, message) => {
    const call = (): unknown =>
      describeCompensation(answer, (name === "no words" ? {} : { ...texts, ...more }) as never);
    expect(call).toThrow(`describeCompensation: ${message}`);
  });
  it("a catalogue whose text is none", () => {
    expect(() => describeCompensation(answer, { ...texts, months: 3 } as never)).toThrow(
      "describeCompensation: texts.months must be text, got 3",
    );
  });
});

const words = { severities: { note: "Note", warn: "Care", stop: "Stop" }, causes: {}, bases: {} };
const texts = {
  ...words,
  side: () => undefined,
  sides: () => "",
  change: () => "changed",
  giveOrTake: () => "about",
  before: () => "",
  time: () => "Develop.",
  refusedTime: () => "",
  refused: "No time:",
  months: "months",
};

describe("what the editor may do", () => {
  it("a movement that no plan has is said in plain words", () => {
    const turned = edited(plan, "/steps/0/cues/1/movement", "twirl");
    expect(describePlan(turned).join("\n")).toContain("Move it for 30 s.");
  });
  it("a catalogue of one's own is used, and a cause it does not know keeps its name", () => {
    expect(describeCompensation(answer, texts as never)).toContain("temperature: changed, about (default)");
  });
  it("an array of holes is refused at once", () => {
    const learned = learn(startKnowledge(known), [
      { timeS: 540, temperatureC: 20, outcome: { kind: "good" } },
    ]);
    const holes: unknown[] = [];
    holes.length = 4_294_967_295;
    const check = checkKnowledge(edited(learned, "/baseline/timeS", holes));
    expect(check.ok).toBe(false);
  });
  it("departures that do not rise are refused, and those that do are read again", () => {
    const dilution = { kind: "power", exponent: 0.8, runs: 4 } as const;
    const at = (departures: readonly object[]) =>
      compensate(known, { dilution: "1+14" }, { dilution: { ...dilution, departures } as never });
    const start = { at: -3, log: 0, sd: 0 };
    expect(() => at([start, start])).toThrow(
      "compensate: knowledge.dilution.departures[1].at must be above the one before, got -3",
    );
    const row = at([start, { at: -2, log: 0.1, sd: 0.05 }]).factors;
    expect(row[2]!.cause).toBe("dilution");
    expect(row[2]!.value).not.toBeCloseTo(at([]).factors[2]!.value, 6);
  });
});
