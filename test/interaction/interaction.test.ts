/* Temperature and dilution together. All times are invented, but for the printed pairs. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  dilutionFamilies,
  effect,
  genericDilutionLaw,
  genericInteractionLaw,
  genericTemperatureLaw,
  handbookDevelopers,
  handbookDilutionLaw,
  handbookTemperatureLaw,
  learn,
  predict,
  prepareCompensation,
  startKnowledge,
  type Baseline,
} from "../../src/index.js";
import { stockAndHalfPairs } from "../accuracy/priors.js";
import { anyOf } from "../helpers.js";
import { fc, test } from "../property.js";

const baseline: Baseline = { timeS: 510, temperatureC: 20, dilution: "1+9" };
const R = 8.314462618e-3;
const warmth = (c: number): number => (1 / (c + 273.15) - 1 / 293.15) / R;
const codes = (conditions: object): readonly string[] =>
  compensate(baseline, conditions).factors.map(({ cause }) => cause);

describe("the interaction of temperature and dilution", () => {
  it("is -12 ± 25 kJ/mol for each halving of the concentration, in a row of its own", () => {
    const row = compensate(baseline, { temperatureC: 14, dilution: "1+19" }).factors.at(-1)!;
    expect(row).toMatchObject({ cause: "interaction", basis: "default" });
    expect(Math.log(row.value)).toBeCloseTo(-12 * warmth(14), 12);
    expect(row.logSd).toBeCloseTo(25 * warmth(14), 12);
  });
  it("is there only where both differ from the known time", () => {
    expect(codes({ temperatureC: 14 })).not.toContain("interaction");
    expect(codes({ dilution: "1+19" })).not.toContain("interaction");
    expect(codes({ temperatureC: 20, dilution: "1+19" })).not.toContain("interaction");
    expect(codes({ temperatureC: 14, dilution: "1+9" })).not.toContain("interaction");
  });
  it("takes a law, and its spread", () => {
    const interaction = { perHalvingKJPerMol: -14, sdKJPerMol: 5, sources: ["own table"] };
    const row = compensate(baseline, { temperatureC: 14, dilution: "1+39" }, { interaction }).factors.at(-1)!;
    expect(row).toMatchObject({ basis: "given", sources: ["own table"] });
    expect(Math.log(row.value)).toBeCloseTo(-14 * 2 * warmth(14), 12);
    expect(row.logSd).toBeCloseTo(5 * 2 * warmth(14), 12);
    const wrong = { interaction: { perHalvingKJPerMol: -120 } };
    expect(() => compensate(baseline, {}, wrong)).toThrow(
      expect.objectContaining({ path: "/knowledge/interaction/perHalvingKJPerMol" }),
    );
  });
  it("is held beyond two halvings", () => {
    const far = effect(
      "interaction",
      { temperatureC: 20, dilution: "1+9" },
      { temperatureC: 14, dilution: "1+999" },
    );
    expect(Math.log(far.factor)).toBeCloseTo(-24 * warmth(14), 12);
  });
  it("gives the same to the last bit when prepared, alone and in columns", () => {
    const ask = prepareCompensation(baseline);
    const conditions = { temperatureC: 14, dilution: "1+19" };
    const { timeS } = compensate(baseline, conditions);
    expect(ask.timeS(conditions)).toBe(timeS);
    const columns = { temperatureC: Float64Array.of(14, 20), waterParts: Float64Array.of(19, 19) };
    expect([...ask.times(columns)]).toEqual([
      expect.closeTo(timeS, 9),
      expect.closeTo(compensate(baseline, { dilution: "1+19" }).timeS, 9),
    ]);
    const one = { temperatureC: Float64Array.of(14) };
    expect(ask.times(one)[0]).toBe(compensate(baseline, { temperatureC: 14 }).timeS);
  });
  it("acts along a bath that drifts: as at its temperature where it stands still", () => {
    const still = [14, 14].map((temperatureC, i) => ({ timeS: 1e5 * i, temperatureC }));
    const steady = compensate(baseline, { temperatureC: 14, dilution: "1+19" });
    const along = compensate(baseline, { temperatureC: still, dilution: "1+19" });
    expect(along.timeS).toBeCloseTo(steady.timeS, 6);
    expect(along.factors.at(-1)!.logSd).toBeCloseTo(steady.factors.at(-1)!.logSd, 9);
    const falling = [
      { timeS: 0, temperatureC: 16 },
      { timeS: 900, temperatureC: 12 },
    ];
    const row = compensate(baseline, { temperatureC: falling, dilution: "1+19" }).factors.at(-1)!;
    expect(row.cause).toBe("interaction");
    expect(Math.log(row.value)).toBeLessThan(-12 * warmth(16));
    expect(compensate(baseline, { temperatureC: falling }).factors.at(-1)!.cause).toBe("temperature");
  });
  it("is an effect by its name", () => {
    const from = { temperatureC: 20, dilution: "1+9" };
    const to = { temperatureC: 14, dilution: "1+19" };
    const { factor, logSd } = effect("interaction", from, to);
    const row = compensate(baseline, to).factors.at(-1)!;
    expect([factor, logSd]).toEqual([row.value, row.logSd]);
    expect(effect("interaction", from, to, { perHalvingKJPerMol: 0 }).factor).toBe(1);
    expect(() => effect("interaction", anyOf({ temperatureC: 20 }), to)).toThrow(
      expect.objectContaining({ path: "/from/dilution" }),
    );
  });
  it("is learned from runs in which both differ", () => {
    const start = startKnowledge(baseline, { noise: "stated" });
    const runs = (
      [
        [20, "1+9", 510],
        [14, "1+9", 850],
        [20, "1+19", 860],
        [14, "1+19", 1200],
      ] as const
    ).map(([temperatureC, dilution, timeS]) => ({
      timeS,
      temperatureC,
      dilution,
      outcome: { kind: "good", logSd: 0.03 } as const,
    }));
    const known = learn(start, runs);
    // ln(1200·510/(850·860)) over the warmth is what the four say, -29 kJ/mol.
    const said = Math.log((1200 * 510) / (850 * 860)) / warmth(14);
    const law = known.interaction!;
    expect(law.runs).toBe(1);
    expect(law.perHalvingKJPerMol).toBeGreaterThan(said);
    expect(law.perHalvingKJPerMol).toBeLessThan(-12);
    expect(law.sdKJPerMol).toBeLessThan(12);
    const where = { temperatureC: 15, dilution: "1+24" };
    expect(predict(known, where)).toEqual(compensate(known.baseline, where, known));
    expect(predict(JSON.parse(JSON.stringify(known)), where)).toEqual(predict(known, where));
  });
  it.each(stockAndHalfPairs)(
    "has the sign of print, and the pair in its 90 % interval: $name",
    ({ changeKJ }) => {
      const { perHalvingKJPerMol, sdKJPerMol } = genericInteractionLaw;
      expect(changeKJ).toBeLessThan(0);
      expect(perHalvingKJPerMol).toBeLessThan(0);
      expect(Math.abs(changeKJ - perHalvingKJPerMol)).toBeLessThan(1.6449 * sdKJPerMol!);
    },
  );
});

describe("the bound of the interaction", () => {
  const temperatureLaws = [
    genericTemperatureLaw,
    ...handbookDevelopers.map((one) => handbookTemperatureLaw(one)),
  ];
  const dilutionLaws = [genericDilutionLaw, ...dilutionFamilies.map((one) => handbookDilutionLaw(one))];
  const knownC = fc.double({ min: 10, max: 30, noNaN: true });
  const todayC = fc.double({ min: 0, max: 45, noNaN: true });
  const water = fc.double({ min: 0, max: 200, noNaN: true });
  const laws = fc.record({
    temperature: fc.constantFrom(...temperatureLaws),
    dilution: fc.constantFrom(...dilutionLaws),
    interaction: fc.option(
      fc.record({ perHalvingKJPerMol: fc.double({ min: -100, max: 100, noNaN: true }) }),
      { nil: undefined },
    ),
  });
  const bath = (waterParts: number) => ({ stockParts: 1, waterParts });
  test.prop([knownC, water, todayC, todayC, water, water, laws])(
    "leaves the warmer bath the faster one, and the weaker bath the slower one",
    (fromC, fromWater, oneC, otherC, oneWater, otherWater, knowledge) => {
      const known = { timeS: 510, temperatureC: fromC, dilution: bath(fromWater) };
      const ask = prepareCompensation(known, knowledge);
      const timeS = (temperatureC: number, waterParts: number): number =>
        ask.timeS({ temperatureC, dilution: bath(waterParts) });
      const [cold, warm] = [Math.min(oneC, otherC), Math.max(oneC, otherC)];
      const [strong, weak] = [Math.min(oneWater, otherWater), Math.max(oneWater, otherWater)];
      const hair = 1 + 1e-12;
      expect(timeS(warm, weak)).toBeLessThanOrEqual(timeS(cold, weak) * hair);
      expect(timeS(warm, strong)).toBeLessThanOrEqual(timeS(cold, strong) * hair);
      expect(timeS(warm, strong)).toBeLessThanOrEqual(timeS(warm, weak) * hair);
      expect(timeS(cold, strong)).toBeLessThanOrEqual(timeS(cold, weak) * hair);
    },
  );
  it("takes away at most half of what temperature does", () => {
    const known = { timeS: 510, temperatureC: 20, dilution: "1+4" };
    const knowledge = { temperature: handbookTemperatureLaw("metol") };
    const [t27, t20, t14] = [27, 20, 14].map(
      (temperatureC) => compensate(known, { temperatureC, dilution: "1+19" }, knowledge).timeS,
    );
    expect(t14! / t20!).toBeCloseTo(1.25 ** 0.3, 9);
    expect(t27! / t20!).toBeCloseTo(1.25 ** -0.35, 9);
  });
  it("takes away at most half of what dilution does", () => {
    const known = { timeS: 510, temperatureC: 25, dilution: "1+1" };
    const dilution = { kind: "power", exponent: 0.4 } as const;
    const [strong, weak] = ["1+1", "1+3"].map(
      (today) => compensate(known, { temperatureC: 1, dilution: today }, { dilution }).timeS,
    );
    expect(weak! / strong!).toBeCloseTo(2 ** 0.2, 9);
  });
  it("is the same along a drift, in columns and to the last bit alone", () => {
    const known = { timeS: 510, temperatureC: 20, dilution: "1+4" };
    const knowledge = { temperature: handbookTemperatureLaw("metol") };
    const ask = prepareCompensation(known, knowledge);
    const day = { temperatureC: 14, dilution: "1+19" };
    const { timeS } = ask.compensate(day);
    expect(ask.timeS(day)).toBe(timeS);
    const columns = { temperatureC: Float64Array.of(14), waterParts: Float64Array.of(19) };
    expect(ask.times(columns)[0]).toBeCloseTo(timeS, 9);
    const still = [14, 14].map((temperatureC, i) => ({ timeS: 1e5 * i, temperatureC }));
    expect(ask.compensate({ ...day, temperatureC: still }).timeS).toBeCloseTo(timeS, 6);
  });
});
