import type { Caution } from "../core/caution.js";
import { MOVED_C } from "../drift/moved.js";
import { longestChain, reach, type Link } from "./chain.js";
import { meaningOf, UNITS_PART_C, type Meaning } from "./meaning.js";
import { judgedAs, linksOf, type Judged } from "./moments.js";
import type { OrderedLog, PlacedReading } from "./readings.js";
import { asMeant, leastDrift, type Surroundings } from "./surroundings.js";
import { doubt } from "./text.js";

/** A reading that is followed. */
export interface Followed {
  readonly timeS: number;
  readonly celsius: number;
  readonly changed: boolean;
}

/** A log, judged. */
export interface JudgedLog {
  /** the readings that agree, times strictly rising */
  readonly followed: readonly Followed[];
  /** whether the newest reading is believed as it was given */
  readonly trusted: boolean;
  /** doubts first, then notes */
  readonly cautions: readonly Caution[];
}

/** What the bath was mixed to outvotes one reading, and two outvote it (assumed). */
const STATED_WEIGHT = 1.5;
/** A bath may be so far from what it was mixed to: a cold tank takes it there at once (assumed), °C. */
const MIXED_WITHIN_C = 3;
const STATED = { changed: false, converted: false, weight: STATED_WEIGHT, withinC: MIXED_WITHIN_C };
/** A longer text is cut where a caution repeats it. */
const LONGEST_TEXT = 40;
/** A log of many failures names the newest alone. */
const MOST_NAMED = 50;
/** A thermometer is frozen whose readings stay the same while the bath must move by this, °C. */
const FROZEN_C = MOVED_C;

/** A clock that shows whole seconds may be behind a reading by one, s (assumed). */
const CLOCK_STEP_S = 1;
/** A reading that is later than the clock. */
const AHEAD: Meaning = { doubt: "reading-ahead" };

/**
 * Tells the readings that are followed from those in doubt.
 *
 * @param at - where the readings are, as a JSON Pointer to their array
 * @param statedC - what the bath was mixed to, °C
 * @param nowS - the clock: a later reading cannot have been taken
 */
export function judgeLog(
  at: string,
  { readings, aside, newestS, outOfOrder }: OrderedLog,
  known: Surroundings,
  statedC: number | undefined,
  nowS: number = Infinity,
): JudgedLog {
  const isAhead = ({ timeS }: PlacedReading): boolean => timeS > nowS + CLOCK_STEP_S;
  const usable = meanings(
    readings.filter((one) => !isAhead(one)),
    known,
    statedC,
  );
  const others = [...readings.filter(isAhead), ...aside].map((one) =>
    judgedAs(one, isAhead(one) ? AHEAD : meaningOf(one.given, undefined)),
  );
  const moving = usable.filter(({ frozenC }) => frozenC === undefined);
  const mixedC = asMeant(statedC);
  const stated: readonly Link[] = mixedC === undefined ? [] : [{ timeS: 0, celsius: mixedC, ...STATED }];
  const links = [...stated, ...linksOf(moving)];
  for (const i of longestChain(links, known)) {
    const one = moving[i - stated.length];
    if (one !== undefined) one.followed = true;
  }
  const chain = moving.filter(({ followed }) => followed);
  const believed = chain.filter(({ meaning }) => meaning.doubt === undefined);
  const believedS = believed.at(-1)?.timeS ?? -1;
  const doubted = [...usable, ...others]
    .filter(({ followed, meaning }) => !followed || meaning.doubt !== undefined)
    .sort((a, b) => a.timeS - b.timeS);
  const cautions = doubted
    .slice(-MOST_NAMED)
    .map((one) => doubtAbout(one, chain, known, mixedC, `${at}/${one.index}`, one.timeS > believedS, nowS));
  const followedS = chain.at(-1)?.timeS;
  if (followedS !== newestS) cautions.push(doubt("forecast-only", "warn", at, { sinceS: followedS ?? 0 }));
  chain.forEach((one, i) => {
    const before = chain[i - 1];
    if (one.changed && before)
      cautions.push(
        doubt("bath-changed", "note", `${at}/${one.index}`, { actual: one.celsius - before.celsius }),
      );
  });
  if (outOfOrder !== undefined) cautions.push(doubt("log-order", "note", `${at}/${outOfOrder}/timeS`));
  return { followed: chain, trusted: believedS === newestS, cautions };
}

