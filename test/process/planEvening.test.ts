import { describe, expect, it } from "vitest";
import {
  compensate,
  planEvening,
  type Caution,
  type EveningInput,
  type EveningPlan,
  type EveningPlate,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";
import { codes, refusal, stepOf } from "./helpers.js";

// Invented: plates of 9 × 12 cm from one bath of half a litre, in a hut.
const plate = { areaCm2: 108 };
const knowledge = { age: { kind: "half-life", halfLifeH: 8 } } as const;
const hut: EveningInput = {
  baseline: { timeS: 900, temperatureC: 20 },
  conditions: {},
  knowledge,
  plates: [plate, plate, plate, plate],
  vessel: "tank",
  material: "plate",
  volumeMl: 500,
  baths: { stop: {}, fix: { clearingS: 40, times: 2 }, wash: { durationS: 600 } },
};

describe("an evening", () => {
  it("uses and ages both baths from plate to plate", () => {
    const { plates, stopped, totalS } = planEvening(hut);
    expect(stopped).toBeUndefined();
    expect(plates.map((one) => [one.plate, one.usedCm2PerL, one.fixUsedCm2PerL])).toEqual([
      [0, 0, 0],
      [1, 216, 216],
      [2, 432, 432],
      [3, 648, 648],
    ]);
    let startS = 0;
    for (const one of plates) {
      expect(one.startS).toBe(startS);
      expect(one.ageH).toBeCloseTo(startS / 3600, 12);
      startS += one.plan.totalS;
      const { usedCm2PerL, ageH } = one;
      expect(one.answer).toEqual(compensate(hut.baseline, { usedCm2PerL, ageH }, knowledge));
      expect(stepOf(one.plan, "develop").durationS).toBe(one.answer.timeS);
    }
    expect(totalS).toBe(startS);
    const times = plates.map(({ answer }) => answer.timeS);
    expect([...times].sort((a, b) => a - b)).toEqual(times);
  });

  // 250 ml a roll (common practice), plates at 7.5 g/m² of silver against 5 (from memory): 3 plates in a cup.
  it("says where twelve plates in a cup are too many for the developer", () => {
    const { plates, stopped } = planEvening({
      ...hut,
      vessel: "tray",
      knowledge: {},
      volumeMl: 250,
      plates: Array.from({ length: 12 }, () => plate),
    });
    const said = plates.map(({ plan }) => codes(plan.cautions).find((code) => code.startsWith("bath-")));
    expect(said).toEqual([
      ...[undefined, undefined, undefined, "bath-capacity-reached"],
      ...Array.from({ length: 6 }, () => "bath-past-capacity"),
    ]);
    // Ten plates are 3.14 times the estimate, past the upper end of its 90 % range.
    expect(stopped).toMatchObject({ plate: 10, usedCm2PerL: 4320 });
    const own = planEvening({ ...hut, volumeMl: 250, developer: { capacityCm2PerL: 900 } });
    expect(own.plates.map(({ plan }) => codes(plan.cautions).includes("bath-capacity-reached"))).toEqual([
      ...[false, false, true],
      ...own.plates.slice(3).map(() => false),
    ]);
  });

  it("ages by what comes before pouring in, and rests once", () => {
    const baths = { ...hut.baths, preSoak: { durationS: 120 } };
    const { plates } = planEvening({ ...hut, baths, rest: 300, conditions: { ageH: 2 }, betweenS: 60 });
    expect(plates.map(({ plan }) => plan.steps[0]!.name)).toEqual([
      "rest",
      "pre-soak",
      "pre-soak",
      "pre-soak",
    ]);
    expect(plates[0]!.ageH).toBeCloseTo(2 + 420 / 3600, 12);
    expect(plates[1]!.startS).toBe(plates[0]!.plan.totalS + 60);
    expect(plates[1]!.ageH).toBeCloseTo(2 + (plates[1]!.startS + 120) / 3600, 12);
  });

  it("frees a tray when the plate has left the fixing bath", () => {
    const { plates, totalS } = planEvening({ ...hut, vessel: "tray", betweenS: 30 });
    expect(plates[1]!.startS).toBe(stepOf(plates[0]!.plan, "wash").startS + 30);
    expect(totalS).toBe(plates[3]!.startS + plates[3]!.plan.totalS);
    // A plate is rocked.
    expect(plates[0]!.plan.handling.movement).toBe("rock");
    const unwashed = planEvening({ ...hut, vessel: "tray", baths: { fix: { clearingS: 40, times: 2 } } });
    expect(unwashed.plates[1]!.startS).toBe(unwashed.plates[0]!.plan.totalS);
  });

  it("tops up before each plate but the first", () => {
    const { plates } = planEvening({ ...hut, topUpMl: 50 });
    expect(plates.map(({ usedCm2PerL }) => usedCm2PerL)).toEqual([
      0,
      expect.closeTo(194.4, 9),
      expect.closeTo(369.36, 9),
      expect.closeTo(526.824, 9),
    ]);
    expect(plates.map(({ plan }) => plan.steps[0]!.cues[0]!.do)).toEqual([
      "pour-in",
      "top-up",
      "top-up",
      "top-up",
    ]);
    // The fixing bath is not topped up.
    expect(plates[3]!.fixUsedCm2PerL).toBe(648);
  });

  it("takes a thousand plates at most", () => {
    const plates = Array.from({ length: 1001 }, () => plate);
    expect(refusal(() => planEvening({ ...hut, plates }))).toBe(
      "RangeError planEvening /input/plates out-of-range",
    );
  });

  it("stops at the first plate with a stop, in the developer or in the fixing bath", () => {
    const baths = { fix: { clearingS: 40, times: 2, usedCm2PerL: 1000, capacityCm2PerL: 1300 }, wash: {} };
    const full = planEvening({ ...hut, baths });
    expect(full.plates).toHaveLength(2);
    expect(full.stopped).toMatchObject({ plate: 2, fixUsedCm2PerL: 1432 });
    expect(codes(full.stopped!.plan.cautions)).toContain("fixer-past-capacity");
    // The plate before is the one that takes it past.
    expect(codes(full.plates[1]!.plan.cautions)).toContain("fixer-capacity-reached");
    const dead = planEvening({ ...hut, knowledge: { age: { kind: "life", lifeH: 0.5 } } });
    expect(dead.plates).toHaveLength(1);
    expect(dead.stopped!.plan.timeRefused).toBe(true);
    expect(dead.totalS).toBe(dead.plates[0]!.startS + dead.plates[0]!.plan.totalS);
    const never = planEvening({ ...hut, conditions: { temperatureC: 68 } });
    expect([never.plates, never.stopped!.plate, never.totalS]).toEqual([[], 0, 0]);
  });

  it("carries what is known to each plate", () => {
    const evening = planEvening({
      ...hut,
      baseline: {
        timeS: 900,
        temperatureC: 18,
        dilution: "1+9",
        agitation: "continuous",
        emulsion: "soft",
        usedCm2PerL: 40,
        ageH: 1,
        gamma: 0.7,
      },
      conditions: { temperatureC: 17 },
      plates: [plate, { areaCm2: 54, conditions: { temperatureC: 16, gamma: 0.8 } }, plate],
      vessel: "tray",
      sensitization: "orthochromatic",
      stepS: 15,
    });
    const [first, second, third] = evening.plates;
    expect(first!.plan.handling).toMatchObject({ agitation: "continuous", stepS: 15 });
    expect(first!.plan.materials[0]).toMatchObject({ dilution: "1+9", volumeMl: 500 });
    expect(first!.plan.materials[1]!.name).toBe("stop water");
    expect(first).toMatchObject({ usedCm2PerL: 40 });
    expect(first!.ageH).toBeCloseTo(1, 12);
    expect(second).toMatchObject({ usedCm2PerL: 256 });
    expect(second!.answer.factors.map(({ cause }) => cause)).toContain("contrast");
    expect(second!.plan.steps[0]!.temperatureC).toBe(16);
    expect(third!.plan.steps[0]!.temperatureC).toBe(17);
    expect(third).toMatchObject({ usedCm2PerL: 364 });
  });

  it("takes plates as soft unless they are said to be hardened", () => {
    const warm = { ...hut, baseline: { timeS: 900, temperatureC: 20 }, conditions: { temperatureC: 25 } };
    const soft = planEvening(warm);
    expect(codes(soft.stopped!.answer.cautions)).toContain("soft-emulsion-warm");
    // A forecast that warms up tears it too: the answer knows what the plan's pour-in does not.
    const drift = { startC: 19, ambientC: 40, timeConstantS: 1500 };
    expect(planEvening({ ...hut, conditions: { temperatureC: drift } }).stopped?.plate).toBe(0);
    for (const hard of [
      { ...warm, emulsion: "hardened" as const },
      { ...warm, baseline: { ...warm.baseline, emulsion: "hardened" as const } },
      { ...warm, material: "film" as const },
    ]) {
      const evening = planEvening(hard);
      expect(evening.stopped).toBeUndefined();
      expect(evening.plates[0]!.plan.materials[1]!.name).toBe("stop bath");
    }
    expect(planEvening(hut).plates[0]!.plan.materials[1]!.name).toBe("stop water");
    for (const one of [
      { ...hut, baseline: { ...hut.baseline, emulsion: null } },
      { ...hut, emulsion: null },
    ])
      expect(refusal(() => planEvening(anyOf(one)))).toBe(
        "RangeError planEvening /input/emulsion not-one-of",
      );
  });

  it("takes the temperature at pour-in from a log or a drift", () => {
    const startC = (temperatureC: EveningInput["conditions"]["temperatureC"]): number =>
      planEvening({ ...hut, conditions: anyOf({ temperatureC }) }).plates[0]!.plan.steps[0]!.temperatureC;
    const log = [
      { timeS: 0, temperatureC: 19 },
      { timeS: 2000, temperatureC: 18 },
    ];
    expect(startC(log)).toBe(19);
    expect(startC({ startC: 19.5, ambientC: 14, timeConstantS: 5000 })).toBe(19.5);
  });

  it("names a field that is not read, in each plan", () => {
    const baths = { ...hut.baths, wash: {} };
    const { plates } = planEvening(anyOf({ ...hut, baths, iodidRich: true }));
    expect(plates[3]!.plan.cautions).toMatchObject([{ code: "unknown-field", path: "/iodidRich" }]);
  });

  it("has no fixing bath to use where none is planned", () => {
    expect(planEvening({ ...hut, baths: { stop: {} } }).plates[1]).not.toHaveProperty("fixUsedCm2PerL");
  });

  it("survives JSON and changes nothing that it was given", () => {
    const given = Object.freeze({ ...hut, plates: Object.freeze([Object.freeze(plate)]) });
    const evening = planEvening(given);
    expect(JSON.parse(JSON.stringify(evening))).toEqual(evening);
    expect(structuredClone(evening)).toEqual(evening);
  });

  it.each<[string, unknown, string]>([
    ["nothing", undefined, "TypeError planEvening /input missing"],
    ["no baseline", { ...hut, baseline: null }, "TypeError planEvening /input/baseline missing"],
    ["no conditions", { ...hut, conditions: 5 }, "TypeError planEvening /input/conditions wrong-type"],
    ["no volume", { ...hut, volumeMl: undefined }, "TypeError planEvening /input/volumeMl missing"],
    ["too large a top-up", { ...hut, topUpMl: 501 }, "RangeError planEvening /input/topUpMl out-of-range"],
    ["haste", { ...hut, betweenS: -1 }, "RangeError planEvening /input/betweenS out-of-range"],
    ["no plates", { ...hut, plates: [] }, "RangeError planEvening /input/plates empty"],
    ["a plate of text", { ...hut, plates: ["9x12"] }, "TypeError planEvening /input/plates/0 wrong-type"],
    [
      "a plate without area",
      { ...hut, plates: [plate, {}] },
      "TypeError planEvening /input/plates/1/areaCm2 missing",
    ],
    [
      "a plate of odd conditions",
      { ...hut, plates: [{ ...plate, conditions: 5 }] },
      "TypeError planEvening /input/plates/0/conditions wrong-type",
    ],
    [
      "use of null",
      { ...hut, conditions: { usedCm2PerL: null } },
      "TypeError planEvening /input/conditions/usedCm2PerL missing",
    ],
    [
      "an age below 0",
      { ...hut, baseline: { ...hut.baseline, ageH: -1 } },
      "RangeError planEvening /input/baseline/ageH out-of-range",
    ],
    [
      "what compensate refuses",
      { ...hut, baseline: { timeS: "15:00", temperatureC: 20 } },
      "TypeError planEvening /input/baseline/timeS wrong-type",
    ],
    [
      "a known time of 0",
      { ...hut, baseline: { timeS: 0, temperatureC: 20 } },
      "RangeError planEvening /input/baseline/timeS out-of-range",
    ],
    [
      "what the plan refuses",
      { ...hut, baths: { fix: { times: 11 } } },
      "RangeError planEvening /input/baths/fix/times out-of-range",
    ],
    ["another vessel", { ...hut, vessel: "dish" }, "RangeError planEvening /input/vessel not-one-of"],
  ])("refuses %s", (_, input, fault) => {
    expect(refusal(() => planEvening(anyOf(input)))).toBe(fault);
  });

  it("lets a fault of a caller's own object through", () => {
    const baseline = {
      temperatureC: 20,
      get timeS(): number {
        throw new Error("the probe fell off");
      },
    };
    expect(() => planEvening({ ...hut, baseline })).toThrow(new Error("the probe fell off"));
  });
});

// Invented: rolls in one tank of a litre, brought to 24 °C in a hut at 14 °C.
const roll = { areaCm2: 516.128 };
const drift = { startC: 24, ambientC: 14, timeConstantS: 3600 } as const;
const rolls: EveningInput = {
  baseline: { timeS: 480, temperatureC: 20 },
  conditions: { temperatureC: drift },
  plates: [roll, roll, roll],
  vessel: "tank",
  volumeMl: 1000,
};
/** Newton's cooling (I. Newton, Scala graduum caloris, 1701), by hand. */
const cooledC = (afterS: number, startC: number = drift.startC): number =>
  drift.ambientC + (startC - drift.ambientC) * Math.exp(-afterS / drift.timeConstantS);
const developC = ({ plan }: EveningPlate): number => stepOf(plan, "develop").temperatureC;
const cautionOf = ({ answer }: EveningPlate, code: string): Caution | undefined =>
  answer.cautions.find((one) => one.code === code);

describe("a bath that drifts from plate to plate", () => {
  it("goes on by Newton's law from the first pour-in", () => {
    const { plates } = planEvening({ ...rolls, rest: 300 });
    expect(plates).toHaveLength(3);
    for (const one of plates) {
      const pourInS = one.startS + stepOf(one.plan, "develop").startS;
      expect(developC(one)).toBeCloseTo(cooledC(pourInS - 300), 9);
      const startC = developC(one);
      const { usedCm2PerL, ageH } = one;
      const temperatureC = { ...drift, startC };
      const alone = compensate(rolls.baseline, { temperatureC, usedCm2PerL, ageH });
      expect(one.answer.timeS).toBeCloseTo(alone.timeS, 6);
    }
    expect(plates.map((one) => developC(one).toFixed(1))).toEqual(["24.0", "19.1", "16.4"]);
    const times = plates.map(({ answer }) => answer.timeS);
    expect([...times].sort((a, b) => a - b)).toEqual(times);
  });

  it("says where the bath is more than a degree away from its start", () => {
    const { plates } = planEvening(rolls);
    expect(plates.map((one) => cautionOf(one, "bath-drifted") !== undefined)).toEqual([false, true, true]);
    const fromStart = 24 - developC(plates[1]!);
    expect(cautionOf(plates[1]!, "bath-drifted")).toMatchObject({
      severity: "warn",
      path: "/conditions/temperatureC",
      quantity: "temperatureDifferenceC",
      limit: 1,
      actual: expect.closeTo(fromStart, 9),
      data: { fromC: 24, toC: developC(plates[1]!) },
    });
    const slow = { ...drift, timeConstantS: 1e6 };
    const still = planEvening({ ...rolls, conditions: { temperatureC: slow } });
    expect(still.plates.some((one) => cautionOf(one, "bath-drifted"))).toBe(false);
  });

  it("holds a steady bath, and asks to bring it to temperature before each plate", () => {
    const steady = planEvening({ ...rolls, conditions: { temperatureC: 22 }, startTemperatureC: 22 });
    const drifting = planEvening({ ...rolls, startTemperatureC: 24 });
    const tempered = ({ plates }: EveningPlan): readonly boolean[] =>
      plates.map(({ plan }) => plan.steps[0]!.cues.some((cue) => cue.do === "temper"));
    expect(steady.plates.map(developC)).toEqual([22, 22, 22]);
    expect(tempered(steady)).toEqual([true, true, true]);
    // A drift that goes on says that nobody touches the bath.
    expect(tempered(drifting)).toEqual([true, false, false]);
  });

  it("goes on from what a plate brings the bath to", () => {
    const plates = [roll, { ...roll, conditions: { temperatureC: 24 } }, roll];
    const steady = planEvening({ ...rolls, plates });
    const outS = steady.plates[1]!.startS + stepOf(steady.plates[1]!.plan, "develop").endS;
    expect(developC(steady.plates[1]!)).toBe(24);
    expect(cautionOf(steady.plates[1]!, "bath-drifted")).toBeUndefined();
    expect(developC(steady.plates[2]!)).toBeCloseTo(cooledC(steady.plates[2]!.startS - outS), 9);
    expect(cautionOf(steady.plates[2]!, "bath-drifted")).toMatchObject({
      path: "/plates/1/conditions/temperatureC",
    });
    const own = planEvening({
      ...rolls,
      conditions: {},
      plates: [roll, { ...roll, conditions: { temperatureC: { ...drift, startC: 22 } } }, roll],
    });
    expect(own.plates.slice(0, 2).map(developC)).toEqual([20, 22]);
    const sinceS = own.plates[2]!.startS - own.plates[1]!.startS;
    expect(developC(own.plates[2]!)).toBeCloseTo(cooledC(sinceS, 22), 9);
  });

  it("goes on along a log, and holds its last reading", () => {
    const log = [
      { timeS: 100, temperatureC: 22 },
      { timeS: 4100, temperatureC: 18 },
    ];
    const { plates } = planEvening({ ...rolls, conditions: { temperatureC: log } });
    const [first, second, third] = plates as [EveningPlate, EveningPlate, EveningPlate];
    expect(developC(first)).toBe(22);
    expect(developC(second)).toBeCloseTo(22 - second.startS / 1000, 9);
    expect(cautionOf(second, "log-held")).toBeUndefined();
    expect(developC(third)).toBe(18);
    expect(cautionOf(third, "log-held")).toMatchObject({
      severity: "warn",
      path: "/conditions/temperatureC",
      limit: 4100,
      actual: expect.closeTo(100 + third.startS + third.answer.timeS, 6),
    });
    // What a plate is brought to does not alter what was read.
    const warmed = [roll, { ...roll, conditions: { temperatureC: 22 } }, roll];
    const held = planEvening({ ...rolls, conditions: { temperatureC: log }, plates: warmed });
    expect(held.plates.map(developC)).toEqual([22, 22, 18]);
  });

  it("refuses a bath that freezes before a later plate, where it drifts", () => {
    const icy = { startC: 20, ambientC: -40, timeConstantS: 3000 };
    expect(refusal(() => planEvening({ ...rolls, conditions: { temperatureC: icy } }))).toBe(
      "RangeError planEvening /input/conditions/temperatureC out-of-range",
    );
    const own = { ...roll, conditions: { temperatureC: anyOf("20") } };
    expect(refusal(() => planEvening({ ...rolls, plates: [roll, own] }))).toBe(
      "TypeError planEvening /input/plates/1/conditions/temperatureC wrong-type",
    );
    const lost = { ...rolls, conditions: { temperatureC: anyOf(null) } };
    const warm = { ...roll, conditions: { temperatureC: 22 } };
    expect(refusal(() => planEvening({ ...lost, plates: [warm, roll] }))).toBe(
      "TypeError planEvening /input/conditions/temperatureC missing",
    );
  });
});

describe("what a plate says of itself", () => {
  it("names each field of it that is not read", () => {
    const plates = anyOf([
      { ...roll, timeS: 900, condition: { temperatureC: 18 } },
      { ...roll, conditions: { temprature: 18 } },
    ]);
    const evening = planEvening({ ...rolls, conditions: { temperatureC: 20 }, plates });
    const unread = evening.plates.map(({ answer, plan }) =>
      [...answer.cautions, ...plan.cautions]
        .filter(({ code }) => code === "unknown-field")
        .map(({ path }) => path),
    );
    expect(unread).toEqual([["/plates/0/timeS", "/plates/0/condition"], ["/plates/1/conditions/temprature"]]);
  });

  it("tells its name back", () => {
    const { plates } = planEvening({ ...rolls, plates: [{ ...roll, name: "summit" }, roll] });
    expect(plates.map(({ name }) => name)).toEqual(["summit", undefined]);
    expect(plates[1]).not.toHaveProperty("name");
  });

  it("takes its own known time, in the same bath", () => {
    const slow = { timeS: 700, temperatureC: 24, dilution: "1+4", hydroquinone: false } as const;
    const known = { timeS: 480, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } } as const;
    const evening = planEvening({
      ...rolls,
      baseline: known,
      conditions: {},
      plates: [roll, { ...roll, baseline: slow }],
    });
    const { answer, plan, usedCm2PerL, ageH } = evening.plates[1]!;
    const today = { temperatureC: 20, dilution: "1+9", usedCm2PerL, ageH };
    expect(answer.timeS).toBe(compensate(slow, today).timeS);
    expect(stepOf(plan, "develop").temperatureC).toBe(20);
    expect(plan.materials[0]).toMatchObject({ name: "developer", dilution: "1+9" });
    expect(plan.handling.agitation).toEqual({ everyS: 60 });
    const moved = { ...slow, agitation: "continuous" } as const;
    const tank = planEvening({
      ...rolls,
      baseline: known,
      conditions: {},
      plates: [{ ...roll, baseline: moved }],
    });
    const still = { ...today, agitation: known.agitation, usedCm2PerL: 0, ageH: 0 } as const;
    expect(tank.plates[0]!.answer.timeS).toBe(compensate(moved, still).timeS);
    // Only the known times that are a plate's own have their places there.
    const short = { ...slow, timeS: 40 };
    const odd = planEvening({
      ...rolls,
      baseline: { ...known, timeS: 41 },
      plates: [roll, { ...roll, baseline: short }],
    });
    expect(odd.plates.map((one) => cautionOf(one, "maybe-minutes")?.path)).toEqual([
      "/baseline/timeS",
      "/plates/1/baseline/timeS",
    ]);
    expect(
      refusal(() => planEvening({ ...rolls, plates: [{ ...roll, baseline: { ...slow, timeS: 0 } }] })),
    ).toBe("RangeError planEvening /input/plates/0/baseline/timeS out-of-range");
  });

  it("has the cautions of its plan in their places: what the evening counts is about the plate", () => {
    const paths = (more: Partial<EveningInput>, code: string): readonly (string | undefined)[] => {
      const { plates, stopped } = planEvening({ ...hut, knowledge: {}, ...more });
      return [...plates, ...(stopped === undefined ? [] : [stopped])]
        .map(({ answer, plan }) => [...answer.cautions, ...plan.cautions].find((one) => one.code === code))
        .filter((one) => one !== undefined)
        .map(({ path }) => path);
    };
    // Four rolls of 80 square inches, 516.128 cm², in 600 ml.
    const four = { material: "film", volumeMl: 600, plates: Array(4).fill({ areaCm2: 516.128 }) } as const;
    expect(paths(four, "bath-capacity-reached")).toEqual(["/plates/2/areaCm2"]);
    expect(paths(four, "bath-past-capacity")).toEqual(["/plates/3"]);
    const used = { ...four, conditions: { usedCm2PerL: 2500 } };
    expect(paths(used, "bath-past-capacity").slice(0, 2)).toEqual(["/conditions/usedCm2PerL", "/plates/1"]);
    const fix = { capacityCm2PerL: 800, usedCm2PerL: 100 };
    const fixed = { ...four, baths: { stop: {}, fix, wash: {} } };
    expect(paths(fixed, "fixer-capacity-reached")).toEqual(["/baths/fix/usedCm2PerL"]);
    expect(paths(fixed, "fixer-past-capacity")).toEqual(["/plates/1"]);
    const drum = {
      vessel: "drum",
      plates: [plate, { ...plate, conditions: { agitation: "stand" } }],
    } as const;
    const baseline = { ...hut.baseline, agitation: { everyS: 60 } };
    expect(paths({ ...drum, baseline }, "drum-not-turned")).toEqual([
      "/baseline/agitation",
      "/plates/1/conditions/agitation",
    ]);
  });

  it("takes its own material", () => {
    const cool = { ...rolls, conditions: { temperatureC: 20 } };
    const plates = [roll, { ...roll, material: "plate" }, { ...roll, material: "paper" }] as const;
    const evening = planEvening({ ...cool, plates });
    expect(evening.plates.map(({ material }) => material)).toEqual(["film", "plate", "paper"]);
    // A plate is soft, and gets water as its stop.
    expect(evening.plates.map(({ plan }) => plan.materials[1]!.name)).toEqual([
      "stop bath",
      "stop water",
      "stop bath",
    ]);
  });

  it.each([["usedCm2PerL"], ["ageH"]] as const)("refuses its own %s, which the evening counts", (field) => {
    const own = { ...roll, conditions: anyOf({ [field]: 3 }) };
    expect(refusal(() => planEvening({ ...rolls, plates: [roll, own] }))).toBe(
      `RangeError planEvening /input/plates/1/conditions/${field} out-of-range`,
    );
  });

  it.each<[string, object, string]>([
    ["a name that is no text", { name: 5 }, "TypeError planEvening /input/plates/0/name wrong-type"],
    ["another material", { material: "glass" }, "RangeError planEvening /input/plates/0/material not-one-of"],
    ["no known time", { baseline: 480 }, "TypeError planEvening /input/plates/0/baseline wrong-type"],
  ])("refuses %s", (_, own, fault) => {
    expect(refusal(() => planEvening({ ...rolls, plates: [anyOf({ ...roll, ...own })] }))).toBe(fault);
  });
});

