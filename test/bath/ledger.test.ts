import { fc, test } from "../property.js";
import { describe, expect, it } from "vitest";
import {
  bathState,
  bathVolumeMl,
  checkLedger,
  handbookReplenishment,
  replenishmentMl,
  type BathLedger,
} from "../../src/index.js";
import { anyOf } from "../helpers.js";

// An invented weekend at the hut: a litre mixed at nine, two rolls at ten.
const ledger: BathLedger = { volumeMl: 1000, mixedAtH: 9, processed: [{ atH: 10, areaCm2: 1000 }] };
const used = (more: Partial<BathLedger>, atH = 20): number =>
  bathState({ ...ledger, ...more }, atH).usedCm2PerL;

describe("a ledger", () => {
  it("lets a share of the use go with what is poured off, and thins it with fresh bath", () => {
    const pouredOff = [{ atH: 11, volumeMl: 200 }];
    expect(used({ pouredOff })).toBe(1000);
    expect(used({ pouredOff, toppedUp: [{ atH: 12, volumeMl: 200 }] })).toBe(800);
    expect(used({ pouredOff, toppedUp: [{ atH: 12, volumeMl: 200 }] }, 11.5)).toBe(1000);
    expect(used({ toppedUp: [{ atH: 12, volumeMl: 1000 }] })).toBe(500);
  });
  it("thickens with evaporation, until water makes it up", () => {
    const evaporated = [{ atH: 11, volumeMl: 200 }];
    expect(used({ evaporated })).toBe(1250);
    expect(used({ evaporated, toppedUp: [{ atH: 12, volumeMl: 200 }] })).toBe(1000);
  });
  it("is held by replenisher, and not restored", () => {
    const rule = { mlPerCm2: 0.04 };
    const replenished = (volumeMl: number) => ({ replenished: [{ atH: 11, volumeMl, ...rule }] });
    expect(used(replenished(40))).toBe(0);
    expect(used(replenished(20))).toBe(500);
    expect(used(replenished(400))).toBe(0);
    // Ten times the replenisher after the second thousand takes back that thousand and no more.
    const processed = [...ledger.processed, { atH: 12, areaCm2: 1000 }];
    const twice = [
      { atH: 11, volumeMl: 20, ...rule },
      { atH: 13, volumeMl: 400, ...rule },
    ];
    expect(used({ processed, replenished: twice })).toBe(0);
    expect(used({ processed, replenished: [{ atH: 9, volumeMl: 400, ...rule }] })).toBe(2000);
    // Without a rule it is that of a tank.
    const { mlPerCm2 } = handbookReplenishment["tank-generic"];
    expect(used({ replenished: [{ atH: 11, volumeMl: 500 * mlPerCm2 }] })).toBeCloseTo(500, 6);
  });
  it("has a volume", () => {
    const all: BathLedger = {
      ...ledger,
      pouredOff: [{ atH: 11, volumeMl: 300 }],
      evaporated: [{ atH: 12, volumeMl: 50 }],
      toppedUp: [{ atH: 13, volumeMl: 100 }],
      replenished: [{ atH: 14, volumeMl: 40 }],
    };
    expect([9, 11, 12, 13, 14].map((atH) => bathVolumeMl(all, atH))).toEqual([1000, 700, 650, 750, 750]);
  });
  it("refuses to give more than it holds, wherever it is in the list", () => {
    expect(() => used({ pouredOff: [{ atH: 11, volumeMl: 1000 }] })).toThrow(
      "bathState: ledger.pouredOff[0].volumeMl must be less than the bath holds (1000 ml), got 1000",
    );
    expect(() =>
      used({ toppedUp: [{ atH: 15, volumeMl: 500 }], evaporated: [{ atH: 14, volumeMl: 1200 }] }),
    ).toThrow("bathState: ledger.evaporated[0].volumeMl must be less");
    expect(
      used({ toppedUp: [{ atH: 13, volumeMl: 500 }], evaporated: [{ atH: 14, volumeMl: 1200 }] }),
    ).toBeCloseTo(1000 / 0.3, 6);
    expect(() => bathVolumeMl(anyOf({ ...ledger, toppedUp: null }), 10)).toThrow(
      "bathVolumeMl: ledger.toppedUp must be an array, got null",
    );
    expect(() => used({ replenished: [{ atH: 10, volumeMl: 10, mlPerCm2: 0 }] })).toThrow(
      "bathState: ledger.replenished[0].mlPerCm2 must be above 0",
    );
  });
  const area = fc.double({ min: 1, max: 5000, noNaN: true });
  const rule = fc.record({ mlPerCm2: fc.double({ min: 0.001, max: 1, noNaN: true }) });
  test.prop([area, area, rule, fc.double({ min: 100, max: 1e4, noNaN: true })])(
    "agrees with replenishmentMl: the replenisher for an area leaves the use where it was",
    (before, areaCm2, { mlPerCm2 }, volumeMl) => {
      const start = { volumeMl, mixedAtH: 0, processed: [{ atH: 1, areaCm2: before }] };
      const volume = replenishmentMl({ mlPerCm2 }, areaCm2);
      const after: BathLedger = {
        ...start,
        processed: [...start.processed, { atH: 2, areaCm2 }],
        replenished: [{ atH: 2, volumeMl: volume, mlPerCm2 }],
      };
      expect(bathState(after, 3).usedCm2PerL / bathState(start, 3).usedCm2PerL).toBeCloseTo(1, 9);
    },
  );
  const volumes = fc.array(
    fc.record({
      atH: fc.integer({ min: 0, max: 50 }),
      volumeMl: fc.double({ min: 1, max: 90, noNaN: true }),
    }),
    { maxLength: 4 },
  );
  const anyLedger = fc.record({
    volumeMl: fc.constant(1000),
    mixedAtH: fc.constant(0),
    processed: fc.array(fc.record({ atH: fc.integer({ min: 0, max: 50 }), areaCm2: area }), { maxLength: 6 }),
    replenished: volumes,
    toppedUp: volumes,
    pouredOff: volumes,
    evaporated: volumes,
  });
  test.prop([anyLedger, fc.integer({ min: 0, max: 60 })])(
    "is the same in any order of its entries, and after JSON; its use is never negative",
    (all, atH) => {
      const state = bathState(all, atH);
      expect(state.usedCm2PerL).toBeGreaterThanOrEqual(0);
      expect(bathState(JSON.parse(JSON.stringify(all)), atH)).toEqual(state);
      const turned = Object.fromEntries(
        Object.entries(all).map(([field, value]) => [
          field,
          Array.isArray(value) ? value.slice().reverse() : value,
        ]),
      ) as unknown as BathLedger;
      expect(bathState(turned, atH).usedCm2PerL).toBeCloseTo(state.usedCm2PerL, 6);
      expect(bathVolumeMl(all, atH)).toBeGreaterThan(0);
      const checked = checkLedger(all);
      expect(checked).toEqual({ ok: true, ledger: all, cautions: [] });
    },
  );
  test.prop([anyLedger, fc.integer({ min: 0, max: 60 }), fc.double({ min: 1, max: 500, noNaN: true })])(
    "is never more used for being topped up, nor less for evaporating",
    (drawn, atH, volumeMl) => {
      // Where replenisher takes back a fixed area, what a pour-off left of the use decides.
      const all = { ...drawn, replenished: [] };
      const before = bathState(all, 60).usedCm2PerL;
      const topped = { ...all, toppedUp: [...all.toppedUp, { atH, volumeMl }] };
      expect(bathState(topped, 60).usedCm2PerL).toBeLessThanOrEqual(before * (1 + 1e-9));
      const dried = { ...topped, evaporated: [...all.evaporated, { atH: 60, volumeMl: volumeMl / 2 }] };
      expect(bathState(dried, 60).usedCm2PerL).toBeGreaterThanOrEqual(
        bathState(topped, 60).usedCm2PerL * (1 - 1e-9),
      );
    },
  );
});

