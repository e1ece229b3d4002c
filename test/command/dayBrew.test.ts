/* The brew of a day: what of it is read, and what its time rests on. Invented. */
import { describe, expect, it } from "vitest";
import { learn, predict, startKnowledge, type Compensation } from "../../src/index.js";
import { ran } from "./machine.js";

const spoons = [
  { ingredient: "soda-anhydrous", spoons: 7.25 },
  { ingredient: "instant-coffee", spoons: 15 },
  { ingredient: "ascorbic-acid", spoons: 2 },
];
const ingredients = [
  { ingredient: "soda-anhydrous", massG: 27 },
  { ingredient: "instant-coffee", massG: 20 },
  { ingredient: "ascorbic-acid", massG: 8 },
];
const reference = { time: "25:00", temperatureC: "14 °C", logSd: 0.4, volumeMl: "500 ml", ingredients };
const brew = { volumeMl: "0.5 l", temperatureC: "17 °C", spoons, reference };
const known = { time: "25:00", temperatureC: 14, logSd: 0.4 };
const notes = "Time;Temp;Outcome\n20:00;16;thin\n18:00;18;good\n";
const runs = [
  { timeS: 1200, temperatureC: 16, outcome: { kind: "thin" } },
  { timeS: 1080, temperatureC: 18, outcome: { kind: "good" } },
] as const;

const asked = (own: object, words = "time d.json", more: object = {}): ReturnType<typeof ran> =>
  ran(words.split(" "), {
    "d.json": { baseline: known, ...more, brew: { ...brew, ...own } },
    "n.csv": notes,
  });
/** The answer of the brew. */
const answer = (...given: Parameters<typeof asked>): Compensation => {
  const [own, words = "time d.json", more] = given;
  const { out } = asked(own, `${words} --json`, more);
  const { files } = JSON.parse(out) as { files: readonly [{ brew: { answer: Compensation } }] };
  return files[0].brew.answer;
};
const codes = ({ cautions }: Compensation): readonly string[] => cautions.map(({ code }) => code);

describe("the brew of a day", () => {
  it.each<[string, object, string]>([
    ["the brew", { agH: 20 }, "/brew/agH must be a field that is read, perhaps ageH"],
    ["its reference", { reference: { ...reference, logsd: 1 } }, "/brew/reference/logsd must be a field"],
    ["a spoon", { spoons: [{ ...spoons[0], heaped: true }] }, "/brew/spoons/0/heaped must be a field"],
    [
      "a number of spoons",
      { spoons: [{ ...spoons[0], spoons: "15" }] },
      "/brew/spoons/0/spoons must be a number",
    ],
    ["a volume", { volumeMl: "500" }, "/brew/volumeMl must be "],
  ])("is refused once, at its place, for a wrong field of %s", (_, own, message) => {
    const { code, err } = asked(own);
    expect(code).toBe(2);
    expect(err.split(message)).toHaveLength(2);
    expect(asked(own, "check d.json").out.split(message)).toHaveLength(2);
  });
  it("keeps a field of one's own", () => {
    expect(asked({ "x-shop": "valley" }).code).toBe(0);
  });
  it("says that an age of which nothing is known is not counted", () => {
    expect(answer({ ageH: "unknown" })).toEqual(answer({}));
    const said = "Nothing is known of the age of this bath.";
    for (const words of ["time d.json", "check d.json"])
      expect(asked({ ageH: "?" }, words).out.split(said)).toHaveLength(2);
  });
  it("reads age, emulsion and how well the known time is known", () => {
    expect(answer({ ageH: "20 h" })).toMatchObject({ refused: true });
    expect(codes(answer({ ageH: "20 h" }))).toContain("bath-past-life");
    expect(answer({}).refused).toBe(false);
    const warm = { temperatureC: 28, reference: { ...reference, temperatureC: 20 } };
    expect(answer(warm).refused).toBe(false);
    expect(answer({ ...warm, emulsion: "soft" }).refused).toBe(true);
    const width = (one: Compensation): number => Math.log(one.highS / one.lowS);
    const sure = answer({ reference: { ...reference, logSd: "7 %" } });
    expect(width(answer({}))).toBeGreaterThan(1.5 * width(sure));
    expect(asked({}).out).toContain("the known time itself, good to a factor of 1.9");
  });
  it("of tablets and of coffee of a kind has no field that is not read", () => {
    const other = [
      spoons[0],
      { ...spoons[1], grade: "freeze-dried" },
      { ingredient: "ascorbic-acid-tablet", tablets: 16, labelMg: 500 },
    ];
    expect(codes(answer({ spoons: other }))).not.toContain("unknown-field");
  });
  it("answers for the temperature that is asked, and has no dilution", () => {
    const cold = answer({}, "time d.json --temperature 16");
    expect(cold.timeS).toBeCloseTo(answer({ temperatureC: 16 }).timeS, 6);
    expect(asked({}, "time d.json --temperature 16").out).toContain("Known: 25:00 at 14 °C; today 16 °C.");
    const diluted = { baseline: { ...known, dilution: "1+1" } };
    expect(asked({}, "time d.json --dilution 1+3", diluted).out).not.toContain("A brew by the spoon");
  });
  it("learns from notes where its known time is the day's, and says so where it is not", () => {
    const words = "time d.json --notes n.csv";
    const start = startKnowledge({ timeS: 1500, temperatureC: 14, logSd: 0.4 }, { baseLogSd: 0.4, laws: {} });
    const learned = predict(learn(start, runs), { temperatureC: 17 });
    const [, , factor] = answer({}, words).factors;
    const one = answer({}, words);
    expect(factor?.cause).toBe("strength");
    expect(one.timeS / (factor?.value ?? NaN)).toBeCloseTo(learned.timeS, 0);
    const SAID = "The notes do not reach it: its known time is another than that of the day.";
    expect(asked({}, words).out).not.toContain(SAID);
    const other = { reference: { ...reference, time: "24:00" } };
    expect(asked(other, words).out).toContain(`today 17 °C.\n  ${SAID}\n  Develop `);
    expect(answer(other, words)).toEqual(answer(other));
    expect(asked(other, `${words} --lang de`).out).toContain("Die Notizen gelten nicht für ihn");
    expect(asked(other).out).not.toContain(SAID);
  });
});
