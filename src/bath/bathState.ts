import { inRange, wrongSide } from "../core/guards.js";
import type { Ask, BathLedger, ReadLedger } from "./ledger.js";
import { readLedger } from "./readLedger.js";
import { walkLedger } from "./walkLedger.js";

/**
 * Use and age of a bath at a given hour, from its ledger.
 *
 * @param ledger - volume in ml, hour of mixing, and what was processed, replenished, topped up, poured off
 * and evaporated when
 * @param atH - the hour asked about, not before mixing
 * @returns `usedCm2PerL` from everything up to and including `atH`, and `ageH` since mixing
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, something happened before the bath was mixed, more was
 * taken out than was in it, or `atH` lies before mixing
 *
 * @remarks What is poured off takes its share of the use along, fresh bath thins it, and evaporation thickens
 * it. A replenisher by its rule holds the bath where it was before the area, and never restores it: its
 * volume takes the place of as much bath. The age is that of the oldest part. The sums are to twelve figures,
 * a number without end never up: what a sum loses to rounding must not take a bath past a limit that it has
 * just reached.
 *
 * @example
 * ```ts
 * const ledger = { volumeMl: 500, mixedAtH: 9, processed: [{ atH: 10, areaCm2: 516.128 }] };
 * bathState(ledger, 11) // => { usedCm2PerL: 1032.256, ageH: 2 }
 * const half = [{ atH: 11, volumeMl: 250 }];
 * const topped = { ...ledger, pouredOff: half, toppedUp: half };
 * bathState(topped, 11) // => { usedCm2PerL: 516.128, ageH: 2 }
 * ```
 */
export function bathState(
  ledger: BathLedger,
  atH: number,
): { readonly usedCm2PerL: number; readonly ageH: number } {
  const read = strictly("bathState", ledger, atH);
  const { areaCm2, volumeMl } = walkLedger(read, atH, strict);
  const usedCm2PerL = twelveFigures((areaCm2 * 1000) / volumeMl);
  return {
    // A bath can evaporate to a few drops. Its use is then beyond any limit.
    usedCm2PerL: inRange("bathState/ledger", usedCm2PerL, 0, 1e6, "cm2PerL"),
    ageH: twelveFigures(atH - read.mixedAtH),
  };
}

const strict: Ask = (call) => call();

/**
 * Reads a ledger and the hour asked about; the first problem ends everything, wherever in the ledger it is.
 */
export function strictly(name: string, ledger: BathLedger, atH: number): ReadLedger {
  // A strict reading gives a ledger or throws.
  const read = readLedger(`${name}/ledger`, ledger, strict) as ReadLedger;
  inRange(`${name}/atH`, atH, -1e7, 1e7, "ageH");
  if (atH < read.mixedAtH)
    wrongSide(`${name}/atH`, atH, { min: read.mixedAtH, quantity: "ageH", path: "/ledger/mixedAtH" });
  walkLedger(read, Infinity, strict);
  return read;
}

/**
 * What goes on without end, as two thirds of an hour, is not rounded up: that would be past a limit of as
 * much.
 */
export function twelveFigures(value: number): number {
  const rounded = Number(value.toPrecision(12));
  return rounded - value > 1e-14 * value ? value : rounded;
}
