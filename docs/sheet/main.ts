/* In the browser: the sheet that was saved, or the invented one, made anew over what the page was built with. */
import { showSheet } from "./page.js";
import { setPrinting } from "./paper.js";
import { inLanguage, inventedSheet, storedSheet, storeOf, type Sheet, type Store } from "./sheet.js";

/** Under which this page keeps its sheet: a page that was saved has a key of its own. */
const KEY = document.documentElement.dataset["key"] as string;

/** The sheet of the browser's storage, or that inside the page; storage is a convenience and may be missing. */
function kept(): Sheet | undefined {
  const inside = document.getElementById("data")?.textContent ?? "";
  try {
    const sheet = JSON.parse(localStorage.getItem(KEY) ?? (inside.trim() || "null")) as Sheet | null;
    return sheet?.version === 1 ? sheet : undefined;
  } catch {
    return undefined;
  }
}

/**
 * The sheet that was kept; one that cannot be worked out is set aside, and the invented one serves, in the language
 * of the browser.
 */
function firstStore(): Store {
  const sheet = kept();
  if (sheet !== undefined)
    try {
      return storeOf(storedSheet(sheet), keep);
    } catch (error) {
      console.error(error);
      aside(sheet);
    }
  const german = navigator.language.startsWith("de");
  return storeOf(german ? { ...inventedSheet, ...inLanguage(inventedSheet, "de") } : inventedSheet, keep);
}

/** A sheet that cannot be shown is not thrown away. */
function aside(sheet: unknown): void {
  try {
    localStorage.setItem(`${KEY}, set aside`, JSON.stringify(sheet));
  } catch {
    // Storage is full or forbidden.
  }
}

function keep(sheet: Sheet): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(sheet));
  } catch {
    // Storage is full or forbidden: the page works without it.
  }
}

const root = document.getElementById("sheet");
if (root !== null) {
  const draw = showSheet(root, firstStore());
  // On paper the drawing has another width.
  matchMedia("print").addEventListener("change", draw);
  for (const event of ["beforeprint", "afterprint"])
    addEventListener(event, () => {
      setPrinting(event === "beforeprint");
      draw();
    });
  document.documentElement.dataset["ready"] = "";
}
