/*
 * Module: drift. The one integral of the package, for rates that are only known as a function of time.
 */

/**
 * The inner nodes of the four-point Lobatto rule, as a share of the half width (Abramowitz and Stegun, 1964,
 * table 25.6).
 */
const INNER: number = Math.sqrt(0.2);

/**
 * How often one call may halve before it takes what it has: a forecast that is noise at every scale would be
 * halved without end.
 */
const HALVINGS = 2000;

/**
 * The integral of `f` from `from` to `to`: four-point Gauss-Lobatto, halved until the whole and its halves
 * agree within `tolerance`. The halves are about sixty times closer than the whole for a smooth `f`, so the
 * tolerance is met with much to spare; a corner or a step is closed in by halving. A rule with its ends among
 * its nodes is taken because a step shows in it wherever it falls; Gauss-Legendre and its halves agree on a
 * step near an end or the middle, and are both wrong.
 */
export function integrate(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  const lobatto = (a: number, b: number, atA: number, atB: number): number => {
    const half = (b - a) / 2;
    const middle = a + half;
    return (half * (atA + atB + 5 * (f(middle - INNER * half) + f(middle + INNER * half)))) / 6;
  };
  let halvings = 0;
  const refine = (a: number, b: number, atA: number, atB: number, whole: number): number => {
    const middle = (a + b) / 2;
    const atMiddle = f(middle);
    const left = lobatto(a, middle, atA, atMiddle);
    const right = lobatto(middle, b, atMiddle, atB);
    halvings += 1;
    if (halvings > HALVINGS || Math.abs(left + right - whole) <= tolerance) return left + right;
    return refine(a, middle, atA, atMiddle, left) + refine(middle, b, atMiddle, atB, right);
  };
  const atFrom = f(from);
  const atTo = f(to);
  return refine(from, to, atFrom, atTo, lobatto(from, to, atFrom, atTo));
}
