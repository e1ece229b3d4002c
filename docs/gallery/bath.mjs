/*
 * Pictures of the bath: it cools while it works, it is moved more or less, it is used, it ages.
 */
import * as Plot from "@observablehq/plot";
import {
  ageFactor,
  agitationFactor,
  developUntil,
  effect,
  equivalentTime,
  formatTime,
  genericAgitationLaw,
  genericUseLaw,
  handbookUseLaw,
  newtonDrift,
  roundTime,
  useFactor,
} from "darkroom-kinetics";
import { label, sweep } from "./frame.mjs";
import { published } from "./published.mjs";

const Z90 = 1.6448536269514722;
const minutes = (timeS) => timeS / 60;

/** Equivalent time in a tank that cools in the air of the hut. */
export function coolingTank() {
  const target = {
    equivalentS: 540,
    referenceC: 20,
    law: { kind: "coefficient", ratio: 2.1, intervalC: 10 },
  };
  const air = { ambientC: 8, timeConstantS: 2400 };
  const tanks = [20, 23].map((startC, i) => {
    const drift = { startC, ...air };
    const temperatureAt = newtonDrift(drift);
    const rows = sweep(0, 960, 64, (timeS) => ({ timeS, temperatureC: temperatureAt(timeS) })).map(
      (reading, at, log) => ({
        time: minutes(reading.timeS),
        temperatureC: reading.temperatureC,
        done: at === 0 ? 0 : minutes(equivalentTime(log.slice(0, at + 1), target.referenceC, target.law)),
      }),
    );
    return {
      startC,
      rows,
      until: developUntil({ ...target, temperatureAt: drift }),
      className: ["two", "three"][i],
      dash: ["7 4", "2 3"][i],
    };
  });
  const goal = minutes(target.equivalentS);
  const steady = [0, 16].map((time) => ({ time, temperatureC: 20, done: time }));
  const shown = (timeS) => formatTime(roundTime(timeS));
  const lines = (y) => [
    Plot.line(steady, { x: "time", y, className: "one", strokeWidth: 2 }),
    ...tanks.map(({ rows, className, dash }) =>
      Plot.line(rows, { x: "time", y, className, strokeWidth: 2, strokeDasharray: dash }),
    ),
  ];
  const [same, warm] = tanks;
  return {
    file: "cooling.svg",
    title: "Equivalent time in a cooling tank",
    desc: `Above, the temperature of three tanks over 16 minutes: one held at 20 °C, one poured in at 20 °C and one at 23 °C, both cooling toward air of 8 °C. Below, the equivalent time at 20 °C that has gathered. The work of 9 minutes is done after ${shown(target.equivalentS)} in the steady tank, ${shown(same.until)} in the one poured in at 20 °C and ${shown(warm.until)} in the one poured in at 23 °C.`,
    headline: "A tank that cools: equivalent time gathers more slowly",
    source: [
      "Invented: a hut with air of 8 °C, a tank that loses 63 % of the difference in 40 min, 9:00 at 20 °C, a rate that",
      "changes by a factor of 2.1 for 10 °C.",
    ],
    panels: [
      {
        height: 190,
        marginBottom: 24,
        x: { label: null, domain: [0, 16], ticks: 8 },
        y: { label: "↑ Temperature (°C)", domain: [15, 24], ticks: 5 },
        marks: [
          ...lines("temperatureC"),
          label("held at 20 °C, solid", 16, 20, { dx: 6, className: "one-fill" }),
          label("from 20 °C, dashed", 16, same.rows.at(-1).temperatureC, {
            dx: 6,
            dy: 5,
            className: "two-fill",
          }),
          label("from 23 °C, dotted", 16, warm.rows.at(-1).temperatureC, { dx: 6, className: "three-fill" }),
        ],
      },
      {
        height: 320,
        x: { label: "Clock time since the pour (min)", labelAnchor: "center", domain: [0, 16], ticks: 8 },
        y: { label: "↑ Equivalent time at 20 °C (min)", domain: [0, 17], ticks: 8 },
        marks: [
          Plot.ruleY([goal], { className: "ink", stroke: "black", strokeDasharray: "1 3", strokeWidth: 1.5 }),
          ...lines("done"),
          ...[{ until: target.equivalentS, className: "one" }, ...tanks].flatMap(({ until, className }) => [
            Plot.ruleX([{ time: minutes(until) }], {
              x: "time",
              y1: 0,
              y2: goal,
              className,
              stroke: "black",
            }),
            Plot.dot([{ time: minutes(until), done: goal }], {
              x: "time",
              y: "done",
              r: 5,
              className: `${className}-fill`,
              fill: "black",
            }),
          ]),
          label(shown(warm.until), minutes(warm.until), 1, {
            dx: -6,
            anchor: "end",
            className: "three-fill",
          }),
          label(shown(target.equivalentS), goal, 1, { anchor: "middle", className: "one-fill" }),
          label(shown(same.until), minutes(same.until), 1, { dx: 6, className: "two-fill" }),
          label("dotted", 16, warm.rows.at(-1).done, { dx: 6, dy: -4, className: "three-fill" }),
          label("solid", 16, 16, { dx: 6, dy: 6, className: "one-fill" }),
          label("dashed", 16, same.rows.at(-1).done, { dx: 6, className: "two-fill" }),
          label("the work of 9:00", 16, goal, { dx: 6 }),
        ],
      },
    ],
  };
}

