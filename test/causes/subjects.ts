/*
 * What the table of laws needs to know of each cause: laws, conditions that they allow, and a step from one condition
 * to a slower one. Complete by type: a cause in src/causes.ts without an entry here does not compile.
 */
import type { CauseName } from "../../src/causes.js";
import {
  ageFactor,
  agitationFactor,
  celsiusToFahrenheit,
  contrastFactor,
  dilutionFactor,
  fahrenheitToCelsius,
  filmAreaCm2,
  formatDilution,
  parseAge,
  parseAgitation,
  parseDilution,
  parseUse,
  pushFactor,
  temperatureFactor,
  useFactor,
  type AgeLaw,
  type Agitation,
  type AgitationLaw,
  type Dilution,
  type DilutionLaw,
  type GrowthLaw,
  type PushLaw,
  type Strength,
  type StrengthCorrection,
  type TemperatureLaw,
  type UseLaw,
} from "../../src/index.js";
import {
  edged,
  ageH,
  agitation,
  agitationLaw,
  dilution,
  dilutionLaw,
  temperatureC,
  temperatureLaw,
  usedCm2PerL,
  useLaw,
} from "../properties/generators.js";
import { fc } from "../property.js";

/** Why a cause has no part in a law. */
export type Why = string;

/** One cause, as the laws try it. */
export interface Subject<Law, Given> {
  /** every form of the law, as a caller writes it */
  readonly law: fc.Arbitrary<Law>;
  /** conditions for which the law has a time, often where two of its pieces join */
  readonly given: (law: Law) => fc.Arbitrary<Given>;
  /** the condition moved by a step, above 0 toward a longer time; nothing where there is no condition so near */
  readonly slower: (given: Given, step: number, law: Law) => Given | undefined;
  /** the cause's own function */
  readonly factor: ((from: Given, to: Given, law: Law) => number) | Why;
  /** the same condition in other words or another unit */
  readonly said: ((given: Given) => Given) | Why;
  /** the law with its rows in another order */
  readonly reordered: ((law: Law) => Law) | Why;
  /** the law with all its times so many times as long */
  readonly rescaled: ((law: Law, times: number) => Law) | Why;
}

/** A number without an exponent, as people write it. */
const written = (value: number): string => value.toFixed(30);
const within = (value: number, min: number, max: number): number | undefined =>
  value >= min && value <= max ? value : undefined;
const NO_ROWS = "its law has no rows";
const NO_TIMES = "no time stands in its law";

const temperature: Subject<TemperatureLaw, number> = {
  law: temperatureLaw,
  given: (law) =>
    law.kind === "table"
      ? fc.oneof(fc.constantFrom(...law.rows.map((row) => row.temperatureC)), temperatureC)
      : temperatureC,
  slower: (c, step) => within(c - step, 0, 100),
  factor: temperatureFactor,
  said: (c) => Math.min(100, Math.max(0, fahrenheitToCelsius(celsiusToFahrenheit(c)))),
  reordered: (law) => (law.kind === "table" ? { ...law, rows: [...law.rows].reverse() } : law),
  rescaled: (law, times) =>
    law.kind === "table"
      ? { ...law, rows: law.rows.map((row) => ({ ...row, timeS: row.timeS * times })) }
      : law,
};

const partsOf = (given: Dilution | string): Dilution =>
  typeof given === "string" ? parseDilution(given) : given;
const dilutionSubject: Subject<DilutionLaw, Dilution | string> = {
  law: fc.oneof(
    dilutionLaw,
    // With what runs taught of the walk between two dilutions, no steeper than the power: weaker is not quicker.
    fc
      .record({ exponent: edged(0, 3), rise: edged(-1, 0.7), sd: edged(0, 0.2) })
      .map(({ exponent, rise, sd }): DilutionLaw => ({
        kind: "power",
        exponent,
        departures: [
          { at: -3, log: 0, sd: 0 },
          { at: -2.3, log: rise * exponent, sd },
        ],
      })),
  ),
  given: (law) =>
    law.kind === "table"
      ? fc.oneof(fc.constantFrom(...law.rows.map((row) => row.dilution)), dilution)
      : fc.oneof(dilution, fc.constantFrom("stock", "1+9", "1+14", "2+1+7")),
  slower: (given, step) => {
    const { stockParts, waterParts } = partsOf(given);
    const water = within(waterParts + step * stockParts, 0, 1e5 * stockParts);
    return water === undefined ? undefined : { stockParts, waterParts: water };
  },
  factor: dilutionFactor,
  said: (given) => (typeof given === "string" ? parseDilution(given) : formatDilution(given)),
  reordered: (law) => (law.kind === "table" ? { ...law, rows: [...law.rows].reverse() } : law),
  rescaled: (law, times) =>
    law.kind === "table"
      ? { ...law, rows: law.rows.map((row) => ({ ...row, timeS: row.timeS * times })) }
      : law,
};

const agitationSubject: Subject<AgitationLaw, Agitation> = {
  law: agitationLaw,
  given: () => agitation,
  slower: (given, step) => {
    // Stand has a rate of its own, which no interval comes near: a very long one may be slower or quicker.
    if (given === "stand") return undefined;
    const everyS = (given === "continuous" ? 0 : given.everyS) + step;
    return everyS >= 1e-12 && everyS <= 3600 ? { everyS } : undefined;
  },
  factor: agitationFactor,
  said: (given) =>
    typeof given === "string" ? parseAgitation(given) : parseAgitation(`${written(given.everyS)} s`),
  reordered: NO_ROWS,
  rescaled: NO_TIMES,
};

