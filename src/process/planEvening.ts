import type { AgeLaw } from "../age/law.js";
import { lifeCautions, lifeOfBrew } from "../bath/lifeOfBrew.js";
import { useOf } from "../bath/useOf.js";
import type { DeveloperBrew } from "../brew/brew.js";
import { brewMaterial, type BrewMaterial } from "../brew/brewCapacity.js";
import { compensate } from "../compensate/compensate.js";
import { meantCautions } from "../compensate/meantCautions.js";
import type { Baseline, Compensation, Conditions, Knowledge } from "../compensate/types.js";
import { gravestFirst, refuses, type Caution } from "../core/caution.js";
import { inRange, knownEntry, plainObject, positive } from "../core/guards.js";
import { inNameOf } from "../core/inNameOf.js";
import { present } from "../core/ordered.js";
import { handbookHabits } from "../handbook/process.js";
import { emulsionOf } from "../temperature/emulsionOf.js";
import { pourInC } from "./asAnswered.js";
import { checkedBaths } from "./baths.js";
import { checkedPlates, unreadOfPlate } from "./checkedPlates.js";
import { courseAfter, courseOfPlate, drifted, drifts, leftOf, type Course } from "./eveningCourse.js";
import { brewBench, brewCautions } from "./brewNotes.js";
import { placed, placeIn } from "./eveningPlaces.js";
import type { EveningInput, EveningPlan, EveningPlate, EveningPlateInput } from "./eveningTypes.js";
import { planOf } from "./planOf.js";
import type { ProcessBaths, ProcessInput, ProcessPlan, StepName } from "./types.js";
import { usualMaterial } from "./usualVessel.js";

const WHERE = "planEvening/input";

/** With these the plate has left the bath that the next one needs. */
const AFTER_FIX: readonly StepName[] = ["clearing-aid", "wash", "wetting-agent"];

