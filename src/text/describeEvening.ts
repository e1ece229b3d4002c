import type { Caution } from "../core/caution.js";
import type { TemperatureUnit } from "../core/cautionTexts.js";
import { checkedEstimate, LONGEST_ANSWER_S } from "../core/estimate.js";
import { arrayOf, inRange, isText, plainObject } from "../core/guards.js";
import { brewMaterial } from "../brew/brewCapacity.js";
import { cautionPlace, isOfMixing, type CautionPlace } from "../process/cautionPlace.js";
import { checkedPlan } from "../process/checkedPlan.js";
import type { EveningPlan, EveningPlate } from "../process/eveningTypes.js";
import type { ProcessMaterial } from "../process/types.js";
import { clockText, LONGEST_CLOCK_S } from "../quantities/clockText.js";
import { formatTime } from "../quantities/formatTime.js";
import { temperatureUnit, type TemperatureUnitOptions } from "../quantities/parseTemperature.js";
import { cautionSentence } from "./cautionSentence.js";
import { checkedCautions } from "./checkedCautions.js";
import { checkedTexts } from "./checkedTexts.js";
import { materialText, notesAtStep } from "./describePlan.js";
import { eveningTexts, type EveningTexts } from "./eveningTexts.js";

/**
 * An evening of several plates in short lines, to read aloud or to pin to the wall.
 *
 * @param evening - what `planEvening` returned
 * @param texts - the catalogue of another language; English when left out
 * @param options - `unit`: `"C"` or `"F"` for every temperature; °C when left out
 * @returns first the plate that cannot be developed, with what there is to stop for; what there is to take
 * care of, then what holds for every run and how a brew is mixed; for each plate when it begins, its steps,
 * its time with the 90 % interval, and what comes before the next; then the total time, what to have ready,
 * and the notes. Where no plate can be developed there are no times
 * @throws TypeError when `evening` or a part of it is of the wrong kind
 * @throws RangeError when a figure of it is out of range, or the unit none of the two
 *
 * @remarks All times count from the start of the evening. The same sentence is said once, behind the plates
 * that it is about where not all are. Of a bath that the plates need unlike much of, the most is to be ready.
 * `describePlan` has each plan with its cues.
 *
 * @example
 * ```ts
 * const evening = planEvening({
 *   baseline: { timeS: 900, temperatureC: 20 },
 *   conditions: {},
 *   plates: [{ areaCm2: 108, name: "hut" }, { areaCm2: 108 }],
 *   vessel: "tray",
 *   volumeMl: 500,
 * });
 * describeEvening(evening).filter((line) => line.includes("begins.")).length // => 2
 * ```
 */
export function describeEvening(
  evening: EveningPlan,
  texts: EveningTexts = eveningTexts,
  options: TemperatureUnitOptions = {},
): readonly string[] {
  const { plates, stopped, totalS } = checkedEvening("describeEvening/evening", evening);
  checkedTexts("describeEvening/texts", texts, eveningTexts);
  const unit = temperatureUnit("describeEvening/options", options) ?? "C";
  const sentence = (one: Caution): string => cautionSentence(one, texts.cautions, unit);
  const all = stopped === undefined ? plates : [...plates, stopped];
  const said = saidOnce(evening, texts, sentence);
  const lines = (place: CautionPlace): readonly string[] =>
    said.filter(({ caution }) => cautionPlace(caution) === place).map(({ text }) => text);
  const notes = all.flatMap(({ plan }) => plan.benchNotes);
  const bench = (ofMixing: boolean): readonly string[] =>
    unique(
      notes.filter((one) => isOfMixing(one) === ofMixing).map((one) => `${texts.bench}: ${sentence(one)}`),
    );
  const ready = mostOfEach(plates).map((one) => materialText(one, texts));
  return [
    ...(stopped === undefined ? [] : [texts.unplanned(labelOf(stopped, texts))]),
    ...lines("first"),
    ...bench(false),
    ...lines("mixing"),
    ...bench(true),
    ...plates.flatMap((one, i) => plateLines(one, plates[i + 1], texts, unit)),
    ...(plates.length === 0 ? [] : [texts.total(totalS)]),
    ...(ready.length === 0 ? [] : [`${texts.ready}: ${ready.join("; ")}.`]),
    ...lines("last"),
  ];
}

/** Of each bath the most that a plate needs. */
function mostOfEach(plates: readonly EveningPlate[]): readonly ProcessMaterial[] {
  const most = new Map<string, ProcessMaterial>();
  for (const { plan } of plates)
    for (const one of plan.materials)
      if ((one.volumeMl ?? 0) > (most.get(one.name)?.volumeMl ?? -1)) most.set(one.name, one);
  return [...most.values()];
}

const unique = (lines: readonly string[]): readonly string[] => [...new Set(lines)];

const labelOf = ({ plate, name, material }: EveningPlate, texts: EveningTexts): string =>
  texts.plate(material, plate + 1, name);

