/*
 * Module: brew. How much less than its concentration an ion counts in a salty bath.
 */
import { handbookInteraction } from "../handbook/equilibria.js";

/** Where Davies hands over to specific interaction, mol/kg. */
const JOIN = 0.3;

/** The part of log γ common to all ions, without −A·z². C. W. Davies, Ion Association, 1962 (from memory). */
const davies = (strength: number): number => Math.sqrt(strength) / (1 + Math.sqrt(strength)) - 0.3 * strength;
const specific = (strength: number): number => Math.sqrt(strength) / (1 + 1.5 * Math.sqrt(strength));
const daviesEnd = davies(JOIN) - specific(JOIN);

/**
 * Activity coefficients by charge, 0 to 3, and of hydroxide last. Davies up to 0.3; above, the specific
 * interaction equation log γ = −A z² √I/(1 + 1.5√I) + ε m(Na), added as the change from the same bath diluted
 * to 0.3.
 */
export function activityCoefficients(strength: number, cations: number, debyeHueckel: number): number[] {
  const low = strength <= JOIN;
  const common = low ? davies(strength) : daviesEnd + specific(strength);
  const metal = low ? 0 : cations * (1 - JOIN / strength);
  const { byCharge, hydroxide } = handbookInteraction;
  const logs = byCharge.map((interaction, z) => -debyeHueckel * z * z * common + interaction * metal);
  return [...logs, -debyeHueckel * common + hydroxide * metal].map((log) => 10 ** log);
}
