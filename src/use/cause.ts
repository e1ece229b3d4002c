/*
 * Use as a cause: cm² that each litre of the bath has developed, on each side.
 */
import type { Cause, Effect } from "../core/cause.js";
import { stockShare } from "./stockShare.js";
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
  lawFields: ["increase", "perCm2PerL", "growth", "sdIncrease", "shape", "capacityCm2PerL", "dilution"],
  generic: genericUseLaw,
  start: 0,
  column: { name: "usedCm2PerL", side: usedArea },
  read: usedArea,
  check: checkedUseLaw,
  within: notTooSlow,
  // An area counts by the stock in the litre.
  inBath: (at, law, usedCm2PerL, dilution) => usedCm2PerL / stockShare(at, dilution, law),
  effect: useEffect,
  logAt: (law, from) => {
    const before = useSlope(law, from);
    return (to) => law.increase * (useSlope(law, to) - before);
  },
};

/** The effect of going from one use to another: the increase times what it acts through. */
export function useEffect(law: UseLaw, from: number, to: number): Effect {
  const slope = useSlope(law, to) - useSlope(law, from);
  return { log: law.increase * slope, slope, sd: increaseSd(law), beside: 0 };
}
