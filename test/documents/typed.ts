/*
 * Documents of the public types, with values from the ranges that their fields state. What the values of one
 * field ask of another is left to chance, where it cannot be had for nothing.
 */
import {
  compensate,
  type AgeLaw,
  type Agitation,
  type AgitationLaw,
  type Baseline,
  type BathLedger,
  type Caution,
  type Conditions,
  type DevelopmentRun,
  type Dilution,
  type DilutionLaw,
  type DilutionRow,
  type GrowthLaw,
  type GrowthSpread,
  type InteractionLaw,
  type JointSpread,
  type Knowledge,
  type LearnedKnowledge,
  type LedgerVolume,
  type NewtonDrift,
  type PushLaw,
  type RunOutcome,
  type SteeringReading,
  type Strength,
  type LearnedBrew,
  type StrengthCorrection,
  type TemperatureLaw,
  type TemperatureLog,
  type TemperatureRow,
  type UseLaw,
} from "../../src/index.js";
import { fc } from "../property.js";
import { above0, document, kinds, mostly, text, within } from "./model.js";

const kind = <Kind extends string>(name: Kind): fc.Arbitrary<Kind> => fc.constant(name);
const lines = fc.array(text(2000), { maxLength: 3 });
const count = fc.integer({ min: 0, max: 1e6 });
const origin = {
  sources: lines,
  published: fc.boolean(),
  runs: fc.oneof(fc.constantFrom(0, 1e6), fc.integer({ min: 0, max: 40 })),
  before: fc.constantFrom("given", "handbook", "default", "own-runs"),
  moved: fc.boolean(),
  seen: fc.constantFrom("read", "from-memory", "common-practice"),
} as const;

// temperature
const temperatureC = mostly(within(10, 30), within(0, 100));
const stepS = above0(1e7);
const slower = fc
  .uniqueArray(fc.integer({ min: 0, max: 100 }), { minLength: 2, maxLength: 6 })
  .map((each) => each.map((celsius) => ({ temperatureC: celsius, timeS: 1000 * Math.exp(-celsius / 12) })));
const departuresFrom = (start: number, most = 5) =>
  fc.array(fc.tuple(within(0.1, most), within(-1, 1), within(0, 1)), { maxLength: 4 }).map((steps) => {
    let at = start;
    return steps.map(([more, log, sd]) => ({ at: (at += more), log, sd }));
  });
type Kind<Law extends { readonly kind: string }, Name extends Law["kind"]> = Extract<
  Law,
  { readonly kind: Name }
>;
const temperatureLaw = kinds<TemperatureLaw>({
  arrhenius: document<Kind<TemperatureLaw, "arrhenius">>(
    { kind: kind("arrhenius"), activationEnergyKJPerMol: within(0, 200) },
    { sdKJPerMol: within(0, 200), hydroquinone: fc.boolean(), departures: departuresFrom(10), ...origin },
  ),
  coefficient: fc
    .tuple(
      document<Kind<TemperatureLaw, "coefficient">>(
        { kind: kind("coefficient"), ratio: within(0, 0.15), intervalC: above0(100) },
        { sdRatio: within(0, 1), hydroquinone: fc.boolean(), ...origin },
      ),
    )
    // The ratio and its spread have limits that follow from the interval.
    .map(([{ ratio: perDegree, sdRatio: share, ...law }]) => {
      const ratio = Math.exp(perDegree * law.intervalC);
      return { ...law, ratio, ...(share !== undefined && { sdRatio: share * ratio * law.intervalC }) };
    }),
  table: document<Kind<TemperatureLaw, "table">>(
    {
      kind: kind("table"),
      rows: fc.oneof(
        { weight: 4, arbitrary: slower },
        {
          weight: 1,
          arbitrary: fc.array(document<TemperatureRow>({ temperatureC, timeS: above0(1e7) }, { stepS }), {
            minLength: 2,
            maxLength: 4,
          }),
        },
      ),
    },
    {
      energyOffKJPerMol: within(-200, 200),
      sdKJPerMol: within(0, 200),
      hydroquinone: fc.boolean(),
      departures: departuresFrom(10),
      ...origin,
    },
  ),
});
const drift = document<NewtonDrift>(
  { startC: temperatureC, ambientC: within(-50, 100), timeConstantS: mostly(within(600, 9000), above0(1e7)) },
  {},
);
const risingLog: fc.Arbitrary<TemperatureLog> = fc
  .array(fc.tuple(within(0.1, 5000), temperatureC, fc.boolean()), { minLength: 2, maxLength: 6 })
  .map((steps) => {
    let timeS = 0;
    return steps.map(([moreS, celsius, changed]) => {
      timeS += moreS;
      return { timeS, temperatureC: celsius, ...(changed && { changed }) };
    });
  });

