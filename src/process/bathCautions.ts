import { gravestFirst, isPast, type Caution } from "../core/caution.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { unreadFields } from "../core/pointer.js";
import { handbookStep, LONGEST_SOFT_WASH } from "../handbook/process.js";
import { temperatureCautions } from "../temperature/temperatureCautions.js";
import { bathTemperatureC, checkedBaths, STEP_OF } from "./baths.js";
import { caution } from "./caution.js";
import { bathContext, blisters, stopKind, type BathContext } from "./context.js";
import { fixCautions } from "./fixCautions.js";
import type { Handling, ProcessBaths, ProcessMaterialFacts } from "./types.js";
import { coldWashFactor, leastWashS, washLengthS } from "./wash.js";

/** What {@link bathCautions} judges. */
export interface BathQuestion extends ProcessMaterialFacts {
  /** °C of the developer, 0 to 100 */
  readonly temperatureC: number;
  /** stop, fix, wash and wetting agent when left out */
  readonly baths?: ProcessBaths | undefined;
  /** volume of the fixing bath, ml, above 0 to 1e6: with `areaCm2` for its capacity */
  readonly volumeMl?: number | undefined;
  /** greatest step between two baths, °C, above 0 to 20 */
  readonly maxStepC?: number | undefined;
}

const ORDER = Object.keys(STEP_OF) as readonly (keyof ProcessBaths)[];

const COMMON = ["durationS", "temperatureC", "dilution"];
const FIELDS: Readonly<Record<keyof ProcessBaths, readonly string[]>> = {
  preSoak: COMMON,
  stop: [...COMMON, "kind"],
  fix: [
    ...COMMON,
    "kind",
    "clearingS",
    "clearingAtC",
    "freshClearingS",
    "times",
    "usedCm2PerL",
    "capacityCm2PerL",
  ],
  clearingAid: COMMON,
  wash: [...COMMON, "method"],
  wettingAgent: COMMON,
};

/** The fields of a bath that are read: paper is fixed by a time of its own, not by clearing times. */
const fieldsOf = ({ material }: BathContext, name: keyof ProcessBaths): readonly string[] =>
  material === "paper" ? FIELDS[name].filter((field) => field !== "times") : FIELDS[name];

/** Temperature cautions that matter in every bath, not only in the developer. */
const IN_EVERY_BATH = ["soft-emulsion-warm", "temperature-limit", "maybe-fahrenheit"];

/** The vessel is nothing to what is judged here. */
const ANY_HANDLING: Handling = { vessel: "tank", movement: "invert", agitation: "stand", drainS: 10 };

/**
 * Cautions about the baths around the developer: steps of temperature, the fixing bath's clearing time and
 * capacity, acid where it does harm, what is missing.
 *
 * @param question - the developer's temperature, the baths, and what is known of the material
 * @returns the cautions, gravest first, with JSON Pointer paths below `/baths`
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range
 *
 * @remarks Baths within 3 °C of each other: US Navy, NAVEDTRA 14262, p. 7-11, has 5 °F, 2.8 °C. The wash
 * within 5 °C (Ilford/Harman, from memory). A sudden step on swollen gelatin reticulates it: Transactions
 * of the SMPE 18, 1924, p. 46; steps of about 10 °C (from memory). A fixing bath is spent at twice its
 * fresh clearing time: US Navy, NAVEDTRA 14209, p. 10-7. Where that was not measured, the handbook's is
 * assumed, and twice as long for plates and iodide-rich films (from memory). A rapid bath serves 20 rolls
 * of 80 square inches in a litre, half of that with iodide-rich films, and ten minutes at most
 * (Brodie-Tyrrell, Fixer Capacity); plain hypo is taken as half of that, the safe side. Acid after
 * carbonate makes gas in the gelatin, acid in plain hypo sulphur and sulphur dioxide (both common
 * knowledge, from memory). Soft gelatin frills after an hour of washing (common practice, the hour from
 * memory).
 *
 * @example
 * ```ts
 * const baths = { fix: { temperatureC: 14, clearingS: 40, times: 3 }, wash: {} };
 * bathCautions({ temperatureC: 20, baths })[0].code // => "temperature-step"
 * ```
 */
export function bathCautions(question: BathQuestion): readonly Caution[] {
  const where = "bathCautions/question";
  plainObject(where, question);
  const temperatureC = inRange(`${where}/temperatureC`, question.temperatureC, 0, 100, "temperatureC");
  const context = bathContext(where, temperatureC, question, ANY_HANDLING);
  const baths = checkedBaths(`${where}/baths`, question.baths);
  return bathsJudged(where, context, baths, question);
}

