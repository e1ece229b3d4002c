import { refuse } from "../core/guards.js";
import type { Ask, ReadLedger } from "./ledger.js";
import { heldText } from "./text.js";

/** What is in a bath at an hour. */
export interface LedgerState {
  /** area whose traces are in the bath, cm² */
  readonly areaCm2: number;
  readonly volumeMl: number;
}

/** Walks a ledger to an hour; refuses what takes more out of the bath than is in it. */
export function walkLedger({ volumeMl, events }: ReadLedger, untilH: number, ask: Ask): LedgerState {
  let [areaCm2, leftMl] = [0, volumeMl];
  // Area since the bath was last replenished: a replenisher holds a bath and does not restore it.
  let openCm2 = 0;
  for (const { kind, atH, amount, mlPerCm2, at } of events) {
    if (atH > untilH) break;
    if (kind === "processed") {
      areaCm2 += amount;
      openCm2 += amount;
    } else if (kind === "toppedUp") leftMl += amount;
    else if (kind === "replenished") {
      const heldCm2 = Math.min(openCm2, amount / mlPerCm2);
      areaCm2 -= heldCm2;
      openCm2 -= heldCm2;
    } else {
      const enough = ask(() =>
        amount < leftMl
          ? true
          : refuse(`${at}/volumeMl`, "below-held", heldText, { below: leftMl, quantity: "volumeMl" }, amount),
      );
      if (enough === undefined) continue;
      const share = 1 - amount / leftMl;
      leftMl -= amount;
      if (kind === "evaporated") continue;
      areaCm2 *= share;
      openCm2 *= share;
    }
  }
  return { areaCm2, volumeMl: leftMl };
}
