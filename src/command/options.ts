/*
 * The command line: which command, which files, which options.
 */
import { ownEntry } from "../core/ownEntry.js";
import { temperatureParts } from "../quantities/parseTemperature.js";
import {
  celsiusToFahrenheit,
  fahrenheitToCelsius,
  formatDilution,
  isInputError,
  parseDilution,
  parseTemperature,
  parseVolume,
  vessels,
  type OnlyNamed,
  type ProcessVessel,
  type TemperatureUnit,
} from "../index.js";
import { fault, inPackage, problemText, type Said } from "./fault.js";
import { wordsOf, type LanguageName, type Words } from "./words.js";

export const COMMANDS = ["time", "check", "plan", "chart", "brew"] as const;
export type CommandName = (typeof COMMANDS)[number];

/** What was asked for. */
export interface Asked {
  readonly command: CommandName;
  readonly files: readonly string[];
  readonly form: "text" | "json" | "csv" | "svg" | "wall";
  readonly strict: boolean;
  readonly lang: LanguageName;
  /** of temperatures that are shown, and of those on the command line */
  readonly unit: TemperatureUnit;
  /** °C */
  readonly temperaturesC: readonly number[];
  readonly dilutions: readonly string[];
  readonly vessel?: ProcessVessel;
  readonly volumeMl?: number;
  /** the bath of a day, by its name or its place in the list */
  readonly bath?: string;
  /** the file of notes, and which of its rows */
  readonly notes?: string;
  readonly only: OnlyNamed;
}

/** Options, and the commands that take them; "value" is followed by one. */
const OPTIONS: Readonly<Record<string, { readonly for: readonly CommandName[]; readonly value?: true }>> = {
  "--json": { for: COMMANDS },
  "--strict": { for: COMMANDS },
  "--lang": { for: COMMANDS, value: true },
  "--unit": { for: COMMANDS, value: true },
  "--temperature": { for: ["time", "plan", "chart", "brew"], value: true },
  "--dilution": { for: ["time", "plan", "chart"], value: true },
  "--vessel": { for: ["plan"], value: true },
  "--volume": { for: ["plan", "brew"], value: true },
  "--csv": { for: ["chart"] },
  "--svg": { for: ["chart"] },
  "--wall": { for: ["chart"] },
  "--bath": { for: ["plan", "chart"], value: true },
  "--notes": { for: ["time", "plan", "chart"], value: true },
  "--material": { for: ["time", "plan", "chart", "brew"], value: true },
  "--developer": { for: ["time", "plan", "chart"], value: true },
};

const LANGUAGES: readonly LanguageName[] = ["en", "de"];
const UNITS: readonly TemperatureUnit[] = ["C", "F"];

/** Reads the command line after its help and version were looked for. */
export function readOptions(words: readonly string[]): Asked {
  const [command, ...rest] = words;
  if (!COMMANDS.includes(command as CommandName))
    throw wrongUse({
      en:
        (command === undefined ? "Say what to do: " : `${JSON.stringify(command)} is no command: `) +
        `${COMMANDS.join(", ")}, or --help.`,
      de:
        (command === undefined ? "Was ist zu tun? " : `${JSON.stringify(command)} ist kein Befehl: `) +
        `${COMMANDS.join(", ")} oder --help.`,
    });
  const files: string[] = [];
  const given = new Map<string, string[]>();
  for (let i = 0; i < rest.length; i += 1) {
    const word = rest[i] as string;
    if (word === "-" || !word.startsWith("-")) {
      files.push(word);
      continue;
    }
    const [name, inside] = cut(word);
    const option = ownEntry(OPTIONS, name);
    if (option === undefined)
      throw wrongUse({
        en: `${name} is no option of this command; --help lists them all.`,
        de: `${name} ist keine Option dieses Befehls; --help nennt alle.`,
      });
    if (!option.for.includes(command as CommandName))
      throw wrongUse({
        en: `${name} is for ${option.for.join(" and ")}, not for ${command as string}.`,
        de: `${name} gehört zu ${option.for.join(" und ")}, nicht zu ${command as string}.`,
      });
    if (option.value !== true && inside !== undefined)
      throw wrongUse({ en: `${name} takes no value.`, de: `${name} hat keinen Wert.` });
    const value = option.value === true ? (inside ?? rest[(i += 1)]) : "";
    if (value === undefined)
      throw wrongUse({
        en: `${name} needs a value behind it.`,
        de: `hinter ${name} fehlt der Wert.`,
      });
    given.set(name, [...(given.get(name) ?? []), value]);
  }
  return asked(command as CommandName, files, given);
}

