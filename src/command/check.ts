/*
 * darkroom-kinetics check: whether recipes and day files are sound.
 */
import { checkConditions, checkRecipe, type Caution } from "../index.js";
import { readDay } from "./day.js";
import { brewReport } from "./dayBrew.js";
import { tableReport } from "./dayTable.js";
import { readDocument } from "./document.js";
import { fullStop, inFile, isFault, type Fault } from "./fault.js";
import type { Io } from "./io.js";
import { placeOfPointer } from "./jsonPlaces.js";
import { dayPlaces, timeReport } from "./time.js";
import type { Asked } from "./options.js";

/** Something wrong, or unwise, at a place of a file. */
export interface Found {
  readonly line?: number;
  readonly column?: number;
  /** JSON Pointer into the file */
  readonly path: string;
  readonly message: string;
}

/** What was found in a file. */
export interface CheckReport {
  readonly file: string;
  readonly kind?: "recipe" | "day";
  readonly ok: boolean;
  readonly problems: readonly Found[];
  readonly cautions: readonly (Found & Pick<Caution, "code" | "severity">)[];
}

export function checkReport(file: string, io: Io, asked: Asked): CheckReport {
  let text = "";
  try {
    const document = readDocument(file, io);
    text = document.text;
    const at = (path: string): Pick<Found, "line" | "column" | "path"> => ({
      ...placeOfPointer(text, path),
      path,
    });
    const { kind, value } = document;
    const problems = kind === "recipe" ? recipeProblems(value) : dayProblems(value);
    const cautions =
      problems.length > 0
        ? []
        : kind === "recipe"
          ? recipeCautions(value)
          : timeReport(document, asked).answers.flatMap((answer, i) =>
              answer.cautions.map((one) => ({
                ...one,
                path: inFile(one.path ?? "/conditions", dayPlaces(`/baths/${i}`)),
              })),
            );
    return {
      file,
      kind,
      ok: problems.length === 0,
      problems: problems.map(({ path, message }) => ({ ...at(path), message })),
      cautions: cautions.map(({ code, severity, message, path = "" }) => ({
        ...at(path),
        code,
        severity,
        message,
      })),
    };
  } catch (error) {
    if (!isFault(error)) throw error;
    return { file, ok: false, problems: [ofFault(error, text)], cautions: [] };
  }
}

function ofFault({ message, pointer, at }: Fault, text: string): Found {
  const place = at ?? (pointer === undefined || text === "" ? {} : placeOfPointer(text, pointer));
  return { ...place, path: pointer ?? "", message };
}

interface Problem {
  readonly path: string;
  readonly message: string;
}

function recipeProblems(value: unknown): readonly Problem[] {
  const check = checkRecipe(value);
  return check.ok ? [] : check.problems;
}

function recipeCautions(value: unknown): readonly Caution[] {
  const check = checkRecipe(value);
  return check.ok ? check.cautions : [];
}

/** Every problem of every bath, once each; then the first of the brew and of the table. */
function dayProblems(value: unknown): readonly Problem[] {
  const { baseline, laws, baths, brew, table } = readDay(value);
  const problems: Problem[] = [];
  const add = (path: string, message: string): void => {
    if (!problems.some((one) => one.path === path && one.message === message))
      problems.push({ path, message });
  };
  const questions = baths.length > 0 ? baths : [{ conditions: {}, pointer: "/baths" }];
  for (const { conditions, pointer } of questions) {
    const check = checkConditions(baseline, conditions, laws);
    if (!check.ok)
      for (const { path, sentence } of check.problems) add(inFile(path, dayPlaces(pointer)), sentence);
  }
  for (const part of [brew && (() => brewReport(brew)), table && (() => tableReport(table))])
    try {
      part?.();
    } catch (error) {
      if (!isFault(error)) throw error;
      add(error.pointer ?? "", error.message);
    }
  return problems;
}

export function checkLines({ file, ok, problems, cautions }: CheckReport): readonly string[] {
  const place = ({ line, column }: Found): string =>
    line === undefined || column === undefined ? file : `${file}:${line}:${column}`;
  const where = ({ path }: Found): string => (path === "" ? "" : `${path} `);
  const words = { stop: "Stop", warn: "Take care", note: "Note" } as const;
  return [
    ...problems.map((one) => `${place(one)}: ${where(one)}${fullStop(one.message)}`),
    ...cautions.map((one) => `${place(one)}: ${words[one.severity]}: ${one.message}`),
    ...(ok ? [`${file}: sound${cautions.length === 0 ? "" : `, ${count(cautions.length)}`}.`] : []),
  ];
}

function count(cautions: number): string {
  return cautions === 1 ? "one caution" : `${cautions} cautions`;
}
