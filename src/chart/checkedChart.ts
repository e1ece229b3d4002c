import { inRange, longEnough, plainObject, positive, refuse, wrongKind } from "../core/guards.js";
import { checkedCautions } from "../text/describeCautions.js";
import type { TimeChart } from "./types.js";

/** A chart may come back from a program's own store. */
export function checkedChart(at: string, chart: unknown): TimeChart {
  const { known, temperaturesC, dilutions, rows } = plainObject(at, chart);
  const { timeS, temperatureC, dilution } = plainObject(`${at}/known`, known);
  positive(`${at}/known/timeS`, timeS, 1e6, "timeS");
  inRange(`${at}/known/temperatureC`, temperatureC, 0, 100, "temperatureC");
  if (dilution !== undefined) text(`${at}/known/dilution`, dilution);
  const temperatures = longEnough(`${at}/temperaturesC`, temperaturesC, 1);
  temperatures.forEach((each, i) => inRange(`${at}/temperaturesC/${i}`, each, 0, 100, "temperatureC"));
  const columns = dilutions === undefined ? [""] : longEnough(`${at}/dilutions`, dilutions, 1);
  columns.forEach((each, i) => {
    text(`${at}/dilutions/${i}`, each);
  });
  const cells = longEnough(`${at}/rows`, rows, 1);
  const must = temperatures.length * columns.length;
  if (cells.length !== must)
    refuse(`${at}/rows`, `must hold ${must}, one for each cell, got ${cells.length}`, cells.length);
  cells.forEach((cell, i) => {
    const row = plainObject(`${at}/rows/${i}`, cell);
    const { timeS: cellS, lowS, highS, refused, cautions = [] } = row;
    const { dilution: ofRow, temperatureC: ofRowC } = row;
    if (ofRow !== undefined) text(`${at}/rows/${i}/dilution`, ofRow);
    inRange(`${at}/rows/${i}/temperatureC`, ofRowC, 0, 100, "temperatureC");
    for (const [field, value] of Object.entries({ lowS, timeS: cellS, highS }))
      positive(`${at}/rows/${i}/${field}`, value, 1e100, "timeS");
    if (typeof refused !== "boolean") wrongKind(`${at}/rows/${i}/refused`, "true or false", refused);
    checkedCautions(`${at}/rows/${i}/cautions`, cautions);
  });
  return chart as TimeChart;
}

function text(at: string, value: unknown): void {
  if (typeof value !== "string") wrongKind(at, "text", value);
}
