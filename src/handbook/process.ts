/*
 * Room: handbook. Agitation habits, stop, fix and wash times, and the greatest step between baths: published
 * figures with their sources. Typed data only.
 */
import { ROLL_CM2 } from "./roll.js";

const MEMORY = "(from memory, not seen in print)";
const NAVY = "US Navy, Photography (Basic), NAVEDTRA 14209";
const ARMY = "US Army, correspondence subcourse SS05098";
const TM = "US War Department, TM 11-2323";
const ILFORD = `Ilford/Harman, film technical sheets ${MEMORY}`;
const KODAK = `Eastman Kodak, film data sheets ${MEMORY}`;
const CAPACITY = "Brodie-Tyrrell, Fixer Capacity, analogue FAQ";

/** What the material lies in. */
export type Vessel = "tank" | "tray" | "drum" | "dish";

/** How one works with a vessel. */
export interface VesselHabit {
  /** time for pouring out or lifting and draining, s */
  readonly drainS: number;
  /** agitation without pause at the start, s */
  readonly initialS: number;
  /** one agitation, s */
  readonly burstS: number;
  /** seconds from one agitation to the next; 0 is without pause */
  readonly everyS: number;
  /** what one agitation is, as an instruction */
  readonly move: string;
  readonly sources: readonly string[];
}

/** Habits by vessel. */
export const handbookVessels: Readonly<Record<Vessel, VesselHabit>> = {
  tank: {
    drainS: 10,
    initialS: 30,
    burstS: 5,
    everyS: 60,
    move: "invert the tank",
    sources: [
      `${NAVY}, p. 10-16 (30 s, then 5 s each minute)`,
      "US Army, correspondence subcourse SS0514, sec. 11 (10 s to drain)",
    ],
  },
  tray: {
    drainS: 10,
    initialS: 30,
    burstS: 5,
    everyS: 0,
    move: "shuffle the sheets",
    sources: [`${NAVY}, p. 10-16 (without pause)`, "drain as in a tank: common practice"],
  },
  drum: {
    drainS: 10,
    initialS: 30,
    burstS: 5,
    everyS: 0,
    move: "turn the drum",
    sources: ["common practice"],
  },
  dish: {
    drainS: 5,
    initialS: 30,
    burstS: 5,
    everyS: 0,
    move: "rock the dish, each side in turn",
    sources: ["common practice"],
  },
};

/** Length of a bath in seconds, where the recipe does not say. */
export const handbookBathS: Readonly<
  Record<
    "rest" | "preSoak" | "acidStop" | "waterStop" | "clearingAid" | "wettingAgent",
    { readonly durationS: number; readonly sources: readonly string[] }
  >
> = {
  rest: {
    durationS: 300,
    sources: ["a freshly stirred bath stands until its bubbles are gone: common practice"],
  },
  preSoak: { durationS: 120, sources: ["one to five minutes: common practice"] },
  acidStop: { durationS: 30, sources: [`${ARMY}, p. 24 (30 to 60 s)`, "R. Fleming, practice page (30 s)"] },
  waterStop: { durationS: 60, sources: ["a minute of running or changed water: common practice"] },
  clearingAid: { durationS: 120, sources: [`${KODAK} (1 to 2 min)`] },
  wettingAgent: { durationS: 60, sources: ["half a minute to a minute: common practice"] },
};

/** Kinds of fixing bath. */
export type FixerKind = "rapid" | "plain";

/** Clearing time in a fresh bath at 20 °C, capacity and the longest useful time. */
export const handbookFixers: Readonly<
  Record<
    FixerKind,
    {
      readonly clearingS: number;
      readonly capacityCm2PerL: number;
      readonly ceilingS?: number;
      readonly sources: readonly string[];
    }
  >
