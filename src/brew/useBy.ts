/*
 * Module: brew. How soon a brew is to be used, for the sentences of every language.
 */

/** A brew that may fail before this is used within the hour (common practice), h. */
const WITHIN_THE_HOUR_H = 2;
/** One that may fail before this is used at once, h. */
const AT_ONCE_H = 1;

/** How soon, by when a brew may fail at the earliest; nothing is said of one that keeps. */
export function useBy(
  failsH: readonly [number, number] | undefined,
): "at-once" | "within-the-hour" | undefined {
  const lowH = failsH?.[0] ?? Infinity;
  if (lowH < AT_ONCE_H) return "at-once";
  return lowH < WITHIN_THE_HOUR_H ? "within-the-hour" : undefined;
}
