/*
 * Module: handbook. Agitation habits, stop, fix and wash times, and the greatest step between baths:
 * published figures with their sources. Typed data only.
 */
import { namesOf } from "../core/frozen.js";
import { REST_S } from "./rest.js";
import { ROLL_CM2 } from "./roll.js";

const MEMORY = "(from memory, not seen in print)";
const NAVY = "US Navy, Photography (Basic), NAVEDTRA 14209";
const ARMY = "US Army, correspondence subcourse SS05098";
const TM = "US War Department, TM 11-2323";
const ILFORD = `Ilford/Harman, film technical sheets ${MEMORY}`;
const KODAK = `Eastman Kodak, film data sheets ${MEMORY}`;
const GUTTIKAR = "K. Guttikar, Black and white film fixer times";
const CAPACITY = "Brodie-Tyrrell, Fixer Capacity, analogue FAQ";

/** What the material lies in. A dish is a tray. */
export type ProcessVessel = "tank" | "tray" | "drum";

/**
 * How the bath is moved: a tank is inverted or turned, a drum turned, a tray rocked, sheets in it shuffled.
 */
export type ProcessMovement = "invert" | "turn" | "rock" | "shuffle";

/** How one works with a vessel. */
export interface VesselHabit {
  /** the movements that suit it, the usual one first */
  readonly movements: readonly [ProcessMovement, ...ProcessMovement[]];
  /** agitation without pause at the start, s */
  readonly initialS: number;
  /** one agitation, s */
  readonly burstS: number;
  /** seconds from one agitation to the next; 0 is without pause */
  readonly everyS: number;
  /** air bells on the material are tapped off after the first agitation */
  readonly tapped: boolean;
  /** it lies: a little bath wets only what is below, so every bath is turned without pause, lid on */
  readonly lies: boolean;
  readonly sources: readonly string[];
}

/** Habits by vessel. */
export const handbookHabits: Readonly<Record<ProcessVessel, VesselHabit>> = {
  tank: {
    movements: ["invert", "turn"],
    initialS: 30,
    burstS: 5,
    everyS: 60,
    tapped: true,
    lies: false,
    sources: [
      `${NAVY}, p. 10-16 (30 s, then 5 s each minute)`,
      "tapped on the table after the first agitation: common practice",
    ],
  },
  tray: {
    movements: ["rock", "shuffle"],
    initialS: 30,
    burstS: 5,
    everyS: 0,
    tapped: false,
    lies: false,
    sources: [`${NAVY}, p. 10-16 (without pause)`],
  },
  drum: {
    movements: ["turn"],
    initialS: 30,
    burstS: 5,
    everyS: 0,
    tapped: false,
    lies: true,
    sources: ["turned without pause in every bath: common practice"],
  },
};

/** Sheets that are shuffled go from the bottom to the top one by one: so long for each, s. */
export const SHUFFLED: { readonly sheetS: number; readonly sources: readonly string[] } = {
  sheetS: 5,
  sources: [`a pass takes about 5 s a sheet ${MEMORY}`],
};

/** The vessels that `planProcess` takes. */
export const vessels: readonly ProcessVessel[] = /* @__PURE__ */ namesOf(handbookHabits);

/** Time for pouring out, or for lifting out and draining, s. */
export const handbookDrain: Readonly<
  Record<ProcessMovement, { readonly drainS: number; readonly sources: readonly string[] }>
> = {
  invert: { drainS: 10, sources: ["US Army, correspondence subcourse SS0514, sec. 11 (10 s to drain)"] },
  turn: { drainS: 10, sources: ["drain as from a tank that is inverted: common practice"] },
  shuffle: { drainS: 10, sources: ["drain as from a tank: common practice"] },
  rock: { drainS: 5, sources: ["lift one plate or sheet, 5 s to drain: common practice"] },
};

/** The ways to move a bath that `planProcess` takes; which of them suit depends on the vessel. */
export const movements: readonly ProcessMovement[] = /* @__PURE__ */ namesOf(handbookDrain);

