/* Room: process. A plan as it is followed: one clock, the developer's own bath, a fixing bath judged at one temperature. The hut is invented. */
import { describe, expect, it } from "vitest";
import {
  bathCautions,
  clearingTimeAt,
  describePlan,
  fixingTime,
  planProcess,
  replaceDevelopment,
  testStripTimes,
  type FixSetting,
  type ProcessInput,
} from "../../src/index.js";

const hut: ProcessInput = { vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 500 };
const codes = (list: readonly { readonly code: string }[]): string[] => list.map(({ code }) => code);

describe("a plan with a rest before it", () => {
  const plan = planProcess({
    ...hut,
    timeS: 1054,
    temperatureC: 16,
    rest: true,
    baths: { preSoak: {}, fix: {}, wash: {} },
  });
  it("says when it is drained by a length, which is true on every clock", () => {
    const develop = plan.steps.find(({ name }) => name === "develop")!;
    const last = develop.cues.at(-1)!;
    expect(last.text).toBe("Begin to pour out or lift out, so that it is drained 10 s later.");
    expect(last.atS + 10).toBe(develop.startS + 1054);
    expect(describePlan(plan).join("\n")).not.toMatch(/drained at/);
  });
  it("keeps saying so when the development is replaced", () => {
    const { startS } = plan.steps.find(({ name }) => name === "develop")!;
    const longer = replaceDevelopment(plan, { atS: startS + 500, remainingS: 700 });
    const develop = longer.steps.find(({ name }) => name === "develop")!;
    expect(develop.durationS).toBe(1200);
    expect(develop.cues.at(-1)).toEqual({
      atS: startS + 1190,
      text: "Begin to pour out or lift out, so that it is drained 10 s later.",
    });
  });
  it("gives a vessel's own draining to a tenth of a second", () => {
    expect(planProcess({ ...hut, drainS: 7.25 }).steps[0]!.cues.at(-1)!.text).toBe(
      "Begin to pour out or lift out, so that it is drained 7.3 s later.",
    );
    expect(planProcess({ ...hut, drainS: 0 }).steps[0]!.cues.at(-1)!.text).toBe(
      "Begin to pour out or lift out.",
    );
  });
});

describe("an interval that is no whole number of seconds", () => {
  it.each([
    [7.5, "Every 7.5 s until 1:23."],
    [15, "Every 0:15 until 1:15."],
    [100 / 7, "Every 14.29 s until 1:11."],
  ])("%d s is said as it is", (everyS, words) => {
    const lines = describePlan(planProcess({ ...hut, vessel: "tank", timeS: 100, agitation: { everyS } }));
    expect(lines.find((line) => line.includes("Every"))).toContain(words);
  });
  it("is whole where only the sum of its beats is not", () => {
    const plan = planProcess({ ...hut, rest: 0.1, agitation: { everyS: 30 } });
    expect(describePlan(plan).find((line) => line.includes("Every"))).toContain("Every 0:30 until");
  });
});

describe("an agitation that pouring out would cut short", () => {
  const last = (timeS: number): unknown[] =>
    planProcess({ ...hut, timeS })
      .steps[0]!.cues.slice(-2)
      .map(({ atS, text }) => [atS, text.slice(0, 7)]);
  it("is left out: nobody inverts the tank for 5 s and pours it out in the middle", () => {
    // Agitation of 5 s at 240 s, and 10 s to drain.
    expect(last(255)).toEqual([
      [240, "Agitate"],
      [245, "Begin t"],
    ]);
    expect(last(254.9)).toEqual([
      [180, "Agitate"],
      [244.9, "Begin t"],
    ]);
    expect(last(250.1)).toEqual([
      [180, "Agitate"],
      [240.1, "Begin t"],
    ]);
  });
  it("stays where a development is made longer", () => {
    const plan = planProcess({ ...hut, timeS: 252 });
    expect(replaceDevelopment(plan, { atS: 200, remainingS: 55 }).steps[0]!.cues.at(-2)!.atS).toBe(240);
    expect(replaceDevelopment(plan, { atS: 200, remainingS: 54 }).steps[0]!.cues.at(-2)!.atS).toBe(180);
  });
});