/** The lines of a plate: when it begins, its steps, and what comes before the next. */
function plateLines(
  one: EveningPlate,
  next: EveningPlate | undefined,
  texts: EveningTexts,
  unit: TemperatureUnit,
): readonly string[] {
  const { startS, answer, plan } = one;
  const { steps, handling, totalS } = plan;
  const clock = (timeS: number): string => clockText(timeS, texts.months);
  const lines = [texts.begins(labelOf(one, texts), startS)];
  for (const one of steps) {
    const { name, durationS, temperatureC, cues, ...step } = one;
    for (const cue of cues.filter((each) => each.do === "top-up" || each.do === "temper"))
      lines.push(
        `  ${formatTime(startS + cue.atS)} ${texts.cue(cue, { step: name, vessel: handling.vessel }, unit)}`,
      );
    const line = texts.step(texts.steps[name], startS + step.startS, durationS, temperatureC, unit);
    const interval = name === "develop" ? `, ${texts.between(clock(answer.lowS), clock(answer.highS))}` : "";
    lines.push(`  ${line}${interval}`);
    for (const note of notesAtStep(one, plan.cautions, startS + step.startS, texts, unit))
      lines.push(`  ${note}`);
  }
  if (next === undefined) return lines;
  const atS = next.startS - startS;
  // What rounds to no second is no step that still runs, and no wait.
  const running = steps.find((step) => step.startS <= atS && atS < step.endS - 0.5);
  const label = labelOf(next, texts);
  if (running !== undefined) lines.push(`  ${texts.during(label, texts.steps[running.name])}`);
  else if (atS - totalS >= 0.5) lines.push(`  ${texts.until(label, atS - totalS)}`);
  return lines;
}

/** A caution, and the plates that have it in the same words. */
interface Said {
  readonly caution: Caution;
  readonly plates: EveningPlate[];
}

/**
 * Each caution of the plates once, stops first, with the plates that have it where not all do. Of the plate
 * that is not planned, what it is stopped for and how its bath is mixed.
 */
function saidOnce(
  { plates, stopped }: EveningPlan,
  texts: EveningTexts,
  sentence: (one: Caution) => string,
): readonly { readonly caution: Caution; readonly text: string }[] {
  const found = new Map<string, Said>();
  const add = (caution: Caution, plate: EveningPlate): void => {
    const key = `${caution.severity} ${sentence(caution)}`;
    const said = found.get(key) ?? { caution, plates: [] };
    if (said.plates.at(-1) !== plate) said.plates.push(plate);
    found.set(key, said);
  };
  const cautionsOf = ({ answer, plan }: EveningPlate): readonly Caution[] => [
    ...answer.cautions,
    ...plan.cautions,
  ];
  if (stopped !== undefined)
    for (const one of cautionsOf(stopped)) if (one.severity === "stop" || isOfMixing(one)) add(one, stopped);
  for (const plate of plates) for (const one of cautionsOf(plate)) add(one, plate);
  return [...found.values()].map(({ caution, plates: having }) => {
    // What is stopped for is of the one plate; what is said while mixing is no news of it alone.
    const of = caution.severity === "stop" ? having : having.filter((one) => one !== stopped);
    const ofAll = caution.severity !== "stop" && (of.length === plates.length || of.length === 0);
    const which = ofAll ? "" : `${rowsOf(of, texts)}: `;
    return { caution, text: `${texts.cautions.severities[caution.severity]}: ${which}${sentence(caution)}` };
  });
}

/** Plates by their labels, each row of three or more by its ends. */
function rowsOf(having: readonly EveningPlate[], texts: EveningTexts): string {
  const rows: EveningPlate[][] = [];
  for (const one of having) {
    const row = rows.at(-1);
    if (row !== undefined && row.at(-1)?.plate === one.plate - 1) row.push(one);
    else rows.push([one]);
  }
  return rows
    .flatMap((row) => {
      const labels = row.map((one) => labelOf(one, texts));
      return labels.length < 3 ? labels : [texts.fromTo(labels[0] as string, labels.at(-1) as string)];
    })
    .join(", ");
}

/** Checks what an evening is read for. */
function checkedEvening(at: string, evening: EveningPlan): EveningPlan {
  const { plates, stopped, totalS } = plainObject(at, evening);
  arrayOf(`${at}/plates`, plates, 0).forEach((one, i) => {
    checkedPlate(`${at}/plates/${i}`, one);
  });
  if (stopped !== undefined) checkedPlate(`${at}/stopped`, stopped);
  inRange(`${at}/totalS`, totalS, 0, LONGEST_CLOCK_S, "timeS");
  return evening;
}

function checkedPlate(at: string, one: unknown): void {
  const { plate, name = "", material, startS, answer, plan } = plainObject(at, one);
  inRange(`${at}/plate`, plate, 0, 1e6, "count");
  isText(`${at}/name`, name);
  brewMaterial(`${at}/material`, material);
  inRange(`${at}/startS`, startS, 0, LONGEST_CLOCK_S, "timeS");
  checkedEstimate(`${at}/answer`, answer, LONGEST_ANSWER_S);
  checkedCautions(`${at}/answer/cautions`, (answer as EveningPlate["answer"]).cautions);
  checkedPlan(`${at}/plan`, plan as EveningPlate["plan"]);
}
