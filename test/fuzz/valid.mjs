/*
 * Right arguments for every exported function, so that the calls reach what lies behind the guards. A new
 * export needs an entry: the fuzz fails without one. The ranges are those of each function's documentation.
 */
import fc from "fast-check";
import * as kinetics from "darkroom-kinetics";
import { above0, args, oneOf, record, within } from "./generators.mjs";

const bath = within(0, 100);
const timeS = above0(1e6);
const origin = {
  sources: fc.array(fc.string({ maxLength: 8 }), { maxLength: 2 }),
  published: fc.boolean(),
  runs: fc.nat({ max: 20 }),
};

// temperature
const warmer = fc
  .tuple(
    within(0, 40),
    above0(1e5),
    fc.array(fc.tuple(within(0.1, 9), within(0, 0.15)), { minLength: 1, maxLength: 6 }),
  )
  .map(([coldC, slowestS, steps]) => {
    const rows = [{ temperatureC: coldC, timeS: slowestS }];
    for (const [riseC, fall] of steps) {
      const before = rows.at(-1);
      rows.push({
        temperatureC: Math.min(100, before.temperatureC + riseC),
        timeS: before.timeS * Math.exp(-fall * riseC),
      });
    }
    return rows;
  });
const arrhenius = record(
  {
    kind: oneOf("arrhenius"),
    activationEnergyKJPerMol: within(0, 200),
    sdKJPerMol: within(0, 200),
    ...origin,
  },
  ["kind", "activationEnergyKJPerMol"],
);
const coefficient = record(
  {
    kind: oneOf("coefficient"),
    ratio: within(1, 3),
    intervalC: within(2, 20),
    sdRatio: within(0, 1),
    ...origin,
  },
  ["kind", "ratio", "intervalC"],
);
const temperatureLaw = fc.oneof(
  arrhenius,
  coefficient,
  record(
    {
      kind: oneOf("table"),
      rows: warmer,
      energyOffKJPerMol: within(-30, 30),
      sdKJPerMol: within(0, 60),
      ...origin,
    },
    ["kind", "rows"],
  ),
);
const log = fc
  .array(fc.tuple(within(0.1, 5000), within(0, 100)), { minLength: 2, maxLength: 8 })
  .map((steps) =>
    steps.reduce(
      (done, [stepS, temperatureC]) => [...done, { timeS: (done.at(-1)?.timeS ?? 0) + stepS, temperatureC }],
      [],
    ),
  );

// dilution
const parts = record({ stockParts: above0(1e3), waterParts: within(0, 1000) });
const stocks = fc
  .tuple(fc.array(within(0.5, 9), { minLength: 1, maxLength: 3 }), within(0, 50))
  .map(([each, waterParts]) => ({
    stockParts: each.reduce((sum, one) => sum + one, 0),
    waterParts,
    stocks: each,
  }));
const dilutionText = fc.oneof(
  fc.tuple(fc.nat({ max: 20 }), fc.nat({ max: 200 })).map(([stock, water]) => `${stock + 1}+${water}`),
  fc
    .tuple(fc.nat({ max: 9 }), fc.nat({ max: 9 }), fc.nat({ max: 99 }))
    .map(([a, b, water]) => `${a + 1}+${b + 1}+${water}`),
  oneOf("stock", "1+0", "1:9", " 1 + 9.5 "),
);
const dilution = fc.oneof(parts, stocks, dilutionText);
const weaker = fc
  .tuple(above0(1e4), fc.array(fc.tuple(within(0.3, 9), within(0, 3)), { minLength: 2, maxLength: 6 }))
  .map(([firstS, steps]) => {
    let waterParts = 0;
    let rowS = firstS;
    return steps.map(([more, exponent]) => {
      const before = waterParts;
      waterParts += more;
      rowS *= ((1 + waterParts) / (1 + before)) ** exponent;
      return { dilution: { stockParts: 1, waterParts }, timeS: rowS };
    });
  });
const power = record({ kind: oneOf("power"), exponent: within(0, 3), sd: within(0, 3), ...origin }, [
  "kind",
  "exponent",
]);
const dilutionLaw = fc.oneof(
  power,
  record({ kind: oneOf("table"), rows: weaker, exponentOff: within(-1, 1), sd: within(0, 3), ...origin }, [
    "kind",
    "rows",
  ]),
);

// agitation
const agitation = fc.oneof(oneOf("continuous", "stand"), record({ everyS: above0(3600) }));
const agitationLaw = fc.oneof(
  record({ staleLoss: within(0, 0.99), staleTimeS: above0(1e5), sdStaleLoss: within(0, 10), ...origin }, [
    "staleLoss",
    "staleTimeS",
  ]),
  record(
    {
      staleLoss: within(0, 10),
      staleTimeS: above0(1e5),
      sdStaleLoss: within(0, 10),
      shape: within(0, 0.99),
      ...origin,
    },
    ["staleLoss", "staleTimeS", "shape"],
  ),
);

