/* Two notebooks in one: which runs are the same, and what both must share. */
import { describe, expect, it } from "vitest";
import {
  type DevelopmentRun,
  learn,
  mergeKnowledge,
  type LearnedKnowledge,
  startKnowledge,
} from "../../src/index.js";
import { entryOf } from "../../src/learning/notebook.js";
import { good, start, baseline } from "./start.js";
import { anyOf } from "../helpers.js";

describe("the text by which a run is the same", () => {
  it("holds every field in one order, and those of an outcome by name", () => {
    const run: DevelopmentRun = {
      outcome: { wanted: 0.6, kind: "gamma", gamma: 0.5 },
      temperatureC: 18,
      timeS: 500,
      id: "a",
    };
    const text =
      '["a",null,500,18,null,null,null,null,null,null,null,null,null,null,[["gamma",0.5],["kind","gamma"],["wanted",0.6]],null]';
    expect(entryOf("run", run).text).toBe(text);
  });
  it("is that of a run that leaves its push out where none is said", () => {
    const pushed = (pushStops?: number): string => entryOf("run", { ...good(500), pushStops }).text;
    expect(pushed(0)).toBe(pushed());
    expect(pushed(1)).not.toBe(pushed());
    const [one, two] = [good(500, 20, { id: "a" }), good(500, 20, { id: "a", pushStops: 0 })];
    expect(learn(learn(start, [one]), [two]).runs).toEqual([one]);
    expect(
      mergeKnowledge(learn(start, [good(500)]), learn(start, [{ ...good(500), pushStops: 0 }])).runs,
    ).toHaveLength(1);
  });
  it("keeps runs that are the same in the order in which they came", () => {
    // The caller's own field is no part of what makes two runs the same.
    const [one, two] = [
      { ...good(500), "x-place": 1 },
      { ...good(500), "x-place": 2 },
    ];
    expect(learn(start, [one, two]).runs).toEqual([one, two]);
    expect(learn(start, [two, one]).runs).toEqual([two, one]);
  });
});

describe("fields of one's own in a run", () => {
  const run = (own: object, id?: string): DevelopmentRun => ({ ...good(500), ...(id && { id }), ...own });
  const of = (...runs: readonly DevelopmentRun[]): LearnedKnowledge => learn(start, runs);
  const merged = (a: LearnedKnowledge, b: LearnedKnowledge): string =>
    JSON.stringify(mergeKnowledge(a, b).runs);
  const [photo, rating] = [{ "x-photo": "hut.jpg" }, { "x-rating": { stars: 3 } }];

  it.each(["a", undefined])("are kept of both sides of a merger, with the id %s", (id) => {
    const [mine, yours] = [of(run(photo, id)), of(run(rating, id))];
    expect(mergeKnowledge(mine, yours).runs).toEqual([run({ ...photo, ...rating }, id)]);
    expect(merged(yours, mine)).toBe(merged(mine, yours));
    const other = of(run({ "x-photo": "tent.jpg" }, id));
    expect(mergeKnowledge(mine, other).runs).toEqual([run(photo, id)]);
    expect(mergeKnowledge(other, mine).runs).toEqual(other.runs);
    expect(Object.isFrozen(mergeKnowledge(mine, yours).runs[0])).toBe(true);
  });
  it("are kept of a run that is learned again, and of a stored one that is there twice", () => {
    const both = run({ ...photo, ...rating }, "a");
    expect(learn(of(run(photo, "a")), [run(rating, "a")]).runs).toEqual([both]);
    expect(learn(of(run(photo, "a")), [run({ "x-photo": 1 }, "a")]).runs).toEqual([run(photo, "a")]);
    const twice = { ...start, runs: [run(photo, "a"), run(rating, "a"), run({}, "b")] };
    expect(learn(twice, []).runs).toEqual([both, run({}, "b")]);
  });
  it("tell which of equal runs is which", () => {
    const [mine, yours] = [of(run({ "x-plate": 2 })), of(run({ "x-plate": 1 }), run({ "x-plate": 2 }))];
    expect(mergeKnowledge(mine, yours).runs).toEqual(yours.runs);
    expect(merged(yours, mine)).toBe(merged(mine, yours));
    const more = of(run({ "x-plate": 2, ...photo }), run({}));
    expect(mergeKnowledge(more, of(run({}), run({}))).runs).toHaveLength(2);
    expect(merged(of(run({}), run({})), more)).toBe(merged(more, of(run({}), run({}))));
  });
});

describe("mergeKnowledge", () => {
  it("keeps a run twice that the second notebook has twice and the first once", () => {
    const merged = mergeKnowledge(learn(start, [good(500)]), learn(start, [good(500), good(500)]));
    expect(merged.runs.map(({ timeS }) => timeS)).toEqual([500, 500]);
  });
  it("takes a null in what both started from as it takes any value", () => {
    const own = (film: unknown): LearnedKnowledge => startKnowledge(anyOf({ ...baseline, "x-film": film }));
    expect(mergeKnowledge(own(null), own(null))).toEqual(own(null));
    expect(() => mergeKnowledge(own(null), own("sheet"))).toThrow(
      new RangeError(
        "mergeKnowledge: b must be knowledge from the same prior as a: learn its runs into a instead",
      ),
    );
  });
});