const ROLL_CM2 = filmAreaCm2("120");
const use: Subject<UseLaw, number> = {
  law: useLaw,
  given: ({ perCm2PerL }) => fc.oneof(usedCm2PerL, fc.constantFrom(0, Math.min(6000, perCm2PerL))),
  slower: (used, step) => within(used + step, 0, 1e6),
  factor: useFactor,
  said: (used) => parseUse(`${written(used / ROLL_CM2)} rolls/l`),
  reordered: NO_ROWS,
  rescaled: NO_TIMES,
};

/** The age up to which a law gives a time, h. */
const lastH = (law: AgeLaw): number =>
  law.kind === "life" ? law.lifeH : law.kind === "half-life" ? 10 * law.halfLifeH : 1e6;
const age: Subject<AgeLaw, number> = {
  law: fc.oneof<fc.Arbitrary<AgeLaw>[]>(
    fc.record({ kind: fc.constant("half-life" as const), halfLifeH: edged(0.1, 1e6, 120) }),
    fc.record({ kind: fc.constant("life" as const), lifeH: edged(0.1, 1e6, 1.5) }),
    // Without a run such a law stands for a bath of which nothing is known.
    fc.record({
      kind: fc.constant("slowing" as const),
      perRootH: edged(-1, 1, 0, 0.02),
      runs: fc.constantFrom(0, 3),
    }),
    fc.record({
      kind: fc.constant("speeding" as const),
      perDay: edged(-1, 1, 0, 0.1),
      runs: fc.constantFrom(0, 3),
    }),
  ),
  // A speeding law ends after a day, a slowing one after 25 h.
  given: (law) => fc.oneof(ageH, fc.constantFrom(0, 24, 25)).map((old) => Math.min(old, lastH(law))),
  // What runs taught may be a bath that quickens, until its number ends; past the covered hours older is slower.
  slower: (old, step, law) => {
    const number = law.kind === "slowing" ? law.perRootH : law.kind === "speeding" ? law.perDay : 1;
    const older = number >= 0 || old >= (law.kind === "slowing" ? 25 : 24);
    // An untaught law covers a day: in the one hour of its number after that the two act against each other.
    if (!older && law.runs === 0 && old > 24) return undefined;
    return within(older ? old + step : old - step, 0, lastH(law));
  },
  factor: ageFactor,
  said: (old) => parseAge(`${written(old * 60)} min`),
  reordered: NO_ROWS,
  rescaled: NO_TIMES,
};

const strength: Subject<StrengthCorrection, Strength> = {
  law: fc.record(
    { correction: fc.oneof(fc.constant(0), edged(-3, 3)), sdCorrection: edged(0, 10, 1) },
    { requiredKeys: ["correction"] },
  ),
  given: () =>
    fc.oneof(
      fc.constant<Strength>({ value: 1, logSd: 0, basis: "unchanged" }),
      fc.record({ value: edged(0.01, 100, 1), logSd: edged(0, 2), basis: fc.constant("given" as const) }),
    ),
  // Runs that put the law of amounts off by more than itself say that it goes the wrong way.
  slower: (given, step, { correction }) => {
    const value = correction < -1 ? undefined : within(given.value * Math.exp(step), 1e-6, 1e6);
    return value === undefined ? undefined : { ...given, value };
  },
  factor: "brewStrength makes one from two brews, and has the factor in it",
  said: "it is a result of brewStrength, which nobody writes",
  reordered: NO_ROWS,
  rescaled: NO_TIMES,
};

const contrast: Subject<GrowthLaw, number> = {
  law: fc.record(
    {
      gammaInfinity: edged(0.5, 3, 1.8),
      ratePerS: edged(1e-4, 0.02, 0.002),
      appearanceS: edged(0, 200, 30),
      sd: fc.record({ gammaInfinity: edged(0, 0.3), ratePerS: edged(0, 1e-3), appearanceS: edged(0, 3) }),
    },
    { requiredKeys: ["gammaInfinity", "ratePerS", "appearanceS"] },
  ),
  given: ({ gammaInfinity }) => edged(0.01, 0.99, 0.5).map((share) => share * gammaInfinity),
  // A share of what is left to the nearer limit, 0 or the one that no time reaches.
  slower: (gamma, step, { gammaInfinity }) => {
    const left = Math.min(gamma, gammaInfinity - gamma);
    return within(gamma + step * left, 0.005 * gammaInfinity, 0.995 * gammaInfinity);
  },
  factor: contrastFactor,
  said: "a gradient is a bare number",
  reordered: NO_ROWS,
  // Half the rate and twice the time of appearance.
  rescaled: (law, times) => ({
    ...law,
    ratePerS: law.ratePerS / times,
    appearanceS: law.appearanceS * times,
  }),
};

const push: Subject<PushLaw, number> = {
  law: fc.record(
    { perStop: edged(1, 3, 1.2), growth: edged(0, 1, 0.022), sdPerStop: edged(0, 3, 0.09) },
    { requiredKeys: ["perStop"] },
  ),
  // A pull has no growth of its step: the two pieces join at 0.
  given: () => edged(-3, 5, 0, 1),
  slower: (stops, step) => within(stops + step, -3, 5),
  factor: (from, to, law) => pushFactor(to, law) / pushFactor(from, law),
  said: "stops are a bare number",
  reordered: NO_ROWS,
  rescaled: NO_TIMES,
};

/** Every cause by its name. */
export const subjects: { readonly [Name in CauseName]: Subject<any, any> } = {
  temperature,
  dilution: dilutionSubject,
  agitation: agitationSubject,
  use,
  age,
  strength,
  contrast,
  push,
};
