/*
 * What the sheet keeps of a negative that is in the bath, and every change of it: plain JSON in, plain JSON
 * out. What follows from it at a moment is in run.ts.
 */
import {
  judgeReading,
  type Baseline,
  type Caution,
  type Conditions,
  type DevelopmentRun,
  type Knowledge,
  type ProcessInput,
  type SteeringReading,
} from "darkroom-kinetics";
import type { Sheet } from "./sheet.js";

/** Where the negative is: in a closed tank, or in a dish under a red or amber lamp, or without light. */
export const places = ["tank", "red", "amber", "dark"] as const;

export type Place = (typeof places)[number];

/** What a plan needs to know besides the time. */
export type PlannedBath = Pick<
  ProcessInput,
  "material" | "emulsion" | "iodideRich" | "sensitization" | "pieces" | "developer" | "baths"
>;

/** What is followed: the known time, today's conditions, and the laws. */
export interface Followed {
  readonly baseline: Baseline;
  readonly conditions: Conditions;
  readonly knowledge: Knowledge;
  /** the step that the time of the sheet is rounded to, s; that of the run's own interval when left out */
  readonly stepS?: number | undefined;
  /** of each bath, ml */
  readonly volumeMl?: number | undefined;
  /** what goes into it, cm² */
  readonly areaCm2?: number | undefined;
  /** what else the plan needs to know of the material, the developer and the other baths */
  readonly planned?: PlannedBath | undefined;
  /** the air around the bath, °C, where it was told */
  readonly ambientC?: number | undefined;
  /** the developer's factor from the image's appearance to the whole time, where it has one */
  readonly appearance?: { readonly factor: number; readonly logSd: number } | undefined;
  /** what was known, for the outcome to be judged against */
  readonly known?: KnownThen | undefined;
}

/** What was known when a negative was developed. */
export interface KnownThen {
  /** which known time it was */
  readonly key: string;
  /** the sheet without its bath, with the runs that it has now */
  readonly sheet: Omit<Sheet, "bath" | "before">;
}

/** A run that was finished and waits for its outcome. */
export interface Waiting {
  readonly run: Omit<DevelopmentRun, "outcome">;
  readonly known: KnownThen;
}

/** A reading that is asked about, as it was judged when it came. */
export interface Doubt {
  readonly reading: SteeringReading;
  readonly caution: Caution;
  /** what it would be in the other unit, °C */
  readonly celsius?: number | undefined;
}

/** A development in progress. Clock times count from pour-in, s. */
export interface Run {
  /** the time of day at pour-in, ms since 1970 */
  readonly startedMs: number;
  readonly followed: Followed;
  /** the readings that are believed; the first is what the bath was mixed to */
  readonly log: readonly SteeringReading[];
  /** readings that are asked about; they change nothing until answered */
  readonly doubts: readonly Doubt[];
  /** when the image was seen */
  readonly seenS?: number | undefined;
  /** when it was poured out */
  readonly outS?: number | undefined;
  /** by how much the baths after the developer began later than planned, s */
  readonly lateS: number;
}

/** What a bath went through. */
export interface BathUse {
  readonly count: number;
  readonly ageH: number;
}

/** The section's part of the sheet. */
export interface BathState {
  readonly place: Place;
  /** the screen is black until it is held for two seconds */
  readonly black: boolean;
  /** cues by sound and by vibration, where they were asked for */
  readonly sound: boolean;
  readonly buzz: boolean;
  /** the air around the bath, °C, where it was told */
  readonly ambientC?: number | undefined;
  readonly run?: Run | undefined;
  /** the runs that were finished and wait for their outcome, in their order */
  readonly done?: readonly Waiting[] | undefined;
  /** what the last of them changed of the bath, and when, ms since 1970 */
  readonly counted?: { readonly was: BathUse; readonly now: BathUse; readonly atMs: number } | undefined;
}

/** Before anything was said. */
export const newBath: BathState = { place: "tank", black: false, sound: false, buzz: false };

