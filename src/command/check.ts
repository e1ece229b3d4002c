/*
 * darkroom-kinetics check: whether recipes and day files are sound.
 */
import {
  checkConditions,
  checkRecipe,
  describeCaution,
  describeCautions,
  type Caution,
  type InputProblem,
} from "../index.js";
import { placeOfPointer } from "../core/jsonPlaces.js";
import { readDay } from "./day.js";
import { type Sound } from "./fields.js";
import { eveningCautions } from "./evening.js";
import { planReport } from "./plan.js";
import { BREW_PLACES, brewReport } from "./dayBrew.js";
import { tableReport } from "./dayTable.js";
import { readDocument, type Document } from "./document.js";
import {
  faultText,
  fullStop,
  inFile,
  isFault,
  placed,
  problemText,
  type Fault,
  type Places,
} from "./fault.js";
import type { Io } from "./io.js";
import { knownOf } from "./knownDay.js";
import { safetyIn } from "./lines.js";
import { dayPlaces, inPlace, timeReport } from "./time.js";
import type { Asked } from "./options.js";
import { wordsOf, type Words } from "./words.js";

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
  /** what holds for every run of a recipe, a sentence each */
  readonly bench: readonly string[];
}

export function checkReport(file: string, io: Io, asked: Asked): CheckReport {
  const words = wordsOf(asked);
  const said = (problem: Problem["problem"]): string =>
    isFault(problem) ? faultText(problem, words) : problemText(problem, words);
  let text = "";
  try {
    const document = readDocument(file, io);
    text = document.text;
    const at = (path: string): Pick<Found, "line" | "column" | "path"> => ({
      ...placeOfPointer(text, path),
      path,
    });
    const { kind, value } = document;
    const checked = kind === "recipe" ? checkRecipe(value) : undefined;
    const sound = checked?.ok === true ? checked : undefined;
    const problems =
      checked === undefined
        ? dayProblems(document, asked)
        : checked.ok
          ? []
          : checked.problems.map((problem) => ({ path: problem.path, problem }));
    const cautions =
      problems.length > 0 ? [] : kind === "recipe" ? (sound?.cautions ?? []) : dayCautions(document, asked);
    return {
      file,
      kind,
      ok: problems.length === 0,
      problems: problems.map(({ path, problem }) => ({ ...at(path), message: said(problem) })),
      cautions: cautions.map((one) => ({
        ...at(one.path ?? ""),
        code: one.code,
        severity: one.severity,
        message: describeCaution(one, words.texts?.cautions, { unit: words.unit }),
      })),
      bench: (sound?.benchNotes ?? []).map((one) =>
        describeCaution(one, words.texts?.cautions, { unit: words.unit }),
      ),
    };
  } catch (error) {
    if (!isFault(error)) throw error;
    return { file, ok: false, problems: [ofFault(error, text, words)], cautions: [], bench: [] };
  }
}

/** What is unwise about the file, each bath, the brew and the evening, at its place, once each. */
function dayCautions(document: Document, asked: Asked): readonly Caution[] {
  const { cautions, answers, brew } = timeReport(document, asked);
  const all = [
    ...cautions,
    ...answers.flatMap((answer, i) => inPlace(answer.cautions, "/conditions", dayPlaces(`/baths/${i}`))),
    ...inPlace(brew?.answer.cautions ?? [], "", CAUTIONED_IN_BREW),
    ...ofEvening(document, asked),
  ];
  return [...new Map(all.map((one) => [`${one.path ?? ""} ${describeCaution(one)}`, one])).values()];
}

function ofEvening(document: Document, asked: Asked): readonly Caution[] {
  const day = readDay(document.value, wordsOf(asked));
  if (day.evening === undefined) return [];
  const report = planReport(document, asked);
  return "evening" in report ? eveningCautions(report, day) : [];
}

/** The same for cautions: those of a brew by itself name its ingredients, or nothing. */
const CAUTIONED_IN_BREW: Places = [...BREW_PLACES, ["/ingredients", "/brew/spoons"], ["", "/brew"]];

function ofFault(error: Fault, text: string, words: Words): Found {
  const { pointer, at } = error;
  const place = at ?? (pointer === undefined || text === "" ? {} : placeOfPointer(text, pointer));
  return { ...place, path: pointer ?? "", message: faultText(error, words) };
}

/** Something wrong at a place of the file. */
interface Problem {
  readonly path: string;
  readonly problem: InputProblem | Fault;
}

/** Every problem of the known time and of every bath, once each; then the first of brew and of table. */
function dayProblems(document: Document, asked: Asked): readonly Problem[] {
  const words = wordsOf(asked);
  const problems: Problem[] = [];
  const add = (path: string, problem: Problem["problem"]): void => {
    if (!problems.some((one) => one.path === path && one.problem.message === problem.message))
      problems.push({ path, problem });
  };
  const sound: Sound = (call) => {
    try {
      return call();
    } catch (error) {
      if (!isFault(error)) throw error;
      add(error.pointer ?? "", error);
      return undefined;
    }
  };
  const day = readDay(document.value, words, sound);
  const { baseline, laws, baths, brew, table, evening } = day;
  const told = problems.map(({ path }) => path);
  const questions = baths.length > 0 ? baths : [{ conditions: {}, pointer: "/baths" }];
  // Without a known time nothing can be said of the baths.
  for (const { conditions, pointer } of told.includes("/baseline") ? [] : questions) {
    const check = checkConditions(baseline, conditions, laws);
    if (!check.ok)
      for (const problem of check.problems) {
        const path = inFile(problem.path, dayPlaces(pointer));
        // What was told when the day was read leaves a gap, which is no second problem.
        if (told.includes(path) || told.includes(problem.path)) continue;
        add(path, { ...problem, message: problem.sentence });
      }
  }
  const known = problems.length === 0 ? sound(() => knownOf(day)) : undefined;
  if (known !== undefined)
    for (const { conditions, pointer } of questions)
      sound(() => placed(dayPlaces(pointer), () => known.answer(conditions)));
  if (brew !== undefined) sound(() => brewReport({ ...day, brew }));
  if (table !== undefined) sound(() => tableReport(table));
  if (evening !== undefined && problems.length === 0) sound(() => planReport(document, asked));
  return problems;
}

export function checkLines(
  { file, ok, problems, cautions, bench }: CheckReport,
  words: Words,
): readonly string[] {
  // The sentences are written: of the catalogue only the word for how grave they are is left to say, and no
  // data is asked for.
  const texts = words.texts && { ...words.texts.cautions, sentences: {} };
  const said = ({ code, severity, message }: (typeof cautions)[number]): string =>
    describeCautions([{ code, severity, message } as Caution], texts).join("");
  const place = ({ line, column }: Found): string =>
    line === undefined || column === undefined ? file : `${file}:${line}:${column}`;
  const where = ({ path }: Found): string => (path === "" ? "" : `${path} `);
  const refuses = cautions.some(({ severity }) => severity === "stop");
  return [
    ...problems.map((one) => `${place(one)}: ${where(one)}${fullStop(one.message)}`),
    ...cautions.map((one) => `${place(one)}: ${said(one)}`),
    ...(ok ? [`${file}: ${words.sound(cautions.length, refuses)}`] : []),
    ...bench.map((one) => `${words.always}: ${one}`),
    ...(ok && bench.length === 0 ? [safetyIn(words)] : []),
  ];
}
