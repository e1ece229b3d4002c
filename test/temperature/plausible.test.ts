/* What a temperature law can plausibly be. */
import { describe, expect, it } from "vitest";
import { handbookTemperature } from "../../src/handbook/temperature.js";
import { handbookTemperatureLaw, genericTemperatureLaw, type HandbookDeveloper } from "../../src/index.js";
import { unusualTemperatureLaw } from "../../src/temperature/plausible.js";
import { autochromeFactors, timeTables } from "../reference/temperature.js";

const arrhenius = (activationEnergyKJPerMol: number) =>
  ({ kind: "arrhenius", activationEnergyKJPerMol }) as const;
const coefficient = (ratio: number, intervalC: number) =>
  ({ kind: "coefficient", ratio, intervalC }) as const;
const table = (...rows: readonly (readonly [temperatureC: number, timeS: number])[]) =>
  ({ kind: "table", rows: rows.map(([temperatureC, timeS]) => ({ temperatureC, timeS })) }) as const;

describe("unusualTemperatureLaw", () => {
  it.each([
    ["20 kJ/mol", arrhenius(20)],
    ["110 kJ/mol", arrhenius(110)],
    ["the generic law", genericTemperatureLaw],
    ["a doubling over 10 °C", coefficient(2, 10)],
    ["two equal neighbouring rows, whose step is rounded away", table([20, 390], [21.1, 390])],
    ["a steep step between two near rows", table([20, 420], [20.5, 390])],
  ])("says nothing of %s", (_name, law) => {
    expect(unusualTemperatureLaw(law)).toBeUndefined();
  });
  it.each([
    ["an energy above all published", arrhenius(200), "energy", 110, 200],
    ["an energy of nothing", arrhenius(0), "energy", 20, 0],
    // 60 kJ/mol are 14.3 kcal/mol.
    ["a figure that looks like kilocalories", arrhenius(14.3), "maybe-kilocalories", 20, 14.3],
    // 10 °C are 18 °F.
    ["an interval of 18, which is 10 °C in °F", coefficient(2, 18), "maybe-fahrenheit", 10, 18],
    // 50 % for each degree: R ln(1.5^10)/(1/288.15 − 1/298.15).
    ["a ratio that no developer has", coefficient(1.5, 1), "energy", 110, 289.6],
    ["times that hardly move over 12 °C", table([12, 400], [24, 395]), "energy", 20, 0.745],
  ] as const)("names %s", (_name, law, reason, limit, actual) => {
    const found = unusualTemperatureLaw(law)!;
    expect(found).toMatchObject({ reason, limit });
    expect(found.actual).toBeCloseTo(actual, 1);
    const path = { arrhenius: "/activationEnergyKJPerMol", coefficient: "/ratio", table: "/rows" }[law.kind];
    expect(found.path).toBe(reason === "maybe-fahrenheit" ? "/intervalC" : path);
  });
  it("says nothing of any published table", () => {
    for (const { unit, rows } of timeTables)
      expect(
        unusualTemperatureLaw(
          table(
            ...rows.map(
              (row) =>
                [unit === "F" ? (row.temperature - 32) / 1.8 : row.temperature, row.minutes * 60] as const,
            ),
          ),
        ),
      ).toBeUndefined();
    expect(
      unusualTemperatureLaw(
        table(...autochromeFactors.rows.map((row) => [row.temperatureC, row.factor * 150] as const)),
      ),
    ).toBeUndefined();
  });
  it("says nothing of the handbook but of the lowest ratio in the remembered lists", () => {
    const names = (Object.keys(handbookTemperature) as HandbookDeveloper[]).filter(
      (developer) => unusualTemperatureLaw(handbookTemperatureLaw(developer)) !== undefined,
    );
    // 1.25 over 10 °C is 16 kJ/mol.
    expect(names).toEqual(["metol"]);
  });
});