// exhaustion
const useLaw = record(
  {
    increase: within(0, 1),
    perCm2PerL: fc.oneof(
      { weight: 9, arbitrary: within(50, 2000) },
      { weight: 1, arbitrary: within(0.001, 1e4) },
    ),
    growth: oneOf("linear", "compound"),
    sdIncrease: within(0, 1),
    shape: within(0, 1),
    capacityCm2PerL: above0(1e6),
    dilution: oneOf("stock", "1+1", "1+9"),
    ...origin,
  },
  ["increase", "perCm2PerL", "growth"],
);
const used = fc.oneof({ weight: 9, arbitrary: within(0, 5000) }, { weight: 1, arbitrary: within(0, 1e6) });
const ownUse = record({
  increase: within(0, 0.5),
  perCm2PerL: within(100, 2000),
  growth: oneOf("linear", "compound"),
  areaCm2: within(0, 2000),
  volumeMl: within(200, 5000),
});
const volumes = fc.array(record({ atH: within(10, 100), volumeMl: above0(1e3) }), { maxLength: 3 });
const ledger = record(
  {
    volumeMl: above0(1e6),
    mixedAtH: within(-100, 10),
    processed: fc.array(record({ atH: within(10, 100), areaCm2: above0(1e5) }), { maxLength: 5 }),
    replenished: volumes,
    toppedUp: volumes,
    pouredOff: volumes,
    evaporated: volumes,
  },
  ["volumeMl", "mixedAtH", "processed"],
);
const ageLaw = fc.oneof(
  record(
    {
      kind: oneOf("half-life"),
      halfLifeH: fc.oneof({ weight: 9, arbitrary: within(5, 5000) }, { weight: 1, arbitrary: above0(1e6) }),
      sdLog: within(0, 3),
      ...origin,
    },
    ["kind", "halfLifeH"],
  ),
  record({ kind: oneOf("life"), lifeH: above0(1e6), ...origin }, ["kind", "lifeH"]),
  record({ kind: oneOf("speeding"), perDay: within(-1, 1), sdPerDay: within(0, 3), ...origin }, [
    "kind",
    "perDay",
  ]),
  record({ kind: oneOf("slowing"), perRootH: within(-1, 1), sdPerRootH: within(0, 3), ...origin }, [
    "kind",
    "perRootH",
  ]),
);
const ageH = fc.oneof({ weight: 9, arbitrary: within(0, 48) }, { weight: 1, arbitrary: within(0, 1e6) });

// contrast
const growth = record(
  { gammaInfinity: above0(5), ratePerS: above0(0.1), appearanceS: within(0, 600), ...origin },
  ["gammaInfinity", "ratePerS", "appearanceS"],
);

// the main job
const strength = record({
  cause: oneOf("strength"),
  value: above0(100),
  logSd: within(0, 2),
  basis: oneOf("given", "default", "own-runs"),
  sources: oneOf([], ["a note"]),
});
const places = { dilution, agitation, usedCm2PerL: used, ageH };
const baseline = record(
  {
    timeS,
    temperatureC: bath,
    ...places,
    logSd: within(0, 3),
    hydroquinone: fc.boolean(),
    emulsion: oneOf("soft", "hardened"),
  },
  ["timeS", "temperatureC", "dilution", "agitation"],
);
const conditions = record({ temperatureC: bath, ...places, strength }, []);
const knowledge = record(
  { temperature: temperatureLaw, dilution: dilutionLaw, agitation: agitationLaw, use: useLaw, age: ageLaw },
  [],
);
const estimate = fc.tuple(above0(1e5), within(0.01, 2)).map(([middleS, spread]) => ({
  timeS: middleS,
  lowS: middleS * Math.exp(-spread),
  highS: middleS * Math.exp(spread),
}));

// brew
const ingredient = oneOf(...Object.keys(kinetics.handbookIngredients ?? {}));
const spooned = ingredient.filter((name) => name !== "sodium-hydroxide");
const weighed = fc
  .tuple(ingredient, above0(100), within(0.5, 1), within(1, 2))
  .map(([name, massG, low, high]) =>
    name === "ascorbic-acid-tablet"
      ? { ingredient: name, tablets: Math.ceil(massG), labelMg: 500 }
      : { ingredient: name, massG, lowG: massG * low, highG: massG * high },
  );
const agent = fc
  .tuple(oneOf("instant-coffee", "ascorbic-acid", "sodium-ascorbate"), above0(60))
  .map(([name, massG]) => ({ ingredient: name, massG }));
const brew = fc
  .tuple(within(200, 5000), within(0, 50), agent, fc.array(weighed, { maxLength: 4 }))
  .map(([volumeMl, temperatureC, first, rest]) => ({
    volumeMl,
    temperatureC,
    ingredients: [first, ...rest],
  }));
const spoonOptions = { spoonMl: within(1, 30), heap: oneOf("level", "rounded", "heaped") };
const hydrate = oneOf("anhydrous", "monohydrate", "heptahydrate", "decahydrate");
const massG = within(0, 1e5);

