/*
 * A chart in German.
 */
import { heldText, type ChartTexts } from "../../chart/text.js";
import { answer } from "./answer.js";
import { cautions } from "./cautions.js";
import { grad } from "./figures.js";
import { dilution } from "./words.js";

const place = (temperature: string, diluted: string | undefined): string =>
  `bei ${temperature}${diluted === undefined ? "" : `, ${dilution(diluted)}`}`;

/** All that a chart says in German. */
export const chart: ChartTexts = {
  title: "Wie lange entwickeln",
  known: (time, temperature, diluted) => `Bekannt: ${time} ${place(temperature, diluted)}.`,
  held: (conditions) => {
    const all = conditions.map((one) => heldText(one, answer, "ein frisches Bad"));
    return `Alle Zeiten gelten für ${all.join(", ")}.`;
  },
  interval: "In neun von zehn Fällen liegt die richtige Zeit im Intervall daneben.",
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
  drawn: "Der Punkt ist die Zeit, der Strich ihr Intervall, alle im selben Maßstab.",
  safety:
    "Handschuhe, Brille, frische Luft. Gebrauchtes Fixierbad enthält Silber: getrennt sammeln. " +
    "Sicherheitsdatenblätter und örtliche Vorschriften gehen vor.",
  temperature: grad,
  dilution,
};