describe("a development that is timed anew", () => {
  it("is refused in its own name when it holds too many agitations", () => {
    const long = planProcess({ ...hut, timeS: 500_000, agitation: { everyS: 6 } });
    expect(() => replaceDevelopment(long, { atS: 400_000, remainingS: 1e6 })).toThrow(
      new RangeError(
        "replaceDevelopment: plan.handling.agitation.everyS must be such that 1399990 s hold at most 90000 agitations, got 6",
      ),
    );
  });
  it("says by how much it is late, to a tenth of a second", () => {
    const late = (remainingS: number): string =>
      replaceDevelopment(planProcess(hut), { atS: 300, remainingS }).cautions[0]!.message;
    expect(late(9.7)).toBe("Pour out at once: draining ends 0.3 s late.");
    expect(late(4)).toBe("Pour out at once: draining ends 6 s late.");
  });
});

describe("the developer's own bath", () => {
  it("is judged like any other", () => {
    expect(codes(planProcess({ ...hut, temperatureC: 68 }).cautions)).toContain("maybe-fahrenheit");
    const warm = planProcess({ ...hut, temperatureC: 27, emulsion: "soft" }).cautions.find(
      ({ code }) => code === "soft-emulsion-warm",
    );
    expect(warm).toMatchObject({ severity: "stop", path: "/temperatureC", actual: 27 });
    expect(codes(planProcess({ ...hut, temperatureC: 14 }).cautions)).toContain("temperature-unusual");
    expect(planProcess(hut).cautions.filter(({ path }) => path === "/temperatureC")).toEqual([]);
  });
});

describe("the fixing bath", () => {
  const judged = (fix: FixSetting, more = {}): string[] =>
    codes(bathCautions({ temperatureC: 20, ...more, baths: { fix, wash: {} } }));
  it("is spent by its clearing time at one temperature", () => {
    // 120 s at 10 °C are 60 s at 20 °C by the rule that doubles each 10 °C: US War Department, TM 11-2323,
    // sec. 33 c.
    expect(clearingTimeAt({ clearingS: 120, fromC: 10, toC: 20 })).toBe(60);
    expect(judged({ clearingS: 120, clearingAtC: 10, freshClearingS: 60 })).not.toContain("fixer-spent");
    expect(judged({ clearingS: 120, freshClearingS: 60 })).toContain("fixer-spent");
    expect(judged({ clearingS: 119, freshClearingS: 60 })).not.toContain("fixer-spent");
    // Measured warm, used cold: as slow as 60 s at 20 °C are in a bath of 10 °C.
    expect(
      judged({ clearingS: 60, clearingAtC: 20, freshClearingS: 60, temperatureC: 10 }, { temperatureC: 10 }),
    ).toContain("fixer-spent");
    expect(judged({ freshClearingS: 1 })).not.toContain("fixer-spent");
  });
  it("clears no sooner than it did when fresh", () => {
    const fixOf = (fix: FixSetting, temperatureC = 20) =>
      planProcess({ ...hut, temperatureC, baths: { fix, wash: {} } }).steps.find(
        ({ name }) => name === "fix",
      )!;
    // A fresh bath that took 200 s: the handbook's minute is not for this material.
    expect(fixOf({ freshClearingS: 200 })).toMatchObject({
      durationS: 400,
      cues: [{ atS: 510 }, { atS: 710 }],
    });
    expect(fixOf({ freshClearingS: 200 }).sources).toHaveLength(2);
    expect(judged({ freshClearingS: 200, durationS: 120 })).toContain("short-fix");
    expect(
      bathCautions({ temperatureC: 20, baths: { fix: { freshClearingS: 200 }, wash: {} } })[0]!.message,
    ).toBe("Clearing time taken as 200 s: measure it with a scrap of the material.");
    // Nor sooner than the handbook's minute, of which a quick fresh bath says nothing once it is used.
    expect(fixOf({ freshClearingS: 30 })).toMatchObject({ durationS: 120 });
    expect(fixOf({ freshClearingS: 30 }).sources).toHaveLength(3);
    expect(fixOf({ freshClearingS: 100 }, 10)).toMatchObject({ durationS: 240 });
    expect(fixOf({ freshClearingS: 200, clearingS: 210 })).toMatchObject({ durationS: 420 });
  });
  it("is short against the multiple that is planned, and against two clearing times at least", () => {
    const short = (fix: FixSetting, more = {}) =>
      bathCautions({ temperatureC: 20, ...more, baths: { fix, wash: {} } }).find(
        ({ code }) => code === "short-fix",
      );
    expect(short({ clearingS: 60, times: 3, durationS: 121 })).toMatchObject({
      message: "Shorter than 3 clearing times.",
      limit: 180,
      actual: 121,
    });
    expect(short({ clearingS: 60, durationS: 121 }, { modernFilm: true })).toMatchObject({ limit: 180 });
    expect(short({ clearingS: 60, times: 3, durationS: 180 })).toBeUndefined();
    expect(short({ clearingS: 60, times: 1, durationS: 119 })).toMatchObject({
      message: "Shorter than 2 clearing times.",
      limit: 120,
    });
    expect(short({ clearingS: 60, durationS: 120 })).toBeUndefined();
    expect(short({ clearingS: 60, times: 1.5 })).toEqual({
      code: "short-fix",
      severity: "warn",
      message: "Shorter than 2 clearing times.",
      path: "/baths/fix/times",
      limit: 120,
      actual: 90,
    });
    expect(short({ clearingS: 60, times: 2 })).toBeUndefined();
    // Three times 20.1 s are 60.3 s on the clock, and 60.300000000000004 as numbers.
    expect(short({ clearingS: 20.1, times: 3, durationS: 60.3 })).toBeUndefined();
    expect(short({ clearingS: 20.1, times: 3, durationS: 60.29 })).toBeDefined();
  });
});

