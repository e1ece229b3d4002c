/*
 * What runs have in common is off alike in all of them: a session, a factor of appearance, the growth of contrast.
 * However many runs there are, they tell no more than that leaves. Invented notebooks.
 */
import { describe, expect, it } from "vitest";
import {
  compensate,
  handbookAppearanceFactor,
  learn,
  nextTest,
  predict,
  startKnowledge,
  tidyRuns,
  type DevelopmentRun,
  type LearnedKnowledge,
} from "../../src/index.js";
import { caught } from "../helpers.js";

const start = startKnowledge({ timeS: 510, temperatureC: 20 });
const Z90 = 1.6448536269514722;
const spread = (of: LearnedKnowledge, conditions = {}): number => {
  const { lowS, highS } = predict(of, conditions);
  return Math.log(highS / lowS) / (2 * Z90);
};
const runs = (count: number, more: (i: number) => Partial<DevelopmentRun>): DevelopmentRun[] =>
  Array.from({ length: count }, (_, i) => ({
    id: `run ${i}`,
    timeS: 600,
    temperatureC: 20,
    outcome: { kind: "good", logSd: 0.08 },
    ...more(i),
  }));
const day = (i: number): string => `2024-05-${String(i + 1).padStart(2, "0")}`;

describe("runs that one eye judged", () => {
  const good = (count: number): LearnedKnowledge =>
    learn(
      start,
      runs(count, () => ({ outcome: { kind: "good" } })),
    );
  it("leave what the eye is off for good: 3 %", () => {
    expect(spread(good(80))).toBeGreaterThan(0.03);
    // 9 % is the window's own standard deviation, (ln 1.4)/√12, with the 7 % of each judgement.
    expect(spread(good(80))).toBeLessThan(Math.hypot(0.03, Math.log(1.4) / Math.sqrt(12 * 8)));
  });
  it("are off by as much again under other conditions", () => {
    const known = learn(start, [
      ...runs(8, () => ({ outcome: { kind: "good" } })),
      ...runs(8, (i) => ({
        id: `cold ${i}`,
        timeS: 900,
        temperatureC: 14,
        outcome: { kind: "steps", steps: -0.5 },
      })),
    ]);
    expect(known.parameters.map(({ parameter }) => parameter)).toContain("eye");
    const [warm, cold] = [spread(known), spread(known, { temperatureC: 14 })];
    expect(warm).toBeGreaterThan(0.03);
    expect(cold).toBeGreaterThan(0.03);
  });
  it("of a value with its own spread are not the eye's", () => {
    const names = learn(
      start,
      runs(3, () => ({})),
    ).parameters.map(({ parameter }) => parameter);
    expect(names).not.toContain("eye");
  });
});

describe("runs of one day", () => {
  it("leave what their session is off: 4 %", () => {
    const oneDay = learn(
      start,
      runs(12, () => ({ date: day(0) })),
    );
    expect(spread(oneDay)).toBeGreaterThan(0.04);
    // The session and the mean of twelve, which agree better than their noise.
    expect(spread(oneDay)).toBeLessThan(Math.hypot(0.04, 0.08 / Math.sqrt(12)));
  });

  it("count for more on several days, as different as those are", () => {
    const three = learn(
      start,
      runs(12, (i) => ({ date: day(i % 3) })),
    );
    const one = learn(
      start,
      runs(12, () => ({ date: day(0) })),
    );
    expect(spread(three)).toBeLessThan(spread(one));
  });

  it("still tell one temperature from another within the session", () => {
    const between = (dated: boolean): number => {
      const at = runs(12, (i) => ({
        temperatureC: i % 2 === 0 ? 20 : 14,
        timeS: i % 2 === 0 ? 510 : 900,
        ...(dated && { date: day(0) }),
      }));
      return learn(start, at).parameters.find(({ parameter }) => parameter === "temperature")!.sd;
    };
    expect(between(true)).toBeCloseTo(between(false), 0);
  });

  it("beyond the newest 24 sessions count as what one run would", () => {
    const many = Array.from({ length: 30 }, (_, session) =>
      runs(2, (i) => ({
        id: `${session} ${i}`,
        date: new Date(Date.UTC(2024, 0, 1 + session)).toISOString().slice(0, 10),
      })),
    ).flat();
    const known = learn(start, many);
    expect(known.parameters.filter(({ cause }) => cause === "session")).toHaveLength(24);
    expect(predict(known, {}).timeS).toBeCloseTo(600, -1);
    // Of an old session's equal runs the mean tells what one run without noise of its own would.
    const old = (count: number, logSd: number): readonly DevelopmentRun[] =>
      runs(count, (i) => ({
        id: `old ${i}`,
        timeS: 700,
        date: "2020-01-01",
        outcome: { kind: "judged", timeRatio: 1, logSd },
      }));
    const exactly = startKnowledge({ timeS: 510, temperatureC: 20 }, { noise: "stated" });
    const with2 = learn(exactly, [...many, ...old(2, 0.06)]);
    const with1 = learn(exactly, [...many, ...old(1, 0.06 / Math.SQRT2)]);
    expect(with2.baseline.timeS).toBeCloseTo(with1.baseline.timeS, 6);
    expect(spread(with2)).toBeCloseTo(spread(with1), 9);
  });
});

