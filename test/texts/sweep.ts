/* Cautions as the package gives them: calls that together provoke every code. All data are invented. */
import {
  bakeProgress,
  bakeTime,
  bakeYield,
  bathCapacity,
  bathVerdict,
  brewStrength,
  checkBrew,
  combineEstimates,
  compensate,
  handbookAppearanceFactor,
  isoSpeed,
  learn,
  logCautions,
  massOf,
  spoonsFor,
  planEvening,
  planProcess,
  planRecipe,
  predict,
  proposeBrew,
  readRunNotes,
  pushCautions,
  remainingTime,
  replaceDevelopment,
  safelightCautions,
  startKnowledge,
  steer,
  stockCautions,
  strengthFromScrap,
  temperatureCautions,
  type Caution,
} from "../../src/index.js";

const known = { timeS: 600, temperatureC: 20, dilution: "1+9" } as const;
const found: Caution[] = [];
const add = (...lists: readonly (readonly Caution[])[]): void => {
  for (const list of lists) found.push(...list);
};
const answer = (baseline: object, conditions: object, laws: object = {}): void => {
  add(compensate({ ...known, ...baseline }, conditions, laws).cautions);
};

// times, laws and the bath
answer({ timeS: 40 }, {});
answer({ timeS: 7000 }, { temperatureC: 12, xyz: 1, temperature: 20 });
answer({}, { temperatureC: 5, dilution: "1+30", usedCm2PerL: 900, ageH: 5 });
for (const energy of [5, 15, 150])
  answer({}, { temperatureC: 19 }, { temperature: { kind: "arrhenius", activationEnergyKJPerMol: energy } });
answer({}, { temperatureC: 19 }, { temperature: { kind: "coefficient", ratio: 2, intervalC: 18 } });
answer({}, { dilution: "1+10" }, { dilution: { kind: "power", exponent: 2.5 } });
for (const increase of [0.9, 2])
  answer({}, { usedCm2PerL: 10 }, { use: { increase, perCm2PerL: 500, growth: "linear" } });
const rows = [
  { temperatureC: 18, timeS: 720 },
  { temperatureC: 22, timeS: 500 },
];
answer({}, { temperatureC: 26 }, { temperature: { kind: "table", rows } });
answer(
  {},
  { dilution: "1+19" },
  {
    dilution: {
      kind: "power",
      exponent: 0.1,
      departures: [
        { at: -3, log: 0, sd: 0 },
        { at: -2.3, log: 0.5, sd: 0.1 },
      ],
    },
  },
);
const diluted = [
  { dilution: "1+9", timeS: 600 },
  { dilution: "1+14", timeS: 800 },
];
answer({}, { dilution: "1+20" }, { dilution: { kind: "table", rows: diluted } });
answer({ agitation: { everyS: 30 } }, { agitation: "stand" });
answer({ agitation: "stand" }, {});
answer({ agitation: { everyS: 30 } }, { agitation: { everyS: 300 } });
answer({ gamma: 0.6 }, { gamma: 1.7 });
answer({ gamma: 0.6 }, { gamma: 0.02 });
answer({}, { temperatureC: 2 });
answer({}, { temperatureC: 68 });
answer({ hydroquinone: true }, { temperatureC: 12 });
answer({ hydroquinone: true }, { temperatureC: 15 });
answer({ emulsion: "soft" }, { temperatureC: 22 });
answer({ emulsion: "soft" }, { temperatureC: 26 });
answer(
  {},
  {
    temperatureC: [
      { timeS: 0, temperatureC: 19 },
      { timeS: 60, temperatureC: 19.5 },
    ],
  },
);
for (const ageH of [9.9, 11]) answer({}, { ageH }, { age: { kind: "life", lifeH: 10 } });
answer({}, { ageH: 87_600 });
answer({ timeS: 3000 }, { ageH: 9.4 }, { age: { kind: "life", lifeH: 10 } });
for (const ageH of [4.9, 5.1]) answer({}, { ageH }, { age: { kind: "life", lifeH: 10, lowH: 5 } });
add(bathVerdict({ usedCm2PerL: 90_000, ageH: 900, keepingLimitH: 10, capacityCm2PerL: 500 }).cautions);
add(bathVerdict({ usedCm2PerL: 80_000 }).cautions, bathVerdict({ usedCm2PerL: 1500, ageH: 3 }).cautions);
add(
  bathCapacity({
    volumeMl: 100,
    areaCm2: 2000,
    material: "plate",
    vessel: "tray",
    dilution: "1+50",
    capacityCm2PerL: 600,
  } as never).cautions,
);
const weak = {
  volumeMl: 500,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 20 },
    { ingredient: "instant-coffee", massG: 1 },
  ],
};
add(bathCapacity({ volumeMl: 500, areaCm2: 90_000, brew: weak } as never).cautions);
add(stockCautions({ dilution: "1+99", totalMl: 300, areaCm2: 516, leastMlPerRoll: 10 }));
add(logCautions([0, 10, 400].map((timeS) => ({ timeS, temperatureC: 20 }))));
add(
  remainingTime({
    targetS: 100,
    referenceC: 20,
    log: [
      { timeS: 0, temperatureC: 20 },
      { timeS: 300, temperatureC: 20 },
    ],
  }).cautions,
);
for (const stops of [4, 1, -3]) add(pushCautions(stops));
const curve = [
  [-3, 0.1],
  [-2.5, 0.15],
  [-2, 0.45],
  [-1.5, 0.95],
  [-1, 1.4],
  [-0.5, 1.9],
];
add(isoSpeed(curve.map(([logH, density]) => ({ logH: logH!, density: density! }))).cautions);
for (const light of ["blue-sensitive", "orthochromatic", "panchromatic"] as const)
  add(safelightCautions(light));