// process
const setting = { durationS: above0(86400), temperatureC: within(5, 35), dilution };
const fix = record(
  {
    ...setting,
    kind: oneOf("rapid", "plain"),
    clearingS: above0(1000),
    clearingAtC: within(0, 40),
    freshClearingS: above0(1000),
    times: within(1, 10),
    usedCm2PerL: used,
    capacityCm2PerL: above0(1e6),
  },
  [],
);
const baths = record(
  {
    preSoak: record(setting, []),
    stop: record({ ...setting, kind: oneOf("acid", "water") }, []),
    fix,
    clearingAid: record(setting, []),
    wash: record({ ...setting, method: oneOf("running", "soak", "changes") }, []),
    wettingAgent: record(setting, []),
  },
  [],
);
const material = {
  areaCm2: above0(1e5),
  iodideRich: fc.boolean(),
  emulsion: oneOf("soft", "hardened"),
  maxStepC: within(0.5, 20),
};
const plan = record(
  {
    vessel: oneOf("tank", "tray", "drum"),
    timeS: above0(1e4),
    temperatureC: bath,
    volumeMl: above0(1e5),
    agitation,
    drainS: within(0, 60),
    rest: fc.oneof(fc.boolean(), within(0, 900)),
    dilution,
    baths,
    ...material,
  },
  ["vessel", "timeS", "temperatureC", "volumeMl"],
);
const evening = record(
  {
    vessel: oneOf("tank", "tray", "drum"),
    volumeMl: above0(1e5),
    baseline: record({ timeS: within(60, 3000), temperatureC: within(10, 30) }),
    conditions: record(
      {
        temperatureC: fc.oneof(
          within(10, 30),
          record({ startC: within(10, 30), ambientC: within(-5, 40), timeConstantS: within(600, 1e5) }),
        ),
        usedCm2PerL: within(0, 500),
      },
      [],
    ),
    plates: fc.array(
      record(
        {
          areaCm2: above0(1000),
          name: fc.string(),
          material: oneOf("film", "plate", "paper"),
          baseline: record({ timeS: within(60, 3000), temperatureC: within(10, 30) }),
          conditions: record({ temperatureC: within(10, 30) }, []),
        },
        ["areaCm2"],
      ),
      { minLength: 1, maxLength: 4 },
    ),
    betweenS: within(0, 3600),
    baths,
  },
  ["vessel", "volumeMl", "baseline", "conditions", "plates"],
);
/** A finished plan, made by the package itself; without one where the drawn input is refused. */
const planned = plan.map((input) => {
  try {
    return JSON.parse(JSON.stringify(kinetics.planProcess(input)));
  } catch {
    return { steps: [] };
  }
});
/** A finished evening, in the same way. */
const evenings = evening.map((input) => {
  try {
    return JSON.parse(JSON.stringify(kinetics.planEvening(input)));
  } catch {
    return { plates: [] };
  }
});

// text of a time
const text = fc.oneof(
  fc.tuple(fc.nat({ max: 200 }), fc.nat({ max: 70 })).map(([m, s]) => `${m}:${String(s).padStart(2, "0")}`),
  fc
    .tuple(fc.nat({ max: 9999 }), oneOf("s", " sec", "m", " min", "h", ".5 min", "m30s", "′30″"))
    .map(([n, unit]) => `${n}${unit}`),
  fc.tuple(fc.nat({ max: 30 }), fc.nat({ max: 59 })).map(([m, s]) => `PT${m}M${s}S`),
);

/** A number and what it counts. */
const counted = (max, ...units) =>
  fc.tuple(fc.nat({ max }), oneOf(...units)).map(([n, unit]) => `${n}${unit}`);

// contrast and inspection
const cooling = fc
  .tuple(
    within(10, 30),
    within(10, 30),
    within(300, 9000),
    within(10, 900),
    fc.array(within(-0.1, 0.1), { minLength: 3, maxLength: 12 }),
  )
  .map(([start, air, tau, everyS, noise]) =>
    noise.map((off, i) => ({
      timeS: i * everyS,
      temperatureC: air + (start - air) * Math.exp((-i * everyS) / tau) + off,
    })),
  );
const curve = fc
  .tuple(
    within(0, 0.4),
    within(0.5, 1.2),
    within(-3.2, -2.5),
    within(0.15, 0.2),
    fc.integer({ min: 24, max: 30 }),
  )
  .map(([fog, gradient, toe, step, count]) =>
    Array.from({ length: count }, (_, i) => ({
      logH: -4 + i * step,
      density: fog + gradient * 0.1 * Math.log1p(Math.exp((-4 + i * step - toe) / 0.1)),
    })),
  );
const strip = fc.oneof(
  curve,
  curve.map((steps) => ({ steps, basePlusFog: steps[0].density })),
);
const grown = fc
  .tuple(
    within(0.5, 2),
    within(0.001, 0.01),
    within(0, 60),
    fc.array(within(0.98, 1.02), { minLength: 3, maxLength: 8 }),
  )
  .map(([most, rate, t0, noise]) =>
    noise.map((off, i) => ({
      timeS: 120 * (i + 1),
      gamma: off * most * -Math.expm1(-rate * Math.max(1, 120 * (i + 1) - t0)),
    })),
  );
const seen = within(5, 200);
const factor = within(3, 40);

