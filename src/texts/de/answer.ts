/*
 * A compensated time in German.
 */
import { readDilution } from "../../dilution/dilution.js";
import { formatDilution } from "../../dilution/formatDilution.js";
import type { AnswerTexts } from "../../text/answerTexts.js";
import { cautions } from "./cautions.js";
import { alter, dativ, grad, stellen, zahl, wort } from "./figures.js";
import { causes, dilution } from "./words.js";

const units: Readonly<Record<string, string>> = {
  use: " cm²/l",
  contrast: "",
};

const agitations: Readonly<Record<string, string>> = { continuous: "ständig", stand: "Stand" };

function side(cause: string, given: unknown, unit: "C" | "F"): string | undefined {
  if (cause === "temperature") return typeof given === "number" ? grad(given, unit) : "ein Bad, das driftet";
  if (cause === "push" && typeof given === "number")
    return Math.abs(given) === 1 ? "1 Blende" : `${zahl(Math.abs(given), 2)} Blenden`;
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
  ratio < 1.995 ? `auf ${percent(ratio - 1)} genau` : `auf einen Faktor ${zahl(ratio, 2)} genau`;

/** All that a compensated time says in German. */
export const answer: AnswerTexts = {
  cautions,
  causes,
  bases: {
    "unchanged": "unverändert",
    "given": "gegeben",
    "handbook": "Handbuch",
    "default": "allgemeine Regel",
    "own-runs": "eigene Läufe",
  },
  side,
  sides: (from, to, cause) =>
    cause === "agitation" ? `statt ${from} ${to}` : `von ${dativ(from)} auf ${to}`,
  change: (factor) => {
    if (Math.abs(factor - 1) < 0.005) return "gleiche Zeit";
    if (factor >= 1.995 || factor < 0.5) return `${zahl(factor, 2)}-mal die Zeit`;
    return factor > 1 ? `${percent(factor - 1)} länger` : `${percent(1 - factor)} kürzer`;
  },
  giveOrTake: within,
  together: (ratio) =>
    `alles zusammen ${within(ratio)}: aus denselben Läufen gelernt, gleichen sich die Fehler zum Teil aus`,
  known: (ratio) => `die bekannte Zeit selbst, ${within(ratio)}`,
  before: (basis) => `zuerst ${basis}`,
  time: (time, low, high) => `${time} entwickeln, mit 90 % Sicherheit zwischen ${low} und ${high}.`,
  refusedTime: (time, low, high) =>
    `Die Gesetze allein ergäben ${time}, mit 90 % Sicherheit zwischen ${low} und ${high}.`,
  refused: "Keine Zeit, nach der zu entwickeln ist:",
  months: "Monate",
};
