/*
 * Speed of the brew module, in the built package: one case a line, the best of several batches, since a laptop
 * does other things too.
 */
import { brewPh, brewStrength, checkBrew, handbookIngredients } from "darkroom-kinetics";

const brew = {
  volumeMl: 400,
  temperatureC: 14,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 22 },
    { ingredient: "instant-coffee", massG: 16 },
    { ingredient: "ascorbic-acid", massG: 6 },
  ],
};
const reference = { ...brew, volumeMl: 450 };

/** All 20 ingredients of the handbook, spooned where they can be: each range is two more equilibria. */
const cupboard = {
  volumeMl: 1000,
  ingredients: Object.keys(handbookIngredients).map((ingredient) =>
    ingredient === "ascorbic-acid-tablet"
      ? { ingredient, tablets: 4, labelMg: 500 }
      : { ingredient, massG: 10, lowG: 6, highG: 16 },
  ),
};

/**
 * Microseconds a call, the best of 200 batches of some calls after warming up: a batch is short enough to run
 * undisturbed now and then.
 */
function microseconds(call, calls) {
  for (let i = 0; i < 100 * calls; i += 1) call();
  let best = Infinity;
  for (let batch = 0; batch < 200; batch += 1) {
    const start = performance.now();
    for (let i = 0; i < calls; i += 1) call();
    best = Math.min(best, ((performance.now() - start) * 1000) / calls);
  }
  return best;
}

export default async function brewBench(report) {
  const cases = [
    ["brewPh, weighed brew", () => brewPh(brew), 50],
    ["brewPh, 20 spooned ingredients", () => brewPh(cupboard), 2000, 2],
    ["checkBrew", () => checkBrew(brew), 200],
    ["brewStrength", () => brewStrength(reference, brew), 200],
  ];
  for (const [name, call, allowed, calls = 40] of cases) {
    const measured = microseconds(call, calls);
    report({
      name,
      ratio: measured / allowed,
      limit: 1,
      note: `${measured.toFixed(1)} µs of ${allowed} µs allowed`,
    });
  }
}