describe("what the material of an evening is", () => {
  it("is film in a tank or drum, and a plate in a tray, unless it is said", () => {
    const materialIn = (vessel: EveningInput["vessel"], more: object = {}): string =>
      planEvening({ ...rolls, conditions: { temperatureC: 20 }, vessel, ...more }).plates[0]!.material;
    expect((["tank", "drum", "tray"] as const).map((vessel) => materialIn(vessel))).toEqual([
      "film",
      "film",
      "plate",
    ]);
    expect(materialIn("tray", { material: "paper" })).toBe("paper");
    expect(refusal(() => materialIn("tank", { material: null }))).toBe(
      "RangeError planEvening /input/material not-one-of",
    );
  });

  it("has one capacity in one answer", () => {
    const { plates, stopped } = planEvening({
      ...rolls,
      conditions: { temperatureC: 20 },
      plates: Array.from({ length: 8 }, () => roll),
    });
    expect(stopped).toBeUndefined();
    const said = plates.map(({ answer, plan }) => [...answer.cautions, ...plan.cautions]);
    expect(said.flatMap(codes)).not.toContain("bath-well-used");
    // 250 ml a roll (common practice): four rolls in a litre.
    const limits = said
      .flat()
      .filter(({ code }) => code === "bath-past-capacity" || code === "bath-capacity-reached")
      .map(({ limit }) => limit?.toFixed(0));
    expect(limits).toEqual(["2065", "2065", "2065", "2065"]);
  });

  it("calls neither a short time nor film's practice bad for paper", () => {
    const paper = { ...rolls, baseline: { timeS: 90, temperatureC: 20 }, conditions: { usedCm2PerL: 5160 } };
    const evening = planEvening({ ...paper, vessel: "tray", material: "paper", plates: [{ areaCm2: 100 }] });
    const [{ answer, plan }] = evening.plates as [EveningPlate];
    expect(codes(answer.cautions)).not.toContain("short-time");
    expect(codes(answer.cautions)).not.toContain("bath-well-used");
    expect(codes(plan.cautions).filter((code) => code.startsWith("bath-"))).toEqual([]);
    const film = planEvening({ ...paper, conditions: {} }).plates[0]!;
    expect(codes(film.answer.cautions)).toContain("short-time");
  });
});

describe("a plate whose own condition is undefined", () => {
  it("is developed under the evening's", () => {
    const cold: EveningInput = { ...hut, conditions: { temperatureC: 16 } };
    const silent = { ...plate, conditions: { temperatureC: undefined } };
    expect(planEvening({ ...cold, plates: [plate, silent] })).toEqual(
      planEvening({ ...cold, plates: [plate, plate] }),
    );
  });
});
