import { isPast, type Caution } from "../core/caution.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import { ageEffect, checkedAgeLaw, lastAge, type AgeLaw } from "../age/law.js";
import { factorOf } from "../core/cause.js";
import { checkedUseLaw, useSlope, type UseLaw } from "../use/useFactor.js";

const WHERE = "bathVerdict/bath";
const FIELDS = ["usedCm2PerL", "ageH", "use", "age", "capacityCm2PerL", "keepingLimitH"];

/** A bath to be judged: its use and age, and whichever laws and limits are known for it. */
export interface Bath {
  readonly usedCm2PerL?: number;
  readonly ageH?: number;
  readonly use?: UseLaw;
  readonly age?: AgeLaw;
  /** published or own capacity, cm² per litre; that of the use law when left out */
  readonly capacityCm2PerL?: number;
  /** published or own keeping limit for the way it is stored, h */
  readonly keepingLimitH?: number;
}

/**
 * What {@link bathVerdict} returns: `factor` is the time factor against a fresh bath, also where the verdict
 * is to discard.
 */
export interface BathVerdict {
  readonly verdict: "usable" | "compensate" | "discard";
  readonly factor: number;
  readonly cautions: readonly Caution[];
}

/**
 * Judges a bath: usable as it is, usable with more time, or to be discarded, with the reasons.
 *
 * @param bath - use in cm²/l (0 to 1e6) and age in h (0 to 1e6), 0 when left out, with laws and limits where
 * known
 * @returns the verdict, the time factor from use and age, and the reasons as cautions, gravest first
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range
 *
 * @remarks Discard: past the life of a bath that dies at once, past its keeping limit, past its capacity (its
 * own, else that of its use law), or slower than twice the fresh bath. Compensate: the factor is above 1.05,
 * a change that shows. The limit of 2 is practice with fixing baths and developers alike (common practice). A
 * bath stands at a limit and not past it up to a billionth above, which is rounding. A field that is not read
 * has a caution. Past its life no time is right, and `factor` then holds the use alone.
 *
 * @example
 * ```ts
 * bathVerdict({ ageH: 2, age: { kind: "life", lifeH: 1 } }).verdict // => "discard"
 * ```
 */
export function bathVerdict(bath: Bath): BathVerdict {
  const { usedCm2PerL = 0, ageH = 0 } = plainObject(WHERE, bath) as unknown as Bath;
  inRange(`${WHERE}/usedCm2PerL`, usedCm2PerL, 0, 1e6, "cm2PerL");
  inRange(`${WHERE}/ageH`, ageH, 0, 1e6, "ageH");
  const cautions: Caution[] = [];
  const over = (code: string, path: string, limit: number, actual: number, message: string): boolean => {
    const past = isPast(actual, limit);
    if (past) cautions.push({ code, severity: "stop", message, path, limit, actual });
    return past;
  };
  const { use, age, keepingLimitH } = bath;
  const own = bath.capacityCm2PerL;
  // The rule that was printed with a capacity holds no further than that.
  const capacityCm2PerL = own === undefined ? use?.capacityCm2PerL : own;
  const dead =
    age?.kind === "life" &&
    over(
      "bath-past-life",
      "/ageH",
      positive(`${WHERE}/age/lifeH`, age.lifeH, 1e6, "ageH"),
      ageH,
      "The bath is past its life: it fails at once, and no time replaces it. Mix fresh.",
    );
  if (keepingLimitH !== undefined) {
    const limit = positive(`${WHERE}/keepingLimitH`, keepingLimitH, 1e6, "ageH");
    over("bath-past-keeping", "/ageH", limit, ageH, "The bath is older than it keeps in this storage.");
  }
  if (capacityCm2PerL !== undefined) {
    const limit = positive(
      WHERE,
      capacityCm2PerL,
      1e6,
      "cm2PerL",
      `${own === undefined ? ".use" : ""}.capacityCm2PerL`,
    );
    over(
      "bath-past-capacity",
      "/usedCm2PerL",
      limit,
      usedCm2PerL,
      "The bath has developed more than its capacity.",
    );
  }
  const used = use === undefined ? 1 : usedFactor(use, usedCm2PerL);
  const factor = used * (age === undefined || dead ? 1 : agedFactor(age, ageH));
  over("bath-too-slow", "", 2, factor, "The bath needs more than twice the time of a fresh one: mix fresh.");
  const unread = unreadFields("", bath, FIELDS);
  if (cautions.length > 0) return { verdict: "discard", factor, cautions: [...cautions, ...unread] };
  if (factor <= 1.05) return { verdict: "usable", factor, cautions: unread };
  return {
    verdict: "compensate",
    factor,
    cautions: [
      ...unread,
      {
        code: "bath-slow",
        severity: "note",
        message: `The bath needs ${((factor - 1) * 100).toFixed(0)} % more time than a fresh one.`,
        actual: factor,
      },
    ],
  };
}

/** The factor of use against a fresh bath; one beyond 1000 times is judged as one of 1000. */
function usedFactor(use: UseLaw, usedCm2PerL: number): number {
  const ready = checkedUseLaw(`${WHERE}/use`, use);
  return Math.min(1000, Math.exp(useSlope(ready, usedCm2PerL) * ready.increase));
}

/** The factor of age against a fresh bath. Beyond the limit of its law it is that of the limit. */
function agedFactor(age: AgeLaw, ageH: number): number {
  const ready = checkedAgeLaw(`${WHERE}/age`, age);
  return factorOf(ageEffect(ready, 0, Math.min(ageH, lastAge(ready))));
}
