/*
 * Module: brew. How far the pH of a weighed brew may be off, by what the models disagree in.
 */
import type { Solution } from "./equilibrium.js";

/** ± of the model itself: 0.02 up to an ionic strength of 0.1, 0.1 from 0.3 to 3.5, more beyond. */
function modelSpread(ionicStrength: number): number {
  return Math.min(0.1, 0.02 + 0.4 * Math.max(0, ionicStrength - 0.1)) * Math.max(1, ionicStrength / 3.5);
}

/**
 * ± where bicarbonate is present beyond what soda makes by itself: baking soda, or an acid, brought it. In
 * full from a tenth of the carbonate.
 */
function bicarbonateSpread({ ionicStrength, species, hydroxide }: Solution): number {
  const [, bicarbonate = 0, carbonate = 0] = species.carbonate ?? [];
  const brought = bicarbonate - hydroxide;
  if (!(brought > 0)) return 0;
  const share = Math.min(1, (10 * brought) / (bicarbonate + carbonate));
  return share * Math.min(0.2, 0.05 + 0.75 * Math.max(0, ionicStrength - 0.1));
}

/** ± from borate, which joins into rings above 0.02 mol/kg: 2 g of borax a litre. */
function borateSpread({ species }: Solution): number {
  const boron = (species.borate ?? []).reduce((sum, molal) => sum + molal, 0);
  return Math.min(0.3, 1.5 * Math.max(0, boron - 0.02));
}

/**
 * ± from phosphate: the activity of an ion of three charges is a guess above 0.06 mol/kg, 23 g/l of the salt.
 */
function phosphateSpread({ species }: Solution): number {
  const phosphate = (species.phosphate ?? []).reduce((sum, molal) => sum + molal, 0);
  return Math.min(0.3, 3 * Math.max(0, phosphate - 0.06));
}

/** Printed second constants of ascorbic acid run from 11.57 to 12.07. */
const ASCORBATE_PK_RANGE = 0.3;

/** ± from the second constant of ascorbic acid, where ascorbate is the buffer. */
function ascorbateSpread({ species, buffer }: Solution): number {
  const [, once = 0, twice = 0] = species.ascorbate ?? [];
  return once > 0 ? (ASCORBATE_PK_RANGE * Math.LN10 * ((once * twice) / (once + twice))) / buffer : 0;
}

/**
 * About a 90 % half range of the pH of a weighed brew. The sizes are assumed from how far models disagree.
 */
export function phSpread(solution: Solution): number {
  return Math.hypot(
    Math.max(modelSpread(solution.ionicStrength), bicarbonateSpread(solution)),
    borateSpread(solution),
    phosphateSpread(solution),
    ascorbateSpread(solution),
  );
}
