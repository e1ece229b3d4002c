import { strictly, twelveFigures } from "./bathState.js";
import type { BathLedger } from "./ledger.js";
import { walkLedger } from "./walkLedger.js";

/**
 * The volume of a bath at a given hour, from its ledger.
 *
 * @param ledger - as for {@link bathState}
 * @param atH - the hour asked about, not before mixing
 * @returns ml after what was topped up, poured off and evaporated up to and including `atH`
 * @throws TypeError or RangeError as {@link bathState} does
 *
 * @example
 * ```ts
 * const evaporated = [{ atH: 10, volumeMl: 20 }];
 * bathVolumeMl({ volumeMl: 500, mixedAtH: 9, processed: [], evaporated }, 11) // => 480
 * ```
 */
export function bathVolumeMl(ledger: BathLedger, atH: number): number {
  return twelveFigures(walkLedger(strictly("bathVolumeMl", ledger, atH), atH, (call) => call()).volumeMl);
}
