/*
 * Simulated developments: a bath that drifts by Newton's law, a thermometer that scatters and sometimes fails, and a
 * photographer who walks from reading to reading until told to pour out. The drift is the one that steering itself
 * assumes, which flatters the figures.
 */
import {
  compensate,
  developUntil,
  newtonDrift,
  type DriftVessel,
  type NewtonDrift,
  type SteerAnswer,
  type SteerInput,
  type SteeringReading,
  type TimeEstimate,
} from "../../src/index.js";
import { handbookVessels } from "../../src/handbook/vessels.js";

/** A generator of numbers from 0 to 1 with a seed (mulberry32, public domain, from memory). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** A standard normal number (Box and Muller, Ann. Math. Stat. 29, 1958, p. 610). */
export const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** A run that is to be steered. */
export interface World {
  readonly baseline: { readonly timeS: number; readonly temperatureC: number };
  readonly vessel: DriftVessel;
  readonly drift: NewtonDrift;
  /** what the thermometer gives when it works, to far beyond the end */
  readonly readings: readonly SteeringReading[];
  /** the time by the true path, with the interval of `compensate` */
  readonly truth: TimeEstimate;
}

/** The standard deviation of a reading, °C. */
export const READING_SD_C = 0.15;

const VESSELS = Object.keys(handbookVessels) as readonly DriftVessel[];

/** Draws a run. */
export function worldOf(random: () => number): World {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const vessel = VESSELS[Math.floor(random() * VESSELS.length)]!;
  const { timeConstantS, logSd } = handbookVessels[vessel];
  const startC = between(10, 24);
  // Air five degrees from the bath, as steering assumes of air that is not told; water around a tank is nearer.
  const awayC = (vessel.endsWith("water") ? 2 : 5) * normal(random);
  const ambientC = Math.min(35, Math.max(0, startC + awayC));
  const drift = { startC, ambientC, timeConstantS: timeConstantS * Math.exp(logSd * normal(random)) };
  const temperatureAt = newtonDrift(drift);
  const baseline = { timeS: between(360, 900), temperatureC: 20 };
  const readings: SteeringReading[] = [];
  for (let timeS = 0; timeS < 4 * baseline.timeS; timeS += between(45, 120))
    readings.push({ timeS, temperatureC: temperatureAt(timeS) + READING_SD_C * normal(random) });
  return { baseline, vessel, drift, readings, truth: timeOn(baseline, pathOf(drift)) };
}

/** The true path as a fine log. */
export function pathOf(drift: NewtonDrift): readonly { timeS: number; temperatureC: number }[] {
  const temperatureAt = newtonDrift(drift);
  return Array.from({ length: 400 }, (_, i) => ({
    timeS: 0.05 * i * i,
    temperatureC: temperatureAt(0.05 * i * i),
  }));
}

const timeOn = (baseline: World["baseline"], path: ReturnType<typeof pathOf>): TimeEstimate => {
  const { timeS, lowS, highS } = compensate(baseline, { temperatureC: path });
  return { timeS, lowS, highS };
};

const inFahrenheit = (one: SteeringReading): SteeringReading => ({
  ...one,
  temperatureC: Number((one.temperatureC! * 1.8 + 32).toFixed(1)),
});
/** Which reading a single fault befalls: the second to the seventh. */
const place = (random: () => number): number => 1 + Math.floor(6 * random());
const dead =
  (value: number) =>
  (readings: readonly SteeringReading[]): readonly SteeringReading[] =>
    readings.map((one, i) => (i === 0 ? one : { ...one, temperatureC: value }));
const one =
  (change: (reading: SteeringReading) => SteeringReading) =>
  (readings: readonly SteeringReading[], random: () => number): readonly SteeringReading[] => {
    const at = place(random);
    return readings.map((each, i) => (i === at ? change(each) : each));
  };

type Fault = (readings: readonly SteeringReading[], random: () => number) => readonly SteeringReading[];

/** The faults that leave readings. */
export const faults: Readonly<Record<string, Fault>> = {
  "none": (readings) => readings,
  "one in °F": one(inFahrenheit),
  "the first in °F": (readings) => readings.map((each, i) => (i === 0 ? inFahrenheit(each) : each)),
  "all in °F": (readings) => readings.map(inFahrenheit),
  "one 0": one((each) => ({ ...each, temperatureC: 0 })),
  "one 85": one((each) => ({ ...each, temperatureC: 85 })),
  "wrong order": (readings, random) => {
    const at = place(random);
    const swapped = [...readings];
    [swapped[at - 1], swapped[at]] = [readings[at]!, readings[at - 1]!];
    return swapped;
  },
  "equal doubles": (readings, random) => {
    const at = place(random);
    return [...readings.slice(0, at + 1), readings[at]!, ...readings.slice(at + 1)];
  },
  "a gap": (readings, random) => {
    const at = place(random);
    return readings.filter((_, i) => i < at || i > at + 3);
  },
};

