import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { compensate, effect, agitationFactor, genericAgitationLaw, type Agitation } from "../../src/index.js";
import { anyOf, caught } from "../helpers.js";
const interval = fc.oneof(
  fc.constantFrom(1e-9, 0.005, 0.0075, 1, 30, 60, 180, 3600),
  fc.double({ min: 1e-6, max: 3600, noNaN: true }),
);
const agitation = fc.oneof(
  fc.constantFrom<Agitation>("continuous", "stand"),
  interval.map((everyS): Agitation => ({ everyS })),
);

/** The stale share of an interval at a time constant of 75 s. */
const staleShareOf = (everyS: number): number => 1 + Math.expm1(-everyS / 75) / (everyS / 75);

describe("agitationFactor", () => {
  it("has the closed form of the stale layer", () => {
    // r = 1 - a(1 - (1 - e^-x)/x), here a = 0.5, x = 1: r = 1 - 0.5/e.
    const law = { staleLoss: 0.5, staleTimeS: 60 };
    expect(agitationFactor("continuous", { everyS: 60 }, law)).toBeCloseTo(1 / (1 - 0.5 * Math.exp(-1)), 12);
    expect(agitationFactor({ everyS: 60 }, "continuous", law)).toBeCloseTo(1 - 0.5 * Math.exp(-1), 12);
  });
  it("agrees with the mean rate integrated numerically", () => {
    const { staleLoss: a, staleTimeS: tau } = genericAgitationLaw;
    const n = 20000;
    for (const everyS of [5, 30, 180]) {
      let sum = 0;
      for (let i = 0; i < n; i++) sum += 1 - a * (1 - Math.exp((-(i + 0.5) * everyS) / n / tau));
      expect(agitationFactor({ everyS }, "continuous")).toBeCloseTo(sum / n, 8);
    }
  });
  it("stands at 0.29 of continuous", () => {
    expect(agitationFactor("stand", "continuous")).toBeCloseTo(0.29, 12);
    expect(agitationFactor("stand", "stand")).toBe(1);
  });
  it("joins continuous agitation as the interval shrinks", () => {
    // Series of the stale share: x/2 - x²/6 + x³/24, to first order the loss is a x/2.
    const x = 4e-5;
    const stale = x / 2 - (x * x) / 6 + x ** 3 / 24;
    const law = { staleLoss: 0.73, staleTimeS: 75 };
    expect(agitationFactor("continuous", { everyS: 75 * x }, law)).toBeCloseTo(1 / (1 - 0.73 * stale), 13);
    expect(agitationFactor("continuous", { everyS: 1e-12 }, law)).toBeCloseTo(1, 13);
  });
  test.prop([
    agitation,
    interval,
    fc.constantFrom(0, 0.01, 0.73, 0.99),
    fc.double({ min: 0, max: 10, noNaN: true }),
  ])(
    "of a loss that was learned is that of the law before, to a power: 1 at a loss of 0, never below it at a longer interval",
    (from, everyS, shape, staleLoss) => {
      const learned = { staleLoss, staleTimeS: 75, shape };
      const before = { staleLoss: shape, staleTimeS: 75 };
      expect(agitationFactor(from, { everyS }, { ...before, shape })).toBe(
        agitationFactor(from, { everyS }, before),
      );
      const logTime = Math.log(agitationFactor("continuous", { everyS }, learned));
      // The curve of a loss of nothing is the stale share itself.
      const share = staleShareOf(everyS);
      const curve = shape > 0 ? (staleLoss / shape) * -Math.log1p(-shape * share) : staleLoss * share;
      expect(logTime).toBeCloseTo(Math.min(-Math.log(0.29), curve), 9);
      expect(agitationFactor("continuous", { everyS }, learned)).toBeGreaterThanOrEqual(1);
    },
  );
  it("refuses values out of range, by message", () => {
    const f = agitationFactor;
    expect(() => f("stand", "stand", { staleLoss: 11, staleTimeS: 60, shape: 0.5 })).toThrow(
      new RangeError("agitationFactor: law.staleLoss must be from 0 to 10, got 11"),
    );
    expect(() => f("stand", "stand", { staleLoss: 0.5, staleTimeS: 60, shape: 1 })).toThrow(
      new RangeError("agitationFactor: law.shape must be from 0 to 0.99, got 1"),
    );
    expect(() => f("stand", "stand", anyOf({ staleLoss: 0.5, staleTimeS: 60, shape: null }))).toThrow(
      new TypeError("agitationFactor: law.shape must be a number, got null"),
    );
    expect(() => f(anyOf("shake"), "stand")).toThrow(
      new RangeError(
        'agitationFactor: from must be "continuous" or "stand", or an object such as { "everyS": 30 }, got "shake"',
      ),
    );
    expect(() => f("stand", anyOf(30))).toThrow(
      new TypeError("agitationFactor: to must be an object, got 30"),
    );
    expect(() => f("stand", { everyS: 0 })).toThrow(
      new RangeError("agitationFactor: to.everyS must be above 0 and at most 3600 s, got 0"),
    );
    expect(() => f("stand", { everyS: 3601 })).toThrow(
      "agitationFactor: to.everyS must be above 0 and at most 3600 s, got 3601",
    );
    expect(() => f("stand", anyOf({}))).toThrow(
      new TypeError("agitationFactor: to.everyS is missing: a number"),
    );
    expect(() => f("stand", "stand", anyOf(3))).toThrow(
      new TypeError("agitationFactor: law must be an object, got 3"),
    );
    expect(() => f("stand", "stand", { staleLoss: 1, staleTimeS: 60 })).toThrow(
      new RangeError("agitationFactor: law.staleLoss must be from 0 to 0.99, got 1"),
    );
    expect(() => f("stand", "stand", { staleLoss: 0.5, staleTimeS: 0 })).toThrow(
      new RangeError("agitationFactor: law.staleTimeS must be above 0 and at most 100000 s, got 0"),
    );
    expect(() => f("stand", "stand", { staleLoss: 0.5, staleTimeS: 60, sdStaleLoss: -1 })).toThrow(
      new RangeError("agitationFactor: law.sdStaleLoss must be from 0 to 10, got -1"),
    );
  });
});