/** Time against the interval between agitations, with the printed ratios. */
export async function agitation() {
  const { agitationRatios } = await published("agitation");
  const thirty = { everyS: 30 };
  const curve = sweep(0, 180, 90, (x) => {
    const to = x === 0 ? "continuous" : { everyS: x };
    const factor = agitationFactor(thirty, to);
    const spread = Z90 * effect("agitation", thirty, to, genericAgitationLaw).logSd;
    return { x, factor, low: factor * Math.exp(-spread), high: factor * Math.exp(spread) };
  });
  const printed = agitationRatios
    .flatMap(({ rows }) => rows)
    .filter(({ from }) => from.everyS === 30)
    .map(({ to, low, high }) => ({
      x: to === "continuous" ? 0 : to.everyS + (low < high ? 4 : 0),
      low,
      high,
    }));
  const inside = printed.filter(({ x, low, high }) => {
    const to = x === 0 ? "continuous" : { everyS: 60 };
    const factor = agitationFactor(thirty, to);
    const spread = Math.exp(Z90 * effect("agitation", thirty, to, genericAgitationLaw).logSd);
    return factor / spread <= low && high <= factor * spread;
  }).length;
  const ends = (rows) =>
    `${Math.min(...rows.map(({ low }) => low)).toFixed(2)} to ${Math.max(...rows.map(({ high }) => high)).toFixed(2)}`;
  const dots = printed.filter(({ low, high }) => low === high);
  const ranges = printed.filter(({ low, high }) => low < high);
  return {
    file: "agitation.svg",
    title: "Development time against the interval between agitations",
    desc: `The time as a multiple of the time with agitation every 30 s rises from ${curve[0].factor.toFixed(2)} for continuous agitation to ${curve.at(-1).factor.toFixed(2)} at three minutes, with a 90 % band that widens away from 30 s. Printed ratios run from ${ends(printed.filter(({ x }) => x === 0))} for continuous agitation and from ${ends(printed.filter(({ x }) => x > 0))} for 60 s; ${inside} of these ${printed.length} lie in the band in full.`,
    headline: "Agitation: the longer the pause, the longer the time",
    source: [
      "Published: Eastman Kodak F-4017, 2007, small against large tank (two ratios, from memory); practitioners' rules",
      "for continuous agitation and for 60 s (common practice). The bar for 60 s is drawn beside it.",
    ],
    panels: [
      {
        x: {
          label: "Interval between agitations (s); 0 is continuous",
          labelAnchor: "center",
          domain: [-4, 180],
          ticks: [0, 30, 60, 90, 120, 150, 180],
        },
        y: {
          type: "log",
          label: "↑ Time, as a multiple of the time at 30 s",
          domain: [0.7, 3.4],
          ticks: [0.7, 0.8, 0.9, 1, 1.2, 1.5, 2, 2.5, 3],
          tickFormat: String,
        },
        marks: [
          Plot.areaY(curve, { x: "x", y1: "low", y2: "high", className: "one-band" }),
          Plot.line(curve, { x: "x", y: "factor", className: "one", strokeWidth: 2 }),
          Plot.ruleX(ranges, {
            x: "x",
            y1: "low",
            y2: "high",
            className: "ink",
            stroke: "black",
            strokeWidth: 4,
          }),
          Plot.dot(dots, { x: "x", y: "low", r: 4.5, className: "ink", stroke: "black", strokeWidth: 1.5 }),
          label("generic law", 180, curve.at(-1).factor, { dx: 6, className: "one-fill" }),
          label("90 % band", 180, curve.at(-1).high, { dx: 6, className: "one-fill" }),
          label("printed ranges: bars", 4, 2.6),
          label("printed ratios: circles", 4, 2.35),
        ],
      },
    ],
  };
}

