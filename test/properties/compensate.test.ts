/* What must hold of the main job on every day. */
import { fc, test } from "../property.js";
import { describe, expect } from "vitest";
import {
  compensate,
  isInputError,
  type Baseline,
  type Compensation,
  type Conditions,
  type Knowledge,
} from "../../src/index.js";
import { agitation, ageH, baseline, dilution, knowledge, temperatureC, usedCm2PerL } from "./generators.js";

/** A day of its own: each condition named or left out. */
const conditions: fc.Arbitrary<Conditions> = fc.record(
  { temperatureC, dilution, agitation, usedCm2PerL, ageH },
  { requiredKeys: [] },
);
const Z90 = 1.6448536269514722;

/**
 * The day, or nothing where it is refused: a use rule whose factor passes 1000, a time known in a bath past
 * its life.
 */
function worked(known: Baseline, day: Conditions, laws: Knowledge): Compensation | undefined {
  try {
    return compensate(known, day, laws);
  } catch (error) {
    if (isInputError(error) && /^(?:slowing-at-most|within-life)$/.test(error.expected.must ?? ""))
      return undefined;
    throw error;
  }
}

describe("compensate", () => {
  test.prop([baseline, knowledge])(
    "to the baseline's own conditions returns its time to the last bit, and changes nothing",
    (known, laws) => {
      const own: Conditions = {
        temperatureC: known.temperatureC,
        dilution: known.dilution,
        agitation: known.agitation,
        usedCm2PerL: known.usedCm2PerL,
        ageH: known.ageH,
      };
      const same = worked(known, own, laws);
      fc.pre(same !== undefined);
      expect(same.timeS).toBe(known.timeS);
      for (const factor of same.factors) expect(factor.value, factor.cause).toBe(1);
      expect(compensate(known, {}, laws).timeS).toBe(known.timeS);
    },
  );
  test.prop([baseline, conditions, knowledge])(
    "its logarithms add: the time is the product of the factors, the variances sum",
    (known, day, laws) => {
      const answer = worked(known, day, laws);
      fc.pre(answer !== undefined);
      const { timeS, lowS, highS, factors } = answer;
      const logs = factors.reduce((sum, { value }) => sum + Math.log(value), 0);
      expect(Math.abs(Math.log(timeS / known.timeS) - logs)).toBeLessThan(1e-11);
      const logSd = Math.sqrt(factors.reduce((sum, factor) => sum + factor.logSd ** 2, 0));
      expect(Math.abs(Math.log(highS / timeS) - Z90 * logSd)).toBeLessThan(1e-9);
      expect(Math.abs(Math.log(timeS / lowS) - Z90 * logSd)).toBeLessThan(1e-9);
      for (const factor of factors) {
        expect(factor.value).toBeGreaterThan(0);
        expect(factor.logSd).toBeGreaterThanOrEqual(0);
        if (factor.basis === "unchanged") expect([factor.value, factor.logSd]).toEqual([1, 0]);
      }
    },
  );
  test.prop([baseline, conditions, knowledge])(
    "gives finite numbers in order, one row for each cause, the gravest caution first",
    (known, day, laws) => {
      const answer = worked(known, day, laws);
      fc.pre(answer !== undefined);
      const { timeS, lowS, highS, factors, cautions } = answer;
      expect(lowS).toBeLessThan(timeS);
      expect(timeS).toBeLessThan(highS);
      expect(highS).toBeLessThan(Infinity);
      const causes = factors.map(({ cause }) => cause);
      expect(new Set(causes).size).toBe(causes.length);
      const gravity = cautions.map(({ severity }) => ["stop", "warn", "note"].indexOf(severity));
      expect(gravity).toEqual(gravity.slice().sort());
    },
  );
  test.prop([
    baseline,
    conditions,
    knowledge,
    fc.double({ min: 0, max: 500, noNaN: true }),
    fc.double({ min: 0, max: 100, noNaN: true }),
  ])("more use and more age never shorten the time", (known, day, laws, use, age) => {
    const used = day.usedCm2PerL ?? 0;
    const old = day.ageH ?? 0;
    const before = worked(known, { ...day, usedCm2PerL: used, ageH: old }, laws);
    const after = worked(known, { ...day, usedCm2PerL: used + use, ageH: old + age }, laws);
    fc.pre(before !== undefined && after !== undefined);
    // Past the life of a bath no time is offered at all: a "stop" says so.
    if (after.cautions.some(({ code }) => code === "bath-past-life")) return;
    expect(after.timeS).toBeGreaterThanOrEqual(before.timeS * (1 - 1e-12));
  });
  test.prop([baseline, conditions, knowledge, fc.double({ min: 0, max: 50, noNaN: true })])(
    "a warmer bath never takes longer, where dilution and temperature do not act on each other",
    (known, day, given, warmer) => {
      const laws = { ...given, interaction: { perHalvingKJPerMol: 0 } };
      const cold = (typeof day.temperatureC === "number" ? day.temperatureC : known.temperatureC) / 2;
      const before = worked(known, { ...day, temperatureC: cold }, laws);
      const after = worked(known, { ...day, temperatureC: cold + warmer }, laws);
      fc.pre(before !== undefined && after !== undefined);
      expect(after.timeS).toBeLessThanOrEqual(before.timeS * (1 + 1e-12));
    },
  );
  test.prop([baseline, conditions, fc.double({ min: 0, max: 50, noNaN: true })])(
    "a warmer bath never takes longer under the generic laws, however diluted",
    (known, day, warmer) => {
      const cold = (typeof day.temperatureC === "number" ? day.temperatureC : known.temperatureC) / 2;
      const before = worked(known, { ...day, temperatureC: cold }, {});
      const after = worked(known, { ...day, temperatureC: cold + warmer }, {});
      fc.pre(before !== undefined && after !== undefined);
      expect(after.timeS).toBeLessThanOrEqual(before.timeS * (1 + 1e-12));
    },
  );
  test.prop([baseline, conditions, knowledge])(
    "survives JSON on the way in and out, and leaves its input alone",
    (known, day, laws) => {
      const before = JSON.stringify([known, day, laws]);
      const answer = worked(known, day, laws);
      fc.pre(answer !== undefined);
      expect(JSON.stringify([known, day, laws])).toBe(before);
      const [a, b, c] = JSON.parse(before) as [Baseline, Conditions, Knowledge];
      expect(compensate(a, b, c)).toEqual(answer);
      expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
    },
  );
});
