/* Pictures of an invented evening in a mountain hut, for the tests of their data and their drawing. */
import { answerPicture, handbookTemperatureLaw, learn, startKnowledge } from "../../src/index.js";
import type { AnswerPicture, AnswerPictureInput, Knowledge } from "../../src/index.js";

export const baseline = {
  timeS: 510,
  temperatureC: 20,
  dilution: "1+9",
  agitation: { everyS: 60 },
  hydroquinone: true,
  logSd: 0.06,
} as const;
export const knowledge: Knowledge = { temperature: handbookTemperatureLaw("metol-hydroquinone") };
export const conditions = { temperatureC: 14, dilution: "1+14", usedCm2PerL: 648 } as const;
export const hut: AnswerPictureInput = { baseline, conditions, knowledge, strip: true };

const rows = [
  { temperatureC: 18, timeS: 360 },
  { temperatureC: 20, timeS: 300 },
  { temperatureC: 24, timeS: 215 },
  { temperatureC: 26, timeS: 180 },
] as const;

const soft = {
  timeS: 510,
  temperatureC: 20,
  dilution: "1+9",
  agitation: { everyS: 60 },
  emulsion: "soft",
} as const;

const learned = learn(startKnowledge(baseline), [
  { timeS: 500, temperatureC: 20, outcome: { kind: "good" } },
  { timeS: 800, temperatureC: 15, dilution: "1+9", outcome: { kind: "steps", steps: -0.5 } },
  { timeS: 700, temperatureC: 15, outcome: { kind: "thin" } },
  { timeS: 600, temperatureC: 16, outcome: { kind: "failed" } },
  { timeS: 300, temperatureC: 24, printed: true, outcome: { kind: "judged", timeRatio: 1.1, logSd: 0.05 } },
]);

/** Inputs by what is special about them. */
export const inputs: Readonly<Record<string, AnswerPictureInput>> = {
  "the hut": hut,
  "a warm bath, all else equal": { baseline, conditions: { temperatureC: 23 }, knowledge },
  "many causes, some shorter": {
    baseline: soft,
    conditions: {
      temperatureC: 16,
      dilution: "1+4",
      agitation: "continuous",
      pushStops: 1,
      ageH: 4,
      usedCm2PerL: 200,
      thermometer: "the red one",
    },
    strip: { count: 4 },
  },
  "refused, in °F": { ...hut, conditions: { ...conditions, temperatureC: 57 } },
  "past its life": {
    baseline: { timeS: 510, temperatureC: 20 },
    conditions: { ageH: 9 },
    knowledge: { age: { kind: "life", lifeH: 3 } },
  },
  "a table": {
    baseline: { timeS: 300, temperatureC: 20 },
    conditions: { temperatureC: 24 },
    knowledge: { temperature: { kind: "table", rows } },
  },
  "own runs": { baseline: learned.baseline, conditions: { temperatureC: 15 }, knowledge: learned },
  "a first guess": { baseline: { timeS: 1054, temperatureC: 14, logSd: 0.62 }, strip: true },
  "a bath that cools": {
    baseline,
    conditions: { temperatureC: { startC: 18, ambientC: 12, timeConstantS: 1800 } },
    knowledge,
    strip: true,
  },
  "a narrow interval": { baseline: { timeS: 510, temperatureC: 20, logSd: 0.01 }, strip: true },
  "an interval that no clock shows": { baseline: { timeS: 1e6, temperatureC: 20, logSd: 3 }, strip: true },
  "seconds": { baseline: { timeS: 40, temperatureC: 20, logSd: 0.1 }, conditions: { temperatureC: 22 } },
  "all there is, from 0 to 100 °C": { ...hut, fromC: 0, toC: 100 },
};

export const pictures: readonly (readonly [string, AnswerPicture])[] = Object.entries(inputs).map(
  ([name, input]) => [name, answerPicture(input)],
);

export const pictureOf = (name: string): AnswerPicture => answerPicture(inputs[name]!);
