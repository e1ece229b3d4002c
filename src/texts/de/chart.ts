/*
 * A chart in German.
 */
import { heldText, type ChartTexts } from "../../chart/text.js";
import type { TimeChartHeld } from "../../chart/types.js";
import { answer } from "./answer.js";
import { cautions } from "./cautions.js";
import { grad } from "./figures.js";
import { dilution } from "./words.js";

const place = (temperature: string, diluted: string | undefined): string =>
  `bei ${temperature}${diluted === undefined ? "" : `, ${dilution(diluted)}`}`;

/** An agitation behind "bei". */
function bewegung(given: unknown): string {
  if (given === "continuous") return "ständiger Bewegung";
  return given === "stand" ? "Standentwicklung" : `Bewegung ${String(answer.side("agitation", given, "C"))}`;
}

/** What every time of a chart counts with, behind "gelten". */
function gehalten(one: TimeChartHeld): string {
  const { cause, to } = one;
  if (cause === "fresh") return "für ein frisches Bad";
  const side = to === undefined ? undefined : answer.side(cause, to, "C");
  if (cause === "age" && side !== undefined) return `für ein ${side} altes Bad`;
  if (cause === "use" && side !== undefined) return `für ein Bad, das schon ${side} entwickelt hat`;
  if (cause === "agitation") return `bei ${bewegung(to)}`;
  return `für ${heldText(one, answer, "")}`;
}

/** All that a chart says in German. */
export const chart: ChartTexts = {
  title: "Wie lange entwickeln",
  known: (time, temperature, diluted) => `Bekannt: ${time} ${place(temperature, diluted)}.`,
  held: (conditions) => `Alle Zeiten gelten ${conditions.map(gehalten).join(", ")}.`,
  interval: "In neun von zehn Fällen liegt die richtige Zeit in der Spanne daneben.",
  noTime: "keine Zeit",
  to: "bis",
  beyond: "Monate",
  where: place,
  cautions,
  more: (count) =>
    count === 1
      ? "Eine weitere Warnung steht in den Daten."
      : `${count} weitere Warnungen stehen in den Daten.`,
  hatched: "Schraffiert: nicht verwenden.",
  drawn: "Der Punkt ist die Zeit, der Strich ihre Spanne, alle im selben Maßstab.",
  safety:
    "Handschuhe, Brille, frische Luft. Gebrauchtes Fixierbad enthält Silber: getrennt sammeln. " +
    "Sicherheitsdatenblätter und örtliche Vorschriften gehen vor.",
  temperature: grad,
  dilution,
};
