/* The command on the evening of a day: the plan is that of the package. */
import { describe, expect, it } from "vitest";
import { describeEvening, filmAreaCm2, planEvening, type EveningInput } from "../../src/index.js";
import { day, ran } from "./machine.js";

// Invented: two plates in a hut, and the same in figures.
const evening = {
  plates: [
    { name: "summit", areaCm2: "9x12cm" },
    { areaCm2: 108, conditions: { pushStops: "+1" } },
  ],
  material: "plate",
  volumeMl: "0.5 l",
  betweenS: "3:00",
};
const hut = { ...day, evening };
const files = { "day.json": day, "hut.json": hut };
const { time: _time, note: _note, ...known } = day.baseline;
const input: EveningInput = {
  baseline: { ...known, timeS: 540 },
  conditions: { temperatureC: 16 },
  knowledge: day.laws,
  plates: [
    { name: "summit", areaCm2: filmAreaCm2("9x12cm") },
    { areaCm2: 108, conditions: { pushStops: 1 } },
  ],
  material: "plate",
  vessel: "tray",
  volumeMl: 500,
  betweenS: 180,
  stepS: 5,
};
const asked = (words: string, more: object = {}): ReturnType<typeof ran> =>
  ran(words.split(" "), { ...files, ...more });
const lines = (given: EveningInput): string => describeEvening(planEvening(given)).join("\n");

describe("plan of a day with an evening", () => {
  it("is the evening in the first bath of the day, by clock times of five seconds", () => {
    expect(asked("plan hut.json")).toEqual({ code: 0, err: "", out: `Morning\n${lines(input)}\n` });
  });
  it("takes bath, temperature, vessel and volume of the command line", () => {
    const conditions = { temperatureC: 19, dilution: "1+14" };
    const other = lines({ ...input, conditions, vessel: "tank", volumeMl: 1000 });
    const words = "plan hut.json --bath Evening --temperature 19 --vessel tank --volume 1l";
    expect(asked(words).out).toBe(`Evening\n${other}\n`);
  });
  it("takes a dish for a tray, as the command line does", () => {
    const dish = { ...hut, evening: { ...evening, vessel: "dish" } };
    expect(asked("plan dish.json", { "dish.json": dish })).toEqual(asked("plan hut.json"));
  });
  it("is data with --json", () => {
    const { files: held } = JSON.parse(asked("plan hut.json --json").out) as {
      files: readonly [{ evening: unknown }];
    };
    expect(held[0].evening).toEqual(JSON.parse(JSON.stringify(planEvening(input))));
  });
  it("tells what it does not read, in the plan and in the check", () => {
    const odd = { ...hut, extra: 1, evening: { ...evening, conditions: { temperatureC: 30 }, betwenS: 3 } };
    const { out } = asked("plan odd.json", { "odd.json": odd });
    const check = asked("check odd.json", { "odd.json": odd }).out;
    for (const field of ["extra", "conditions", "betwenS"]) {
      expect(out).toContain(`The field "${field}" is not read.`);
      expect(check).toContain(`The field "${field}" is not read.`);
    }
  });
  it("is unwise where a plate is", () => {
    const warm = {
      ...hut,
      baths: [{ temperatureC: 20 }],
      evening: { ...evening, plates: [{ areaCm2: 10 }] },
    };
    expect(asked("plan warm.json --strict", { "warm.json": warm }).code).toBe(0);
    expect(asked("plan hut.json --strict").code).toBe(1);
  });
  it.each<[string, object, string]>([
    ["a day without one", { evening: undefined }, "day.json: this day has no evening to plan"],
    ["no plates", { evening: {} }, "/evening/plates the list of plates is missing."],
    [
      "a number in place of a plate",
      { evening: { ...evening, plates: [5] } },
      "/evening/plates/0 a plate must be an object.",
    ],
    [
      "an area in words",
      { evening: { ...evening, plates: [{ areaCm2: "big" }] } },
      "/evening/plates/0/areaCm2 must be ",
    ],
    ["a volume without a unit", { evening: { ...evening, volumeMl: "0.5" } }, "/evening/volumeMl must be "],
    [
      "another material",
      { evening: { ...evening, material: "glass" } },
      '/evening/material must be "film", ',
    ],
    ["no vessel", { evening: { ...evening, material: undefined } }, "/evening/vessel is missing"],
  ])("is refused for %s", (_, more, message) => {
    const { code, err } = asked("plan day.json", { "day.json": { ...day, ...more } });
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
  it("is not made for the bath of a recipe", () => {
    expect(asked("plan r.json --bath 1", { "r.json": { schemaVersion: 2 } })).toMatchObject({
      code: 2,
      err: "r.json:1:1: a recipe has no list of baths.\n",
    });
  });
});

describe("check of a day with an evening", () => {
  it("tells what is wrong with it, and what is unwise once", () => {
    const wrong = { ...hut, evening: { ...evening, vessel: "bucket" } };
    expect(asked("check wrong.json", { "wrong.json": wrong }).out).toContain("/evening/vessel must be ");
    const { out, code } = asked("check hut.json");
    expect(code).toBe(0);
    const said = out.split("\n").filter((line) => line.includes("hut.json:"));
    expect(new Set(said).size).toBe(said.length);
    expect(out).toContain("The interval is wide.");
  });
});
