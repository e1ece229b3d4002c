import type { Caution } from "../core/caution.js";
import { makeCaution } from "../core/cautionTexts.js";
import { gradientFrom } from "./averageGradient.js";
import { readCurve, ROUNDING, type CharacteristicCurve } from "./sensitometry.js";
import { speedPointOf } from "./speedPoint.js";
import { isoContrastSentence } from "./text.js";

/** A film speed by ISO 6 arithmetic. */
export interface IsoSpeed {
  /** 0.80 / H at the speed point, unrounded */
  readonly speed: number;
  /** the same in degrees, 1 + 10·log10(speed), to the nearest whole degree */
  readonly degrees: number;
  /**
   * the nearest step of the scale of thirds of a stop: 100, 125, 160 ..., and 12, 6, 3 as they are printed
   */
  readonly rated: number;
  /** the average gradient of the curve */
  readonly averageGradient: number;
  /** where the curve departs from the standard */
  readonly cautions: readonly Caution[];
}

/** The steps of the scale within one power of ten. */
const SCALE = [100, 125, 160, 200, 250, 320, 400, 500, 640, 800];

/** The same below 16, where the scale is printed shorter: 12, 6, 3 and 1.2 (from memory of the standard). */
const LOW_SCALE = [100, 120, 160, 200, 250, 300, 400, 500, 600, 800];

/** How far the rise of density may lie off 0.80: 0.75 and 0.85 themselves are within, however they round. */
const OFF = 0.05 + ROUNDING;

/**
 * The speed of a film from its characteristic curve, by the arithmetic of ISO 6.
 *
 * @param curve - three or more steps, log H in lux seconds
 * @returns speed, degrees, the nearest step of the scale, the average gradient, and a caution where that is
 * not the standard's
 * @throws TypeError or RangeError as {@link averageGradient} does
 *
 * @remarks S = 0.80 lx·s / H, valid where density rises by 0.80 ± 0.05 over 1.30 in log H: ISO 6:1993 (from
 * memory of the standard). Otherwise the number is a speed for that development, not an ISO speed, and a
 * caution says so.
 *
 * @example
 * ```ts
 * const curve = [[-3, 0.1], [-2.5, 0.15], [-2, 0.35], [-1.5, 0.65], [-1, 0.97], [-0.5, 1.3]].map(([logH,
 * density]) => ({ logH, density })); isoSpeed(curve).rated // => 160
 * ```
 */
export function isoSpeed(curve: CharacteristicCurve): IsoSpeed {
  const where = "isoSpeed/curve";
  const read = readCurve(where, curve);
  const point = speedPointOf(where, read);
  const gradient = gradientFrom(where, read, point);
  const speed = 0.8 / 10 ** point.logH;
  const thirds = Math.round(10 * Math.log10(speed));
  const rated =
    ((thirds < 12 ? LOW_SCALE : SCALE)[((thirds % 10) + 10) % 10] as number) *
    10 ** (Math.floor(thirds / 10) - 2);
  const rise = gradient * 1.3;
  const cautions: readonly Caution[] =
    Math.abs(rise - 0.8) > OFF
      ? [
          makeCaution(isoContrastSentence, "not-iso-contrast", "warn", {
            quantity: "density",
            limit: 0.8,
            actual: rise,
          }),
        ]
      : [];
  return { speed, degrees: thirds + 1, rated, averageGradient: gradient, cautions };
}
