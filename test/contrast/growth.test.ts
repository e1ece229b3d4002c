/* The growth law and its inverse. */
import { describe, expect, it } from "vitest";
import {
  contrastFactor,
  gammaAt,
  genericGrowthLaw,
  timeForGamma,
  type GrowthLaw,
  effect,
} from "../../src/index.js";
import { aerialPlate, growthConstants } from "../reference/growth.js";
import { anyOf, thrown } from "../helpers.js";
const law: GrowthLaw = { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 30 };

const inCommonLogarithms = (gammaInfinity: number, constant: number): GrowthLaw => ({
  gammaInfinity,
  ratePerS: (constant * Math.LN10) / 60,
  appearanceS: 0,
});

describe("gammaAt and timeForGamma against print", () => {
  it.each(growthConstants.flatMap(({ rows }) => rows))(
    "constants of H. E. Ives, Airplane Photography, 1920, limit $gammaInfinity",
    ({ gammaInfinity, constant, gammas }) => {
      const printed = inCommonLogarithms(gammaInfinity, constant);
      for (const [minutes, gamma] of Object.entries(gammas)) {
        expect(Math.abs(gammaAt(Number(minutes) * 60, printed) - gamma)).toBeLessThanOrEqual(0.0005 + 1e-12);
      }
    },
  );
  it("Ives's constants are in common logarithms: both developers reach one contrast at factor times appearance", () => {
    const reached = growthConstants
      .flatMap(({ rows }) => rows)
      .map(({ gammaInfinity, constant, factorTimeS, definiteGamma: { common, natural } }) => {
        const gamma = gammaAt(factorTimeS, inCommonLogarithms(gammaInfinity, constant));
        expect(Math.abs(gamma - common)).toBeLessThan(0.0006);
        // Read as natural logarithms, the two are 16 % apart.
        const asNatural = { gammaInfinity, ratePerS: constant / 60, appearanceS: 0 };
        expect(Math.abs(gammaAt(factorTimeS, asNatural) - natural)).toBeLessThan(0.0006);
        return gamma;
      });
    expect(Math.abs(reached[0]! / reached[1]! - 1)).toBeLessThan(0.002);
  });
  it("and so a gradient of nearly 2 in two and a half minutes fits", () => {
    const { minutes, gammaNearly, limitApproaching } = aerialPlate.rows[0]!;
    const after = (limit: number, ratePerS: number): number =>
      gammaAt(minutes * 60, { gammaInfinity: limit, ratePerS, appearanceS: 0 });
    const { gammaInfinity, constant } = growthConstants[1]!.rows[0]!;
    const perS = (constant * Math.LN10) / 60;
    expect(after(gammaInfinity, perS)).toBeLessThan(gammaNearly);
    expect(after(limitApproaching, perS)).toBeGreaterThan(gammaNearly);
    // Natural logarithms reach 1.34 and 1.58.
    expect(after(limitApproaching, constant / 60)).toBeLessThan(1.6);
  });
  it("the definition: dγ/dt = K(γ∞ − γ), Mees, Zeitentwicklung, 1911, pp. 167 and 170", () => {
    for (const t of [31, 100, 300, 1000]) {
      const slope = (gammaAt(t + 0.01, law) - gammaAt(t - 0.01, law)) / 0.02;
      expect(slope / (law.ratePerS * (law.gammaInfinity - gammaAt(t, law)))).toBeCloseTo(1, 6);
    }
  });
});

describe("gammaAt", () => {
  it("is 0 until the time of appearance and nears the limit", () => {
    expect(gammaAt(0, law)).toBe(0);
    expect(gammaAt(30, law)).toBe(0);
    expect(gammaAt(30.001, law)).toBeGreaterThan(0);
    expect(gammaAt(1e7, law)).toBe(1.4);
  });
});

describe("genericGrowthLaw", () => {
  it("lies between the two developers of H. E. Ives, Airplane Photography, 1920, ch. XXII, and is wide", () => {
    const { gammaInfinity, ratePerS, appearanceS, sd, sources } = genericGrowthLaw;
    // Limits 1.45 and 2.12, constants 0.32 and 0.40 in common logarithms a minute.
    expect(gammaInfinity).toBeCloseTo((1.45 + 2.12) / 2, 1);
    expect(ratePerS * 60).toBeCloseTo(((0.32 + 0.4) / 2) * Math.LN10, 2);
    expect(appearanceS).toBe(0);
    expect(sd).toEqual({ gammaInfinity: 0.5, ratePerS: 0.004, appearanceS: 5 });
    expect(sources).toEqual([
      expect.stringContaining("H. E. Ives, Airplane Photography, Philadelphia, 1920"),
    ]);
  });
});

describe("timeForGamma", () => {
  it("inverts gammaAt", () => {
    for (const t of [30, 30.5, 60, 480, 1500]) expect(timeForGamma(gammaAt(t, law), law)).toBeCloseTo(t, 8);
    expect(timeForGamma(0, law)).toBe(30);
  });
  it("says that a gradient at or above the limit cannot be reached", () => {
    const error = (gamma: string): RangeError =>
      new RangeError(
        `timeForGamma: gamma must be below 1.4, the limit of this growth law (a harder material needs its own, as growthFromDoubling gives), got ${gamma}`,
      );
    expect(() => timeForGamma(1.4, law)).toThrow(error("1.4"));
    expect(() => timeForGamma(1.5, law)).toThrow(error("1.5"));
  });
});

