import { describe, expect, it } from "vitest";
import { bathCautions, type BathQuestion, type Caution, type FixSetting } from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { codes, refusal } from "./helpers.js";

const stop = { kind: "water" } as const;
const ready = { stop, fix: { clearingS: 30, times: 2 }, wash: {} };
const judged = (baths: object, more: object = {}): readonly Caution[] =>
  bathCautions({ temperatureC: 20, baths: { ...ready, ...baths }, ...more });
const facts = (list: readonly Caution[]): readonly unknown[] =>
  list.map(({ message, ...caution }) => {
    expect(message.length).toBeGreaterThan(20);
    return caution;
  });

describe("a step of temperature", () => {
  it("is judged between neighbours", () => {
    // 5 °F between trays, 2.8 °C. Taken as 3, which a thermometer in °C can tell (assumed): 0.2 °C more than is printed. US Navy, NAVEDTRA 14262, p. 7-11. One temperature for all: Transactions of the SMPE
    // 18, 1924, p. 46.
    expect(judged({ stop: { temperatureC: 17 } })).toEqual([]);
    expect(facts(judged({ stop: { temperatureC: 16.9 } }))).toEqual([
      {
        code: "temperature-step",
        severity: "warn",
        path: "/baths/stop/temperatureC",
        quantity: "temperatureDifferenceC",
        limit: 3,
        actual: 20 - 16.9,
        data: { bath: "stop" },
      },
      expect.objectContaining({ path: "/baths/fix/temperatureC", data: { bath: "fix" } }),
    ]);
    // The developer lies between pre-soak and stop.
    const paths = (baths: object): readonly unknown[] => judged(baths).map(({ path }) => path);
    expect(paths({ preSoak: { temperatureC: 24 } })).toEqual(["/baths/preSoak/temperatureC"]);
    expect(paths({ preSoak: { temperatureC: 24 }, stop: { temperatureC: 24 } })).toEqual([
      "/baths/preSoak/temperatureC",
      "/baths/stop/temperatureC",
      "/baths/fix/temperatureC",
    ]);
    expect(paths({ clearingAid: { temperatureC: 25 }, wettingAgent: { temperatureC: 27 } })).toEqual([
      "/baths/clearingAid/temperatureC",
      "/baths/wettingAgent/temperatureC",
    ]);
  });

  it("may be 5 °C to the wash, and what the caller states", () => {
    // The wash may differ by 5 °C: Ilford/Harman, film technical sheets (from memory).
    expect(judged({ wash: { temperatureC: 25 } })).toEqual([]);
    const cold = judged({ wash: { temperatureC: 14 } });
    expect(codes(cold)).toEqual(["temperature-step", "cold-wash"]);
    expect(cold[0]!.limit).toBe(5);
    expect(codes(judged({ wash: { temperatureC: 21.5 } }, { maxStepC: 1 }))).toEqual(["temperature-step"]);
    // 20 − 17.2 is 2.8000000000000007.
    const same = { temperatureC: 17.2 };
    const baths = { stop: same, fix: { ...ready.fix, ...same }, wash: { temperatureC: 20 } };
    expect(judged(baths, { maxStepC: 2.8 })).toEqual([]);
  });

  it.each([
    [20, 30, "stop"],
    [20, 29.9, "warn"],
    // 18.4 − 8.4 is 9.999999999999998.
    [18.4, 8.4, "stop"],
    [20.1, 10.1, "stop"],
    [16.9, 6.9, "stop"],
    [20, 10.001, "warn"],
  ])("from %d to %d °C is a %s", (temperatureC, fixC, severity) => {
    const baths = { fix: { temperatureC: fixC }, wash: { temperatureC: fixC } };
    expect(bathCautions({ temperatureC, baths })[0]).toMatchObject({ code: "temperature-step", severity });
  });
});

describe("heat on the gelatin", () => {
  it("counts in any bath that names its temperature", () => {
    const of = (temperatureC: number, emulsion: "soft" | "hardened", own = true) =>
      codes(judged({ wash: own ? { temperatureC } : {} }, { temperatureC, emulsion, maxStepC: 20 }));
    expect(of(22, "soft")).toEqual(["soft-emulsion-warm"]);
    expect(of(22, "soft", false)).toEqual([]);
    expect(of(22, "hardened")).toEqual([]);
    expect(of(33, "hardened")).toEqual(["temperature-limit"]);
    expect(of(68, "hardened")).toEqual(["maybe-fahrenheit"]);
  });
});

