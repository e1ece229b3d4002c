/* How time really depends on the conditions in a simulated darkroom; written out anew, not taken from the package. */
import type { Random } from "./random.js";
import type { Start, Where } from "./subject.js";

/** Mean and standard deviation. */
export type Spread = readonly [mean: number, sd: number];

/** What the numbers of nature are drawn from. */
export interface Nature {
  /** ln(right time/starting time) */
  readonly base: Spread;
  /** activation energy, kJ/mol */
  readonly energyKJ: Spread;
  /** dilution exponent */
  readonly exponent: Spread;
  /** share of the rate lost at a stale layer, scaled along the generic curve */
  readonly loss: Spread;
  /** what a roll of 516 cm² in a litre adds */
  readonly use: Spread;
  /** ln(time) at a day, growing with the power 3/2 of the age */
  readonly age: Spread;
  /** kJ/mol for each halving of the concentration */
  readonly pair: Spread;
  /** what temperature and dilution do together has no bound: the bath may be faster when it is colder */
  readonly pairUnbounded?: boolean;
  /** random walk along the temperature, standard deviation over one °C */
  readonly temperatureWalk: number;
  /** what the activation energy is more by below 18 °C, kJ/mol */
  readonly colderKJ?: Spread;
  /** random walk in ln(concentration), standard deviation over one unit */
  readonly dilutionWalk: number;
  /** use multiplies as often as it adds */
  readonly useCompounds?: boolean;
  /** the same along the agitation curve */
  readonly agitationWalk: number;
  /** time follows a power of the interval between agitations instead of the curve */
  readonly agitationPower?: Spread;
}

const GAS_KJ = 8.314462618e-3;
/** A roll of film, cm²: 80 square inches. */
const ROLL = 516.128;

/** ln(parts in all/parts of stock): how far a bath is diluted. */
export function diluted(dilution: string): number {
  const [stock, water] = dilution.split("+").map(Number) as [number, number];
  return Math.log((stock + water) / stock);
}

/** −ln(mean rate)/loss between two agitations, 75 s to go stale, drawn for a loss of 0.75. */
function stale(everyS: number): number {
  const x = everyS / 75;
  return -Math.log(1 - 0.75 * (1 - (1 - Math.exp(-x)) / x)) / 0.75;
}

/** Where the activation energy changes, if it does. */
const COLD_C = 18;

const inverse = (temperatureC: number): number => 1 / (GAS_KJ * (temperatureC + 273.15));

/** A random walk, 0 at `origin`, drawn as far as it is asked for. */
function walker(random: Random, origin: number, sd: number): (place: number) => number {
  const known: [place: number, value: number][] = [[origin, 0]];
  return (place) => {
    const at = known.findIndex(([each]) => each >= place);
    const after = known[at];
    if (after?.[0] === place) return after[1];
    const before = known[at < 0 ? known.length - 1 : at - 1];
    let mean: number;
    let variance: number;
    if (before && after) {
      const share = (place - before[0]) / (after[0] - before[0]);
      mean = before[1] + share * (after[1] - before[1]);
      variance = share * (after[0] - place);
    } else {
      const [from, value] = (before ?? after)!;
      mean = value;
      variance = Math.abs(place - from);
    }
    const value = mean + sd * Math.sqrt(variance) * random.normal();
    known.splice(at < 0 ? known.length : at, 0, [place, value]);
    return value;
  };
}

/** What a cause alone does to ln(time), and which way the condition goes: above 0 where time should grow. */
type Alone = readonly [step: number, log: number];

/**
 * What two causes do together. With a bound it takes at most half of what each does alone, as the model has it, so
 * that colder is never faster.
 */
function together(log: number, bounded: boolean, ...alone: readonly Alone[]): number {
  if (!bounded) return log;
  const most = alone.flatMap(([step, own]) =>
    log * step < 0 ? [0.5 * Math.max(0, own * Math.sign(step))] : [],
  );
  return Math.sign(log) * Math.min(Math.abs(log), ...most);
}

/** Draws a darkroom: ln of the right time under any conditions. */
export function drawNature(random: Random, nature: Nature, start: Start): (where: Where) => number {
  const draw = ([mean, sd]: Spread): number => mean + sd * random.normal();
  const base = Math.log(start.timeS) + draw(nature.base);
  const energy = Math.max(5, draw(nature.energyKJ));
  const exponent = Math.max(0, draw(nature.exponent));
  const loss = Math.max(0, draw(nature.loss));
  const use = Math.max(0, draw(nature.use));
  const adds = !nature.useCompounds || random.uniform() < 0.5;
  const age = draw(nature.age);
  const pair = draw(nature.pair);
  const from = { dilution: diluted(start.dilution), agitation: stale(start.agitation.everyS) };
  const bend = walker(random, from.dilution, nature.dilutionWalk);
  const swerve = walker(random, from.agitation, nature.agitationWalk);
  const colder = nature.colderKJ === undefined ? 0 : draw(nature.colderKJ);
  const turn = walker(random, start.temperatureC, nature.temperatureWalk);
  const power = nature.agitationPower && draw(nature.agitationPower);
  return ({ temperatureC, dilution, agitation, usedCm2PerL, ageH }) => {
    const warmth = inverse(temperatureC) - inverse(start.temperatureC);
    const water = diluted(dilution);
    const curve = stale(agitation.everyS);
    const weaker = water - from.dilution;
    const byWarmth =
      energy * warmth + turn(temperatureC) + colder * Math.max(0, inverse(temperatureC) - inverse(COLD_C));
    const byWater = exponent * weaker + bend(water);
    return (
      base +
      byWarmth +
      byWater +
      together(
        pair * (weaker / Math.LN2) * warmth,
        nature.pairUnbounded !== true,
        [warmth, byWarmth],
        [weaker, byWater],
      ) +
      (power === undefined
        ? loss * (curve - from.agitation) + swerve(curve)
        : power * Math.log(agitation.everyS / start.agitation.everyS)) +
      (use / 0.08) *
        (adds ? Math.log(1 + (0.08 * usedCm2PerL) / ROLL) : (usedCm2PerL / ROLL) * Math.log(1.08)) +
      age * (ageH / 24) ** 1.5
    );
  };
}
