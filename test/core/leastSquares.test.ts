/* The straight line, against figures worked by hand and an independent library. NIST's are in test/reference. */
import { fc, test } from "../property.js";
import { SimpleLinearRegression } from "ml-regression-simple-linear";
import { describe, expect, it } from "vitest";
import { leastSquaresLine } from "../../src/core/leastSquares.js";

describe("leastSquaresLine", () => {
  it("fits three points as on paper", () => {
    // x = 0, 1, 2 and y = 0, 1, 4: slope 2, intercept −1/3, residuals 1/3, −2/3, 1/3 with one degree of
    // freedom.
    const line = leastSquaresLine([
      [0, 0],
      [1, 1],
      [2, 4],
    ]);
    expect(line.slope).toBeCloseTo(2, 14);
    expect(line.intercept).toBeCloseTo(-1 / 3, 14);
    expect(line.residualSd).toBeCloseTo(Math.sqrt(6 / 9), 14);
    expect(line.spreadX).toBeCloseTo(2, 14);
  });
  it("knows of no scatter with two points, which leave no degree of freedom", () => {
    const line = leastSquaresLine([
      [1, 5],
      [3, 9],
    ]);
    expect(line).toEqual({ slope: 2, intercept: 3, residualSd: undefined, spreadX: 2 });
  });
  it("keeps its figures where x differs in the fourth digit only", () => {
    const line = leastSquaresLine([
      [0.0034, 1],
      [0.0034001, 2],
      [0.0034002, 3],
    ]);
    expect(line.slope / 1e7).toBeCloseTo(1, 8);
    expect(line.residualSd).toBeLessThan(1e-8);
  });
  const points = fc.uniqueArray(
    fc.tuple(fc.integer({ min: -1000, max: 1000 }), fc.double({ min: -1e3, max: 1e3, noNaN: true })),
    {
      minLength: 3,
      maxLength: 20,
      selector: ([x]) => x,
    },
  );
  test.prop([points])("agrees with an independent regression (ml-regression-simple-linear)", (data) => {
    const line = leastSquaresLine(data);
    const witness = new SimpleLinearRegression(
      data.map(([x]) => x),
      data.map(([, y]) => y),
    );
    expect(Math.abs(line.slope - witness.slope)).toBeLessThan(1e-7);
    expect(Math.abs(line.intercept - witness.intercept)).toBeLessThan(1e-5);
    const rss = data.reduce((sum, [x, y]) => sum + (y - witness.predict(x)) ** 2, 0);
    expect(Math.abs(line.residualSd! - Math.sqrt(rss / (data.length - 2)))).toBeLessThan(1e-5);
  });
});