/**
 * Several plates from one bath: use and age rise from plate to plate, the bath drifts on, and each gets its
 * own time and plan.
 *
 * @param input - the known time, the conditions at the start, the plates, vessel, volume and baths
 * @returns the plates that can be developed, each with the bath's state, its answer and its plan; the first
 * that cannot, apart
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range, a plate states its own use or age, or the bath drifts out
 * of 0 to 100 °C
 *
 * @remarks Each time comes from `compensate`. A plate of A cm² in V ml adds 1000 A/V cm² per litre to the
 * developer and to the fixing bath, whatever its material. A top-up multiplies the developer's use by 1 −
 * topUp/V. Its age stays that of the oldest part. Without a law of age a brew lives as {@link brewLife} says.
 * Each plan says whether the developer is enough for its plate, after those before. Without `material` it is
 * film in a tank or drum and plates in a tray. Plates are soft unless `emulsion` or the known time says that
 * they are hardened. In trays the next plate starts when the one before has left the fixing bath, in a tank
 * or drum when its plan has ended. Only the first plan has a rest. The path of a caution is a place in the
 * input; what the evening has counted by then is about the plate, such as `/plates/3`.
 *
 * A drift or log counts from the first pour-in and goes on from plate to plate; past the last reading that
 * is held. Where it has moved by more than 1 °C, a caution says so. A plate's own drift or log counts from
 * its pour-in, and the later plates go on from there. A plate's own steady temperature is for it alone, but a
 * drift of the evening goes on from it.
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
  const { conditions, volumeMl, topUpMl, betweenS = 0, rest, developer } = input;
  plainObject(`${WHERE}/baseline`, input.baseline);
  plainObject(`${WHERE}/conditions`, conditions);
  positive(`${WHERE}/volumeMl`, volumeMl, 1e6, "volumeMl");
  if (topUpMl !== undefined) positive(`${WHERE}/topUpMl`, topUpMl, volumeMl, "volumeMl");
  inRange(`${WHERE}/betweenS`, betweenS, 0, 86400, "timeS");
  knownEntry(`${WHERE}/vessel`, handbookHabits, input.vessel);
  if (input.material !== undefined) brewMaterial(`${WHERE}/material`, input.material);
  const baths = checkedBaths(`${WHERE}/baths`, input.baths);
  const given = checkedPlates(`${WHERE}/plates`, input.plates);
  const brew = developer?.brew;
  const startAgeH = atStart(input, "ageH");
  let usedCm2PerL = atStart(input, "usedCm2PerL");
  let fixUsedCm2PerL = baths.fix?.usedCm2PerL ?? 0;
  let startS = 0;
  let endS = 0;
  let course: Course | undefined;
  const plates: EveningPlate[] = [];
  for (const [plate, own] of given.entries()) {
    const first = plate === 0;
    const { areaCm2, name, baseline = input.baseline, conditions: stated = {} } = own;
    const shared = sharedInput(input, own);
    const { material } = shared;
    // How long before pour-in a plan starts depends on the baths alone, so any development serves.
    const trial = { ...shared, temperatureC: 20, timeS: 600, agitation: "continuous" } as const;
    const pourInS = startS + developStartS(planOf(WHERE, { ...trial, rest: first ? rest : undefined }));
    course ??= { path: "/conditions/temperatureC", given: conditions.temperatureC, fromS: pourInS };
    const today = courseOfPlate(course, stated.temperatureC, plate, pourInS);
    const left = leftOf(WHERE, today, pourInS);
    const ageH = startAgeH + pourInS / 3600;
    const asked: Conditions = {
      ...sameBath(input.baseline, own.baseline),
      ...present(conditions),
      ...present(stated),
      ...present({ temperatureC: left.course }),
      usedCm2PerL,
      ageH,
    };
    const placeOf = (path: string): string => placeIn(path, plate, input, today);
    const known = { ...present({ hydroquinone: input.baseline.hydroquinone }), ...baseline };
    const laws = withUsual(input, baseline, material);
    const compensated = inNameOf(
      WHERE,
      () => compensate({ ...known, ...present({ emulsion: shared.emulsion }) }, asked, laws),
      placeOf,
    );
    const answer = judged(
      withLife(compensated, input.developer?.brew, laws.age, ageH),
      material,
      placeOf,
      drifted(today, left, compensated),
    );
    const plan = planOf(WHERE, {
      ...shared,
      ...developing({ ...baseline, ...present(input.baseline) }, asked),
      answer,
      areaCm2,
      developer: { use: laws.use, ...input.developer, usedCm2PerL },
      rest: first ? rest : undefined,
      topUpMl: first ? undefined : topUpMl,
      // Between plates a bath that drifts is left to itself.
      startTemperatureC: drifts(today.given) && pourInS > today.fromS ? undefined : input.startTemperatureC,
      baths: fixedBefore(baths, fixUsedCm2PerL),
    });
    const one: EveningPlate = {
      plate,
      ...(name !== undefined && { name }),
      material,
      startS,
      usedCm2PerL,
      ageH,
      ...(baths.fix !== undefined && { fixUsedCm2PerL }),
      answer,
      plan: {
        ...plan,
        cautions: gravestFirst([
          ...placed(plan.cautions, placeOf),
          ...ofBrew(input, answer, plan, shared),
          ...unreadOfPlate(plate, own),
        ]),
        benchNotes: brew === undefined ? plan.benchNotes : brewBench(plan.benchNotes),
      },
    };
    if (hasStop(one)) return { plates, stopped: one, totalS: endS };
    plates.push(one);
    endS = Math.max(endS, startS + plan.totalS);
    course = courseAfter(course, today, startS + developEndS(plan));
    startS += freeAtS(plan) + betweenS;
    const added = (1000 * areaCm2) / volumeMl;
    usedCm2PerL = (usedCm2PerL + added) * (1 - (topUpMl ?? 0) / volumeMl);
    fixUsedCm2PerL += added;
  }
  return { plates, totalS: endS };
}

/** An answer with the cautions that are meant for this material, in their places, and those of the drift. */
function judged(
  answer: Compensation,
  material: BrewMaterial,
  placeOf: (path: string) => string,
  more: readonly Caution[],
): Compensation {
  // The volume is known, so each plan judges the capacity.
  const meant = meantCautions(answer.cautions, { material, capacityKnown: true, keepingKnown: false });
  const cautions = gravestFirst([...placed(meant, placeOf), ...more]);
  return { ...answer, refused: refuses(cautions), cautions };
}

