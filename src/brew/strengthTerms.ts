/*
 * Module: brew. The change of developing power between two brews, split into the amount of each agent and the
 * share of it that is active.
 */
import type { Solution } from "./equilibrium.js";
import { CATECHOL_SHARE } from "./solveBrew.js";

/** The agents, in the order of every list here. */
const AGENTS = [0, 1] as const;

/** Of one brew: totals of ascorbate and catechol, and their active parts by each reading, mol/kg. */
export interface Agents {
  readonly total: readonly [ascorbate: number, catechol: number];
  /** reading 1: catechol acts as mono- and dianion; reading 2: as dianion only */
  readonly active: readonly [Agents["total"], Agents["total"]];
}

/** The agents of a solved brew. */
export function agentsIn({ species }: Solution): Agents {
  const ascorbate = species.ascorbate ?? [];
  const catechol = species.chlorogenate ?? [];
  const sum = (forms: readonly number[]): number => forms.reduce((total, molal) => total + molal, 0);
  const [, , mono = 0, double = 0] = catechol;
  const [, , dianion = 0] = ascorbate;
  return {
    total: [sum(ascorbate), CATECHOL_SHARE * sum(catechol)],
    active: [
      [dianion, CATECHOL_SHARE * (mono + double)],
      [dianion, CATECHOL_SHARE * double],
    ],
  };
}

/** How two brews differ. Every figure changes its sign when the brews change places. */
export interface PowerChange {
  /** ln(power of today's/power of the known), the mean of both readings */
  readonly log: number;
  /** by agent: change of its amount, the mean of both readings */
  readonly amount: readonly number[];
  /** by agent: half the difference between the readings of amount and active share together */
  readonly apart: readonly number[];
  /** change of active share, all agents, the mean of both readings */
  readonly share: number;
  /** change of ascorbate's part of the power, the mean of both readings */
  readonly mixture: number;
}

/** The logarithmic mean (x − y)/ln(x/y), from the logarithms: stable where x and y are nearly one. */
function logarithmicMean(logX: number, logY: number): number {
  const half = (logX - logY) / 2;
  return Math.exp((logX + logY) / 2) * (half === 0 ? 1 : Math.sinh(half) / half);
}

/** One reading: for each agent the change by its amount and by its active share, as parts of ln(power). */
function read(
  today: Agents,
  known: Agents,
  reading: 0 | 1,
): readonly (readonly [amount: number, share: number])[] {
  const [a, b] = [today.active[reading], known.active[reading]];
  const whole = logarithmicMean(Math.log(a[0] + a[1]), Math.log(b[0] + b[1]));
  return AGENTS.map((i) => {
    if (!(a[i] > 0 && b[i] > 0)) return [(a[i] - b[i]) / whole, 0];
    const [logA, logB] = [Math.log(a[i]), Math.log(b[i])];
    const weight = logarithmicMean(logA, logB) / whole;
    const amount = weight * (Math.log(today.total[i]) - Math.log(known.total[i]));
    return [amount, weight * (logA - logB) - amount];
  });
}

/**
 * The change of power. The weights are those of the logarithmic mean (B. W. Ang, Decomposition analysis for
 * policymaking in energy, 2004, from memory), so that the parts of all agents add up to the whole.
 */
export function powerChange(today: Agents, known: Agents): PowerChange {
  const readings = [read(today, known, 0), read(today, known, 1)] as const;
  const pair = (i: number): readonly [readonly [number, number], readonly [number, number]] =>
    [readings[0][i], readings[1][i]] as [[number, number], [number, number]];
  const amount = AGENTS.map((i) => (pair(i)[0][0] + pair(i)[1][0]) / 2);
  const shares = AGENTS.map((i) => (pair(i)[0][1] + pair(i)[1][1]) / 2);
  const apart = AGENTS.map((i) => (pair(i)[0][0] + pair(i)[0][1] - pair(i)[1][0] - pair(i)[1][1]) / 2);
  const share = (shares[0] as number) + (shares[1] as number);
  const ascorbate = ({ active: [one, two] }: Agents): number =>
    (one[0] / (one[0] + one[1]) + two[0] / (two[0] + two[1])) / 2;
  return {
    log: (amount[0] as number) + (amount[1] as number) + share,
    amount,
    apart,
    share,
    mixture: ascorbate(today) - ascorbate(known),
  };
}
