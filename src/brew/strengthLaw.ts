/*
 * Module: brew. How development time follows developing power, and what stands behind it.
 */
import { frozen } from "../core/frozen.js";
import type { LawOrigin } from "../core/term.js";

/** The spread in the exponent of a law that was given without one: as of a dilution law. */
export const GIVEN_EXPONENT_SD = 0.15;

/** Time ∝ power^−exponent; `sd` is the standard deviation of the exponent, 0.15 when left out. */
export interface StrengthLaw extends LawOrigin {
  /** time is proportional to power^−exponent, 0 to 3 */
  readonly exponent: number;
  /** its standard deviation; 0.15 when left out */
  readonly sd?: number | undefined;
}

/**
 * The law used when nothing is known of the brew: exponent 0.6 ± 0.25.
 *
 * @remarks Borrowed from the dilution of ascorbate stocks, 0.43 to 0.85 (Eastman Kodak, publication F-32),
 * and widened: no series of groceries against time has been published. One strip in the new brew replaces it,
 * see `docs/brew.md`.
 */
export const genericStrengthLaw: StrengthLaw = /* @__PURE__ */ frozen({
  exponent: 0.6,
  sd: 0.25,
  sources: ["dilution of ascorbate stocks, 0.43 to 0.85, widened"],
  runs: 0,
});
