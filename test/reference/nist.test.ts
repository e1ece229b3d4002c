/*
 * The least squares under every fit of this package, against NIST's certified figures and
 * two independent libraries.
 */
import { SimpleLinearRegression } from "ml-regression-simple-linear";
import { linearRegression } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { leastSquaresLine } from "../../src/core/leastSquares.js";
import { norris, pontius } from "./nist.js";

type Points = readonly (readonly [number, number])[];

/** Correct decimal digits: NIST's log relative error. */
const digits = (found: number, certified: number): number =>
  -Math.log10(Math.abs(found / certified - 1) || 1e-16);

describe("NIST StRD Norris: a straight line", () => {
  const line = leastSquaresLine(norris.points);
  it("holds the 36 points", () => {
    expect(norris.points.length).toBe(36);
  });
  it("slope to 14 and intercept to 12 digits", () => {
    // Double precision carries 16; the intercept loses three to cancellation, being a small difference of
    // large means.
    expect(digits(line.intercept, norris.estimate[0]!)).toBeGreaterThan(12);
    expect(digits(line.slope, norris.estimate[1]!)).toBeGreaterThan(14);
  });
  it("residual and standard errors to 13 digits", () => {
    expect(digits(line.residualSd!, norris.residualSd)).toBeGreaterThan(13);
    expect(digits(line.residualSd! / Math.sqrt(line.spreadX), norris.sd[1]!)).toBeGreaterThan(13);
    // The standard error of the intercept: residual sd × √(1/n + mean²/spread).
    const mean = norris.points.reduce((sum, [x]) => sum + x, 0) / 36;
    expect(
      digits(line.residualSd! * Math.sqrt(1 / 36 + mean ** 2 / line.spreadX), norris.sd[0]!),
    ).toBeGreaterThan(13);
  });
  it("as good as two independent libraries, or better", () => {
    const witness = new SimpleLinearRegression(
      norris.points.map(([x]) => x),
      norris.points.map(([, y]) => y),
    );
    expect(line.slope).toBeCloseTo(witness.slope, 10);
    expect(line.intercept).toBeCloseTo(witness.intercept, 8);
    // The runtime library uncentred, which is what the centring is for.
    const uncentred = linearRegression(norris.points.map(([x, y]) => [x, y]));
    expect(digits(line.intercept, norris.estimate[0]!)).toBeGreaterThanOrEqual(
      digits(uncentred.b, norris.estimate[0]!) - 0.5,
    );
    expect(line.slope).toBeCloseTo(uncentred.m, 10);
  });
});

/*
 * Pontius is a quadratic and this package fits straight lines only. By the theorem of Frisch and Waugh
 * (Econometrica 1, 1933, p. 387) the coefficient of x² in the quadratic is the slope of y's residuals on
 * those of x², both after a straight line in x: three straight lines give it, and a fourth through y − B2 x²
 * gives B0 and B1. So the test shows that our lines carry NIST's figures through a badly scaled problem (x to
 * 3e6, B2 near 3e-15), not that we could fit a parabola.
 */
describe("NIST StRD Pontius: a parabola by straight lines", () => {
  const residuals = (points: Points): readonly number[] => {
    const { slope, intercept } = leastSquaresLine(points);
    return points.map(([x, y]) => y - intercept - slope * x);
  };
  const xs = pontius.points.map(([x]) => x);
  const yLeft = residuals(pontius.points);
  const squareLeft = residuals(xs.map((x) => [x, x * x]));
  const third = leastSquaresLine(squareLeft.map((square, i) => [square, yLeft[i]!]));
  const line = leastSquaresLine(pontius.points.map(([x, y]) => [x, y - third.slope * x * x]));

  it("holds the 40 points", () => {
    expect(pontius.points.length).toBe(40);
  });
  it("gives all three coefficients to 13 digits", () => {
    expect(digits(third.slope, pontius.estimate[2]!)).toBeGreaterThan(13);
    expect(digits(line.slope, pontius.estimate[1]!)).toBeGreaterThan(13);
    expect(digits(line.intercept, pontius.estimate[0]!)).toBeGreaterThan(13);
  });
  it("gives the residual sd and the standard error of x², one degree of freedom apart", () => {
    // Ours divides by n − 2, the parabola by n − 3.
    const residualSd = third.residualSd! * Math.sqrt(38 / 37);
    expect(digits(residualSd, pontius.residualSd)).toBeGreaterThan(13);
    expect(digits(residualSd / Math.sqrt(third.spreadX), pontius.sd[2]!)).toBeGreaterThan(13);
  });
  it("a straight line alone is far from it, so the test can fail", () => {
    expect(leastSquaresLine(pontius.points).residualSd).toBeGreaterThan(10 * pontius.residualSd);
  });
});
