/* The moments of a run as work done: a goal that stays in its place while its clock time moves. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  describeSteering,
  equivalentTime,
  genericTemperatureLaw,
  newtonDrift,
  steer,
  type SteerInput,
  type SteeringReading,
} from "../../src/index.js";

const baseline = { timeS: 510, temperatureC: 20 };
const conditions = { temperatureC: 14 };
const ask = (log: readonly SteeringReading[], more: Partial<SteerInput> = {}) =>
  steer({ baseline, conditions, log, ...more });
const course = (startC: number, ambientC: number) => newtonDrift({ startC, ambientC, timeConstantS: 2800 });

describe("the equivalent of a run", () => {
  it("is the clock itself in a bath that stays as it was mixed", () => {
    const { equivalent, total } = ask([{ timeS: 0, temperatureC: 14 }], { nowS: 300 });
    expect(equivalent.referenceC).toBe(14);
    expect(equivalent.nowS).toBeCloseTo(300, 6);
    expect(equivalent.dueS).toBe(compensate(baseline, conditions).timeS);
    for (const field of ["timeS", "lowS", "highS"] as const)
      expect(equivalent[field]).toBeCloseTo(total[field], 6);
  });
  it("keeps the goal in its place while a colder bath moves its clock time", () => {
    const drift = course(13, 8);
    const log = Array.from({ length: 8 }, (_, i) => ({ timeS: 60 * i, temperatureC: drift(60 * i) }));
    const { equivalent, total } = ask(log);
    expect(total.timeS).toBeGreaterThan(1.1 * equivalent.dueS);
    expect(equivalent.timeS).toBeCloseTo(equivalent.dueS, 6);
    // What was done by now is the integral of the rate over the readings.
    expect(equivalent.nowS).toBeCloseTo(equivalentTime(log, 14, genericTemperatureLaw), 1);
    expect(equivalent.nowS).toBeLessThan(420);
  });
  it("keeps it in its place where a dilution changes how much temperature counts", () => {
    const diluted = {
      baseline: { ...baseline, dilution: "1+9" },
      conditions: { ...conditions, dilution: "1+14" },
    };
    const log = [14, 13.5, 13].map((temperatureC, i) => ({ timeS: 200 * i, temperatureC }));
    const { equivalent, total } = ask(log, diluted);
    expect(equivalent.dueS).toBe(compensate(diluted.baseline, diluted.conditions).timeS);
    expect(equivalent.timeS).toBeCloseTo(equivalent.dueS, 6);
    expect(total.timeS).toBeGreaterThan(1.05 * equivalent.dueS);
  });
  it("takes the known temperature where none was stated", () => {
    const { equivalent } = ask([{ timeS: 0, temperatureC: 18 }], { conditions: {} });
    expect(equivalent.referenceC).toBe(20);
    expect(equivalent.dueS).toBeCloseTo(510, 6);
  });
  it("takes a mix that is probably in °F in °C, as the readings are judged by it", () => {
    const log = [0, 60].map((timeS) => ({ timeS, temperatureC: 20 }));
    const answer = ask(log, { conditions: { temperatureC: 68 } });
    expect(answer.equivalent).toMatchObject({ referenceC: 20, nowS: 60 });
    expect(answer.equivalent.dueS).toBeCloseTo(510, 6);
    expect(describeSteering(answer).join(" ")).not.toContain("than planned");
    // Without a reading the mix stands in for it.
    const alone = ask([{ timeS: 0, temperatureC: null }], { conditions: { temperatureC: 68 } });
    expect(alone.total.timeS).toBeCloseTo(510, 6);
  });
  it("moves the goal where the image comes late", () => {
    const log = [{ timeS: 0, temperatureC: 14 }];
    const late = ask(log, { nowS: 100, appearance: { appearanceS: 90, factor: 14 } });
    expect(late.equivalent.timeS).toBeGreaterThan(1.02 * late.equivalent.dueS);
  });
  it("holds the last temperature behind the end of the path", () => {
    const { equivalent, total } = ask([{ timeS: 0, temperatureC: 14 }], {
      baseline: { ...baseline, logSd: 1 },
    });
    expect(total.highS).toBeGreaterThan(3 * total.timeS);
    expect(equivalent.highS / total.highS).toBeCloseTo(1, 3);
  });
});
