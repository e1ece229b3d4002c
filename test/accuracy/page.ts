/*
 * The accuracy page and the README's short table, written from the measurements.
 */
import { measureAccuracy, type Hit, type Series } from "./measure.js";
import { holds, roundingFloor, summarise, type Summary } from "./summary.js";
import { dilutionTables, temperatureTables } from "./tables.js";
import { cells, rule } from "./markdown.js";

const one = (value: number | undefined): string => (value === undefined ? "–" : value.toFixed(1));
const percent = (value: number | undefined): string => (value === undefined ? "–" : `${value.toFixed(1)} %`);

/** The hits of tables that were read in print, or of those from memory. */
export const seen = (hits: readonly Hit[], read: boolean): readonly Hit[] =>
  hits.filter((hit) => hit.read === read);

/** The series of one cause and way. */
export function seriesOf(
  series: readonly Series[],
  cause: Series["cause"],
  way: Series["way"],
): readonly Hit[] {
  return series.find((each) => each.cause === cause && each.way === way)?.hits ?? [];
}

const FROM: Readonly<Record<string, string>> = {
  "one row": "one row, generic law",
  "two rows": "two rows, fitted law",
  "all other rows": "all other rows, fitted law",
  "naive, one row": "naive, one row",
  "naive, two rows": "naive, two rows",
};

function headline(series: readonly Series[]): string {
  return [
    cells(
      "cause",
      "predicted from",
      "tables",
      "predictions",
      "median error",
      "90 % of errors below",
      "inside the 90 % interval",
      "interval score",
      "CRPS",
      "from memory: tables",
      "median error",
      "inside",
      "score",
    ),
    rule(2, 11),
    ...series
      .filter(({ cause }) => cause === "temperature" || cause === "dilution")
      .map(({ cause, way, hits }) => {
        const [print, memory] = [seen(hits, true), seen(hits, false)].map((some): Summary | undefined =>
          some.length > 0 ? summarise(some) : undefined,
        );
        return cells(
          cause,
          FROM[way] as string,
          String(print?.tables ?? 0),
          String(print?.n ?? 0),
          percent(print?.median),
          percent(print?.p90),
          percent(print?.inInterval),
          one(print?.score),
          one(print?.crps),
          String(memory?.tables ?? 0),
          percent(memory?.median),
          percent(memory?.inInterval),
          one(memory?.score),
        );
      }),
  ].join("\n");
}

function ratios(series: readonly Series[]): string {
  return [
    cells("cause", "predicted from", "records", "n", "median error", "largest", "inside the 90 % interval"),
    rule(2, 5),
    ...series
      .filter(({ cause }) => cause === "agitation" || cause === "use")
      .map(({ cause, way, hits }) => {
        const { n, tables, median, inInterval } = summarise(hits);
        const largest = Math.max(...hits.map(({ miss }) => 100 * Math.abs(Math.expm1(miss))));
        return cells(
          cause,
          `${way}, generic law`,
          String(tables),
          String(n),
          percent(median),
          percent(largest),
          percent(inInterval),
        );
      }),
  ].join("\n");
}

/** Bands of distance to the nearest known row, the upper end of each. */
const BANDS = {
  temperature: { unit: "°C", ends: [1.5, 3, 6, Infinity] },
  dilution: { unit: "doublings", ends: [0.5, 0.8, 1.1, Infinity] },
} as const;

function byDistance(series: readonly Series[]): string {
  const rows = (["temperature", "dilution"] as const).flatMap((cause) => {
    const { unit, ends } = BANDS[cause];
    return ends.flatMap((end, i) => {
      const start = i === 0 ? 0 : (ends[i - 1] as number);
      const band = end === Infinity ? `over ${start} ${unit}` : `${start} to ${end} ${unit}`;
      const within = ({ distance }: Hit): boolean => distance > start && distance <= end;
      const of = (way: "one row" | "two rows"): readonly Hit[] => seriesOf(series, cause, way).filter(within);
      const [single, both] = [of("one row"), of("two rows")];
      if (single.length === 0 || both.length === 0) return [];
      const [a, b] = [summarise(single), summarise(both)];
      return [
        cells(
          cause,
          band,
          String(a.n),
          percent(a.median),
          percent(a.inInterval),
          String(b.n),
          percent(b.median),
          percent(b.inInterval),
        ),
      ];
    });
  });
  return [
    cells(
      "cause",
      "nearest known row",
      "one row: n",
      "median error",
      "inside",
      "two rows: n",
      "median error",
      "inside",
    ),
    rule(2, 6),
    ...rows,
  ].join("\n");
}

