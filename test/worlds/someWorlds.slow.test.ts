/*
 * A quick look at some of the worlds: the full measure is in worlds.slow.test.ts. With 60 photographers a share of
 * 0.9 is known to about 0.03, so what has to be held is 0.06 below what the slow test asks.
 */
import { describe, expect, it } from "vitest";
import { learn, predict, startKnowledge } from "../../src/index.js";
import { measure } from "./measure.js";
import { worlds } from "./worlds.js";

const subject = { startKnowledge, learn, predict };
const SOME = [
  "as assumed",
  "half steps",
  "thin, good, dense",
  "one run in ten off by two",
  "another thermometer later",
  "drift 2 %, random",
  "printed rows among them",
  "two merged photographers",
];

describe.each(SOME)("%s", (name) => {
  it("holds the right answer about as often as the interval says, and learns", () => {
    const world = worlds.find((one) => one.name === name)!;
    const [few, many] = measure(subject, world, 60, [5, 20]);
    for (const { ninety, fifty } of [few!, many!]) {
      expect(ninety).toBeGreaterThan(world.least[0] - 0.06);
      expect(ninety).toBeLessThan(0.985);
      expect(fifty).toBeGreaterThan(world.least[1] - 0.06);
    }
    expect(many!.error).toBeLessThan(0.75 * few!.error);
  });
});
