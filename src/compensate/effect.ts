import type { AgeLaw } from "../age/law.js";
import type { Agitation, AgitationLaw } from "../agitation/agitation.js";
import { causes, causeNames, type CauseName } from "../causes.js";
import type { GrowthLaw } from "../contrast/growth.js";
import { factorOf, logSdOf, type AnyCause } from "../core/cause.js";
import { notOneOf, plainObject } from "../core/guards.js";
import type { AnyPair } from "../core/pair.js";
import type { Dilution, DilutionLaw } from "../dilution/dilution.js";
import type { InteractionLaw } from "../interaction/law.js";
import { pairs, type PairName } from "../pairs.js";
import type { PushLaw } from "../push/law.js";
import type { Strength, StrengthCorrection } from "../strength/cause.js";
import type { TemperatureLaw } from "../temperature/law.js";
import type { UseLaw } from "../use/useFactor.js";

/** What a cause or pair takes in {@link effect}. */
interface Asked<Side, Law> {
  /** one side of the change, known or today's */
  readonly side: Side;
  /** the law */
  readonly law: Law;
}

/** A side of each cause and pair, in the form that a baseline has it, and its law, by its name. */
export interface EffectArguments {
  /** °C */
  readonly temperature: Asked<number, TemperatureLaw>;
  /** as text, `"1+9"`, or parts */
  readonly dilution: Asked<Dilution | string, DilutionLaw>;
  /** how the bath is moved */
  readonly agitation: Asked<Agitation, AgitationLaw>;
  /** area the bath has already developed, cm² per litre */
  readonly use: Asked<number, UseLaw>;
  /** age of the bath, h */
  readonly age: Asked<number, AgeLaw>;
  /** the strength of a brew: what `brewStrength` returns */
  readonly strength: Asked<Strength, StrengthCorrection>;
  /** the gradient */
  readonly contrast: Asked<number, GrowthLaw>;
  /** stops of push; below 0 is a pull */
  readonly push: Asked<number, PushLaw>;
  /** °C and the dilution, together */
  readonly interaction: Asked<
    {
      /** °C */
      readonly temperatureC: number;
      /** as text, `"1+9"`, or parts */
      readonly dilution: Dilution | string;
    },
    InteractionLaw
  >;
}

/** A factor on time with its spread. */
export interface EffectOfCause {
  /** time under `to` divided by time under `from` */
  readonly factor: number;
  /** standard deviation of ln(factor) */
  readonly logSd: number;
}

/**
 * What a change of one condition does to the time, with its spread.
 *
 * @param cause - the name of the cause: `"temperature"`, `"dilution"`, `"agitation"`, `"use"`, `"age"`,
 * `"strength"`, `"contrast"` or `"push"`; or `"interaction"`, what temperature and dilution do together: each
 * side is then `{ temperatureC, dilution }`. `compensate` bounds what the two do together; here they are not
 * bounded
 * @param from - the known side, in the form that a baseline has it: °C, `"1+9"`, `{ everyS }`, cm²/l, h, ...
 * @param to - today's side, in the same form
 * @param law - the law of the cause; the generic one when left out
 * @returns the factor on time and the standard deviation of its logarithm
 * @throws TypeError or RangeError when a side or the law is of the wrong kind or out of range
 *
 * @remarks A law alone does not carry how its learned numbers correlate. So the spread of a law that was
 * learned, which counts them as independent, is mostly wider here than its row in `predict`.
 *
 * @example
 * ```ts
 * const law = { kind: "arrhenius", activationEnergyKJPerMol: 60, sdKJPerMol: 20 } as const;
 * effect("temperature", 20, 14, law).logSd // => 0.17145
 * const [before, now] = [{ temperatureC: 20, dilution: "1+1" }, { temperatureC: 14, dilution: "1+3" }];
 * effect("interaction", before, now).factor // => 0.902
 * effect("dilution", "1+1", "1+3", { kind: "power", exponent: 1, sd: 0.2 }).factor // => 2
 * ```
 */
export function effect<Name extends CauseName | PairName>(
  cause: Name,
  from: EffectArguments[Name]["side"],
  to: EffectArguments[Name]["side"],
  law?: EffectArguments[Name]["law"],
): EffectOfCause {
  const pair = pairs.find(({ name }) => name === cause) as AnyPair | undefined;
  if (pair !== undefined) return effectOfPair(pair, from, to, law);
  const one = causes.find(({ name }) => name === cause) as AnyCause | undefined;
  if (one === undefined) notOneOf("effect/cause", [...causeNames, ...pairs.map(({ name }) => name)], cause);
  const ready: unknown = law === undefined ? one.generic : one.check("effect/law", law);
  const before: unknown = one.read("effect/from", from);
  const after: unknown = one.read("effect/to", to);
  one.within?.("effect/from", ready, before, true);
  one.within?.("effect/to", ready, after, true);
  const found = one.effect(ready, before, after);
  return { factor: factorOf(found), logSd: logSdOf(found) };
}

/** The same of a pair: each side gives both conditions, in their fields. */
function effectOfPair(pair: AnyPair, from: unknown, to: unknown, law: unknown): EffectOfCause {
  const sideOf = (at: string, given: unknown): readonly [unknown, unknown] => {
    const fields = plainObject(at, given);
    const [a, b] = pair.causes.map((one) => one.read(`${at}/${one.field}`, fields[one.field]) as unknown);
    return [a, b];
  };
  const ready: unknown = law === undefined ? pair.generic : pair.check("effect/law", law);
  const found = pair.effect(ready, sideOf("effect/from", from), sideOf("effect/to", to));
  return { factor: factorOf(found), logSd: logSdOf(found) };
}
