import { arrayOf, inRange, plainObject, positive, refuse } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { pooledSd } from "../core/leastSquares.js";
import { correlationOf, fitRelaxation, standardErrors } from "../core/relaxation.js";
import { checkedGrowth, type GrowthLaw, type GrowthSpread } from "./growth.js";
import { enoughText } from "../core/text.js";
import {
  beforePointText,
  pointsAllSdText,
  pointsBendText,
  pointsCarryText,
  pointsDifferText,
  pointsRiseText,
} from "./text.js";

/** A measured gradient: `sd` is its standard deviation, given for all points or for none. */
export interface GrowthPoint {
  /** time of development, s */
  readonly timeS: number;
  /** the gradient that was measured */
  readonly gamma: number;
  /** standard deviation of the measurement */
  readonly sd?: number | undefined;
}

/** Options of {@link fitGrowth}. */
export interface FitGrowthOptions {
  /** time of appearance, s, 0 to 1e6; fitted when left out */
  readonly appearanceS?: number | undefined;
}

/** What {@link fitGrowth} returns. */
export interface FittedGrowth {
  /**
   * the law with its spread, so that it can be handed on as it is: few points that happen to lie on a curve
   * do not claim certainty
   */
  readonly law: GrowthLaw & {
    /** standard deviations of its three numbers */
    readonly sd: GrowthSpread;
  };
  /** the standard errors of this fit by its own scatter, as textbooks have them */
  readonly sd: GrowthSpread;
  /**
   * scatter about the curve, in γ (in units of `sd` where the points have one); not there when there are no
   * more points than unknowns
   */
  readonly residualSd?: number;
  /** how many points it rests on */
  readonly points: number;
}

/** How well a gradient is measured: 3 % of the limit, from a step wedge (common practice). */
const GAMMA_SHARE = 0.03;

/**
 * That counts for two degrees of freedom beside the points' own, as the reading of a thermometer does in a
 * drift: an assumption of this package.
 */
const KNOWN_FREEDOM = 2;

/**
 * Fits the growth law to measured gradients.
 *
 * @param points - time of development (s, above 0 to 1e7, all different) and gradient (above 0 to 1000): two
 * or more with `appearanceS`, three or more without; with `sd` each counts by its own error. They may fall by
 * twice the error of a difference, which is 8.5 % of the highest without `sd`
 * @param options - the time of appearance, where it was seen
 * @returns the law, its standard errors and the scatter about it
 * @throws TypeError when an argument is of the wrong kind
 * @throws RangeError when a value is out of range, points are too few, fall with time by more than their
 * errors let them, or cannot carry the fit: they show no bend toward a limit, the limit is known no better
 * than to itself, or the fitted law is out of range
 *
 * @remarks Weighted least squares in γ. Standard errors come from the scatter, and with no point to spare
 * from the points' `sd` or from gradients good to 3 % of the limit. In the spread of the law that is pooled
 * with the scatter, for two degrees of freedom. A time of appearance that would come out below 0 is put at 0,
 * which is then the best there is. Checked against NIST StRD Misra1a, which is the same curve.
 *
 * @example
 * ```ts
 * const points = [{ timeS: 180, gamma: 0.41 }, { timeS: 360, gamma: 0.68 }, { timeS: 720, gamma: 0.95 }, {
 * timeS: 1440, gamma: 1.1 }]; fitGrowth(points, { appearanceS: 20 }).law.gammaInfinity // => 1.12
 * ```
 */
