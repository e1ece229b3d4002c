/* Dates, thermometers, people and printed rows among the runs. All runs are invented. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  learn,
  mergeKnowledge,
  predict,
  prepareCompensation,
  startKnowledge,
  type DevelopmentRun,
} from "../../src/index.js";
import { baseline, good, start } from "./start.js";
import { dataOf } from "../helpers.js";

const day = (i: number): string => new Date(Date.UTC(2020, 0, 1 + i)).toISOString().slice(0, 10);
const drifting = (perDate: number, count = 30): readonly DevelopmentRun[] =>
  Array.from({ length: count }, (_, i) =>
    good(510 * Math.exp(perDate * (i - count + 1)), 20, { id: String(i), date: day(i) }),
  );
const codes = (runs: readonly DevelopmentRun[]): readonly string[] =>
  learn(start, runs).advice.map(({ code }) => code);

describe("dates", () => {
  it("let the base time drift: it is the present one, and the trend is named and said again", () => {
    const known = learn(start, drifting(0.02));
    const undated = learn(
      start,
      drifting(0.02).map((run) => ({ ...run, date: undefined })),
    );
    expect(Math.abs(Math.log(known.baseline.timeS / 510))).toBeLessThan(0.04);
    expect(Math.log(undated.baseline.timeS / 510)).toBeLessThan(-0.2);
    const trend = known.advice.find(({ code }) => code === "trend")!;
    expect(trend).toMatchObject({ severity: "warn", quantity: "standardDeviations", limit: 2 });
    expect(Math.log(dataOf(trend)!["ratio"] as number)).toBeCloseTo(0.58, 1);
    expect(predict(known, {}).cautions).toContainEqual({ ...trend, path: "/knowledge/runs" });
    expect(codes(drifting(0))).toEqual([]);
  });
  it("name a trend that creeps among noisy runs, where oldest and newest alone do not tell", () => {
    // 1 % a run, and 20 % more or less in turn.
    const runs = Array.from({ length: 30 }, (_, i) =>
      good(510 * Math.exp(0.01 * i + (i % 2 === 0 ? -0.2 : 0.2)), 20, {
        id: String(i),
        date: new Date(Date.UTC(2024, 0, 1 + i)).toISOString().slice(0, 10),
      }),
    );
    const trend = learn(start, runs).advice.find(({ code }) => code === "trend")!;
    expect(trend).toMatchObject({ severity: "warn", limit: 1.2 });
    expect(trend.actual).toBeGreaterThan(1.2);
    // The newest are slower by a third. Some of it is taken for chance, and more than half is seen.
    expect(Math.log(dataOf(trend)!["ratio"] as number)).toBeGreaterThan(0.5 * 0.29);
    expect(Math.log(dataOf(trend)!["ratio"] as number)).toBeLessThan(0.29);
  });
  it("are taken in the middle where a run has none, and advice says so", () => {
    const runs = [...drifting(0.02), good(400, 20, { id: "undated" })];
    expect(learn(start, runs).advice.find(({ code }) => code === "undated-runs")).toMatchObject({
      severity: "note",
      actual: 1,
      data: { dated: true },
    });
  });
  it("would not show in ten runs without any date, and advice says so", () => {
    const runs = Array.from({ length: 10 }, (_, i) => good(510, 20, { id: String(i) }));
    const said = learn(start, runs).advice.find(({ code }) => code === "undated-runs");
    expect(said).toMatchObject({ severity: "note", actual: 10, data: { dated: false } });
    expect(learn(start, runs.slice(1)).advice.map(({ code }) => code)).not.toContain("undated-runs");
    const printed = runs.map((run): DevelopmentRun => ({ ...run, printed: true }));
    expect(learn(start, printed).advice.map(({ code }) => code)).not.toContain("undated-runs");
  });
});

describe("thermometers and people", () => {
  const mixed = Array.from({ length: 20 }, (_, i): DevelopmentRun => {
    const mark = i % 2 === 0 ? {} : { thermometer: "new", by: "friend" };
    return good(510 * (i % 2 === 0 ? 1 : 1.1), 20, { id: String(i), ...mark });
  });
  const known = learn(start, mixed);
  it("have an offset each, which a question may name", () => {
    expect(predict(known, {}).timeS / 510).toBeCloseTo(1, 1);
    const asked = { thermometer: "new", by: "friend" };
    const answer = predict(known, asked);
    expect(answer.timeS / 510).toBeGreaterThan(1.07);
    expect(answer.factors.map(({ cause, basis }) => [cause, basis]).slice(-2)).toEqual([
      ["thermometer", "own-runs"],
      ["by", "own-runs"],
    ]);
    expect(compensate(known.baseline, asked, known)).toEqual(answer);
    expect(predict(JSON.parse(JSON.stringify(known)), asked)).toEqual(answer);
    // What one of the two adds cannot be told from the other: together they are known better than either.
    const [thermometer, person] = answer.factors.slice(-2).map(({ logSd }) => logSd);
    const logSd = Math.log(answer.highS / answer.timeS) / 1.6448536269514722;
    expect(logSd).toBeLessThan(Math.hypot(thermometer!, person!));
  });
  it("that every run names are meant by a question without a name", () => {
    const named = Array.from({ length: 20 }, (_, i) =>
      good(500 + i, 20, { id: String(i), by: "friend", thermometer: "slow one" }),
    );
    const width = (runs: readonly DevelopmentRun[], question: object): number => {
      const { lowS, highS } = predict(learn(start, runs), question);
      return Math.log(highS / lowS);
    };
    const asked = { by: "friend", thermometer: "slow one" };
    expect(width(named, {})).toBe(width(named, asked));
    const bare = named.map(({ by: _, thermometer: __, ...run }) => run);
    expect(width(named, {}) / width(bare, {})).toBeCloseTo(1, 1);
    const printed = { ...good(512, 20, { id: "maker" }), printed: true as const };
    expect(width([...named, printed], {})).toBe(width([...named, printed], asked));
    // One run by somebody else, and nobody is meant.
    const [first, ...rest] = named;
    expect(width([{ ...first!, by: "guest" }, ...rest], { thermometer: "slow one" })).toBeGreaterThan(
      2 * width(named, {}),
    );
    const known = learn(start, named);
    expect(prepareCompensation(known.baseline, known).timeS({})).toBe(predict(known, {}).timeS);
  });
  it("of which nothing is known have their spread", () => {
    const before = compensate(baseline, {});
    const answer = compensate(baseline, { thermometer: "new", by: "friend" });
    expect(answer.timeS).toBe(before.timeS);
    expect(answer.factors.slice(-2).map(({ cause, logSd }) => [cause, logSd])).toEqual([
      ["thermometer", 0.06],
      ["by", 0.15],
    ]);
    expect(answer.cautions.map(({ code }) => code)).not.toContain("unknown-field");
  });
  it("stand in the run, so that merging is symmetric", () => {
    const [mine, theirs] = [0, 1].map((odd) =>
      learn(
        start,
        mixed.filter((_, i) => i % 2 === odd),
      ),
    );
    expect(JSON.stringify(mergeKnowledge(mine!, theirs!))).toBe(
      JSON.stringify(mergeKnowledge(theirs!, mine!)),
    );
    expect(JSON.stringify(mergeKnowledge(mine!, theirs!))).toBe(JSON.stringify(known));
  });
  it.each([
    ["thermometer", 7, "wrong-type"],
    ["by", false, "wrong-type"],
    ["printed", "yes", "not-one-of"],
  ])("%s of the wrong kind is refused", (field, value, code) => {
    const run = { ...good(510), [field]: value };
    expect(() => learn(start, [run])).toThrow(expect.objectContaining({ code, path: `/runs/0/${field}` }));
  });
});

describe("printed rows", () => {
  it("share the maker's base, and so teach the laws more than the base time", () => {
    const printed = [12, 16, 20, 24].map((temperatureC) =>
      good(700 * Math.exp(0.08 * (20 - temperatureC)), temperatureC, {
        printed: true,
        outcome: { kind: "good", logSd: 0.04 },
      }),
    );
    const own = startKnowledge(baseline);
    const known = learn(own, printed);
    const plain = learn(
      own,
      printed.map((run) => ({ ...run, printed: undefined })),
    );
    expect(known.baseline.logSd!).toBeGreaterThan(3 * plain.baseline.logSd!);
    expect(known.parameters[1]!.sd).toBeLessThan(1.1 * plain.parameters[1]!.sd);
    expect(
      learn(own, [...printed, good(510, 20, { date: day(0) }), good(512, 20, { date: day(1) })]).advice,
    ).toEqual([]);
  });
});

describe("batches", () => {
  const judged = (timeRatio: number, more: Partial<DevelopmentRun> = {}): DevelopmentRun =>
    good(510, 20, { outcome: { kind: "judged", timeRatio }, ...more });
  const bottle = (batch: string, timeRatio: number): readonly DevelopmentRun[] =>
    Array.from({ length: 6 }, (_, i) => judged(timeRatio, { id: `${batch} ${i}`, batch }));
  const rowOf = (answer: ReturnType<typeof predict>) => answer.factors.find(({ cause }) => cause === "batch");

  it("have offsets of their own, and a bottle that no run names is one more", () => {
    const known = learn(start, [...bottle("one", 1), ...bottle("two", 0.8)]);
    const [one, two, next] = ["one", "two", "three"].map((batch) => predict(known, { batch }));
    expect(one!.timeS).toBeCloseTo(510, -1.5);
    expect(two!.timeS).toBeCloseTo(0.8 * 510, -1.5);
    expect(rowOf(next!)).toMatchObject({ value: 1, logSd: 0.08, basis: "default" });
    // Who names none takes a further one.
    const silent = predict(known, {});
    expect(silent).toMatchObject({ timeS: next!.timeS, lowS: next!.lowS, highS: next!.highS });
    expect(compensate(known.baseline, {}, known)).toMatchObject({ lowS: silent.lowS, highS: silent.highS });
    expect(silent.highS / silent.lowS).toBeGreaterThan(one!.highS / one!.lowS);
  });
  it("are the one that all runs name where a question names none", () => {
    const known = learn(start, bottle("one", 1));
    expect(rowOf(predict(known, {}))).toMatchObject({ basis: "own-runs" });
    expect(predict(known, {}).timeS).toBe(predict(known, { batch: "one" }).timeS);
  });
  it("are mixed anew each time where the laws say so: no number of runs makes the next one known", () => {
    const anew = startKnowledge(baseline, { baseLogSd: 0.04, laws: { batchLogSd: 0.1 } });
    expect(anew.baseline.logSd).toBeCloseTo(Math.hypot(0.04, 0.1), 12);
    const days = Array.from({ length: 40 }, (_, i) => judged(1, { id: String(i), date: day(i) }));
    const many = learn(anew, days);
    expect(rowOf(predict(many, {}))).toMatchObject({ value: 1, logSd: 0.1, basis: "given" });
    expect(many.baseline.logSd).toBeGreaterThan(0.1 / Math.sqrt(40));
    // Strips of one evening are of one mixing.
    const evening = learn(
      anew,
      days.map((run) => ({ ...run, date: day(0) })),
    );
    // One mixing tells as much of the usual one as the known time did.
    expect(evening.baseline.logSd).toBeGreaterThan(0.99 * Math.hypot(0.04, 0.1) * Math.SQRT1_2);
    // Undated ones are each of their own.
    const undated = learn(
      anew,
      days.map((run) => ({ ...run, date: undefined })),
    );
    expect(undated.baseline.logSd).toBeLessThan(0.5 * evening.baseline.logSd!);
    // A strength says how strong today's brew is.
    const strength = { value: 1.2, logSd: 0.05, basis: "given" } as const;
    expect(rowOf(predict(many, { strength }))).toBeUndefined();
  });
  it("count twice in a known time that was not learned: it was found in one of them", () => {
    const answer = compensate(baseline, {}, { batchLogSd: 0.1 });
    expect(rowOf(answer)!.logSd).toBeCloseTo(Math.SQRT2 * 0.1, 12);
    expect(rowOf(compensate(baseline, { batch: "one" }, {}))!.logSd).toBe(0.08);
    const prepared = prepareCompensation(baseline, { batchLogSd: 0.1 });
    expect(prepared.compensate({ temperatureC: 18 })).toEqual(
      compensate(baseline, { temperatureC: 18 }, { batchLogSd: 0.1 }),
    );
    expect(prepared.timeS({ temperatureC: 18 })).toBe(prepared.compensate({ temperatureC: 18 }).timeS);
  });
  it("do not hide a field that is not read", () => {
    const misspelt = { temperature: 18 } as object;
    const codesOf = (laws: object) => compensate(baseline, misspelt, laws).cautions.map(({ code }) => code);
    expect(codesOf({ batchLogSd: 0.1 })).toContain("unknown-field");
  });
  it("hold in a world where each mixing is off: 90 % intervals of the next hold at least 85 %", () => {
    let seed = 7;
    const uniform = (): number => (seed = (seed * 16807) % 2147483647) / 2147483647;
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const held = [3, 8, 20].map((count) => {
      let inside = 0;
      for (let world = 0; world < 200; world += 1) {
        const base = 510 * Math.exp(0.04 * normal());
        const begun = base * Math.exp(0.1 * normal());
        const known = startKnowledge({ timeS: begun, temperatureC: 20 }, { laws: { batchLogSd: 0.1 } });
        const runs = Array.from({ length: count }, (_, i) => {
          const right = base * Math.exp(0.1 * normal() + 0.04 * normal());
          return { ...judged((right / 510) * Math.exp(0.07 * normal())), id: String(i), date: day(i) };
        });
        const { lowS, highS } = predict(learn(known, runs), {});
        const next = base * Math.exp(0.1 * normal());
        if (next > lowS && next < highS) inside += 1;
      }
      return inside / 200;
    });
    for (const share of held) expect(share).toBeGreaterThan(0.85);
  });
});
