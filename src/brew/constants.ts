/*
 * Module: brew. Equilibrium constants at the bath's temperature.
 */
import {
  handbookAcids,
  handbookHenry,
  handbookWater,
  type AcidSystem,
  type LogK,
} from "../handbook/equilibria.js";
import { ZERO_CELSIUS_K } from "../temperature/law.js";

/** Constants of one temperature. */
export interface BathConstants {
  readonly acids: Readonly<Record<AcidSystem, readonly number[]>>;
  readonly water: number;
  /** mol of carbon dioxide in a kg of water under one atmosphere of it */
  readonly carbonDioxide: number;
  readonly debyeHueckel: number;
}

function logK([a, b = 0, c = 0, d = 0, e = 0]: LogK, t: number): number {
  return a + b * t + c / t + d * Math.log10(t) + e / t ** 2;
}

/**
 * The constants at a temperature. Debye and Hückel's A from the dielectric constant of water, C. G. Malmberg,
 * A. A. Maryott, J. Res. NBS 56, 1956, p. 1 (from memory): 0.5115 at 25 °C.
 */
export function constantsAt(temperatureC: number): BathConstants {
  const t = temperatureC + ZERO_CELSIUS_K;
  const dielectric = 87.74 + temperatureC * (-0.40008 + temperatureC * (9.398e-4 - 1.41e-6 * temperatureC));
  const acids = Object.fromEntries(
    Object.entries(handbookAcids).map(([acid, steps]) => [acid, steps.map((step) => 10 ** logK(step, t))]),
  ) as Record<AcidSystem, number[]>;
  return {
    acids,
    water: 10 ** logK(handbookWater, t),
    carbonDioxide: 10 ** logK(handbookHenry, t),
    debyeHueckel: 1.8246e6 * (dielectric * t) ** -1.5,
  };
}
