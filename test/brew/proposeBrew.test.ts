/* The first evening: from a shelf to a brew, or to the one thing that is missing. Shelves are invented. */
import { describe, expect, it } from "vitest";
import {
  brewLife,
  brewPh,
  brewStrength,
  compensate,
  mixingSteps,
  proposeBrew,
  temperatureCautions,
  type BrewMaterial,
  type NoBrew,
  type ProposalInput,
  type ProposedBrew,
  type ShelfItem,
} from "../../src/index.js";

const everyday: ShelfItem[] = ["instant-coffee", "soda-anhydrous", "ascorbic-acid"];
const propose = (shelf: readonly ShelfItem[], more: Partial<ProposalInput> = {}): ProposedBrew | NoBrew =>
  proposeBrew({ shelf, volumeMl: 500, ...more });
const found = (shelf: readonly ShelfItem[], more: Partial<ProposalInput> = {}): ProposedBrew => {
  const proposed = propose(shelf, more);
  if (proposed.brew === undefined) throw new Error(proposed.message);
  return proposed;
};
const missing = (shelf: readonly ShelfItem[], more: Partial<ProposalInput> = {}): [string, string] => {
  const { brew, reason, add } = propose(shelf, more) as NoBrew;
  expect(brew).toBeUndefined();
  return [reason, add];
};
const grams = ({ brew }: ProposedBrew): Record<string, number> =>
  Object.fromEntries(brew.ingredients.map((p) => [p.ingredient, "massG" in p ? p.massG : p.tablets]));

