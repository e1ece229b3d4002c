/*
 * Generators of laws, baths and days that reach their edges: 0 and 100 °C, one second,
 * 1+1000, exactly a row.
 */
import { fc, real } from "../property.js";
import type {
  AgeLaw,
  Agitation,
  AgitationLaw,
  Baseline,
  Dilution,
  DilutionLaw,
  DilutionRow,
  Knowledge,
  TemperatureLaw,
  TemperatureRow,
  UseLaw,
} from "../../src/index.js";

/** A value, or its edges and usual values. */
export const edged = (min: number, max: number, ...usual: number[]): fc.Arbitrary<number> =>
  fc.oneof(fc.constantFrom(min, max, ...usual), real(min, max));

export const temperatureC: fc.Arbitrary<number> = edged(0, 100, 20, 13, 27, 38);

export const arrheniusLaw: fc.Arbitrary<Extract<TemperatureLaw, { kind: "arrhenius" }>> = fc.record(
  {
    kind: fc.constant("arrhenius" as const),
    activationEnergyKJPerMol: edged(0, 200, 60),
    sdKJPerMol: edged(0, 200, 21),
  },
  { requiredKeys: ["kind", "activationEnergyKJPerMol"] },
);

/**
 * Up to 15 % a degree, so that it can always be written as an Arrhenius law of at most 200 kJ/mol; the spread
 * likewise.
 */
export const coefficientLaw: fc.Arbitrary<Extract<TemperatureLaw, { kind: "coefficient" }>> = fc
  .record({
    perDegree: edged(0, 0.15),
    intervalC: edged(0.1, 100, 7, 10),
    spread: fc.option(edged(0, 0.15), { nil: undefined }),
  })
  .map(({ perDegree, intervalC, spread }) => {
    const ratio = Math.exp(perDegree * intervalC);
    const law = { kind: "coefficient" as const, ratio, intervalC };
    return spread === undefined ? law : { ...law, sdRatio: ratio * spread * intervalC };
  });

/**
 * Rows from cold to warm, level stretches included, the first at 0 °C or the last at 100 °C now and then,
 * times down to a second.
 */
export const temperatureRows: fc.Arbitrary<readonly TemperatureRow[]> = fc
  .record({
    at: fc.uniqueArray(
      fc.oneof(
        fc.constantFrom(0, 100),
        fc.integer({ min: 0, max: 400 }).map((quarter) => quarter / 4),
      ),
      { minLength: 2, maxLength: 7 },
    ),
    steps: fc.array(fc.oneof(fc.constant(0), real(0, 0.12)), { minLength: 7, maxLength: 7 }),
    lastS: fc.constantFrom(1, 240, 330),
  })
  .map(({ at, steps, lastS }) => {
    const warmFirst = at.slice().sort((a, b) => b - a);
    let timeS: number = lastS;
    return warmFirst
      .map((c, i): TemperatureRow => {
        if (i > 0) timeS *= Math.exp(steps[i]! * (warmFirst[i - 1]! - c));
        return { temperatureC: c, timeS: Math.min(timeS, 1e7) };
      })
      .reverse();
  });

export const temperatureTable: fc.Arbitrary<Extract<TemperatureLaw, { kind: "table" }>> = temperatureRows
  .chain((rows) => fc.shuffledSubarray(rows.slice(), { minLength: rows.length }))
  .map((rows) => ({ kind: "table" as const, rows }));

export const temperatureLaw: fc.Arbitrary<TemperatureLaw> = fc.oneof(
  arrheniusLaw,
  coefficientLaw,
  temperatureTable,
);

/** A law with temperatures that are often exactly rows of its table. */
export const lawWithTemperatures: fc.Arbitrary<{
  readonly law: TemperatureLaw;
  readonly at: readonly [number, number, number];
}> = temperatureLaw.chain((law) => {
  const rows = law.kind === "table" ? law.rows.map((row) => row.temperatureC) : [20];
  const c = fc.oneof(fc.constantFrom(...rows), temperatureC);
  return fc.record({ law: fc.constant(law), at: fc.tuple(c, c, c) });
});

/** From stock to 1+1000, whole and broken parts. */
export const dilution: fc.Arbitrary<Dilution> = fc.oneof(
  fc.constantFrom(
    { stockParts: 1, waterParts: 0 },
    { stockParts: 1, waterParts: 1000 },
    { stockParts: 1, waterParts: 9 },
  ),
  fc.record({ stockParts: fc.integer({ min: 1, max: 12 }), waterParts: fc.integer({ min: 0, max: 1000 }) }),
  fc.record({ stockParts: fc.integer({ min: 1, max: 100 }).map((n) => n / 10), waterParts: real(0, 1000) }),
);

