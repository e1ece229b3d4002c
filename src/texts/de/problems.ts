/*
 * What is wrong with an input, in German.
 */
import type { CurveEnd, InputRules, InputRuleTexts } from "../../core/errorRules.js";
import type { ExpectedFigures, InputFormat, InputType } from "../../core/errors.js";
import { holdsReadings, lostCharacter } from "../../core/errorText.js";
import { unitOf } from "../../core/quantity.js";
import type { UnfitIngredient } from "../../brew/refusedText.js";
import type { ProblemTexts } from "../../text/problemTexts.js";
import { inGerman } from "./examples.js";
import { comma, commas, und, wort, zahl } from "./figures.js";
import { ownEntry } from "../../core/ownEntry.js";
import { ingredients, reasons } from "./words.js";

const types: Readonly<Record<InputType, string>> = {
  "number": "eine Zahl",
  "whole number": "eine ganze Zahl",
  "text": "Text",
  "boolean": "true oder false",
  "object": "ein Objekt",
  "array": "eine Liste",
  "function": "eine Funktion",
  "log": "eine Messreihe",
  "drift": "ein Temperaturverlauf",
  "plan with a development": "ein Plan mit einer Entwicklung",
  "Float64Array": "ein Float64Array",
};

const formats: Readonly<Record<InputFormat, string>> = {
  "time": "eine Zeit",
  "temperature": "eine Temperatur",
  "volume": "eine Menge",
  "spread": "eine Streuung",
  "age": "ein Alter",
  "use": "eine Ausnutzung",
  "count": "eine Anzahl",
  "number": "eine Zahl",
  "date": "ein Datum",
  "date with its year": "ein Datum mit Jahr",
  "dilution": "eine Verdünnung",
  "agitation": "eine Bewegung",
  "film format": "ein Format",
  "push": "eine Zahl von Blenden",
  "outcome": "ein Ergebnis",
  "column with its unit": "eine Spalte mit Einheit",
};

/** A figure in full, with a comma for its point. */
const figur = (value: number): string => comma(String(value));

const oder = (words: readonly string[]): string =>
  words.length > 1 ? `${words.slice(0, -1).join(", ")} oder ${words.at(-1) as string}` : words.join("");

function wert(value: unknown): string {
  if (typeof value === "string") return `„${value.slice(0, 60)}“`;
  if (typeof value === "number") return figur(value);
  if (Array.isArray(value)) return types.array;
  return typeof value === "object" && value !== null
    ? types.object
    : typeof value === "function"
      ? types.function
      : String(value);
}

/** A value that may be given; an ingredient has its German name behind it. */
function moeglich(value: unknown): string {
  const name = typeof value === "string" ? ownEntry(ingredients, value) : undefined;
  return name === undefined ? wert(value) : `${wert(value)} (${name})`;
}

/** What a field is called behind a pointer to it. */
const feld = (path: string): string => path.slice(path.lastIndexOf("/") + 1);

function grenzen({ min, above, max, below, quantity, path }: ExpectedFigures): string {
  const unit = unitOf(quantity).replace("stops", "Blenden");
  const figure = (value: number): string =>
    path === undefined ? figur(value) + unit : `${feld(path)} (${figur(value)}${unit})`;
  if (min !== undefined && max !== undefined)
    return min === max ? figure(min) : `von ${figur(min)} bis ${figur(max)}${unit}`;
  const both = [
    min !== undefined && `mindestens ${figure(min)}`,
    above !== undefined && `über ${figure(above)}`,
    max !== undefined && `höchstens ${figure(max)}`,
    below !== undefined && `unter ${figure(below)}`,
  ]
    .filter(Boolean)
    .join(" und ");
  return both.replace(/^(?=mindestens|höchstens)/, "von ");
}

