import { describePicture } from "darkroom-kinetics";
import { cautionText, pictureWords } from "../catalogue.js";
import { el, put, say } from "../dom.js";
import { figureOf } from "../figure.js";
import { frame, type MakeSection } from "../section.js";
import { wordsOf } from "../words.js";

/** The ladder of causes, and below it the other cautions and where the figures come from. */
export const whySection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const figure = figureOf(store, "ladder", undefined, () => undefined);
  const rungs = el("ul", { class: "unseen" });
  const nothing = el("p", { class: "said" }, words.nothing);
  const more = el("summary");
  const cautions = el("ul");
  const folded = el("details", {}, more, cautions);
  const sources = el("ul");
  const printed = el("details", {}, el("summary", {}, words.sources), sources);
  const element = frame("why", words.why, nothing, figure.element, rungs, folded, printed);
  const update = (): void => {
    element.hidden = store.answer.missing.length > 0;
    const { picture, compensation } = store.answer;
    nothing.hidden = !picture.refused;
    figure.element.hidden = picture.refused;
    rungs.hidden = picture.refused;
    if (!picture.refused) figure.update();
    put(
      rungs,
      describePicture(picture, pictureWords(store)).rungs.map(({ cause, basis, change }) =>
        el("li", {}, [cause, change, basis].filter((text) => text !== "").join(", ")),
      ),
    );
    const others = compensation.cautions.slice(1);
    folded.hidden = others.length === 0;
    say(more, words.more(others.length));
    put(
      cautions,
      others.map((caution) => el("li", {}, cautionText(caution, store.sheet))),
    );
    const all = [...new Set(compensation.factors.flatMap((factor) => factor.sources))];
    printed.hidden = picture.refused || all.length === 0;
    put(
      sources,
      all.map((source) => el("li", {}, source)),
    );
  };
  return { element, update };
};
