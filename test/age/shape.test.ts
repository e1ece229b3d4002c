/*
 * The shape of ageing against measured declines: the maximum density that a developer gave after hours of
 * storage in the heat. R. E. Chapman, Degradation study of a photographic developer to determine shelf life,
 * Quality Engineering 10(1), 1997, pp. 137-140, as reproduced in a public collection of exercise data. Heat ages here,
 * not air, and density is no rate: a check of the shape, not of lives.
 */
import { describe, expect, it } from "vitest";
import { ageFactor, type AgeLaw } from "../../src/index.js";

const MEASURED = [
  {
    atC: 72,
    worse: 3.2,
    straight: 0.87,
    hours: [72, 144, 216, 288, 360, 432, 504],
    dmax: [3.55, 3.27, 2.89, 2.55, 2.34, 2.14, 1.77],
  },
  {
    atC: 82,
    worse: 2.8,
    straight: 0.96,
    hours: [48, 96, 144, 192, 240, 288, 336],
    dmax: [3.52, 3.35, 2.5, 2.1, 1.9, 1.47, 1.19],
  },
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

/** ln of the factor of a law; a day of it is the whole test here, since heat ages many times faster. */
const along = (hours: readonly number[], law: AgeLaw) => {
  const span = hours.at(-1)!;
  return (h: number): number => Math.log(ageFactor(0, (24 * h) / span, law));
};
const SPEEDING: AgeLaw = { kind: "speeding", perDay: 1 };
const ROOT: AgeLaw = { kind: "slowing", perRootH: 1 };

describe("measured declines", () => {
  it.each(MEASURED)(
    "leave the root of the age $worse times the squared error of the speeding shape at $atC °C, a straight line $straight",
    ({ hours, dmax, worse, straight }) => {
      const speeding = misfit(hours, dmax, along(hours, SPEEDING));
      expect(misfit(hours, dmax, along(hours, ROOT)) / speeding).toBeCloseTo(worse, 1);
      expect(misfit(hours, dmax, (h) => h) / speeding).toBeCloseTo(straight, 2);
    },
  );
  it.each(MEASURED)(
    "start with less than their average loss, as the speeding shape does: at $atC °C",
    (table) => {
      const { hours, dmax } = table;
      // The share of the first step in the whole loss, and in the time from first to last.
      const share = (values: readonly number[]): number =>
        (values[1]! - values[0]!) / (values.at(-1)! - values[0]!);
      const [speeding, root] = [SPEEDING, ROOT].map((law) => share(hours.map(along(hours, law))));
      expect(speeding).toBeLessThan(share(hours));
      expect(root).toBeGreaterThan(share(hours));
      expect(share(dmax.map(Math.log))).toBeLessThan(share(hours));
      expect(Math.abs(share(dmax.map(Math.log)) - speeding!)).toBeLessThan(
        Math.abs(share(dmax.map(Math.log)) - root!),
      );
    },
  );
});