// learning
const outcome = fc.oneof(
  record(
    {
      kind: oneOf("good"),
      logSd: fc.oneof(
        { weight: 4, arbitrary: within(0.01, 0.5) },
        { weight: 1, arbitrary: above0(3) },
        { weight: 1, arbitrary: oneOf(1e-30, 1e-12, 1e-9, 1e-6) },
      ),
    },
    ["kind"],
  ),
  record({ kind: oneOf("judged"), timeRatio: within(0.5, 2), logSd: within(0.01, 0.5) }, [
    "kind",
    "timeRatio",
  ]),
  record({ kind: oneOf("steps"), steps: within(-2, 2) }),
  record({ kind: oneOf("gamma"), gamma: within(0.4, 0.8), wanted: within(0.4, 0.8) }),
  record({ kind: oneOf("density"), density: within(0.5, 1.5), wanted: within(0.5, 1.5) }),
  record({ kind: oneOf("appearance"), appearanceS: seen, factor }),
  record({ kind: oneOf("failed", "fogged"), note: oneOf("light", "") }, ["kind"]),
);
const run = record(
  {
    timeS: within(200, 1500),
    temperatureC: within(14, 26),
    dilution: oneOf("1+9", "1+14"),
    agitation: record({ everyS: within(20, 120) }),
    usedCm2PerL: within(0, 3000),
    ageH: within(0, 2),
    outcome,
    id: oneOf("a", "b"),
    date: oneOf("2026-11-25", "2026-10-01"),
    note: oneOf("hut"),
  },
  ["timeS", "temperatureC", "outcome"],
);
/** A run from the ends of the ranges. */
const farRun = record({ timeS, temperatureC: bath, ...places, strength, outcome }, [
  "timeS",
  "temperatureC",
  "outcome",
]);
const few = fc.array(fc.oneof({ weight: 3, arbitrary: run }, { weight: 1, arbitrary: farRun }), {
  maxLength: 5,
});
// Runs that are one another's copies are what a fit finds hardest to tell apart.
const runs = fc.oneof(
  { weight: 3, arbitrary: few },
  { weight: 1, arbitrary: few.map((some) => [...some, ...some]) },
);
const usual = { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } };
const startOptions = record(
  {
    baseLogSd: within(0, 1),
    laws: record(
      {
        temperature: fc.oneof(arrhenius, coefficient),
        dilution: power,
        agitation: agitationLaw,
        use: useLaw,
        age: ageLaw,
      },
      [],
    ),
    noise: oneOf("estimated", "stated"),
  },
  [],
);
/** Knowledge from a few runs, made once: it costs too much to learn anew for each call. */
const learnedFrom = (options, seed) =>
  fc.sample(fc.tuple(runs, options), { seed, numRuns: 30 }).flatMap(([some, given]) => {
    try {
      return [JSON.parse(JSON.stringify(kinetics.learn(kinetics.startKnowledge(usual, given), some)))];
    } catch {
      return [];
    }
  });
const learnedAlike = learnedFrom(fc.constant({}), 7);
const learned = oneOf(...learnedAlike, ...learnedFrom(startOptions, 8));
const today = record(
  {
    temperatureC: within(5, 35),
    dilution: oneOf("1+9", "1+14", "1+19"),
    agitation: record({ everyS: within(20, 120) }),
    usedCm2PerL: within(0, 3000),
    ageH: within(0, 2),
  },
  [],
);
const note = record(
  {
    Time: text,
    Temp: oneOf("68F", "20 °C", "18,5 C", "hot"),
    Dilution: oneOf("1+9", "1:9", "stock"),
    Agitation: oneOf("60 s", "stand", "continuous"),
    Outcome: oneOf("good", "over 0.5", "under 1", "failed", "?"),
    Date: oneOf("2026-11-25", "25.11.2026"),
    Note: oneOf("hut", "", "pushed 1 stop"),
    Film: oneOf("slow", "fast", ""),
    Dev: oneOf("brew 1", "9:00"),
    Push: oneOf("+1", "N-1", "0"),
    sd: oneOf("0.1"),
  },
  ["Time", "Temp", "Outcome"],
);

// recipe
const stock = record(
  {
    kind: oneOf("stock"),
    name: oneOf("invented"),
    dilution: oneOf("1+9", "1+14", "stock"),
    volumeMl: within(100, 2000),
    family: oneOf("concentrate", "p-aminophenol"),
  },
  ["kind", "name", "dilution"],
);
const recipe = record(
  {
    schemaVersion: oneOf(2),
    name: oneOf("hut"),
    material: record(
      {
        name: oneOf("plate"),
        kind: oneOf("film", "plate", "paper"),
        emulsion: oneOf("soft", "hardened"),
        iso: within(1, 3200),
        areaCm2: within(10, 5000),
        iodideRich: fc.boolean(),
      },
      ["name"],
    ),
    developer: fc.oneof(stock, record({ kind: oneOf("brew"), brew })),
    baseline: record(
      {
        timeS: within(60, 3000),
        temperatureC: within(10, 30),
        usedCm2PerL: within(0, 500),
        ageH: within(0, 1),
        logSd: within(0, 1),
      },
      ["timeS", "temperatureC"],
    ),
    agitation,
    conditions: record({ temperatureC: within(5, 35), usedCm2PerL: within(0, 3000), ageH: within(0, 2) }, []),
    knowledge: record({ temperature: fc.oneof(arrhenius, coefficient), use: useLaw }, []),
    byInspection: fc.boolean(),
    notes: oneOf([], ["a note"]),
  },
  ["schemaVersion", "material", "developer", "baseline"],
);
/** An answer, made by the package itself. */
const answer = fc
  .tuple(within(60, 3000), within(10, 30), within(5, 35), above0(5000))
  .map(([baseS, from, temperatureC, usedCm2PerL]) =>
    kinetics.compensate({ timeS: baseS, temperatureC: from }, { temperatureC, usedCm2PerL }),
  );

const drift = record({ startC: bath, ambientC: within(-50, 100), timeConstantS: above0(1e7) });
/** What a thermometer gives in the middle of a run, failures among it. */
const reading = record(
  {
    timeS: within(0, 2000),
    temperatureC: fc.oneof(within(5, 30), within(40, 90), oneOf(null, NaN, 0, 85, -127)),
    changed: oneOf(true),
  },
  ["timeS", "temperatureC"],
);
const readings = fc.array(reading, { minLength: 1, maxLength: 12 });
const surroundings = {
  ambientC: within(-50, 100),
  vessel: fc.oneof(
    oneOf("tray-in-air", "steel-tank-in-air", "glass-jar-in-air"),
    record({ timeConstantS: above0(1e7), logSd: within(0, 3) }),
  ),
  readingSdC: within(0.001, 5),
};
/** A bath over time, as data. */
const course = fc.oneof(bath, log, drift);

