import { gravity, type Caution } from "../core/caution.js";

/**
 * What stops a run by its time: every caution that refuses a time, but those of a reading, which is left out,
 * and of a target that is past, which was right.
 *
 * @param cautions - those of a run
 * @returns some of them, in their order
 */
export const timeStops = (cautions: readonly Caution[]): readonly Caution[] =>
  cautions.filter(
    ({ code, severity, path }) =>
      gravity(severity) === 0 && code !== "target-passed" && path?.startsWith("/log/") !== true,
  );
