/*
 * Brews and generators for the tests of this module. The demo brew belongs to an invented weekend workshop in a
 * mountain hut with tap water of 14 °C.
 */
import fc from "fast-check";
import type { DeveloperBrew, BrewPart, WeighedPart } from "../../src/index.js";
import { bathOf } from "../../src/brew/bath.js";
import { readBrew } from "../../src/brew/brew.js";
import { constantsAt } from "../../src/brew/constants.js";
import { solveBath, type Solution } from "../../src/brew/equilibrium.js";

export const part = (ingredient: WeighedPart["ingredient"], massG: number): WeighedPart => ({
  ingredient,
  massG,
});

/** Invented: the workshop's brew in 400 ml of hut water. */
export const hutBrew: DeveloperBrew = {
  volumeMl: 400,
  temperatureC: 14,
  ingredients: [part("soda-anhydrous", 22), part("instant-coffee", 16), part("ascorbic-acid", 6)],
};

/** Half a litre of the same kind, good for 3 h, which may fail from 1 h 30 min on. */
export const halfLitre: DeveloperBrew = {
  volumeMl: 500,
  ingredients: [part("soda-anhydrous", 27), part("instant-coffee", 20), part("ascorbic-acid", 8)],
};

export const brewOf = (...ingredients: readonly BrewPart[]): DeveloperBrew => ({
  volumeMl: 1000,
  ingredients,
});

export function solve(brew: DeveloperBrew): Solution {
  const { parts, volumeMl, temperatureC } = readBrew("test: brew", brew);
  return solveBath(bathOf(parts, volumeMl), constantsAt(temperatureC));
}

const INGREDIENTS = [
  "instant-coffee",
  "decaffeinated-coffee",
  "brewed-coffee",
  "ascorbic-acid",
  "sodium-ascorbate",
  "soda-anhydrous",
  "soda-monohydrate",
  "soda-heptahydrate",
  "soda-decahydrate",
  "baking-soda",
  "borax",
  "trisodium-phosphate",
  "sodium-hydroxide",
  "sodium-sulphite",
  "potassium-bromide",
  "table-salt",
  "iodised-salt",
  "potassium-carbonate",
  "citric-acid",
] as const satisfies readonly WeighedPart["ingredient"][];

const massG = fc.oneof(fc.double({ min: 1e-9, max: 120, noNaN: true }), fc.constantFrom(1e-9, 0.001, 120));

/** Any weighed brew of up to eight parts in a litre, from traces to a syrup, at any allowed temperature. */
export const anyBrew: fc.Arbitrary<DeveloperBrew> = fc.record({
  volumeMl: fc.constant(1000),
  temperatureC: fc.oneof(fc.double({ min: 0, max: 50, noNaN: true }), fc.constantFrom(0, 50)),
  ingredients: fc.array(fc.record({ ingredient: fc.constantFrom(...INGREDIENTS), massG }), {
    minLength: 1,
    maxLength: 8,
  }),
});

/** A brew that can develop: soda, vitamin C and coffee. */
export const sensibleBrew: fc.Arbitrary<DeveloperBrew> = fc
  .record({
    soda: fc.double({ min: 5, max: 120, noNaN: true }),
    coffee: fc.double({ min: 5, max: 80, noNaN: true }),
    ascorbic: fc.double({ min: 1, max: 30, noNaN: true }),
    temperatureC: fc.double({ min: 0, max: 50, noNaN: true }),
  })
  .map(({ soda, coffee, ascorbic, temperatureC }) => ({
    volumeMl: 1000,
    temperatureC,
    ingredients: [
      part("soda-anhydrous", soda),
      part("instant-coffee", coffee),
      part("ascorbic-acid", ascorbic),
    ],
  }));
