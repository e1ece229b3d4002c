import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import {
  bathCautions,
  clearingTimeAt,
  describePlan,
  fixingTime,
  planProcess,
  replaceDevelopment,
  testStripTimes,
  type ProcessInput,
  type ProcessPlan,
  type Step,
} from "../../src/index.js";

const anyOf = (value: unknown): any => value;
// An invented weekend workshop in a mountain hut: tap water at 14 °C, baths warmed to 20 °C.
const hut: ProcessInput = { vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 500 };
const step = (plan: ProcessPlan, name: string): Step => plan.steps.find((one) => one.name === name)!;
const codes = (list: readonly { code: string }[]): string[] => list.map(({ code }) => code);
const thrown = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    return `${(error as Error).name}: ${(error as Error).message}`;
  }
  return "nothing thrown";
};

describe("fixingTime", () => {
  it("is twice the clearing time, or as many times as asked", () => {
    // US Navy, Photography (Basic), NAVEDTRA 14209, p. 10-7: twice. Cyclopedia of Photography, 1911: ten
    // minutes, then ten more.
    expect(fixingTime({ clearingS: 600 })).toBe(1200);
    // K. Guttikar, Black and white film fixer times: clearing 1 to 3 min, fixing 3 to 9.
    expect(fixingTime({ clearingS: 60, times: 3 })).toBe(180);
    expect(fixingTime({ clearingS: 180, times: 3 })).toBe(540);
    expect(fixingTime({ clearingS: 1e6, times: 10 })).toBe(1e7);
    expect(fixingTime({ clearingS: 30, times: 1 })).toBe(30);
  });

  it.each([
    [5, "TypeError: fixingTime: question must be an object, got 5"],
    [{}, "TypeError: fixingTime: clearingS must be a number, got undefined"],
    [{ clearingS: 0 }, "RangeError: fixingTime: clearingS must be above 0 and at most 1000000 s, got 0"],
    [{ clearingS: 30, times: 0.5 }, "RangeError: fixingTime: times must be from 1 to 10, got 0.5"],
    [{ clearingS: 30, times: "3" }, 'TypeError: fixingTime: times must be a number, got "3"'],
  ])("refuses %j", (question, message) => {
    expect(thrown(() => fixingTime(anyOf(question)))).toBe(message);
  });
});

describe("clearingTimeAt", () => {
  it("doubles for each 18 °F below 68 °F", () => {
    // US War Department, TM 11-2323, sec. 33 c.
    expect(clearingTimeAt({ clearingS: 60, fromC: 20, toC: 10 })).toBe(120);
    expect(clearingTimeAt({ clearingS: 60, fromC: 20, toC: 0 })).toBe(240);
    expect(clearingTimeAt({ clearingS: 120, fromC: 10, toC: 20 })).toBe(60);
  });

  it("takes a warm bath as no quicker than one at 20 °C, and a colder one as slower always", () => {
    expect(clearingTimeAt({ clearingS: 60, fromC: 20, toC: 30 })).toBe(60);
    expect(clearingTimeAt({ clearingS: 60, fromC: 10, toC: 30 })).toBe(30);
    expect(clearingTimeAt({ clearingS: 60, fromC: 30, toC: 20 })).toBe(120);
    expect(clearingTimeAt({ clearingS: 60, fromC: 30, toC: 26 })).toBeCloseTo(60 * 2 ** 0.4, 9);
    expect(clearingTimeAt({ clearingS: 60, fromC: 24, toC: 28 })).toBe(60);
  });

  it.each([
    [null, "TypeError: clearingTimeAt: question must be an object, got null"],
    [
      { clearingS: 7201, fromC: 20, toC: 20 },
      "RangeError: clearingTimeAt: clearingS must be above 0 and at most 7200 s, got 7201",
    ],
    [
      { clearingS: 60, fromC: -1, toC: 20 },
      "RangeError: clearingTimeAt: fromC must be from 0 to 100 °C, got -1",
    ],
    [{ clearingS: 60, fromC: 20 }, "TypeError: clearingTimeAt: toC must be a number, got undefined"],
  ])("refuses %j", (question, message) => {
    expect(thrown(() => clearingTimeAt(anyOf(question)))).toBe(message);
  });
});

describe("testStripTimes", () => {
  it("steps evenly in ln(time) from end to end", () => {
    const estimate = { timeS: 600, lowS: 400, highS: 900 };
    const times = testStripTimes(estimate);
    expect(times).toHaveLength(5);
    expect([times[0], times[2], times[4]]).toEqual([400, 600, 900]);
    expect(times[1]).toBeCloseTo(400 * 1.5 ** 0.5, 9);
    expect(testStripTimes(estimate, { count: 2 })).toEqual([400, 900]);
    expect(testStripTimes(estimate, { count: 25 })).toHaveLength(25);
    // An estimate that is not in the middle does not bend the ladder.
    expect(testStripTimes({ timeS: 610, lowS: 400, highS: 900 })[2]).toBeCloseTo(600, 9);
    expect(testStripTimes({ timeS: 610, lowS: 400, highS: 900 }, { count: 3 })[1]).not.toBe(610);
  });

  test.prop([
    fc.double({ min: 1, max: 1e6, noNaN: true }),
    fc.double({ min: 0.001, max: 3, noNaN: true }),
    fc.integer({ min: 2, max: 25 }),
  ])("covers the interval with one ratio", (timeS, logSd, count) => {
    const spread = Math.exp(1.6448536269514722 * logSd);
    const estimate = { timeS, lowS: timeS / spread, highS: timeS * spread };
    const times = testStripTimes(estimate, { count });
    expect(times[0]).toBe(estimate.lowS);
    expect(times.at(-1)).toBe(estimate.highS);
    const ratio = spread ** (2 / (count - 1));
    times.slice(1).forEach((time, i) => {
      expect(time / times[i]! / ratio).toBeCloseTo(1, 8);
    });
    if (count % 2 === 1) expect(times[(count - 1) / 2]).toBe(timeS);
  });

  it.each([
    [null, {}, "TypeError: testStripTimes: estimate must be an object, got null"],
    [{ timeS: 5, lowS: 1, highS: 9 }, 3, "TypeError: testStripTimes: options must be an object, got 3"],
    [
      { timeS: 5, lowS: 0, highS: 9 },
      {},
      "RangeError: testStripTimes: estimate.lowS must be above 0 and at most 1000000000000 s, got 0",
    ],
    [
      { timeS: 5, lowS: 1, highS: Infinity },
      {},
      "RangeError: testStripTimes: estimate.highS must be above 0 and at most 1000000000000 s, got Infinity",
    ],
    [{ lowS: 1, highS: 9 }, {}, "TypeError: testStripTimes: estimate.timeS must be a number, got undefined"],
    [
      { timeS: 5, lowS: 5, highS: 5 },
      {},
      "RangeError: testStripTimes: estimate.highS must be above lowS (5 s): there is no interval to cover, got 5",
    ],
    [
      { timeS: 5, lowS: 5, highS: 9 },
      {},
      "RangeError: testStripTimes: estimate.timeS must be between lowS (5 s) and highS (9 s), got 5",
    ],
    [
      { timeS: 9, lowS: 5, highS: 9 },
      {},
      "RangeError: testStripTimes: estimate.timeS must be between lowS (5 s) and highS (9 s), got 9",
    ],
    [
      { timeS: 5, lowS: 1, highS: 9 },
      { count: 1 },
      "RangeError: testStripTimes: options.count must be from 2 to 25, got 1",
    ],
    [
      { timeS: 5, lowS: 1, highS: 9 },
      { count: 2.5 },
      "RangeError: testStripTimes: options.count must be a whole number, got 2.5",
    ],
  ])("refuses %j %j", (estimate, options, message) => {
    expect(thrown(() => testStripTimes(anyOf(estimate), anyOf(options)))).toBe(message);
  });
});