describe("an everyday shelf", () => {
  // Coffee 40, soda 54, vitamin C 16 g/l and about a quarter of an hour for film at 20 °C: common practice.
  it("gives the common brew, a time around a quarter of an hour, and capacity for two rolls", () => {
    const proposal = found(everyday);
    expect(grams(proposal)).toEqual({ "soda-anhydrous": 27, "instant-coffee": 20, "ascorbic-acid": 8 });
    expect(proposal.start).toMatchObject({ timeS: expect.closeTo(900, 6), basis: "default" });
    expect(proposal.start.lowS).toBeLessThan(600);
    expect(proposal.start.highS).toBeGreaterThan(1500);
    expect(Math.floor(proposal.capacityCm2 / 516.128)).toBe(2);
    expect(proposal.lifeH).toBe(brewLife(proposal.brew).lifeH);
    expect(proposal.steps).toEqual(mixingSteps(proposal.brew));
    expect(proposal.appearance).toMatchObject({ factor: 10, logSd: 0.7 });
    expect(proposal.cautions.filter(({ severity }) => severity !== "note")).toEqual([]);
  });

  // Film 15 min (common practice), plate 10.5 min (assumed), paper 4 min (from memory), for the full brew at 20 °C.
  it.each([
    ["film", 900, 0.35],
    ["plate", 630, 0.6],
    ["paper", 240, 0.5],
  ] as const)("has its own time for %s", (material, timeS, logSd) => {
    const { start } = found(everyday, { material });
    expect(start.timeS).toBeCloseTo(timeS, 6);
    expect(start.logSd).toBeGreaterThan(logSd);
    expect(start.logSd).toBeLessThan(1.2 * logSd);
  });

  it("takes longer in the cold, by the generic law, and is less sure", () => {
    const [warm, cold] = [found(everyday).start, found(everyday, { temperatureC: 14 }).start];
    const law = compensate({ timeS: 900, temperatureC: 20 }, { temperatureC: 14 });
    // The brew's own pH at 17 °C hardly counts.
    expect(Math.abs(cold.timeS / law.timeS - 1)).toBeLessThan(0.01);
    expect(cold.logSd).toBeGreaterThan(warm.logSd);
  });

  it("says what compensate says of the temperature", () => {
    for (const [material, emulsion] of [
      ["film", "hardened"],
      ["plate", "soft"],
    ] as const)
      for (const temperatureC of [6, 14, 18, 20, 22, 24, 28]) {
        const proposal = propose(everyday, { material, temperatureC });
        const expected = temperatureCautions(temperatureC, {
          emulsion,
          hydroquinone: false,
          path: "/temperatureC",
        });
        const said = proposal.cautions.filter(({ path }) => path === "/temperatureC");
        expect(said).toEqual(expected);
        expect(proposal.brew === undefined).toBe(expected.some(({ severity }) => severity === "stop"));
      }
  });

  it("wants a restrainer for film, not for paper or a plate", () => {
    const codes = (material: BrewMaterial): string[] =>
      found(everyday, { material }).cautions.map(({ code }) => code);
    expect(codes("film")).toContain("restrainer-wanted");
    expect(codes("paper")).not.toContain("restrainer-wanted");
    expect(codes("plate")).not.toContain("restrainer-wanted");
  });

  it("gives five times in equal ratios over the interval", () => {
    const { strip, start } = found(everyday);
    expect(strip).toHaveLength(5);
    expect(strip[0]).toBeCloseTo(start.lowS, 6);
    expect(strip[4]).toBeCloseTo(start.highS, 6);
    for (const i of [1, 2, 3]) expect(strip[i + 1]! / strip[i]!).toBeCloseTo(strip[1]! / strip[0]!, 9);
  });

  it("is less sure without one of the agents, and with a spoon for a scale", () => {
    const logSd = found(everyday).start.logSd;
    expect(found(["instant-coffee", "soda-anhydrous"]).start.logSd).toBeGreaterThan(Math.hypot(logSd, 0.3));
    expect(found(["ascorbic-acid", "soda-anhydrous"]).start.logSd).toBeGreaterThan(Math.hypot(logSd, 0.5));
    const spooned = found(everyday, { spoonMl: 5 });
    expect(spooned.start.logSd).toBeGreaterThan(logSd);
    expect(spooned.cautions.map(({ code }) => code)).toContain("spoon-range");
  });

  it("is no quicker without one of the agents, at any temperature and for any material", () => {
    for (const material of ["film", "plate", "paper"] as const)
      for (const temperatureC of [14, 20, 24]) {
        const both = found(everyday, { material, temperatureC }).start.timeS;
        for (const agent of ["instant-coffee", "ascorbic-acid"] as const) {
          const { start } = found([agent, "soda-anhydrous"], { material, temperatureC });
          expect(start.timeS).toBeGreaterThanOrEqual(both * (1 - 1e-9));
        }
      }
  });

  it("ends the strip with the bath's life, with a warning, where the interval is longer than that", () => {
    const { strip, lifeH, start, cautions } = found(["instant-coffee", "borax"]);
    expect(start.highS).toBeGreaterThan(3600 * lifeH);
    expect(strip[4]).toBeCloseTo(3600 * lifeH - 600, 6);
    expect(strip[4]).toBeGreaterThan(start.timeS);
    expect(cautions[0]).toMatchObject({
      code: "bath-past-life",
      severity: "warn",
      quantity: "ageH",
      limit: lifeH,
      actual: expect.closeTo((start.highS + 600) / 3600, 9),
    });
  });
  it("warns where the bath may fail before the long end of its time, as compensate does", () => {
    // Coffee alone with soda may fail after half an hour.
    const { brew, start, cautions } = found(["instant-coffee", "soda-anhydrous"]);
    const told = cautions.filter(({ code }) => code.startsWith("bath-"));
    expect(told).toMatchObject([{ code: "bath-may-fail", severity: "warn", path: "/start/highS" }]);
    expect(told[0]!.limit).toBeCloseTo(brewLife(brew).lowH, 9);
    const strength = brewStrength(brew, brew);
    const asked = compensate({ ...start, temperatureC: 20 }, { ageH: 0, strength });
    expect(asked.cautions.map(({ code }) => code)).toContain("bath-may-fail");
    expect(found(everyday).cautions.filter(({ code }) => code.startsWith("bath-"))).toEqual([]);
  });
});

