/*
 * How far predictions lie from published tables. Nothing is fitted to the row that is predicted.
 */
import { compensate, fitDilutionLaw, fitTemperatureLaw, type Compensation } from "../../src/index.js";
import { agitationRatios } from "../reference/agitation.js";
import { perFilmRange, stepRule, useRules } from "../reference/use.js";
import { dilutionTables, temperatureTables, type Row, type Table } from "./tables.js";

/** One predicted row. */
export interface Hit {
  readonly table: string;
  /** prediction over print, less one, in per cent */
  readonly errorPercent: number;
  readonly inInterval: boolean;
  readonly inRounding: boolean;
}

/** All hits of one way to predict. */
export interface Series {
  readonly room: "temperature" | "dilution" | "agitation" | "use";
  readonly way: string;
  readonly hits: readonly Hit[];
}

function hit<At>(table: Table<At>, row: Row<At>, answer: Compensation): Hit {
  return {
    table: table.id,
    errorPercent: (answer.timeS / row.timeS - 1) * 100,
    inInterval: row.timeS >= answer.lowS && row.timeS <= answer.highS,
    inRounding: Math.abs(answer.timeS - row.timeS) <= table.halfStepS * (1 + 1e-9),
  };
}

/** The row among `known` that is nearest in time: the known time that a photographer would start from. */
function nearest<At>(known: readonly Row<At>[], row: Row<At>): Row<At> {
  const distance = (one: Row<At>): number => Math.abs(Math.log(one.timeS / row.timeS));
  return known.reduce((best, one) => (distance(one) < distance(best) ? one : best));
}

type Predict<At> = (start: Row<At>, at: At, known: readonly Row<At>[]) => Compensation;

/**
 * Every prediction of a row from `size` other rows of its table: all choices, or all the others when `size`
 * is undefined.
 */
function predictions<At>(
  tables: readonly Table<At>[],
  size: 1 | 2 | undefined,
  predict: Predict<At>,
): readonly Hit[] {
  return tables.flatMap((table) =>
    table.rows.flatMap((row, k) => {
      const others = table.rows.filter((_, i) => i !== k);
      const choices =
        size === undefined
          ? [others].filter(({ length }) => length >= 3)
          : size === 1
            ? others.map((one) => [one])
            : others.flatMap((one, i) => others.slice(i + 1).map((two) => [one, two]));
      return choices.map((known) => hit(table, row, predict(nearest(known, row), row.at, known)));
    }),
  );
}

const byDefault: Predict<number> = (start, at) =>
  compensate({ timeS: start.timeS, temperatureC: start.at }, { temperatureC: at });
const byFit: Predict<number> = (start, at, known) => {
  const { law } = fitTemperatureLaw(known.map((row) => ({ temperatureC: row.at, timeS: row.timeS })));
  return compensate(
    { timeS: start.timeS, temperatureC: start.at },
    { temperatureC: at },
    { temperature: law },
  );
};
const dilutedByDefault: Predict<string> = (start, at) =>
  compensate({ timeS: start.timeS, temperatureC: 20, dilution: start.at }, { dilution: at });
const dilutedByFit: Predict<string> = (start, at, known) => {
  const { law } = fitDilutionLaw(known.map((row) => ({ dilution: row.at, timeS: row.timeS })));
  return compensate(
    { timeS: start.timeS, temperatureC: 20, dilution: start.at },
    { dilution: at },
    { dilution: law },
  );
};

/**
 * Published ratios of time under two agitations; where a range is printed, its geometric middle is the row
 * and its ends the rounding.
 */
function agitationHits(): readonly Hit[] {
  return agitationRatios.flatMap(({ id, rows }) =>
    rows.map(({ from, to, low, high }) => {
      const answer = compensate({ timeS: 600, temperatureC: 20, agitation: from }, { agitation: to });
      return rangeHit(id, answer, 600 * low, 600 * high);
    }),
  );
}

/** Published rules of use at their full capacity, or at the tenth roll, against the generic rule. */
function useHits(): readonly Hit[] {
  const factor = (id: string, rollsPerL: number, low: number, high: number): Hit =>
    rangeHit(
      id,
      compensate({ timeS: 600, temperatureC: 20 }, { usedCm2PerL: rollsPerL * 516.128 }),
      600 * low,
      600 * high,
    );
  return [
    ...useRules.flatMap(({ id, rows }) =>
      rows.map(({ increase, rolls, volume, capacityRolls }) => {
        const printed = 1 + increase * (capacityRolls / rolls);
        return factor(id, volume === "litre" ? capacityRolls : capacityRolls / 3.785411784, printed, printed);
      }),
    ),
    ...stepRule.rows
      .slice(1)
      .map(({ first, factor: printed }) => factor(stepRule.id, first - 1, printed, printed)),
    ...perFilmRange.rows.map(({ low, high }) => factor(perFilmRange.id, 5, 1 + 5 * low, 1 + 5 * high)),
  ];
}

function rangeHit(table: string, { timeS, lowS, highS }: Compensation, from: number, to: number): Hit {
  const middle = Math.sqrt(from * to);
  return {
    table,
    errorPercent: (timeS / middle - 1) * 100,
    inInterval: middle >= lowS && middle <= highS,
    inRounding: timeS >= from * (1 - 0.005) && timeS <= to * (1 + 0.005),
  };
}

/** The measurements of the accuracy page. */
export function measureAccuracy(): readonly Series[] {
  return [
    { room: "temperature", way: "one row, generic law", hits: predictions(temperatureTables, 1, byDefault) },
    { room: "temperature", way: "two rows, fitted law", hits: predictions(temperatureTables, 2, byFit) },
    {
      room: "temperature",
      way: "all other rows, fitted law",
      hits: predictions(temperatureTables, undefined, byFit),
    },
    { room: "dilution", way: "one row, generic law", hits: predictions(dilutionTables, 1, dilutedByDefault) },
    { room: "dilution", way: "two rows, fitted law", hits: predictions(dilutionTables, 2, dilutedByFit) },
    {
      room: "dilution",
      way: "all other rows, fitted law",
      hits: predictions(dilutionTables, undefined, dilutedByFit),
    },
    { room: "agitation", way: "published ratios, generic law", hits: agitationHits() },
    { room: "use", way: "published rules, generic law", hits: useHits() },
  ];
}
