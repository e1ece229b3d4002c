/* Where the negative is, and what that place asks for. */
import { isInputError, parseTemperature } from "darkroom-kinetics";
import { places } from "../bath.js";
import { messageOf } from "../blanks.js";
import { attribute, button, el, put, say } from "../dom.js";
import { lines, type Control } from "./control.js";
import { canBuzz, canSound, wake } from "./signal.js";

/** A part of the section. */
export interface Part {
  readonly element: HTMLElement;
  update(): void;
}

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** The question where it is. No native radio button: it would stay white under a red lamp. */
export function placePart({ words, bath, set }: Control): Part {
  const choices = places.map((place, i) =>
    el(
      "button",
      {
        type: "button",
        role: "radio",
        class: "choice",
        click: () => {
          set({ place });
        },
        keydown: (event: KeyboardEvent) => {
          const step = STEPS[event.key];
          if (step === undefined) return;
          event.preventDefault();
          const next = choices[(i + step + places.length) % places.length];
          next?.focus();
          next?.click();
        },
      },
      el("span", { class: "mark" }),
      words.places[place],
    ),
  );
  const group = el(
    "div",
    { "class": "choices", "role": "radiogroup", "aria-labelledby": "where" },
    ...choices,
  );
  return {
    element: el("div", {}, el("p", { class: "ask", id: "where" }, words.where), group),
    update: () => {
      choices.forEach((one, i) => {
        const chosen = places[i] === bath().place;
        attribute(one, "aria-checked", String(chosen));
        attribute(one, "tabindex", chosen ? 0 : -1);
      });
    },
  };
}

/** The air around the bath, towards which it drifts; it may stay empty. */
export function airPart({ store, words, degrees, bath, set }: Control): Part {
  const message = el("p", { id: "air-message", class: "message", role: "alert" });
  const input = el("input", {
    "id": "air",
    "data-own": true,
    "class": "blank",
    "type": "text",
    "inputmode": "decimal",
    "size": 6,
    "autocomplete": "off",
    "aria-describedby": "air-message",
    "change": () => {
      const text = input.value.trim();
      try {
        const ambientC = text === "" ? undefined : parseTemperature(text, { unit: store.sheet.unit });
        say(message, "");
        set({ ambientC });
      } catch (error) {
        if (!isInputError(error)) throw error;
        say(message, messageOf(error, text, store.sheet));
      }
    },
  });
  const told = el("span", {});
  const element = el(
    "div",
    {},
    el("p", { class: "said" }, el("label", { for: "air" }, words.air), " ", input, told),
    message,
  );
  let shown: string | undefined;
  return {
    element,
    update: () => {
      const { ambientC, place } = bath();
      const text = ambientC === undefined ? "" : degrees(ambientC);
      // What is typed and cannot be read stays until it is mended.
      if (text !== shown) input.value = input.defaultValue = text;
      shown = text;
      // Under a lamp nothing is typed: a blank would be too bright.
      const dish = place !== "tank";
      element.hidden = dish && text === "";
      input.hidden = message.hidden = dish;
      say(told, dish ? text : "");
    },
  };
}

/** What to mind with a phone beside a dish, and cues that need no eyes. */
export function dishPart({ words, bath, set }: Control): Part {
  const advice = el("div", { class: "advice" });
  const toggle = (name: "sound" | "buzz"): HTMLButtonElement =>
    button(
      words[name],
      () => {
        wake();
        set({ [name]: !bath()[name] });
      },
      { class: "toggle" },
    );
  const [sound, buzz] = [toggle("sound"), toggle("buzz")];
  const toggles = el("div", { class: "toggles" });
  put(toggles, [canSound() && sound, canBuzz() && buzz]);
  return {
    element: el("div", {}, advice, toggles),
    update: () => {
      const { place, sound: sounds, buzz: buzzes } = bath();
      const dish = place !== "tank";
      const lamp = place === "red" || place === "amber" ? [words.lamps[place]] : [];
      const glow = place === "dark" ? [words.stillGlows] : [];
      lines(advice, dish ? [...lamp, words.noSafelight, ...glow] : [], "p");
      toggles.hidden = !dish;
      attribute(sound, "aria-pressed", String(sounds));
      attribute(buzz, "aria-pressed", String(buzzes));
    },
  };
}