describe("an acid stop", () => {
  const of = (kind: "acid" | "water" | undefined, fix: FixSetting, more: object = {}) =>
    judged({ stop: { kind }, fix: { ...ready.fix, ...fix } }, more)
      .filter(({ code }) => code.startsWith("acid"))
      .map(({ code, severity, path }) => [code, severity, path]);
  it("is warned of on soft gelatin after carbonate, and before plain hypo", () => {
    // Gas in the gelatin; sulphur and sulphur dioxide: common knowledge, from memory.
    const blisters = ["acid-stop-blisters", "warn", "/baths/stop/kind"];
    const sulphur = ["acid-into-hypo", "warn", "/baths/stop/kind"];
    expect(of("acid", {}, { emulsion: "soft" })).toEqual([blisters]);
    expect(of("acid", {}, { emulsion: "soft", carbonate: true })).toEqual([blisters]);
    expect(of("acid", {}, { emulsion: "soft", carbonate: false })).toEqual([]);
    expect(of("acid", {}, { emulsion: "hardened", carbonate: true })).toEqual([]);
    expect(of("acid", { kind: "plain" })).toEqual([sulphur]);
    expect(of("acid", { kind: "plain" }, { emulsion: "soft" })).toEqual([blisters, sulphur]);
  });
  it("is warned of on a plate, which is soft unless it is said to be hardened", () => {
    // Common practice: see the plan's stop bath.
    expect(of("acid", {}, { material: "plate", carbonate: true })).toHaveLength(1);
    expect(of("acid", {}, { material: "plate" })).toHaveLength(1);
    expect(of("acid", {}, { material: "plate", emulsion: "hardened", carbonate: true })).toEqual([]);
    expect(of(undefined, {}, { material: "plate" })).toEqual([]);
  });
  it("is not taken by itself where it does harm", () => {
    expect(of(undefined, { kind: "plain" }, { emulsion: "soft" })).toEqual([]);
    expect(of("water", { kind: "plain" }, { emulsion: "soft" })).toEqual([]);
  });
});