export function fitGrowth(points: readonly GrowthPoint[], options: FitGrowthOptions = {}): FittedGrowth {
  const { measured, weighted } = checkedPoints(points);
  const given = onlyFields("fitGrowth/options", options, ["appearanceS"])["appearanceS"];
  const seenS = given === undefined ? undefined : inRange("fitGrowth/appearanceS", given, 0, 1e6, "timeS");
  const unknowns = seenS === undefined ? 3 : 2;
  const spare = measured.length - unknowns;
  if (spare < 0)
    refuse(
      "fitGrowth/points",
      "enough-without",
      enoughText,
      { least: 3, path: "/appearanceS" },
      2,
      "too-few",
    );
  const firstS = (measured[0] as Measured).x;
  if (seenS !== undefined && seenS >= firstS)
    refuse("fitGrowth/appearanceS", "before-first-point", beforePointText, { below: firstS }, seenS);
  let fit = fitRelaxation(measured, { zeroAt: seenS });
  let appearanceS = seenS;
  if (fit && seenS === undefined) {
    appearanceS = firstS + Math.log(-fit.step / fit.limit) / fit.rate;
    if (!(appearanceS >= 0)) {
      appearanceS = 0;
      fit = fitRelaxation(measured, { zeroAt: 0 });
    }
  }
  if (fit === undefined || appearanceS === undefined)
    refuse("fitGrowth/points", "points-bend", pointsBendText, {}, undefined);
  const { limit: gammaInfinity, rate: ratePerS } = fit;
  const atS = appearanceS;
  // Derivatives of γ by γ∞, k and t0, each point by its weight.
  const column = (of: (since: number, fall: number) => number): readonly number[] =>
    measured.map(({ x, weight }) => Math.sqrt(weight) * of(x - atS, Math.exp(-ratePerS * (x - atS))));
  const columns = [column((_, fall) => 1 - fall), column((since, fall) => gammaInfinity * since * fall)];
  if (seenS === undefined) columns.push(column((_, fall) => -gammaInfinity * ratePerS * fall));
  const residualSd = spare > 0 ? Math.sqrt(fit.squares / spare) : undefined;
  const known = { sd: weighted ? 1 : GAMMA_SHARE * gammaInfinity, freedom: KNOWN_FREEDOM };
  const [byLimit, byRate, byAppearance = 0] = standardErrors(columns) as [number, number, number | undefined];
  const spreadBy = (scatter: number): GrowthSpread => ({
    gammaInfinity: byLimit * scatter,
    ratePerS: byRate * scatter,
    appearanceS: byAppearance * scatter,
    correlation: {
      limitRate: correlationOf(columns, 0, 1),
      limitAppearance: correlationOf(columns, 0, 2),
      rateAppearance: correlationOf(columns, 1, 2),
    },
  });
  const sd = spreadBy(residualSd ?? known.sd);
  const pooled = spreadBy(pooledSd(known, residualSd, spare));
  if (!(pooled.gammaInfinity < gammaInfinity && pooled.ratePerS < ratePerS))
    refuse("fitGrowth/points", "points-carry", pointsCarryText, {}, undefined);
  // A law that comes out must be one that may go in.
  const law = checkedGrowth("fitGrowth/fitted", { gammaInfinity, ratePerS, appearanceS, sd: pooled });
  return {
    law: { ...law, sd: pooled },
    sd,
    ...(residualSd === undefined ? {} : { residualSd }),
    points: measured.length,
  };
}

interface Measured {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

function checkedPoints(points: readonly GrowthPoint[]): {
  readonly measured: readonly Measured[];
  readonly weighted: boolean;
} {
  const sorted = arrayOf("fitGrowth/points", points, 2)
    .map((point, i) => {
      const where = `fitGrowth/points/${i}`;
      const { timeS, gamma, sd } = plainObject(where, point);
      return {
        x: positive(where, timeS, 1e7, "timeS", "/timeS"),
        y: positive(where, gamma, 1000, undefined, "/gamma"),
        sd: sd === undefined ? undefined : positive(where, sd, 1000, undefined, "/sd"),
      };
    })
    .sort((a, b) => a.x - b.x);
  const weighted = sorted.some(({ sd }) => sd !== undefined);
  const usual = GAMMA_SHARE * sorted.reduce((most, { y }) => Math.max(most, y), 0);
  sorted.forEach(({ x, y, sd }, i) => {
    const before = sorted[i - 1];
    if (before?.x === x)
      refuse("fitGrowth/points", "points-differ", pointsDifferText, { timeS: x }, undefined);
    // What falls by no more than twice the error of a difference may have risen.
    if (before !== undefined && before.y - y > 2 * Math.hypot(before.sd ?? usual, sd ?? usual))
      refuse(
        "fitGrowth/points",
        "points-rise",
        pointsRiseText,
        { points: [before, { x, y }].map((one) => ({ timeS: one.x, gamma: one.y })) },
        undefined,
      );
    if (weighted && sd === undefined)
      refuse("fitGrowth/points", "points-all-sd", pointsAllSdText, {}, undefined);
  });
  const measured = sorted.map(({ x, y, sd }) => ({ x, y, weight: sd === undefined ? 1 : 1 / sd ** 2 }));
  return { measured, weighted };
}