> = {
  // A fresh rapid bath clears within a minute; twenty rolls of 80 square inches in a litre, at most ten
  // minutes.
  rapid: { clearingS: 60, capacityCm2PerL: 20 * ROLL_CM2, ceilingS: 600, sources: [CAPACITY] },
  plain: {
    clearingS: 600,
    capacityCm2PerL: 20 * ROLL_CM2,
    sources: [
      "B. E. Jones (inferred), Cyclopedia of Photography, 1911 (plates: 10 min, and 10 more)",
      "S. Anchell, The Darkroom Cookbook, 3rd ed., 2008, p. 108 (20 rolls in a litre)",
    ],
  },
};

/** How much of a fixer's capacity is left for iodide-rich, tabular films: the careful end of 0.5 to 0.7. */
export const MODERN_CAPACITY: { readonly share: number; readonly source: string } = {
  share: 0.5,
  source: CAPACITY,
};

/** A fixing bath is spent when it clears twice as slowly as fresh. */
export const SPENT_RATIO: { readonly ratio: number; readonly source: string } = {
  ratio: 2,
  source: `${NAVY}, p. 10-7`,
};

/** Fixing time in clearing times: the sources split. */
export const handbookFixTimes: Readonly<
  Record<"conventional" | "modern", { readonly times: number; readonly sources: readonly string[] }>
> = {
  conventional: {
    times: 2,
    sources: [`${NAVY}, p. 10-7`, "B. E. Jones (inferred), Cyclopedia of Photography, 1911"],
  },
  modern: {
    times: 3,
    sources: [
      "K. Guttikar, Black and white film fixer times",
      "clip-test discussion after Anchell and Troop, for iodide-rich and tabular films",
    ],
  },
};

/** Fixing below 20 °C takes twice the time for each 10 °C (18 °F) that the bath is colder. */
export const COLD_FIX: { readonly belowC: number; readonly doublingC: number; readonly source: string } = {
  belowC: 20,
  doublingC: 10,
  source: `${TM}, sec. 33 c`,
};

/** Washing takes twice the time at 10 °C (50 °F) and four times at 1.7 °C (35 °F). */
export const COLD_WASH: { readonly belowC: number; readonly doublingC: number; readonly source: string } = {
  belowC: 10 + 75 / 9,
  doublingC: 75 / 9,
  source: `${TM}, sec. 33 d (prints)`,
};

/** How the wash is done. */
export type WashMethod = "running" | "soak" | "changes";

/** A wash: its length, and the length after a clearing aid. */
export interface HandbookWash {
  readonly durationS: number;
  readonly afterAidS: number;
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

/** Washes at 20 °C. */
export const handbookWash: Readonly<Record<WashMethod, HandbookWash>> = {
  running: {
    durationS: 1800,
    afterAidS: 300,
    sources: [`${ARMY}, p. 24 (30 min)`, `${KODAK} (20 to 30 min, 5 after a clearing aid)`],
  },
  soak: {
    durationS: 1800,
    afterAidS: 540,
    sources: [
      `${ARMY}, p. 24 (30 min, changed every 3 min)`,
      "three changes after a clearing aid: common practice",
    ],
  },
  // Three fillings of 30, 40 and 60 s by the figures above.
  changes: {
    durationS: 130,
    afterAidS: 130,
    sources: [
      `${ILFORD} (5, 10 and 20 inversions)`,
      "seconds for an inversion and for pouring: common practice",
    ],
  },
};

/** One change of water in a soak, s, and the time in which running water is replaced once, s. */
export const WASH_CHANGE_S = 180;
export const RUNNING_CHANGE_S = 300;

/** The greatest step between two baths, °C. */
export const handbookStep: Readonly<
  Record<"bath" | "wash" | "reticulation", { readonly stepC: number; readonly sources: readonly string[] }>
> = {
  bath: { stepC: 25 / 9, sources: ["US Navy, NAVEDTRA 14262, p. 7-11 (5 °F between trays)"] },
  wash: { stepC: 5, sources: [ILFORD] },
  reticulation: {
    stepC: 10,
    sources: [
      `sudden steps of roughly 10 °C ${MEMORY}`,
      "Transactions of the SMPE 18, 1924, p. 46 (one temperature for all baths and the wash)",
    ],
  },
};
