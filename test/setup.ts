/*
 * One seed for every property test, so that a red run can be repeated; PROPERTY_SEED=random (or a number)
 * explores further.
 */
import fc from "fast-check";
import { expect } from "vitest";

const given = process.env["PROPERTY_SEED"];
if (given !== "random") fc.configureGlobal({ seed: Number(given ?? 20261125) });

// An expected error without data of its own is compared by class and sentence.
expect.addEqualityTesters([
  (actual: unknown, wanted: unknown): boolean | undefined =>
    actual instanceof Error && wanted instanceof Error && !("code" in wanted)
      ? actual.constructor === wanted.constructor && actual.message === wanted.message
      : undefined,
]);