describe("planProcess", () => {
  it("lays out the usual run with published times", () => {
    const plan = planProcess(hut);
    // Stop 30 s, wash 30 min: US Army, subcourse SS05098, p. 24. Fix: twice a clearing time of 1 min.
    expect(plan.steps.map(({ name, startS, durationS }) => [name, startS, durationS])).toEqual([
      ["develop", 0, 510],
      ["stop", 510, 30],
      ["fix", 540, 120],
      ["wash", 660, 1800],
      ["wetting-agent", 2460, 60],
    ]);
    expect(plan.totalS).toBe(2520);
    expect(plan.handling).toEqual({ vessel: "tank", agitation: { everyS: 60 }, drainS: 10 });
    expect(plan.steps.every((one) => one.temperatureC === 20 && one.sources.length > 0)).toBe(true);
    expect(step(plan, "develop").sources[0]).toBe(
      "US Navy, Photography (Basic), NAVEDTRA 14209, p. 10-16 (30 s, then 5 s each minute)",
    );
    expect(step(plan, "fix").sources).toHaveLength(3);
    expect(codes(plan.cautions)).toEqual(["clearing-assumed", "fixing-split"]);
  });

  it("agitates a tank by the manual and pours out so that draining ends on time", () => {
    // US Navy, NAVEDTRA 14209, p. 10-16: 30 s, then 5 s each minute; US Army, SS0514: 10 s to drain.
    const cues = step(planProcess({ ...hut, timeS: 250 }), "develop").cues;
    expect(cues).toEqual([
      { atS: 0, text: "Pour in, then invert the tank for 30 s." },
      { atS: 60, text: "Agitate: invert the tank for 5 s." },
      { atS: 120, text: "Agitate: invert the tank for 5 s." },
      { atS: 180, text: "Agitate: invert the tank for 5 s." },
      { atS: 240, text: "Begin to pour out or lift out, so that it is drained 10 s later." },
    ]);
  });

  it.each([
    // A short start where the bath is moved twice a minute: Eastman Kodak, film data sheets (from memory).
    [
      { everyS: 30 },
      100,
      [
        "0 Pour in, then invert the tank for 5 s.",
        "30 Agitate: invert the tank for 5 s.",
        "60 Agitate: invert the tank for 5 s.",
      ],
    ],
    [{ everyS: 59 }, 69, ["0 Pour in, then invert the tank for 5 s."]],
    [{ everyS: 5 }, 100, ["0 Pour in, then invert the tank without pause."]],
    // The third ends with the pouring out; the sum is 95.30000000000001.
    [
      { everyS: 30.1 },
      105.3,
      [
        "0 Pour in, then invert the tank for 5 s.",
        "30.1 Agitate: invert the tank for 5 s.",
        "60.2 Agitate: invert the tank for 5 s.",
        "90.30000000000001 Agitate: invert the tank for 5 s.",
      ],
    ],
    [{ everyS: 6 }, 21, ["0 Pour in, then invert the tank for 5 s.", "6 Agitate: invert the tank for 5 s."]],
    ["continuous", 100, ["0 Pour in, then invert the tank without pause."]],
    ["stand", 3600, ["0 Pour in, then invert the tank for 30 s, then leave it standing."]],
    ["stand", 22, ["0 Pour in, then invert the tank for 12 s, then leave it standing."]],
  ] as const)("agitates %j", (agitation, timeS, shown) => {
    const cues = step(planProcess({ ...hut, timeS, agitation }), "develop").cues.map(
      ({ atS, text }) => `${atS} ${text}`,
    );
    expect(cues.slice(0, -1)).toEqual(shown);
  });

  it.each([
    ["tray", 10, "Pour in, then shuffle the sheets without pause."],
    ["drum", 10, "Pour in, then turn the drum without pause."],
    ["dish", 5, "Pour in, then rock the dish, each side in turn without pause."],
  ] as const)("moves a %s without pause", (vessel, drainS, text) => {
    // Trays: US Navy, NAVEDTRA 14209, p. 10-16; drums and dishes: common practice.
    const plan = planProcess({ ...hut, vessel });
    expect(plan.handling).toEqual({ vessel, agitation: "continuous", drainS });
    expect(step(plan, "develop").cues.map((cue) => cue.atS)).toEqual([0, 510 - drainS]);
    expect(step(plan, "develop").cues[0]!.text).toBe(text);
  });

  it("rests the fresh bath and soaks before, clears and washes after", () => {
    const plan = planProcess({
      ...hut,
      rest: true,
      baths: {
        preSoak: {},
        stop: { kind: "water" },
        fix: { clearingS: 40, times: 3 },
        clearingAid: {},
        wash: {},
        wettingAgent: {},
      },
    });
    // Washing 5 min after a clearing aid of 1 to 2 min: Eastman Kodak, film data sheets (from memory).
    expect(plan.steps.map(({ name, durationS }) => [name, durationS])).toEqual([
      ["rest", 300],
      ["pre-soak", 120],
      ["develop", 510],
      ["stop", 60],
      ["fix", 120],
      ["clearing-aid", 120],
      ["wash", 300],
      ["wetting-agent", 60],
    ]);
    expect(plan.steps.map((one) => one.cues[0]!.text)).toEqual([
      "Let the fresh developer stand until its bubbles are gone.",
      "Pour in plain water, tap out the bubbles, pour out at the end.",
      "Pour in, then invert the tank for 30 s.",
      "Rinse in changed water, moving without pause.",
      "Pour in the fixing bath and move for the first 15 s, then at times.",
      "Rinse, pour in the clearing aid and move at times.",
      "Wash in running water.",
      "Let it lie in the wetting agent, then hang it up without rinsing.",
    ]);
    expect(plan.steps.map((one) => one.cues[0]!.atS)).toEqual(plan.steps.map((one) => one.startS));
    expect(step(plan, "fix").cues[1]).toEqual({
      atS: 1030,
      text: "It should be clear by now: if not, fix for as many more clearing times.",
    });
    expect(step(plan, "fix").sources).toEqual([]);
    expect(plan.cautions).toEqual([]);
    expect(step(planProcess({ ...hut, rest: 90 }), "rest")).toMatchObject({ durationS: 90, sources: [] });
    expect(step(planProcess({ ...hut, rest: true }), "rest").sources).toEqual([
      "a freshly stirred bath stands until its bubbles are gone: common practice",
    ]);
    for (const rest of [false, 0]) expect(planProcess({ ...hut, rest }).steps[0]!.name).toBe("develop");
    expect(step(plan, "stop").sources).toEqual(["a minute of running or changed water: common practice"]);
    expect(step(planProcess(hut), "stop").cues[0]!.text).toBe(
      "Pour in the stop bath and move without pause.",
    );
  });

  it("fixes by material, bath and temperature", () => {
    const fixS = (input: Partial<ProcessInput>): number =>
      step(planProcess({ ...hut, ...input }), "fix").durationS;
    expect(fixS({ modernFilm: true })).toBe(180);
    expect(fixS({ modernFilm: false })).toBe(120);
    expect(fixS({ baths: { fix: { kind: "plain" } } })).toBe(1200);
    expect(fixS({ baths: { fix: { temperatureC: 10 } } })).toBe(240);
    // A clearing time measured in this bath needs no correction; one measured elsewhere does.
    expect(fixS({ temperatureC: 10, baths: { fix: { clearingS: 50 } } })).toBe(100);
    expect(fixS({ temperatureC: 10, baths: { fix: { clearingS: 50, clearingAtC: 20 } } })).toBe(200);
    expect(fixS({ baths: { fix: { durationS: 300 } } })).toBe(300);
    const plan = planProcess({ ...hut, baths: { fix: { clearingS: 50, durationS: 50 } } });
    expect(step(plan, "fix").cues).toHaveLength(1);
    expect(
      step(planProcess({ ...hut, baths: { fix: { clearingS: 50, durationS: 51 } } }), "fix").cues,
    ).toHaveLength(2);
  });

  it("washes by method and cold", () => {
    const wash = (setting: object, temperatureC = 20): Step => {
      const one = step(planProcess({ ...hut, temperatureC, baths: { wash: setting } }), "wash");
      expect(one.startS).toBe(510);
      return { ...one, cues: one.cues.map(({ atS, text }) => ({ atS: atS - 510, text })) };
    };
    // US War Department, TM 11-2323, sec. 33 d: twice at 50 °F, four times at 35 °F (its figures round to 1.7
    // °C).
    expect(wash({}, 10).durationS).toBeCloseTo(3600, 9);
    expect(wash({}, 5 / 3).durationS).toBeCloseTo(7200, 9);
    expect(wash({}, 18.4).durationS).toBe(1800);
    // US Army, subcourse SS05098, p. 24: 30 min, the water changed every 3 min.
    expect(wash({ method: "soak" }).cues.map(({ atS }) => atS)).toEqual([
      0, 180, 360, 540, 720, 900, 1080, 1260, 1440, 1620,
    ]);
    expect(
      wash({ method: "soak" })
        .cues.slice(0, 2)
        .map(({ text }) => text),
    ).toEqual(["Fill with fresh water and leave it.", "Change the water."]);
    // Ilford/Harman, film technical sheets (from memory): fillings of 5, 10 and 20 inversions.
    expect(wash({ method: "changes" })).toMatchObject({
      durationS: 130,
      cues: [{ atS: 0 }, { atS: 30 }, { atS: 70 }],
    });
    expect(wash({ method: "changes" }).cues.map(({ text }) => /invert (\d+) times/.exec(text)![1])).toEqual([
      "5",
      "10",
      "20",
    ]);
    expect(wash({ method: "changes" }).sources[0]).toBe(
      "Ilford/Harman, film technical sheets (from memory, not seen in print) (5, 10 and 20 inversions)",
    );
    expect(wash({ method: "changes", durationS: 260 })).toMatchObject({
      durationS: 260,
      cues: [{ atS: 0 }, { atS: 60 }, { atS: 140 }],
    });
    expect(wash({ durationS: 600 }).durationS).toBe(600);
    const afterAid = planProcess({ ...hut, baths: { clearingAid: {}, wash: { method: "soak" } } });
    expect(step(afterAid, "wash").durationS).toBe(540);
    expect(step(afterAid, "wash").cues).toHaveLength(3);
  });

  it("counts what to have ready", () => {
    const baths = {
      preSoak: {},
      stop: { dilution: "1+19" },
      fix: { dilution: { stockParts: 1, waterParts: 4 } },
      clearingAid: {},
      wash: { method: "soak" },
      wettingAgent: {},
    } as const;
    expect(planProcess({ ...hut, dilution: "2+1+7", baths }).materials).toEqual([
      { name: "developer", volumeMl: 500, stockMl: 150, waterMl: 350, stocksMl: [100, 50] },
      { name: "pre-soak water", volumeMl: 500 },
      { name: "stop bath", volumeMl: 500, stockMl: 25, waterMl: 475 },
      { name: "fixing bath", volumeMl: 500, stockMl: 100, waterMl: 400 },
      { name: "clearing aid", volumeMl: 500 },
      { name: "wetting agent", volumeMl: 500 },
      { name: "wash water", volumeMl: 1500 },
    ]);
    // Running water that replaces the bath in five minutes: six fillings in half an hour.
    expect(planProcess(hut).materials.at(-1)).toEqual({ name: "wash water", volumeMl: 3000 });
    expect(planProcess({ ...hut, baths: { wash: { method: "changes", durationS: 600 } } }).materials).toEqual(
      [
        { name: "developer", volumeMl: 500 },
        { name: "wash water", volumeMl: 1500 },
      ],
    );
    expect(planProcess({ ...hut, baths: {} }).materials).toEqual([{ name: "developer", volumeMl: 500 }]);
  });

  it("says so when the development is shorter than the draining", () => {
    const plan = planProcess({ ...hut, timeS: 8, baths: { fix: { clearingS: 30, times: 2 }, wash: {} } });
    expect(step(plan, "develop")).toMatchObject({
      durationS: 10,
      cues: [{ atS: 0, text: "Pour in, then invert the tank for 0 s." }, { atS: 0 }],
    });
    expect(plan.cautions).toMatchObject([
      {
        code: "drain-too-long",
        severity: "stop",
        limit: 8,
        actual: 10,
      },
    ]);
    expect(codes(planProcess({ ...hut, timeS: 10 }).cautions)).not.toContain("drain-too-long");
    expect(step(planProcess({ ...hut, drainS: 0 }), "develop").cues.at(-1)!.atS).toBe(510);
  });

  it("warns of fields that nobody reads", () => {
    const plan = planProcess(
      anyOf({
        ...hut,
        "agi/tation": 1,
        "baths": { fix: { "clearingS": 30, "times": 2, "ti~mes": 3 }, wash: {}, stop: undefined },
      }),
    );
    expect(plan.cautions).toMatchObject([
      {
        code: "unknown-field",
        severity: "warn",
        path: "/agi~1tation",
      },
      {
        code: "unknown-field",
        severity: "warn",
        path: "/baths/fix/ti~0mes",
      },
    ]);
    const full = {
      ...hut,
      agitation: "stand",
      drainS: 5,
      rest: true,
      dilution: "1+1",
      areaCm2: 100,
      modernFilm: false,
      emulsion: "hardened",
      maxStepC: 2,
    } as const;
    const baths = {
      stop: { kind: "acid", durationS: 30, temperatureC: 20, dilution: "1+9" },
      wash: { method: "running" },
    } as const;
    const fix = {
      kind: "rapid",
      clearingS: 30,
      clearingAtC: 20,
      freshClearingS: 30,
      times: 2,
      usedCm2PerL: 0,
      capacityCm2PerL: 9000,
    } as const;
    expect(planProcess({ ...full, baths: { ...baths, fix } }).cautions).toEqual([]);
  });

  it.each([
    [null, "TypeError: planProcess: input must be an object, got null"],
    [
      { ...hut, vessel: "bath" },
      'RangeError: planProcess: input.vessel must be one of tank, tray, drum, dish, got "bath"',
    ],
    [
      { ...hut, timeS: 0 },
      "RangeError: planProcess: input.timeS must be above 0 and at most 1000000 s, got 0",
    ],
    [
      { ...hut, temperatureC: 101 },
      "RangeError: planProcess: input.temperatureC must be from 0 to 100 °C, got 101",
    ],
    [
      { ...hut, volumeMl: undefined },
      "TypeError: planProcess: input.volumeMl must be a number, got undefined",
    ],
    [
      { ...hut, volumeMl: 0 },
      "RangeError: planProcess: input.volumeMl must be above 0 and at most 1000000 ml, got 0",
    ],
    [
      { ...hut, agitation: "wild" },
      'RangeError: planProcess: input.agitation must be "continuous", "stand" or { everyS }, got "wild"',
    ],
    [{ ...hut, drainS: 601 }, "RangeError: planProcess: input.drainS must be from 0 to 600 s, got 601"],
    [
      { ...hut, rest: "long" },
      'TypeError: planProcess: input.rest must be true, false or a number of seconds, got "long"',
    ],
    [{ ...hut, rest: -1 }, "RangeError: planProcess: input.rest must be from 0 to 86400 s, got -1"],
    [
      { ...hut, modernFilm: "yes" },
      'TypeError: planProcess: input.modernFilm must be true or false, got "yes"',
    ],
    [
      { ...hut, dilution: "9" },
      'RangeError: planProcess: input.dilution must be "stock" or parts such as "1+9", got "9"',
    ],
    [{ ...hut, baths: 5 }, "TypeError: planProcess: input.baths must be an object, got 5"],
    [
      { ...hut, baths: { stop: [] } },
      "TypeError: planProcess: input.baths.stop must be an object, got an array",
    ],
    [
      { ...hut, baths: { stop: null } },
      "TypeError: planProcess: input.baths.stop must be an object, got null",
    ],
    [
      { ...hut, baths: { stop: true } },
      "TypeError: planProcess: input.baths.stop must be an object, got true",
    ],
    [
      { ...hut, baths: { halt: {} } },
      'RangeError: planProcess: input.baths must be one of preSoak, stop, fix, clearingAid, wash, wettingAgent, got "halt"',
    ],
    [
      { ...hut, baths: { stop: { kind: "base" } } },
      'RangeError: planProcess: input.baths.stop.kind must be one of acid, water, got "base"',
    ],
    [
      { ...hut, baths: { stop: { durationS: 86401 } } },
      "RangeError: planProcess: input.baths.stop.durationS must be above 0 and at most 86400 s, got 86401",
    ],
    [
      { ...hut, baths: { stop: { temperatureC: -1 } } },
      "RangeError: planProcess: input.baths.stop.temperatureC must be from 0 to 100 °C, got -1",
    ],
    [
      { ...hut, baths: { stop: { dilution: "1:9" } } },
      'RangeError: planProcess: input.baths.stop.dilution "1:9" is ambiguous: write "1+9" or, of 9 parts in all, "1+8"',
    ],
    [
      { ...hut, baths: { fix: { kind: "salt" } } },
      'RangeError: planProcess: input.baths.fix.kind must be one of rapid, plain, got "salt"',
    ],
    [
      { ...hut, baths: { fix: { times: 11 } } },
      "RangeError: planProcess: input.baths.fix.times must be from 1 to 10, got 11",
    ],
    [
      { ...hut, baths: { fix: { clearingS: 7201 } } },
      "RangeError: planProcess: input.baths.fix.clearingS must be above 0 and at most 7200 s, got 7201",
    ],
    [
      { ...hut, baths: { fix: { clearingS: 30, clearingAtC: 41 } } },
      "RangeError: planProcess: input.baths.fix.clearingAtC must be from 0 to 40 °C, got 41",
    ],
    [
      { ...hut, baths: { fix: { temperatureC: "20" } } },
      'TypeError: planProcess: input.baths.fix.temperatureC must be a number, got "20"',
    ],
    [
      { ...hut, baths: { fix: { durationS: 0 } } },
      "RangeError: planProcess: input.baths.fix.durationS must be above 0 and at most 86400 s, got 0",
    ],
    [
      { ...hut, baths: { wash: { method: "sea" } } },
      'RangeError: planProcess: input.baths.wash.method must be one of running, soak, changes, got "sea"',
    ],
    [
      { ...hut, baths: { wash: { temperatureC: 101 } } },
      "RangeError: planProcess: input.baths.wash.temperatureC must be from 0 to 100 °C, got 101",
    ],
    [
      { ...hut, baths: { wash: { durationS: -1 } } },
      "RangeError: planProcess: input.baths.wash.durationS must be above 0 and at most 86400 s, got -1",
    ],
    [
      { ...hut, baths: { preSoak: { durationS: 0 } } },
      "RangeError: planProcess: input.baths.preSoak.durationS must be above 0 and at most 86400 s, got 0",
    ],
    [
      { ...hut, baths: { clearingAid: { temperatureC: 101 } } },
      "RangeError: planProcess: input.baths.clearingAid.temperatureC must be from 0 to 100 °C, got 101",
    ],
    [
      { ...hut, baths: { wettingAgent: { dilution: 5 } } },
      'TypeError: planProcess: input.baths.wettingAgent.dilution must be text such as "1+9" or { stockParts, waterParts }, got 5',
    ],
    [
      { ...hut, maxStepC: 0 },
      "RangeError: planProcess: input.maxStepC must be above 0 and at most 20 °C, got 0",
    ],
    [
      { ...hut, areaCm2: 0 },
      "RangeError: planProcess: input.areaCm2 must be above 0 and at most 1000000 cm², got 0",
    ],
  ])("refuses %j", (input, message) => {
    expect(thrown(() => planProcess(anyOf(input)))).toBe(message);
  });
});

