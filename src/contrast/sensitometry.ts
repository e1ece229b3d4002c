/*
 * Module: contrast. The characteristic curve: densities of an exposed step tablet over log exposure, and
 * where it reaches a density.
 */
import { monotoneCurve } from "../core/curve.js";
import { arrayOf, inRange, plainObject, refuse } from "../core/guards.js";
import { stepsDifferText } from "./text.js";

/**
 * One step of a tablet: log10 of the exposure in lux seconds (or relative), −10 to 10, and the density it
 * gave, 0 to 10.
 */
export interface DensityStep {
  /** decimal logarithm of the exposure */
  readonly logH: number;
  /** the density it gave */
  readonly density: number;
}

/**
 * Three or more steps; the density of base plus fog is that of the least exposed step when it is not given.
 */
export type CharacteristicCurve =
  | readonly DensityStep[]
  | {
      /** exposures and the densities they gave */
      readonly steps: readonly DensityStep[];
      /** density where nothing was exposed */
      readonly basePlusFog?: number | undefined;
    };

/** A checked curve: density over log exposure, and its ends. */
export interface ReadCurve {
  readonly steps: readonly DensityStep[];
  readonly basePlusFog: number;
  readonly densityAt: (logH: number) => number;
}

/** Checks a curve and draws it through its steps. */
export function readCurve(where: string, curve: CharacteristicCurve): ReadCurve {
  const given = Array.isArray(curve) ? { steps: curve as unknown } : plainObject(where, curve);
  const steps = arrayOf(`${where}/steps`, given["steps"], 3)
    .map((step, i) => {
      const at = `${where}/steps/${i}`;
      const { logH, density } = plainObject(at, step);
      return {
        logH: inRange(at, logH, -10, 10, undefined, "/logH"),
        density: inRange(at, density, 0, 10, undefined, "/density"),
      };
    })
    .sort((a, b) => a.logH - b.logH);
  steps.reduce((before, step) => {
    if (before.logH === step.logH)
      refuse(`${where}/steps`, "steps-differ", stepsDifferText, { logH: step.logH }, undefined);
    return step;
  });
  const least = (steps[0] as DensityStep).density;
  const basePlusFog = inRange(
    where,
    given["basePlusFog"] === undefined ? least : given["basePlusFog"],
    0,
    10,
    undefined,
    "/basePlusFog",
  );
  return {
    steps,
    basePlusFog,
    densityAt: monotoneCurve(steps.map(({ logH, density }) => ({ x: logH, y: density }))),
  };
}

/**
 * Sums of densities and of exposures round: what ends less than this short of a place reaches it. A curve
 * over fog of 0.20 that ends at 0.30 has reached 0.20 + 0.10, which is 0.30000000000000004.
 */
export const ROUNDING = 1e-9;

/**
 * The least log exposure at which a curve rises to a density; `undefined` when it starts above it or never
 * gets there.
 */
export function logHAt({ steps, densityAt }: ReadCurve, density: number): number | undefined {
  const i = steps.findIndex((step) => step.density >= density - ROUNDING);
  const first = steps[0] as DensityStep;
  if (i === 0 && first.density <= density + ROUNDING) return first.logH;
  if (i <= 0) return undefined;
  let low = (steps[i - 1] as DensityStep).logH;
  let high = (steps[i] as DensityStep).logH;
  for (let n = 0; n < 60; n += 1) {
    const middle = (low + high) / 2;
    if (densityAt(middle) < density) low = middle;
    else high = middle;
  }
  return high;
}
