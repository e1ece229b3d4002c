import type { Line, NumberOfLaw } from "../core/line.js";
import { increaseSd, useSlope, type UseLaw } from "./useFactor.js";

/** ln of the factor of a use rule, and its slope in the increase. */
export function useLine(where: string, law: UseLaw, usedCm2PerL: number): Line {
  const slope = useSlope(where, law, usedCm2PerL);
  return [law.increase * slope, slope];
}

/** The increase of a use rule. */
export function useNumber(law: UseLaw): NumberOfLaw {
  return [law.increase, increaseSd(law)];
}

/**
 * A use rule with another increase, which scales the curve that the rule had. Of an increase of nothing a
 * trace is left, so that its factor tells on which side of the known use a bath is.
 */
export function withUseNumber(law: UseLaw, [increase, sdIncrease]: NumberOfLaw): UseLaw {
  return { ...law, shape: law.shape ?? law.increase, increase: Math.max(1e-9, increase), sdIncrease };
}
