/* The lists that an app fills its menus from: each name is taken where it is asked for, and no other. */
import { describe, expect, it } from "vitest";
import {
  appearanceAgents,
  brewCapacity,
  brewMaterials,
  dilutionFamilies,
  driftVessels,
  fixerKinds,
  handbookAppearanceFactor,
  handbookDevelopers,
  handbookDilutionLaw,
  handbookTemperatureLaw,
  handbookUseLaw,
  handbookVessel,
  isInputError,
  leastStockFamilies,
  movements,
  paperBases,
  planProcess,
  safelightCautions,
  sensitizations,
  stockCautions,
  stopKinds,
  useDevelopers,
  vessels,
  washMethods,
  type DeveloperBrew,
  type ProcessInput,
} from "../src/index.js";
import { anyOf } from "./helpers.js";

// Invented: a run in a mountain hut, and a brew for it.
const hut: ProcessInput = { vessel: "tank", timeS: 510, temperatureC: 20 };
const brew: DeveloperBrew = {
  volumeMl: 500,
  ingredients: [
    { ingredient: "ascorbic-acid", massG: 8 },
    { ingredient: "soda-anhydrous", massG: 20 },
  ],
};
const plan = (more: object): unknown => planProcess({ ...hut, ...more });

const menus: readonly (readonly [string, readonly string[], (name: string) => unknown])[] = [
  ["handbookDevelopers", handbookDevelopers, (name) => handbookTemperatureLaw(anyOf(name))],
  ["dilutionFamilies", dilutionFamilies, (name) => handbookDilutionLaw(anyOf(name))],
  [
    "leastStockFamilies",
    leastStockFamilies,
    (family) => stockCautions(anyOf({ dilution: "1+9", totalMl: 300, areaCm2: 500, family })),
  ],
  ["useDevelopers", useDevelopers, (name) => handbookUseLaw(anyOf(name))],
  ["driftVessels", driftVessels, (name) => handbookVessel(anyOf(name))],
  ["appearanceAgents", appearanceAgents, (name) => handbookAppearanceFactor(anyOf(name))],
  ["sensitizations", sensitizations, (name) => safelightCautions(anyOf(name))],
  ["sensitizations", sensitizations, (sensitization) => plan({ sensitization })],
  ["brewMaterials", brewMaterials, (material) => brewCapacity(brew, anyOf({ material }))],
  ["brewMaterials", brewMaterials, (material) => plan({ material })],
  ["vessels", vessels, (vessel) => plan({ vessel })],
  // A tank is inverted or turned, a tray rocked or shuffled.
  [
    "movements",
    movements,
    (movement) => plan({ vessel: movement === "rock" || movement === "shuffle" ? "tray" : "tank", movement }),
  ],
  ["stopKinds", stopKinds, (kind) => plan({ baths: { stop: { kind } } })],
  ["fixerKinds", fixerKinds, (kind) => plan({ baths: { fix: { kind } } })],
  ["washMethods", washMethods, (method) => plan({ baths: { wash: { method } } })],
  ["paperBases", paperBases, (paperBase) => plan({ material: "paper", paperBase })],
];

describe("the lists for menus", () => {
  it.each(menus)("%s: every name is taken, and no other", (menu, names, take) => {
    expect(names.length).toBeGreaterThan(1);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(() => take(name), name).not.toThrow();
    let refused: unknown;
    try {
      take("soup");
    } catch (error) {
      refused = error;
    }
    if (!isInputError(refused)) throw new Error("soup was taken");
    expect(refused.code).toBe("not-one-of");
    // Of the movements, those that suit the vessel.
    if (menu === "movements") expect(refused.expected.values).toEqual(["invert", "turn"]);
    else expect(refused.expected.values).toEqual(names);
  });
  it.each(menus)("%s is frozen", (_, names) => {
    expect(Object.isFrozen(names)).toBe(true);
    expect(() => (names as string[]).push("soup")).toThrow(TypeError);
  });
});
