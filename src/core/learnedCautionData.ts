/*
 * What the sentence of a caution about runs names besides its limit and its actual figure.
 */

/** The `data` of a caution about what was learned, by its code. */
export interface LearnedCautionData {
  /** a run that counts for less */
  readonly "doubted-run": {
    /** its id, or its place from 0 */
    readonly run: string | number;
    /** whether that is its id */
    readonly named: boolean;
    /** its development time, s */
    readonly timeS: number;
    /** its bath, °C */
    readonly temperatureC: number;
    /** its date, where it was noted */
    readonly date?: string | undefined;
    /** why, as in `knowledge.setAside` */
    readonly reason: string;
  };
  /** notes of several films or developers, read as one */
  readonly "mixed-notes": {
    /** the heading of the column that names them */
    readonly heading: string;
    /** the names, those of the most runs first: five at most */
    readonly values: readonly {
      /** the name, to 60 characters */
      readonly value: string;
      /** how many runs have it */
      readonly runs: number;
    }[];
    /** how many runs have none */
    readonly unnamed: number;
  };
  /** runs that were set aside and teach nothing */
  readonly "not-fitted": {
    /** how many runs there are in all */
    readonly runs: number;
    /** why, the reason of the most runs first */
    readonly reasons: readonly {
      /** why, as in `knowledge.setAside` */
      readonly reason: string;
      /** how many runs */
      readonly runs: number;
    }[];
  };
  /** runs that disagree more than their outcomes say */
  readonly "scatter": {
    /** how many are fitted */
    readonly runs: number;
    /** too few to tell how they scatter: they disagree with what was known */
    readonly few: boolean;
  };
  /** a learned number at the end of its range */
  readonly "held-at-limit": {
    /** the number by its name */
    readonly parameter: string;
    /** the cause, pair or mark that it belongs to */
    readonly cause: string;
  };
  /** a learned number far from where it began */
  readonly "far-from-known": {
    /** the number by its name */
    readonly parameter: string;
    /** the cause, pair or mark that it belongs to */
    readonly cause: string;
  };
  /** times that drift */
  readonly "trend": {
    /** those of the newest date as a multiple of those of the oldest */
    readonly ratio: number;
  };
  /** runs without a date */
  readonly "undated-runs": {
    /** their places in `knowledge.runs` */
    readonly runs: readonly number[];
    /** whether others have some, over which they could drift */
    readonly dated: boolean;
  };
  /** numbers that the runs cannot tell apart */
  readonly "not-separated": {
    /** the numbers by their names */
    readonly parameters: readonly string[];
    /** the causes that they belong to */
    readonly causes: readonly string[];
  };
  /** runs that are copies of others, equal in every field: `actual` of them */
  readonly "equal-runs": {
    /** the places in `knowledge.runs` of the copies and of what they copy */
    readonly runs: readonly number[];
  };
}
