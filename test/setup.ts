/*
 * One seed for every property test, so that a red run can be repeated; PROPERTY_SEED=random (or a number)
 * explores further.
 */
import fc from "fast-check";

const given = process.env["PROPERTY_SEED"];
if (given !== "random") fc.configureGlobal({ seed: Number(given ?? 20261125) });