/**
 * Agitation of a bath that is only to be kept moving: without pause at the start, then a short one at each
 * interval.
 */
export const KEEP_MOVING: {
  readonly initialS: number;
  readonly everyS: number;
  readonly sources: readonly string[];
} = {
  initialS: 15,
  everyS: 60,
  sources: [`${ARMY}, p. 24 (15 s at the start of fixing)`, "then once a minute: common practice"],
};

/** Length of a bath in seconds, where the recipe does not say. */
export const handbookBathS: Readonly<
  Record<
    "rest" | "preSoak" | "clearingAid" | "wettingAgent",
    { readonly durationS: number; readonly sources: readonly string[] }
  >
> = {
  rest: {
    durationS: REST_S.least,
    sources: ["a freshly stirred bath stands until its bubbles are gone: common practice"],
  },
  preSoak: { durationS: 120, sources: ["one to five minutes: common practice"] },
  clearingAid: { durationS: 120, sources: [`${KODAK} (1 to 2 min)`] },
  wettingAgent: { durationS: 60, sources: ["half a minute to a minute: common practice"] },
};

/** Kinds of stop bath: weak acid, or plain water. */
export type StopKind = "acid" | "water";

/** Length of the stop bath in seconds, where the recipe does not say. */
export const handbookStops: Readonly<
  Record<StopKind, { readonly durationS: number; readonly sources: readonly string[] }>
> = {
  acid: { durationS: 30, sources: [`${ARMY}, p. 24 (30 to 60 s)`] },
  water: { durationS: 60, sources: ["a minute of running or changed water: common practice"] },
};

/** The kinds of stop bath that plans and `bathCautions` take. */
export const stopKinds: readonly StopKind[] = /* @__PURE__ */ namesOf(handbookStops);

/** Kinds of fixing bath. */
export type FixerKind = "rapid" | "plain";

/**
 * Clearing time in a fresh bath at 20 °C, that of film which is not iodide-rich, capacity and the longest
 * useful time.
 */
export const handbookFixers: Readonly<
  Record<
    FixerKind,
    {
      readonly clearingS: number;
      readonly filmS: number;
      readonly capacityCm2PerL: number;
      readonly ceilingS?: number;
      readonly sources: readonly string[];
    }
  >
> = {
  // A fresh rapid bath clears within a minute; twenty rolls of 80 square inches in a litre, at most ten
  // minutes.
  rapid: { clearingS: 60, filmS: 60, capacityCm2PerL: 20 * ROLL_CM2, ceilingS: 600, sources: [CAPACITY] },
  // The safe side of few figures. Film clears sooner than plates, by half perhaps (from memory). The one
  // printed capacity is for acid fixing baths of unnamed salt: half of it is taken.
  plain: {
    clearingS: 600,
    filmS: 300,
    capacityCm2PerL: 10 * ROLL_CM2,
    sources: [
      "B. E. Jones (inferred), Cyclopedia of Photography, 1911 (plates: 10 min, and 10 more)",
      "half of S. Anchell, The Darkroom Cookbook, 3rd ed., 2008, p. " +
        "108 (20 rolls in a litre of acid fixing bath)",
    ],
  },
};

/** The kinds of fixing bath that plans and `bathCautions` take. */
export const fixerKinds: readonly FixerKind[] = /* @__PURE__ */ namesOf(handbookFixers);

/**
 * The least fixing of film and plates, s, whatever the clearing time. A scrap that clears in half a minute
 * allows a minute of rapid fixing. Older manuals fix for five minutes after clearing in plain hypo.
 */
export const handbookLeastFix: Readonly<
  Record<FixerKind, { readonly leastS: number; readonly sources: readonly string[] }>
> = {
  rapid: { leastS: 60, sources: ["a minute in rapid fixer at the least: common practice"] },
  plain: { leastS: 300, sources: ["Henley, 1914, p. 524 (5 to 10 min more than clearing takes)"] },
};

