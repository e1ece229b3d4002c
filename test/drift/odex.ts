/*
 * An independent integrator for the tests: the extrapolation method ODEX of E. Hairer, S. P. Nørsett and G.
 * Wanner, Solving Ordinary Differential Equations I, Berlin, 1993, sec. II.9, in the port of the npm package
 * odex.
 */
import { createRequire } from "node:module";

/**
 * As much of the package as is used here; its own sources do not compile under strict settings, so they are
 * not imported as types.
 */
interface Odex {
  readonly Solver: new (variables: number) => {
    absoluteTolerance: number;
    relativeTolerance: number;
    maxSteps: number;
    solve(
      f: (x: number, y: number[]) => number[],
      from: number,
      start: number[],
      to: number,
    ): { readonly y: number[] };
  };
}
const require = createRequire(import.meta.url);
const { Solver } = require("odex") as Odex;

/** ∫ f from a to b, to about 1e-13 relative. */
export function odexIntegral(f: (x: number) => number, a: number, b: number): number {
  const solver = new Solver(1);
  solver.absoluteTolerance = 1e-13;
  solver.relativeTolerance = 1e-13;
  solver.maxSteps = 1e5;
  return solver.solve((x: number) => [f(x)], a, [0], b).y[0] as number;
}