describe("the sources of a step", () => {
  it("are not named for a length that the input states", () => {
    const baths = {
      preSoak: { durationS: 9 },
      stop: { durationS: 7 },
      fix: { durationS: 300 },
      clearingAid: { durationS: 9 },
      wash: { durationS: 9 },
      wettingAgent: { durationS: 9 },
    };
    const counted = Object.fromEntries(
      planProcess({ ...hut, baths }).steps.map(({ name, sources }) => [name, sources.length]),
    );
    // The cue of the fixing bath still rests on a clearing time in print.
    expect(counted).toEqual({
      "pre-soak": 0,
      "develop": 2,
      "stop": 0,
      "fix": 1,
      "clearing-aid": 0,
      "wash": 0,
      "wetting-agent": 0,
    });
    const soak = planProcess({ ...hut, baths: { wash: { method: "soak", durationS: 600 } } });
    expect(soak.steps[1]!.sources[0]).toContain("changed every 3 min");
  });
});

describe("a step of ten degrees", () => {
  it.each([
    [18.4, 8.4],
    [20.1, 10.1],
    [16.9, 6.9],
    [17.2, 7.2],
  ])("from %d to %d °C is one, however it rounds", (temperatureC, fixC) => {
    const step = bathCautions({
      temperatureC,
      baths: { fix: { temperatureC: fixC }, wash: { temperatureC: fixC } },
    })[0];
    expect(step).toMatchObject({
      code: "temperature-step",
      severity: "stop",
      path: "/baths/fix/temperatureC",
    });
  });
  it("is less where it is less", () => {
    expect(
      bathCautions({
        temperatureC: 20,
        baths: { fix: { temperatureC: 10.001 }, wash: { temperatureC: 10 } },
      })[0]!.severity,
    ).toBe("warn");
  });
});

describe("a wash a little colder than usual", () => {
  it("has no line to say that it takes 1.0 times the usual time", () => {
    const said = (temperatureC: number) =>
      bathCautions({ temperatureC, baths: { fix: {}, wash: {} } }).find(({ code }) => code === "cold-wash")
        ?.message;
    // 1.05 times at 17.75 °C: US War Department, TM 11-2323, sec. 33 d.
    expect([18.2, 18, 17.8].map(said)).toEqual([undefined, undefined, undefined]);
    expect(said(17.7)).toBe("Cold water washes slowly: 1.1 times the usual time is planned.");
  });
});

