/*
 * The command line: which command, which files, which options.
 */
import { formatDilution, isInputError, parseTemperature, parseVolume } from "../index.js";
import { fault } from "./fault.js";

export const COMMANDS = ["time", "check", "plan", "chart"] as const;
export type CommandName = (typeof COMMANDS)[number];

/** What was asked for. */
export interface Asked {
  readonly command: CommandName;
  readonly files: readonly string[];
  readonly form: "text" | "json" | "csv" | "svg";
  readonly strict: boolean;
  /** °C */
  readonly temperaturesC: readonly number[];
  readonly dilutions: readonly string[];
  readonly vessel?: string;
  readonly volumeMl?: number;
}

/** Options, and the commands that take them; "value" is followed by one. */
const OPTIONS: Readonly<Record<string, { readonly for: readonly CommandName[]; readonly value?: true }>> = {
  "--json": { for: COMMANDS },
  "--strict": { for: COMMANDS },
  "--lang": { for: COMMANDS, value: true },
  "--temperature": { for: ["time", "plan", "chart"], value: true },
  "--dilution": { for: ["time", "plan", "chart"], value: true },
  "--vessel": { for: ["plan"], value: true },
  "--volume": { for: ["plan"], value: true },
  "--csv": { for: ["chart"] },
  "--svg": { for: ["chart"] },
};

const LANGUAGES = ["en"];

/** Reads the command line after its help and version were looked for. */
export function readOptions(words: readonly string[]): Asked {
  const [command, ...rest] = words;
  if (!COMMANDS.includes(command as CommandName))
    throw wrongUse(
      (command === undefined ? "Say what to do: " : `${JSON.stringify(command)} is no command: `) +
        `${COMMANDS.join(", ")}, or --help.`,
    );
  const files: string[] = [];
  const given = new Map<string, string[]>();
  for (let i = 0; i < rest.length; i += 1) {
    const word = rest[i] as string;
    if (word === "-" || !word.startsWith("-")) {
      files.push(word);
      continue;
    }
    const [name, inside] = cut(word);
    const option = Object.hasOwn(OPTIONS, name) ? OPTIONS[name] : undefined;
    if (option === undefined) throw wrongUse(`${name} is no option of this command; --help lists them all.`);
    if (!option.for.includes(command as CommandName))
      throw wrongUse(`${name} is for ${option.for.join(" and ")}, not for ${command as string}.`);
    if (option.value !== true && inside !== undefined) throw wrongUse(`${name} takes no value.`);
    const value = option.value === true ? (inside ?? rest[(i += 1)]) : "";
    if (value === undefined) throw wrongUse(`${name} needs a value behind it.`);
    given.set(name, [...(given.get(name) ?? []), value]);
  }
  return asked(command as CommandName, files, given);
}

function asked(command: CommandName, files: readonly string[], given: ReadonlyMap<string, string[]>): Asked {
  const lang = given.get("--lang")?.at(-1) ?? "en";
  if (!LANGUAGES.includes(lang))
    throw wrongUse(`--lang ${JSON.stringify(lang)} is not known; known is ${LANGUAGES.join(", ")}.`);
  if (files.length === 0)
    throw wrongUse(`Name a file: darkroom-kinetics ${command} FILE, or - for standard input.`);
  const forms = (["json", "csv", "svg"] as const).filter((form) => given.has(`--${form}`));
  if (forms.length > 1) throw wrongUse(`--${forms.join(" and --")} cannot be had at once.`);
  const [form = "text"] = forms;
  if ((form === "csv" || form === "svg") && files.length > 1)
    throw wrongUse(`--${form} takes one file at a time.`);
  const temperaturesC = (given.get("--temperature") ?? []).flatMap((text) => temperatures(text, command));
  const dilutions = (given.get("--dilution") ?? []).map((text) =>
    read("--dilution", () => formatDilution(text)),
  );
  if (command !== "chart" && (temperaturesC.length > 1 || dilutions.length > 1))
    throw wrongUse("--temperature and --dilution are given once; chart takes several.");
  const vessel = given.get("--vessel")?.at(-1);
  const volume = given.get("--volume")?.at(-1);
  return {
    command,
    files,
    form,
    strict: given.has("--strict"),
    temperaturesC,
    dilutions,
    ...(vessel === undefined ? {} : { vessel }),
    ...(volume === undefined ? {} : { volumeMl: read("--volume", () => parseVolume(volume)) }),
  };
}

/** `--name=value` in its two parts. */
function cut(word: string): readonly [string, string?] {
  const sign = word.indexOf("=");
  return sign < 0 ? [word] : [word.slice(0, sign), word.slice(sign + 1)];
}

const MOST_STEPS = 100;

/** One temperature, or for a chart every whole degree from one to another: "12..24". */
function temperatures(text: string, command: CommandName): readonly number[] {
  const ends = text.split("..").map((end) => read("--temperature", () => celsius(end)));
  const [from, to] = ends as [number, number?];
  if (to === undefined) return [from];
  if (command !== "chart" || ends.length > 2)
    throw wrongUse("--temperature takes one temperature; chart takes two ends too, as in 12..24.");
  const count = Math.floor(Math.abs(to - from) + 1e-9) + 1;
  if (count > MOST_STEPS) throw wrongUse(`--temperature ${text} has more than ${MOST_STEPS} steps.`);
  return Array.from({ length: count }, (_, i) => Number((from + Math.sign(to - from) * i).toFixed(10)));
}

function celsius(text: string): number {
  return parseTemperature(/\d\s*$/.test(text) ? `${text} °C` : text);
}

/** Reads a value; what is wrong with it is told under the name of its option. */
function read<T>(name: string, call: () => T): T {
  try {
    return call();
  } catch (error) {
    if (!isInputError(error)) throw error;
    throw wrongUse(`${name} ${error.sentence}.`);
  }
}

function wrongUse(message: string): Error {
  return fault(message, { use: true });
}