describe("the fixing bath", () => {
  const of = (fix: FixSetting, more: object = {}): readonly Caution[] =>
    bathCautions({ temperatureC: 20, baths: { stop, fix, wash: {} }, ...more });
  const path = "/baths/fix";
  it("says what was assumed", () => {
    expect(facts(of({}))).toEqual([
      { code: "clearing-assumed", severity: "note", path, quantity: "timeS", actual: 60 },
      { code: "fixing-split", severity: "note", path, data: { times: 3 } },
    ]);
    expect(of({ clearingS: 60 })[0]!.data).toEqual({ times: 2 });
    expect(of({ clearingS: 60 }, { material: "plate" })[0]!.data).toEqual({ times: 3 });
    expect(of({}, { iodideRich: true })[1]!.data).toEqual({ times: 3 });
    expect(of({ freshClearingS: 200, times: 2 })[0]!.actual).toBe(200);
    expect(of({ durationS: 120 })).toEqual([]);
  });

  it("is spent at twice its fresh clearing time, at one temperature", () => {
    // US Navy, NAVEDTRA 14209, p. 10-7.
    expect(of({ clearingS: 79, freshClearingS: 40, times: 2 })).toEqual([]);
    expect(facts(of({ clearingS: 80, freshClearingS: 40, times: 2 }))).toEqual([
      {
        code: "fixer-spent",
        severity: "stop",
        path: `${path}/clearingS`,
        quantity: "timeS",
        limit: 80,
        actual: 80,
        data: {},
      },
    ]);
    expect(codes(of({ freshClearingS: 40, times: 2 }))).toEqual(["clearing-assumed"]);
    const spent = (fix: FixSetting): boolean => codes(of(fix)).includes("fixer-spent");
    // 120 s at 10 °C are at most 60 s at 20 °C: US War Department, TM 11-2323, sec. 33 c.
    expect(spent({ clearingS: 120, clearingAtC: 10, freshClearingS: 60 })).toBe(false);
    expect(spent({ clearingS: 120, freshClearingS: 60 })).toBe(true);
    expect(spent({ clearingS: 119, freshClearingS: 60 })).toBe(false);
    // Measured warm, used cold.
    expect(spent({ clearingS: 60, clearingAtC: 20, freshClearingS: 60, temperatureC: 10 })).toBe(true);
    expect(spent({ freshClearingS: 1 })).toBe(false);
  });

  it("may be spent at twice the fresh clearing time of the handbook", () => {
    // Film 60 s in rapid fixer: Brodie-Tyrrell, Fixer Capacity. All others from memory.
    const spent = (fix: FixSetting, more: object = {}): unknown =>
      facts(of(fix, more).filter(({ code }) => code === "fixer-spent"))[0];
    const one = { code: "fixer-spent", severity: "warn", path: `${path}/clearingS`, quantity: "timeS" };
    expect(spent({ clearingS: 300 })).toEqual({ ...one, limit: 120, actual: 300, data: { assumed: true } });
    expect(of({ clearingS: 300 })[0]!.message).toBe(
      "Clears in 5 min, and 1 min is assumed for a fresh fixing bath. " +
        "This one may be spent: check with a fresh bath.",
    );
    const from = (fix: FixSetting, more: object = {}): readonly boolean[] =>
      [-1, 0].map((less) => spent({ ...fix, clearingS: fix.clearingS! + less }, more) !== undefined);
    const before = [false, true];
    expect(from({ clearingS: 120 })).toEqual(before);
    expect(from({ clearingS: 240 }, { material: "plate" })).toEqual(before);
    expect(from({ clearingS: 240 }, { iodideRich: true })).toEqual(before);
    expect(from({ clearingS: 600, kind: "plain" })).toEqual(before);
    expect(from({ clearingS: 1200, kind: "plain" }, { material: "plate" })).toEqual(before);
    // Of paper it is the time of a scrap of film.
    expect(from({ clearingS: 120 }, { material: "paper" })).toEqual(before);
    // Cold: 2.7 times for 10 °C, at the temperature of the measurement.
    expect(from({ clearingS: 324, temperatureC: 10 })).toEqual(before);
    expect(from({ clearingS: 324, clearingAtC: 10 })).toEqual(before);
    expect(from({ clearingS: 120, clearingAtC: 20, temperatureC: 10 })).toEqual(before);
    // What was measured fresh goes before the handbook.
    expect(spent({ clearingS: 200, freshClearingS: 120 })).toBeUndefined();
  });

  it("is short against the multiple that is planned, and against two clearing times at least", () => {
    const short = (fix: FixSetting, more: object = {}): unknown =>
      facts(of(fix, more).filter(({ code }) => code === "short-fix"))[0];
    const one = { code: "short-fix", severity: "warn", quantity: "timeS" };
    expect(short({ clearingS: 60, times: 3, durationS: 121 })).toEqual({
      ...one,
      path: `${path}/durationS`,
      limit: 180,
      actual: 121,
      data: { times: 3 },
    });
    expect(short({ clearingS: 60, times: 1.5 })).toEqual({
      ...one,
      path: `${path}/times`,
      limit: 120,
      actual: 90,
      data: { times: 2 },
    });
    expect(short({ clearingS: 60, durationS: 121 }, { iodideRich: true })).toMatchObject({ limit: 180 });
    expect(short({ clearingS: 60, times: 3, durationS: 180 })).toBeUndefined();
    expect(short({ clearingS: 60, times: 2 })).toBeUndefined();
    // Three times 20.1 s are 60.3 s on the clock, and 60.300000000000004 as numbers.
    expect(short({ clearingS: 20.1, times: 3, durationS: 60.3 })).toBeUndefined();
    expect(short({ clearingS: 20.1, times: 3, durationS: 60.29 })).toBeDefined();
  });

  it("asks whether a clearing time of a few seconds is in minutes", () => {
    // A fresh rapid bath takes longer than 15 s: common practice.
    expect(facts(of({ clearingS: 5 }))).toEqual([
      {
        code: "maybe-minutes",
        severity: "warn",
        path: `${path}/clearingS`,
        quantity: "timeS",
        limit: 15,
        actual: 5,
        data: { of: "clearing" },
      },
    ]);
    expect(of({ clearingS: 5 })[0]!.message).toBe("The clearing time is 5 s. Is it in minutes?");
    expect(of({ clearingS: 5, freshClearingS: 4 }).map((one) => one.path)).toEqual([
      `${path}/clearingS`,
      `${path}/freshClearingS`,
    ]);
    expect(codes(of({ clearingS: 15 }))).not.toContain("maybe-minutes");
    expect(codes(of({ clearingS: 14.9 }))).toContain("maybe-minutes");
  });

  it("fixes film and plates for a minute at the least, in plain hypo for five", () => {
    // A minute: common practice. Five: Henley, 1914, p. 524, after clearing.
    const short = (fix: FixSetting, more: object = {}): unknown =>
      of(fix, more).find(({ code }) => code === "short-fix");
    expect(short({ clearingS: 20, durationS: 59 })).toMatchObject({ limit: 60, actual: 59, data: {} });
    expect(short({ clearingS: 20, durationS: 60 })).toBeUndefined();
    expect(short({ clearingS: 20, durationS: 59 }, { material: "plate" })).toMatchObject({ limit: 60 });
    expect(short({ clearingS: 20, times: 1 })).toBeUndefined();
    expect(short({ kind: "plain", clearingS: 100, durationS: 299 })).toMatchObject({ limit: 300, data: {} });
    expect(short({ kind: "plain", clearingS: 100, durationS: 300 })).toBeUndefined();
    expect(short({ kind: "plain", clearingS: 160, durationS: 300 })).toMatchObject({
      limit: 320,
      data: { times: 2 },
    });
    // Neither two nor three clearing times are planned then.
    expect(codes(of({ clearingS: 20 }))).toEqual([]);
    expect(codes(of({ clearingS: 30 }))).toEqual(["fixing-split"]);
  });

  it("is used for ten minutes at most when it is rapid", () => {
    // Brodie-Tyrrell, Fixer Capacity.
    expect(of({ clearingS: 300, times: 2, freshClearingS: 200 })).toEqual([]);
    expect(facts(of({ clearingS: 301, times: 2, freshClearingS: 200 }))).toEqual([
      {
        code: "long-fix",
        severity: "warn",
        path,
        quantity: "timeS",
        limit: 600,
        actual: 602,
        data: { times: 2 },
      },
    ]);
    expect(of({ clearingS: 301, times: 2, kind: "plain" })).toEqual([]);
  });
});