describe("bathCautions", () => {
  const ready = { fix: { clearingS: 30, times: 2 }, wash: {} };
  it("warns of steps between baths", () => {
    // 5 °F between trays: US Navy, NAVEDTRA 14262, p. 7-11. One temperature for all: Transactions of the SMPE
    // 18, 1924, p. 46.
    const of = (baths: object, more: object = {}) =>
      bathCautions({ temperatureC: 20, baths: { ...ready, ...baths }, ...more });
    expect(of({ stop: { temperatureC: 17.3 } })).toEqual([]);
    expect(of({ stop: { temperatureC: 17.2 } })).toEqual([
      {
        code: "temperature-step",
        severity: "warn",
        message: "A step of 2.8 °C to this bath can reticulate the gelatin: bring it within 2.8 °C.",
        path: "/baths/stop/temperatureC",
        limit: 25 / 9,
        actual: 20 - 17.2,
      },
      expect.objectContaining({ path: "/baths/fix/temperatureC" }),
    ]);
    const stop = of({ stop: { temperatureC: 30 } }).map(({ code, severity, path }) => [code, severity, path]);
    expect(stop).toEqual([
      ["temperature-step", "stop", "/baths/stop/temperatureC"],
      ["temperature-step", "stop", "/baths/fix/temperatureC"],
    ]);
    expect(of({ stop: { temperatureC: 29.9 } })[0]!.severity).toBe("warn");
    // The wash may differ by 5 °C: Ilford/Harman, film technical sheets (from memory).
    expect(of({ wash: { temperatureC: 25 } })).toEqual([]);
    expect(codes(of({ wash: { temperatureC: 14 } }))).toEqual(["temperature-step", "cold-wash"]);
    expect(of({ wash: { temperatureC: 14 } })[0]!.limit).toBe(5);
    // A stated step goes before both, to a hair of rounding.
    expect(codes(of({ wash: { temperatureC: 21.5 } }, { maxStepC: 1 }))).toEqual(["temperature-step"]);
    expect(
      of(
        {
          stop: { temperatureC: 17.2 },
          fix: { ...ready.fix, temperatureC: 17.2 },
          wash: { temperatureC: 20 },
        },
        { maxStepC: 2.8 },
      ),
    ).toEqual([]);
    // The developer lies between pre-soak and stop.
    expect(of({ preSoak: { temperatureC: 24 } }).map(({ path }) => path)).toEqual([
      "/baths/preSoak/temperatureC",
    ]);
    expect(of({ preSoak: { temperatureC: 24 }, stop: { temperatureC: 24 } }).map(({ path }) => path)).toEqual(
      ["/baths/preSoak/temperatureC", "/baths/stop/temperatureC", "/baths/fix/temperatureC"],
    );
    expect(
      of({ clearingAid: { temperatureC: 25 }, wettingAgent: { temperatureC: 27 } }).map(({ path }) => path),
    ).toEqual(["/baths/clearingAid/temperatureC", "/baths/wettingAgent/temperatureC"]);
  });

  it("knows what heat does to soft gelatin in any bath that names its temperature", () => {
    const of = (temperatureC: number, emulsion: "soft" | "hardened", own = true) =>
      codes(
        bathCautions({
          temperatureC,
          emulsion,
          maxStepC: 20,
          baths: { ...ready, wash: own ? { temperatureC } : {} },
        }),
      );
    expect(of(22, "soft")).toEqual(["soft-emulsion-warm"]);
    expect(of(22, "soft", false)).toEqual([]);
    expect(of(22, "hardened")).toEqual([]);
    expect(of(26, "hardened")).toEqual([]);
    expect(of(33, "hardened")).toEqual(["temperature-limit"]);
    expect(of(68, "hardened")).toEqual(["maybe-fahrenheit"]);
  });

  it("judges the fixing bath", () => {
    const of = (fix: object, more: object = {}) =>
      bathCautions({ temperatureC: 20, baths: { fix, wash: {} }, ...more });
    expect(of({})).toMatchObject([
      {
        code: "clearing-assumed",
        severity: "note",
        path: "/baths/fix",
      },
      {
        code: "fixing-split",
        severity: "note",
        path: "/baths/fix",
      },
    ]);
    expect(of({}, { modernFilm: true })[1]!.message).toContain("3 taken");
    // Spent at twice its fresh clearing time: US Navy, NAVEDTRA 14209, p. 10-7.
    expect(of({ clearingS: 79, freshClearingS: 40, times: 2 })).toEqual([]);
    expect(of({ clearingS: 80, freshClearingS: 40, times: 2 })).toMatchObject([
      {
        code: "fixer-spent",
        severity: "stop",
        path: "/baths/fix/clearingS",
        limit: 80,
        actual: 80,
      },
    ]);
    expect(codes(of({ freshClearingS: 40, times: 2 }))).toEqual(["clearing-assumed"]);
    // Ten minutes at most in a rapid bath: Brodie-Tyrrell, Fixer Capacity.
    expect(of({ clearingS: 300, times: 2 })).toEqual([]);
    expect(of({ clearingS: 301, times: 2 })).toMatchObject([
      {
        code: "long-fix",
        severity: "warn",
        path: "/baths/fix",
        limit: 600,
        actual: 602,
      },
    ]);
    expect(of({ clearingS: 301, times: 2, kind: "plain" })).toEqual([]);
    expect(of({ durationS: 120 })).toEqual([]);
    expect(of({ durationS: 119 })).toMatchObject([
      {
        code: "short-fix",
        severity: "warn",
        path: "/baths/fix/durationS",
        limit: 120,
        actual: 119,
      },
    ]);
  });

  it("counts what the fixing bath has fixed", () => {
    const ready = { clearingS: 30, times: 2 };
    const of = (fix: object, more: object = {}) =>
      bathCautions({ temperatureC: 20, baths: { fix: { ...ready, ...fix }, wash: {} }, ...more });
    const roll = 516.128;
    // Twenty rolls of 80 square inches in a litre, half of that for iodide-rich films: Brodie-Tyrrell, Fixer
    // Capacity.
    expect(of({ usedCm2PerL: 19 * roll }, { areaCm2: roll / 2, volumeMl: 500 })).toEqual([]);
    expect(of({ usedCm2PerL: 19 * roll }, { areaCm2: roll, volumeMl: 500 })).toMatchObject([
      {
        code: "fixer-past-capacity",
        severity: "warn",
        path: "/baths/fix/usedCm2PerL",
        limit: 20 * roll,
        actual: 21 * roll,
      },
    ]);
    expect(of({ usedCm2PerL: 20 * roll })).toEqual([]);
    // The third roll fills a capacity of two a litre in a litre and a half, by a sum that is
    // 1032.2560000003334.
    expect(
      of({ usedCm2PerL: 688.170666667, capacityCm2PerL: 2 * roll }, { areaCm2: roll, volumeMl: 1500 }),
    ).toEqual([]);
    expect(of({ usedCm2PerL: 2 * roll * (1 + 1e-12), capacityCm2PerL: 2 * roll })).toEqual([]);
    expect(of({ usedCm2PerL: 20 * roll }, { areaCm2: roll, volumeMl: 500 })[0]!.severity).toBe("warn");
    expect(of({ usedCm2PerL: 20.1 * roll })[0]!.severity).toBe("stop");
    expect(of({ usedCm2PerL: 11 * roll })).toEqual([]);
    expect(of({ usedCm2PerL: 11 * roll }, { modernFilm: true })[0]!.limit).toBeCloseTo(10 * roll, 9);
    expect(of({ usedCm2PerL: 11 * roll, capacityCm2PerL: 12 * roll }, { modernFilm: true })).toEqual([]);
    expect(of({ usedCm2PerL: 13 * roll, capacityCm2PerL: 12 * roll })[0]!.limit).toBe(12 * roll);
    expect(of({ usedCm2PerL: 19 * roll }, { areaCm2: 9 * roll })).toEqual([]);
    expect(of({ usedCm2PerL: 19 * roll }, { volumeMl: 9 })).toEqual([]);
    expect(of({ kind: "plain", usedCm2PerL: 21 * roll })).toHaveLength(1);
  });

  it("misses fixing and washing, and says that cold water washes slowly", () => {
    expect(bathCautions({ temperatureC: 20, baths: {} })).toMatchObject([
      {
        code: "no-fix",
        severity: "warn",
        path: "/baths",
      },
      {
        code: "no-wash",
        severity: "warn",
        path: "/baths",
      },
    ]);
    expect(bathCautions({ temperatureC: 10, baths: ready })).toMatchObject([
      {
        code: "cold-wash",
        severity: "note",
        path: "/baths/wash",
        actual: expect.closeTo(2, 12),
      },
    ]);
    expect(bathCautions({ temperatureC: 10, baths: { ...ready, wash: { durationS: 900 } } })).toEqual([]);
    expect(codes(bathCautions({ temperatureC: 20 }))).toEqual(["clearing-assumed", "fixing-split"]);
    expect(bathCautions({ temperatureC: 20, baths: anyOf({ ...ready, stop: undefined }) })).toEqual([]);
  });

  it.each([
    [7, "TypeError: bathCautions: question must be an object, got 7"],
    [{}, "TypeError: bathCautions: temperatureC must be a number, got undefined"],
    [{ temperatureC: 20, baths: [] }, "TypeError: bathCautions: baths must be an object, got an array"],
    [{ temperatureC: 20, modernFilm: 1 }, "TypeError: bathCautions: modernFilm must be true or false, got 1"],
    [
      { temperatureC: 20, baths: { fix: { freshClearingS: 0 } } },
      "RangeError: bathCautions: baths.fix.freshClearingS must be above 0 and at most 7200 s, got 0",
    ],
    [
      { temperatureC: 20, baths: { fix: { usedCm2PerL: -1 } } },
      "RangeError: bathCautions: baths.fix.usedCm2PerL must be from 0 to 1000000 cm²/l, got -1",
    ],
    [
      { temperatureC: 20, baths: { fix: { capacityCm2PerL: 0 } } },
      "RangeError: bathCautions: baths.fix.capacityCm2PerL must be above 0 and at most 1000000 cm²/l, got 0",
    ],
    [
      { temperatureC: 20, areaCm2: 5, volumeMl: 0 },
      "RangeError: bathCautions: volumeMl must be above 0 and at most 1000000 ml, got 0",
    ],
  ])("refuses %j", (question, message) => {
    expect(thrown(() => bathCautions(anyOf(question)))).toBe(message);
  });
});

