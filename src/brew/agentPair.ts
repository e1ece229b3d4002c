/*
 * Module: brew. What the pair of agents does between two brews of which one has an agent that the other has
 * not.
 */
import type { ReadBrew, ReadPart } from "./brew.js";
import { isCoffee, isVitaminC } from "./parts.js";
import { agentsOf } from "./solveBrew.js";
import { powerChange, type Agents } from "./strengthTerms.js";

/** Catechol for each ascorbate, mol, in coffee 40 with vitamin C 16 g/l (common practice). */
const FULL_RATIO = 0.0577;
/** From this part of that ratio on, either agent counts as there; below it in proportion (assumed). */
const FULL_FROM = 0.2;

/**
 * What a brew without coffee loses in ln(power), beside coffee's own (assumed). Vitamin C alone is slow at
 * best: class trials had no success with it (S. A. Williams, Rochester, 1995).
 */
const LOST_WITHOUT_COFFEE = 1;

/** An agent: how to tell its parts, and what a brew without it is off by beside all else, ln (assumed). */
interface Agent {
  readonly is: (part: ReadPart) => boolean;
  readonly without: number;
  /** how far a brew has it beside the other, 0 to 1 */
  readonly share: (brew: ReadBrew) => number;
}

const COFFEE: Agent = {
  is: isCoffee,
  without: 0.5,
  share: (brew) => {
    const { ascorbate, catechol } = agentsOf(brew);
    return catechol === 0 ? 0 : Math.min(1, catechol / (FULL_FROM * FULL_RATIO * ascorbate));
  },
};

const VITAMIN_C: Agent = {
  is: isVitaminC,
  without: 0.3,
  share: (brew) => {
    const { ascorbate, catechol } = agentsOf(brew);
    return ascorbate === 0 ? 0 : Math.min(1, ascorbate / ((FULL_FROM / FULL_RATIO) * catechol));
  },
};

/** A brew, and what is in it at the bath's pH. */
export interface SolvedBrew {
  readonly brew: ReadBrew;
  readonly agents: Agents;
}

/** What {@link pairChange} returns. */
export interface PairChange {
  /** change of ln(power) beside that of the agents; it changes its sign when the brews change places */
  readonly log: number;
  /** standard deviation of ln(time) */
  readonly sd: number;
}

/**
 * What the pair does from one brew to another. The pair does more than its sum (common practice, from
 * memory): so a brew is never quicker for an agent that it lost, though the acid of that agent no longer
 * takes alkali. Without coffee it is slower. How much more the pair does is a spread.
 *
 * @param solve - the agents of a brew with some of its parts left out
 */
export function pairChange(
  today: SolvedBrew,
  known: SolvedBrew,
  solve: (brew: ReadBrew) => Agents,
): PairChange {
  let log = LOST_WITHOUT_COFFEE * coffeeGained(today.brew, known.brew);
  let sd = 0;
  for (const agent of [COFFEE, VITAMIN_C]) {
    const [to, from] = [agent.share(today.brew), agent.share(known.brew)];
    log += to === from ? 0 : gained(today, to, from, agent, solve) - gained(known, from, to, agent, solve);
    sd = Math.hypot(sd, agent.without * (to - from));
  }
  return { log, sd };
}

/**
 * By how much the share of coffee grows, beside the larger amount of vitamin C: vitamin C that is lost is no
 * gain.
 */
function coffeeGained(today: ReadBrew, known: ReadBrew): number {
  const [to, from] = [agentsOf(today), agentsOf(known)];
  const full = FULL_FROM * FULL_RATIO * Math.max(to.ascorbate, from.ascorbate);
  if (full === 0) return 0;
  return Math.min(1, to.catechol / full) - Math.min(1, from.catechol / full);
}

/** What the alkali that a lost agent leaves would gain in ln(power), for the part of it that is lost. */
function gained(
  { brew, agents }: SolvedBrew,
  share: number,
  left: number,
  { is }: Agent,
  solve: (brew: ReadBrew) => Agents,
): number {
  if (!(share > left)) return 0;
  const rest = solve({ ...brew, parts: brew.parts.filter((part) => !is(part)) });
  if (!(rest.total[0] + rest.total[1] > 0)) return 0;
  return (1 - left / share) * Math.max(0, powerChange(rest, agents).log);
}
