/*
 * The invented evening of docs/guide.md, a picture for each step, and two answers for the gallery and the README. Answers are drawn by the
 * package itself; the plan, the tray that cools and the strips for tomorrow by Observable Plot.
 */
import * as Plot from "@observablehq/plot";
import {
  answerPicture,
  describePicture,
  formatTime,
  handbookTemperatureLaw,
  handbookVessel,
  learn,
  newtonDrift,
  nextTest,
  pictureSvg,
  planProcess,
  predict,
  proposeBrew,
  startKnowledge,
  startTemperatureFor,
  steer,
} from "darkroom-kinetics";
import { label, sweep } from "./frame.mjs";

const INVENTED = "Invented: a weekend workshop in a mountain hut with tap water at 14 °C.";
const minutes = (timeS) => timeS / 60;
const Z90 = 1.6448536269514722;

/** An answer as a file: its time above it, where its numbers come from below. */
function answer(file, name, input, foot = []) {
  const picture = answerPicture(input);
  const { time, interval } = describePicture(picture);
  const heading = `${name}: ${time === undefined ? "no time" : `${time}, nine times in ten ${interval}`}`;
  return {
    file,
    picture,
    svg: pictureSvg(picture, { standalone: true, heading, foot: [INVENTED, ...foot] }),
  };
}

/** The example of the README. */
const README = {
  baseline: { timeS: 510, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } },
  conditions: { temperatureC: 16, dilution: "1+14", usedCm2PerL: 516 },
  knowledge: { temperature: handbookTemperatureLaw("metol-hydroquinone") },
};

/** An answer, and what the same film gets in water that is too cold. */
export function answers() {
  return [
    answer("answer.svg", "Today", README),
    answer("refused.svg", "In the stream behind the hut", {
      ...README,
      baseline: { ...README.baseline, hydroquinone: true },
      conditions: { ...README.conditions, temperatureC: 9 },
      fromC: 6,
      toC: 26,
    }),
  ];
}

/** What the guide works out, step by step. */
const shelf = proposeBrew({
  shelf: ["instant-coffee", "soda-anhydrous", "ascorbic-acid"],
  volumeMl: 500,
  temperatureC: 14,
  material: "plate",
});
const guess = startKnowledge({ timeS: 1054, temperatureC: 14, logSd: 0.62, emulsion: "soft" });
const afterStrip = learn(guess, [{ timeS: 1050, temperatureC: 14, outcome: { kind: "steps", steps: -0.5 } }]);
const settled = { timeS: 1040, temperatureC: 16, logSd: 0.12, emulsion: "soft" };
const afterEvening = learn(startKnowledge(settled), [
  { timeS: 1049, temperatureC: 16, outcome: { kind: "steps", steps: 0.25 } },
  { timeS: 1075, temperatureC: 16, usedCm2PerL: 216, ageH: 1, outcome: { kind: "good" } },
]);

/** A picture for each step of the evening that is an answer. */
export function eveningAnswers() {
  const { timeS, logSd } = shelf.start;
  return [
    answer("evening-1-shelf.svg", "From the shelf", {
      baseline: { timeS, temperatureC: 14, logSd, emulsion: "soft" },
      strip: true,
    }),
    answer(
      "evening-2-strip.svg",
      "After one strip, at 16 °C",
      { baseline: afterStrip.baseline, knowledge: afterStrip, conditions: { temperatureC: 16 } },
      ["The small ring is the strip that was judged, at the time that it says is right."],
    ),
    answer("evening-6-second-plate.svg", "The second plate", {
      baseline: settled,
      conditions: { usedCm2PerL: 216, ageH: 1 },
      knowledge: { age: { kind: "life", lifeH: 3 } },
    }),
    answer(
      "evening-7-learned.svg",
      "What the evening taught",
      { baseline: afterEvening.baseline, knowledge: afterEvening, conditions: { temperatureC: 16 } },
      ["The small rings are both plates, each at the time that it says is right."],
    ),
  ];
}

const plan = planProcess({
  vessel: "tray",
  material: "plate",
  emulsion: "soft",
  timeS: settled.timeS,
  temperatureC: 16,
  volumeMl: 500,
  stepS: 15,
});

