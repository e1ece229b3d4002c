/*
 * What steering has to keep to, counted over seeded runs: on both sides of the true end, so that one that never says
 * "pour out" fails.
 */
import type { SteerAnswer, SteerInput } from "../../src/index.js";
import { deadFaults, faults, seeded, stopped, walk, worldOf, type Outcome } from "./simulation.js";

/** The figures of one fault. */
export interface FaultFigures {
  readonly fault: string;
  readonly told: boolean;
  readonly dead: boolean;
  readonly runs: number;
  /** share poured out inside the interval of the true path */
  readonly inside: number;
  /** runs poured out more than a tenth of the time outside it */
  readonly far: number;
  /** |ln(poured/true)|: median and 95 % */
  readonly median: number;
  readonly most: number;
  /** runs in which a reading was doubted at some moment */
  readonly doubted: number;
}

type Steer = (input: SteerInput) => SteerAnswer;

const quantile = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(share * values.length))]!;

/** Walks `runs` seeded runs for every fault, with vessel and air told and not. */
export function faultFigures(steer: Steer, runs: number): readonly FaultFigures[] {
  const all = [...Object.entries(faults), ...Object.entries(deadFaults)];
  return [true, false].flatMap((told) =>
    all.map(([fault, spoil]) => {
      const random = seeded(20_260_101);
      const outcomes: readonly Outcome[] = Array.from({ length: runs }, () => {
        const world = worldOf(random);
        return walk(steer, world, spoil(world.readings, random), told);
      });
      const errors = outcomes.map(({ pouredS, truth }) => Math.abs(Math.log(pouredS / truth.timeS)));
      return {
        fault,
        told,
        dead: fault in deadFaults,
        runs,
        inside:
          outcomes.filter(({ pouredS, truth }) => pouredS >= truth.lowS && pouredS <= truth.highS).length /
          runs,
        far: outcomes.filter(
          ({ pouredS, truth }) => pouredS > 1.1 * truth.highS || pouredS < truth.lowS / 1.1,
        ).length,
        median: quantile(errors, 0.5),
        most: quantile(errors, 0.95),
        doubted: outcomes.filter(({ trusted }) => !trusted).length,
      };
    }),
  );
}

/** The gates that a row of figures misses, in words. */
export function missed(row: FaultFigures): readonly string[] {
  const { fault, told, dead, inside, far, median, doubted } = row;
  const least = told ? 0.995 : dead ? 0.95 : 0.99;
  const greatest = dead ? 0.03 : 0.008;
  return [
    inside < least && `inside ${inside} < ${least}`,
    told && far > 0 && `${far} runs far outside`,
    median > greatest && `median error ${median} > ${greatest}`,
    fault === "none" && doubted > 0 && `${doubted} sound runs doubted`,
  ].filter((miss) => miss !== false);
}

/** How often the interval of what is left holds the true end. */
export interface IntervalFigures {
  readonly told: boolean;
  readonly appearance: boolean;
  readonly doubt: boolean;
  readonly inside: number;
  readonly median: number;
  readonly most: number;
}

/** Stops `runs` seeded runs between 20 and 80 %, told and not, with appearance and without, trusted and in doubt. */
export function intervalFigures(steer: Steer, runs: number): readonly IntervalFigures[] {
  return [true, false].flatMap((told) =>
    [true, false].flatMap((appearance) =>
      [true, false].map((doubt) => {
        const random = seeded(20_260_202);
        const held = Array.from({ length: runs }, () => stopped(steer, random, told, { doubt, appearance }));
        const errors = held.map(({ error }) => Math.abs(error));
        return {
          told,
          appearance,
          doubt,
          inside: held.filter(({ inside }) => inside).length / runs,
          median: quantile(errors, 0.5),
          most: quantile(errors, 0.95),
        };
      }),
    ),
  );
}

const percent = (share: number): string => `${(100 * share).toFixed(2)} %`;

/** The figures as lines to read. */
export const faultLines = (rows: readonly FaultFigures[]): string =>
  rows
    .map(
      ({ fault, told, inside, far, median, most, doubted }) =>
        `${told ? "told" : "nothing told"}, ${fault}: inside ${percent(inside)}, far ${far}, ` +
        `error ${percent(median)} / ${percent(most)}, doubted ${doubted}`,
    )
    .join("\n");

/** The same for intervals. */
export const intervalLines = (rows: readonly IntervalFigures[]): string =>
  rows
    .map(
      ({ told, appearance, doubt, inside, median, most }) =>
        `${told ? "told" : "nothing told"}${appearance ? ", appearance" : ""}${doubt ? ", in doubt" : ""}: ` +
        `holds ${percent(inside)}, error ${percent(median)} / ${percent(most)}`,
    )
    .join("\n");
