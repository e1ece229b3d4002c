/*
 * A plan in German.
 */
import type { Sensitization } from "../../inspection/safelightCautions.js";
import { bySafelight, type CuePlace } from "../../process/text.js";
import type { PlanCue, ProcessMaterialName, StepName } from "../../process/types.js";
import { celsiusToFahrenheit } from "../../quantities/celsiusToFahrenheit.js";
import { formatTime } from "../../quantities/formatTime.js";
import type { PlanTexts } from "../../text/planTexts.js";
import { cautions } from "./cautions.js";
import { dauer, grad, stellen, zahl } from "./figures.js";
import { dilution, steps } from "./words.js";

/** What is moved, and how; a plan that was edited may name what is not here. */
const moves: Readonly<Record<string, Readonly<Record<string, readonly [what: string, how: string]>>>> = {
  invert: { tank: ["Dose", "kippen"], tray: ["Schale", "kippen"], drum: ["Trommel", "kippen"] },
  turn: { tank: ["Spirale", "drehen"], tray: ["Blätter", "wenden"], drum: ["Trommel", "drehen"] },
  rock: {
    tank: ["Dose", "schaukeln"],
    tray: ["Schale", "schaukeln: reihum jede Seite anheben"],
    drum: ["Trommel", "schaukeln"],
  },
  shuffle: {
    tank: ["Blätter", "bewegen"],
    tray: ["Blätter", "umschichten"],
    drum: ["Blätter", "bewegen"],
  },
};

/** The bath that is poured in, and what something is laid into. */
const baths: Readonly<Record<StepName, readonly [name: string, into: string]>> = {
  "rest": ["Entwickler", "den Entwickler"],
  "pre-soak": ["Reines Wasser", "reines Wasser"],
  "develop": ["Entwickler", "den Entwickler"],
  "stop": ["Stoppbad", "das Stoppbad"],
  "fix": ["Fixierbad", "das Fixierbad"],
  "clearing-aid": ["Wässerungshilfe", "die Wässerungshilfe"],
  "wash": ["Wasser", "das Wasser"],
  "wetting-agent": ["Netzmittel", "das Netzmittel"],
};

const stands: Readonly<Partial<Record<StepName, string>>> = {
  "rest": "Den frischen Entwickler ruhen lassen, bis die Blasen weg sind.",
  "develop": "Ohne Bewegung stehen lassen.",
  "wash": "Im Wasser liegen lassen.",
  "wetting-agent": "Im Netzmittel liegen lassen.",
};

/** What light there may be: alone, and behind "eingelegt". */
const lights: Readonly<Record<Sensitization, readonly [alone: string, loaded: string]>> = {
  "panchromatic": ["völlige Dunkelheit", "in völliger Dunkelheit"],
  "orthochromatic": [
    "höchstens dunkelrotes Licht, schwach und nicht nah",
    "bei höchstens dunkelrotem Licht, schwach und nicht nah",
  ],
  "blue-sensitive": ["höchstens gelbes oder rotes Licht", "bei höchstens gelbem oder rotem Licht"],
};

const materials: Readonly<Record<ProcessMaterialName, string>> = {
  "developer": "Entwickler",
  "pre-soak water": "Wasser zum Vorwässern",
  "stop bath": "Stoppbad",
  "stop water": "reines Wasser zum Stoppen",
  "fixing bath": "Fixierbad",
  "clearing aid": "Wässerungshilfe",
  "wetting agent": "Netzmittel",
  "wash water": "Wasser zum Wässern",
};

const ml = (volumeMl: unknown): string => `${zahl(volumeMl, 4)} ml`;

