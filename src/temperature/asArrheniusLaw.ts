import { wrongSide } from "../core/guards.js";
import {
  bathTemperature,
  GAS_CONSTANT_KJ,
  inverseStep,
  checkedTemperatureLaw,
  logTimeRatio,
  temperatureSpread,
  settled,
  type ArrheniusLaw,
  type TemperatureLaw,
} from "./law.js";

/**
 * The Arrhenius law that gives the same temperature coefficient over a stated interval.
 *
 * @param law - any temperature law
 * @param lowC - lower end of the interval at which both agree, 0 to 100 °C
 * @param highC - upper end, above `lowC`, to 100 °C
 * @returns an Arrhenius law, E in kJ/mol, with the standard deviation that the interval implies
 * @throws TypeError or RangeError as {@link temperatureFactor} does, and a RangeError when `highC` is not
 * above `lowC` or the law gives more than 200 kJ/mol there, or a spread above 200 kJ/mol because the interval
 * is too short to tell
 *
 * @remarks E = R ln(rate(high)/rate(low)) / (1/T_low − 1/T_high). Away from the interval the forms part: a
 * coefficient is straight in °C, Arrhenius in 1/T.
 *
 * @example
 * ```ts
 * const law: TemperatureLaw = { kind: "coefficient", ratio: 2, intervalC: 10 };
 * asArrheniusLaw(law, 15, 25).activationEnergyKJPerMol // => 49.51
 * ```
 */
export function asArrheniusLaw(law: TemperatureLaw, lowC: number, highC: number): ArrheniusLaw {
  const ready = checkedTemperatureLaw("asArrheniusLaw/law", law);
  const span = inverseSpan("asArrheniusLaw", lowC, highC);
  const energy = (GAS_CONSTANT_KJ * logTimeRatio(ready, highC, lowC)) / span;
  const sd = (GAS_CONSTANT_KJ * temperatureSpread(ready, lowC, highC)) / span;
  const found: ArrheniusLaw = {
    kind: "arrhenius",
    activationEnergyKJPerMol: settled(Math.max(0, energy), 200),
    sdKJPerMol: settled(sd, 200),
    ...(ready.hydroquinone !== undefined && { hydroquinone: ready.hydroquinone }),
  };
  // A law that comes out must be one that may go in.
  checkedTemperatureLaw("asArrheniusLaw/resulting", found);
  return found;
}

/** 1/T at `lowC` less 1/T at `highC`, checked to be above zero. */
export function inverseSpan(where: string, lowC: number, highC: number): number {
  bathTemperature(`${where}/lowC`, lowC);
  bathTemperature(`${where}/highC`, highC);
  if (!(highC > lowC))
    wrongSide(`${where}/highC`, highC, { above: lowC, quantity: "temperatureC", path: "/lowC" });
  return inverseStep(highC, lowC);
}
