/** The density of the standard normal distribution; 0 at the ends. */
export function normalDensity(x: number): number {
  return Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
}

/** Below this the series is used, above it the continued fraction. */
const SERIES_TO = 2.5;
const TERMS = 40;

/**
 * The probability that a standard normal number lies above x.
 *
 * @remarks In the middle G. Marsaglia's series, 1/2 − φ(x)·(x + x³/3 + x⁵/(3·5) + …) (Evaluating the normal
 * distribution, J. Stat. Softw. 11(4), 2004, from memory); beyond 2.5 Laplace's continued fraction φ(x)/(x +
 * 1/(x + 2/(x + …))). Thirteen figures, in the tail too.
 */
export function normalUpper(x: number): number {
  if (x < 0) return 1 - normalUpper(-x);
  if (x === Infinity) return 0;
  if (x < SERIES_TO) {
    let term = x;
    let sum = x;
    for (let odd = 3; term > 1e-16 * sum; odd += 2) {
      term *= (x * x) / odd;
      sum += term;
    }
    return 0.5 - normalDensity(x) * sum;
  }
  let fraction = x;
  for (let k = TERMS; k > 0; k -= 1) fraction = x + k / fraction;
  return normalDensity(x) / fraction;
}
