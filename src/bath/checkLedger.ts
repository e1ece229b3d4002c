import type { Caution } from "../core/caution.js";
import { attempt } from "../core/attempt.js";
import type { CheckProblem } from "../core/errors.js";
import { present } from "../core/ordered.js";
import { isOwnField, type OwnFields } from "../core/ownFields.js";
import { plainData } from "../core/plainData.js";
import { pointerTo, unreadFields } from "../core/pointer.js";
import { unlessUnreadable } from "../core/unlessUnreadable.js";
import { LEDGER_KINDS, type Ask, type BathLedger } from "./ledger.js";
import { readLedger } from "./readLedger.js";
import { walkLedger } from "./walkLedger.js";

/** A ledger that can be used, or all that is wrong with it. */
export type CheckedLedger =
  | {
      readonly ok: true;
      /** the ledger, as a clean copy; fields of one's own, which begin with `x-`, are kept */
      readonly ledger: BathLedger & OwnFields;
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
 * that is not read; or `{ ok: false, problems }` with every problem, its path, and what was expected. Fields
 * of one's own, which begin with `x-`, are kept in the ledger and its entries, where they hold plain data
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
  const cautions: Caution[] = [];
  /** The fields of a part that are read, and its owner's. */
  const clean = (path: string, part: object, fields: readonly string[]): object => {
    cautions.push(...unreadFields(path, part, fields));
    const kept = Object.entries(present(part)).flatMap(([field, value]: [string, unknown]) => {
      if (fields.includes(field)) return [[field, value] as const];
      if (!isOwnField(field)) return [];
      return [[field, ask(() => plainData(pointerTo(`checkLedger${path}`, field), value))] as const];
    });
    return Object.fromEntries(kept);
  };
  const ledger = clean("", given, FIELDS);
  const lists = LEDGER_KINDS.flatMap((kind) => {
    const fields = ENTRY_FIELDS[kind] ?? ["atH", "volumeMl"];
    const entries = given[kind]?.map((entry, i) => clean(`/${kind}/${i}`, entry, fields));
    return entries === undefined ? [] : [[kind, entries] as const];
  });
  if (problems.length > 0) return { ok: false, problems };
  const copy = { ...ledger, ...Object.fromEntries(lists) } as unknown as BathLedger & OwnFields;
  return { ok: true, ledger: copy, cautions };
}

const ENTRY_FIELDS: Readonly<Partial<Record<string, readonly string[]>>> = {
  processed: ["atH", "areaCm2"],
  replenished: ["atH", "volumeMl", "mlPerCm2"],
};