describe("corrections named as numbers", () => {
  it("leave what one eye is off: 3 %", () => {
    const many = runs(60, () => ({ outcome: { kind: "judged", timeRatio: 1.1 } }));
    expect(spread(learn(start, many))).toBeGreaterThan(0.03);
    const stated = runs(60, () => ({ outcome: { kind: "judged", timeRatio: 1.1, logSd: 0.1 } }));
    expect(spread(learn(start, stated))).toBeLessThan(0.02);
  });
});

describe("runs judged by appearance", () => {
  const seen = (factor: number): DevelopmentRun["outcome"] => ({
    kind: "appearance",
    appearanceS: 600 / factor,
    factor,
  });

  it("leave what their factor is off: 15 %", () => {
    const twenty = learn(
      start,
      runs(20, () => ({ outcome: seen(12) })),
    );
    expect(spread(twenty)).toBeGreaterThan(0.11);
    const known = twenty.parameters.find(({ parameter }) => parameter === "appearance factor")!;
    expect(known).toMatchObject({ cause: "outcome", runs: 20 });
  });

  it("leave more to the runs that were judged otherwise", () => {
    const mixed = [
      ...runs(20, (i) => ({ id: `seen ${i}`, outcome: seen(12) })),
      ...runs(3, (i) => ({ id: `good ${i}`, timeS: 510 })),
    ];
    const { timeS } = predict(learn(start, mixed), {});
    expect(Math.abs(Math.log(timeS / 510))).toBeLessThan(Math.abs(Math.log(timeS / 600)));
  });

  it("take a stated spread for the whole: of a brew's factor it is wide", () => {
    const { factor, logSd } = handbookAppearanceFactor("brew");
    const wide = runs(20, () => ({ outcome: { kind: "appearance", appearanceS: 60, factor, logSd } }));
    expect(spread(learn(start, wide))).toBeGreaterThan(0.15);
  });

  it("have one number for all factors, whatever the order of the runs", () => {
    const both = runs(4, (i) => ({ outcome: seen(i % 2 === 0 ? 12 : 10) }));
    const names = learn(start, both).parameters.flatMap(({ cause, parameter }) =>
      cause === "outcome" ? parameter : [],
    );
    expect(names).toEqual(["appearance factor"]);
    expect(learn(start, [...both].reverse())).toEqual(learn(start, both));
  });
});

