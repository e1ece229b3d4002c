/*
 * Module: process. What a brew adds to the notes of a run: how it is mixed, and what it may do to whoever
 * mixes it.
 */
import type { DeveloperBrew } from "../brew/brew.js";
import { checkBrew, standingNotes, type BrewUse } from "../brew/checkBrew.js";
import type { Caution } from "../core/caution.js";

/** The notes on the baths have these in the words of a developer that is bought. */
const SAID_OF_BREW = ["bench-gloves", "safety-data-sheets"];

/** The standing notes of a run with a brew: its own, and those on the baths that it does not say. */
export const brewBench = (ofBaths: readonly Caution[]): readonly Caution[] => [
  ...standingNotes(),
  ...ofBaths.filter(({ code }) => !SAID_OF_BREW.includes(code)),
];

/**
 * The cautions about a brew as it was mixed and at the bath's temperature, without what holds for every brew;
 * throws what is wrong with the brew.
 */
export function brewCautions(brew: DeveloperBrew, temperatureC: number, use: BrewUse): readonly Caution[] {
  const standing = standingNotes();
  const checked = (one: DeveloperBrew): readonly Caution[] =>
    checkBrew(one, use).filter(({ code }) => !standing.some((note) => note.code === code));
  // The constants of the brew module hold to 50 °C.
  const inBath = checked({ ...brew, temperatureC: Math.min(50, temperatureC) });
  if (brew.temperatureC === undefined) return inBath;
  const mixed = checked(brew);
  return [...mixed, ...inBath.filter(({ code }) => !mixed.some((one) => one.code === code))];
}
