/* Runs that no law can reach are set aside by name. All runs are invented. */
import { describe, expect, it } from "vitest";
import {
  describeCautions,
  learn,
  nextTest,
  predict,
  startKnowledge,
  tidyRuns,
  type DevelopmentRun,
} from "../../src/index.js";
import { de } from "../../src/texts/de.js";
import { baseline, good, start } from "./start.js";

describe("runs that the laws cannot reach", () => {
  const reason = "past-life";
  it.each([
    ["a bath of 200 half-lives", { kind: "half-life", halfLifeH: 1, sdLog: 0.1 } as const, 200],
    [
      "a bath of 50 half-lives known to a factor of e³",
      { kind: "half-life", halfLifeH: 1, sdLog: 3 } as const,
      50,
    ],
  ])("sets aside by name: %s", (_, age, ageH) => {
    const known = learn(startKnowledge(baseline, { laws: { age } }), [
      good(600, 20, { ageH }),
      good(520, 20),
    ]);
    expect(known.setAside).toEqual([
      { run: known.runs.findIndex((each) => each.ageH === ageH), reason, weight: 0 },
    ]);
    expect(known.parameters[0]!.runs).toBe(1);
  });
  it("fits a run at the border and says no time for one past it", () => {
    const from = startKnowledge(baseline, {
      laws: { age: { kind: "half-life", halfLifeH: 1, sdLog: 0 } },
    });
    // Ten half-lives: 2^10 times the time.
    const atBorder = learn(from, [good(1024 * 510, 20, { ageH: 10 })]);
    expect(atBorder).toMatchObject({ setAside: [], baseline: { runs: 1 } });
    const known = learn(from, [good(600, 20, { ageH: 10.1 })]);
    expect(known.setAside).toEqual([{ run: 0, reason, weight: 0 }]);
    expect(tidyRuns(known)[0]).toMatchObject({ fittedS: null, logResidual: null, reason, weight: 0 });
    expect(() => nextTest(from, [{ ageH: 10.1 }], {})).toThrow(
      new RangeError(
        `nextTest: candidates[0] must be comparable with the known time, but it has a bath that is past its life`,
      ),
    );
  });
});

describe("advice on runs that teach nothing", () => {
  /** Ten runs in baths of two to eleven weeks. */
  const weeks = Array.from({ length: 10 }, (_, i) => good(510, 20, { ageH: 168 * (i + 2) }));
  const failed: DevelopmentRun = { timeS: 510, temperatureC: 20, id: "f", outcome: { kind: "failed" } };
  it("counts them, with the reason of the most first, and asks for a half-life where no age is covered", () => {
    const known = learn(start, [failed, ...weeks, good(520)]);
    const first = known.setAside.find(({ reason }) => reason === "past-covered");
    expect(known.advice.filter(({ code }) => code === "not-fitted")).toEqual([
      {
        code: "not-fitted",
        severity: "warn",
        message:
          "11 of 12 runs teach nothing: bath older than its rule of age covers (10), failed (1). " +
          "Start with a half-life of the bath, as laws.age.",
        path: `/runs/${first!.run}`,
        quantity: "count",
        actual: 11,
        data: {
          runs: 12,
          reasons: [
            { reason: "past-covered", runs: 10 },
            { reason: "failed", runs: 1 },
          ],
        },
      },
    ]);
    expect(describeCautions(known.advice, de.cautions)).toContain(
      "Vorsicht: Aus 11 von 12 Entwicklungen ist nichts zu lernen: Bad älter, als seine Altersregel reicht (10), misslungen (1). " +
        "Mit einer Halbwertszeit des Bades beginnen, als laws.age. [/runs/1]",
    );
    const halving = startKnowledge(baseline, { laws: { age: { kind: "half-life", halfLifeH: 2000 } } });
    expect(learn(halving, weeks).setAside).toEqual([]);
  });
  it("is a note where they failed by the notebook's own word, and a warning for what only the laws say", () => {
    const severities = (runs: readonly DevelopmentRun[]): readonly string[] =>
      learn(start, runs).advice.flatMap(({ code, severity }) => (code === "not-fitted" ? [severity] : []));
    expect(severities([failed])).toEqual(["note"]);
    expect(severities([good(510, 20, { agitation: "stand" })])).toEqual(["warn"]);
    expect(severities([good(510, 68), failed])).toEqual(["warn"]);
    expect(severities([good(510)])).toEqual([]);
  });
  it("comes back with every answer, and with one of the same knowledge from storage; a note does not", () => {
    const known = learn(start, weeks);
    const said = predict(known, {}).cautions;
    expect(said).toContainEqual({ ...known.advice[0]!, path: "/knowledge/runs/0" });
    expect(predict(JSON.parse(JSON.stringify(known)), {}).cautions).toEqual(said);
    const codes = predict(learn(start, [failed]), {}).cautions.map(({ code }) => code);
    expect(codes).not.toContain("not-fitted");
  });
});

describe("runs that scatter", () => {
  it("warn of every answer, also out of storage", () => {
    // Two films in one notebook, 13:00 and 9:00, each right for its own.
    const two = Array.from({ length: 24 }, (_, i): DevelopmentRun => ({
      timeS: i % 2 === 0 ? 780 : 540,
      temperatureC: 20,
      id: String(i),
      outcome: { kind: "good" },
    }));
    const known = learn(startKnowledge({ timeS: 660, temperatureC: 20 }), two);
    const said = predict(known, {}).cautions;
    expect(said).toContainEqual(
      expect.objectContaining({ code: "scatter", path: "/knowledge", actual: known.scatter }),
    );
    expect(predict(JSON.parse(JSON.stringify(known)), {}).cautions).toEqual(said);
  });
});
