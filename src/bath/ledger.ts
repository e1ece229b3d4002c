/** An amount at an hour. */
export interface LedgerVolume {
  /** h, on the clock of the ledger */
  readonly atH: number;
  /** ml, above 0 to 1e7 */
  readonly volumeMl: number;
}

/**
 * A bath's diary as plain data. Its hours are on any clock of the caller's, as long as it is one and the
 * same: hours since the workshop began, for example.
 */
export interface BathLedger {
  /** volume at mixing, ml, above 0 to 1e7 */
  readonly volumeMl: number;
  /** when the bath was mixed, h */
  readonly mixedAtH: number;
  /** what was developed in it and when; `areaCm2` of film, plate or paper */
  readonly processed: readonly {
    /** when it was developed, h */
    readonly atH: number;
    /** how much was developed, cm² */
    readonly areaCm2: number;
  }[];
  /**
   * replenisher that took the place of as much bath, carried out or poured off with it; `mlPerCm2` is its
   * rule, that of a tank when left out
   */
  readonly replenished?:
    | readonly (LedgerVolume & {
        /** the rule of replenishment, ml for each cm² */
        readonly mlPerCm2?: number | undefined;
      })[]
    | undefined;
  /** fresh bath, or water after evaporation, that was added */
  readonly toppedUp?: readonly LedgerVolume[] | undefined;
  /** bath that was poured off or carried out, and not replaced by replenisher */
  readonly pouredOff?: readonly LedgerVolume[] | undefined;
  /** water that was lost to the air */
  readonly evaporated?: readonly LedgerVolume[] | undefined;
}

/** A list of a ledger. */
export type LedgerKind = "processed" | "replenished" | "pouredOff" | "evaporated" | "toppedUp";

/** What can happen to a bath; at one hour in this order. */
export const LEDGER_KINDS: readonly LedgerKind[] = [
  "processed",
  "replenished",
  "pouredOff",
  "evaporated",
  "toppedUp",
];

/** One entry of a ledger: `amount` in cm² for what was processed, in ml for the others. */
export interface LedgerEvent {
  readonly kind: LedgerKind;
  readonly atH: number;
  readonly amount: number;
  /** ml of replenisher for each cm² */
  readonly mlPerCm2: number;
  /** its place, for errors */
  readonly at: string;
}

/** Asks for one value; the caller decides whether its error ends everything. */
export type Ask = <T>(call: () => T) => T | undefined;

/** A ledger that was read: its entries in the order in which they happened. */
export interface ReadLedger {
  readonly volumeMl: number;
  readonly mixedAtH: number;
  readonly events: readonly LedgerEvent[];
}
