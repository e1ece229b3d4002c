import { describePicture, formatTime, celsiusToFahrenheit } from "darkroom-kinetics";
import { pictureWords, temperatureText } from "../catalogue.js";
import { attribute, button, el, say } from "../dom.js";
import { lasting } from "../figures.js";
import { figureOf } from "../figure.js";
import { frame, type MakeSection } from "../section.js";
import { inFigures } from "../sheet.js";
import { wordsOf } from "../words.js";

/** A step of the dot: half a degree Celsius, or a degree Fahrenheit. */
const STEP = { C: 0.5, F: 1 } as const;

/** The picture of the answer, with a dot that can be dragged, moved by keys, and heard. */
export const pictureSection: MakeSection = (store) => {
  const words = wordsOf(store.sheet.language);
  const figure = figureOf(store, "picture", 180, () => {
    place();
  });
  const described = el("p", { class: "unseen" });
  const hint = el("p", { "class": "hint", "aria-hidden": "true" }, words.drag);
  /** what the blank said before the dot was moved */
  let before: string | undefined;
  const move = (degrees: number): void => {
    const { sheet } = store;
    before ??= sheet.texts.temperature;
    const step = STEP[sheet.unit];
    const text = `${Number((Math.round(degrees / step) * step).toFixed(1))} °${sheet.unit}`;
    store.write("temperature", inFigures(text, sheet.language));
  };
  const dot = el("input", {
    "id": "dot",
    "class": "dot",
    "type": "range",
    "aria-label": words.blanks.temperature,
    "aria-orientation": "vertical",
    "input": () => {
      move(Number(dot.value));
    },
    "keydown": (event: KeyboardEvent) => {
      const way = KEYS[event.key];
      if (way === undefined) return;
      event.preventDefault();
      move(Number(dot.value) + way * STEP[store.sheet.unit]);
    },
    "pointerdown": (event: PointerEvent) => {
      event.preventDefault();
      dot.focus();
      dot.setPointerCapture(event.pointerId);
      const { plot, height } = figure.layout();
      const { axes } = store.answer.picture;
      if (plot === undefined) return;
      const drag = (moved: PointerEvent): void => {
        const box = figure.element.getBoundingClientRect();
        const y = ((moved.clientY - box.top) / box.height) * height;
        const share = Math.min(1, Math.max(0, (plot.bottom - y) / (plot.bottom - plot.top)));
        const temperatureC = axes.fromC + share * (axes.toC - axes.fromC);
        move(store.sheet.unit === "F" ? celsiusToFahrenheit(temperatureC) : temperatureC);
      };
      const end = (): void => {
        dot.removeEventListener("pointermove", drag);
        dot.removeEventListener("pointerup", end);
        dot.removeEventListener("pointercancel", end);
      };
      dot.addEventListener("pointermove", drag);
      dot.addEventListener("pointerup", end);
      dot.addEventListener("pointercancel", end);
    },
  });
  const back = button("", () => {
    const text = before;
    before = undefined;
    if (text !== undefined) store.write("temperature", text);
    dot.focus();
  });
  /** Puts the slider over today's dot; only its attributes change, so that it keeps the focus. */
  const place = (): void => {
    const { picture, rounded } = store.answer;
    const { today, axes } = picture;
    dot.hidden = today === undefined;
    hint.hidden = today === undefined || before !== undefined;
    if (today === undefined || rounded === undefined) return;
    const { width, height, left, right, plot } = figure.layout();
    if (plot === undefined) return;
    const x = left + ((right - left) * Math.log(today.timeS / axes.lowS)) / Math.log(axes.highS / axes.lowS);
    const y =
      plot.bottom - ((plot.bottom - plot.top) * (today.temperatureC - axes.fromC)) / (axes.toC - axes.fromC);
    dot.style.left = `${(100 * x) / width}%`;
    dot.style.top = `${(100 * y) / height}%`;
    const { unit } = store.sheet;
    const shown = (temperatureC: number): number =>
      unit === "F" ? celsiusToFahrenheit(temperatureC) : temperatureC;
    attribute(dot, "min", Math.ceil(shown(axes.fromC)));
    attribute(dot, "max", Math.floor(shown(axes.toC)));
    attribute(dot, "step", 0.1);
    attribute(dot, "value", shown(today.temperatureC).toFixed(1));
    dot.value = shown(today.temperatureC).toFixed(1);
    const { timeS, lowS, highS } = rounded;
    const range = words.between(formatTime(lowS), formatTime(highS));
    const degrees = temperatureText(today.temperatureC, store.sheet);
    attribute(dot, "aria-valuetext", `${degrees}: ${lasting(timeS)}, ${words.nineInTen} ${range}`);
  };
  const element = frame(
    "picture",
    words.picture,
    el("div", { class: "over" }, figure.element, dot),
    hint,
    back,
    described,
  );
  const update = (): void => {
    element.hidden = store.answer.missing.length > 0;
    figure.update();
    place();
    const { description } = describePicture(store.answer.picture, pictureWords(store));
    say(described, description.join(" "));
    const { texts } = store.sheet;
    if (before === texts.temperature) before = undefined;
    back.hidden = before === undefined;
    if (before !== undefined) say(back, words.back(before));
  };
  return { element, update };
};

const KEYS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 4,
  PageDown: -4,
};
