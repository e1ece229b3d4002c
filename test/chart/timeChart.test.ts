/* Times over temperature and dilution: the rows are the answers of compensate and compensateRecipe. */
import { describe, expect, it } from "vitest";
import {
  chartRecipe,
  chartSvg,
  compensate,
  compensateRecipe,
  describeChart,
  timeChart,
  type Recipe,
} from "../../src/index.js";
import { de } from "../../src/texts/de.js";
import { fc, test } from "../property.js";
import { anyOf, caught } from "../helpers.js";

const baseline = { timeS: 540, temperatureC: 20, dilution: "1+9", hydroquinone: true } as const;

describe("timeChart", () => {
  test.prop([
    fc.uniqueArray(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 8 }),
    fc.uniqueArray(fc.constantFrom("stock", "1+4", "1+9", "1+14", "1+24"), { minLength: 1, maxLength: 4 }),
    fc.record({ usedCm2PerL: fc.integer({ min: 0, max: 1000 }) }),
  ])(
    "is compensate in each cell, dilution by dilution, in the order given",
    (temperaturesC, dilutions, conditions) => {
      const { rows } = timeChart({ baseline, conditions, temperaturesC, dilutions });
      const expected = dilutions.flatMap((dilution) =>
        temperaturesC.map((temperatureC) => {
          const answer = compensate(baseline, { ...conditions, temperatureC, dilution });
          const { timeS, lowS, highS, refused, cautions } = answer;
          const row = { dilution, temperatureC, timeS, lowS, highS, refused };
          return cautions.length > 0 ? { ...row, cautions } : row;
        }),
      );
      expect(rows).toEqual(expected);
    },
  );
  it("has one column where no dilution is asked, named where it is known", () => {
    const named = timeChart({ baseline, temperaturesC: [20, 18] });
    expect(named.dilutions).toEqual(["1+9"]);
    expect(named.rows.map(({ dilution }) => dilution)).toEqual(["1+9", "1+9"]);
    const unnamed = timeChart({ baseline: { timeS: 540, temperatureC: 20 }, temperaturesC: [20] });
    expect(unnamed.rows).toEqual([expect.objectContaining({ temperatureC: 20, timeS: 540, refused: false })]);
    expect("dilutions" in unnamed || "dilution" in unnamed.rows[0]!).toBe(false);
  });
  it("refuses what must not be used, with the reason", () => {
    const { rows } = timeChart({ baseline, temperaturesC: [20, 10] });
    expect(rows.map(({ refused }) => refused)).toEqual([false, true]);
    expect(rows[1]?.cautions?.[0]).toMatchObject({ code: "hydroquinone-cold", severity: "stop" });
  });
  it("says what else its times are for, in each language, and nothing where nothing else is", () => {
    const conditions = { usedCm2PerL: 500, ageH: 3, agitation: "continuous", by: "the host" } as const;
    const known = { ...baseline, agitation: { everyS: 60 } } as const;
    const chart = timeChart({
      baseline: known,
      conditions,
      temperaturesC: [20, 14],
      dilutions: ["1+9", "1+4"],
    });
    expect(chart.held).toEqual([
      { cause: "agitation", to: "continuous" },
      { cause: "use", to: 500 },
      { cause: "age", to: 3 },
    ]);
    expect(describeChart(chart)[1]).toBe("All times are for agitation continuous, use 500 cm²/l, age 3 h.");
    expect(describeChart(chart, de.chart)[1]).toBe(
      "Alle Zeiten gelten bei ständiger Bewegung, für ein Bad, das schon 500 cm²/l entwickelt hat, " +
        "für ein 3 h altes Bad.",
    );
    const held = [
      { cause: "fresh" },
      { cause: "agitation", to: { everyS: 60 } },
      { cause: "agitation", to: "stand" },
      { cause: "contrast", to: 0.65 },
      { cause: "strength" },
    ];
    expect(de.chart.held(held)).toBe(
      "Alle Zeiten gelten für ein frisches Bad, bei Bewegung alle 60 s, bei Standentwicklung, " +
        "für Kontrast 0,65, für Stärke.",
    );
    expect(chartSvg(chart)).toContain("All times are for agitation continuous");
    const plain = timeChart({ baseline: known, temperaturesC: [14] });
    expect("held" in plain).toBe(false);
    expect(describeChart(plain).join()).not.toContain("All times are for");
    expect(caught(() => describeChart({ ...plain, held: [{}] } as never))).toMatchObject({
      path: "/chart/held/0/cause",
    });
  });
  it("names every cause that rests on a general rule in some cell", () => {
    const chart = timeChart({
      baseline: { timeS: 510, temperatureC: 20, dilution: "1+25" },
      temperaturesC: [20, 22],
      dilutions: ["1+25", "1+50"],
    });
    const told = describeChart(chart).filter((line) => line.includes("No data of your own"));
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/temperature.*dilution.*together/);
  });
  it("survives JSON", () => {
    const chart = timeChart({
      baseline,
      temperaturesC: [20, 10],
      dilutions: ["1+9", { stockParts: 1, waterParts: 14 }],
    });
    expect(JSON.parse(JSON.stringify(chart))).toEqual(chart);
    expect(chart.dilutions).toEqual(["1+9", "1+14"]);
  });
  it.each([
    ["no input", undefined, "missing", "/input"],
    ["no temperature", { baseline, temperaturesC: [] }, "empty", "/input/temperaturesC"],
    ["too many", { baseline, temperaturesC: Array(1001).fill(20) }, "out-of-range", "/input/temperaturesC"],
    [
      "a temperature of boiling oil",
      { baseline, temperaturesC: [20, 180] },
      "out-of-range",
      "/input/temperaturesC/1",
    ],
    [
      "a dilution with a colon",
      { baseline, temperaturesC: [20], dilutions: ["1:9"] },
      "ambiguous",
      "/input/dilutions/0",
    ],
    [
      "too many dilutions",
      { baseline, temperaturesC: [20], dilutions: Array(101).fill("1+9") },
      "out-of-range",
      "/input/dilutions",
    ],
    [
      "dilutions beside an unknown one",
      { baseline: { timeS: 540, temperatureC: 20 }, temperaturesC: [20], dilutions: ["1+9"] },
      "needs-counterpart",
      "/conditions/dilution",
    ],
  ])("refuses %s", (_, input, code, path) => {
    expect(caught(() => timeChart(anyOf(input)))).toMatchObject({ code, path });
  });
});