describe("both refuse", () => {
  it.each([
    [null, new TypeError("NAME: law must be an object, got null")],
    [
      { ...law, gammaInfinity: 0 },
      new RangeError("NAME: law.gammaInfinity must be above 0 and at most 1000, got 0"),
    ],
    [
      { ...law, ratePerS: 0 },
      new RangeError("NAME: law.ratePerS must be above 0 and at most 100 1/s, got 0"),
    ],
    [
      { ...law, appearanceS: -1 },
      new RangeError("NAME: law.appearanceS must be from 0 to 1000000 s, got -1"),
    ],
    [{ gammaInfinity: 1, ratePerS: 1 }, new TypeError("NAME: law.appearanceS is missing: a number")],
  ])("law %j", (wrong, error) => {
    const named = (name: string): Error =>
      new (error.constructor as ErrorConstructor)(error.message.replace("NAME", name));
    expect(() => gammaAt(60, anyOf(wrong))).toThrow(named("gammaAt"));
    expect(() => timeForGamma(0.5, anyOf(wrong))).toThrow(named("timeForGamma"));
  });
  it("refuses values out of range", () => {
    expect(() => gammaAt(-1, law)).toThrow(
      new RangeError("gammaAt: timeS must be from 0 to 10000000 s, got -1"),
    );
    expect(() => gammaAt(anyOf("60"), law)).toThrow(
      new TypeError('gammaAt: timeS must be a number, got "60"'),
    );
    expect(() => timeForGamma(-0.1, law)).toThrow(
      new RangeError("timeForGamma: gamma must be from 0 to 1000, got -0.1"),
    );
    expect(() => timeForGamma(anyOf(null), law)).toThrow(
      new TypeError("timeForGamma: gamma must be a number, got null"),
    );
  });
});

describe("the spread of a growth law", () => {
  it("is refused by name when it is out of range", () => {
    const law = { gammaInfinity: 1, ratePerS: 0.01, appearanceS: 10 };
    const sd = { gammaInfinity: 0.1, ratePerS: 0.001, appearanceS: 1 };
    expect(effect("contrast", 0.5, 0.6, { ...law, sd }).logSd).toBeGreaterThan(0);
    expect(() => effect("contrast", 0.5, 0.6, { ...law, sd: { ...sd, gammaInfinity: 1e308 } }).logSd).toThrow(
      new RangeError("effect: law.sd.gammaInfinity must be from 0 to 1000, got 1e+308"),
    );
    expect(() => effect("contrast", 0.5, 0.6, { ...law, sd: anyOf(5) }).logSd).toThrow(
      new TypeError("effect: law.sd must be an object, got 5"),
    );
    expect(() => effect("contrast", 0.5, 0.6, { ...law, sd: { ...sd, ratePerS: -1 } }).logSd).toThrow(
      new RangeError("effect: law.sd.ratePerS must be from 0 to 100 1/s, got -1"),
    );
    expect(() => effect("contrast", 0.5, 0.6, { ...law, sd: { ...sd, appearanceS: -1 } }).logSd).toThrow(
      new RangeError("effect: law.sd.appearanceS must be from 0 to 1000000 s, got -1"),
    );
  });

  it("is 0 for one and the same gradient, however little is known of the law", () => {
    const law: GrowthLaw = {
      gammaInfinity: 1.4,
      ratePerS: 0.004,
      appearanceS: 30,
      sd: { gammaInfinity: 1000, ratePerS: 100, appearanceS: 1e6 },
    };
    expect(effect("contrast", 0.6, 0.6, law).logSd).toBe(0);
  });
});

describe("a gradient of 0", () => {
  it("has no ratio of times", () => {
    const law = { gammaInfinity: 1, ratePerS: 0.001, appearanceS: 0 };
    expect(thrown(() => effect("contrast", 0, 0.5, law).logSd)).toBe(
      "RangeError: effect: from must be above 0 and at most 1000, got 0",
    );
    expect(thrown(() => effect("contrast", 0.5, 0, law).logSd)).toBe(
      "RangeError: effect: to must be above 0 and at most 1000, got 0",
    );
  });
});

describe("the correlations of a growth law", () => {
  // To first order: the derivatives of ln(factor), by differences, through the covariance written out.
  const law = { gammaInfinity: 1.4, ratePerS: 0.004, appearanceS: 30 };
  const sd = { gammaInfinity: 0.1, ratePerS: 0.0006, appearanceS: 8 };
  const names = ["gammaInfinity", "ratePerS", "appearanceS"] as const;
  it.each([
    ["all against each other", { limitRate: -0.9, limitAppearance: -0.3, rateAppearance: 0.4 }],
    ["limit and rate", { limitRate: 0.8, limitAppearance: 0, rateAppearance: 0 }],
    ["none", { limitRate: 0, limitAppearance: 0, rateAppearance: 0 }],
  ])("enter the spread with their signs: %s", (_, correlation) => {
    const { limitRate, limitAppearance, rateAppearance } = correlation;
    const rho = [
      [1, limitRate, limitAppearance],
      [limitRate, 1, rateAppearance],
      [limitAppearance, rateAppearance, 1],
    ];
    const shares = names.map((name) => {
      const step = 1e-4 * law[name];
      const log = (by: number): number =>
        Math.log(contrastFactor(0.5, 0.9, { ...law, [name]: law[name] + by }));
      return ((log(step) - log(-step)) / (2 * step)) * sd[name];
    });
    const variance = shares.reduce(
      (sum, one, i) => sum + shares.reduce((inner, other, j) => inner + one * other * rho[i]![j]!, 0),
      0,
    );
    const { logSd } = effect("contrast", 0.5, 0.9, { ...law, sd: { ...sd, correlation } });
    expect(logSd).toBeCloseTo(Math.sqrt(variance), 6);
  });
});