describe("what is taken from the shelf", () => {
  it("takes what there is: hydrates and potash in moles, other coffees in strength, tablets by their label", () => {
    // 27 g of dry soda are 27 × 286.14/105.99 g of crystals (IUPAC CIAAW, 2021).
    expect(grams(found(["instant-coffee", "soda-decahydrate"]))["soda-decahydrate"]).toBeCloseTo(72.89, 1);
    expect(grams(found(["instant-coffee", "potassium-carbonate"]))["potassium-carbonate"]).toBeCloseTo(
      35.2,
      1,
    );
    expect(grams(found(["decaffeinated-coffee", "soda-anhydrous"]))["decaffeinated-coffee"]).toBeCloseTo(
      30,
      9,
    );
    const tablets = found([
      { ingredient: "ascorbic-acid-tablet", labelMg: 500 },
      "soda-anhydrous",
      "instant-coffee",
    ]);
    expect(grams(tablets)["ascorbic-acid-tablet"]).toBe(16);
    expect(tablets.spoons.find(({ ingredient }) => ingredient === "ascorbic-acid-tablet")).toEqual({
      ingredient: "ascorbic-acid-tablet",
      massG: 8,
      tablets: 16,
      labelMg: 500,
    });
  });

  it("says why vitamin C stays on the shelf", () => {
    const told = (...shelf: ShelfItem[]): readonly string[] =>
      found(shelf).cautions.flatMap(({ code }) => (/vitamin-c/.test(code) ? [code] : []));
    expect(told("instant-coffee", "borax", "ascorbic-acid")).toEqual(["vitamin-c-left-out"]);
    expect(told("instant-coffee", "borax")).toEqual(["coffee-without-vitamin-c"]);
    expect(told("instant-coffee", "soda-anhydrous", "ascorbic-acid")).toEqual([]);
  });

  it("leaves what there is too little of", () => {
    const shelf: ShelfItem[] = [
      { ingredient: "soda-anhydrous", massG: 10 },
      "soda-decahydrate",
      "instant-coffee",
    ];
    expect(Object.keys(grams(found(shelf)))).toContain("soda-decahydrate");
    const little = found([...everyday.slice(0, 2), { ingredient: "ascorbic-acid", massG: 3 }]);
    expect(grams(little)["ascorbic-acid"]).toBeCloseTo(2, 1);
    // Twice on the shelf is as much as both.
    const half = { ingredient: "soda-anhydrous", massG: 14 } as const;
    expect(grams(found([half, half, "instant-coffee"]))["soda-anhydrous"]).toBe(27);
  });

  it("restrains film and paper where it can, by bromide before salt, and no plate", () => {
    const shelf: ShelfItem[] = [...everyday, "table-salt", "potassium-bromide"];
    expect(grams(found(shelf))["potassium-bromide"]).toBe(0.5);
    expect(grams(found([...everyday, "table-salt"], { material: "paper" }))["table-salt"]).toBe(5);
    expect(Object.keys(grams(found(shelf, { material: "plate" })))).toHaveLength(3);
  });

  it("follows quarter spoons where rounding would cost more than a tenth", () => {
    // In 100 ml: 1.6 g of vitamin C are 0.39 teaspoons of 4.1 g.
    const { spoons, brew } = found(everyday, { volumeMl: 100 });
    const acid = spoons.find(({ ingredient }) => ingredient === "ascorbic-acid")!;
    expect(acid).toMatchObject({ spoons: 0.5, spoonMl: 5, massG: 2.05 });
    expect(brew.ingredients).toContainEqual(
      expect.objectContaining({ ingredient: "ascorbic-acid", massG: 2.05 }),
    );
  });

  it("measures caustic soda and bromide as a 10 % solution", () => {
    const { spoons } = found(["instant-coffee", "baking-soda", "sodium-hydroxide", "potassium-bromide"]);
    for (const [ingredient, massG, solutionMl] of [
      ["sodium-hydroxide", 5, 50],
      ["potassium-bromide", 0.5, 5],
    ] as const)
      expect(spoons.find((one) => one.ingredient === ingredient)).toEqual({
        ingredient,
        massG,
        solutionMl,
        solutionPercent: 10,
      });
  });

  it.each([5, 33, 250, 1000, 20000])(
    "pours in the steps the millilitres of the list, in %d ml of bath",
    (ml) => {
      const shelf: ShelfItem[] = ["instant-coffee", "baking-soda", "sodium-hydroxide", "potassium-bromide"];
      for (const more of ["ascorbic-acid", "soda-anhydrous", "brewed-coffee"] as const) {
        const proposal = propose([...shelf, more], { volumeMl: ml });
        if (proposal.brew === undefined) continue;
        const listed = proposal.spoons.filter(({ solutionMl }) => solutionMl !== undefined);
        expect(listed.length).toBeGreaterThan(0);
        for (const { ingredient, solutionMl, massG } of listed) {
          const [made, pour] = proposal.steps.filter((step) => step.ingredient === ingredient);
          expect(made!.waterMl! / made!.massG!).toBeGreaterThanOrEqual(10);
          expect([pour!.solutionMl, pour!.massG]).toEqual([
            expect.closeTo(solutionMl!, 9),
            expect.closeTo(massG, 9),
          ]);
        }
      }
    },
  );

  it("measures brewed coffee by the millilitre, in the list and in the steps", () => {
    const { spoons, steps, brew } = found(["brewed-coffee", "soda-anhydrous", "ascorbic-acid"], {
      spoonMl: 5,
    });
    const coffee = { ingredient: "brewed-coffee", massG: 350, volumeMl: 350 } as const;
    expect(spoons.find(({ ingredient }) => ingredient === "brewed-coffee")).toEqual(coffee);
    expect(brew.ingredients).toContainEqual({ ingredient: "brewed-coffee", massG: 350 });
    expect(steps.map((step) => step.do).slice(0, 5)).toEqual([
      "protect",
      "take",
      "dissolve",
      "join",
      "add-last",
    ]);
    expect(steps.map(({ text }) => text).join(" ")).not.toMatch(/some of the coffee|spoons? of \d+ ml \(350/);
  });

  it("counts plates as soft: no bath above pH 11", () => {
    const shelf: ShelfItem[] = ["ascorbic-acid", "trisodium-phosphate", "instant-coffee"];
    for (const shelved of [shelf, everyday, ["ascorbic-acid", "soda-anhydrous"] as const])
      expect(brewPh(found(shelved, { material: "plate" }).brew).ph).toBeLessThan(11);
  });
});

describe("what is missing", () => {
  it.each([
    [[], "no-agent", "instant-coffee"],
    [["soda-anhydrous", "table-salt"], "no-agent", "instant-coffee"],
    [["instant-coffee", "citric-acid"], "no-alkali", "soda-anhydrous"],
    [["instant-coffee", "baking-soda"], "alkali-too-weak", "soda-anhydrous"],
    [["instant-coffee", "sodium-hydroxide"], "caustic-alone", "soda-anhydrous"],
    [["ascorbic-acid-tablet", "soda-anhydrous"], "label-missing", "instant-coffee"],
    [[{ ingredient: "instant-coffee", massG: 2 }, "soda-anhydrous"], "too-little", "instant-coffee"],
    [["instant-coffee", { ingredient: "soda-anhydrous", massG: 2 }], "too-little", "soda-anhydrous"],
    [["ascorbic-acid", "borax"], "too-slow", "soda-anhydrous"],
    [["brewed-coffee", "soda-anhydrous"], "dies-too-soon", "ascorbic-acid"],
  ] as const)("%j: %s, add %s", (shelf, reason, add) => {
    expect(missing(shelf)).toEqual([reason, add]);
  });

  it("baking soda is told how to become washing soda, with the care it takes", () => {
    const { cautions } = propose(["instant-coffee", "baking-soda"]) as NoBrew;
    expect(cautions.map(({ code }) => code)).toEqual(["baking-care", "soda-from-baking"]);
  });

  it("every candidate too alkaline for a plate, or undissolved in the cold, says so", () => {
    const plate = { material: "plate", temperatureC: 40 } as const;
    expect(missing(["brewed-coffee", "potassium-carbonate"], plate)).toEqual([
      "too-alkaline",
      "instant-coffee",
    ]);
    expect(missing(["sodium-ascorbate", "baking-soda", "sodium-hydroxide"], plate)).toEqual([
      "too-alkaline",
      "soda-anhydrous",
    ]);
    const caustic: ShelfItem[] = ["brewed-coffee", "baking-soda", "sodium-hydroxide"];
    expect(missing(caustic, { temperatureC: 0 })).toEqual(["does-not-dissolve", "warm-water"]);
  });

  // Below 4 and above 32 °C, and for a plate above 24 °C, compensate gives no time.
  it.each([
    [3, "film", "too-cold", "warm-water"],
    [0, "plate", "too-cold", "warm-water"],
    [33, "film", "too-warm", "cool-water"],
    [47, "paper", "too-warm", "cool-water"],
    [25, "plate", "too-warm", "cool-water"],
  ] as const)("at %d °C for %s: %s, %s", (temperatureC, material, reason, add) => {
    expect(missing(everyday, { temperatureC, material })).toEqual([reason, add]);
    expect(propose(everyday, { temperatureC, material }).cautions[0]).toMatchObject({
      severity: "stop",
      path: "/temperatureC",
      actual: temperatureC,
    });
  });

  it("a bath too small for the spoon, or too slow, says so", () => {
    expect(missing(everyday, { volumeMl: 1 })).toEqual(["volume-too-small", "more-bath"]);
    const little: ShelfItem[] = [...everyday.slice(0, 2), { ingredient: "ascorbic-acid", massG: 1 }];
    expect(missing(little, { temperatureC: 4 })).toEqual(["too-slow", "warm-water"]);
    const vitaminC: ShelfItem[] = [
      { ingredient: "ascorbic-acid", massG: 2.5 },
      "baking-soda",
      "soda-anhydrous",
    ];
    expect(missing(vitaminC, { temperatureC: 4 })[1]).toBe("instant-coffee");
  });
});

describe("tablets without the figure on their label", () => {
  const labels = (shelf: readonly ShelfItem[]): unknown[] =>
    propose(shelf).cautions.filter(({ code }) => code === "tablet-label");
  const tablets = "ascorbic-acid-tablet";
  it("are left out with a word on how to have them in, with a brew or without", () => {
    const shelf = ["instant-coffee", "soda-anhydrous", tablets] as const;
    expect(Object.keys(grams(found(shelf)))).not.toContain(tablets);
    const expected = expect.objectContaining({ severity: "warn", path: "/shelf" });
    expect(labels(shelf)).toEqual([expected]);
    expect(labels(["brewed-coffee", "soda-anhydrous", tablets])).toEqual([expected]);
    // Too little of the powder for the full recipe: tablets would make up for it.
    expect(labels([...shelf, { ingredient: "ascorbic-acid", massG: 3 }])).toEqual([expected]);
    const labelled = [...shelf.slice(0, 2), { ingredient: tablets, labelMg: 500 }] as const;
    expect(labels(labelled)).toEqual([]);
    expect(Object.keys(grams(found(labelled)))).toContain(tablets);
  });
  it("are passed over where they would not be taken, or where the reason says it", () => {
    expect(labels([...everyday, tablets])).toEqual([]);
    expect(labels(everyday)).toEqual([]);
    expect(labels([tablets, "soda-anhydrous"])).toEqual([]);
  });
});

it("says which field is not read, with a brew or without", () => {
  for (const shelf of [everyday, []])
    expect(proposeBrew({ shelf, volumeMl: 500, temperature: 14 } as any).cautions).toContainEqual(
      expect.objectContaining({ code: "unknown-field", path: "/temperature" }),
    );
});

describe("refuses", () => {
  it.each([
    [undefined, TypeError, "/input"],
    [{ shelf: "coffee", volumeMl: 500 }, TypeError, "/input/shelf"],
    [{ shelf: ["tea"], volumeMl: 500 }, RangeError, "/input/shelf/0"],
    [{ shelf: [{ ingredient: "baking-powder" }], volumeMl: 500 }, RangeError, "/input/shelf/0/ingredient"],
    [{ shelf: [{ ingredient: "borax", massG: 0 }], volumeMl: 500 }, RangeError, "/input/shelf/0/massG"],
    [
      { shelf: [{ ingredient: "ascorbic-acid-tablet", labelMg: "500" }], volumeMl: 500 },
      TypeError,
      "/input/shelf/0/labelMg",
    ],
    [{ shelf: [7], volumeMl: 500 }, TypeError, "/input/shelf/0"],
    [{ shelf: [], volumeMl: 0 }, RangeError, "/input/volumeMl"],
    [{ shelf: [], volumeMl: 500, temperatureC: 60 }, RangeError, "/input/temperatureC"],
    [{ shelf: [], volumeMl: 500, material: "glass" }, RangeError, "/input/material"],
    [{ shelf: [], volumeMl: 500, spoonMl: 0 }, RangeError, "/input/spoonMl"],
  ])("%j", (input, kind, path) => {
    const call = (): unknown => proposeBrew(input as any);
    expect(call).toThrow(kind);
    expect(call).toThrow(expect.objectContaining({ path }));
  });
});
