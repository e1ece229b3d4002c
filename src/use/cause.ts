/*
 * Use as a cause: cm² that each litre of the bath has developed, on each side.
 */
import { isPast, type Caution } from "../core/caution.js";
import type { Cause, Effect } from "../core/cause.js";
import {
  checkedUseLaw,
  genericUseLaw,
  increaseSd,
  notTooSlow,
  usedArea,
  useSlope,
  type UseLaw,
} from "./useFactor.js";

/** Use as a cause. Its parameter is the increase of the rule. */
export const useCause: Cause<UseLaw, number, "use"> = {
  name: "use",
  field: "usedCm2PerL",
  law: "use",
  generic: genericUseLaw,
  start: 0,
  column: { name: "usedCm2PerL", side: usedArea },
  read: usedArea,
  check: checkedUseLaw,
  within: notTooSlow,
  effect: useEffect,
  cautions: pastCapacity,
};

/** The effect of going from one use to another: the increase times what it acts through. */
export function useEffect(law: UseLaw, from: number, to: number): Effect {
  const slope = useSlope(law, to) - useSlope(law, from);
  return { log: law.increase * slope, slope, sd: increaseSd(law), beside: 0 };
}

function pastCapacity({ capacityCm2PerL: limit }: UseLaw, _from: number, to: number): readonly Caution[] {
  if (limit === undefined || !isPast(to, limit)) return [];
  return [
    {
      code: "bath-past-capacity",
      severity: "stop",
      message: "The bath is past its capacity: mix fresh.",
      quantity: "cm2PerL",
      limit,
      actual: to,
    },
  ];
}
