import { isPast, type Caution } from "../core/caution.js";
import { Z90 } from "../core/estimate.js";
import { inRange, isBoolean, plainObject, refuse } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import { restsOn, checkedOrigin, type FactorRow } from "../core/term.js";
import { pairChange } from "./agentPair.js";
import { bathOf } from "./bath.js";
import { readBrew, unreadInBrew, type DeveloperBrew, type ReadBrew, type ReadPart } from "./brew.js";
import { capacityOfBrew } from "./brewCapacity.js";
import { brewLife } from "./brewLife.js";
import { checkBrew } from "./checkBrew.js";
import { constantsAt } from "./constants.js";
import { solveBath } from "./equilibrium.js";
import { gramsByIngredient, isCoffee, isVitaminC } from "./parts.js";
import { bromideDose, restrainerCautions, restrained, unlikeSpread } from "./restrainer.js";
import { GIVEN_EXPONENT_SD, genericStrengthLaw, type StrengthLaw } from "./strengthLaw.js";
import { coffeeEnds, spoonEnds, type Ends } from "./strengthEnds.js";
import { agentsIn, powerChange, type PowerChange } from "./strengthTerms.js";
import { say } from "./text.js";
import { agentText } from "./refusedText.js";

/** What {@link brewStrength} returns: a term for `compensate`, and how it came about. */
export interface BrewStrength extends FactorRow<"strength"> {
  /** the part of `logSd` that the exponent of amounts explains: how ln(value) moves with its spread */
  readonly slope: number;
  /** pH of the brew whose time is known, at the mean of both temperatures */
  readonly fromPh: number;
  /** pH of today's brew, at the same temperature */
  readonly toPh: number;
  /**
   * developing power of today's brew relative to the known one, from which a test strip gives the exponent
   */
  readonly power: number;
  /** life of today's brew from mixing, h, 10 mm deep in an open dish; see {@link brewLife} */
  readonly lifeH: number;
  /** age from which today's brew may fail, h */
  readonly lifeLowH: number;
  /** how much film a litre of today's brew develops, cm²; see {@link brewCapacity} */
  readonly capacityCm2PerL: number;
  /** what stops today's brew, and what strains the comparison */
  readonly cautions: readonly Caution[];
}

/** What two brews share. */
export interface BrewStrengthOptions {
  /** one kind of coffee in both brews came from one jar; true when left out */
  readonly sameJar?: boolean | undefined;
  /** one ingredient in both brews was measured with one spoon, filled alike; true when left out */
  readonly sameSpoon?: boolean | undefined;
}

const OPTIONS: readonly (keyof BrewStrengthOptions)[] = ["sameJar", "sameSpoon"];

/** How unlike, mole for mole, active ascorbate and catechol may develop: a factor of two, assumed. */
const AGENT_LOG_SD = Math.LN2;
/** A change of pH beyond which a strip is worth more than the formula. */
const PH_CHANGE = 0.3;

/** ln of a factor just below a million. */
const FAR_LOG = 13.8;

/**
 * The time factor between two brews: development time in the brew of today divided by that in the brew whose
 * time is known.
 *
 * @param from - the brew whose time is known
 * @param to - today's brew
 * @param law - exponent (0 to 3) and its standard deviation (0 to 3, 0.15 without one) of time against power;
 * {@link genericStrengthLaw} when left out
 * @param options - `sameJar` and `sameSpoon`, whether the brews share them; true when left out
 * @returns a factor of cause `"strength"`, exactly 1 with no spread when both are of the same make-up; with
 * the pH of both, life and capacity of today's brew, and cautions: what {@link checkBrew} says stop to,
 * `"alkali-changed"` beyond 0.3 in pH, `"restrainer-strong"` above 5 g/l, `"strength-far"`; and where one
 * brew alone has coffee or vitamin C, `"vitamin-c-without-coffee"` or `"coffee-without-vitamin-c"`
 * @throws TypeError when something is of the wrong kind
 * @throws RangeError for a brew that {@link brewPh} refuses, one without a developing agent, or an exponent
 * out of range
 *
 * @remarks ln(factor) = −n ln(power of today/power of the known) + 0.5 ln((D + 2)/(D₀ + 2)). Power is the
 * active part of vitamin C and coffee at the bath's pH, as the mean of two readings: coffee's catechol acts
 * as mono- and dianion, or as dianion only. Their half difference is a spread. Vitamin C acts as dianion in
 * both. D is the restrainer as potassium bromide in g/l, salt at a twentieth. The spread holds the exponent's
 * for the amounts and for the active share, a factor of two between the agents, restrainer, what
 * ingredients differ, coffee's ranges and spoons. It falls to 0 with the change, and never before. Swapping
 * the brews inverts the factor exactly. The equilibrium is taken at the mean of the two temperatures, since
 * warmth is the temperature term's business, and without the restrainer's salt. Nothing in print tests it; a
 * test strip replaces it, see `docs/brew.md`. The pair of agents does more than its sum (common practice,
 * from memory). So a brew is never quicker for an agent that it lost, whatever alkali the acid of that agent
 * leaves. Without coffee a third of its power is left (assumed). It is off by 0.5 in ln without coffee, by
 * 0.3 without vitamin C (assumed). Less than a fifth of the
 * full recipe's share of an agent counts in proportion. Not covered: how much more the pair does.
 *
 * @example
 * ```ts
 * const coffee: BrewPart = { ingredient: "instant-coffee", massG: 16 };
 * const soda: BrewPart = { ingredient: "soda-anhydrous", massG: 22 };
 * const half: BrewPart = { ingredient: "soda-anhydrous", massG: 11 };
 * const full = { volumeMl: 400, ingredients: [soda, coffee] };
 * const halfTheSoda = { volumeMl: 400, ingredients: [half, coffee] };
 * brewStrength(full, halfTheSoda).value // => 1.14
 * brewStrength(full, scaleBrew(full, 900)).value // => 1
 * ```
 */
