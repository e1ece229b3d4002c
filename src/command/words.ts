/*
 * What the command says besides the sentences of the package, in each language that it speaks.
 */
import { ownEntry } from "../core/ownEntry.js";
import {
  handbookIngredients,
  type BrewMaterial,
  type SpoonHeap,
  type TemperatureUnit,
  type Texts,
} from "../index.js";
import { de } from "../texts/de.js";

/** The words of one language. */
export interface Words {
  /** the catalogues of the package; English when left out */
  readonly texts?: Texts;
  /** the unit that temperatures are shown in */
  readonly unit: TemperatureUnit;
  /** problems beside the first */
  readonly others: (count: number) => string;
  /** a figure as the language writes it */
  readonly figure: (text: string) => string;
  readonly dilution: (text: string) => string;
  readonly known: (time: string, temperature: string, more: string) => string;
  readonly today: (temperature: string) => string;
  readonly noTime: string;
  /** the name of a bath that the command line asks for, and of the known one */
  readonly asAsked: string;
  /** of a day with several baths */
  readonly asAskedElseKnown: string;
  readonly asKnown: string;
  /** the name of a bath that has none, by its place from 1 */
  readonly bath: (place: number) => string;
  /** a developer without a name, behind "in" */
  readonly aBrew: string;
  readonly develop: (time: string, low: string, high: string) => string;
  /** a time in a heading, with its interval */
  readonly pictured: (time: string, interval: string) => string;
  readonly months: string;
  readonly brew: string;
  /** of a brew that notes say nothing of */
  readonly unlearned: string;
  readonly ingredient: (name: string) => string;
  readonly spoons: (count: number, heap: SpoonHeap) => string;
  readonly tablets: (count: number, labelMg: number) => string;
  /** what is said of a shelf */
  readonly shelf: ShelfWords;
  readonly to: string;
  readonly strength: (factor: string) => string;
  readonly table: (rows: readonly number[]) => string;
  readonly deviation: string;
  readonly printed: (printed: string, predicted: string) => string;
  readonly sound: (cautions: number, stop: boolean) => string;
  /** before what holds for every run */
  readonly always: string;
  /** how many runs a file of notes gave */
  readonly notes: (file: string, runs: number) => string;
  /** rows that are of another material or developer */
  readonly leftAside: (count: number) => string;
  /** the same where no other row is left */
  readonly noneAsked: (count: number) => string;
  /** before the rows that give no run, the cells that are left out of one, and the columns not known */
  readonly notRead: string;
  readonly cellsNotRead: string;
  /** before the rows that were read and teach nothing */
  readonly notLearned: string;
  /** why a negative teaches nothing */
  readonly spoilt: Readonly<Record<"failed" | "fogged", string>>;
  readonly columnsNotRead: (headings: string) => string;
  /** rows by their places below the headings, and what is wrong with each of them */
  readonly rows: (rows: readonly number[], wrong: string) => string;
  /** a column that a row of notes lacks */
  readonly column: (field: string) => string;
}

/** What is said of a brew from the shelf. */
interface ShelfWords {
  readonly heading: (volumeMl: string, temperature: string, material: BrewMaterial) => string;
  readonly begin: (time: string, low: string, high: string) => string;
  readonly strip: (times: string) => string;
  readonly lives: (hours: string, cm2: string) => string;
  readonly solution: (volume: string, percent: number) => string;
  /** before what to copy into a day file, and into a recipe */
  readonly forDay: string;
  readonly forRecipe: string;
  readonly none: string;
  readonly helps: (what: string) => string;
  readonly water: Readonly<Record<"more-bath" | "warm-water" | "cool-water", string>>;
}

export type LanguageName = "en" | "de";

const same = (text: string): string => text;

const commas = (text: string): string => text.replace(/(\d)\.(\d)/g, "$1,$2");

const HEAPS: Readonly<Record<SpoonHeap, string>> = {
  level: "gestrichen",
  rounded: "leicht gehäuft",
  heaped: "gehäuft",
};

const MATERIALS: Readonly<Record<BrewMaterial, string>> = { film: "Film", plate: "Platten", paper: "Papier" };