function cue(
  { do: action, durationS = 0, movement, count, data = {} }: Omit<PlanCue, "atS" | "text">,
  { step, vessel }: CuePlace,
  unit: "C" | "F",
): string {
  const inTray = vessel === "tray";
  switch (action) {
    case "pour-in":
      if (inTray && data.pieces !== undefined) return `Nacheinander in ${baths[step][1]} legen.`;
      return inTray ? `In ${baths[step][1]} legen.` : `${baths[step][0]} eingießen.`;
    case "tap":
      return "Blasen abklopfen.";
    case "agitate": {
      const [what, how] = (movement && moves[movement]?.[vessel]) ?? ["Material", "bewegen"];
      return `${what} ${count === undefined ? `${dauer(durationS)} lang` : `${count}-mal`} ${how}.`;
    }
    case "stand":
      return stands[step] ?? "Stehen lassen.";
    case "pour-out": {
      const bottle = step === "fix" ? "Fixierbad zurück in seine Flasche gießen" : "Ausgießen";
      const what = inTray ? "Herausheben" : bottle;
      return durationS > 0 ? `${what} und abtropfen lassen: das dauert ${dauer(durationS)}.` : `${what}.`;
    }
    case "rinse":
      return durationS > 0 ? "Mit mehrmals gewechseltem Wasser spülen, dabei bewegen." : "Mit Wasser spülen.";
    case "check-clear":
      if (vessel === "drum")
        return "Es sollte klar sein. Sonst das Fixierbad wieder eingießen und noch einmal so lange fixieren.";
      return bySafelight(vessel, data.sensitization)
        ? "Jetzt sollte es klar sein: beim Dunkelkammerlicht nachsehen, bevor weißes Licht angeht. " +
            "Sonst warten, bis es klar ist, und noch einmal so lange fixieren."
        : "Jetzt sollte es klar sein. Ist es noch milchig, bleibt es dunkel, bis es klar ist. " +
            "Dann noch einmal so lange fixieren.";
    case "fill":
      return "Mit frischem Wasser füllen.";
    case "run-water":
      return "In fließendem Wasser wässern.";
    case "change-water":
      return "Wasser wechseln.";
    case "hang-up":
      return `Ohne Abspülen zum Trocknen ${data.material === "plate" ? "aufstellen" : "aufhängen"}.`;
    case "light-off": {
      if (inTray && data.sensitization === undefined)
        return data.material === "paper"
          ? "Weißes Licht aus: für Papier nur das Dunkelkammerlicht, das der Hersteller nennt."
          : "Es ist nicht gesagt, welches Licht dieses Material sieht: in völliger Dunkelheit halten, " +
              "bis es fixiert ist.";
      const [alone, loaded] = lights[data.sensitization ?? "panchromatic"];
      return inTray ? `Weißes Licht aus: ${alone}.` : `Eingelegt ${loaded}: geschlossen halten.`;
    }
    case "light-on":
      if (inTray)
        return data.sensitization === undefined
          ? "Weißes Licht darf an: die halbe Zeit im Fixierbad ist um."
          : "Weißes Licht darf an.";
      return vessel === "drum" ? "Der Deckel darf ab." : "Zum Nachsehen darf der Deckel ab.";
    case "top-up":
      return `${ml(data.volumeMl)} gebrauchten Entwickler abgießen und ebenso viel frischen zugeben.`;
    case "temper":
      return `Entwickler auf ${grad(data.temperatureC, unit)} bringen.`;
  }
}

/** All that a plan says in German. */
export const plan: PlanTexts = {
  steps,
  materials,
  cautions,
  cue,
  step: (name, startS, durationS, temperatureC, unit) =>
    `${formatTime(startS)} ${name}, ${formatTime(durationS)} bei ` +
    `${stellen(unit === "F" ? celsiusToFahrenheit(temperatureC) : temperatureC)} °${unit}`,
  repeated: (everyS, untilS) => `Alle ${intervall(everyS)} bis ${formatTime(untilS)}.`,
  total: (totalS) => `Zusammen ${formatTime(totalS)}.`,
  ready: "Bereitstellen",
  volume: ml,
  dilution,
  stock: "Stammlösung",
  water: "Wasser",
  bench: "Immer",
  refused: (below) =>
    "Kein Negativ entwickeln: es gibt keine Zeit. " +
    (below ? "Der Grund steht darunter." : "Den Grund nennt die Antwort."),
};

/** Whole seconds as a clock shows them; 7.5 s as they are. */
function intervall(lengthS: number): string {
  return Math.abs(lengthS - Math.round(lengthS)) < 1e-6
    ? formatTime(lengthS)
    : `${zahl(Number(lengthS.toFixed(2)), 6)} s`;
}