describe("replaceDevelopment", () => {
  const plan = planProcess({
    ...hut,
    rest: 60,
    baths: { fix: { clearingS: 40, times: 3 }, wash: { method: "soak" } },
  });

  it("makes the development longer or shorter and shifts the rest", () => {
    const longer = replaceDevelopment(plan, { atS: 300, remainingS: 420 });
    expect(longer.steps.map(({ name, startS, durationS }) => [name, startS, durationS])).toEqual([
      ["rest", 0, 60],
      ["develop", 60, 660],
      ["fix", 720, 120],
      ["wash", 840, 1800],
    ]);
    expect(longer.totalS).toBe(2640);
    expect(step(longer, "develop").cues.at(-1)).toEqual({
      atS: 710,
      text: "Begin to pour out or lift out, so that it is drained 10 s later.",
    });
    expect(step(longer, "develop").cues.at(-2)!.atS).toBe(660);
    expect(step(longer, "fix").cues.map(({ atS }) => atS)).toEqual([720, 760]);
    expect(step(longer, "wash").cues.at(-1)!.atS).toBe(840 + 1620);
    expect(longer.materials).toEqual(plan.materials);
    const shorter = replaceDevelopment(plan, { atS: 300, remainingS: 30 });
    expect(step(shorter, "develop").durationS).toBe(270);
    expect(step(shorter, "develop").cues.at(-1)!.atS).toBe(320);
    expect(step(shorter, "fix").startS).toBe(330);
    // The same development again is the same plan.
    expect(replaceDevelopment(longer, { atS: 300, remainingS: 270 })).toEqual(plan);
    expect(step(plan, "develop").durationS).toBe(510);
  });

  it("pours out at once when too little is left, and says by how much it is late", () => {
    const late = replaceDevelopment(plan, { atS: 300, remainingS: 4 });
    expect(step(late, "develop")).toMatchObject({
      durationS: 250,
      cues: expect.arrayContaining([
        { atS: 300, text: "Begin to pour out or lift out, so that it is drained 10 s later." },
      ]),
    });
    expect(late.cautions).toMatchObject([
      {
        code: "late-pour",
        severity: "warn",
        limit: 10,
        actual: 4,
      },
    ]);
    expect(replaceDevelopment(late, { atS: 300, remainingS: 10 }).cautions).toEqual([]);
    expect(codes(replaceDevelopment(late, { atS: 300, remainingS: 0 }).cautions)).toEqual(["late-pour"]);
    expect(replaceDevelopment(plan, { atS: 570, remainingS: 0 }).steps[1]!.durationS).toBe(520);
    const noted = planProcess(hut);
    expect(codes(replaceDevelopment(noted, { atS: 500, remainingS: 1 }).cautions)).toEqual([
      "late-pour",
      "clearing-assumed",
      "fixing-split",
    ]);
  });

  it.each([
    [null, {}, "TypeError: replaceDevelopment: plan must be an object, got null"],
    [plan, 5, "TypeError: replaceDevelopment: left must be an object, got 5"],
    [
      { ...plan, steps: [] },
      {},
      "RangeError: replaceDevelopment: plan must be a plan with a development, got an object",
    ],
    [
      plan,
      { atS: 59, remainingS: 5 },
      "RangeError: replaceDevelopment: atS must be from 60 to 570 s, got 59",
    ],
    [
      plan,
      { atS: 571, remainingS: 5 },
      "RangeError: replaceDevelopment: atS must be from 60 to 570 s, got 571",
    ],
    [plan, { atS: 100 }, "TypeError: replaceDevelopment: remainingS must be a number, got undefined"],
    [
      plan,
      { atS: 100, remainingS: -1 },
      "RangeError: replaceDevelopment: remainingS must be from 0 to 1000000 s, got -1",
    ],
    [
      { ...plan, handling: { ...plan.handling, vessel: "bath" } },
      { atS: 100, remainingS: 1 },
      'RangeError: replaceDevelopment: plan.handling.vessel must be one of tank, tray, drum, dish, got "bath"',
    ],
    [
      { ...plan, handling: { ...plan.handling, agitation: 5 } },
      { atS: 100, remainingS: 1 },
      "TypeError: replaceDevelopment: plan.handling.agitation must be an object, got 5",
    ],
    [
      { ...plan, handling: { ...plan.handling, drainS: 601 } },
      { atS: 100, remainingS: 1 },
      "RangeError: replaceDevelopment: plan.handling.drainS must be from 0 to 600 s, got 601",
    ],
  ])("refuses %#", (given, left, message) => {
    expect(thrown(() => replaceDevelopment(anyOf(given), anyOf(left)))).toBe(message);
  });
});

