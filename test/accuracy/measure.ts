/*
 * How far predictions lie from published tables. Nothing is fitted to the row that is predicted. One row and two
 * rows are asked for the same targets: from each pair of rows every other row, by each row of the pair alone and
 * by both.
 */
import { compensate, fitDilutionLaw, fitTemperatureLaw, type Compensation } from "../../src/index.js";
import { agitationRatios } from "../reference/agitation.js";
import { perFilmRange, stepRule, useRules } from "../reference/use.js";
import { dilutionTables, temperatureTables, waterOf, type Row, type Table } from "./tables.js";

/** The 95 % point of the standard normal distribution. */
const Z90 = 1.6448536269514722;

/** One predicted row. */
export interface Hit {
  readonly table: string;
  readonly read: boolean;
  /** ln(prediction/print) */
  readonly miss: number;
  /** standard deviation of ln(prediction); none for a rule without an interval */
  readonly sd: number | undefined;
  readonly inRounding: boolean;
  /** from the nearest known row: °C, or doublings of the water's share */
  readonly distance: number;
  /** share of its table, so that each table counts alike */
  readonly weight: number;
  /** the half steps of known and predicted row, as shares of their times: what rounding alone can do */
  readonly rounding: readonly [known: number, predicted: number];
}

/** The ways to predict. */
export type Way = "one row" | "two rows" | "all other rows" | "naive, one row" | "naive, two rows";

/** All hits of one way to predict. */
export interface Series {
  readonly cause: "temperature" | "dilution" | "agitation" | "use";
  readonly way: Way | "published ratios" | "published rules";
  readonly hits: readonly Hit[];
}

/** A prediction of a row from known ones, the nearest first. */
type Predict<At> = (
  known: readonly Row<At>[],
  at: At,
) => { readonly timeS: number; readonly sd: number | undefined };

interface Kind<At> {
  readonly distance: (a: At, b: At) => number;
  readonly ways: Readonly<Record<Way, Predict<At>>>;
}

const spread = ({ timeS, highS }: Compensation): { readonly timeS: number; readonly sd: number } => ({
  timeS,
  sd: Math.log(highS / timeS) / Z90,
});

/** A straight line through two rows, carried on; level where both are at one place. */
const line = (x: readonly [number, number], timeS: readonly [number, number], at: number): number =>
  timeS[0] * Math.exp((Math.log(timeS[1] / timeS[0]) * (at - x[0])) / (x[1] - x[0]));

const byTemperature = (known: readonly Row<number>[], at: number): ReturnType<Predict<number>> => {
  const { law } = fitTemperatureLaw(known.map((row) => ({ temperatureC: row.at, timeS: row.timeS })));
  const [start] = known as readonly [Row<number>];
  return spread(
    compensate({ timeS: start.timeS, temperatureC: start.at }, { temperatureC: at }, { temperature: law }),
  );
};

const temperature: Kind<number> = {
  distance: (a, b) => Math.abs(a - b),
  ways: {
    "one row": ([start], at) =>
      spread(compensate({ timeS: start!.timeS, temperatureC: start!.at }, { temperatureC: at })),
    "two rows": byTemperature,
    "all other rows": byTemperature,
    // Ten per cent for each °C, the rule of thumb.
    "naive, one row": ([start], at) => ({ timeS: start!.timeS * 1.1 ** (start!.at - at), sd: undefined }),
    // The slope between the two rows, in ln(time) over °C.
    "naive, two rows": ([a, b], at) => ({
      timeS: line([a!.at, b!.at], [a!.timeS, b!.timeS], at),
      sd: undefined,
    }),
  },
};

const logWater = (dilution: string): number => Math.log1p(waterOf(dilution));
const byDilution = (known: readonly Row<string>[], at: string): ReturnType<Predict<string>> => {
  const { law } = fitDilutionLaw(known.map((row) => ({ dilution: row.at, timeS: row.timeS })));
  const [start] = known as readonly [Row<string>];
  return spread(
    compensate(
      { timeS: start.timeS, temperatureC: 20, dilution: start.at },
      { dilution: at },
      { dilution: law },
    ),
  );
};

const dilution: Kind<string> = {
  distance: (a, b) => Math.abs(logWater(a) - logWater(b)) / Math.LN2,
  ways: {
    "one row": ([start], at) =>
      spread(compensate({ timeS: start!.timeS, temperatureC: 20, dilution: start!.at }, { dilution: at })),
    "two rows": byDilution,
    "all other rows": byDilution,
    // Twice the water, twice the time.
    "naive, one row": ([start], at) => ({
      timeS: start!.timeS * Math.exp(logWater(at) - logWater(start!.at)),
      sd: undefined,
    }),
    // The power through the two rows.
    "naive, two rows": ([a, b], at) => ({
      timeS: line([logWater(a!.at), logWater(b!.at)], [a!.timeS, b!.timeS], logWater(at)),
      sd: undefined,
    }),
  },
};

