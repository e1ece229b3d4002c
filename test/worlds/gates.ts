/* What the intervals have to hold, in shares, and the figures as a table for the page on learning. */
import type { Measured } from "./measure.js";
import type { World } from "./worlds.js";

/** One world with its figures at 5, 20 and 40 runs. */
export interface Figures {
  readonly world: World;
  readonly rows: readonly Measured[];
}

const percent = (share: number): string => (100 * share).toFixed(0);

/** A line a world: coverage of the 90 % and the 50 % interval and the median error at each count of runs. */
export function table(figures: readonly Figures[]): string {
  const head = ["| world | 5 runs | 20 runs | 40 runs |", "| --- | --- | --- | --- |"];
  const lines = figures.map(
    ({ world, rows }) =>
      `| ${world.name} | ${rows
        .map(
          ({ ninety, fifty, error }) => `${percent(ninety)} / ${percent(fifty)}, error ${error.toFixed(1)} %`,
        )
        .join(" | ")} |`,
  );
  return [...head, ...lines].join("\n");
}
