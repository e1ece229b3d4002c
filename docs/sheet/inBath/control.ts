/* What every part of the section of the bath needs: the words, the units, and how to change what is kept. */
import { clockAt, newBath, type BathState, type Place, type Run } from "../bath.js";
import { bathWordsOf, type BathWords } from "../bathWords.js";
import { temperatureText } from "../catalogue.js";
import { el, put, type Child } from "../dom.js";
import { lasting } from "../figures.js";
import type { Store } from "../sheet.js";

/** What the parts share. */
export interface Control {
  readonly store: Store;
  readonly words: BathWords;
  /** a temperature in the unit of the sheet */
  readonly degrees: (celsius: number) => string;
  readonly bath: () => BathState;
  readonly set: (part: Partial<BathState>) => void;
  /** changes the run, where there is one, at this moment of the day */
  readonly act: (change: (run: Run, clockS: number, place: Place) => Run) => void;
}

/** Makes what the parts share. */
export function controlOf(store: Store): Control {
  const bath = (): BathState => store.sheet.bath ?? newBath;
  const set = (part: Partial<BathState>): void => {
    store.change({ bath: { ...bath(), ...part } });
  };
  return {
    store,
    words: bathWordsOf(store.sheet.language),
    degrees: (celsius) => temperatureText(celsius, store.sheet),
    bath,
    set,
    act: (change) => {
      const { run, place } = bath();
      if (run !== undefined) set({ run: change(run, clockAt(run, Date.now()), place) });
    },
  };
}

/** A clock time that has been reached. */
export const reached = (timeS: number): string => lasting(Math.floor(timeS));

/** A time that is left: in seconds below a minute. */
export function left(timeS: number): string {
  const whole = Math.ceil(timeS - 1e-6);
  return whole < 60 ? `${whole} s` : lasting(whole);
}

/** Puts lines into an element; where they are the same, nothing is touched and nothing read aloud twice. */
export function lines(element: HTMLElement, texts: readonly string[], name: "li" | "p" = "li"): void {
  const before = Array.from(element.children, ({ textContent }) => textContent);
  element.hidden = texts.length === 0;
  if (before.length === texts.length && texts.every((text, i) => text === before[i])) return;
  put(
    element,
    texts.map((text): Child => el(name, {}, text)),
  );
}
