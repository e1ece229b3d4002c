/*
 * What an age law is, and how ln(time) runs with the age of a bath under each form of it.
 */
import { isPast } from "../core/caution.js";
import type { Effect } from "../core/cause.js";
import { inRange, notOneOf, positive, refuse } from "../core/guards.js";
import { checkedOrigin, type LawOrigin } from "../core/term.js";
import { withinLifeText } from "./text.js";

/**
 * How a bath declines with age: slowly, its rate halving every `halfLifeH` (sulphited baths), or not at all
 * until `lifeH` and then at once (alkaline vitamin C, coffee). `sdLog` is the standard deviation of
 * ln(halfLifeH), 0.3 when left out.
 *
 * Two kinds are for a bath of which nothing is printed and own runs are to tell. `"speeding"`: ln(time) grows
 * by `perDay` × (ageH/24)^1.5, slowly at first, and no further after a day; `sdPerDay` is 0.08 when left out.
 * `"slowing"`: ln(time) grows by `perRootH` × √ageH, fast at first, and no further after 25 h; `sdPerRootH`
 * is 0.1 when left out. `coversH` is how long they hold. An older bath is slower. By how much is not known:
 * the time and its spread grow in proportion to the age.
 *
 * @remarks One measured decline loses less at first than on average: the maximum density that a developer
 * gave after 72 to 504 h at 72 °C and 48 to 336 h at 82 °C (R. E. Chapman, Degradation study of a
 * photographic developer to determine shelf life, Quality Engineering 10(1), 1997, pp. 137-140). A straight
 * line in ln(density) fits it slightly better than the power 1.5, the root of the age much worse. Alkaline
 * vitamin C falls off a cliff. The power is an assumption of this package.
 */
export type AgeLaw =
  | ({
      readonly kind: "half-life";
      /** age over which the rate halves, h, 0.001 to 1e6 */
      readonly halfLifeH: number;
      /** standard deviation of ln(halfLifeH), 0 to 3; 0.3 when left out */
      readonly sdLog?: number | undefined;
      /**
       * standard deviation of the rate ln 2/halfLifeH, 1/h, 0 to 3e3, read in the place of `sdLog`. A learned
       * half-life has it: where a bath hardly declines, the logarithm of its half-life tells nothing
       */
      readonly sdRatePerH?: number | undefined;
    } & LawOrigin)
  | ({
      readonly kind: "life";
      /** age up to which the bath works as when fresh, h, above 0 to 1e6 */
      readonly lifeH: number;
      /** age from which it may fail: the lower end of its life, h, above 0 to `lifeH`; that when left out */
      readonly lowH?: number | undefined;
    } & LawOrigin)
  | ({
      readonly kind: "speeding";
      /** growth of ln(time) in the first day, −1 to 1 */
      readonly perDay: number;
      /** its standard deviation, 0 to 3; 0.08 when left out */
      readonly sdPerDay?: number | undefined;
      /** age up to which the law says anything, h, above 0 to 1e6; a day when left out */
      readonly coversH?: number | undefined;
    } & LawOrigin)
  | ({
      readonly kind: "slowing";
      /** growth of ln(time) for each √h, −1 to 1 */
      readonly perRootH: number;
      /** its standard deviation, 0 to 3; 0.1 when left out */
      readonly sdPerRootH?: number | undefined;
      /** age up to which the law says anything, h, above 0 to 1e6; 25 h when left out */
      readonly coversH?: number | undefined;
    } & LawOrigin);

/** How long the general rules of age grow, h: see {@link AgeLaw}. */
const DAY_H = 24;
const SLOWING_H = 25;

/** The spreads of laws that state none: see {@link AgeLaw}. */
const HALF_LIFE_SD_LOG = 0.3;
const SD_PER_DAY = 0.08;
const SD_PER_ROOT_H = 0.1;
/** Within its life a bath works as when fresh, good to this in ln(time) over the whole of it (assumed). */
const LIFE_LOG_SD = 0.1;

/**
 * The age term of a bath that slows with the root of its age, per unit of `perRootH`: √ageH, held after 25 h.
 */
export function slowingRootH(ageH: number): number {
  return Math.sqrt(Math.min(SLOWING_H, ageH));
}

