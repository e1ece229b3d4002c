import { plainObject, positive } from "../core/guards.js";

/**
 * The replenisher to add after developing an area.
 *
 * @param rule - `mlPerCm2`: ml of replenisher for each cm², above 0 to 10
 * @param areaCm2 - area developed, above 0 to 1e6 cm²
 * @returns volume to add, ml
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range
 *
 * @remarks Published rates are about 20 to 24 ml a roll of 516 cm² (US Army correspondence subcourse SS0513,
 * p. 23: 8 fl oz for 800 square inches); see {@link handbookReplenishment}. A replenished bath is held, not
 * restored: with this volume in the ledger {@link bathState} gives the use that it had before the area.
 *
 * @example
 * ```ts
 * replenishmentMl({ mlPerCm2: 0.0426 }, 1032.256) // => 43.974
 * ```
 */
export function replenishmentMl(rule: { readonly mlPerCm2: number }, areaCm2: number): number {
  const { mlPerCm2 } = plainObject("replenishmentMl/rule", rule);
  return (
    positive("replenishmentMl/rule/mlPerCm2", mlPerCm2, 10, "mlPerCm2") *
    positive("replenishmentMl/areaCm2", areaCm2, 1e6, "areaCm2")
  );
}
