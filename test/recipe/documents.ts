/*
 * Recipes for the tests. All are invented: a weekend workshop in a mountain hut, tap water at 14 °C.
 */
import { changed, takeAway, type Holder } from "../documents/changed.js";
import { fc } from "../property.js";

/** A recipe as somebody may have written it. */
interface Written {
  readonly material?: object;
  readonly developer: object;
  readonly baseline: object;
  readonly conditions?: object;
  readonly knowledge?: object;
  readonly notes?: readonly string[];
  readonly [more: string]: unknown;
}

/** A developer from the kitchen, with everything a recipe can say. */
export const hutCoffee: Written = {
  schemaVersion: 2,
  name: "Hut coffee, for plates",
  material: {
    name: "dry plate",
    kind: "plate",
    sensitization: "orthochromatic",
    emulsion: "soft",
    iso: 25,
    areaCm2: 108,
    iodideRich: false,
  },
  developer: {
    kind: "brew",
    name: "hut coffee",
    brew: {
      volumeMl: 500,
      ingredients: [
        { ingredient: "instant-coffee", massG: 20, lowG: 18, highG: 22 },
        { ingredient: "soda-anhydrous", massG: 20 },
        { ingredient: "ascorbic-acid-tablet", tablets: 8, labelMg: 1000 },
      ],
      temperatureC: 18,
    },
    hydroquinone: false,
    capacityCm2PerL: 2000,
    keepingLimitH: 2,
  },
  baseline: {
    timeS: 900,
    temperatureC: 20,
    agitation: { everyS: 60 },
    usedCm2PerL: 0,
    ageH: 0,
    gamma: 0.6,
    logSd: 0.05,
  },
  agitation: { everyS: 30 },
  conditions: { temperatureC: 19, usedCm2PerL: 0, ageH: 0.5, gamma: 0.65 },
  knowledge: {
    temperature: {
      kind: "coefficient",
      ratio: 2,
      intervalC: 10,
      sdRatio: 0.1,
      sources: ["own strips"],
      runs: 4,
    },
    agitation: { staleLoss: 1.2, staleTimeS: 70, sdStaleLoss: 0.1, shape: 0.7, runs: 3 },
    use: {
      increase: 0.12,
      perCm2PerL: 516.128,
      growth: "linear",
      sdIncrease: 0.02,
      shape: 0.1,
      capacityCm2PerL: 2500,
      runs: 3,
    },
    age: { kind: "life", lifeH: 1 },
    growth: {
      gammaInfinity: 1.4,
      ratePerS: 0.0015,
      appearanceS: 60,
      sd: { gammaInfinity: 0.1, ratePerS: 0.0002, appearanceS: 10 },
    },
  },
  baths: {
    preSoak: { durationS: 60, temperatureC: 19, dilution: "stock" },
    stop: { kind: "water" },
    fix: {
      kind: "rapid",
      clearingS: 45,
      clearingAtC: 20,
      freshClearingS: 40,
      times: 2,
      usedCm2PerL: 500,
      capacityCm2PerL: 9000,
      dilution: "1+4",
    },
    clearingAid: {},
    wash: { method: "changes" },
    wettingAgent: { dilution: "1+400" },
  },
  byInspection: true,
  notes: ["Stir until the bubbles are gone."],
  sources: ["own-runs"],
};

/** A stock solution. */
export const hutStock: Written = {
  schemaVersion: 2,
  material: { name: "sheet film" },
  developer: { kind: "stock", name: "p-aminophenol stock", dilution: "1+50" },
  baseline: { timeS: 660, temperatureC: 20 },
};

const within = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.constantFrom(min, max, (min + max) / 2),
    fc.double({ min, max, noNaN: true, noDefaultInfinity: true }),
  );
const above0 = (max: number): fc.Arbitrary<number> => within(1e-6, max);
const optional = (
  model: Readonly<Record<string, fc.Arbitrary<unknown>>>,
  requiredKeys: readonly string[],
): fc.Arbitrary<unknown> => fc.record(model, { requiredKeys: [...requiredKeys] });
const lines = fc.array(fc.string({ maxLength: 20 }), { maxLength: 3 });
const dilution = fc.oneof(
  fc.constantFrom("stock", "1+0", "1+9", "2+1+7", "0.1+9999.9", "9999.9+0", "1+1+1+1", "1.5+3"),
  fc.tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 0, max: 9999 })).map(([a, b]) => `${a}+${b}`),
);
const agitation = fc.oneof(fc.constantFrom("continuous", "stand"), fc.record({ everyS: above0(3600) }));
const used = within(0, 1e6);
const gamma = fc.oneof(within(0.3, 1), within(0.01, 1000));
const origin = { sources: lines, runs: fc.integer({ min: 0, max: 1e6 }) };
const form = (
  kind: string,
  model: Readonly<Record<string, fc.Arbitrary<unknown>>>,
  required: readonly string[],
): fc.Arbitrary<unknown> => optional({ kind: fc.constant(kind), ...model, ...origin }, ["kind", ...required]);

