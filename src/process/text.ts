/*
 * Module: process. Every English sentence of the plan: each is made from data alone, so that a catalogue of
 * the same shape says it in another language. The parts are apart, so that an app carries only those it
 * needs.
 */
import { ownEntry } from "../core/ownEntry.js";
import type { CautionSeverity } from "../core/caution.js";
import type { CautionSentences, TemperatureUnit } from "../core/cautionTexts.js";
import type { InputWanted } from "../core/errorRules.js";
import { decimals, degrees, degreesApart, digits, isFigure } from "../core/digits.js";
import { lengthText } from "../quantities/lengthText.js";
import type { ProcessVessel } from "../handbook/process.js";
import type { Sensitization } from "../inspection/safelightCautions.js";
import type { PlanCue, ProcessMaterialName, StepName } from "./types.js";

/** The codes of the cautions that this module writes. */
export type ProcessCautionCode =
  | "acid-into-hypo"
  | "acid-stop-blisters"
  | "answer-differs"
  | "bench-acid"
  | "bench-air"
  | "bench-gloves"
  | "clearing-assumed"
  | "cold-wash"
  | "development-rounded"
  | "drain-too-long"
  | "drum-not-turned"
  | "drum-turned"
  | "fixer-capacity-reached"
  | "fixer-past-capacity"
  | "fixer-spent"
  | "fixing-split"
  | "late-pour"
  | "long-fix"
  | "no-fix"
  | "no-stop"
  | "no-wash"
  | "plan-cut-short"
  | "safety-data-sheets"
  | "short-fix"
  | "short-wash"
  | "silver-disposal"
  | "stop-gas"
  | "temperature-step"
  | "wash-frills"
  | "wash-unproven";

/** What a cue's sentence is made from, beside the cue's own data. */
export interface CuePlace {
  /** the step it belongs to */
  readonly step: StepName;
  /** what holds the bath */
  readonly vessel: ProcessVessel;
}

/** A plan that was edited may name a movement or a vessel that is not here. */
const MOVES: Readonly<Record<string, Readonly<Record<string, string>> | undefined>> = {
  invert: { tank: "Invert the tank", tray: "Invert the tray", drum: "Invert the drum" },
  turn: { tank: "Turn the spiral", tray: "Turn the sheets", drum: "Turn the drum" },
  rock: { tank: "Rock the tank", tray: "Rock the tray, each side in turn,", drum: "Rock the drum" },
  shuffle: { tank: "Move the sheets", tray: "Shuffle the sheets", drum: "Move the sheets" },
};

const BATHS: Readonly<Record<StepName, string>> = {
  "rest": "the developer",
  "pre-soak": "plain water",
  "develop": "the developer",
  "stop": "the stop bath",
  "fix": "the fixing bath",
  "clearing-aid": "the clearing aid",
  "wash": "the wash water",
  "wetting-agent": "the wetting agent",
};

const STANDS: Readonly<Partial<Record<StepName, string>>> = {
  "rest": "Let the fresh developer rest until its bubbles are gone.",
  "develop": "Leave it without moving it.",
  "wash": "Leave it in the water.",
  "wetting-agent": "Leave it in the wetting agent.",
};

const LIGHTS = {
  "panchromatic": "complete darkness",
  "orthochromatic": "deep red light at most, weak and not near",
  "blue-sensitive": "amber or red light at most",
} as const;

/** Whether there is a safelight to look by: what is closed, sees all light or is not known has none. */
export const bySafelight = (vessel: ProcessVessel, sensitization: Sensitization | undefined): boolean =>
  vessel === "tray" && sensitization !== undefined && sensitization !== "panchromatic";

