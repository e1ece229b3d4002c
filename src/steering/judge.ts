import type { Caution } from "../core/caution.js";
import { MOVED_C } from "../drift/moved.js";
import { fahrenheitToCelsius } from "../quantities/fahrenheitToCelsius.js";
import { FAHRENHEIT_ABOVE_C } from "../temperature/temperatureCautions.js";
import { longestChain, reach, type Link } from "./chain.js";
import { meaningOf, UNITS_PART_C, type Meaning } from "./meaning.js";
import type { OrderedLog, PlacedReading } from "./readings.js";
import { leastDrift, type Surroundings } from "./surroundings.js";
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
  /** the places of those readings in the log that was given */
  readonly places: ReadonlySet<number>;
  /** whether the newest reading is believed as it was given */
  readonly trusted: boolean;
  /** doubts first, then notes */
  readonly cautions: readonly Caution[];
}

/** A reading in the other unit counts for less than one that was given in °C (assumed). */
const CONVERTED_WEIGHT = 0.9;
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

/** A reading with its meaning and its place in the chain. */
interface Judged extends Omit<PlacedReading, "changed" | "named"> {
  changed: boolean;
  readonly meaning: Meaning;
  followed: boolean;
  /** by how much it must have changed, of a frozen thermometer */
  readonly frozenC: number | undefined;
}

/**
 * Tells the readings that are followed from those in doubt.
 *
 * @param at - where the readings are, as a JSON Pointer to their array
 * @param statedC - what the bath was mixed to, °C
 * @param nowS - the clock: a later reading cannot have been taken
 */
export function judgeLog(
  at: string,
  { readings, outOfOrder }: OrderedLog,
  known: Surroundings,
  statedC: number | undefined,
  nowS: number = Infinity,
): JudgedLog {
  const isAhead = ({ timeS }: PlacedReading): boolean => timeS > nowS + CLOCK_STEP_S;
  const taken = readings.filter((one) => !isAhead(one));
  const judged = [...meanings(taken, known, statedC), ...readings.filter(isAhead).map(aheadOfNow)];
  const usable = usableOf(judged);
  const mixedC =
    statedC !== undefined && statedC > FAHRENHEIT_ABOVE_C ? fahrenheitToCelsius(statedC) : statedC;
  const stated: readonly Link[] = mixedC === undefined ? [] : [{ timeS: 0, celsius: mixedC, ...STATED }];
  const links = [...stated, ...linksOf(usable)];
  for (const i of longestChain(links, known)) {
    const one = usable[i - stated.length];
    if (one !== undefined) one.followed = true;
  }
  const chain = judged.filter(({ followed }) => followed);
  const newestS = judged.at(-1)?.timeS;
  const believed = chain.filter(({ meaning }) => meaning.doubt === undefined);
  const believedS = believed.at(-1)?.timeS ?? -1;
  const doubted = judged.filter(({ followed, meaning }) => !followed || meaning.doubt !== undefined);
  const cautions = doubted
    .slice(-MOST_NAMED)
    .map((one) => doubtAbout(one, chain, known, mixedC, `${at}/${one.index}`, one.timeS > believedS, nowS));
  const followedS = chain.at(-1)?.timeS;
  if (followedS !== newestS) cautions.push(doubt("forecast-only", "warn", at, { sinceS: followedS ?? 0 }));
  chain.forEach((one, i) => {
    const before = chain[i - 1];
    if (one.changed && before)
      cautions.push(
        doubt("bath-changed", "note", `${at}/${one.index}`, { actual: celsiusOf(one) - celsiusOf(before) }),
      );
  });
  if (outOfOrder !== undefined) cautions.push(doubt("log-order", "note", `${at}/${outOfOrder}/timeS`));
  const places = new Set(chain.map(({ index }) => index));
  return { followed: merged(chain), places, trusted: believedS === newestS, cautions };
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
  if (length < AGREEING || asTold.places.size > length - 2) return asTold;
  const untold: Surroundings = { ambientC: undefined, vessel: undefined, readingSdC: known.readingSdC };
  const frozen = asTold.cautions.some(({ code }) => code === "thermometer-frozen");
  const alone = judgeLog(at, log, untold, statedC, nowS);
  if (frozen || alone.places.size < length || alone.cautions.some(({ severity }) => severity === "stop"))
    return asTold;
  const doubted = doubt("surroundings-doubted", "warn", undefined);
  return { ...alone, cautions: [doubted, ...alone.cautions], known: untold };
}

