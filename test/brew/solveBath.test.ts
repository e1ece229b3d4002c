/* The chemical balance of very strong and very sour baths, and its buffer value. */
import { describe, expect, it } from "vitest";
import { brewPh } from "../../src/index.js";
import { brewOf, part, solve } from "./brews.js";
import { constantsAt } from "../../src/brew/constants.js";
import { readBrew } from "../../src/brew/brew.js";
import { bathOf } from "../../src/brew/bath.js";
import { solveBath } from "../../src/brew/equilibrium.js";

describe("solveBath", () => {
  it("reaches the ionic strength of 400 g of soda in a litre", () => {
    // Three times its molality, 3 × 400/105.9875 = 11.32; the little carbonate that takes up water costs less
    // than a thousandth.
    const { ionicStrength } = brewPh(brewOf(part("soda-anhydrous", 400)));
    expect(Math.abs(ionicStrength / ((3 * 400) / 105.9875) - 1)).toBeLessThan(1e-3);
  });
  it("holds hydrogen ions whose activity is the pH", () => {
    // Davies: log γ = −A(√I/(1 + √I) − 0.3 I), below I = 0.3; 20 g of ascorbic acid in a litre are sour.
    const { ph, hydrogen, ionicStrength: i } = solve(brewOf(part("ascorbic-acid", 20)));
    const logGamma = -constantsAt(20).debyeHueckel * (Math.sqrt(i) / (1 + Math.sqrt(i)) - 0.3 * i);
    expect(ph).toBeLessThan(4);
    expect(Math.log10(hydrogen) + logGamma).toBeCloseTo(-ph, 9);
  });
  it.each([
    ["in an alkaline bath", brewOf(part("soda-anhydrous", 5), part("ascorbic-acid", 5)), 0],
    ["while carbon dioxide leaves", brewOf(part("baking-soda", 20), part("ascorbic-acid", 40)), 0.1],
  ])("buffers as a little more alkali shows, %s", (_, brew, leastFoam) => {
    // At one ionic strength, below 0.3 so that sodium leaves the activities alone: the alkali put in, over
    // the rise of pH from half of it
    // too little to half too much.
    const { parts, volumeMl } = readBrew("test: brew", brew);
    const [bath, constants] = [bathOf(parts, volumeMl), constantsAt(20)];
    const solution = solveBath(bath, constants);
    const phWith = (more: number): number =>
      solveBath({ ...bath, sodium: bath.sodium + more }, constants, solution).ph;
    expect(solution.foam).toBeGreaterThanOrEqual(leastFoam);
    expect(2e-5 / (phWith(1e-5) - phWith(-1e-5)) / solution.buffer).toBeCloseTo(1, 4);
  });
});
