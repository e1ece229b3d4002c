/* A reading that is asked about. It changes nothing until it is answered. */
import { formatTemperature } from "darkroom-kinetics";
import { withAnswer, type Doubt, type DoubtAnswer } from "../bath.js";
import { cautionText } from "../catalogue.js";
import { button, el, put } from "../dom.js";
import { inFigures } from "../sheet.js";
import type { Control } from "./control.js";

/** The question. */
export interface DoubtPart {
  readonly element: HTMLElement;
  update(doubts: readonly Doubt[]): void;
}

/** Makes the question; `answered` is called when it was. */
export function doubtPart({ store, words, degrees, act }: Control, answered: () => void): DoubtPart {
  const element = el("div", { class: "doubt", role: "alert" });
  const answer = (text: string, given: DoubtAnswer): HTMLButtonElement =>
    button(text, () => {
      act((run) => withAnswer(run, given));
      answered();
    });
  let asked: string | undefined;
  return {
    element,
    update: (doubts) => {
      const [doubt, ...others] = doubts;
      const id = JSON.stringify([doubts, store.sheet.unit]);
      // Made anew only when it is another question, or it would be read aloud every second.
      if (id === asked) return;
      asked = id;
      element.hidden = doubt === undefined;
      if (doubt === undefined) {
        put(element, []);
        return;
      }
      const { caution, celsius, reading } = doubt;
      const given = degrees(reading.temperatureC ?? NaN);
      const unit = caution.code === "maybe-fahrenheit" ? "F" : "C";
      const jump = caution.code === "reading-jump";
      const said = cautionText(caution, store.sheet);
      put(element, [
        el("p", {}, jump ? words.isIt(given, said) : said, " ", words.untilYouSay),
        others.length > 0 && el("p", {}, words.moreDoubts(others.length)),
        el(
          "div",
          { class: "answers" },
          celsius !== undefined &&
            answer(
              words.yes(inFigures(formatTemperature(celsius, { unit }), store.sheet.language)),
              "other-unit",
            ),
          answer(words.forget, "forget"),
          jump && answer(words.itIs(given), "right"),
        ),
      ]);
    },
  };
}
