import { causes } from "../causes.js";
import { prepared } from "../compensate/loop.js";
import { plainObject } from "../core/guards.js";
import { onlyFields } from "../core/onlyFields.js";
import { AXES, chartOf } from "./chartOf.js";
import type { TimeChart, TimeChartInput } from "./types.js";

/**
 * Times over temperature and dilution, for the wall.
 *
 * @param input - the known time, the temperatures in °C, and perhaps dilutions, other conditions and laws
 * @returns a row for each temperature of each dilution, in the order given: median and 90 % interval in s,
 * unrounded, and whether a caution of severity `"stop"` is in the way
 * @throws TypeError when a field is of the wrong kind, or dilutions are given and the baseline has none
 * @throws RangeError when a value is out of range, there are none or too many, or a field is not read
 *
 * @remarks Each row is the answer of `compensate`. `describeChart` writes the chart as text, `chartSvg` as a
 * page to print and `chartCsv` as a table; all three round as `roundEstimate` does.
 *
 * @example
 * ```ts
 * const knowledge: Knowledge = { temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } };
 * const baseline = { timeS: 510, temperatureC: 20 };
 * const chart = timeChart({ baseline, knowledge, temperaturesC: [10, 20] });
 * chart.rows.map(({ temperatureC, timeS }) => [temperatureC, timeS]) // => [[10, 1020], [20, 510]]
 * ```
 */
export function timeChart(input: TimeChartInput): TimeChart {
  const { baseline, conditions = {}, knowledge = {}, ...axes } = checkedInput(input);
  plainObject("timeChart/input/conditions", conditions);
  const ask = prepared("timeChart", causes, baseline, knowledge);
  return chartOf("timeChart/input", axes, baseline, (asked) => ask.answer({ ...conditions, ...asked }));
}

function checkedInput(input: TimeChartInput): TimeChartInput {
  const fields = [...AXES, "baseline", "conditions", "knowledge"];
  return onlyFields("timeChart/input", input, fields) as unknown as TimeChartInput;
}
