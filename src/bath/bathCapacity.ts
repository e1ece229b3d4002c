import { capacityOf, type BathCapacity, type CapacityBath } from "./capacityOf.js";

/**
 * How much a bath can develop, and whether it is enough.
 *
 * @param bath - its volume (above 0 to 1e6 ml), dilution, brew, laws and limits where known, and the material
 * and area (above 0 to 1e6 cm²) that is to be developed in it
 * @returns the capacity in cm², what is left of it, the limits behind it, and cautions
 * @throws TypeError when something is of the wrong kind, or there is neither a volume nor a brew
 * @throws RangeError when a value is out of range
 *
 * @remarks An own capacity goes first, then that of the use law at its dilution, then the least of: a fifth
 * of the silver that a brew's agent can reduce, bromide released to that of 1 g/l, the least stock of the
 * family, and 250 ml a roll (common practice). Own, printed and stock capacities are as stated, whatever the
 * material; the others count film at 5, plates at 7.5 and paper at 1.6 g/m² of silver (from memory). A
 * bath that was used past a stated capacity is a stop, one that this material takes past it a warning. An
 * estimated capacity is good to a factor of 2 (assumed): up to 5 % is inside its rounding, then it is a
 * warning, and a stop beyond 3.1 times, the upper end of its 90 % range. Past all agent at all silver coated
 * is a stop. One shortage has one caution, of agent, area or stock, whichever is missing most.
 * A dish needs 0.5 ml for each cm²: two fluid ounces for a quarter plate, four for a half plate (household
 * encyclopaedia, Photography: Development of the Negative, part 2).
 *
 * @example
 * ```ts
 * const { capacityCm2, by } = bathCapacity({ volumeMl: 500, areaCm2: 1032.256 });
 * [capacityCm2 / 516.128, by] // => [2, "practice"]
 * ```
 */
export function bathCapacity(bath: CapacityBath): BathCapacity {
  return capacityOf("bathCapacity/bath", bath);
}
