/* Rows of a Markdown table. */

/** One row. */
export const cells = (...values: readonly string[]): string => `| ${values.join(" | ")} |`;

/** The row below the head: so many columns to the left, and to the right. */
export const rule = (left: number, right: number): string =>
  cells(...Array.from({ length: left + right }, (_, i) => (i < left ? "---" : "---:")));
