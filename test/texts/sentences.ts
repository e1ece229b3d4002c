/*
 * Every sentence that people see, in English and in German from the same data: the text of sentences.txt.
 */
import {
  answerPicture,
  compensate,
  describeCautions,
  describeChart,
  describeCompensation,
  describeEvening,
  describeFactor,
  describeMixing,
  describePicture,
  describePlan,
  describeProblem,
  describeSteering,
  learn,
  mixingSteps,
  planEvening,
  planProcess,
  problemTexts,
  startKnowledge,
  steer,
  timeChart,
  type InputErrorCode,
  type InputFormat,
  type InputProblem,
  type InputType,
  type PlanCue,
} from "../../src/index.js";
import { noBrewTexts } from "../../src/brew/text.js";
import { ACTIONS } from "../../src/process/checkedPlan.js";
import { setAsideTexts } from "../../src/learning/text.js";
import { answerTexts } from "../../src/text/answerTexts.js";
import { mixingTexts } from "../../src/text/mixingTexts.js";
import { planTexts } from "../../src/text/planTexts.js";
import { de } from "../../src/texts/de.js";
import { brokenRules } from "./brokenRules.js";
import { englishRules } from "./englishRules.js";
import { cautions } from "./sweep.js";

/** One sentence in both languages, under the name of what says it. */
interface Said {
  readonly name: string;
  readonly english: string;
  readonly german: string;
}

/** The same sentence with other figures is one sentence. */
const form = (text: string): string => text.replace(/\d+(?:[.,]\d+)*/g, "0");

/** The first of each sentence, whatever its figures; at most so many of one name. */
function first(all: readonly Said[], most = Infinity): readonly Said[] {
  const seen = new Set<string>();
  const counts = new Map<string, number>();
  return all.filter(({ name, english, german }) => {
    const key = [name, form(english), form(german)].join("\n");
    const count = counts.get(name) ?? 0;
    if (seen.has(key) || count >= most) return false;
    seen.add(key);
    counts.set(name, count + 1);
    return true;
  });
}

const pairs = (
  names: Readonly<Record<string, string>>,
  german: Readonly<Record<string, string>>,
): readonly Said[] =>
  Object.entries(names).map(([name, english]) => ({ name, english, german: german[name] ?? "" }));

const lines = (name: string, english: readonly string[], german: readonly string[]): readonly Said[] =>
  english.map((line, i) => ({ name, english: line, german: german[i] ?? "" }));

// cautions
const cautioned = [...cautions]
  .sort((a, b) => (a.code < b.code ? -1 : Number(a.code > b.code)))
  .map(({ path: _path, ...caution }): Said => {
    const [english = ""] = describeCautions([caution]);
    const [german = ""] = describeCautions([caution], de.cautions);
    return { name: caution.code, english, german };
  });

// errors
const rules = Object.entries(brokenRules).flatMap(([rule, samples]) =>
  samples.map((data): Said => {
    const wanted = englishRules[rule as keyof typeof englishRules] as (
      data: object,
      actual: unknown,
    ) => string;
    const sentence = `must be ${wanted(data, 7)}, got 7`;
    const expected = { ...data, must: rule } as unknown as InputProblem["expected"];
    const problem: InputProblem = {
      code: "out-of-range",
      path: "/field",
      expected,
      actual: 7,
      message: sentence,
    };
    return {
      name: rule,
      english: describeProblem(problem),
      german: describeProblem(problem, de.problems),
    };
  }),
);
const kindsOfValue: Readonly<Record<InputType, true>> = {
  "number": true,
  "whole number": true,
  "text": true,
  "boolean": true,
  "object": true,
  "array": true,
  "function": true,
  "log": true,
  "drift": true,
  "plan with a development": true,
  "Float64Array": true,
};
const formats: Readonly<Record<InputFormat, true>> = {
  "time": true,
  "temperature": true,
  "volume": true,
  "spread": true,
  "age": true,
  "use": true,
  "count": true,
  "number": true,
  "date": true,
  "date with its year": true,
  "dilution": true,
  "agitation": true,
  "film format": true,
  "outcome": true,
  "column with its unit": true,
  "push": true,
};
const wanted: Readonly<Record<InputErrorCode, readonly (readonly [InputProblem["expected"], unknown])[]>> = {
  "missing": [[{ types: ["number"] }, undefined]],
  "wrong-type": Object.keys(kindsOfValue).map((type) => [{ types: [type as InputType] }, true] as const),
  "empty": [[{ format: "time", examples: ["8:30"] }, ""]],
  "not-a-number": [[{ min: 0, max: 100, quantity: "temperatureC" }, NaN]],
  "out-of-range": [
    [{ min: 0, max: 100, quantity: "temperatureC" }, 300],
    [{ above: 0, max: 1e6, quantity: "timeS" }, -1],
    [{ min: 12, quantity: "temperatureC", path: "/fromC" }, 10],
    [{ above: 12, quantity: "temperatureC", path: "/lowC" }, 10],
    [{ max: 9, quantity: "ageH", path: "/atH" }, 10],
    [{ below: 9, quantity: "ageH", path: "/atH" }, 10],
    [{ types: ["text"], most: 200 }, "a note"],
    [{ least: 2 }, 1],
    [{ most: 100_000 }, 200_000],
  ],
  "not-one-of": [[{ values: ["soft", "hardened"] }, "hard"]],
  "unreadable": Object.keys(formats).map(
    (format) => [{ format: format as InputFormat, examples: ["this", "that"] }, "?"] as const,
  ),
  "ambiguous": [[{ format: "dilution", examples: ["1+9"], readings: ["1+9", "1+8"] }, "1:9"]],
  "too-few": [[{ least: 2 }, 1]],
  "needs-counterpart": [[{ path: "/baseline/gamma" }, undefined]],
};
const expectations = Object.entries(wanted).flatMap(([code, samples]) =>
  samples.map(([expected, actual]): Said => {
    const problem = { code: code as InputErrorCode, path: "/field", expected, actual, message: "" };
    return {
      name: code,
      english: describeProblem(problem, { ...problemTexts }),
      german: describeProblem(problem, de.problems),
    };
  }),
);

