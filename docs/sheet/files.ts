/* Sheets, recipes and knowledge as files. */
import {
  checkKnowledge,
  checkRecipe,
  type InputExpected,
  type InputType,
  type Recipe,
} from "darkroom-kinetics";
import { derive } from "./answer.js";
import { places } from "./bath.js";
import { problemsText, reasonText } from "./catalogue.js";
import { fromKnowledge, fromRecipe } from "./recipe.js";
import { shownAt } from "./run.js";
import { wordsOf, type Words } from "./words.js";
import { emptySheet, inventedSheet, storedSheet, type Sheet, type Store } from "./sheet.js";

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
  // What is done in it later is kept apart from this page's sheet, and from that of any other saved page.
  root.dataset["key"] = `darkroom-kinetics ${Math.random()}`;
  root.querySelector("#running")?.remove();
  const data = root.querySelector("#data");
  // As JSON that no parser of HTML takes for a tag.
  if (data !== null)
    data.textContent = JSON.stringify({ ...sheet, before: undefined }).replaceAll("<", "\\u003c");
  const blanks = root.querySelectorAll("input.blank");
  document.querySelectorAll<HTMLInputElement>("input.blank").forEach((input, i) => {
    blanks[i]?.setAttribute("value", input.value);
  });
  return `<!doctype html>\n${root.outerHTML}\n`;
}

/** The sheet as a recipe that `checkRecipe` accepts. */
export const recipeOf = ({ sheet, answer }: Store, title: string): Recipe => ({
  ...answer.recipe,
  name: sheet.read.name.trim() || title,
});

/** What every sheet has, each of its kind; what it may lack is undefined here. */
const model = emptySheet(inventedSheet);

/** A document's own error, as the package's checks give it. */
function refuse(path: string, expected: InputExpected, actual: unknown): never {
  const message = `${path.slice(1).replaceAll("/", ".")} is missing or wrong`;
  throw Object.assign(new TypeError(message), { code: "wrong-type", path, expected, actual });
}

const typeOf = (value: unknown): InputType =>
  Array.isArray(value) ? "array" : typeof value === "string" ? "text" : (typeof value as InputType);

/** Refuses what has not the fields of a model, each of its type. */
function refuseUnlike(given: unknown, like: unknown, path = ""): void {
  const type = typeOf(like);
  if (given === null || typeOf(given) !== type) refuse(path, { types: [type] }, given);
  if (type === "object")
    for (const [name, one] of Object.entries(like as object))
      if (one !== undefined)
        refuseUnlike((given as Readonly<Record<string, unknown>>)[name], one, `${path}/${name}`);
}

/** A sheet that was kept or opened, where all of it can be worked out; throws why it cannot. */
export function sheetOf(given: unknown): Sheet {
  const sheet = storedSheet(given as Sheet);
  refuseUnlike(sheet, model);
  const names = {
    version: [model.version],
    language: ["en", "de"],
    unit: ["C", "F"],
    developer: Object.keys(wordsOf("en").developers),
  } as const;
  for (const [name, values] of Object.entries(names)) {
    const one = sheet[name as keyof typeof names];
    if (!(values as readonly unknown[]).includes(one)) refuse(`/${name}`, { values }, one);
  }
  derive(sheet);
  const { place = "tank", run, done = [] } = sheet.bath ?? {};
  if (!places.includes(place)) refuse("/bath/place", { values: places }, place);
  if (!Array.isArray(done)) refuse("/bath/done", { types: ["array"] }, done);
  if (run !== undefined) shownAt(run, place, Date.now());
  return sheet;
}

/** What a file says, as changes of the sheet; or why it cannot be used. */
export type Opened = { readonly change: Partial<Sheet> } | { readonly problem: string };

/** A day has a list of baths, or a time as text. */
function isDay(given: object): boolean {
  const { baths, baseline } = given as Readonly<Record<string, unknown>>;
  if ("schemaVersion" in given) return false;
  return Array.isArray(baths) || (typeof baseline === "object" && baseline !== null && "time" in baseline);
}

/** Reads a file: a sheet of this page, a recipe, or learned knowledge. */
export function opened(text: string, { sheet }: Store, words: Words): Opened {
  const { noJson, aDay } = words;
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
      return { change: { ...sheetOf(given), before: undefined } };
    } catch (error) {
      return { problem: `${reasonText(error, sheet)}.` };
    }
  if ("prior" in given) {
    const check = checkKnowledge(given);
    return check.ok
      ? { change: fromKnowledge(check.knowledge, sheet) }
      : { problem: problemsText(check.problems.slice(0, 1), sheet) };
  }
  if (isDay(given)) return { problem: aDay };
  const check = checkRecipe(given);
  return check.ok
    ? { change: fromRecipe(check.recipe, sheet) }
    : { problem: problemsText(check.problems.slice(0, 1), sheet) };
}