// dilution
const dilutionText = fc.oneof(
  fc.constantFrom("stock", "Stock ", "1+0", "1+9", "2+1+7", "0.1+9999.9", "1,5 + 3", "1+1+1+1"),
  fc.tuple(fc.integer({ min: 1, max: 9999 }), fc.nat({ max: 9999 })).map(([a, b]) => `${a}+${b}`),
);
const parts = document<Dilution>(
  { stockParts: within(0.5, 1e4), waterParts: within(0, 1e4) },
  { stocks: fc.array(within(0.5, 9), { minLength: 1, maxLength: 4 }) },
).map((one) =>
  one.stocks === undefined ? one : { ...one, stockParts: one.stocks.reduce((sum, part) => sum + part, 0) },
);
const dilution = fc.oneof(dilutionText, parts);
const departures = departuresFrom(-20);
const dilutionLaw = kinds<DilutionLaw>({
  power: document<Kind<DilutionLaw, "power">>(
    { kind: kind("power"), exponent: within(0, 3) },
    { sd: within(0, 3), scatterLogSd: within(0, 3), departures, ...origin },
  ),
  table: document<Kind<DilutionLaw, "table">>(
    {
      kind: kind("table"),
      rows: fc.oneof(
        {
          weight: 4,
          arbitrary: fc
            .uniqueArray(fc.nat({ max: 200 }), { minLength: 2, maxLength: 6 })
            .map((each) => each.map((water) => ({ dilution: `1+${water}`, timeS: 60 * (1 + water) }))),
        },
        {
          weight: 1,
          arbitrary: fc.array(document<DilutionRow>({ dilution, timeS: above0(1e7) }, { stepS }), {
            minLength: 2,
            maxLength: 4,
          }),
        },
      ),
    },
    { exponentOff: within(-3, 3), sd: within(0, 3), departures, ...origin },
  ),
});

// agitation
const agitation: fc.Arbitrary<Agitation> = fc.oneof(
  fc.constantFrom("continuous", "stand"),
  fc.record({ everyS: above0(3600) }),
);
const agitationLaw: fc.Arbitrary<AgitationLaw> = document<AgitationLaw>(
  { staleLoss: within(0, 10), staleTimeS: mostly(within(10, 300), above0(1e5)) },
  { sdStaleLoss: mostly(within(0, 1), within(0, 10)), shape: within(0, 0.99), departures, ...origin },
  // A loss of more than 0.99 is a scale along the curve of a shape.
).map((law) => (law.shape === undefined ? { ...law, staleLoss: law.staleLoss * 0.099 } : law));

// use and age
const usedCm2PerL = mostly(within(0, 2000), within(0, 1e6));
const useLaw = document<UseLaw>(
  {
    increase: mostly(within(0, 0.3), within(0, 10)),
    perCm2PerL: mostly(within(200, 2000), within(0.001, 1e6)),
    growth: fc.constantFrom("linear", "compound"),
  },
  {
    sdIncrease: mostly(within(0, 0.2), within(0, 10)),
    shape: mostly(within(0, 0.3), within(0, 10)),
    capacityCm2PerL: above0(1e6),
    dilution,
    ...origin,
  },
);
const ageH = mostly(within(0, 3), within(0, 1e6));
const ageLaw = kinds<AgeLaw>({
  "half-life": document<Kind<AgeLaw, "half-life">>(
    { kind: kind("half-life"), halfLifeH: mostly(within(5, 5000), within(1e-3, 1e6)) },
    { sdLog: within(0, 3), sdRatePerH: mostly(within(0, 0.1), within(0, 1e3)), ...origin },
  ),
  "life": document<Kind<AgeLaw, "life">>(
    { kind: kind("life"), lifeH: mostly(within(5, 5000), above0(1e6)) },
    { lowH: within(0.2, 1), ...origin },
    // The lower end is a share of the life.
  ).map((law) => (law.lowH === undefined ? law : { ...law, lowH: law.lowH * law.lifeH })),
  "speeding": document<Kind<AgeLaw, "speeding">>(
    { kind: kind("speeding"), perDay: within(-1, 1) },
    { sdPerDay: within(0, 3), coversH: above0(1e6), ...origin },
  ),
  "slowing": document<Kind<AgeLaw, "slowing">>(
    { kind: kind("slowing"), perRootH: within(-1, 1) },
    { sdPerRootH: within(0, 3), coversH: above0(1e6), ...origin },
  ),
});