const chartInput = record(
  {
    baseline: record({ timeS: within(60, 3600), temperatureC: within(15, 25), dilution: oneOf("1+9") }),
    conditions: record({ ageH: within(0, 100) }, []),
    knowledge: record({ temperature: temperatureLaw }, []),
    temperaturesC: oneOf([12, 16, 20], [20], [24, 18]),
    dilutions: oneOf(["1+9"], ["1+9", "1+14", "1+19"]),
  },
  ["baseline", "temperaturesC"],
);
const chart = fc
  .tuple(within(60, 3600), oneOf([12, 16, 20], [20], [24, 18]), oneOf(["1+9"], ["1+9", "1+14"]))
  .map(([baseS, temperaturesC, dilutions]) => {
    const known = { timeS: baseS, temperatureC: 20, dilution: "1+9" };
    return JSON.parse(JSON.stringify(kinetics.timeChart({ baseline: known, temperaturesC, dilutions })));
  });

// All invented: the hut.
const hutKnown = { timeS: 540, temperatureC: 20, dilution: "1+9" };
const hutBrew = {
  volumeMl: 500,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 27 },
    { ingredient: "instant-coffee", massG: 20 },
  ],
};
const hutRecipe = {
  schemaVersion: 2,
  material: { name: "sheet film" },
  developer: { kind: "stock", name: "hut stock", dilution: "1+9" },
  baseline: hutKnown,
};
const hutProblems = kinetics.checkRecipe({ ...hutRecipe, schemaVersion: 9, baseline: 5 }).problems;
/** Input errors whose fields are hidden: one that is spoilt is no longer one. */
const inputErrors = ["soon", "8:75"].map((text) => {
  try {
    return kinetics.parseTime(text);
  } catch (error) {
    const fields = Object.entries(error).map(([name, value]) => [name, { value }]);
    return Object.defineProperties(new Error(error.message), Object.fromEntries(fields));
  }
});
const hutStrip = kinetics.testStripTimes({ timeS: 540, lowS: 300, highS: 900 });
const pictureInput = record(
  {
    baseline: oneOf(hutKnown),
    conditions: record({ temperatureC: within(13, 30) }, []),
    strip: fc.boolean(),
  },
  ["baseline", "conditions"],
);
const pictured = pictureInput.map((input) => kinetics.answerPicture(input));

