/*
 * darkroom-kinetics time: the times of a recipe or of the baths of a day.
 */
import {
  compensateRecipe,
  roundEstimate,
  type Baseline,
  type Caution,
  type Compensation,
  type Conditions,
  type Recipe,
  type RoundedEstimate,
} from "../index.js";
import { bathBeside, bathUnder } from "./askedBath.js";
import { brewReport, type BrewReport } from "./dayBrew.js";
import { tableReport, type TableReport } from "./dayTable.js";
import { recipeOf, type Document } from "./document.js";
import { inFile, placed, type Places } from "./fault.js";
import { knownDay } from "./knownDay.js";
import type { Asked } from "./options.js";
import { wordsOf, type Words } from "./words.js";

/** A time under its name. */
export interface NamedAnswer extends Compensation {
  readonly name: string;
  /** as it is shown */
  readonly rounded: RoundedEstimate;
}

/** All that a file gives. */
export interface TimeReport {
  readonly file: string;
  readonly kind: "recipe" | "day";
  readonly about?: string;
  readonly known: {
    readonly timeS: number;
    readonly temperatureC: number;
    readonly dilution?: Baseline["dilution"];
    readonly note?: string;
  };
  readonly answers: readonly NamedAnswer[];
  readonly brew?: BrewReport & { readonly rounded: RoundedEstimate };
  readonly table?: TableReport;
  /** what is unwise about the file itself, and about the known time where there is no bath */
  readonly cautions: readonly Caution[];
}

export function timeReport(document: Document, asked: Asked): TimeReport {
  return document.kind === "recipe" ? ofRecipe(document, asked) : ofDay(document, asked);
}

/** The conditions of the command line; undefined where it names none. */
export function askedConditions({ temperaturesC, dilutions }: Asked): Conditions | undefined {
  const [temperatureC] = temperaturesC;
  const [dilution] = dilutions;
  if (temperatureC === undefined && dilution === undefined) return undefined;
  return {
    ...(temperatureC === undefined ? {} : { temperatureC }),
    ...(dilution === undefined ? {} : { dilution }),
  };
}

export function recipeName({ name, material, developer }: Recipe, { aBrew }: Words): string {
  return name ?? `${material.name} in ${developer.name ?? aBrew}`;
}

function ofRecipe(document: Document, asked: Asked): TimeReport {
  const recipe = recipeOf(document);
  const { baseline, developer } = recipe;
  const answer = placed([], () => compensateRecipe(recipe, askedConditions(asked)));
  const dilution = baseline.dilution ?? (developer.kind === "stock" ? developer.dilution : undefined);
  const { timeS, temperatureC } = baseline;
  return {
    file: document.file,
    kind: "recipe",
    known: { timeS, temperatureC, ...(dilution === undefined ? {} : { dilution }) },
    answers: [named(recipeName(recipe, wordsOf(asked)), answer)],
    cautions: [],
  };
}

/** Where a day has what the package calls baseline, conditions and knowledge. */
export function dayPlaces(bath: string): Places {
  return [
    ["/baseline/timeS", "/baseline/time"],
    ["/baseline", "/baseline"],
    ["/conditions", bath],
    ["/knowledge", "/laws"],
  ];
}

function ofDay(document: Document, asked: Asked): TimeReport {
  const words = wordsOf(asked);
  const day = knownDay(document, words);
  const { about, note, baseline, baths, brew, table, cautions } = day;
  const [temperatureC] = asked.temperaturesC;
  const own = askedConditions(asked);
  // What notes have made of the known time is an answer; without notes it is what the file says.
  const isLearned = baths.length === 0 && document.notes !== undefined;
  const ofBaths = isLearned ? [bathBeside(words.asKnown, {})] : baths;
  const questions = own === undefined ? ofBaths : [bathUnder(own, baths, undefined, words)];
  const answers = questions.map(({ name: bath, conditions, pointer }) =>
    named(
      bath,
      placed(dayPlaces(pointer), () => day.answer(conditions)),
    ),
  );
  // A day without baths is about its known time, which is judged all the same.
  const ofKnown = answers.length > 0 ? [] : placed(dayPlaces("/baths"), () => day.answer({})).cautions;
  const { timeS, temperatureC: knownC, dilution } = baseline;
  // A brew has no dilution.
  const brewed =
    brew === undefined || asked.dilutions.length > 0
      ? undefined
      : brewReport({ ...day, brew }, document.notes, temperatureC);
  return {
    file: document.file,
    kind: "day",
    ...(about === undefined ? {} : { about }),
    known: {
      timeS,
      temperatureC: knownC,
      ...(dilution === undefined ? {} : { dilution }),
      ...(note === undefined ? {} : { note }),
    },
    answers,
    ...(brewed === undefined ? {} : { brew: { ...brewed, rounded: roundEstimate(brewed.answer) } }),
    ...(table === undefined || own !== undefined ? {} : { table: tableReport(table) }),
    cautions: [...cautions, ...inPlace(ofKnown, "/baseline", dayPlaces("/baths"))],
  };
}

/** Cautions with the places of the file; one that names none is about what is `around` it. */
export function inPlace(cautions: readonly Caution[], around: string, places: Places): readonly Caution[] {
  return cautions.map((one) => ({ ...one, path: inFile(one.path ?? around, places) }));
}

function named(name: string, answer: Compensation): NamedAnswer {
  return { name, ...answer, rounded: roundEstimate(answer) };
}