describe("the capacity of the fixing bath", () => {
  const roll = 516.128;
  const of = (fix: FixSetting, more: Partial<BathQuestion> = {}): readonly Caution[] =>
    judged({ fix: { ...ready.fix, ...fix } }, more);
  const one = {
    severity: "warn",
    code: "fixer-capacity-reached",
    path: "/baths/fix/usedCm2PerL",
    quantity: "cm2PerL",
  };
  it("is reached with this material, or past before it", () => {
    // Twenty rolls of 80 square inches in a litre: Brodie-Tyrrell, Fixer Capacity.
    expect(of({ usedCm2PerL: 19 * roll }, { areaCm2: roll / 2, volumeMl: 500 })).toEqual([]);
    expect(facts(of({ usedCm2PerL: 19 * roll }, { areaCm2: roll, volumeMl: 500 }))).toEqual([
      { ...one, limit: 20 * roll, actual: 21 * roll },
    ]);
    expect(facts(of({ usedCm2PerL: 20.1 * roll }, { areaCm2: roll, volumeMl: 500 }))).toEqual([
      { ...one, code: "fixer-past-capacity", severity: "stop", limit: 20 * roll, actual: 20.1 * roll },
    ]);
    expect(of({ usedCm2PerL: 20 * roll })).toEqual([]);
    expect(of({ usedCm2PerL: 19 * roll }, { areaCm2: 9 * roll })).toEqual([]);
    expect(of({ usedCm2PerL: 19 * roll }, { volumeMl: 9 })).toEqual([]);
  });

  it("is half for iodide-rich films, half for plain hypo, and the caller's own before both", () => {
    // Half to 0.7 for tabular films: Brodie-Tyrrell, Fixer Capacity. Plain hypo: half of S. Anchell, The Darkroom
    // Cookbook, 3rd ed., 2008, p. 108, on the safe side.
    const limit = (fix: FixSetting, more: Partial<BathQuestion> = {}): number | undefined =>
      of({ usedCm2PerL: 9e5, ...fix }, more)[0]!.limit;
    expect(limit({}, { iodideRich: true })).toBeCloseTo(10 * roll, 9);
    expect(limit({ kind: "plain" })).toBeCloseTo(10 * roll, 9);
    expect(limit({ capacityCm2PerL: 12 * roll }, { iodideRich: true })).toBe(12 * roll);
  });

  it("is not past by what a sum loses", () => {
    // The third roll fills a capacity of two a litre in a litre and a half, by a sum that is
    // 1032.2560000003334.
    const full = { capacityCm2PerL: 2 * roll };
    expect(of({ ...full, usedCm2PerL: 688.170666667 }, { areaCm2: roll, volumeMl: 1500 })).toEqual([]);
    expect(of({ ...full, usedCm2PerL: 2 * roll * (1 + 1e-12) })).toEqual([]);
  });
});

