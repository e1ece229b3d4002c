/*
 * The screen without light: a black sheet over everything, the rest out of reach. A hold of two seconds, or of
 * the space bar, brings it back.
 */
import { el } from "../dom.js";

const HOLD_MS = 2000;

let cover: HTMLElement | undefined;

/** Covers the page, or uncovers it; `words` are for those who hear the page. */
export function blacken(black: boolean, words: string, back: () => void): void {
  const main = document.querySelector("main");
  if (!black) {
    cover?.remove();
    cover = undefined;
    main?.removeAttribute("inert");
    return;
  }
  if (cover !== undefined) return;
  cover = coverOf(words, back);
  document.body.append(cover);
  main?.setAttribute("inert", "");
  cover.focus({ preventScroll: true });
}

function coverOf(words: string, back: () => void): HTMLElement {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const begin = (): void => {
    timer ??= setTimeout(back, HOLD_MS);
  };
  const end = (): void => {
    clearTimeout(timer);
    timer = undefined;
  };
  const key = (event: KeyboardEvent): void => {
    if (event.key !== " " && event.key !== "Enter") return;
    event.preventDefault();
    if (event.type === "keydown") begin();
    else end();
  };
  return el("div", {
    "id": "black",
    "role": "button",
    "tabindex": 0,
    "aria-label": words,
    "pointerdown": begin,
    "pointerup": end,
    "pointercancel": end,
    "pointerleave": end,
    "contextmenu": (event: Event) => {
      event.preventDefault();
    },
    "keydown": key,
    "keyup": key,
    "blur": end,
  });
}
