import { LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { gravestFirst, type Caution } from "../core/caution.js";
import { positive, refuse } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { inNameOf } from "../core/inNameOf.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { bathTemperature, type TemperatureLaw } from "../temperature/law.js";
import { rateFunction } from "../temperature/rateFunction.js";
import { fahrenheitCautions, temperatureCautions } from "../temperature/temperatureCautions.js";
import { ambientTemperature } from "./ambient.js";
import { integrate } from "./integrate.js";
import { driftTemperature } from "./newtonDrift.js";
import { freezingText, reachText } from "./refusedText.js";

/** What {@link startTemperatureFor} needs. */
export interface StartTemperatureOptions {
  /** time of development, s, above 0 to 1e7 */
  readonly timeS: number;
  /** the steady temperature that the time is right for, °C, 0 to 100 */
  readonly targetC: number;
  /** of the surroundings, °C, −50 to 100 */
  readonly ambientC: number;
  /** of the vessel, s, above 0 to 1e7 */
  readonly timeConstantS: number;
  /** the temperature law of developer and material; the generic one when left out */
  readonly law?: TemperatureLaw | undefined;
}

/** How warm to pour in. */
export interface StartTemperature {
  /** of the bath at pour-in, °C */
  readonly startC: number;
  /** what is unwise about it */
  readonly cautions: readonly Caution[];
}

/**
 * How warm to pour in, so that a bath drifting toward the air does in the given time the work of a steady
 * one.
 *
 * @param options - the time, the steady temperature it is right for, the surroundings, the vessel's time
 * constant and the law
 * @returns the pour-in temperature, °C, and cautions: about the target, about surroundings that are in °F,
 * and what there is to stop for at pour-in, without a path
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, or no bath from 0 to 100 °C does the work: the text says
 * so
 *
 * @remarks Solves ∫ rate(T(t)) dt = timeS over the drift of Newton's cooling, to 1e-9 °C or better. The
 * answer lies on the other side of the target from the air. A law without temperature (rate always 1) is
 * served by any; the target itself is returned.
 *
 * @example
 * ```ts
 * const law: TemperatureLaw = { kind: "arrhenius", activationEnergyKJPerMol: 60 };
 * startTemperatureFor({ timeS: 600, targetC: 20, ambientC: 14, timeConstantS: 3600, law }).startC // => 20.51
 * ```
 */
export function startTemperatureFor(options: StartTemperatureOptions): StartTemperature {
  const where = "startTemperatureFor/options";
  onlyFields(where, options, ["timeS", "targetC", "ambientC", "timeConstantS", "law"]);
  const timeS = positive(`${where}/timeS`, options.timeS, LONGEST_CLOCK_S, "timeS");
  const targetC = bathTemperature(`${where}/targetC`, options.targetC);
  const ambientC = ambientTemperature(where, options.ambientC);
  const timeConstantS = positive(`${where}/timeConstantS`, options.timeConstantS, LONGEST_CLOCK_S, "timeS");
  const rateAt = inNameOf(where, () => rateFunction(targetC, options.law ?? genericTemperatureLaw));
  // The answer lies beyond the target, on the side away from the surroundings.
  const side = ambientC < targetC ? 1 : -1;
  const missing = (distance: number): number => {
    const temperatureAt = driftTemperature({ startC: targetC + side * distance, ambientC, timeConstantS });
    // A bath below freezing does nothing more: it counts as one at 0 °C here, and is refused below if the
    // answer comes to it.
    const rate = (at: number): number => rateAt(Math.max(0, temperatureAt(at)));
    return side * (timeS - integrate(rate, 0, timeS, timeS * 1e-12));
  };
  let low = 0;
  let high = side > 0 ? 100 - targetC : targetC;
  const enough = timeS * 1e-12;
  if (missing(high) > enough) refuse(`${where}/targetC`, "within-reach", reachText, {}, targetC);
  // The farther from the target, the less is missing: halving always closes in.
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if (missing(middle) > enough) low = middle;
    else high = middle;
  }
  const startC = targetC + side * low;
  if (driftTemperature({ startC, ambientC, timeConstantS })(timeS) < 0)
    refuse(`${where}/ambientC`, "not-freezing", freezingText, { timeS }, ambientC);
  const cautions = [
    ...temperatureCautions(targetC, { path: "/targetC" }),
    ...fahrenheitCautions(ambientC, "/ambientC"),
    ...temperatureCautions(startC).filter(({ severity }) => severity === "stop"),
  ];
  return { startC, cautions: gravestFirst(cautions) };
}
