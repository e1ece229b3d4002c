/*
 * A cause that the package does not have, made up here: the hardness of the water, in degrees. It goes through every
 * loop by a longer list and nothing else. All figures are invented.
 */
import { describe, expect, it } from "vitest";
import { causes } from "../../src/causes.js";
import { prepared } from "../../src/compensate/loop.js";
import type { Baseline, CautionCode, Conditions, Knowledge, TestCandidate } from "../../src/index.js";
import type { Cause, Learnable } from "../../src/core/cause.js";
import { inRange } from "../../src/core/guards.js";
import { rowOf } from "../../src/core/row.js";
import type { LawOrigin } from "../../src/core/term.js";
import { fitKnowledge } from "../../src/learning/fit.js";
import { everything, type Learning } from "../../src/learning/learning.js";
import { rankedTests } from "../../src/learning/nextTest.js";
import { entriesOf, runFields } from "../../src/learning/notebook.js";
import type { LearnedKnowledge } from "../../src/learning/types.js";
import { anyOf } from "../helpers.js";
import type { Caution } from "../../src/core/caution.js";

// The codes of the package do not have it, as they do not have the cause.
const MADE_UP: string = "hard-water";
const HARD_WATER = MADE_UP as CautionCode;

interface HardnessLaw extends LawOrigin {
  /** what a degree adds to ln(time) */
  readonly perDegree: number;
  readonly sd?: number;
}

const hardness: Cause<HardnessLaw, number, "hardness"> = {
  name: "hardness",
  field: "hardnessDegrees",
  law: "hardness",
  lawFields: ["perDegree", "sd"],
  generic: { perDegree: 0.01, sd: 0.02, sources: ["invented"], runs: 0 },
  start: 0,
  read: (at, given) => inRange(at, given, 0, 50),
  check: (at, given) => {
    inRange(at, (given as HardnessLaw).perDegree, 0, 1, undefined, "/perDegree");
    return given as HardnessLaw;
  },
  effect: ({ perDegree, sd = 0.01 }, from, to) => ({
    log: perDegree * (to - from),
    slope: to - from,
    sd,
    beside: 0,
  }),
  cautions: (_law, _from, to) =>
    to > 25 ? [{ code: HARD_WATER, severity: "warn", message: "Hard water leaves scum." } as Caution] : [],
};
const learnable: Learnable<HardnessLaw, number> = {
  place: ({ perDegree: value, sd = 0.01 }) => ({
    parameters: [{ parameter: "hardness", value, sd, range: [0, 1] }],
    row: (from, to) => rowOf("hardness", to - from),
  }),
  law: (law, learned) => {
    const found = learned.get("hardness");
    return found === undefined ? law : { ...law, perDegree: found.value, sd: found.sd };
  },
};
const longer = [...causes, hardness];
const learning: Learning = { ...everything, causes: [...everything.causes, { cause: hardness, learnable }] };
const baseline: Baseline = { timeS: 510, temperatureC: 20 };
const soft: TestCandidate = {};
const hard: TestCandidate = anyOf({ hardnessDegrees: 30 });
const ask = (conditions: Conditions, from: Baseline = baseline, knowledge: Knowledge = {}) =>
  prepared("compensate", longer, from, knowledge).answer(conditions);
const known = (runs: readonly object[]): LearnedKnowledge =>
  fitKnowledge(
    "learn",
    { baseline, baseLogSd: 0.1, laws: {}, noise: "stated" },
    entriesOf("learn/runs", runs, runFields(learning)),
    {},
    learning,
  );
const runs = [0, 10, 20, 30].map((hardnessDegrees) => ({
  timeS: 510 * Math.exp(0.03 * hardnessDegrees),
  temperatureC: 20,
  hardnessDegrees,
  outcome: { kind: "good", logSd: 0.05 },
}));

describe("a cause that a test adds", () => {
  it("is in the answer, its interval, its basis and its cautions", () => {
    const answer = ask(hard);
    expect(answer.timeS).toBeCloseTo(510 * Math.exp(0.3), 9);
    expect(answer.factors.at(-1)).toMatchObject({
      cause: "hardness",
      basis: "default",
      sources: ["invented"],
    });
    const logSd = Math.log(answer.highS / answer.timeS) / 1.6448536269514722;
    expect(logSd).toBeCloseTo(Math.hypot(0.04, 30 * 0.02), 12);
    expect(answer.cautions.map(({ code }) => code)).toContain(HARD_WATER);
    expect(answer.cautions.map(({ code }) => code)).not.toContain("unknown-field");
    expect(answer.cautions.find(({ code }) => code === HARD_WATER)?.path).toBe("/conditions/hardnessDegrees");
  });
  it("without the longer list is a field that is not read", () => {
    const { cautions } = prepared("compensate", causes, baseline, {}).answer(hard);
    expect(cautions).toMatchObject([
      { code: "unknown-field", path: "/conditions/hardnessDegrees" },
      // The temperature is the baseline's, its spread the repeat's alone.
      ...cautions.slice(1),
    ]);
  });
  it("is learned, and serves the answer with its runs and its correlation", () => {
    const after = known(runs);
    expect(after.parameters.find(({ parameter }) => parameter === "hardness")).toMatchObject({ runs: 3 });
    expect(anyOf(after)).toMatchObject({ hardness: { perDegree: expect.closeTo(0.03, 2) } });
    expect(after.joint.parameters).toContain("hardness");
    const answer = ask(hard, after.baseline, after);
    expect(answer.factors.at(-1)).toMatchObject({ cause: "hardness", basis: "own-runs", runs: 3 });
    expect(answer.highS / answer.lowS).toBeLessThan(1.3);
    expect(Math.abs(Math.log(answer.timeS / (510 * Math.exp(0.9))))).toBeLessThan(0.05);
  });
  it("is refused where the list is the package's own", () => {
    expect(() => entriesOf("learn/runs", runs)).toThrow(
      expect.objectContaining({ code: "not-one-of", path: "/runs/0/hardnessDegrees" }),
    );
  });
  it("is what the next test is about", () => {
    const [best] = rankedTests("nextTest", learning, known([]), [soft, hard], hard);
    expect(best?.candidate).toBe(hard);
    expect(best!.expectedLogSd).toBeLessThan(0.3);
  });
});
