import { sentenceOf } from "../blanks.js";
import { frame, type MakeSection } from "../section.js";
import { wordsOf } from "../words.js";

/** Today's bath. */
export const todaySection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const sentence = sentenceOf(store, words.todaySentence);
  return { element: frame("today", words.today, ...sentence.elements), update: sentence.update };
};
