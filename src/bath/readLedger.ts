import { arrayOf, inRange, plainObject, positive, wrongSide } from "../core/guards.js";
import { handbookReplenishment } from "../handbook/use.js";
import { LEDGER_KINDS, type Ask, type LedgerEvent, type ReadLedger } from "./ledger.js";

/** Reads a ledger at a place, value by value; what `ask` gives no value for is left out. */
export function readLedger(where: string, ledger: unknown, ask: Ask): ReadLedger | undefined {
  const given = ask(() => plainObject(where, ledger));
  if (given === undefined) return undefined;
  const volumeMl = ask(() => positive(where, given["volumeMl"], 1e7, "volumeMl", "/volumeMl"));
  const mixedAtH = ask(() => inRange(where, given["mixedAtH"], -1e7, 1e7, "ageH", "/mixedAtH"));
  const events: LedgerEvent[] = [];
  for (const kind of LEDGER_KINDS) {
    const listed = given[kind];
    if (listed === undefined && kind !== "processed") continue;
    const entries = ask(() => arrayOf(`${where}/${kind}`, listed, 0)) ?? [];
    entries.forEach((entry, i) => {
      const event = readEvent(kind, `${where}/${kind}/${i}`, entry, mixedAtH ?? -1e7, ask);
      if (event !== undefined) events.push(event);
    });
  }
  if (volumeMl === undefined || mixedAtH === undefined) return undefined;
  // Sorting keeps the order of the kinds where the hours are equal.
  return { volumeMl, mixedAtH, events: events.sort((a, b) => a.atH - b.atH) };
}

function readEvent(
  kind: LedgerEvent["kind"],
  at: string,
  entry: unknown,
  mixedAtH: number,
  ask: Ask,
): LedgerEvent | undefined {
  const item = ask(() => plainObject(at, entry));
  if (item === undefined) return undefined;
  const { mlPerCm2 = handbookReplenishment["tank-generic"].mlPerCm2 } = item;
  const atH = ask(() => {
    const doneAtH = inRange(at, item["atH"], -1e7, 1e7, "ageH", "/atH");
    if (doneAtH < mixedAtH)
      wrongSide(`${at}/atH`, doneAtH, { min: mixedAtH, quantity: "ageH", path: "/mixedAtH" });
    return doneAtH;
  });
  const amount = ask(() =>
    kind === "processed"
      ? positive(at, item["areaCm2"], 1e6, "areaCm2", "/areaCm2")
      : positive(at, item["volumeMl"], 1e7, "volumeMl", "/volumeMl"),
  );
  const rule = ask(() => (kind === "replenished" ? positive(at, mlPerCm2, 10, "mlPerCm2", "/mlPerCm2") : 1));
  if (atH === undefined || amount === undefined || rule === undefined) return undefined;
  return { kind, atH, amount, mlPerCm2: rule, at };
}
