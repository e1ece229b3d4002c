import type { BrewMaterial } from "darkroom-kinetics";
import { sentenceOf } from "../blanks.js";
import { el } from "../dom.js";
import { frame, type MakeSection } from "../section.js";
import { wordsOf } from "../words.js";

/** Today's bath, and what is developed in it. */
export const todaySection: MakeSection = (store) => {
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
  const sentence = sentenceOf(store, words.todaySentence, { material });
  return {
    element: frame("today", words.today, ...sentence.elements),
    update: () => {
      sentence.update();
      if (material.value !== store.sheet.shelf.material) material.value = store.sheet.shelf.material;
    },
  };
};
