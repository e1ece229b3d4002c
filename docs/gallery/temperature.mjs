/*
 * Pictures of temperature: one published table with the package's answer, and all published tables with the generic law's range.
 */
import * as Plot from "@observablehq/plot";
import {
  compensate,
  effect,
  fahrenheitToCelsius,
  fitTemperatureLaw,
  formatTime,
  genericTemperatureLaw,
  temperatureFactor,
} from "darkroom-kinetics";
import { label, sweep } from "./frame.mjs";
import { published } from "./published.mjs";

const Z90 = 1.6448536269514722;
const { timeTables } = await published("temperature");

/** The rows of a table in °C, from cold to warm: tables are printed in either order. */
const celsius = ({ unit, rows }) =>
  rows
    .map(({ temperature, minutes }) => ({
      temperatureC: unit === "F" ? fahrenheitToCelsius(temperature) : temperature,
      minutes,
    }))
    .sort((a, b) => a.temperatureC - b.temperatureC);

/** One table: from one of its rows by the generic law, and from two by a fitted one. */
export function oneTable() {
  const table = timeTables.find(({ id }) => id === "xray-to33b-normal");
  const rows = celsius(table);
  const known = rows.find(({ temperatureC }) => temperatureC === 20);
  const baseline = { timeS: known.minutes * 60, temperatureC: 20 };
  const ends = [rows[0], rows.at(-1)].map(({ temperatureC, minutes }) => ({
    temperatureC,
    timeS: minutes * 60,
  }));
  const [coldest, warmest] = ends;
  const { law } = fitTemperatureLaw(ends);
  const curve = (knowledge) =>
    sweep(16, 28, 96, (x) => {
      const { timeS, lowS, highS } = compensate(baseline, { temperatureC: x }, knowledge);
      return { x, time: timeS / 60, low: lowS / 60, high: highS / 60 };
    });
  const wide = curve({});
  const fitted = curve({ temperature: law });
  const inside = rows.filter(({ temperatureC, minutes }) => {
    const { lowS, highS } = compensate(baseline, { temperatureC });
    return lowS <= minutes * 60 && minutes * 60 <= highS;
  }).length;
  const worst = (one) =>
    Math.max(
      ...rows.map(({ temperatureC, minutes }) =>
        Math.abs(Math.log((known.minutes * temperatureFactor(20, temperatureC, one)) / minutes)),
      ),
    );
  const percent = (one) => `${(100 * worst(one)).toFixed(0)} %`;
  return {
    file: "temperature.svg",
    title: "Development time against bath temperature, one published table",
    desc: `Seven printed times of an industrial x-ray film, from ${formatTime(coldest.timeS)} at ${coldest.temperatureC.toFixed(1)} °C to ${formatTime(warmest.timeS)} at ${warmest.temperatureC.toFixed(1)} °C, fall along a curve. The generic law is given the printed time at 20 °C alone. ${inside} of the ${rows.length} times lie in its 90 % band, which opens away from 20 °C; its largest miss is ${percent(genericTemperatureLaw)}. The law fitted to the first and last row misses by ${percent(law)} at most.`,
    headline: "A published table, and what one or two of its rows say",
    source: [
      "Published: industrial x-ray film in a manual developer, normal times. US Air Force, Army and Navy, T.O. 33B-1-1 /",
      "TM 1-1500-335-23, Nondestructive Inspection Methods, table 6-16. Printed in °F and quarter minutes.",
    ],
    panels: [
      {
        x: { label: "Bath temperature (°C)", labelAnchor: "center", domain: [16, 28], ticks: 7 },
        y: {
          type: "log",
          label: "↑ Development time (min)",
          domain: [1.7, 9],
          ticks: [2, 3, 4, 5, 6, 7, 8, 9],
          tickFormat: String,
        },
        marks: [
          Plot.areaY(wide, { x: "x", y1: "low", y2: "high", className: "one-band" }),
          Plot.line(wide, { x: "x", y: "time", className: "one", strokeWidth: 2 }),
          Plot.line(fitted, { x: "x", y: "time", className: "two", strokeWidth: 2, strokeDasharray: "7 4" }),
          Plot.dot(rows, {
            x: "temperatureC",
            y: "minutes",
            r: 4.5,
            className: "ink",
            stroke: "black",
            strokeWidth: 1.5,
          }),
          Plot.dot([known], { x: "temperatureC", y: "minutes", r: 4.5, className: "label", fill: "black" }),
          label("90 % band", 28, wide.at(-1).high, { dx: 6, dy: 6, className: "one-fill" }),
          label("generic law, solid", 28, wide.at(-1).time, { dx: 6, dy: 8, className: "one-fill" }),
          label("fit to first and", 28, fitted.at(-1).time, { dx: 6, dy: -12, className: "two-fill" }),
          label("last row, dashed", 28, fitted.at(-1).time, { dx: 6, dy: 4, className: "two-fill" }),
          label("printed times: circles", 16.3, 2.6),
          label("the one row given: filled", 16.3, 2.35),
        ],
      },
    ],
  };
}

