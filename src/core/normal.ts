/** The density of the standard normal distribution; 0 at the ends. */
export function normalDensity(x: number): number {
  return Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
}

/** Above this the continued fraction is used. */
const FRACTION_FROM = 7.07106781186547;
const NUMERATOR = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
] as const;
const DENOMINATOR = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
  637.333633378831, 793.826512519948, 440.413735824752,
] as const;

/**
 * The probability that a standard normal number lies above x.
 *
 * @remarks J. F. Hart's rational function, as G. West gives it (Better approximations to cumulative normal
 * functions, Wilmott Magazine, May 2005, p. 70, from memory); beyond 7 Laplace's continued fraction. Twelve
 * figures up to 3, eight in the far tail.
 */
export function normalUpper(x: number): number {
  const above = upperTail(Math.abs(x));
  return x < 0 ? 1 - above : above;
}

/** The same for x from 0 on. */
function upperTail(x: number): number {
  const tail = Math.exp(-0.5 * x * x);
  if (tail === 0) return 0;
  if (x < FRACTION_FROM) return (tail * powers(NUMERATOR, x)) / powers(DENOMINATOR, x);
  const fraction = x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + 0.65))));
  return tail / (Math.sqrt(2 * Math.PI) * fraction);
}

/** A polynomial, the highest power first. */
function powers(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let i = 0; i < coefficients.length; i += 1) sum = sum * x + (coefficients[i] as number);
  return sum;
}
