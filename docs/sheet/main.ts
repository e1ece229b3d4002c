/* In the browser: the sheet that was saved, or the invented one, made anew over what the page was built with. */
import { sheetOf } from "./files.js";
import { showSheet } from "./page.js";
import { setPrinting } from "./paper.js";
import { inLanguage, inventedSheet, storeOf, type Lost, type Sheet, type Store } from "./sheet.js";

/** Under which this page keeps its sheet: a page that was saved has a key of its own. */
const KEY = document.documentElement.dataset["key"] as string;
const ASIDE = `${KEY}, set aside`;

/** A convenience: storage may be full, or forbidden. */
function inStorage<Value>(work: () => Value): Value | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

/** The sheet that a text holds. */
const sheetIn = (text: string): Sheet => sheetOf(JSON.parse(text));

/**
 * The sheet of the browser's storage, or else that inside the page, or else the invented one, in the language of the
 * browser. One that cannot be worked out is set aside until somebody says that it may go.
 */
function firstStore(): Store {
  const german = navigator.language.startsWith("de");
  let sheet = german ? { ...inventedSheet, ...inLanguage(inventedSheet, "de") } : inventedSheet;
  const inside = document.getElementById("data")?.textContent ?? "";
  for (const text of [inside, inStorage(() => localStorage.getItem(KEY)) ?? ""])
    if (text.trim() !== "")
      try {
        sheet = sheetIn(text);
      } catch {
        inStorage(() => {
          localStorage.setItem(ASIDE, text);
        });
      }
  return storeOf(sheet, keep, lostSheet());
}

/** The sheet that was set aside, and why. */
function lostSheet(): Lost | undefined {
  const text = inStorage(() => localStorage.getItem(ASIDE)) ?? "";
  const lost = {
    text,
    error: undefined as unknown,
    forget: (): void => {
      lost.text = "";
      localStorage.removeItem(ASIDE);
    },
  };
  try {
    sheetIn(text);
  } catch (error) {
    lost.error = error;
  }
  return text === "" ? undefined : lost;
}

/** The page works without it. */
function keep(sheet: Sheet): void {
  inStorage(() => {
    localStorage.setItem(KEY, JSON.stringify(sheet));
  });
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