function gesucht(expected: ExpectedFigures): string {
  const { forms, readings, format, examples = [], values, types: kinds, fields, least, most } = expected;
  if (forms !== undefined) return oder(forms.map(gesucht));
  const beispiel = (text: string): string => wert(inGerman(text, format));
  if (readings !== undefined) return oder(readings.map(beispiel));
  if (format !== undefined)
    return examples.length === 0 ? formats[format] : `${formats[format]} wie ${oder(examples.map(beispiel))}`;
  const kind =
    values !== undefined ? oder(values.map(moeglich)) : oder((kinds ?? []).map((type) => wort(types, type)));
  if (examples.length > 0) return `${kind} wie ${examples.join(" oder ")}`;
  return [
    kind === "" ? "ein Wert" : kind,
    fields && `mit ${fields.join(", ")}`,
    grenzen(expected),
    most !== undefined &&
      (least === undefined ? `von höchstens ${most} Zeichen` : `mit ${least} bis ${most} Einträgen`),
  ]
    .filter(Boolean)
    .join(" ");
}

const ende = ({ startsAt, endsAt }: CurveEnd): string =>
  startsAt !== undefined
    ? `sie beginnt erst bei ${zahl(startsAt)}: Stufen mit weniger Belichtung dazu`
    : endsAt !== undefined
      ? `sie endet schon bei ${zahl(endsAt)}: Stufen mit mehr Belichtung dazu`
      : "sie verläuft dort waagerecht";

const unfit: Readonly<Record<UnfitIngredient, string>> = {
  "effervescent-tablet": "die Zitronensäure von Brausetabletten verbraucht die Soda",
  "baking-powder": "Backpulver enthält saure Salze und Stärke",
};

const untold: Readonly<Record<InputRules["tells-time-constant"]["why"], string>> = {
  "straight": "die Messungen biegen sich nicht zur Luft hin",
  "uncertain": "ihr Fehler ist größer als sie selbst",
  "too-long": "sie ist länger, als eine Uhr zeigt",
  "outside": "die Kurve verlässt 0 bis 100 °C",
};

