/*
 * Module: process. Every English sentence of the plan: each is made from data alone, so that a catalogue of
 * the same shape says it in another language. The parts are apart, so that an app carries only those it
 * needs.
 */
import type { Caution, CautionSeverity } from "../core/caution.js";
import { formatTime } from "../quantities/formatTime.js";
import type { Vessel } from "../handbook/process.js";
import type { Cue, ProcessMaterialName, StepName } from "./types.js";

/** The codes of the cautions that this module writes. */
export type ProcessCautionCode =
  | "acid-into-hypo"
  | "acid-stop-blisters"
  | "bench-air"
  | "bench-gloves"
  | "clearing-assumed"
  | "cold-wash"
  | "drain-too-long"
  | "fixer-capacity-reached"
  | "fixer-past-capacity"
  | "fixer-spent"
  | "fixing-split"
  | "late-pour"
  | "long-fix"
  | "no-fix"
  | "no-wash"
  | "safety-data-sheets"
  | "short-fix"
  | "silver-disposal"
  | "temperature-step"
  | "wash-unproven";

/** What a caution's sentence is made from. */
export type CautionFacts = Pick<Caution, "limit" | "actual" | "data">;

/** What a cue's sentence is made from, beside the cue's own data. */
export interface CuePlace {
  readonly step: StepName;
  readonly vessel: Vessel;
}

