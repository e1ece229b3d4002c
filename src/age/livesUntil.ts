import { isPast, type Caution, type CautionSeverity } from "../core/caution.js";
import type { CautionData } from "../core/cautionData.js";
import { makeCaution } from "../core/cautionTexts.js";
import { mayFailSentence, pastLifeSentence } from "../core/text.js";

/** A bath with a life, and the development that it has to last for. */
export interface LifeSpan {
  /** the life of the bath from mixing, h */
  readonly lifeH: number;
  /** the age from which it may fail, h; `lifeH` when left out */
  readonly lowH?: number | undefined;
  /** its age at the pour-in, h */
  readonly ageH: number;
  /** the time of development, s; 0 asks about the pour-in alone */
  readonly timeS?: number | undefined;
  /** the upper end of the interval of that time, s */
  readonly highS?: number | undefined;
}

/**
 * Whether a bath lives until the pour-out.
 *
 * @param span - life and age in h, time and upper end in s, all checked by the caller
 * @returns a caution `bath-past-life` of severity stop where the bath dies before the pour-in or before the
 * time is up, of severity warn where it dies before the upper end of the interval; a caution `bath-may-fail`
 * where that end lies past `lowH` alone; otherwise none. It has no path.
 */
export function livesUntil({
  lifeH,
  lowH = lifeH,
  ageH,
  timeS = 0,
  highS = timeS,
}: LifeSpan): readonly Caution[] {
  if (isPast(ageH, lifeH)) return [pastLife("stop", lifeH, ageH, "pour-in")];
  const endH = ageH + timeS / 3600;
  if (isPast(endH, lifeH)) return [pastLife("stop", lifeH, endH, "pour-out")];
  const latestH = ageH + highS / 3600;
  if (isPast(latestH, lifeH)) return [pastLife("warn", lifeH, latestH, "pour-out")];
  if (isPast(ageH, lowH)) return [mayFail(lowH, ageH, "pour-in")];
  return isPast(latestH, lowH) ? [mayFail(lowH, latestH, "pour-out")] : [];
}

/** Whether the bath is dead before anything is developed in it, or before that is done. */
type At = CautionData["bath-past-life"]["at"];

function pastLife(severity: CautionSeverity, limit: number, actual: number, at: At): Caution {
  const figures = { quantity: "ageH", limit, actual, data: { at } } as const;
  return makeCaution(pastLifeSentence, "bath-past-life", severity, figures);
}

function mayFail(limit: number, actual: number, at: At): Caution {
  const figures = { quantity: "ageH", limit, actual, data: { at } } as const;
  return makeCaution(mayFailSentence, "bath-may-fail", "warn", figures);
}