describe("fixing and washing", () => {
  it("are missed", () => {
    expect(facts(bathCautions({ temperatureC: 20, baths: {} }))).toEqual([
      { code: "no-fix", severity: "warn", path: "/baths" },
      { code: "no-wash", severity: "warn", path: "/baths" },
    ]);
    expect(codes(bathCautions({ temperatureC: 20 }))).toEqual(["clearing-assumed", "fixing-split"]);
    // Developer in the fixing bath stains and weakens it: common practice.
    expect(facts(judged({ stop: undefined }))).toEqual([
      { code: "no-stop", severity: "warn", path: "/baths" },
    ]);
    expect(judged({ stop: {} })).toEqual([]);
    expect(codes(bathCautions({ temperatureC: 20, baths: { wash: {} } }))).toEqual(["no-fix"]);
  });

  it("are too short below the least of the sources", () => {
    const short = (wash: object, baths: object = {}, more: object = {}): number | undefined =>
      judged({ ...baths, wash }, more).find(({ code }) => code === "short-wash")?.limit;
    expect(facts(judged({ wash: { durationS: 60 } }))).toEqual([
      {
        code: "short-wash",
        severity: "warn",
        path: "/baths/wash/durationS",
        quantity: "timeS",
        limit: 1200,
        actual: 60,
      },
    ]);
    // Film 20 to 30 min, 5 after a clearing aid: Eastman Kodak, film data sheets (from memory).
    expect(short({ durationS: 1199 })).toBe(1200);
    expect(short({ durationS: 1200 })).toBeUndefined();
    expect(short({ durationS: 299 }, { clearingAid: {} })).toBe(300);
    expect(short({ durationS: 300 }, { clearingAid: {} })).toBeUndefined();
    expect(short({ method: "soak", durationS: 539 }, { clearingAid: {} })).toBe(540);
    // Twice after plain hypo (from memory); twice at 10 °C (TM 11-2323, sec. 33 d).
    expect(short({ durationS: 60 }, { fix: { kind: "plain" } })).toBe(2400);
    expect(short({ durationS: 60, temperatureC: 10 })).toBeCloseTo(2400, 6);
    // Paper: 2 to 4 min on resin, an hour on fibre, 20 min after a clearing aid (from memory).
    expect(short({ durationS: 60 }, {}, { material: "paper" })).toBe(3600);
    expect(short({ durationS: 60 }, { clearingAid: {} }, { material: "paper" })).toBe(1200);
    const resin = { material: "paper", paperBase: "resin-coated" };
    expect(short({ durationS: 60 }, {}, resin)).toBe(120);
    expect(short({ durationS: 60 }, { clearingAid: {} }, resin)).toBe(120);
    // Inversions are counted, and without a fixing bath there is no fixer to wash out.
    expect(short({ method: "changes", durationS: 60 })).toBeUndefined();
    expect(short({ durationS: 60 }, { fix: undefined })).toBeUndefined();
    expect(short({})).toBeUndefined();
  });

  it("take longer in cold water", () => {
    // Twice at 10 °C: US War Department, TM 11-2323, sec. 33 d.
    expect(facts(judged({}, { temperatureC: 10 }))).toEqual([
      {
        code: "cold-wash",
        severity: "note",
        path: "/baths/wash",
        quantity: "ratio",
        limit: 1,
        actual: expect.closeTo(2, 12),
      },
    ]);
    expect(judged({ wash: { durationS: 2400 } }, { temperatureC: 10 })).toEqual([]);
    // 1.05 times at 17.75 °C.
    const said = (temperatureC: number): number => judged({}, { temperatureC }).length;
    expect([18.2, 17.8, 17.7].map(said)).toEqual([0, 0, 1]);
  });

  it("by counted inversions are for film after rapid fixer", () => {
    // Ilford/Harman, film technical sheets (from memory).
    const of = (fix: FixSetting, material?: "film" | "plate" | "paper", method: string = "changes") =>
      codes(
        judged(
          { fix: material === "paper" ? fix : { ...ready.fix, ...fix }, wash: { method } },
          { material },
        ),
      );
    expect(of({})).toEqual([]);
    expect(of({ kind: "plain" })).toEqual(["wash-unproven"]);
    expect(of({}, "plate")).toEqual(["wash-unproven"]);
    expect(of({}, "paper")).toEqual(["wash-unproven"]);
    expect(of({ kind: "plain" }, "paper", "soak")).toEqual([]);
  });
});