/** Fresh rapid fixer takes longer to clear (common practice), s: what is shorter was perhaps in minutes. */
export const SHORTEST_CLEARING_S = 15;

/**
 * Fixing of paper at 20 °C, and the least. It is white before and after: nobody sees it clear, so the time is
 * its own.
 */
export const handbookPaperFix: Readonly<
  Record<
    FixerKind,
    { readonly durationS: number; readonly leastS: number; readonly sources: readonly string[] }
  >
> = {
  rapid: { durationS: 120, leastS: 60, sources: [`1 to 2 min: makers' paper sheets ${MEMORY}`] },
  plain: {
    durationS: 600,
    leastS: 300,
    sources: ["10 min in fresh plain hypo, or 5 in each of two baths: common practice"],
  },
};

/** How much of a fixer's capacity is left for iodide-rich, tabular films: the careful end of 0.5 to 0.7. */
export const IODIDE_RICH_CAPACITY: { readonly share: number; readonly source: string } = {
  share: 0.5,
  source: CAPACITY,
};

/** A fixing bath is spent when it clears twice as slowly as fresh. */
export const SPENT_RATIO: { readonly ratio: number; readonly source: string } = {
  ratio: 2,
  source: `${NAVY}, p. 10-7`,
};

/** How many times as long as film in a fresh bath plates and iodide-rich films take to clear. */
export const SLOW_CLEARING: { readonly times: number; readonly source: string } = {
  times: 2,
  source: `plates clear half as fast as film, perhaps; iodide-rich films too ${MEMORY}`,
};

/**
 * Fixing time in clearing times: the sources split. The longer is taken for plates, and where the clearing
 * time is not measured.
 */
export const handbookFixTimes: Readonly<
  Record<
    "conventional" | "iodideRich" | "careful",
    { readonly times: number; readonly sources: readonly string[] }
  >
> = {
  conventional: {
    times: 2,
    sources: [`${NAVY}, p. 10-7`, "B. E. Jones (inferred), Cyclopedia of Photography, 1911"],
  },
  careful: {
    times: 3,
    sources: [
      `${NAVY}, p. 10-7`,
      GUTTIKAR,
      "the longer for plates, and where the clearing time is not measured (assumed)",
    ],
  },
  iodideRich: {
    times: 3,
    sources: [GUTTIKAR, "practice after Anchell and Troop, for iodide-rich and tabular films (from memory)"],
  },
};

/**
 * Clearing time and temperature. Colder: `slower` times as long for each 10 °C, below 20 °C. Warmer: shorter
 * by no more than `quicker` for each 10 °C, and up to 20 °C only.
 *
 * Two sources disagree. One manual prints twice the time for each 18 °F. L. P. Clerc prints the order: cold
 * slows fixing more than development. So `slower` is not below the steepest development coefficient of this
 * handbook, 2 over 7 °C or 2.69 over 10 °C (H. E. Ives, Airplane Photography, 1920). Both choices err toward
 * the longer time.
 */
export const COLD_FIX: {
  readonly belowC: number;
  readonly intervalC: number;
  readonly slower: number;
  readonly quicker: number;
  readonly sources: readonly string[];
} = {
  belowC: 20,
  intervalC: 10,
  slower: 2.7,
  quicker: 2,
  sources: [
    "L. P. Clerc, Photography: Theory and Practice, c. 1937, sec. 392, after C. E. K. " +
      "Mees, 1921 (order only)",
    `${TM}, sec. 33 c (twice the time for 18 °F)`,
  ],
};

/** Washing takes twice the time at 10 °C (50 °F) and four times at 1.7 °C (35 °F). */
export const COLD_WASH: { readonly belowC: number; readonly doublingC: number; readonly source: string } = {
  belowC: 10 + 75 / 9,
  doublingC: 75 / 9,
  source: `${TM}, sec. 33 d (prints)`,
};

/** What a paper is coated on. */
export type PaperBase = "fibre" | "resin-coated";

/** How the wash is done. */
export type WashMethod = "running" | "soak" | "changes";

