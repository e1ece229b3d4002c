import { roundEstimate } from "../quantities/roundEstimate.js";
import { saidOf } from "./cells.js";
import { checkedChart } from "./checkedChart.js";
import type { TimeChart } from "./types.js";

const HEAD = "dilution,temperatureC,timeS,lowS,highS,refused,cautions";

/**
 * A chart as comma-separated values, for a spreadsheet.
 *
 * @param chart - what `timeChart` or `chartRecipe` returns
 * @returns a line of names, then a line for each row of the chart, each ended by a line break; times in s,
 * rounded as `roundEstimate` does, and left empty where they are refused; the codes of the cautions, with
 * blanks between them, of a refused time those of its stops alone
 * @throws TypeError when `chart` or a part of it is of the wrong kind
 * @throws RangeError when a figure of it is out of range
 *
 * @remarks Lines end in CR and LF: Y. Shafranovich, RFC 4180, 2005.
 *
 * @example
 * ```ts
 * const knowledge: Knowledge = { temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } };
 * const chart = timeChart({ baseline: { timeS: 510, temperatureC: 20 }, knowledge, temperaturesC: [18] });
 * chartCsv(chart).split("\r\n")[1] // => ",18,585,535,645,false,"
 * ```
 */
export function chartCsv(chart: TimeChart): string {
  const { rows } = checkedChart("chartCsv/chart", chart);
  const lines = rows.map((row) => {
    const { dilution = "", temperatureC, refused } = row;
    const { timeS, lowS, highS } = roundEstimate(row);
    const times = refused ? ["", "", ""] : [timeS, lowS, highS];
    const codes = [...new Set(saidOf(row).map(({ code }) => code))].join(" ");
    return [dilution, temperatureC, ...times, refused, codes].map((value) => field(String(value))).join(",");
  });
  return [HEAD, ...lines].map((line) => `${line}\r\n`).join("");
}

function field(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