describe("the laws of a plan", () => {
  const setting = fc.record(
    {
      durationS: fc.double({ min: 0.1, max: 86400, noNaN: true }),
      temperatureC: fc.double({ min: 0, max: 100, noNaN: true }),
    },
    { requiredKeys: [] },
  );
  const input = fc.record(
    {
      vessel: fc.constantFrom("tank", "tray", "drum", "dish"),
      timeS: fc.double({ min: 0.001, max: 20000, noNaN: true }),
      temperatureC: fc.double({ min: 0, max: 100, noNaN: true }),
      volumeMl: fc.double({ min: 1, max: 1e6, noNaN: true }),
      agitation: fc.oneof(
        fc.constantFrom("continuous", "stand"),
        fc.record({ everyS: fc.double({ min: 0.01, max: 3600, noNaN: true }) }),
      ),
      drainS: fc.double({ min: 0, max: 600, noNaN: true }),
      rest: fc.oneof(fc.boolean(), fc.double({ min: 0, max: 86400, noNaN: true })),
      modernFilm: fc.boolean(),
      baths: fc.record(
        {
          preSoak: setting,
          stop: setting,
          fix: fc.oneof(
            setting,
            fc.record({
              clearingS: fc.double({ min: 1, max: 7200, noNaN: true }),
              clearingAtC: fc.double({ min: 0, max: 40, noNaN: true }),
            }),
          ),
          clearingAid: setting,
          wash: fc
            .tuple(setting, fc.constantFrom("running", "soak", "changes"))
            .map(([one, method]) => ({ ...one, method })),
          wettingAgent: setting,
        },
        { requiredKeys: [] },
      ),
    },
    { requiredKeys: ["vessel", "timeS", "temperatureC", "volumeMl"] },
  ) as fc.Arbitrary<ProcessInput>;

  const orderly = (plan: ProcessPlan): void => {
    let endS = 0;
    for (const { startS, durationS, cues } of plan.steps) {
      expect(startS).toBe(endS);
      expect(durationS).toBeGreaterThan(0);
      endS = startS + durationS;
      let beforeS = startS;
      for (const { atS } of cues) {
        expect(atS).toBeGreaterThanOrEqual(beforeS);
        beforeS = atS;
      }
      expect(beforeS).toBeLessThanOrEqual(endS);
    }
    expect(plan.totalS).toBe(endS);
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
    for (const line of describePlan(plan)) expect(line).not.toMatch(/NaN|undefined|Infinity/);
  };

  test.prop([input])("no overlap, no gap, cues in their step and in order", (given) => {
    orderly(planProcess(given));
  });

  test.prop([
    input,
    fc.double({ min: 0, max: 1, noNaN: true }),
    fc.double({ min: 0, max: 1e4, noNaN: true }),
  ])("a development that is timed anew keeps order", (given, share, remainingS) => {
    const plan = planProcess(given);
    const { startS, durationS } = step(plan, "develop");
    const atS = Math.min(startS + share * durationS, startS + durationS);
    const anew = replaceDevelopment(plan, { atS, remainingS });
    orderly(anew);
    const { drainS } = plan.handling;
    expect(step(anew, "develop").startS + step(anew, "develop").durationS).toBeCloseTo(
      atS + Math.max(remainingS, drainS),
      6,
    );
    expect(step(anew, "develop").cues.at(-1)!.atS).toBeGreaterThanOrEqual(atS - 1e-6);
    expect(codes(anew.cautions).includes("late-pour")).toBe(remainingS < drainS);
  });
});