// strength, contrast, push, interaction
/** Real cautions, of a hut that is too cold. */
const cautions: readonly Caution[] = compensate(
  { timeS: 540, temperatureC: 20, hydroquinone: true },
  { temperatureC: 9, usedCm2PerL: 900 },
).cautions;
const strength = document<Strength>(
  {
    value: mostly(within(0.2, 5), above0(1e6)),
    logSd: mostly(within(0, 1), within(0, 10)),
    basis: fc.constantFrom("unchanged", "given", "handbook", "default", "own-runs"),
  },
  {
    ...origin,
    cause: kind("strength"),
    slope: within(-10, 10),
    lifeH: mostly(within(10, 1000), within(0, 1e6)),
    lifeLowH: within(0, 1),
    capacityCm2PerL: above0(1e6),
    cautions: fc.subarray([...cautions]),
  },
).map((one) => (one.lifeLowH === undefined ? one : { ...one, lifeLowH: one.lifeLowH * (one.lifeH ?? 1) }));
const strengthLaw = document<StrengthCorrection>(
  { correction: mostly(within(-3, 3), within(-1000, 1000)) },
  {
    sdCorrection: within(0, 10),
    brews: fc.array(
      document<LearnedBrew>(
        {
          value: above0(1e6),
          logSd: within(0, 10),
          slope: within(-10, 10),
          log: within(-10, 10),
          sd: within(0, 10),
        },
        {},
      ),
      { maxLength: 3 },
    ),
    ...origin,
  },
);
const share = within(-1, 1);
const gamma = mostly(within(0.3, 0.9), above0(1000));
const growthLaw = document<GrowthLaw>(
  { gammaInfinity: mostly(within(1, 3), above0(1000)), ratePerS: above0(100), appearanceS: within(0, 1e6) },
  {
    sd: document<GrowthSpread>(
      {
        gammaInfinity: mostly(within(0, 0.3), within(0, 1000)),
        ratePerS: within(0, 100),
        appearanceS: within(0, 1e6),
      },
      { correlation: fc.record({ limitRate: share, limitAppearance: share, rateAppearance: share }) },
    ),
    ...origin,
  },
);
const pushLaw = document<PushLaw>(
  { perStop: within(1, 3) },
  { growth: within(0, 1), sdPerStop: within(0, 3), departures: departuresFrom(-3, 2), ...origin },
);
const interactionLaw = document<InteractionLaw>(
  { perHalvingKJPerMol: within(-100, 100) },
  { sdKJPerMol: within(0, 100), ...origin },
);

// the main job
const bathFields = { dilution, agitation, usedCm2PerL, ageH, gamma };
/** Known times. */
export const baselines: fc.Arbitrary<Baseline> = document<Baseline>(
  { timeS: mostly(within(60, 3600), above0(1e6)), temperatureC },
  {
    ...bathFields,
    logSd: mostly(within(0, 0.3), within(0, 3)),
    runs: count,
    sources: lines,
    before: origin.before,
    moved: origin.moved,
    hydroquinone: fc.boolean(),
    emulsion: fc.constantFrom("soft", "hardened"),
  },
);
/** Today's conditions. */
export const conditions: fc.Arbitrary<Conditions> = document<Conditions>(
  {},
  {
    temperatureC: fc.oneof(
      { weight: 4, arbitrary: temperatureC },
      { weight: 1, arbitrary: drift },
      risingLog,
    ),
    ...bathFields,
    pushStops: within(-3, 5),
    strength,
    thermometer: text(200),
    by: text(200),
    batch: text(200),
  },
);
const offset = fc.record({ parameter: text(200), value: within(-10, 10), sd: within(0, 10) });
/** Two numbers and their correlation: the second has the rest as its own. */
const joint: fc.Arbitrary<JointSpread> = document<JointSpread>(
  {
    baseline: baselines,
    parameters: fc.constant(["baseline", "temperature"]),
    correlation: within(-0.99, 0.99).map((both) => [
      [1, both],
      [both, 1],
    ]),
    unshared: fc.constant([1, 1]),
  },
  { offsets: fc.array(offset, { maxLength: 2 }) },
).map((one) => ({ ...one, unshared: [1, Math.sqrt(1 - one.correlation[0]![1]! ** 2)] }));
const laws = {
  temperature: temperatureLaw,
  dilution: dilutionLaw,
  agitation: agitationLaw,
  use: useLaw,
  age: ageLaw,
  strength: strengthLaw,
  growth: growthLaw,
  push: pushLaw,
  interaction: interactionLaw,
  batchLogSd: within(0, 3),
  joint,
};
/** Laws. */
export const knowledge: fc.Arbitrary<Knowledge> = document<Knowledge>({}, laws);

