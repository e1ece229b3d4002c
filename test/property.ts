/*
 * Property tests in one line: test.prop([arbitraries])("name", (values) => …) runs under vitest with
 * fast-check's defaults. A few lines of our own, because the ready-made binding makes vitest transform all of
 * fast-check again, five seconds a run.
 */
import fc from "fast-check";
import { expect, it } from "vitest";

/** One arbitrary for each argument. */
type Arbitraries<Values extends readonly unknown[]> = {
  [Index in keyof Values]: fc.Arbitrary<Values[Index]>;
};

/** Declares a test that must hold for every value drawn. The property may return false or throw to fail. */
function prop<Values extends [unknown, ...unknown[]]>(
  arbitraries: Arbitraries<Values>,
  parameters: fc.Parameters<Values> = {},
): (name: string, check: (...values: Values) => unknown) => void {
  return (name, check) => {
    it(name, () => {
      fc.assert(
        fc.property(...arbitraries, (...values: Values) => check(...values) !== false),
        parameters,
      );
    });
  };
}

/** A number from `min` to `max`. */
export const real = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Fails unless both are equal up to rounding: factors reach e^50, so the comparison is relative. */
export const same = (a: number, b: number, relative = 1e-11): void => {
  expect(Math.abs(Math.log(a / b))).toBeLessThan(relative);
};

export { fc };
export const test: { readonly prop: typeof prop } = { prop };
