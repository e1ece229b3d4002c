/*
 * A sweep over what the package works out: `sweep(library)` gives a flat list of named numbers, the same on every runtime and out of
 * every bundler. Plain calls over grids, written once; run.mjs makes a CommonJS copy of this file by its one export.
 */
export function sweep(library) {
  const numbers = {};
  /** Every number in an answer, by its path. */
  const keep = (name, value) => {
    if (typeof value === "number") numbers[name] = value;
    else if (typeof value === "object" && value !== null)
      for (const [key, part] of Object.entries(value)) keep(`${name}/${key}`, part);
  };
  const grid = (low, high, count) => Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));

  const table = {
    kind: "table",
    rows: [
      { temperatureC: 16, timeS: 720 },
      { temperatureC: 20, timeS: 510 },
      { temperatureC: 24, timeS: 365 },
    ],
  };
  const laws = [
    library.genericTemperatureLaw,
    { kind: "coefficient", ratio: 2.3, intervalC: 7 },
    table,
    ...library.handbookDevelopers.map((developer) => library.handbookTemperatureLaw(developer)),
  ];
  laws.forEach((law, l) => {
    for (const c of grid(0, 40, 41)) keep(`temperature/${l}/${c}`, library.temperatureFactor(20, c, law));
    const drift = { startC: 23.5, ambientC: 13.25, timeConstantS: 3100 };
    keep(`drift/${l}`, library.developUntil({ equivalentS: 510, referenceC: 20, temperatureAt: drift, law }));
    keep(`start/${l}`, library.startTemperatureFor({ timeS: 600, targetC: 20, ambientC: 14, timeConstantS: 3600, law }).startC);
    const log = grid(0, 700, 15).map((timeS, i) => ({ timeS, temperatureC: 21 - i * 0.37 }));
    keep(`equivalent/${l}`, library.equivalentTime(log, 20, law));
  });
  for (const n of grid(0, 60, 31)) keep(`dilution/${n}`, library.dilutionFactor("1+9", { stockParts: 1, waterParts: n }));
  for (const everyS of grid(1, 180, 37)) keep(`agitation/${everyS}`, library.agitationFactor("continuous", { everyS }));
  for (const area of grid(0, 6000, 25)) {
    keep(`use/${area}`, library.useFactor(0, area));
    keep(`compound/${area}`, library.useFactor(0, area, { increase: 0.07, perCm2PerL: 516.128, growth: "compound" }));
  }
  for (const ageH of grid(0, 48, 25)) {
    keep(`age/${ageH}`, library.ageFactor(0, ageH, { kind: "half-life", halfLifeH: 37 }));
    keep(`slowing/${ageH}`, library.ageFactor(0, ageH, { kind: "slowing", perRootH: 0.031 }));
    keep(`speeding/${ageH}`, library.ageFactor(0, ageH, { kind: "speeding", perDay: 0.17 }));
  }
  for (const stops of grid(-3, 5, 33)) keep(`push/${stops}`, library.pushFactor(stops));
  for (const gamma of grid(0.05, 1.75, 35)) {
    keep(`gamma/${gamma}`, library.timeForGamma(gamma));
    keep(`gammaAt/${gamma}`, library.gammaAt(400 * gamma));
    keep(`contrast/${gamma}`, library.contrastFactor(0.6, gamma));
  }

  // The main job over a grid of baths, and each cause's spread.
  const known = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 }, gamma: 0.6 };
  for (const temperatureC of grid(11, 29, 7))
    for (const dilution of ["1+4", "1+9", "1+19"])
      for (const usedCm2PerL of [0, 400, 1300])
        for (const gamma of [0.5, 0.6, 0.75]) {
          const today = { temperatureC, dilution, usedCm2PerL, ageH: 2.5, gamma, agitation: { everyS: 30 }, pushStops: 0.5 };
          const { timeS, lowS, highS, factors } = library.compensate(known, today);
          keep(`compensate/${temperatureC}/${dilution}/${usedCm2PerL}/${gamma}`, { timeS, lowS, highS, factors });
        }
  const columns = { temperatureC: Float64Array.from(grid(5, 30, 101)), usedCm2PerL: Float64Array.from(grid(0, 2000, 101)) };
  keep("columns", [...library.prepareCompensation(known).times(columns)]);
  keep("curve", library.temperatureCurve({ baseline: known, fromC: 12, toC: 28, points: 17 }));

  // Learning, and what to test next.
  const outcomes = [{ kind: "good" }, { kind: "thin" }, { kind: "steps", steps: -0.5 }, { kind: "judged", timeRatio: 0.93 }];
  const runs = grid(14, 26, 24).map((temperatureC, i) => ({
    timeS: 510 * Math.round(100 * Math.exp((20 - temperatureC) * 0.085)) * 0.01,
    temperatureC,
    dilution: ["1+9", "1+14"][i % 2],
    agitation: { everyS: [30, 60, 120][i % 3] },
    usedCm2PerL: 137 * (i % 5),
    outcome: outcomes[i % 4],
    id: String(i),
  }));
  const learned = library.learn(library.startKnowledge({ ...known, logSd: 0.15 }), runs);
  keep("learned", { parameters: learned.parameters, joint: learned.joint, scatter: learned.scatter });
  for (const temperatureC of grid(13, 27, 8)) keep(`predict/${temperatureC}`, library.predict(learned, { temperatureC, dilution: "1+19" }).timeS);
  const candidates = [{ temperatureC: 14 }, { dilution: "1+19" }, { usedCm2PerL: 1000 }];
  keep("next", library.nextTest(learned, candidates, { temperatureC: 13 }).map(({ expectedLogSd }) => expectedLogSd));

  // A run in progress.
  for (let n = 1; n <= 8; n += 1) {
    const log = grid(0, 350, 8).slice(0, n).map((timeS) => ({ timeS, temperatureC: 18 - timeS / 400 }));
    const { total, remaining } = library.steer({ baseline: known, conditions: { temperatureC: 18 }, log, ambientC: 14, vessel: "steel-tank-in-air" });
    keep(`steer/${n}`, { total, remaining });
  }

  // Brews.
  for (const sodaG of grid(5, 60, 12))
    for (const vitaminG of [0, 4, 16]) {
      const ingredients = [
        { ingredient: "instant-coffee", massG: 40 },
        { ingredient: "soda-anhydrous", massG: sodaG },
        ...(vitaminG > 0 ? [{ ingredient: "ascorbic-acid", massG: vitaminG }] : []),
      ];
      const brew = { volumeMl: 1000, ingredients, temperatureC: 18 };
      keep(`brew/${sodaG}/${vitaminG}`, [library.brewPh(brew), library.brewLife(brew).lifeH, library.brewCapacity(brew).cm2PerL]);
      const full = { volumeMl: 1000, ingredients: [ingredients[0], { ingredient: "soda-anhydrous", massG: 54 }] };
      keep(`strength/${sodaG}/${vitaminG}`, library.brewStrength(full, brew).value);
    }
  keep("proposed", library.proposeBrew({ shelf: ["instant-coffee", "soda-anhydrous", "ascorbic-acid"], volumeMl: 500, temperatureC: 14 }));

  // Fits, a plan, a chart.
  keep("fit", library.fitTemperatureLaw(table.rows).law);
  keep("growth", library.fitGrowth(grid(120, 1200, 7).map((timeS, i) => ({ timeS, gamma: library.gammaAt(timeS) * (1 + 0.01 * (i % 3)) }))).law);
  keep("bake", grid(90, 200, 12).map((temperatureC) => library.bakeTime({ temperatureC }).timeS));
  keep("plan", library.planProcess({ vessel: "tray", movement: "rock", timeS: 873.4, temperatureC: 17.3, volumeMl: 600 }));
  keep("chart", library.timeChart({ baseline: known, temperaturesC: grid(12, 28, 9), dilutions: ["1+4", "1+9"] }).rows);
  return numbers;
}
