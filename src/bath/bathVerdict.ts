import { checkedAgeLaw } from "../age/law.js";
import { gravestFirst, isPast, type Caution } from "../core/caution.js";
import { LONGEST_ANSWER_S, SHOWS } from "../core/estimate.js";
import { inRange, knownEntry, plainObject, positive } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import { handbookDilution } from "../handbook/dilution.js";
import { checkedUseLaw } from "../use/useFactor.js";
import { capacityOf, type CapacityBath } from "./capacityOf.js";
import { judgeBath, type DeveloperBath } from "./judgeBath.js";
import { lifeOfBrew } from "./lifeOfBrew.js";
import { say } from "./text.js";
import { useOf } from "./useOf.js";

const WHERE = "bathVerdict/bath";
const FIELDS: readonly string[] = [
  ...["usedCm2PerL", "ageH", "dilution", "use", "age", "capacityCm2PerL", "keepingLimitH", "timeS", "highS"],
  ...["brew", "family", "leastMlPerRoll", "material"],
];

/** A bath to be judged, and what it is made of, from which a capacity follows where none is stated. */
export interface VerdictBath
  extends DeveloperBath, Pick<CapacityBath, "brew" | "family" | "leastMlPerRoll" | "material"> {}

/**
 * What {@link bathVerdict} returns: `factor` is the time factor against a fresh bath, also where the verdict
 * is to discard.
 */
export interface BathVerdict {
  /** what to do with the bath */
  readonly verdict: "usable" | "more-time" | "discard" | "unknown";
  /** time in this bath over time in a fresh one */
  readonly factor: number;
  /** the reasons */
  readonly cautions: readonly Caution[];
}

/**
 * Judges a bath: usable as it is, usable with more time, to be discarded, or unknown, with the reasons.
 *
 * @param bath - use, age and dilution, with laws and limits where known
 * @returns the verdict, the time factor from use and age, and the reasons as cautions, gravest first
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range
 *
 * @remarks Discard: past its life or its keeping limit, past its capacity (its own, else that of its use
 * law at its dilution), dead before the pour-out, or slower than twice the fresh bath (common practice).
 * Where none is stated, and `brew`, `family`, `leastMlPerRoll` or `material` says what the bath is for, past
 * the capacity that `bathCapacity` reckons is a warning, several times past it a stop. Where nothing says it,
 * more film than practice gives a bath is a warning. A generic rule alone calls no
 * bath too slow that is within a capacity of its own. Unknown: nothing is said of the bath, or it has an
 * age and neither a law nor a limit for it, or is older than a law of its first day covers; also where its
 * use alone asks for more time. More time: the factor is above 1.05, a change that shows. `compensate`
 * stops for the same baths by the same rules. A bath is past a limit from a billionth above it, which is
 * rounding. A field that is not read has a caution. Past its life no time is right, and `factor` then holds
 * the use alone. A `brew` lives as {@link brewLife} says, unless `age` is a life or a half-life: how its time
 * grows says nothing of its end.
 *
 * @example
 * ```ts
 * bathVerdict({ ageH: 2, age: { kind: "life", lifeH: 1 } }).verdict // => "discard"
 * bathVerdict({ usedCm2PerL: 20000, ageH: 500 }).verdict // => "discard"
 * bathVerdict({ ageH: 500 }).verdict // => "unknown"
 * ```
 */
export function bathVerdict(bath: VerdictBath): BathVerdict {
  const { usedCm2PerL, ageH, use, age, brew, keepingLimitH } = readBath(bath);
  const life = lifeOfBrew(brew);
  const { factor, cautions } = judgeBath(WHERE, {
    ...bath,
    use: useOf(bath.material, use),
    life,
    estimatedCm2PerL: estimated(bath),
  });
  const old = cautions.some(({ code }) => code === "age-unknown");
  const lawless = ageH !== undefined && ageH > 0 && (age ?? life ?? keepingLimitH) === undefined;
  const causes: string[] = [];
  if (use === undefined && usedCm2PerL !== undefined && usedCm2PerL > 0) causes.push("use");
  if (lawless) causes.push("age");
  // A bath that is only too old to be known may still work.
  const discard = cautions.some(({ code, severity }) => severity === "stop" && code !== "age-unknown");
  const slow = !discard && !old && isPast(factor, SHOWS);
  const unknown = old || lawless || (usedCm2PerL === undefined && ageH === undefined);
  return {
    verdict: discard ? "discard" : unknown ? "unknown" : slow ? "more-time" : "usable",
    factor,
    cautions: gravestFirst([
      ...cautions,
      ...unreadFields("", bath, FIELDS),
      ...(slow ? [say("bath-slow", "note", { path: "", quantity: "ratio", actual: factor })] : []),
      ...(causes.length > 0 ? [say("default-law", "note", { path: "", data: { causes } })] : []),
    ]),
  };
}

/** The capacity that follows from what the bath is, as `bathCapacity` reckons it; of an unknown bath none. */
function estimated(bath: VerdictBath): number | undefined {
  const { brew, family, leastMlPerRoll, material, dilution, use } = bath;
  // The same in each litre, whatever there is of it. Each field is checked here, used or not.
  const { capacityCm2PerL } = capacityOf(WHERE, {
    volumeMl: 1000,
    brew,
    family,
    leastMlPerRoll,
    material,
    dilution,
    use,
  });
  const said = [brew, family, leastMlPerRoll, material].some((one) => one !== undefined);
  return said ? capacityCm2PerL : undefined;
}

/** Checks the numbers and laws of a bath, and its family, which an own least stock goes before. */
function readBath(bath: VerdictBath): VerdictBath {
  plainObject(WHERE, bath);
  if (bath.family !== undefined) knownEntry(`${WHERE}/family`, handbookDilution, bath.family);
  const { usedCm2PerL, ageH, use, age, capacityCm2PerL, keepingLimitH, timeS, highS } = bath;
  if (usedCm2PerL !== undefined) inRange(WHERE, usedCm2PerL, 0, 1e6, "cm2PerL", "/usedCm2PerL");
  if (ageH !== undefined) inRange(WHERE, ageH, 0, 1e6, "ageH", "/ageH");
  if (capacityCm2PerL !== undefined) positive(WHERE, capacityCm2PerL, 1e6, "cm2PerL", "/capacityCm2PerL");
  if (keepingLimitH !== undefined) positive(WHERE, keepingLimitH, 1e6, "ageH", "/keepingLimitH");
  if (timeS !== undefined) inRange(WHERE, timeS, 0, LONGEST_ANSWER_S, "timeS", "/timeS");
  if (highS !== undefined) inRange(WHERE, highS, timeS ?? 0, LONGEST_ANSWER_S, "timeS", "/highS");
  if (use !== undefined) checkedUseLaw(`${WHERE}/use`, use);
  if (age !== undefined) checkedAgeLaw(`${WHERE}/age`, age);
  return bath;
}
