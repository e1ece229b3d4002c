/*
 * What follows from a sheet, worked out in one place, so that one time is shown everywhere: texts into
 * baseline and conditions, those and the runs into a time, that time rounded, and its picture.
 */
import {
  answerPicture,
  checkConditions,
  compensateRecipe,
  filmAreaCm2,
  isInputError,
  learn,
  parseAge,
  parseAgitation,
  parseCount,
  parseDilution,
  parseFilmFormat,
  parseSpread,
  parseStops,
  parseTemperature,
  parseTime,
  parseVolume,
  pictureAfterStrip,
  recipePicture,
  recipeQuestion,
  roundEstimate,
  stripOutcome,
  type AnswerPicture,
  type Baseline,
  type Caution,
  type Compensation,
  type Conditions,
  type Knowledge,
  type LearnedKnowledge,
  type CheckProblem,
  type Recipe,
  type RecipeQuestion,
  type RoundedEstimate,
  type DevelopmentRun,
  type TestStrip,
} from "darkroom-kinetics";
import { asRun, givenOf, learnedOf, recipeOfSheet, withLearned, type Given } from "./recipe.js";
import { blankNames, emptyAs, evening, type BlankName, type Sheet, type Texts } from "./sheet.js";

/** Why blanks cannot be used, by their names. */
export type Problems = Readonly<Partial<Record<BlankName, CheckProblem>>>;

/** The blanks that cannot be used, in the order of the sentences. */
export const unusable = (problems: Problems): readonly BlankName[] =>
  blankNames.filter((name) => problems[name] !== undefined);

/** What follows from a sheet. */
export interface Answer {
  /** why a blank cannot be read, by its name */
  readonly problems: Problems;
  /** blanks that must be filled in and never held anything readable: until then there is no answer */
  readonly missing: readonly BlankName[];
  /** the size of the films with the unit that was taken; nothing where it was written */
  readonly formatTaken: string | undefined;
  /** the last readable text of each blank: what the answer rests on */
  readonly read: Texts;
  /** the sheet as a recipe, without its runs */
  readonly untaught: Recipe;
  /** the known time and the laws as they were given, before any run */
  readonly given: Given;
  /** what the runs and a ticked piece of the strip taught; undefined before the first */
  readonly learned: LearnedKnowledge | undefined;
  /** the sheet as a recipe, with what was learned: all times are its */
  readonly recipe: Recipe;
  /** the known time; with runs, as they moved it */
  readonly baseline: Baseline;
  readonly conditions: TodaysBath;
  /** the laws; with runs, what was learned of them */
  readonly knowledge: Knowledge;
  /** the ticked piece of the strip as a run; nothing where none is ticked */
  readonly stripRun: DevelopmentRun | undefined;
  readonly compensation: Compensation;
  /** the one time, rounded once; nothing where it is refused */
  readonly rounded: RoundedEstimate | undefined;
  /** the gravest caution; where there is no time, why */
  readonly gravest: Caution | undefined;
  /** a blank cannot be read, so that this is the answer before */
  readonly stale: boolean;
  /** the answer as a picture, with its ladder */
  readonly picture: AnswerPicture;
  /** the strip that would tell most; it stays as it is when a piece is ticked */
  readonly strip: TestStrip | undefined;
}

/** Today's bath, at the temperature that it begins with. */
export type TodaysBath = Omit<Conditions, "temperatureC"> & { readonly temperatureC: number };

/** Reads one blank; throws the package's own error where it cannot be read. */
function readBlank(name: BlankName, text: string, sheet: Sheet, timeS: number): unknown {
  switch (name) {
    case "name":
      return text;
    case "time":
      return parseTime(text);
    case "knownTemperature":
    case "temperature":
      return parseTemperature(text, { unit: sheet.unit });
    case "knownDilution":
    case "dilution":
      return parseDilution(text);
    case "knownAgitation":
    case "agitation":
      return parseAgitation(text);
    case "spread":
      return parseSpread(text, timeS);
    case "count":
      return parseCount(text);
    case "format":
      return filmAreaCm2(text);
    case "volume":
      return parseVolume(text);
    case "age":
      return parseAge(text);
    case "push":
      return parseStops(text);
  }
}

/** What a blank says; an empty one what it is taken as beside what was read of the others. */
const takenText = ({ texts, language }: Sheet, name: BlankName, read: Texts): string =>
  texts[name].trim() === "" ? emptyAs(name, read, language) : texts[name];