describe("describePlan", () => {
  it("says what to do and when, in few lines", () => {
    const plan = planProcess({
      ...hut,
      dilution: "1+2",
      baths: { stop: { dilution: "1+19" }, wash: { method: "soak", durationS: 500, temperatureC: 18.5 } },
    });
    expect(describePlan(plan)).toEqual([
      "0:00 develop, 8:30 at 20.0 °C",
      "  0:00 Pour in, then invert the tank for 30 s.",
      "  1:00 Agitate: invert the tank for 5 s. Every 1:00 until 8:00.",
      "  8:20 Begin to pour out or lift out, so that it is drained 10 s later.",
      "8:30 stop, 0:30 at 20.0 °C",
      "  8:30 Pour in the stop bath and move without pause.",
      "9:00 wash, 8:20 at 18.5 °C",
      "  9:00 Fill with fresh water and leave it.",
      "  12:00 Change the water. Every 3:00 until 15:00.",
      "In all 17:20.",
      "Have ready: developer 500 ml (166.7 ml stock, 333.3 ml water); stop bath 500 ml (25 ml stock, 475 ml water); wash water 1500 ml.",
    ]);
    expect(describePlan(planProcess({ ...hut, baths: { preSoak: {} } }))[0]).toBe(
      "0:00 pre soak, 2:00 at 20.0 °C",
    );
    expect(describePlan(planProcess({ ...hut, timeS: 100, baths: {} }))[2]).toBe(
      "  1:00 Agitate: invert the tank for 5 s.",
    );
    expect(thrown(() => describePlan(anyOf("plan")))).toBe(
      'TypeError: describePlan: plan must be an object, got "plan"',
    );
  });
});