/** Every printed table against its own time at 20 °C. */
export function allTables() {
  const points = timeTables.flatMap((table) => {
    const rows = celsius(table);
    const known = rows.find(({ temperatureC }) => Math.abs(temperatureC - 20) < 0.01);
    if (known === undefined) return [];
    return rows
      .filter((row) => row !== known)
      .map(({ temperatureC, minutes }) => {
        const ratio = minutes / known.minutes;
        const spread = Math.hypot(effect("temperature", 20, temperatureC, genericTemperatureLaw).logSd, 0.04);
        const inside =
          Math.abs(Math.log(ratio / temperatureFactor(20, temperatureC, genericTemperatureLaw))) <=
          Z90 * spread;
        return { temperatureC, ratio, inside };
      });
  });
  const tables = timeTables.filter((table) =>
    celsius(table).some(({ temperatureC }) => Math.abs(temperatureC - 20) < 0.01),
  ).length;
  const inside = points.filter((point) => point.inside).length;
  const curve = sweep(16, 28, 96, (x) => {
    const { timeS, lowS, highS } = compensate({ timeS: 100, temperatureC: 20 }, { temperatureC: x });
    return { x, factor: timeS / 100, low: lowS / 100, high: highS / 100 };
  });
  return {
    file: "tables.svg",
    title: "Every published table against the generic temperature law",
    desc: `${points.length} printed times from ${tables} tables, each divided by its table's own time at 20 °C, over the generic law with its 90 % band. ${inside} lie inside the band and are drawn as circles, ${points.length - inside} outside as crosses. The band is narrow at 20 °C, where only the known time itself is unsure, and opens on both sides.`,
    headline: `${inside} of ${points.length} printed times lie in the generic law's 90 % band`,
    source: [
      "Published: the time-temperature tables of docs/sources.md that have a row at 20 °C (68 °F), among",
      "them Eastman Kodak F-32 and F-9, and T.O. 33B-1-1. Equal values fall on one mark.",
      "Every miss and its size: docs/accuracy.md.",
    ],
    panels: [
      {
        x: { label: "Bath temperature (°C)", labelAnchor: "center", domain: [16, 28], ticks: 7 },
        y: {
          type: "log",
          label: "↑ Time, as a multiple of the time at 20 °C",
          domain: [0.33, 1.8],
          ticks: [0.4, 0.5, 0.6, 0.7, 0.8, 1, 1.2, 1.4, 1.6],
          tickFormat: String,
        },
        marks: [
          Plot.areaY(curve, { x: "x", y1: "low", y2: "high", className: "one-band" }),
          Plot.line(curve, { x: "x", y: "factor", className: "one", strokeWidth: 2 }),
          Plot.dot(
            points.filter((point) => point.inside),
            { x: "temperatureC", y: "ratio", r: 4, className: "ink", stroke: "black" },
          ),
          Plot.dot(
            points.filter((point) => !point.inside),
            {
              x: "temperatureC",
              y: "ratio",
              r: 5,
              symbol: "times",
              className: "two",
              stroke: "black",
              strokeWidth: 2,
            },
          ),
          label("generic law", 28, curve.at(-1).factor, { dx: 6, className: "one-fill" }),
          label("90 % band", 28, curve.at(-1).high, { dx: 6, dy: 6, className: "one-fill" }),
          label("circles: inside the band", 16.4, 0.52),
          ...(inside < points.length
            ? [label("crosses: outside", 16.4, 0.48, { className: "two-fill" })]
            : []),
        ],
      },
    ],
  };
}
