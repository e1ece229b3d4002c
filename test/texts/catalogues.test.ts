/* The German catalogues over real answers: no English word is left, and each catalogue has every name. */
import { describe, expect, it } from "vitest";
import {
  answerPicture,
  causeNames,
  compensate,
  describeChart,
  describeCompensation,
  describeEvening,
  describeMixing,
  describePicture,
  describePlan,
  describeSteering,
  handbookIngredients,
  mixingSteps,
  planEvening,
  planProcess,
  steer,
  timeChart,
  type DeveloperBrew,
  type PlanCue,
} from "../../src/index.js";
import { answerTexts } from "../../src/text/answerTexts.js";
import { chartTexts } from "../../src/chart/text.js";
import { mixingTexts } from "../../src/text/mixingTexts.js";
import { eveningTexts } from "../../src/text/eveningTexts.js";
import { planTexts } from "../../src/text/planTexts.js";
import { pictureTexts } from "../../src/picture/text.js";
import { steeringTexts } from "../../src/text/steeringTexts.js";
import { de } from "../../src/texts/de.js";
import { sentencesOf, wordsOf } from "../docs/language.js";

const ENGLISH =
  /\b(?:the|and|is|are|of|to|with|without|for|not|bath|time|times|take|mix|more|less|than|below|above|heat|stock|years|every|until|undefined|NaN|null|object)\b/i;

// All invented: a weekend workshop in a mountain hut.
const known = { timeS: 540, temperatureC: 20, dilution: "stock", agitation: { everyS: 30 } } as const;
const answer = compensate(known, {
  temperatureC: 14.5,
  dilution: "1+1",
  agitation: "stand",
  usedCm2PerL: 300,
  ageH: 2,
  gamma: undefined,
});
const brew = {
  volumeMl: 500,
  ingredients: [
    { ingredient: "sodium-hydroxide", massG: 3 },
    { ingredient: "soda-anhydrous", massG: 20, spoons: 2, spoonMl: 5, heap: "rounded" },
    { ingredient: "instant-coffee", massG: 20 },
    { ingredient: "ascorbic-acid", massG: 8 },
    { ingredient: "brewed-coffee", massG: 100 },
  ],
};
const vessels = ["tank", "tray", "drum"] as const;
const plans = vessels.map((vessel) =>
  planProcess({
    vessel,
    timeS: 540,
    temperatureC: 17.5,
    startTemperatureC: 18.5,
    volumeMl: 500,
    topUpMl: 100,
    rest: true,
    dilution: "1+9",
    sensitization: "orthochromatic",
    baths: { preSoak: {}, stop: {}, fix: {}, clearingAid: {}, wash: { method: "soak" }, wettingAgent: {} },
  }),
);
const evening = planEvening({
  baseline: { timeS: 540, temperatureC: 20 },
  conditions: { temperatureC: { startC: 20, ambientC: 14, timeConstantS: 3600 } },
  plates: [{ areaCm2: 108, name: "Gipfel" }, { areaCm2: 108 }, { areaCm2: 108, material: "film" }],
  vessel: "tray",
  volumeMl: 500,
  topUpMl: 50,
  betweenS: 60,
});
const chart = timeChart({ baseline: known, temperaturesC: [14, 20, 60], dilutions: ["stock", "1+1"] });
const log = [
  { timeS: 0, temperatureC: 20 },
  { timeS: 240, temperatureC: 17 },
];

function wordsOfPicture(): readonly string[] {
  const picture = answerPicture({ baseline: known, conditions: { temperatureC: 14.5 } });
  const words = describePicture(picture, { texts: de.picture, answerTexts: de.answer });
  return Object.values(words).flatMap((one: unknown) =>
    (JSON.stringify(one).match(/"[^"]*"/g) ?? []).filter((text) => !/^"(?:cause|basis|change)"$/.test(text)),
  );
}

const caustic: DeveloperBrew = {
  volumeMl: 500,
  ingredients: [
    { ingredient: "sodium-hydroxide", massG: 3.5 },
    { ingredient: "instant-coffee", massG: 20, spoons: 1, spoonMl: 15, heap: "heaped" },
    { ingredient: "ascorbic-acid", massG: 8, spoons: 2, spoonMl: 5, heap: "rounded" },
  ],
};
const small: DeveloperBrew = {
  volumeMl: 120,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 4, spoons: 1, spoonMl: 5 },
    { ingredient: "instant-coffee", massG: 4 },
  ],
};

