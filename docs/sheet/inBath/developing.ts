/* While it develops: the scale, why the goal moved, the thermometer, the image, and pouring out. */
import { formatTime, type Caution } from "darkroom-kinetics";
import { withImage, withoutImage, withPouredOut, type BathState, type Run } from "../bath.js";
import { cautionText } from "../catalogue.js";
import { attribute, button, el, say } from "../dom.js";
import type { Shown } from "../run.js";
import { lines, reached, type Control } from "./control.js";
import { doubtPart } from "./doubt.js";
import { readingsPart } from "./readings.js";
import { steeringWhy } from "./said.js";
import { scaleView } from "./scale.js";

/** So long a run can be thrown away that began by mistake, s. */
const MISTAKE_S = 60;

/** The part while it develops. */
export interface DevelopingPart {
  readonly element: HTMLElement;
  update(run: Run, bath: BathState, shown: Shown): void;
}

/** What steering finds unwise besides what is said with the goal. */
const grave = ({ path, severity }: Caution): boolean =>
  (path === "/appearance" || path === "/ambientC") && severity !== "note";

/** Makes the part; `pressed` is called when a button was pressed that then goes away. */
export function developingPart(control: Control, pressed: () => void): DevelopingPart {
  const { store, words, set, act } = control;
  const scale = scaleView(words);
  const covers = el("p", { class: "covers" }, words.covers);
  const why = el("p", { class: "why" });
  const unwise = el("ul", { class: "care" });
  const doubt = doubtPart(control, pressed);
  const readings = readingsPart(control);
  const press = (work: () => void) => (): void => {
    work();
    pressed();
  };
  const image = button(
    words.image,
    press(() => {
      act(withImage);
    }),
    { id: "image", class: "wide" },
  );
  const seenAt = el("span", {});
  const undo = button(
    words.undo,
    press(() => {
      act(withoutImage);
    }),
    { class: "plain" },
  );
  const seen = el("p", { class: "seen" }, seenAt, " ", undo);
  const out = button(
    "",
    press(() => {
      act(withPouredOut);
    }),
    { id: "out" },
  );
  const black = button(
    words.goBlack,
    () => {
      set({ black: true });
    },
    { class: "wide" },
  );
  const notYet = button(
    words.notYet,
    () => {
      set({ run: undefined });
      document.getElementById("pour-in")?.focus();
    },
    { class: "plain" },
  );
  return {
    element: el(
      "div",
      { class: "developing" },
      scale.element,
      covers,
      why,
      unwise,
      doubt.element,
      readings.element,
      seen,
      image,
      out,
      black,
      notYet,
    ),
    update: (run, { place }, shown) => {
      const { answer, plan, clockS } = shown;
      scale.update(shown, formatTime(Math.floor(clockS)));
      say(why, steeringWhy(answer, plan, run.followed.stepS, store.sheet));
      lines(
        unwise,
        answer.cautions.filter(grave).map((caution) => cautionText(caution, store.sheet)),
      );
      doubt.update(shown.doubts);
      readings.update(run);
      // The first entry is the temperature that the sheet states.
      covers.hidden = run.log.length > 1;
      image.hidden = !shown.canSee;
      seen.hidden = run.seenS === undefined;
      say(seenAt, words.seenAt(reached(run.seenS ?? 0)));
      say(out, words.out[place === "tank" ? "tank" : "dish"]);
      attribute(out, "class", answer.action === "pour-out" ? "main" : "wide");
      black.hidden = place === "tank";
      notYet.hidden = clockS > MISTAKE_S;
    },
  };
}
