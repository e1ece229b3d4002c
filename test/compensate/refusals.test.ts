/* What compensate refuses, by the place in what it was given. */
import { describe, expect, it } from "vitest";
import { type Baseline, compensate } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { knowledge, known } from "./everyLaw.js";

describe("a refusal names the field", () => {
  const sources = { sources: 1 };
  it.each<[Partial<Baseline>, unknown, unknown, Error]>([
    [
      {},
      {},
      { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 201 } },
      new RangeError(
        "compensate: knowledge.temperature.activationEnergyKJPerMol must be from 0 to 200 kJ/mol, got 201",
      ),
    ],
    [
      {},
      { temperatureC: { startC: 20, ambientC: 20, timeConstantS: 9 } },
      { temperature: { ...knowledge.temperature, ...sources } },
      new TypeError("compensate: knowledge.temperature.sources must be an array, got 1"),
    ],
    [
      {},
      { dilution: "1+9" },
      { dilution: { ...knowledge.dilution, ...sources } },
      new TypeError("compensate: knowledge.dilution.sources must be an array, got 1"),
    ],
    [
      {},
      { dilution: "1+9" },
      { dilution: { kind: "power", exponent: 4 } },
      new RangeError("compensate: knowledge.dilution.exponent must be from 0 to 3, got 4"),
    ],
    [
      {},
      { agitation: "stand" },
      { agitation: { ...knowledge.agitation, ...sources } },
      new TypeError("compensate: knowledge.agitation.sources must be an array, got 1"),
    ],
    [
      {},
      { agitation: "stand" },
      { agitation: { staleLoss: 1, staleTimeS: 60 } },
      new RangeError("compensate: knowledge.agitation.staleLoss must be from 0 to 0.99, got 1"),
    ],
    [
      { agitation: { everyS: 0 } },
      { agitation: "stand" },
      {},
      new RangeError("compensate: baseline.agitation.everyS must be above 0 and at most 3600 s, got 0"),
    ],
    [
      {},
      { agitation: { everyS: 3601 } },
      {},
      new RangeError("compensate: conditions.agitation.everyS must be above 0 and at most 3600 s, got 3601"),
    ],
    [
      {},
      { usedCm2PerL: 1 },
      { use: { ...knowledge.use, ...sources } },
      new TypeError("compensate: knowledge.use.sources must be an array, got 1"),
    ],
    [
      {},
      { ageH: 1 },
      { age: { ...knowledge.age, ...sources } },
      new TypeError("compensate: knowledge.age.sources must be an array, got 1"),
    ],
    [
      {},
      { gamma: 0.7 },
      { growth: { ...knowledge.growth, ...sources } },
      new TypeError("compensate: knowledge.growth.sources must be an array, got 1"),
    ],
  ])("$3", (baseline, conditions, laws, error) => {
    expect(() => compensate({ ...known, ...baseline }, anyOf(conditions), anyOf(laws))).toThrow(error);
  });
});

describe("what the baseline says", () => {
  const where = "compensate: baseline.";
  it.each([
    [
      { dilution: "hello" },
      new RangeError(`${where}dilution must be a dilution such as "1+9" or "stock", got "hello"`),
    ],
    [{ agitation: 30 }, new TypeError(`${where}agitation must be an object, got 30`)],
    [{ usedCm2PerL: -1 }, new RangeError(`${where}usedCm2PerL must be from 0 to 1000000 cm²/l, got -1`)],
    [{ ageH: -1 }, new RangeError(`${where}ageH must be from 0 to 1000000 h, got -1`)],
    [{ gamma: 0 }, new RangeError(`${where}gamma must be above 0 and at most 1000, got 0`)],
  ])("is refused when it is nonsense, even where today does not ask for it: %j", (nonsense, error) => {
    expect(() =>
      compensate(anyOf({ timeS: 480, temperatureC: 20, ...nonsense }), { temperatureC: 18 }),
    ).toThrow(error);
  });
});