export const valid = {
  // quantities
  parseTime: args([text]),
  parseTemperature: args(
    [counted(300, " °C", "C", "F", " °F", "℃")],
    [record({ unit: oneOf("C", "F") }, [])],
  ),
  formatTemperature: args([within(-273.15, 5500)], [record({ unit: oneOf("C", "F") }, [])]),
  parseVolume: args([counted(1000, " ml", " l", "cc", " cm³", " cl", " litres")]),
  parseSpread: args([counted(300, " %", " s", " percent"), above0(1e7)]),
  roundEstimate: args([
    fc
      .tuple(above0(1e6), within(1, 20), within(1, 20))
      .map(([timeS, below, above]) => ({ timeS, lowS: timeS / below, highS: timeS * above })),
  ]),
  parseAgitation: args([
    fc.oneof(oneOf("continuous", "stand", "Every 1:30"), counted(3600, " s", " sec", "s")),
  ]),
  parseUse: args([counted(900, " rolls/l", " cm2/l", " cm²/L")]),
  parseDate: args([oneOf("2024-03-05", "5.3.2024", "5 March 2024", "March 5th, 24 14:30")]),
  parseOutcome: args([oneOf("good", "thin", "over 0.5", "x1.2", "15% more", "failed")]),
  parseAge: args([counted(5000, " h", " days", "d6h", " weeks 1 h", " min")]),
  formatTime: args([within(0, 1e7)], [record({ stepS: fc.integer({ min: 1, max: 3600 }) }, [])]),
  roundTime: args([within(0, 1e7)], [above0(86400)]),
  fahrenheitToCelsius: args([within(-459.67, 10000)]),
  celsiusToFahrenheit: args([within(-273.15, 5500)]),
  parseFilmFormat: args([oneOf("9x12", "4x5", "135-36", "6,5x9 cm")]),
  parseStops: args([counted(3, "", " stops")]),
  filmAreaCm2: args([
    fc.oneof(
      oneOf("135-36", "120", "220", "4x5in", "24×36mm"),
      fc
        .tuple(within(1, 200), within(1, 200), oneOf("cm", "mm", "in"))
        .map(([w, h, unit]) => `${w.toFixed(1)}x${h.toFixed(2)}${unit}`),
    ),
  ]),
  formatFilmArea: args([above0(4e4)]),
  // temperature
  temperatureFactor: args([bath, bath], [temperatureLaw]),
  rateFunction: args([bath], [temperatureLaw]),
  temperatureCoefficient: args([within(0, 49), within(50, 100)], [temperatureLaw]),
  asArrheniusLaw: args([temperatureLaw, within(0, 50), within(50, 100)]),
  asCoefficientLaw: args([temperatureLaw, within(0, 50), within(50, 100)]),
  fitTemperatureLaw: args([warmer]),
  handbookTemperatureLaw: args([
    oneOf("metol", "hydroquinone", "metol-hydroquinone", "pyro", "glycin", "p-aminophenol", "coffee"),
  ]),
  temperatureCautions: args(
    [bath],
    [
      record(
        {
          hydroquinone: fc.boolean(),
          emulsion: oneOf("soft", "hardened"),
          path: fc.string({ maxLength: 8 }),
        },
        [],
      ),
    ],
  ),
  // drift
  equivalentTime: args([log, bath], [temperatureLaw]),
  newtonDrift: args([drift]),
  fitDrift: args([cooling], [record({ ambientC: within(-20, 60) }, [])]),
  logCautions: args([log]),
  handbookVessel: args([
    oneOf("tray-in-air", "steel-tank-in-air", "glass-jar-in-air", "steel-tank-in-water", "bucket"),
  ]),
  ownUseFactor: args([ownUse]),
  developUntil: args([
    record(
      {
        equivalentS: above0(1e4),
        referenceC: bath,
        law: temperatureLaw,
        temperatureAt: course,
        fromS: within(0, 1000),
        ownUse,
      },
      ["equivalentS", "referenceC", "temperatureAt"],
    ),
  ]),
  remainingTime: args([
    record(
      { targetS: above0(1e5), referenceC: bath, law: temperatureLaw, log, temperatureAt: course, ownUse },
      ["targetS", "referenceC", "log"],
    ),
  ]),
  steer: args([
    record(
      {
        baseline: record({ timeS: within(300, 3600), temperatureC: within(15, 25) }),
        conditions: record({ temperatureC: within(15, 25), ageH: within(0, 3) }, []),
        knowledge: record({ temperature: temperatureLaw }, []),
        log: readings,
        nowS: within(0, 5000),
        ...surroundings,
        appearance: record({ appearanceS: above0(300), factor: within(1, 60) }),
      },
      ["baseline", "conditions", "log"],
    ),
  ]),
  judgeReading: args([readings, reading], [record(surroundings, [])]),
  checkLog: args([readings]),
  startTemperatureFor: args([
    record({
      timeS: above0(1e5),
      targetC: within(5, 40),
      ambientC: within(-20, 50),
      timeConstantS: above0(1e6),
      law: temperatureLaw,
    }),
  ]),
  // dilution
  parseDilution: args([dilutionText], [record({ colon: oneOf("plus", "total") }, [])]),
  formatDilution: args([fc.oneof(parts, stocks)]),
  mixVolumes: args([fc.oneof(parts, stocks), above0(1e6)]),
  dilutionFactor: args([dilution, dilution], [dilutionLaw]),
  fitDilutionLaw: args([weaker]),
  handbookDilutionLaw: args([
    oneOf("solvent-stock", "concentrate", "p-aminophenol", "pyro", "glycin", "ascorbate-stock", "coffee"),
  ]),
  stockCautions: args([
    record(
      {
        dilution,
        totalMl: above0(1e5),
        areaCm2: above0(1e5),
        family: oneOf("pyro", "p-aminophenol", "concentrate"),
        leastMlPerRoll: above0(1e3),
      },
      ["dilution", "totalMl", "areaCm2", "leastMlPerRoll"],
    ),
  ]),
  // agitation
  agitationFactor: args([agitation, agitation], [agitationLaw]),
  // exhaustion
  useFactor: args([used, used], [useLaw]),
  ageFactor: args([ageH, ageH, ageLaw]),
  bathState: args([ledger, within(10, 200)]),
  bathVolumeMl: args([ledger, within(10, 200)]),
  checkLedger: args([ledger]),
  bathCapacity: args([
    record(
      {
        volumeMl: above0(1e6),
        dilution,
        brew,
        use: useLaw,
        capacityCm2PerL: above0(1e6),
        family: oneOf("pyro", "p-aminophenol", "concentrate"),
        leastMlPerRoll: above0(1e3),
        material: oneOf("film", "plate", "paper", "tin"),
        areaCm2: above0(1e5),
        usedCm2PerL: used,
        vessel: oneOf("tank", "tray", "drum"),
        dishCm2: above0(1e5),
      },
      ["volumeMl"],
    ),
  ]),
  bathVerdict: args([
    record(
      {
        usedCm2PerL: used,
        ageH,
        use: useLaw,
        age: ageLaw,
        capacityCm2PerL: above0(1e6),
        keepingLimitH: above0(1e6),
        dilution,
        timeS: within(0, 1e5),
        highS: within(0, 1e5),
      },
      [],
    ),
  ]),
  handbookUseLaw: args([
    oneOf("metol-hydroquinone-borax", "metol-sulphite", "phenidone-ascorbate", "coffee"),
  ]),
  replenishmentMl: args([record({ mlPerCm2: above0(10) }), above0(1e6)]),
  // contrast
  gammaAt: args([within(0, 1e4)], [growth]),
  timeForGamma: fc.tuple(growth, within(0, 1.1)).map(([law, share]) => [share * law.gammaInfinity, law]),
  contrastFactor: fc
    .tuple(growth, within(0.05, 0.95), within(0.05, 0.95))
    .map(([law, a, b]) => [a * law.gammaInfinity, b * law.gammaInfinity, law]),
  fitGrowth: args([grown], [record({ appearanceS: within(0, 60) }, [])]),
  growthFromDoubling: fc
    .tuple(within(60, 900), within(0.2, 1), within(1.05, 1.95))
    .map(([timeS, gamma, ratio]) => [{ timeS, gamma, gammaAtDouble: gamma * ratio }]),
  pushFactor: args([within(-2, 4)], [within(1, 2)]),
  pushCautions: args([within(-2, 4)]),
  speedPoint: args([strip]),
  averageGradient: args([strip]),
  isoSpeed: args([strip]),
  contrastIndex: args([strip]),
  // inspection
  appearanceFactor: args([
    fc
      .tuple(seen, within(2, 30))
      .map(([appearanceS, times]) => ({ appearanceS, totalS: appearanceS * times })),
  ]),
  timeFromAppearance: args([record({ appearanceS: seen, factor })]),
  mixedAppearanceFactor: args([
    fc.array(record({ factor, parts: within(0.1, 10) }), { minLength: 1, maxLength: 4 }),
  ]),
  handbookAppearanceFactor: args(
    [oneOf("amidol", "metol", "pyro", "hydroquinone", "coffee")],
    [record({ contrast: oneOf("soft", "normal", "strong"), strengthGPerL: within(1, 10) }, [])],
  ),
  appearanceEstimate: args([
    record({ appearanceS: seen, factor, factorLogSd: within(0, 1), reactionS: within(0, 5) }, [
      "appearanceS",
      "factor",
    ]),
  ]),
  combineEstimates: args([estimate, estimate]),
  safelightCautions: args([oneOf("blue-sensitive", "orthochromatic", "panchromatic")]),
  // brew
  massOf: args([
    record(
      { ingredient, spoons: above0(100), tablets: above0(100), labelMg: above0(1000), ...spoonOptions },
      ["ingredient", "spoons", "tablets", "labelMg"],
    ),
  ]),
  roundSpoons: args([within(0, 1e4)]),
  spoonsFor: args([
    record({ ingredient: spooned, massG: above0(1e4), stepSpoons: above0(1), ...spoonOptions }, [
      "ingredient",
      "massG",
    ]),
  ]),
  sodaMass: args([record({ massG, from: hydrate, to: hydrate })]),
  bakeYield: args([massG]),
  bakeProgress: args([
    fc.tuple(above0(1e4), within(0.5, 1.1)).map(([beforeG, left]) => ({ beforeG, afterG: beforeG * left })),
  ]),
  bakedSoda: args([record({ massG, converted: within(0, 1) })]),
  bakeTime: args([
    record({ temperatureC: within(80, 250), converted: within(0.01, 0.999) }, ["temperatureC"]),
  ]),
  solubility: args([ingredient, within(0, 50)]),
  brewPh: args([brew]),
  brewStrength: args(
    [brew, brew],
    [
      record({ exponent: within(0, 3), sd: within(0, 3), ...origin }, ["exponent"]),
      record({ sameJar: fc.boolean(), sameSpoon: fc.boolean() }, []),
    ],
  ),
  brewLife: args([brew], [record({ depthMm: within(1, 1000), vessel: oneOf("tank", "tray", "drum") }, [])]),
  brewCapacity: args([brew], [record({ material: oneOf("film", "plate", "paper") }, [])]),
  proposeBrew: args([
    record(
      {
        shelf: fc.array(ingredient, { maxLength: 5 }),
        volumeMl: above0(1e4),
        temperatureC: within(0, 50),
        material: oneOf("film", "plate", "paper"),
        spoonMl: above0(100),
      },
      ["shelf", "volumeMl"],
    ),
  ]),
  strengthFromScrap: args([
    record(
      {
        darkensS: within(1, 3600),
        temperatureC: within(0, 50),
        known: record({ darkensS: within(1, 3600), temperatureC: within(0, 50) }, ["darkensS"]),
        material: oneOf("film", "plate", "paper"),
      },
      ["darkensS"],
    ),
  ]),
  checkBrew: args(
    [brew],
    [record({ ageH: within(0, 10), filmIso: above0(1e5), softEmulsion: fc.boolean() }, [])],
  ),
  scaleBrew: args([brew, above0(1e4)]),
  mixingSteps: args([brew]),
  // learning
  startKnowledge: args([baseline], [startOptions]),
  learn: args([learned, runs], [record({ today: oneOf("2026-11-25", "2027-01-01") }, [])]),
  predict: args([learned, today]),
  nextTest: args([learned, fc.array(today, { maxLength: 3 }), today]),
  checkKnowledge: args([learned]),
  lawsOf: args([learned]),
  mergeKnowledge: args([oneOf(...learnedAlike), oneOf(...learnedAlike)]),
  readRunNotes: args(
    [fc.array(note, { maxLength: 4 })],
    [
      record(
        {
          colon: oneOf("plus", "total"),
          today: oneOf("2027-01-01"),
          only: record({ material: oneOf("slow", "fast"), developer: oneOf("brew 1") }, []),
        },
        [],
      ),
    ],
  ),
  tidyRuns: args([learned]),
  // recipe
  checkRecipe: args([
    fc.oneof(
      recipe,
      recipe.map((one) => JSON.stringify(one)),
    ),
  ]),
  formatRecipe: args([recipe]),
  compensateRecipe: args(
    [recipe],
    [record({ temperatureC: within(5, 35), usedCm2PerL: within(0, 3000) }, [])],
  ),
  learnRecipe: args([
    recipe,
    fc.array(
      record({ timeS: within(60, 3600), temperatureC: within(5, 35), outcome: oneOf({ kind: "good" }) }),
      {
        maxLength: 3,
      },
    ),
  ]),
  recipeQuestion: args([recipe], [record({ temperatureC: within(5, 35), usedCm2PerL: within(0, 3000) }, [])]),
  planRecipe: args([
    recipe,
    record({ vessel: oneOf("tank", "tray"), conditions: record({ temperatureC: within(5, 35) }, []) }, [
      "vessel",
    ]),
  ]),
  describeCompensation: args([answer]),
  describeCautions: args([answer.map(({ cautions }) => cautions)]),
  // compensate
  compensate: args([baseline, conditions], [knowledge]),
  checkConditions: args([baseline, conditions], [knowledge]),
  prepareCompensation: args([baseline], [knowledge]),
  effect: fc.oneof(
    fc.tuple(fc.constant("temperature"), bath, bath, temperatureLaw),
    fc.tuple(fc.constant("dilution"), dilutionText, dilutionText),
    fc.tuple(fc.constant("age"), within(0, 100), within(0, 100)),
    fc.tuple(fc.constant("use"), within(0, 500), within(0, 500)),
  ),
  isInputError: args([fc.anything()]),
  problemOf: args([oneOf(...inputErrors)]),
  describeFactor: answer.chain(({ factors }) => args([oneOf(...factors)])),
  // chart
  timeChart: args([chartInput]),
  chartCsv: args([chart]),
  describeChart: args([chart]),
  chartSvg: args([chart], [record({ title: oneOf("Hut", "") }, [])]),
  chartRecipe: args([
    recipe,
    record({ temperaturesC: oneOf([16, 18, 20], [20]), dilutions: oneOf(["1+9", "1+14"]) }, [
      "temperaturesC",
    ]),
  ]),
  temperatureCurve: args([
    record(
      {
        baseline,
        fromC: bath,
        toC: bath,
        points: fc.integer({ min: 2, max: 50 }),
        law: temperatureLaw,
      },
      ["baseline", "fromC", "toC", "points"],
    ),
  ]),
  // process
  planProcess: args([plan]),
  replaceDevelopment: fc.tuple(planned, within(0, 1), above0(1e4)).map(([made, share, remainingS]) => {
    const develop = made.steps.find(({ name }) => name === "develop") ?? { startS: 0, durationS: 0 };
    return [made, { atS: develop.startS + share * develop.durationS, remainingS }];
  }),
  checkPlan: args([planned]),
  planAt: args([planned, within(-100, 1e5)]),
  planEvening: args([evening]),
  usualVessel: args([oneOf("film", "plate", "paper")]),
  testStripTimes: args([estimate], [record({ count: fc.integer({ min: 2, max: 25 }) }, [])]),
  fixingTime: args([record({ clearingS: above0(1e4), times: within(1, 10) }, ["clearingS"])]),
  clearingTimeAt: args([record({ clearingS: above0(7200), fromC: bath, toC: bath })]),
  bathCautions: args([
    record({ temperatureC: bath, baths, volumeMl: above0(1e5), ...material }, ["temperatureC"]),
  ]),
  describePlan: args([planned]),
  describeEvening: args([evenings]),
  // Pictures, sentences and small texts: from a few real ones, since what is drawn was worked out before.
  answerPicture: args([pictureInput]),
  describePicture: args([pictured]),
  pictureLayout: args([pictured], [record({ width: oneOf(320, 720) }, [])]),
  pictureSvg: args([pictured], [record({ width: oneOf(320, 720), standalone: fc.boolean() }, [])]),
  pictureAfterStrip: args([pictured, pictured]),
  recipePicture: args([oneOf(hutRecipe)]),
  describeCaution: args([oneOf(...kinetics.compensate(hutKnown, { temperatureC: 57 }).cautions)]),
  describeMixing: args([oneOf(kinetics.mixingSteps(hutBrew))]),
  describeProblem: args([oneOf(...hutProblems)]),
  describeProblems: args([oneOf(hutProblems)]),
  describeSteering: args([
    oneOf(kinetics.steer({ baseline: hutKnown, conditions: {}, log: [{ timeS: 0, temperatureC: 18 }] })),
  ]),
  steeringGoal: args([
    oneOf(kinetics.steer({ baseline: hutKnown, conditions: {}, log: [{ timeS: 0, temperatureC: 18 }] })),
    record({ stepS: oneOf(1, 5, 15, 30) }, []),
  ]),
  formatSpread: args([within(0, 2.9)]),
  parseCount: args([oneOf("3", "1,5", "none")]),
  stripOutcome: args([oneOf(hutStrip), oneOf(...hutStrip.timesS)]),
  tableRecords: args([oneOf("Time\tTemp\n8:30\t20 C", "Time,Outcome\n8:30,good")]),
};

