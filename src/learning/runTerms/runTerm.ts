/*
 * Terms of ln(time) that belong to a run and not to a cause: when it was made, with which thermometer, by
 * whom, out of which batch, how it was judged, and whether it is a printed row.
 */
import type { Knowledge } from "../../compensate/types.js";
import type { Row, Slope, Unknown } from "../../core/row.js";

/** What a run or a question carries besides its conditions. */
export interface RunMarks {
  readonly date?: string | undefined;
  readonly thermometer?: string | undefined;
  readonly by?: string | undefined;
  readonly batch?: string | undefined;
  /** a strength says how strong its batch is */
  readonly strength?: unknown;
  readonly printed?: boolean | undefined;
  /** what its outcome has in common with others of its kind */
  readonly shared?: Slope | undefined;
}

/** A term as the runs of one notebook make it. */
export interface PlacedTerm {
  readonly unknowns: readonly Unknown[];
  /** the row of one of these runs */
  run(marks: RunMarks): Row;
  /** the row of a development to come */
  question(marks: RunMarks): Row;
  /** the number of the name that every run gives: a question without a name means it */
  readonly usual?: string;
  /** what the term adds from the oldest run to the present, where it moves with time */
  readonly span?: Row;
  /** the steady part of that */
  readonly steady?: Row;
}

/** A term of a run that is no cause. */
export interface RunTerm {
  readonly name: string;
  /** a question can name it too */
  readonly asked: boolean;
  /** `laws` are those that were known before the first run */
  over(runs: readonly RunMarks[], laws: Knowledge): PlacedTerm;
}
