/*
 * Room: compensate. One function a cause: from baseline, conditions and knowledge to a row of the answer. The rooms of the causes do the
 * arithmetic; here it is decided which law serves and what it rests on.
 */
import type { Caution } from "../core/caution.js";
import { inRange, positive, wrongKind } from "../core/guards.js";
import { basisOf, checkedOrigin, type Basis, type Factor, type LawOrigin } from "../core/term.js";
import { agitationInterval, agitationSide, checkedAgitationLaw, genericAgitationLaw, LONGEST_INTERVAL_S } from "../agitation/agitation.js";
import { spreadOfSides } from "../agitation/agitationLogSd.js";
import { dilutionRatio, logConcentration, readDilution } from "../dilution/dilution.js";
import { dilutionOverrun, spreadBetween } from "../dilution/dilutionLogSd.js";
import { genericDilutionLaw } from "../dilution/genericDilutionLaw.js";
import { ageFactor } from "../exhaustion/ageFactor.js";
import { ageLogSd } from "../exhaustion/ageLogSd.js";
import { genericUseLaw, useFactor } from "../exhaustion/useFactor.js";
import { useLogSd } from "../exhaustion/useLogSd.js";
import { genericTemperatureLaw } from "../temperature/genericTemperatureLaw.js";
import { checkMaterial, temperatureCautions } from "../temperature/temperatureCautions.js";
import { lawSlope, type TemperatureLaw } from "../temperature/law.js";
import { ratioUnder } from "../temperature/temperatureFactor.js";
import { spreadUnder, tableOverrun } from "../temperature/temperatureLogSd.js";
import type { Baseline, Conditions, Knowledge, WorkedTerm } from "./types.js";

/** A row; where nothing changed, it rests on no law at all. */
export function row(cause: string, value: number, logSd: number, law: LawOrigin, basis: Basis): Factor {
  if (value === 1 && logSd === 0) return { cause, value, logSd, basis: "unchanged", sources: [] };
  const made = { cause, value, logSd, basis, sources: law.sources ?? [] };
  return law.runs === undefined ? made : { ...made, runs: law.runs };
}

export function caution(code: string, severity: Caution["severity"], path: string, message: string): Caution {
  return { code, severity, message, path: `/conditions/${path}` };
}

/** The law to use and what it rests on: the given one, else the generic one. */
export function choose<Law extends LawOrigin>(cause: string, given: Law | undefined, generic: Law): [Law, Basis] {
  return given === undefined ? [generic, "default"] : [given, basisOf(checkedOrigin("compensate: knowledge.", given, cause))];
}

/** The term of temperature; `undefined` for a bath that drifts, whose term waits for the others. */
export function temperatureTerm(baseline: Baseline, conditions: Conditions, knowledge: Knowledge): WorkedTerm | undefined {
  const { temperatureC: from } = baseline;
  const to = conditions.temperatureC ?? from;
  if (typeof to === "object" || typeof to === "function") return undefined;
  inRange("compensate: conditions.temperatureC", to, 0, 100, " °C");
  const [law, basis] = choose("temperature", knowledge.temperature, genericTemperatureLaw);
  const slope = lawSlope("compensate: knowledge.temperature", law);
  const factor = row("temperature", ratioUnder(law, slope, from, to), spreadUnder(law, from, to), law, basis);
  return { factor, cautions: cautionsAt(baseline, to, law) };
}

/** The cautions about a bath at one temperature, against the baseline's. */
export function cautionsAt(baseline: Baseline, to: number, law: TemperatureLaw): Caution[] {
  // Literals rather than spreads: this runs on every call of compensate, and a spread costs as much as all the rest.
  const { hydroquinone, emulsion, temperatureC: from } = baseline;
  checkMaterial("compensate: baseline", baseline);
  const cautions = temperatureCautions(to, { hydroquinone, emulsion, path: "/conditions/temperatureC" }).slice();
  if (from > 45) cautions.push(...temperatureCautions(from, { path: "/baseline/temperatureC" }));
  if (law.kind === "table" && tableOverrun(law.rows, from) + tableOverrun(law.rows, to) > 0)
    cautions.push(caution("outside-table", "warn", "temperatureC", "A temperature lies outside the table: its last slope is carried on."));
  if (Math.abs(to - from) > 10)
    cautions.push(caution("far-extrapolation", "warn", "temperatureC", "More than 10 °C from the temperature of the known time."));
  return cautions;
}

/** The baseline's own field, which a condition of that name needs. */
export function needed<T>(name: string, value: T | undefined): T {
  if (value === undefined)
    throw new TypeError(`compensate: baseline.${name} must be given, since conditions.${name} is: what was it for the known time?`);
  return value;
}

function concentrationOf(where: string, dilution: Conditions["dilution"]): number | undefined {
  return dilution === undefined ? undefined : logConcentration(readDilution(where, dilution));
}

