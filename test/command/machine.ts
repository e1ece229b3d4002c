/* A machine of a few files in memory for the command to run on. */
import { run } from "../../src/command/run.js";

/** What a run gave. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the command on files in memory. A file whose text is an error code cannot be read for that reason. */
export function ran(
  words: readonly string[],
  files: Readonly<Record<string, unknown>> = {},
  { watched = false, stepMs = 0 }: { readonly watched?: boolean; readonly stepMs?: number } = {},
): Ran {
  let out = "";
  let err = "";
  let nowMs = 0;
  const code = run(words, {
    version: "0.0.0",
    read: (path) => {
      const held = files[path];
      if (held === undefined) throw Object.assign(new Error("gone"), { code: "ENOENT" });
      if (held instanceof Error) throw held;
      return typeof held === "string" ? held : JSON.stringify(held, undefined, 2);
    },
    out: (text) => (out += text),
    err: (text) => (err += text),
    nowMs: () => (nowMs += stepMs),
    watched,
  });
  return { code, out, err };
}

/** An invented recipe of a concentrate, for a weekend workshop in a mountain hut. */
export const recipe = {
  schemaVersion: 2,
  name: "Hut concentrate, roll film",
  material: { name: "roll film", kind: "film" },
  developer: { kind: "stock", name: "hut concentrate", dilution: "1+9", volumeMl: 500, hydroquinone: true },
  baseline: { timeS: 540, temperatureC: 20 },
  conditions: { temperatureC: 18 },
} as const;

/** An invented day in the same hut. */
export const day = {
  about: "Invented: a day in a hut.",
  baseline: { note: "found at home", time: "9:00", temperatureC: 20, dilution: "1+9", hydroquinone: true },
  laws: { temperature: { kind: "coefficient", ratio: 2, intervalC: 10 } },
  baths: [
    { name: "Morning", temperatureC: 16 },
    { name: "Evening", temperatureC: 18, dilution: "1+14" },
  ],
} as const;
