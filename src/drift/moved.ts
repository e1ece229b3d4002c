/*
 * Module: drift. From which change on a bath counts as warmer or colder than it was.
 */

/** A smaller change can be an error of the thermometer, °C (assumed). */
export const MOVED_C = 1;