const rules: InputRuleTexts = {
  "known-field": ({ values, hint }) =>
    `${hint === undefined ? "" : `Gemeint ist wohl ${hint}. `}Es gibt: ${values.join(", ")}`,
  "rising": ({ above }) => `ein Wert über dem davor (${figur(above)})`,
  "below-held": ({ below }) => `weniger, als im Bad ist (${figur(below)} ml)`,
  "known-version": ({ max }) =>
    `höchstens ${max}, die neueste Version, die dieses Paket liest (oder es erneuern)`,
  "json": ({ line, column }) => `JSON, das nicht in Zeile ${line}, Spalte ${column} abbricht`,
  "once": ({ line, column }) =>
    `ein Name, den es im selben Objekt nur einmal gibt (hier wieder in Zeile ${line}, Spalte ${column})`,
  "below-60": () => "eine Zeit mit Minuten und Sekunden unter 60",
  "sides-at-most": ({ max }) => `ein Format mit Seiten über 0 und bis ${max} cm`,
  "not-after": ({ today }) => `ein Datum bis heute, ${today}`,
  "enough-without": ({ least, path }) => `eine Liste von mindestens ${least}, solange ${feld(path)} fehlt`,
  "rows-slower": ({ by, rows }) =>
    `eine Tabelle mit verschiedenen ${by}, ` +
    (by === "dilution"
      ? "dünner nie schneller und nie langsamer als Konzentration^-5"
      : "kälter nie schneller und je °C höchstens 2,72-mal so langsam") +
    `, nicht ${und(rows.map(({ at, timeS }) => `${figur(timeS)} s bei ${wert(at)}`))}`,
  "spread-at-most": ({ max }) => `eine Streuung von ln(Zeit) bis ${max}`,
  "slowing-at-most": ({ max }) => `ein Bad, das höchstens ${max}-mal so langsam wird`,
  "exponent-at-most": ({ max }) => `ein Exponent bis ${max}`,
  "energy-at-most": ({ max }) => `eine Aktivierungsenergie bis ${max} kJ/mol`,
  "told-apart": ({ max }) => `eine Reihe mit höchstens ${max} Personen, Thermometern, Tagen und Bedingungen`,
  "within-life": ({ max }) => `ein Alter bis ${figur(max)} h, so lange arbeitet das Bad`,
  "below-top": ({ max }) =>
    `eine Gradation unter ${figur(max)}, der Grenze dieses Wachstumsgesetzes ` +
    `(härteres Material braucht ein eigenes, wie growthFromDoubling es gibt)`,
  "between-once-and-twice": ({ above }) =>
    `eine Gradation zwischen gamma (${figur(above)}) und dem Doppelten, ` + "das keine Grenze hätte",
  "before-first-point": ({ below }) => `eine Zeit vor dem ersten Punkt (${figur(below)} s)`,
  "points-differ": ({ timeS }) => `je Zeit ein Punkt, nicht zwei bei ${figur(timeS)} s`,
  "points-rise": ({ points }) =>
    "eine Gradation, die mit der Zeit steigt, nicht " +
    und(points.map(({ timeS, gamma }) => `${figur(gamma)} bei ${figur(timeS)} s`)),
  "points-all-sd": () => "sd bei allen Punkten oder bei keinem",
  "points-bend": () =>
    "eine Kurve, die sich einer Grenze nähert: eine längere Zeit dazu, " +
    "oder wo sie waagerecht ist eine kürzere",
  "points-carry": () => "eine genauere Reihe: Grenze oder Rate ist unsicherer als sie selbst",
  "steps-differ": ({ logH }) => `je Belichtung eine Stufe, nicht zwei bei log H ${figur(logH)}`,
  "curve-speed-point": ({ density, ...end }) =>
    `eine Kurve durch ${zahl(density)}, 0,10 über Schleier; ${ende(end)}`,
  "curve-rises": (end) => `eine Kurve, die steiler als 0,1 aus dem Schleier steigt; ${ende(end)}`,
  "curve-outer-arc": (end) => `eine Kurve bis zum äußeren Bogen, 2,2 vom Fuß; ${ende(end)}`,
  "curve-reaches": ({ logH, lastLogH }) =>
    `eine Kurve bis log H ${zahl(logH)}, 1,30 über dem Empfindlichkeitspunkt; ` +
    `sie endet bei ${zahl(lastLogH)}`,
  "in-order": ({ lowS, timeS, highS }) =>
    `die Folge lowS, timeS, highS, nicht ${figur(lowS)}, ${figur(timeS)}, ${figur(highS)} s`,
  "agitations-at-most": ({ most, timeS }) =>
    `ein Abstand mit höchstens ${most} Bewegungen in ${figur(timeS)} s`,
  "left-out-beside": ({ path }) => `nichts, solange ${feld(path)} angegeben ist`,
  "no-grades": () => "nichts, denn von dieser Zutat sind keine Sorten bekannt",
  "family-or-least": ({ values }) => `${oder(values)}, oder leastMlPerRoll`,
  "fit-for-bath": ({ ingredient }) => `eine brauchbare Zutat: ${wort(unfit, ingredient)}`,
  "label-needed": () => "labelMg, mg Vitamin C nach der Packung, denn eine Tablette wiegt mehr",
  "not-tablets": () => "eine Zutat nach Gewicht: Tabletten werden gezählt",
  "not-caustic": () => "etwas für den Löffel: Ätznatron wird gewogen, einmal, für eine Lösung von 10 %",
  "coffee-per-ml": () => "höchstens 1 g Filterkaffee je ml Bad",
  "dry-per-ml": () => "mehr als 0 und höchstens 1 g Trockenes je ml Bad",
  "agent-needed": () => "ein Ansatz, in dem etwas entwickelt: Kaffee oder Vitamin C",
  "over-or-under": ({ readings }) => {
    const half = readings.length / 2;
    const side = (ways: readonly string[]): string => ways.map((way) => wert(inGerman(way))).join(" oder ");
    return (
      `${side(readings.slice(0, half))}, wenn es zu dicht wurde, ` +
      `oder ${side(readings.slice(half))}, wenn es mehr brauchte`
    );
  },
  "not-fahrenheit": ({ max }) => `höchstens ${max} °C (sind es °F?)`,
  "parts-or-total": ({ readings: [plus = "", total] }) => {
    const [parts, water] = plus.split("+").map(commas);
    const named = `${parts} ${parts === "1" ? "Teil" : "Teile"}`;
    return (
      `${wert(commas(plus))} (${named} und ${water} ${water === "1" ? "Teil" : "Teile"} Wasser)` +
      (total === undefined ? "" : ` oder ${wert(commas(total))} (${named} von ${water} insgesamt)`)
    );
  },
  "volume-needed": () =>
    "eine Ausnutzung wie „2 Rollfilme/l“ oder „3 9x12cm/l“, " +
    "in Notizen auch „3 Platten 9x12“ und eine Spalte Volumen",
  "process-or-subject": ({ readings: [judged] }) =>
    judged === "thin"
      ? `„dünn“, wenn es mehr Entwicklung brauchte, oder „gut“, wenn das Motiv flau war`
      : `„dicht“, wenn es weniger Entwicklung brauchte, oder „gut“, wenn das Motiv hart war`,
  "other-run": ({ row }) =>
    `eine andere Entwicklung als die in Zeile ${row}: eine zweite Platte braucht eine eigene id`,
  "id-of-one-run": ({ row }) =>
    "ein Name für nur eine Entwicklung" +
    (row === undefined ? ": eine der beiden umbenennen" : `, nicht der von Zeile ${row}`),
  "one-column": ({ headings }) => `eine Spalte, nicht ${und(headings)}`,
  "same-prior": () => "Wissen mit demselben Anfang wie a: seine Entwicklungen stattdessen in a lernen",
  "as-learned": () => "das, was learn geschrieben hat: aus den Entwicklungen neu lernen",
  "place-in-model": ({ reason }) =>
    `etwas, das sich mit der bekannten Zeit vergleichen lässt, doch es ${wort(reasons, reason)}`,
  "within-reach": () => "ein Ziel, das ein Bad von 0 bis 100 °C erreicht",
  "not-freezing": ({ timeS }) => `Luft, in der das Bad nicht in ${figur(timeS)} s gefriert`,
  "smooth": ({ steps }) => `ein glatterer Verlauf: nach ${steps} Stützstellen war kein Ende gefunden`,
  "reached-by": ({ max }) => `ein Ziel, das bis ${max} s erreicht ist`,
  "tells-time-constant": ({ why }) => `eine Messreihe, die die Zeitkonstante zeigt: ${wort(untold, why)}`,
  "name": () => "ein Buchstabe, dann Buchstaben, Ziffern und Striche",
  "plain-data": () => "ein Wert aus einfachen, lesbaren Daten, höchstens 20 Ebenen tief",
};