add(combineEstimates({ timeS: 400, lowS: 380, highS: 420 }, { timeS: 700, lowS: 660, highS: 740 }).cautions);
add(handbookAppearanceFactor("pyro", { strengthGPerL: 29 }).cautions);
for (const c of [2, 15, 30, 60]) add(temperatureCautions(c));

// brews
type Part = readonly [ingredient: string, massG: number];
const brew = (parts: readonly Part[], more: object = {}): never =>
  ({
    volumeMl: 500,
    ...more,
    ingredients: parts.map(([ingredient, massG]) => ({ ingredient, massG })),
  }) as never;
const right: readonly Part[] = [
  ["soda-anhydrous", 27],
  ["instant-coffee", 20],
  ["ascorbic-acid", 8],
];
add(checkBrew(brew(right)), checkBrew(brew([["borax", 5]])), checkBrew(brew([["instant-coffee", 20]])));
add(
  checkBrew(
    brew([
      ["ascorbic-acid", 8],
      ["soda-anhydrous", 27],
    ]),
  ),
  checkBrew(
    brew([
      ["instant-coffee", 20],
      ["soda-anhydrous", 27],
    ]),
  ),
);
add(
  checkBrew(
    brew([
      ["baking-soda", 27],
      ["decaffeinated-coffee", 20],
      ["brewed-coffee", 50],
    ]),
  ),
);
add(
  checkBrew(
    brew([
      ["baking-soda", 20],
      ["soda-anhydrous", 1],
      ["instant-coffee", 20],
    ]),
  ),
);
add(
  checkBrew(
    brew([
      ["sodium-hydroxide", 60],
      ["instant-coffee", 20],
      ["sodium-sulphite", 20],
    ]),
  ),
);
add(
  checkBrew(
    brew([
      ["sodium-hydroxide", 6],
      ["instant-coffee", 20],
    ]),
    { softEmulsion: true },
  ),
);
add(
  checkBrew(
    brew([
      ["soda-anhydrous", 27],
      ["sodium-hydroxide", 0.4],
      ["instant-coffee", 20],
    ]),
    { softEmulsion: true },
  ),
);
add(
  checkBrew(
    brew([
      ["sodium-sulphite", 20],
      ["citric-acid", 30],
      ["instant-coffee", 20],
      ["soda-anhydrous", 1],
    ]),
  ),
);
add(
  checkBrew(
    brew(
      [
        ["soda-anhydrous", 200],
        ["instant-coffee", 20],
      ],
      { temperatureC: 5 },
    ),
  ),
);
add(
  checkBrew(
    brew([
      ["sodium-hydroxide", 44],
      ["instant-coffee", 100],
      ["soda-anhydrous", 100],
    ]),
  ),
);
for (const [ingredient, massG] of [
  ["trisodium-phosphate", 20],
  ["potassium-carbonate", 20],
  ["potassium-bromide", 1],
] as const)
  add(checkBrew(brew([...right, [ingredient, massG]])));