export function brewStrength(
  from: DeveloperBrew,
  to: DeveloperBrew,
  law: StrengthLaw = genericStrengthLaw,
  options: BrewStrengthOptions = {},
): BrewStrength {
  const known = readBrew("brewStrength/from", from);
  const today = readBrew("brewStrength/to", to);
  checkedOrigin("brewStrength/law", law);
  const exponent = inRange("brewStrength/law/exponent", law.exponent, 0, 3);
  const sd = inRange("brewStrength/law/sd", law.sd === undefined ? GIVEN_EXPONENT_SD : law.sd, 0, 3);
  const sameJar = flag("sameJar", options);
  const sameSpoon = flag("sameSpoon", options);

  const constants = constantsAt((known.temperatureC + today.temperatureC) / 2);
  const solved = (of: ReadBrew, { coffee, mass }: Ends = {}): ReturnType<typeof solveBath> =>
    solveBath(bathOf(of.parts.filter(isNoRestrainer), of.volumeMl, coffee, mass), constants);
  const [a, b] = [solved(today), solved(known)];
  const agents = { to: agentsIn(a), from: agentsIn(b) };
  for (const name of ["from", "to"] as const)
    if (!(agents[name].total[0] + agents[name].total[1] > 0))
      refuse(`brewStrength/${name}`, "agent-needed", agentText, {}, undefined);

  const change = powerChange(agents.to, agents.from);
  const pair = pairChange({ brew: today, agents: agents.to }, { brew: known, agents: agents.from }, (of) =>
    agentsIn(solved(of)),
  );
  const power = beyondRounding(change.log + pair.log);
  const [restrainer, restrainerSd] = restrained(today, known);
  const same = sameMakeUp(today, known);
  // Beyond a factor of a million either way no bath develops; `compensate` takes no greater one.
  const log = same ? 0 : Math.max(-FAR_LOG, Math.min(FAR_LOG, restrainer - exponent * power));

  /** What an end of a range does to ln(time): of the brews that it moves, the others stay as they are. */
  const moved = (ends: Ends, of: readonly ReadBrew[]): number => {
    const agentsOf = (brew: ReadBrew, middle: typeof agents.to): typeof agents.to =>
      of.includes(brew) ? agentsIn(solved(brew, ends)) : middle;
    return powerChange(agentsOf(today, agents.to), agentsOf(known, agents.from)).log - change.log;
  };
  const ranged = ([low, high]: readonly [Ends, Ends], of: readonly ReadBrew[]): number =>
    (exponent * Math.max(Math.abs(moved(low, of)), Math.abs(moved(high, of)))) / Z90;
  const brews = [today, known];
  const sides = (shared: boolean): readonly (readonly ReadBrew[])[] =>
    shared ? [brews] : [[today], [known]];
  const spreads = [
    ...(same ? [] : [lawSpread(change, exponent, sd), restrainerSd, pair.sd, unlikeSpread(today, known)]),
    ...sides(sameJar).flatMap((of) => coffeeEnds(of).map((ends) => ranged(ends, of))),
    ...sides(sameSpoon).flatMap((of) => spoonEnds(of).map((ends) => ranged(ends, of))),
  ];
  const spread = spreads.reduce((sum, one) => Math.hypot(sum, one), 0);
  // Scaling rounds, and rounding is no spread.
  const unchanged = same && spread < 1e-9;
  // A factor that may be anything: `compensate` takes no greater spread.
  const logSd = unchanged ? 0 : Math.min(10, spread);
  const { lifeH, lowH: lifeLowH } = brewLife(to);
  return {
    cause: "strength",
    value: Math.exp(log),
    logSd,
    slope: unchanged || logSd === 0 ? 0 : Math.max(-logSd, Math.min(logSd, 0 - sd * amountOf(change))),
    basis: unchanged ? "unchanged" : restsOn(law),
    sources: law.sources ?? [],
    fromPh: b.ph,
    toPh: a.ph,
    power: same ? 1 : Math.exp(power),
    lifeH,
    lifeLowH,
    capacityCm2PerL: capacityOfBrew(today, "film").cm2PerL,
    // What stops the bath stops its time.
    cautions: [
      ...unreadInBrew("/from", from),
      ...unreadInBrew("/to", to),
      ...unreadFields("/options", options, OPTIONS),
      ...checkBrew(to).filter(({ severity }) => severity === "stop"),
      ...agentCautions(today, known),
      ...changeCautions(b.ph, a.ph, bromideDose(today)),
      ...farCaution(Math.exp(Math.abs(log))),
    ],
  };
}

