import type * as fc from "fast-check";

export const valid: Readonly<Record<string, fc.Arbitrary<readonly unknown[]>>>;
export const costly: Readonly<Record<string, number>>;
