/*
 * Room: compensate. One function a cause: from baseline, conditions and knowledge to a row of the answer. The
 * rooms of the causes do the arithmetic; here it is decided which law serves and what it rests on.
 */
import { inputError } from "../core/errors.js";
import type { Caution } from "../core/caution.js";
import { arrayOf, inRange, plainObject, positive, wrongKind, wrongValue } from "../core/guards.js";
import { basisOf, checkedOrigin, type Basis, type Factor, type LawOrigin } from "../core/term.js";
import {
  agitationInterval,
  agitationSide,
  checkedAgitationLaw,
  genericAgitationLaw,
  LONGEST_INTERVAL_S,
} from "../agitation/agitation.js";
import { spreadOfSides } from "../agitation/agitationLogSd.js";
import { dilutionRatio, logConcentration, readDilution } from "../dilution/dilution.js";
import { dilutionOverrun, spreadBetween } from "../dilution/dilutionLogSd.js";
import { genericDilutionLaw } from "../dilution/genericDilutionLaw.js";
import { ageFactor } from "../age/ageFactor.js";
import { ageLogSd } from "../age/ageLogSd.js";
import { genericUseLaw, useFactor } from "../use/useFactor.js";
import { useLogSd } from "../use/useLogSd.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { checkMaterial, temperatureCautions } from "../temperature/temperatureCautions.js";
import { lawSlope, type TemperatureLaw } from "../temperature/law.js";
import { ratioUnder } from "../temperature/temperatureFactor.js";
import { spreadUnder, tableOverrun } from "../temperature/temperatureLogSd.js";
import type { Baseline, Conditions, Knowledge, WorkedTerm } from "./types.js";

/** What a row says besides its numbers. */
interface Rests {
  readonly sources?: readonly string[] | undefined;
  readonly runs?: number | undefined;
}

/** A row that rests on something. */
export function resting(
  cause: string,
  value: number,
  logSd: number,
  { sources = [], runs }: Rests,
  basis: Basis,
): Factor {
  const made = { cause, value, logSd, basis, sources };
  return runs === undefined ? made : { ...made, runs };
}

/** A row; where nothing changed, it rests on no law at all. */
export function row(cause: string, value: number, logSd: number, law: LawOrigin, basis: Basis): Factor {
  return value === 1 && logSd === 0
    ? resting(cause, value, logSd, {}, "unchanged")
    : resting(cause, value, logSd, law, basis);
}

export function caution(code: string, severity: Caution["severity"], path: string, message: string): Caution {
  return { code, severity, message, path: `/conditions/${path}` };
}

/** A bath that is past what it can do. */
function past(what: string, path: string, limit: number, actual: number): readonly Caution[] {
  return [
    {
      ...caution(`bath-past-${what}`, "stop", path, `The bath is past its ${what}: mix fresh.`),
      limit,
      actual,
    },
  ];
}

/** The law to use and what it rests on: the given one, else the generic one. */
export function choose<Law extends LawOrigin>(
  cause: string,
  given: Law | undefined,
  generic: Law,
): [Law, Basis] {
  return given === undefined
    ? [generic, "default"]
    : [given, basisOf(checkedOrigin("compensate/knowledge/", given, cause))];
}

/** The term of temperature; `undefined` for a bath that drifts, whose term waits for the others. */
export function temperatureTerm(
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge,
): WorkedTerm | undefined {
  const { temperatureC: from } = baseline;
  const { temperatureC: to = from } = conditions;
  if (typeof to === "object" || typeof to === "function") return undefined;
  inRange("compensate/conditions/temperatureC", to, 0, 100, "temperatureC");
  const [law, basis] = choose("temperature", knowledge.temperature, genericTemperatureLaw);
  const slope = lawSlope("compensate/knowledge/temperature", law);
  const factor = row("temperature", ratioUnder(law, slope, from, to), spreadUnder(law, from, to), law, basis);
  return { factor, cautions: cautionsAt(baseline, to, law, conditions.temperatureC === undefined) };
}

/**
 * The cautions about a bath at one temperature, against the baseline's; where today's is left out, the figure
 * stands in the baseline alone.
 */
export function cautionsAt(
  baseline: Baseline,
  to: number,
  law: TemperatureLaw,
  leftOut?: boolean,
): Caution[] {
  // Literals rather than spreads: this runs on every call of compensate, and a spread costs as much as all
  // the rest.
  const { hydroquinone, emulsion, temperatureC: from } = baseline;
  checkMaterial("compensate/baseline", baseline);
  const cautions = temperatureCautions(to, {
    hydroquinone,
    emulsion,
    path: `/${leftOut ? "baseline" : "conditions"}/temperatureC`,
  }).slice();
  if (from > 45 && !leftOut) cautions.push(...temperatureCautions(from, { path: "/baseline/temperatureC" }));
  if (from !== to && law.kind === "table" && (tableOverrun(law.rows, from) || tableOverrun(law.rows, to)))
    cautions.push(
      caution(
        "outside-table",
        "warn",
        "temperatureC",
        "A temperature lies outside the table: its last slope is carried on.",
      ),
    );
  if (Math.abs(to - from) > 10)
    cautions.push(
      caution(
        "far-extrapolation",
        "warn",
        "temperatureC",
        "More than 10 °C from the temperature of the known time.",
      ),
    );
  return cautions;
}

/** The baseline's own field, which a condition of that name needs. */
export function needed<T>(name: string, value: T | undefined): T {
  if (value === undefined)
    throw inputError(
      TypeError,
      `compensate/baseline/${name}`,
      "needs-counterpart",
      { path: `/baseline/${name}` },
      undefined,
      `must be given, since conditions.${name} is: what was it for the known time?`,
    );
  return value;
}