describe("runs judged by their gradient", () => {
  const growth = { gammaInfinity: 0.75, ratePerS: 0.004, appearanceS: 20 };
  const baseline = { timeS: 422.4, temperatureC: 20, gamma: 0.7 };
  const measured = runs(6, () => ({
    timeS: 422.4,
    outcome: { kind: "gamma", gamma: 0.6, wanted: 0.7, sd: 0.02 },
  }));

  it("go by the law of growth that is known, as compensate does", () => {
    const asked = compensate({ ...baseline, gamma: 0.6 }, { gamma: 0.7 }, { growth });
    const known = learn(startKnowledge(baseline, { laws: { growth } }), measured);
    expect(tidyRuns(known)[0]!.rightS).toBeCloseTo(asked.timeS, 6);
    // The law itself leaves a third, in all six alike: the known time still counts.
    const { timeS } = predict(known, {});
    expect(timeS).toBeGreaterThan(422.4);
    expect(timeS).toBeLessThan(asked.timeS);
    expect(spread(known)).toBeGreaterThan(0.1);
  });

  it("are set aside where the law never gets there", () => {
    const low = { ...growth, gammaInfinity: 0.65 };
    const known = learn(startKnowledge(baseline, { laws: { growth: low } }), measured);
    expect(known.setAside.map(({ reason }) => reason)).toEqual(measured.map(() => "past-growth"));
    expect(tidyRuns(known)[0]).toMatchObject({ reason: "past-growth", rightS: null });
  });
  it("are known by the slope of the law: ever less toward its limit", () => {
    // d ln(time)/dγ by differences of the published form, γ∞(1 − e^(−k(t − t0))).
    const timeOf = (gamma: number): number =>
      growth.appearanceS - Math.log(1 - gamma / growth.gammaInfinity) / growth.ratePerS;
    const exact = { gammaInfinity: 0, ratePerS: 0, appearanceS: 0 };
    for (const share of [0.5, 0.8, 0.95]) {
      const gamma = share * growth.gammaInfinity;
      const outcome = { kind: "gamma", gamma, wanted: gamma, sd: 0.01 } as const;
      const laws = { growth: { ...growth, sd: exact } };
      const known = learn(startKnowledge(baseline, { laws }), [{ ...measured[0]!, outcome }]);
      const [row] = tidyRuns(known);
      const slope = Math.log(timeOf(gamma + 1e-5) / timeOf(gamma - 1e-5)) / 2e-5;
      expect(row!.logSd! / (0.01 * slope)).toBeCloseTo(1, 6);
    }
  });
  /** What is left of the base time, 0 ± 0.2 before: its correction c is (1 + share·growth)·shift, growth 0 ± 1. */
  const leftOf = (timesTime: number, c: number, alike: number, own: number): number => {
    const grown = c / Math.log(timesTime);
    return 1 / Math.hypot(grown / Math.hypot(alike / grown, own), 1 / 0.2);
  };
  it("share of a stated spread what they share of their own", () => {
    const gamma = { kind: "gamma", gamma: 0.5, wanted: 0.6, logSd: 0.05 } as const;
    const known = learn(
      startKnowledge(baseline, { noise: "stated" }),
      runs(30, () => ({ outcome: gamma })),
    );
    // Of 0.05/0.6/0.7 and 0.3 of ln(0.6/0.5)/0.7, the second part is alike in all runs.
    const c = Math.log(1.2) / 0.7;
    const [own, alike] = [0.05 / 0.6 / 0.7, 0.3 * c];
    const share = 0.05 / Math.hypot(own, alike);
    const left = leftOf(predict(known, {}).timeS / 600, c, share * alike, (share * own) / Math.sqrt(30));
    expect(spread(known)).toBeCloseTo(left, 3);
  });
  it.each([
    ["gradients", (measured: number) => ({ kind: "gamma", gamma: measured, wanted: 0.6 }) as const],
    ["densities", (measured: number) => ({ kind: "density", density: 2 * measured, wanted: 1.2 }) as const],
  ])("%s of one development draw nearer to its right time, the more they are", (_, outcome) => {
    // Invented: five readings about 0.5, which at an exponent of 0.7 want 510 s × (0.6/0.5)^(1/0.7) = 662 s.
    const read = [0.5, 0.54, 0.46, 0.52, 0.48];
    const times = [5, 10, 20, 40].map((count) => {
      const many = runs(count, (i) => ({ id: `run ${i}`, timeS: 510, outcome: outcome(read[i % 5]!) }));
      return predict(learn(start, many), {});
    });
    for (const [i, { timeS, lowS, highS }] of times.entries()) {
      expect(lowS).toBeLessThan(662);
      expect(highS).toBeGreaterThan(662);
      if (i > 0) expect(timeS).toBeGreaterThan(times[i - 1]!.timeS);
    }
    // 0.3 of the correction is alike in all: 5 % are left, however many they are.
    expect(Math.log(times[3]!.highS / times[3]!.lowS) / 2 / 1.645).toBeGreaterThan(0.04);
  });
  it("leave what is alike in all", () => {
    const many = runs(40, (i) => ({ ...measured[0], id: `run ${i}` }));
    // 0.3 of the correction, ln(0.7/0.6)/0.7, is alike in all forty.
    const c = Math.log(0.7 / 0.6) / 0.7;
    const known = learn(startKnowledge(baseline), many);
    expect(spread(known)).toBeGreaterThan(leftOf(predict(known, {}).timeS / 422.4, c, 0.3 * c, 0));
  });
});

describe("runs in baths older than their law covers", () => {
  it("are set aside, and leave the fresh bath alone", () => {
    const fresh = runs(3, (i) => ({ id: `fresh ${i}`, timeS: 510 }));
    const old = runs(3, (i) => ({ id: `old ${i}`, timeS: 765, ageH: 240 }));
    const known = learn(start, [...fresh, ...old]);
    expect(known.setAside.map(({ run, reason }) => [known.runs[run]!.ageH, reason])).toEqual(
      [240, 240, 240].map((ageH) => [ageH, "past-covered"]),
    );
    expect(predict(known, {}).timeS).toBeCloseTo(predict(learn(start, fresh), {}).timeS, 9);
  });

  it("of one age with the known time teach it all the same", () => {
    const aged = startKnowledge({ timeS: 510, temperatureC: 20, ageH: 48 });
    expect(
      learn(
        aged,
        runs(3, () => ({})),
      ).setAside,
    ).toEqual([]);
  });
});

describe("a test for more contrast", () => {
  it("is refused at its field, since no run teaches it", () => {
    const known = startKnowledge({ timeS: 510, temperatureC: 20, gamma: 0.6 });
    expect(caught(() => nextTest(known, [{}], { gamma: 0.9 }))).toMatchObject({
      code: "not-one-of",
      path: "/question/gamma",
    });
    expect(caught(() => nextTest(known, [{ gamma: 0.9 }], {}))).toMatchObject({
      path: "/candidates/0/gamma",
    });
    expect(nextTest(known, [{}], { gamma: 0.6 })).toHaveLength(1);
  });
});
