import { gravestFirst, isPast, type Caution } from "../core/caution.js";
import { inRange, plainObject, positive } from "../core/guards.js";
import { pointerTo, unreadFields } from "../core/pointer.js";
import { handbookFixers, handbookStep, MODERN_CAPACITY, SPENT_RATIO } from "../handbook/process.js";
import { checkMaterial, temperatureCautions } from "../temperature/temperatureCautions.js";
import {
  bathContext,
  bathDrafts,
  bathTemperatureC,
  checkedBaths,
  coldWashFactor,
  fixing,
  type BathContext,
} from "./bathSteps.js";
import type { FixSetting, ProcessBaths } from "./types.js";

/** What {@link bathCautions} judges. */
export interface BathQuestion {
  /** °C of the developer, 0 to 100 */
  readonly temperatureC: number;
  /** stop, fix, wash and wetting agent when left out */
  readonly baths?: ProcessBaths | undefined;
  /** volume of the fixing bath, ml, and area of the material, cm²: for its capacity */
  readonly volumeMl?: number | undefined;
  readonly areaCm2?: number | undefined;
  readonly modernFilm?: boolean | undefined;
  /** `"soft"`: a plate or an unhardened film */
  readonly emulsion?: "soft" | "hardened" | undefined;
  /** greatest step between two baths, °C, above 0 to 20 */
  readonly maxStepC?: number | undefined;
}

const ORDER = ["preSoak", "stop", "fix", "clearingAid", "wash", "wettingAgent"] as const;

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

/** Temperature cautions that matter in every bath, not only in the developer. */
const IN_EVERY_BATH = ["soft-emulsion-warm", "temperature-limit", "maybe-fahrenheit"];

/**
 * Cautions about the baths around the developer: steps of temperature, the fixing bath's clearing time and
 * capacity, what is missing.
 *
 * @param question - the developer's temperature, the baths, and what is known of the material
 * @returns the cautions, gravest first, with JSON Pointer paths below `/baths`
 * @throws TypeError when a field is of the wrong kind
 * @throws RangeError when a value is out of range
 *
 * @remarks Baths within 2.8 °C (5 °F) of each other: US Navy, NAVEDTRA 14262, p. 7-11; the wash within 5 °C
 * (Ilford/Harman, from memory). A sudden step on swollen gelatin reticulates it: Transactions of the SMPE 18,
 * 1924, p. 46; steps of about 10 °C (from memory). A fixing bath is spent at twice its fresh clearing time:
 * US Navy, NAVEDTRA 14209, p. 10-7. A rapid bath serves 20 rolls of 80 square inches in a litre, half of that
 * with iodide-rich films, and ten minutes at most (Brodie-Tyrrell, Fixer Capacity).
 *
 * @example
 * ```ts
 * bathCautions({ temperatureC: 20, baths: { fix: { temperatureC: 14, clearingS: 40, times: 3 }, wash: {} } })[0].code // => "temperature-step"
 * ```
 */
export function bathCautions(question: BathQuestion): readonly Caution[] {
  plainObject("bathCautions/question", question);
  checkMaterial("bathCautions/question", { emulsion: question.emulsion });
  return bathsJudged("bathCautions", question);
}

/** The same of an object; `where` is the function that was called and the start of a field. */
export function bathsJudged(where: string, question: BathQuestion): readonly Caution[] {
  const temperatureC = inRange(`${where}/temperatureC`, question.temperatureC, 0, 100, "temperatureC");
  const baths = checkedBaths(`${where}/baths`, question.baths);
  const context = bathContext(where, temperatureC, question.modernFilm);
  const { areaCm2, volumeMl, maxStepC } = question;
  const area = areaCm2 === undefined ? 0 : positive(`${where}/areaCm2`, areaCm2, 1e6, "areaCm2");
  const now =
    volumeMl === undefined ? 0 : (1000 * area) / positive(`${where}/volumeMl`, volumeMl, 1e6, "volumeMl");
  const stated =
    maxStepC === undefined ? undefined : positive(`${where}/maxStepC`, maxStepC, 20, "temperatureC");
  bathDrafts(context, baths);
  const cautions: Caution[] = [...stepCautions(context, baths, question, stated)];
  for (const [name, setting] of Object.entries(baths) as [keyof ProcessBaths, object | undefined][])
    if (setting !== undefined)
      cautions.push(...unreadFields(pointerTo("/baths", name), setting, FIELDS[name]));
  const { fix, wash } = baths;
  if (fix === undefined)
    cautions.push({
      code: "no-fix",
      severity: "warn",
      message: "No fixing bath: the image will not last in light.",
      path: "/baths",
    });
  else cautions.push(...fixCautions(context, fix, now));
  if (wash === undefined)
    cautions.push({
      code: "no-wash",
      severity: "warn",
      message: "No wash: fixer left in the gelatin stains and fades.",
      path: "/baths",
    });
  else {
    const slow = coldWashFactor(bathTemperatureC(context, "wash", wash));
    // What rounds to the usual time is not worth a line.
    if (slow >= 1.05 && wash.durationS === undefined)
      cautions.push({
        code: "cold-wash",
        severity: "note",
        message: `Cold water washes slowly: ${slow.toFixed(1)} times the usual time is planned.`,
        path: "/baths/wash",
        actual: slow,
      });
  }
  return gravestFirst(cautions);
}