/** A bath that starts at a moment of the day. */
export function pouredIn(followed: Followed, startedMs: number): Run {
  const { temperatureC } = followed.conditions;
  const statedC = typeof temperatureC === "number" ? temperatureC : followed.baseline.temperatureC;
  return {
    startedMs,
    followed,
    log: [{ timeS: 0, temperatureC: statedC }],
    doubts: [],
    lateS: 0,
  };
}

/**
 * The readings of a log, and before the first the temperature that the bath was mixed to. Later that is left out:
 * the vessel cools the bath at once, which beside a reading a minute later would look like a lasting drift.
 */
export const readingsOf = (log: Run["log"]): Run["log"] => (log.length > 1 ? log.slice(1) : log);

/** The clock of a run at a moment of the day, s from pour-in; 0 before. */
export const clockAt = (run: Run, nowMs: number): number => Math.max(0, (nowMs - run.startedMs) / 1000);

/** What `judgeReading` and `steer` are told of the vessel: a dish is told, a tank may be of any kind. */
export const vesselOf = (place: Place): { readonly vessel?: "tray-in-air" } =>
  place === "tank" ? {} : { vessel: "tray-in-air" };

/** A reading comes: it joins the log, or it is asked about. */
export function withReading(run: Run, place: Place, timeS: number, temperatureC: number): Run {
  const reading = { timeS, temperatureC };
  const { temperatureC: statedC } = run.followed.conditions;
  const { trusted, cautions, celsius } = judgeReading(run.log.slice(1), reading, {
    ...vesselOf(place),
    ambientC: run.followed.ambientC,
    temperatureC: typeof statedC === "number" ? statedC : undefined,
  });
  const caution = cautions[0];
  return trusted || caution === undefined
    ? taken(run, reading)
    : { ...run, doubts: [...run.doubts, { reading, caution, celsius }] };
}

/** Taps that follow each other so soon are one reading: a thermometer is watched until it stands, s. */
const ONE_READING_S = 8;

/** A tap: the last reading, or what the bath was mixed to, so many °C up or down. */
export function withTap(run: Run, place: Place, timeS: number, stepC: number): Run {
  const { log } = run;
  const last = log.at(-1) as SteeringReading;
  const again = log.length > 1 && timeS - last.timeS <= ONE_READING_S;
  const before = again ? withoutReading(run) : run;
  const celsius = (last.temperatureC as number) + stepC;
  // A tap and one back were a mistake.
  const back = stepC !== 0 && Math.abs(celsius - (before.log.at(-1)?.temperatureC as number)) < 1e-6;
  return again && back ? before : withReading(before, place, timeS, celsius);
}

/** Without the last reading; what the bath was mixed to stays. */
export const withoutReading = (run: Run): Run =>
  run.log.length > 1 ? { ...run, log: run.log.slice(0, -1) } : run;

const taken = (run: Run, reading: SteeringReading): Run => ({
  ...run,
  log: [...run.log, reading].sort((a, b) => a.timeS - b.timeS),
});

/** How a reading that is in doubt was answered. */
export type DoubtAnswer = "forget" | "other-unit" | "right";

/**
 * The first reading in doubt is answered: it is forgotten, or taken in its other unit, or it is right, and
 * then the bath was altered just before.
 */
export function withAnswer(run: Run, answer: DoubtAnswer): Run {
  const [first, ...doubts] = run.doubts;
  const rest = { ...run, doubts };
  if (first === undefined || answer === "forget") return rest;
  const { reading, celsius = reading.temperatureC } = first;
  return taken(
    rest,
    answer === "right" ? { ...reading, changed: true } : { ...reading, temperatureC: celsius },
  );
}

/** The image is seen, once. */
export const withImage = (run: Run, timeS: number): Run =>
  run.seenS === undefined && timeS > 0 ? { ...run, seenS: timeS } : run;

/** It was not the image. */
export const withoutImage = (run: Run): Run => ({ ...run, seenS: undefined });

/** Poured out, once. */
export const withPouredOut = (run: Run, timeS: number): Run =>
  run.outS === undefined ? { ...run, outS: timeS, doubts: [] } : run;

/** Poured out by mistake: it goes on. */
export const withPouringUndone = (run: Run): Run => ({ ...run, outS: undefined, lateS: 0 });