/** The age term of a bath whose decline speeds up, per unit of `perDay`: (ageH/24)^1.5, held after a day. */
export function speedingDay(ageH: number): number {
  const days = Math.min(DAY_H, ageH) / DAY_H;
  return days * Math.sqrt(days);
}

/** The shortest and the longest half-life of a law, h: beyond them a bath is no bath. */
export const LEAST_HALF_LIFE_H = 1e-3;
export const MOST_HALF_LIFE_H = 1e6;
/** The widest spread of a rate, 1/h: the shortest half-life with a spread of 3 has 2.1e3. */
export const MOST_RATE_SD_PER_H = 3e3;

/** Returns the age of a bath from 0 to 1e6 h; throws otherwise. */
export function bathAge(at: string, ageH: unknown): number {
  return inRange(at, ageH, 0, 1e6, "ageH");
}

/** Checks an age law and returns it. */
export function checkedAgeLaw(at: string, given: unknown): AgeLaw {
  const law = checkedOrigin(at, given as AgeLaw);
  const { kind } = law;
  if (kind === "half-life") {
    inRange(at, law.halfLifeH, LEAST_HALF_LIFE_H, MOST_HALF_LIFE_H, "ageH", "/halfLifeH");
    inRange(at, law.sdLog ?? 0, 0, 3, undefined, "/sdLog");
    inRange(at, law.sdRatePerH ?? 0, 0, MOST_RATE_SD_PER_H, undefined, "/sdRatePerH");
  } else if (kind === "slowing") {
    inRange(at, law.perRootH, -1, 1, undefined, "/perRootH");
    inRange(at, law.sdPerRootH ?? 0, 0, 3, undefined, "/sdPerRootH");
  } else if (kind === "speeding") {
    inRange(at, law.perDay, -1, 1, undefined, "/perDay");
    inRange(at, law.sdPerDay ?? 0, 0, 3, undefined, "/sdPerDay");
  } else if ((kind as unknown) === "life") {
    const lifeH = positive(at, law.lifeH, 1e6, "ageH", "/lifeH");
    positive(at, law.lowH ?? lifeH, lifeH, "ageH", "/lowH");
  } else notOneOf(`${at}/kind`, ["half-life", "life", "slowing", "speeding"], kind);
  if (kind === "slowing" || kind === "speeding") positive(at, law.coversH ?? DAY_H, 1e6, "ageH", "/coversH");
  return law;
}

/** The age beyond which a law gives no time, h. */
export function lastAge(law: AgeLaw): number {
  return law.kind === "life" ? law.lifeH : law.kind === "half-life" ? 10 * law.halfLifeH : Infinity;
}

/**
 * The age up to which a law says anything, h: a day where none is given or where it holds after a day,
 * without end where it knows how the bath declines.
 */
export function coveredAge(law: AgeLaw | undefined): number {
  if (law === undefined) return DAY_H;
  if (law.kind === "speeding") return law.coversH ?? DAY_H;
  return law.kind === "slowing" ? (law.coversH ?? SLOWING_H) : Infinity;
}

/** Refuses an age at which a bath gives no time. */
export function notPast(at: string, law: AgeLaw, ageH: number): void {
  const limit = lastAge(law);
  if (isPast(ageH, limit))
    refuse(at, "within-life", withinLifeText, { min: 0, max: limit, quantity: "ageH" }, ageH);
}

/** The `log` of {@link ageEffect} as a function of today's age, to the last bit. */
export function ageLog(law: AgeLaw, fromH: number): (toH: number) => number {
  if (law.kind === "life") return () => 0;
  if (law.kind === "half-life") {
    const rate = Math.LN2 / law.halfLifeH;
    return (toH) => rate * (toH - fromH);
  }
  const shape = law.kind === "speeding" ? speedingDay : slowingRootH;
  const number = law.kind === "speeding" ? law.perDay : law.perRootH;
  const before = shape(fromH);
  return (toH) => number * (shape(toH) - before) + unknownAge(law, fromH, toH).log;
}

