/*
 * The shape of ageing against measured declines: the maximum density that a developer gave after hours of
 * storage in the heat. R. E. Chapman, Degradation study of a photographic developer to determine shelf life,
 * Quality Engineering 10(1), 1997, pp. 137-140, as reproduced in a public collection of exercise data. Heat ages here,
 * not air, and density is no rate: a check of the shape, not of lives.
 */
import { describe, expect, it } from "vitest";
import { ageFactor } from "../../src/index.js";

const MEASURED = [
  { atC: 72, hours: [72, 144, 216, 288, 360, 432, 504], dmax: [3.55, 3.27, 2.89, 2.55, 2.34, 2.14, 1.77] },
  { atC: 82, hours: [48, 96, 144, 192, 240, 288, 336], dmax: [3.52, 3.35, 2.5, 2.1, 1.9, 1.47, 1.19] },
];

/** The squared error of ln(density) = a - b × shape(age), least over a and b. */
function misfit(hours: readonly number[], dmax: readonly number[], shape: (h: number) => number): number {
  const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length;
  const x = hours.map(shape);
  const y = dmax.map(Math.log);
  const [mx, my] = [mean(x), mean(y)];
  const xx = x.reduce((sum, one) => sum + (one - mx) ** 2, 0);
  const xy = x.reduce((sum, one, i) => sum + (one - mx) * (y[i]! - my), 0);
  return y.reduce((sum, one) => sum + (one - my) ** 2, 0) - xy ** 2 / xx;
}

describe("measured declines", () => {
  it.each(MEASURED)(
    "are nearer to the speeding shape than to that of the root, at $atC °C",
    ({ hours, dmax }) => {
      // A day of the law is the whole test here, since heat ages many times faster.
      const span = hours.at(-1)!;
      const speeding = (h: number): number =>
        Math.log(ageFactor(0, (24 * h) / span, { kind: "speeding", perDay: 1 }));
      const root = (h: number): number =>
        Math.log(ageFactor(0, (24 * h) / span, { kind: "slowing", perRootH: 1 }));
      // Measured 3.2 and 2.8 times; a straight line does as well as the speeding shape (0.87 and 0.96).
      expect(misfit(hours, dmax, root) / misfit(hours, dmax, speeding)).toBeGreaterThan(2.5);
    },
  );
  it("start with less than their average loss", () => {
    for (const { hours, dmax } of MEASURED) {
      const loss = dmax.map((one) => Math.log(one));
      const first = (loss[0]! - loss[1]!) / (hours[1]! - hours[0]!);
      const all = (loss[0]! - loss.at(-1)!) / (hours.at(-1)! - hours[0]!);
      expect(first).toBeLessThan(all);
    }
  });
});
