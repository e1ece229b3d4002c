import { checkedEstimate, LONGEST_ANSWER_S } from "../core/estimate.js";
import {
  arrayOf,
  inRange,
  isBoolean,
  isText,
  longEnough,
  plainObject,
  positive,
  wrongCount,
} from "../core/guards.js";
import { checkedCautions } from "../text/checkedCautions.js";
import type { TimeChart } from "./types.js";

/** A chart may come back from a program's own store. */
export function checkedChart(at: string, chart: unknown): TimeChart {
  const { known, held = [], temperaturesC, dilutions, rows } = plainObject(at, chart);
  const { timeS, temperatureC, dilution } = plainObject(`${at}/known`, known);
  positive(`${at}/known/timeS`, timeS, 1e6, "timeS");
  inRange(`${at}/known/temperatureC`, temperatureC, 0, 100, "temperatureC");
  if (dilution !== undefined) isText(`${at}/known/dilution`, dilution);
  arrayOf(`${at}/held`, held, 0).forEach((each, i) => {
    isText(`${at}/held/${i}/cause`, plainObject(`${at}/held/${i}`, each)["cause"]);
  });
  const temperatures = longEnough(`${at}/temperaturesC`, temperaturesC, 1);
  temperatures.forEach((each, i) => inRange(`${at}/temperaturesC/${i}`, each, 0, 100, "temperatureC"));
  const columns = dilutions === undefined ? [""] : longEnough(`${at}/dilutions`, dilutions, 1);
  columns.forEach((each, i) => {
    isText(`${at}/dilutions/${i}`, each);
  });
  const cells = longEnough(`${at}/rows`, rows, 1);
  const must = temperatures.length * columns.length;
  if (cells.length !== must) wrongCount(`${at}/rows`, cells.length, { least: must, most: must });
  cells.forEach((cell, i) => {
    const row = plainObject(`${at}/rows/${i}`, cell);
    const { refused, cautions = [] } = row;
    const { dilution: ofRow, temperatureC: ofRowC } = row;
    if (ofRow !== undefined) isText(`${at}/rows/${i}/dilution`, ofRow);
    inRange(`${at}/rows/${i}/temperatureC`, ofRowC, 0, 100, "temperatureC");
    checkedEstimate(`${at}/rows/${i}`, row, LONGEST_ANSWER_S);
    isBoolean(`${at}/rows/${i}/refused`, refused);
    checkedCautions(`${at}/rows/${i}/cautions`, cautions);
  });
  return chart as TimeChart;
}