/** The sentence of a cue. */
export function cueText(
  cue: Omit<PlanCue, "atS" | "text">,
  { step, vessel }: CuePlace,
  unit: TemperatureUnit = "C",
): string {
  const { durationS = 0, movement, count, data = {} } = cue;
  const inTray = vessel === "tray";
  const move = (movement && MOVES[movement]?.[vessel]) ?? "Move it";
  switch (cue.do) {
    case "pour-in":
      if (inTray && data.pieces !== undefined) return `Slide them into ${BATHS[step]}, one by one.`;
      return inTray ? `Slide it into ${BATHS[step]}.` : `Pour in ${BATHS[step]}.`;
    case "tap":
      return "Tap out the bubbles.";
    case "agitate":
      return count === undefined ? `${move} for ${lengthText(durationS)}.` : `${move} ${count} times.`;
    case "stand":
      return STANDS[step] ?? "Leave it.";
    case "pour-out": {
      const bottle = step === "fix" ? "Pour the fixing bath back into its bottle" : "Pour out";
      const what = inTray ? "Lift out" : bottle;
      return durationS > 0 ? `${what} and drain: this takes ${lengthText(durationS)}.` : `${what}.`;
    }
    case "rinse":
      return durationS > 0 ? "Rinse in several changes of water. Keep it moving." : "Rinse in water.";
    case "check-clear":
      if (vessel === "drum")
        return "It should be clear. If not, pour the fixing bath in again and fix for as long again.";
      return bySafelight(vessel, data.sensitization)
        ? "It should be clear by now: look by the safelight, before white light goes on. " +
            "If not, wait until it is, then fix for as long again."
        : "It should be clear by now. If it is milky, keep it dark until it is clear, " +
            "then fix for as long again.";
    case "fill":
      return "Fill with fresh water.";
    case "run-water":
      return "Wash in running water.";
    case "change-water":
      return "Change the water.";
    case "hang-up":
      return `${data.material === "plate" ? "Stand" : "Hang"} it up to dry without rinsing.`;
    case "light-off": {
      if (inTray && data.sensitization === undefined)
        return data.material === "paper"
          ? "White light off: for paper only the safelight that its maker names."
          : "It is not said what light this material sees: keep it in complete darkness until it is fixed.";
      const light = LIGHTS[data.sensitization ?? "panchromatic"];
      return inTray ? `White light off: ${light}.` : `Loaded in ${light}: keep it closed.`;
    }
    case "light-on":
      if (inTray)
        return data.sensitization === undefined
          ? "White light may go on: half of the fixing is over."
          : "White light may go on.";
      return vessel === "drum" ? "The lid may come off." : "The lid may come off for a look.";
    case "top-up":
      return `Pour off ${ml(data.volumeMl)} of used developer and top up with as much fresh.`;
    case "temper":
      return `Bring the developer to ${degrees(data.temperatureC, unit)}.`;
  }
}

/** A volume to four figures. */
const ml = (volumeMl: unknown): string => `${digits(volumeMl, 4)} ml`;

/** The names of the steps in the middle of a sentence. */
const bathName = (bath: string): string => ownEntry(BATHS, bath) ?? "the next bath";

/** The difference of two figures, where both are there. */
const less = (limit: unknown, actual: unknown): number =>
  isFigure(limit) && isFigure(actual) ? limit - actual : NaN;

/** The names of the steps. */
export const stepTexts: Readonly<Record<StepName, string>> = {
  "rest": "rest",
  "pre-soak": "pre-soak",
  "develop": "develop",
  "stop": "stop",
  "fix": "fix",
  "clearing-aid": "clearing aid",
  "wash": "wash",
  "wetting-agent": "wetting agent",
};

/** The names of what to have ready. */
export const materialTexts: Readonly<Record<ProcessMaterialName, string>> = {
  "developer": "developer",
  "pre-soak water": "pre-soak water",
  "stop bath": "stop bath",
  "stop water": "plain water for the stop",
  "fixing bath": "fixing bath",
  "clearing aid": "clearing aid",
  "wetting agent": "wetting agent",
  "wash water": "wash water",
};

/** How grave a caution is. */
export const severityTexts: Readonly<Record<CautionSeverity, string>> = {
  stop: "Stop",
  warn: "Take care",
  note: "Note",
};

/** What a time is for. */
function sideText(cause: unknown, side: unknown, unit: TemperatureUnit): string {
  if (cause === "temperature") return degrees(side, unit);
  if (cause === "agitation" && side === "stand") return "stand development";
  if (cause === "agitation")
    return isFigure(side) ? `agitation every ${digits(side, 4)} s` : `${String(side)} agitation`;
  return side === "stock" ? "undiluted stock" : `a dilution of ${String(side)}`;
}

