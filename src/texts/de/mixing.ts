/*
 * How to mix a brew, in German.
 */
import type { MixingStepData } from "../../brew/mixingText.js";
import { countedSpoons } from "../../brew/roundSpoons.js";
import { useBy } from "../../brew/useBy.js";
import type { MixingTexts } from "../../text/mixingTexts.js";
import { cautions } from "./cautions.js";
import { grad, wort, zahl } from "./figures.js";
import { ingredientsTaken } from "./words.js";

/** To a tenth; below one to two digits. */
const kurz = (value: number): string =>
  zahl(value < 1 ? value : Number(value.toFixed(1)), value < 1 ? 2 : 12);

const heaps: Readonly<Record<string, readonly [one: string, many: string]>> = {
  level: ["gestrichenen", "gestrichene"],
  rounded: ["leicht gehäuften", "leicht gehäufte"],
  heaped: ["gehäuften", "gehäufte"],
};

/** What is taken, dissolved or weighed, in the accusative. */
function amount({ ingredient, massG = 0, spoons, spoonMl = 0, heap = "level" }: MixingStepData): string {
  const name = wort(ingredientsTaken, ingredient);
  const grams = `${kurz(massG)} g`;
  if (spoons === undefined) return `${grams} ${name}`;
  const counted = countedSpoons(spoons);
  const filled = heaps[heap]?.[counted === 1 ? 0 : 1] ?? heap;
  return `${zahl(counted, 12)} ${filled} Löffel zu ${kurz(spoonMl)} ml (${grams}) ${name}`;
}

const solution = ({ ingredient, solutionMl = 0, solutionPercent = 0 }: MixingStepData): string =>
  `${kurz(solutionMl)} ml der Lösung von ${kurz(solutionPercent)} % ${wort(ingredientsTaken, ingredient)}`;

const jeGramm = ({ waterMl = 0, massG = 1 }: MixingStepData): string =>
  `${kurz(waterMl / massG)} ml je Gramm`;

const labelled = "Den Becher beschriften: es sieht aus wie Wasser. Was übrig bleibt, von Kindern fernhalten.";

const ersteHilfe =
  "Fließendes Wasser bereithalten. In den Augen: 15 Minuten spülen und zum Arzt. " +
  "Auf der Haut: sofort abspülen.";

function water({ waterMl = 0, cold, inCoffee, sameCup }: MixingStepData): string {
  if (sameCup === true) return "demselben Becher";
  if (inCoffee === true) return `etwas ${cold === true ? "kaltem" : "warmem"} Kaffee`;
  return `${kurz(waterMl)} ml ${cold === true ? "kaltem" : "warmem"} Wasser`;
}

/** All that the mixing of a brew says in German. */
export const mixing: MixingTexts = {
  cautions,
  steps: {
    "stop": () => "Das nicht ansetzen.",
    "protect": () =>
      "Handschuhe und Brille tragen, lüften, keinen Staub machen. " +
      "Nur Geschirr, das nie mehr mit Essen in Berührung kommt, und keines aus Aluminium. " +
      "Sicherheitsdatenblätter gehen vor.",
    "dissolve": (step) => `${amount(step)} in ${water(step)} lösen: Pulver ins Wasser, langsam.`,
    "dissolve-caustic": (step) =>
      `${ersteHilfe} Einen hitzefesten Becher aus Polypropylen nehmen, kein dünnes Glas: es wird heiß. ` +
      `${amount(step)} abwiegen. ` +
      `In ${kurz(step.waterMl ?? 0)} ml kaltes Wasser streuen, ${jeGramm(step)}, ` +
      `sonst nichts in diesem Becher, nach und nach, dabei rühren. ` +
      `Das ist die Lösung von ${kurz(step.solutionPercent ?? 0)} %. ` +
      `Abkühlen lassen. Nie Wasser darauf gießen. Nie in Kaffee oder Vitamin C geben. ` +
      labelled,
    "make-solution": (step) =>
      `${amount(step)} abwiegen. In ${water(step)} lösen, ${jeGramm(step)}. ` +
      `Das ist die Lösung von ${kurz(step.solutionPercent ?? 0)} %. ${labelled}`,
    "take": (step) => `${amount(step)} nehmen.`,
    "join-caustic": (step) =>
      `${ersteHilfe} In Polypropylen abmessen, nicht in dünnem Glas. ` +
      `${solution(step)}, kalt, langsam ins Bad gießen, dabei rühren, vor Kaffee und Vitamin C.`,
    "add-solution": (step) => `${solution(step)} zugeben.`,
    "join": () => "Den Kaffee langsam ins Alkali gießen, dabei rühren.",
    "add-last": (step) =>
      `${amount(step)} in ${water(step)} lösen und abseihen. Zuletzt langsam zugeben.${gas(step.gasL)}`,
    "make-up": ({ volumeMl = 0, temperatureC = 0 }, unit) =>
      `Mit Wasser auf ${kurz(volumeMl)} ml auffüllen und auf ${grad(temperatureC, unit)} bringen.`,
    "rest": ({ minutes = [5, 10], ...step }) =>
      `${minutes.map((one) => zahl(one)).join(" bis ")} min stehen lassen, bis die Blasen weg sind. ` +
      `Nicht für einen anderen Tag aufheben.${life(step)}`,
    "label": () => "Beschriften, von Kindern fernhalten, nach örtlicher Vorschrift entsorgen.",
  },
};

const soonest = {
  "at-once": " Sofort verwenden.",
  "within-the-hour": " Binnen einer Stunde verwenden.",
} as const;

function life({ lifeH, failsH }: Pick<MixingStepData, "lifeH" | "failsH">): string {
  if (lifeH === undefined) return "";
  const soon = useBy(failsH);
  const range =
    failsH === undefined ? "" : ` Es kann von ${failsH.map(kurz).join(" bis ")} h jederzeit versagen.`;
  return ` Es hält etwa ${kurz(lifeH)} h.${range}${soon === undefined ? "" : soonest[soon]}`;
}

function gas(gasL: number | undefined): string {
  return gasL === undefined
    ? ""
    : ` Es schäumt, bis ${kurz(gasL)} l Gas. Ein offenes Gefäß von doppelter Größe nehmen. ` +
        `Nie verschließen, bevor es ruhig ist.`;
}