/** Steps of a plan as bars over time, the first on top. */
function bars({ file, title, desc, headline, steps, fromS, axis, notes = [] }) {
  const rows = steps.map(({ name, startS, endS, durationS }) => ({
    name: name.replace("-", " "),
    from: minutes(startS - fromS),
    to: minutes(endS - fromS),
    text: formatTime(durationS),
  }));
  const last = rows.at(-1).to;
  return {
    file,
    rows,
    title,
    desc,
    headline,
    source: [INVENTED],
    panels: [
      {
        height: 60 + 52 * rows.length,
        marginLeft: 110,
        marginRight: 90,
        x: { label: axis, labelAnchor: "center", domain: [0, last], ticks: 8 },
        y: { label: null, domain: rows.map(({ name }) => name), tickSize: 0 },
        marks: [
          Plot.barX(rows, {
            y: "name",
            x1: "from",
            x2: "to",
            className: "one-fill",
            insetTop: 9,
            insetBottom: 9,
          }),
          ...rows.map(({ name, to, text }) => label(text, to, name, { dx: 6 })),
          ...notes.map(({ atS, name, text }) => label(text, minutes(atS - fromS), name, { dx: 6, dy: -14 })),
          ...notes.map(({ atS, name }) =>
            Plot.tickX([{ name, at: minutes(atS - fromS) }], {
              x: "at",
              y: "name",
              className: "two",
              stroke: "black",
              strokeWidth: 3,
            }),
          ),
        ],
      },
    ],
  };
}

const listed = (steps) =>
  steps.map(({ name, durationS }) => `${name.replace("-", " ")} ${formatTime(durationS)}`).join(", ");

/** The plan from pour-in to wash, and what follows the pour-out. */
export function eveningPlan() {
  const { steps, totalS } = plan;
  const [develop, ...after] = steps;
  const fix = steps.find(({ name }) => name === "fix");
  return [
    bars({
      file: "evening-3-plan.svg",
      title: "The plan of one plate from pour-in to wash",
      desc: `Bars of time, one below the other, from pour-in on: ${listed(steps)}. In all ${formatTime(totalS)}.`,
      headline: `The plan: ${formatTime(totalS)} from pour-in to the drying line`,
      steps,
      fromS: 0,
      axis: "Time from pour-in (min)",
    }),
    bars({
      file: "evening-5-finish.svg",
      title: "Stop, fix and wash of one plate",
      desc: `Bars of time, one below the other, from the pour-out of the developer on: ${listed(after)}. A scrap clears in ${formatTime(fix.durationS / 2)}, halfway through the fix.`,
      headline: "After the developer: half of the fix is for clearing, half for safety",
      steps: after,
      fromS: develop.endS,
      axis: "Time from the pour-out of the developer (min)",
      notes: [
        {
          atS: fix.startS + fix.durationS / 2,
          name: "fix",
          text: `clear at ${formatTime(fix.durationS / 2)}`,
        },
      ],
    }),
  ];
}

