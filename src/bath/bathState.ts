import { arrayOf, inRange, plainObject, positive, wrongValue } from "../core/guards.js";

/**
 * A bath's diary as plain data. Hours stand on any clock of the caller's, as long as it is one and the same:
 * hours since the workshop began, for example.
 */
export interface BathLedger {
  readonly volumeMl: number;
  /** when the bath was mixed, h */
  readonly mixedAtH: number;
  /** what was developed in it and when; `areaCm2` of film or paper */
  readonly processed: readonly { readonly atH: number; readonly areaCm2: number }[];
}

/**
 * Use and age of a bath at a given hour, from its ledger.
 *
 * @param ledger - volume in ml (above 0 to 1e7), hour of mixing, and what was processed when
 * @param atH - the hour asked about, not before mixing
 * @returns `usedCm2PerL` from everything processed up to and including `atH`, and `ageH`
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, something was processed before the bath was mixed, or
 * `atH` lies before mixing
 *
 * @remarks To twelve figures, a number without end never up: what a sum loses to rounding must not take a
 * bath past a limit that it has just reached.
 *
 * @example
 * ```ts
 * bathState({ volumeMl: 500, mixedAtH: 9, processed: [{ atH: 10, areaCm2: 516.128 }] }, 11) // => { usedCm2PerL: 1032.256, ageH: 2 }
 * ```
 */
export function bathState(
  ledger: BathLedger,
  atH: number,
): { readonly usedCm2PerL: number; readonly ageH: number } {
  plainObject("bathState/ledger", ledger);
  const volumeMl = positive("bathState/ledger/volumeMl", ledger.volumeMl, 1e7, "volumeMl");
  const mixedAtH = inRange("bathState/ledger/mixedAtH", ledger.mixedAtH, -1e7, 1e7, "ageH");
  inRange("bathState/atH", atH, -1e7, 1e7, "ageH");
  if (atH < mixedAtH) wrongValue("bathState/atH", `at or after mixing (${mixedAtH} h)`, atH);
  const areas = arrayOf("bathState/ledger/processed", ledger.processed, 0).map((entry, i) => {
    const where = `bathState/ledger/processed/${i}`;
    const item = plainObject(where, entry);
    const doneAtH = inRange(`${where}/atH`, item["atH"], -1e7, 1e7, "ageH");
    if (doneAtH < mixedAtH) wrongValue(`${where}/atH`, `at or after mixing (${mixedAtH} h)`, doneAtH);
    const areaCm2 = positive(`${where}/areaCm2`, item["areaCm2"], 1e6, "areaCm2");
    return doneAtH <= atH ? areaCm2 : 0;
  });
  return {
    usedCm2PerL: twelveFigures((areas.reduce((sum, area) => sum + area, 0) * 1000) / volumeMl),
    ageH: twelveFigures(atH - mixedAtH),
  };
}

/**
 * What goes on without end, as two thirds of an hour, is not rounded up: that would be past a limit of as
 * much.
 */
function twelveFigures(value: number): number {
  const rounded = Number(value.toPrecision(12));
  return rounded - value > 1e-14 * value ? value : rounded;
}
