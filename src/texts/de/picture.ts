/*
 * A picture of an answer in German.
 */
import type { CautionCode } from "../../core/cautionCodes.js";
import { ownEntry } from "../../core/ownEntry.js";
import { DRIFTS } from "./answer.js";
import { comma, dativ } from "./figures.js";
import type { PictureFacts, PictureTexts } from "../../picture/text.js";

const warnings: Readonly<Partial<Record<CautionCode, string>>> = {
  "hydroquinone-cold": "Hydrochinon wird schwach",
  "soft-emulsion-warm": "weiche Gelatine quillt",
  "outside-table": "Ende der Tabelle",
};

const refusals: Readonly<Partial<Record<CautionCode, string>>> = {
  "hydroquinone-cold": "Hydrochinon arbeitet nicht: keine Zeit",
  "soft-emulsion-warm": "weiche Gelatine reißt: keine Zeit",
  "maybe-fahrenheit": "vielleicht °F: keine Zeit",
  "bath-past-life": "über die Lebensdauer: keine Zeit",
  "bath-past-capacity": "verbraucht: keine Zeit",
  "bath-past-keeping": "zu lange aufbewahrt: keine Zeit",
};

/** All that a picture says in German besides causes, bases and changes. */
export const picture: PictureTexts = {
  title: "Kälter dauert länger",
  known: (time) => `bekannt ${time}`,
  today: (temperature) => `heute ${comma(temperature)}`,
  steady: (temperature) => `heute, wie bei gleichmäßig ${comma(temperature)}`,
  thisBath: "dieses Bad",
  asKnown: "wie bekannt",
  warning: (code, side) =>
    ownEntry(warnings, code) ?? (side === "below" ? "kälter als üblich" : "wärmer als üblich"),
  refusal: (code, side) =>
    ownEntry(refusals, code) ??
    (side === undefined ? "keine Zeit" : side === "below" ? "zu kalt: keine Zeit" : "zu warm: keine Zeit"),
  minutes: (minutes, last) => comma(last ? `${minutes} min` : String(minutes)),
  at: (temperature) => `Bei ${comma(temperature)}`,
  said: "wie angegeben",
  colder: (degrees) => `${comma(degrees)} kälter`,
  warmer: (degrees) => `${comma(degrees)} wärmer`,
  drifts: DRIFTS,
  instead: (now, known) => `${now} statt ${known}`,
  use: (now, known) => `${now} schon entwickelt${known === undefined ? "" : ` statt ${known}`}`,
  age: (now, known) => `vor ${dativ(now)} angesetzt${known === undefined ? "" : ` statt ${dativ(known)}`}`,
  yourStrip: "Dein Probestreifen",
  seenToday: "heute gesehen",
  together: "Zusammen",
  to: "bis",
  nothing: "Dafür gibt es keine Rechnung.",
  strip: (count) => `Ein Reststück, ${count} Zeiten.`,
  noStrip: "Kein Probestreifen: seine Enden sähen gleich aus.",
  beyond: "Monate",
  description,
};

function description(facts: PictureFacts): readonly string[] {
  const { fromTime, toTime, fromTemperature, toTemperature, known, today } = facts;
  const { coldest, warmest, warnings: warned, refusals: refused, tableRows, ownRuns, causes } = facts;
  return [
    `Nach rechts läuft die Zeit, logarithmisch von ${fromTime} bis ${toTime}.`,
    `Nach oben steigt die Temperatur von ${comma(fromTemperature)} bis ${comma(toTemperature)}.`,
    `Bekannt sind ${known.time} bei ${comma(known.temperature)}.`,
    today === undefined
      ? "Für heute gibt es keine Zeit."
      : `Heute sind es ${today.time} bei ${today.steady ? "gleichmäßig " : ""}${comma(today.temperature)}, ` +
        `in neun von zehn Fällen ${today.low} bis ${today.high}.`,
    ...(coldest === undefined || warmest === undefined
      ? []
      : [
          `In diesem Bad fällt die Zeit von ${coldest.time} bei ${comma(coldest.temperature)} ` +
            `auf ${warmest.time} bei ${comma(warmest.temperature)}.`,
        ]),
    ...warned.map(({ text, from }) => `Ab ${comma(from)} eine Warnung: ${text}.`),
    ...refused.map(({ text, from, to }) => `Von ${comma(from)} bis ${comma(to)}: ${text}.`),
    ...(tableRows === 0 ? [] : [`Gedruckte Zeilen im Bild: ${tableRows}.`]),
    ...(ownRuns === 0 ? [] : [`Eigene Entwicklungen im Bild: ${ownRuns}.`]),
    ...causes.map(({ cause, change, basis }) => `${cause}: ${change} (${basis}).`),
  ];
}
