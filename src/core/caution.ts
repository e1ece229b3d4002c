/**
 * How grave a {@link Caution} is: `"stop"` means do not commit a negative to this, `"warn"` means allowed but
 * unwise, `"note"` is worth knowing.
 */
export type CautionSeverity = "stop" | "warn" | "note";

/**
 * Something that is allowed but unwise. Cautions are returned, never thrown; wrong input throws instead.
 *
 * @remarks `code` is stable and meant for programs; `message` is plain English and may be reworded in any
 * release. `limit` and `actual` are in the units of the arguments (s, °C, cm² per litre, ml, g), whatever the
 * message says them in.
 */
export interface Caution {
  readonly code: string;
  readonly severity: CautionSeverity;
  readonly message: string;
  readonly path?: string;
  readonly limit?: number;
  readonly actual?: number;
}

/**
 * Whether a number is past a limit. Up to a billionth above, it stands at it: sums, products and hours on a
 * clock that counts from 1970 round to that.
 */
export const isPast = (actual: number, limit: number): boolean => actual > limit * (1 + 1e-9);

const GRAVITY: readonly CautionSeverity[] = ["stop", "warn", "note"];

/** The same cautions, gravest first, otherwise in their order. */
export function gravestFirst(cautions: readonly Caution[]): readonly Caution[] {
  const sorted: Caution[] = [];
  for (const severity of GRAVITY) for (const one of cautions) if (one.severity === severity) sorted.push(one);
  return sorted;
}
