import { livesUntil } from "../age/livesUntil.js";
import { gravestFirst, refuses } from "../core/caution.js";
import { arrayOf, inRange, plainObject, positive, wrongCount } from "../core/guards.js";
import { lifeOfBrew, ownAge } from "../bath/lifeOfBrew.js";
import { compensate } from "../compensate/compensate.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "../compensate/types.js";
import { pourInC } from "./asAnswered.js";
import { checkedBaths } from "./baths.js";
import type { EveningInput, EveningPlan, EveningPlate, EveningPlateInput } from "./eveningTypes.js";
import { emulsionOf } from "../temperature/emulsionOf.js";
import { inNameOf } from "../core/inNameOf.js";
import { present } from "../core/ordered.js";
import { planOf } from "./planOf.js";
import type { ProcessBaths, ProcessInput, ProcessPlan, StepName } from "./types.js";

const WHERE = "planEvening/input";

const MOST_PLATES = 1000;

/** With these the plate has left the bath that the next one needs. */
const AFTER_FIX: readonly StepName[] = ["clearing-aid", "wash", "wetting-agent"];

/**
 * Several plates from one bath: use and age rise from plate to plate, and each gets its own time and plan.
 *
 * @param input - the known time, the conditions at the start, the plates, vessel, volume and baths
 * @returns the plates that can be developed, each with the bath's state, its answer and its plan; the first
 * that cannot, apart
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range
 *
 * @remarks Each time comes from `compensate`. A plate of A cm² in V ml adds 1000 A/V cm² per litre to the
 * developer and to the fixing bath. A top-up multiplies the developer's use by 1 − topUp/V. Its age stays
 * that of the oldest part. Without a law of age a brew lives as {@link brewLife} says. Each plan says
 * whether the developer is enough for its plate, after those before. Plates are soft unless `emulsion` or the
 * known time says that they are hardened. In trays the next plate starts when the one before has left the
 * fixing bath, in a tank or drum when its plan has ended. Only the first plan has a rest.
 *
 * @example
 * ```ts
 * const evening = planEvening({
 *   baseline: { timeS: 900, temperatureC: 20 },
 *   conditions: {},
 *   plates: [{ areaCm2: 108 }, { areaCm2: 108 }],
 *   vessel: "tray",
 *   volumeMl: 500,
 * });
 * evening.plates.map(({ usedCm2PerL }) => usedCm2PerL) // => [0, 216]
 * ```
 */
export function planEvening(input: EveningInput): EveningPlan {
  plainObject(WHERE, input);
  const { baseline, conditions, knowledge, volumeMl, topUpMl, betweenS = 0, rest } = input;
  plainObject(`${WHERE}/baseline`, baseline);
  plainObject(`${WHERE}/conditions`, conditions);
  positive(`${WHERE}/volumeMl`, volumeMl, 1e6, "volumeMl");
  if (topUpMl !== undefined) positive(`${WHERE}/topUpMl`, topUpMl, volumeMl, "volumeMl");
  inRange(`${WHERE}/betweenS`, betweenS, 0, 86400, "timeS");
  const baths = checkedBaths(`${WHERE}/baths`, input.baths);
  const given = checkedPlates(input.plates);
  const shared = sharedInput(input);
  const startAgeH = atStart(input, "ageH");
  const laws = withLife(input);
  const known = { ...baseline, ...present({ emulsion: shared.emulsion }) };
  let usedCm2PerL = atStart(input, "usedCm2PerL");
  let fixUsedCm2PerL = baths.fix?.usedCm2PerL ?? 0;
  let startS = 0;
  let endS = 0;
  // How long before pour-in a plan starts depends on the baths alone, so any development serves.
  const trial = planOf(WHERE, { ...shared, temperatureC: 20, timeS: 600, agitation: "continuous", rest });
  const plates: EveningPlate[] = [];
  for (const [plate, { areaCm2, conditions: own = {} }] of given.entries()) {
    const first = plate === 0;
    const ageH = startAgeH + (startS + (first ? developStartS(trial) : leadS(trial))) / 3600;
    const today: Conditions = { ...conditions, ...present(own), usedCm2PerL, ageH };
    const answer = withLifeStops(
      inNameOf(WHERE, () => compensate(known, today, laws)),
      input,
      ageH,
    );
    const plan = planOf(WHERE, {
      ...shared,
      ...developing(baseline, today),
      answer,
      areaCm2,
      developer: { use: knowledge?.use, ...input.developer, usedCm2PerL },
      rest: first ? rest : undefined,
      topUpMl: first ? undefined : topUpMl,
      baths: fixedBefore(baths, fixUsedCm2PerL),
    });
    const fixed = baths.fix === undefined ? {} : { fixUsedCm2PerL };
    const one: EveningPlate = { plate, startS, usedCm2PerL, ageH, ...fixed, answer, plan };
    if (hasStop(one)) return { plates, stopped: one, totalS: endS };
    plates.push(one);
    endS = Math.max(endS, startS + plan.totalS);
    startS += freeAtS(plan) + betweenS;
    const added = (1000 * areaCm2) / volumeMl;
    usedCm2PerL = (usedCm2PerL + added) * (1 - (topUpMl ?? 0) / volumeMl);
    fixUsedCm2PerL += added;
  }
  return { plates, totalS: endS };
}

