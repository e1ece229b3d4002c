import type { BrewMaterial } from "darkroom-kinetics";
import { sentenceOf } from "../blanks.js";
import { attribute, el } from "../dom.js";
import { frame, type MakeSection } from "../section.js";
import type { Developer } from "../sheet.js";
import { wordsOf } from "../words.js";

/** What is known: a material, a time, its conditions, and what the developer works with. */
export const knownSection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const material = el(
    "select",
    {
      "id": "kind",
      "class": "blank",
      "aria-label": words.material,
      "change": () => {
        const shelf = { ...store.sheet.shelf, material: material.value as BrewMaterial, step: 0 };
        store.change({ shelf, invented: false, ticked: undefined });
      },
    },
    ...Object.entries(words.materials).map(([value, text]) =>
      el("option", { value, selected: value === store.sheet.shelf.material }, text),
    ),
  );
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
  const sentence = sentenceOf(store, words.knownSentence, { material, developer });
  return {
    element: frame("known", words.known, ...sentence.elements),
    update: () => {
      sentence.update();
      const ofFile = developer.querySelector("option[value=file]");
      attribute(ofFile as Element, "hidden", store.sheet.recipe === undefined);
      if (material.value !== store.sheet.shelf.material) material.value = store.sheet.shelf.material;
      if (developer.value !== store.sheet.developer) developer.value = store.sheet.developer;
    },
  };
};