// plans
const cues = (Object.keys(ACTIONS) as PlanCue["do"][]).flatMap((action) =>
  (["tank", "tray", "drum"] as const).flatMap((vessel) =>
    (Object.keys(planTexts.steps) as (keyof typeof planTexts.steps)[]).flatMap((step) =>
      [0, 30].map((durationS): Said => {
        const data = { temperatureC: 18.5, volumeMl: 100, sensitization: "panchromatic" } as const;
        const cue = { do: action, durationS, data };
        return {
          name: action,
          english: planTexts.cue(cue, { step, vessel }, "C"),
          german: de.plan.cue(cue, { step, vessel }, "C"),
        };
      }),
    ),
  ),
);

// answers, all invented: a weekend workshop in a mountain hut
const hut = { timeS: 540, temperatureC: 20, dilution: "stock", agitation: { everyS: 30 } } as const;
const strength = { value: 1.2, logSd: 0.1, basis: "given" } as const;
const learned = learn(startKnowledge({ timeS: 540, temperatureC: 20 }), [
  { timeS: 700, temperatureC: 16, outcome: { kind: "good" } },
]);
const answers = [
  compensate(
    { ...hut, gamma: 0.6 },
    {
      temperatureC: 14.5,
      dilution: "1+1",
      agitation: "stand",
      usedCm2PerL: 300,
      ageH: 2,
      gamma: 0.65,
      strength,
    },
  ),
  compensate(hut, {
    temperatureC: 20,
    pushStops: 1,
    agitation: "continuous",
    thermometer: "kitchen",
    by: "a friend",
    batch: "the second bottle",
  }),
  compensate(learned.baseline, { temperatureC: 14 }, learned),
  compensate(hut, { temperatureC: { startC: 20, ambientC: 14, timeConstantS: 3600 } }),
];
const rows = answers.flatMap(({ factors }) =>
  factors.map((row): Said => ({
    name: row.cause,
    english: describeFactor(row),
    german: describeFactor(row, de.answer),
  })),
);

