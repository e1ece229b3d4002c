/* What learning makes of a maker's table: it stays the table, and each row has a departure of its own. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  lawsOf,
  learn,
  predict,
  startKnowledge,
  type Compensation,
  type DevelopmentRun,
  type DilutionLaw,
  type Knowledge,
  type TemperatureLaw,
} from "../../src/index.js";
import { timeTables } from "../reference/temperature.js";
import { seeded } from "../worlds/random.js";

const logSdOf = ({ timeS, highS }: Compensation): number => Math.log(highS / timeS) / 1.6448536269514722;
const printed = timeTables
  .find(({ id }) => id === "rotary-syrup-film-400")!
  .rows.map((row) => ({
    temperatureC: (row.temperature - 32) / 1.8,
    timeS: 60 * row.minutes,
  }));
const temperature = { kind: "table", rows: printed } as const satisfies TemperatureLaw;
const dilution = {
  kind: "table",
  rows: [
    { dilution: "1+4", timeS: 200 },
    { dilution: "1+9", timeS: 360 },
    { dilution: "1+19", timeS: 780 },
  ],
} as const satisfies DilutionLaw;
const baseline = { timeS: 360, temperatureC: 20, dilution: "1+9" } as const;
const laws: Knowledge = { temperature, dilution };
const start = startKnowledge(baseline, { laws });
const good = (timeS: number, where: object, id: string): DevelopmentRun => ({
  timeS,
  temperatureC: 20,
  ...where,
  id,
  outcome: { kind: "good", logSd: 0.07 },
});
const five = (timeS: number, where: object): readonly DevelopmentRun[] =>
  [0, 1, 2, 3, 4].map((i) => good(timeS, where, JSON.stringify([where, i])));
/** What a law makes of other conditions, without the base time. */
const ratio = (known: typeof start, where: object): number =>
  predict(known, where).timeS / predict(known, {}).timeS;

