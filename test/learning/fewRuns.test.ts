/*
 * A few runs, one of which is a slip of the pen: all invented, about a known time of 10:00.
 */
import { describe, expect, it } from "vitest";
import { learn, predict, startKnowledge, type DevelopmentRun } from "../../src/index.js";
import { fc, test } from "../property.js";

const start = startKnowledge({ timeS: 600, temperatureC: 20 });
const good = (timeS: number, i: number): DevelopmentRun => ({
  timeS,
  temperatureC: 20,
  outcome: { kind: "good" },
  id: `plate ${i}`,
});
const after = (...timesS: number[]) => learn(start, timesS.map(good));

describe("a lone run", () => {
  it("of a tenth of the known time is as doubtful as that: the interval holds it and two minutes", () => {
    const knowledge = after(60);
    const { timeS, lowS, highS } = predict(knowledge, {});
    expect(timeS).toBeGreaterThan(200);
    expect(timeS).toBeLessThan(400);
    expect(lowS).toBeLessThan(150);
    expect(highS).toBeGreaterThan(600);
    expect(knowledge.setAside).toEqual([expect.objectContaining({ run: 0, reason: "disagrees" })]);
  });
  it("ten times as long is held back by as much", () => {
    const [short, long] = [after(60), after(6000)] as const;
    expect(predict(long, {}).timeS / 600).toBeCloseTo(600 / predict(short, {}).timeS, 1);
    expect(long.setAside[0]?.weight).toBeCloseTo(short.setAside[0]?.weight ?? 0, 3);
  });
  it("of half or twice the known time is believed, as it was", () => {
    for (const timeS of [300, 1200]) {
      const knowledge = after(timeS);
      expect(knowledge.setAside).toEqual([]);
      expect(Math.abs(Math.log(predict(knowledge, {}).timeS / timeS))).toBeLessThan(0.1);
    }
  });
  it("counts in full where its noise is stated", () => {
    const stated = startKnowledge({ timeS: 600, temperatureC: 20 }, { noise: "stated" });
    expect(learn(stated, [good(60, 0)]).setAside).toEqual([]);
  });
});

describe("two or more right runs beside a slip", () => {
  it.each([
    [60, 600, 600],
    [100, 600, 600],
    [6000, 600, 600],
    [60, 600, 600, 600],
    [600, 600, 60, 600, 600],
  ])("%s, %s, %s: they are believed, and the slip is named", (...timesS) => {
    const knowledge = after(...timesS);
    const { lowS, highS } = predict(knowledge, {});
    expect(lowS).toBeLessThan(600);
    expect(highS).toBeGreaterThan(600);
    expect(highS / lowS).toBeLessThan(1.6);
    expect(knowledge.setAside.map(({ run }) => timesS[run])).toEqual(timesS.filter((timeS) => timeS !== 600));
  });

  const slip = fc.constantFrom(1, 1, 1, 0.1, 10);
  const run = fc.record({ off: fc.double({ min: -0.3, max: 0.3, noNaN: true }), slip });
  // A fit that has not settled ends anywhere: a millionth once moved a time by half.
  test.prop([fc.array(run, { minLength: 2, maxLength: 6 })])(
    "a millionth more moves the time by less than 1 %",
    (runs) => {
      const timesS = runs.map(({ off, slip }) => 600 * slip * Math.exp(off));
      const [first = 0, ...others] = timesS;
      const [a, b] = [after(first, ...others), after(first * (1 + 1e-6), ...others)].map((k) =>
        predict(k, {}),
      );
      expect(Math.abs(Math.log(a!.timeS / b!.timeS))).toBeLessThan(0.01);
      expect(Math.abs(Math.log(a!.highS / b!.highS))).toBeLessThan(0.01);
    },
  );
});
