/*
 * How to mix a brew, in German.
 */
import { isMuchGas } from "../../brew/gas.js";
import type { MixingStepData } from "../../brew/mixingText.js";
import type { TemperatureUnit } from "../../core/cautionTexts.js";
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

function water(step: MixingStepData, unit: TemperatureUnit): string {
  const { waterMl = 0, waterC, coffeeMl, cold, inCoffee, sameCup } = step;
  if (sameCup === true) return "demselben Becher";
  const at = waterC === undefined ? "" : ` (${grad(waterC, unit)})`;
  if (inCoffee !== true) return `${kurz(waterMl)} ml ${cold === true ? "kaltem" : "warmem"} Wasser${at}`;
  if (coffeeMl === undefined) return `dem übrigen warmen Kaffee${at}`;
  return `den beiseitegestellten ${kurz(coffeeMl)} ml warmem Kaffee${at}`;
}

const namen = (all: MixingStepData["forIngredients"]): string =>
  Array.isArray(all) ? all.map((one) => wort(ingredientsTaken, one)).join(" und ") : "?";

/** All that the mixing of a brew says in German. */
export const mixing: MixingTexts = {
  cautions,
  steps: {
    "stop": () => "Das nicht ansetzen.",
    "protect": () =>
      "Handschuhe und Brille tragen, lüften, keinen Staub machen. " +
      "Nur Geschirr, das nie mehr mit Essen in Berührung kommt, und keines aus Aluminium. " +
      "Sicherheitsdatenblätter gehen vor.",
    "dissolve": (step, unit) =>
      `${amount(step)} in ${water(step, unit)} lösen: ` +
      `Pulver ${step.inCoffee === true ? "in den Kaffee" : "ins Wasser"}, langsam.`,
    "dissolve-caustic": (step) =>
      `${ersteHilfe} Einen hitzefesten Becher aus Polypropylen nehmen, kein dünnes Glas: es wird heiß. ` +
      `${amount(step)} abwiegen. ` +
      `In ${kurz(step.waterMl ?? 0)} ml kaltes Wasser streuen, ${jeGramm(step)}, ` +
      `sonst nichts in diesem Becher, nach und nach, dabei rühren. ` +
      `Das ist die Lösung von ${kurz(step.solutionPercent ?? 0)} %. ` +
      `Abkühlen lassen. Nie Wasser darauf gießen. Nie in Kaffee oder Vitamin C geben. ` +
      labelled,
    "make-solution": (step, unit) =>
      `${amount(step)} abwiegen. In ${water(step, unit)} lösen, ${jeGramm(step)}. ` +
      `Das ist die Lösung von ${kurz(step.solutionPercent ?? 0)} %. ${labelled}`,
    "take": (step) =>
      step.coffeeMl === undefined
        ? `${amount(step)} nehmen.`
        : `${kurz(step.coffeeMl)} ml ${wort(ingredientsTaken, step.ingredient)} nehmen.`,
    "set-aside": ({ forIngredients, coffeeMl = 0 }) =>
      `Für ${namen(forIngredients)}: ${kurz(coffeeMl)} ml vom Kaffee beiseitestellen.`,
    "join-caustic": (step) =>
      `${ersteHilfe} In Polypropylen abmessen, nicht in dünnem Glas. ` +
      `${solution(step)}, kalt, langsam ins Bad gießen, dabei rühren, vor Kaffee und Vitamin C.`,
    "add-solution": (step) => `${solution(step)} zugeben.`,
    "join": () => "Den Kaffee langsam ins Alkali gießen, dabei rühren.",
    "add-last": (step, unit) =>
      `${amount(step)} in ${water(step, unit)} lösen und abseihen. Zuletzt langsam zugeben.${gas(step)}`,
    "make-up": ({ volumeMl = 0, temperatureC = 0 }, unit) =>
      `Mit Wasser auf ${kurz(volumeMl)} ml auffüllen und auf ${grad(temperatureC, unit)} bringen.`,
    "rest": ({ minutes = [5, 10], ...step }) =>
      `${minutes.map((one) => zahl(one)).join(" bis ")} min stehen lassen, bis die Blasen weg sind. ` +
      `Nicht für einen anderen Tag aufheben.${life(step)}`,
    "label": () => "Beschriften, von Kindern fernhalten, nach örtlicher Vorschrift entsorgen.",
  },
};

const soonest = {
  "at-once": " Sofort beginnen.",
  "within-the-hour": " Binnen einer Stunde beginnen.",
} as const;

function life({ lifeH, failsH }: Pick<MixingStepData, "lifeH" | "failsH">): string {
  if (lifeH === undefined) return "";
  const soon = useBy(failsH);
  const range =
    failsH === undefined ? "" : ` Es kann zwischen ${failsH.map(kurz).join(" und ")} h jederzeit versagen.`;
  return ` Es hält etwa ${kurz(lifeH)} h.${range}${soon === undefined ? "" : soonest[soon]}`;
}

function gas({ gasL, gasLPerL }: MixingStepData): string {
  if (gasL === undefined) return "";
  const care = isMuchGas(gasLPerL)
    ? `Ein Gefäß von doppelter Größe reicht nicht. In kleinen Portionen zugeben und nach jeder warten, ` +
      `bis es ruhig ist. Oder das nicht ansetzen.`
    : `Ein offenes Gefäß von doppelter Größe nehmen.`;
  return ` Es schäumt: bis zu ${kurz(gasL)} l Gas. ${care} Nie verschließen, bevor es ruhig ist.`;
}
