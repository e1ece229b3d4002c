/*
 * A recipe on the page: opening it sets every blank, whatever stood there before, and the time is the package's
 * for that recipe. All recipes are invented.
 */
import {
  checkRecipe,
  compensateRecipe,
  describePicture,
  learn,
  proposeBrew,
  startKnowledge,
  type Compensation,
  type ProposedBrew,
  type Recipe,
} from "darkroom-kinetics";
import { describe, expect, it } from "vitest";
import { derive, type Answer } from "../../docs/sheet/answer.js";
import { fromKnowledge, fromRecipe, isLearned } from "../../docs/sheet/recipe.js";
import {
  blankNames,
  emptySheet,
  inLanguage,
  inUnit,
  inventedSheet,
  storedSheet,
  type BlankName,
  type Sheet,
} from "../../docs/sheet/sheet.js";

const plate: Recipe = {
  schemaVersion: 2,
  name: "Plate in coffee",
  material: {
    name: "dry plate",
    kind: "plate",
    sensitization: "orthochromatic",
    iso: 3,
    areaCm2: 108,
    pieces: 2,
  },
  developer: {
    kind: "brew",
    brew: {
      volumeMl: 500,
      temperatureC: 20,
      ingredients: [
        { ingredient: "instant-coffee", massG: 20 },
        { ingredient: "soda-anhydrous", massG: 27 },
        { ingredient: "ascorbic-acid", massG: 8 },
      ],
    },
  },
  baseline: { timeS: 900, temperatureC: 20, agitation: { everyS: 60 } },
  conditions: { temperatureC: 17, ageH: 0.5 },
  baths: { stop: {}, fix: { clearingS: 90 }, wash: {}, wettingAgent: {} },
  byInspection: true,
};
const concentrate: Recipe = {
  schemaVersion: 2,
  name: "Hut concentrate, roll film",
  material: { name: "roll film", kind: "film" },
  developer: {
    kind: "stock",
    name: "hut concentrate",
    dilution: "1+25",
    volumeMl: 500,
    hydroquinone: true,
  },
  baseline: { timeS: 540, temperatureC: 20 },
  conditions: { temperatureC: 18 },
};
const odd: Recipe = {
  schemaVersion: 2,
  material: { name: "sheet", emulsion: "soft", areaCm2: 129.0 },
  developer: { kind: "stock", name: "pyro", dilution: "1+49.5", keepingLimitH: 30, capacityCm2PerL: 900 },
  agitation: { everyS: 30 },
  baseline: {
    timeS: 361.4,
    temperatureC: 18.27,
    dilution: "1+1",
    agitation: "continuous",
    gamma: 0.6,
    ageH: 1.234,
    usedCm2PerL: 100,
    logSd: 0.0437,
  },
  conditions: { gamma: 0.7, temperatureC: 19.13, usedCm2PerL: 333.3, pushStops: 1 },
  knowledge: { dilution: { kind: "power", exponent: 0.9, sd: 0.1 } },
};
const bare: Recipe = {
  schemaVersion: 2,
  material: { name: "plate", kind: "plate" },
  developer: { kind: "stock", name: "pyro", dilution: "stock" },
  baseline: { timeS: 300, temperatureC: 18 },
};
const { baseline } = concentrate;
const known = learn(startKnowledge({ ...baseline, dilution: "1+25", hydroquinone: true }), [
  { timeS: 700, temperatureC: 18, dilution: "1+25", outcome: { kind: "good" } },
  { timeS: 600, temperatureC: 20, dilution: "1+25", outcome: { kind: "dense" } },
]);
const recipes = {
  plate,
  concentrate,
  odd,
  bare,
  "learned": { ...concentrate, knowledge: known },
  "learned of another time": { ...concentrate, baseline: { timeS: 400, temperatureC: 20 }, knowledge: known },
} satisfies Record<string, Recipe>;

const open = (recipe: Recipe, before: Sheet): Sheet => {
  const check = checkRecipe(JSON.parse(JSON.stringify(recipe)));
  if (!check.ok) throw new Error(JSON.stringify(check.problems));
  return { ...before, ...fromRecipe(check.recipe, before) };
};
const write = (sheet: Sheet, texts: Partial<Sheet["texts"]>): Sheet => ({
  ...sheet,
  texts: { ...sheet.texts, ...texts },
});
const figures = ({ timeS, lowS, highS, refused }: Compensation): unknown => [
  ...[timeS, lowS, highS].map((s) => Number(s.toPrecision(9))),
  refused,
];
const codes = ({ cautions }: Compensation): readonly string[] =>
  cautions.map(({ code, severity }) => `${severity} ${code}`).sort();
const settled = (sheet: Sheet): Sheet => ({ ...sheet, read: derive(sheet).read });

/** What may stand on the page before a file is opened. */
const sheets = {
  "the invented evening": inventedSheet,
  "an empty sheet": emptySheet(inventedSheet),
  "another spread, in German": {
    ...inventedSheet,
    ...inLanguage(write(inventedSheet, { spread: "180 %", volume: "1.5 l", age: "30 h" }), "de"),
  },
  "another recipe": settled(open(odd, inventedSheet)),
} satisfies Record<string, Sheet>;

