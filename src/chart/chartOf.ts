import type { Compensation, Conditions } from "../compensate/types.js";
import { refuses } from "../core/caution.js";
import { inRange, longEnough, wrongCount } from "../core/guards.js";
import { readDilution, type Dilution } from "../dilution/dilution.js";
import { formatDilution } from "../dilution/formatDilution.js";
import { causeNames } from "../causes.js";
import type { ChartAxes, TimeChart, TimeChartHeld, TimeChartRow } from "./types.js";

/** The fields of the axes. */
export const AXES: readonly (keyof ChartAxes)[] = ["temperaturesC", "dilutions"];

const MOST_TEMPERATURES = 1000;
const MOST_DILUTIONS = 100;

/** The cells of a chart, each from one question. `at` is the function and the place of the axes. */
export function chartOf(
  at: string,
  { temperaturesC, dilutions }: ChartAxes,
  { timeS, temperatureC: knownC, dilution }: KnownTime,
  ask: (conditions: Conditions) => Compensation,
): TimeChart {
  few(`${at}/temperaturesC`, temperaturesC, MOST_TEMPERATURES);
  temperaturesC.forEach((each, i) => inRange(`${at}/temperaturesC/${i}`, each, 0, 100, "temperatureC"));
  const asked = dilutions === undefined ? undefined : few(`${at}/dilutions`, dilutions, MOST_DILUTIONS);
  const texts = asked?.map((each, i) => formatDilution(readDilution(`${at}/dilutions/${i}`, each)));
  const known = dilution === undefined ? undefined : formatDilution(dilution);
  const columns = texts ?? (known === undefined ? undefined : [known]);
  let held: readonly TimeChartHeld[] = [];
  const column = (text: string | undefined): readonly TimeChartRow[] =>
    temperaturesC.map((temperatureC) => {
      // What is not asked is as in the baseline.
      const answer = ask(
        texts === undefined || text === undefined ? { temperatureC } : { temperatureC, dilution: text },
      );
      held = heldIn(answer);
      return rowOf(text, temperatureC, answer);
    });
  const rows = (columns ?? [undefined]).flatMap(column);
  return {
    known: { timeS, temperatureC: knownC, ...(known === undefined ? {} : { dilution: known }) },
    ...(held.length === 0 ? {} : { held }),
    temperaturesC: [...temperaturesC],
    ...(columns === undefined ? {} : { dilutions: columns }),
    rows,
  };
}

/** What counts in an answer besides the axes of a chart: the same in every cell. */
function heldIn({ factors }: Compensation): readonly TimeChartHeld[] {
  return factors
    .filter(({ cause, basis }) => HELD.has(cause) && basis !== "unchanged")
    .map(({ cause, to }) => (to === undefined ? { cause } : { cause, to }));
}

/** The causes that are no axis of a chart. */
const HELD: ReadonlySet<string> = new Set(
  causeNames.filter((name) => name !== "temperature" && name !== "dilution"),
);

/** The known time, as far as a chart names it. */
interface KnownTime {
  readonly timeS: number;
  readonly temperatureC: number;
  readonly dilution?: Dilution | string | undefined;
}

function rowOf(dilution: string | undefined, temperatureC: number, answer: Compensation): TimeChartRow {
  const { timeS, lowS, highS, cautions } = answer;
  const named = dilution === undefined ? { temperatureC } : { dilution, temperatureC };
  const row = { ...named, timeS, lowS, highS, refused: refuses(cautions) };
  return cautions.length === 0 ? row : { ...row, cautions };
}

function few(at: string, list: readonly (Dilution | string | number)[], most: number): typeof list {
  longEnough(at, list, 1);
  if (list.length > most) wrongCount(at, list.length, { most });
  return list;
}
