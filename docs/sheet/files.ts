/* Sheets, recipes and knowledge as files. */
import {
  checkKnowledge,
  checkRecipe,
  formatDilution,
  formatTemperature,
  formatTime,
  type Agitation,
  type Baseline,
  type Conditions,
  type Knowledge,
  type LearnedKnowledge,
  type Recipe,
} from "darkroom-kinetics";
import type { Answer } from "./answer.js";
import { problemsText } from "./catalogue.js";
import { storedSheet, type Sheet, type Store } from "./sheet.js";

/** Hands a text to the person as a file. */
export function download(name: string, type: string, text: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 1000);
}

/** This page with the sheet inside: it opens with it, on any machine, without a network. */
export function pageWith(sheet: Sheet): string {
  const root = document.documentElement.cloneNode(true) as HTMLElement;
  delete root.dataset["ready"];
  delete root.dataset["lamp"];
  root.querySelector("#running")?.remove();
  const data = root.querySelector("#data");
  // As JSON that no parser of HTML takes for a tag.
  if (data !== null) data.textContent = JSON.stringify(sheet).replaceAll("<", "\\u003c");
  const blanks = root.querySelectorAll("input.blank");
  document.querySelectorAll<HTMLInputElement>("input.blank").forEach((input, i) => {
    blanks[i]?.setAttribute("value", input.value);
  });
  return `<!doctype html>\n${root.outerHTML}\n`;
}

/** The sheet as a recipe that `checkRecipe` accepts. */
export function recipeOf({ sheet, answer }: Store, title: string): Recipe {
  const name = sheet.read.name.trim();
  const { baseline, conditions, knowledge } = answer;
  const { dilution = "stock", agitation } = baseline;
  return {
    schemaVersion: 2,
    name: name || title,
    material: { name: name || sheet.read.format },
    developer: {
      kind: "stock",
      name: sheet.developer,
      dilution,
      ...(baseline.hydroquinone === true ? { hydroquinone: true } : {}),
    },
    baseline,
    ...(agitation === undefined ? {} : { agitation }),
    conditions: conditions as NonNullable<Recipe["conditions"]>,
    ...(Object.keys(knowledge).length === 0 ? {} : { knowledge }),
  };
}

/** What a file says, as changes of the sheet; or why it cannot be used. */
export type Opened = { readonly change: Partial<Sheet> } | { readonly problem: string };

/** Reads a file: a sheet of this page, a recipe, or learned knowledge. */
export function opened(text: string, { sheet }: Store, noJson: string): Opened {
  let given: unknown;
  try {
    // A saved page holds its sheet between the tags of its data.
    given = JSON.parse(/<script[^>]* id="data">([^<]*)</.exec(text)?.[1] ?? text);
  } catch {
    return { problem: noJson };
  }
  if (typeof given !== "object" || given === null) return { problem: noJson };
  if ("version" in given && "texts" in given)
    try {
      return { change: storedSheet(given as Sheet) };
    } catch {
      return { problem: noJson };
    }
  if ("prior" in given) {
    const check = checkKnowledge(given);
    return check.ok
      ? { change: fromKnowledge(check.knowledge, sheet) }
      : { problem: problemsText(check.problems.slice(0, 1), sheet) };
  }
  const check = checkRecipe(given);
  return check.ok
    ? { change: fromRecipe(check.recipe, sheet) }
    : { problem: problemsText(check.problems.slice(0, 1), sheet) };
}

function fromKnowledge({ prior, runs }: LearnedKnowledge, sheet: Sheet): Partial<Sheet> {
  return {
    ...withTexts(sheet, knownTexts(prior.baseline)),
    ...fromLaws(prior.laws),
    runs,
    ticked: undefined,
  };
}

function fromRecipe(
  { material, baseline, conditions, knowledge = {} }: Recipe,
  sheet: Sheet,
): Partial<Sheet> {
  const learned = "prior" in knowledge ? knowledge : undefined;
  const texts = {
    name: material.name,
    ...knownTexts(learned?.prior.baseline ?? baseline),
    ...todayTexts(conditions ?? {}),
  };
  const laws = learned?.prior.laws ?? knowledge;
  return { ...withTexts(sheet, texts), ...fromLaws(laws), runs: learned?.runs ?? [], ticked: undefined };
}

/** The laws of a file serve as they are. */
const fromLaws = (laws: Knowledge): Partial<Sheet> =>
  Object.keys(laws).length === 0 ? { developer: "unknown" } : { developer: "file", laws };

const withTexts = ({ texts }: Sheet, written: Partial<Sheet["texts"]>): Partial<Sheet> => ({
  texts: { ...texts, ...written },
  invented: false,
});

function agitationText(agitation: Agitation): string {
  return typeof agitation === "string" ? agitation : `every ${agitation.everyS} s`;
}

const dilutionText = (dilution: Baseline["dilution"]): string =>
  typeof dilution === "string" ? dilution : dilution === undefined ? "1+0" : formatDilution(dilution);

function knownTexts({ timeS, temperatureC, dilution, agitation, logSd }: Baseline): Partial<Answer["read"]> {
  return {
    time: formatTime(timeS),
    knownTemperature: formatTemperature(temperatureC),
    ...(dilution === undefined ? {} : { knownDilution: dilutionText(dilution) }),
    ...(agitation === undefined ? {} : { knownAgitation: agitationText(agitation) }),
    ...(logSd === undefined ? {} : { spread: `${(100 * Math.expm1(1.6449 * logSd)).toFixed(0)} %` }),
  };
}

function todayTexts({
  temperatureC,
  dilution,
  agitation,
  ageH,
  pushStops = 0,
}: Conditions): Partial<Answer["read"]> {
  return {
    ...(typeof temperatureC === "number" ? { temperature: formatTemperature(temperatureC) } : {}),
    ...(dilution === undefined ? {} : { dilution: dilutionText(dilution) }),
    ...(agitation === undefined ? {} : { agitation: agitationText(agitation) }),
    ...(ageH === undefined ? {} : { age: `${ageH} h` }),
    push: String(pushStops),
  };
}
