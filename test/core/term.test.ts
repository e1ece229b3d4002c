/* The small pieces of every answer: basis of a law, order of cautions, the 90 % interval. */
import { cumulativeStdNormalProbability } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { gravestFirst, type Caution } from "../../src/core/caution.js";
import { timeEstimate, Z90 } from "../../src/core/estimate.js";
import { basisOf, checkedOrigin, restsOn, sourcesOf, type LawOrigin } from "../../src/core/term.js";
import { compensate } from "../../src/index.js";

describe("basisOf", () => {
  it("knows a learned, a published and a plainly given law apart", () => {
    expect(basisOf({})).toBe("given");
    expect(basisOf({ published: true, sources: [] })).toBe("handbook");
    expect(basisOf({ sources: ["a notebook"] })).toBe("given");
    expect(basisOf({ published: true, runs: 3 })).toBe("own-runs");
    expect(basisOf({ sources: ["a book"], runs: 3 })).toBe("own-runs");
    expect(basisOf({ runs: 0 })).toBe("default");
  });
  it("takes a figure that was not seen in print for one of the handbook, which says so itself", () => {
    expect(basisOf({ seen: "from-memory" })).toBe("handbook");
    expect(basisOf({ seen: "from-memory", runs: 2 })).toBe("own-runs");
  });
});

describe("what an answer by a law rests on", () => {
  it.each([
    ["own runs that moved it", { runs: 3, before: "handbook" }, "own-runs"],
    [
      "what was there before, where runs hardly moved it",
      { runs: 3, before: "handbook", moved: false },
      "handbook",
    ],
    ["the general rule, where nothing is said of before", { runs: 3, moved: false }, "default"],
    ["itself, where there were no runs", { moved: false }, "given"],
    ["the general rule, where no run taught it", { runs: 0, moved: false }, "default"],
  ] as const)("is %s", (_, law, basis) => {
    expect(restsOn(law)).toBe(basis);
  });
});

describe("where a law comes from", () => {
  it("may say how its figures were seen, in one of three ways", () => {
    for (const seen of ["read", "from-memory", "common-practice"] as const)
      expect(checkedOrigin("compensate/knowledge/use", { seen })).toEqual({ seen });
    let caught: unknown;
    try {
      checkedOrigin("compensate/knowledge/use", { seen: "heard" } as unknown as LawOrigin);
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(RangeError);
    expect(caught).toMatchObject({ code: "not-one-of", path: "/knowledge/use/seen", actual: "heard" });
  });
  it("says by true or false whether runs moved it", () => {
    expect(checkedOrigin("compensate/knowledge/use", { moved: false })).toEqual({ moved: false });
    expect(() => checkedOrigin("compensate/knowledge/use", { moved: "no" } as unknown as LawOrigin)).toThrow(
      expect.objectContaining({ code: "wrong-type", path: "/knowledge/use/moved" }),
    );
  });
  it("goes with its sources into a law that is made of it", () => {
    expect(sourcesOf({ sources: ["a book"], seen: "read", published: true })).toEqual({
      sources: ["a book"],
      seen: "read",
    });
    expect(sourcesOf({ sources: ["a book"] })).toEqual({ sources: ["a book"] });
    expect(sourcesOf({ seen: "read" })).toBeUndefined();
  });
});

describe("gravestFirst", () => {
  const one = (severity: Caution["severity"], code: string): Caution =>
    ({ code, severity, message: code }) as Caution;
  it("puts stop before warn before note and keeps the order within each", () => {
    const given = [
      one("note", "a"),
      one("warn", "b"),
      one("stop", "c"),
      one("warn", "d"),
      one("stop", "e"),
      one("note", "f"),
    ];
    expect(gravestFirst(given).map(({ code }) => code)).toEqual(["c", "e", "b", "d", "a", "f"]);
    expect(given[0]?.code, "the input stays as it was").toBe("a");
    expect(gravestFirst([])).toEqual([]);
  });
  it("puts a doubt about what was typed before what follows from it", () => {
    // Nine seconds were meant as minutes. Whoever read of uneven development first would cool the bath.
    const { cautions } = compensate({ timeS: 9, temperatureC: 20 }, { temperatureC: 14 });
    const warnings = cautions.filter(({ severity }) => severity === "warn").map(({ code }) => code);
    expect(warnings[0]).toBe("maybe-minutes");
    expect(warnings).toContain("short-time");
  });
  it("puts what may end the bath before what makes the time less sure, of one severity", () => {
    const given = [
      one("note", "default-law"),
      one("warn", "temperature-unusual"),
      one("warn", "wide-interval"),
      one("note", "hazard"),
      one("warn", "bath-may-fail"),
      one("stop", "near-limit"),
      one("stop", "bath-past-life"),
    ];
    expect(gravestFirst(given).map(({ code }) => code)).toEqual([
      "bath-past-life",
      "near-limit",
      "bath-may-fail",
      "temperature-unusual",
      "wide-interval",
      "hazard",
      "default-law",
    ]);
  });
});

describe("timeEstimate", () => {
  it("is the central 90 % interval of a lognormal time", () => {
    // NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.1: the 95 % point of the normal is
    // 1.645. The
    // library's own normal table is good to four figures.
    expect(Z90).toBeCloseTo(1.645, 3);
    expect(cumulativeStdNormalProbability(Z90)).toBeCloseTo(0.95, 3);
    const { timeS, lowS, highS } = timeEstimate(600, 0.1);
    expect(timeS).toBe(600);
    expect(Math.log(highS / timeS)).toBeCloseTo(0.16448536269514722, 14);
    expect(Math.log(timeS / lowS)).toBeCloseTo(0.16448536269514722, 14);
  });
  it("is the median alone without spread", () => {
    expect(timeEstimate(600, 0)).toEqual({ timeS: 600, lowS: 600, highS: 600 });
  });
});
