import { attribute, button, el, say } from "../dom.js";
import type { MakeSection } from "../section.js";
import { emptySheet, inLanguage, inUnit, inventedBlanks, inventedSheet, storedSheet } from "../sheet.js";
import { namesOf, wordsOf } from "../words.js";

/** The title, the switches of language and unit, and what the sheet is. */
export const headSection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const other = store.sheet.language === "en" ? "de" : "en";
  const language = button(
    words.otherLanguageShort,
    () => {
      store.change(inLanguage(store.sheet, other));
    },
    {
      "id": "language",
      "class": "switch",
      "lang": other,
      "aria-label": `${words.otherLanguageShort}, ${words.otherLanguage}`,
    },
  );
  const unit = button(
    "",
    () => {
      store.change(inUnit(store.sheet, store.sheet.unit === "C" ? "F" : "C"));
    },
    {
      id: "unit",
      class: "switch",
    },
  );
  const invented = el("p", { class: "quiet" });
  const mine = button(
    words.mine,
    () => {
      store.change({ began: undefined });
    },
    { class: "link" },
  );
  const clear = button(
    words.clear,
    () => {
      store.replace(emptySheet(store.sheet));
    },
    { class: "link" },
  );
  const again = button(
    words.again,
    () => {
      store.replace({ ...storedSheet(inventedSheet), ...inLanguage(inventedSheet, store.sheet.language) });
    },
    {
      class: "link",
    },
  );
  const noTime = button(
    words.noTime,
    () => {
      const shelf = document.getElementById("shelf");
      shelf?.scrollIntoView();
      shelf?.querySelector<HTMLElement>("input, button, select")?.focus({ preventScroll: true });
    },
    { class: "link" },
  );
  const update = (): void => {
    const { sheet } = store;
    say(unit, sheet.unit === "C" ? "°F" : "°C");
    attribute(unit, "aria-label", words.otherUnit[sheet.unit]);
    const left = inventedBlanks(sheet);
    invented.hidden = !sheet.invented && left.length === 0;
    const agent =
      left.length > 0 && sheet.developer === inventedSheet.developer ? `, ${words.developer}` : "";
    say(invented, sheet.invented ? words.invented : words.stillInvented(namesOf(left, words) + agent));
    mine.hidden = invented.hidden || sheet.invented;
    const empty = store.answer.missing.length > 0;
    clear.hidden = empty;
    again.hidden = !empty;
  };
  return {
    element: el(
      "header",
      {},
      el("div", { class: "title" }, el("h1", {}, words.title), language, unit),
      invented,
      el("div", { class: "links" }, mine, clear, again, noTime),
    ),
    update,
  };
};
