/*
 * Laws outside what was ever published: energies of 20 to 110 kJ/mol, and exponents of 0.2 to 2. A kilocalorie is
 * 4.184 kJ by definition, and 18 degrees Fahrenheit are 10 °C.
 */
import { describe, expect, it } from "vitest";
import { compensate, genericUseLaw, handbookTemperatureLaw, type Knowledge } from "../../src/index.js";

const known = { timeS: 510, temperatureC: 20, dilution: "1+9" };

function unusual(knowledge: Knowledge) {
  return compensate(known, {}, knowledge).cautions.filter(({ code }) => code === "law-unusual");
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
      { limit: 110, actual: 150, data: { law: "temperature", reason: "energy" } },
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
});