/** The term of dilution, when the conditions name one. */
export function dilutionTerm(baseline: Baseline, conditions: Conditions, knowledge: Knowledge): WorkedTerm | undefined {
  // What the baseline says is read whether or not today says the same: nonsense there must not wait for the day that it counts.
  const before = concentrationOf("compensate: baseline.dilution", baseline.dilution);
  const to = concentrationOf("compensate: conditions.dilution", conditions.dilution);
  if (to === undefined) return undefined;
  const from = needed("dilution", before);
  const [law, basis] = choose("dilution", knowledge.dilution, genericDilutionLaw);
  const value = dilutionRatio("compensate: knowledge.dilution", law)(from, to);
  const factor = row("dilution", value, spreadBetween(law, from, to), law, basis);
  const outside = law.kind === "table" && dilutionOverrun(law.rows, from) + dilutionOverrun(law.rows, to) > 0;
  return {
    factor,
    cautions: outside
      ? [caution("outside-table", "warn", "dilution", "A dilution lies outside the table: its last slope is carried on.")]
      : [],
  };
}

/** The term of agitation, when the conditions name one. */
export function agitationTerm(baseline: Baseline, conditions: Conditions, knowledge: Knowledge): WorkedTerm | undefined {
  const { agitation: from } = baseline;
  const { agitation: to } = conditions;
  if (to === undefined) {
    if (from !== undefined) agitationInterval("compensate: baseline.agitation", from);
    return undefined;
  }
  const [law, basis] = choose("agitation", knowledge.agitation, genericAgitationLaw);
  checkedAgitationLaw("compensate: knowledge.agitation", law);
  const before = agitationSide("compensate: baseline.agitation", needed("agitation", from), law);
  const after = agitationSide("compensate: conditions.agitation", to, law);
  const factor = row("agitation", before.rate / after.rate, spreadOfSides(law, before, after), law, basis);
  const cautions: Caution[] = [];
  if (to === "stand" && factor.basis !== "unchanged")
    cautions.push(caution("stand", "warn", "agitation", "Local exhaustion limits stand development: the time is a rough guide."));
  if ((after.intervalS ?? 0) > LONGEST_INTERVAL_S)
    cautions.push(caution("long-interval", "warn", "agitation", "The law of agitation serves up to 3 min between agitations."));
  return { factor, cautions };
}

/** The term of use, when the conditions name it. */
export function useTerm(baseline: Baseline, conditions: Conditions, knowledge: Knowledge): WorkedTerm | undefined {
  const from = inRange("compensate: baseline.usedCm2PerL", baseline.usedCm2PerL ?? 0, 0, 1e6, " cm²/l");
  if (conditions.usedCm2PerL === undefined) return undefined;
  const to = conditions.usedCm2PerL;
  const [law, basis] = choose("use", knowledge.use, genericUseLaw);
  const factor = row("use", useFactor(law, to) / useFactor(law, from), useLogSd(law, from, to), law, basis);
  const { capacityCm2PerL: limit } = law;
  if (limit === undefined || to <= positive("compensate: knowledge.use.capacityCm2PerL", limit, 1e6, " cm²/l")) return { factor, cautions: [] };
  const past = caution("bath-past-capacity", "stop", "usedCm2PerL", "The bath is past its capacity: mix fresh.");
  return { factor, cautions: [{ ...past, limit, actual: to }] };
}

/** The term of age, when the conditions name it. Past the life of a bath that dies at once the row stands at 1 and a caution says stop. */
export function ageTerm(baseline: Baseline, conditions: Conditions, knowledge: Knowledge): WorkedTerm | undefined {
  const from = inRange("compensate: baseline.ageH", baseline.ageH ?? 0, 0, 1e6, " h");
  if (conditions.ageH === undefined) return undefined;
  const to = inRange("compensate: conditions.ageH", conditions.ageH, 0, 1e6, " h");
  const law = knowledge.age;
  const logSd = ageLogSd(law, from, to);
  if (law === undefined) {
    const sources = ["no law of age: taken as unchanged, with a wide spread"];
    return { factor: row("age", 1, logSd, { sources }, "default"), cautions: [] };
  }
  const basis = basisOf(checkedOrigin("compensate: knowledge.age", law));
  if (law.kind === "life") {
    const { lifeH: limit } = law;
    const past = caution("bath-past-life", "stop", "ageH", "The bath is past its life: mix fresh.");
    if (to > limit) return { factor: row("age", 1, ageLogSd(law, 0, limit), law, basis), cautions: [{ ...past, limit, actual: to }] };
    inRange("compensate: baseline.ageH", from, 0, limit, " h, the life of the bath");
  }
  return { factor: row("age", ageFactor(law, to) / ageFactor(law, from), logSd, law, basis), cautions: [] };
}

/** The term of a brew's strength, when the conditions carry one. */
export function strengthTerm(conditions: Conditions): WorkedTerm | undefined {
  if (conditions.strength === undefined) return undefined;
  const strength = checkedOrigin("compensate: conditions.strength", conditions.strength);
  const value = positive("compensate: conditions.strength.value", strength.value, 1e6, "");
  const logSd = inRange("compensate: conditions.strength.logSd", strength.logSd, 0, 10, "");
  if (typeof strength.basis !== "string") wrongKind("compensate: conditions.strength.basis", "text", strength.basis);
  return { factor: row("strength", value, logSd, strength, strength.basis), cautions: [] };
}