describe("chartRecipe", () => {
  const recipe: Recipe = {
    schemaVersion: 2,
    material: { name: "plate", kind: "plate" },
    developer: { kind: "stock", name: "hut concentrate", dilution: "1+14" },
    baseline: { timeS: 540, temperatureC: 20, dilution: "1+9" },
  };
  it("is compensateRecipe in each cell, at the recipe's own dilution unless others are asked", () => {
    const own = chartRecipe(recipe, { temperaturesC: [22, 18] });
    expect(own.known).toEqual({ timeS: 540, temperatureC: 20, dilution: "1+9" });
    expect(own.rows.map(({ dilution, timeS }) => [dilution, timeS])).toEqual(
      [22, 18].map((temperatureC) => ["1+14", compensateRecipe(recipe, { temperatureC }).timeS]),
    );
    const asked = chartRecipe(recipe, { temperaturesC: [20], dilutions: ["1+9"] });
    expect(asked.rows[0]?.timeS).toBe(540);
  });
  it("refuses all times of a brew that cannot develop", () => {
    const brew = {
      volumeMl: 500,
      ingredients: [
        { ingredient: "instant-coffee", massG: 20 },
        { ingredient: "baking-soda", massG: 20 },
      ],
    };
    const weak = anyOf({
      ...recipe,
      developer: { kind: "brew", brew },
      baseline: { timeS: 900, temperatureC: 20 },
    });
    const { rows, dilutions } = chartRecipe(weak, { temperaturesC: [22, 20, 18] });
    expect(dilutions).toBeUndefined();
    expect(rows.map(({ refused }) => refused)).toEqual([true, true, true]);
  });
});