/** A log, judged, and what of the surroundings it was judged by. */
export interface JudgedByReadings extends JudgedLog {
  readonly known: Surroundings;
}

/** So many readings have to agree before they are believed against vessel and surroundings that were told. */
const AGREEING = 4;

/**
 * As {@link judgeLog}; but where vessel or surroundings were told, and put two or more readings in doubt that
 * all agree without them, the readings are believed: a metal tray on a cold floor is no tray in air.
 */
export function judgeByReadings(
  at: string,
  log: OrderedLog,
  known: Surroundings,
  statedC: number | undefined,
  nowS: number,
): JudgedByReadings {
  const asTold = { ...judgeLog(at, log, known, statedC, nowS), known };
  const { length } = log.readings;
  if (length < AGREEING || asTold.followed.length > length - 2) return asTold;
  const untold: Surroundings = { ambientC: undefined, vessel: undefined, readingSdC: known.readingSdC };
  const frozen = asTold.cautions.some(({ code }) => code === "thermometer-frozen");
  const alone = judgeLog(at, log, untold, statedC, nowS);
  const converted = alone.cautions.some(({ code, severity }) => severity === "stop" && /^maybe/.test(code));
  if (frozen || alone.followed.length < length || converted) return asTold;
  const doubted = doubt("surroundings-doubted", "warn", undefined);
  return { ...alone, cautions: [doubted, ...alone.cautions], known: untold };
}

/** What each reading means, and where a thermometer is frozen. */
function meanings(
  readings: readonly PlacedReading[],
  known: Surroundings,
  statedC: number | undefined,
): readonly Judged[] {
  const judged = readings.map((one) => judgedAs(one, meaningOf(one.given, statedC)));
  let start = 0;
  for (let i = 1; i <= judged.length; i += 1) {
    const first = judged[start] as Judged;
    const next = judged[i];
    if (next !== undefined && !next.changed && next.given === first.given) continue;
    // A run of equal readings ends here: its first is as good as any reading, the others may be frozen.
    const last = judged[i - 1] as Judged;
    const least = leastDrift(known, first.celsius, last.timeS - first.timeS) ?? 0;
    if (i - start >= 3 && least > FROZEN_C) for (const one of judged.slice(start + 1, i)) one.frozenC = least;
    start = i;
  }
  return judged;
}

/** Why a reading is in doubt; now, or once in the past. */
function doubtAbout(
  { given, timeS, meaning, celsius, frozenC }: Judged,
  chain: readonly Judged[],
  known: Surroundings,
  mixedC: number | undefined,
  at: string,
  now: boolean,
  nowS: number,
): Caution {
  const severity = now ? "stop" : "note";
  if (meaning === AHEAD)
    return doubt("reading-ahead", severity, `${at}/timeS`, { limit: nowS, actual: timeS });
  const path = `${at}/temperatureC`;
  if (meaning.doubt === "reading-missing") {
    const text = typeof given === "string" ? given.slice(0, LONGEST_TEXT) : null;
    return doubt("reading-missing", severity, path, { text });
  }
  const actual = given as number;
  if (meaning.doubt === "reading-out-of-range")
    return doubt("reading-out-of-range", severity, path, { actual });
  if (meaning.doubt !== undefined) {
    const limit = meaning.doubt === "maybe-fahrenheit" ? UNITS_PART_C : 0;
    return doubt(meaning.doubt, severity, path, { limit, actual, celsius });
  }
  if (frozenC !== undefined)
    return doubt("thermometer-frozen", severity, path, { limit: FROZEN_C, actual: frozenC });
  // The nearest in the chain: the last before, or the first after. Where no reading is believed, the mix.
  const after = chain.findIndex((one) => one.timeS > timeS);
  const near = chain[after < 0 ? chain.length - 1 : Math.max(0, after - 1)];
  const beside = near ?? { timeS: 0, celsius: mixedC as number };
  const [from, to] = beside.timeS <= timeS ? [beside, timeS] : [{ timeS, celsius }, beside.timeS];
  return doubt("reading-jump", severity, path, {
    limit:
      reach(known, from, to, near?.meaning.doubt !== undefined) + (near === undefined ? MIXED_WITHIN_C : 0),
    actual: Math.abs(celsius - beside.celsius),
    readC: celsius,
    atS: timeS,
    ...(near === undefined && { mixedC: beside.celsius }),
  });
}