export const powerLaw: fc.Arbitrary<Extract<DilutionLaw, { kind: "power" }>> = fc.record(
  { kind: fc.constant("power" as const), exponent: edged(0, 3, 0.8, 1), sd: edged(0, 3, 0.32) },
  { requiredKeys: ["kind", "exponent"] },
);

/** Rows from strong to weak, level stretches included, from one second up, stock and 1+1000 now and then. */
export const dilutionRows: fc.Arbitrary<readonly DilutionRow[]> = fc
  .record({
    water: fc.uniqueArray(fc.oneof(fc.constantFrom(0, 1000), fc.integer({ min: 0, max: 200 })), {
      minLength: 2,
      maxLength: 6,
    }),
    powers: fc.array(fc.oneof(fc.constant(0), real(0, 2)), { minLength: 6, maxLength: 6 }),
    firstS: fc.constantFrom(1, 300, 411),
  })
  .map(({ water, powers, firstS }) => {
    const strongFirst = water.slice().sort((a, b) => a - b);
    let timeS: number = firstS;
    return strongFirst.map((waterParts, i): DilutionRow => {
      if (i > 0) timeS *= ((1 + waterParts) / (1 + strongFirst[i - 1]!)) ** powers[i]!;
      timeS = Math.min(timeS, 1e7);
      return { dilution: i % 2 === 0 ? `1+${waterParts}` : { stockParts: 1, waterParts }, timeS };
    });
  });

export const dilutionTable: fc.Arbitrary<Extract<DilutionLaw, { kind: "table" }>> = dilutionRows.map(
  (rows) => ({ kind: "table" as const, rows }),
);

export const dilutionLaw: fc.Arbitrary<DilutionLaw> = fc.oneof(powerLaw, dilutionTable);

export const agitation: fc.Arbitrary<Agitation> = fc.oneof(
  fc.constantFrom<Agitation>("continuous", "stand"),
  edged(0.001, 3600, 1, 30, 60).map((everyS): Agitation => ({ everyS })),
);

export const agitationLaw: fc.Arbitrary<AgitationLaw> = fc.oneof(
  fc.record({ staleLoss: edged(0, 0.99, 0.73), staleTimeS: edged(0.1, 1e5, 75) }),
  // Learned from runs.
  fc.record({ staleLoss: edged(0, 10, 0.73), staleTimeS: edged(0.1, 1e5, 75), shape: edged(0, 0.99, 0.73) }),
);

export const usedCm2PerL: fc.Arbitrary<number> = edged(0, 6000, 516.128, 1032.256);

export const useLaw: fc.Arbitrary<UseLaw> = fc
  .record({
    increase: edged(0, 0.5, 0.1),
    perCm2PerL: edged(500, 1e6, 516.128),
    growth: fc.constantFrom("linear" as const, "compound" as const),
  })
  .chain((law) => fc.constantFrom<UseLaw[]>(law, { ...law, shape: 0.1 }, { ...law, shape: 0 }));

export const ageH: fc.Arbitrary<number> = edged(0, 1000, 0.5, 24);

/** Half-lives long enough that no age generated here passes ten of them. */
export const ageLaw: fc.Arbitrary<AgeLaw> = fc.oneof(
  fc.record({ kind: fc.constant("half-life" as const), halfLifeH: edged(120, 1e6) }),
  fc.record({ kind: fc.constant("life" as const), lifeH: edged(0.1, 1e6, 1.5) }),
);

/** A known time with every condition named; one second is among the times. */
export const baseline: fc.Arbitrary<
  Required<Pick<Baseline, "timeS" | "temperatureC" | "dilution" | "agitation" | "usedCm2PerL" | "ageH">>
> = fc.record({
  timeS: edged(1, 1e6, 300, 510),
  temperatureC,
  dilution: fc.oneof(dilution, fc.constantFrom("stock", "1+9", "2+1+7", "1+1000")),
  agitation,
  usedCm2PerL,
  ageH,
});

export const knowledge: fc.Arbitrary<Knowledge> = fc.record(
  { temperature: temperatureLaw, dilution: dilutionLaw, agitation: agitationLaw, use: useLaw, age: ageLaw },
  { requiredKeys: [] },
);
