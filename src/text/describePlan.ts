import { cautionSentence } from "./cautionSentence.js";
import { checkedTexts } from "./checkedTexts.js";
import { formatTime } from "../quantities/formatTime.js";
import type { Caution } from "../core/caution.js";
import type { TemperatureUnit } from "../core/cautionTexts.js";
import { cautionPlace, isOfMixing, type CautionPlace } from "../process/cautionPlace.js";
import { checkedPlan } from "../process/checkedPlan.js";
import type { ProcessMaterial, ProcessPlan, ProcessStep } from "../process/types.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { planTexts, type PlanTexts } from "./planTexts.js";

/**
 * A plan in short lines, to read aloud or to pin to the wall.
 *
 * @param plan - a plan of `planProcess`
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for every temperature; °C when left out
 * @returns first what there is to stop for and to take care of, then what holds for every run and how a brew
 * is mixed; a line for each step and each cue, with the time from the start of the plan; a cue that repeats
 * has one line; then the total time, what to have ready, and the other notes; each sentence once. Where the
 * time is refused there are neither steps nor times
 * @throws TypeError when `plan` is not a plan
 * @throws RangeError when a figure of it is out of range, its steps do not join, or the unit is neither
 *
 * @remarks A caution whose code the catalogue does not have keeps its own sentence. A note that is about one
 * step, such as `stop-gas`, is read there.
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
  const lines = (place: CautionPlace): ReadonlySet<string> =>
    new Set(cautions.filter((one) => cautionPlace(one) === place).map(said));
  const bench = (ofMixing: boolean): readonly string[] =>
    benchNotes.filter((one) => isOfMixing(one) === ofMixing).map((one) => `${texts.bench}: ${sentence(one)}`);
  const below = cautions.some(({ severity }) => severity === "stop");
  return [
    ...(timeRefused ? [`${severities.stop}: ${texts.refused(below)}`] : []),
    ...lines("first"),
    ...bench(false),
    ...lines("mixing"),
    ...bench(true),
    ...(timeRefused ? [] : schedule(plan, texts, unit)),
    ...lines("last"),
  ];
}

/** The steps with their cues, the total time, and what to have ready. */
function schedule(plan: ProcessPlan, texts: PlanTexts, unit: TemperatureUnit): readonly string[] {
  return [
    ...plan.steps.flatMap((step) => stepLines(step, plan, texts, unit)),
    texts.total(plan.totalS),
    `${texts.ready}: ${plan.materials.map((one) => materialText(one, texts)).join("; ")}.`,
  ];
}

/** The line of a step, then what is said of it, and its cues; a run of equal sentences becomes one line. */
function stepLines(
  step: ProcessStep,
  { handling, cautions }: ProcessPlan,
  texts: PlanTexts,
  unit: TemperatureUnit,
): readonly string[] {
  const { name, startS, durationS, temperatureC, cues } = step;
  const lines = [
    texts.step(texts.steps[name], startS, durationS, temperatureC, unit),
    ...notesAtStep(step, cautions, startS, texts, unit),
  ];
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

/** What is said of a step as it begins: a line for each note whose place it is. */
export const notesAtStep = (
  { name }: ProcessStep,
  cautions: readonly Caution[],
  atS: number,
  texts: PlanTexts,
  unit: TemperatureUnit,
): readonly string[] =>
  cautions
    .filter((one) => cautionPlace(one) === name)
    .map((one) => `  ${formatTime(atS)} ${cautionSentence(one, texts.cautions, unit)}`);

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
