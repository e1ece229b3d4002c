/*
 * Module: chart. Times over temperature and dilution, for the wall: plain data.
 */
import type { Caution } from "../core/caution.js";
import type { TimeEstimate } from "../core/estimate.js";
import type { Dilution } from "../dilution/dilution.js";
import type { Baseline, Conditions, Knowledge } from "../compensate/types.js";

/** The temperatures and dilutions of a chart. */
export interface ChartAxes {
  /** °C, each from 0 to 100, 1 to 1000 of them, in the order that they are wanted */
  readonly temperaturesC: readonly number[];
  /** as text, `"1+9"`, or parts, 1 to 100 of them; that of the known time when left out */
  readonly dilutions?: readonly (Dilution | string)[] | undefined;
}

/** What a chart is made from. */
export interface TimeChartInput extends ChartAxes {
  /** the known time and its conditions */
  readonly baseline: Baseline;
  /** what else is otherwise today: agitation, use, age; as in the baseline when left out */
  readonly conditions?: Omit<Conditions, "temperatureC" | "dilution"> | undefined;
  /** laws known for this developer and material; generic laws are used for the rest */
  readonly knowledge?: Knowledge | undefined;
}

/**
 * One cell of a chart: the median and the 90 % interval, in s and unrounded, at a temperature and a dilution.
 */
export interface TimeChartRow extends TimeEstimate {
  /** the dilution as text, where one is known */
  readonly dilution?: string | undefined;
  /** °C */
  readonly temperatureC: number;
  /** a caution of severity `"stop"` is in the way of the time */
  readonly refused: boolean;
  /** what is unwise here, gravest first; left out when nothing is */
  readonly cautions?: readonly Caution[] | undefined;
}

/** A cause that every time of a chart counts with. */
export interface TimeChartHeld {
  /** the cause by its name; or `"fresh"`: the bath has neither been used nor stood */
  readonly cause: string;
  /** its side, as it was given */
  readonly to?: unknown;
}

/** Times over temperature and dilution. */
export interface TimeChart {
  /** what was known: the time in s, the temperature in °C, the dilution as text where one is known */
  readonly known: {
    /** the known time, s */
    readonly timeS: number;
    /** °C */
    readonly temperatureC: number;
    /** the dilution as text */
    readonly dilution?: string | undefined;
  };
  /** what else is otherwise than at the known time, the same in every cell; left out when nothing is */
  readonly held?: readonly TimeChartHeld[] | undefined;
  /** °C */
  readonly temperaturesC: readonly number[];
  /** as text; left out where none is known, and then there is one column */
  readonly dilutions?: readonly string[] | undefined;
  /** all temperatures of the first dilution, then those of the next */
  readonly rows: readonly TimeChartRow[];
}
