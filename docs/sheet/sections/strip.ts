import { formatTime } from "darkroom-kinetics";
import { button, el, put, say } from "../dom.js";
import { lasting } from "../figures.js";
import { figureOf } from "../figure.js";
import { frame, type MakeSection } from "../section.js";
import { wordsOf } from "../words.js";

/** A test strip on the same scale of time: the piece that is ticked becomes a run. */
export const stripSection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const figure = figureOf(store, "strip", undefined, () => {
    place();
  });
  const boxes = el("div", { "class": "boxes", "role": "radiogroup", "aria-label": words.stripLabel });
  const said = el("p", { class: "said" });
  const none = el("p", { class: "said" }, words.noStrip);
  const keep = button(words.keep, () => {
    const { stripRun } = store.answer;
    if (stripRun === undefined) return;
    store.change({ runs: [...store.sheet.runs, stripRun], ticked: undefined, invented: false });
  });
  const undo = button(words.untick, () => {
    store.change({ ticked: undefined });
  });
  const after = el("div", { class: "buttons" }, keep, undo);
  let shown = "";
  /** One radio button over each box; they stay as long as the times are the same. */
  const place = (): void => {
    const { width, height, strip } = figure.layout();
    if (strip === undefined) return;
    const { ticked } = store.sheet;
    const times = strip.boxes.map(({ timeS }) => timeS).join();
    if (times !== shown) {
      shown = times;
      put(
        boxes,
        strip.boxes.map(({ timeS }) =>
          el(
            "label",
            { class: "box" },
            el("input", {
              type: "radio",
              name: "strip",
              value: timeS,
              change: () => {
                store.change({ ticked: timeS, invented: false });
              },
            }),
            el("span", {}, formatTime(timeS)),
          ),
        ),
      );
    }
    strip.boxes.forEach(({ timeS, left, right, top }, i) => {
      const label = boxes.children[i] as HTMLElement;
      label.style.left = `${(100 * left) / width}%`;
      label.style.width = `${(100 * (right - left)) / width}%`;
      label.style.top = `${(100 * top) / height}%`;
      const input = label.firstChild as HTMLInputElement;
      input.checked = timeS === ticked;
    });
  };
  const element = frame(
    "strip",
    words.strip,
    none,
    el("div", { class: "over" }, figure.element, boxes),
    said,
    after,
  );
  const update = (): void => {
    const { strip, stripRun, picture } = store.answer;
    element.hidden = picture.refused || store.answer.missing.length > 0;
    const pieces = strip?.timesS.length ?? 0;
    none.hidden = pieces > 0;
    (figure.element.parentElement as HTMLElement).hidden = pieces === 0;
    if (pieces > 0) {
      figure.update();
      place();
    }
    after.hidden = stripRun === undefined;
    say(said, stripRun === undefined ? words.stripHow : words.right(lasting(stripRun.timeS)));
    said.hidden = pieces === 0;
  };
  return { element, update };
};
