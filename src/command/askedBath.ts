/*
 * The bath of a day that --bath names.
 */
import type { DayBath } from "./day.js";
import { fault } from "./fault.js";
import type { Asked } from "./options.js";

/** Refuses the name of a bath where there is but one. */
export function refuseBath({ bath }: Asked): void {
  if (bath === undefined) return;
  const said = { en: "a recipe has no list of baths.", de: "ein Rezept hat keine Liste von Bädern." };
  throw fault(said, { pointer: "" });
}

/** The bath that was named or numbered; the first where none was. */
export function bathOf(baths: readonly DayBath[], asked: string | undefined): DayBath | undefined {
  if (asked === undefined) return baths[0];
  const bath = baths.find(({ name }) => name === asked) ?? baths[Number(asked) - 1];
  if (bath !== undefined) return bath;
  const names = baths.map(({ name }) => JSON.stringify(name)).join(", ");
  const said = {
    en: `it has no bath ${JSON.stringify(asked)}; it has ${names === "" ? "none" : names}.`,
    de: `ein Bad ${JSON.stringify(asked)} gibt es nicht; es gibt ${names === "" ? "keines" : names}.`,
  };
  throw fault(said, { pointer: "/baths" });
}

/**
 * The bath that conditions of the command line are about: the one that is named, or the only one. Of several
 * none is meant: the rest is then as known.
 */
export function bathOver(baths: readonly DayBath[], asked: string | undefined): DayBath | undefined {
  return asked === undefined && baths.length !== 1 ? undefined : bathOf(baths, asked);
}
