/**
 * What whoever works at the sink is told beside every time, in one line: gloves, air, silver, data sheets. In
 * German it is `de.chart.safety`.
 *
 * @example
 * ```ts
 * safetyText.startsWith("Gloves, glasses, fresh air.") // => true
 * ```
 */
export const safetyText: string =
  "Gloves, glasses, fresh air. Used fixing bath holds silver: keep it apart. " +
  "Safety data sheets and local codes go first.";