const cases = Object.entries(recipes).flatMap(([name, recipe]) =>
  Object.entries(sheets).map(([before, sheet]) => [name, before, recipe, sheet] as const),
);

describe("a recipe that is opened", () => {
  it.each(cases)("%s over %s has the package's time", (_, __, recipe, before) => {
    const sheet = open(recipe, before);
    const answer = derive(sheet);
    expect(answer.problems).toEqual({});
    expect(answer.missing).toEqual([]);
    const wanted = compensateRecipe(recipe);
    expect(figures(answer.compensation)).toEqual(figures(wanted));
    expect(codes(answer.compensation)).toEqual(codes(wanted));
    expect(answer.picture.refused).toBe(wanted.refused);
  });
  it.each(cases)("%s over %s has it in other baths too", (_, __, recipe, before) => {
    const sheet = open(recipe, before);
    for (const [blank, text, conditions] of [
      ["temperature", "11 °C", { temperatureC: 11 }],
      ["temperature", "27 °C", { temperatureC: 27 }],
      ["age", "5 h", { ageH: 5 }],
    ] as const)
      expect(figures(derive(write(sheet, { [blank]: text })).compensation), text).toEqual(
        figures(compensateRecipe(recipe, conditions)),
      );
  });
  it.each(Object.entries(recipes))("%s keeps no text of the sheet before", (_, recipe) => {
    const blanks = Object.values(sheets).map((before) => {
      const { texts } = open(recipe, { ...before, language: "en", unit: "C" });
      return texts;
    });
    for (const texts of blanks) expect(texts).toEqual(blanks[0]);
  });
  it.each(Object.entries(recipes))("%s is handed out again as it was", (_, recipe) => {
    const answer = derive(open(recipe, inventedSheet));
    const check = checkRecipe(JSON.parse(JSON.stringify(answer.recipe)));
    if (!check.ok) throw new Error(JSON.stringify(check.problems));
    expect(figures(compensateRecipe(check.recipe))).toEqual(figures(compensateRecipe(recipe)));
    for (const field of ["developer", "material", "baths", "byInspection"] as const)
      expect(check.recipe[field]).toEqual(recipe[field]);
  });
  it.each(Object.entries(recipes))("%s keeps its time in the other language and unit", (_, recipe) => {
    const sheet = settled(open(recipe, inventedSheet));
    const german = { ...sheet, ...inLanguage(sheet, "de") };
    const fahrenheit = { ...german, ...inUnit(german, "F") };
    for (const one of [german, fahrenheit, { ...fahrenheit, ...inLanguage(fahrenheit, "en") }])
      expect(figures(derive(one).compensation)).toEqual(figures(compensateRecipe(recipe)));
    const { name, knownAgitation, knownTemperature, dilution, age, push } = german.texts;
    expect([knownTemperature, dilution, age, push, knownAgitation].join()).not.toMatch(/\d\.\d|stock|every/);
    expect(name).toBe(recipe.material.name);
  });
  it("says in its blanks what it says", () => {
    expect(open(plate, inventedSheet).texts).toEqual({
      name: "dry plate",
      time: "15:00",
      knownTemperature: "20 °C",
      knownDilution: "stock",
      knownAgitation: "every 60 s",
      spread: "6.8 %",
      temperature: "17 °C",
      dilution: "stock",
      agitation: "every 60 s",
      count: "none",
      format: "7.35x7.35 cm",
      volume: "500 ml",
      age: "0.5 h",
      push: "0",
    });
    const { texts } = open(odd, inventedSheet);
    expect([texts.dilution, texts.knownDilution, texts.agitation, texts.count, texts.format]).toEqual([
      ...["1+49.5", "1+1", "every 30 s", "1.29", "4x5 in"],
    ]);
  });
  it("takes what is written over, and the file again where that is taken back", () => {
    const sheet = open(odd, inventedSheet);
    const over = derive(write(sheet, { time: "7:00", dilution: "1+9" }));
    const wanted = compensateRecipe(
      { ...odd, baseline: { ...odd.baseline, timeS: 420 } },
      { dilution: "1+9" },
    );
    expect(figures(over.compensation)).toEqual(figures(wanted));
    const back = derive(write(sheet, { ...sheet.texts }));
    expect(figures(back.compensation)).toEqual(figures(compensateRecipe(odd)));
  });
  it("gives way to another agent that is chosen", () => {
    const sheet: Sheet = { ...open(plate, inventedSheet), developer: "glycin" };
    const { developer, knowledge } = derive(sheet).recipe;
    expect([developer.kind, Object.keys(knowledge ?? {})]).toEqual(["stock", ["temperature"]]);
  });
});

