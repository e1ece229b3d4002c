/* The data of a picture: every number is one that the package gives elsewhere, and none contradicts another. */
import { describe, expect, it } from "vitest";
import {
  answerPicture,
  compensate,
  compensateRecipe,
  recipePicture,
  temperatureCurve,
  testStripTimes,
  type AnswerPicture,
  type PictureRung,
} from "../../src/index.js";
import { baseline, conditions, hut, inputs, knowledge, pictureOf, pictures } from "./pictures.js";
import { anyOf, caught } from "../helpers.js";

const answer = compensate(baseline, conditions, knowledge);
const picture = answerPicture(hut);

describe.each(pictures)("the picture of %s", (name, drawn) => {
  it("survives JSON", () => {
    expect(JSON.parse(JSON.stringify(drawn))).toEqual(drawn);
  });
  it("has axes that hold both dots, all arrows and whiskers", () => {
    const { fromC, toC, lowS, highS, ticksS } = drawn.axes;
    expect(highS / lowS).toBeGreaterThan(5.99);
    for (const timeS of ticksS) expect(timeS >= lowS && timeS <= highS).toBe(true);
    for (const dot of [drawn.known, ...(drawn.today === undefined ? [] : [drawn.today])]) {
      expect(dot.temperatureC >= fromC && dot.temperatureC <= toC).toBe(true);
      expect(dot.timeS >= lowS && dot.timeS <= highS).toBe(true);
    }
    for (const { startS, endS } of drawn.rungs) {
      expect(startS >= lowS && startS <= highS).toBe(true);
      expect(endS >= lowS && endS <= highS).toBe(true);
    }
    if (name !== "an interval that no clock shows")
      for (const rung of drawn.rungs) expect(rung.lowS >= lowS && rung.highS <= highS).toBe(true);
  });
  it("has a ladder whose arrows follow each other up to the sum", () => {
    if (drawn.refused) {
      expect(drawn.rungs).toEqual([]);
      return;
    }
    const [first, ...rest] = drawn.rungs as readonly [PictureRung, ...PictureRung[]];
    expect(first).toMatchObject({ kind: "known", cause: "baseline", percent: 0 });
    const sum = rest[rest.length - 1]!;
    expect(sum.kind).toBe("sum");
    let endS = first.endS;
    for (const rung of rest.slice(0, -1)) {
      expect(rung.kind).toBe("cause");
      expect(rung.startS).toBe(endS);
      expect(rung.endS / rung.startS).toBeCloseTo(1 + rung.percent / 100, 12);
      endS = rung.endS;
    }
    expect(sum.endS / endS).toBeCloseTo(1, 9);
    expect(sum).toMatchObject({
      lowS: drawn.today!.lowS,
      endS: drawn.today!.timeS,
      highS: drawn.today!.highS,
    });
  });
  it("has today's dot on the curve of today's bath", () => {
    if (drawn.today === undefined) return;
    const { temperatureC, timeS, steady } = drawn.today;
    const curve = drawn.curves.bath;
    const i = curve.findIndex((point) => point.temperatureC >= temperatureC);
    const [cold, warm] = [curve[Math.max(0, i - 1)]!, curve[i]!];
    // Points lie half a degree apart: within 4 % of time.
    expect(timeS).toBeLessThan(cold.timeS * (steady ? 1.01 : 1.0001));
    expect(timeS).toBeGreaterThan(warm.timeS * (steady ? 0.99 : 0.9999));
  });
});

