/* Sheets, recipes and knowledge as files. */
import { checkKnowledge, checkRecipe, type Recipe } from "darkroom-kinetics";
import { problemsText } from "./catalogue.js";
import { fromKnowledge, fromRecipe } from "./recipe.js";
import type { Words } from "./words.js";
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
  // What is done in it later is kept apart from this page's sheet, and from that of any other saved page.
  root.dataset["key"] = `darkroom-kinetics ${Math.random()}`;
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
export const recipeOf = ({ sheet, answer }: Store, title: string): Recipe => ({
  ...answer.recipe,
  name: sheet.read.name.trim() || title,
});

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
  if (isDay(given)) return { problem: aDay };
  const check = checkRecipe(given);
  return check.ok
    ? { change: fromRecipe(check.recipe, sheet) }
    : { problem: problemsText(check.problems.slice(0, 1), sheet) };
}
