/* A field that no function of brews reads is told by its place: misspelt, it would pass for one left out. */
import { describe, expect, it } from "vitest";
import {
  brewStrength,
  chartRecipe,
  checkBrew,
  massOf,
  proposeBrew,
  spoonsFor,
  timeChart,
  type Caution,
} from "../../src/index.js";
import { anyOf, caught } from "../helpers.js";

const soda = { ingredient: "soda-anhydrous", massG: 20 } as const;
const coffee = { ingredient: "instant-coffee", massG: 20 } as const;
const tablets = { ingredient: "ascorbic-acid-tablet", tablets: 4, labelMg: 500 } as const;
const sound = { volumeMl: 500, ingredients: [soda, coffee, tablets] };
const misspelt = anyOf({
  ...sound,
  "temprature": 14,
  "x-shelf": "left",
  "ingredients": [soda, { ...coffee, spoon: 7 }, { ...tablets, massG: 2 }],
});
const unread = ({ cautions }: { readonly cautions: readonly Caution[] }) =>
  cautions.flatMap(({ code, path, data }) => (code === "unknown-field" ? [[path, data.nearest]] : []));

describe("a field that is not read", () => {
  it.each([
    [
      "of a proposal",
      () =>
        proposeBrew(anyOf({ shelf: ["instant-coffee", "soda-anhydrous"], volumeMl: 500, temperaturC: 14 })),
      [["/temperaturC", "temperatureC"]],
    ],
    [
      "of a brew, its parts and its use",
      () => ({ cautions: checkBrew(misspelt, anyOf({ age: 2 })) }),
      [
        ["/temprature", "temperatureC"],
        ["/ingredients/1/spoon", "spoons"],
        ["/ingredients/2/massG", undefined],
        ["/age", "ageH"],
      ],
    ],
    [
      "of spoons",
      () => massOf(anyOf({ ...soda, spoons: 2, size: "huge" })),
      [
        ["/massG", undefined],
        ["/size", undefined],
      ],
    ],
    ["of tablets", () => massOf(anyOf({ ...tablets, spoons: 2 })), [["/spoons", undefined]]],
    ["of grams to spoon", () => spoonsFor(anyOf({ ...soda, heaped: true })), [["/heaped", "heap"]]],
    [
      "of two brews and what they share",
      () => brewStrength(sound, { ...sound, ...anyOf({ iso: 100 }) }, undefined, anyOf({ samejar: false })),
      [
        ["/to/iso", undefined],
        ["/options/samejar", "sameJar"],
      ],
    ],
  ])("%s has a caution", (_, call, expected) => {
    expect(unread(call())).toEqual(expected);
  });
  it("has none where all fields are read", () => {
    const brews = [sound, { ...sound, temperatureC: 14 }] as const;
    expect(unread({ cautions: checkBrew(brews[1], { ageH: 1 }) })).toEqual([]);
    expect(unread(brewStrength(...brews, undefined, { sameJar: true, sameSpoon: false }))).toEqual([]);
    expect(unread(massOf({ ingredient: "soda-anhydrous", spoons: 2, spoonMl: 15, heap: "level" }))).toEqual(
      [],
    );
  });
  it("of a chart is refused, since a chart has no cautions of its own", () => {
    const baseline = { timeS: 600, temperatureC: 20, dilution: "1+9" };
    const axes = anyOf({ temperaturesC: [20], dilution: ["1+9"] });
    const recipe = {
      schemaVersion: 2,
      material: { name: "film" },
      developer: { kind: "stock", name: "developer", dilution: "1+9" },
      baseline,
    } as const;
    const expected = { must: "known-field", hint: "dilutions" };
    expect(caught(() => timeChart({ baseline, ...axes }))).toMatchObject({
      path: "/input/dilution",
      expected,
    });
    expect(caught(() => chartRecipe(recipe, axes))).toMatchObject({ path: "/axes/dilution", expected });
  });
});
