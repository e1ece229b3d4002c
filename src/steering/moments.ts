/*
 * What each reading means, and the one reading of each moment. Nothing but the readings is looked at here, so
 * that a log that was checked is steered as the log that was given.
 */
import { longestChain, type Link } from "./chain.js";
import { meaningOf, type Meaning } from "./meaning.js";
import type { PlacedReading } from "./readings.js";
import { surroundingsOf } from "./surroundings.js";

/** A reading with its meaning and its place in the chain. */
export interface Judged extends PlacedReading {
  readonly meaning: Meaning;
  /** the bath, °C; NaN if the reading has no meaning */
  readonly celsius: number;
  followed: boolean;
  /** by how much it must have changed, of a frozen thermometer */
  frozenC: number | undefined;
}

/** A reading in the other unit counts for less than one that was given in °C (assumed). */
const CONVERTED_WEIGHT = 0.9;

/** Of a change and a reading at one moment, the reading is set so much earlier, s (assumed). */
const BEFORE_S = 1;

/** A reading with a meaning. Field by field: a spread of each of 100,000 readings takes a second. */
export const judgedAs = (
  { index, timeS, given, changed }: PlacedReading,
  meaning: Meaning,
  told: boolean = changed,
): Judged => ({
  index,
  timeS,
  given,
  changed: told,
  meaning,
  celsius: meaning.celsius ?? NaN,
  followed: false,
  frozenC: undefined,
});

export function linksOf(usable: readonly Judged[]): readonly Link[] {
  return usable.map((one) => {
    const converted = one.meaning.doubt !== undefined;
    return {
      timeS: one.timeS,
      celsius: one.celsius,
      changed: one.changed,
      converted,
      weight: converted ? CONVERTED_WEIGHT : 1,
    };
  });
}

/** The readings of a log, one each moment. */
export interface Moments {
  /** those that mean something, times strictly rising */
  readonly readings: readonly PlacedReading[];
  /** those that mean nothing, or that another of their moment speaks against */
  readonly aside: readonly PlacedReading[];
}

/**
 * One reading each moment. Where the bath was changed at that moment, the one before the change is moved to
 * just before. A change that was told with a failed reading is carried to the next.
 *
 * @param placed - in the order of time, of each moment those with `changed` last
 * @param statedC - what the bath was mixed to, °C
 */
export function eachMoment(placed: readonly PlacedReading[], statedC: number | undefined): Moments {
  const aside: PlacedReading[] = [];
  const usable: Judged[] = [];
  const groups: { readonly first: PlacedReading; readonly members: Judged[] }[] = [];
  let told = false;
  for (const one of placed) {
    const alone = meaningOf(one.given, undefined);
    // What looks like the figure of a failed sensor may be the bath: 0 °C in one that was mixed to 2 °C.
    const meaning = alone.celsius === undefined ? meaningOf(one.given, statedC) : alone;
    told ||= one.changed;
    if (meaning.celsius === undefined) {
      aside.push(one);
      continue;
    }
    const judged = judgedAs(one, meaning, told);
    told = false;
    usable.push(judged);
    const group = groups.at(-1);
    if (group?.first.timeS === one.timeS && group.first.changed === one.changed) group.members.push(judged);
    else groups.push({ first: one, members: [judged] });
  }
  if (groups.length < usable.length)
    for (const i of longestChain(linksOf(usable), surroundingsOf("", {})))
      (usable[i] as Judged).followed = true;
  const readings: PlacedReading[] = [];
  for (const { members } of groups) {
    const alike = agreeing(members);
    const stands = new Set(alike);
    for (const one of members) if (!stands.has(one)) aside.push(one);
    const { index, timeS } = alike.at(-1) as Judged;
    const given = alike.reduce((sum, one) => sum + Number(one.given), 0) / alike.length;
    const before = readings.at(-1);
    if (before?.timeS === timeS) {
      readings.pop();
      const earlierS = readings.at(-1)?.timeS ?? 0;
      const justS = Math.max(timeS - BEFORE_S, (earlierS + timeS) / 2);
      // At pour-in, and where the clock can show no moment between, the change comes first.
      if (justS > earlierS && justS < timeS) readings.push({ ...before, timeS: justS });
    }
    readings.push({ index, timeS, given, changed: members.some(({ changed }) => changed) });
  }
  return { readings, aside };
}

/** Those of one moment that agree with the other moments; the last alone, where all are in doubt. */
function agreeing(members: readonly Judged[]): readonly Judged[] {
  const followed = members.filter((one) => one.followed);
  const sound = followed.filter(({ meaning }) => meaning.doubt === undefined);
  return sound.length > 0 ? sound : [(followed.at(-1) ?? members.at(-1)) as Judged];
}
