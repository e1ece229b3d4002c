/* How long a brew lives and how much it develops. */
import { describe, expect, it } from "vitest";
import { brewCapacity, brewLife, brewPh, type BrewPart, type BrewMaterial } from "../../src/index.js";
import { fc, test } from "../property.js";
import { brewOf, part, sensibleBrew } from "./brews.js";

const soda = part("soda-anhydrous", 54);
const coffee = part("instant-coffee", 40);
const acid = part("ascorbic-acid", 16);
const life = (...parts: BrewPart[]): number => brewLife(brewOf(...parts)).lifeH;
const vitaminC = (massG: number): BrewPart => part("ascorbic-acid", massG);

describe("life", () => {
  // Shinkawa Photographic Laboratory, 2015: 57 mmol/l (10 g/l) of vitamin C in saturated carbonate in an open dish is
  // full black to 1.5 h, slightly weak at 2 h, none at 2.5 h.
  it("of 10 g/l of vitamin C in carbonate is 2 h, between full black and none", () => {
    const { lifeH, lowH } = brewLife(brewOf(part("soda-anhydrous", 200), vitaminC(10)));
    expect(lifeH).toBeCloseTo(2, 1);
    expect(lowH).toBeLessThan(1.5);
    expect(lifeH).toBeGreaterThan(1.5);
    expect(lifeH).toBeLessThan(2.5);
  });

  // The open-dish figure in proportion; the rest is common practice and the cap.
  it.each([
    ["0.5 g/l of vitamin C", [soda, vitaminC(0.5)], 0.1],
    ["2 g/l of vitamin C", [soda, vitaminC(2)], 0.4],
    ["16 g/l of vitamin C", [soda, acid], 3],
    ["coffee alone", [soda, coffee], 1.46],
    // Reckoned by its pH it would be 4 h: the cap of practice holds.
    ["coffee and borax", [part("borax", 30), coffee], 3],
    ["a full brew with 100 g/l of sulphite", [soda, coffee, acid, part("sodium-sulphite", 100)], 22],
  ] as const)("of %s", (_, parts, hours) => {
    expect(Math.abs(life(...parts) / hours - 1)).toBeLessThan(0.1);
  });

  // Nothing measures it: assumed, and held under the cap of practice.
  it("is hardly longer in a deep vessel or in a tank, and shorter in a shallow one or in a drum", () => {
    const at = (depthMm: number, vessel: "tank" | "tray" | "drum", ...parts: BrewPart[]): number =>
      brewLife(brewOf(...parts), { depthMm, vessel }).lifeH / life(...parts);
    const inTray = [1, 5, 8, 10, 12, 30, 1000].map((mm) => at(mm, "tray", soda, coffee));
    expect(inTray).toEqual([0.5, 0.5, 0.8, 1, 1.2, 1.5, 1.5].map((x) => expect.closeTo(x, 9) as number));
    expect(at(30, "tank", soda, coffee)).toBeCloseTo(1.5, 9);
    expect(at(10, "tank", soda, coffee)).toBe(1);
    expect(at(10, "drum", soda, coffee)).toBeCloseTo(0.5, 9);
    expect(at(1000, "drum", soda, coffee)).toBeCloseTo(1.5, 9);
  });

  test.prop([
    sensibleBrew,
    fc.double({ min: 1, max: 1000, noNaN: true }),
    fc.constantFrom("tank", "tray", "drum"),
  ])(
    "of coffee, soda and vitamin C is a few hours in any vessel: 3 h at the cap, from 1.5 h",
    (brew, depthMm, vessel) => {
      const { lifeH, lowH } = brewLife(brew, { depthMm, vessel });
      // Less alkali keeps it up to three times as long, under the same cap.
      expect(lifeH).toBeLessThanOrEqual(3);
      expect(lowH).toBeLessThanOrEqual(1.5 * (1 + 1e-9));
      expect(lifeH).toBeLessThanOrEqual(1.5 * brewLife(brew).lifeH * (1 + 1e-9));
    },
  );

  // A reaction doubles its rate for 10 °C or so: common practice. Below 20 °C nothing was measured.
  test.prop([sensibleBrew, fc.double({ min: 0, max: 50, noNaN: true })])(
    "halves for each 10 °C above 20 °C, and is no longer in a colder bath",
    (brew, temperatureC) => {
      const { lifeH } = brewLife({ ...brew, temperatureC });
      const warm = 2 ** (Math.max(0, temperatureC - 20) / 10);
      expect(lifeH * warm).toBeCloseTo(brewLife({ ...brew, temperatureC: 20 }).lifeH, 9);
    },
  );

  it("is longer with less alkali, three times at most, and by the pH at 20 °C", () => {
    // 2 h for 57 mmol/l, times 10 to the 0.43 for each pH below 10; 2 g/l of vitamin C are 11.4 mmol/l.
    const few = brewOf(part("borax", 2), vitaminC(2));
    const { ph } = brewPh({ ...few, temperatureC: 20 });
    const open = (2 * (2000 / 176.124)) / 57;
    expect(ph).toBeLessThan(8.5);
    expect(life(part("borax", 2), vitaminC(2))).toBeCloseTo(3 * open, 3);
    const some = brewOf(part("soda-anhydrous", 2), vitaminC(2));
    const at = brewPh({ ...some, temperatureC: 20 }).ph;
    expect(at).toBeLessThan(10);
    const slower = 10 ** (0.43 * (10 - at));
    // Two halvings for 20 °C more, and none by the lower pH.
    expect(brewLife({ ...some, temperatureC: 40 }).lifeH).toBeCloseTo((open * slower) / 4, 3);
  });

  it("is known to a factor of two each way, of three with little vitamin C", () => {
    const { lifeH, lowH, highH, logSd } = brewLife(brewOf(soda, acid));
    expect(highH / lifeH).toBeCloseTo(2, 9);
    expect(lifeH / lowH).toBeCloseTo(2, 9);
    expect(logSd).toBeCloseTo(Math.LN2 / 1.6449, 4);
    const little = brewLife(brewOf(soda, vitaminC(1)));
    expect(little.highH / little.lifeH).toBeCloseTo(3, 9);
  });

  it("is nothing where nothing develops", () => {
    expect(life(soda)).toBe(0);
  });

  test.prop([
    sensibleBrew,
    fc.constantFrom("instant-coffee", "ascorbic-acid", "sodium-ascorbate"),
    fc.double({ min: 0.1, max: 40, noNaN: true }),
  ])("never falls with more agent", (brew, agent, massG) => {
    const more = { ...brew, ingredients: [...brew.ingredients, part(agent, massG)] };
    expect(brewLife(more).lifeH).toBeGreaterThanOrEqual(brewLife(brew).lifeH * (1 - 1e-9));
  });

  it.each([
    [{ depthMm: 0 }, RangeError, "/options/depthMm"],
    [{ depthMm: "10" }, TypeError, "/options/depthMm"],
    [{ vessel: "bucket" }, RangeError, "/options/vessel"],
    [null, TypeError, "/options"],
  ])("refuses %j", (options, kind, path) => {
    const call = (): unknown => brewLife(brewOf(soda, acid), options as any);
    expect(call).toThrow(kind);
    expect(call).toThrow(expect.objectContaining({ path }));
  });
});

