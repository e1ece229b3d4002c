/* What is said of a development in progress: the goal, counted from the pour-in, and why it moved. */
import { describe, expect, it } from "vitest";
import {
  compensate,
  describeSteering,
  isInputError,
  newtonDrift,
  planProcess,
  formatTime,
  roundTime,
  steer,
  steeringGoal,
  type SteerAnswer,
  type SteerInput,
  type SteeringTexts,
} from "../../src/index.js";
import { de } from "../../src/texts/de.js";

const baseline = { timeS: 510, temperatureC: 20 };
const followed = (startC: number, ambientC: number, untilS: number, more = {}): SteerAnswer => {
  const drift = newtonDrift({ startC, ambientC, timeConstantS: 2800 });
  const log = Array.from({ length: untilS / 60 + 1 }, (_, i) => ({
    timeS: 60 * i,
    temperatureC: drift(60 * i),
  }));
  return steer({ baseline, conditions: { temperatureC: 14 }, log, ...more });
};
const clocks = (text: string): readonly string[] => text.match(/\d+:\d\d/g) ?? [];
/** A catalogue that shows the data instead of a sentence. */
const plain: SteeringTexts = {
  cautions: { severities: de.cautions.severities, sentences: {} },
  goal: (time, lift) => `goal ${time} ${lift}`,
  now: (lift) => `now ${lift}`,
  refused: "refused",
  refusedGoal: (time, lift) => `refused goal ${time} ${lift}`,
  asPlanned: "as planned",
  drifted: (colder, clock, work) => `drifted ${colder} ${clock} ${work}`,
  drifting: (colder, clock, work) => `drifting ${colder} ${clock} ${work}`,
  appeared: (when, time) => `appeared ${when} ${time}`,
};