/** The blanks as values; those that cannot be read, and those in `wrong`, as they were before. */
function valuesOf(sheet: Sheet, wrong: Problems = {}): Read {
  const missing: BlankName[] = [];
  const problems: Partial<Record<BlankName, CheckProblem>> = {};
  const values = {} as Record<BlankName, unknown>;
  const read = { ...sheet.read };
  for (const name of blankNames) {
    // A spread in seconds is one of the known time, which comes first; a known time of 0 is refused later.
    const timeS = (values.time as number) || 1;
    const written = sheet.texts[name];
    const text = takenText(sheet, name, read);
    const valueOf = (from: string): CheckProblem | undefined =>
      problemIn(() => (values[name] = readBlank(name, from, sheet, timeS)));
    const problem = wrong[name] ?? valueOf(text);
    if (problem === undefined) {
      read[name] = text;
      continue;
    }
    // What is taken from another blank is not missing beside it.
    const follows = name === "dilution" && written.trim() === "" && missing.includes("knownDilution");
    // What was read once may not be readable beside another time: it counts as never read.
    if (read[name] === "" || valueOf(read[name]) !== undefined) {
      if (!follows) missing.push(name);
      valueOf(evening[name]);
    } else problems[name] = problem;
    if (written !== "") problems[name] = problem;
  }
  return { problems, missing, read, values: values as unknown as Values };
}

/** The package's own error, if there is one. */
function problemIn(call: () => unknown): CheckProblem | undefined {
  try {
    call();
    return undefined;
  } catch (error) {
    if (!isInputError(error)) throw error;
    return error;
  }
}

/** Which blank a problem of baseline or conditions is about. */
const BLANK_AT: Readonly<Record<string, BlankName>> = {
  "/baseline/timeS": "time",
  "/baseline/temperatureC": "knownTemperature",
  "/baseline/dilution": "knownDilution",
  "/baseline/agitation": "knownAgitation",
  "/baseline/logSd": "spread",
  "/conditions/temperatureC": "temperature",
  "/conditions/dilution": "dilution",
  "/conditions/agitation": "agitation",
  "/conditions/usedCm2PerL": "count",
  "/conditions/ageH": "age",
  "/conditions/pushStops": "push",
};

/** What can be read and still not be used, such as 300 °C: by the blank, as `checkConditions` says it. */
function wrongIn(sheet: Sheet, read: Read): Problems {
  const asked: RecipeQuestion[] = [];
  const volume = problemIn(() => asked.push(recipeQuestion(recipeOfSheet(sheet, read))));
  const [question] = asked;
  // A brew cannot be scaled to any volume.
  if (question === undefined) return volume === undefined ? {} : { volume };
  const check = checkConditions(question.baseline, question.conditions, question.knowledge);
  return check.ok
    ? {}
    : Object.fromEntries(
        check.problems.flatMap((problem) => {
          const [, argument = "", field = ""] = problem.path.split("/");
          const name = BLANK_AT[`/${argument}/${field}`];
          return name === undefined ? [] : [[name, problem]];
        }),
      );
}

/** Why a text in a blank could not be used, beside the others as they are. */
export function problemOf(sheet: Sheet, name: BlankName, text: string): CheckProblem | undefined {
  const asked = { ...sheet, texts: { ...sheet.texts, [name]: text } };
  const read = valuesOf(asked);
  return read.problems[name] ?? wrongIn(asked, read)[name];
}

/** What was read of the blanks. */
interface Read extends Pick<Answer, "problems" | "missing" | "read"> {
  readonly values: Values;
}

/** What the blanks say. */
export interface Values extends Readonly<Record<BlankName, unknown>> {
  readonly time: number;
  readonly knownTemperature: number;
  readonly knownDilution: Baseline["dilution"];
  readonly knownAgitation: Baseline["agitation"];
  readonly spread: number;
  readonly temperature: number;
  readonly dilution: Conditions["dilution"];
  readonly agitation: Conditions["agitation"];
  readonly count: number;
  readonly format: number;
  readonly volume: number;
  readonly age: number;
  readonly push: number;
}

