import { describe, expect, it } from "vitest";
import {
  clearingTimeAt,
  compensate,
  planProcess,
  replaceDevelopment,
  type DeveloperBrew,
  type PlanCue,
  type ProcessInput,
  type ProcessPlan,
  type ProcessStep,
  describePlan,
  bathCautions,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { codes, hut, refusal, stepOf } from "./helpers.js";
import { caught, thrown } from "../helpers.js";

/** Cues without their sentences, counted from the start of their step. */
const bare = ({ cues, startS }: ProcessStep): readonly object[] =>
  cues
    .map(({ text, ...cue }) => ({ ...cue, atS: cue.atS - startS, said: text.length > 5 }))
    .map(({ said, ...cue }) => {
      expect(said).toBe(true);
      return cue;
    });
const told = (cues: readonly PlanCue[]): readonly unknown[] =>
  cues.map(({ atS, do: action, durationS }) => [atS, action, durationS]);

describe("a plan of the usual run", () => {
  it("has published times", () => {
    const plan = planProcess(hut);
    // Stop 30 s, wash 30 min: US Army, subcourse SS05098, p. 24. Fix: three times a clearing
    // time of 1 min that nobody measured: the longer of two figures.
    expect(plan.steps.map(({ name, startS, endS, durationS }) => [name, startS, endS, durationS])).toEqual([
      ["develop", 0, 510, 510],
      ["stop", 510, 540, 30],
      ["fix", 540, 720, 180],
      ["wash", 720, 2520, 1800],
      ["wetting-agent", 2520, 2580, 60],
    ]);
    expect(plan.totalS).toBe(2580);
    expect(plan.handling).toEqual({
      vessel: "tank",
      movement: "invert",
      agitation: { everyS: 60 },
      drainS: 10,
    });
    expect(plan.steps.every((one) => one.temperatureC === 20 && one.sources.length > 0)).toBe(true);
    expect(stepOf(plan, "develop").sources[0]).toContain("NAVEDTRA 14209, p. 10-16");
    expect(stepOf(plan, "fix").sources).toHaveLength(4);
    expect(codes(plan.cautions)).toEqual(["clearing-assumed", "fixing-split"]);
    expect(plan.timeRefused).toBe(false);
  });

  it("has standing notes apart from the cautions", () => {
    const notes = (baths?: ProcessInput["baths"]): readonly string[] =>
      codes(planProcess({ ...hut, baths }).benchNotes);
    const all = ["bench-gloves", "bench-air", "bench-acid", "silver-disposal", "safety-data-sheets"];
    const but = (left: string): readonly string[] => all.filter((code) => code !== left);
    expect(notes()).toEqual(all);
    expect(notes({ stop: {} })).toEqual(but("silver-disposal"));
    expect(notes({ fix: {} })).toEqual(but("bench-acid"));
    expect(notes({ stop: { kind: "water" }, fix: {} })).toEqual(but("bench-acid"));
    expect(notes({ wash: {} })).toEqual(["bench-gloves", "safety-data-sheets"]);
    expect(planProcess(hut).benchNotes.every(({ severity }) => severity === "note")).toBe(true);
  });

  // Invented plates of 9 × 12 cm; 250 ml a roll, 0.5 ml for each cm² of a dish and 6 ml of stock a roll are told in
  // test/bath/bathCapacity.test.ts.
  describe("and whether there is enough developer", () => {
    const about = (more: Partial<ProcessInput>): readonly unknown[] =>
      planProcess({
        ...hut,
        material: "plate",
        baths: { stop: {}, fix: { clearingS: 60, times: 2 }, wash: {} },
        ...more,
      })
        .cautions.filter(({ severity }) => severity !== "note")
        .map(({ code, severity, path }) => [code, severity, path]);
    const brew: DeveloperBrew = {
      volumeMl: 250,
      ingredients: [
        { ingredient: "soda-anhydrous", massG: 13.5 },
        { ingredient: "ascorbic-acid", massG: 0.1 },
      ],
    };
    it.each([
      ["three plates in a cup", { areaCm2: 3 * 108, volumeMl: 250 }, []],
      [
        "twelve plates in a cup",
        { areaCm2: 12 * 108, volumeMl: 250 },
        [["bath-capacity-reached", "stop", "/areaCm2"]],
      ],
      [
        "a thin layer in a dish",
        { vessel: "tray", areaCm2: 108, volumeMl: 50, developer: { capacityCm2PerL: 9e4 } },
        [["thin-layer", "warn", "/volumeMl"]],
      ],
      [
        "sheets that lie on one another",
        {
          vessel: "tray",
          movement: "shuffle",
          pieces: 4,
          areaCm2: 4 * 108,
          volumeMl: 60,
          developer: { capacityCm2PerL: 9e4 },
        },
        [],
      ],
      [
        "a wide dish",
        { vessel: "tray", areaCm2: 108, volumeMl: 200, developer: { dishCm2: 500 } },
        [["thin-layer", "warn", "/volumeMl"]],
      ],
      ["a tank, which has no floor", { areaCm2: 108, volumeMl: 200, developer: { dishCm2: 500 } }, []],
      [
        "too little stock, and no family named",
        { areaCm2: 516, volumeMl: 500, dilution: "1+100", material: "film" },
        [["too-little-stock", "warn", "/volumeMl"]],
      ],
      [
        "a used bath",
        { areaCm2: 108, developer: { usedCm2PerL: 1500 } },
        [["bath-past-capacity", "warn", "/developer/usedCm2PerL"]],
      ],
      [
        "a brew that has hardly any agent",
        { areaCm2: 5 * 108, developer: { brew }, volumeMl: undefined },
        [["bath-past-agent", "stop", "/areaCm2"]],
      ],
      [
        "a field that is not read",
        { developer: anyOf({ used: 3 }) },
        [["unknown-field", "warn", "/developer/used"]],
      ],
    ] as const)("of %s", (_, more, said) => {
      expect(about(more as Partial<ProcessInput>)).toEqual(said);
    });
    it("does not say again what the answer has said", () => {
      const use = { increase: 0.01, perCm2PerL: 516, growth: "linear", capacityCm2PerL: 1000 } as const;
      const answer = compensate({ timeS: 600, temperatureC: 20 }, { usedCm2PerL: 1500 }, { use });
      const plan = planProcess({
        ...hut,
        timeS: undefined,
        answer,
        areaCm2: 108,
        developer: { use, usedCm2PerL: 1500 },
      });
      expect(answer.cautions.map(({ code }) => code)).toContain("bath-past-capacity");
      expect(codes(plan.cautions)).not.toContain("bath-past-capacity");
    });
    it.each([
      [{ developer: 7 }, "TypeError planProcess /input/developer wrong-type"],
      [{ developer: { family: "tea" } }, "RangeError planProcess /input/developer/family not-one-of"],
      [
        { developer: { brew: { volumeMl: 9, ingredients: [] } } },
        "RangeError planProcess /input/developer/brew/ingredients empty",
      ],
      [{ areaCm2: -1 }, "RangeError planProcess /input/areaCm2 out-of-range"],
      [{ dilution: "1:9" }, "RangeError planProcess /input/dilution ambiguous"],
    ])("refuses %j by its place", (more, said) => {
      expect(refusal(() => planProcess({ ...hut, ...anyOf(more) }))).toBe(said);
    });
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
    const moved = { movement: "invert" };
    expect(Object.fromEntries(plan.steps.map((step) => [step.name, bare(step)]))).toMatchObject({
      "rest": [{ atS: 0, durationS: 300, do: "stand" }],
      "pre-soak": [
        { atS: 0, do: "pour-in" },
        { atS: 0, durationS: 15, do: "agitate", ...moved },
        { atS: 15, do: "tap" },
        { atS: 60, durationS: 5, do: "agitate", ...moved },
        { atS: 110, durationS: 10, do: "pour-out" },
      ],
      "stop": [
        { atS: 0, durationS: 50, do: "rinse", ...moved },
        { atS: 50, durationS: 10, do: "pour-out" },
      ],
      // Fifteen seconds at the start of fixing: US Army, subcourse SS05098, p. 24. Then once a minute: common
      // practice.
      "fix": [
        { atS: 0, do: "pour-in" },
        { atS: 0, durationS: 15, do: "agitate", ...moved },
        { atS: 60, durationS: 5, do: "agitate", ...moved },
        // Half of the fixing is over, and it is clear.
        { atS: 65, do: "light-on" },
        { atS: 65, do: "check-clear", data: { clearingS: 40 } },
        { atS: 110, durationS: 10, do: "pour-out" },
      ],
      "clearing-aid": [
        { atS: 0, do: "rinse" },
        { atS: 0, do: "pour-in" },
        { atS: 0, durationS: 15, do: "agitate", ...moved },
        { atS: 60, durationS: 5, do: "agitate", ...moved },
        { atS: 110, durationS: 10, do: "pour-out" },
      ],
      "wash": [{ atS: 0, durationS: 300, do: "run-water" }],
      "wetting-agent": [
        { atS: 0, do: "pour-in" },
        { atS: 0, durationS: 59, do: "stand" },
        { atS: 59, do: "hang-up" },
      ],
    });
    expect(plan.cautions).toEqual([]);
    expect(stepOf(plan, "fix").sources).toEqual([]);
    expect(stepOf(planProcess({ ...hut, rest: 90 }), "rest")).toMatchObject({ durationS: 90, sources: [] });
    expect(stepOf(planProcess({ ...hut, rest: true }), "rest").sources).toHaveLength(1);
    for (const rest of [false, 0]) expect(planProcess({ ...hut, rest }).steps[0]!.name).toBe("develop");
    const acid = planProcess({ ...hut, baths: { stop: { kind: "acid" } } });
    expect(bare(stepOf(acid, "stop"))).toEqual([
      { atS: 0, do: "pour-in" },
      { atS: 0, durationS: 20, do: "agitate", ...moved },
      { atS: 20, durationS: 10, do: "pour-out" },
    ]);
    const second = planProcess({
      ...hut,
      baths: { wettingAgent: { durationS: 1 }, preSoak: { durationS: 4 } },
    });
    expect(stepOf(second, "wetting-agent").cues.map((cue) => cue.do)).toEqual(["pour-in", "hang-up"]);
    expect(bare(stepOf(second, "pre-soak")).at(-1)).toEqual({ atS: 0, durationS: 4, do: "pour-out" });
  });

  it("stands a plate up to dry, and hangs up what is no plate", () => {
    const last = (material?: "film" | "plate" | "paper"): unknown =>
      stepOf(planProcess({ ...hut, material, baths: { wettingAgent: {} } }), "wetting-agent").cues.at(-1);
    expect(last("plate")).toMatchObject({ do: "hang-up", data: { material: "plate" } });
    expect(last("plate")).toHaveProperty("text", "Stand it up to dry without rinsing.");
    for (const material of ["film", "paper", undefined] as const) {
      expect(last(material)).not.toHaveProperty("data");
      expect(last(material)).toHaveProperty("text", "Hang it up to dry without rinsing.");
    }
  });

  it("names sources only for what the input leaves out", () => {
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
    // The look for clearing still rests on a clearing time in print.
    expect(counted).toEqual({
      "pre-soak": 0,
      "develop": 3,
      "stop": 0,
      "fix": 1,
      "clearing-aid": 0,
      "wash": 0,
      "wetting-agent": 0,
    });
    const soak = planProcess({ ...hut, baths: { wash: { method: "soak", durationS: 600 } } });
    expect(stepOf(soak, "wash").sources[0]).toContain("changed every 3 min");
    const cold = planProcess({ ...hut, temperatureC: 14, baths: { fix: { durationS: 300 } } });
    expect(stepOf(cold, "fix").sources.some((source) => source.includes("sec. 392"))).toBe(true);
  });
});

describe("agitation", () => {
  it("of a tank goes by the manual, and pouring out ends on time", () => {
    // US Navy, NAVEDTRA 14209, p. 10-16: 30 s, then 5 s each minute; US Army, SS0514: 10 s to drain.
    expect(bare(stepOf(planProcess({ ...hut, timeS: 250 }), "develop"))).toEqual([
      { atS: 0, do: "pour-in" },
      { atS: 0, durationS: 30, do: "agitate", movement: "invert" },
      // Air bells: common practice.
      { atS: 30, do: "tap" },
      { atS: 60, durationS: 5, do: "agitate", movement: "invert" },
      { atS: 120, durationS: 5, do: "agitate", movement: "invert" },
      { atS: 180, durationS: 5, do: "agitate", movement: "invert" },
      { atS: 240, durationS: 10, do: "pour-out" },
    ]);
  });

  it.each<[string, ProcessInput["agitation"], number, readonly (readonly [number, string, number])[]]>([
    // A short start where the bath is moved twice a minute: Eastman Kodak, film data sheets (from memory).
    [
      "each 30 s",
      { everyS: 30 },
      100,
      [
        [0, "agitate", 5],
        [30, "agitate", 5],
        [60, "agitate", 5],
      ],
    ],
    ["each 59 s", { everyS: 59 }, 69, [[0, "agitate", 5]]],
    ["as long as the interval", { everyS: 5 }, 100, [[0, "agitate", 90]]],
    // The third ends with the pouring out; the sum is 95.30000000000001.
    [
      "to within rounding of the end",
      { everyS: 30.1 },
      105.3,
      [
        [0, "agitate", 5],
        [30.1, "agitate", 5],
        [60.2, "agitate", 5],
        [90.30000000000001, "agitate", 5],
      ],
    ],
    [
      "each 6 s",
      { everyS: 6 },
      21,
      [
        [0, "agitate", 5],
        [6, "agitate", 5],
      ],
    ],
    ["without pause", "continuous", 100, [[0, "agitate", 90]]],
    [
      "of stand",
      "stand",
      3600,
      [
        [0, "agitate", 30],
        [30, "stand", 3560],
      ],
    ],
    ["of a short stand", "stand", 22, [[0, "agitate", 12]]],
  ])("%s", (_, agitation, timeS, shown) => {
    const { cues } = stepOf(planProcess({ ...hut, timeS, agitation }), "develop");
    expect(told(cues.filter((cue) => cue.do !== "tap")).slice(1, -1)).toEqual(shown);
    // Tapped once, after the first agitation, if anything comes after it.
    const [, , firstS] = shown[0] as readonly [number, string, number];
    const tapS = shown.length === 1 && firstS > 30 ? 30 : firstS;
    expect(cues.filter((cue) => cue.do === "tap").map(({ atS }) => atS)).toEqual(
      tapS < timeS - 10 ? [tapS] : [],
    );
  });

  it("is left out where pouring out would cut it short", () => {
    const last = (timeS: number): readonly number[] =>
      stepOf(planProcess({ ...hut, timeS }), "develop")
        .cues.slice(-2)
        .map(({ atS }) => atS);
    // Agitation of 5 s at 240 s, and 10 s to drain.
    expect(last(255)).toEqual([240, 245]);
    expect(last(254.9)).toEqual([180, 244.9]);
  });

  it.each<[string, Partial<ProcessInput>, string, number, ProcessInput["agitation"]]>([
    ["a tank is inverted", {}, "invert", 10, { everyS: 60 }],
    ["a spiral may be turned", { movement: "turn" }, "turn", 10, { everyS: 60 }],
    ["a drum is turned without pause", { vessel: "drum" }, "turn", 10, "continuous"],
    ["a sheet in a tray is rocked without pause", { vessel: "tray" }, "rock", 5, "continuous"],
    ["so is paper", { vessel: "tray", material: "paper" }, "rock", 5, "continuous"],
    ["a single sheet is rocked", { vessel: "tray", pieces: 1 }, "rock", 5, "continuous"],
    ["several sheets are shuffled", { vessel: "tray", pieces: 6 }, "shuffle", 10, "continuous"],
    ["a plate is rocked", { vessel: "tray", material: "plate" }, "rock", 5, "continuous"],
    ["plates are not shuffled", { vessel: "tray", material: "plate", pieces: 2 }, "rock", 5, "continuous"],
    ["a plate in a tank is inverted", { material: "plate", pieces: 1 }, "invert", 10, { everyS: 60 }],
    ["what is stated goes first", { vessel: "tray", movement: "rock", drainS: 7 }, "rock", 7, "continuous"],
  ])("%s", (_, more, movement, drainS, agitation) => {
    // Trays without pause: US Navy, NAVEDTRA 14209, p. 10-16; the rest: common practice.
    const { handling, steps } = planProcess({ ...hut, ...more });
    const { pieces = 1 } = more;
    const several = pieces > 1 ? { pieces } : {};
    expect(handling).toEqual({ vessel: more.vessel ?? "tank", movement, agitation, drainS, ...several });
    expect(steps[0]!.cues.find((cue) => cue.do === "agitate")).toMatchObject({ movement });
    expect(steps[0]!.cues.at(-1)).toMatchObject({ atS: 510 - drainS, durationS: drainS, do: "pour-out" });
  });

  it.each<[string, number, number, number, string | undefined]>([
    ["a step that suits it", 703, 15, 705, undefined],
    ["a twentieth more", 600, 210, 630, undefined],
    ["more than a twentieth", 600, 160, 640, "warn"],
    ["nearly a quarter less", 440, 340, 340, "warn"],
    ["a third less", 440, 300, 300, "stop"],
    ["a quarter more", 240, 300, 300, "stop"],
    ["a step that is longer than it", 510, 1200, 1200, "stop"],
    ["an hour", 510, 3600, 3600, "stop"],
  ])("is rounded to %s, and says where that shows", (_, timeS, stepS, plannedS, severity) => {
    const plan = planProcess({ ...hut, timeS, stepS });
    expect(stepOf(plan, "develop").durationS).toBe(plannedS);
    const said = plan.cautions.filter(({ code }) => code === "development-rounded");
    const one = { severity, path: "/stepS", quantity: "timeS", limit: timeS, actual: plannedS };
    expect(said).toMatchObject(severity === undefined ? [] : [one]);
    expect(said).toHaveLength(severity === undefined ? 0 : 1);
  });

  it("says so when the development is shorter than the draining", () => {
    const plan = planProcess({
      ...hut,
      timeS: 8,
      baths: { stop: {}, fix: { clearingS: 30, times: 2 }, wash: {} },
    });
    expect(bare(stepOf(plan, "develop"))).toEqual([
      { atS: 0, do: "pour-in" },
      { atS: 0, durationS: 10, do: "pour-out" },
    ]);
    expect(plan.cautions).toMatchObject([
      { code: "drain-too-long", severity: "stop", quantity: "timeS", limit: 8, actual: 10 },
    ]);
    expect(codes(planProcess({ ...hut, timeS: 10 }).cautions)).not.toContain("drain-too-long");
    expect(stepOf(planProcess({ ...hut, drainS: 0 }), "develop").cues.at(-1)).toMatchObject({
      atS: 510,
      do: "pour-out",
    });
    expect(stepOf(planProcess({ ...hut, drainS: 0 }), "develop").cues.at(-1)).not.toHaveProperty("durationS");
  });
});

describe("what comes before and around the developer", () => {
  it("is told when the input has it", () => {
    const first = (more: Partial<ProcessInput>): readonly object[] =>
      bare(planProcess({ ...hut, ...more }).steps[0]!).slice(0, -1);
    expect(first({ rest: 60, topUpMl: 50, startTemperatureC: 21.5 })).toEqual([
      { atS: 0, do: "top-up", data: { volumeMl: 50 } },
      { atS: 0, do: "temper", data: { temperatureC: 21.5 } },
    ]);
    expect(first({ startTemperatureC: 22 })[0]).toEqual({ atS: 0, do: "temper", data: { temperatureC: 22 } });
  });

  it("is the light, off before the first wet bath and on when the material is clear", () => {
    // Common practice.
    const lights = (more: Partial<ProcessInput>): readonly unknown[] =>
      planProcess({ ...hut, ...more }).steps.flatMap(({ name, startS, cues }) =>
        cues
          .filter((cue) => cue.do.startsWith("light"))
          .map((cue) => [name, cue.atS - startS, cue.do, cue.data?.sensitization]),
      );
    // A closed tank is opened for the look, whatever light the material sees; what is open is kept dark.
    expect(lights({})).toEqual([["fix", 90, "light-on", undefined]]);
    expect(lights({ vessel: "tray" })).toEqual([
      ["develop", 0, "light-off", undefined],
      ["fix", 90, "light-on", undefined],
    ]);
    expect(lights({ sensitization: "panchromatic" })).toEqual([
      ["develop", 0, "light-off", "panchromatic"],
      ["fix", 90, "light-on", "panchromatic"],
    ]);
    const baths = { preSoak: {}, fix: { durationS: 40 } };
    expect(lights({ sensitization: "orthochromatic", vessel: "tray", rest: true, baths })).toEqual([
      ["pre-soak", 0, "light-off", "orthochromatic"],
    ]);
    const said = (
      vessel: ProcessInput["vessel"],
      sensitization: ProcessInput["sensitization"],
      more: Partial<ProcessInput> = {},
    ): string => planProcess({ ...hut, vessel, sensitization, ...more }).steps[0]!.cues[0]!.text;
    expect(said("tray", undefined, { pieces: 6 })).toBe(
      "It is not said what light this material sees: keep it in complete darkness until it is fixed.",
    );
    // Paper under a safelight: common practice.
    expect(said("tray", undefined, { material: "paper" })).toMatch(
      /^White light off: for paper only the safelight/,
    );
    expect(said("tank", undefined)).toBe("Pour in the developer.");
    const sentences = (["tank", "tray"] as const).flatMap((vessel) =>
      (["panchromatic", "orthochromatic", "blue-sensitive"] as const).map((one) => said(vessel, one)),
    );
    expect(new Set(sentences).size).toBe(6);
  });
});

describe("sheets in a tray", () => {
  const of = (pieces: number, everyS: number, more: Partial<ProcessInput> = {}): ProcessPlan =>
    planProcess({ ...hut, vessel: "tray", pieces, agitation: { everyS }, ...more });
  const moved = (plan: ProcessPlan, name: Parameters<typeof stepOf>[1]): readonly unknown[] =>
    told((bare(stepOf(plan, name)) as readonly PlanCue[]).filter((cue) => cue.do === "agitate")).slice(0, 3);
  it("are shuffled for 5 s each, and go in one by one", () => {
    // A pass of 5 s a sheet: from memory.
    const plan = of(6, 120);
    expect(moved(plan, "develop")).toEqual([
      [0, "agitate", 30],
      [120, "agitate", 30],
      [240, "agitate", 30],
    ]);
    expect(moved(plan, "fix")).toEqual([
      [0, "agitate", 30],
      [60, "agitate", 30],
      [120, "agitate", 30],
    ]);
    expect(moved(of(2, 30), "develop")[1]).toEqual([30, "agitate", 10]);
    expect(stepOf(plan, "develop").cues.find((cue) => cue.do === "pour-in")).toMatchObject({
      text: "Slide them into the developer, one by one.",
      data: { pieces: 6 },
    });
    expect(stepOf(plan, "wetting-agent").cues[0]!.text).toBe(
      "Slide them into the wetting agent, one by one.",
    );
    expect(stepOf(plan, "develop").sources.join(" ")).toContain("5 s a sheet");
  });
  it("are shuffled without pause where one pass fills the interval", () => {
    expect(moved(of(6, 30), "develop")).toEqual([[0, "agitate", 500]]);
    expect(moved(of(12, 120), "fix")).toEqual([[0, "agitate", 170]]);
    expect(moved(of(12, 120), "develop")[0]).toEqual([0, "agitate", 60]);
  });
  it("keep their pace when the development is timed anew", () => {
    const plan = of(6, 120);
    const { steps } = replaceDevelopment(plan, { atS: 200, remainingS: 400 });
    expect(steps[0]!.cues.filter((cue) => cue.do === "agitate").map((cue) => cue.durationS)).toEqual([
      30, 30, 30, 30, 30,
    ]);
    const odd = { ...plan, handling: { ...plan.handling, pieces: 1.5 } };
    expect(() => replaceDevelopment(odd, { atS: 200, remainingS: 400 })).toThrow(TypeError);
  });
  it("that are plates are rocked as one plate is", () => {
    const plates = of(3, 60, { material: "plate" });
    expect(moved(plates, "develop")[1]).toEqual([60, "agitate", 5]);
    expect(stepOf(plates, "develop").cues.find((cue) => cue.do === "pour-in")!.text).toContain("one by one");
  });
});

describe("the look for clearing", () => {
  const look = (more: Partial<ProcessInput>): readonly string[] =>
    stepOf(planProcess({ ...hut, ...more }), "fix")
      .cues.filter((cue) => cue.do === "check-clear" || cue.do === "light-on")
      .map(({ text }) => text.slice(0, 55));
  // White light after half of the fixing: common practice. Milky material is not lit where one can look without.
  it.each(["orthochromatic", "blue-sensitive"] as const)(
    "of %s material comes before the light",
    (sensitization) => {
      expect(look({ vessel: "tray", sensitization })).toEqual([
        "It should be clear by now: look by the safelight, befor",
        "White light may go on.",
      ]);
    },
  );
  it("of material that lies in the dark needs the light", () => {
    expect(look({ vessel: "tray", sensitization: "panchromatic" })).toEqual([
      "White light may go on.",
      "It should be clear by now. If it is milky, keep it dark",
    ]);
    expect(look({ sensitization: "orthochromatic" })).toEqual([
      "The lid may come off for a look.",
      "It should be clear by now. If it is milky, keep it dark",
    ]);
  });
});

describe("fixing", () => {
  const fixS = (input: Partial<ProcessInput>): number =>
    stepOf(planProcess({ ...hut, ...input }), "fix").durationS;
  it("goes by material, bath and temperature", () => {
    expect(fixS({ iodideRich: true })).toBe(180);
    expect(fixS({ iodideRich: false })).toBe(180);
    expect(fixS({ baths: { fix: { kind: "plain" } } })).toBe(1800);
    // 486 s, up to five.
    expect(fixS({ baths: { fix: { temperatureC: 10 } } })).toBe(490);
    expect(fixS({ baths: { fix: { temperatureC: 10 } }, stepS: 1 })).toBe(486);
    // Two where film was measured; three for plates all the same, and for iodide-rich films.
    const measured = { baths: { fix: { clearingS: 50 } } };
    expect(fixS(measured)).toBe(100);
    expect(fixS({ ...measured, iodideRich: true })).toBe(150);
    expect(fixS({ ...measured, material: "plate" })).toBe(150);
    expect(fixS({ material: "plate", baths: { fix: { times: 2 } } })).toBe(120);
    // Two are not too few for film whose clearing time is assumed; for plates they are.
    const short = (material: "film" | "plate"): boolean =>
      codes(planProcess({ ...hut, material, baths: { fix: { durationS: 120 } } }).cautions).includes(
        "short-fix",
      );
    expect([short("film"), short("plate")]).toEqual([false, true]);
    // A clearing time measured in this bath needs no correction; one measured elsewhere does.
    expect(fixS({ temperatureC: 10, baths: { fix: { clearingS: 50 } } })).toBe(100);
    expect(fixS({ temperatureC: 10, baths: { fix: { clearingS: 50, clearingAtC: 20 } } })).toBe(
      2 * clearingTimeAt({ clearingS: 50, fromC: 20, toC: 10 }),
    );
    expect(fixS({ baths: { fix: { durationS: 300 } } })).toBe(300);
  });

  it("is no shorter than the least for film and plates", () => {
    // A minute in rapid fixer (common practice), five in plain hypo (Henley, 1914, p. 524).
    const of = (fix: object, more: object = {}): ProcessStep =>
      stepOf(planProcess({ ...hut, ...more, baths: { stop: {}, fix, wash: {} } }), "fix");
    expect(of({ clearingS: 5 }).durationS).toBe(60);
    expect(of({ clearingS: 5 }, { material: "plate" }).durationS).toBe(60);
    expect(of({ clearingS: 5 }).sources).toEqual(["a minute in rapid fixer at the least: common practice"]);
    expect(of({ clearingS: 29, times: 2 }).durationS).toBe(60);
    expect(of({ clearingS: 31 }).durationS).toBe(65);
    expect(of({ clearingS: 100, kind: "plain" }).durationS).toBe(300);
    // What the input states stays.
    expect(of({ clearingS: 5, durationS: 10 })).toMatchObject({ durationS: 10, sources: [] });
  });

  it("clears no sooner than the bath did when fresh, nor than the handbook says", () => {
    const of = (fix: object, temperatureC = 20): ProcessStep =>
      stepOf(planProcess({ ...hut, temperatureC, baths: { fix, wash: {} } }), "fix");
    // A fresh bath that took 200 s: the handbook's minute is not for this material.
    expect(of({ freshClearingS: 200 })).toMatchObject({ durationS: 600 });
    expect(of({ freshClearingS: 200 }).cues.find((cue) => cue.do === "check-clear")).toMatchObject({
      atS: 815,
      data: { clearingS: 200 },
    });
    expect(of({ freshClearingS: 200 }).sources).toHaveLength(3);
    expect(of({ freshClearingS: 30 })).toMatchObject({ durationS: 180 });
    expect(of({ freshClearingS: 30 }).sources).toHaveLength(4);
    expect(of({ freshClearingS: 100 }, 10).durationS).toBe(490);
    expect(of({ freshClearingS: 200, clearingS: 210 })).toMatchObject({ durationS: 420 });
  });

  it("waits until the tank is still", () => {
    for (const clearingS of [20, 29, 40, 61, 90, 150])
      for (const times of [2, 3]) {
        const baths = { stop: {}, fix: { clearingS, times }, wash: {} };
        const { cues } = stepOf(planProcess({ vessel: "tank", timeS: 510, temperatureC: 20, baths }), "fix");
        const looks = cues.filter((cue) => cue.do === "light-on" || cue.do === "check-clear");
        const moved = cues.filter((cue) => cue.do === "agitate");
        expect(looks.map(({ do: what }) => what)).toEqual(["light-on", "check-clear"]);
        for (const { atS } of looks)
          expect(moved.filter((one) => one.atS <= atS && atS < one.atS + one.durationS!)).toEqual([]);
      }
  });
  it("looks for clearing only where fixing goes on after it", () => {
    const looks = (durationS: number): boolean =>
      stepOf(planProcess({ ...hut, baths: { fix: { clearingS: 50, durationS } } }), "fix").cues.some(
        (cue) => cue.do === "check-clear",
      );
    // Pouring out takes the last ten seconds.
    expect([60, 61].map(looks)).toEqual([false, true]);
  });

  it("of paper has a time of its own and no look for clearing", () => {
    // 1 to 2 min in rapid fixer (from memory), 10 min in fresh plain hypo (common practice).
    const paper = (fix: object, more: Partial<ProcessInput> = {}): ProcessStep =>
      stepOf(
        planProcess({ ...hut, vessel: "tray", material: "paper", baths: { fix, wash: {} }, ...more }),
        "fix",
      );
    expect(paper({}).durationS).toBe(120);
    expect(paper({ kind: "plain" }).durationS).toBe(600);
    expect(paper({ kind: "plain" }, { temperatureC: 10 }).durationS).toBe(27 * 60);
    expect(paper({ durationS: 90 }).durationS).toBe(90);
    expect(paper({ clearingS: 200, freshClearingS: 190 }).durationS).toBe(120);
    expect(paper({}).sources).toHaveLength(1);
    expect(paper({}, { temperatureC: 14 }).sources.length).toBeGreaterThan(1);
    const done = (more: Partial<ProcessInput>): readonly unknown[] =>
      paper({}, more).cues.map((cue) => cue.do);
    expect(paper({}).cues.map((cue) => cue.do)).toEqual([
      "pour-in",
      "agitate",
      "agitate",
      "light-on",
      "pour-out",
    ]);
    expect(done({ sensitization: "blue-sensitive" })).toContain("light-on");
    expect(done({ sensitization: "blue-sensitive" })).not.toContain("check-clear");
  });

  it("goes up by its length, as people time it; what is stated stays", () => {
    const washS = (temperatureC: number, durationS?: number): number =>
      stepOf(planProcess({ ...hut, baths: { fix: {}, wash: { temperatureC, durationS } } }), "wash")
        .durationS;
    // 30 min at 18.3 °C, twice at 10 °C: 30:51 and 1:12:28 before rounding.
    expect([washS(18), washS(8), washS(8, 777.7)]).toEqual([1860, 4500, 777.7]);
    expect(fixS({ baths: { fix: { clearingS: 61 } } })).toBe(125);
    expect(fixS({ baths: { fix: { clearingS: 301 } } })).toBe(660);
    expect(fixS({ baths: { fix: { durationS: 61.5 } } })).toBe(61.5);
  });
});

describe("a drum", () => {
  const drum: ProcessInput = { ...hut, vessel: "drum" };
  const baths = {
    preSoak: {},
    stop: {},
    fix: {},
    clearingAid: {},
    wash: { method: "soak" },
    wettingAgent: {},
  } as const;
  it("is turned without pause in every bath, and opened when the fixing bath is out", () => {
    // Common practice: a little bath in it wets only what lies below.
    const plan = planProcess({ ...drum, baths, sensitization: "panchromatic" });
    for (const step of plan.steps) {
      const turned = step.cues.filter((cue) => cue.do === "agitate");
      const end = step.cues.find((cue) => cue.do === "pour-out" || cue.do === "hang-up");
      expect(turned).toHaveLength(1);
      expect(turned[0]).toMatchObject({ atS: step.startS, movement: "turn" });
      expect(turned[0]!.durationS).toBe((end?.atS ?? step.endS) - step.startS);
    }
    const actions = plan.steps.flatMap(({ cues }) => cues.map((cue) => cue.do));
    for (const none of ["stand", "tap"]) expect(actions).not.toContain(none);
    const { cues, endS } = stepOf(plan, "fix");
    expect(cues.slice(-3).map((cue) => [cue.do, cue.atS])).toEqual([
      ["pour-out", endS - 10],
      ["light-on", endS - 1],
      ["check-clear", endS - 1],
    ]);
    expect(codes(plan.cautions)).not.toContain("drum-not-turned");
  });
  it("is turned in the rest of each filling of a long wash", () => {
    const { cues } = stepOf(
      planProcess({ ...drum, baths: { fix: {}, wash: { method: "changes", durationS: 300 } } }),
      "wash",
    );
    expect(cues.map((cue) => cue.do)).not.toContain("stand");
  });
  it.each<[ProcessInput["agitation"], boolean]>([
    ["stand", true],
    [{ everyS: 30 }, true],
    [{ everyS: 5 }, false],
    ["continuous", false],
  ])("that is moved %j is told of: %s", (agitation, told) => {
    const found = planProcess({ ...drum, agitation }).cautions.filter(
      ({ code }) => code === "drum-not-turned",
    );
    expect(found.map(({ severity, path }) => [severity, path])).toEqual(told ? [["warn", "/agitation"]] : []);
    expect(codes(planProcess({ ...hut, agitation }).cautions)).not.toContain("drum-not-turned");
  });
});

describe("each bath of a tank", () => {
  it("is poured out, the fixing bath into its bottle", () => {
    const { steps } = planProcess({
      ...hut,
      baths: { preSoak: {}, stop: {}, fix: {}, clearingAid: {}, wash: {} },
    });
    const texts = steps.slice(0, -1).map(({ cues }) => cues.at(-1)!);
    expect(texts.map((cue) => cue.do)).toEqual(Array.from({ length: 5 }, () => "pour-out"));
    expect(texts.map(({ text }) => text.includes("bottle"))).toEqual([false, false, false, true, false]);
  });
  it("is only poured out where it is as short as its draining", () => {
    const { steps } = planProcess({ ...hut, baths: { stop: { durationS: 4 }, fix: { durationS: 6 } } });
    expect(steps.slice(1).map((step) => told(step.cues).map((cue) => (cue as unknown[]).slice(1)))).toEqual([
      [
        ["pour-in", undefined],
        ["pour-out", 4],
      ],
      [
        ["pour-in", undefined],
        ["pour-out", 6],
      ],
    ]);
  });
});

describe("the stop bath", () => {
  const kind = (more: Partial<ProcessInput>): string | undefined =>
    planProcess({ ...hut, ...more }).materials.find(({ name }) => name.startsWith("stop"))?.name;
  it("is acid by itself, but water where acid does harm", () => {
    expect(kind({})).toBe("stop bath");
    // Gas in the gelatin: acid after carbonate on a soft emulsion. Sulphur: acid in plain hypo. From memory.
    expect(kind({ emulsion: "soft" })).toBe("stop water");
    expect(kind({ emulsion: "soft", carbonate: false })).toBe("stop bath");
    expect(kind({ emulsion: "hardened", carbonate: true })).toBe("stop bath");
    expect(kind({ baths: { stop: {}, fix: { kind: "plain" } } })).toBe("stop water");
    expect(kind({ emulsion: "soft", baths: { stop: { kind: "acid" } } })).toBe("stop bath");
    expect(kind({ baths: {} })).toBeUndefined();
  });
  // Plates are coated soft, and few makers hardened them: common practice.
  it("takes a plate as soft unless it is said to be hardened", () => {
    const plate = { material: "plate" } as const;
    expect(kind(plate)).toBe("stop water");
    expect(kind({ ...plate, carbonate: true })).toBe("stop water");
    expect(kind({ ...plate, carbonate: false })).toBe("stop bath");
    expect(kind({ ...plate, emulsion: "hardened" })).toBe("stop bath");
    expect(kind({ material: "paper", carbonate: true })).toBe("stop bath");
    const warm = (more: Partial<ProcessInput>): unknown =>
      planProcess({ ...hut, temperatureC: 26, ...more }).cautions.map(({ code, severity }) => [
        severity,
        code,
      ]);
    expect(warm(plate)).toContainEqual(["stop", "soft-emulsion-warm"]);
    expect(warm({ ...plate, emulsion: "hardened" })).not.toContainEqual(["stop", "soft-emulsion-warm"]);
    expect(warm({})).not.toContainEqual(["stop", "soft-emulsion-warm"]);
    const acid = (more: Partial<ProcessInput>): readonly string[] =>
      codes(planProcess({ ...hut, baths: { stop: { kind: "acid" }, fix: {}, wash: {} }, ...more }).cautions);
    expect(acid({ ...plate, carbonate: true })).toContain("acid-stop-blisters");
    expect(acid({ ...plate, emulsion: "hardened", carbonate: true })).not.toContain("acid-stop-blisters");
    expect(refusal(() => planProcess({ ...hut, ...plate, emulsion: anyOf(null) }))).toBe(
      "RangeError planProcess /input/emulsion not-one-of",
    );
  });
  it("asks a brew whether it holds carbonate", () => {
    const brewed = (
      ingredient: "soda-anhydrous" | "baking-soda" | "borax",
      more: Partial<ProcessInput> = {},
    ) =>
      kind({
        material: "plate",
        developer: {
          brew: {
            volumeMl: 500,
            ingredients: [
              { ingredient, massG: 12 },
              { ingredient: "instant-coffee", massG: 20 },
            ],
          },
        },
        ...more,
      });
    expect(brewed("soda-anhydrous")).toBe("stop water");
    expect(brewed("baking-soda")).toBe("stop water");
    expect(brewed("borax")).toBe("stop bath");
    // What the brew holds counts, whatever else is said; what is said besides counts too.
    expect(brewed("soda-anhydrous", { carbonate: false })).toBe("stop water");
    expect(brewed("borax", { carbonate: true })).toBe("stop water");
    expect(brewed("soda-anhydrous", { emulsion: "hardened" })).toBe("stop bath");
    // Neither a developer without a brew nor what is no brew says anything.
    expect(kind({ emulsion: "soft", carbonate: false, developer: { usedCm2PerL: 1 } })).toBe("stop bath");
    expect(refusal(() => planProcess(anyOf({ ...hut, developer: { brew: 5 } })))).toBe(
      "TypeError planProcess /input/developer/brew wrong-type",
    );
    expect(refusal(() => planProcess(anyOf({ ...hut, developer: 5 })))).toBe(
      "TypeError planProcess /input/developer wrong-type",
    );
  });
});

describe("gas from an acid stop", () => {
  // Acid makes gas of carbonate, and a closed vessel holds it: common practice.
  const said = (more: Partial<ProcessInput>): boolean =>
    codes(planProcess({ ...hut, ...more }).cautions).includes("stop-gas");
  it("is told of a closed vessel after a developer that is known to hold soda", () => {
    expect(said({ carbonate: true })).toBe(true);
    expect(said({ vessel: "drum", carbonate: true })).toBe(true);
    expect(said({ vessel: "tray", carbonate: true })).toBe(false);
    expect(said({})).toBe(false);
    expect(said({ carbonate: true, baths: { stop: { kind: "water" }, fix: {}, wash: {} } })).toBe(false);
    expect(said({ carbonate: true, baths: { fix: {}, wash: {} } })).toBe(false);
  });
});

describe("the wash", () => {
  const wash = (setting: object, more: Partial<ProcessInput> = {}, others: ProcessInput["baths"] = {}) =>
    stepOf(planProcess({ ...hut, ...more, baths: { ...others, wash: setting } }), "wash");
  const of = (step: ProcessStep): readonly unknown[] =>
    bare(step).map((cue) => Object.values(cue) as unknown);

  it("takes longer in the cold", () => {
    // US War Department, TM 11-2323, sec. 33 d: twice at 50 °F, four times at 35 °F (its figures round to 1.7
    // °C).
    expect(wash({}, { temperatureC: 10 }).durationS).toBeCloseTo(3600, 9);
    expect(wash({}, { temperatureC: 5 / 3 }).durationS).toBeCloseTo(7200, 9);
    expect(wash({}, { temperatureC: 18.4 }).durationS).toBe(1800);
    expect(wash({ durationS: 600 }, { temperatureC: 10 }).durationS).toBe(600);
  });

  it("takes longer after plain hypo, and longest for fibre paper", () => {
    // An hour after plain hypo: common practice with plates (from memory).
    expect(wash({}, {}, { fix: { kind: "plain" } }).durationS).toBe(3600);
    expect(wash({}, {}, { fix: { kind: "plain" }, clearingAid: {} }).durationS).toBe(600);
    expect(wash({}, {}, { fix: {}, clearingAid: {} }).durationS).toBe(300);
    // An hour for fibre, 20 min after a clearing aid, 2 to 4 min for a resin coat: makers' paper sheets (from
    // memory).
    const paper = { material: "paper" } as const;
    expect(wash({}, paper).durationS).toBe(3600);
    expect(wash({}, paper, { fix: { kind: "plain" } }).durationS).toBe(3600);
    expect(wash({}, paper, { clearingAid: {} }).durationS).toBe(1200);
    expect(wash({}, { ...paper, paperBase: "resin-coated" }).durationS).toBe(240);
    expect(wash({}, { material: "plate" }).durationS).toBe(1800);
    expect(wash({}, {}, { fix: { kind: "plain" } }).sources.at(-1)).toContain("plain hypo");
  });

  it("by soaking changes the water every three minutes", () => {
    // US Army, subcourse SS05098, p. 24: 30 min, the water changed every 3 min.
    const soak = wash({ method: "soak" });
    expect(of(soak).slice(0, 3)).toEqual([
      [0, "fill"],
      [0, 1800, "stand"],
      [180, "change-water"],
    ]);
    expect(soak.cues.filter((cue) => cue.do === "change-water").map(({ atS }) => atS - soak.startS)).toEqual([
      180, 360, 540, 720, 900, 1080, 1260, 1440, 1620,
    ]);
    expect(wash({ method: "soak" }, {}, { clearingAid: {} })).toMatchObject({ durationS: 540 });
  });

  it("by counted inversions fills three times", () => {
    // Ilford/Harman, film technical sheets (from memory): fillings of 5, 10 and 20 inversions.
    expect(wash({ method: "changes" })).toMatchObject({ durationS: 130 });
    expect(of(wash({ method: "changes" }))).toEqual([
      [0, "fill"],
      [10, 10, "agitate", "invert", 5],
      [20, 10, "pour-out"],
      [30, "fill"],
      [40, 20, "agitate", "invert", 10],
      [60, 10, "pour-out"],
      [70, "fill"],
      [80, 40, "agitate", "invert", 20],
      [120, 10, "pour-out"],
    ]);
    // A longer one leaves the water longer, a shorter one does all of it faster.
    expect(of(wash({ method: "changes", durationS: 260 })).slice(0, 5)).toEqual([
      [0, "fill"],
      [10, 10, "agitate", "invert", 5],
      [20, 30, "stand"],
      [50, 10, "pour-out"],
      [60, "fill"],
    ]);
    expect(of(wash({ method: "changes", durationS: 65 })).slice(0, 3)).toEqual([
      [0, "fill"],
      [5, 5, "agitate", "invert", 5],
      [10, 5, "pour-out"],
    ]);
    expect(wash({ method: "changes" }).sources[0]).toContain("5, 10 and 20 inversions");
  });
});

describe("what to have ready", () => {
  it("is counted", () => {
    const baths = {
      preSoak: {},
      stop: { dilution: "1+19" },
      fix: { dilution: { stockParts: 1, waterParts: 4 } },
      clearingAid: {},
      wash: { method: "soak" },
      wettingAgent: {},
    } as const;
    expect(planProcess({ ...hut, dilution: "2+1+7", baths }).materials).toEqual([
      {
        name: "developer",
        volumeMl: 500,
        dilution: "2+1+7",
        stockMl: 150,
        waterMl: 350,
        stocksMl: [100, 50],
      },
      { name: "pre-soak water", volumeMl: 500 },
      { name: "stop bath", volumeMl: 500, dilution: "1+19", stockMl: 25, waterMl: 475 },
      { name: "fixing bath", volumeMl: 500, dilution: "1+4", stockMl: 100, waterMl: 400 },
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

  it("has no volumes where the input has none", () => {
    const { volumeMl, ...rest } = hut;
    expect(volumeMl).toBe(500);
    expect(planProcess({ ...rest, dilution: "1+9", baths: { wash: {} } }).materials).toEqual([
      { name: "developer", dilution: "1+9" },
      { name: "wash water" },
    ]);
  });
});

describe("rounding", () => {
  it("goes by the length of each step, once", () => {
    // 11:43 in steps of 15 s is 11:45; fixing, washing and the look for clearing go up.
    const plan = planProcess({
      ...hut,
      timeS: 703,
      stepS: 15,
      rest: 50,
      baths: {
        preSoak: { durationS: 4 },
        stop: {},
        fix: { clearingS: 41, times: 2 },
        wash: { durationS: 601 },
      },
    });
    expect(plan.steps.map(({ name, startS, durationS }) => [name, startS, durationS])).toEqual([
      ["rest", 0, 45],
      ["pre-soak", 45, 15],
      ["develop", 60, 705],
      ["stop", 765, 30],
      ["fix", 795, 90],
      ["wash", 885, 615],
    ]);
    expect(plan.totalS).toBe(1500);
    expect(stepOf(plan, "develop").cues.at(-1)!.atS).toBe(60 + 705 - 10);
    expect(stepOf(plan, "fix").cues.find((cue) => cue.do === "check-clear")).toMatchObject({
      atS: 795 + 45,
      data: { clearingS: 41 },
    });
    expect(plan.handling.stepS).toBe(15);
  });

  it("adds no step for what a product loses", () => {
    const fixed = planProcess({ ...hut, stepS: 0.1, baths: { fix: { clearingS: 20.1, times: 3 } } });
    expect(stepOf(fixed, "fix").durationS).toBe(60.3);
    expect(stepOf(planProcess({ ...hut, timeS: 12, stepS: 60, drainS: 0 }), "develop").durationS).toBe(60);
  });
});

describe("a plan of an answer", () => {
  const known = { timeS: 510, temperatureC: 20 };
  it("takes its time and does not repeat its cautions", () => {
    const { timeS, ...rest } = hut;
    const answer = compensate(known, { temperatureC: 14 });
    expect(codes(answer.cautions)).toContain("temperature-unusual");
    const plan = planProcess({ ...rest, temperatureC: 14, answer });
    expect(stepOf(plan, "develop").durationS).toBe(answer.timeS);
    expect(codes(plan.cautions)).not.toContain("temperature-unusual");
    expect(codes(planProcess({ ...hut, temperatureC: 14 }).cautions)).toContain("temperature-unusual");
    expect(plan.timeRefused).toBe(false);
    expect(timeS).toBe(510);
  });

  it("says when the answer is refused", () => {
    const { timeS, ...rest } = hut;
    const answer = compensate({ ...known, hydroquinone: true }, { temperatureC: 11 });
    const plan = planProcess({ ...rest, temperatureC: 11, answer });
    expect(plan.timeRefused).toBe(true);
    expect(timeS).toBe(510);
  });
});

describe("a plan of an answer that says how", () => {
  const known = { timeS: 600, temperatureC: 20, agitation: { everyS: 60 }, dilution: "1+9" } as const;
  const today = { temperatureC: 18, agitation: { everyS: 30 }, dilution: "1+14" } as const;
  const answer = compensate(known, today);

  it("takes temperature, agitation and dilution from it", () => {
    const plan = planProcess({ vessel: "tank", answer, volumeMl: 300 });
    expect(plan.handling.agitation).toEqual({ everyS: 30 });
    expect(stepOf(plan, "develop").temperatureC).toBe(18);
    expect(plan.materials[0]).toMatchObject({ name: "developer", dilution: "1+14", stockMl: 20 });
    expect(codes(plan.cautions)).not.toContain("answer-differs");
  });

  it("takes the known side where today is as it was", () => {
    const same = compensate(known, { agitation: { everyS: 60 } });
    const plan = planProcess({ vessel: "tray", answer: same });
    expect(stepOf(plan, "develop").temperatureC).toBe(20);
    expect(plan.handling.agitation).toEqual({ everyS: 60 });
  });

  it.each([
    ["a drift", { startC: 22, ambientC: 18, timeConstantS: 3000 }, 22],
    [
      "a log",
      [
        { timeS: 0, temperatureC: 21 },
        { timeS: 300, temperatureC: 20 },
      ],
      21,
    ],
  ])("is at the temperature at pour-in of %s", (_, temperatureC, startC) => {
    const plan = planProcess({ vessel: "tank", answer: compensate(known, { temperatureC }) });
    expect(stepOf(plan, "develop").temperatureC).toBe(startC);
  });

  it("says where the input has another", () => {
    const planned = { temperatureC: 25, agitation: "continuous", dilution: "1+9" } as const;
    const plan = planProcess({ vessel: "tank", answer, ...planned });
    expect(plan.handling.agitation).toBe("continuous");
    expect(stepOf(plan, "develop").temperatureC).toBe(25);
    const differing = plan.cautions.filter(({ code }) => code === "answer-differs");
    expect(differing.map(({ severity, path, data }) => [severity, path, data])).toEqual([
      ["warn", "/temperatureC", { cause: "temperature", answered: 18, planned: 25 }],
      ["warn", "/dilution", { cause: "dilution", answered: "1+14", planned: "1+9" }],
      ["warn", "/agitation", { cause: "agitation", answered: 30, planned: "continuous" }],
    ]);
  });

  it("takes what is written otherwise for the same", () => {
    const plan = planProcess({
      vessel: "tank",
      answer,
      temperatureC: 18.04,
      agitation: { everyS: 30 },
      dilution: { stockParts: 2, waterParts: 28 },
    });
    expect(codes(plan.cautions)).not.toContain("answer-differs");
  });

  it("has the vessel's habit where the answer is silent, and no time without a temperature", () => {
    const silent = compensate({ timeS: 600, temperatureC: 20 }, {});
    expect(planProcess({ vessel: "tank", answer: silent }).handling.agitation).toEqual({ everyS: 60 });
    const { factors, ...rowless } = silent;
    expect(factors.length).toBe(2);
    for (const input of [
      { vessel: "tank", timeS: 600 },
      { vessel: "tank", answer: rowless },
    ])
      expect(() => planProcess(anyOf(input))).toThrow(
        expect.objectContaining({ code: "missing", path: "/input/temperatureC" }),
      );
  });
});

describe("a field that is not read", () => {
  it("is named with its path", () => {
    const plan = planProcess(
      anyOf({
        ...hut,
        "agi/tation": 1,
        "baths": {
          fix: { "clearingS": 30, "times": 2, "ti~mes": 3 },
          wash: {},
          stop: {},
          preSoak: undefined,
        },
      }),
    );
    expect(plan.cautions.map(({ code, severity, path }) => [code, severity, path])).toEqual([
      ["unknown-field", "warn", "/agi~1tation"],
      ["unknown-field", "warn", "/baths/fix/ti~0mes"],
    ]);
  });

  it("is not a documented one", () => {
    const full: ProcessInput = {
      ...hut,
      movement: "turn",
      pieces: 2,
      startTemperatureC: 20,
      topUpMl: 50,
      agitation: "stand",
      drainS: 5,
      rest: true,
      dilution: "1+1",
      sensitization: "panchromatic",
      areaCm2: 100,
      material: "film",
      paperBase: "fibre",
      iodideRich: false,
      emulsion: "hardened",
      carbonate: false,
      maxStepC: 2,
      stepS: 5,
      baths: {
        stop: { kind: "acid", durationS: 30, temperatureC: 20, dilution: "1+9" },
        fix: {
          kind: "rapid",
          clearingS: 30,
          clearingAtC: 20,
          freshClearingS: 30,
          times: 2,
          usedCm2PerL: 0,
          capacityCm2PerL: 9000,
        },
        wash: { method: "running" },
      },
    };
    expect(planProcess(full).cautions).toEqual([]);
    const blank = Object.fromEntries(Object.keys(full).map((field) => [field, undefined]));
    const needed = { vessel: "tank", timeS: 510, temperatureC: 20 } as const;
    expect(planProcess({ ...blank, ...needed })).toEqual(planProcess(needed));
  });
});

describe("planProcess refuses", () => {
  const { timeS, ...untimed } = hut;
  const answer = { timeS: 500, cautions: [] };
  const fix = (one: object): object => ({ ...hut, baths: { fix: one } });
  it.each<[string, unknown, string]>([
    ["nothing", null, "TypeError planProcess /input missing"],
    ["another vessel", { ...hut, vessel: "dish" }, "RangeError planProcess /input/vessel not-one-of"],
    ["another movement", { ...hut, movement: "rock" }, "RangeError planProcess /input/movement not-one-of"],
    ["no piece", { ...hut, pieces: 0 }, "RangeError planProcess /input/pieces out-of-range"],
    ["half a piece", { ...hut, pieces: 1.5 }, "TypeError planProcess /input/pieces wrong-type"],
    ["no time", { ...hut, timeS: 0 }, "RangeError planProcess /input/timeS out-of-range"],
    ["neither time nor answer", untimed, "TypeError planProcess /input/timeS missing"],
    ["both", { ...hut, answer }, "RangeError planProcess /input/timeS out-of-range"],
    ["an answer of text", { ...untimed, answer: "9:00" }, "TypeError planProcess /input/answer wrong-type"],
    [
      "an answer without a time",
      { ...untimed, answer: { cautions: [] } },
      "TypeError planProcess /input/answer/timeS missing",
    ],
    [
      "an answer without cautions",
      { ...untimed, answer: { timeS, lowS: timeS, highS: timeS } },
      "TypeError planProcess /input/answer/cautions missing",
    ],
    [
      "an odd caution",
      { ...untimed, answer: { timeS, lowS: timeS, highS: timeS, cautions: [1] } },
      "TypeError planProcess /input/answer/cautions/0 wrong-type",
    ],
    ["steam", { ...hut, temperatureC: 101 }, "RangeError planProcess /input/temperatureC out-of-range"],
    ["no volume", { ...hut, volumeMl: 0 }, "RangeError planProcess /input/volumeMl out-of-range"],
    [
      "a top-up above the volume",
      { ...hut, topUpMl: 501 },
      "RangeError planProcess /input/topUpMl out-of-range",
    ],
    [
      "a start as steam",
      { ...hut, startTemperatureC: 101 },
      "RangeError planProcess /input/startTemperatureC out-of-range",
    ],
    [
      "other light",
      { ...hut, sensitization: "red" },
      "RangeError planProcess /input/sensitization not-one-of",
    ],
    ["other agitation", { ...hut, agitation: "wild" }, "RangeError planProcess /input/agitation unreadable"],
    // null is what JSON makes of NaN.
    ["agitation of null", { ...hut, agitation: null }, "TypeError planProcess /input/agitation missing"],
    ["draining for ever", { ...hut, drainS: 601 }, "RangeError planProcess /input/drainS out-of-range"],
    ["draining of null", { ...hut, drainS: null }, "TypeError planProcess /input/drainS missing"],
    ["a rest in words", { ...hut, rest: "long" }, "TypeError planProcess /input/rest wrong-type"],
    ["a rest before", { ...hut, rest: -1 }, "RangeError planProcess /input/rest out-of-range"],
    ["no step", { ...hut, stepS: 0 }, "RangeError planProcess /input/stepS out-of-range"],
    ["iodide in words", { ...hut, iodideRich: "yes" }, "TypeError planProcess /input/iodideRich wrong-type"],
    ["carbonate in words", { ...hut, carbonate: "yes" }, "TypeError planProcess /input/carbonate wrong-type"],
    ["other material", { ...hut, material: "tin" }, "RangeError planProcess /input/material not-one-of"],
    ["other paper", { ...hut, paperBase: "rag" }, "RangeError planProcess /input/paperBase not-one-of"],
    ["another emulsion", { ...hut, emulsion: "Soft" }, "RangeError planProcess /input/emulsion not-one-of"],
    ["half a dilution", { ...hut, dilution: "9" }, "RangeError planProcess /input/dilution unreadable"],
    ["baths of 5", { ...hut, baths: 5 }, "TypeError planProcess /input/baths wrong-type"],
    ["a bath of null", { ...hut, baths: { stop: null } }, "TypeError planProcess /input/baths/stop missing"],
    [
      "a bath of true",
      { ...hut, baths: { stop: true } },
      "TypeError planProcess /input/baths/stop wrong-type",
    ],
    ["another bath", { ...hut, baths: { halt: {} } }, "RangeError planProcess /input/baths/halt not-one-of"],
    [
      "another stop",
      { ...hut, baths: { stop: { kind: "base" } } },
      "RangeError planProcess /input/baths/stop/kind not-one-of",
    ],
    [
      "a stop of null",
      { ...hut, baths: { stop: { kind: null } } },
      "TypeError planProcess /input/baths/stop/kind missing",
    ],
    [
      "a stop of days",
      { ...hut, baths: { stop: { durationS: 86401 } } },
      "RangeError planProcess /input/baths/stop/durationS out-of-range",
    ],
    [
      "a stop of ice",
      { ...hut, baths: { stop: { temperatureC: -1 } } },
      "RangeError planProcess /input/baths/stop/temperatureC out-of-range",
    ],
    [
      "a colon",
      { ...hut, baths: { stop: { dilution: "1:9" } } },
      "RangeError planProcess /input/baths/stop/dilution ambiguous",
    ],
    ["another fixer", fix({ kind: "salt" }), "RangeError planProcess /input/baths/fix/kind not-one-of"],
    ["eleven times", fix({ times: 11 }), "RangeError planProcess /input/baths/fix/times out-of-range"],
    ["times of null", fix({ times: null }), "TypeError planProcess /input/baths/fix/times missing"],
    [
      "slow clearing",
      fix({ clearingS: 7201 }),
      "RangeError planProcess /input/baths/fix/clearingS out-of-range",
    ],
    [
      "clearing in the heat",
      fix({ clearingS: 30, clearingAtC: 41 }),
      "RangeError planProcess /input/baths/fix/clearingAtC out-of-range",
    ],
    [
      "a temperature in words",
      fix({ temperatureC: "20" }),
      "TypeError planProcess /input/baths/fix/temperatureC wrong-type",
    ],
    [
      "fixing for no time",
      fix({ durationS: 0 }),
      "RangeError planProcess /input/baths/fix/durationS out-of-range",
    ],
    ["use of null", fix({ usedCm2PerL: null }), "TypeError planProcess /input/baths/fix/usedCm2PerL missing"],
    [
      "another wash",
      { ...hut, baths: { wash: { method: "sea" } } },
      "RangeError planProcess /input/baths/wash/method not-one-of",
    ],
    [
      "a wash backwards",
      { ...hut, baths: { wash: { durationS: -1 } } },
      "RangeError planProcess /input/baths/wash/durationS out-of-range",
    ],
    [
      "a dilution of 5",
      { ...hut, baths: { wettingAgent: { dilution: 5 } } },
      "TypeError planProcess /input/baths/wettingAgent/dilution wrong-type",
    ],
    ["no step of °C", { ...hut, maxStepC: 0 }, "RangeError planProcess /input/maxStepC out-of-range"],
    ["no area", { ...hut, areaCm2: 0 }, "RangeError planProcess /input/areaCm2 out-of-range"],
    [
      "agitations without end",
      { ...hut, timeS: 1e6, agitation: { everyS: 6 } },
      "RangeError planProcess /input/agitation/everyS out-of-range",
    ],
  ])("%s", (_, input, fault) => {
    expect(refusal(() => planProcess(anyOf(input)))).toBe(fault);
  });
});

describe("the baths of a plan", () => {
  it("are refused by name, with the name that is near; fields of one's own are let be", () => {
    const plan = (baths: object) => planProcess({ ...hut, baths: anyOf(baths) });
    expect(caught(() => plan({ stopp: {} }))).toMatchObject({
      path: "/input/baths/stopp",
      expected: { must: "known-field", hint: "stop" },
    });
    expect(plan({ "fix": {}, "x-note": "mine" }).steps).toEqual(plan({ fix: {} }).steps);
  });
});

describe("planProcess with describePlan", () => {
  const fixed = { vessel: "tank", temperatureC: 20, volumeMl: 500 } as const;
  it("reads a plan of as many agitations as it makes", () => {
    const plan = planProcess({ ...fixed, timeS: 85000 * 11, agitation: { everyS: 11 } });
    expect(plan.steps.find(({ name }) => name === "develop")?.cues.length).toBeGreaterThan(84000);
    expect(describePlan(plan).join()).toContain("Every 0:11 until 259:42:58.");
    expect(() => planProcess({ ...fixed, timeS: 1e6, agitation: { everyS: 11 } })).toThrow(
      /^planProcess: input\.agitation\.everyS must be such that \d+ s hold at most 90000 agitations, got 11$/,
    );
  });
});

describe("planProcess and bathCautions", () => {
  it("refuse an unknown emulsion", () => {
    const baths = { fix: {}, wash: {} };
    const plan = { vessel: "tank", timeS: 510, temperatureC: 20, volumeMl: 500, baths, emulsion: "Soft" };
    expect(thrown(() => planProcess(anyOf(plan)))).toBe(
      'RangeError: planProcess: input.emulsion must be "soft" or "hardened", got "Soft"',
    );
    expect(thrown(() => bathCautions(anyOf({ temperatureC: 20, baths, emulsion: 5 })))).toBe(
      'RangeError: bathCautions: question.emulsion must be "soft" or "hardened", got 5',
    );
  });
});