/** A restrainer acts by its dose alone: as a salt it would move the equilibrium, and speed what it slows. */
const isNoRestrainer = ({ data }: ReadPart): boolean => data.role !== "restrainer";

function flag(name: "sameJar" | "sameSpoon", options: BrewStrengthOptions): boolean {
  const given = plainObject("brewStrength/options", options)[name];
  if (given !== undefined) isBoolean(`brewStrength/options/${name}`, given);
  return given !== false;
}

/**
 * Whether two brews are the same but for their volume: to a part in a thousand million, since scaling rounds.
 */
function sameMakeUp(one: ReadBrew, other: ReadBrew): boolean {
  const [a, b] = [gramsByIngredient(one), gramsByIngredient(other)];
  return a.size === b.size && [...a].every(([name, x]) => Math.abs(x - (b.get(name) ?? NaN)) <= 1e-9 * x);
}

/** The change of power by the amounts of all agents: one exponent acts on it. */
const amountOf = ({ amount }: PowerChange): number => amount.reduce((sum, part) => sum + part, 0);

/** The spread of the law, of the readings and of the agents, as standard deviation of ln(time). */
function lawSpread(change: PowerChange, exponent: number, sd: number): number {
  const { apart, share, mixture } = change;
  return Math.hypot(
    sd * amountOf(change),
    ...apart.map((half) => exponent * half),
    sd * share,
    exponent * AGENT_LOG_SD * mixture,
  );
}

/** Sums of ln(power) round by less than this. */
const ROUNDING_LOG = 1e-12;

/** A change of ln(power); 0 for one within rounding. */
const beyondRounding = (log: number): number => (Math.abs(log) < ROUNDING_LOG ? 0 : log);

/** That one of the brews lacks an agent which the other has. */
function agentCautions(...brews: readonly [ReadBrew, ReadBrew]): Caution[] {
  const some = (is: (part: ReadPart) => boolean): number =>
    brews.filter(({ parts }) => parts.some(is)).length;
  const found: Caution[] = [];
  if (some(isCoffee) === 1) found.push(say("vitamin-c-without-coffee", "warn"));
  if (some(isVitaminC) === 1) found.push(say("coffee-without-vitamin-c", "note"));
  return found;
}

function changeCautions(fromPh: number, toPh: number, doseGPerL: number): Caution[] {
  const found: Caution[] = [];
  const change = Math.abs(toPh - fromPh);
  if (isPast(change, PH_CHANGE))
    found.push(
      say("alkali-changed", "warn", {
        quantity: "ph",
        limit: PH_CHANGE,
        actual: change,
        data: { fromPh, toPh },
      }),
    );
  // A stop is among those of checkBrew.
  return [...found, ...restrainerCautions(doseGPerL).filter(({ severity }) => severity !== "stop")];
}

/** Cautions of a factor that is far from 1, whichever way. */
export function farCaution(actual: number): readonly Caution[] {
  if (!isPast(actual, 1.5)) return [];
  const stop = isPast(actual, 4);
  return [say("strength-far", stop ? "stop" : "warn", { quantity: "ratio", limit: stop ? 4 : 1.5, actual })];
}