// the bath and its thermometer
const atH = within(10, 200);
const volumes = fc.array(document<LedgerVolume>({ atH, volumeMl: mostly(above0(100), above0(1e7)) }, {}), {
  maxLength: 3,
});
/** Ledgers of baths. */
export const ledgers: fc.Arbitrary<BathLedger> = document<BathLedger>(
  {
    volumeMl: mostly(within(300, 5000), above0(1e7)),
    mixedAtH: mostly(within(-100, 10), within(-1e7, 1e7)),
    processed: fc.array(fc.record({ atH, areaCm2: above0(1e6) }), { maxLength: 4 }),
  },
  {
    replenished: fc.array(
      document<LedgerVolume & { readonly mlPerCm2?: number | undefined }>(
        { atH, volumeMl: above0(1e7) },
        { mlPerCm2: above0(10) },
      ),
      { maxLength: 3 },
    ),
    toppedUp: volumes,
    pouredOff: volumes,
    evaporated: volumes,
  },
);
/** Logs as they come, of readings in any order. */
export const readings: fc.Arbitrary<readonly SteeringReading[]> = fc.array(
  fc
    .tuple(
      document<Omit<SteeringReading, "temperatureC">>(
        { timeS: mostly(within(0, 1500), within(0, 1e7)) },
        { changed: fc.constant(true as const) },
      ),
      fc.oneof(
        { weight: 6, arbitrary: temperatureC },
        fc.double(),
        fc.constantFrom(null, undefined, 0, 85, -127, NaN),
      ),
    )
    .map(([reading, given]) => ({ ...reading, temperatureC: given })),
  { minLength: 1, maxLength: 8 },
);

// learning
const logSd = mostly(within(0.01, 0.5), above0(3));
const density = mostly(within(0.3, 2), above0(10));
const note = text(2000);
const outcome = kinds<RunOutcome>({
  good: document<Kind<RunOutcome, "good">>({ kind: kind("good") }, { logSd }),
  thin: document<Kind<RunOutcome, "thin">>({ kind: kind("thin") }, {}),
  dense: document<Kind<RunOutcome, "dense">>({ kind: kind("dense") }, {}),
  judged: document<Kind<RunOutcome, "judged">>(
    { kind: kind("judged"), timeRatio: mostly(within(0.5, 2), above0(100)) },
    { logSd },
  ),
  steps: document<Kind<RunOutcome, "steps">>(
    { kind: kind("steps"), steps: within(-10, 10) },
    { perStep: within(1.05, 4), logSd },
  ),
  gamma: document<Kind<RunOutcome, "gamma">>(
    { kind: kind("gamma"), gamma: density, wanted: density },
    { sd: above0(3), logSd },
  ),
  density: document<Kind<RunOutcome, "density">>(
    { kind: kind("density"), density, wanted: density },
    { sd: above0(3), logSd },
  ),
  appearance: document<Kind<RunOutcome, "appearance">>(
    { kind: kind("appearance"), appearanceS: above0(1e6), factor: mostly(within(5, 60), above0(1000)) },
    { logSd },
  ),
  failed: document<Kind<RunOutcome, "failed">>({ kind: kind("failed") }, { note }),
  fogged: document<Kind<RunOutcome, "fogged">>({ kind: kind("fogged") }, { note }),
});
/** Runs of a notebook. */
export const runs: fc.Arbitrary<readonly DevelopmentRun[]> = fc.array(
  document<DevelopmentRun>(
    { timeS: mostly(within(200, 1500), above0(1e6)), temperatureC, outcome },
    {
      dilution,
      agitation,
      usedCm2PerL,
      ageH,
      strength,
      pushStops: within(-3, 5),
      thermometer: text(200),
      by: text(200),
      batch: text(200),
      printed: fc.constant(true as const),
      id: text(200),
      date: fc.constantFrom("2026-11-27", "2026-11-28 19:30", "2026-11-29T08:15:00Z"),
      note,
    },
  ),
  { maxLength: 3 },
);
const derived = document<Omit<LearnedKnowledge, "schema" | "prior" | "runs">>(
  {
    baseline: baselines,
    parameters: fc.array(
      fc.record({
        parameter: text(200),
        cause: text(200),
        value: within(-10, 10),
        sd: within(0, 10),
        priorSd: within(0, 10),
        runs: count,
      }),
      { maxLength: 2 },
    ),
    joint,
    scatter: above0(100),
    setAside: fc.array(
      fc.record({
        run: fc.nat({ max: 2 }),
        reason: fc.constantFrom("failed", "fogged", "past-growth", "too-far", "disagrees"),
        weight: within(0, 1),
      }),
      { maxLength: 2 },
    ),
    advice: fc.subarray([...cautions]),
  },
  { ...laws },
);
/** Learned knowledge, whose figures need not follow from its prior and its runs. */
export const learned: fc.Arbitrary<LearnedKnowledge> = fc
  .record({
    derived,
    schema: fc.constant(1 as const),
    prior: fc.record({
      baseline: baselines,
      baseLogSd: mostly(within(0, 0.5), within(0, 3)),
      laws: knowledge,
      noise: fc.constantFrom("estimated", "stated"),
    }),
    runs,
  })
  .map(({ derived: worked, ...known }) => ({ ...worked, ...known }));
