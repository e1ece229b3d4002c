/*
 * Every English sentence of a compensated time: each is made from data alone, so that a catalogue of the same
 * shape says it in another language.
 */
import { ownEntry } from "../core/ownEntry.js";
import type { FactorCause } from "../compensate/types.js";
import type { CautionTexts, TemperatureUnit } from "../core/cautionTexts.js";
import { ageText, degrees, isNarrow } from "../core/digits.js";
import type { Basis } from "../core/term.js";
import { readDilution } from "../dilution/dilution.js";
import { formatDilution } from "../dilution/formatDilution.js";
import { englishCautions } from "./englishCautions.js";

/** A catalogue: all that a compensated time says, in one language. */
export interface AnswerTexts {
  /** the cautions: how grave they are, and their sentences */
  readonly cautions: CautionTexts;
  /** the causes, pairs and marks by their names, and the known time itself */
  readonly causes: Readonly<Record<FactorCause | "pull", string>>;
  /** what a factor rests on */
  readonly bases: Readonly<Record<Basis, string>>;
  /** one side of a change, as it was given; nothing where it has no short form */
  readonly side: (cause: string, side: unknown, unit: TemperatureUnit) => string | undefined;
  /** between the two sides of a change, whose cause may decide how they are said */
  readonly sides: (from: string, to: string, cause: string) => string;
  /** what a factor does to the time: in per cent from half to double, "times" outside */
  readonly change: (factor: number) => string;
  /** how well a factor is known: nine in ten lie within `ratio` times more or less */
  readonly giveOrTake: (ratio: number) => string;
  /** the whole, whose parts were learned together and are off against each other */
  readonly together: (ratio: number) => string;
  /** the row of the known time, in the place of what a factor does: nine in ten lie within `ratio` times */
  readonly known: (ratio: number) => string;
  /** what a learned law rested on before */
  readonly before: (basis: string) => string;
  /** the time and its interval, each as a clock shows it */
  readonly time: (time: string, low: string, high: string) => string;
  /** the same where the time is refused */
  readonly refusedTime: (time: string, low: string, high: string) => string;
  /** the first line where the time is refused */
  readonly refused: string;
  /** in the place of a time that no clock shows */
  readonly months: string;
}

/** A share in whole per cent. */
const percent = (share: number): string => `${(share * 100).toFixed(0)} %`;

/** Two figures. */
const short = (value: number): string => String(Number(value.toPrecision(2)));

/** Nine in ten lie within so many times more or less. */
const within = (ratio: number): string =>
  isNarrow(ratio) ? percent(ratio - 1) : `a factor of ${short(ratio)}`;

function englishSide(cause: string, side: unknown, shown: TemperatureUnit): string | undefined {
  if (cause === "temperature" && typeof side === "number") return degrees(side, shown);
  if (cause === "push" && typeof side === "number")
    return Math.abs(side) === 1 ? "1 stop" : `${short(Math.abs(side))} stops`;
  if (cause === "age" && typeof side === "number") return ageText(side);
  const unit = ownEntry(UNITS, cause);
  if (typeof side === "number")
    return unit === undefined ? undefined : `${Number(side.toPrecision(4))}${unit}`;
  if (cause === "dilution") return formatDilution(readDilution("describeFactor/row/side", side));
  if (cause === "temperature") return "a bath that drifts";
  if (cause !== "agitation") return undefined;
  return typeof side === "string" ? side : `every ${(side as { readonly everyS: number }).everyS} s`;
}

const UNITS: Readonly<Record<string, string>> = {
  use: " cm²/l",
  contrast: "",
};

/** A cause by its name; a push below 0 is a pull. A cause that the catalogue does not know keeps its name. */
export function causeText(cause: string, to: unknown, { causes }: Pick<AnswerTexts, "causes">): string {
  const name = cause === "push" && (to as number) < 0 ? "pull" : cause;
  return ownEntry(causes, name) ?? name;
}

/** The English catalogue of a compensated time. */
export const answerTexts: AnswerTexts = {
  cautions: englishCautions,
  causes: {
    baseline: "known time",
    temperature: "temperature",
    dilution: "dilution",
    agitation: "agitation",
    use: "use",
    age: "age",
    strength: "strength",
    contrast: "contrast",
    push: "push",
    pull: "pull",
    interaction: "temperature and dilution together",
    thermometer: "thermometer",
    by: "judged by",
    batch: "batch",
  },
  bases: {
    "unchanged": "unchanged",
    "given": "given",
    "handbook": "handbook",
    "default": "general rule",
    "own-runs": "own runs",
  },
  side: englishSide,
  sides: (from, to) => `${from} to ${to}`,
  change: (factor) => {
    if (Math.abs(factor - 1) < 0.005) return "the same time";
    if (factor >= 1.995 || factor < 0.5) return `${short(factor)} times the time`;
    return factor > 1 ? `${percent(factor - 1)} more` : `${percent(1 - factor)} less`;
  },
  giveOrTake: (ratio) => `give or take ${within(ratio)}`,
  together: (ratio) =>
    `all together good to ${within(ratio)}: learned from the same runs, they are off against each other`,
  known: (ratio) => `the known time itself, good to ${within(ratio)}`,
  before: (basis) => `at first ${basis}`,
  time: (time, low, high) => `Develop ${time}, with 90 % certainty between ${low} and ${high}.`,
  refusedTime: (time, low, high) =>
    `The laws alone would say ${time}, with 90 % certainty between ${low} and ${high}.`,
  refused: "No time to go by:",
  months: "months",
};
