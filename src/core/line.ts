/*
 * A law as one number, in which ln of its factor is a straight line: what learning the number from runs needs.
 */

/** ln of a factor, and its slope in the number behind the law. */
export type Line = readonly [log: number, slope: number];

/** A number and its standard deviation. */
export type NumberOfLaw = readonly [value: number, sd: number];

/** The least and the greatest that a number can be. */
export type NumberRange = readonly [low: number, high: number];
