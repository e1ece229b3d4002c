/* Module: brew. Very strong, very sour and very weak brews, several ranges at once, parts of 0 g, and the root finder's bracket. */
import { describe, expect, it } from "vitest";
import {
  brewPh,
  brewStrength,
  checkBrew,
  mixingSteps,
  type Brew,
  type WeighedPart,
} from "../../src/index.js";
import { bathOf } from "../../src/brew/bath.js";
import { bracketedRoot } from "../../src/brew/bracketedRoot.js";
import { readBrew } from "../../src/brew/brew.js";
import { constantsAt } from "../../src/brew/constants.js";
import { solveBath } from "../../src/brew/equilibrium.js";
import { brewOf, part, solve } from "./brews.js";

const ranged = (ingredient: WeighedPart["ingredient"], massG: number): WeighedPart => ({
  ingredient,
  massG,
  lowG: 0.7 * massG,
  highG: 1.4 * massG,
});

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

describe("bracketedRoot", () => {
  it("never looks outside its bracket", () => {
    // From 9 the first Newton's step of −atan(x − 3) would go to 9 − 37·atan 6, about −43.
    const seen: number[] = [];
    const root = bracketedRoot(
      (x) => (seen.push(x), { residual: -Math.atan(x - 3), slope: -1 / (1 + (x - 3) ** 2) }),
      0,
      10,
      9,
      1e-12,
    );
    expect(root).toBeCloseTo(3, 11);
    expect(Math.min(...seen)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...seen)).toBeLessThanOrEqual(10);
  });
});

describe("two ranges in one brew", () => {
  // Each range moves alone, so squares add: both ranges widen by what one widens and the other does.
  const bothAdd = (widthOf: (brew: Brew) => number): void => {
    const square = (soda: WeighedPart, coffee: WeighedPart): number =>
      widthOf(brewOf(soda, part("baking-soda", 20), coffee)) ** 2;
    const [s, c, sr, cr] = [
      part("soda-anhydrous", 5),
      part("instant-coffee", 60),
      ranged("soda-anhydrous", 5),
      ranged("instant-coffee", 60),
    ];
    const none = square(s, c);
    expect(square(sr, c)).toBeGreaterThan(1.01 * none);
    expect(square(s, cr)).toBeGreaterThan(1.01 * none);
    expect(square(sr, cr) / (square(sr, c) + square(s, cr) - none)).toBeCloseTo(1, 6);
  };
  it("add in pH", () => {
    bothAdd((brew) => {
      const { ph, low } = brewPh(brew);
      return ph - low;
    });
    bothAdd((brew) => {
      const { ph, high } = brewPh(brew);
      return high - ph;
    });
  });
});

describe("brewPh of coffee alone", () => {
  it("is less certain than the model, whose ± is 0.02 in so thin a bath", () => {
    const { low, high, ionicStrength } = brewPh(brewOf(part("instant-coffee", 20)));
    expect(ionicStrength).toBeLessThan(0.1);
    expect(high - low).toBeGreaterThan(2 * 0.02 + 1e-4);
  });
});

describe("parts of 0 g", () => {
  it("count as left out", () => {
    const soda = part("soda-anhydrous", 54);
    expect(checkBrew(brewOf(soda, part("instant-coffee", 0)))).toEqual(checkBrew(brewOf(soda)));
    expect(checkBrew(brewOf(soda)).map(({ code }) => code)).toContain("no-agent");
  });
});

describe("brewStrength", () => {
  it("tells two brews apart by a two-thousandth of a trace", () => {
    const brew = (bromideG: number): Brew =>
      brewOf(part("soda-anhydrous", 54), part("instant-coffee", 40), part("potassium-bromide", bromideG));
    expect(brewStrength(brew(0.001), brew(0.001)).basis).toBe("unchanged");
    expect(brewStrength(brew(0.0010005), brew(0.001)).basis).toBe("default");
  });
});

describe("mixingSteps", () => {
  it("warns of each lot of caustic soda", () => {
    const steps = mixingSteps(brewOf(part("sodium-hydroxide", 2), part("sodium-hydroxide", 3)));
    const lots = steps.filter((step) => step.do === "dissolve-caustic");
    expect(lots.map(({ waterMl, sameCup }) => [waterMl, sameCup])).toEqual([
      [150, undefined],
      [undefined, true],
    ]);
    for (const { cautions } of lots) expect(cautions).toEqual([expect.objectContaining({ code: "hazard" })]);
  });
});