const said: readonly (readonly [name: string, lines: readonly string[]])[] = [
  ["a compensated time", describeCompensation(answer, de.answer)],
  ["the same in °F", describeCompensation(answer, de.answer, { unit: "F" })],
  ...plans.map((plan, i) => [`a plan in a ${vessels[i]!}`, describePlan(plan, de.plan)] as const),
  ["an evening", describeEvening(evening, de.evening)],
  ["the mixing of a brew", describeMixing(mixingSteps(brew as never), de.mixing)],
  ["the mixing of one with caustic soda and a spoon", describeMixing(mixingSteps(caustic), de.mixing)],
  ["the mixing of a small one", describeMixing(mixingSteps(small), de.mixing)],
  ["a chart", describeChart(chart, de.chart)],
  [
    "a run in progress",
    describeSteering(steer({ baseline: known, conditions: {}, log }), de.steering, { vessel: "tray" }),
  ],
  ["a picture", wordsOfPicture()],
];

describe("the German of", () => {
  it.each(said)("%s has no English word, in short sentences", (_, lines) => {
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.filter((line) => ENGLISH.test(line))).toEqual([]);
    const prose = lines.filter((line) => !line.startsWith("Bereitstellen: "));
    expect(prose.flatMap((line) => sentencesOf(line)).filter((one) => wordsOf(one).length > 30)).toEqual([]);
  });
});

describe("the life of a brew in German", () => {
  it("is told with when it may fail, and how soon to begin", () => {
    const rest = (acidG: number): string =>
      describeMixing(
        mixingSteps({
          volumeMl: 1000,
          ingredients: [
            { ingredient: "soda-anhydrous", massG: 54 },
            { ingredient: "ascorbic-acid", massG: acidG },
          ],
        }),
        de.mixing,
      ).find((line) => line.includes("Blasen"))!;
    expect(rest(16)).toMatch(
      /Es hält etwa 3 h\. Es kann zwischen 1,5 und 6 h jederzeit versagen\. Binnen einer Stunde beginnen\.$/,
    );
    expect(rest(4)).toMatch(/ h jederzeit versagen\. Sofort beginnen\.$/);
  });
});

describe("spoons in German", () => {
  it("are one or many by the number that is read", () => {
    const line = (spoons: number): string =>
      describeMixing(
        mixingSteps({ volumeMl: 500, ingredients: [{ ingredient: "soda-anhydrous", massG: 12, spoons }] }),
        de.mixing,
      )[1]!;
    expect(line(1)).toContain("1 gestrichenen Löffel zu 5 ml");
    expect(line(1.05)).toContain("1 gestrichenen Löffel zu 5 ml");
    expect(line(1.13)).toContain("1,25 gestrichene Löffel zu 5 ml");
  });
});

describe("the catalogues", () => {
  it("have every field of the English ones", () => {
    const pairs: readonly (readonly [object, object])[] = [
      [de.answer, answerTexts],
      [de.answer.causes, answerTexts.causes],
      [de.answer.bases, answerTexts.bases],
      [de.chart, chartTexts],
      [de.plan, planTexts],
      [de.evening, eveningTexts],
      [de.plan.steps, planTexts.steps],
      [de.plan.materials, planTexts.materials],
      [de.mixing.steps, mixingTexts.steps],
      [de.picture, pictureTexts],
      [de.steering, steeringTexts],
      [de.ingredients, handbookIngredients],
    ];
    for (const [german, english] of pairs)
      expect(Object.keys(german).sort()).toEqual(Object.keys(english).sort());
    expect(Object.keys(de.causes)).toEqual(expect.arrayContaining([...causeNames]));
  });
  it("say every cue in every vessel", () => {
    const actions: readonly PlanCue["do"][] = [
      ...(["pour-in", "tap", "agitate", "stand", "pour-out", "rinse", "check-clear", "fill"] as const),
      ...(["run-water", "change-water", "hang-up", "light-off", "light-on", "top-up", "temper"] as const),
    ];
    for (const vessel of vessels)
      for (const step of Object.keys(de.plan.steps) as (keyof typeof de.plan.steps)[])
        for (const action of actions)
          for (const durationS of [0, 30]) {
            const data = { temperatureC: 18.5, volumeMl: 100, sensitization: "panchromatic" } as const;
            const text = de.plan.cue({ do: action, durationS, data }, { step, vessel }, "C");
            expect(text).toMatch(/^[A-ZÄÖÜ\d].*\.$/);
            expect(text).not.toMatch(ENGLISH);
          }
  });
});
