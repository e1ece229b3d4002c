import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import { livesUntil } from "../../src/age/livesUntil.js";

const severities = (span: Parameters<typeof livesUntil>[0]): readonly string[] =>
  livesUntil(span).map(({ severity }) => severity);

describe("livesUntil", () => {
  it.each([
    ["lives through the interval", { ageH: 0.5, timeS: 1200, highS: 1800 }, []],
    ["ends with the interval", { ageH: 0.5, timeS: 1200, highS: 3600 }, []],
    ["may die before the upper end", { ageH: 0.5, timeS: 1200, highS: 3700 }, ["warn"]],
    ["dies before the time is up", { ageH: 0.5, timeS: 3700, highS: 5000 }, ["stop"]],
    ["is dead at the pour-in", { ageH: 1.6, timeS: 600, highS: 900 }, ["stop"]],
    ["is asked about the pour-in alone", { ageH: 1.5 }, []],
    ["has an end of rounding", { ageH: 0.1 + 0.2, timeS: 4320, highS: 4320 }, []],
  ] as const)("a bath of 1.5 h that %s", (_, span, expected) => {
    expect(severities({ lifeH: 1.5, ...span })).toEqual(expected);
  });
  it("says of a bath that lives three minutes of fifty how old it will be", () => {
    expect(livesUntil({ lifeH: 0.05, ageH: 0, timeS: 3000, highS: 4000 })).toEqual([
      {
        code: "bath-past-life",
        severity: "stop",
        message:
          "The bath lives 3 min and is 50 min old at the pour-out: it fails before the end. Mix fresh.",
        quantity: "ageH",
        limit: 0.05,
        actual: 3000 / 3600,
        data: { at: "pour-out" },
      },
    ]);
  });
  it.each([
    ["is out before it may fail", { ageH: 0.5, timeS: 1200, highS: 1800 }, []],
    ["is out just then", { ageH: 1, timeS: 1200, highS: 1800 }, []],
    ["may fail before the upper end", { ageH: 1, timeS: 1200, highS: 1900 }, [["bath-may-fail", 1.5]]],
    ["may have failed already", { ageH: 2.5, timeS: 600, highS: 900 }, [["bath-may-fail", 1.5]]],
    ["may be dead at the upper end", { ageH: 2.5, timeS: 600, highS: 1900 }, [["bath-past-life", 3]]],
  ] as const)("a bath of 3 h that may fail from 1.5 h on %s", (_, span, expected) => {
    const found = livesUntil({ lifeH: 3, lowH: 1.5, ...span });
    expect(found.map(({ code, limit }) => [code, limit])).toEqual(expected);
    for (const { severity } of found) expect(severity).toBe("warn");
  });
  it("says from when on it may fail", () => {
    const said = (ageH: number, highS: number): readonly string[] =>
      livesUntil({ lifeH: 3, lowH: 1.5, ageH, timeS: 600, highS }).map(({ message }) => message);
    expect(said(2.5, 900)).toEqual([
      "The bath is 2 h 30 min old. It may fail from 1 h 30 min on. Mix fresh.",
    ]);
    expect(said(1.25, 1800)).toEqual([
      "The bath may fail from 1 h 30 min on. At the long end of the interval it is 1 h 45 min old. " +
        "Mix just before use.",
    ]);
  });
  const hours = fc.double({ min: 0.01, max: 50, noNaN: true });
  const seconds = fc.double({ min: 0, max: 1e5, noNaN: true });
  test.prop([hours, hours, seconds, seconds])(
    "gets no better with age or time",
    (lifeH, ageH, timeS, more) => {
      const rank = { none: 0, warn: 1, stop: 2 } as const;
      const gravest = (age: number, time: number, high: number): number =>
        rank[(severities({ lifeH, ageH: age, timeS: time, highS: high })[0] ?? "none") as keyof typeof rank];
      const now = gravest(ageH, timeS, timeS + more);
      expect(gravest(ageH, timeS + more, timeS + more)).toBeGreaterThanOrEqual(now);
      expect(gravest(ageH + more / 3600, timeS, timeS + more)).toBeGreaterThanOrEqual(now);
    },
  );
});
