import { describe, expect, it } from "vitest";
import {
  compensate,
  compensateRecipe,
  filmAreaCm2,
  planEvening,
  type EveningInput,
  type Recipe,
  type UseLaw,
} from "../../src/index.js";

// Invented: prints of 20 × 25 cm in a litre.
const print = { areaCm2: 500 };
const evening: EveningInput = {
  baseline: { timeS: 120, temperatureC: 20 },
  conditions: {},
  plates: Array.from({ length: 16 }, () => print),
  vessel: "tray",
  volumeMl: 1000,
  material: "paper",
};
const recipe: Recipe = {
  schemaVersion: 2,
  material: { name: "fibre paper", kind: "paper" },
  developer: { kind: "stock", name: "print developer", dilution: "1+9" },
  baseline: { timeS: 120, temperatureC: 20 },
  conditions: { usedCm2PerL: 7500 },
};
const ofUse = (answer: ReturnType<typeof compensate>) => answer.factors.find(({ cause }) => cause === "use")!;

// Silver coated: film 5 g/m², paper 1.6 (from memory), as for capacities.
const filmOf = (paperCm2: number): number => (paperCm2 * 1.6) / 5;

describe("a bath that has developed paper", () => {
  it("is worn as by film of the same silver", () => {
    const known = { timeS: 120, temperatureC: 20 };
    const asFilm = compensate(known, { temperatureC: 20, usedCm2PerL: filmOf(7500) });
    expect(compensateRecipe(recipe).timeS).toBeCloseTo(asFilm.timeS, 9);
    const { plates } = planEvening(evening);
    expect(plates).toHaveLength(16);
    expect(
      plates[15]!.answer.timeS / plates[15]!.answer.factors.find(({ cause }) => cause === "age")!.value,
    ).toBeCloseTo(asFilm.timeS, 0);
  });
  it("rests on the generic rule, and says that it is by the silver", () => {
    expect(ofUse(compensateRecipe(recipe))).toMatchObject({
      basis: "default",
      sources: ["generic rule over published ones for film, by the silver of paper"],
    });
  });
  it("is worn by a rule of its own where one is known", () => {
    const use: UseLaw = { increase: 0.1, perCm2PerL: filmAreaCm2("8x10in"), growth: "linear" };
    const [own, known] = [recipe, evening].map((one) => ({ ...one, knowledge: { use } })) as [
      Recipe,
      EveningInput,
    ];
    const factor = 1 + (0.1 * 7500) / filmAreaCm2("8x10in");
    expect(ofUse(compensateRecipe(own)).value).toBeCloseTo(factor, 9);
    expect(ofUse(planEvening(known).plates[1]!.answer).value).toBeCloseTo(1 + 50 / filmAreaCm2("8x10in"), 9);
  });
  it("is no other for plates and film: area counts as area", () => {
    const [film, plate] = (["film", "plate"] as const).map((kind) =>
      compensateRecipe({ ...recipe, material: { name: kind, kind }, conditions: { usedCm2PerL: 500 } }),
    );
    expect(ofUse(film!).value).toBe(ofUse(plate!).value);
    expect(ofUse(film!).value).toBe(
      compensate(recipe.baseline, { usedCm2PerL: 500 }).factors.find(({ cause }) => cause === "use")!.value,
    );
  });
});
