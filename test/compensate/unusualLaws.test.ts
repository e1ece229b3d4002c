/*
 * Laws outside what was ever published: energies of 20 to 110 kJ/mol, and exponents of 0.2 to 2. A kilocalorie is
 * 4.184 kJ by definition, and 18 degrees Fahrenheit are 10 °C.
 */
import { describe, expect, it } from "vitest";
import {
  checkRecipe,
  compensate,
  genericUseLaw,
  handbookDevelopers,
  handbookTemperatureLaw,
  type Conditions,
  type Knowledge,
} from "../../src/index.js";

const known = { timeS: 510, temperatureC: 20, dilution: "1+9" };

function unusual(knowledge: Knowledge) {
  const changed = { temperatureC: 19, dilution: "1+10", usedCm2PerL: 1 };
  return compensate(known, changed, knowledge).cautions.filter(({ code }) => code === "law-unusual");
}

describe("a law that was handed in", () => {
  it.each<[string, Knowledge, object]>([
    [
      "an energy in kilocalories",
      { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 14 } },
      {
        path: "/knowledge/temperature/activationEnergyKJPerMol",
        limit: 20,
        actual: 14,
        quantity: "kJPerMol",
        data: { law: "temperature", reason: "maybe-kilocalories" },
      },
    ],
    [
      "an energy that no developer has",
      { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 150 } },
      {
        limit: 110,
        actual: 150,
        // exp(E/R·(1/288.15 − 1/298.15)).
        data: {
          law: "temperature",
          reason: "energy",
          over10C: { limit: expect.closeTo(4.6643, 4), actual: expect.closeTo(8.1656, 4) },
        },
      },
    ],
    [
      "a ratio over 18 degrees",
      { temperature: { kind: "coefficient", ratio: 1.8, intervalC: 18 } },
      {
        path: "/knowledge/temperature/intervalC",
        quantity: "temperatureDifferenceC",
        limit: 10,
        actual: 18,
      },
    ],
    [
      "an exponent of three",
      { dilution: { kind: "power", exponent: 3 } },
      { path: "/knowledge/dilution/exponent", limit: 2, actual: 3 },
    ],
    [
      "ten per cent, written as 10",
      { use: { increase: 10, perCm2PerL: 516, growth: "linear" } },
      {
        path: "/knowledge/use/increase",
        limit: 1,
        actual: 10,
        data: { law: "use", reason: "maybe-percent" },
      },
    ],
  ])("is named: %s", (_, knowledge, expected) => {
    expect(unusual(knowledge)).toEqual([expect.objectContaining({ severity: "warn", ...expected })]);
  });
  it("is not named within what was published, or when own runs taught it", () => {
    expect(
      unusual({ temperature: handbookTemperatureLaw("metol-hydroquinone"), use: genericUseLaw }),
    ).toEqual([]);
    expect(unusual({ temperature: { kind: "arrhenius", activationEnergyKJPerMol: 150, runs: 9 } })).toEqual(
      [],
    );
  });
  it("is not named when it comes from the handbook", () => {
    for (const developer of handbookDevelopers)
      expect(unusual({ temperature: handbookTemperatureLaw(developer) })).toEqual([]);
  });
  it("is named only where its condition has changed", () => {
    const knowledge: Knowledge = { temperature: { kind: "arrhenius", activationEnergyKJPerMol: 150 } };
    const named = (conditions: Conditions) =>
      compensate(known, conditions, knowledge).cautions.some(({ code }) => code === "law-unusual");
    expect(named({})).toBe(false);
    expect(named({ temperatureC: 20, dilution: "1+19" })).toBe(false);
    expect(named({ temperatureC: 19 })).toBe(true);
    expect(named({ temperatureC: { startC: 20, ambientC: 14, timeConstantS: 2700 } })).toBe(true);
  });
});

describe("a table of temperatures", () => {
  const table = (...temperaturesC: readonly number[]) =>
    ({
      kind: "table",
      rows: temperaturesC.map((temperatureC, i) => ({ temperatureC, timeS: 570 * 0.6 ** i })),
    }) as const;
  const doubts = (cautions: readonly { readonly code: string }[]) =>
    cautions.filter(({ code }) => code === "maybe-fahrenheit" || code === "law-unusual");
  const caution = {
    code: "maybe-fahrenheit",
    severity: "stop",
    path: "/knowledge/temperature/rows/1/temperatureC",
    quantity: "temperatureC",
    limit: 45,
    actual: 65,
    data: { celsius: 18.3 },
  };

  it("is asked about at its first row above 45 °C, and its time is refused", () => {
    const answer = compensate(known, { temperatureC: 24 }, { temperature: table(40, 65, 68, 75) });
    expect(answer.refused).toBe(true);
    expect(doubts(answer.cautions)).toEqual([expect.objectContaining(caution)]);
  });
  it("is asked about in a recipe", () => {
    const check = checkRecipe({
      schemaVersion: 2,
      material: { name: "film" },
      developer: { kind: "stock", name: "developer", dilution: "1+9" },
      baseline: { timeS: 510, temperatureC: 20 },
      knowledge: { temperature: table(40, 65, 68, 75) },
    });
    expect(check.ok && doubts(check.cautions)).toEqual([expect.objectContaining(caution)]);
  });
  it("is not asked about up to 45 °C", () => {
    expect(doubts(compensate(known, {}, { temperature: table(18, 24, 45) }).cautions)).toEqual([]);
  });
});