describe("a known time that was written over in the file", () => {
  const over = (timeS: number): Sheet =>
    open({ ...concentrate, baseline: { ...baseline, timeS }, knowledge: known }, inventedSheet);
  it("stays by a little, with the runs, and is handed out again", () => {
    const sheet = over(540.5);
    expect(sheet.runs).toHaveLength(2);
    const { recipe, given } = derive(sheet);
    expect([recipe.baseline.timeS, given.baseline.timeS]).toEqual([540.5, 540.5]);
    expect(derive(open(recipe, inventedSheet)).recipe.baseline.timeS).toBe(540.5);
  });
  it("that the runs made is not kept: the runs count one by one on the time before it", () => {
    const sheet = over(known.baseline.timeS);
    expect([sheet.runs.length, derive(sheet).given.baseline.timeS]).toEqual([2, 540]);
  });
  it("keeps the runs of the other apart, with their number", () => {
    const { untaught, given } = derive(over(600));
    expect(given.baseline.timeS).toBe(600);
    expect(isLearned(untaught.knowledge ?? {}) && untaught.knowledge).toEqual(known);
  });
});

describe("another sheet", () => {
  it("leaves nothing of a recipe", () => {
    const sheet = { ...open(plate, inventedSheet), ...storedSheet(inventedSheet) };
    expect(derive(sheet).recipe).toEqual(derive(inventedSheet).recipe);
  });
  it("that is empty has an empty cupboard", () => {
    expect(emptySheet(inventedSheet).shelf.items).toEqual([]);
  });
});

describe("knowledge that is opened", () => {
  it("is known, and leaves today's bath as it is", () => {
    const sheet = { ...inventedSheet, ...fromKnowledge(known, inventedSheet) };
    const answer: Answer = derive(sheet);
    expect(answer.baseline.timeS).toBeCloseTo(known.baseline.timeS, 9);
    const today: readonly BlankName[] = ["temperature", "dilution", "agitation", "count", "volume", "age"];
    for (const name of today) expect(sheet.texts[name]).toBe(inventedSheet.texts[name]);
    expect(blankNames.every((name) => typeof sheet.texts[name] === "string")).toBe(true);
  });
});

describe("a brew that is taken", () => {
  const { brew, start } = proposeBrew({
    shelf: ["instant-coffee", "soda-anhydrous", "ascorbic-acid"],
    volumeMl: 500,
    temperatureC: 17,
    material: "plate",
  }) as ProposedBrew;
  const taken: Recipe = {
    schemaVersion: 2,
    material: { name: "plate", kind: "plate", areaCm2: 108 },
    developer: { kind: "brew", brew },
    baseline: { timeS: 900, temperatureC: 17, logSd: start.logSd },
  };
  const sheet: Sheet = { ...open(taken, inventedSheet), developer: "brew" };
  const at = (texts: Partial<Sheet["texts"]>): Compensation => derive(write(sheet, texts)).compensation;

  it("is past its life after five hours, and has no time", () => {
    const answer = derive(write(sheet, { age: "5 h" }));
    expect([answer.rounded, answer.gravest?.code]).toEqual([undefined, "bath-past-life"]);
    expect(answer.picture.refused).toBe(true);
  });
  it("is past its capacity after nine plates, or sooner with less of it", () => {
    expect(codes(at({ count: "9" }))).toContain("warn bath-past-capacity");
    expect(codes(at({ count: "2" })).join()).not.toMatch(/capacity/);
    expect(codes(at({ count: "4", volume: "200 ml" })).join()).toMatch(/capacity/);
  });
  it("is for a plate, whose gelatine is soft", () => {
    expect(at({ temperature: "27 °C" }).refused).toBe(true);
    expect(codes(at({ temperature: "27 °C" }))).toContain("stop soft-emulsion-warm");
  });
  it("stays a brew in the recipe, with its own volume", () => {
    const { developer } = derive(write(sheet, { volume: "1 l" })).recipe;
    expect(developer.kind === "brew" && developer.brew.volumeMl).toBe(1000);
  });
  it("cannot have any volume", () => {
    const answer = derive(write(settled(sheet), { volume: "900 l" }));
    expect([answer.stale, Object.keys(answer.problems)]).toEqual([true, ["volume"]]);
  });
  it("is described as a picture in words", () => {
    expect(describePicture(derive(sheet).picture).description.length).toBeGreaterThan(0);
  });
});

describe("the strip of a recipe", () => {
  const ticked = (recipe: Recipe): Answer => {
    const sheet = { ...inventedSheet, ...fromRecipe(recipe, inventedSheet) };
    return derive({ ...sheet, ticked: derive(sheet).strip!.timesS[1] });
  };
  it("teaches with the push of today", () => {
    const pushed = { ...concentrate, conditions: { ...concentrate.conditions, pushStops: 1 } };
    expect(ticked(pushed).stripRun).toMatchObject({ pushStops: 1 });
  });
  it("teaches nothing where another gradient is wanted than the known one", () => {
    const { baseline, conditions } = concentrate;
    const of = (gamma: number): Recipe => ({
      ...concentrate,
      baseline: { ...baseline, gamma: 0.6 },
      conditions: { ...conditions, gamma },
    });
    expect(ticked(of(0.7)).stripRun).toBeUndefined();
    expect(ticked(of(0.6)).stripRun).toBeDefined();
  });
});