describe("soft gelatin", () => {
  const frills = (wash: object, more: object = {}, others: object = {}) =>
    judged(
      { fix: { ...ready.fix, kind: "plain" }, stop: { kind: "water" }, wash, ...others },
      {
        material: "plate",
        emulsion: "soft",
        ...more,
      },
    ).filter(({ code }) => code === "wash-frills");
  it("frills past an hour of washing", () => {
    // Common practice, the hour from memory. An hour is the usual wash after plain hypo.
    expect(frills({})).toEqual([]);
    expect(frills({ durationS: 3601 })).toMatchObject([
      { severity: "warn", path: "/baths/wash", quantity: "timeS", limit: 3600, actual: 3601 },
    ]);
    expect(frills({ temperatureC: 15 })).toHaveLength(1);
    expect(frills({ temperatureC: 15 }, { emulsion: "hardened" })).toEqual([]);
    // Ten minutes after a clearing aid.
    expect(frills({ temperatureC: 15 }, {}, { clearingAid: {} })).toEqual([]);
  });
});

describe("paper", () => {
  const paper = (fix: object) => judged({ fix, wash: {} }, { material: "paper" });
  it("has no clearing time, so nothing is said of one", () => {
    expect(paper({})).toEqual([]);
    expect(paper({ times: 3 })).toMatchObject([{ code: "unknown-field", path: "/baths/fix/times" }]);
    // 1 to 2 min in rapid fixer (from memory), half of 10 min in plain hypo (common practice).
    expect(paper({ durationS: 60 })).toEqual([]);
    expect(paper({ durationS: 59 })).toMatchObject([{ code: "short-fix", limit: 60, actual: 59, data: {} }]);
    expect(paper({ kind: "plain", durationS: 299 })).toMatchObject([{ code: "short-fix", limit: 300 }]);
    expect(paper({ durationS: 601 })).toMatchObject([{ code: "long-fix", limit: 600 }]);
  });
  it("may still be fixed in a bath that a scrap of film shows to be spent", () => {
    expect(codes(paper({ clearingS: 90, freshClearingS: 40 }))).toEqual(["fixer-spent"]);
  });
});

describe("a field that is not read", () => {
  it("is named with at most sixty characters, and pointed at with all", () => {
    const field = "x".repeat(100);
    const found = bathCautions({ temperatureC: 20, baths: { fix: anyOf({ [field]: 1 }), wash: {} } });
    const unread = found.find(({ code }) => code === "unknown-field")!;
    expect(unread.path).toBe(`/baths/fix/${field}`);
    expect(unread.message.length).toBeLessThan(90);
  });
});

describe("bathCautions refuses", () => {
  it.each<[string, unknown, string]>([
    ["a number", 7, "TypeError bathCautions /question wrong-type"],
    ["no temperature", {}, "TypeError bathCautions /question/temperatureC missing"],
    ["steam", { temperatureC: 101 }, "RangeError bathCautions /question/temperatureC out-of-range"],
    ["a list of baths", { temperatureC: 20, baths: [] }, "TypeError bathCautions /question/baths wrong-type"],
    [
      "iodide in numbers",
      { temperatureC: 20, iodideRich: 1 },
      "TypeError bathCautions /question/iodideRich wrong-type",
    ],
    [
      "another emulsion",
      { temperatureC: 20, emulsion: 5 },
      "RangeError bathCautions /question/emulsion not-one-of",
    ],
    [
      "clearing at once",
      { temperatureC: 20, baths: { fix: { freshClearingS: 0 } } },
      "RangeError bathCautions /question/baths/fix/freshClearingS out-of-range",
    ],
    [
      "negative use",
      { temperatureC: 20, baths: { fix: { usedCm2PerL: -1 } } },
      "RangeError bathCautions /question/baths/fix/usedCm2PerL out-of-range",
    ],
    [
      "no capacity",
      { temperatureC: 20, baths: { fix: { capacityCm2PerL: 0 } } },
      "RangeError bathCautions /question/baths/fix/capacityCm2PerL out-of-range",
    ],
    [
      "no volume",
      { temperatureC: 20, areaCm2: 5, volumeMl: 0 },
      "RangeError bathCautions /question/volumeMl out-of-range",
    ],
  ])("%s", (_, question, fault) => {
    expect(refusal(() => bathCautions(anyOf(question)))).toBe(fault);
  });
});