add(
  checkBrew({
    volumeMl: 500,
    ingredients: [
      { ingredient: "ascorbic-acid-tablet", tablets: 8, labelMg: 500 },
      { ingredient: "soda-anhydrous", massG: 20 },
    ],
  } as never),
);
add(massOf({ ingredient: "instant-coffee", spoons: 2, spoonMl: 5, heap: "heaped" } as never).cautions);
add(spoonsFor({ ingredient: "soda-anhydrous", massG: 0.01 }).cautions);
add(spoonsFor({ ingredient: "potassium-bromide", massG: 0.5 }).cautions);
add(massOf({ ingredient: "sodium-hydroxide", spoons: 1 }).cautions);
add(
  checkBrew({
    volumeMl: 500,
    ingredients: [
      { ingredient: "brewed-coffee", massG: 430 },
      { ingredient: "sodium-hydroxide", massG: 3 },
      { ingredient: "soda-anhydrous", massG: 10 },
    ],
  }),
);
for (const ageH of [0.8, 1.5, 2, 3, 4, 6, 50]) add(checkBrew(brew(right), { ageH }));
add(
  brewStrength(
    brew(right),
    brew([
      ["baking-soda", 5],
      ["soda-anhydrous", 3],
      ["instant-coffee", 2],
      ["potassium-bromide", 10],
    ]),
  ).cautions,
);
add(strengthFromScrap({ darkensS: 60, material: "film" } as never).cautions);
add(bakeYield(100).cautions, bakeTime({ temperatureC: 180 }).cautions);
for (const afterG of [50, 80, 110]) add(bakeProgress({ beforeG: 100, afterG }).cautions);
add(proposeBrew({ shelf: ["baking-soda", "instant-coffee"], volumeMl: 500 } as never).cautions);
add(
  proposeBrew({
    shelf: ["soda-anhydrous", "instant-coffee", "ascorbic-acid-tablet"],
    volumeMl: 500,
  }).cautions,
  proposeBrew({ shelf: ["borax", "instant-coffee", "ascorbic-acid"], volumeMl: 500 }).cautions,
);

for (const massG of [2, 4, 6, 8])
  add(
    checkBrew(
      brew([
        ["baking-soda", 20],
        ["soda-anhydrous", massG],
        ["instant-coffee", 5],
      ]),
    ),
  );

// plans
const run = { vessel: "tank", timeS: 540, temperatureC: 20, volumeMl: 500 } as const;
const plan = (more: object): void => {
  const made = planProcess({ ...run, ...more });
  add(made.cautions, made.benchNotes);
};
plan({});
plan({ timeS: 5, baths: {} });
plan({ stepS: 300 });
plan({
  timeS: undefined,
  temperatureC: undefined,
  answer: compensate({ timeS: 1e6, temperatureC: 20 }, { temperatureC: 10 }),
});
{
  const known = { timeS: 540, temperatureC: 20, agitation: { everyS: 60 }, dilution: "1+9" } as const;
  const answer = compensate(known, { temperatureC: 18, agitation: "stand", dilution: "stock" });
  plan({ timeS: undefined, answer, agitation: { everyS: 30 }, dilution: "1+9" });
}
plan({
  temperatureC: 10,
  baths: { fix: { temperatureC: 22, durationS: 700, clearingS: 90, freshClearingS: 40 }, wash: {} },
});
plan({
  emulsion: "soft",
  baths: { stop: { kind: "acid" }, fix: { kind: "plain", clearingS: 160, durationS: 30 }, wash: {} },
});
plan({ areaCm2: 500, material: "plate", baths: { fix: { usedCm2PerL: 9500 }, wash: { method: "changes" } } });
plan({ baths: { fix: { clearingS: 5 }, wash: {} } });
plan({ baths: { fix: { clearingS: 300 }, wash: {} } });
plan({ carbonate: true, baths: { stop: {}, fix: {}, wash: { durationS: 60 } } });
plan({ baths: { fix: { usedCm2PerL: 90_000 }, wash: { temperatureC: 8 } } });
for (const startC of [22, 16])
  for (const { answer: one } of planEvening({
    baseline: { timeS: 600, temperatureC: 20 },
    conditions: { temperatureC: { startC, ambientC: startC === 22 ? 14 : 24, timeConstantS: 3600 } },
    plates: [{ areaCm2: 108 }, { areaCm2: 108 }],
    vessel: "tank",
    volumeMl: 500,
  }).plates)
    add(one.cautions);
add(replaceDevelopment(planProcess(run), { atS: 300, remainingS: 3 }).cautions);
add(
  planRecipe(
    {
      schemaVersion: 2,
      material: { name: "film" },
      developer: { kind: "stock", name: "stock", dilution: "1+9" },
      baseline: { ...known, agitation: { everyS: 60 } },
    },
    { vessel: "drum" },
  ).cautions,
);

// readings
const reading = (timeS: number, temperatureC: unknown, more: object = {}): object => ({
  timeS,
  temperatureC,
  ...more,
});
const steered = (log: readonly object[], more: object = {}): void => {
  add(steer({ baseline: known, conditions: {}, log, ...more } as never).cautions);
};
steered([reading(0, 68)]);
steered([reading(0, 18), reading(90, 18)], { nowS: 30 });
steered([reading(0, -6.7)]);
steered([reading(0, 20), reading(60, null), reading(90, 85)]);
steered([reading(60, 20), reading(0, 20), reading(120, 29)]);
steered([reading(0, 18), reading(60, 21, { changed: true })]);
steered([reading(0, 24), reading(60, 22.8), reading(180, 20.9), reading(360, 18.9), reading(420, 18.4)], {
  vessel: "tray-in-air",
  ambientC: 18,
});
steered(
  [0, 120, 240, 360].map((timeS) => reading(timeS, 14)),
  { vessel: "tray-in-air", ambientC: 26 },
);
steered(
  [0, 200, 400, 590].map((timeS) => reading(timeS, 14)),
  { vessel: "tray-in-air", ambientC: 32 },
);
steered([reading(0, 20), reading(900, 20)], { nowS: 900 });