function asked(command: CommandName, files: readonly string[], given: ReadonlyMap<string, string[]>): Asked {
  const named = given.get("--lang")?.at(-1) ?? "en";
  const lang = LANGUAGES.find((one) => one === named);
  if (lang === undefined) throw wrongUse(notKnown("--lang", named, LANGUAGES));
  const degrees = given.get("--unit")?.at(-1) ?? "C";
  const unit = UNITS.find((one) => one === degrees.toUpperCase());
  if (unit === undefined) throw wrongUse(notKnown("--unit", degrees, UNITS));
  const words = wordsOf({ lang, unit });
  if (files.length === 0)
    throw wrongUse({
      en: `Name a file: darkroom-kinetics ${command} FILE, or - for standard input.`,
      de: `Es fehlt die Datei: darkroom-kinetics ${command} DATEI, oder - für die Standardeingabe.`,
    });
  const forms = (["json", "csv", "svg", "wall"] as const).filter((form) => given.has(`--${form}`));
  if (forms.length > 1)
    throw wrongUse({
      en: `--${forms.join(" and --")} cannot be had at once.`,
      de: `--${forms.join(" und --")} gehen nicht zugleich.`,
    });
  const [form = "text"] = forms;
  if (form !== "text" && form !== "json" && files.length > 1)
    throw wrongUse({
      en: `--${form} takes one file at a time.`,
      de: `--${form} nimmt nur eine Datei auf einmal.`,
    });
  const temperaturesC = (given.get("--temperature") ?? []).flatMap((text) =>
    temperatures(text, command, words),
  );
  const dilutions = (given.get("--dilution") ?? []).map((text) =>
    read("--dilution", words, () => formatDilution(parseDilution(text))),
  );
  const one = command !== "chart" || form === "svg";
  if (one && (temperaturesC.length > 1 || dilutions.length > 1))
    throw wrongUse({
      en: "--temperature and --dilution are given once; chart takes several, but not with --svg.",
      de: "--temperature und --dilution stehen nur einmal; chart nimmt mehrere, doch nicht mit --svg.",
    });
  const bath = given.get("--bath")?.at(-1);
  if (bath !== undefined && command === "chart" && form !== "svg")
    throw wrongUse({
      en: "--bath is for plan, and for chart with --svg.",
      de: "--bath gehört zu plan, und zu chart mit --svg.",
    });
  const notes = given.get("--notes")?.at(-1);
  // A brew is for a material, without notes.
  if (notes === undefined && command !== "brew" && (given.has("--material") || given.has("--developer")))
    throw wrongUse({
      en: "--material and --developer choose rows of --notes FILE.",
      de: "--material und --developer wählen Zeilen aus --notes DATEI.",
    });
  const vessel = given.get("--vessel")?.at(-1);
  const volume = given.get("--volume")?.at(-1);
  return {
    command,
    files,
    form,
    strict: given.has("--strict"),
    lang,
    unit,
    temperaturesC,
    dilutions,
    only: { material: given.get("--material")?.at(-1), developer: given.get("--developer")?.at(-1) },
    ...(notes === undefined ? {} : { notes }),
    ...(bath === undefined ? {} : { bath }),
    ...(vessel === undefined ? {} : { vessel: vesselNamed(vessel) }),
    ...(volume === undefined ? {} : { volumeMl: read("--volume", words, () => parseVolume(volume)) }),
  };
}

/** The vessel that a word means: a dish is a tray. */
export const vesselMeant = (said: string): string => (said === "dish" ? "tray" : said);