describe("checkLedger", () => {
  it("gives back a clean copy, and says which fields it did not read", () => {
    const typed = {
      ...ledger,
      volumeL: 1,
      processed: [{ atH: 10, areaCm2: 1000, film: "roll" }],
      toppedUp: [{ atH: 11, volumeMl: 5, mlPerCm2: 1 }],
    };
    const checked = checkLedger(typed);
    expect(checked).toMatchObject({
      ok: true,
      ledger: { ...ledger, toppedUp: [{ atH: 11, volumeMl: 5 }] },
      cautions: [
        { code: "unknown-field", path: "/volumeL" },
        { code: "unknown-field", path: "/processed/0/film" },
        { code: "unknown-field", path: "/toppedUp/0/mlPerCm2" },
      ],
    });
    expect(checked.ok && checked.ledger).not.toHaveProperty("volumeL");
    expect(typed.processed[0]).toHaveProperty("film");
  });
  it("keeps fields of one's own in the ledger and its entries, where they are plain data", () => {
    const own = {
      ...ledger,
      "x-bottle": { shelf: "left" },
      "x-none": undefined,
      "processed": [{ "atH": 10, "areaCm2": 1000, "x-film": "roll 7" }],
      "toppedUp": [{ "atH": 11, "volumeMl": 5, "x-by": null }],
    };
    const checked = checkLedger(own);
    expect(checked).toStrictEqual({ ok: true, ledger: JSON.parse(JSON.stringify(own)), cautions: [] });
    expect(checked.ok && checked.ledger["x-bottle"]).not.toBe(own["x-bottle"]);
    const lost = { ...own, "x-made": () => 1, "processed": [{ ...own.processed[0], "x-on": { day: NaN } }] };
    expect(checkLedger(lost)).toMatchObject({
      ok: false,
      problems: [
        { path: "/x-made", expected: { must: "plain-data" } },
        { path: "/processed/0/x-on/day", expected: { must: "plain-data" } },
      ],
    });
  });
  it("names every problem at once, with a path into the ledger", () => {
    const checked = checkLedger({
      volumeMl: "1 l",
      mixedAtH: 9,
      processed: [{ atH: 8, areaCm2: 1000 }, 5, { atH: 10, areaCm2: -1 }],
      evaporated: [{ atH: 10 }],
      pouredOff: "all",
    });
    expect(!checked.ok && checked.problems.map(({ code, path, actual }) => [code, path, actual])).toEqual([
      ["wrong-type", "/volumeMl", "1 l"],
      ["out-of-range", "/processed/0/atH", 8],
      ["wrong-type", "/processed/1", 5],
      ["out-of-range", "/processed/2/areaCm2", -1],
      ["wrong-type", "/pouredOff", "all"],
      ["missing", "/evaporated/0/volumeMl", undefined],
    ]);
    expect(!checked.ok && checked.problems[3]).toEqual({
      code: "out-of-range",
      path: "/processed/2/areaCm2",
      expected: { above: 0, max: 1e6, quantity: "areaCm2" },
      actual: -1,
      message: "checkLedger: processed[2].areaCm2 must be above 0 and at most 1000000 cm², got -1",
      sentence: "must be above 0 and at most 1000000 cm², got -1",
    });
  });
  it("finds what takes out more than is in", () => {
    const checked = checkLedger({
      ...ledger,
      pouredOff: [
        { atH: 11, volumeMl: 900 },
        { atH: 12, volumeMl: 100 },
      ],
    });
    expect(!checked.ok && checked.problems.map(({ path }) => path)).toEqual(["/pouredOff/1/volumeMl"]);
  });
  it.each([null, undefined, 5, "ledger", []])("has a problem with %j, and throws nothing", (input) => {
    expect(checkLedger(input)).toMatchObject({ ok: false, problems: [{ path: "" }] });
  });
  test.prop([fc.anything()])("throws nothing, whatever it is given", (input) => {
    const checked = checkLedger(input);
    if (!checked.ok) expect(checked.problems.length).toBeGreaterThan(0);
  });
});