/** Use or age at the start of the evening: the conditions' own, or the baseline's. */
function atStart({ baseline, conditions }: EveningInput, field: "ageH" | "usedCm2PerL"): number {
  const quantity = field === "ageH" ? field : "cm2PerL";
  for (const [name, side] of Object.entries({ conditions, baseline }))
    if (side[field] !== undefined) return inRange(`${WHERE}/${name}/${field}`, side[field], 0, 1e6, quantity);
  return 0;
}

function checkedPlates(plates: unknown): readonly EveningPlateInput[] {
  const list = arrayOf(`${WHERE}/plates`, plates, 1);
  if (list.length > MOST_PLATES) wrongCount(`${WHERE}/plates`, list.length, { most: MOST_PLATES });
  return list.map((one, i) => {
    const at = `${WHERE}/plates/${i}`;
    const { areaCm2, conditions } = plainObject(at, one);
    positive(`${at}/areaCm2`, areaCm2, 1e6, "areaCm2");
    if (conditions !== undefined) plainObject(`${at}/conditions`, conditions);
    return one as EveningPlateInput;
  });
}

/** What is known, with the life of the brew where nothing is known of age. */
function withLife({ baseline, knowledge = {}, developer }: EveningInput): Knowledge {
  plainObject(`${WHERE}/knowledge`, knowledge);
  const age = knowledge.age ?? lifeOfBrew(developer?.brew, baseline.ageH);
  return age === undefined ? knowledge : { ...knowledge, age };
}

/** A brew is dead past its life, also where a known time from an older bath leaves no law of it. */
function withLifeStops(
  answer: Compensation,
  { knowledge, developer }: EveningInput,
  ageH: number,
): Compensation {
  const life = ownAge(knowledge?.age) === undefined ? lifeOfBrew(developer?.brew) : undefined;
  if (life?.kind !== "life" || answer.cautions.some(({ code }) => code === "bath-past-life")) return answer;
  const { timeS, highS } = answer;
  const stops = livesUntil({ lifeH: life.lifeH, ageH, timeS, highS }).filter(
    ({ severity }) => severity === "stop",
  );
  const cautions = gravestFirst([
    ...answer.cautions,
    ...stops.map((one) => ({ ...one, path: "/conditions/ageH" })),
  ]);
  return { ...answer, refused: refuses(cautions), cautions };
}

/** What is for the evening alone. */
const EVENING = ["baseline", "conditions", "knowledge", "plates", "betweenS"];

/** What every plan of the evening takes from the input; a field that is not known goes along, to be named. */
function sharedInput(input: EveningInput): Omit<ProcessInput, "temperatureC"> {
  const shared = Object.entries(input).filter(([field]) => !EVENING.includes(field));
  const { vessel, material = "plate", emulsion = emulsionOf(material, input.baseline.emulsion) } = input;
  return { ...(Object.fromEntries(shared) as Partial<ProcessInput>), vessel, material, emulsion };
}

/** How today's plate is developed: the temperature at pour-in, agitation and dilution. */
function developing(
  baseline: Baseline,
  { temperatureC = baseline.temperatureC, ...today }: Conditions,
): Pick<ProcessInput, "temperatureC" | "agitation" | "dilution"> {
  const { agitation = baseline.agitation, dilution = baseline.dilution } = today;
  return { temperatureC: pourInC(temperatureC), agitation, dilution };
}

const fixedBefore = (baths: ProcessBaths, usedCm2PerL: number): ProcessBaths =>
  baths.fix === undefined ? baths : { ...baths, fix: { ...baths.fix, usedCm2PerL } };

const hasStop = ({ answer, plan }: EveningPlate): boolean => answer.refused || refuses(plan.cautions);

const developStartS = ({ steps }: ProcessPlan): number =>
  (steps.find(({ name }) => name === "develop") as ProcessPlan["steps"][number]).startS;

/** From the start of a plan without a rest to pour-in, s. */
function leadS(plan: ProcessPlan): number {
  const rest = plan.steps.find(({ name }) => name === "rest");
  return developStartS(plan) - (rest?.durationS ?? 0);
}

/** When the vessel that the next plate needs is free, s from the start of the plan. */
function freeAtS({ steps, totalS, handling }: ProcessPlan): number {
  if (handling.vessel !== "tray") return totalS;
  return steps.find(({ name }) => AFTER_FIX.includes(name))?.startS ?? totalS;
}