// Half of the tables are in order, the others as they come.
const temperatureRows = fc.oneof(
  fc.array(fc.record({ temperatureC: within(0, 100), timeS: above0(1e7) }), { minLength: 2, maxLength: 5 }),
  fc
    .uniqueArray(fc.integer({ min: 0, max: 100 }), { minLength: 2, maxLength: 6 })
    .map((list) => list.map((c) => ({ temperatureC: c, timeS: 1000 * Math.exp(-c / 12) }))),
);
const dilutionRows = fc.oneof(
  fc.array(fc.record({ dilution, timeS: above0(1e7) }), { minLength: 2, maxLength: 5 }),
  fc
    .uniqueArray(fc.integer({ min: 0, max: 200 }), { minLength: 2, maxLength: 6 })
    .map((list) => list.map((n) => ({ dilution: `1+${n}`, timeS: 60 * (1 + n) }))),
);
const knowledge = optional(
  {
    temperature: fc.oneof(
      form("arrhenius", { activationEnergyKJPerMol: within(0, 200), sdKJPerMol: within(0, 200) }, [
        "activationEnergyKJPerMol",
      ]),
      form(
        "coefficient",
        { ratio: fc.oneof(within(1, 4), within(1, 1e9)), intervalC: above0(100), sdRatio: within(0, 4) },
        ["ratio", "intervalC"],
      ),
      form("table", { rows: temperatureRows }, ["rows"]),
    ),
    dilution: fc.oneof(
      form("power", { exponent: within(0, 3), sd: within(0, 3) }, ["exponent"]),
      form("table", { rows: dilutionRows }, ["rows"]),
    ),
    agitation: fc.oneof(
      optional({ staleLoss: within(0, 0.99), staleTimeS: above0(1e5), sdStaleLoss: within(0, 10) }, [
        "staleLoss",
        "staleTimeS",
      ]),
      optional(
        {
          staleLoss: within(0, 10),
          staleTimeS: above0(1e5),
          sdStaleLoss: within(0, 10),
          shape: within(0, 0.99),
        },
        ["staleLoss", "staleTimeS", "shape"],
      ),
    ),
    use: optional(
      {
        increase: within(0, 10),
        perCm2PerL: within(0.001, 1e6),
        growth: fc.constantFrom("linear", "compound"),
        sdIncrease: within(0, 10),
        shape: within(0, 10),
        capacityCm2PerL: above0(1e6),
      },
      ["increase", "perCm2PerL", "growth"],
    ),
    growth: optional(
      {
        gammaInfinity: fc.oneof(within(1, 3), within(0.01, 1000)),
        ratePerS: within(1e-7, 100),
        appearanceS: within(0, 1e6),
        ...origin,
      },
      ["gammaInfinity", "ratePerS", "appearanceS"],
    ),
    age: fc.oneof(
      form("half-life", { halfLifeH: within(1e-3, 1e6), sdLog: within(0, 3), sdRatePerH: within(0, 3e3) }, [
        "halfLifeH",
      ]),
      form("life", { lifeH: above0(1e6) }, ["lifeH"]),
    ),
  },
  [],
);
const bath = { durationS: above0(86400), temperatureC: within(0, 100), dilution };
const baths = optional(
  {
    preSoak: optional(bath, []),
    stop: optional({ kind: fc.constantFrom("acid", "water"), ...bath }, []),
    fix: optional(
      {
        kind: fc.constantFrom("rapid", "plain"),
        clearingS: above0(7200),
        clearingAtC: within(0, 40),
        freshClearingS: above0(7200),
        times: within(1, 10),
        usedCm2PerL: used,
        capacityCm2PerL: above0(1e6),
        ...bath,
      },
      [],
    ),
    clearingAid: optional(bath, []),
    wash: optional({ method: fc.constantFrom("running", "soak", "changes"), ...bath }, []),
    wettingAgent: optional(bath, []),
  },
  [],
);
const grams = within(0, 60);
const named = fc.constantFrom(
  "instant-coffee",
  "soda-anhydrous",
  "baking-soda",
  "borax",
  "ascorbic-acid",
  "sodium-hydroxide",
  "table-salt",
);
const part = fc.oneof(
  fc.record({ ingredient: named, massG: grams }),
  optional({ ingredient: named, massG: grams, lowG: grams, highG: grams }, ["ingredient", "massG"]),
  fc.record({
    ingredient: fc.constant("ascorbic-acid-tablet"),
    tablets: within(0, 20),
    labelMg: above0(1000),
  }),
);
const limits = { hydroquinone: fc.boolean(), capacityCm2PerL: above0(1e6), keepingLimitH: above0(1e6) };
const stock = {
  kind: fc.constant("stock"),
  name: fc.string({ maxLength: 20 }),
  dilution,
  volumeMl: above0(1e6),
  leastMlPerRoll: above0(1e5),
  family: fc.constantFrom("ascorbate-stock", "solvent-stock", "concentrate", "p-aminophenol"),
  ...limits,
};
const brew = optional(
  {
    volumeMl: within(50, 1e5),
    ingredients: fc.array(part, { minLength: 1, maxLength: 5 }),
    temperatureC: within(0, 50),
  },
  ["volumeMl", "ingredients"],
);
const shared = {
  name: fc.string({ maxLength: 20 }),
  developer: fc.oneof(
    optional(stock, ["kind", "name", "dilution"]),
    optional({ kind: fc.constant("brew"), name: fc.string({ maxLength: 20 }), brew, ...limits }, [
      "kind",
      "brew",
    ]),
  ),
  agitation,
  conditions: optional(
    { temperatureC: within(0, 100), usedCm2PerL: used, ageH: fc.oneof(within(0, 10), within(0, 1e6)), gamma },
    [],
  ),
  knowledge,
  baths,
  byInspection: fc.boolean(),
  notes: lines,
  sources: lines,
};
const known = {
  temperatureC: within(0, 100),
  dilution,
  agitation,
  usedCm2PerL: used,
  ageH: within(0, 10),
  gamma,
  logSd: within(0, 3),
};
const material = optional(
  {
    name: fc.string({ maxLength: 20 }),
    kind: fc.constantFrom("film", "plate", "paper"),
    sensitization: fc.constantFrom("blue-sensitive", "orthochromatic", "panchromatic"),
    emulsion: fc.constantFrom("soft", "hardened"),
    iso: above0(1e5),
    areaCm2: above0(1e6),
    iodideRich: fc.boolean(),
  },
  ["name"],
);