/** The effect of going from one age to another under a checked law, both within its limits. */
export function ageEffect(law: AgeLaw, fromH: number, toH: number): Effect {
  const differenceH = toH - fromH;
  if (law.kind === "half-life") {
    const rate = Math.LN2 / law.halfLifeH;
    const sd = law.sdRatePerH ?? (law.sdLog ?? HALF_LIFE_SD_LOG) * rate;
    return { log: rate * differenceH, slope: differenceH, sd, beside: 0 };
  }
  if (law.kind !== "life") {
    const speeding = law.kind === "speeding";
    const shape = speeding ? speedingDay : slowingRootH;
    const slope = shape(toH) - shape(fromH);
    const unknown = unknownAge(law, fromH, toH);
    const log = (speeding ? law.perDay : law.perRootH) * slope + unknown.log;
    // A law that no run has taught has the spread of no law at every age.
    if (law.runs === 0) return { log, slope: 0, sd: 0, beside: unknown.sd };
    const sd = speeding ? (law.sdPerDay ?? SD_PER_DAY) : (law.sdPerRootH ?? SD_PER_ROOT_H);
    return { log, slope, sd, beside: unknown.sd };
  }
  return { log: 0, slope: 0, sd: 0, beside: (LIFE_LOG_SD * Math.abs(differenceH)) / law.lifeH };
}

/** The spread of ln(time) in hours of which nothing is known: 2 % × √h, at most 8 % (assumed). */
const UNKNOWN_PER_ROOT_H = 0.02;
const MOST_COVERED_LOG_SD = 0.08;
/** A wider spread says nothing more: a factor of 140 either way. */
const MOST_UNKNOWN_LOG_SD = 3;
/** The mean of a half-normal of scale 1, √(2/π). */
const ONE_SIDED_MEAN = 0.8;
/**
 * The spread that goes with it. A half-normal has 0.6, √(1 − 2/π), and its upper end is 1.96 at 95 %. A
 * normal about 0.8 with 0.6 would end at 1.79: the long end of a bath of three days would sink by 5.5 %
 * against a spread on both sides. With 0.75 it ends at 2.03, and sinks by 2.6 %.
 */
const ONE_SIDED_SD = 0.75;

/** What hours that no number tells do to ln(time), and how unsure that is. */
interface UnknownAge {
  readonly log: number;
  readonly sd: number;
}

/** Past its first day, or in a law that no run has taught, the number of a law tells nothing. */
function unknownAge(
  law: AgeLaw & { readonly kind: "speeding" | "slowing" },
  fromH: number,
  toH: number,
): UnknownAge {
  if (law.runs === 0) return unknownHours(fromH, toH, law.coversH ?? coveredAge(undefined), 0);
  return unknownHours(fromH, toH, coveredAge(law), law.kind === "speeding" ? DAY_H : SLOWING_H);
}

/**
 * Hours of which the number of a law tells nothing. In those that the law covers no change is expected. Past
 * them a bath may be slower, in proportion to its age, and is never quicker for it (common practice): that
 * part is a half-normal. From an old bath to a fresh one it is the mirror.
 *
 * @param taughtH - up to this age the law's own number tells what happens
 */
function unknownHours(fromH: number, toH: number, coversH: number, taughtH: number): UnknownAge {
  const past = pastCover(toH, coversH) - pastCover(fromH, coversH);
  const untaught = Math.abs(Math.max(taughtH, toH) - Math.max(taughtH, fromH));
  const covered = coveredLogSd(untaught, coversH);
  return { log: ONE_SIDED_MEAN * past, sd: Math.hypot(covered, ONE_SIDED_SD * past) };
}

/** The spread of hours that are covered. */
function coveredLogSd(hours: number, coversH: number): number {
  return Math.min(MOST_COVERED_LOG_SD, UNKNOWN_PER_ROOT_H * Math.sqrt(Math.min(hours, coversH)));
}

/** The scale of what lies past the covered hours: their spread again for each time that they are over. */
function pastCover(ageH: number, coversH: number): number {
  if (!(ageH > coversH)) return 0;
  const covered = coveredLogSd(coversH, coversH);
  return Math.min(MOST_UNKNOWN_LOG_SD, covered * (ageH / coversH)) - covered;
}