// learning
const good = (timeS: number, temperatureC: number, more: object = {}): never =>
  ({ timeS, temperatureC, outcome: { kind: "good" }, ...more }) as never;
const start = startKnowledge({ timeS: 510, temperatureC: 20 });
const stated = startKnowledge({ timeS: 510, temperatureC: 20, logSd: 0.05 }, { noise: "stated" });
const sharp = (timeS: number, temperatureC: number, more: object = {}): never =>
  good(timeS, temperatureC, { outcome: { kind: "good", logSd: 0.02 }, ...more });
const learned = [
  learn(
    start,
    Array.from({ length: 10 }, (_, i) => good(500 + 2 * i, 20)),
  ),
  learn(start, [good(900, 12), good(890, 12), good(890, 12)]),
  learn(stated, [...[490, 500, 505, 510, 515, 520].map((timeS) => sharp(timeS, 20)), sharp(4080, 12)]),
  learn(
    start,
    [500, 505, 510, 515, 520, 508, 512].map((timeS) => sharp(timeS, 20)).concat(sharp(1500, 20, { id: "w" })),
  ),
  learn(
    start,
    [2000, 300, 1400, 260, 900, 210].map((timeS) => sharp(timeS, 20)),
  ),
  learn(
    start,
    [0, 1, 2, 3, 4, 5, 6, 7]
      .map((i) => sharp(510 * 1.12 ** i, 20, { date: `2024-0${i + 1}-01` }))
      .concat(sharp(600, 20)),
  ),
  learn(stated, [
    ...[12, 14, 16, 18, 20].map((c) => sharp(510 * 1.01 ** (c - 20), c)),
    sharp(300, 8),
    sharp(240, 5),
  ]),
];
for (const one of learned) add(one.advice);
// Runs that teach nothing: some with a reason that no page says, and one that failed.
const odd: readonly object[] = [{ ageH: 400 }, { ageH: 500 }, { temperatureC: 60 }];
add(
  learn(
    start,
    odd.map((one) => sharp(600, 20, one)),
  ).advice,
);
add(learn(start, [{ timeS: 600, temperatureC: 20, outcome: { kind: "failed" } }]).advice);
const confirmed = { timeS: 510, temperatureC: 20, outcome: { kind: "good" } } as const;
add(
  learn(
    startKnowledge({ timeS: 510, temperatureC: 20 }),
    ["a", "b", "c", "d", "e"].map((id) => ({ ...confirmed, id })),
  ).advice,
);
// Notebooks of several films and developers.
for (const films of [
  ["slow", "slow", "fast"],
  ["slow", ""],
  Array.from({ length: 10 }, (_, i) => `film ${i}`),
])
  add(
    readRunNotes(films.map((Film, i) => ({ Film, Time: `${i + 5}:30`, Temp: "20 °C", Outcome: "good" })))
      .cautions,
  );
const stored = structuredClone(learned[0]!) as { baseline: { timeS: number } };
stored.baseline.timeS *= 1.2;
add(predict(stored as never, { temperatureC: 16 }).cautions);
add(compensate({ timeS: 777, temperatureC: 20 }, { temperatureC: 18 }, learned[0]).cautions);
answer({ gamma: 0.6 }, { gamma: 0.75, pushStops: 1 });
const taughtPush = learn(startKnowledge({ timeS: 510, temperatureC: 20 }), [
  { timeS: 640, temperatureC: 20, pushStops: 1, outcome: { kind: "good", logSd: 0.05 } },
]);
for (const pushStops of [2, -1]) add(predict(taughtPush, { pushStops }).cautions);
add(
  planProcess({
    vessel: "drum",
    timeS: 600,
    temperatureC: 20,
    agitation: "stand",
    emulsion: "soft",
    baths: { fix: { clearingS: 60, times: 2 }, wash: { durationS: 4000 } },
  }).cautions,
  planProcess({
    vessel: "tray",
    timeS: 100,
    temperatureC: 20,
    material: "paper",
    baths: { fix: { durationS: 20 }, wash: {} },
  }).cautions,
);

/** Every caution that these calls gave. */
export const cautions: readonly Caution[] = found;