/** The same of checked baths; `where` is the function that was called and its argument. */
export function bathsJudged(
  where: string,
  context: BathContext,
  baths: ProcessBaths,
  { areaCm2, volumeMl, maxStepC }: Pick<BathQuestion, "areaCm2" | "volumeMl" | "maxStepC">,
): readonly Caution[] {
  const area = areaCm2 === undefined ? 0 : positive(`${where}/areaCm2`, areaCm2, 1e6, "areaCm2");
  const now =
    volumeMl === undefined ? 0 : (1000 * area) / positive(`${where}/volumeMl`, volumeMl, 1e6, "volumeMl");
  const stated =
    maxStepC === undefined
      ? undefined
      : positive(`${where}/maxStepC`, maxStepC, 20, "temperatureDifferenceC");
  const cautions: Caution[] = [...stepCautions(context, baths, stated), ...stopCautions(context, baths)];
  for (const name of ORDER)
    if (baths[name] !== undefined)
      cautions.push(...unreadFields(`/baths/${name}`, baths[name], fieldsOf(context, name)));
  const { fix, stop } = baths;
  if (fix !== undefined && stop === undefined) cautions.push(caution("no-stop", "warn", { path: "/baths" }));
  if (fix === undefined) cautions.push(caution("no-fix", "warn", { path: "/baths" }));
  else cautions.push(...fixCautions(context, fix, now));
  return gravestFirst([...cautions, ...washCautions(context, baths)]);
}

function stepCautions(
  context: BathContext,
  baths: ProcessBaths,
  stated: number | undefined,
): readonly Caution[] {
  const cautions: Caution[] = [];
  const emulsion = context.soft ? "soft" : undefined;
  let beforeC = context.temperatureC;
  for (const name of ORDER) {
    const setting = baths[name];
    if (setting === undefined) continue;
    const nowC = bathTemperatureC(context, setting);
    const path = `/baths/${name}/temperatureC`;
    const limit = stated ?? handbookStep[name === "wash" ? "wash" : "bath"].stepC;
    const actual = Math.abs(nowC - beforeC);
    if (isPast(actual, limit)) {
      const grave = !isPast(handbookStep.reticulation.stepC, actual);
      const quantity = "temperatureDifferenceC";
      const data = { bath: STEP_OF[name] };
      cautions.push(
        caution("temperature-step", grave ? "stop" : "warn", { path, quantity, limit, actual, data }),
      );
    }
    for (const one of temperatureCautions(nowC, { emulsion, path }))
      if (setting.temperatureC !== undefined && IN_EVERY_BATH.includes(one.code)) cautions.push(one);
    // The developer lies between the pre-soak and the rest.
    beforeC = name === "preSoak" ? context.temperatureC : nowC;
  }
  return cautions;
}

/** An acid stop that was asked for where it does harm. */
function stopCautions(context: BathContext, baths: ProcessBaths): readonly Caution[] {
  if (baths.stop === undefined || stopKind(context, baths) !== "acid") return [];
  const path = "/baths/stop/kind";
  const cautions: Caution[] = [];
  if (blisters(context)) cautions.push(caution("acid-stop-blisters", "warn", { path }));
  if (baths.fix?.kind === "plain") cautions.push(caution("acid-into-hypo", "warn", { path }));
  return cautions;
}

function washCautions(context: BathContext, { wash, fix, clearingAid }: ProcessBaths): readonly Caution[] {
  if (wash === undefined) return [caution("no-wash", "warn", { path: "/baths" })];
  const cautions: Caution[] = [];
  if (wash.method === "changes" && (fix?.kind === "plain" || context.material !== "film"))
    cautions.push(caution("wash-unproven", "warn", { path: "/baths/wash/method" }));
  const actual = washLengthS(context, wash, { wash, fix, clearingAid });
  const leastS = leastWashS(context, wash, { fix, clearingAid });
  if (wash.durationS !== undefined && fix !== undefined && isPast(leastS, actual)) {
    const path = "/baths/wash/durationS";
    cautions.push(caution("short-wash", "warn", { path, quantity: "timeS", limit: leastS, actual }));
  }
  const { durationS: limit } = LONGEST_SOFT_WASH;
  if (context.soft && isPast(actual, limit))
    cautions.push(caution("wash-frills", "warn", { path: "/baths/wash", quantity: "timeS", limit, actual }));
  const slow = coldWashFactor(bathTemperatureC(context, wash));
  // What rounds to the usual time is not worth a line.
  if (slow >= 1.05 && wash.durationS === undefined)
    cautions.push(
      caution("cold-wash", "note", { path: "/baths/wash", quantity: "ratio", limit: 1, actual: slow }),
    );
  return cautions;
}
