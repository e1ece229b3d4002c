/* The whole sheet: a head, the sections in the order of the job, a foot. */
import { formatTime } from "darkroom-kinetics";
import { staleText } from "./catalogue.js";
import { attribute, el, put, say } from "./dom.js";
import { lasting } from "./figures.js";
import type { MakeSection, Section } from "./section.js";
import { bathSection } from "./sections/bath.js";
import { developSection } from "./sections/develop.js";
import { headSection } from "./sections/head.js";
import { knownSection } from "./sections/known.js";
import { learnedSection } from "./sections/learned.js";
import { noticeSection } from "./sections/notice.js";
import { pictureSection } from "./sections/picture.js";
import { shelfSection } from "./sections/shelf.js";
import { stripSection } from "./sections/strip.js";
import { todaySection } from "./sections/today.js";
import { wallSection } from "./sections/wall.js";
import { whySection } from "./sections/why.js";
import type { Store } from "./sheet.js";
import { wordsOf } from "./words.js";

/** In the order of the job. */
const sections: readonly MakeSection[] = [
  headSection,
  knownSection,
  todaySection,
  developSection,
  pictureSection,
  whySection,
  stripSection,
  shelfSection,
  bathSection,
  learnedSection,
  wallSection,
  noticeSection,
];

/** So long after the last change it is read out, ms: not at every letter. */
const QUIET_MS = 700;

/** Makes the sheet in `root`, and keeps it as the store says. Returns what draws it anew, as for paper. */
export function showSheet(root: HTMLElement, store: Store): () => void {
  let made: readonly Section[] = [];
  let language = store.sheet.language;
  const spoken = el("p", { "class": "unseen", "role": "status", "aria-live": "polite" });
  const broken = el("p", { class: "message", role: "alert", hidden: true });
  /** One section that fails takes no other with it. */
  const update = (): void => {
    broken.hidden = true;
    attribute(root, "data-stale", store.answer.stale);
    for (const section of made)
      try {
        section.update();
      } catch (error) {
        console.error(error);
        broken.hidden = false;
        say(broken, wordsOf(store.sheet.language).broken(section.element.id));
      }
  };
  const make = (): void => {
    language = store.sheet.language;
    const words = wordsOf(language);
    const focused = document.activeElement?.id ?? "";
    // What is typed and no sheet keeps, such as notes that were not read yet, stays in its box.
    const typed = Array.from(root.querySelectorAll<HTMLInputElement>("[data-own]"));
    document.documentElement.lang = language;
    document.title = words.title;
    made = sections.map((section) => section(store));
    put(root, [
      broken,
      ...made.map(({ element }) => element),
      el("footer", {}, el("p", { class: "quiet" }, words.footer)),
      spoken,
    ]);
    update();
    for (const { id, value, defaultValue } of typed) {
      const box = document.getElementById(id);
      if (value === defaultValue || box === null) continue;
      (box as HTMLInputElement).value = value;
      box.dispatchEvent(new Event("change"));
    }
    if (focused !== "") document.getElementById(focused)?.focus();
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  const speak = (): void => {
    const { rounded, stale } = store.answer;
    const words = wordsOf(store.sheet.language);
    const { timeS, lowS, highS } = rounded ?? { timeS: 0, lowS: 0, highS: 0 };
    const range = words.between(formatTime(lowS), formatTime(highS));
    const answered = `${lasting(timeS)}, ${words.nineInTen} ${range}`;
    say(spoken, rounded === undefined ? words.noAnswer : stale ? staleText(store) : answered);
  };
  store.subscribe(() => {
    if (store.sheet.language !== language) make();
    else update();
    clearTimeout(timer);
    // While a negative is in the bath, only its cues and doubts are spoken.
    if (store.sheet.bath?.run === undefined) timer = setTimeout(speak, QUIET_MS);
  });
  make();
  return update;
}
