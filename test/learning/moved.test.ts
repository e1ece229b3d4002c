/* What rests on own runs: a law whose number they have moved, and none that they have only touched. */
import { describe, expect, it } from "vitest";
import {
  checkKnowledge,
  compensate,
  describeFactor,
  handbookTemperatureLaw,
  learn,
  predict,
  startKnowledge,
  type DevelopmentRun,
  type LearnedKnowledge,
} from "../../src/index.js";

// Invented: the evening in the hut.
const baseline = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 }, logSd: 0.058 };
const laws = { temperature: handbookTemperatureLaw("metol-hydroquinone") };
const today = { temperatureC: 14, dilution: "1+14", usedCm2PerL: 648, ageH: 3 };
const start = startKnowledge(baseline, { laws });
const good = (more: Partial<DevelopmentRun>): DevelopmentRun => ({
  timeS: 510,
  temperatureC: 20,
  outcome: { kind: "good" },
  ...more,
});
const bases = (known: LearnedKnowledge): Readonly<Record<string, unknown>> =>
  Object.fromEntries(predict(known, today).factors.map(({ cause, basis }) => [cause, basis]));

describe("after one run at today's bath", () => {
  const known = learn(start, [good({ ...today, timeS: 1470, outcome: { kind: "good", logSd: 0.07 } })]);
  it("says own runs of the laws that it moved, and of no other that it bears on", () => {
    expect(bases(known)).toEqual({
      baseline: "given",
      temperature: "own-runs",
      dilution: "own-runs",
      use: "default",
      age: "default",
      interaction: "own-runs",
    });
  });
  it("keeps how many runs bear on a law that they hardly moved, and calls it no law without data", () => {
    const { factors, cautions } = predict(known, today);
    const use = factors.find(({ cause }) => cause === "use");
    expect(use).toMatchObject({ basis: "default", runs: 1 });
    expect(use).not.toHaveProperty("before");
    expect(describeFactor(use!)).toMatch(/\(general rule\)$/);
    expect(cautions.map(({ code }) => code)).not.toContain("default-law");
  });
  it("changes no number of the answer: what was learned together counts together", () => {
    const { lowS, timeS, highS } = predict(known, today);
    const moved = <Law extends object>(law: Law | undefined): Law => {
      const { moved: _, ...rest } = law as Law & { readonly moved?: boolean };
      return rest as unknown as Law;
    };
    const asIfMoved = { ...known, use: moved(known.use), age: moved(known.age) };
    const answer = compensate(moved(known.baseline), today, asIfMoved);
    expect([answer.lowS, answer.timeS, answer.highS]).toEqual([lowS, timeS, highS]);
    expect(answer.factors.find(({ cause }) => cause === "use")).toMatchObject({ basis: "own-runs" });
  });
  it("survives storage, and is stored as it was worked out", () => {
    const check = checkKnowledge(JSON.parse(JSON.stringify(known)));
    expect(check.ok && check.cautions).toEqual([]);
    expect(check.ok && bases(check.knowledge)).toEqual(bases(known));
  });
});

describe("own runs move a law", () => {
  const useOf = (runs: readonly DevelopmentRun[]) => learn(start, runs);
  const used = (i: number, timeS: number): DevelopmentRun =>
    good({ id: String(i), usedCm2PerL: 2000, timeS, outcome: { kind: "good", logSd: 0.05 } });
  const spreads = (known: LearnedKnowledge) => {
    const { sd, priorSd, value } = known.parameters.find(({ cause }) => cause === "use")!;
    return {
      share: sd / priorSd,
      shift: (value - start.parameters.find(({ cause }) => cause === "use")!.value) / priorSd,
    };
  };
  it("by making its number known better by more than a twentieth", () => {
    const known = useOf(Array.from({ length: 6 }, (_, i) => used(i, 640)));
    expect(spreads(known).share).toBeLessThan(0.95);
    expect(known.use?.moved).toBeUndefined();
    expect(bases(known)["use"]).toBe("own-runs");
  });
  it("or by shifting it by more than a quarter of its first spread", () => {
    const known = learn(startKnowledge({ ...baseline, logSd: 0.3 }, { laws, noise: "stated" }), [
      good({ timeS: 1100, usedCm2PerL: 1400, outcome: { kind: "good", logSd: 0.1 } }),
    ]);
    const { share, shift } = spreads(known);
    expect(share).toBeGreaterThan(0.95);
    expect(shift).toBeGreaterThan(0.25);
    expect(known.use?.moved).toBeUndefined();
  });
  it("and a moved law is no longer called unmoved, whatever the law that was there before said", () => {
    const once = learn(start, [good({ usedCm2PerL: 648 })]);
    expect(once.use?.moved).toBe(false);
    const again = startKnowledge(once.baseline, { laws: once });
    expect(again.use).toEqual(once.use);
    const known = learn(
      again,
      Array.from({ length: 6 }, (_, i) => used(i, 640)),
    );
    expect(known.use).not.toHaveProperty("moved");
    // The law that was handed in rested on the general rule: its one run had not moved it.
    expect(known.use?.before).toBe("default");
  });
});