/** Calls of these cost a hundred times the others', so they get a part of the calls only. */
export const costly = {
  checkKnowledge: 0.02,
  lawsOf: 0.05,
  planRecipe: 0.3,
  timeChart: 0.3,
  chartRecipe: 0.1,
  chartSvg: 0.2,
  describeChart: 0.3,
  chartCsv: 0.3,
  steer: 0.3,
  startKnowledge: 0.15,
  learn: 0.03,
  predict: 0.2,
  nextTest: 0.05,
  mergeKnowledge: 0.03,
  tidyRuns: 0.05,
  readRunNotes: 0.2,
  checkRecipe: 0.15,
  compensateRecipe: 0.5,
  learnRecipe: 0.03,
  isoSpeed: 0.5,
  fitGrowth: 0.2,
  fitDrift: 0.2,
  brewPh: 0.2,
  brewStrength: 0.05,
  proposeBrew: 0.02,
  checkBrew: 0.2,
  developUntil: 0.3,
  remainingTime: 0.2,
  startTemperatureFor: 0.1,
  planProcess: 0.4,
  replaceDevelopment: 0.3,
  describePlan: 0.3,
  describeEvening: 0.3,
  bathCautions: 0.5,
  answerPicture: 0.02,
  describePicture: 0.02,
  pictureLayout: 0.02,
  pictureSvg: 0.02,
  pictureAfterStrip: 0.02,
  recipePicture: 0.02,
};
