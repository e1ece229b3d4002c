import { knownEntry } from "../core/guards.js";
import { handbookVessels, type HandbookVessel, type DriftVessel } from "../handbook/vessels.js";

/**
 * An estimate of how fast the bath in a usual vessel drifts toward the air or the water around it.
 *
 * @param vessel - for example `"steel-tank-in-air"`
 * @returns the time constant in s with the standard deviation of its logarithm (0.4 is about 40 %), and how
 * it was worked out
 * @throws TypeError when `vessel` is not text
 * @throws RangeError when it is not one of the known vessels; the message lists them
 *
 * @remarks Worked from heat capacity and surface, not measured; two readings of your own and {@link fitDrift}
 * are worth more.
 *
 * @example
 * ```ts
 * handbookVessel("steel-tank-in-air").timeConstantS // => 4200
 * ```
 */
export function handbookVessel(vessel: DriftVessel): HandbookVessel {
  return knownEntry("handbookVessel/vessel", handbookVessels, vessel);
}
