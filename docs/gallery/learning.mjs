/*
 * Pictures of learning: how runs narrow the range of one time, and what one more test would do.
 */
import * as Plot from "@observablehq/plot";
import { formatTime, learn, nextTest, predict, roundTime, startKnowledge } from "darkroom-kinetics";
import { label, sweep } from "./frame.mjs";

const Z90 = 1.6448536269514722;
const start = startKnowledge({ timeS: 540, temperatureC: 20, dilution: "1+9", agitation: { everyS: 60 } });
const question = { temperatureC: 14 };

/** Invented: five films of a weekend, the tap water at 14 °C, some of it warmed. */
const runs = [
  { id: "1", timeS: 780, temperatureC: 14, outcome: { kind: "judged", timeRatio: 1.3 } },
  { id: "2", timeS: 600, temperatureC: 19, outcome: { kind: "judged", timeRatio: 1.1 } },
  { id: "3", timeS: 840, temperatureC: 16, outcome: { kind: "good" } },
  { id: "4", timeS: 1020, temperatureC: 14, outcome: { kind: "good" } },
  { id: "5", timeS: 1050, temperatureC: 14, outcome: { kind: "good" } },
];
const SOURCE = "Invented: a hut weekend, a guess of 9:00 at 20 °C to begin with,";
const percent = (logSd) => `±${Math.round((Math.exp(Z90 * logSd) - 1) * 100)} %`;

/** The time at 14 °C and its range after none to five runs. */
export function fiveRuns() {
  const steps = Array.from({ length: runs.length + 1 }, (_, count) => {
    const { timeS, lowS, highS } = predict(learn(start, runs.slice(0, count)), question);
    return {
      count,
      time: timeS / 60,
      low: lowS / 60,
      high: highS / 60,
      logSd: Math.log(highS / lowS) / (2 * Z90),
    };
  });
  const [first, last] = [steps[0], steps.at(-1)];
  const shown = (minutes) => formatTime(roundTime(minutes * 60));
  return {
    file: "five-runs.svg",
    title: "How five runs narrow the time at 14 °C",
    desc: `The predicted time at 14 °C begins at ${shown(first.time)} with a 90 % range from ${shown(first.low)} to ${shown(first.high)}, from a guess at 20 °C. Each of five runs narrows it: after the fifth it is ${shown(last.time)}, from ${shown(last.low)} to ${shown(last.high)}.`,
    headline: "Five runs: the 90 % range of the time at 14 °C",
    source: [`${SOURCE} and five films: at 14 °C, 19 °C, 16 °C, and`, "twice at 14 °C, each judged by eye."],
    panels: [
      {
        marginRight: 40,
        x: {
          label: "Runs learned",
          labelAnchor: "center",
          domain: [-0.4, 5.6],
          ticks: [0, 1, 2, 3, 4, 5],
          tickFormat: String,
        },
        y: {
          type: "log",
          label: "↑ Time at 14 °C (min)",
          domain: [8, 29],
          ticks: [8, 10, 12, 14, 16, 18, 20, 24, 28],
          tickFormat: String,
        },
        marks: [
          Plot.ruleX(steps, {
            x: "count",
            y1: "low",
            y2: "high",
            className: "one",
            stroke: "black",
            strokeWidth: 4,
          }),
          Plot.line(steps, {
            x: "count",
            y: "time",
            className: "ink",
            stroke: "black",
            strokeDasharray: "2 3",
          }),
          Plot.dot(steps, { x: "count", y: "time", r: 5, className: "label", fill: "black" }),
          ...steps.map(({ count, time, high, logSd }) =>
            label(percent(logSd), count, high, { dy: -12, anchor: "middle", className: "one-fill" }),
          ),
          ...steps.map(({ count, time, low }) =>
            label(shown(time), count, low, { dy: 13, anchor: "middle" }),
          ),
          label("bar and %: the 90 % range", 5.6, 27, { anchor: "end", className: "one-fill" }),
          label("dot and time: the median", 5.6, 25, { anchor: "end" }),
        ],
      },
    ],
  };
}

/** How well the time at 14 °C would be known after one more test, by the temperature of the test. */
export function oneMoreTest() {
  const looks = [
    { count: 0, name: "before any run", className: "one" },
    { count: 2, name: "after run 2", className: "two", dash: "7 4" },
    { count: 5, name: "after run 5", className: "three", dash: "2 3" },
  ];
  const toPercent = (logSd) => (Math.exp(Z90 * logSd) - 1) * 100;
  const cases = looks.map((look) => {
    const knowledge = learn(start, runs.slice(0, look.count));
    const candidates = sweep(10, 26, 64, (temperatureC) => ({ temperatureC }));
    const ranked = nextTest(knowledge, candidates, question);
    const rows = ranked
      .map(({ candidate, expectedLogSd }) => ({ x: candidate.temperatureC, y: toPercent(expectedLogSd) }))
      .sort((a, b) => a.x - b.x);
    const { lowS, highS } = predict(knowledge, question);
    return {
      ...look,
      rows,
      now: toPercent(Math.log(highS / lowS) / (2 * Z90)),
      best: { x: ranked[0].candidate.temperatureC, y: toPercent(ranked[0].expectedLogSd) },
    };
  });
  const said = cases
    .map(
      ({ name, now, best }) =>
        `${name} a strip at ${Math.round(best.x * 2) / 2} °C narrows it from ±${now.toFixed(0)} % to ±${best.y.toFixed(0)} %`,
    )
    .join(", ");
  return {
    file: "next-test.svg",
    title: "What one more test would do for the time at 14 °C",
    desc: `The expected 90 % range of the time at 14 °C after one more test strip, by the temperature at which the strip is developed. Of those from 10 to 26 °C the best is a cold one: ${said}. A strip in a warm bath says little of the time in a cold one.`,
    headline: "One more test: how well the time at 14 °C would be known",
    source: [
      `${SOURCE} and the five films of the picture`,
      "before this one. A test strip is judged by eye, to about 10 %.",
    ],
    panels: [
      {
        x: {
          label: "Temperature of the test strip's bath (°C)",
          labelAnchor: "center",
          domain: [10, 26],
          ticks: 9,
        },
        y: { label: "↑ Expected 90 % range of the time at 14 °C (± %)", domain: [0, 65], ticks: 7 },
        marks: [
          ...cases.flatMap(({ rows, now, best, className, dash }) => [
            Plot.line(rows, { x: "x", y: "y", className, strokeWidth: 2, strokeDasharray: dash }),
            Plot.dot([best], { x: "x", y: "y", r: 5, className: `${className}-fill`, fill: "black" }),
            Plot.dot([{ x: 26, y: now }], {
              x: "x",
              y: "y",
              r: 5,
              symbol: "diamond",
              className,
              stroke: "black",
              strokeWidth: 1.5,
            }),
          ]),
          ...cases.map(({ rows, name, className }) =>
            label(name, 26, rows.at(-1).y, { dx: 10, dy: 4, className: `${className}-fill` }),
          ),
          label("diamonds: without a test", 10.4, 57),
          label("dots: the best test", 10.4, 61.5),
        ],
      },
    ],
  };
}
