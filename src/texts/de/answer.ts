/*
 * A compensated time in German.
 */
import { isNarrow } from "../../core/digits.js";
import { readDilution } from "../../dilution/dilution.js";
import { formatDilution } from "../../dilution/formatDilution.js";
import type { AnswerTexts } from "../../text/answerTexts.js";
import { cautions } from "./cautions.js";
import { alter, blenden, dativ, grad, stellen, zahl, wort } from "./figures.js";
import { causes, dilution } from "./words.js";

/** A bath that drifts, in the place of its temperature. */
export const DRIFTS = "ein Bad, dessen Temperatur sich ändert";

const units: Readonly<Record<string, string>> = {
  use: " cm²/l",
  contrast: "",
};

const agitations: Readonly<Record<string, string>> = { continuous: "ständig", stand: "Stand" };

function side(cause: string, given: unknown, unit: "C" | "F"): string | undefined {
  if (cause === "temperature") return typeof given === "number" ? grad(given, unit) : DRIFTS;
  if (cause === "push" && typeof given === "number") return blenden(Math.abs(given));
  if (cause === "age" && typeof given === "number") return alter(given);
  if (typeof given === "number")
    return Object.hasOwn(units, cause) ? `${zahl(given, 4)}${units[cause] as string}` : undefined;
  if (cause === "dilution") return dilution(formatDilution(readDilution("describeFactor/row/side", given)));
  if (cause !== "agitation") return undefined;
  return typeof given === "string"
    ? wort(agitations, given)
    : `alle ${zahl((given as { readonly everyS: number }).everyS, 4)} s`;
}

const percent = (share: number): string => `${stellen(100 * share, 0)} %`;

const within = (ratio: number): string =>
  isNarrow(ratio) ? `± ${percent(ratio - 1)}` : `Faktor ${zahl(ratio, 2)} mehr oder weniger`;

/** All that a compensated time says in German. */
export const answer: AnswerTexts = {
  cautions,
  causes,
  bases: {
    "unchanged": "unverändert",
    "given": "gegeben",
    "handbook": "Handbuch",
    "default": "allgemeine Regel",
    "own-runs": "eigene Entwicklungen",
  },
  side,
  sides: (from, to, cause) =>
    cause === "agitation" ? `${to} statt ${from}` : `von ${dativ(from)} auf ${to}`,
  change: (factor) => {
    if (Math.abs(factor - 1) < 0.005) return "gleiche Zeit";
    if (factor >= 1.995 || factor < 0.5) return `${zahl(factor, 2)}-mal so lang`;
    return factor > 1 ? `${percent(factor - 1)} länger` : `${percent(1 - factor)} kürzer`;
  },
  giveOrTake: within,
  together: (ratio) =>
    `alles zusammen ${within(ratio)}: ` +
    "aus denselben Entwicklungen gelernt, gleichen sich die Fehler zum Teil aus",
  known: (ratio) => `die bekannte Zeit selbst, ${within(ratio)}`,
  before: (basis) => `anfangs ${basis}`,
  time: (time, low, high) => `${time} entwickeln, mit 90 % Sicherheit zwischen ${low} und ${high}.`,
  refusedTime: (time, low, high) =>
    `Die Gesetze allein ergäben ${time}, mit 90 % Sicherheit zwischen ${low} und ${high}.`,
  refused: "Keine verlässliche Zeit:",
  months: "Monate",
};