function stepCautions(
  context: BathContext,
  baths: ProcessBaths,
  { emulsion }: BathQuestion,
  stated: number | undefined,
): readonly Caution[] {
  const cautions: Caution[] = [];
  let beforeC = context.temperatureC;
  for (const name of ORDER) {
    const setting = baths[name];
    if (setting === undefined) continue;
    const nowC = bathTemperatureC(context, name, setting);
    const path = `/baths/${name}/temperatureC`;
    const limit = stated ?? handbookStep[name === "wash" ? "wash" : "bath"].stepC;
    const actual = Math.abs(nowC - beforeC);
    // A hair of rounding is no step: 20 − 17.2 is 2.8000000000000007. Nor does it make ten degrees less: 18.4
    // − 8.4 is 9.999999999999998.
    if (actual > limit + 1e-9)
      cautions.push({
        code: "temperature-step",
        severity: actual >= handbookStep.reticulation.stepC - 1e-9 ? "stop" : "warn",
        message: `A step of ${actual.toFixed(1)} °C to this bath can reticulate the gelatin: bring it within ${limit.toFixed(1)} °C.`,
        path,
        limit,
        actual,
      });
    for (const one of temperatureCautions(nowC, { emulsion, path }))
      if (setting.temperatureC !== undefined && IN_EVERY_BATH.includes(one.code)) cautions.push(one);
    // The developer lies between the pre-soak and the rest.
    beforeC = name === "preSoak" ? context.temperatureC : nowC;
  }
  return cautions;
}

/** `now` is the area of today's material, cm² per litre of the bath. */
function fixCautions(context: BathContext, fix: FixSetting, now: number): readonly Caution[] {
  const where = `${context.where}/fix`;
  const { clearingS, freshS, times, durationS } = fixing(context, fix);
  const { kind = "rapid", usedCm2PerL = 0, capacityCm2PerL: own } = fix;
  const { ceilingS, capacityCm2PerL } = handbookFixers[kind];
  const cautions: Caution[] = [];
  const add = (
    code: string,
    severity: Caution["severity"],
    field: string,
    message: string,
    figures: { limit?: number; actual?: number } = {},
  ): void => {
    cautions.push({ code, severity, message, path: `/baths/fix${field}`, ...figures });
  };
  if (fix.durationS === undefined) {
    if (fix.clearingS === undefined)
      add(
        "clearing-assumed",
        "note",
        "",
        `Clearing time taken as ${clearingS.toFixed(0)} s: measure it with a scrap of the material.`,
      );
    if (fix.times === undefined)
      add(
        "fixing-split",
        "note",
        "",
        `Sources split between two clearing times and three for modern films: ${times} taken.`,
      );
  }
  const least = Math.max(2, times);
  const leastS = least * clearingS;
  if (isPast(leastS, durationS)) {
    const field = fix.durationS === undefined ? "/times" : "/durationS";
    add("short-fix", "warn", field, `Shorter than ${least} clearing times.`, {
      limit: leastS,
      actual: durationS,
    });
  }
  if (ceilingS !== undefined && durationS > ceilingS)
    add(
      "long-fix",
      "warn",
      "",
      "Over ten minutes a rapid fixing bath bleaches fine detail: use a fresh or warmer bath.",
      { limit: ceilingS, actual: durationS },
    );
  // Both at this bath's temperature.
  const spentS = SPENT_RATIO.ratio * freshS;
  if (spentS > 0 && fix.clearingS !== undefined && clearingS >= spentS)
    add("fixer-spent", "stop", "/clearingS", "The bath clears twice as slowly as fresh: it is spent.", {
      limit: spentS,
      actual: clearingS,
    });
  const used = inRange(`${where}/usedCm2PerL`, usedCm2PerL, 0, 1e6, "cm2PerL");
  const share = context.modernFilm ? MODERN_CAPACITY.share : 1;
  const limit =
    own === undefined ? capacityCm2PerL * share : positive(`${where}/capacityCm2PerL`, own, 1e6, "cm2PerL");
  if (isPast(used + now, limit))
    add(
      "fixer-past-capacity",
      isPast(used, limit) ? "stop" : "warn",
      "/usedCm2PerL",
      "The fixing bath is past its capacity with this material: mix fresh.",
      { limit, actual: used + now },
    );
  return cautions;
}
