/* Benchmarks of the recipe and process rooms: the check of usual recipes, and the refusal of a megabyte. Ratios are measured over limit. */
import { checkRecipe, planProcess } from "darkroom-kinetics";
import { nanosecondsPerCall } from "./measure.mjs";

const stock = {
  schemaVersion: 2,
  material: { name: "sheet film", kind: "film", areaCm2: 103 },
  developer: {
    kind: "stock",
    name: "p-aminophenol stock",
    dilution: "1+50",
    volumeMl: 500,
    family: "p-aminophenol",
  },
  baseline: { timeS: 660, temperatureC: 20 },
  agitation: { everyS: 60 },
  conditions: { temperatureC: 18 },
  knowledge: { temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } },
  baths: { stop: {}, fix: { clearingS: 45, times: 3 }, wash: {} },
  notes: ["Invented for this benchmark."],
};
const brew = {
  ...stock,
  developer: {
    kind: "brew",
    brew: {
      volumeMl: 500,
      ingredients: [
        { ingredient: "instant-coffee", massG: 20 },
        { ingredient: "soda-anhydrous", massG: 27 },
        { ingredient: "ascorbic-acid", massG: 8 },
      ],
    },
  },
};

export default async function recipe(report) {
  const checks = (document) => (calls) => {
    let sum = 0;
    for (let i = 0; i < calls; i += 1) sum += checkRecipe(document).cautions.length;
    return sum;
  };
  const within = (name, limitNs, loop, calls, rounds) => {
    const ns = nanosecondsPerCall(loop, calls, rounds);
    report({
      name,
      ratio: ns / limitNs,
      limit: 1,
      note: `${(ns / 1000).toFixed(1)} µs of ${limitNs / 1000} µs`,
    });
  };
  within("checkRecipe, a stock recipe, of 100 µs", 1e5, checks(stock), 2000, 15);
  within("checkRecipe, a recipe from the kitchen, of 100 µs", 1e5, checks(brew), 1000, 15);

  const refusal = (document) => () => (checkRecipe(document).ok ? NaN : 1);
  let deep = {};
  for (let i = 0; i < 100_000; i += 1) deep = { material: deep };
  const fields = Object.fromEntries(Array.from({ length: 90_000 }, (_, i) => [`f${i}`, 1]));
  within("refusal of 90,000 unknown fields, of 50 ms", 5e7, refusal({ ...stock, ...fields }), 1, 9);
  within(
    "refusal of 500,000 notes, of 50 ms",
    5e7,
    refusal({ ...stock, notes: Array(500_000).fill(1) }),
    1,
    9,
  );
  within("refusal of text of a megabyte, of 50 ms", 5e7, refusal("[".repeat(1e6)), 1, 9);
  within("refusal of a depth of 100,000, of 5 ms", 5e6, refusal(deep), 1, 9);

  const plans = (calls) => {
    let sum = 0;
    for (let i = 0; i < calls; i += 1)
      sum += planProcess({ vessel: "tank", timeS: 510 + (i % 10), temperatureC: 20, volumeMl: 500 }).totalS;
    return sum;
  };
  within("planProcess, of 100 µs", 1e5, plans, 2000, 15);
}