/** Works out everything that the page shows of the sentences; `before` keeps its axes where they serve. */
export function derive(sheet: Sheet, before?: Answer): Answer {
  const first = valuesOf(sheet);
  const wrong = wrongIn(sheet, first);
  const all = Object.keys(wrong).length === 0 ? first : valuesOf(sheet, { ...first.problems, ...wrong });
  try {
    return answerOf(sheet, all, before);
  } catch (error) {
    const { texts, read } = sheet;
    const last = blankNames.filter(
      (name) => takenText(sheet, name, read) !== read[name] && first.problems[name] === undefined,
    );
    if (!isInputError(error) || last.length === 0) throw error;
    // What was written last cannot stand beside the runs: as a blank that cannot be used.
    const unfit = Object.fromEntries(last.map((name) => [name, error]));
    const was = Object.fromEntries(last.map((name) => [name, read[name]]));
    const values = valuesOf(sheet, { ...all.problems, ...unfit });
    return answerOf({ ...sheet, texts: { ...texts, ...was } }, values, before);
  }
}

function answerOf(sheet: Sheet, all: Read, before: Answer | undefined): Answer {
  const { problems, missing, read } = all;
  const recipe = recipeOfSheet(sheet, all);
  const given = givenOf(recipe);
  const known = learnedOf(given, sheet.runs);
  const plain = pictured(withLearned(recipe, known), before);
  const { strip } = plain.picture;
  const stripRun = runOf(sheet, given.baseline, plain.conditions, strip);
  const ticked =
    stripRun === undefined
      ? undefined
      : known === undefined
        ? learnedOf(given, [stripRun])
        : learn(known, [stripRun]);
  const after = ticked === undefined ? plain : pictured(withLearned(recipe, ticked), before, plain.picture);
  return {
    problems,
    missing,
    formatTaken: formatTakenOf(read.format),
    read,
    untaught: recipe,
    given,
    learned: ticked ?? known,
    stripRun,
    ...after,
    rounded: missing.length > 0 || after.compensation.refused ? undefined : roundEstimate(after.compensation),
    gravest: after.compensation.cautions[0],
    stale: unusable(problems).length > 0,
    strip,
  };
}

/** The size with its unit, where a text had none. */
function formatTakenOf(text: string): string | undefined {
  const { name, unitTaken } = parseFilmFormat(text);
  return unitTaken ? name : undefined;
}

/** The ticked piece of the strip as a run: the time that looked right. */
function runOf(
  { ticked }: Sheet,
  baseline: Baseline,
  { temperatureC, ...today }: TodaysBath,
  strip: TestStrip | undefined,
): DevelopmentRun | undefined {
  if (ticked === undefined || !strip?.timesS.includes(ticked)) return undefined;
  const conditions = asRun(baseline, today);
  if (conditions === undefined) return undefined;
  return { ...conditions, temperatureC, timeS: ticked, outcome: stripOutcome(strip, ticked) };
}

/** A time with its picture, on the axes of the picture before as long as both dots lie between them. */
function pictured(
  recipe: Recipe,
  before: Answer | undefined,
  untested?: AnswerPicture,
): Pick<Answer, "recipe" | "baseline" | "conditions" | "knowledge" | "compensation" | "picture"> {
  const { baseline, conditions: asked, knowledge } = recipeQuestion(recipe);
  const conditions = { ...asked, temperatureC: recipe.conditions?.temperatureC ?? baseline.temperatureC };
  const compensation = compensateRecipe(recipe);
  const axes = untested?.axes ?? before?.picture.axes;
  const fits =
    axes !== undefined &&
    [
      { timeS: baseline.timeS, temperatureC: baseline.temperatureC },
      ...(compensation.refused ? [] : [{ ...compensation, temperatureC: conditions.temperatureC }]),
    ].every(
      ({ timeS, temperatureC }) =>
        timeS > axes.lowS * EDGE &&
        timeS < axes.highS / EDGE &&
        temperatureC > axes.fromC &&
        temperatureC < axes.toC,
    );
  const range = { strip: true, ...(fits ? axes : {}) };
  const quick = answerPicture({ baseline, conditions, knowledge, ...range });
  // What stops the bath itself is known to the recipe's picture alone, which takes ten times as long.
  const picture = quick.refused === compensation.refused ? quick : recipePicture(recipe, {}, range);
  return {
    recipe,
    baseline,
    conditions,
    knowledge,
    compensation,
    picture: untested === undefined ? picture : pictureAfterStrip(untested, picture),
  };
}

/** A dot stays at least this far from the edge, as a ratio of times. */
const EDGE = 1.1;