/** The tray cools while it works; a reading that was typed in °F is doubted. */
export function eveningBath() {
  const { timeConstantS } = handbookVessel("tray-in-air");
  const air = { ambientC: 14, timeConstantS };
  const log = [
    { timeS: 0, temperatureC: 16.3 },
    { timeS: 180, temperatureC: 16.1 },
    { timeS: 360, temperatureC: 60.8 },
  ];
  const run = steer({
    baseline: settled,
    conditions: {},
    ambientC: 14,
    vessel: "tray-in-air",
    log,
  });
  const celsius = run.cautions[0].data.celsius;
  const { startC: pourInC } = startTemperatureFor({ timeS: settled.timeS, targetC: 16, ...air });
  const planned = newtonDrift({ startC: pourInC, ...air });
  const course = sweep(0, 1200, 60, (timeS) => ({ time: minutes(timeS), temperatureC: planned(timeS) }));
  const [first, second] = log;
  const until = minutes(run.total.timeS);
  return {
    file: "evening-4-bath.svg",
    run,
    title: "The temperature of the tray while the first plate is in it",
    desc: `The tray was to be poured in at ${pourInC.toFixed(1)} °C and to cool toward air of 14 °C: that course is a line over 20 minutes. Readings are circles: ${first.temperatureC} °C at pour-in and ${second.temperatureC} °C after 3:00. The third, 60.8 typed for °F after 6:00, is a cross at its ${celsius} °C: it is doubted and not followed. The bath is colder than planned, so the plate is poured out at ${formatTime(run.total.timeS)} instead of ${formatTime(settled.timeS)}.`,
    headline: `Pour out at ${formatTime(run.total.timeS)}, not at ${formatTime(settled.timeS)}: the tray is colder than planned`,
    source: [INVENTED, "The vessel's rate of cooling is one of the package's handbook."],
    panels: [
      {
        x: { label: "Time from pour-in (min)", labelAnchor: "center", domain: [0, 20], ticks: 10 },
        y: { label: "↑ Temperature (°C)", domain: [14.8, 16.8], ticks: 8 },
        marks: [
          Plot.line(course, { x: "time", y: "temperatureC", className: "one", strokeWidth: 2 }),
          Plot.ruleX([until], { className: "two", stroke: "black", strokeWidth: 2, strokeDasharray: "7 4" }),
          Plot.dot([first, second], {
            x: ({ timeS }) => minutes(timeS),
            y: "temperatureC",
            r: 5,
            className: "ink",
            stroke: "black",
            strokeWidth: 1.5,
          }),
          Plot.dot([celsius], {
            x: () => 6,
            y: (one) => one,
            r: 6,
            symbol: "times",
            className: "ink",
            stroke: "black",
            strokeWidth: 2,
          }),
          label("as planned", 20, planned(1200), { dx: 6, className: "one-fill" }),
          label("readings: circles", 3, second.temperatureC, { dx: 8, dy: -34 }),
          label("60.8 °F, typed as °C: doubted", 6, celsius, { dx: 0, dy: 20, anchor: "middle" }),
          label(`pour out at ${formatTime(run.total.timeS)}`, until, 16.6, {
            dx: -8,
            anchor: "end",
            className: "two-fill",
          }),
        ],
      },
    ],
  };
}

/** What one more strip tonight would tell about tomorrow's plate at 12 °C. */
export function eveningTomorrow() {
  const candidates = [12, 16, 20].map((temperatureC) => ({ temperatureC, volumeMl: 250 }));
  const ranked = nextTest(afterEvening, candidates, { temperatureC: 12 });
  const { lowS, highS } = predict(afterEvening, { temperatureC: 12 });
  const percent = (logSd) => 100 * (Math.exp(Z90 * logSd) - 1);
  const now = { name: "no strip", spread: percent(Math.log(highS / lowS) / 2 / Z90) };
  const rows = [
    now,
    ...ranked.map(({ candidate, expectedLogSd }) => ({
      name: `strip at ${candidate.temperatureC} °C`,
      spread: percent(expectedLogSd),
    })),
  ].map((row) => ({ ...row, text: `± ${row.spread.toFixed(0)} %` }));
  const [best, ...others] = rows.slice(1);
  return {
    file: "evening-8-tomorrow.svg",
    rows,
    title: "How well tomorrow's time at 12 °C would be known after one more strip",
    desc: `Bars of the 90 % range of tomorrow's time at 12 °C. Without a strip it is ${now.spread.toFixed(0)} % either way. The best is a ${best.name}, which leaves ${best.spread.toFixed(0)} %; ${others.map(({ name, spread }) => `a ${name} leaves ${spread.toFixed(0)} %`).join(" and ")}.`,
    headline: "Tomorrow at 12 °C: which strip tells most",
    source: [INVENTED],
    panels: [
      {
        height: 260,
        marginLeft: 120,
        marginRight: 60,
        x: {
          label: "90 % range of tomorrow's time (± %)",
          labelAnchor: "center",
          domain: [0, Math.ceil(now.spread / 5) * 5],
          ticks: 6,
        },
        y: { label: null, domain: rows.map(({ name }) => name), tickSize: 0 },
        marks: [
          Plot.barX(rows, { y: "name", x: "spread", className: "one-fill", insetTop: 9, insetBottom: 9 }),
          ...rows.map(({ name, spread, text }) => label(text, spread, name, { dx: 6 })),
        ],
      },
    ],
  };
}
