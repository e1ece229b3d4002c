/* The prepared form: the answers of the plain call, the time to the last bit, and columns of times. */
import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { compensate, learn, prepareCompensation, startKnowledge, type Conditions } from "../../src/index.js";
import {
  agitation,
  ageH,
  baseline,
  dilution,
  knowledge,
  temperatureC,
  usedCm2PerL,
} from "../properties/generators.js";

const conditions: fc.Arbitrary<Conditions> = fc.record(
  { temperatureC, dilution, agitation, usedCm2PerL, ageH },
  { requiredKeys: [] },
);
const invented = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 }, gamma: 0.6 };

/** What a call gives, or the sentence with which it refuses. */
function outcome<T>(call: () => T): T | string {
  try {
    return call();
  } catch (error) {
    return (error as Error).message;
  }
}

describe("prepareCompensation", () => {
  test.prop([baseline, knowledge, fc.array(conditions, { minLength: 2, maxLength: 5 })])(
    "answers as compensate does, call after call",
    (known, laws, days) => {
      const ask = outcome(() => prepareCompensation(known, laws));
      fc.pre(typeof ask !== "string");
      if (typeof ask === "string") return;
      // Twice each, so that what serves again is seen too.
      for (const day of [...days, ...days]) {
        const plain = outcome(() => compensate(known, day, laws));
        const answer = outcome(() => ask.compensate(day));
        if (typeof plain === "string") expect(typeof answer).toBe("string");
        else {
          expect(answer).toEqual(plain);
          expect(ask.timeS(day)).toBe(plain.timeS);
        }
      }
    },
  );
  it("gives the time to the last bit under learned laws, marks and a drifting bath", () => {
    const runs = [1, 2, 3, 5, 8, 12].map((water, i) => ({
      timeS: 300 + 60 * water,
      temperatureC: 18 + i,
      dilution: `1+${water}`,
      agitation: { everyS: 30 * (1 + (i % 3)) },
      thermometer: i % 2 === 0 ? "kitchen" : "glass",
      by: "second",
      outcome: { kind: "steps" as const, steps: (i % 3) - 1 },
    }));
    const known = learn(startKnowledge(invented), runs);
    const ask = prepareCompensation(known.baseline, known);
    const days: readonly Conditions[] = [
      { temperatureC: 16, dilution: "1+7", agitation: { everyS: 45 } },
      { temperatureC: 16, thermometer: "kitchen" },
      { dilution: "1+20", temperatureC: 23, by: "second" },
      { dilution: "1+4", agitation: "stand", thermometer: "new", by: "third" },
      {
        temperatureC: { startC: 20, ambientC: 14, timeConstantS: 2700 },
        dilution: "1+7",
        agitation: { everyS: 45 },
      },
    ];
    for (const day of days) {
      const answer = ask.compensate(day);
      expect(answer).toEqual(compensate(known.baseline, day, known));
      expect(ask.timeS(day)).toBe(answer.timeS);
    }
    const columns = { temperatureC: Float64Array.of(16, 23), waterParts: Float64Array.of(7, 20) };
    const times = ask.times(columns);
    expect(times[0]).toBeCloseTo(ask.timeS({ temperatureC: 16, dilution: "1+7" }), 9);
    expect(times[1]).toBeCloseTo(ask.timeS({ temperatureC: 23, dilution: "1+20" }), 9);
    // Two known thermometers and a person were learned: their rows rest on own runs.
    const named = ask.compensate({ thermometer: "kitchen", by: "second" }).factors;
    expect(named.slice(-2).map(({ cause, basis }) => [cause, basis])).toEqual([
      ["thermometer", "own-runs"],
      ["by", "own-runs"],
    ]);
  });
  it("hands out rows and cautions that are its caller's own", () => {
    const ask = prepareCompensation(invented);
    const day = { temperatureC: 14, usedCm2PerL: 500 };
    const first = ask.compensate(day);
    (first.factors[2] as { value: number }).value = 0;
    expect(ask.compensate(day)).toEqual(compensate(invented, day));
  });
  it("works out columns as one call a row does", () => {
    const ask = prepareCompensation(invented);
    const rows = Array.from({ length: 200 }, (_, i) => ({
      temperatureC: 10 + i / 20,
      waterParts: i % 30,
      everyS: 1 + (i % 90),
      usedCm2PerL: 7 * i,
      ageH: i / 50,
    }));
    const column = (name: keyof (typeof rows)[number]): Float64Array =>
      Float64Array.from(rows, (row) => row[name]);
    const times = ask.times({
      temperatureC: column("temperatureC"),
      waterParts: column("waterParts"),
      everyS: column("everyS"),
      usedCm2PerL: column("usedCm2PerL"),
      ageH: column("ageH"),
    });
    rows.forEach(({ waterParts, everyS, ...rest }, i) => {
      const day = { ...rest, dilution: { stockParts: 1, waterParts }, agitation: { everyS } };
      expect(times[i]! / compensate(invented, day).timeS).toBeCloseTo(1, 12);
    });
  });
  it("says what is wrong with a column, and where", () => {
    const ask = prepareCompensation({ timeS: 510, temperatureC: 20 });
    const refused = (columns: object): unknown => {
      try {
        return ask.times(columns);
      } catch (error) {
        const { code, path } = error as { readonly code: string; readonly path: string };
        return [code, path];
      }
    };
    expect(refused({ temperatureC: [20] })).toEqual(["wrong-type", "/columns/temperatureC"]);
    expect(refused({ temperatureC: Float64Array.of(20, 300) })).toEqual([
      "out-of-range",
      "/columns/temperatureC/1",
    ]);
    expect(refused({ waterParts: Float64Array.of(9) })).toEqual(["needs-counterpart", "/columns/waterParts"]);
    expect(refused({ temperatureC: Float64Array.of(20), ageH: Float64Array.of(1, 2) })).toEqual([
      "out-of-range",
      "/columns/ageH",
    ]);
    expect(refused({ colour: Float64Array.of(20) })).toEqual(["not-one-of", "/columns/colour"]);
    expect(refused({})).toEqual(new Float64Array(0));
  });
  it("answers anew when its caller has changed what was handed in", () => {
    const strength = { value: 1, logSd: 0.1, basis: "given" as const, capacityCm2PerL: 1000 };
    const day = { usedCm2PerL: 500, strength };
    const known = { ...invented, temperatureC: 20 };
    const laws = { temperature: { kind: "coefficient" as const, ratio: 2, intervalC: 10 } };
    const ask = prepareCompensation(known, laws);
    ask.compensate(day);
    strength.value = 2;
    strength.capacityCm2PerL = 400;
    expect(ask.compensate(day)).toEqual(compensate(invented, day, laws));
    expect(ask.timeS(day)).toBe(ask.compensate(day).timeS);
    strength.capacityCm2PerL = 2000;
    expect(ask.compensate(day)).toEqual(compensate(invented, day, laws));
    // The known time and the laws are those that were prepared.
    const asPrepared = { ...laws.temperature };
    known.temperatureC = 25;
    laws.temperature.ratio = 3;
    const drift = { temperatureC: { startC: 18, ambientC: 14, timeConstantS: 2700 } };
    for (const one of [drift, { temperatureC: 18 }]) {
      const answer = compensate(invented, one, { temperature: asPrepared });
      expect(ask.compensate(one)).toEqual(answer);
      expect(ask.timeS(one)).toBe(answer.timeS);
    }
  });
  it("gives the time alone only where there is an answer", () => {
    const refusal = (call: () => unknown): unknown => {
      try {
        return call();
      } catch (error) {
        const { code, path } = error as { readonly code: string; readonly path: string };
        return [code, path];
      }
    };
    const ask = prepareCompensation(
      { timeS: 510, temperatureC: 20, ageH: 100 },
      { age: { kind: "half-life", halfLifeH: 1 } },
    );
    const past = ["out-of-range", "/baseline/ageH"];
    expect(refusal(() => ask.compensate({ ageH: 0 }))).toEqual(past);
    expect(refusal(() => ask.timeS({ ageH: 0 }))).toEqual(past);
    expect(refusal(() => ask.times({ ageH: Float64Array.of(0) }))).toEqual(past);
    for (const wrong of [null, "abc", [18], undefined])
      expect(refusal(() => ask.timeS(wrong as never))).toEqual(refusal(() => ask.compensate(wrong as never)));
  });
  it("reads a bad row of areas by the stock in its bath", () => {
    const use = { increase: 0.05, perCm2PerL: 516, growth: "compound", dilution: "stock" } as const;
    const ask = prepareCompensation({ timeS: 510, temperatureC: 20, dilution: "1+99" }, { use });
    const usedCm2PerL = Float64Array.of(0, 10_000);
    expect(() => ask.times({ usedCm2PerL })).toThrow(
      expect.objectContaining({ path: "/columns/usedCm2PerL/1" }) as Error,
    );
    const waterParts = Float64Array.of(99, -1);
    expect(() => ask.times({ usedCm2PerL: Float64Array.of(0, 0), waterParts })).toThrow(
      expect.objectContaining({ path: "/columns/waterParts/1" }) as Error,
    );
  });
});