describe("describeSteering", () => {
  it("says as planned where nothing moved", () => {
    const answer = followed(14, 14, 300);
    const goal = formatTime(steeringGoal(answer).timeS);
    expect(describeSteering(answer, plain)).toEqual([`goal ${goal} false`, "as planned"]);
  });
  it.each([
    ["colder", 13, true],
    ["warmer", 15.5, false],
  ] as const)("says that a %s bath has done other work than the clock says", (_, startC, colder) => {
    const answer = followed(startC, 14, 360);
    const line = describeSteering(answer, plain)[1] as string;
    expect(line.startsWith(`drifted ${colder} 6:00 `)).toBe(true);
    const work = answer.equivalent.nowS;
    expect(work < 360).toBe(colder);
    expect(clocks(line)[1]).toBe(formatTime(work, { stepS: 5 }));
  });
  it("says what is expected where the clock has hardly begun", () => {
    const answer = followed(13, 14, 0);
    const line = describeSteering(answer, plain)[1] as string;
    expect(line.startsWith("drifting true ")).toBe(true);
    const { timeS, stepS } = steeringGoal(answer);
    // The goal as it is said, and the work as the time was shown before.
    expect(clocks(line)).toEqual([timeS, roundTime(answer.equivalent.dueS, stepS)].map((s) => formatTime(s)));
  });
  it.each([
    ["one s", 1],
    ["5 s", 5],
    ["15 s", 15],
    ["30 s", 30],
  ])("begins with the time that was shown to %s before it was poured in", (_, stepS) => {
    const shown = roundTime(followed(14, 14, 0).equivalent.dueS, stepS);
    const log = [{ timeS: 0, temperatureC: 14 }];
    const answer = steer({ baseline, conditions: { temperatureC: 14 }, log });
    expect(describeSteering(answer, plain, { stepS })).toEqual([
      `goal ${formatTime(shown)} false`,
      "as planned",
    ]);
  });
  it("counts from when it went in, which is no time of the day", () => {
    const answer = followed(14, 14, 60);
    const time = formatTime(steeringGoal(answer).timeS);
    expect(describeSteering(answer)[0]).toBe(`Pour out ${time} after the pour-in.`);
    expect(describeSteering(answer, undefined, { vessel: "tray" })[0]).toBe(
      `Lift out ${time} after it went in.`,
    );
  });
  it("lifts a plate out of a dish", () => {
    const plan = planProcess({ vessel: "tray", timeS: 510, temperatureC: 20 });
    const over = followed(14, 14, 60, { nowS: 1e4, plan });
    expect(over.action).toBe("pour-out");
    expect(describeSteering(over, plain, { vessel: "tray" })[0]).toBe("now true");
    expect(describeSteering(over, undefined, { vessel: "tray" })[0]).toBe("Lift out now.");
    expect(describeSteering(over)[0]).toBe("Pour out now.");
  });
  it.each([
    ["early", 20],
    ["late", 90],
  ] as const)("says that the image came %s", (when, appearanceS) => {
    const answer = followed(14, 14, 120, { appearance: { appearanceS, factor: 14, factorLogSd: 0.15 } });
    expect(describeSteering(answer, plain)[2]?.startsWith(`appeared ${when} `)).toBe(true);
    expect(describeSteering(answer)[2]).toContain(`The image came ${when}`);
  });
  it("says that the image came when it was expected", () => {
    const { total } = followed(14, 14, 0);
    const answer = followed(14, 14, 120, {
      appearance: { appearanceS: total.timeS / 14, factor: 14, factorLogSd: 0.15 },
    });
    expect(describeSteering(answer)[2]).toBe("The image came when it was expected.");
  });
  it("begins with the doubt where the newest reading is not believed, in the language that is asked", () => {
    const log = [
      { timeS: 0, temperatureC: 14 },
      { timeS: 180, temperatureC: 57 },
    ];
    const answer = steer({ baseline, conditions: {}, log });
    expect(answer.trusted).toBe(false);
    const said = answer.cautions.find(({ code }) => code === "maybe-fahrenheit")!.message;
    expect(describeSteering(answer)[0]).toBe(said);
    const german = describeSteering(answer, de.steering);
    expect(german[0]).toMatch(/57 °C.*13,9 °C/);
    expect(german[1]).toMatch(/ausgießen/);
    // A reading that is not followed: the forecast alone is.
    const jump = [...log.slice(0, 1), { timeS: 60, temperatureC: 14 }, { timeS: 180, temperatureC: 24 }];
    const lines = describeSteering(steer({ baseline, conditions: {}, log: jump }), undefined, { unit: "F" });
    expect(lines[0]).toMatch(/^75.2 °F, read 3 min after the pour-in, is 18 °F from the others/);
    expect(lines[1]).toMatch(/later than 1 min after the pour-in/);
    expect(lines[2]).toMatch(/^Pour out \d+:\d\d after the pour-in\.$/);
  });
  it("names the newest of several doubts, and none that is over", () => {
    const log = [14, NaN, 200, 85].map((temperatureC, i) => ({ timeS: 60 * i, temperatureC }));
    const answer = steer({ baseline, conditions: {}, log });
    expect(describeSteering(answer)[0]).toContain("85 °C");
    const over = steer({ baseline, conditions: {}, log: [...log, { timeS: 240, temperatureC: 14 }] });
    expect(describeSteering(over)[0]).toMatch(/^Pour out \d+:\d\d after the pour-in\.$/);
  });
  it("says how far the target is past, and then that nothing is as planned", () => {
    const lines = describeSteering(followed(14, 14, 0, { nowS: 1000 }), plain);
    expect(lines[0]).toBe("now false");
    expect(lines[1]).toMatch(/past its time\.$/);
    expect(lines).not.toContain("as planned");
    expect(describeSteering(followed(14, 14, 0, { nowS: 1000 }), de.steering)[1]).toMatch(/überschritten/);
  });
  const known = { timeS: 600, temperatureC: 20 };
  const steady = [{ timeS: 0, temperatureC: 20 }];
  const cooling = newtonDrift({ startC: 6, ambientC: 0, timeConstantS: 1000 });
  it.each<readonly [string, string, SteerInput]>([
    [
      "a bath that is spent",
      "bath-too-slow",
      { baseline: known, conditions: { usedCm2PerL: 9000 }, log: steady },
    ],
    [
      "a known time in °F",
      "maybe-fahrenheit",
      { baseline: { ...known, temperatureC: 68 }, conditions: {}, log: steady },
    ],
    [
      "a bath past its life",
      "bath-past-life",
      {
        baseline: known,
        conditions: { ageH: 10 },
        knowledge: { age: { kind: "life", lifeH: 2 } },
        log: steady,
      },
    ],
    [
      "a bath that gets too cold",
      "temperature-limit",
      {
        baseline: known,
        conditions: {},
        log: [0, 300, 600, 900].map((timeS) => ({ timeS, temperatureC: cooling(timeS) })),
      },
    ],
  ])("begins with the stop for %s, and has no goal to go by", (_, code, input) => {
    const answer = steer(input);
    const { baseline: time, conditions, knowledge } = input;
    const stops = answer.cautions.filter(({ severity }) => severity === "stop");
    expect(stops.map((one) => one.code)).toEqual([code]);
    expect(answer).toMatchObject({ trusted: true, refused: true });
    if (code !== "temperature-limit") expect(compensate(time, conditions, knowledge).refused).toBe(true);
    const lines = describeSteering(answer, plain);
    const goal = formatTime(steeringGoal(answer).timeS);
    expect(lines.slice(0, 3)).toEqual([
      "refused",
      `${de.cautions.severities.stop}: ${stops[0]!.message}`,
      `refused goal ${goal} false`,
    ]);
    expect(lines).not.toContain("as planned");
    expect(describeSteering(answer).join(" ")).toMatch(/laws alone would say: pour out/);
    const inTray = { vessel: "tray" } as const;
    expect(describeSteering(answer, undefined, inTray)[2]).toMatch(/: lift out .* went in\.$/);
    expect(describeSteering(answer, de.steering, inTray)[2]).toMatch(/: .* Einlegen herausheben\.$/);
    expect(describeSteering(answer, de.steering)[2]).toMatch(/: .* Einguss ausgießen\.$/);
  });
  it("has no other time for a reading in doubt, or a target that is past", () => {
    const log = [...steady, { timeS: 60, temperatureC: 68 }];
    const doubted = steer({ baseline: known, conditions: {}, log });
    const past = steer({ baseline: known, conditions: {}, log: steady, nowS: 700 });
    for (const { refused, cautions } of [doubted, past]) {
      expect(cautions[0]?.severity).toBe("stop");
      expect(refused).toBe(false);
    }
    const both = steer({ baseline: known, conditions: { usedCm2PerL: 9000 }, log });
    const doubt = both.cautions.find(({ path }) => path === "/log/1/temperatureC")!.message;
    expect(describeSteering(both, plain)[2]).toBe(doubt);
    expect(describeSteering(both, plain)[3]).toMatch(/^refused goal/);
  });
  it("refuses what is no answer", () => {
    const codeOf = (value: unknown): string => {
      try {
        describeSteering(value as SteerAnswer);
        return "none";
      } catch (error) {
        return isInputError(error) ? error.code : "bug";
      }
    };
    expect([undefined, {}, { ...followed(14, 14, 0), equivalent: 3 }].map(codeOf)).toEqual([
      "missing",
      "missing",
      "wrong-type",
    ]);
  });
});

describe("a bath that stays at a mark of the thermometer", () => {
  it.each([
    ["soft gelatin at 24 °C", { emulsion: "soft" }, 24],
    ["hydroquinone at 13 °C", { hydroquinone: true }, 13],
    ["any bath at 4 °C", {}, 4],
    ["any bath at 32 °C", {}, 32],
  ] as const)("is never refused: %s", (_, made, temperatureC) => {
    const refused = [1, 2, 3, 4, 5, 6, 7, 8].map((count) => {
      const log = Array.from({ length: count }, (_one, i) => ({ timeS: i * 45, temperatureC }));
      const baseline = { timeS: 600, temperatureC: 20, ...made };
      return steer({ baseline, conditions: { temperatureC }, ambientC: temperatureC, log }).refused;
    });
    expect(refused).toEqual(refused.map(() => false));
  });
});