describe("a bath that is nonsense", () => {
  const anyOf = (value: unknown): any => value;
  // null is what JSON makes of NaN.
  it.each([
    [{ ...hut, agitation: null }, "planProcess: input.agitation must be an object, got null"],
    [{ ...hut, drainS: null }, "planProcess: input.drainS must be a number, got null"],
    [
      { ...hut, baths: { fix: { clearingS: null } } },
      "planProcess: input.baths.fix.clearingS must be a number, got null",
    ],
    [
      { ...hut, baths: { fix: { times: null } } },
      "planProcess: input.baths.fix.times must be a number, got null",
    ],
    [{ ...hut, baths: { fix: { kind: null } } }, "planProcess: input.baths.fix.kind must be text, got null"],
    [
      { ...hut, baths: { fix: { temperatureC: null } } },
      "planProcess: input.baths.fix.temperatureC must be a number, got null",
    ],
    [
      { ...hut, baths: { fix: { clearingAtC: "20" } } },
      'planProcess: input.baths.fix.clearingAtC must be a number, got "20"',
    ],
    [
      { ...hut, baths: { fix: { usedCm2PerL: null } } },
      "planProcess: input.baths.fix.usedCm2PerL must be a number, got null",
    ],
    [
      { ...hut, baths: { stop: { kind: null } } },
      "planProcess: input.baths.stop.kind must be text, got null",
    ],
    [
      { ...hut, baths: { wash: { method: null } } },
      "planProcess: input.baths.wash.method must be text, got null",
    ],
    [{ ...hut, areaCm2: "large", baths: {} }, 'planProcess: input.areaCm2 must be a number, got "large"'],
  ])("is refused in a plan %#", (input, message) => {
    expect(() => planProcess(anyOf(input))).toThrow(new TypeError(message));
  });
  it.each([
    [
      { wash: { method: "sea" } },
      'bathCautions: baths.wash.method must be one of running, soak, changes, got "sea"',
    ],
    [
      { wash: { durationS: 0 } },
      "bathCautions: baths.wash.durationS must be above 0 and at most 86400 s, got 0",
    ],
    [{ stop: { kind: "base" } }, 'bathCautions: baths.stop.kind must be one of acid, water, got "base"'],
  ])("is refused before it is judged %#", (baths, message) => {
    expect(() => bathCautions({ temperatureC: 20, baths: anyOf(baths) })).toThrow(new RangeError(message));
  });
  it("is refused where a number is left out by null", () => {
    expect(() => fixingTime(anyOf({ clearingS: 30, times: null }))).toThrow(
      new TypeError("fixingTime: times must be a number, got null"),
    );
    expect(() => testStripTimes({ timeS: 5, lowS: 1, highS: 9 }, anyOf({ count: null }))).toThrow(
      new TypeError("testStripTimes: options.count must be a number, got null"),
    );
  });
});

describe("a development too short to drain", () => {
  const plan = planProcess({ ...hut, timeS: 5 });
  const replaced = (remainingS: number) =>
    replaceDevelopment(plan, { atS: 3, remainingS }).cautions.filter(({ code }) => code === "drain-too-long");
  it("is no longer so once it was made long enough", () => {
    expect(plan.cautions[0]).toMatchObject({
      code: "drain-too-long",
      severity: "stop",
      limit: 5,
      actual: 10,
    });
    // On the wall it stands first; what is only unwise is for describeCautions.
    const wall = describePlan({
      ...plan,
      cautions: [...plan.cautions, { code: "no-fix", severity: "note", message: "No fix." }],
    });
    expect(wall[0]).toBe(`Stop: ${plan.cautions[0]!.message}`);
    expect(wall.filter((line) => /^Stop|No fix/.test(line))).toHaveLength(1);
    expect(describePlan(planProcess(hut))[0]).toMatch(/^0:00 /);
    expect(replaced(300)).toEqual([]);
    expect(replaced(7)).toEqual([]);
    expect(replaced(6)).toEqual([{ ...plan.cautions[0], limit: 9 }]);
  });
});
