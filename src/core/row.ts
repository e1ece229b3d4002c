/*
 * What a condition makes of ln(time), for learning: the numbers behind it by name, and what lies beside them.
 */

/** A number to be learned: normal about 0 before the first reading. */
export interface Unknown {
  readonly parameter: string;
  /** its standard deviation before the first reading */
  readonly sd: number;
  /**
   * its variance is learned too, with `sd` as the first guess: `"student"`, t with one degree of freedom;
   * `"open"`, no less than `sd`, and more where the readings contradict it; `"free"`, the same, but sooner
   */
  readonly tail?: "student" | "open" | "free";
}

/** How ln(time) moves with one number. */
export interface Slope {
  readonly parameter: string;
  readonly slope: number;
}

/** ln(time) as a sum over numbers to be learned, and the variance that none of them explains. */
export interface Row {
  readonly slopes: readonly Slope[];
  readonly beside: number;
}

/** The row of a condition that changes nothing. */
export const NO_ROW: Row = { slopes: [], beside: 0 };

/** Several rows as one: their slopes and variances add. */
export function joinRows(rows: readonly Row[]): Row {
  let beside = 0;
  const slopes: Slope[] = [];
  for (const row of rows) {
    beside += row.beside;
    for (const slope of row.slopes) slopes.push(slope);
  }
  return { slopes, beside };
}

/** The row of one number. */
export function rowOf(parameter: string, slope: number): Row {
  return { slopes: [{ parameter, slope }], beside: 0 };
}
