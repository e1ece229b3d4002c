import { genericAgeLaw } from "../age/genericAgeLaw.js";
import { ageEffect, coveredAge, lastAge, type AgeLaw } from "../age/law.js";
import { livesUntil } from "../age/livesUntil.js";
import { covering, lifeOf, ownAge, type LifeLaw } from "../age/ownAge.js";
import { isPast, type Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { factorOf } from "../core/cause.js";
import { logConcentration, readDilution, type Dilution } from "../dilution/dilution.js";
import { PRACTICE_FILM_CM2_PER_L, ROLL_CM2 } from "../handbook/roll.js";
import { pastEstimate } from "./pastEstimate.js";
import { usedUp } from "./usedUp.js";
import { stockShare } from "../use/stockShare.js";
import { genericUseLaw, useSlope, type UseLaw } from "../use/useFactor.js";
import { limitSentences } from "./limitText.js";

/** A bath to be judged: its use and age, and whichever laws and limits are known for it. */
export interface DeveloperBath {
  /** area developed in a litre of the bath, cm²/l, 0 to 1e6; 0 when left out */
  readonly usedCm2PerL?: number | undefined;
  /** age since mixing, h, 0 to 1e6; 0 when left out */
  readonly ageH?: number | undefined;
  /** dilution of the bath, for a rule of use that was printed for another one */
  readonly dilution?: Dilution | string | undefined;
  /** the rule of use; {@link genericUseLaw} when left out */
  readonly use?: UseLaw | undefined;
  /** the law of age; without it age is judged by the keeping limit alone */
  readonly age?: AgeLaw | undefined;
  /** published or own capacity of the bath as it is, cm² per litre; that of the use law when left out */
  readonly capacityCm2PerL?: number | undefined;
  /** published or own keeping limit for the way it is stored, h */
  readonly keepingLimitH?: number | undefined;
  /** the time of the development to come, s: the bath has to live until the pour-out */
  readonly timeS?: number | undefined;
  /** the upper end of the interval of that time, s, no less than `timeS` */
  readonly highS?: number | undefined;
}

/** Slower than this a bath is not used: practice with developers and fixers alike (common practice). */
const SLOWEST = 2;

/** With less stock for a roll no developer of the handbook has enough (common practice): see `leastStock`. */
const LEAST_STOCK_ML = 6;

/** So many times the age that a law covers is far past it: nobody knows what the bath does then (assumed). */
const FAR_AGES = 10;

/** A bath with what is reckoned of it, where nothing is stated or printed. */
export interface JudgedQuestion extends DeveloperBath {
  /** a capacity that follows from what the bath is, cm² per litre: see `pastEstimate` */
  readonly estimatedCm2PerL?: number | undefined;
  /** the life that its make-up gives it, where `age` says nothing of the bath's end */
  readonly life?: LifeLaw | undefined;
  /** the age at which its time was found, h, whatever is known of ageing up to then; 0 when left out */
  readonly knownAgeH?: number | undefined;
}

/** A bath under its laws and limits. */
export interface JudgedBath {
  /** the time factor of use and age together against a fresh bath; of the use alone past a life */
  readonly factor: number;
  /** the limits that it is past, and an age that nothing is known of, each with a path into the bath */
  readonly cautions: readonly Caution[];
}

/**
 * The one judgement of a developing bath: `bathVerdict` and `compensate` both come here.
 *
 * @param where - for errors: the function and its argument
 * @param bath - its numbers and laws are checked by the caller
 * @returns the factor against a fresh bath and a caution for each limit that it is past
 */
export function judgeBath(where: string, bath: JudgedQuestion): JudgedBath {
  const { usedCm2PerL = 0, ageH = 0, use = genericUseLaw, capacityCm2PerL, keepingLimitH } = bath;
  const { dilution, timeS = 0, highS = timeS, knownAgeH = 0 } = bath;
  const share = stockShare(where, dilution, use);
  const life = lifeOf(bath.age, bath.life);
  const age = ownAge(bath.age) ?? life;
  const dead = life !== undefined && isPast(ageH, life.lifeH);
  const aged = (law: AgeLaw | undefined): number => (law === undefined || dead ? 1 : agedFactor(law, ageH));
  const used = usedFactor(use, usedCm2PerL / share);
  const known = used * aged(age);
  const printed = use.capacityCm2PerL === undefined ? undefined : use.capacityCm2PerL * share;
  const cautions: Caution[] = [];
  if (life !== undefined)
    for (const one of livesUntil({ ...life, ageH, timeS, highS })) cautions.push({ ...one, path: "/ageH" });
  if (keepingLimitH !== undefined && isPast(ageH, keepingLimitH))
    cautions.push(
      makeCaution(limitSentences, "bath-past-keeping", "stop", {
        path: "/ageH",
        quantity: "ageH",
        limit: keepingLimitH,
        actual: ageH,
      }),
    );
  const covered = coveredAge(age ?? bath.age);
  const grownH = ageH - knownAgeH;
  if (keepingLimitH === undefined && isPast(grownH, covered))
    cautions.push(
      makeCaution(limitSentences, "age-unknown", isPast(grownH, FAR_AGES * covered) ? "stop" : "warn", {
        path: "/ageH",
        quantity: "ageH",
        limit: covered,
        actual: ageH,
      }),
    );
  const stated = capacityCm2PerL ?? printed;
  const capacity = stated ?? bath.estimatedCm2PerL;
  for (const one of usedUp(usedCm2PerL, capacity, stated !== undefined)) cautions.push(one);
  // Runs in used baths say more of this one than practice does.
  if (capacity === undefined && (use.runs ?? 0) === 0)
    for (const one of wellUsed(usedCm2PerL, usualCapacity(where, dilution))) cautions.push(one);
  // Within a capacity of its own, a rule for any bath does not call it too slow.
  const within = use.runs === 0 && capacityCm2PerL !== undefined && !isPast(usedCm2PerL, capacityCm2PerL);
  if (!within && isPast(known, SLOWEST))
    cautions.push(
      makeCaution(limitSentences, "bath-too-slow", "stop", {
        path: "",
        quantity: "ratio",
        limit: SLOWEST,
        actual: known,
      }),
    );
  // A guess about an old bath counts in its time, but is no reason to throw it out.
  return { factor: used * aged(age ?? covering(bath.age ?? genericAgeLaw, keepingLimitH)), cautions };
}

/** Whether a bath of unknown capacity has developed more film than practice gives it. */
function wellUsed(actual: number, limit: number): readonly Caution[] {
  if (pastEstimate(actual / limit) === undefined) return [];
  const figures = { path: "/usedCm2PerL", quantity: "cm2PerL", limit, actual } as const;
  return [makeCaution(limitSentences, "bath-well-used", "warn", figures)];
}

/** What practice gives a litre of a bath of which nothing is known, in cm² of film. */
function usualCapacity(where: string, dilution: DeveloperBath["dilution"]): number {
  if (dilution === undefined) return PRACTICE_FILM_CM2_PER_L;
  const stockMl = 1000 * Math.exp(logConcentration(readDilution(`${where}/dilution`, dilution)));
  return Math.min(PRACTICE_FILM_CM2_PER_L, (stockMl / LEAST_STOCK_ML) * ROLL_CM2);
}

/** The factor of use against a fresh bath; one beyond 1000 times is judged as one of 1000. */
function usedFactor(use: UseLaw, usedCm2PerL: number): number {
  return Math.min(1000, Math.exp(useSlope(use, usedCm2PerL) * use.increase));
}

/** The factor of age against a fresh bath; past the end of its law it is that at the end. */
function agedFactor(age: AgeLaw, ageH: number): number {
  return factorOf(ageEffect(age, 0, Math.min(ageH, lastAge(age))));
}
