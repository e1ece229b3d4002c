/* What the thermometer says: three large buttons, or typed where there is light. */
import { isInputError, parseTemperature } from "darkroom-kinetics";
import { withoutReading, withReading, withTap, type Run } from "../bath.js";
import { messageOf } from "../blanks.js";
import { button, el, say } from "../dom.js";
import type { Control } from "./control.js";

/** The readings. */
export interface ReadingsPart {
  readonly element: HTMLElement;
  update(run: Run): void;
}

/** Makes them. */
export function readingsPart({ store, words, degrees, bath, act }: Control): ReadingsPart {
  const note = (celsius: number): void => {
    act((run, clockS, place) => withReading(run, place, clockS, celsius));
  };
  const typed = el("input", {
    "class": "blank",
    "type": "text",
    "id": "thermometer",
    "data-own": true,
    "inputmode": "decimal",
    "size": 6,
    "autocomplete": "off",
    "enterkeyhint": "done",
    "aria-label": words.reading,
    "aria-describedby": "thermometer-message",
  });
  const message = el("p", { id: "thermometer-message", class: "message", role: "alert" });
  const form = el(
    "form",
    {
      class: "typed",
      submit: (event: Event) => {
        event.preventDefault();
        read(typed.value);
      },
    },
    el("label", { for: "thermometer" }, words.says),
    typed,
    el("button", { type: "submit" }, words.note),
  );

  /** A reading that was typed: noted, or what is wrong with it said. */
  function read(text: string): void {
    try {
      const celsius = parseTemperature(text, { unit: store.sheet.unit });
      typed.value = "";
      say(message, "");
      note(celsius);
    } catch (error) {
      if (!isInputError(error)) throw error;
      say(message, messageOf(error, text, store.sheet));
    }
  }

  /** Half a degree or one of °F down or up, °C. */
  const stepOf = (step: number): number => (store.sheet.unit === "F" ? step / 1.8 : step / 2);
  const stepped = (step: number): number => (bath().run?.log.at(-1)?.temperatureC ?? 0) + stepOf(step);
  const quick = [-1, 0, 1].map((step) =>
    button("", () => {
      act((run, clockS, place) => withTap(run, place, clockS, stepOf(step)));
    }),
  );
  const undo = button(
    "",
    () => {
      act(withoutReading);
    },
    { class: "plain" },
  );
  return {
    element: el("div", {}, form, message, el("div", { class: "readings" }, ...quick), undo),
    update: ({ log }) => {
      form.hidden = message.hidden = bath().place !== "tank";
      quick.forEach((one, i) => {
        const text = degrees(stepped(i - 1));
        say(one, i === 1 ? words.same(text) : text);
      });
      // The first entry is what the bath was mixed to.
      undo.hidden = log.length < 2;
      say(undo, words.undoReading(degrees(stepped(0))));
    },
  };
}