function concentrationOf(where: string, dilution: Conditions["dilution"]): number | undefined {
  return dilution === undefined ? undefined : logConcentration(readDilution(where, dilution));
}

/** The term of dilution, when the conditions name one. */
export function dilutionTerm(
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge,
): WorkedTerm | undefined {
  // What the baseline says is read whether or not today says the same: nonsense there must not wait for the
  // day that it counts.
  const before = concentrationOf("compensate/baseline/dilution", baseline.dilution);
  const to = concentrationOf("compensate/conditions/dilution", conditions.dilution);
  if (to === undefined) return undefined;
  const from = needed("dilution", before);
  const [law, basis] = choose("dilution", knowledge.dilution, genericDilutionLaw);
  const value = dilutionRatio("compensate/knowledge/dilution", law)(from, to);
  const factor = row("dilution", value, spreadBetween(law, from, to), law, basis);
  const outside =
    from !== to && law.kind === "table" && (dilutionOverrun(law.rows, from) || dilutionOverrun(law.rows, to));
  return {
    factor,
    cautions: outside
      ? [
          caution(
            "outside-table",
            "warn",
            "dilution",
            "A dilution lies outside the table: its last slope is carried on.",
          ),
        ]
      : [],
  };
}

/** The term of agitation, when the conditions name one. */
export function agitationTerm(
  baseline: Baseline,
  conditions: Conditions,
  knowledge: Knowledge,
): WorkedTerm | undefined {
  const { agitation: from } = baseline;
  const { agitation: to } = conditions;
  if (to === undefined) {
    if (from !== undefined) agitationInterval("compensate/baseline/agitation", from);
    return undefined;
  }
  const [law, basis] = choose("agitation", knowledge.agitation, genericAgitationLaw);
  checkedAgitationLaw("compensate/knowledge/agitation", law);
  const before = agitationSide("compensate/baseline/agitation", needed("agitation", from), law);
  const after = agitationSide("compensate/conditions/agitation", to, law);
  const factor = row("agitation", before.rate / after.rate, spreadOfSides(law, before, after), law, basis);
  const cautions: Caution[] = [];
  if (before.stand !== after.stand)
    cautions.push(caution("stand", "warn", "agitation", "Local exhaustion limits stand: the time is rough."));
  // Continuous and stand are text, without an interval.
  if ((to as { readonly everyS: number }).everyS > LONGEST_INTERVAL_S)
    cautions.push(
      caution("long-interval", "warn", "agitation", "The law of agitation serves intervals up to 3 min."),
    );
  return { factor, cautions };
}

/** The term of use, when the conditions name it. */
export function useTerm(
  { usedCm2PerL: from = 0 }: Baseline,
  { usedCm2PerL: to }: Conditions,
  knowledge: Knowledge,
): WorkedTerm | undefined {
  inRange("compensate/baseline/usedCm2PerL", from, 0, 1e6, "cm2PerL");
  if (to === undefined) return undefined;
  inRange("compensate/conditions/usedCm2PerL", to, 0, 1e6, "cm2PerL");
  const [law, basis] = choose("use", knowledge.use, genericUseLaw);
  const factor = row("use", useFactor(from, to, law), useLogSd(law, from, to), law, basis);
  const { capacityCm2PerL: limit } = law;
  const over =
    limit !== undefined && to > positive("compensate/knowledge/use/capacityCm2PerL", limit, 1e6, "cm2PerL");
  return { factor, cautions: over ? past("capacity", "usedCm2PerL", limit, to) : [] };
}

/**
 * The term of age, when the conditions name it. Past the life of a bath that dies at once the row stands at 1
 * and a caution says stop.
 */
export function ageTerm(
  { ageH: from = 0 }: Baseline,
  { ageH: to }: Conditions,
  { age }: Knowledge,
): WorkedTerm | undefined {
  inRange("compensate/baseline/ageH", from, 0, 1e6, "ageH");
  if (to === undefined) return undefined;
  inRange("compensate/conditions/ageH", to, 0, 1e6, "ageH");
  let logSd = ageLogSd(age, from, to);
  const [law, basis] = choose<LawOrigin>("age", age, { sources: ["no law of age: taken as unchanged"] });
  let value = 1;
  let cautions: readonly Caution[] = [];
  if (age?.kind === "life" && to > age.lifeH) {
    logSd = ageLogSd(age, 0, age.lifeH);
    cautions = past("life", "ageH", age.lifeH, to);
  } else if (age) {
    if (age.kind === "life") {
      if (!(from <= age.lifeH))
        wrongValue("compensate/baseline/ageH", `from 0 to ${age.lifeH} h, the life of the bath`, from, {
          min: 0,
          max: age.lifeH,
          quantity: "ageH",
        });
    }
    value = ageFactor(from, to, age);
  }
  return { factor: row("age", value, logSd, law, basis), cautions };
}

/**
 * The term of a brew's strength, when the conditions carry one, with what brewStrength had to say about it.
 */
export function strengthTerm({ strength }: Conditions): WorkedTerm | undefined {
  if (strength === undefined) return undefined;
  const where = "compensate/conditions/strength";
  checkedOrigin(where, strength);
  const value = positive(where, strength.value, 1e6, undefined, "/value");
  const logSd = inRange(where, strength.logSd, 0, 10, undefined, "/logSd");
  if (typeof strength.basis !== "string") wrongKind(`${where}/basis`, "text", strength.basis);
  const { cautions = [] } = strength as { readonly cautions?: unknown };
  return {
    factor: row("strength", value, logSd, strength, strength.basis),
    cautions: arrayOf(`${where}/cautions`, cautions, 0).map(
      (one) =>
        ({ ...plainObject(where, one, "/cautions"), path: "/conditions/strength" }) as unknown as Caution,
    ),
  };
}