describe("an agitation in words", () => {
  const baseline = { timeS: 600, temperatureC: 20 };
  it.each([
    ["every 30 s", "unreadable"],
    ["", "empty"],
  ])("%j is refused with the forms that are taken, and the function that reads it", (agitation, code) => {
    expect(caught(() => compensate(anyOf({ ...baseline, agitation }), {}))).toMatchObject({
      code,
      path: "/baseline/agitation",
      actual: agitation,
      expected: {
        forms: [{ values: ["continuous", "stand"] }, { types: ["object"], examples: ['{ "everyS": 30 }'] }],
        parse: "parseAgitation",
      },
    });
  });
});

describe("an interval", () => {
  test.prop([interval, fc.double({ min: 0, max: 10, noNaN: true })])(
    "is never slower than stand",
    (everyS, staleLoss) => {
      const law = { staleLoss, staleTimeS: 75, shape: 0.75 };
      expect(agitationFactor({ everyS }, "stand", law)).toBeGreaterThanOrEqual(1);
    },
  );
  it("comes to stand without a jump", () => {
    const factor = (everyS: number): number => agitationFactor({ everyS: 30 }, { everyS });
    const stand = agitationFactor({ everyS: 30 }, "stand");
    expect(factor(1380)).toBeLessThan(stand);
    expect(factor(1380)).toBeCloseTo(stand, 1);
    expect(factor(1500)).toBe(stand);
    expect(factor(3600)).toBe(stand);
  });
});

describe("agitationLogSd", () => {
  test.prop([agitation, agitation])(
    "is 0 on itself, symmetric, and the share of ln f to which the loss is known",
    (a, b) => {
      expect(effect("agitation", a, a).logSd).toBe(0);
      expect(effect("agitation", a, b).logSd).toBe(effect("agitation", b, a).logSd);
      const stands = (a === "stand") !== (b === "stand");
      // Of stand the law of intervals says nothing.
      const logTime = (each: Agitation): number =>
        typeof each === "string" ? 0 : -Math.log1p(-0.75 * staleShareOf(each.everyS));
      expect(effect("agitation", a, b).logSd).toBeCloseTo(
        Math.hypot(
          (0.4 / 0.75) * (logTime(b) - logTime(a)),
          stands ? 0.4 : 0,
          // The departure from the curve, a random walk of 0.08 along it.
          0.08 * Math.sqrt(Math.abs(logTime(b) - logTime(a)) / 0.75),
        ),
        9,
      );
    },
  );
  it("of a loss of 0 is that of a loss of so much of the stale share", () => {
    // At an interval of τ the stale share is 1/e.
    const none = { staleLoss: 0, staleTimeS: 60, sdStaleLoss: 0.5 };
    expect(effect("agitation", "continuous", { everyS: 60 }, none).logSd).toBeCloseTo(
      Math.hypot(0.5 / Math.E, 0.08 / Math.sqrt(Math.E)),
      9,
    );
  });
  it("gives a law without a spread one of 0.3 in the loss", () => {
    const law = { staleLoss: 0.5, staleTimeS: 60 };
    expect(effect("agitation", { everyS: 30 }, { everyS: 60 }, law).logSd).toBeCloseTo(
      effect("agitation", { everyS: 30 }, { everyS: 60 }, { ...law, sdStaleLoss: 0.3 }).logSd,
      12,
    );
  });
  it("names itself in its errors", () => {
    expect(() => effect("agitation", anyOf(1), "stand").logSd).toThrow(
      "effect: from must be an object, got 1",
    );
    expect(() => effect("agitation", "stand", anyOf(1)).logSd).toThrow("effect: to must be an object, got 1");
    expect(() => effect("agitation", "stand", "stand", anyOf(1)).logSd).toThrow(
      "effect: law must be an object, got 1",
    );
  });
});

describe("genericAgitationLaw", () => {
  it("says of both its kinds of figures where they come from", () => {
    expect(genericAgitationLaw.sources?.join("; ")).toMatch(/intervals: .*practice.*; .*makers' notes/);
  });
});