/** A catalogue: all that a plan says, in one language. */
export interface PlanTexts {
  readonly steps: Readonly<Record<StepName, string>>;
  readonly materials: Readonly<Record<ProcessMaterialName, string>>;
  readonly severities: Readonly<Record<CautionSeverity, string>>;
  readonly cue: (cue: Omit<Cue, "atS" | "text">, place: CuePlace) => string;
  readonly cautions: Readonly<Record<ProcessCautionCode, (facts: CautionFacts) => string>>;
  /** the line of a step */
  readonly step: (name: string, startS: number, durationS: number, temperatureC: number) => string;
  /** what follows the first of cues that repeat */
  readonly repeated: (everyS: number, untilS: number) => string;
  /** the line of the total time */
  readonly total: (totalS: number) => string;
  /** before the list of what to have ready */
  readonly ready: string;
  /** "stock" and "water" behind their volumes */
  readonly stock: string;
  readonly water: string;
  /** before a note that holds for every run */
  readonly bench: string;
  /** where the answer that was planned is refused */
  readonly refused: string;
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

/** Below a minute in seconds, else as a clock shows it. */
const length = (timeS: number): string => (timeS < 60 ? `${Number(timeS.toFixed(1))} s` : formatTime(timeS));
const given = (figure: unknown): number =>
  typeof figure === "number" && Number.isFinite(figure) ? figure : 0;
const degrees = (differenceC?: number): string => `${given(differenceC).toFixed(1)} °C`;

/** The sentence of a cue. */
export function cueText(cue: Omit<Cue, "atS" | "text">, { step, vessel }: CuePlace): string {
  const { durationS = 0, movement, count, data = {} } = cue;
  const inTray = vessel === "tray";
  const move = (movement && MOVES[movement]?.[vessel]) ?? "Move it";
  switch (cue.do) {
    case "pour-in":
      return inTray ? `Slide it into ${BATHS[step]}.` : `Pour in ${BATHS[step]}.`;
    case "tap":
      return "Tap out the bubbles.";
    case "agitate":
      return count === undefined ? `${move} for ${length(durationS)}.` : `${move} ${count} times.`;
    case "stand":
      return STANDS[step] ?? "Leave it.";
    case "pour-out": {
      const what = inTray ? "Lift out" : "Pour out";
      return durationS > 0 ? `${what} and drain: this takes ${length(durationS)}.` : `${what}.`;
    }
    case "rinse":
      return durationS > 0 ? "Rinse in changed water. Keep it moving." : "Rinse in water.";
    case "check-clear":
      return "It should be clear by now. If not, wait until it is, then fix for as long again.";
    case "fill":
      return "Fill with fresh water.";
    case "run-water":
      return "Wash in running water.";
    case "change-water":
      return "Change the water.";
    case "hang-up":
      return "Hang it up to dry without rinsing.";
    case "light-off": {
      const light = LIGHTS[data.sensitization ?? "panchromatic"];
      return inTray ? `White light off: ${light}.` : `Loaded in ${light}: keep it closed.`;
    }
    case "light-on":
      return inTray ? "White light may go on." : "The lid may come off.";
    case "top-up":
      return `Pour off ${ml(given(data.volumeMl))} of used developer and top up with as much fresh.`;
    case "temper":
      return `Bring the developer to ${degrees(data.temperatureC)}.`;
  }
}

/** A volume to four figures. */
export const ml = (volumeMl: number): string => `${Number(volumeMl.toPrecision(4))} ml`;

/** Whole seconds as a clock shows them; 7.5 s as they are. */
const interval = (lengthS: number): string =>
  Math.abs(lengthS - Math.round(lengthS)) < 1e-6 ? formatTime(lengthS) : `${Number(lengthS.toFixed(2))} s`;

/** The names of the steps in the middle of a sentence. */
const nameOf = (data: CautionFacts["data"]): string =>
  (BATHS as Readonly<Record<string, string | undefined>>)[String(data?.["bath"])] ?? "the next bath";

/** The names of the steps. */
export const stepTexts: PlanTexts["steps"] = {
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
export const materialTexts: PlanTexts["materials"] = {
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
export const severityTexts: PlanTexts["severities"] = { stop: "Stop", warn: "Take care", note: "Note" };

/** The sentence of each caution of this module. */
export const cautionTexts: PlanTexts["cautions"] = {
  "acid-into-hypo": () =>
    "Acid in plain hypo gives off sulphur dioxide and throws down sulphur. Use plain water as the stop.",
  "acid-stop-blisters": () =>
    "Acid after soda makes gas in soft gelatin and can blister it. Use plain water as the stop.",
  "bench-air": () => "Let in fresh air. Stop and fixing baths give off vapours.",
  "bench-gloves": () => "Wear gloves and glasses. Keep the baths away from food.",
  "clearing-assumed": ({ actual }) =>
    `A clearing time of ${length(given(actual))} is assumed. Measure it with a scrap.`,
  "cold-wash": ({ actual }) =>
    `Cold water washes slowly. ${given(actual).toFixed(1)} times the usual time is planned.`,
  "drain-too-long": ({ limit, actual }) =>
    `Draining takes ${length(given(actual))}, development ${length(given(limit))}. Cool or dilute the bath.`,
  "fixer-capacity-reached": () =>
    "This material takes the fixing bath past its capacity. Use a fresh bath, or more of it.",
  "fixer-past-capacity": () => "The fixing bath is past its capacity. Mix a fresh one.",
  "fixer-spent": ({ limit, actual }) =>
    `Clears in ${length(given(actual))}, fresh in ${length(given(limit) / 2)}: the fixing bath is spent.`,
  "fixing-split": ({ data }) =>
    `Some sources say two clearing times, some three. ${given(data?.["times"])} are planned.`,
  "late-pour": ({ limit, actual }) =>
    `Draining ends ${length(given(limit) - given(actual))} after the development time.`,
  "long-fix": ({ limit }) =>
    `Over ${length(given(limit))} rapid fixer bleaches fine detail. Use a fresh or a warmer bath.`,
  "no-fix": () => "No fixing bath is planned. The image will not last in light.",
  "no-wash": () => "No wash is planned. Fixer left in the gelatin stains and fades the image.",
  "safety-data-sheets": () => "Local codes and safety data sheets go before this plan.",
  "short-fix": ({ limit, data }) =>
    `Fixing is shorter than ${given(data?.["times"])} clearing times (${length(given(limit))}).`,
  "silver-disposal": () =>
    "Used fixing bath holds silver. Keep it apart and hand it in where your local code says.",
  "temperature-step": ({ limit, actual, data }) =>
    `${degrees(actual)} from the bath before to ${nameOf(data)} can reticulate gelatin. ` +
    `Keep the step within ${degrees(limit)}.`,
  "wash-unproven": () =>
    "Washing by counted inversions is published for film after rapid fixer. Use running water or a soak.",
};

/** The plan in English. */
export const planTexts: PlanTexts = {
  steps: stepTexts,
  materials: materialTexts,
  severities: severityTexts,
  cue: cueText,
  cautions: cautionTexts,
  step: (name, startS, durationS, temperatureC) =>
    `${formatTime(startS)} ${name}, ${formatTime(durationS)} at ${temperatureC.toFixed(1)} °C`,
  repeated: (everyS, untilS) => `Every ${interval(everyS)} until ${formatTime(untilS)}.`,
  total: (totalS) => `In all ${formatTime(totalS)}.`,
  ready: "Have ready",
  stock: "stock",
  water: "water",
  bench: "Always",
  refused: "The development time is not to be trusted with a negative. The answer says why.",
};