/** A wash: its length, the length after a clearing aid, and the least that the sources name. */
export interface HandbookWash {
  readonly durationS: number;
  readonly afterAidS: number;
  readonly leastS: number;
  readonly sources: readonly string[];
}

/**
 * Fill, invert so often, pour out: inversions of each filling, seconds for one inversion and for filling and
 * pouring out.
 */
export const WASH_CHANGES: {
  readonly inversions: readonly number[];
  readonly inversionS: number;
  readonly pourS: number;
} = {
  inversions: [5, 10, 20],
  inversionS: 2,
  pourS: 20,
};

/** Washes of film and plates at 20 °C, after a rapid fixing bath. */
export const handbookWash: Readonly<Record<WashMethod, HandbookWash>> = {
  running: {
    durationS: 1800,
    afterAidS: 300,
    leastS: 1200,
    sources: [`${ARMY}, p. 24 (30 min)`, `${KODAK} (20 to 30 min, 5 after a clearing aid)`],
  },
  // The least is that of running water (assumed).
  soak: {
    durationS: 1800,
    afterAidS: 540,
    leastS: 1200,
    sources: [
      `${ARMY}, p. 24 (30 min, changed every 3 min)`,
      "three changes after a clearing aid: common practice",
    ],
  },
  // Three fillings of 30, 40 and 60 s by the figures above.
  changes: {
    durationS: 130,
    afterAidS: 130,
    leastS: 130,
    sources: [
      `${ILFORD} (5, 10 and 20 inversions)`,
      "seconds for an inversion and for pouring: common practice",
    ],
  },
};

/** The ways to wash that plans and `bathCautions` take. */
export const washMethods: readonly WashMethod[] = /* @__PURE__ */ namesOf(handbookWash);

/** Sodium thiosulphate leaves gelatin more slowly: how many times as long a wash of film or plates takes. */
export const PLAIN_WASH: { readonly times: number; readonly sources: readonly string[] } = {
  times: 2,
  sources: ["an hour after plain hypo: common practice with plates (from memory)"],
};

/** Soft gelatin frills or lifts at the edges after so long in water, s. */
export const LONGEST_SOFT_WASH: { readonly durationS: number; readonly source: string } = {
  durationS: 3600,
  source: `frilling of unhardened plates in long washes: common practice; an hour ${MEMORY}`,
};

/** Washes of paper at 20 °C, after either fixing bath: fibre holds the fixer, a resin coat keeps it out. */
export const handbookPaperWash: Readonly<Record<PaperBase, HandbookWash>> = {
  "fibre": {
    durationS: 3600,
    afterAidS: 1200,
    leastS: 3600,
    sources: [`an hour, 20 min after a clearing aid: makers' paper sheets ${MEMORY}`],
  },
  "resin-coated": {
    durationS: 240,
    afterAidS: 240,
    leastS: 120,
    sources: [`2 to 4 min: makers' paper sheets ${MEMORY}`],
  },
};

/** What a paper may be coated on, as plans and `bathCautions` take it. */
export const paperBases: readonly PaperBase[] = /* @__PURE__ */ namesOf(handbookPaperWash);

/** One change of water in a soak, s, and the time in which running water is replaced once, s. */
export const WASH_CHANGE_S = 180;
export const RUNNING_CHANGE_S = 300;

/** The greatest step between two baths, °C. */
export const handbookStep: Readonly<
  Record<"bath" | "wash" | "reticulation", { readonly stepC: number; readonly sources: readonly string[] }>
> = {
  bath: {
    stepC: 3,
    sources: ["US Navy, NAVEDTRA 14262, p. 7-11 (5 °F between trays, 2.8 °C: taken as 3 °C)"],
  },
  wash: { stepC: 5, sources: [ILFORD] },
  reticulation: {
    stepC: 10,
    sources: [
      `sudden steps of roughly 10 °C ${MEMORY}`,
      "Transactions of the SMPE 18, 1924, p. 46 (one temperature for all baths and the wash)",
    ],
  },
};