describe("a maker's table in learning", () => {
  it("agrees with runs that confirm it, at every row", () => {
    const known = learn(start, [
      ...printed.flatMap(({ timeS, temperatureC }) => five(timeS, { temperatureC })),
      ...dilution.rows.flatMap(({ timeS, dilution: each }) => five(timeS, { dilution: each })),
    ]);
    for (const { timeS, temperatureC } of printed)
      expect(predict(known, { temperatureC }).timeS).toBeCloseTo(timeS, 6);
    for (const { timeS, dilution: each } of dilution.rows)
      expect(predict(known, { dilution: each }).timeS).toBeCloseTo(timeS, 6);
    const rows = predict(known, { temperatureC: printed[1]!.temperatureC });
    expect(logSdOf(rows)).toBeLessThan(
      logSdOf(compensate({ ...baseline, logSd: 0 }, { temperatureC: printed[1]!.temperatureC }, laws)),
    );
  });
  it.each([
    ["one a tenth of a degree off the baseline", good(360, { temperatureC: 20.1 }, "warm")],
    ["one at another dilution", good(780, { dilution: "1+19" }, "weak")],
  ])("keeps its rows, and their spread, after %s", (_, run) => {
    const known = learn(start, [run]);
    for (const where of [
      ...printed.map(({ temperatureC }) => ({ temperatureC })),
      ...dilution.rows.map((row) => ({ dilution: row.dilution })),
    ]) {
      // The rounding of a row is 2.5 %; such a run says a thousandth of it.
      expect(Math.abs(Math.log(ratio(known, where) / ratio(start, where)))).toBeLessThan(0.003);
      const [before, after] = [start, known].map((each) =>
        compensate({ ...each.baseline, timeS: 360, logSd: 0.001 }, where, {
          ...each,
          joint: undefined,
        }),
      );
      expect(Math.abs(Math.log(logSdOf(after!) / logSdOf(before!)))).toBeLessThan(0.15);
    }
  });
  it("moves with runs that disagree, at the row and toward its neighbours", () => {
    const cold = printed[0]!;
    const warm = { temperatureC: printed[3]!.temperatureC };
    const known = learn(start, [...five(360, cold), ...five(340, warm), ...five(340, { ...warm, ageH: 0 })]);
    expect(ratio(known, warm)).toBeGreaterThan(300 / 360 + 0.03);
    // The row that no run names moves with the baseline's row alone.
    const [between, there] = [printed[2]!, warm].map(({ temperatureC }) =>
      Math.log(ratio(known, { temperatureC }) / ratio(start, { temperatureC })),
    );
    expect(between).toBeGreaterThan(0);
    expect(between).toBeLessThan(0.6 * there!);
    expect(known.temperature).toMatchObject({ ...temperature, runs: 15 - 5 });
  });
  it("is taught beyond its rows, where it then needs no caution", () => {
    const where = { temperatureC: 15 };
    const [before, known] = [start, learn(start, five(700, where))];
    expect(logSdOf(predict(known, where))).toBeLessThan(0.4 * logSdOf(predict(before, where)));
    expect(predict(known, where).timeS).toBeGreaterThan(600);
    const outside = (one: typeof start, temperatureC: number): boolean =>
      predict(one, { temperatureC }).cautions.some(({ code }) => code === "outside-table");
    expect([outside(before, 15), outside(known, 15), outside(known, 14)]).toEqual([true, false, true]);
  });
  it("answers alike from text, in any order, and as the prior of another notebook", () => {
    const runs = [
      ...five(560, { temperatureC: 15 }),
      ...five(500, { dilution: "1+14" }),
      ...five(470, { temperatureC: 17.2 }),
    ];
    const known = learn(start, runs);
    const other = learn(learn(start, runs.slice(7).reverse()), runs.slice(0, 7).reverse());
    const read = JSON.parse(JSON.stringify(known)) as typeof known;
    const begun = startKnowledge(known.baseline, { laws: known });
    // Runs of places of their own that confirm what was known change nothing, though they add departures.
    const places = [{ temperatureC: 13 }, { dilution: "1+11" }];
    const later = learn(
      begun,
      places.map((place, k) => good(predict(begun, place).timeS, place, `later ${k}`)),
    );
    for (const temperatureC of [13, 15, 16, 17.2, 19, 20, 21.7, 26])
      for (const each of ["1+3", "1+9", "1+14", "1+17", "1+30"]) {
        const where = { temperatureC, dilution: each };
        const answer = predict(known, where);
        expect(predict(other, where)).toEqual(answer);
        expect(predict(read, where)).toEqual(answer);
        expect(compensate(known.baseline, where, known)).toEqual(answer);
        expect(predict(begun, where).timeS).toBeCloseTo(answer.timeS, 9);
        expect(predict(later, where).timeS).toBeCloseTo(answer.timeS, 6);
      }
  });
});