describe("a plan that comes back in", () => {
  const plan = planProcess({ ...hut, dilution: "1+2", baths: { stop: {} } });
  const step = plan.steps[0]!;
  const cue = step.cues[0]!;
  const material = plan.materials[0]!;
  const withStep = (change: object): object => ({ ...plan, steps: [{ ...step, ...change }] });
  const withMaterial = (change: object): object => ({ ...plan, materials: [{ ...material, ...change }] });
  it("is read as it was written", () => {
    const stored = JSON.parse(JSON.stringify(plan)) as typeof plan;
    expect(describePlan(stored)).toEqual(describePlan(plan));
    expect(replaceDevelopment(stored, { atS: 100, remainingS: 60 })).toEqual(
      replaceDevelopment(plan, { atS: 100, remainingS: 60 }),
    );
  });
  it.each([
    [{ ...plan, totalS: "long" }, 'TypeError: describePlan: plan.totalS must be a number, got "long"'],
    [
      { ...plan, totalS: 1e7 + 1 },
      "RangeError: describePlan: plan.totalS must be from 0 to 10000000 s, got 10000001",
    ],
    [{ ...plan, steps: "" }, 'TypeError: describePlan: plan.steps must be an array, got ""'],
    [{ ...plan, steps: [null] }, "TypeError: describePlan: plan.steps[0] must be an object, got null"],
    [withStep({ name: 1 }), "TypeError: describePlan: plan.steps[0].name must be text, got 1"],
    [
      withStep({ startS: -1 }),
      "RangeError: describePlan: plan.steps[0].startS must be from 0 to 10000000 s, got -1",
    ],
    [
      withStep({ durationS: NaN }),
      "RangeError: describePlan: plan.steps[0].durationS must be from 0 to 10000000 s, got NaN",
    ],
    [
      withStep({ temperatureC: 101 }),
      "RangeError: describePlan: plan.steps[0].temperatureC must be from 0 to 100 °C, got 101",
    ],
    [withStep({ sources: NaN }), "TypeError: describePlan: plan.steps[0].sources must be an array, got NaN"],
    [withStep({ cues: {} }), "TypeError: describePlan: plan.steps[0].cues must be an array, got an object"],
    [withStep({ cues: [7] }), "TypeError: describePlan: plan.steps[0].cues[0] must be an object, got 7"],
    [
      withStep({ cues: [{ ...cue, atS: -1 }] }),
      "RangeError: describePlan: plan.steps[0].cues[0].atS must be from 0 to 10000000 s, got -1",
    ],
    [
      withStep({ cues: [{ ...cue, text: 5 }] }),
      "TypeError: describePlan: plan.steps[0].cues[0].text must be text, got 5",
    ],
    [{ ...plan, materials: 1 }, "TypeError: describePlan: plan.materials must be an array, got 1"],
    [{ ...plan, materials: [1] }, "TypeError: describePlan: plan.materials[0] must be an object, got 1"],
    [
      withMaterial({ name: undefined }),
      "TypeError: describePlan: plan.materials[0].name must be text, got undefined",
    ],
    [
      withMaterial({ volumeMl: -1 }),
      "RangeError: describePlan: plan.materials[0].volumeMl must be from 0 to 1000000000 ml, got -1",
    ],
    [
      withMaterial({ stockMl: null }),
      "TypeError: describePlan: plan.materials[0].stockMl must be a number, got null",
    ],
    [
      withMaterial({ stockMl: "a" }),
      'TypeError: describePlan: plan.materials[0].stockMl must be a number, got "a"',
    ],
    [
      withMaterial({ waterMl: 2e9 }),
      "RangeError: describePlan: plan.materials[0].waterMl must be from 0 to 1000000000 ml, got 2000000000",
    ],
    [
      withMaterial({ stocksMl: 5 }),
      "TypeError: describePlan: plan.materials[0].stocksMl must be an array, got 5",
    ],
    [
      withMaterial({ stocksMl: [5, -1] }),
      "RangeError: describePlan: plan.materials[0].stocksMl[1] must be from 0 to 1000000000 ml, got -1",
    ],
    [{ ...plan, cautions: "" }, 'TypeError: describePlan: plan.cautions must be an array, got ""'],
    [{ ...plan, cautions: [1] }, "TypeError: describePlan: plan.cautions[0] must be an object, got 1"],
    [
      { ...plan, cautions: [{ severity: "stop" }] },
      "TypeError: describePlan: plan.cautions[0].message must be text, got undefined",
    ],
    [{ ...plan, handling: 1 }, "TypeError: describePlan: plan.handling must be an object, got 1"],
  ])("is refused when it is none %#", (given, message) => {
    expect(thrown(() => describePlan(anyOf(given)))).toBe(message);
    expect(thrown(() => replaceDevelopment(anyOf(given), { atS: 0, remainingS: 1 }))).toBe(
      message.replaceAll("describePlan", "replaceDevelopment"),
    );
  });
});
