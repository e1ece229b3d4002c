/*
 * darkroom-kinetics chart: times over temperature and dilution for a recipe or a day.
 */
import {
  chartCsv,
  chartRecipe,
  chartSvg,
  describeCautions,
  describeChart,
  formatDilution,
  timeChart,
  type Caution,
  type TimeChart,
  type TimeChartHeld,
  type TimeChartRow,
} from "../index.js";
import type { Day } from "./day.js";
import { recipeOf, type Document } from "./document.js";
import { placed } from "./fault.js";
import { knownDay, type KnownDay } from "./knownDay.js";
import type { Asked } from "./options.js";
import { wordsOf, type Words } from "./words.js";
import { dayPlaces, inPlace, recipeName } from "./time.js";

/** The chart of a file. */
export interface ChartReport {
  readonly file: string;
  readonly name?: string;
  readonly chart: TimeChart;
  /** what is unwise about the file itself */
  readonly cautions: readonly Caution[];
}

/** What a chart shows unless it is asked for others: the warm on top, as on a thermometer. */
const TEMPERATURES_C = [24, 22, 20, 18, 16, 14, 12];

export function chartReport(document: Document, asked: Asked): ChartReport {
  const { file, kind } = document;
  const words = wordsOf(asked);
  const temperaturesC = asked.temperaturesC.length > 0 ? asked.temperaturesC : TEMPERATURES_C;
  const dilutions = asked.dilutions.length > 0 ? { dilutions: asked.dilutions } : {};
  const axes = { temperaturesC, ...dilutions };
  if (kind === "recipe") {
    const recipe = recipeOf(document);
    const chart = placed([], () => chartRecipe(recipe, axes));
    return { file, name: recipeName(recipe, words), chart, cautions: [] };
  }
  const day = knownDay(document, words);
  const { known: baseline, knowledge } = day;
  const found = placed(dayPlaces("/baths"), () =>
    timeChart({
      baseline,
      knowledge,
      conditions: { pushStops: pushOf(day) },
      ...(asked.dilutions.length > 0 ? axes : { temperaturesC, ...ownDilutions(day) }),
    }),
  );
  const { timeS } = day.baseline;
  // What notes have made of the known time is an answer; the known time is what the file says.
  const chart = {
    ...found,
    known: { ...found.known, timeS },
    rows: found.rows.map((row) => judged(row, day)),
  };
  const held = heldOf(day);
  return {
    file,
    chart: held.length === 0 ? chart : { ...chart, held },
    cautions: [...day.cautions, ...bathStops(day)],
  };
}

/** A cell of a day's chart under the judgement of its bath. */
function judged({ cautions = [], ...row }: TimeChartRow, { judge }: KnownDay): TimeChartRow {
  const { dilution } = row;
  const verdict = judge({ ...row, cautions }, dilution === undefined ? {} : { dilution });
  return {
    ...row,
    refused: verdict.refused,
    ...(verdict.cautions.length > 0 && { cautions: verdict.cautions }),
  };
}

/** What the chart does not show of the baths: those that are stopped for their use or their age. */
function bathStops({ baths, answer }: KnownDay): readonly Caution[] {
  return baths.flatMap(({ conditions, pointer }) => {
    const places = dayPlaces(pointer);
    const { cautions } = placed(places, () => answer(conditions));
    const stops = cautions.filter(
      ({ severity, path = "" }) => severity === "stop" && /(?:ageH|usedCm2PerL)$/.test(path),
    );
    return inPlace(stops, "/conditions", places);
  });
}

/** What the baths of a day have besides temperature and dilution. */
const OTHERS = ["agitation", "usedCm2PerL", "ageH", "strength", "gamma", "pushStops"] as const;

/** How far the films of a day are pushed: 0 where they are not pushed alike. */
function pushOf({ baths }: Day): number {
  const [push = 0, ...others] = new Set(baths.map(({ conditions }) => conditions.pushStops ?? 0));
  return others.length === 0 ? push : 0;
}

/** What every time of a day's chart is for, where its baths differ in more than the chart shows. */
function heldOf(day: Day): readonly TimeChartHeld[] {
  const { baseline, baths } = day;
  if (!baths.some(({ conditions }) => OTHERS.some((field) => conditions[field] !== undefined))) return [];
  const { agitation, usedCm2PerL = 0, ageH = 0 } = baseline;
  return [
    ...(usedCm2PerL === 0 && ageH === 0 ? [{ cause: "fresh" }] : []),
    ...(usedCm2PerL === 0 ? [] : [{ cause: "use", to: usedCm2PerL }]),
    ...(ageH === 0 ? [] : [{ cause: "age", to: ageH }]),
    ...(agitation === undefined ? [] : [{ cause: "agitation", to: agitation }]),
    ...(baths.some(({ conditions }) => conditions.pushStops !== undefined)
      ? [{ cause: "push", to: pushOf(day) }]
      : []),
  ];
}

/** The dilutions that a day names, that of the known time first. */
function ownDilutions({ baseline, baths }: Day): { readonly dilutions?: readonly string[] } {
  if (baseline.dilution === undefined) return {};
  const named = [baseline.dilution, ...baths.flatMap(({ conditions }) => conditions.dilution ?? [])];
  return { dilutions: [...new Set(named.map((dilution) => formatDilution(dilution)))] };
}

/** The chart in the form that was asked for. */
export function chartText({ name, chart, cautions }: ChartReport, form: Asked["form"], words: Words): string {
  const { texts, unit } = words;
  if (form === "csv") return chartCsv(chart);
  if (form === "wall") return chartSvg(chart, { title: name, texts: texts?.chart, unit });
  return [
    ...(name === undefined ? [] : [name]),
    ...describeCautions(cautions, texts?.cautions, { unit }),
    ...describeChart(chart, texts?.chart, { unit }),
    "",
  ].join("\n");
}

/** What is unwise about the file, where the form has no place for it: a line each. */
export function besideChart({ file, cautions }: ChartReport, form: Asked["form"], words: Words): string {
  if (form !== "csv" && form !== "wall") return "";
  const { texts, unit } = words;
  return describeCautions(cautions, texts?.cautions, { unit })
    .map((line) => `${file}: ${line}\n`)
    .join("");
}
