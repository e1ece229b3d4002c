/* Factors on the time of appearance against print, and two estimates as one. */
import { describe, expect, it } from "vitest";
import {
  appearanceEstimate,
  appearanceFactor,
  combineEstimates,
  compensate,
  handbookAppearanceFactor,
  mixedAppearanceFactor,
  safelightCautions,
  temperatureFactor,
  timeFromAppearance,
  type AppearanceAgent,
  type TimeEstimate,
} from "../../src/index.js";
import { handbookAppearance } from "../../src/handbook/appearance.js";
import { anyOf, thrown } from "../helpers.js";
const Z90 = 1.6448536269514722;
const estimate = (timeS: number, logSd: number): TimeEstimate => ({
  timeS,
  lowS: timeS / Math.exp(Z90 * logSd),
  highS: timeS * Math.exp(Z90 * logSd),
});
const logSdOf = ({ lowS, highS }: TimeEstimate): number => Math.log(highS / lowS) / (2 * Z90);

/** One grain (64.79891 mg) per US fluid ounce (29.5735295625 ml), g/l. */
const PER_OUNCE = 64.79891 / 29.5735295625;

describe("printed examples of factor and appearance", () => {
  /*
   * Cassell: B. E. Jones (ed.), Cassell's Cyclopaedia of Photography, London, 1911, Factorial development.
   * Abbott: H. G. Abbott (attribution from memory), Modern Photography in Theory and Practice, ch. VII.
   * Schriever: J. B. Schriever (ed.), Self-Instructing Library of Practical Photography, Scranton, 1909, ch.
   * XVIII and secs. 505-506.
   */
  it.each([
    ["Cassell, metol-hydroquinone", 9, 15, 135],
    ["Abbott, pyro", 15, 7, 105],
    ["Schriever, pyro-soda 2.5 gr/oz", 20, 12, 240],
    ["Schriever, pyro-soda 1.25 gr/oz", 25, 24, 600],
    ["Schriever, pyro-soda 5/6 gr/oz", 30, 40, 1200],
    ["Ives 1920, ch. XXII, pyro-metol", 5, 25, 125],
    ["Ives 1920, ch. XXII, chlorhydroquinone-metol", 5, 10, 50],
  ])("%s: %d s × %d = %d s", (_, appearanceS, factor, totalS) => {
    expect(timeFromAppearance({ appearanceS, factor })).toBe(totalS);
    expect(appearanceFactor({ appearanceS, totalS })).toBe(factor);
  });
  it("mixtures: pyro 6 and metol 30 make 18 in equal parts, 14 as four parts and two (Cassell)", () => {
    expect(
      mixedAppearanceFactor([
        { factor: 6, parts: 1 },
        { factor: 30, parts: 1 },
      ]),
    ).toBe(18);
    expect(
      mixedAppearanceFactor([
        { factor: 6, parts: 4 },
        { factor: 30, parts: 2 },
      ]),
    ).toBe(14);
    expect(mixedAppearanceFactor([{ factor: 6, parts: 3 }])).toBe(6);
  });
  it("Cassell's list: soft, normal, strong", () => {
    const list: Partial<Record<AppearanceAgent, readonly [number, number, number]>> = {
      "amidol": [7, 10, 12],
      "edinol": [14, 20, 24],
      "eikonogen": [8, 12, 15],
      "glycin": [9, 13, 16],
      "metol": [20, 30, 35],
      "p-aminophenol": [12, 16, 18],
      "pyro": [4, 6, 7],
    };
    for (const [agent, [soft, normal, strong]] of Object.entries(list)) {
      expect(handbookAppearanceFactor(agent as AppearanceAgent, { contrast: "soft" }).factor).toBe(soft);
      expect(handbookAppearanceFactor(agent as AppearanceAgent).factor).toBe(normal);
      expect(handbookAppearanceFactor(agent as AppearanceAgent, { contrast: "strong" }).factor).toBe(strong);
    }
  });
  it("other printed factors lie within each agent's 90 % interval", () => {
    // Abbott's list; 15 for metol-hydroquinone in Cassell's worked example.
    const others: readonly (readonly [AppearanceAgent, number])[] = [
      ["hydroquinone", 5.5],
      ["eikonogen", 9],
      ["metol", 28],
      ["amidol", 18],
      ["pyro-metol", 9],
      ["metol-hydroquinone", 13],
      ["metol-hydroquinone", 15],
    ];
    for (const [agent, factor] of others) {
      const { factor: middle, logSd } = handbookAppearanceFactor(agent);
      expect(Math.abs(Math.log(factor / middle)) / logSd).toBeLessThan(Z90);
    }
  });
  // H. G. Abbott (attribution from memory), ch. VII; B. E. Jones 1911 (no bromide); J. B. Schriever 1909, secs. 481-506.
  // The lists contradict each other: 11, 18 and, between its rows, 31 at one grain an ounce. No row is off by more than
  // 0.9 in ln; their standard deviation is 0.48.
  it("pyro by strength: nine printed rows scatter by 0.48 in ln around it, and its interval holds eight", () => {
    const gramsPerL = (grainsPerOunce: number): number => grainsPerOunce * PER_OUNCE;
    const rows = [
      [1, 11],
      [2, 6],
      [3, 5.25],
      [4, 4.5],
      [8, 4.75],
      [1, 18],
      [2.5, 12],
      [1.25, 24],
      [5 / 6, 40],
    ] as const;
    const off = rows.map(([strength, factor]) => {
      const found = handbookAppearanceFactor("pyro", { strengthGPerL: gramsPerL(strength) });
      expect(found.cautions).toEqual([]);
      expect(found.logSd).toBe(0.5);
      return Math.log(found.factor / factor);
    });
    // Two numbers were fitted to nine rows.
    expect(Math.hypot(...off) / Math.sqrt(7)).toBeCloseTo(0.48, 2);
    expect(Math.abs(off.reduce((sum, x) => sum + x, 0) / 9)).toBeLessThan(0.02);
    expect(off.filter((x) => Math.abs(x) < Z90 * 0.5).length).toBeGreaterThanOrEqual(8);
  });
  it("pyro beyond the printed strengths keeps the nearest factor, wider, and says so", () => {
    const at = (strengthGPerL: number): ReturnType<typeof handbookAppearanceFactor> =>
      handbookAppearanceFactor("pyro", { strengthGPerL });
    const [weak, least, most, strong] = [at(0.2), at((5 / 6) * PER_OUNCE), at(8 * PER_OUNCE), at(30)];
    expect(weak.factor).toBe(least.factor);
    expect(strong.factor).toBe(most.factor);
    expect(least.factor).toBeCloseTo(18.9 * (5 / 6) ** -0.86, 9);
    expect([least, most].flatMap(({ cautions }) => cautions)).toEqual([]);
    for (const [found, limit, actual] of [
      [weak, (5 / 6) * PER_OUNCE, 0.2],
      [strong, 8 * PER_OUNCE, 30],
    ] as const) {
      expect(found.cautions).toEqual([
        expect.objectContaining({ code: "strength-outside", quantity: "gPerL", limit, actual }),
      ]);
      expect(found.logSd).toBeCloseTo(Math.hypot(0.5, 0.86 * Math.log(actual / limit)), 9);
    }
  });
  // From memory: 10 for pyrocatechin, which coffee's acid is made of. No list has a brew of groceries.
  it("a brew's factor is 10, its 90 % interval a little over a factor of three either way", () => {
    const { factor, logSd } = handbookAppearanceFactor("brew");
    expect(factor).toBe(10);
    expect(Math.exp(Z90 * logSd)).toBeCloseTo(3.16, 2);
  });
  it("dilution leaves the factor of every other agent alone", () => {
    for (const agent of Object.keys(handbookAppearance) as AppearanceAgent[]) {
      const plain = handbookAppearanceFactor(agent, { contrast: "strong" });
      const weak = handbookAppearanceFactor(agent, { contrast: "strong", strengthGPerL: 1 });
      if (agent === "pyro") expect(weak.factor).toBeGreaterThan(2 * plain.factor);
      else expect(weak).toEqual(plain);
      expect(plain.sources.length).toBeGreaterThan(0);
    }
    const soft = handbookAppearanceFactor("pyro", { contrast: "soft", strengthGPerL: 3 }).factor;
    expect(soft / handbookAppearanceFactor("pyro", { strengthGPerL: 3 }).factor).toBeCloseTo(4 / 6, 12);
  });
  it("Wall 1910, p. 44: one coefficient for appearance and whole time, so the factor stays when the bath cools", () => {
    // Appearance in 70 s at 8 °C and 25 s at 20 °C: log10 of the ratio is 0.037 a degree.
    const perDegree = Math.log10(70 / 25) / 12;
    expect(perDegree).toBeCloseTo(0.037, 3);
    const law = { kind: "coefficient", ratio: 10 ** (10 * perDegree), intervalC: 10 } as const;
    expect(25 * temperatureFactor(20, 8, law)).toBeCloseTo(70, 9);
    const cold = compensate({ timeS: 25 * 14, temperatureC: 20 }, { temperatureC: 8 }, { temperature: law });
    expect(cold.timeS).toBeCloseTo(timeFromAppearance({ appearanceS: 70, factor: 14 }), 8);
  });
});

