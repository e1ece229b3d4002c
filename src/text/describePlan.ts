import { cautionSentence } from "./cautionSentence.js";
import { checkedTexts } from "./checkedTexts.js";
import { formatTime } from "../quantities/formatTime.js";
import type { Caution } from "../core/caution.js";
import type { CautionCode } from "../core/cautionCodes.js";
import type { TemperatureUnit } from "../core/cautionTexts.js";
import { checkedPlan } from "../process/checkedPlan.js";
import type { ProcessMaterial, ProcessPlan, ProcessStep } from "../process/types.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { planTexts, type PlanTexts } from "./planTexts.js";

/** The one note of every run that is over before the plan begins: a fresh brew stands once it is mixed. */
const OF_MIXING: CautionCode = "rest-before-use";

/**
 * A plan in short lines, to read aloud or to pin to the wall.
 *
 * @param plan - a plan of `planProcess`
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for every temperature; °C when left out
 * @returns first what there is to stop for and to take care of, then what holds for every run; a line for
 * each step and each cue, with the time from the start of the plan; a cue that repeats has one line; then the
 * total time, what to have ready, and the notes; each sentence once
 * @throws TypeError when `plan` is not a plan
 * @throws RangeError when a figure of it is out of range, its steps do not join, or the unit is neither
 *
 * @remarks A caution whose code the catalogue does not have keeps its own sentence. How long a fresh brew
 * stands belongs to its mixing, and has no line here.
 *
 * @example
 * ```ts
 * const baths = { stop: { kind: "water" }, fix: { clearingS: 40, times: 3 }, wash: {} } as const;
 * const plan = planProcess({ vessel: "tray", movement: "rock", timeS: 510, temperatureC: 20, baths });
 * const lines = describePlan(plan);
 * lines[0] // => "Always: Wear gloves and glasses. Keep the baths away from food."
 * lines[4] // => "0:00 develop, 8:30 at 20.0 °C"
 * lines[7] // => "  0:00 Rock the tray, each side in turn, for 8:25."
 * ```
 */
export function describePlan(
  plan: ProcessPlan,
  texts: PlanTexts = planTexts,
  options: TemperatureUnitOptions = {},
): readonly string[] {
  checkedPlan("describePlan/plan", plan);
  const unit = temperatureUnit("describePlan/options", options) ?? "C";
  checkedTexts("describePlan/texts", texts, planTexts);
  const { cautions, benchNotes, timeRefused } = plan;
  const { severities } = texts.cautions;
  const sentence = (caution: Caution): string => cautionSentence(caution, texts.cautions, unit);
  const said = (caution: Caution): string => `${severities[caution.severity]}: ${sentence(caution)}`;
  // Two places of the input may have the same sentence.
  const lines = (wanted: (one: Caution) => boolean): ReadonlySet<string> =>
    new Set(cautions.filter(wanted).map(said));
  const below = cautions.some(({ severity }) => severity === "stop");
  return [
    ...(timeRefused ? [`${severities.stop}: ${texts.refused(below)}`] : []),
    ...lines(({ severity }) => severity !== "note"),
    ...benchNotes.filter(({ code }) => code !== OF_MIXING).map((one) => `${texts.bench}: ${sentence(one)}`),
    ...plan.steps.flatMap((step) => stepLines(step, plan, texts, unit)),
    texts.total(plan.totalS),
    `${texts.ready}: ${plan.materials.map((one) => materialText(one, texts)).join("; ")}.`,
    ...lines(({ severity }) => severity === "note"),
  ];
}

/** The line of a step, then its cues; a run of equal sentences becomes one line. */
function stepLines(
  step: ProcessStep,
  { handling }: ProcessPlan,
  texts: PlanTexts,
  unit: TemperatureUnit,
): readonly string[] {
  const { name, startS, durationS, temperatureC, cues } = step;
  const lines = [texts.step(texts.steps[name], startS, durationS, temperatureC, unit)];
  const place = { step: name, vessel: handling.vessel };
  const all = cues.map((cue) => ({ atS: cue.atS, text: texts.cue(cue, place, unit) }));
  for (let i = 0; i < all.length;) {
    const { atS, text } = all[i] as (typeof all)[number];
    const from = i;
    while (all[i]?.text === text) i++;
    const second = all[from + 1] as (typeof all)[number];
    const last = all[i - 1] as (typeof all)[number];
    const again = i - from > 1 ? ` ${texts.repeated(second.atS - atS, last.atS)}` : "";
    lines.push(`  ${formatTime(atS)} ${text}${again}`);
  }
  return lines;
}

/** What a measuring cup shows: three digits, and no less than a tenth, below one millilitre two digits. */
const inCup = (ml: number): number =>
  ml < 1 ? Number(ml.toPrecision(2)) : Number(Number(ml.toPrecision(3)).toFixed(1));

/** Something to have ready, in words. */
export function materialText(
  material: ProcessMaterial,
  { materials, volume, dilution: diluted, stock, water }: PlanTexts,
): string {
  const { name, volumeMl, dilution, stockMl, waterMl, stocksMl = [] } = material;
  const measured = (ml: number): string => volume(inCup(ml));
  // Each of several stocks is measured by itself, in the order of the dilution.
  const stocks = (whole: number): string =>
    (stocksMl.length > 0 ? stocksMl : [whole]).map(measured).join(" + ");
  const parts = [
    materials[name],
    ...(dilution === undefined ? [] : [diluted(dilution)]),
    ...(volumeMl === undefined ? [] : [volume(volumeMl)]),
    ...(stockMl === undefined || waterMl === undefined
      ? []
      : [`(${stocks(stockMl)} ${stock}, ${measured(waterMl)} ${water})`]),
  ];
  return parts.join(" ");
}
