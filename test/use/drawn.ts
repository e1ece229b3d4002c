/* Rules of use and areas that tests draw. */
import type { UseLaw } from "../../src/index.js";
import { fc } from "../property.js";

/** A roll of film, cm². */
export const ROLL = 516.128;

export const useLaw: fc.Arbitrary<UseLaw> = fc.record({
  increase: fc.oneof(fc.constantFrom(0, 0.1, 0.15), fc.double({ min: 0, max: 0.3, noNaN: true })),
  perCm2PerL: fc.constantFrom(ROLL, 100, 1e6),
  growth: fc.constantFrom<"linear" | "compound">("linear", "compound"),
});

export const area: fc.Arbitrary<number> = fc.oneof(
  fc.constantFrom(0, ROLL, 2500),
  fc.double({ min: 0, max: 2500, noNaN: true }),
);