describe("the slope of a table as a whole", () => {
  const R = 8.314462618e-3;
  const under = (energy: number, c: number): number =>
    Math.exp((energy / R) * (1 / (c + 273.15) - 1 / 293.15));
  const rows = [16, 18, 20, 22, 24].map((temperatureC) => ({
    temperatureC,
    timeS: 15 * Math.round(40 * under(68, temperatureC)),
  }));
  const known = startKnowledge(
    { timeS: 600, temperatureC: 20 },
    { laws: { temperature: { kind: "table", rows } } },
  );
  it("gives way to runs that all lean one way, and the answer names the table", () => {
    const mine = [17, 18, 20, 22, 24].flatMap((temperatureC) =>
      [1, 2, 3].map((k): DevelopmentRun => ({
        temperatureC,
        timeS: 600 * under(35, temperatureC),
        id: `${temperatureC} ${k}`,
        outcome: { kind: "judged", timeRatio: 1 },
      })),
    );
    const taught = learn(known, mine);
    for (const temperatureC of [17, 24]) {
      const { lowS, highS, cautions } = predict(taught, { temperatureC });
      expect(lowS).toBeLessThan(600 * under(35, temperatureC));
      expect(highS).toBeGreaterThan(600 * under(35, temperatureC));
      expect(cautions).toContainEqual(
        expect.objectContaining({
          code: "far-from-known",
          data: { parameter: "temperature", cause: "temperature" },
        }),
      );
    }
    const { temperature: law } = taught;
    expect(law).toMatchObject({ energyOffKJPerMol: expect.closeTo(-33, -1) as number });
    const { cautions: _, ...answer } = predict(taught, { temperatureC: 24 });
    expect(compensate(taught.baseline, { temperatureC: 24 }, taught)).toMatchObject(answer);
    expect(compensate(taught.baseline, { temperatureC: 24 }, lawsOf(taught))).toMatchObject(answer);
    // A lone run that is twice off may as well say that the base time is wrong.
    const slip = learn(known, [{ ...mine[12]!, timeS: 2 * mine[12]!.timeS }]);
    expect(slip.temperature).toMatchObject({ energyOffKJPerMol: expect.closeTo(0, -1) as number });
  });
  it.each([
    [35, 86],
    [45, 82],
    [68, 97],
    [90, 82],
  ])("of photographers at %f kJ/mol under a table of 68 the interval holds the truth", (energy, least) => {
    const { normal, uniform } = seeded(energy);
    const inside = new Map<number, boolean[]>([10, 20, 40].map((count) => [count, []]));
    for (let k = 0; k < 24; k += 1) {
      const base = 600 * Math.exp(0.1 * normal());
      const runs = Array.from({ length: 40 }, (_, i): DevelopmentRun => {
        const temperatureC = 17 + 7 * uniform();
        const timeS = 600 * under(68, temperatureC) * Math.exp(0.1 * normal());
        const right = base * under(energy, temperatureC) * Math.exp(0.08 * normal());
        return { temperatureC, timeS, id: String(i), outcome: { kind: "judged", timeRatio: right / timeS } };
      });
      for (const [count, hits] of inside) {
        const taught = learn(known, runs.slice(0, count));
        for (const temperatureC of [16, 17, 20, 24]) {
          const { lowS, highS } = predict(taught, { temperatureC });
          const right = base * under(energy, temperatureC);
          hits.push(lowS <= right && right <= highS);
        }
      }
    }
    for (const hits of inside.values())
      expect((100 * hits.filter(Boolean).length) / hits.length).toBeGreaterThanOrEqual(least);
  });
});

describe("far from all runs", () => {
  const at = (degrees: readonly number[]): readonly DevelopmentRun[] =>
    degrees.flatMap((temperatureC) =>
      five(510 * Math.exp((60 / 8.314462618e-3) * (1 / (temperatureC + 273.15) - 1 / 293.15)), {
        temperatureC,
      }),
    );
  const known = learn(startKnowledge({ timeS: 510, temperatureC: 20 }), at([17, 18, 19, 20, 21, 22, 23, 24]));
  it("a learned energy leaves as much open as the walk does", () => {
    const [near, far] = [12, 5].map((temperatureC) => logSdOf(predict(known, { temperatureC })));
    expect(near).toBeGreaterThan(0.03 * Math.sqrt(17 - 12));
    expect(far).toBeGreaterThan(0.03 * Math.sqrt(17 - 5));
    expect(logSdOf(predict(known, { temperatureC: 19 }))).toBeLessThan(0.04);
  });
  it("has a departure for each 2 °C, from answers in one piece", () => {
    const departures = (known.temperature as { departures: readonly { at: number }[] }).departures;
    expect(departures.map(({ at: celsius }) => celsius)).toEqual([17, 18, 20, 22, 24]);
    for (const temperatureC of [5, 17, 19, 23.5, 30])
      expect(compensate(known.baseline, { temperatureC }, known)).toEqual(predict(known, { temperatureC }));
  });
  it("a bath that drifts by a hair takes what a steady one takes, walk or table", () => {
    for (const one of [known, learn(start, at([16, 18]))]) {
      const steady = predict(one, { temperatureC: 17.5 });
      const drifting = predict(one, {
        temperatureC: { startC: 17.5, ambientC: 17.5001, timeConstantS: 3600 },
      });
      expect(drifting.timeS / steady.timeS).toBeCloseTo(1, 4);
      expect(logSdOf(drifting) / logSdOf(steady)).toBeCloseTo(1, 3);
    }
  });
});
