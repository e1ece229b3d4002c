import type { Caution } from "../core/caution.js";
import { attempt } from "../core/attempt.js";
import type { CheckProblem } from "../core/errors.js";
import { unreadFields } from "../core/pointer.js";
import { unlessUnreadable } from "../core/unlessUnreadable.js";
import { LEDGER_KINDS, type Ask, type BathLedger } from "./ledger.js";
import { readLedger } from "./readLedger.js";
import { walkLedger } from "./walkLedger.js";

/** A ledger that can be used, or all that is wrong with it. */
export type CheckedLedger =
  | {
      readonly ok: true;
      /** the ledger, as a clean copy */
      readonly ledger: BathLedger;
      /** what is unwise about it */
      readonly cautions: readonly Caution[];
    }
  | {
      readonly ok: false;
      /** everything that is wrong with it */
      readonly problems: readonly CheckProblem[];
    };

const FIELDS: readonly string[] = ["volumeMl", "mixedAtH", ...LEDGER_KINDS];

/**
 * Checks a ledger that was typed, stored or sent, without throwing.
 *
 * @param input - anything
 * @returns `{ ok: true, ledger, cautions }` with a clean copy, and a caution `unknown-field` for each field
 * that is not read; or `{ ok: false, problems }` with every problem, its path, and what was expected
 *
 * @example
 * ```ts
 * const checked = checkLedger({ volumeMl: 500, mixedAtH: 9, processed: [{ atH: 8, areaCm2: 108 }] });
 * checked.ok ? [] : checked.problems.map(({ path }) => path) // => ["/processed/0/atH"]
 * ```
 */
export function checkLedger(input: unknown): CheckedLedger {
  return unlessUnreadable(
    [input],
    () => ledgerCheck(input),
    (problem) => ({ ok: false, problems: [problem] }),
  );
}

function ledgerCheck(input: unknown): CheckedLedger {
  const problems: CheckProblem[] = [];
  const ask: Ask = (call) => attempt(problems, call);
  const read = readLedger("checkLedger", input, ask);
  if (read !== undefined) walkLedger(read, Infinity, ask);
  if (problems.length > 0) return { ok: false, problems };
  const given = input as BathLedger;
  const cautions = [...unreadFields("", given, FIELDS)];
  const lists = LEDGER_KINDS.flatMap((kind) => {
    const entries = given[kind];
    if (entries === undefined) return [];
    const fields = ENTRY_FIELDS[kind] ?? ["atH", "volumeMl"];
    const clean = entries.map((entry, i) => {
      cautions.push(...unreadFields(`/${kind}/${i}`, entry, fields));
      return Object.fromEntries(Object.entries(entry).filter(([field]) => fields.includes(field)));
    });
    return [[kind, clean] as const];
  });
  const { volumeMl, mixedAtH } = given;
  return {
    ok: true,
    ledger: { volumeMl, mixedAtH, ...Object.fromEntries(lists) } as unknown as BathLedger,
    cautions,
  };
}

const ENTRY_FIELDS: Readonly<Partial<Record<string, readonly string[]>>> = {
  processed: ["atH", "areaCm2"],
  replenished: ["atH", "volumeMl", "mlPerCm2"],
};