describe("answerPicture", () => {
  it("gives the numbers of compensate", () => {
    const { timeS, lowS, highS } = answer;
    expect(picture.today).toEqual({ temperatureC: 14, timeS, lowS, highS });
    expect(picture.cautions).toEqual(answer.cautions);
    const changed = answer.factors.filter(({ value, logSd }) => value !== 1 || logSd > 0);
    expect(picture.rungs.slice(0, -1).map(({ cause, basis }) => [cause, basis])).toEqual(
      changed.map(({ cause, basis }) => [cause, basis]),
    );
    picture.rungs.slice(1, -1).forEach(({ percent }, i) => {
      expect(percent).toBeCloseTo(100 * (changed[i + 1]!.value - 1), 9);
    });
  });
  it("marks as general what rests on a general rule alone", () => {
    expect(picture.rungs.map(({ cause, general }) => `${cause} ${general}`)).toEqual([
      "baseline false",
      "temperature false",
      "dilution true",
      "use true",
      "interaction true",
      "together false",
    ]);
  });
  it("draws the curves of temperatureCurve", () => {
    const { fromC, toC } = picture.axes;
    const { dilution, usedCm2PerL } = conditions;
    const asked = { baseline, knowledge, fromC, toC, points: 45 };
    expect(picture.curves.known).toEqual(temperatureCurve(asked));
    expect(picture.curves.bath).toEqual(
      temperatureCurve({ ...asked, conditions: { dilution, usedCm2PerL } }),
    );
    expect(picture.curves.same).toBe(false);
    expect(pictureOf("a warm bath, all else equal").curves.same).toBe(true);
  });
  it("finds where there is no time, and where warnings begin", () => {
    expect(picture.refusals).toMatchObject([{ fromC: 6, toC: 13, code: "hydroquinone-cold", side: "below" }]);
    expect(picture.warnings.map(({ atC, side, code }) => [atC, side, code])).toEqual([
      [16, "below", "hydroquinone-cold"],
      [18, "below", "temperature-unusual"],
      [24, "above", "temperature-unusual"],
    ]);
    const wide = pictureOf("all there is, from 0 to 100 °C");
    expect(wide.refusals.map(({ fromC, toC, code }) => [fromC, toC, code])).toEqual([
      [0, 13, "hydroquinone-cold"],
      [32, 45, "temperature-limit"],
      [45, 100, "maybe-fahrenheit"],
    ]);
    const spent = pictureOf("past its life");
    expect(spent.refusals).toMatchObject([
      { fromC: spent.axes.fromC, toC: spent.axes.toC, code: "bath-past-life" },
    ]);
    expect(spent.refusals[0]).not.toHaveProperty("side");
    expect(spent.warnings).toEqual([]);
  });
  it("has no dot, no ladder and no strip where the time is refused, and keeps axes that are handed in", () => {
    const { axes } = picture;
    const refused = answerPicture({ ...inputs["refused, in °F"]!, ...axes });
    expect(refused.refused).toBe(true);
    expect(refused).not.toHaveProperty("today");
    expect(refused).not.toHaveProperty("strip");
    expect(refused.axes).toEqual(axes);
    expect(refused.curves).toEqual(picture.curves);
    expect(refused.cautions[0]!.code).toBe("maybe-fahrenheit");
  });
  it("has the strip of testStripTimes, rounded as its shortest rung is", () => {
    expect(picture.strip).toEqual(testStripTimes(answer, { stepS: 30 }));
    expect(pictureOf("many causes, some shorter").strip!.timesS).toHaveLength(4);
    expect(pictureOf("a narrow interval").strip).toMatchObject({ timesS: [], reason: "too-narrow" });
    const wide = answerPicture({ baseline: { timeS: 1828, temperatureC: 20, logSd: 0.85 }, strip: true });
    // The time alone would have steps of a minute: a tenth of the shortest rung.
    expect(wide.strip!.timesS).toEqual([450, 900, 1830, 3690, 7410]);
    expect(pictureOf("an interval that no clock shows")).not.toHaveProperty("strip");
    expect(answerPicture({ baseline, strip: false })).not.toHaveProperty("strip");
  });
  it("shows a bath that drifts at the temperature of a steady one that takes as long", () => {
    const { today, rungs } = pictureOf("a bath that cools");
    const { temperatureC, timeS, steady } = today!;
    expect(steady).toBe(true);
    expect(temperatureC).toBeGreaterThan(12);
    expect(temperatureC).toBeLessThan(18);
    expect(compensate(baseline, { temperatureC }, knowledge).timeS / timeS).toBeCloseTo(1, 2);
    expect(rungs[1]).not.toHaveProperty("to");
  });
  it("marks the rows of a table at their printed times", () => {
    const { points } = pictureOf("a table");
    expect(points.map(({ temperatureC, timeS, of }) => [temperatureC, Math.round(timeS), of])).toEqual([
      [18, 360, "table"],
      [20, 300, "table"],
      [24, 215, "table"],
      [26, 180, "table"],
    ]);
  });
  it("marks own runs at the time that they say is right, and leaves out those that say none", () => {
    const points = [...pictureOf("own runs").points].sort((a, b) => a.timeS - b.timeS).reverse();
    expect(points.map(({ temperatureC, of }) => [temperatureC, of])).toEqual([
      [15, "run"],
      [20, "run"],
      [24, "table"],
    ]);
    // Half a step thin: half of a factor of 1.4 more (common practice).
    expect(points[0]!.timeS).toBeCloseTo(800 * Math.sqrt(1.4), 6);
    expect(points[1]!.timeS).toBeCloseTo(500, 6);
    expect(points[2]!.timeS).toBeCloseTo(330, 6);
  });
  it("carries a run over from its dilution to today's, where the known time has one", () => {
    const runs = [{ timeS: 510, temperatureC: 20, dilution: "1+9", outcome: { kind: "good", logSd: 0.1 } }];
    const own = anyOf({ ...knowledge, runs });
    const [point] = answerPicture({ baseline, conditions, knowledge: own }).points;
    const there = compensate(baseline, { ...conditions, temperatureC: 20 }, knowledge).timeS;
    expect(point!.timeS).toBeCloseTo(there, 6);
    expect(answerPicture({ baseline: { timeS: 510, temperatureC: 20 }, knowledge: own }).points).toEqual([]);
  });
  it("moves an edge that lies beyond all that must be seen", () => {
    const edges = (range: object): unknown => {
      const { axes } = answerPicture({ baseline, ...range });
      return [axes.fromC, axes.toC, Math.round(axes.lowS), Math.round(axes.highS)];
    };
    expect(edges({ fromC: 40 })).toEqual([40, 41, expect.anything(), expect.anything()]);
    expect(edges({ toC: 5 })).toEqual([4, 5, expect.anything(), expect.anything()]);
    expect(edges({ lowS: 6000 })).toEqual([12, 28, 6000, 36000]);
    expect(edges({ highS: 60 })).toEqual([12, 28, 10, 60]);
  });
  it.each([
    ["no object", 3, "wrong-type", "/input"],
    ["no baseline", {}, "missing", "/baseline"],
    ["wrong conditions", { baseline, conditions: 3 }, "wrong-type", "/input/conditions"],
    ["an edge below 0", { baseline, fromC: -1 }, "out-of-range", "/input/fromC"],
    ["edges the wrong way round", { baseline, fromC: 20, toC: 10 }, "out-of-range", "/input/toC"],
    ["times the wrong way round", { baseline, lowS: 20, highS: 10 }, "out-of-range", "/input/highS"],
    ["half a point", { baseline, points: 2.5 }, "wrong-type", "/input/points"],
    ["a wrong strip", { baseline, strip: 5 }, "wrong-type", "/input/strip"],
  ])("refuses %s", (_name, input, code, path) => {
    const error = caught(() => answerPicture(anyOf(input)));
    expect(error).toMatchObject({ code, path });
  });
});

