/* What the section of the bath says, in both languages. What a cue or a caution says comes from the package. */
import type { Place } from "./bath.js";
import type { StepName } from "darkroom-kinetics";
import type { Language } from "./sheet.js";

const english = {
  heading: "In the bath",
  where: "Where is the negative?",
  places: {
    tank: "In a closed tank",
    red: "In a dish, red lamp",
    amber: "In a dish, amber lamp",
    dark: "In a dish, no light",
  } satisfies Record<Place, string>,
  nothing: "There is no time for this bath, so there is nothing to follow.",
  noSafelight: "A phone is no safelight. Dim it, keep it a metre away, and test it with a coin on a scrap.",
  lamps: {
    red:
      "Red light is for material that does not see red: orthochromatic or blue-sensitive plates, and paper. " +
      "Panchromatic film needs darkness.",
    amber:
      "Amber light is for paper and blue-sensitive material, as its maker says. " +
      "Film and most plates need darkness.",
  } satisfies Partial<Record<Place, string>>,
  stillGlows:
    "A dark screen still glows. Turn the brightness down and lay the phone face down in a drawer. " +
    "Hold the screen for two seconds to come back.",
  starts: "The clock starts ten seconds after you press: slide it in then.",
  startsCalled: "The clock starts ten seconds after you press, and the phone says when.",
  air: "The air around the bath, if you know it:",
  sound: "Cues by sound",
  buzz: "Cues by vibration",
  ready: "Have ready",
  pourIn: { tank: "Pour in", dish: "Slide it in" },
  notYet: "Not yet: start again",
  goBlack: "Make the screen black",
  still: "Leave it still",
  inTime: (time: string, what: string) => `in ${time}: ${what}`,
  left: (time: string) => `for ${time} more`,
  now: (clock: string) => `so far ${clock}`,
  scale: (clock: string, goal: string, low: string, high: string) =>
    `${clock} after it went in, out of the bath after ${goal}, nine times in ten between ${low} and ${high}`,
  between: (low: string, high: string) => `${low} to ${high}`,
  covers: "This range also covers a bath that warms or cools on the way. A reading narrows it.",
  says: "The thermometer says",
  reading: "reading of the thermometer",
  note: "Note it",
  undoReading: (temperature: string) => `Undo: ${temperature}`,
  same: (temperature: string) => `still ${temperature}`,
  moreDoubts: (count: number) =>
    count === 1 ? "Then one more is asked about." : `Then ${count} more are asked about.`,
  untilYouSay: "Nothing changes until you say.",
  isIt: (temperature: string, doubt: string) => `${temperature}? ${doubt}`,
  yes: (temperature: string) => `Yes, ${temperature}`,
  itIs: (temperature: string) => `It is ${temperature}`,
  forget: "No, forget it",
  image: "I see the image",
  seenAt: (clock: string) => `Image seen after ${clock}.`,
  undo: "Undo",
  out: { tank: "Poured out", dish: "Lifted out" },
  outAt: (clock: string) => `Out of the developer after ${clock}.`,
  back: "Undo: it is still in the developer",
  late: "It is in this bath only now",
  bathFor: (name: string, left: string) => `${name}, ${left} left`,
  steps: {
    "rest": "Rest",
    "pre-soak": "Pre-soak",
    "develop": "Developer",
    "stop": "Stop bath",
    "fix": "Fixing bath",
    "clearing-aid": "Clearing aid",
    "wash": "Wash",
    "wetting-agent": "Wetting agent",
  } satisfies Record<StepName, string>,
  over: "Washed. Hang it up to dry.",
  finish: "The run is finished",
  keep: "It waits under “Learned” for how it came out.",
  counted: (count: string, age: string) => `Counted: ${count} before, mixed ${age} ago.`,
  uncount: "Undo: do not count it",
  older: (age: string) => `By the clock it is ${age} old: take that`,
  hold: "The screen is black. Hold it, or the space bar, for two seconds to come back.",
};

export type BathWords = typeof english;