const aheadOfNow = ({ index, timeS, given, changed }: PlacedReading): Judged => ({
  index,
  timeS,
  given,
  changed,
  meaning: AHEAD,
  followed: false,
  frozenC: undefined,
});

const celsiusOf = ({ meaning }: Judged): number => meaning.celsius as number;

/** What each reading means, and where a thermometer is frozen. */
function meanings(
  readings: readonly PlacedReading[],
  known: Surroundings,
  statedC: number | undefined,
): readonly Judged[] {
  const judged: Judged[] = [];
  let start = 0;
  for (let i = 1; i <= readings.length; i += 1) {
    const first = readings[start] as PlacedReading;
    const next = readings[i];
    if (next !== undefined && !next.changed && next.given === first.given) continue;
    // A run of equal readings ends here: its first is as good as any reading, the others may be frozen.
    const meaning = meaningOf(first.given, statedC);
    const last = readings[i - 1] as PlacedReading;
    const least = leastDrift(known, meaning.celsius ?? NaN, last.timeS - first.timeS) ?? 0;
    const frozenC = i - start >= 3 && least > FROZEN_C ? least : undefined;
    for (let k = start; k < i; k += 1) {
      // Field by field: a spread of each of 100,000 readings takes a second.
      const { index, timeS, given, changed } = readings[k] as PlacedReading;
      const frozen = k > start ? frozenC : undefined;
      judged.push({ index, timeS, given, changed, meaning, followed: false, frozenC: frozen });
    }
    start = i;
  }
  return judged;
}

/** The readings that have a meaning; a change that was told with a failed one is carried to the next. */
function usableOf(judged: readonly Judged[]): readonly Judged[] {
  const usable: Judged[] = [];
  let changed = false;
  for (const one of judged) {
    changed ||= one.changed;
    if (one.meaning.celsius === undefined || one.frozenC !== undefined) continue;
    one.changed = changed;
    changed = false;
    usable.push(one);
  }
  return usable;
}

function linksOf(usable: readonly Judged[]): readonly Link[] {
  return usable.map((one) => {
    const converted = one.meaning.doubt !== undefined;
    return {
      timeS: one.timeS,
      celsius: celsiusOf(one),
      changed: one.changed,
      converted,
      weight: converted ? CONVERTED_WEIGHT : 1,
    };
  });
}

/** Why a reading is in doubt; now, or once in the past. */
function doubtAbout(
  { given, timeS, meaning, frozenC }: Judged,
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
  const celsius = meaning.celsius as number;
  if (meaning.doubt !== undefined) {
    const limit = meaning.doubt === "maybe-fahrenheit" ? UNITS_PART_C : 0;
    return doubt(meaning.doubt, severity, path, { limit, actual, celsius });
  }
  if (frozenC !== undefined)
    return doubt("thermometer-frozen", severity, path, { limit: FROZEN_C, actual: frozenC });
  // The nearest in the chain: the last before, or the first after. Where no reading is believed, the mix.
  const after = chain.findIndex((one) => one.timeS > timeS);
  const near = chain[after < 0 ? chain.length - 1 : Math.max(0, after - 1)];
  const beside = near === undefined ? { timeS: 0, celsius: mixedC as number } : placed(near);
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

const placed = (one: Judged): Pick<Link, "timeS" | "celsius"> => ({
  timeS: one.timeS,
  celsius: celsiusOf(one),
});

/** The readings of one moment as their mean. */
function merged(chain: readonly Judged[]): readonly Followed[] {
  const followed: Followed[] = [];
  let count = 1;
  for (const one of chain) {
    const celsius = celsiusOf(one);
    const last = followed.at(-1);
    if (last?.timeS === one.timeS) {
      count += 1;
      followed.pop();
      followed.push({ ...last, celsius: last.celsius + (celsius - last.celsius) / count });
    } else {
      count = 1;
      followed.push({ timeS: one.timeS, celsius, changed: one.changed });
    }
  }
  return followed;
}
