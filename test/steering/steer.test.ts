/* Steering a development in progress: what is told, what is doubted, and what the doubt changes. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  handbookVessel,
  isInputError,
  judgeReading,
  newtonDrift,
  planAt,
  planProcess,
  planRecipe,
  recipeQuestion,
  steer,
  type Recipe,
  type SteerAnswer,
  type SteerInput,
  type SteeringReading,
} from "../../src/index.js";
import { anyOf, dataOf } from "../helpers.js";
const baseline = { timeS: 600, temperatureC: 20 };
const codes = (answer: SteerAnswer): readonly string[] => answer.cautions.map(({ code }) => code);
const cautionOf = (answer: SteerAnswer, code: string) => answer.cautions.find((one) => one.code === code);
const ask = (log: readonly SteeringReading[], more: Partial<SteerInput> = {}): SteerAnswer =>
  steer({ baseline, conditions: {}, log, ...more });
const reading = (timeS: number, temperatureC: number | null, changed?: true): SteeringReading =>
  changed ? { timeS, temperatureC, changed } : { timeS, temperatureC };
const steady = (temperatureC: number, count: number, everyS = 60): readonly SteeringReading[] =>
  Array.from({ length: count }, (_, i) => reading(i * everyS, temperatureC));
const plan = planProcess({ vessel: "tank", timeS: 600, temperatureC: 20, volumeMl: 500, rest: true });
const developOf = (answer: SteerAnswer) => answer.plan!.steps.find(({ name }) => name === "develop")!;
const rest = plan.steps[0]!;
const undeveloped = { ...plan, steps: [rest], totalS: rest.endS };
const startS = plan.steps.find(({ name }) => name === "develop")!.startS;

describe("steer", () => {
  it("needs one reading, and a steady bath is no error", () => {
    const answer = ask([reading(0, 20)]);
    expect(answer.total.timeS).toBeCloseTo(600, 6);
    expect(answer.remaining.timeS).toBeCloseTo(600, 6);
    expect(answer.action).toBe("continue");
    expect(answer.trusted).toBe(true);
    expect(ask(steady(20, 5)).remaining.timeS).toBeCloseTo(600 - 240, 4);
  });
  it("asks whether what the bath was mixed to, or the air, is in °F", () => {
    const said = (more: Partial<SteerInput>): unknown => {
      const { cautions, refused } = ask([reading(0, 20)], more);
      return [refused, cautions.flatMap((one) => (one.code === "maybe-fahrenheit" ? [one.path] : []))];
    };
    expect(said({ conditions: { temperatureC: 20 }, ambientC: 45 })).toEqual([false, []]);
    expect(said({ conditions: { temperatureC: 68 } })).toEqual([true, ["/conditions/temperatureC"]]);
    expect(said({ ambientC: 68 })).toEqual([true, ["/ambientC"]]);
  });
  it("takes air that is probably in °F as such, and draws no caution from that forecast", () => {
    const known: Partial<SteerInput> = {
      baseline: { timeS: 1040, temperatureC: 16, logSd: 0.13, emulsion: "soft" },
      vessel: "tray-in-air",
    };
    const answered = (ambientC: number, log = [reading(0, 16)]): SteerAnswer =>
      ask(log, { ...known, ambientC });
    const asTyped = answered(57);
    const meant = answered(125 / 9);
    expect([asTyped.trusted, meant.trusted]).toEqual([false, true]);
    expect(asTyped.refused).toBe(true);
    expect(asTyped.total.timeS).toBeCloseTo(meant.total.timeS, 9);
    expect(asTyped.cautions[0]).toMatchObject({ code: "maybe-fahrenheit", path: "/ambientC" });
    const unusual = (answer: SteerAnswer) =>
      answer.cautions.flatMap(({ code, path, actual }) => (path === "/log" ? [[code, actual]] : []));
    expect(unusual(asTyped)).toEqual([["temperature-unusual", 16]]);
    expect(unusual(meant)[0]?.[1]).toBeLessThan(16);
    // The readings' own cautions stay, whenever they came.
    expect(unusual(answered(57, [reading(60, 25)]))[0]).toEqual(["soft-emulsion-warm", 25]);
    expect(unusual(answered(57, [reading(0, 16), reading(60, 15.9)]))).toEqual([
      ["temperature-unusual", 15.9],
    ]);
    const judge = judgeReading([reading(0, 16)], reading(60, 15.9), { ambientC: 57 });
    expect(judge.cautions.map(({ code, path }) => [code, path])).toEqual([
      ["maybe-fahrenheit", "/options/ambientC"],
    ]);
  });
  it.each([
    ["a later minute", [reading(300, 24, true)]],
    ["milliseconds", [60, 120].map((timeS) => reading(1000 * timeS, 24))],
  ])("is not steered by a reading that is later than now: %s", (_, late) => {
    const sound = [reading(0, 20), reading(60, 20)];
    const without = ask(sound, { nowS: 100 });
    const answer = ask([...sound, ...late], { nowS: 100 });
    expect(answer.trusted).toBe(false);
    expect(answer.refused).toBe(false);
    expect(answer.total).toEqual(without.total);
    expect(answer.equivalent).toEqual(without.equivalent);
    const said = answer.cautions.filter(({ code }) => code === "reading-ahead");
    expect(said.map(({ severity, path, limit, actual }) => [severity, path, limit, actual])).toEqual(
      late.map(({ timeS }, i) => ["stop", `/log/${i + 2}/timeS`, 100, timeS]),
    );
  });
  it("believes a reading within a second of a clock that shows whole ones", () => {
    const log = [reading(0, 20), reading(60.9, 20)];
    expect(ask(log, { nowS: 60 })).toMatchObject({ trusted: true, nowS: 60 });
    expect(codes(ask(log, { nowS: 59.8 }))).toContain("reading-ahead");
    expect(codes(ask(log))).not.toContain("reading-ahead");
  });
  it("names a field that is not read", () => {
    const given = { nows: 3, ambientc: 3 };
    const log = [reading(0, 20), { timeS: 60, temperatureC: 20, chnaged: true }];
    const said = ask(anyOf(log), anyOf(given)).cautions.filter(({ code }) => code === "unknown-field");
    expect(said.map((one) => [one.path, dataOf(one)?.["nearest"]])).toEqual([
      ["/nows", "nowS"],
      ["/ambientc", "ambientC"],
      ["/log/1/chnaged", "changed"],
    ]);
  });
  it("tells about the same time as compensate with the readings as a log", () => {
    const drift = newtonDrift({ startC: 22, ambientC: 15, timeConstantS: 3600 });
    const log = Array.from({ length: 9 }, (_, i) => ({ timeS: 60 * i, temperatureC: drift(60 * i) }));
    const answer = ask(log);
    const whole = Array.from({ length: 40 }, (_, i) => ({ timeS: 20 * i, temperatureC: drift(20 * i) }));
    const truth = compensate(baseline, { temperatureC: whole }).timeS;
    expect(Math.abs(answer.total.timeS / truth - 1)).toBeLessThan(0.002);
    expect(Math.abs(answer.total.timeS / compensate(baseline, { temperatureC: log }).timeS - 1)).toBeLessThan(
      0.01,
    );
  });
  it("serves a warming bath as a cooling one", () => {
    const drift = newtonDrift({ startC: 14, ambientC: 22, timeConstantS: 3600 });
    const log = Array.from({ length: 9 }, (_, i) => ({ timeS: 60 * i, temperatureC: drift(60 * i) }));
    const whole = Array.from({ length: 60 }, (_, i) => ({ timeS: 20 * i, temperatureC: drift(20 * i) }));
    const truth = compensate(baseline, { temperatureC: whole }).timeS;
    expect(Math.abs(ask(log).total.timeS / truth - 1)).toBeLessThan(0.01);
  });
  it("is not swung by two early readings", () => {
    // 14 and 13.9 °C one second apart: a line through them reaches 0 °C in 140 s.
    const one = ask([reading(0, 14)]).total.timeS;
    const two = ask([reading(0, 14), reading(1, 13.9)]).total.timeS;
    expect(Math.abs(two / one - 1)).toBeLessThan(0.03);
  });
  it("carries all other causes, and what is known of them", () => {
    const known = { ...baseline, dilution: "1+9", logSd: 0.02 };
    const knowledge = {
      temperature: { kind: "coefficient", ratio: 2, intervalC: 10, sdRatio: 0.05 },
    } as const;
    const given = { dilution: "1+14" };
    const answer = steer({ baseline: known, conditions: given, knowledge, log: steady(16, 4) });
    const plain = compensate(known, { ...given, temperatureC: 16 }, knowledge);
    expect(answer.total.timeS).toBeCloseTo(plain.timeS, 3);
    expect(answer.total.lowS).toBeLessThan(plain.lowS);
    expect(answer.total.highS / plain.highS).toBeLessThan(1.03);
    expect(codes(answer)).toContain("default-law");
  });
  it("counts from pour-in when the first reading comes late", () => {
    expect(ask([reading(120, 20)]).total.timeS).toBeCloseTo(600, 4);
    // A bath that falls by 1 °C in 100 s was a degree warmer at pour-in.
    const falling = [reading(100, 21), reading(200, 20), reading(300, 19.1)];
    const whole = ask([reading(0, 22), ...falling]).total.timeS;
    expect(Math.abs(ask(falling).total.timeS / whole - 1)).toBeLessThan(0.01);
  });
  it("goes to the end of the longest clock", () => {
    const answer = ask([reading(0, 20), reading(1e7, 20)]);
    expect(answer.action).toBe("pour-out");
    expect(answer.total.timeS).toBeCloseTo(600, 4);
  });
  it("never tells less than nothing, and says how far past", () => {
    const answer = ask(steady(20, 12), { nowS: 700 });
    expect(answer.remaining).toEqual({ timeS: 0, lowS: 0, highS: expect.any(Number) });
    expect(answer.action).toBe("pour-out");
    expect(cautionOf(answer, "target-passed")).toMatchObject({
      severity: "stop",
      quantity: "timeS",
      actual: 700,
    });
  });
  it("says pour out at the end and not before", () => {
    const log = steady(20, 9);
    expect(ask(log, { nowS: 599 }).action).toBe("continue");
    expect(ask(log, { nowS: 600.1 }).action).toBe("pour-out");
  });
  it("survives JSON and changes nothing that it was given", () => {
    const log = Object.freeze([reading(60, 68), reading(0, 20)].map((one) => Object.freeze(one)));
    const answer = ask(log, { plan });
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
});

describe("a reading in doubt", () => {
  const sound = steady(14, 5);
  const without = ask(sound, { nowS: 300 });
  it.each([
    ["NaN", NaN, "reading-missing"],
    ["null", null, "reading-missing"],
    ["85", 85, "reading-out-of-range"],
    ["−127", -127, "reading-out-of-range"],
    ["0", 0, "reading-out-of-range"],
    ["200", 200, "reading-out-of-range"],
    ["six degrees warmer", 20, "reading-jump"],
    ["the air's °F", 75, "maybe-fahrenheit"],
  ])("%s changes nothing, and is said first", (_, temperatureC, code) => {
    const answer = ask([...sound, reading(300, temperatureC)]);
    expect(answer.total.timeS).toBeCloseTo(without.total.timeS, 6);
    expect(answer.action).toBe("continue");
    expect(answer.trusted).toBe(false);
    expect(answer.cautions[0]).toMatchObject({ code, severity: "stop", path: "/log/5/temperatureC" });
    expect(cautionOf(answer, "forecast-only")).toMatchObject({ quantity: "timeS", data: { sinceS: 240 } });
  });
  it("is forgotten when the next one agrees with the others", () => {
    const answer = ask([...sound, reading(300, 20), reading(360, 14.1)]);
    expect(answer.trusted).toBe(true);
    expect(cautionOf(answer, "reading-jump")).toMatchObject({
      severity: "note",
      path: "/log/5/temperatureC",
    });
    expect(codes(answer)).not.toContain("forecast-only");
  });
  it("has its distance and what the bath allows as data", () => {
    const { actual, limit, quantity } = cautionOf(ask([...sound, reading(300, 20)]), "reading-jump")!;
    expect(quantity).toBe("temperatureDifferenceC");
    expect(actual).toBeCloseTo(6, 9);
    // In 60 s: a tempered jacket 4 °C away, 4(1 − e^(−60/105)) = 1.74 °C, and four standard deviations of two readings.
    expect(limit).toBeCloseTo(1.74 + 4 * Math.SQRT2 * 0.15, 2);
  });
  it("is believed where four or more agree, though vessel and air were told wrong", () => {
    // A metal tray on a cold floor cools faster than a tray in air.
    const cold = [
      [0, 24],
      [60, 22.8],
      [180, 20.9],
      [360, 18.9],
      [420, 18.4],
    ].map(([timeS, celsius]) => reading(timeS!, celsius!));
    const told = { vessel: "tray-in-air", ambientC: 18 } as const;
    const [answer, untold] = [ask(cold, told), ask(cold)];
    expect([answer.trusted, answer.total]).toEqual([true, untold.total]);
    expect(cautionOf(answer, "surroundings-doubted")).toMatchObject({ severity: "warn" });
    expect(codes(answer)).not.toContain("reading-jump");
    // One reading that agrees with nothing is in doubt as ever, and what was told with it.
    const slip = cold.map((one) => (one.timeS === 180 ? reading(180, 12.9) : one));
    expect(ask(slip, told).trusted).toBe(false);
    expect(codes(ask(slip, told))).not.toContain("surroundings-doubted");
    expect(codes(ask(cold.slice(0, 3), told))).not.toContain("surroundings-doubted");
  });
  it("at the start falls out when two others agree, and not before", () => {
    const two = ask([reading(0, 21), reading(60, 14)]);
    expect(two.trusted).toBe(false);
    const three = ask([reading(0, 21), reading(60, 14), reading(120, 14.1)]);
    expect(three.trusted).toBe(true);
    expect(cautionOf(three, "reading-jump")?.path).toBe("/log/0/temperatureC");
    // What the bath was mixed to counts for half a reading, and decides between two.
    expect(ask([reading(0, 21), reading(60, 14)], { conditions: { temperatureC: 14 } }).trusted).toBe(true);
  });
  it("at the start, alone, leaves what the bath was mixed to, or the known temperature", () => {
    const failed = [reading(0, NaN)];
    expect(ask(failed).total.timeS).toBeCloseTo(600, 2);
    const mixed = ask(failed, { conditions: { temperatureC: 16 } });
    expect(mixed.total.timeS).toBeCloseTo(compensate(baseline, { temperatureC: 16 }).timeS, 2);
    expect(mixed.trusted).toBe(false);
    expect(cautionOf(mixed, "forecast-only")?.data).toEqual({ sinceS: 0 });
  });
});

describe("a reading in the other unit", () => {
  it("serves in its meaning where it fits, and is not trusted until retyped", () => {
    const answer = ask([...steady(14, 3), reading(180, 57)]);
    expect(answer.trusted).toBe(false);
    expect(cautionOf(answer, "maybe-fahrenheit")).toMatchObject({
      severity: "stop",
      quantity: "temperatureC",
      actual: 57,
      data: { celsius: 13.8888888889 },
    });
    expect(codes(answer)).not.toContain("forecast-only");
    expect(ask([...steady(14, 3), reading(180, 57), reading(240, 13.9)]).trusted).toBe(true);
  });
  it("is not followed where it does not fit what is told", () => {
    // 57 °F is 13.9 °C: a bath of 16.8 °C in air of 15 °C cannot have come there.
    const log = [reading(0, 17), reading(120, 16.8)];
    const told = { ambientC: 15 };
    const answer = ask([...log, reading(300, 57)], told);
    expect(answer.total).toEqual(ask(log, { ...told, nowS: 300 }).total);
    expect(answer.trusted).toBe(false);
    expect(answer.cautions[0]).toMatchObject({ code: "maybe-fahrenheit", path: "/log/2/temperatureC" });
    expect(codes(answer)).toContain("forecast-only");
    // 62 °F is 16.7 °C: that it can.
    expect(codes(ask([...log, reading(300, 62)], told))).not.toContain("forecast-only");
  });
  it("is dropped where its neighbours on both sides contradict it", () => {
    const around = [reading(0, 17), reading(240, 16.7)];
    const zigzag = ask([around[0]!, reading(120, 57), around[1]!]);
    expect(zigzag.total).toEqual(ask(around).total);
    expect(cautionOf(zigzag, "maybe-fahrenheit")).toMatchObject({ severity: "note" });
    const several = ask([around[0]!, reading(80, 57), reading(160, 57), around[1]!]);
    expect(several.total).toEqual(ask(around).total);
    // One that lies between them serves, and so does one of a bath that was changed.
    const between = ask([around[0]!, reading(120, 62), around[1]!]);
    expect(between.total.timeS).toBeCloseTo(
      ask([around[0]!, reading(120, 16.6666666667), around[1]!]).total.timeS,
      6,
    );
    const changed = ask([around[0]!, reading(120, 57, true), reading(240, 16.7, true)]);
    expect(codes(changed).filter((code) => code === "bath-changed")).toHaveLength(2);
  });
  it("serves alone", () => {
    const inCelsius = ask(steady(5, 3)).total.timeS;
    const answer = ask(steady(41, 3));
    expect(answer.total.timeS).toBeCloseTo(inCelsius, 4);
    expect(answer.action).toBe("continue");
    expect(answer.trusted).toBe(false);
    // A bath of 14 °C that was converted once too often.
    const twice = ask([reading(0, -10), reading(60, -10)]);
    expect(cautionOf(twice, "maybe-celsius")?.data).toEqual({ celsius: 14 });
    expect(twice.total.timeS).toBeCloseTo(ask(steady(14, 2)).total.timeS, 4);
  });
  it("is told exactly at 32, unless the bath was mixed to about that", () => {
    expect(ask([reading(0, 32)]).trusted).toBe(true);
    expect(codes(ask([reading(0, 33)]))).toContain("maybe-fahrenheit");
    const warm = { baseline: { timeS: 200, temperatureC: 38 } };
    expect(ask([reading(0, 38)], { ...warm, conditions: { temperatureC: 38 } }).trusted).toBe(true);
    expect(codes(ask([reading(0, 44)], { ...warm, conditions: { temperatureC: 38 } }))).toContain(
      "maybe-fahrenheit",
    );
    expect(ask([reading(0, 0)], { conditions: { temperatureC: 2 } }).trusted).toBe(true);
  });
});

describe("a reading in words", () => {
  it("is told as text, not as a thermometer that failed, and stops no run", () => {
    const answer = ask([reading(0, 20), anyOf({ timeS: 120, temperatureC: "19,8" })]);
    expect(cautionOf(answer, "reading-missing")).toMatchObject({
      path: "/log/1/temperatureC",
      data: { text: "19,8" },
      message: 'The reading "19,8" is text, not a number.',
    });
    const failed = ask([reading(0, 20), anyOf({ timeS: 120, temperatureC: null })]);
    expect(cautionOf(failed, "reading-missing")).toMatchObject({ data: { text: null } });
    expect(answer.total).toEqual(failed.total);
  });
});

describe("a lone reading far from what the bath was mixed to", () => {
  const mixed: Partial<SteerInput> = {
    baseline: { timeS: 600, temperatureC: 20 },
    conditions: { temperatureC: 20 },
    vessel: "plastic-tank-in-air",
    ambientC: 20,
  };
  it.each([
    [29, 300],
    [12, 300],
    [29, 0],
  ])("is doubted: %s °C after %s s, in air of 20 °C", (celsius, timeS) => {
    const answer = ask([reading(timeS, celsius)], mixed);
    const asMixed = ask([reading(timeS, 20)], mixed);
    expect(answer.trusted).toBe(false);
    expect(answer.action).toBe("continue");
    expect(cautionOf(answer, "reading-jump")).toMatchObject({
      severity: "stop",
      data: { readC: celsius, atS: timeS, mixedC: 20 },
      message: expect.stringContaining("that the bath was mixed to") as string,
    });
    // The forecast from the mix stands in for it.
    expect(answer.total.timeS / asMixed.total.timeS).toBeCloseTo(1, 2);
  });
  it("is believed once a second agrees, and then the mix is not", () => {
    const answer = ask([reading(0, 29), reading(60, 28.6)], mixed);
    expect(answer.trusted).toBe(true);
    expect(answer.total.timeS).toBeLessThan(420);
  });
  it("is believed at once where a cold tank or a guess explains it, or nothing was said", () => {
    expect(ask([reading(0, 17)], mixed).trusted).toBe(true);
    expect(ask([reading(0, 14)], { ...mixed, conditions: {} }).trusted).toBe(true);
  });
});

describe("a log as it comes", () => {
  it("is put in order, with a note", () => {
    const drift = [reading(0, 18), reading(60, 17.8), reading(120, 17.7)];
    const mixed = ask([drift[0]!, drift[2]!, drift[1]!]);
    expect(mixed.total).toEqual(ask(drift).total);
    expect(mixed.trusted).toBe(true);
    expect(cautionOf(mixed, "log-order")).toMatchObject({ severity: "note", path: "/log/2/timeS" });
    expect(codes(ask(drift))).not.toContain("log-order");
  });
  it("counts equal doubles once, and lets the others decide between unlike ones", () => {
    const drift = [reading(0, 18), reading(60, 17.8), reading(120, 17.7)];
    expect(ask([...drift, reading(120, 17.7)]).total).toEqual(ask(drift).total);
    const unlike = ask([...drift, reading(120, 24)]);
    expect(unlike.total).toEqual(ask(drift).total);
    expect(unlike.trusted).toBe(true);
    // Two that may both be right count as their mean.
    const mean = ask([reading(0, 18), reading(60, 17.6), reading(60, 18)]);
    expect(mean.total.timeS).toBeCloseTo(ask([reading(0, 18), reading(60, 17.8)]).total.timeS, 0);
  });
  it("may be long", () => {
    const log = Array.from({ length: 100_000 }, (_, i) => reading(i * 0.005, 18 + 0.1 * Math.sin(i)));
    expect(ask(log).total.timeS).toBeCloseTo(ask(steady(18, 9)).total.timeS, 0);
    // A dead thermometer names the newest fifty.
    expect(
      ask(log.map((one, i) => (i < 2 ? one : { ...one, temperatureC: null }))).cautions.length,
    ).toBeLessThan(60);
  });
});

describe("a frozen thermometer", () => {
  const still = steady(24, 12, 90);
  const tray = { vessel: "tray-in-air", ambientC: 8 } as const;
  it("is found where vessel and air say that the bath must have moved", () => {
    const answer = ask(still, tray);
    expect(answer.trusted).toBe(false);
    expect(cautionOf(answer, "thermometer-frozen")).toMatchObject({
      severity: "stop",
      quantity: "temperatureDifferenceC",
      limit: 1,
      path: "/log/1/temperatureC",
    });
    expect(answer.total.timeS).toBeGreaterThan(ask(still).total.timeS);
  });
  it("is not suspected in a bath that may be tempered", () => {
    expect(ask(still).trusted).toBe(true);
    expect(ask(still, { ambientC: 8 }).trusted).toBe(true);
    expect(ask(still, { vessel: "tray-in-air" }).trusted).toBe(true);
    expect(ask(still, { ...tray, ambientC: 24 }).trusted).toBe(true);
    expect(ask(still.slice(0, 2), tray).trusted).toBe(true);
  });
});

describe("a bath that was changed", () => {
  const before = steady(14, 4);
  it("is believed when it is said", () => {
    const answer = ask([...before, reading(240, 20, true), reading(300, 20)]);
    expect(answer.trusted).toBe(true);
    expect(cautionOf(answer, "bath-changed")).toMatchObject({
      severity: "note",
      quantity: "temperatureDifferenceC",
      actual: 6,
      path: "/log/4",
    });
    // 240 s at 14 °C, the rest at 20 °C.
    const steadyS = compensate(baseline, { temperatureC: 14 }).timeS;
    expect(answer.total.timeS / (240 + 600 * (1 - 240 / steadyS))).toBeCloseTo(1, 2);
    expect(ask([...before, reading(240, 20), reading(300, 20)]).trusted).toBe(false);
  });
  it("comes after the other readings of its moment, in whatever order they are given", () => {
    const known = { baseline: { timeS: 900, temperatureC: 20 }, ambientC: 20 };
    const drift = [reading(0, 20), reading(150, 17.5), reading(300, 15)];
    const after = ask([...drift, reading(301, 22, true)], known);
    for (const log of [
      [...drift, reading(300, 22, true)],
      [reading(300, 22, true), ...drift],
      [...drift, reading(300, 21.8, true), reading(300, 22.2, true)],
    ]) {
      const answer = ask(log, known);
      expect(Math.abs(answer.total.timeS - after.total.timeS)).toBeLessThan(1);
      expect(answer.trusted).toBe(true);
      expect(codes(answer)).toContain("bath-changed");
    }
    // A change to the temperature that was just read: what drifts is another bath from then on.
    const same = ask([...drift, reading(300, 15, true)], known);
    expect(codes(same)).toContain("bath-changed");
    // At pour-in nothing came before it.
    const first = ask([reading(0, 20), reading(0, 14, true), reading(60, 14)]);
    expect(first.total.timeS).toBeCloseTo(ask([reading(0, 14), reading(60, 14)]).total.timeS, 6);
  });
  it("is believed as often as it is said, also when the first reading comes late", () => {
    const answer = ask([reading(60, 14), reading(120, 20, true), reading(180, 14, true), reading(240, 14)]);
    expect(answer.trusted).toBe(true);
    expect(codes(answer).filter((code) => code === "bath-changed")).toHaveLength(2);
    const steadyS = compensate(baseline, { temperatureC: 14 }).timeS;
    expect(answer.total.timeS).toBeCloseTo(steadyS - 60 * (steadyS / 600 - 1), -1);
  });
  it("needs no time: the moment before may be as near as the clock can show", () => {
    const answer = ask([reading(60, 14), reading(60.00000000000001, 20, true)]);
    expect(answer.trusted).toBe(true);
    expect(answer.total.timeS).toBeGreaterThan(600);
  });
  it("is believed too when the reading that said it failed", () => {
    const answer = ask([...before, { timeS: 240, temperatureC: null, changed: true }, reading(300, 20)]);
    expect(answer.trusted).toBe(true);
    expect(codes(answer)).toContain("bath-changed");
  });
});

describe("the time of appearance", () => {
  it("moves the end as two estimates of one time do", () => {
    // Known to 4 %: 600 s. The image came after 50 s with a factor of 14, known to 15.3 %: 700 s. So
    // ln(time) moves by 0.04²/(0.04² + 0.153²) of ln(700/600), to 606 s.
    const sure = { vessel: { timeConstantS: 1e6, logSd: 0.1 }, ambientC: 20, readingSdC: 0.01 };
    const answer = ask([reading(0, 20)], { nowS: 60, appearance: { appearanceS: 50, factor: 14 }, ...sure });
    expect(answer.remaining.timeS).toBeCloseTo(546, 0);
    const plain = ask([reading(0, 20)], { nowS: 60, ...sure });
    expect(answer.total.highS / answer.total.lowS).toBeLessThan(plain.total.highS / plain.total.lowS);
  });
  it("is carried along the path of a bath that drifts", () => {
    const drift = newtonDrift({ startC: 20, ambientC: 4, timeConstantS: 1800 });
    const log = Array.from({ length: 8 }, (_, i) => reading(60 * i, drift(60 * i)));
    // A factor known exactly: the appearance decides, and in a bath that cools the end comes later than factor × time.
    const seen = { appearanceS: 50, factor: 12, factorLogSd: 0.0001, reactionS: 0 };
    const knowledge = {
      temperature: { kind: "arrhenius", activationEnergyKJPerMol: 60, sdKJPerMol: 60 },
    } as const;
    const { total } = ask(log, { appearance: seen, knowledge });
    expect(total.timeS).toBeGreaterThan(650);
    expect(total.timeS).toBeLessThan(760);
  });
  it("says so when it disagrees beyond chance", () => {
    const answer = ask([reading(0, 20)], { appearance: { appearanceS: 100, factor: 14 } });
    expect(cautionOf(answer, "estimates-disagree")).toMatchObject({ path: "/appearance" });
    expect(codes(ask([reading(0, 20)], { appearance: { appearanceS: 45, factor: 14 } }))).not.toContain(
      "estimates-disagree",
    );
  });
  it("sets the clock where it comes after the last reading", () => {
    const answer = ask([reading(0, 20)], { appearance: { appearanceS: 50, factor: 12 } });
    expect(answer.total.timeS - answer.remaining.timeS).toBeCloseTo(50, 9);
  });
});

describe("the plan", () => {
  it("is aimed anew, its clock joined with that of the log", () => {
    const answer = ask(steady(18, 4), { plan });
    expect(startS).toBeGreaterThan(0);
    expect(developOf(answer).startS).toBe(startS);
    expect(Math.abs(developOf(answer).durationS - answer.total.timeS)).toBeLessThan(5);
  });
  it("has the order to pour out when no more is left than draining takes", () => {
    const log = steady(20, 9);
    const { drainS } = plan.handling;
    expect(ask(log, { plan, nowS: 600 - drainS - 1 }).action).toBe("continue");
    expect(ask(log, { plan, nowS: 600 - drainS + 0.1 }).action).toBe("pour-out");
  });
  it("is drawn out where the bath is slower than planned and the plan's end has passed", () => {
    const answer = ask(steady(14, 12), { plan, nowS: 660 });
    expect(answer.action).toBe("continue");
    expect(Math.abs(developOf(answer).durationS - answer.total.timeS)).toBeLessThan(5);
    const past = ask(steady(20, 12), { plan, nowS: 700 });
    expect(past.action).toBe("pour-out");
    expect(developOf(past).durationS).toBeGreaterThanOrEqual(700);
  });
  it("says how the bath is moved, as a drum is turned without pause", () => {
    const recipe: Recipe = {
      schemaVersion: 2,
      material: { name: "roll film", kind: "film" },
      developer: { kind: "stock", name: "hut concentrate", dilution: "1+25", volumeMl: 500 },
      baseline: { timeS: 510, temperatureC: 20 },
      agitation: { everyS: 60 },
      conditions: { temperatureC: 18 },
    };
    for (const vessel of ["drum", "tank"] as const) {
      const planned = planRecipe(recipe, { vessel });
      const log = [0, 120].map((timeS) => ({ timeS, temperatureC: 18 }));
      const { total, plan: aimed } = steer({ ...recipeQuestion(recipe), ambientC: 18, log, plan: planned });
      const seconds = planned.steps[0]!.durationS;
      expect(Math.abs(total.timeS / seconds - 1)).toBeLessThan(0.005);
      expect(aimed!.steps[0]!.durationS).toBe(total.timeS);
    }
  });
  it.each([undefined, 60])("pours out from now on for as long as nobody did, in steps of %s s", (stepS) => {
    const slept = planProcess({
      ...{ vessel: "tank", timeS: 600, temperatureC: 20, baths: { stop: {}, fix: {}, wash: {} } },
      ...(stepS && { stepS }),
    });
    let followed = slept;
    for (const nowS of [598, 600, 615, 900, 1e4]) {
      for (const given of [slept, followed]) {
        const answer = ask([reading(0, 20), reading(120, 20)], { plan: given, nowS });
        followed = answer.plan!;
        const { step, cues } = planAt(followed, nowS);
        expect(step).toMatchObject({ name: "develop", endS: nowS + slept.handling.drainS });
        expect(cues.map((cue) => cue.do)).toContain("pour-out");
        expect(followed.cautions.map(({ code }) => code)).toContain("late-pour");
      }
    }
  });
});

describe("steer refuses shapes alone", () => {
  const thrown = (change: object): { path: string; code: string; message: string } => {
    try {
      steer(anyOf({ baseline, conditions: {}, log: [reading(0, 20)], ...change }));
    } catch (error) {
      if (isInputError(error)) return error;
      throw error;
    }
    throw new Error("nothing was thrown");
  };
  it.each<readonly [string, object, string, string]>([
    ["no array", { log: "20" }, "/log", "wrong-type"],
    ["an empty log", { log: [] }, "/log", "empty"],
    ["no object", { log: [null] }, "/log/0", "missing"],
    ["a time before pour-in", { log: [reading(-1, 20)] }, "/log/0/timeS", "out-of-range"],
    ["a time beyond the clock", { log: [reading(1e8, 20)] }, "/log/0/timeS", "out-of-range"],
    [
      "a change that is no answer",
      { log: [{ ...reading(0, 20), changed: "yes" }] },
      "/log/0/changed",
      "wrong-type",
    ],
    ["a wrong clock", { nowS: -1 }, "/nowS", "out-of-range"],
    ["wrong air", { ambientC: 101 }, "/ambientC", "out-of-range"],
    ["an unknown vessel", { vessel: "bucket" }, "/vessel", "not-one-of"],
    ["a vessel without a spread", { vessel: { timeConstantS: 3600 } }, "/vessel/logSd", "missing"],
    ["a wrong spread", { readingSdC: 0 }, "/readingSdC", "out-of-range"],
    ["a wrong known time", { baseline: { ...baseline, timeS: 0 } }, "/baseline/timeS", "out-of-range"],
    [
      "a wrong dilution",
      { baseline: { ...baseline, dilution: "1+9" }, conditions: { dilution: 9 } },
      "/conditions/dilution",
      "wrong-type",
    ],
    [
      "a wrong appearance",
      { appearance: { appearanceS: 0, factor: 9 } },
      "/appearance/appearanceS",
      "out-of-range",
    ],
    ["wrong conditions", { conditions: null }, "/conditions", "missing"],
    [
      "a bath mixed to 300 °C",
      { conditions: { temperatureC: 300 } },
      "/conditions/temperatureC",
      "out-of-range",
    ],
    ["a wrong factor", { appearance: { appearanceS: 50, factor: 0 } }, "/appearance/factor", "out-of-range"],
    ["no plan", { plan: {} }, "/plan/steps", "missing"],
    ["a plan without steps", { plan: { ...plan, steps: [] } }, "/plan/steps", "empty"],
    ["a plan without a development", { plan: undeveloped }, "/plan", "wrong-type"],
  ])("%s", (_, change, path, code) => {
    const error = thrown(change);
    expect(error.path).toBe(path);
    expect(error.code).toBe(code);
    expect(error.message).toMatch(/^steer: /);
  });
  it("and lets a bug through as it is", () => {
    const broken = {
      get timeS(): number {
        throw new Error("a bug");
      },
      temperatureC: 20,
    };
    expect(() => ask([reading(0, 20)], { baseline: broken })).toThrow(new Error("a bug"));
  });
  it("and takes the figures of an own vessel", () => {
    const own = handbookVessel("tray-in-air");
    expect(ask(steady(18, 4), { vessel: own, ambientC: 10 })).toEqual(
      ask(steady(18, 4), { vessel: "tray-in-air", ambientC: 10 }),
    );
  });
});