describe("appearanceEstimate", () => {
  it("carries the factor's spread and the eye and hand into the interval", () => {
    const seen = appearanceEstimate({ appearanceS: 9, factor: 15, factorLogSd: 0.1, reactionS: 1.8 });
    expect(seen.timeS).toBe(135);
    expect(logSdOf(seen)).toBeCloseTo(Math.hypot(0.1, 0.2), 12);
    expect(seen.timeS ** 2).toBeCloseTo(seen.lowS * seen.highS, 8);
  });
  it("takes 15 % for the factor and 1.5 s for the hand when nothing is said", () => {
    expect(logSdOf(appearanceEstimate({ appearanceS: 10, factor: 10 }))).toBeCloseTo(
      Math.hypot(0.15, 0.15),
      12,
    );
    expect(
      logSdOf(appearanceEstimate({ appearanceS: 10, factor: 10, factorLogSd: 0, reactionS: 0 })),
    ).toBeCloseTo(0, 12);
  });
  it("refuses what cannot be", () => {
    const refuses = (seen: unknown, error: Error): void => {
      expect(() => appearanceEstimate(anyOf(seen))).toThrow(error);
    };
    const good = { appearanceS: 10, factor: 10 };
    refuses(null, new TypeError("appearanceEstimate: seen must be an object, got null"));
    refuses(
      { ...good, factorLogSd: 4 },
      new RangeError("appearanceEstimate: seen.factorLogSd must be from 0 to 3, got 4"),
    );
    refuses(
      { ...good, reactionS: 61 },
      new RangeError("appearanceEstimate: seen.reactionS must be from 0 to 60 s, got 61"),
    );
    refuses(
      { ...good, appearanceS: 0 },
      new RangeError("appearanceEstimate: seen.appearanceS must be above 0 and at most 100000 s, got 0"),
    );
    refuses({ factor: 10 }, new TypeError("appearanceEstimate: seen.appearanceS is missing: a number"));
  });
});