const refused = compensate({ ...hut, hydroquinone: true }, { temperatureC: 8 });
const headlines = [...answers, refused].flatMap((answer) =>
  lines(
    "answer",
    describeCompensation(answer).slice(0, 2),
    describeCompensation(answer, de.answer).slice(0, 2),
  ),
);
const plans = ([2, 10] as const).flatMap((minutes) => {
  const baths = { stop: {}, fix: { clearingS: 40, times: 3 }, wash: {} };
  const plan = planProcess({ vessel: "tray", timeS: 60 * minutes, temperatureC: 20, baths });
  return lines("plan", describePlan(plan), describePlan(plan, de.plan));
});
const evenings = (["tank", "tray"] as const).flatMap((vessel) => {
  const evening = planEvening({
    baseline: { timeS: 540, temperatureC: 20 },
    conditions: { temperatureC: { startC: 22, ambientC: 14, timeConstantS: 3600 } },
    knowledge: { age: { kind: "life", lifeH: 1.5 } },
    plates: [{ areaCm2: 108, name: "A" }, ...Array.from({ length: 9 }, () => ({ areaCm2: 108 }))],
    vessel,
    emulsion: "hardened",
    volumeMl: 500,
    topUpMl: 50,
    betweenS: 120,
  });
  return lines("evening", describeEvening(evening), describeEvening(evening, de.evening));
});
const strips = [
  { temperatureC: 14, dilution: "1+1", usedCm2PerL: 300, ageH: 3 },
  { temperatureC: 23, ageH: 3 },
  { temperatureC: { startC: 20, ambientC: 14, timeConstantS: 3600 } },
  { temperatureC: 8 },
].map((conditions) => answerPicture({ baseline: { ...hut, hydroquinone: true }, conditions, strip: true }));
const pictured = strips.flatMap((picture) =>
  lines(
    "picture",
    textsIn(describePicture(picture)),
    textsIn(describePicture(picture, { texts: de.picture, answerTexts: de.answer })),
  ),
);
const charted = [{ ageH: 3 }, {}].flatMap((conditions) => {
  const known = { ...hut, hydroquinone: true };
  const temperaturesC = [10, 14, 20];
  const chart = timeChart({ baseline: known, conditions, temperaturesC, dilutions: ["stock", "1+1"] });
  return lines("chart", describeChart(chart), describeChart(chart, de.chart));
});

/** All texts in a value, in its order. */
function textsIn(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
}

// brews and runs
const brew = {
  volumeMl: 500,
  ingredients: [
    { ingredient: "sodium-hydroxide", massG: 3 },
    { ingredient: "soda-anhydrous", massG: 20, spoons: 2, spoonMl: 5, heap: "rounded" },
    { ingredient: "instant-coffee", massG: 20 },
    { ingredient: "ascorbic-acid", massG: 8 },
    { ingredient: "brewed-coffee", massG: 100 },
  ],
} as const;
const steps = mixingSteps(brew);
const inCoffee = mixingSteps({
  volumeMl: 500,
  ingredients: [
    { ingredient: "soda-anhydrous", massG: 27 },
    { ingredient: "brewed-coffee", massG: 490 },
    { ingredient: "instant-coffee", massG: 10 },
    { ingredient: "ascorbic-acid", massG: 8 },
  ],
});
const mixing = [steps, inCoffee].flatMap((each) =>
  lines("step", describeMixing(each, mixingTexts), describeMixing(each, de.mixing)),
);
const log = [
  { timeS: 0, temperatureC: 20 },
  { timeS: 240, temperatureC: 17 },
];
const spent = { usedCm2PerL: 9000 };
const steered = [
  { log, conditions: {} },
  { log: [{ timeS: 0, temperatureC: 68 }], conditions: {} },
  { log, conditions: spent },
].flatMap((each) => {
  const answer = steer({ baseline: hut, ...each });
  return lines(
    "run",
    describeSteering(answer, undefined, { vessel: "tray" }),
    describeSteering(answer, de.steering, { vessel: "tray" }),
  );
});

/** All sentences, section by section. */
const sections: Readonly<Record<string, readonly Said[]>> = {
  "Cautions": first(cautioned, 6),
  "Rules that an input breaks": first(rules),
  "What an input should have been": first(expectations),
  "Cues of a plan": first(cues),
  "Steps of a plan": pairs(planTexts.steps, de.plan.steps),
  "Materials of a plan": pairs(planTexts.materials, de.plan.materials),
  "A plan": first(plans),
  "An evening": first(evenings),
  "An answer": first(headlines),
  "Rows of an answer": first(rows),
  "Causes": pairs(answerTexts.causes, de.answer.causes),
  "What a factor rests on": pairs(answerTexts.bases, de.answer.bases),
  "A picture": first(pictured),
  "A chart": first(charted),
  "A run in progress": first(steered),
  "Mixing a brew": first(mixing),
  "Why a shelf gives no brew": pairs(noBrewTexts, de.noBrew),
  "Why a run is set aside": pairs(setAsideTexts, de.setAside),
};

/** The text of the file. */
export function sentencesText(): string {
  const parts = Object.entries(sections).map(([title, all]) =>
    [
      `# ${title}`,
      "",
      ...all.flatMap(({ name, english, german }) => [name, `  en ${english}`, `  de ${german}`]),
    ].join("\n"),
  );
  return `${parts.join("\n\n")}\n`;
}

export { sections };
