/*
 * The sheet and a recipe: what a recipe says as texts in the blanks, and what the sheet says as a recipe. All times
 * of the page are those of that recipe.
 */
import {
  filmAreaCm2,
  formatFilmArea,
  formatSpread,
  formatTemperature,
  formatTime,
  compensateRecipe,
  handbookTemperatureLaw,
  lawsOf,
  learn,
  parseVolume,
  recipeQuestion,
  scaleBrew,
  startKnowledge,
  type Baseline,
  type BrewMaterial,
  type Conditions,
  type DevelopmentRun,
  type Knowledge,
  type LearnedKnowledge,
  type Recipe,
} from "darkroom-kinetics";
import type { Values } from "./answer.js";
import {
  dilutionText,
  evening,
  inFigures,
  movementText,
  type BlankName,
  type Sheet,
  type Texts,
} from "./sheet.js";
import { wordsOf } from "./words.js";

/** What a blank holds: the sheet, what was read of it, and the values of that. */
interface Read {
  readonly read: Texts;
  readonly values: Values;
}

/** A material that a recipe does not name is planned as film. */
const kindOf = ({ material }: Recipe): BrewMaterial => material.kind ?? "film";

/** Whether the sheet's developer is that of the recipe that was opened. */
const isKept = ({ developer, recipe }: Sheet): boolean =>
  developer === "file" || (developer === "brew" && recipe?.developer.kind === "brew");

/** The laws of the developer that was chosen. */
function chosenLaws({ developer }: Sheet): Knowledge {
  return developer === "unknown" || developer === "brew" || developer === "file"
    ? {}
    : { temperature: handbookTemperatureLaw(developer) };
}

/**
 * The sheet as a recipe, without its runs: the one that was opened, with those fields anew whose blanks were
 * written over. Throws the package's error where its brew cannot have the volume.
 */
export function recipeOfSheet(sheet: Sheet, { read, values }: Read): Recipe {
  const { texts, written = {}, shelf, recipe: opened } = sheet;
  const file: Recipe = opened ?? {
    schemaVersion: 2,
    material: { name: "" },
    developer: { kind: "stock", name: "", dilution: "stock" },
    baseline: { timeS: values.time, temperatureC: values.knownTemperature },
  };
  const { material, baseline, conditions = {} } = file;
  /** Fields of blanks; nothing where all of them still say what the file says. */
  const anew = <Fields extends object>(names: readonly BlankName[], fields: Fields): Partial<Fields> =>
    names.every((name) => written[name] === texts[name] || written[name] === read[name]) ? {} : fields;
  const sides = {
    dilution: ["knownDilution", "dilution"],
    agitation: ["knownAgitation", "agitation"],
    use: ["count", "format", "volume"],
  } as const;
  return {
    ...file,
    material: {
      ...material,
      ...anew(["name"], { name: read.name.trim() || read.format }),
      ...anew(["format"], { areaCm2: values.format * (material.pieces ?? 1) }),
      ...(opened !== undefined && kindOf(opened) === shelf.material ? {} : { kind: shelf.material }),
    },
    developer: developerOf(sheet, file, values, anew(["volume"], { volumeMl: values.volume })),
    baseline: {
      ...baseline,
      ...anew(["time"], { timeS: values.time }),
      ...anew(["knownTemperature"], { temperatureC: values.knownTemperature }),
      ...anew(["spread"], { logSd: values.spread }),
      ...anew(sides.dilution, { dilution: values.knownDilution }),
      ...anew(sides.agitation, { agitation: values.knownAgitation }),
    },
    conditions: {
      ...conditions,
      ...anew(["knownTemperature", "temperature"], { temperatureC: values.temperature }),
      ...anew(sides.dilution, { dilution: values.dilution }),
      ...anew(sides.agitation, { agitation: values.agitation }),
      ...anew(sides.use, { usedCm2PerL: (values.count * values.format * 1000) / values.volume }),
      ...anew(["age"], { ageH: values.age }),
      // No push is no row of the ladder.
      ...anew(["push"], { pushStops: values.push === 0 ? undefined : values.push }),
    },
    ...(isKept(sheet) ? {} : { knowledge: chosenLaws(sheet) }),
  };
}