describe("recipePicture", () => {
  const recipe = anyOf({
    schemaVersion: 2,
    material: { name: "roll film", kind: "film" },
    developer: { kind: "stock", name: "hut concentrate", dilution: "1+9", hydroquinone: true },
    baseline: { timeS: 540, temperatureC: 20 },
    conditions: { temperatureC: 18 },
  });
  it("gives the numbers of compensateRecipe", () => {
    const drawn: AnswerPicture = recipePicture(
      recipe,
      { dilution: "1+14" },
      { strip: true, fromC: 10, toC: 30, points: 41 },
    );
    const { timeS, lowS, highS } = compensateRecipe(recipe, { dilution: "1+14" });
    expect(drawn.today).toEqual({ temperatureC: 18, timeS, lowS, highS });
    expect(drawn.refusals[0]!.code).toBe("hydroquinone-cold");
    expect(drawn.curves.known.find(({ temperatureC }) => temperatureC === 20)!.timeS).toBe(540);
    expect(drawn.strip!.timesS.length).toBeGreaterThan(1);
  });
  it("refuses the whole picture where the brew itself is stopped", () => {
    const brew = anyOf({
      schemaVersion: 2,
      material: { name: "plate", kind: "plate" },
      developer: {
        kind: "brew",
        brew: { volumeMl: 500, ingredients: [{ ingredient: "instant-coffee", massG: 20 }] },
      },
      baseline: { timeS: 900, temperatureC: 20 },
    });
    const drawn = recipePicture(brew);
    expect(drawn.refused).toBe(true);
    // Above 24 °C soft gelatin tears besides: a plate is soft unless it is said to be hardened.
    expect(drawn.refusals).toMatchObject([
      { fromC: drawn.axes.fromC, toC: 24, code: "no-alkali" },
      { fromC: 24, toC: drawn.axes.toC, code: "soft-emulsion-warm" },
    ]);
  });
  it("refuses what is no recipe and no range", () => {
    expect(caught(() => recipePicture(anyOf(3)))).toMatchObject({ path: "/recipe" });
    expect(caught(() => recipePicture(recipe, anyOf(3)))).toMatchObject({ path: "/conditions" });
    expect(caught(() => recipePicture(recipe, {}, anyOf(3)))).toMatchObject({ path: "/range" });
  });
});
