import { sentenceOf } from "../blanks.js";
import { attribute, el } from "../dom.js";
import { frame, type MakeSection } from "../section.js";
import type { Developer } from "../sheet.js";
import { wordsOf } from "../words.js";

/** What is known: a time, its conditions, and what the developer works with. */
export const knownSection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const developer = el(
    "select",
    {
      "id": "developer",
      "class": "blank",
      "aria-label": words.developer,
      "change": () => {
        store.change({ developer: developer.value as Developer, invented: false, ticked: undefined });
      },
    },
    ...(Object.entries(words.developers) as [Developer, string][]).map(([value, text]) =>
      el("option", { value, selected: value === store.sheet.developer }, text),
    ),
  );
  const sentence = sentenceOf(store, words.knownSentence, { developer });
  return {
    element: frame("known", words.known, ...sentence.elements),
    update: () => {
      sentence.update();
      const ofFile = developer.querySelector("option[value=file]");
      attribute(ofFile as Element, "hidden", store.sheet.recipe === undefined);
      if (developer.value !== store.sheet.developer) developer.value = store.sheet.developer;
    },
  };
};