describe("combineEstimates", () => {
  it("weighs by 1/variance in ln(time)", () => {
    const both = combineEstimates(estimate(400, 0.2), estimate(500, 0.1));
    expect(Math.log(both.timeS)).toBeCloseTo(
      (Math.log(400) / 0.04 + Math.log(500) / 0.01) / (1 / 0.04 + 1 / 0.01),
      12,
    );
    expect(logSdOf(both)).toBeCloseTo(1 / Math.sqrt(1 / 0.04 + 1 / 0.01), 12);
    expect(both.apart).toBeCloseTo(Math.log(500 / 400) / Math.hypot(0.2, 0.1), 12);
    expect(both.cautions).toEqual([]);
    const turned = combineEstimates(estimate(500, 0.1), estimate(400, 0.2));
    expect(turned.timeS).toBeCloseTo(both.timeS, 10);
  });
  it("takes what compensate and appearanceEstimate give", () => {
    const computed = compensate({ timeS: 400, temperatureC: 20 }, { temperatureC: 18 });
    const both = combineEstimates(computed, appearanceEstimate({ appearanceS: 40, factor: 12 }));
    expect(both.timeS).toBeGreaterThan(computed.timeS);
    expect(both.timeS).toBeLessThan(480);
  });
  it("says when they disagree beyond chance: 1.96 standard deviations", () => {
    const sd = Math.hypot(0.1, 0.1);
    const apart = (deviations: number): readonly unknown[] =>
      combineEstimates(estimate(400, 0.1), estimate(400 * Math.exp(deviations * sd), 0.1)).cautions;
    expect(apart(1.95)).toEqual([]);
    expect(apart(-1.95)).toEqual([]);
    expect(apart(-2)).toHaveLength(1);
    expect(apart(2)).toEqual([
      {
        code: "estimates-disagree",
        severity: "warn",
        message:
          "The two estimates, 6:40 and 8:51, disagree beyond chance. " +
          "Check temperature, dilution and factor before trusting either.",
        quantity: "standardDeviations",
        limit: 1.96,
        actual: expect.closeTo(2, 9),
        data: { firstS: 400, secondS: 400 * Math.exp(2 * sd) },
      },
    ]);
  });
  it("takes exact estimates", () => {
    const exact = estimate(400, 0);
    expect(combineEstimates(exact, estimate(500, 0.1))).toMatchObject({
      timeS: expect.closeTo(400, 9),
      lowS: expect.closeTo(400, 9),
    });
    expect(combineEstimates(exact, exact)).toEqual({
      timeS: expect.closeTo(400, 9),
      lowS: expect.closeTo(400, 9),
      highS: expect.closeTo(400, 9),
      apart: 0,
      cautions: [],
    });
    const apart = combineEstimates(exact, estimate(441, 0));
    expect(apart.timeS).toBeCloseTo(420, 9);
    expect(apart.apart).toBe(Number.MAX_VALUE);
    // Two exact ones that differ are known to half their distance.
    expect(logSdOf(apart)).toBeCloseTo(Math.log(441 / 400) / 2, 9);
    expect(apart.cautions[0]!.code).toBe("estimates-disagree");
  });
  it("widens two that disagree by the root of their reduced chi-square, Birge 1932", () => {
    // 400 and 700 s, four standard deviations of their difference apart.
    const sd = Math.log(700 / 400) / 4 / Math.SQRT2;
    const both = combineEstimates(estimate(400, sd), estimate(700, sd));
    expect(both.apart).toBeCloseTo(4, 9);
    expect(logSdOf(both)).toBeCloseTo((4 * sd) / Math.SQRT2, 9);
    expect(both.lowS).toBeLessThan(400);
    expect(both.highS).toBeGreaterThan(700);
    // Unwidened the interval would hold neither: 478 to 586 s.
    expect(both.timeS * Math.exp((1.645 * sd) / Math.SQRT2)).toBeLessThan(600);
  });
  it.each([
    [0, 1],
    [0.5, 1],
    [0.999, 1],
    [1.001, 1.001],
    [1.999, 1.999],
    [2.001, 2.001],
  ])("%d standard deviations apart widens by %d: no more up to what is expected", (apart, times) => {
    const far = estimate(400 * Math.exp(apart * 0.1 * Math.SQRT2), 0.1);
    expect(logSdOf(combineEstimates(estimate(400, 0.1), far))).toBeCloseTo((times * 0.1) / Math.SQRT2, 9);
  });
  it("refuses what is no estimate", () => {
    const good = estimate(400, 0.1);
    expect(() => combineEstimates(anyOf(null), good)).toThrow(
      new TypeError("combineEstimates: a must be an object, got null"),
    );
    expect(() => combineEstimates(good, anyOf(5))).toThrow(
      new TypeError("combineEstimates: b must be an object, got 5"),
    );
    expect(() => combineEstimates({ ...good, timeS: 0 }, good)).toThrow(
      new RangeError("combineEstimates: a.timeS must be above 0 and at most 1000000000 s, got 0"),
    );
    expect(() => combineEstimates({ ...good, lowS: 0 }, good)).toThrow(
      new RangeError("combineEstimates: a.lowS must be above 0 and at most 1000000000 s, got 0"),
    );
    expect(() => combineEstimates({ ...good, highS: 2e9 }, good)).toThrow(
      new RangeError("combineEstimates: a.highS must be above 0 and at most 1000000000 s, got 2000000000"),
    );
    expect(() => combineEstimates(good, { ...good, highS: anyOf("1") })).toThrow(
      new TypeError('combineEstimates: b.highS must be a number, got "1"'),
    );
    const order = (lowS: number, highS: number): RangeError =>
      new RangeError(
        `combineEstimates: a must be lowS, timeS and highS in that order, not ${lowS}, 400 and ${highS} s`,
      );
    expect(() => combineEstimates({ timeS: 400, lowS: 401, highS: 500 }, good)).toThrow(order(401, 500));
    expect(() => combineEstimates({ timeS: 400, lowS: 300, highS: 399 }, good)).toThrow(order(300, 399));
  });
});