function vesselNamed(given: string): ProcessVessel {
  const named = vesselMeant(given);
  const known = vessels.find((one) => one === named);
  if (known === undefined) throw wrongUse(notKnown("--vessel", given, vessels));
  return known;
}

/** `--name=value` in its two parts. */
function cut(word: string): readonly [string, string?] {
  const sign = word.indexOf("=");
  return sign < 0 ? [word] : [word.slice(0, sign), word.slice(sign + 1)];
}

const MOST_STEPS = 100;

/** One temperature, or for a chart every whole degree from one to another: "12..24". */
function temperatures(text: string, command: CommandName, words: Words): readonly number[] {
  const { unit } = words;
  const ends = text
    .split("..")
    .map((end) => read("--temperature", words, () => parseTemperature(end, { unit })))
    .map((celsius) => (unit === "F" ? celsiusToFahrenheit(celsius) : celsius));
  const [from, to] = ends as [number, number?];
  const inC = (degrees: number): number => (unit === "F" ? fahrenheitToCelsius(degrees) : degrees);
  if (to === undefined) return [inBath(text, inC(from), words)];
  if (command !== "chart" || ends.length > 2)
    throw wrongUse({
      en: "--temperature takes one temperature; chart takes two ends too, as in 12..24.",
      de: "--temperature nimmt eine Temperatur; chart nimmt auch zwei Enden, wie 12..24.",
    });
  const count = Math.floor(Math.abs(to - from) + 1e-9) + 1;
  if (count > MOST_STEPS)
    throw wrongUse({
      en: `--temperature ${text} has more than ${MOST_STEPS} steps.`,
      de: `--temperature ${text} hat mehr als ${MOST_STEPS} Schritte.`,
    });
  for (const end of text.split("..")) inBath(end, parseTemperature(end, { unit }), words);
  return Array.from({ length: count }, (_, i) => inC(Number((from + Math.sign(to - from) * i).toFixed(10))));
}

/** Water is a bath between these. */
const WATER = { C: { freezes: 0, boils: 100 }, F: { freezes: 32, boils: 212 } };

/** Refuses what is no bath, and asks about the other unit where that would be one. */
function inBath(text: string, celsius: number, { unit }: Words): number {
  if (celsius >= WATER.C.freezes && celsius <= WATER.C.boils) return celsius;
  const { number = "", degrees = NaN, scale = unit } = temperatureParts(text) ?? {};
  const { freezes, boils } = WATER[scale];
  const cold = celsius < WATER.C.freezes;
  const other = scale === "F" ? "C" : "F";
  const meant = degrees >= WATER[other].freezes && degrees <= WATER[other].boils;
  const given = `--temperature ${number} °${scale}`;
  const limit = `${cold ? freezes : boils} °${scale}`;
  throw wrongUse({
    en:
      `${given} is ${cold ? "below" : "above"} ${limit}` +
      (meant ? `: did you mean ${number} °${other}?` : "."),
    de:
      `${given} liegt ${cold ? "unter" : "über"} ${limit}` +
      (meant ? `: sind ${number} °${other} gemeint?` : "."),
  });
}

/** Reads a value; what is wrong with it is told under the name of its option. */
function read<T>(name: string, words: Words, call: () => T): T {
  try {
    return call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    throw wrongUse(inPackage(`${name} ${problemText(error, words)}.`));
  }
}

function wrongUse(said: Said): Error {
  return fault(said, { use: true });
}

/** What a value is told that its option does not know. */
function notKnown(name: string, given: string, known: readonly string[]): Said {
  return {
    en: `${name} ${JSON.stringify(given)} is not known; known are ${known.join(", ")}.`,
    de: `${name} ${JSON.stringify(given)} ist nicht bekannt; bekannt sind ${known.join(", ")}.`,
  };
}

/** The language that a command line asks for, also where the rest of it is wrong; English when unknown. */
export function languageOf(words: readonly string[]): LanguageName {
  const named = words.flatMap((word, i) =>
    word === "--lang" ? (words[i + 1] ?? []) : (/^--lang=(.*)$/.exec(word)?.[1] ?? []),
  );
  return LANGUAGES.find((one) => one === named.at(-1)) ?? "en";
}
