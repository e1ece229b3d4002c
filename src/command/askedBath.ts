/*
 * The bath of a day that the command line asks for.
 */
import type { Conditions } from "../index.js";
import type { DayBath } from "./day.js";
import { fault } from "./fault.js";
import type { Asked } from "./options.js";
import type { Words } from "./words.js";

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

/** A question of a day that is about no bath of its own. */
export function bathBeside(name: string, conditions: Conditions): DayBath {
  return { name, conditions, pointer: "/baths" };
}

/**
 * The bath that conditions of the command line ask for. They go over the bath that is named, or the only one.
 * Of several none is meant: all else is then as known.
 */
export function bathUnder(
  own: Conditions,
  baths: readonly DayBath[],
  asked: string | undefined,
  words: Words,
): DayBath {
  const bath = asked === undefined && baths.length !== 1 ? undefined : bathOf(baths, asked);
  const asAsked = baths.length > 1 ? words.asAskedElseKnown : words.asAsked;
  if (bath === undefined) return bathBeside(asAsked, own);
  const { name, conditions, pointer } = bath;
  return { name: asked === undefined ? asAsked : name, conditions: { ...conditions, ...own }, pointer };
}