/** The columns that a row may lack. */
const COLUMNS: Readonly<Record<string, string>> = {
  time: "Zeit",
  temperature: "Temperatur",
  outcome: "Ergebnis",
  gamma: "Gradient",
  density: "Dichte",
  wanted: "Soll",
  appearance: "Erscheinen",
  factor: "Faktor",
};

const WORDS: Readonly<Record<LanguageName, Omit<Words, "unit">>> = {
  en: {
    others: (count) => `(and ${count} more: see darkroom-kinetics check)`,
    figure: same,
    dilution: same,
    known: (time, temperature, more) => `Known: ${time} at ${temperature}${more}`,
    today: (temperature) => `today ${temperature}.`,
    noTime: "No time.",
    asAsked: "As asked",
    asAskedElseKnown: "As asked, all else as known",
    asKnown: "As known",
    bath: (place) => `Bath ${place}`,
    aBrew: "a brew",
    develop: (time, low, high) => `Develop ${time}, nine times in ten ${low} to ${high}.`,
    pictured: (time, interval) => `${time}, nine times in ten ${interval}`,
    months: "months",
    brew: "A brew by the spoon",
    unlearned: "The notes do not reach it: its known time is another than that of the day.",
    ingredient: (name) => ownEntry(handbookIngredients, name)?.name ?? name,
    spoons: (count, heap) => `${count} ${heap}`,
    tablets: (count, labelMg) => `${count} of ${labelMg} mg`,
    shelf: {
      heading: (volumeMl, temperature, material) =>
        `From the shelf: ${volumeMl} ml at ${temperature}, for ${material === "plate" ? "plates" : material}`,
      begin: (time, low, high) => `Begin with ${time}, nine times in ten ${low} to ${high}: a guess.`,
      strip: (times) => `First a strip: ${times}.`,
      lives: (hours, cm2) => `It lives about ${hours} h and develops ${cm2} cm².`,
      solution: (volume, percent) => `${volume} of ${percent} %`,
      forDay: "Copied into a file, this begins a day. It says how sure the time is, and what the bath is:",
      forRecipe: "In a recipe, write:",
      none: "No brew.",
      helps: (what) => `What would help: ${what}.`,
      water: { "more-bath": "a larger bath", "warm-water": "warmer water", "cool-water": "cooler water" },
    },
    to: "to",
    strength: (factor) => `strength: time × ${factor}`,
    table: (rows) => `A published table, predicted from its rows ${rows.join(" and ")}`,
    deviation: "standard deviation",
    printed: (printed, predicted) => `printed ${printed}, predicted ${predicted}`,
    sound: (cautions, stop) =>
      (stop ? "valid, but with a stop" : "sound") +
      `${cautions === 0 ? "" : cautions === 1 ? ", one caution" : `, ${cautions} cautions`}.`,
    always: "Always",
    notes: (file, runs) => `${file}: ${runs === 1 ? "one run" : `${runs} runs`} to learn from.`,
    leftAside: (count) =>
      `${count === 1 ? "One row is" : `${count} rows are`} of another material or developer.`,
    noneAsked: (count) =>
      `Take care: No row is of this material and developer. ${count === 1 ? "One is" : `${count} are`} of ` +
      "another. Compare the names with those in the notes.",
    notRead: "Not read, rows counted below the headings:",
    notLearned: "Read, but nothing is learned from them, rows counted below the headings:",
    spoilt: { failed: "it failed.", fogged: "it was fogged." },
    cellsNotRead: "Left out of the run, rows counted below the headings:",
    columnsNotRead: (headings) => `Columns that are not known: ${headings}.`,
    rows: (rows, wrong) => `  ${rows.length === 1 ? "row" : "rows"} ${rows.join(", ")}: ${wrong}`,
    column: same,
  },
  de: {
    texts: de,
    others: (count) => `(und ${count} weitere: siehe darkroom-kinetics check)`,
    figure: commas,
    dilution: (text) => de.plan.dilution(text),
    known: (time, temperature, more) => `Bekannt: ${time} bei ${temperature}${more}`,
    today: (temperature) => `heute ${temperature}.`,
    noTime: "Keine Zeit.",
    asAsked: "Wie gefragt",
    asAskedElseKnown: "Wie gefragt, sonst wie bekannt",
    asKnown: "Wie bekannt",
    bath: (place) => `Bad ${place}`,
    aBrew: "einem Ansatz",
    develop: (time, low, high) => `${time} entwickeln, in neun von zehn Fällen ${low} bis ${high}.`,
    pictured: (time, interval) => `${time}, in neun von zehn Fällen ${interval}`,
    months: "Monate",
    brew: "Ein Ansatz nach Löffeln",
    unlearned: "Die Notizen gelten nicht für ihn: Seine bekannte Zeit ist eine andere als die des Tages.",
    ingredient: (name) => ownEntry(de.ingredients, name) ?? name,
    spoons: (count, heap) => `${commas(String(count))} ${HEAPS[heap]}`,
    tablets: (count, labelMg) => `${commas(String(count))} zu ${commas(String(labelMg))} mg`,
    shelf: {
      heading: (volumeMl, temperature, material) =>
        `Aus dem Vorrat: ${volumeMl} ml bei ${temperature}, für ${MATERIALS[material]}`,
      begin: (time, low, high) =>
        `Mit ${time} beginnen, in neun von zehn Fällen ${low} bis ${high}: eine Schätzung.`,
      strip: (times) => `Zuerst ein Probestreifen: ${times}.`,
      lives: (hours, cm2) => `Er hält etwa ${hours} h und entwickelt ${cm2} cm².`,
      solution: (volume, percent) => `${volume} zu ${percent} %`,
      forDay:
        "In eine Datei kopiert, beginnt damit ein Tag. Es sagt, wie sicher die Zeit ist und was das Bad ist:",
      forRecipe: "In ein Rezept gehört:",
      none: "Kein Ansatz.",
      helps: (what) => `Was helfen würde: ${what}.`,
      water: {
        "more-bath": "ein größeres Bad",
        "warm-water": "wärmeres Wasser",
        "cool-water": "kühleres Wasser",
      },
    },
    to: "bis",
    strength: (factor) => `Stärke: Zeit × ${factor}`,
    table: (rows) => `Eine gedruckte Tabelle, vorhergesagt aus ihren Zeilen ${rows.join(" und ")}`,
    deviation: "Standardabweichung",
    printed: (printed, predicted) => `gedruckt ${printed}, vorhergesagt ${predicted}`,
    sound: (cautions, stop) =>
      (stop ? "gültig, aber mit Halt" : "in Ordnung") +
      `${cautions === 0 ? "" : cautions === 1 ? ", eine Meldung" : `, ${cautions} Meldungen`}.`,
    always: de.plan.bench,
    notes: (file, runs) =>
      `${file}: gelernt wird aus ${runs === 1 ? "einer Entwicklung" : `${runs} Entwicklungen`}.`,
    leftAside: (count) =>
      `${count === 1 ? "Eine Zeile ist" : `${count} Zeilen sind`} von anderem Material oder Entwickler.`,
    noneAsked: (count) =>
      "Vorsicht: Keine Zeile ist von diesem Material und Entwickler. " +
      `Von anderem ${count === 1 ? "ist eine" : `sind ${count}`}. ` +
      "Die Namen mit denen der Notizen vergleichen.",
    notRead: "Nicht gelesen, Zeilen unter den Überschriften gezählt:",
    notLearned: "Gelesen, aber nichts daraus gelernt, Zeilen unter den Überschriften gezählt:",
    spoilt: { failed: "misslungen.", fogged: "verschleiert." },
    cellsNotRead: "Nicht verwertet, Zeilen unter den Überschriften gezählt:",
    columnsNotRead: (headings) => `Unbekannte Spalten: ${headings}.`,
    rows: (rows, wrong) => `  ${rows.length === 1 ? "Zeile" : "Zeilen"} ${rows.join(", ")}: ${wrong}`,
    column: (field) => ownEntry(COLUMNS, field) ?? field,
  },
};

/** The words of a language, with temperatures in a unit. */
export const wordsOf = ({
  lang,
  unit,
}: {
  readonly lang: LanguageName;
  readonly unit: TemperatureUnit;
}): Words => ({
  ...WORDS[lang],
  unit,
});