const german: BathWords = {
  heading: "Im Bad",
  where: "Wo ist das Negativ?",
  places: {
    tank: "In geschlossener Dose",
    red: "In der Schale, rotes Licht",
    amber: "In der Schale, gelbes Licht",
    dark: "In der Schale, ohne Licht",
  },
  nothing: "Für dieses Bad gibt es keine Zeit, also nichts zu verfolgen.",
  noSafelight:
    "Ein Telefon ist kein Dunkelkammerlicht. Dimme es, halte einen Meter Abstand, " +
    "und prüfe es mit einer Münze auf einem Probestück.",
  lamps: {
    red:
      "Rotes Licht ist für Material, das Rot nicht sieht: orthochromatische oder blauempfindliche Platten, " +
      "und Papier. Panchromatischer Film braucht Dunkelheit.",
    amber:
      "Gelbes Licht ist für Papier und blauempfindliches Material, wie der Hersteller es sagt. " +
      "Film und die meisten Platten brauchen Dunkelheit.",
  },
  stillGlows:
    "Auch ein schwarzer Bildschirm leuchtet. Stelle ihn ganz dunkel und lege das Telefon umgedreht in eine " +
    "Schublade. Halte zwei Sekunden auf den Bildschirm, um zurückzukommen.",
  starts: "Die Uhr beginnt zehn Sekunden nach dem Druck: dann einlegen.",
  startsCalled: "Die Uhr beginnt zehn Sekunden nach dem Druck; das Telefon gibt das Zeichen.",
  air: "Die Luft um das Bad, wenn du sie kennst:",
  sound: "Zeichen mit Ton",
  buzz: "Zeichen mit Vibration",
  ready: "Bereitstellen",
  pourIn: { tank: "Eingießen", dish: "Einlegen, Uhr startet" },
  notYet: "Noch nicht: von vorn",
  goBlack: "Bildschirm schwarz machen",
  still: "Nicht bewegen",
  inTime: (time, what) => `in ${time}: ${what}`,
  left: (time) => `noch ${time}`,
  now: (clock) => `bisher ${clock}`,
  scale: (clock, goal, low, high) =>
    `${clock} nach dem Einlegen, aus dem Bad nach ${goal}, in 9 von 10 Fällen zwischen ${low} und ${high}`,
  between: (low, high) => `${low} bis ${high}`,
  covers:
    "Dieser Bereich gilt auch für ein Bad, das unterwegs wärmer oder kälter wird. Eine Messung macht ihn enger.",
  says: "Das Thermometer zeigt",
  reading: "Anzeige des Thermometers",
  note: "Eintragen",
  undoReading: (temperature) => `Rückgängig: ${temperature}`,
  same: (temperature) => `noch ${temperature}`,
  moreDoubts: (count) =>
    count === 1 ? "Danach wird nach einer weiteren gefragt." : `Danach wird nach ${count} weiteren gefragt.`,
  untilYouSay: "Bis du antwortest, zählt dieser Messwert nicht.",
  isIt: (temperature, doubt) => `${temperature}? ${doubt}`,
  yes: (temperature) => `Ja, ${temperature}`,
  itIs: (temperature) => `Es sind ${temperature}`,
  forget: "Nein, vergessen",
  image: "Ich sehe das Bild",
  seenAt: (clock) => `Bild gesehen nach ${clock}.`,
  undo: "Rückgängig",
  out: { tank: "Ausgegossen", dish: "Herausgenommen" },
  outAt: (clock) => `Aus dem Entwickler nach ${clock}.`,
  back: "Rückgängig: es ist noch im Entwickler",
  late: "Erst jetzt in diesem Bad",
  bathFor: (name, left) => `${name}, noch ${left}`,
  steps: {
    "rest": "Ruhe",
    "pre-soak": "Vorwässern",
    "develop": "Entwickler",
    "stop": "Stoppbad",
    "fix": "Fixierbad",
    "clearing-aid": "Wässerungshilfe",
    "wash": "Wässerung",
    "wetting-agent": "Netzmittel",
  },
  over: "Gewässert. Zum Trocknen aufhängen.",
  finish: "Fertig",
  keep: "Das Negativ wartet unter „Gelernt“ auf sein Ergebnis.",
  counted: (count, age) => `Gezählt: vorher ${count}, angesetzt vor ${age}.`,
  uncount: "Rückgängig: nicht zählen",
  older: (age) => `Nach der Uhr ist es ${age} alt: übernehmen`,
  hold: "Der Bildschirm ist schwarz. Halte ihn oder die Leertaste zwei Sekunden, um zurückzukommen.",
};

export const bathWordsOf = (language: Language): BathWords => (language === "de" ? german : english);