/** The sentence of each caution of this module. */
export const processSentences: Pick<CautionSentences, ProcessCautionCode> = {
  "acid-into-hypo": () =>
    "Acid in plain hypo gives off sulphur dioxide and throws down sulphur. Use plain water as the stop.",
  "acid-stop-blisters": () =>
    "Acid after soda makes gas in soft gelatin and can blister it. Use plain water as the stop.",
  "answer-differs": ({ data: { cause, answered, planned } }, unit) =>
    `The time is for ${sideText(cause, answered, unit)}, the plan for ${sideText(cause, planned, unit)}.`,
  "bench-acid": () =>
    "An acid stop is 1 to 2 % acetic or citric acid. Pour acid into water. " +
    "Never take glacial acid or 25 % essence as it comes.",
  "bench-air": () => "Let in fresh air. Stop and fixing baths give off vapours.",
  "bench-gloves": () => "Wear gloves and glasses. Keep the baths away from food.",
  "clearing-assumed": ({ actual }) =>
    `A clearing time of ${lengthText(actual)} is assumed. Measure it with a scrap.`,
  "cold-wash": ({ actual }) =>
    `Cold water washes slowly. ${decimals(actual)} times the usual time is planned.`,
  "development-rounded": ({ limit, actual }) =>
    `Rounding makes ${lengthText(actual)} of a development of ${lengthText(limit)}. Round to a shorter step.`,
  "drain-too-long": ({ limit, actual }) =>
    `Draining takes ${lengthText(actual)}, development ${lengthText(limit)}. Cool or dilute the bath.`,
  "drum-not-turned": () =>
    "A little bath in a lying drum wets only the bottom. Turn it without pause, and take the time for that.",
  "drum-turned": ({ data }, unit) =>
    "A drum is turned without pause, and the time is for that. " +
    `The recipe says ${sideText("agitation", data.agitation, unit)}.`,
  "fixer-capacity-reached": () =>
    "This material takes the fixing bath past its capacity. Use a fresh bath, or more of it.",
  "fixer-past-capacity": () => "The fixing bath is past its capacity. Mix a fresh one.",
  "fixer-spent": ({ limit, actual, data }) =>
    data.assumed === true
      ? `Clears in ${lengthText(actual)}, and ${lengthText(limit / 2)} is assumed for a fresh fixing bath. ` +
        "This one may be spent: check with a fresh bath."
      : `Clears in ${lengthText(actual)}, fresh in ${lengthText(limit / 2)}: the fixing bath is spent.`,
  "fixing-split": ({ data }) =>
    `Some sources say two clearing times, some three. ${digits(data.times)} are planned.`,
  "late-pour": ({ limit, actual }) =>
    `Draining ends ${lengthText(less(limit, actual))} after the development time.`,
  "long-fix": ({ limit }) =>
    `Over ${lengthText(limit)} rapid fixer bleaches fine detail. Use a fresh or a warmer bath.`,
  "no-fix": () => "No fixing bath is planned. The image will not last in light.",
  "no-stop": () =>
    "Neither stop nor rinse is planned before the fixing bath. Developer in it fogs and stains, " +
    "and weakens it. Rinse or stop in between.",
  "no-wash": () => "No wash is planned. Fixer left in the gelatin stains and fades the image.",
  "plan-cut-short": ({ limit, actual }) =>
    `The development would take ${lengthText(actual)}, more than a plan holds. ` +
    `It is planned for ${lengthText(limit)}. Warm or strengthen the bath.`,
  "safety-data-sheets": () => "Local codes and safety data sheets go before this plan.",
  "short-fix": ({ limit, data }) =>
    data.times === undefined
      ? `Fixing is shorter than ${lengthText(limit)}, the least for this material.`
      : `Fixing is shorter than ${digits(data.times)} clearing times (${lengthText(limit)}).`,
  "short-wash": ({ limit }) =>
    `The wash is shorter than ${lengthText(limit)}. Fixer left in the gelatin stains and fades the image.`,
  "silver-disposal": () =>
    "Used fixing bath holds silver. Keep it apart and hand it in where your local code says.",
  "stop-gas": () =>
    "Acid after soda gives off gas, which presses on a closed vessel. Lift the pouring cap once. " +
    "The light trap stays on.",
  "temperature-step": ({ limit, actual, data }, unit) =>
    `${degreesApart(actual, unit)} from the bath before to ${bathName(data.bath)} can reticulate gelatin. ` +
    `Keep the step ${data.bath === "wash" ? "into the wash" : "between baths"} ` +
    `within ${degreesApart(limit, unit)}.`,
  "wash-frills": ({ limit }) =>
    `Soft gelatin can frill or lift after ${lengthText(limit)} in water. ` +
    `Shorten the wash with a clearing aid, or harden in alum before it.`,
  "wash-unproven": () =>
    "Washing by counted inversions is published for film after rapid fixer. Use running water or a soak.",
};

export const agitationsText: InputWanted<"agitations-at-most"> = ({ most, timeS }) =>
  `such that ${timeS} s hold at most ${most} agitations`;

export const leftOutText: InputWanted<"left-out-beside"> = ({ path }) =>
  `left out where ${path.slice(1)} is given`;
