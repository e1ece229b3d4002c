import type { CautionCode } from "./cautionCodes.js";
import type { CautionData } from "./cautionData.js";
import type { MeasuredQuantity } from "./quantity.js";

/**
 * How grave a {@link Caution} is: `"stop"` means do not commit a negative to this, `"warn"` means allowed but
 * unwise, `"note"` is worth knowing.
 */
export type CautionSeverity = "stop" | "warn" | "note";

/**
 * Something that is allowed but unwise. Cautions are returned, never thrown; wrong input throws instead.
 *
 * @remarks `code` is stable and meant for programs; `message` is plain English and may be reworded in any
 * release. `quantity` says what `limit` and `actual` measure, in the unit that its name ends in. `data` holds
 * whatever else the sentence names, so that it can be written in another language. Asking for the `code`
 * tells the compiler the type of `data`.
 */
export type Caution<Code extends CautionCode = CautionCode> = Code extends CautionCode
  ? CautionFields & {
      /** which caution it is, stable for programs */
      readonly code: Code;
    } & (Code extends keyof CautionData
        ? {
            /** what the sentence names besides: an ingredient, causes, a side */
            readonly data: CautionData[Code];
          }
        : {
            /** the sentence names nothing else */
            readonly data?: undefined;
          })
  : never;

/** What every caution has besides its code. */
export interface CautionFields {
  /** how grave it is */
  readonly severity: CautionSeverity;
  /** the sentence in English */
  readonly message: string;
  /** where the value is in what was given: a JSON Pointer (RFC 6901) */
  readonly path?: string | undefined;
  /** what `limit` and `actual` measure */
  readonly quantity?: MeasuredQuantity | undefined;
  /** the limit that was passed, in the unit of `quantity` */
  readonly limit?: number | undefined;
  /** what was found, in the same unit */
  readonly actual?: number | undefined;
}

/**
 * Whether a number is past a limit: the one rule for a capacity, a life, a keeping limit. Up to a billionth
 * above it is at the limit: sums, products and hours on a clock that counts from 1970 round to that.
 */
export const isPast = (actual: number, limit: number): boolean => actual > limit * (1 + 1e-9);

/** How grave, as a rank: 0 is the gravest. A severity that is not known counts as a stop. */
export function gravity(severity: unknown): number {
  return severity === "note" ? 2 : severity === "warn" ? 1 : 0;
}

/** Whether one of the cautions refuses the time: a stop, or a severity that is not known. */
export function refuses(cautions: readonly Caution[]): boolean {
  for (const { severity } of cautions) if (gravity(severity) === 0) return true;
  return false;
}

/** What only says how sure a time is: it harms neither the bath nor the negative. */
const LESS_SURE: readonly CautionCode[] = [
  "wide-interval",
  "other-baseline",
  "default-law",
  "law-unusual",
  "outside-table",
  "far-extrapolation",
  "stand",
  "long-interval",
  "near-limit",
  "temperature-unusual",
  "log-held",
  "log-gap",
];

/** Doubts about what was typed: what else is said of it may be said of a slip. */
const MISREAD: readonly CautionCode[] = ["maybe-minutes", "maybe-fahrenheit", "maybe-celsius"];

/** The places of each severity. */
const PLACES = 3;

/**
 * The place of a caution among others: by gravity, then what may have been meant otherwise, then what harms,
 * then what makes a time less sure.
 */
const place = ({ severity, code }: Caution): number =>
  PLACES * gravity(severity) + (MISREAD.includes(code) ? 0 : LESS_SURE.includes(code) ? 2 : 1);

/**
 * The same cautions, gravest first: stops, warnings, notes. Of one severity a doubt about what was
 * typed comes first, and what may end the bath or spoil the negative before what only makes the time less
 * sure; otherwise they keep their order.
 */
export function gravestFirst(cautions: readonly Caution[]): readonly Caution[] {
  let before = 0;
  let inOrder = true;
  for (const one of cautions) {
    const rank = place(one);
    if (rank < before) inOrder = false;
    before = rank;
  }
  if (inOrder) return cautions;
  const sorted: Caution[] = [];
  for (let rank = 0; rank < 3 * PLACES; rank += 1)
    for (const one of cautions) if (place(one) === rank) sorted.push(one);
  return sorted;
}