/** Where intervals miss: how often, and the largest miss, table by table. */
function misses({ cause, way, hits }: Series): readonly string[] {
  if (way.startsWith("naive")) return [];
  const names = [...new Set(hits.filter((hit) => !holds(hit)).map((hit) => hit.table))];
  return names.map((name) => {
    const all = hits.filter((hit) => hit.table === name);
    const missed = all.filter((hit) => !holds(hit));
    const worst = missed.reduce((a, b) => (Math.abs(a.miss) > Math.abs(b.miss) ? a : b));
    const about = [...temperatureTables, ...dilutionTables].find(({ id }) => id === name)?.about ?? "";
    const size = `${worst.miss >= 0 ? "+" : ""}${one(100 * Math.expm1(worst.miss))} %`;
    return cells(cause, FROM[way] ?? way, name, about, `${missed.length} of ${all.length}`, size);
  });
}

/** The lines of the README's table: temperature and dilution, from one and from two rows read in print. */
export function shortTable(): string {
  const series = measureAccuracy();
  return [
    cells("predicted", "from", "published tables", "median error", "floor", "inside the 90 % interval"),
    rule(2, 4),
    ...(["temperature", "dilution"] as const).flatMap((cause) => {
      const floor = percent(roundingFloor(seen(seriesOf(series, cause, "two rows"), true)));
      return (["one row", "two rows"] as const).map((way) => {
        const { tables, median, inInterval } = summarise(seen(seriesOf(series, cause, way), true));
        return cells(cause, FROM[way] as string, String(tables), percent(median), floor, percent(inInterval));
      });
    }),
  ].join("\n");
}

/** The whole page. */
export function accuracyPage(): string {
  const series = measureAccuracy();
  const floor = (cause: Series["cause"]): string =>
    percent(roundingFloor(seen(seriesOf(series, cause, "two rows"), true)));
  return `# Accuracy

Written by \`npm run accuracy\`; a test fails when it is stale. Every published table in \`test/reference\` that gives times for three conditions or more is
predicted row by row, and no row has a part in its own prediction. One row and two rows are asked for the same targets: from each pair of rows, every other row.

- **one row, generic law**: each row of the pair alone, as one who knows a single time;
- **two rows, fitted law**: the law is fitted to both, the known time is the nearer one;
- **all other rows, fitted law**: leave one out, for tables of four rows and more; other targets than above;
- **naive**: ten per cent for each °C, and twice the time for twice the water, from one row; the straight line through both rows, in ln(time), from two. Neither has an interval.

Each table counts alike, however many rows it has. The headline is the tables that were read in print. Those that are remembered have columns of their own: they
agree with the memory of whoever typed them, which is less. Tables of uncertain memory are left out, and a table whose rows are all in another is counted once.

${headline(series)}

Interval score and CRPS are of ln(time), times 100: smaller is better. The score is the width of the 90 % interval and twenty times what lies outside it. Both reward an interval
that is narrow and holds; coverage alone rewards a wide one.

Rounding sets a floor. Were the law exactly right, the rounding of both printed times would still leave a median error of ${floor("temperature")} for temperature and
${floor("dilution")} for dilution.

## By distance

How far the nearest known row is. All tables, read and remembered.

${byDistance(series)}

## Ratios and rules

None of these were read in print: they are remembered or common practice.

${ratios(series)}

## What was counted

${counts()}
Not counted: the maximum times of the x-ray table (T.O. 33B-1-1, table 6-16), which are the normal times plus three minutes, a rule of adding and no law.

## Where the intervals miss

${cells("cause", "predicted from", "table", "about", "outside", "largest miss")}
${rule(4, 2)}
${series.flatMap(misses).join("\n")}

## What the misses say

- **Two equal neighbouring rows.** Some tables print the same time at two temperatures. The step is rounded away. A pair of such rows makes no law without
  temperature: the prior holds it (37 ± 14 kJ/mol).
- **A diluted bath feels temperature less.** One ascorbate developer has 25 kJ/mol at 1+1 and 78 as stock. The generic law misses the diluted one; its fits come near with two rows.
- **Developers that follow no power.** In F-32 the time with one concentrate rises by n = 1.3 from 1+4 to 1+7 and by 0.3 to 0.5 from 1+9 to 1+15. Use such a table itself as the law.
- **Pyro-soda** has n = 1.3 to 1.7, beyond the generic law's 90 % range: for pyro take \`handbookDilutionLaw("pyro")\`, also as the prior of a fit.

Only five tables of dilutions were read, and four of them are of two developers on two films: the coverage moves by 20 % with a single table. For dilution the straight line through two
rows has the smaller median error, and much the larger errors where it fails. Nor does it say how sure it is.
Where the spreads come from: [decisions/priors.md](decisions/priors.md).
`;
}

function counts(): string {
  const line = (
    name: string,
    tables: readonly { readonly provenance: string; readonly rows: readonly unknown[] }[],
  ): string => {
    const part = (read: boolean): string => {
      const some = tables.filter(({ provenance }) => (provenance === "read") === read);
      const long = some.filter(({ rows }) => rows.length >= 3).length;
      return `${some.length} ${read ? "read" : "from memory"} (${long} of three rows or more)`;
    };
    return `${name}: ${part(true)}, ${part(false)}.`;
  };
  return `${line("Tables of temperature", temperatureTables)} ${line("Tables of dilution", dilutionTables)}`;
}
