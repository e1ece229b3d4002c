/* Runs that no law can reach are set aside by name. All runs are invented. */
import { describe, expect, it } from "vitest";
import { learn, startKnowledge, tidyRuns, nextTest } from "../../src/index.js";
import { baseline, good } from "./start.js";

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
        `nextTest: candidates[0] must be comparable with the known time, but it has a bath that is older than its law goes`,
      ),
    );
  });
});
