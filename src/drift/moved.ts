/*
 * Module: drift. When a bath has left its temperature for whoever reads a thermometer.
 */

/** A bath that moved by so much has moved, whatever the thermometer, °C (assumed). */
export const MOVED_C = 1;