/** Documents whose shape is right; their values need not go together. */
export const recipes: fc.Arbitrary<unknown> = optional(
  {
    schemaVersion: fc.constant(2),
    material,
    baseline: optional({ timeS: within(1, 1e6), ...known }, ["timeS", "temperatureC"]),
    ...shared,
  },
  ["schemaVersion", "material", "developer", "baseline"],
);

const odd = fc.oneof(
  fc.constantFrom(
    null,
    true,
    "",
    "stock",
    "1:9",
    "table",
    0,
    -1,
    0.5,
    1e9,
    1e308,
    -0,
    [],
    {},
    { kind: "table" },
    "brew",
    "life",
    "0+9",
    "1+99999",
  ),
  fc.jsonValue({ maxDepth: 2 }),
);

/** Takes a field away, adds a strange one, or replaces a value. */
const strange =
  (how: number, place: number, value: unknown) =>
  (holder: Holder, key: string): void => {
    const name = ["__proto__", "constructor", "new~/"][place % 3]!;
    if (how === 0) takeAway(holder, key, value);
    else if (how === 1 && !Array.isArray(holder))
      Object.defineProperty(holder, name, { value, enumerable: true, configurable: true, writable: true });
    else holder[key] = value;
  };

/** Documents near the format: a right one with up to three changes. */
export const nearRecipes: fc.Arbitrary<unknown> = fc
  .tuple(recipes, fc.array(fc.tuple(fc.nat(), fc.integer({ min: 0, max: 4 }), odd), { maxLength: 3 }))
  .map(([document, changes]) =>
    changes.reduce((now, [place, how, value]) => changed(now, place, strange(how, place, value)), document),
  );
