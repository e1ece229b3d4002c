/* null is what JSON makes of NaN: a thermometer or a clock that failed. Where a number may be left out, null is not left out. */
import { describe, expect, it } from "vitest";
import * as kinetics from "../../src/index.js";

describe("null in place of a number that may be left out is refused by name", () => {
  const known = { timeS: 510, temperatureC: 20 };
  const start = kinetics.startKnowledge(known);
  const law = kinetics.genericTemperatureLaw;
  const run = { ...known, outcome: { kind: "good" } };
  const nothing: any = null;
  const brew: kinetics.DeveloperBrew = {
    volumeMl: 500,
    ingredients: [
      { ingredient: "instant-coffee", massG: 20 },
      { ingredient: "soda-anhydrous", massG: 27 },
    ],
  };
  it.each<readonly [field: string, call: () => unknown]>([
    ["compensate: conditions.temperatureC", () => kinetics.compensate(known, { temperatureC: nothing })],
    ["compensate: conditions.ageH", () => kinetics.compensate(known, { ageH: nothing })],
    ["compensate: baseline.usedCm2PerL", () => kinetics.compensate({ ...known, usedCm2PerL: nothing }, {})],
    ["compensate: baseline.ageH", () => kinetics.compensate({ ...known, ageH: nothing }, {})],
    ["compensate: baseline.logSd", () => kinetics.compensate({ ...known, logSd: nothing }, {})],
    ["bathVerdict: bath.usedCm2PerL", () => kinetics.bathVerdict({ usedCm2PerL: nothing })],
    ["bathVerdict: bath.ageH", () => kinetics.bathVerdict({ ageH: nothing })],
    [
      "bathVerdict: bath.capacityCm2PerL",
      () => kinetics.bathVerdict({ usedCm2PerL: 9000, capacityCm2PerL: nothing }),
    ],
    ["brewStrength: law.sd", () => kinetics.brewStrength(brew, brew, { exponent: 0.6, sd: nothing })],
    [
      "stockCautions: question.leastMlPerRoll",
      () =>
        kinetics.stockCautions({
          dilution: "1+100",
          totalMl: 300,
          areaCm2: 516,
          family: "p-aminophenol",
          leastMlPerRoll: nothing,
        }),
    ],
    ["checkBrew: use.ageH", () => kinetics.checkBrew(brew, { ageH: nothing })],
    ["massOf: spoonMl", () => kinetics.massOf({ ingredient: "borax", spoons: 1, spoonMl: nothing })],
    ["bakeTime: converted", () => kinetics.bakeTime({ temperatureC: 200, converted: nothing })],
    [
      "spoonsFor: stepSpoons",
      () => kinetics.spoonsFor({ ingredient: "borax", massG: 5, stepSpoons: nothing }),
    ],
    [
      "developUntil: options.fromS",
      () =>
        kinetics.developUntil({
          equivalentS: 510,
          referenceC: 20,
          law,
          temperatureAt: 20,
          fromS: nothing,
        }),
    ],
    [
      "growthFromDoubling: pair.appearanceS",
      () => kinetics.growthFromDoubling({ timeS: 300, gamma: 0.5, gammaAtDouble: 0.8, appearanceS: nothing }),
    ],
    ["formatTime: options.stepS", () => kinetics.formatTime(510, { stepS: nothing })],
    [
      "appearanceEstimate: seen.factorLogSd",
      () => kinetics.appearanceEstimate({ appearanceS: 20, factor: 10, factorLogSd: nothing }),
    ],
    [
      "appearanceEstimate: seen.reactionS",
      () => kinetics.appearanceEstimate({ appearanceS: 20, factor: 10, reactionS: nothing }),
    ],
    [
      "handbookAppearanceFactor: options.strengthGPerL",
      () => kinetics.handbookAppearanceFactor("pyro", { strengthGPerL: nothing }),
    ],
    ["startKnowledge: baseline.logSd", () => kinetics.startKnowledge({ ...known, logSd: nothing })],
    [
      "learn: runs[0].outcome.logSd",
      () => kinetics.learn(start, [{ ...run, outcome: { kind: "good", logSd: nothing } }]),
    ],
    [
      "learn: runs[0].outcome.sd",
      () =>
        kinetics.learn(start, [{ ...run, outcome: { kind: "gamma", gamma: 0.6, wanted: 0.6, sd: nothing } }]),
    ],
    [
      "learn: runs[0].ageH",
      () => kinetics.learn(start, [{ ...known, ageH: nothing, outcome: { kind: "good" } }]),
    ],
    ["nextTest: candidates[0].timeS", () => kinetics.nextTest(start, [{ timeS: nothing }], {})],
    ["nextTest: candidates[0].outcomeLogSd", () => kinetics.nextTest(start, [{ outcomeLogSd: nothing }], {})],
    [
      "planProcess: input.drainS",
      () => kinetics.planProcess({ vessel: "tray", ...known, volumeMl: 300, baths: {}, drainS: nothing }),
    ],
    ["fixingTime: question.times", () => kinetics.fixingTime({ clearingS: 60, times: nothing })],
    [
      "testStripTimes: options.count",
      () => kinetics.testStripTimes(kinetics.compensate(known, {}), { count: nothing }),
    ],
  ])("%s", (field, call) => {
    expect(call).toThrow(TypeError);
    expect(call).toThrow(`${field} must be `);
    expect(call).toThrow(/got null$/);
  });
});
