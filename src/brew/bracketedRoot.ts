/*
 * Module: brew. The one way roots are found here.
 */

/**
 * A root of a falling function: Newton's steps inside a bracket that halves when they leave it or dawdle.
 * Halving ends at the latest when two neighbouring numbers are left, so the loop does.
 */
export function bracketedRoot(
  f: (x: number) => { readonly residual: number; readonly slope: number },
  low: number,
  high: number,
  start: number,
  tolerance: number,
): number {
  let x = start;
  for (let turn = 0; ; turn += 1) {
    const { residual, slope } = f(x);
    if (residual > 0) low = x;
    else high = x;
    const newton = x - residual / slope;
    const next = turn < 30 && newton >= low && newton <= high ? newton : (low + high) / 2;
    if (Math.abs(next - x) <= tolerance) return next;
    x = next;
  }
}