describe("safelightCautions", () => {
  it("sends panchromatic material into the dark", () => {
    expect(safelightCautions("panchromatic")).toEqual([
      {
        code: "panchromatic-dark",
        severity: "stop",
        message:
          "Panchromatic: develop in complete darkness, by time and temperature. No safelight shows the image without fogging it.",
      },
    ]);
    expect(safelightCautions("orthochromatic")).toEqual([
      {
        code: "safelight-red",
        severity: "warn",
        message:
          "Orthochromatic: deep red safelight only, weak and not near. Test it first: lay a coin on a scrap, light it for as long as you will look, and develop it. If the coin shows, the light is too bright.",
      },
    ]);
    expect(safelightCautions("blue-sensitive")).toEqual([
      {
        code: "safelight-amber",
        severity: "note",
        message:
          "Blue-sensitive: amber or red safelight as the maker says. Test it first: lay a coin on a scrap, light it for as long as you will look, and develop it. If the coin shows, the light is too bright.",
      },
    ]);
  });
  it("knows no others", () => {
    expect(() => safelightCautions(anyOf("infrared"))).toThrow(
      new RangeError(
        'safelightCautions: sensitization must be "blue-sensitive", "orthochromatic" or "panchromatic", got "infrared"',
      ),
    );
    expect(() => safelightCautions(anyOf(undefined))).toThrow(
      new TypeError("safelightCautions: sensitization is missing: text"),
    );
  });
});