/** Time against what a litre has already developed. */
export function use() {
  const perRoll = genericUseLaw.perCm2PerL;
  const rule = handbookUseLaw("metol-hydroquinone-borax-per-film");
  const curve = (law) =>
    sweep(0, 10, 50, (x) => {
      const factor = useFactor(0, x * perRoll, law);
      const spread = Z90 * effect("use", 0, x * perRoll, law).logSd;
      return { x, factor, low: factor * Math.exp(-spread), high: factor * Math.exp(spread) };
    });
  const generic = curve(genericUseLaw);
  const linear = curve(rule);
  const compound = curve({ ...rule, growth: "compound" });
  const end = (rows) => rows.at(-1).factor;
  return {
    file: "use.svg",
    title: "Development time against what a litre has already developed",
    desc: `Over ten rolls in a litre the printed rule of 10 % a film, added, reaches ${end(linear).toFixed(2)} times the fresh time; the same 10 % multiplied reaches ${end(compound).toFixed(2)}. The generic rule reaches ${end(generic).toFixed(2)} with a 90 % band from ${generic.at(-1).low.toFixed(2)} to ${generic.at(-1).high.toFixed(2)}.`,
    headline: "Use: “10 % for each film”, added or multiplied",
    source: [
      "Published: 10 % for each film in a litre, added, ten films: Ilford/Harman, ID-11, Microphen and Perceptol powder",
      "developers, technical sheets, n.d. (from memory). Multiplied is how many read it. A roll is 516 cm².",
    ],
    panels: [
      {
        x: {
          label: "Rolls developed in a litre before this one",
          labelAnchor: "center",
          domain: [0, 10],
          ticks: 10,
        },
        y: { label: "↑ Time, as a multiple of the fresh bath's", domain: [0.9, 2.8] },
        marks: [
          Plot.areaY(generic, { x: "x", y1: "low", y2: "high", className: "one-band" }),
          Plot.line(generic, { x: "x", y: "factor", className: "one", strokeWidth: 2 }),
          Plot.line(linear, {
            x: "x",
            y: "factor",
            className: "two",
            strokeWidth: 2,
            strokeDasharray: "7 4",
          }),
          Plot.line(compound, {
            x: "x",
            y: "factor",
            className: "three",
            strokeWidth: 2,
            strokeDasharray: "2 3",
          }),
          label("multiplied, dotted", 10, end(compound), { dx: 6, className: "three-fill" }),
          label("added, dashed", 10, end(linear), { dx: 6, dy: -2, className: "two-fill" }),
          label("generic rule, solid", 10, end(generic), { dx: 6, dy: 6, className: "one-fill" }),
          label("and its 90 % band", 10, end(generic), { dx: 6, dy: 22, className: "one-fill" }),
        ],
      },
    ],
  };
}

/** Time against age: the slow decline and the cliff. */
export async function age() {
  const { cliff } = await published("keeping");
  const lifeH = 1.5;
  const halfLifeH = 8;
  const life = sweep(0, lifeH, 1, (x) => ({ x, factor: ageFactor(0, x, { kind: "life", lifeH }) }));
  const half = sweep(0, 4, 80, (x) => ({ x, factor: ageFactor(0, x, { kind: "half-life", halfLifeH }) }));
  const strips = cliff.rows.map(({ ageH, black }) => ({ ageH, black }));
  const symbols = { "full": "circle", "slightly weak": "triangle", "not reached": "times" };
  return {
    file: "age.svg",
    title: "Development time against the age of the bath: slow decline and cliff",
    desc: "A bath that declines slowly needs more time hour by hour. A bath of alkaline vitamin C works in full for one and a half hours and then dies: past its life no time is offered. Test strips, one each half hour, gave a full black until 1.5 h, a slightly weak one at 2 h and none at 2.5 h.",
    headline: "Age: some baths fade, others work until they stop",
    source: [
      "Published, strips: Shinkawa Photographic Laboratory, L-ascorbic acid oxidation in alkaline solution",
      "(in Japanese), 2015. Invented: the bath whose rate halves every 8 h.",
    ],
    panels: [
      {
        x: { label: "Age of the bath (h)", labelAnchor: "center", domain: [0, 4], ticks: 8 },
        y: { label: "↑ Time, as a multiple of the fresh bath's", domain: [0.8, 1.5], ticks: 7 },
        marks: [
          Plot.line(half, { x: "x", y: "factor", className: "one", strokeWidth: 2 }),
          Plot.line(life, { x: "x", y: "factor", className: "two", strokeWidth: 3, strokeDasharray: "7 4" }),
          Plot.ruleX([lifeH], { y1: 0.96, y2: 1.04, className: "two", stroke: "black", strokeWidth: 3 }),
          ...Object.entries(symbols).map(([black, symbol]) =>
            Plot.dot(
              strips.filter((strip) => strip.black === black),
              { x: "ageH", y: () => 0.88, r: 5, symbol, className: "ink", stroke: "black", strokeWidth: 1.5 },
            ),
          ),
          label("half-life 8 h, solid", 4, half.at(-1).factor, { dx: 6, className: "one-fill" }),
          label("life 1.5 h, dashed: past it", lifeH, 1, { dx: 10, dy: -8, className: "two-fill" }),
          label("no time is offered", lifeH, 1, { dx: 10, dy: 8, className: "two-fill" }),
          label("test strips:", 0.05, 0.92),
          label("full black", 0.75, 0.845, { anchor: "middle" }),
          label("weak", 2, 0.845, { anchor: "middle" }),
          label("none", 2.5, 0.845, { anchor: "middle" }),
        ],
      },
    ],
  };
}