function developerOf(
  sheet: Sheet,
  { developer }: Recipe,
  { knownDilution, volume }: Values,
  anew: { readonly volumeMl?: number },
): Recipe["developer"] {
  if (!isKept(sheet))
    return {
      kind: "stock",
      name: sheet.developer,
      dilution: knownDilution ?? "stock",
      volumeMl: volume,
      hydroquinone: sheet.developer.includes("hydroquinone"),
    };
  if (developer.kind === "stock") return { ...developer, ...anew };
  return anew.volumeMl === undefined
    ? developer
    : { ...developer, brew: scaleBrew(developer.brew, anew.volumeMl) };
}

/** What runs are learned on: the known time as it was given, and the laws. */
export interface Given {
  readonly baseline: Baseline;
  readonly laws: Knowledge;
}

/** What runs of a recipe are learned on. */
export function givenOf(recipe: Recipe): Given {
  const { knowledge = {} } = recipe;
  return {
    baseline: recipeQuestion(recipe).baseline,
    laws: isLearned(knowledge) ? lawsOf(knowledge) : knowledge,
  };
}

/** Whether some knowledge rests on runs. */
export const isLearned = (knowledge: Knowledge): knowledge is LearnedKnowledge => "prior" in knowledge;

/** Today's conditions as those of a run; undefined for another gradient than the known one, which no run teaches. */
export function asRun({ gamma: known }: Baseline, today: Conditions): RunConditions | undefined {
  const { gamma, temperatureC: _course, ...conditions } = today;
  return gamma === undefined || gamma === known ? conditions : undefined;
}

/** What today's bath has in common with a run of it. */
type RunConditions = Omit<Conditions, "gamma" | "temperatureC">;

/** What the runs taught; nothing where there are none. */
export const learnedOf = (
  { baseline, laws }: Given,
  runs: readonly DevelopmentRun[],
): LearnedKnowledge | undefined =>
  runs.length === 0 ? undefined : learn(startKnowledge(baseline, { laws }), runs);

/** A recipe with what was learned in it. */
export const withLearned = (recipe: Recipe, knowledge: LearnedKnowledge | undefined): Recipe =>
  knowledge === undefined ? recipe : { ...recipe, knowledge };

/** A recipe that was opened, as changes of the sheet: each blank says what it says, or what goes without saying. */
export function fromRecipe(recipe: Recipe, sheet: Sheet): Partial<Sheet> {
  const { material, developer, knowledge = {} } = recipe;
  const { baseline: known, conditions: today } = recipeQuestion(recipe);
  // Runs count one by one where the recipe's known time is the one that they taught.
  const learned = isLearned(knowledge) && isTaught(known, knowledge) ? knowledge : undefined;
  const { prior, runs = [] } = learned ?? {};
  const { timeS } = recipe.baseline;
  const away = (given?: Baseline): number => Math.abs(timeS - (given?.timeS ?? timeS));
  // A time that was written over by a little is the file's own, unless it is the one that the runs made.
  const own = away(learned?.baseline) < away(prior?.baseline) ? {} : { timeS };
  const kept: Recipe =
    prior === undefined
      ? recipe
      : { ...recipe, baseline: { ...recipe.baseline, ...prior.baseline, ...own }, knowledge: prior.laws };
  const baseline = { ...known, ...prior?.baseline, ...own };
  const { dilution = "stock", agitation } = baseline;
  const { areaCm2, pieces = 1 } = material;
  const volumeMl = developer.kind === "brew" ? developer.brew.volumeMl : developer.volumeMl;
  const format = areaCm2 === undefined ? "" : formatFilmArea(areaCm2 / pieces);
  const { temperatureC = baseline.temperatureC, usedCm2PerL = baseline.usedCm2PerL ?? 0 } = today;
  const texts: Texts = {
    ...knownTexts(baseline, sheet),
    name: material.name,
    knownDilution: dilutionText(dilution, sheet.language),
    knownAgitation: movementText(agitation, sheet.language),
    spread: inFigures(formatSpread(spreadOf(kept)), sheet.language),
    temperature: temperatureText(temperatureC as number, sheet),
    dilution: dilutionText(today.dilution ?? dilution, sheet.language),
    agitation: movementText(today.agitation ?? agitation, sheet.language),
    format,
    volume: volumeMl === undefined ? "" : `${figure(volumeMl, sheet)} ml`,
    count: countText(usedCm2PerL, format, volumeMl, sheet),
    age: `${figure(today.ageH ?? baseline.ageH ?? 0, sheet)} h`,
    push: figure(today.pushStops ?? 0, sheet),
  };
  const { shelf } = sheet;
  return {
    ...{ texts, read: texts, written: texts, recipe: kept, runs, developer: "file" },
    ...{ invented: false, began: undefined, ticked: undefined, made: undefined },
    shelf: { ...shelf, material: kindOf(kept) },
  };
}