/** The thermometer is dead from the second reading on. */
export const deadFaults: Readonly<Record<string, Fault>> = {
  "dead at 0": dead(0),
  "dead at 85": dead(85),
  "dead, no number": dead(NaN),
};

/** What came of a run. */
export interface Outcome {
  readonly pouredS: number;
  readonly truth: TimeEstimate;
  /** whether the newest reading was believed at every step */
  readonly trusted: boolean;
}

/**
 * Walks from reading to reading until told to pour out, or until the time that was told has come.
 *
 * @param told - whether vessel and surroundings are told
 */
export function walk(
  steer: (input: SteerInput) => SteerAnswer,
  world: World,
  given: readonly SteeringReading[],
  told: boolean,
): Outcome {
  const { baseline, vessel, drift, truth } = world;
  const known = told ? { vessel, ambientC: drift.ambientC } : {};
  let trusted = true;
  for (let count = 1; count <= given.length; count += 1) {
    const log = given.slice(0, count);
    const nowS = Math.max(...log.map(({ timeS }) => timeS));
    const answer = steer({ baseline, conditions: {}, log, nowS, ...known });
    trusted &&= answer.trusted;
    if (answer.action === "pour-out") return { pouredS: nowS, truth, trusted };
    const nextS = given[count]?.timeS ?? Infinity;
    const { timeS } = answer.total;
    if (timeS < nextS) {
      const then = steer({ baseline, conditions: {}, log, nowS: timeS, ...known });
      if (then.action === "pour-out") return { pouredS: timeS, truth, trusted };
    }
  }
  return { pouredS: Infinity, truth, trusted };
}

/** The law as it is told to steering; the truth is drawn from it. */
const LAW = { kind: "arrhenius", activationEnergyKJPerMol: 60, sdKJPerMol: 21.5 } as const;

const failedAt = (timeS: number): SteeringReading => ({ timeS, temperatureC: 85 });

/** What an interval was worth at one moment of a run. */
export interface Held {
  /** whether the true end lies in the interval of what is left */
  readonly inside: boolean;
  /** ln(total told / true end) */
  readonly error: number;
  readonly trusted: boolean;
}

/**
 * Stops a run at 20 to 80 % of its end and asks whether the interval holds the truth: a law of 60 ± 21.5 kJ/mol and
 * a known time that is good to 4 %, both told as such, and a factor that is good to 15 %.
 */
export function stopped(
  steer: (input: SteerInput) => SteerAnswer,
  random: () => number,
  told: boolean,
  options: { readonly doubt: boolean; readonly appearance: boolean },
): Held {
  const { baseline, vessel, drift, readings } = worldOf(random);
  const law = {
    kind: "arrhenius",
    activationEnergyKJPerMol: Math.min(200, Math.max(0, 60 + LAW.sdKJPerMol * normal(random))),
  } as const;
  const equivalentS = baseline.timeS * Math.exp(0.04 * normal(random));
  const on = (workS: number): number =>
    developUntil({ equivalentS: workS, referenceC: 20, law, temperatureAt: pathOf(drift) });
  const endS = on(equivalentS);
  const nowS = endS * (0.2 + 0.6 * random());
  const soFar = readings.filter(({ timeS }) => timeS <= nowS);
  // In doubt: the thermometer failed half-way.
  const log = options.doubt
    ? [...soFar.map((one) => (one.timeS > nowS / 2 ? { ...one, temperatureC: 85 } : one)), failedAt(nowS)]
    : soFar;
  const factor = 12;
  const appearanceS = on(equivalentS / (factor * Math.exp(0.15 * normal(random)))) + 1.5 * normal(random);
  const { remaining, total, trusted } = steer({
    baseline: { ...baseline, logSd: 0.04 },
    conditions: {},
    knowledge: { temperature: LAW },
    log,
    nowS,
    ...(told ? { vessel, ambientC: drift.ambientC } : undefined),
    ...(options.appearance ? { appearance: { appearanceS, factor } } : undefined),
  });
  return {
    inside: remaining.lowS <= endS - nowS && endS - nowS <= remaining.highS,
    error: Math.log(total.timeS / endS),
    trusted,
  };
}
