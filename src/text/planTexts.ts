import type { CautionTexts, TemperatureUnit } from "../core/cautionTexts.js";
import { decimals } from "../core/digits.js";
import { cueText, materialTexts, stepTexts, type CuePlace } from "../process/text.js";
import type { PlanCue, ProcessMaterialName, StepName } from "../process/types.js";
import { celsiusToFahrenheit } from "../quantities/celsiusToFahrenheit.js";
import { formatTime } from "../quantities/formatTime.js";
import { englishCautions } from "./englishCautions.js";

/** A catalogue: all that a plan says, in one language. */
export interface PlanTexts {
  /** the steps by name */
  readonly steps: Readonly<Record<StepName, string>>;
  /** what to have ready, by name */
  readonly materials: Readonly<Record<ProcessMaterialName, string>>;
  /** the cautions: how grave they are, and their sentences */
  readonly cautions: CautionTexts;
  /** the sentence of a cue */
  readonly cue: (cue: Omit<PlanCue, "atS" | "text">, place: CuePlace, unit: TemperatureUnit) => string;
  /** the line of a step */
  readonly step: (
    name: string,
    startS: number,
    durationS: number,
    temperatureC: number,
    unit: TemperatureUnit,
  ) => string;
  /** what follows the first of cues that repeat */
  readonly repeated: (everyS: number, untilS: number) => string;
  /** the line of the total time */
  readonly total: (totalS: number) => string;
  /** before the list of what to have ready */
  readonly ready: string;
  /** a volume in ml */
  readonly volume: (volumeMl: number) => string;
  /** a dilution as `formatDilution` writes it */
  readonly dilution: (dilution: string) => string;
  /** "stock" and "water" behind their volumes */
  readonly stock: string;
  /** the word for water */
  readonly water: string;
  /** before a note that holds for every run */
  readonly bench: string;
  /** where the answer that was planned is refused; `below`: what there is to stop for follows */
  readonly refused: (below: boolean) => string;
}

/** The plan in English. */
export const planTexts: PlanTexts = {
  steps: stepTexts,
  materials: materialTexts,
  cautions: englishCautions,
  cue: cueText,
  step: (name, startS, durationS, temperatureC, unit) =>
    `${formatTime(startS)} ${name}, ${formatTime(durationS)} at ` +
    `${decimals(unit === "F" ? celsiusToFahrenheit(temperatureC) : temperatureC)} °${unit}`,
  repeated: (everyS, untilS) => `Every ${interval(everyS)} until ${formatTime(untilS)}.`,
  total: (totalS) => `In all ${formatTime(totalS)}.`,
  ready: "Have ready",
  volume: (volumeMl) => `${Number(volumeMl.toPrecision(4))} ml`,
  dilution: (dilution) => dilution,
  stock: "stock",
  water: "water",
  bench: "Always",
  refused: (below) =>
    `Do not develop a negative: there is no time. ${below ? "The reason is below" : "The answer says why"}.`,
};

/** Whole seconds as a clock shows them; 7.5 s as they are. */
function interval(lengthS: number): string {
  return Math.abs(lengthS - Math.round(lengthS)) < 1e-6
    ? formatTime(lengthS)
    : `${Number(lengthS.toFixed(2))} s`;
}