/** Learned knowledge that was opened, as changes of the sheet: of today's bath it says nothing. */
export function fromKnowledge({ prior, runs }: LearnedKnowledge, sheet: Sheet): Partial<Sheet> {
  const { baseline, laws } = prior;
  const { texts, read, shelf, language } = sheet;
  const { dilution = "stock", agitation } = baseline;
  const recipe: Recipe = {
    schemaVersion: 2,
    material: { name: texts.name, kind: shelf.material },
    developer: { kind: "stock", name: wordsOf(language).developers.file, dilution },
    baseline,
    knowledge: laws,
  };
  const written = {
    ...knownTexts(baseline, sheet),
    knownDilution: dilutionText(dilution, language),
    knownAgitation: movementText(agitation, language),
    spread: inFigures(formatSpread(spreadOf(recipe)), language),
  };
  return {
    ...{
      texts: { ...texts, ...written },
      read: { ...read, ...written },
      written,
      recipe,
      runs,
      developer: "file",
    },
    ...{ invented: false, ticked: undefined, made: undefined },
  };
}

/** Whether a known time is the one that the runs of some knowledge taught. */
const isTaught = (known: Baseline, { baseline }: LearnedKnowledge): boolean =>
  JSON.stringify({ ...known, ...baseline }) === JSON.stringify(known);

/** How well the known time is known, as the package takes it where the recipe does not say. */
const spreadOf = (recipe: Recipe): number =>
  recipe.baseline.logSd ??
  compensateRecipe(recipe).factors.find(({ cause }) => cause === "baseline")?.logSd ??
  0;

const knownTexts = (
  { timeS, temperatureC }: Baseline,
  sheet: Sheet,
): Pick<Texts, "time" | "knownTemperature"> => ({
  time: formatTime(timeS),
  knownTemperature: temperatureText(temperatureC, sheet),
});

const temperatureText = (celsius: number, { unit, language }: Sheet): string =>
  inFigures(formatTemperature(celsius, { unit }), language);

/** A figure to two decimals: with three, a decimal comma could part thousands. */
export const figure = (value: number, { language }: Sheet): string =>
  inFigures(String(Number(value.toFixed(2))), language);

/** How many went through; where size or volume is not known, of the size and in the volume that most would write. */
function countText(usedCm2PerL: number, format: string, volumeMl: number | undefined, sheet: Sheet): string {
  if (usedCm2PerL === 0) return wordsOf(sheet.language).none;
  const { format: usualFormat, volume: usualVolume } = evening;
  const areaCm2 = filmAreaCm2(format || usualFormat);
  return figure((usedCm2PerL * (volumeMl ?? parseVolume(usualVolume))) / 1000 / areaCm2, sheet);
}