/** The choices of known rows for a target, by the way that uses them. */
function choices<At>(others: readonly Row<At>[], way: Way): readonly (readonly Row<At>[])[] {
  if (way === "all other rows") return others.length >= 3 ? [others] : [];
  const pairs = others.flatMap((one, i) => others.slice(i + 1).map((two) => [one, two] as const));
  return way.endsWith("one row") ? pairs.flatMap(([one, two]) => [[one], [two]]) : pairs;
}

function hitsOf<At>(table: Table<At>, way: Way, { distance, ways }: Kind<At>): readonly Hit[] {
  const found = table.rows.flatMap((row, k) =>
    choices(
      table.rows.filter((_, i) => i !== k),
      way,
    ).map((known) => {
      // The known time that a photographer would start from is the one nearest to today's conditions.
      const sorted = [...known].sort((a, b) => distance(a.at, row.at) - distance(b.at, row.at));
      const start = sorted[0] as Row<At>;
      const { timeS, sd } = ways[way](sorted, row.at);
      return {
        table: table.id,
        read: table.provenance === "read",
        miss: Math.log(timeS / row.timeS),
        sd,
        inRounding: Math.abs(timeS - row.timeS) <= table.halfStepS * (1 + 1e-9),
        distance: distance(start.at, row.at),
        rounding: [table.halfStepS / start.timeS, table.halfStepS / row.timeS] as const,
      };
    }),
  );
  return found.map((hit) => ({ ...hit, weight: 1 / found.length }));
}

const WAYS: readonly Way[] = ["one row", "two rows", "all other rows", "naive, one row", "naive, two rows"];

/** Every way for every table of three rows and more. */
function seriesOf<At>(
  cause: Series["cause"],
  tables: readonly Table<At>[],
  kind: Kind<At>,
): readonly Series[] {
  const asked = tables.filter(({ rows }) => rows.length >= 3);
  return WAYS.map((way) => ({ cause, way, hits: asked.flatMap((table) => hitsOf(table, way, kind)) }));
}

/**
 * Published ratios of time under two agitations; where a range is printed, its geometric middle is the row
 * and its ends the rounding.
 */
function agitationHits(): readonly Hit[] {
  return agitationRatios.flatMap(({ id, rows }) =>
    rows.map(({ from, to, low, high }) => {
      const answer = compensate({ timeS: 600, temperatureC: 20, agitation: from }, { agitation: to });
      return rangeHit(id, answer, 600 * low, 600 * high, rows.length);
    }),
  );
}

/** Published rules of use at their full capacity, or at the tenth roll, against the generic rule. */
function useHits(): readonly Hit[] {
  const factor = (id: string, rollsPerL: number, low: number, high: number, of: number): Hit =>
    rangeHit(
      id,
      compensate({ timeS: 600, temperatureC: 20 }, { usedCm2PerL: rollsPerL * 516.128 }),
      600 * low,
      600 * high,
      of,
    );
  return [
    ...useRules
      .filter(({ provenance }) => !provenance.endsWith("uncertain"))
      .flatMap(({ id, rows }) =>
        rows.map(({ increase, rolls, volume, capacityRolls }) => {
          const printed = 1 + increase * (capacityRolls / rolls);
          const perL = volume === "litre" ? capacityRolls : capacityRolls / 3.785411784;
          return factor(id, perL, printed, printed, rows.length);
        }),
      ),
    ...(stepRule.provenance.endsWith("uncertain") ? [] : stepRule.rows.slice(1)).map(
      ({ first, factor: printed }) => factor(stepRule.id, first - 1, printed, printed, 2),
    ),
    ...perFilmRange.rows.map(({ low, high }) => factor(perFilmRange.id, 5, 1 + 5 * low, 1 + 5 * high, 1)),
  ];
}

function rangeHit(table: string, answer: Compensation, from: number, to: number, of: number): Hit {
  const { timeS, sd } = spread(answer);
  return {
    table,
    read: false,
    miss: Math.log(timeS / Math.sqrt(from * to)),
    sd,
    inRounding: timeS >= from * (1 - 0.005) && timeS <= to * (1 + 0.005),
    distance: 0,
    weight: 1 / of,
    rounding: [0, 0],
  };
}

/** The measurements of the accuracy page. */
export function measureAccuracy(): readonly Series[] {
  return [
    ...seriesOf("temperature", temperatureTables, temperature),
    ...seriesOf("dilution", dilutionTables, dilution),
    { cause: "agitation", way: "published ratios", hits: agitationHits() },
    { cause: "use", way: "published rules", hits: useHits() },
  ];
}