export const problems: ProblemTexts & { readonly rules: InputRuleTexts } = {
  rules,
  wanted: gesucht,
  must: (wanted, given = "", rule) => {
    if (rule === "known-field")
      return `das Feld${given === "" ? "" : ` ${given}`} gibt es hier nicht. ${wanted}`;
    return (
      `nötig ist ${wanted}${given === "" ? "" : `, hier steht ${given}`}` +
      (lostCharacter(given) ? " (ein Zeichen ging verloren: die Datei als UTF-8 speichern)" : "")
    );
  },
  missing: (wanted) => `fehlt: hier muss ${wanted} stehen`,
  items: ({ least, most }, count, path = "") => {
    const [one, many] = holdsReadings(path) ? ["Messung", "Messungen"] : ["Eintrag", "Einträge"];
    const single = (least ?? most) === 1;
    return (
      `${single ? "nötig ist" : "nötig sind"} ` +
      (least === most ? "" : least === undefined ? "höchstens " : "mindestens ") +
      `${least ?? most} ${single ? one : many}, hier ${count === 1 ? "steht" : "stehen"} ${count}`
    );
  },
  counterpart: (place) => `es fehlt ${place}: Was galt für die bekannte Zeit?`,
  value: wert,
  line: (place, sentence) => (place === "" ? sentence : `${place}: ${sentence}`),
};