describe("the rest refuses", () => {
  it("names the function and the field", () => {
    expect(() => appearanceFactor(anyOf(null))).toThrow(
      new TypeError("appearanceFactor: times must be an object, got null"),
    );
    expect(() => appearanceFactor({ appearanceS: 0, totalS: 60 })).toThrow(
      new RangeError("appearanceFactor: times.appearanceS must be above 0 and at most 100000 s, got 0"),
    );
    expect(() => appearanceFactor({ appearanceS: 10, totalS: 0 })).toThrow(
      new RangeError("appearanceFactor: times.totalS must be above 0 and at most 10000000 s, got 0"),
    );
    expect(() => appearanceFactor({ appearanceS: 10, totalS: 5 })).toThrow(
      new RangeError("appearanceFactor: times must be from 1 to 1000, got 0.5"),
    );
    expect(() => timeFromAppearance(anyOf(5))).toThrow(
      new TypeError("timeFromAppearance: seen must be an object, got 5"),
    );
    expect(() => timeFromAppearance({ appearanceS: 10, factor: 0.5 })).toThrow(
      new RangeError("timeFromAppearance: seen.factor must be from 1 to 1000, got 0.5"),
    );
    expect(() => mixedAppearanceFactor(anyOf(5))).toThrow(
      new TypeError("mixedAppearanceFactor: mixture must be an array, got 5"),
    );
    expect(() => mixedAppearanceFactor([])).toThrow(
      new RangeError("mixedAppearanceFactor: mixture must hold at least 1, got 0"),
    );
    expect(() => mixedAppearanceFactor([anyOf(null)])).toThrow(
      new TypeError("mixedAppearanceFactor: mixture[0] must be an object, got null"),
    );
    expect(() => mixedAppearanceFactor([{ factor: 0, parts: 1 }])).toThrow(
      new RangeError("mixedAppearanceFactor: mixture[0].factor must be from 1 to 1000, got 0"),
    );
    expect(() => mixedAppearanceFactor([{ factor: 5, parts: 0 }])).toThrow(
      new RangeError("mixedAppearanceFactor: mixture[0].parts must be above 0 and at most 1000000, got 0"),
    );
    expect(() => handbookAppearanceFactor(anyOf("coffee"))).toThrow(
      /^handbookAppearanceFactor: agent must be "amidol", "brew", "edinol", .*, got "coffee"$/,
    );
    expect(() => handbookAppearanceFactor("pyro", anyOf(3))).toThrow(
      new TypeError("handbookAppearanceFactor: options must be an object, got 3"),
    );
    expect(() => handbookAppearanceFactor("pyro", { contrast: anyOf("hard") })).toThrow(
      new RangeError(
        'handbookAppearanceFactor: options.contrast must be "soft", "normal" or "strong", got "hard"',
      ),
    );
    expect(() => handbookAppearanceFactor("metol", { strengthGPerL: 0.05 })).toThrow(
      new RangeError("handbookAppearanceFactor: options.strengthGPerL must be from 0.1 to 30 g/l, got 0.05"),
    );
  });
});

describe("the image as the clock", () => {
  it("is of no use for a time shorter than any hand", () => {
    expect(thrown(() => appearanceEstimate({ appearanceS: 1e-30, factor: 3 }))).toBe(
      "RangeError: appearanceEstimate: seen must be such that ln(time) spreads by at most 100, got 1.5e+30",
    );
  });
  it("checks the time of appearance before it divides by it", () => {
    expect(thrown(() => appearanceEstimate({ appearanceS: anyOf(Symbol("s")), factor: 10 }))).toMatch(
      /^TypeError: appearanceEstimate: seen\.appearanceS must be a number, got Symbol\(s\)$/,
    );
  });
});
