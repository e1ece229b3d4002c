/* What runs of pushed films teach: a maker's table as a notebook, and invented photographers. */
import { describe, expect, it } from "vitest";
import {
  learn,
  nextTest,
  predict,
  startKnowledge,
  type DevelopmentRun,
  type LearnedKnowledge,
} from "../../src/index.js";
import { seeded } from "../worlds/random.js";

/*
 * ILFORD, ILFOTEC DD-X 1+4 development times in minutes at 20 °C and at 24 °C, stop by stop (plain-text
 * transcription of the maker's table, 2022). All rows of that table with two pushed times or more.
 */
const rows: readonly (readonly [film: string, temperatureC: number, minutes: readonly number[]])[] = [
  ["HP5 PLUS", 20, [9, 10, 13, 20]],
  ["HP5 PLUS", 24, [7, 8, 10, 14.5]],
  ["DELTA 400", 20, [8, 10.5, 13.5, 18]],
  ["DELTA 400", 24, [5.5, 7.5, 9, 13]],
  ["DELTA 3200", 20, [7, 8, 9.5, 12.5, 17, 25]],
  ["DELTA 3200", 24, [5, 6, 7, 9, 12, 17]],
  ["T-MAX 400", 20, [8, 10, 13]],
  ["T-MAX 400", 24, [6, 8, 10]],
];

const good = { kind: "good", logSd: 0.05 } as const;
const notebook = (temperatureC: number, minutes: readonly number[], outcome = good): LearnedKnowledge =>
  learn(
    startKnowledge({ timeS: minutes[0]! * 60, temperatureC }),
    minutes.map((each, pushStops): DevelopmentRun => ({
      timeS: each * 60,
      temperatureC,
      pushStops,
      outcome,
    })),
  );

describe("a notebook of pushed films", () => {
  it("foretells a maker's next step from the steps before it", () => {
    const held = rows.flatMap(([film, temperatureC, minutes]) =>
      minutes.slice(2).map((each, i) => {
        const known = notebook(temperatureC, minutes.slice(0, i + 2));
        const { lowS, highS } = predict(known, { pushStops: i + 2 });
        return { film, temperatureC, stops: i + 2, held: lowS <= each * 60 && each * 60 <= highS };
      }),
    );
    expect(held).toHaveLength(18);
    expect(held.filter((one) => !one.held)).toEqual([]);
  });
  it("knows a pushed time better than the law does, and what it did not teach no better", () => {
    const width = (known: LearnedKnowledge, pushStops: number): number => {
      const { lowS, highS } = predict(known, { pushStops });
      return Math.log(highS / lowS);
    };
    const fresh = startKnowledge({ timeS: 540, temperatureC: 20 });
    const plain = learn(fresh, [{ timeS: 540, temperatureC: 20, outcome: good }]);
    const taught = notebook(20, [9, 10]);
    expect(width(taught, 1)).toBeLessThan(0.8 * width(plain, 1));
    expect(width(taught, 4)).toBeGreaterThan(2 * width(taught, 1));
    expect(taught.push).toMatchObject({ runs: 1, departures: [{ at: 0 }, { at: 1 }] });
    expect(plain.push).toBeUndefined();
  });
  it("takes a run of any outcome", () => {
    const outcomes: readonly DevelopmentRun["outcome"][] = [
      { kind: "good" },
      { kind: "dense" },
      { kind: "steps", steps: 1 },
      { kind: "gamma", gamma: 0.75, wanted: 0.6 },
      { kind: "appearance", appearanceS: 50, factor: 10 },
    ];
    for (const outcome of outcomes) {
      const fresh = startKnowledge({ timeS: 540, temperatureC: 20 });
      const known = learn(fresh, [{ timeS: 700, temperatureC: 20, pushStops: 1, outcome }]);
      expect(known.push?.runs, outcome.kind).toBe(1);
      expect(known.setAside).toEqual([]);
    }
  });
  it("says where its runs end", () => {
    const told = (pushStops: number) =>
      predict(notebook(20, [9, 10, 13]), { pushStops }).cautions.find(({ code }) => code === "push-untaught");
    expect([1, 1.5, 2].map(told)).toEqual([undefined, undefined, undefined]);
    expect(told(3)).toMatchObject({ severity: "note", limit: 2, actual: 3 });
    expect(told(-1)).toMatchObject({ limit: 0, actual: -1 });
    expect(predict(startKnowledge({ timeS: 540, temperatureC: 20 }), { pushStops: 3 }).cautions).toHaveLength(
      3,
    );
  });
  it("is told where a push takes less than none", () => {
    const start = startKnowledge({ timeS: 510, temperatureC: 20 });
    const runs = [0, 2].flatMap((pushStops) =>
      [1, 2, 3, 4].map((i): DevelopmentRun => ({
        id: `${pushStops} ${i}`,
        timeS: pushStops === 0 ? 510 : 380,
        temperatureC: 20,
        pushStops,
        outcome: good,
      })),
    );
    const codes = (known: LearnedKnowledge): readonly string[] =>
      predict(known, { pushStops: 2 }).cautions.map(({ code }) => code);
    expect(codes(learn(start, runs))).toContain("wrong-way");
    expect(codes(start)).not.toContain("wrong-way");
  });
  it("is asked for by a test that would teach it", () => {
    const fresh = startKnowledge({ timeS: 540, temperatureC: 20, logSd: 0.04 });
    const [best] = nextTest(fresh, [{ pushStops: 0 }, { pushStops: 2 }], { pushStops: 2 });
    expect(best?.candidate).toEqual({ pushStops: 2 });
  });
  it("holds its 90 % over films whose steps differ from each other and from print", () => {
    const random = seeded(20261201);
    const photographers = 600;
    const asked = [-1, 0, 1, 2, 3];
    const counts = asked.map(() => 0);
    for (let i = 0; i < photographers; i += 1) {
      // Each stop takes a factor of its own, half of which the film's other stops share.
      const own = 0.06 * random.normal();
      const steps = [0.2, 0.222, 0.266, 0.31].map((step) => step + own + 0.066 * random.normal());
      const truth = (stops: number): number =>
        Math.log(540) +
        (stops < 0 ? -steps[0]! : steps.slice(1, 1 + stops).reduce((sum, each) => sum + each, 0));
      const runs = Array.from({ length: 20 }, (_, k): DevelopmentRun => {
        const pushStops = k % 3;
        const given = truth(pushStops) + 0.15 * random.normal();
        const off = truth(pushStops) - given + 0.08 * random.normal();
        return {
          timeS: Math.exp(given),
          temperatureC: 20,
          pushStops,
          outcome: { kind: "judged", timeRatio: Math.exp(off), logSd: 0.08 },
        };
      });
      const known = learn(startKnowledge({ timeS: 540, temperatureC: 20 }), runs);
      asked.forEach((pushStops, place) => {
        const { lowS, highS } = predict(known, { pushStops });
        const right = Math.exp(truth(pushStops));
        if (lowS <= right && right <= highS) counts[place]! += 1;
      });
    }
    // Two standard deviations of 600 draws below 0.9 are 0.8755.
    for (const count of counts) expect(count / photographers).toBeGreaterThan(0.8755);
  });
  it("refuses what is no number of stops", () => {
    const fresh = startKnowledge({ timeS: 540, temperatureC: 20 });
    const run = { timeS: 540, temperatureC: 20, pushStops: 6, outcome: good };
    expect(() => learn(fresh, [run])).toThrow("learn: runs[0].pushStops must be from -3 to 5 stops, got 6");
  });
});