/** One bath for several known times: what conditions leave out is as in the evening's, where both say it. */
function sameBath(evening: Baseline, own: Baseline | undefined): Conditions {
  if (own === undefined) return {};
  const { temperatureC, dilution, agitation } = evening;
  return present({
    temperatureC,
    dilution: own.dilution === undefined ? undefined : dilution,
    agitation: own.agitation === undefined ? undefined : agitation,
  });
}

/** Use or age at the start of the evening: the conditions' own, or the baseline's. */
function atStart({ baseline, conditions }: EveningInput, field: "ageH" | "usedCm2PerL"): number {
  const quantity = field === "ageH" ? field : "cm2PerL";
  for (const [name, side] of Object.entries({ conditions, baseline }))
    if (side[field] !== undefined) return inRange(`${WHERE}/${name}/${field}`, side[field], 0, 1e6, quantity);
  return 0;
}

/** What is known, with the life of the brew and the rule of the material where nothing is known of them. */
function withUsual(
  { knowledge = {}, developer }: EveningInput,
  baseline: Baseline,
  material: BrewMaterial,
): Knowledge {
  plainObject(`${WHERE}/knowledge`, knowledge);
  const age = knowledge.age ?? lifeOfBrew(developer?.brew, baseline.ageH);
  return { ...present(knowledge), ...present({ age, use: useOf(material, knowledge.use) }) };
}

/** An answer with what the life of the brew says beside it. */
function withLife(
  answer: Compensation,
  brew: DeveloperBrew | undefined,
  age: AgeLaw | undefined,
  ageH: number,
): Compensation {
  const found = lifeCautions(answer, { brew, age, ageH });
  if (found.length === 0) return answer;
  const cautions = gravestFirst([
    ...answer.cautions,
    ...found.map((one) => ({ ...one, path: "/conditions/ageH" })),
  ]);
  return { ...answer, refused: refuses(cautions), cautions };
}

/** What is to be minded of the brew, beside what the answer and the plan of a plate have said. */
function ofBrew(
  { developer }: EveningInput,
  answer: Compensation,
  { steps, cautions }: ProcessPlan,
  { material, emulsion }: Pick<ProcessInput, "material" | "emulsion">,
): readonly Caution[] {
  const brew = developer?.brew;
  if (brew === undefined) return [];
  const { temperatureC } = developStep({ steps });
  const said = [...answer.cautions, ...cautions].map(({ code, path }) => `${code} ${path ?? ""}`);
  return inNameOf(WHERE, () =>
    brewCautions(brew, temperatureC, { material, softEmulsion: emulsion === "soft" }),
  )
    .map((one) => ({ ...one, path: `/developer/brew${one.path ?? ""}` }))
    .filter(({ code, path }) => !said.includes(`${code} ${path}`));
}

/** What is for the evening alone. */
const EVENING = ["baseline", "conditions", "knowledge", "plates", "betweenS"];

/** What the plan of a plate takes from the input; a field that is not known goes along, to be named. */
function sharedInput(
  input: EveningInput,
  own: EveningPlateInput,
): Omit<ProcessInput, "temperatureC"> & { readonly material: BrewMaterial } {
  const shared = Object.entries(input).filter(([field]) => !EVENING.includes(field));
  const { vessel } = input;
  const { material: ofAll = usualMaterial(vessel) } = input;
  const { material = ofAll, baseline = input.baseline } = own;
  const { emulsion = emulsionOf(material, baseline.emulsion) } = input;
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

const developStep = ({ steps }: Pick<ProcessPlan, "steps">): ProcessPlan["steps"][number] =>
  steps.find(({ name }) => name === "develop") as ProcessPlan["steps"][number];

const developStartS = (plan: ProcessPlan): number => developStep(plan).startS;

const developEndS = (plan: ProcessPlan): number => developStep(plan).endS;

/** When the vessel that the next plate needs is free, s from the start of the plan. */
function freeAtS({ steps, totalS, handling }: ProcessPlan): number {
  if (handling.vessel !== "tray") return totalS;
  return steps.find(({ name }) => AFTER_FIX.includes(name))?.startS ?? totalS;
}
