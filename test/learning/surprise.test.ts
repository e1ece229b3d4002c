/* Runs that contradict what was known, or each other. All runs are invented. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  learn,
  predict,
  startKnowledge,
  type DevelopmentRun,
  type LearnedKnowledge,
} from "../../src/index.js";

const start = startKnowledge({ timeS: 1000, temperatureC: 14, dilution: "1+9" });
const run = (timeS: number, more: Partial<DevelopmentRun> = {}): DevelopmentRun => ({
  timeS,
  temperatureC: 14,
  outcome: { kind: "good" },
  ...more,
});
const codes = (known: LearnedKnowledge, conditions: object): readonly string[] =>
  predict(known, conditions).cautions.map(({ code }) => code);

describe("a first run that contradicts the known time", () => {
  it("moves the time the further, the further off it is, to four steps", () => {
    const times = [-0.5, -1, -1.5, -2, -2.5, -3, -3.5, -4].map((steps) => {
      const known = learn(start, [run(1000, { outcome: { kind: "steps", steps } })]);
      return predict(known, {}).timeS;
    });
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });
  it("of two steps leaves what it asks for inside the interval, and so does one good at twice the time", () => {
    const thin = predict(learn(start, [run(1000, { outcome: { kind: "steps", steps: -2 } })]), {});
    expect(thin.highS).toBeGreaterThan(1000 * 1.4 ** 2);
    expect(thin.lowS).toBeLessThan(1200);
    const long = predict(learn(start, [run(2000)]), {});
    expect(long.highS).toBeGreaterThan(2000);
    expect(long.lowS).toBeLessThan(2000);
  });
  it("leads to a right time of twice the known one within three runs", () => {
    let known = start;
    for (let i = 0; i < 3; i += 1) {
      const { timeS } = predict(known, {});
      const halves = Math.round((2 * Math.log(2000 / timeS)) / Math.log(1.4));
      known = learn(known, [run(timeS, { id: `run ${i}`, outcome: { kind: "steps", steps: -halves / 2 } })]);
    }
    expect(Math.abs(predict(known, {}).timeS / 2000 - 1)).toBeLessThan(0.1);
  });
});

describe("one good run among many that lies far off", () => {
  const good = Array.from({ length: 29 }, (_, i) => run(950 + 3.5 * ((i * 7) % 29), { id: `good ${i}` }));
  const without = learn(start, good);
  it.each([16, 100_000])("at %d s is named, and moves the time by less than 3 %%", (timeS) => {
    const known = learn(start, [...good, run(timeS, { id: "odd" })]);
    expect(Math.abs(known.baseline.timeS / without.baseline.timeS - 1)).toBeLessThan(0.03);
    expect(known.advice.find(({ code }) => code === "doubted-run")).toMatchObject({ data: { run: "odd" } });
    expect(known.setAside).toHaveLength(1);
  });
});

describe("a second run of the same day", () => {
  it.each([0.01, 0.05])("that agrees makes no time less sure, with noise stated as %d", (logSd) => {
    const stated = startKnowledge({ timeS: 1000, temperatureC: 14 }, { noise: "stated" });
    const runs = [1, 2, 3].map((i) =>
      run(1000, { id: `run ${i}`, date: "2024-05-01", outcome: { kind: "judged", timeRatio: 1, logSd } }),
    );
    const spreads = runs.map((_, i) => learn(stated, runs.slice(0, i + 1)).baseline.logSd!);
    expect(spreads).toEqual([...spreads].sort((a, b) => b - a));
    expect(spreads[0]!).toBeGreaterThan(0.04 * 0.9);
  });
});

describe("a bath that comes out faster though it is colder, weaker, less agitated or older", () => {
  it("is told where thin and dense were mixed up", () => {
    const twoBaths = (dilution: string, steps: number): readonly DevelopmentRun[] =>
      [1, 2, 3].map((i) =>
        run(1000, { id: `${dilution} ${i}`, dilution, outcome: { kind: "steps", steps } }),
      );
    const mixedUp = learn(start, [...twoBaths("1+9", 0), ...twoBaths("1+19", 1)]);
    expect(predict(mixedUp, { dilution: "1+19" }).timeS).toBeLessThan(predict(mixedUp, {}).timeS);
    expect(codes(mixedUp, { dilution: "1+19" })).toContain("wrong-way");
    expect(codes(mixedUp, {})).not.toContain("wrong-way");
    const right = learn(start, [...twoBaths("1+9", 0), ...twoBaths("1+19", -1)]);
    expect(codes(right, { dilution: "1+19" })).not.toContain("wrong-way");
  });
  it("is told of less agitation and of age", () => {
    const good = (timeS: number, more: Partial<DevelopmentRun>, id: number): DevelopmentRun =>
      run(timeS, { id: `run ${id}`, outcome: { kind: "good" }, ...more });
    const known = startKnowledge({ timeS: 540, temperatureC: 14, agitation: { everyS: 60 }, logSd: 0.07 });
    const taught = (more: Partial<DevelopmentRun>, timesS: readonly number[]) =>
      learn(
        known,
        [540, 540, ...timesS].map((timeS, i) => good(timeS, i < 2 ? {} : more, i)),
      );
    const calmer = { agitation: { everyS: 180 } };
    for (const more of [{ ageH: 22 }, calmer]) {
      expect(codes(taught(more, [420, 400, 390, 380, 370, 360, 380, 350]), more)).toContain("wrong-way");
      // Within its own spread it is chance.
      const level = taught(more, [520, 530, 520]);
      expect(codes(level, more)).not.toContain("wrong-way");
      expect(codes(taught(more, [700, 720, 730]), more)).not.toContain("wrong-way");
    }
  });
  it("is told of temperatures alike", () => {
    // As departures that were learned may have it.
    const told = (log: number, from: number, to: number): boolean => {
      const departures = [
        { at: 14, log: 0, sd: 0 },
        { at: 20, log, sd: 0.05 },
      ];
      const temperature = { kind: "arrhenius", activationEnergyKJPerMol: 30, departures } as const;
      const { cautions } = compensate(
        { timeS: 540, temperatureC: from },
        { temperatureC: to },
        { temperature },
      );
      return cautions.some(({ code }) => code === "wrong-way");
    };
    expect([told(0.5, 20, 14), told(0.5, 14, 20)]).toEqual([true, true]);
    expect([told(-0.5, 20, 14), told(0, 20, 14), told(0.5, 20, 20)]).toEqual([false, false, false]);
  });
});
