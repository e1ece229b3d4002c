/* At the foot of the screen: why a change was refused, what can be put back, and a sheet that cannot be read. */
import { reasonText } from "../catalogue.js";
import { button, el, say } from "../dom.js";
import { download } from "../files.js";
import type { MakeSection } from "../section.js";
import { wordsOf } from "../words.js";

/** What is said of the whole sheet, wherever it is scrolled to. */
export const noticeSection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const { lost } = store;
  const lostSays = el("p", {});
  const unreadable = el(
    "div",
    {},
    lostSays,
    button(words.saveLost, () => {
      download(`${words.fileName}.json`, "application/json", lost?.text ?? "");
    }),
    button(words.mayGo, () => {
      lost?.forget();
      update();
    }),
  );
  const refused = el("p", { role: "alert" });
  const undo = button(words.undo, store.undo, { id: "undo" });
  const fine = button(words.mayGo, () => {
    store.change({ before: undefined });
  });
  const element = el("aside", { class: "notice" }, unreadable, refused, undo, fine);
  const update = (): void => {
    const { sheet } = store;
    unreadable.hidden = (lost?.text ?? "") === "";
    say(lostSays, lost === undefined ? "" : words.lost(reasonText(lost.error, sheet)));
    say(refused, store.refused === undefined ? "" : words.refused(reasonText(store.refused, sheet)));
    // What is put back would take the negative out of the bath.
    undo.hidden = fine.hidden = sheet.before === undefined || sheet.bath?.run !== undefined;
    element.hidden = unreadable.hidden && undo.hidden && store.refused === undefined;
  };
  return { element, update };
};