describe("capacity", () => {
  const whole = (material: BrewMaterial, cm2: number, ...parts: BrewPart[]): number =>
    Math.floor(brewCapacity(brewOf(...parts), { material }).cm2PerL / cm2);

  // Common practice: 250 ml a roll; 9 × 12 cm plates carry more silver, paper less. 8 × 10 inches are a roll's area.
  it("of a litre of full brew is 4 rolls, 12 plates of 9 × 12 cm, 12 sheets of 8 × 10 inches", () => {
    expect(whole("film", 516.128, soda, coffee, acid)).toBe(4);
    expect(whole("plate", 108, soda, coffee, acid)).toBe(12);
    expect(whole("paper", 516.128, soda, coffee, acid)).toBe(12);
    expect(brewCapacity(brewOf(soda, coffee, acid)).by).toBe("practice");
  });

  // One or two rolls in 500 ml to 1 l: common practice with coffee alone.
  it("of coffee alone is 2.9 rolls, set by the agent", () => {
    const found = brewCapacity(brewOf(soda, coffee));
    expect(found.cm2PerL / 516.128).toBeCloseTo(2.9, 1);
    expect(found.by).toBe("agent");
  });

  it("runs out of agent at all the silver that two electrons a molecule reduce", () => {
    // 16 g/l of vitamin C reduce 2 × 16/176.124 mol of silver; film carries 5 g/m².
    const { allAgentCm2PerL, agentCm2PerL } = brewCapacity(brewOf(soda, acid));
    expect(allAgentCm2PerL).toBeCloseTo((2 * 16) / 176.124 / (5 / 107.8682 / 1e4), 0);
    expect(allAgentCm2PerL / agentCm2PerL).toBeCloseTo(0.3 / 0.2, 9);
  });

  it("is held by bromide where the agent would last: 1 g/l of potassium bromide is 8.4 mmol/l", () => {
    const { bromideCm2PerL } = brewCapacity(brewOf(soda, acid));
    expect((bromideCm2PerL * 0.3 * 5) / 1e4 / 107.8682).toBeCloseTo(1 / 119.0023, 4);
  });

  test.prop([
    sensibleBrew,
    fc.constantFrom("instant-coffee", "ascorbic-acid", "sodium-ascorbate"),
    fc.double({ min: 0.1, max: 40, noNaN: true }),
  ])("never falls with more agent", (brew, agent, massG) => {
    const more = { ...brew, ingredients: [...brew.ingredients, part(agent, massG)] };
    expect(brewCapacity(more).cm2PerL).toBeGreaterThanOrEqual(brewCapacity(brew).cm2PerL);
    expect(brewCapacity(more).allAgentCm2PerL).toBeGreaterThan(brewCapacity(brew).allAgentCm2PerL);
  });

  it("refuses an unknown material", () => {
    expect(() => brewCapacity(brewOf(soda), { material: "glass" as any })).toThrow(
      expect.objectContaining({ code: "not-one-of", path: "/options/material" }),
    );
  });
});
