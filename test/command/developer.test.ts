/* What the baths of a day are: every answer judges them by it. The days are invented. */
import { describe, expect, it } from "vitest";
import { bathVerdict, brewLife, formatSpread, parseSpread, type DeveloperBrew } from "../../src/index.js";
import { ran } from "./machine.js";

const brew: DeveloperBrew = {
  volumeMl: 500,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 27 },
    { ingredient: "instant-coffee", massG: 20 },
    { ingredient: "ascorbic-acid", massG: 8 },
  ],
};
const developer = { brew: { ...brew, volumeMl: "500 ml" } };
const day = {
  baseline: { time: "17:30", temperatureC: 14, logSd: 0.3 },
  baths: [
    { name: "Old", temperatureC: 16, ageH: 20 },
    { name: "Fresh", temperatureC: 16 },
  ],
};
const evening = {
  plates: [{ areaCm2: "9x12cm" }],
  material: "plate",
  volumeMl: "0.5 l",
  baths: { stop: { kind: "water" }, fix: { clearingS: 60 }, wash: {} },
};
const files = {
  "day.json": { ...day, developer },
  "evening.json": { ...day, evening: { ...evening, developer } },
  "both.json": { ...day, developer, evening },
  "plain.json": day,
};
const out = (words: string): string => ran(words.split(" "), files).out;
const WHY = `The bath is older than its life of ${brewLife(brew).lifeH} h`;
const STOP = `Stop: ${WHY}`;

describe("the developer of a day", () => {
  it.each(["day.json", "evening.json", "both.json"])(
    "stops a dead bath of %s in every answer, and no other",
    (file) => {
      const time = out(`time ${file}`);
      expect(time).toContain(`Old\n  No time.\n    ${STOP}`);
      expect(time).toContain("Fresh\n  Develop ");
      expect(out(`chart ${file}`)).toMatch(/^Stop: .* \[\/baths\/0\/ageH\]\n/);
      for (const form of ["csv", "wall"])
        expect(ran(["chart", file, `--${form}`], files).err).toContain(`${file}: ${STOP}`);
      const svg = out(`chart ${file} --svg`);
      expect(svg).toContain("Old: No time.");
      expect(svg).toContain("older than its life");
      expect(out(`chart ${file} --svg --bath Fresh`)).not.toContain("No time.");
      expect(out(`check ${file}`)).toMatch(/:\d+:\d+: Stop: The bath is older than its life/);
    },
  );
  it("is that of its evening too, and leaves a day without one as it was", () => {
    for (const file of ["evening.json", "both.json"]) {
      const stop = `Plate 1 is not planned, nor any after it.\nStop: Plate 1: ${WHY}`;
      expect(out(`plan ${file}`)).toContain(stop);
    }
    expect(out("time plain.json")).toContain("Old\n  Develop ");
    expect(out("chart plain.json")).not.toContain("Stop");
  });
  it("judges a bath whose law of age says nothing of its end, in the picture too", () => {
    const law = { kind: "slowing", perRootH: 0.01 };
    const held = { "law.json": { ...day, developer, laws: { age: law } } };
    const time = ran(["time", "law.json"], held);
    expect(time.err).toBe("");
    expect(time.out).toContain(`Old\n  No time.\n    ${STOP}`);
    const svg = ran(["chart", "law.json", "--svg"], held).out;
    expect(svg).toContain("Old: No time.");
    expect(svg).toMatch(/<desc[^>]*>.*Today has no time\..*past its life: no time\./);
  });
  it("has its capacity judged as bathVerdict does", () => {
    const used = { ...day, baths: [{ name: "Used", usedCm2PerL: 4000 }], developer };
    const wanted = bathVerdict({ brew, usedCm2PerL: 4000, ageH: 0 }).cautions;
    const [{ message } = { message: "none" }] = wanted.filter(({ code }) => code === "bath-past-capacity");
    expect(ran(["time", "used.json"], { "used.json": used }).out).toContain(message);
    const own = { ...used, developer: { capacityCm2PerL: 1000 } };
    expect(ran(["time", "own.json"], { "own.json": own }).out).toContain("Used\n  No time.");
  });
  it("is refused where a field is misspelt or its brew is no brew", () => {
    const err = (given: object): string => {
      const held = { "f.json": { ...day, developer: given } };
      expect(ran(["check", "f.json"], held).code).toBe(2);
      return ran(["time", "f.json"], held).err;
    };
    expect(err({ breww: brew })).toContain("/developer/breww must be a field that is read, perhaps brew");
    expect(err({ brew: { ...brew, volume: 5 } })).toContain("/developer/brew/volume must be a field");
    expect(err({ brew: { ...brew, volumeMl: "0.5" } })).toContain("/developer/brew/volumeMl must be ");
    const gold = { ...brew, ingredients: [{ ingredient: "gold", massG: 1 }] };
    expect(err({ brew: gold })).toContain("/developer/brew/ingredients/0/ingredient must be ");
    expect(err({ family: "gold" })).toContain("/developer/family must be ");
    expect(err({ "x-shop": "valley", "breww": 1 })).not.toContain("x-shop");
  });
});

describe("how well a known time is known", () => {
  it.each([
    ["40 %", 0.4],
    ["± 7 min", 0.4],
    ["x 1.9", 0.9],
    ["factor 1,9", 0.9],
    ["a factor of 1.9", 0.9],
    ["Faktor 1.9", 0.9],
  ])("may be text: %s", (logSd, share) => {
    const said = { baseline: { time: "17:30", temperatureC: 14, logSd }, baths: [{ name: "Today" }] };
    const meant = { ...said, baseline: { ...said.baseline, logSd: parseSpread(`${100 * share} %`, 1050) } };
    const of = (file: object): string => ran(["time", "f.json"], { "f.json": file }).out;
    expect(of(said)).toBe(of(meant));
    expect(of(said)).toContain(
      share === 0.4 ? `good to ${formatSpread(Math.log(1.4) / 1.645)}` : "good to a factor of 1.9",
    );
  });
  it.each(["x 0.5", "sure", "40"])("is refused as %s", (logSd) => {
    const file = { baseline: { time: "17:30", temperatureC: 14, logSd } };
    expect(ran(["time", "f.json"], { "f.json": file }).err).toMatch(/\/baseline\/logSd must be /);
  });
});
