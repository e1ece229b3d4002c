/* The ladder after a test strip: one more rung, and the same causes as before. */
import { describe, expect, it } from "vitest";
import {
  answerPicture,
  compensate,
  describePicture,
  learn,
  pictureAfterStrip,
  pictureSvg,
  startKnowledge,
  stripOutcome,
} from "../../src/index.js";

const baseline = { timeS: 510, temperatureC: 20, dilution: "1+9", logSd: 0.06 };
const conditions = { temperatureC: 14, dilution: "1+14" };
const before = answerPicture({ baseline, conditions, strip: true });
const strip = before.strip!;
const timeS = strip.timesS[3]!;
const start = startKnowledge(baseline);
const knowledge = learn(start, [{ timeS, ...conditions, outcome: stripOutcome(strip, timeS) }]);
const learned = { baseline: knowledge.baseline, conditions, knowledge };
const picture = pictureAfterStrip(before, answerPicture(learned));

describe("a cause as a person wrote it", () => {
  const today = { temperatureC: 20, usedCm2PerL: 648, ageH: 100, pushStops: -1 };
  const picture = answerPicture({ baseline: { timeS: 510, temperatureC: 20 }, conditions: today });
  const causesOf = (options: Parameters<typeof describePicture>[1]): readonly string[] =>
    describePicture(picture, options).rungs.map(({ cause }) => cause);
  it("stands in the place of the package's own figure", () => {
    expect(causesOf({})).toEqual(
      expect.arrayContaining(["648 cm²/l went through before", "mixed 4.17 days ago", "pull, 1 stop"]),
    );
    expect(causesOf({ written: { use: "3 × 9x12 cm" } })).toContain("3 × 9x12 cm went through before");
  });
  it("is text", () => {
    const written = { use: 3 } as unknown as Record<string, string>;
    expect(() => causesOf({ written })).toThrow(expect.objectContaining({ path: "/options/written/use" }));
  });
});

describe("a picture after a strip", () => {
  it("has the known time and the causes of before, then the strip, then the sum", () => {
    const causes = before.rungs.slice(0, -1);
    expect(picture.rungs.slice(0, causes.length)).toEqual(causes);
    expect(picture.rungs.slice(causes.length).map(({ cause }) => cause)).toEqual(["strip", "together"]);
    expect(picture.known).toEqual(before.known);
    expect(picture.curves.known).toEqual(before.curves.known);
  });
  it("has a ladder that leads from the known time to the answer of what was learned", () => {
    const [strip, sum] = picture.rungs.slice(-2);
    expect(strip!.startS).toBeCloseTo(before.today!.timeS, 9);
    const { timeS, lowS, highS } = compensate(knowledge.baseline, conditions, knowledge);
    expect(sum).toMatchObject({ kind: "sum", startS: 510, endS: timeS, lowS, highS });
    expect(strip!.endS).toBe(timeS);
    expect(strip!.percent).toBeCloseTo(100 * (timeS / before.today!.timeS - 1), 9);
    expect(picture.today).toMatchObject({ timeS, lowS, highS });
  });
  it("names the strip in people's words, and is drawn", () => {
    const { rungs } = describePicture(picture);
    expect(rungs[rungs.length - 2]).toMatchObject({ cause: "Your strip", basis: "seen today" });
    expect(pictureSvg(picture)).toContain("Your strip");
  });
  it("comes back as it is where one of the two has no time", () => {
    const refused = answerPicture({ baseline, conditions: { temperatureC: 57 } });
    expect(pictureAfterStrip(before, refused)).toBe(refused);
    expect(pictureAfterStrip(refused, before)).toBe(before);
  });
  it("refuses what is no picture", () => {
    expect(() => pictureAfterStrip({} as never, before)).toThrow(
      expect.objectContaining({ path: "/before/refused" }),
    );
    expect(() => pictureAfterStrip(before, {} as never)).toThrow(
      expect.objectContaining({ path: "/after/refused" }),
    );
  });
});
